//! What each person last asked in a chat, for the questions that follow it.

use chrono::{DateTime, TimeDelta, Utc};
use sqlx::SqliteConnection;

use super::Result;
use super::rows::{Kept, to_json};
use crate::chat::understand::Subject;
use crate::club::MemberId;
use crate::messages::Chat;

/// How long a question is followed: long enough to read an answer and go to the shed, short enough
/// that nobody has forgotten what was asked.
const FOLLOWED: TimeDelta = TimeDelta::minutes(30);

/// What `member` last asked in this chat and topic, while it may be followed.
pub(super) async fn subject(
    conn: &mut SqliteConnection,
    chat: &Chat,
    member: MemberId,
    now: DateTime<Utc>,
) -> Result<Option<Subject>> {
    let row = sqlx::query(
        "SELECT subject FROM subjects \
         WHERE chat = $1 AND thread = $2 AND member_id = $3 AND expires_at > $4",
    )
    .bind(chat.id)
    .bind(thread(chat))
    .bind(member)
    .bind(now)
    .fetch_optional(conn)
    .await?;
    row.map(|row| Kept::of_member("subjects of member", &row, member).needed_json("subject"))
        .transpose()
}

/// Keeps what `member` asked in this chat and topic, in place of what was asked before.
pub(super) async fn keep(
    conn: &mut SqliteConnection,
    chat: &Chat,
    member: MemberId,
    subject: &Subject,
    now: DateTime<Utc>,
) -> Result<()> {
    sqlx::query(
        "INSERT INTO subjects (chat, thread, member_id, subject, expires_at) \
         VALUES ($1, $2, $3, $4, $5) ON CONFLICT (chat, thread, member_id) DO UPDATE SET \
         subject = excluded.subject, expires_at = excluded.expires_at",
    )
    .bind(chat.id)
    .bind(thread(chat))
    .bind(member)
    .bind(to_json(subject)?)
    .bind(now + FOLLOWED)
    .execute(conn)
    .await?;
    Ok(())
}

/// Outside the topics of a group.
fn thread(chat: &Chat) -> i64 {
    chat.thread.map_or(0, i64::from)
}

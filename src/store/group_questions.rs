//! Questions of a group whose answer was short there.

use chrono::{DateTime, Utc};
use sqlx::SqliteConnection;

use super::{Result, Work};
use crate::club::MemberId;

/// Keeps a question by its message; one message asks one thing.
pub(super) async fn keep(
    conn: &mut SqliteConnection,
    (chat, message): (i64, i32),
    member: MemberId,
    question: &str,
    now: DateTime<Utc>,
) -> Result<()> {
    sqlx::query(
        "INSERT INTO group_questions (chat, message, member_id, question, asked_at) \
         VALUES ($1, $2, $3, $4, $5) ON CONFLICT (chat, message) DO NOTHING",
    )
    .bind(chat)
    .bind(message)
    .bind(member)
    .bind(question)
    .bind(now)
    .execute(conn)
    .await?;
    Ok(())
}

impl Work {
    /// The question of this message in a group, where it is still kept.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn group_question(&mut self, chat: i64, message: i32) -> Result<Option<String>> {
        Ok(sqlx::query_scalar(
            "SELECT question FROM group_questions WHERE chat = $1 AND message = $2",
        )
        .bind(chat)
        .bind(message)
        .fetch_optional(&mut *self.transaction)
        .await?)
    }
}

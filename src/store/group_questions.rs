//! Questions of a group whose answer was short there.

use chrono::{DateTime, Utc};
use sqlx::{Row, SqliteConnection};

use super::rows::{Kept, to_json};
use super::{Result, Work};
use crate::chat::GroupQuestion;
use crate::club::MemberId;

/// Keeps a question by its message; one message asks one thing.
pub(super) async fn keep(
    conn: &mut SqliteConnection,
    (chat, message): (i64, i32),
    member: MemberId,
    question: &GroupQuestion,
    now: DateTime<Utc>,
) -> Result<()> {
    sqlx::query(
        "INSERT INTO group_questions (chat, message, member_id, question, before, asked_at) \
         VALUES ($1, $2, $3, $4, $5, $6) ON CONFLICT (chat, message) DO NOTHING",
    )
    .bind(chat)
    .bind(message)
    .bind(member)
    .bind(&question.text)
    .bind(question.before.as_ref().map(to_json).transpose()?)
    .bind(now)
    .execute(conn)
    .await?;
    Ok(())
}

impl Work {
    /// The question of this message in a group, where it is still kept.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn group_question(
        &mut self,
        chat: i64,
        message: i32,
    ) -> Result<Option<GroupQuestion>> {
        let row = sqlx::query("SELECT * FROM group_questions WHERE chat = $1 AND message = $2")
            .bind(chat)
            .bind(message)
            .fetch_optional(&mut *self.transaction)
            .await?;
        row.map(|row| {
            let member = row.try_get("member_id")?;
            let kept = Kept::of_member("group_questions of member", &row, member);
            Ok(GroupQuestion { text: kept.get("question")?, before: kept.json("before")? })
        })
        .transpose()
    }
}

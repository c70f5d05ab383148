//! What becomes of a message after a try to send it.

use chrono::{DateTime, Utc};
use sqlx::sqlite::SqliteRow;
use sqlx::{Row, SqliteConnection};

use super::changes::set_reachable;
use super::digests::digest_missed;
use super::groups::move_chat;
use super::queue::end;
use super::schedule::take_back_naming;
use super::sending::came_back;
use super::{Result, SendEnd, Store, Work};
use crate::club::MemberId;

impl Store {
    /// Keeps how a try to send the message ended. A row that is gone or ended is left alone,
    /// except that one that was sent says so.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn settle(&self, id: i64, how: &SendEnd, now: DateTime<Utc>) -> Result<()> {
        self.settle_many(&[(id, how.clone())], now).await
    }

    /// As [`Store::settle`] for several, in one transaction.
    ///
    /// # Errors
    /// As [`Store::settle`], and nothing is kept.
    pub async fn settle_many(&self, ends: &[(i64, SendEnd)], now: DateTime<Utc>) -> Result<()> {
        if ends.is_empty() {
            return Ok(());
        }
        let mut work = self.begin().await?;
        for (id, how) in ends {
            settle(&mut work.transaction, *id, how, now).await?;
            came_back(&mut work.transaction, *id, now).await?;
        }
        work.commit().await
    }

    /// Ends the waiting messages whose time has passed, and gives how many there were.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn expire(&self, now: DateTime<Utc>) -> Result<usize> {
        let mut passed: Vec<i64> = sqlx::query_scalar(
            "SELECT id FROM outgoing WHERE outcome IS NULL AND expires_at <= $1",
        )
        .bind(now)
        .fetch_all(&self.reader)
        .await?;
        // The latest first, so that each reminder gives back the naming that stood before it.
        passed.sort_unstable_by(|a, b| b.cmp(a));
        for some in passed.chunks(200) {
            let ends: Vec<_> = some.iter().map(|id| (*id, SendEnd::Expired)).collect();
            self.settle_many(&ends, now).await?;
        }
        Ok(passed.len())
    }
}

impl Work {
    /// As [`Store::settle`], within this transaction.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn settle(&mut self, id: i64, how: &SendEnd, now: DateTime<Utc>) -> Result<()> {
        settle(&mut self.transaction, id, how, now).await?;
        came_back(&mut self.transaction, id, now).await
    }
}

async fn settle(
    conn: &mut SqliteConnection,
    id: i64,
    how: &SendEnd,
    now: DateTime<Utc>,
) -> Result<()> {
    if let SendEnd::Sent { message } = how {
        // A change may have cancelled it while it was on its way; it was sent all the same.
        sqlx::query(
            "UPDATE outgoing SET outcome = 'sent', ended_at = $1, platform_message_id = $2, \
             error = NULL WHERE id = $3",
        )
        .bind(now)
        .bind(message.map(i64::from))
        .bind(id)
        .execute(&mut *conn)
        .await?;
        return leave_nothing(conn, id).await;
    }
    let row = sqlx::query("SELECT * FROM outgoing WHERE id = $1 AND outcome IS NULL")
        .bind(id)
        .fetch_optional(&mut *conn)
        .await?;
    let Some(row) = row else { return Ok(()) };
    let chat: Option<i64> = row.try_get("chat")?;
    match how {
        SendEnd::Retry { at, counts, why } => {
            sqlx::query(
                "UPDATE outgoing SET not_before = $1, attempts = attempts + $2, error = $3 \
                 WHERE id = $4",
            )
            .bind(*at)
            .bind(i64::from(*counts))
            .bind(why)
            .bind(id)
            .execute(conn)
            .await?;
            Ok(())
        }
        SendEnd::Sent { .. } => Ok(()),
        SendEnd::Expired => {
            unsent(conn, &row, "expired", "its time has passed", now).await?;
            digest_missed(conn, id, now).await
        }
        SendEnd::Failed { why } => unsent(conn, &row, "failed", why, now).await,
        SendEnd::Unreachable { why } => {
            unsent(conn, &row, "unreachable", why, now).await?;
            let Some(chat) = chat else { return Ok(()) };
            // A private chat has the id of its person; a group's is nobody's.
            let member: Option<MemberId> =
                sqlx::query_scalar("SELECT id FROM members WHERE user_id = $1")
                    .bind(chat)
                    .fetch_optional(&mut *conn)
                    .await?;
            match member {
                Some(member) => set_reachable(conn, member, false, now).await,
                None => Ok(()),
            }
        }
        SendEnd::Moved { to } => match chat {
            Some(old) => move_chat(conn, old, *to, now).await,
            None => Ok(()),
        },
    }
}

/// What holds a member's data, or was typed in passing, is not kept once it was sent.
async fn leave_nothing(conn: &mut SqliteConnection, id: i64) -> Result<()> {
    sqlx::query(
        "DELETE FROM outgoing WHERE id = $1 AND outcome = 'sent' \
         AND (payload LIKE '{\"document\":%' OR payload LIKE '{\"answer_inline\":%')",
    )
    .bind(id)
    .execute(conn)
    .await?;
    Ok(())
}

/// A message that will not be sent; the jobs that a reminder meant to name were not named.
async fn unsent(
    conn: &mut SqliteConnection,
    row: &SqliteRow,
    outcome: &'static str,
    why: &str,
    now: DateTime<Utc>,
) -> Result<()> {
    take_back_naming(conn, row).await?;
    end(conn, row.try_get("id")?, outcome, Some(why), now).await
}

//! The queue of outgoing messages: what waits, and in which order it goes.

use std::collections::HashSet;

use chrono::{DateTime, Utc};
use sqlx::{Row, SqliteConnection};

use super::rows::{self, priority_number, to_json};
use super::{Queued, Result, Store, StoreError};
use crate::club::MemberId;
use crate::messages::{Outgoing, Priority};

/// Puts a message at the end of the queue.
pub(super) async fn queue(
    conn: &mut SqliteConnection,
    outgoing: &Outgoing,
    priority: Priority,
    member: Option<MemberId>,
    now: DateTime<Utc>,
    expires: Option<DateTime<Utc>>,
) -> Result<i64> {
    Ok(sqlx::query_scalar(
        "INSERT INTO outgoing (chat, priority, payload, member_id, created_at, not_before, \
         expires_at, attempts) VALUES ($1, $2, $3, $4, $5, $5, $6, 0) RETURNING id",
    )
    .bind(outgoing.chat())
    .bind(priority_number(priority))
    .bind(to_json(outgoing)?)
    .bind(member)
    .bind(now)
    .bind(expires)
    .fetch_one(conn)
    .await?)
}

/// Ends a waiting row.
pub(super) async fn end(
    conn: &mut SqliteConnection,
    id: i64,
    outcome: &'static str,
    why: Option<&str>,
    now: DateTime<Utc>,
) -> Result<()> {
    sqlx::query(
        "UPDATE outgoing SET outcome = $1, error = $2, ended_at = $3 \
         WHERE id = $4 AND outcome IS NULL",
    )
    .bind(outcome)
    .bind(why)
    .bind(now)
    .bind(id)
    .execute(conn)
    .await?;
    Ok(())
}

impl Store {
    /// What may be sent now: of each chat that is not in `except_chats` the one message that is
    /// first, and all answers to presses; by priority, then in the order of queueing, `limit` at
    /// most.
    ///
    /// Messages of one chat and priority keep their order, so one that must wait holds back those
    /// behind it; it does not hold back those of another priority. One whose time has passed is
    /// not given ([`Store::expire`] ends it). One that cannot be read is ended as failed and
    /// logged, since it would otherwise stop the queue for ever.
    ///
    /// # Errors
    /// [`StoreError::Database`].
    pub async fn waiting(
        &self,
        now: DateTime<Utc>,
        except_chats: &[i64],
        limit: usize,
    ) -> Result<Vec<Queued>> {
        let mut taken: HashSet<i64> = except_chats.iter().copied().collect();
        let mut found = Vec::new();
        let page = limit.saturating_mul(2).clamp(32, 1000);
        let (mut priority, mut id) = (-1_i64, 0_i64);
        while found.len() < limit {
            // The first of each chat and priority, and every message without a chat.
            let rows = sqlx::query(
                "SELECT * FROM outgoing o WHERE o.outcome IS NULL AND o.not_before <= $1 \
                 AND (o.expires_at IS NULL OR o.expires_at > $1) \
                 AND (o.priority, o.id) > ($2, $3) \
                 AND (o.chat IS NULL OR NOT EXISTS (SELECT 1 FROM outgoing e \
                   WHERE e.chat = o.chat AND e.priority = o.priority AND e.id < o.id \
                   AND e.outcome IS NULL AND (e.expires_at IS NULL OR e.expires_at > $1))) \
                 ORDER BY o.priority, o.id LIMIT $4",
            )
            .bind(now)
            .bind(priority)
            .bind(id)
            .bind(i64::try_from(page).unwrap_or(i64::MAX))
            .fetch_all(&self.reader)
            .await?;
            for row in &rows {
                (priority, id) = (row.try_get("priority")?, row.try_get("id")?);
                let chat: Option<i64> = row.try_get("chat")?;
                if found.len() == limit || chat.is_some_and(|chat| taken.contains(&chat)) {
                    continue;
                }
                match rows::queued(row) {
                    Ok(queued) => {
                        taken.extend(chat);
                        found.push(queued);
                    }
                    Err(StoreError::Corrupt(why)) => self.give_up(id, &why, now).await?,
                    Err(error) => return Err(error),
                }
            }
            if rows.len() < page {
                break;
            }
        }
        Ok(found)
    }

    async fn give_up(&self, id: i64, why: &str, now: DateTime<Utc>) -> Result<()> {
        tracing::error!(row = id, why, "a waiting message cannot be read and is not sent");
        end(&mut *self.writer.acquire().await?, id, "failed", Some(why), now).await
    }

    /// When, after `now`, a message that must wait may be sent; `None` where none waits for its
    /// time.
    ///
    /// # Errors
    /// [`StoreError::Database`].
    pub async fn next_wake(&self, now: DateTime<Utc>) -> Result<Option<DateTime<Utc>>> {
        Ok(sqlx::query_scalar(
            "SELECT MIN(not_before) FROM outgoing WHERE outcome IS NULL AND not_before > $1",
        )
        .bind(now)
        .fetch_one(&self.reader)
        .await?)
    }
}

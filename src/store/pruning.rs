//! Forgetting what is no longer needed, and counting what is there.

use chrono::{DateTime, TimeDelta, Utc};
use sqlx::Row;

use super::{Result, Store};

/// Rows deleted at once, so that no other writer waits long.
const AT_ONCE: i64 = 1000;

/// How many times at most one table is gone through in one pruning.
const ROUNDS: usize = 100;

/// How long an update is known as seen. The platform keeps updates for a day.
const SEEN: TimeDelta = TimeDelta::days(14);

/// How long an ended message is kept.
const ENDED: TimeDelta = TimeDelta::days(7);

/// How long a question of a group can be read on in private.
const ASKED: TimeDelta = TimeDelta::days(7);

/// How much is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Counts {
    /// People who were ever seen.
    pub members: i64,
    /// Clubs whose group the bot is in.
    pub clubs: i64,
    /// Messages that wait to be sent.
    pub waiting: i64,
}

impl Store {
    /// Ends messages whose time has passed and forgets updates seen over 14 days ago, messages
    /// that ended over 7 days ago, a group's questions over 7 days old and questions whose time
    /// is over; gives how many rows were deleted. An ended message to somebody about whom nothing
    /// is kept goes at once, and so do an exported file and an inline answer.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn prune(&self, now: DateTime<Utc>) -> Result<u64> {
        self.expire(now).await?;
        let old = [
            (
                "DELETE FROM seen_updates WHERE (bot, update_id) IN \
                 (SELECT bot, update_id FROM seen_updates WHERE seen_at < $1 LIMIT $2)",
                now - SEEN,
            ),
            (
                "DELETE FROM outgoing WHERE id IN (SELECT id FROM outgoing \
                 WHERE outcome IS NOT NULL AND ended_at < $1 LIMIT $2)",
                now - ENDED,
            ),
            (
                "DELETE FROM outgoing WHERE id IN (SELECT id FROM outgoing \
                 WHERE outcome IS NOT NULL AND ended_at <= $1 \
                 AND (payload LIKE '{\"document\":%' OR payload LIKE '{\"answer_inline\":%' \
                   OR (member_id IS NULL AND chat > 0 \
                     AND chat NOT IN (SELECT user_id FROM members))) LIMIT $2)",
                now,
            ),
            (
                "DELETE FROM group_questions WHERE (chat, message) IN \
                 (SELECT chat, message FROM group_questions WHERE asked_at < $1 LIMIT $2)",
                now - ASKED,
            ),
            (
                "DELETE FROM expectations WHERE (chat, member_id) IN \
                 (SELECT chat, member_id FROM expectations WHERE expires_at <= $1 LIMIT $2)",
                now,
            ),
            (
                "DELETE FROM subjects WHERE (chat, thread, member_id) IN (SELECT chat, thread, \
                 member_id FROM subjects WHERE expires_at <= $1 LIMIT $2)",
                now,
            ),
        ];
        let mut deleted = 0;
        for (statement, before) in old {
            for _ in 0..ROUNDS {
                let rows = sqlx::query(statement)
                    .bind(before)
                    .bind(AT_ONCE)
                    .execute(&self.writer)
                    .await?
                    .rows_affected();
                deleted += rows;
                if rows < AT_ONCE.unsigned_abs() {
                    break;
                }
            }
        }
        Ok(deleted)
    }

    /// How much is kept, for the keeper's log.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn counts(&self) -> Result<Counts> {
        let row = sqlx::query(
            "SELECT (SELECT COUNT(*) FROM members) AS members, \
             (SELECT COUNT(*) FROM clubs WHERE closed_at IS NULL) AS clubs, \
             (SELECT COUNT(*) FROM outgoing WHERE outcome IS NULL) AS waiting",
        )
        .fetch_one(&self.reader)
        .await?;
        Ok(Counts {
            members: row.try_get("members")?,
            clubs: row.try_get("clubs")?,
            waiting: row.try_get("waiting")?,
        })
    }
}

//! Reminders that the sender has taken up, so that nobody may take them back any more.
//!
//! A member may press a button of a reminder before it is noted as sent: the messages that go out
//! together are noted together. A change that then took it back as unsent would lead to a second
//! reminder of the same morning. Which reminders are under way concerns the running program only,
//! so it stands in a temporary table of the connection that writes, within its transactions.

use chrono::{DateTime, Utc};
use sqlx::SqliteConnection;

use super::digests::digest_came_back;
use super::schedule::{Touches, changed};
use super::{Queued, Result, Store};
use crate::club::MemberId;
use crate::messages::Priority;

/// Makes the table; for every new connection that writes.
pub(super) async fn prepare(conn: &mut SqliteConnection) -> std::result::Result<(), sqlx::Error> {
    // `untrue` is set when a change made the reminder untrue while it was under way.
    let make = "CREATE TEMP TABLE IF NOT EXISTS under_way \
                (id INTEGER PRIMARY KEY, untrue INTEGER NOT NULL) STRICT";
    sqlx::query(make).execute(conn).await?;
    Ok(())
}

impl Store {
    /// As [`Store::waiting`], for the sender: until such a message is settled, a change does not
    /// take it back any more.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn take_up(
        &self,
        now: DateTime<Utc>,
        except_chats: &[i64],
        limit: usize,
    ) -> Result<Vec<Queued>> {
        let found = self.waiting(now, except_chats, limit).await?;
        // Nothing but reminders is ever taken back.
        if found.iter().all(|queued| queued.priority != Priority::Reminder) {
            return Ok(found);
        }
        let mut work = self.begin().await?;
        let mut taken_up = Vec::with_capacity(found.len());
        for queued in found {
            let is_up = queued.priority != Priority::Reminder
                || take_up(&mut work.transaction, queued.id).await?;
            if is_up {
                taken_up.push(queued);
            }
        }
        work.commit().await?;
        Ok(taken_up)
    }
}

/// Marks a message as under way; false where it was taken back since it was looked up.
async fn take_up(conn: &mut SqliteConnection, id: i64) -> Result<bool> {
    let waits: Option<i64> =
        sqlx::query_scalar("SELECT id FROM outgoing WHERE id = $1 AND outcome IS NULL")
            .bind(id)
            .fetch_optional(&mut *conn)
            .await?;
    if waits.is_none() {
        return Ok(false);
    }
    sqlx::query("INSERT INTO under_way (id, untrue) VALUES ($1, 0) ON CONFLICT (id) DO NOTHING")
        .bind(id)
        .execute(conn)
        .await?;
    Ok(true)
}

/// Notes that a change made the member's reminders untrue that are under way.
pub(super) async fn made_untrue(conn: &mut SqliteConnection, member: MemberId) -> Result<()> {
    sqlx::query(
        "UPDATE under_way SET untrue = 1 \
         WHERE id IN (SELECT id FROM outgoing WHERE member_id = $1 AND outcome IS NULL)",
    )
    .bind(member)
    .execute(conn)
    .await?;
    Ok(())
}

/// The message is no longer under way. One that must be tried again, and was made untrue
/// meanwhile, is taken back now.
pub(super) async fn came_back(
    conn: &mut SqliteConnection,
    id: i64,
    now: DateTime<Utc>,
) -> Result<()> {
    let untrue: Option<bool> =
        sqlx::query_scalar("DELETE FROM under_way WHERE id = $1 RETURNING untrue <> 0")
            .bind(id)
            .fetch_optional(&mut *conn)
            .await?;
    if untrue != Some(true) {
        return Ok(());
    }
    let member: Option<MemberId> = sqlx::query_scalar(
        "SELECT member_id FROM outgoing WHERE id = $1 AND outcome IS NULL AND kind IS NOT NULL",
    )
    .bind(id)
    .fetch_optional(&mut *conn)
    .await?
    .flatten();
    match member {
        Some(member) => changed(conn, member, Touches::Contents, now).await,
        None => digest_came_back(conn, id, now).await,
    }
}

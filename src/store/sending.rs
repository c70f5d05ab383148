//! Reminders that the sender has taken up, so that nobody may take them back any more.
//!
//! A member may press a button of a reminder before it is noted as sent: the messages that go out
//! together are noted together. A change that then took it back as unsent would lead to a second
//! reminder of the same morning. Which reminders are under way concerns the running program only,
//! so it stands in a temporary table of the connection that writes, within its transactions. That
//! a change made one untrue meanwhile is kept with the message: after a crash the message would
//! be taken for one that waits.

use chrono::{DateTime, Utc};
use sqlx::SqliteConnection;

use super::digests::digest_untrue;
use super::queue::end;
use super::schedule::{Touches, changed};
use super::{Queued, Result, Store};
use crate::club::MemberId;
use crate::messages::Priority;

/// Makes the table; for every new connection that writes.
pub(super) async fn prepare(conn: &mut SqliteConnection) -> std::result::Result<(), sqlx::Error> {
    let make = "CREATE TEMP TABLE IF NOT EXISTS under_way (id INTEGER PRIMARY KEY) STRICT";
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
                || take_up(&mut work.transaction, queued.id, now).await?;
            if is_up {
                taken_up.push(queued);
            }
        }
        work.commit().await?;
        Ok(taken_up)
    }
}

/// Marks a message as under way; false where it was taken back since it was looked up, or is now,
/// because a change had made it untrue when the program was last ended.
async fn take_up(conn: &mut SqliteConnection, id: i64, now: DateTime<Utc>) -> Result<bool> {
    match is_untrue(conn, id).await? {
        None => return Ok(false),
        Some(true) => {
            take_back(conn, id, now).await?;
            return Ok(false);
        }
        Some(false) => {}
    }
    sqlx::query("INSERT INTO under_way (id) VALUES ($1) ON CONFLICT (id) DO NOTHING")
        .bind(id)
        .execute(conn)
        .await?;
    Ok(true)
}

/// Whether a change made the waiting message untrue; `None` where it waits no more.
async fn is_untrue(conn: &mut SqliteConnection, id: i64) -> Result<Option<bool>> {
    Ok(sqlx::query_scalar("SELECT untrue <> 0 FROM outgoing WHERE id = $1 AND outcome IS NULL")
        .bind(id)
        .fetch_optional(conn)
        .await?)
}

/// Notes that a change made the member's reminders untrue that are under way.
pub(super) async fn made_untrue(conn: &mut SqliteConnection, member: MemberId) -> Result<()> {
    sqlx::query(
        "UPDATE outgoing SET untrue = 1 WHERE member_id = $1 AND outcome IS NULL \
         AND id IN (SELECT id FROM under_way)",
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
    let was_up = sqlx::query("DELETE FROM under_way WHERE id = $1")
        .bind(id)
        .execute(&mut *conn)
        .await?
        .rows_affected()
        > 0;
    if was_up && is_untrue(conn, id).await? == Some(true) {
        take_back(conn, id, now).await?;
    }
    Ok(())
}

/// Takes an untrue message back: the member's morning, or the club's digest, is made anew.
async fn take_back(conn: &mut SqliteConnection, id: i64, now: DateTime<Utc>) -> Result<()> {
    let member: Option<MemberId> = sqlx::query_scalar(
        "SELECT member_id FROM outgoing WHERE id = $1 AND outcome IS NULL AND kind IS NOT NULL",
    )
    .bind(id)
    .fetch_optional(&mut *conn)
    .await?
    .flatten();
    match member {
        Some(member) => changed(conn, member, Touches::Contents, now).await?,
        None => digest_untrue(conn, id, now).await?,
    }
    // The digest of a club that the bot was taken out of is made for nobody, and waits no more.
    end(conn, id, "cancelled", Some("a change made it untrue"), now).await
}

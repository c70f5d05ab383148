//! One writing transaction.

use chrono::{DateTime, Utc};
use sqlx::SqliteConnection;

use super::{MemberDue, Morning, Result, Work, changes, facts, made_mornings, mornings, queue};
use crate::chat::{Change, Facts};
use crate::club::MemberId;
use crate::messages::{Incoming, Outgoing, Priority, UpdateKey};

impl Work {
    fn connection(&mut self) -> &mut SqliteConnection {
        &mut self.transaction
    }

    /// Keeps everything; when this returns it survives a power cut.
    ///
    /// # Errors
    /// [`super::StoreError::Database`], and nothing is kept.
    pub async fn commit(self) -> Result<()> {
        Ok(self.transaction.commit().await?)
    }

    /// Keeps nothing.
    ///
    /// # Errors
    /// [`super::StoreError::Database`]; nothing is kept then either.
    pub async fn rollback(self) -> Result<()> {
        Ok(self.transaction.rollback().await?)
    }

    /// Marks a place to which [`Work::rollback_to_savepoint`] goes back. There is one level: end
    /// it with either of the two before the next.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn savepoint(&mut self) -> Result<()> {
        sqlx::query("SAVEPOINT one_update").execute(self.connection()).await?;
        Ok(())
    }

    /// Takes what happened since [`Work::savepoint`] as part of the whole.
    ///
    /// # Errors
    /// [`super::StoreError::Database`], also where there is no savepoint.
    pub async fn release(&mut self) -> Result<()> {
        sqlx::query("RELEASE SAVEPOINT one_update").execute(self.connection()).await?;
        Ok(())
    }

    /// Undoes what happened since [`Work::savepoint`] and nothing before it.
    ///
    /// # Errors
    /// [`super::StoreError::Database`], also where there is no savepoint.
    pub async fn rollback_to_savepoint(&mut self) -> Result<()> {
        sqlx::query("ROLLBACK TO SAVEPOINT one_update").execute(self.connection()).await?;
        self.release().await
    }

    /// Whether the update was marked as seen before.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn already_seen(&mut self, key: UpdateKey) -> Result<bool> {
        let found: Option<i64> = sqlx::query_scalar(
            "SELECT update_id FROM seen_updates WHERE bot = $1 AND update_id = $2",
        )
        .bind(key.bot)
        .bind(key.update)
        .fetch_optional(self.connection())
        .await?;
        Ok(found.is_some())
    }

    /// Marks the update as seen; marking it twice changes nothing.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn mark_seen(&mut self, key: UpdateKey, now: DateTime<Utc>) -> Result<()> {
        sqlx::query(
            "INSERT INTO seen_updates (bot, update_id, seen_at) VALUES ($1, $2, $3) \
             ON CONFLICT (bot, update_id) DO NOTHING",
        )
        .bind(key.bot)
        .bind(key.update)
        .bind(now)
        .execute(self.connection())
        .await?;
        Ok(())
    }

    /// Everything a decision about `incoming` may depend on. A person who was never seen becomes
    /// a member, and a changed name is kept; whether somebody is worth a row is the caller's to
    /// say by calling this.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn facts(
        &mut self,
        incoming: &Incoming,
        join_token: Option<&str>,
        now: DateTime<Utc>,
    ) -> Result<Facts> {
        facts::facts(self.connection(), incoming, join_token, now).await
    }

    /// Keeps one change. In a group "the club" is the open club of that group, so a change that
    /// follows [`Change::OpenClub`] finds the new club; in private it is the club of the facts.
    /// A change of a club where there is none is passed over.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn apply(
        &mut self,
        facts: &Facts,
        incoming: &Incoming,
        change: &Change,
        now: DateTime<Utc>,
    ) -> Result<()> {
        changes::apply(self.connection(), facts, incoming, change, now).await
    }

    /// Puts a message into the queue and gives its row's number. `member` is whose reachability a
    /// failure tells about; a message that was not sent by `expires` is not sent any more.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn queue(
        &mut self,
        outgoing: &Outgoing,
        priority: Priority,
        member: Option<MemberId>,
        now: DateTime<Utc>,
        expires: Option<DateTime<Utc>>,
    ) -> Result<i64> {
        queue::queue(self.connection(), outgoing, priority, member, now, expires).await
    }

    /// As [`super::Store::members_due`], within this transaction. Together with
    /// [`Work::keep_mornings`] in the same one, no change of a member can come in between.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn members_due(
        &mut self,
        now: DateTime<Utc>,
        limit: usize,
    ) -> Result<Vec<MemberDue>> {
        let (due, unreadable) = mornings::due(self.connection(), now, limit).await?;
        mornings::set_aside(self.connection(), &unreadable, now).await?;
        Ok(due)
    }

    /// As [`super::Store::keep_mornings`], within this transaction.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn keep_mornings(&mut self, mornings: &[Morning], now: DateTime<Utc>) -> Result<()> {
        made_mornings::keep(self.connection(), mornings, now).await
    }
}

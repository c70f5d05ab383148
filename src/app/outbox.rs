//! The store's queue, as the sender sees it.

use chrono::{DateTime, Utc};

use super::sender::Outbox;
use crate::store::{Queued, SendEnd, Store, StoreError};

impl Outbox for Store {
    async fn waiting(
        &self,
        now: DateTime<Utc>,
        except_chats: &[i64],
        limit: usize,
    ) -> Result<Vec<Queued>, StoreError> {
        self.take_up(now, except_chats, limit).await
    }

    async fn settle_many(
        &self,
        ends: &[(i64, SendEnd)],
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        Self::settle_many(self, ends, now).await
    }

    async fn next_wake(&self, now: DateTime<Utc>) -> Result<Option<DateTime<Utc>>, StoreError> {
        Self::next_wake(self, now).await
    }
}

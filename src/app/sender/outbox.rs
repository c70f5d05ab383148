//! What the sender needs of the queue.

use std::future::Future;

use chrono::{DateTime, Utc};

use crate::store::{Queued, SendEnd, StoreError};

/// The queue, as the sender sees it.
pub trait Outbox {
    /// Messages that may be sent now, at most one of each chat and `limit` in all, the most
    /// urgent first; none to `except_chats`. Messages of one chat and priority keep their order:
    /// one that must wait holds back those behind it.
    fn waiting(
        &self,
        now: DateTime<Utc>,
        except_chats: &[i64],
        limit: usize,
    ) -> impl Future<Output = Result<Vec<Queued>, StoreError>> + Send;

    /// Notes how tries ended, by the number of the row: all of them or, with an error, none.
    fn settle_many(
        &self,
        ends: &[(i64, SendEnd)],
        now: DateTime<Utc>,
    ) -> impl Future<Output = Result<(), StoreError>> + Send;

    /// When the next message that must still wait for its time may be sent, if there is one.
    /// What may be sent already does not matter here.
    fn next_wake(
        &self,
        now: DateTime<Utc>,
    ) -> impl Future<Output = Result<Option<DateTime<Utc>>, StoreError>> + Send;
}

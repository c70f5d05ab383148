//! Where *now* comes from: read once, at the edge.

use std::sync::Arc;
use std::time::Instant;

use chrono::{DateTime, TimeDelta, Utc};
use tokio::sync::Notify;

/// Gives the present moment; cheap to clone.
#[derive(Clone)]
pub struct Clock {
    read: Arc<dyn Fn() -> DateTime<Utc> + Send + Sync>,
    was_set: Arc<Notify>,
}

impl std::fmt::Debug for Clock {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_tuple("Clock").finish_non_exhaustive()
    }
}

impl Clock {
    /// The machine's clock.
    #[must_use]
    pub fn system() -> Self {
        Self::reading(Utc::now)
    }

    /// A clock that shows `start` now and goes on from there at the machine's pace, to rehearse
    /// another day.
    #[must_use]
    pub fn starting_at(start: DateTime<Utc>) -> Self {
        let began = Instant::now();
        Self::reading(move || {
            start + TimeDelta::from_std(began.elapsed()).unwrap_or(TimeDelta::zero())
        })
    }

    /// A clock that somebody else sets, and who then says so by [`Clock::was_set`].
    #[must_use]
    pub fn reading(now: impl Fn() -> DateTime<Utc> + Send + Sync + 'static) -> Self {
        Self { read: Arc::new(now), was_set: Arc::default() }
    }

    /// The present moment.
    #[must_use]
    pub fn now(&self) -> DateTime<Utc> {
        (self.read)()
    }

    /// Tells the running bot that the clock was set. Without it the bot notices within half a
    /// minute, when it looks at the clock by itself.
    pub fn was_set(&self) {
        self.was_set.notify_one();
    }

    /// Waits until somebody says that the clock was set; one call of [`Clock::was_set`] ends one
    /// wait, be it called before or during it.
    pub async fn until_set(&self) {
        self.was_set.notified().await;
    }
}

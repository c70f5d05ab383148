//! Where *now* comes from: read once, at the edge.

use std::sync::Arc;
use std::time::Instant;

use chrono::{DateTime, TimeDelta, Utc};

/// Gives the present moment; cheap to clone.
#[derive(Clone)]
pub struct Clock(Arc<dyn Fn() -> DateTime<Utc> + Send + Sync>);

impl std::fmt::Debug for Clock {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_tuple("Clock").finish_non_exhaustive()
    }
}

impl Clock {
    /// The machine's clock.
    #[must_use]
    pub fn system() -> Self {
        Self(Arc::new(Utc::now))
    }

    /// A clock that shows `start` now and goes on from there at the machine's pace, to rehearse
    /// another day.
    #[must_use]
    pub fn starting_at(start: DateTime<Utc>) -> Self {
        let began = Instant::now();
        Self(Arc::new(move || {
            start + TimeDelta::from_std(began.elapsed()).unwrap_or(TimeDelta::zero())
        }))
    }

    /// A clock that somebody else sets.
    #[must_use]
    pub fn reading(now: impl Fn() -> DateTime<Utc> + Send + Sync + 'static) -> Self {
        Self(Arc::new(now))
    }

    /// The present moment.
    #[must_use]
    pub fn now(&self) -> DateTime<Utc> {
        (self.0)()
    }
}

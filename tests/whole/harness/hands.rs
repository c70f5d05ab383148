//! The hands of the clock that the bot reads.

use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Instant;

use chrono::{DateTime, TimeDelta, Utc};
use sowbell::app::Clock;

/// A clock that a test sets, and that goes on from there at the machine's pace, so that waits of
/// a second or two pass by themselves.
#[derive(Clone)]
pub struct Hands {
    set: Arc<Mutex<(DateTime<Utc>, Instant)>>,
    clock: Clock,
}

impl Hands {
    /// A clock that shows this instant now.
    pub fn at(now: DateTime<Utc>) -> Self {
        let set = Arc::new(Mutex::new((now, Instant::now())));
        let for_clock = Arc::clone(&set);
        Self { set, clock: Clock::reading(move || shown(&locked(&for_clock))) }
    }

    /// The clock, for the bot.
    pub fn clock(&self) -> Clock {
        self.clock.clone()
    }

    /// What the clock shows.
    pub fn now(&self) -> DateTime<Utc> {
        shown(&locked(&self.set))
    }

    /// Sets the clock, and tells the bot.
    pub fn set(&self, to: DateTime<Utc>) {
        *locked(&self.set) = (to, Instant::now());
        self.clock.was_set();
    }

    /// Puts the clock forward.
    pub fn advance(&self, by: TimeDelta) {
        self.set(self.now() + by);
    }
}

fn locked(set: &Mutex<(DateTime<Utc>, Instant)>) -> MutexGuard<'_, (DateTime<Utc>, Instant)> {
    set.lock().unwrap_or_else(PoisonError::into_inner)
}

fn shown((set, at): &(DateTime<Utc>, Instant)) -> DateTime<Utc> {
    *set + TimeDelta::from_std(at.elapsed()).expect("a test is shorter than an age")
}

//! The platform's limits on how fast a bot may send.

use std::collections::{BTreeMap, VecDeque};
use std::time::{Duration, Instant};

use super::FakePlatform;
use super::faults::whole_seconds;

/// How much counts as too fast. Only new messages count (`send...`), as far as
/// the platform says; a group is any chat with a negative id.
#[derive(Clone, Copy, Debug)]
pub struct Rates {
    pub overall: usize,
    pub overall_within: Duration,
    pub per_group: usize,
    pub per_group_within: Duration,
}

/// The published figures: 30 a second in all, 20 a minute in a group.
impl Default for Rates {
    fn default() -> Self {
        Self {
            overall: 30,
            overall_within: Duration::from_secs(1),
            per_group: 20,
            per_group_within: Duration::from_mins(1),
        }
    }
}

/// Requests bunch up a little on their way; a sender is not blamed for that.
const JITTER: Duration = Duration::from_millis(50);

/// The recent messages, to count against the limits.
#[derive(Default)]
pub(crate) struct Recent {
    rates: Option<Rates>,
    sent: BTreeMap<Option<i64>, VecDeque<Instant>>,
}

impl Recent {
    /// Counts a message, or says how many seconds to wait because it would
    /// break a limit. A refused message does not count.
    pub(crate) fn admit(&mut self, chat: i64, at: Instant) -> Result<(), u32> {
        let Some(rates) = self.rates else {
            return Ok(());
        };
        let mut limits = vec![(None, rates.overall, rates.overall_within)];
        if chat < 0 {
            limits.push((Some(chat), rates.per_group, rates.per_group_within));
        }
        for &(scope, most, within) in &limits {
            let within = within.saturating_sub(JITTER);
            let sent = self.sent.entry(scope).or_default();
            while sent.front().is_some_and(|&first| first + within <= at) {
                sent.pop_front();
            }
            if sent.len() >= most {
                let free_again = sent.front().map_or(at, |&first| first + within);
                return Err(whole_seconds(free_again.duration_since(at)));
            }
        }
        for (scope, _, _) in limits {
            self.sent.entry(scope).or_default().push_back(at);
        }
        Ok(())
    }
}

impl FakePlatform {
    /// Holds the bot to the published limits, answering 429 above them.
    pub fn limit_rates(&self, limit: bool) {
        self.set_rates(limit.then(Rates::default));
    }

    /// Holds the bot to other limits, for tests that cannot wait a minute.
    pub fn set_rates(&self, rates: Option<Rates>) {
        self.change(|state| {
            state.recent = Recent { rates, sent: BTreeMap::new() };
        });
    }
}

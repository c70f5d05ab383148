//! How fast the bot may send: windows over the recent messages, with time as an argument.
//!
//! A window counts what was sent within its length and is full at a number. Unlike a bucket that
//! refills, it never lets a burst and the refill of the burst into the same second.

use std::collections::{BTreeMap, HashMap, VecDeque};

use chrono::{DateTime, TimeDelta, Utc};

/// For how many seconds' worth a chat may be written to at once, as when a question is answered
/// in two or three messages.
const CHAT_BURST: u32 = 3;

/// The numbers that the sender keeps to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SendLimits {
    /// Messages a second to all chats together.
    pub overall_per_second: u32,
    /// Messages a second to one chat, on average over three seconds.
    pub chat_per_second: u32,
    /// Messages a minute to one group.
    pub group_per_minute: u32,
}

impl SendLimits {
    /// The platform's own, from its FAQ for bots ("My bot is hitting limits, how do I avoid
    /// this?"): about 30 messages a second, one a second to a chat with short bursts above that,
    /// 20 a minute to a group.
    #[must_use]
    pub const fn platform() -> Self {
        Self { overall_per_second: 30, chat_per_second: 1, group_per_minute: 20 }
    }
}

/// What was sent lately, held against [`SendLimits`].
///
/// Groups are the chats with negative ids.
#[derive(Debug)]
pub struct Limits {
    keeps: SendLimits,
    overall: Window,
    chats: HashMap<i64, Vec<Window>>,
}

impl Limits {
    /// Nothing was sent yet.
    #[must_use]
    pub fn new(limits: SendLimits) -> Self {
        let overall = Window::new(limits.overall_per_second, TimeDelta::seconds(1));
        Self { keeps: limits, overall, chats: HashMap::new() }
    }

    /// Notes that something was sent at `at`, to a chat or (a press answer) to none.
    ///
    /// `at` is best the moment at which the platform answered: what reached it before that can
    /// then never fall into the same window as what is sent after the window has passed.
    pub fn sent(&mut self, chat: Option<i64>, at: DateTime<Utc>) {
        self.overall.note(at);
        let Some(chat) = chat else { return };
        let limits = self.keeps;
        let windows = self.chats.entry(chat).or_insert_with(|| {
            let burst = limits.chat_per_second.saturating_mul(CHAT_BURST);
            let mut windows = vec![Window::new(burst, TimeDelta::seconds(CHAT_BURST.into()))];
            if chat < 0 {
                windows.push(Window::new(limits.group_per_minute, TimeDelta::minutes(1)));
            }
            windows
        });
        for window in windows {
            window.note(at);
        }
    }

    /// How many messages may be sent now, to chats that are not full.
    #[must_use]
    pub fn room(&mut self, now: DateTime<Utc>) -> usize {
        self.overall.room(now)
    }

    /// When the next message may be sent to anybody; `now` when it may be at once.
    #[must_use]
    pub fn free_at(&mut self, now: DateTime<Utc>) -> DateTime<Utc> {
        self.overall.free_at(now)
    }

    /// The chats that may not be written to now, each with when it may be again.
    #[must_use]
    pub fn full_chats(&mut self, now: DateTime<Utc>) -> BTreeMap<i64, DateTime<Utc>> {
        let mut full = BTreeMap::new();
        self.chats.retain(|&chat, windows| {
            let free = windows.iter_mut().map(|window| window.free_at(now)).max();
            if let Some(free) = free.filter(|&free| free > now) {
                full.insert(chat, free);
            }
            windows.iter().any(|window| !window.sent.is_empty())
        });
        full
    }
}

/// At most so many within a length of time.
#[derive(Debug)]
struct Window {
    most: usize,
    within: TimeDelta,
    sent: VecDeque<DateTime<Utc>>,
}

impl Window {
    /// A limit of 0 is taken as 1, or nothing would ever be sent.
    fn new(most: u32, within: TimeDelta) -> Self {
        let most = usize::try_from(most.max(1)).unwrap_or(usize::MAX);
        Self { most, within, sent: VecDeque::new() }
    }

    fn note(&mut self, at: DateTime<Utc>) {
        // Answers may come in another order than they are noted in.
        let place = self.sent.partition_point(|&earlier| earlier <= at);
        self.sent.insert(place, at);
    }

    fn room(&mut self, now: DateTime<Utc>) -> usize {
        self.forget(now);
        self.most.saturating_sub(self.sent.len())
    }

    fn free_at(&mut self, now: DateTime<Utc>) -> DateTime<Utc> {
        self.forget(now);
        // The window has room again when so many of the earliest have left it that one more fits.
        let too_many = self.sent.len().checked_sub(self.most);
        let last_to_leave = too_many.and_then(|too_many| self.sent.get(too_many));
        last_to_leave.map_or(now, |&at| at + self.within)
    }

    fn forget(&mut self, now: DateTime<Utc>) {
        // After the machine's clock was set back, what lies ahead counts as sent just now.
        for at in &mut self.sent {
            *at = (*at).min(now);
        }
        while self.sent.front().is_some_and(|&first| first + self.within <= now) {
            self.sent.pop_front();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(seconds: f64) -> DateTime<Utc> {
        #[expect(clippy::cast_possible_truncation, reason = "small numbers of milliseconds")]
        let milliseconds = (seconds * 1000.0) as i64;
        DateTime::UNIX_EPOCH + TimeDelta::milliseconds(milliseconds)
    }

    /// Sends as fast as the limits let it for `seconds`, to these chats in turn; gives when each
    /// message was sent and to whom.
    fn as_fast_as_allowed(chats: &[i64], seconds: u32) -> Vec<(DateTime<Utc>, i64)> {
        let mut limits = Limits::new(SendLimits::platform());
        let mut sent = Vec::new();
        for tick in 0..seconds * 100 {
            let now = at(f64::from(tick) / 100.0);
            let full = limits.full_chats(now);
            let open: Vec<i64> =
                chats.iter().copied().filter(|chat| !full.contains_key(chat)).collect();
            for chat in open.into_iter().take(limits.room(now)) {
                limits.sent(Some(chat), now);
                sent.push((now, chat));
            }
        }
        sent
    }

    /// The most of these instants that any window of this length holds.
    fn most_within(sent: &[DateTime<Utc>], within: TimeDelta) -> usize {
        let held = |from: DateTime<Utc>| {
            sent.iter().filter(|&&at| at >= from && at < from + within).count()
        };
        sent.iter().map(|&from| held(from)).max().unwrap_or(0)
    }

    #[test]
    fn never_more_than_thirty_in_any_second_and_not_much_less() {
        let chats: Vec<i64> = (1..=500).collect();
        let sent: Vec<_> = as_fast_as_allowed(&chats, 10).into_iter().map(|(at, _)| at).collect();
        assert_eq!(most_within(&sent, TimeDelta::seconds(1)), 30);
        assert!(sent.len() >= 299, "{} messages in ten seconds", sent.len());
    }

    #[test]
    fn a_private_chat_gets_three_at_once_and_one_a_second_on_average() {
        let sent: Vec<_> = as_fast_as_allowed(&[7], 60).into_iter().map(|(at, _)| at).collect();
        assert_eq!(sent.iter().filter(|&&t| t == at(0.0)).count(), 1, "one a tick");
        assert_eq!(most_within(&sent, TimeDelta::seconds(1)), 3);
        assert_eq!(most_within(&sent, TimeDelta::seconds(3)), 3);
        assert_eq!(sent.len(), 60);
    }

    #[test]
    fn a_group_gets_no_more_than_twenty_in_any_minute() {
        let sent: Vec<_> = as_fast_as_allowed(&[-7], 180).into_iter().map(|(at, _)| at).collect();
        assert_eq!(most_within(&sent, TimeDelta::minutes(1)), 20);
        assert_eq!(sent.len(), 60);
    }

    #[test]
    fn press_answers_fill_only_the_overall_window() {
        let mut limits = Limits::new(SendLimits::platform());
        for _ in 0..30 {
            limits.sent(None, at(5.0));
        }
        assert_eq!(limits.room(at(5.9)), 0);
        assert_eq!(limits.free_at(at(5.9)), at(6.0));
        assert_eq!(limits.room(at(6.0)), 30);
        assert!(limits.full_chats(at(5.0)).is_empty());
    }

    #[test]
    fn a_full_chat_says_when_it_is_free_and_is_then_forgotten() {
        let mut limits = Limits::new(SendLimits::platform());
        for second in [0.0, 0.5, 1.0] {
            limits.sent(Some(7), at(second));
        }
        assert_eq!(limits.full_chats(at(1.0)), BTreeMap::from([(7, at(3.0))]));
        assert!(limits.full_chats(at(3.0)).is_empty());
        assert!(limits.full_chats(at(10.0)).is_empty());
        assert!(limits.chats.is_empty());
    }

    #[test]
    fn a_clock_set_back_does_not_silence_the_bot() {
        let mut limits = Limits::new(SendLimits::platform());
        for chat in 1..=30 {
            for _ in 0..3 {
                limits.sent(Some(chat), at(3600.0));
            }
        }
        assert_eq!(limits.free_at(at(0.0)), at(1.0));
        assert_eq!(limits.full_chats(at(0.0)).get(&7), Some(&at(3.0)));
        assert!(limits.full_chats(at(3.0)).is_empty());
    }

    #[test]
    fn answers_noted_out_of_order_are_held_in_order() {
        let mut limits =
            Limits::new(SendLimits { overall_per_second: 2, ..SendLimits::platform() });
        limits.sent(None, at(0.8));
        limits.sent(None, at(0.2));
        assert_eq!(limits.free_at(at(0.9)), at(1.2));
    }
}

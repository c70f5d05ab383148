//! The chat platform, within the test: it keeps updates until they are confirmed, and takes
//! messages, or limits, fails, stalls and drops the line, as the seed has it.

use std::collections::{BTreeMap, BTreeSet, VecDeque};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use chrono::{DateTime, TimeDelta, Utc};
use rand::rngs::StdRng;
use rand::{Rng, SeedableRng};
use sowbell::app::{Delivery, Platform};
use sowbell::messages::{Incoming, Outgoing, What};

/// What became of a message that was handed over, beside the answer.
#[derive(Debug, Clone, Copy, Default)]
pub struct Fate {
    /// The message's id, where it reached the chat.
    pub arrived: Option<i32>,
    /// Whether it arrived and the answer does not say so.
    pub lost: bool,
    /// How long the answer takes.
    pub takes: TimeDelta,
}

#[derive(Debug)]
struct State {
    now: DateTime<Utc>,
    chance: StdRng,
    faults: bool,
    offline_until: DateTime<Utc>,
    blocked: BTreeSet<i64>,
    /// The new ids of groups that became supergroups.
    moved: BTreeMap<i64, i64>,
    /// In which chat a message stands.
    places: BTreeMap<i32, i64>,
    limited: BTreeMap<i64, DateTime<Utc>>,
    /// The requests of the last minute, since the program started.
    lately: VecDeque<(DateTime<Utc>, Option<i64>)>,
    wrong: Option<String>,
    next_message: i32,
    next_update: i64,
    waiting: VecDeque<(i64, Incoming)>,
    fate: Fate,
}

#[derive(Debug)]
pub struct OurPlatform(Mutex<State>);

impl OurPlatform {
    pub fn new(seed: u64, now: DateTime<Utc>) -> Self {
        Self(Mutex::new(State {
            now,
            chance: StdRng::seed_from_u64(seed),
            faults: true,
            offline_until: now,
            blocked: BTreeSet::new(),
            moved: BTreeMap::new(),
            places: BTreeMap::new(),
            limited: BTreeMap::new(),
            lately: VecDeque::new(),
            wrong: None,
            next_message: 1,
            next_update: 1,
            waiting: VecDeque::new(),
            fate: Fate::default(),
        }))
    }

    fn state(&self) -> MutexGuard<'_, State> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    pub fn it_is(&self, now: DateTime<Utc>) {
        self.state().now = now;
    }

    /// From now on nothing goes wrong.
    pub fn behaves(&self) {
        let mut state = self.state();
        state.faults = false;
        state.offline_until = state.now;
    }

    pub fn goes_offline(&self, until: DateTime<Utc>) {
        let mut state = self.state();
        state.offline_until = state.offline_until.max(until);
    }

    pub fn is_offline(&self) -> bool {
        let state = self.state();
        state.offline_until > state.now
    }

    pub fn block(&self, user: i64, blocked: bool) {
        let mut state = self.state();
        if blocked {
            state.blocked.insert(user);
        } else {
            state.blocked.remove(&user);
        }
    }

    /// The group `old` is a supergroup with the id `new` from now on.
    pub fn moves(&self, old: i64, new: i64) {
        self.state().moved.insert(old, new);
    }

    /// A program that was started anew does not know what was sent before.
    pub fn started(&self) {
        let mut state = self.state();
        state.lately.clear();
        state.limited.clear();
    }

    /// Something for the bot.
    pub fn tells(&self, incoming: Incoming) {
        let mut state = self.state();
        if let What::Text { message, .. } = &incoming.what {
            state.places.insert(*message, incoming.chat.id);
        }
        let id = state.next_update;
        state.next_update += 1;
        state.waiting.push_back((id, incoming));
    }

    pub fn has_updates(&self) -> bool {
        !self.state().waiting.is_empty()
    }

    /// Updates from `offset` on; those before it are confirmed.
    pub fn poll(&self, offset: Option<i64>) -> Vec<(i64, Incoming)> {
        let mut state = self.state();
        let from = offset.unwrap_or(0);
        state.waiting.retain(|(id, _)| *id >= from);
        state.waiting.iter().take(100).cloned().collect()
    }

    /// What became of the last message that was handed over.
    pub fn fate(&self) -> Fate {
        self.state().fate
    }

    /// What the bot did that no bot may do.
    pub fn wrong(&self) -> Option<String> {
        self.state().wrong.take()
    }
}

impl Platform for OurPlatform {
    async fn deliver(&self, outgoing: &Outgoing) -> Delivery {
        self.state().takes(outgoing)
    }
}

impl State {
    fn takes(&mut self, outgoing: &Outgoing) -> Delivery {
        self.holds_to_limits(outgoing.chat());
        let takes = TimeDelta::milliseconds(self.chance.random_range(20..300));
        self.fate = Fate { takes, ..Fate::default() };
        if self.offline_until > self.now {
            return Delivery::Offline("connection refused".to_owned());
        }
        if let Some(new) = outgoing.chat().and_then(|chat| self.moved.get(&chat)) {
            return Delivery::Moved(*new);
        }
        self.is_of_its_chat(outgoing);
        if outgoing.chat().is_some_and(|chat| self.blocked.contains(&chat)) {
            return Delivery::Unreachable("Forbidden: bot was blocked by the user".to_owned());
        }
        let luck = if self.faults { self.chance.random_range(0..1000) } else { 1000 };
        match luck {
            0..10 => Delivery::Transient("502 Bad Gateway".to_owned()),
            10..20 => {
                self.arrives(outgoing, true);
                Delivery::Transient("the line was cut".to_owned())
            }
            20..30 => {
                self.fate.takes = TimeDelta::seconds(20);
                if self.chance.random_bool(0.5) {
                    self.arrives(outgoing, true);
                }
                Delivery::Transient("no answer in time".to_owned())
            }
            30..55 => {
                let longest = if self.chance.random_bool(0.5) { 30 } else { 1800 };
                let wait = self.chance.random_range(1..longest);
                if let Some(chat) = outgoing.chat() {
                    let until = self.now + TimeDelta::seconds(wait) + takes;
                    self.limited.insert(chat, until);
                }
                Delivery::Wait(Duration::from_secs(wait.unsigned_abs()))
            }
            _ => {
                self.arrives(outgoing, false);
                let new = matches!(outgoing, Outgoing::Say(_));
                Delivery::Sent { message: self.fate.arrived.filter(|_| new) }
            }
        }
    }

    fn arrives(&mut self, outgoing: &Outgoing, lost: bool) {
        self.fate.arrived = Some(self.next_message);
        if let Outgoing::Say(say) = outgoing {
            self.places.insert(self.next_message, say.chat);
        }
        self.fate.lost = lost;
        self.next_message += 1;
    }

    /// A message is answered and changed in the chat in which it stands.
    fn is_of_its_chat(&mut self, outgoing: &Outgoing) {
        let message = match outgoing {
            Outgoing::Say(say) => say.reply_to,
            Outgoing::Edit(edit) => Some(edit.message),
            _ => None,
        };
        let stands_in = message.and_then(|message| self.places.get(&message).copied());
        if stands_in.is_some() && stands_in != outgoing.chat() {
            let chat = outgoing.chat();
            let wrong = format!("{message:?} of {stands_in:?} is taken for one of {chat:?}");
            self.wrong = self.wrong.take().or(Some(wrong));
        }
    }

    /// The platform's limits, counted at the moment a request comes.
    fn holds_to_limits(&mut self, chat: Option<i64>) {
        let now = self.now;
        self.lately.push_back((now, chat));
        while self.lately.front().is_some_and(|(at, _)| *at <= now - TimeDelta::minutes(1)) {
            self.lately.pop_front();
        }
        let count = |within: TimeDelta, only: Option<i64>| {
            let recent = self.lately.iter().rev().take_while(|(at, _)| *at > now - within);
            recent.filter(|(_, chat)| only.is_none() || *chat == only).count()
        };
        let mut wrong = None;
        if count(TimeDelta::seconds(1), None) > 30 {
            wrong = Some("more than 30 requests in a second".to_owned());
        }
        if let Some(chat) = chat {
            if count(TimeDelta::seconds(3), Some(chat)) > 3 {
                wrong = Some(format!("more than 3 requests in 3 seconds to {chat}"));
            }
            if chat < 0 && count(TimeDelta::minutes(1), Some(chat)) > 20 {
                wrong = Some(format!("more than 20 requests in a minute to the group {chat}"));
            }
            if self.limited.get(&chat).is_some_and(|until| *until > now) {
                wrong = Some(format!("{chat} was written to before its wait was over"));
            }
        }
        self.wrong = self.wrong.take().or(wrong);
    }
}

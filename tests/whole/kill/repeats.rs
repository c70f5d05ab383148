//! Holds what the chats got against what they were owed: everything, in order, and what came
//! twice only where a kill or a lost answer explains it.

use std::collections::{BTreeMap, BTreeSet};
use std::time::Instant;

use crate::platform::{Call, FakePlatform, Message, State};

use super::club::Owed;

/// How many messages the program has under way at once. They are noted as sent together, so a
/// kill can repeat so many at most, each in another chat.
pub const MOST_UNDER_WAY: usize = 16;

/// What explains that something came twice.
#[derive(Debug, Default)]
pub struct World {
    /// The program's lives, by the instant of the first request in each: the platform may read a
    /// request of the life before a little after its end.
    lives: Vec<Instant>,
    /// When the requests came that were done but never answered.
    lost_answers: BTreeSet<Instant>,
}

impl World {
    /// `starts` is when the program was started each time.
    pub fn new(
        platform: &FakePlatform,
        starts: &[Instant],
        lost_answers: BTreeSet<Instant>,
    ) -> Self {
        let state = platform.read();
        let first_request = |start: &Instant| {
            let mut calls = state.calls().iter();
            calls.find(|call| call.method == "getMe" && call.at >= *start).map(|call| call.at)
        };
        let mut lives: Vec<Instant> = starts.iter().filter_map(first_request).collect();
        // One that ended before its first request is given the next one's.
        lives.dedup();
        Self { lives, lost_answers }
    }

    /// Counted from 1.
    fn life_at(&self, at: Instant) -> usize {
        self.lives.partition_point(|begin| *begin <= at)
    }
}

/// What came twice.
#[derive(Debug, Default)]
pub struct Repeats {
    /// By the life in which it came first: what came again in a later one.
    pub over_kills: BTreeMap<usize, usize>,
    /// What came again because the answer to the first had been lost or was late.
    pub over_lost_answers: usize,
}

impl Repeats {
    /// All of them.
    pub fn count(&self) -> usize {
        self.over_kills.values().sum::<usize>() + self.over_lost_answers
    }

    /// Holds what a chat got against what it was owed.
    ///
    /// # Errors
    /// With a sentence about what is missing, out of place, or repeated without a reason.
    pub fn of_chat(
        &mut self,
        platform: &FakePlatform,
        chat: i64,
        owed: &[Owed],
        world: &World,
    ) -> Result<(), String> {
        let state = platform.read();
        let got = state.sent_to(chat);
        let mut before: Option<&Message> = None;
        let mut left = owed.iter();
        let mut last: Option<&Owed> = None;
        for message in got {
            let next = left.clone().next();
            if next.is_some_and(|next| is(next, message)) {
                last = left.next();
            } else if let Some(before) =
                before.filter(|_| last.is_some_and(|last| is(last, message)))
            {
                self.note(&state, before, message, world)?;
            } else {
                return Err(format!(
                    "chat {chat}: got {:?} (answering {:?}) after {last:?}, where {next:?} was next",
                    first_text(message),
                    message.reply_to
                ));
            }
            before = Some(message);
        }
        match left.len() {
            0 => Ok(()),
            count => Err(format!("chat {chat}: {count} are missing, the first {:?}", left.next())),
        }
    }

    fn note(
        &mut self,
        state: &State,
        first: &Message,
        again: &Message,
        world: &World,
    ) -> Result<(), String> {
        let life = world.life_at(first.sent_at);
        if request_of(state, first).is_some_and(|at| world.lost_answers.contains(&at)) {
            self.over_lost_answers += 1;
            Ok(())
        } else if life < world.life_at(again.sent_at) {
            *self.over_kills.entry(life).or_default() += 1;
            Ok(())
        } else {
            Err(format!(
                "chat {}: {:?} came twice in one life, {:?} apart",
                first.chat,
                first_text(first),
                again.sent_at - first.sent_at
            ))
        }
    }
}

fn is(owed: &Owed, message: &Message) -> bool {
    owed.says.is_said_by(&first_text(message))
        && owed.reply_to.is_none_or(|owed| message.reply_to == Some(owed))
}

/// As it was sent; it may have been edited since.
fn first_text(message: &Message) -> String {
    message.versions.first().map_or(&message.text, |version| &version.text).clone()
}

/// When the request came that sent this.
fn request_of(state: &State, message: &Message) -> Option<Instant> {
    let mut calls = state.calls().iter().rev();
    let sent_it = |call: &&Call| {
        call.method == "sendMessage"
            && call.chat() == Some(message.chat)
            && call.at <= message.sent_at
    };
    calls.find(sent_it).map(|call| call.at)
}

//! What is to happen, in the order of virtual time.

use std::collections::BTreeMap;

use chrono::{DateTime, Utc};
use sowbell::messages::Incoming;

/// Something that happens at its time, whether or not the program runs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Event {
    /// A person joins their club.
    Comes(usize),
    /// A person does something.
    Acts(usize),
    /// A person changes what their reminder is about.
    ChangesMind(usize),
    /// A person presses a button under this message.
    Reacts(usize, i32),
    /// A person unblocks the bot and writes.
    Returns(usize),
    /// A person is in the group of this club again and writes there.
    Rejoins(usize, usize),
    /// A coordinator does something for the club.
    Coordinates(usize),
    /// Somebody changes the club's lists, or means to.
    KeepsLists(usize),
    /// The second administrator of a club is none any more.
    StepsDown(usize),
    /// The second administrator of a club means to change its settings.
    Meddles(usize),
    /// The club's group becomes a supergroup.
    Moves(usize),
    /// Something else that was settled on before.
    Tells(Box<Incoming>),
    /// What was done on a person's day is held against what was due.
    Audit(usize),
    /// The next kill is laid.
    Lays,
    /// The program is started again.
    Restarts,
    /// The platform is out of reach for a while.
    GoesOffline,
    /// What is old is cleared away.
    Prunes,
}

/// Events by their time; those of one moment in the order in which they were noted.
#[derive(Debug, Default)]
pub struct Agenda {
    events: BTreeMap<(DateTime<Utc>, u64), Event>,
    noted: u64,
}

impl Agenda {
    pub fn note(&mut self, at: DateTime<Utc>, event: Event) {
        self.noted += 1;
        self.events.insert((at, self.noted), event);
    }

    pub fn next_at(&self) -> Option<DateTime<Utc>> {
        self.events.first_key_value().map(|((at, _), _)| *at)
    }

    pub fn pop(&mut self) -> Option<Event> {
        self.events.pop_first().map(|(_, event)| event)
    }
}

//! The program as it runs: the app, the sender, what is under way, and when it wakes.

use std::collections::BTreeMap;
use std::sync::Arc;

use chrono::{DateTime, TimeDelta, Utc};
use sowbell::app::{App, Delivery, SendLimits, Sender};
use sowbell::chat::Knowledge;
use sowbell::store::{Queued, Store};

use super::checks::Once;
use super::platform::Fate;

/// A message that was handed over and not answered yet.
#[derive(Debug)]
pub struct Flight {
    pub row: Queued,
    pub once: Once,
    pub delivery: Delivery,
    pub fate: Fate,
    pub begun: DateTime<Utc>,
}

/// What the program does next by itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Turn {
    /// An answer comes for this row.
    Answer(i64),
    /// It polls.
    Poll,
    /// It looks for mornings.
    Tick,
    /// It looks for what to send.
    Send,
}

pub struct Process {
    pub app: App,
    pub sender: Sender,
    /// What the next poll confirms.
    pub offset: Option<i64>,
    pub poll_at: Option<DateTime<Utc>>,
    pub tick_at: Option<DateTime<Utc>>,
    pub send_at: Option<DateTime<Utc>>,
    pub flights: BTreeMap<i64, Flight>,
    /// What was answered and is not settled: its row, and whether it had arrived.
    pub landed: Vec<Flight>,
}

impl Process {
    /// Started on what is in the database.
    pub async fn start(url: &str, knowledge: &Arc<Knowledge>, now: DateTime<Utc>) -> Self {
        let store = Store::open(url).await.expect("the database opens");
        Self {
            app: App::new(store, Arc::clone(knowledge)),
            sender: Sender::new(SendLimits::platform()),
            offset: None,
            poll_at: Some(now + TimeDelta::milliseconds(200)),
            tick_at: Some(now + TimeDelta::milliseconds(100)),
            send_at: Some(now + TimeDelta::milliseconds(100)),
            flights: BTreeMap::new(),
            landed: Vec::new(),
        }
    }

    /// Its next turn and when that is.
    pub fn next(&self) -> Option<(DateTime<Utc>, Turn)> {
        let answers = self
            .flights
            .values()
            .map(|flight| (flight.begun + flight.fate.takes, Turn::Answer(flight.row.id)));
        let own =
            [(self.poll_at, Turn::Poll), (self.tick_at, Turn::Tick), (self.send_at, Turn::Send)];
        answers.chain(own.into_iter().filter_map(|(at, turn)| Some((at?, turn)))).min()
    }

    /// Lets the tick be no later than this.
    pub fn tick_by(&mut self, at: DateTime<Utc>) {
        self.tick_at = Some(self.tick_at.map_or(at, |earlier| earlier.min(at)));
    }
}

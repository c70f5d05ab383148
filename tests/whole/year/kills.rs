//! The program is killed and started again.

use chrono::TimeDelta;
use rand::Rng;

use super::agenda::Event;
use super::fuse::Fuse;
use super::process::{Flight, Process};
use super::running::MOST_UNDER_WAY;
use super::told::lists_of;
use super::world::World;

impl World {
    pub(super) async fn burns(&mut self, here: impl Fn(Fuse) -> bool) -> bool {
        match self.fuse.filter(|fuse| here(*fuse)) {
            Some(fuse) => {
                self.kill(fuse).await;
                true
            }
            None => false,
        }
    }

    /// Everything that is not in the database is gone.
    pub(super) async fn kill(&mut self, fuse: Fuse) {
        self.fuse = None;
        *self.by_fuse.entry(fuse.name()).or_default() += 1;
        let Process { app, flights, landed, sender, .. } = self.process.take().expect("it runs");
        drop(sender);
        let at_risk: Vec<Flight> = flights.into_values().chain(landed).collect();
        for flight in at_risk.iter().filter(|flight| flight.fate.arrived.is_some()) {
            self.checks.may_come_again(flight.once);
        }
        let most = MOST_UNDER_WAY + 1;
        assert!(at_risk.len() <= most, "{} messages were not noted", at_risk.len());
        app.store.close().await;
        let down = match self.kills.random_range(0..20) {
            0..14 => TimeDelta::seconds(self.kills.random_range(2..90)),
            14..18 => TimeDelta::minutes(self.kills.random_range(60..600)),
            _ => TimeDelta::hours(self.kills.random_range(20..80)),
        };
        self.agenda.note(self.now + down, Event::Restarts);
    }

    pub(super) async fn restart(&mut self) {
        self.platform.started();
        self.process = Some(Process::start(&self.url, &self.knowledge, self.now).await);
        self.trouble_until = self.trouble_until.max(self.now);
        if self.kills.random_bool(0.2) {
            self.compare().await;
        }
    }

    pub(super) async fn compare(&mut self) {
        self.comparisons += 1;
        let compared = self.replay.compare(&self.look).await;
        self.must(compared);
        let told = self.checks.told.holds(&lists_of(&self.look, None).await);
        self.must(told);
    }
}

//! What the program does at its turns, and what the platform makes of it.

use std::hash::Hash;

use chrono::{NaiveDate, TimeDelta};
use rand::Rng;
use sowbell::app::{Delivery, Landed, Platform, SenderStep};
use sowbell::messages::{Outgoing, Priority};
use sowbell::store::Queued;

use super::agenda::Event;
use super::checks::Once;
use super::fuse::{Fuse, tick_without_commit};
use super::letters::{Letter, jobs_named};
use super::people::person_of;
use super::process::{Flight, Process, Turn};
use super::world::World;

/// As many messages are under way at most, each to another chat.
pub(super) const MOST_UNDER_WAY: usize = 16;

impl World {
    pub(super) async fn turn(&mut self, turn: Turn) {
        match turn {
            Turn::Answer(row) => self.answer(row).await,
            Turn::Poll => self.poll().await,
            Turn::Tick => self.tick().await,
            Turn::Send => self.send().await,
        }
    }

    pub(super) fn running(&mut self) -> &mut Process {
        self.process.as_mut().expect("it runs")
    }

    pub(super) async fn tick(&mut self) {
        let now = self.now;
        let app = self.running().app.clone();
        if self.fuse == Some(Fuse::Ticking)
            && tick_without_commit(&app, now).await.expect("a tick") > 0
        {
            self.kill(Fuse::Ticking).await;
            return;
        }
        app.tick(now).await.expect("a tick");
        let next = app.store.next_morning().await.expect("a time");
        let hour = now + TimeDelta::hours(1);
        let process = self.running();
        process.tick_at =
            Some(next.map_or(hour, |next| next.clamp(now + TimeDelta::seconds(1), hour)));
        process.send_at = Some(now);
    }

    pub(super) async fn send(&mut self) {
        let now = self.now;
        self.running().send_at = None;
        loop {
            let process = self.process.as_mut().expect("it runs");
            let (rows, step) =
                process.sender.take(&process.app.store, now).await.expect("the queue works");
            let landed = std::mem::take(&mut process.landed);
            for flight in landed {
                self.settled(flight).await;
            }
            if rows.is_empty() {
                let process = self.running();
                process.send_at = match step {
                    SenderStep::At(at) => Some(at.max(now + TimeDelta::milliseconds(1))),
                    SenderStep::Again | SenderStep::Idle => None,
                };
                return;
            }
            for row in rows {
                self.hand_over(row).await;
                if let Some(Fuse::Sending(left)) = &mut self.fuse {
                    *left -= 1;
                    if *left == 0 {
                        self.kill(Fuse::Sending(0)).await;
                        return;
                    }
                }
            }
        }
    }

    pub(super) async fn hand_over(&mut self, row: Queued) {
        let now = self.now;
        let once = self.once(&row).await;
        if let (Once::Morning(user, date), Outgoing::Say(say)) = (once, &row.outgoing) {
            let facts = self.replay.facts(user, now).await;
            let mut lists = self.replay.lists_of(user).await;
            lists.retain(|list| facts.club.as_ref().is_some_and(|club| club.id == list.club));
            let day = (row.id, Some(date));
            let checked = self.checks.handed_over(&self.knowledge, day, say, &facts, &lists);
            self.must(checked.map_err(|wrong| format!("member {user}: {wrong}\n{}", say.text)));
        }
        if let Some(chat) =
            row.outgoing.chat().filter(|chat| self.checks.left_behind.contains(chat))
        {
            self.must::<()>(Err(format!("the group {chat} is written to under its old id")));
        }
        let delivery = self.platform.deliver(&row.outgoing).await;
        let fate = self.platform.fate();
        if let Some(wrong) = self.platform.wrong() {
            self.must::<()>(Err(wrong));
        }
        self.handed_over += 1;
        self.note_in_digest(&row, &delivery);
        // While the platform is out of reach there are tries without end.
        let often = if self.platform.is_offline() { 0.1 } else { 0.7 };
        if let Some(message) = fate.arrived {
            let came = self.checks.came(once, fate);
            self.must(came);
            if let Once::Week(club, day) = once {
                let came = self.checks.week_came(club, day);
                self.must(came);
            }
            self.arrives(&row, once, message);
        } else if let Once::Morning(user, _) = once
            && let Some(person) = person_of(user).filter(|_| self.chance.random_bool(often))
        {
            // What waits is what a change can make untrue.
            let at = self.within(TimeDelta::minutes(10));
            let told = self.checks.told.told_by(row.id);
            let told = told.first().map(|list| list.name.clone());
            let then = match told {
                Some(list) => self.changes_told(self.gardeners[person].clubs[0], &list),
                None => Event::ChangesMind(person),
            };
            self.agenda.note(at, then);
        }
        let flight = Flight { row, once, delivery, fate, begun: now };
        let process = self.running();
        process.flights.insert(flight.row.id, flight);
        let under_way = process.flights.len();
        assert!(under_way <= MOST_UNDER_WAY, "{under_way} messages are under way");
    }

    pub(super) async fn once(&self, row: &Queued) -> Once {
        if let (Priority::Reminder, Some(chat)) = (row.priority, row.outgoing.chat()) {
            let date: NaiveDate =
                sqlx::query_scalar("SELECT local_date FROM outgoing WHERE id = $1")
                    .bind(row.id)
                    .fetch_one(&self.look)
                    .await
                    .expect("a reminder has its date");
            if chat > 0 {
                return Once::Morning(chat, date);
            }
            let club = self.club_of(chat).expect("a club of ours");
            return Once::Week(club, date);
        }
        Once::Row(row.id)
    }

    pub(super) fn arrives(&mut self, row: &Queued, once: Once, message: i32) {
        self.messages += 1;
        match &row.outgoing {
            Outgoing::Say(say) => {
                let letter = Letter::new(message, say);
                if let Once::Morning(user, date) = once {
                    self.reminders += 1;
                    self.checks.told.came(row.id);
                    let keys = jobs_named(&say.buttons);
                    self.checks.named(user, row.id, date, &keys, self.now);
                    if self.chance.random_bool(0.5)
                        && let Some(person) = person_of(user)
                    {
                        let at = self.within(TimeDelta::hours(10));
                        self.agenda.note(at, Event::Reacts(person, message));
                    }
                }
                let person = person_of(say.chat).and_then(|person| self.gardeners.get_mut(person));
                if let Some(gardener) = person {
                    gardener.letters.push(letter);
                } else if let Some(club) = self.club_of(say.chat) {
                    self.clubs[club].keep(letter);
                }
            }
            Outgoing::Edit(edit) => {
                let gardener =
                    person_of(edit.chat).and_then(|person| self.gardeners.get_mut(person));
                let letters = gardener.into_iter().flat_map(|gardener| &mut gardener.letters);
                let letters =
                    letters.chain(self.clubs.iter_mut().flat_map(|club| &mut club.letters));
                for letter in letters.filter(|letter| letter.message == edit.message) {
                    letter.edited(edit);
                }
            }
            Outgoing::AnswerPress(_)
            | Outgoing::OpenByPress(_)
            | Outgoing::Document(_)
            | Outgoing::AnswerInline(_) => {}
        }
    }

    /// Everything that is said, and what became of it. A club's token is drawn by chance.
    pub(super) fn note_in_digest(&mut self, row: &Queued, delivery: &Delivery) {
        self.now.hash(&mut self.digest);
        row.id.hash(&mut self.digest);
        row.outgoing.chat().hash(&mut self.digest);
        format!("{delivery:?}").hash(&mut self.digest);
        match &row.outgoing {
            Outgoing::Say(say) => {
                say.text.hash(&mut self.digest);
                Letter::new(0, say).presses().hash(&mut self.digest);
            }
            Outgoing::Edit(edit) => edit.text.hash(&mut self.digest),
            Outgoing::AnswerPress(answer) => answer.notice.hash(&mut self.digest),
            // Links carry a club's token, which is drawn by chance, and nobody here asks for
            // files or types in other chats.
            Outgoing::OpenByPress(_) | Outgoing::Document(_) | Outgoing::AnswerInline(_) => {}
        }
    }

    pub(super) async fn answer(&mut self, row: i64) {
        let now = self.now;
        let process = self.running();
        let flight = process.flights.remove(&row).expect("it is under way");
        process.sender.landed(Landed {
            row: flight.row.clone(),
            delivery: flight.delivery.clone(),
            begun: flight.begun,
            at: now,
        });
        process.landed.push(flight);
        process.send_at = Some(now);
        if self.burns(|fuse| fuse == Fuse::Answered).await {
            return;
        }
        // A reminder that must be sent again may have been made untrue meanwhile; the program
        // looks at the clock every quarter of a minute.
        self.running().tick_by(now + TimeDelta::seconds(15));
    }

    /// The program has noted what came of this.
    pub(super) async fn settled(&mut self, flight: Flight) {
        let row = flight.row;
        match flight.delivery {
            Delivery::Sent { .. } if row.priority == Priority::Reminder => {
                self.checks.noted(row.id);
                self.checks.told.noted(row.id);
            }
            Delivery::Moved(new) => {
                let ended: Option<String> =
                    sqlx::query_scalar("SELECT outcome FROM outgoing WHERE id = $1")
                        .bind(row.id)
                        .fetch_one(&self.look)
                        .await
                        .expect("an outcome");
                // A week that was taken back meanwhile tells nothing.
                let taken_back =
                    row.priority == Priority::Reminder && ended.as_deref() == Some("cancelled");
                if let Some(old) = row.outgoing.chat().filter(|_| !taken_back) {
                    let user = self.clubs[0].coordinator;
                    self.replay.moved(old, new, user, self.now).await;
                    self.knows_of_move(old, new);
                }
            }
            Delivery::Unreachable(_) => {
                let outcome: Option<String> =
                    sqlx::query_scalar("SELECT outcome FROM outgoing WHERE id = $1")
                        .bind(row.id)
                        .fetch_one(&self.look)
                        .await
                        .expect("an outcome");
                if let Some(user) = row.outgoing.chat().filter(|chat| *chat > 0)
                    && outcome.as_deref() == Some("unreachable")
                {
                    self.replay.cannot_reach(user, self.now).await;
                    self.checks.touched(user, self.now);
                    self.checks.said.is_there(user, false);
                }
            }
            _ => {}
        }
    }
}

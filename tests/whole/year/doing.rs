//! What people do, and what else happens by itself.

use chrono::TimeDelta;
use rand::Rng;
use sowbell::messages::{Incoming, Role, What};

use super::agenda::Event;
use super::fuse::Fuse;
use super::letters::Letter;
use super::list_words;
use super::people::{Gardener, incoming};
use super::replay::join_words;
use super::talk;
use super::world::World;

/// After so long without trouble every message of the day has been sent.
const LONG_ENOUGH: TimeDelta = TimeDelta::hours(2);

impl World {
    /// Clubs are opened, members come, and everything that goes on by itself is noted.
    pub(super) fn begin(&mut self) {
        for number in 0..self.clubs.len() {
            self.opens(number);
        }
        for person in 0..self.gardeners.len() {
            let at = self.within(TimeDelta::hours(3));
            self.agenda.note(at, Event::Comes(person));
            let at = self.within(TimeDelta::days(3));
            self.agenda.note(at, Event::Acts(person));
            self.agenda.note(self.now + TimeDelta::hours(30), Event::Audit(person));
        }
        self.agenda.note(self.now + TimeDelta::hours(5), Event::Lays);
        self.agenda.note(self.now + TimeDelta::days(7), Event::Prunes);
        let at = self.within(TimeDelta::days(12));
        self.agenda.note(at, Event::GoesOffline);
    }

    /// A person joins the club, and tells of their garden.
    pub(super) fn comes(&mut self, person: usize) {
        let Gardener { user, place, .. } = self.gardeners[person];
        let club = self.gardeners[person].clubs[0];
        self.says(user, join_words(club));
        // Half of them garden by the club's dates, in its zone.
        if self.chance.random_bool(0.5) {
            self.says(user, format!("/zone {}", place.city));
            self.says(user, format!("/frost {}", place.frost));
        }
        if self.chance.random_bool(0.4) {
            let hour = self.chance.random_range(5..11);
            self.says(user, format!("/hour {hour}:30"));
        }
        let crops = talk::crops(&mut self.chance, 8);
        self.says(user, format!("/grow {crops}"));
        for _ in 0..3 {
            let words = list_words::of_subscriber(&mut self.chance);
            self.says(user, words);
        }
    }

    pub(super) fn tells(&mut self, incoming: Incoming) {
        self.platform.tells(incoming);
        let at = self.now + TimeDelta::milliseconds(100);
        if let Some(process) = &mut self.process {
            process.poll_at.get_or_insert(at);
        }
    }

    pub(super) fn text(&mut self, text: String) -> What {
        let message = self.chance.random_range(1_000_000..2_000_000_000);
        What::Text { text, message, addressed: true, replies_to: None }
    }

    pub(super) fn says(&mut self, user: i64, words: String) {
        let what = self.text(words);
        self.tells(incoming(user, user, Role::Unknown, what));
    }

    pub(super) fn says_in_group(&mut self, user: i64, chat: i64, role: Role, words: String) {
        let what = self.text(words);
        self.tells(incoming(user, chat, role, what));
    }

    pub(super) fn group_hears(&mut self, user: i64, chat: i64, what: What) {
        self.tells(incoming(user, chat, Role::Unknown, what));
    }

    pub(super) fn presses(&mut self, user: i64, chat: i64, letter: &Letter, data: String) {
        let press = format!("press {}", self.chance.random_range(0..u64::MAX));
        let (message, shown) = (Some(letter.message), Some(letter.shown()));
        let what = What::Pressed { press, message, data, shown };
        // What the platform says of somebody in a group; none of them keeps one.
        let role = if chat < 0 { Role::Member } else { Role::Unknown };
        self.tells(incoming(user, chat, role, what));
    }

    pub(super) async fn happens(&mut self, event: Event) {
        match event {
            Event::Comes(person) => self.comes(person),
            Event::Acts(person) => {
                if !self.gardeners[person].blocked {
                    self.acts(person);
                }
                let at = self.within(TimeDelta::days(7));
                self.agenda.note(at, Event::Acts(person));
            }
            Event::ChangesMind(person) => {
                let Gardener { user, place, blocked, .. } = self.gardeners[person];
                if !blocked {
                    let words = talk::changes_mind(&mut self.chance, place);
                    self.says(user, words);
                }
            }
            Event::Reacts(person, message) => self.reacts(person, message),
            Event::Returns(person) => {
                let user = self.gardeners[person].user;
                self.gardeners[person].blocked = false;
                self.platform.block(user, false);
                self.group_hears(user, user, What::Unblocked);
                self.says(user, "/now".to_owned());
            }
            Event::Rejoins(person, club) => {
                let user = self.gardeners[person].user;
                let chat = self.clubs[club].chat;
                self.says_in_group(user, chat, Role::Member, "/now".to_owned());
            }
            Event::Coordinates(club) => self.coordinates(club),
            Event::KeepsLists(club) => self.keeps_lists(club),
            Event::StepsDown(club) => self.clubs[club].second_is_administrator = false,
            Event::Meddles(club) => self.meddles(club),
            Event::Moves(club) => self.moves(club),
            Event::Tells(incoming) => self.tells(*incoming),
            Event::Audit(person) => self.audit(person).await,
            Event::Lays => {
                self.fuse = Some(Fuse::any(&mut self.kills));
                let at = self.now + TimeDelta::seconds(self.kills.random_range(3600..400_000));
                self.agenda.note(at, Event::Lays);
                if self.fuse == Some(Fuse::Idle) && self.process.is_some() {
                    self.kill(Fuse::Idle).await;
                }
            }
            Event::Restarts => self.restart().await,
            Event::GoesOffline => {
                let minutes = self.chance.random_range(1..300);
                let until = self.now + TimeDelta::minutes(minutes);
                self.platform.goes_offline(until);
                self.trouble_until = self.trouble_until.max(until);
                let at = self.within(TimeDelta::days(25));
                self.agenda.note(at, Event::GoesOffline);
            }
            Event::Prunes => {
                if let Some(process) = &self.process {
                    self.nothing_failed().await;
                    process.app.store.prune(self.now).await.expect("pruned");
                    self.replay.prune(self.now).await;
                }
                self.agenda.note(self.now + TimeDelta::days(7), Event::Prunes);
            }
        }
    }

    pub(super) fn acts(&mut self, person: usize) {
        let Gardener { user, place, .. } = self.gardeners[person];
        let clubs = &self.gardeners[person].clubs;
        let club = clubs[self.chance.random_range(0..clubs.len())];
        let chat = self.clubs[club].chat;
        match self.chance.random_range(0..107) {
            105..107 => self.comes_back_to_list(person),
            100..104 => {
                let letters = &self.clubs[club].letters;
                if !letters.is_empty() {
                    let letter = letters[self.chance.random_range(0..letters.len())].clone();
                    self.presses_any(user, chat, &letter);
                }
            }
            104 => {
                // Another club, or another time the same.
                let other = self.chance.random_range(0..self.clubs.len());
                self.says(user, join_words(other));
                let clubs = &mut self.gardeners[person].clubs;
                if !clubs.contains(&other) {
                    clubs.push(other);
                }
            }
            0..30 => {
                // Any button that was ever there, under a message of any age.
                let letters = self.gardeners[person].letters.len();
                if letters > 0 {
                    let letter = self.gardeners[person].letters
                        [self.chance.random_range(0..letters)]
                    .clone();
                    self.presses_any(user, user, &letter);
                }
            }
            30..36 => {
                let words = talk::in_group(&mut self.chance);
                self.says_in_group(user, chat, Role::Member, words);
            }
            36..39 => {
                self.gardeners[person].blocked = true;
                self.platform.block(user, true);
                // Sometimes the platform does not tell, and a send finds out.
                if self.chance.random_bool(0.6) {
                    self.group_hears(user, user, What::Blocked);
                }
                let at = self.within(TimeDelta::days(40));
                self.agenda.note(at, Event::Returns(person));
            }
            39..42 => {
                self.group_hears(user, chat, What::LeftGroup);
                let at = self.within(TimeDelta::days(40));
                self.agenda.note(at, Event::Rejoins(person, club));
            }
            _ => {
                let words = talk::in_private(&mut self.chance, place);
                self.says(user, words);
            }
        }
    }

    pub(super) fn presses_any(&mut self, user: i64, chat: i64, letter: &Letter) {
        let presses = letter.presses();
        if !presses.is_empty() {
            let data = presses[self.chance.random_range(0..presses.len())].clone();
            self.presses(user, chat, letter, data);
        }
    }

    pub(super) fn reacts(&mut self, person: usize, message: i32) {
        let gardener = &self.gardeners[person];
        let letter = gardener.letters.iter().find(|letter| letter.message == message).cloned();
        if let Some(letter) = letter.filter(|_| !gardener.blocked) {
            let user = self.gardeners[person].user;
            self.presses_any(user, user, &letter);
        }
    }

    /// What is in the queue of the last messages to a person, for whoever looks for a fault.
    async fn last_rows(&self, user: i64) -> Vec<String> {
        sqlx::query_scalar(
            "SELECT concat_ws(' | ', id, kind, local_date, created_at, not_before, attempts, \
             outcome, ended_at, error) FROM outgoing WHERE chat = $1 ORDER BY id DESC LIMIT 6",
        )
        .bind(user)
        .fetch_all(&self.look)
        .await
        .expect("rows")
    }

    pub(super) async fn audit(&mut self, person: usize) {
        let user = self.gardeners[person].user;
        let facts = self.replay.facts(user, self.now).await;
        let zone = facts.settings().zone.is;
        let today = facts.today();
        let evening = sowbell::club::ReminderTime::from_minutes(22 * 60).expect("a time");
        let tonight = evening.on(today, zone);
        let hour = facts.member.reminder_time.on(today, zone);
        // Within half an hour before it is evening for this person, and long enough after both
        // the hour and the last trouble.
        let quiet = hour.max(self.trouble_until) + LONG_ENOUGH <= self.now;
        let is_evening = (self.now - tonight).num_minutes().abs() < 30;
        if quiet && is_evening && self.process.is_some() && !self.gardeners[person].blocked {
            let mut lists = self.replay.lists_of(user).await;
            lists.retain(|list| facts.club.as_ref().is_some_and(|club| club.id == list.club));
            let audited = self.checks.audit(&self.knowledge, &facts, &lists);
            if audited.is_err() {
                eprintln!("the last messages to {user}: {:#?}", self.last_rows(user).await);
            }
            self.must(audited.map_err(|wrong| format!("member {user}: {wrong}")));
        }
        let next = if self.now < tonight - TimeDelta::minutes(1) {
            tonight
        } else {
            evening.next_after(self.now + TimeDelta::hours(1), zone)
        };
        self.agenda.note(next, Event::Audit(person));
    }
}

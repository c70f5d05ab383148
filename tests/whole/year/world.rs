//! The year: people, platform and program, one event after the other.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::Arc;

use chrono::{DateTime, NaiveDate, NaiveTime, TimeDelta, Utc};
use rand::rngs::StdRng;
use rand::{Rng, SeedableRng};
use sowbell::app::{Delivery, Landed, Platform, SenderStep, Update};
use sowbell::chat::Knowledge;
use sowbell::messages::{Incoming, Outgoing, Priority, Role, UpdateKey, What};
use sowbell::store::Queued;
use sqlx::sqlite::SqlitePool;

use super::agenda::{Agenda, Event};
use super::checks::{Checks, Once};
use super::fuse::{Fuse, take_in_without_commit, tick_without_commit};
use super::letters::{Letter, jobs_named};
use super::people::{Club, Gardener, coordinator_of, gather, incoming, person_of};
use super::platform::OurPlatform;
use super::process::{Flight, Process, Turn};
use super::replay::{Replay, join_words, look, with_token};
use super::talk;

const BOT: i64 = 1;

/// As many messages are under way at most, each to another chat.
const MOST_UNDER_WAY: usize = 16;

/// After so long without trouble every message of the day has been sent.
const LONG_ENOUGH: TimeDelta = TimeDelta::hours(2);

/// What is to be simulated.
#[derive(Debug, Clone, Copy)]
pub struct Plan {
    pub seed: u64,
    pub members: usize,
    pub days: i64,
}

/// How a year went.
#[derive(Debug, Clone)]
pub struct Report {
    plan: Plan,
    pub accepted: usize,
    pub reminders: usize,
    messages: usize,
    handed_over: usize,
    by_fuse: BTreeMap<&'static str, usize>,
    over_kills: usize,
    over_lost_answers: usize,
    days_audited: usize,
    jobs_audited: usize,
    comparisons: usize,
    pub digest: u64,
}

impl Report {
    pub fn kills(&self) -> usize {
        self.by_fuse.values().sum()
    }

    pub fn repeats(&self) -> usize {
        self.over_kills + self.over_lost_answers
    }
}

impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Plan { seed, members, days } = self.plan;
        write!(
            f,
            "SOWBELL_SEED={seed}: {members} members, {days} days; {} updates accepted; {} messages \
             came, {} of them reminders, {} tries in all; {} kills {:?}; {} came twice over kills \
             and {} over lost answers; {} days audited with {} jobs; {} comparisons with the \
             replay; digest {:016x}",
            self.accepted,
            self.messages,
            self.reminders,
            self.handed_over,
            self.kills(),
            self.by_fuse,
            self.over_kills,
            self.over_lost_answers,
            self.days_audited,
            self.jobs_audited,
            self.comparisons,
            self.digest,
        )
    }
}

pub struct World {
    plan: Plan,
    now: DateTime<Utc>,
    agenda: Agenda,
    chance: StdRng,
    kills: StdRng,
    knowledge: Arc<Knowledge>,
    clubs: Vec<Club>,
    gardeners: Vec<Gardener>,
    platform: OurPlatform,
    process: Option<Process>,
    fuse: Option<Fuse>,
    replay: Replay,
    checks: Checks,
    accepted: BTreeSet<i64>,
    /// The last moment at which the program was down or the platform out of reach.
    trouble_until: DateTime<Utc>,
    by_fuse: BTreeMap<&'static str, usize>,
    messages: usize,
    reminders: usize,
    handed_over: usize,
    comparisons: usize,
    digest: DefaultHasher,
    look: SqlitePool,
    url: String,
    _folder: tempfile::TempDir,
}

impl World {
    pub async fn new(plan: Plan) -> Self {
        let Plan { seed, members, days: _ } = plan;
        let mut chance = StdRng::seed_from_u64(seed);
        let first = NaiveDate::from_ymd_opt(2026, 1, 1).expect("a day");
        let first = first + TimeDelta::days(chance.random_range(0..365));
        let now = first.and_time(NaiveTime::MIN).and_utc();
        // In memory, where waiting for the disk costs nothing.
        let memory = std::path::Path::new("/dev/shm");
        let folder =
            if memory.is_dir() { tempfile::tempdir_in(memory) } else { tempfile::tempdir() };
        let folder = folder.expect("a folder");
        let url = |name: &str| format!("sqlite://{}", folder.path().join(name).display());
        let knowledge = Arc::new(Knowledge::embedded().expect("knowledge"));
        let process = Process::start(&url("year.db"), &knowledge, now).await;
        let replay = Replay::new(&url("replay.db"), &knowledge).await;
        let (clubs, gardeners) = gather(members);
        let mut world = Self {
            plan,
            now,
            agenda: Agenda::default(),
            chance,
            kills: StdRng::seed_from_u64(seed ^ 0xF00D),
            knowledge,
            clubs,
            gardeners,
            platform: OurPlatform::new(seed ^ 0xBEEF, now),
            process: Some(process),
            fuse: None,
            replay,
            checks: Checks::default(),
            accepted: BTreeSet::new(),
            trouble_until: now,
            by_fuse: BTreeMap::new(),
            messages: 0,
            reminders: 0,
            handed_over: 0,
            comparisons: 0,
            digest: DefaultHasher::new(),
            look: look(&url("year.db")).await,
            url: url("year.db"),
            _folder: folder,
        };
        world.begin();
        world
    }

    /// Clubs are opened, members come, and everything that goes on by itself is noted.
    fn begin(&mut self) {
        for number in 0..self.clubs.len() {
            let Club { chat, place } = self.clubs[number];
            let coordinator = coordinator_of(chat);
            self.group_hears(coordinator, chat, What::AddedToGroup);
            for words in
                [format!("/club frost {}", place.frost), format!("/club zone {}", place.city)]
            {
                self.says_in_group(coordinator, chat, Role::Administrator, words);
            }
            let at = self.within(TimeDelta::days(20));
            self.agenda.note(at, Event::Coordinates(number));
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
    fn comes(&mut self, person: usize) {
        let Gardener { user, place, club, .. } = self.gardeners[person];
        let chat = self.clubs[club].chat;
        self.says(user, join_words(chat));
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
    }

    /// Runs to the end.
    pub async fn run(mut self) -> Report {
        let end = self.now + TimeDelta::days(self.plan.days);
        loop {
            let turn = self.process.as_ref().and_then(Process::next);
            let event = self.agenda.next_at();
            let at = match (turn, event) {
                (Some((at, _)), Some(event)) => at.min(event),
                (Some((at, _)), None) | (None, Some(at)) => at,
                (None, None) => break,
            };
            if at >= end {
                break;
            }
            self.go_to(at);
            match turn {
                Some((due, turn)) if due <= at => self.turn(turn).await,
                _ => {
                    if let Some(event) = self.agenda.pop() {
                        self.happens(event).await;
                    }
                }
            }
        }
        self.come_to_rest(end).await;
        Report {
            plan: self.plan,
            accepted: self.accepted.len(),
            reminders: self.reminders,
            messages: self.messages,
            handed_over: self.handed_over,
            by_fuse: self.by_fuse,
            over_kills: self.checks.over_kills,
            over_lost_answers: self.checks.over_lost_answers,
            days_audited: self.checks.days_audited,
            jobs_audited: self.checks.jobs_audited,
            comparisons: self.comparisons,
            digest: self.digest.finish(),
        }
    }

    /// Without any more trouble, everything is taken in and sent.
    async fn come_to_rest(&mut self, end: DateTime<Utc>) {
        self.agenda = Agenda::default();
        self.fuse = None;
        self.go_to(end);
        self.platform.behaves();
        if self.process.is_none() {
            self.restart().await;
        }
        for _ in 0..100_000 {
            let Some((at, turn)) = self.process.as_ref().and_then(Process::next) else { break };
            let under_way =
                self.process.as_ref().is_some_and(|process| !process.flights.is_empty());
            if !under_way && !self.platform.has_updates() && self.waiting().await == 0 {
                break;
            }
            self.go_to(at.max(self.now));
            self.turn(turn).await;
        }
        let waiting = self.waiting().await;
        self.must(if waiting == 0 {
            Ok(())
        } else {
            Err(format!("{waiting} messages were not sent"))
        });
        self.nothing_failed().await;
        self.compare().await;
    }

    async fn waiting(&self) -> i64 {
        self.count("SELECT COUNT(*) FROM outgoing WHERE outcome IS NULL").await
    }

    async fn count(&self, query: &'static str) -> i64 {
        sqlx::query_scalar(query).fetch_one(&self.look).await.expect("a number")
    }

    /// Nothing is given up that somebody waits for.
    async fn nothing_failed(&self) {
        let failed = self.count("SELECT COUNT(*) FROM outgoing WHERE outcome = 'failed'").await;
        self.must(if failed == 0 { Ok(()) } else { Err(format!("{failed} messages failed")) });
    }

    /// Stops at what is wrong, and says how to get there again.
    fn must<T>(&self, result: Result<T, String>) -> T {
        let Plan { seed, members, days } = self.plan;
        result.unwrap_or_else(|wrong| {
            panic!(
                "SOWBELL_SEED={seed} SOWBELL_MEMBERS={members} SOWBELL_DAYS={days} fails at {}: \
                 {wrong}",
                self.now
            )
        })
    }

    fn go_to(&mut self, at: DateTime<Utc>) {
        self.now = at;
        self.platform.it_is(at);
    }

    fn within(&mut self, longest: TimeDelta) -> DateTime<Utc> {
        self.now + TimeDelta::seconds(self.chance.random_range(60..longest.num_seconds()))
    }

    // What people do.

    fn tells(&mut self, incoming: Incoming) {
        self.platform.tells(incoming);
        let at = self.now + TimeDelta::milliseconds(100);
        if let Some(process) = &mut self.process {
            process.poll_at.get_or_insert(at);
        }
    }

    fn text(&mut self, text: String) -> What {
        let message = self.chance.random_range(1_000_000..2_000_000);
        What::Text { text, message, addressed: true }
    }

    fn says(&mut self, user: i64, words: String) {
        let what = self.text(words);
        self.tells(incoming(user, user, Role::Unknown, what));
    }

    fn says_in_group(&mut self, user: i64, chat: i64, role: Role, words: String) {
        let what = self.text(words);
        self.tells(incoming(user, chat, role, what));
    }

    fn group_hears(&mut self, user: i64, chat: i64, what: What) {
        self.tells(incoming(user, chat, Role::Unknown, what));
    }

    fn presses(&mut self, user: i64, letter: &Letter, data: String) {
        let press = format!("press {}", self.chance.random_range(0..u64::MAX));
        let (message, shown) = (Some(letter.message), Some(letter.shown()));
        let what = What::Pressed { press, message, data, shown };
        self.tells(incoming(user, user, Role::Unknown, what));
    }

    async fn happens(&mut self, event: Event) {
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
            Event::Rejoins(person) => {
                let Gardener { user, club, .. } = self.gardeners[person];
                let chat = self.clubs[club].chat;
                self.says_in_group(user, chat, Role::Member, "/now".to_owned());
            }
            Event::Coordinates(club) => {
                let Club { chat, place } = self.clubs[club];
                let words = talk::of_coordinator(&mut self.chance, place);
                self.says_in_group(coordinator_of(chat), chat, Role::Administrator, words);
                let at = self.within(TimeDelta::days(40));
                self.agenda.note(at, Event::Coordinates(club));
            }
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

    fn acts(&mut self, person: usize) {
        let Gardener { user, place, club, .. } = self.gardeners[person];
        let chat = self.clubs[club].chat;
        match self.chance.random_range(0..100) {
            0..30 => {
                // Any button that was ever there, under a message of any age.
                let letters = self.gardeners[person].letters.len();
                if letters > 0 {
                    let letter = self.gardeners[person].letters
                        [self.chance.random_range(0..letters)]
                    .clone();
                    self.presses_any(user, &letter);
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
                self.agenda.note(at, Event::Rejoins(person));
            }
            _ => {
                let words = talk::in_private(&mut self.chance, place);
                self.says(user, words);
            }
        }
    }

    fn presses_any(&mut self, user: i64, letter: &Letter) {
        let presses = letter.presses();
        if !presses.is_empty() {
            let data = presses[self.chance.random_range(0..presses.len())].clone();
            self.presses(user, letter, data);
        }
    }

    fn reacts(&mut self, person: usize, message: i32) {
        let gardener = &self.gardeners[person];
        let letter = gardener.letters.iter().find(|letter| letter.message == message).cloned();
        if let Some(letter) = letter.filter(|_| !gardener.blocked) {
            self.presses_any(self.gardeners[person].user, &letter);
        }
    }

    async fn audit(&mut self, person: usize) {
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
            let audited = self.checks.audit(&self.knowledge, &facts);
            self.must(audited.map_err(|wrong| format!("member {user}: {wrong}")));
        }
        let next = if self.now < tonight - TimeDelta::minutes(1) {
            tonight
        } else {
            evening.next_after(self.now + TimeDelta::hours(1), zone)
        };
        self.agenda.note(next, Event::Audit(person));
    }

    // What the program does.

    async fn turn(&mut self, turn: Turn) {
        match turn {
            Turn::Answer(row) => self.answer(row).await,
            Turn::Poll => self.poll().await,
            Turn::Tick => self.tick().await,
            Turn::Send => self.send().await,
        }
    }

    fn running(&mut self) -> &mut Process {
        self.process.as_mut().expect("it runs")
    }

    async fn poll(&mut self) {
        let now = self.now;
        let offline = self.platform.is_offline();
        let process = self.process.as_mut().expect("it runs");
        process.poll_at = None;
        if offline {
            process.poll_at = Some(now + TimeDelta::seconds(30));
            return;
        }
        let batch = self.platform.poll(process.offset);
        let Some((last, _)) = batch.last() else { return };
        let last = *last;
        let mut updates = Vec::new();
        for (id, incoming) in &batch {
            let incoming = Some(with_token(incoming, &self.look).await);
            updates.push(Update { key: UpdateKey { bot: BOT, update: *id }, incoming });
        }
        let new = updates.iter().any(|update| !self.accepted.contains(&update.key.update));
        if new && self.burns(|fuse| fuse == Fuse::BeforeTakingIn).await {
            return;
        }
        if new && self.fuse == Some(Fuse::TakingIn) {
            let half = take_in_without_commit(&self.running().app, &updates, now).await;
            half.expect("they are taken in");
            self.kill(Fuse::TakingIn).await;
            return;
        }
        let taken = self.running().app.take_in(&updates, now).await;
        taken.expect("they are taken in");
        for (id, incoming) in &batch {
            if self.accepted.insert(*id) {
                let key = UpdateKey { bot: BOT, update: *id };
                let before = self.replay.facts(incoming.from.user, now).await;
                self.checks.said.heard(incoming, &before, &self.knowledge);
                self.replay.accept(key, incoming, now).await;
                self.touch(incoming);
            }
        }
        if new && self.burns(|fuse| fuse == Fuse::AfterTakingIn).await {
            return;
        }
        let process = self.running();
        process.offset = Some(last + 1);
        process.poll_at = Some(now + TimeDelta::milliseconds(100));
        process.tick_at = Some(now);
        process.send_at = Some(now);
    }

    /// Notes for whom something changed.
    fn touch(&mut self, incoming: &Incoming) {
        let user = incoming.from.user;
        self.checks.touched(user, self.now);
        let club = self.clubs.iter().position(|club| coordinator_of(club.chat) == user);
        if let Some(club) = club {
            // Whoever was ever in the club; who left it is not touched, which does no harm.
            for gardener in self.gardeners.iter().filter(|gardener| gardener.club == club) {
                self.checks.touched(gardener.user, self.now);
            }
        }
    }

    async fn tick(&mut self) {
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

    async fn send(&mut self) {
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

    async fn hand_over(&mut self, row: Queued) {
        let now = self.now;
        let once = self.once(&row).await;
        if let (Once::Morning(user, date), Outgoing::Say(say)) = (once, &row.outgoing) {
            let facts = self.replay.facts(user, now).await;
            let checked = self.checks.handed_over(&self.knowledge, row.id, say, Some(date), &facts);
            self.must(checked.map_err(|wrong| format!("member {user}: {wrong}\n{}", say.text)));
        }
        let delivery = self.platform.deliver(&row.outgoing).await;
        let fate = self.platform.fate();
        if let Some(wrong) = self.platform.wrong() {
            self.must::<()>(Err(wrong));
        }
        self.handed_over += 1;
        self.note_in_digest(&row, &delivery);
        if let Some(message) = fate.arrived {
            let came = self.checks.came(once, fate);
            self.must(came);
            self.arrives(&row, once, message);
        } else if let Once::Morning(user, _) = once
            && let Some(person) = person_of(user).filter(|_| self.chance.random_bool(0.7))
        {
            // What waits is what a change can make untrue.
            let at = self.within(TimeDelta::minutes(10));
            self.agenda.note(at, Event::ChangesMind(person));
        }
        let flight = Flight { row, once, delivery, fate, begun: now };
        let process = self.running();
        process.flights.insert(flight.row.id, flight);
        let under_way = process.flights.len();
        assert!(under_way <= MOST_UNDER_WAY, "{under_way} messages are under way");
    }

    async fn once(&self, row: &Queued) -> Once {
        let chat = row.outgoing.chat().filter(|chat| *chat > 0);
        if let (Priority::Reminder, Some(user)) = (row.priority, chat) {
            let date: NaiveDate =
                sqlx::query_scalar("SELECT local_date FROM outgoing WHERE id = $1")
                    .bind(row.id)
                    .fetch_one(&self.look)
                    .await
                    .expect("a reminder has its date");
            return Once::Morning(user, date);
        }
        Once::Row(row.id)
    }

    fn arrives(&mut self, row: &Queued, once: Once, message: i32) {
        self.messages += 1;
        match &row.outgoing {
            Outgoing::Say(say) => {
                let letter = Letter::new(message, say);
                if let Once::Morning(user, date) = once {
                    self.reminders += 1;
                    self.checks.named(user, row.id, date, &jobs_named(&say.buttons));
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
                }
            }
            Outgoing::Edit(edit) => {
                let gardener =
                    person_of(edit.chat).and_then(|person| self.gardeners.get_mut(person));
                let letters = gardener.into_iter().flat_map(|gardener| &mut gardener.letters);
                for letter in letters.filter(|letter| letter.message == edit.message) {
                    letter.edited(edit);
                }
            }
            Outgoing::AnswerPress(_) => {}
        }
    }

    /// Everything that is said, and what became of it. A club's token is drawn by chance.
    fn note_in_digest(&mut self, row: &Queued, delivery: &Delivery) {
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
        }
    }

    async fn answer(&mut self, row: i64) {
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
    async fn settled(&mut self, flight: Flight) {
        let row = flight.row;
        match flight.delivery {
            Delivery::Sent { .. } if row.priority == Priority::Reminder => {
                self.checks.noted(row.id)
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

    // Kills.

    async fn burns(&mut self, here: impl Fn(Fuse) -> bool) -> bool {
        match self.fuse.filter(|fuse| here(*fuse)) {
            Some(fuse) => {
                self.kill(fuse).await;
                true
            }
            None => false,
        }
    }

    /// Everything that is not in the database is gone.
    async fn kill(&mut self, fuse: Fuse) {
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

    async fn restart(&mut self) {
        self.platform.started();
        self.process = Some(Process::start(&self.url, &self.knowledge, self.now).await);
        self.trouble_until = self.trouble_until.max(self.now);
        if self.kills.random_bool(0.2) {
            self.compare().await;
        }
    }

    async fn compare(&mut self) {
        self.comparisons += 1;
        let compared = self.replay.compare(&self.look).await;
        self.must(compared);
    }
}

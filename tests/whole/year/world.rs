//! The year: people, platform and program, one event after the other.

use std::collections::{BTreeMap, BTreeSet};
use std::hash::{DefaultHasher, Hasher};
use std::sync::Arc;

use chrono::{DateTime, NaiveDate, NaiveTime, TimeDelta, Utc};
use rand::rngs::StdRng;
use rand::{Rng, SeedableRng};
use sowbell::chat::Knowledge;
use sqlx::sqlite::SqlitePool;

use super::agenda::Agenda;
use super::checks::Checks;
use super::fuse::Fuse;
use super::people::{Club, Gardener, gather};
use super::platform::OurPlatform;
use super::process::Process;
use super::replay::{Replay, look};
use super::report::{Plan, Report};

pub struct World {
    pub(super) plan: Plan,
    pub(super) now: DateTime<Utc>,
    pub(super) agenda: Agenda,
    pub(super) chance: StdRng,
    pub(super) kills: StdRng,
    pub(super) knowledge: Arc<Knowledge>,
    pub(super) clubs: Vec<Club>,
    pub(super) gardeners: Vec<Gardener>,
    pub(super) platform: OurPlatform,
    pub(super) process: Option<Process>,
    pub(super) fuse: Option<Fuse>,
    pub(super) replay: Replay,
    pub(super) checks: Checks,
    pub(super) accepted: BTreeSet<i64>,
    /// The last moment at which the program was down or the platform out of reach.
    pub(super) trouble_until: DateTime<Utc>,
    pub(super) by_fuse: BTreeMap<&'static str, usize>,
    pub(super) messages: usize,
    pub(super) reminders: usize,
    pub(super) handed_over: usize,
    pub(super) comparisons: usize,
    pub(super) digest: DefaultHasher,
    pub(super) look: SqlitePool,
    pub(super) url: String,
    pub(super) _folder: tempfile::TempDir,
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
            lists_told: self.checks.told.times,
            moves: self.checks.moves,
            refusals: self.checks.refusals,
            weeks: self.checks.weeks_came,
            comparisons: self.comparisons,
            digest: self.digest.finish(),
        }
    }

    /// Without any more trouble, everything is taken in and sent.
    pub(super) async fn come_to_rest(&mut self, end: DateTime<Utc>) {
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

    pub(super) async fn waiting(&self) -> i64 {
        self.count("SELECT COUNT(*) FROM outgoing WHERE outcome IS NULL").await
    }

    pub(super) async fn count(&self, query: &'static str) -> i64 {
        sqlx::query_scalar(query).fetch_one(&self.look).await.expect("a number")
    }

    /// Nothing is given up that somebody waits for.
    pub(super) async fn nothing_failed(&self) {
        let lost = "SELECT COUNT(*) FROM outgoing WHERE outcome = 'unreachable' AND chat < 0";
        let lost = self.count(lost).await;
        self.must(if lost == 0 { Ok(()) } else { Err(format!("{lost} messages to groups")) });
        // A change of a message cannot go to a group's new id.
        let failed = "SELECT COUNT(*) FROM outgoing WHERE outcome = 'failed' AND NOT \
                      (error = 'the message to edit is of the group''s old id' AND chat < 0)";
        let failed = self.count(failed).await;
        self.must(if failed == 0 { Ok(()) } else { Err(format!("{failed} messages failed")) });
    }

    /// Stops at what is wrong, and says how to get there again.
    pub(super) fn must<T>(&self, result: Result<T, String>) -> T {
        let Plan { seed, members, days } = self.plan;
        result.unwrap_or_else(|wrong| {
            panic!(
                "SOWBELL_SEED={seed} SOWBELL_MEMBERS={members} SOWBELL_DAYS={days} fails at {}: \
                 {wrong}",
                self.now
            )
        })
    }

    pub(super) fn go_to(&mut self, at: DateTime<Utc>) {
        self.now = at;
        self.platform.it_is(at);
    }

    pub(super) fn within(&mut self, longest: TimeDelta) -> DateTime<Utc> {
        self.now + TimeDelta::seconds(self.chance.random_range(60..longest.num_seconds()))
    }
}

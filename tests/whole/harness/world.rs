//! The world and the bot in it.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use chrono::{DateTime, NaiveDate, NaiveTime, Utc};
use chrono_tz::Tz;
use sowbell::app::SendLimits;
use sowbell::config::Secret;
use sowbell::telegram::{ServeError, Serving, serve};
use tempfile::TempDir;
use tokio::runtime::Handle;
use tokio::sync::oneshot;
use tokio::task::{JoinHandle, block_in_place};

use super::store::Reader;
use super::{Club, Hands, Person};
use crate::platform::{FakePlatform, State};

/// How long the bot may take to stop, as its keepers are promised.
const STOPPING: Duration = Duration::from_secs(10);

/// How long a test waits for the bot to have done everything.
const PATIENCE: Duration = Duration::from_secs(30);

/// Fast enough that no test waits for the limits; what they are for is tested elsewhere.
const FAST: SendLimits =
    SendLimits { overall_per_second: 10_000, chat_per_second: 10_000, group_per_minute: 10_000 };

/// A world for one test.
pub struct World {
    pub platform: Arc<FakePlatform>,
    pub clock: Hands,
    bot: Option<Running>,
    reader: Reader,
    folder: TempDir,
    /// Whether the clock was put forward over a wait that the platform had imposed.
    waits_were_skipped: AtomicBool,
}

struct Running {
    stop: oneshot::Sender<()>,
    served: JoinHandle<Result<(), ServeError>>,
}

impl World {
    /// A world in which it is `now` (RFC 3339), with the bot running and nobody else there.
    pub async fn start(now: &str) -> Self {
        let mut world = Self::asleep(now).await;
        world.wake().await;
        world
    }

    /// The same, before the bot is started.
    pub async fn asleep(now: &str) -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        let reader = Reader::open(&folder.path().join("sowbell.db"));
        let clock = Hands::at(instant(now));
        let platform = Arc::new(FakePlatform::start().await);
        let waits_were_skipped = AtomicBool::new(false);
        Self { platform, clock, bot: None, reader, folder, waits_were_skipped }
    }

    /// Starts the bot, and waits until it listens.
    pub async fn wake(&mut self) {
        assert!(self.bot.is_none(), "the bot is awake already");
        let serving = Serving {
            token: Secret::new(self.platform.token()),
            api_url: Some(self.platform.url().parse().expect("the url of the platform")),
            database_url: self.database_url(),
            clock: self.clock.clock(),
            limits: FAST,
        };
        let (stop, stopped) = oneshot::channel::<()>();
        let polls = self.platform.requests_of("getUpdates");
        let served = tokio::spawn(serve(serving, async {
            // A world that is gone stops its bot too.
            let _ = stopped.await;
        }));
        self.bot = Some(Running { stop, served });
        self.platform
            .wait_for("the bot to poll", |state| {
                let polled = state.calls().iter().filter(|call| call.method == "getUpdates");
                (polled.count() > polls).then_some(())
            })
            .await;
    }

    /// Stops the bot, as a keeper does.
    pub async fn sleep(&mut self) {
        let Running { stop, served } = self.bot.take().expect("a bot that is awake");
        let told = Instant::now();
        stop.send(()).expect("the bot runs until it is told to stop");
        let served = tokio::time::timeout(STOPPING, served).await;
        assert!(served.is_ok(), "the bot did not stop within {STOPPING:?}");
        served.expect("in time").expect("no panic").expect("a good end");
        assert!(told.elapsed() < STOPPING, "the bot took {:?} to stop", told.elapsed());
    }

    /// Where the bot keeps what it knows.
    pub fn database_url(&self) -> String {
        format!("sqlite://{}", self.folder.path().join("sowbell.db").display())
    }

    /// A person who has not met the bot.
    pub fn person(&self, name: &str) -> Person {
        let user = self.platform.add_user(name, Some("en"));
        Person::new(Arc::clone(&self.platform), self.eye(), user, name)
    }

    /// A person who has not met the bot, and whose app is set to this language.
    pub fn person_reading(&self, name: &str, language: &str) -> Person {
        let user = self.platform.add_user(name, Some(language));
        Person::new(Arc::clone(&self.platform), self.eye(), user, name)
    }

    /// A person who has pressed *Start*, and read the greeting.
    pub async fn member(&self, name: &str) -> Person {
        let person = self.person(name);
        person.asks("/start").await;
        person
    }

    /// A supergroup that this person made, with the bot in it.
    pub async fn club(&self, title: &str, coordinator: &Person) -> Club {
        let group = self.platform.create_supergroup(title, coordinator.id);
        self.platform.add_bot_to_group(group, coordinator.id);
        let club = self.group(group);
        self.quiet().await;
        club.news();
        club
    }

    /// A group that the test made.
    pub fn group(&self, id: i64) -> Club {
        Club::new(Arc::clone(&self.platform), self.eye(), id)
    }

    /// Everything the bot wrote to a person, as it reads now.
    pub fn heard_by(&self, person: &Person) -> Vec<String> {
        self.platform.sent_to(person.id).into_iter().map(|message| message.text).collect()
    }

    /// Waits until every update is confirmed and every message sent.
    pub async fn quiet(&self) {
        self.eye().quiet().await;
    }

    /// Waits until so many messages are in the queue.
    pub async fn wait_until_waiting(&self, count: i64) {
        let deadline = Instant::now() + PATIENCE;
        loop {
            let waiting = self.reader.waiting().await;
            if waiting == count {
                return;
            }
            assert!(Instant::now() < deadline, "{waiting} messages wait instead of {count}");
            look_again().await;
        }
    }

    /// How many messages are in the queue.
    pub async fn waiting(&self) -> i64 {
        self.reader.waiting().await
    }

    /// A number out of the database, where nothing else shows it.
    pub async fn count(&self, question: &'static str) -> i64 {
        self.reader.count(question).await
    }

    /// Seven o'clock of a day in UTC, when reminders come, and all that the bot does then.
    pub async fn morning_of(&self, date: &str) {
        self.morning_in(date, Tz::UTC).await;
    }

    /// Seven o'clock of a day somewhere, and all that the bot does then.
    pub async fn morning_in(&self, date: &str, zone: Tz) {
        let date: NaiveDate = date.parse().expect("a date");
        let seven = NaiveTime::from_hms_opt(7, 0, 0).expect("a time of day");
        let at = date.and_time(seven).and_local_timezone(zone).single().expect("one seven o'clock");
        self.at(at.with_timezone(&Utc)).await;
    }

    /// An instant, and all that the bot does then.
    pub async fn at(&self, instant: DateTime<Utc>) {
        self.set_clock(instant).await;
        self.quiet().await;
    }

    /// Lets a wait that the platform imposed pass on the bot's clock alone. The platform, which
    /// keeps the machine's time, will find the bot too early.
    pub async fn skip_waits_to(&self, instant: DateTime<Utc>) {
        self.waits_were_skipped.store(true, Ordering::Relaxed);
        self.at(instant).await;
    }

    /// An instant, and the mornings that are due by then; their messages may still wait.
    pub async fn set_clock(&self, instant: DateTime<Utc>) {
        self.clock.set(instant);
        let deadline = Instant::now() + PATIENCE;
        while self.reader.mornings_due(self.clock.now()).await > 0 {
            assert!(Instant::now() < deadline, "the mornings of {instant} were not looked at");
            look_again().await;
        }
    }

    fn eye(&self) -> Eye {
        Eye { platform: Arc::clone(&self.platform), reader: self.reader.clone() }
    }

    async fn end(&mut self) {
        if self.bot.is_some() {
            self.quiet().await;
            self.sleep().await;
        }
        assert_eq!(self.reader.waiting().await, 0, "messages are left in the queue");
        self.assert_the_rules_were_kept();
        self.reader.close().await;
    }

    fn assert_the_rules_were_kept(&self) {
        let state = self.platform.read();
        assert!(state.violations().is_empty(), "against the rules: {:#?}", state.violations());
        let early = state.early_calls();
        assert!(
            early.is_empty() || self.waits_were_skipped.load(Ordering::Relaxed),
            "told to wait, the bot came back too early: {early:#?}"
        );
    }
}

impl Drop for World {
    fn drop(&mut self) {
        if std::thread::panicking() {
            // The first failure is the one to read.
            if let Some(bot) = self.bot.take() {
                bot.served.abort();
            }
            return;
        }
        block_in_place(|| Handle::current().block_on(self.end()));
    }
}

/// Sees whether the bot is done.
#[derive(Clone)]
pub struct Eye {
    platform: Arc<FakePlatform>,
    reader: Reader,
}

impl Eye {
    /// Waits until every update is confirmed and every message sent.
    pub async fn quiet(&self) {
        let all_confirmed = |state: &State| (state.pending_updates() == 0).then_some(());
        self.platform.wait_within(PATIENCE, "all updates to be confirmed", all_confirmed).await;
        let deadline = Instant::now() + PATIENCE;
        while self.reader.waiting().await > 0 {
            let late = Instant::now() > deadline;
            assert!(!late, "never sent: {:#?}", self.reader.waiting_rows().await);
            look_again().await;
        }
    }
}

/// An instant as RFC 3339 writes it.
pub fn instant(text: &str) -> DateTime<Utc> {
    text.parse().expect("an instant such as 2026-04-22T06:59:00Z")
}

/// The database tells nobody that it changed, so it is asked again in a moment.
async fn look_again() {
    tokio::time::sleep(Duration::from_millis(5)).await;
}

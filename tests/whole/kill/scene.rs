//! The platform, and the program on its one database, started time and again.

use std::time::{Duration, Instant};

use chrono::{DateTime, Utc};

use crate::platform::FakePlatform;
use crate::process::{Program, Running};

use super::club::Club;
use super::database::Database;
use super::repeats::World;
use super::trouble::Trouble;

/// How long everything may take to be delivered in the end.
const AT_LAST: Duration = Duration::from_secs(40);

/// The id of the first update.
const FIRST_UPDATE: i64 = 1000;

/// Within this the program must have stopped when it is told to.
pub const STOPPING: Duration = Duration::from_secs(10);

pub fn at(text: &str) -> DateTime<Utc> {
    text.parse().expect("an instant")
}

/// The platform, the program on its one database, and when it was started.
pub struct Scene {
    pub platform: FakePlatform,
    pub program: Program,
    starts: Vec<Instant>,
    _folder: tempfile::TempDir,
}

impl Scene {
    /// A new platform and an empty folder; the program's clock shows `clock` now.
    pub async fn set(clock: &str) -> Self {
        let platform = FakePlatform::start().await;
        platform.set_next_update_id(FIRST_UPDATE);
        let folder = tempfile::tempdir().expect("a folder");
        let program = Program::new(&platform, folder.path()).clock_from(at(clock));
        Self { platform, program, starts: Vec::new(), _folder: folder }
    }

    /// Starts the program on what is in the folder.
    pub fn start(&mut self) -> Running {
        self.starts.push(Instant::now());
        self.program.start()
    }

    /// How many messages the chats got that the bot owed them.
    pub fn sent(&self) -> usize {
        self.platform.read().sent().len()
    }

    /// Waits until nothing is left to be read, and nothing to be sent.
    pub async fn until_done(&self, running: &mut Running) {
        let began = Instant::now();
        loop {
            assert_eq!(running.ended(), None, "it ended by itself:\n{}", self.log());
            let read = self.platform.read().pending_updates() == 0;
            if read && Database::open(&self.program.database_url()).await.waiting().await == 0 {
                break;
            }
            assert!(began.elapsed() < AT_LAST, "it is not done in time:\n{}", self.log());
            tokio::time::sleep(Duration::from_millis(20)).await;
        }
    }

    /// Waits until so many messages were sent.
    pub async fn until_sent(&self, running: &mut Running, count: usize) {
        let began = Instant::now();
        while self.sent() < count {
            assert_eq!(running.ended(), None, "it ended by itself:\n{}", self.log());
            assert!(began.elapsed() < AT_LAST, "it is not done in time:\n{}", self.log());
            tokio::time::sleep(Duration::from_millis(20)).await;
        }
        self.until_done(running).await;
    }

    /// The last lines of the program's log.
    pub fn log(&self) -> String {
        let log = self.program.log();
        let lines: Vec<&str> = log.lines().collect();
        lines[lines.len().saturating_sub(20)..].join("\n")
    }

    /// Nothing went wrong inside the program, and it asked nothing that no bot may ask.
    pub fn check_log(&self) {
        let log = self.program.log();
        for bad in ["panicked", "passed over", "cannot be read", "could not be kept"] {
            assert!(!log.contains(bad), "the log speaks of {bad:?}:\n{}", self.log());
        }
        assert_eq!(self.platform.violations(), Vec::<String>::new());
    }

    /// What explains repetitions.
    pub fn world(&self, trouble: &Trouble) -> World {
        World::new(&self.platform, &self.starts, trouble.lost_answers())
    }
}

/// How many updates the bot was told; it has confirmed them all.
pub fn told_and_confirmed(scene: &Scene, club: &Club) -> usize {
    let state = scene.platform.read();
    assert_eq!(state.pending_updates(), 0);
    let confirmed = state.confirmed_offset().unwrap_or(0);
    assert_eq!(Some(confirmed - 1), club.last_update, "not all updates are confirmed");
    usize::try_from(confirmed - FIRST_UPDATE).expect("ids count up")
}

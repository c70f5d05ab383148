//! The real program as a process of its own: started, killed, told to stop, looked at.

#![allow(
    clippy::panic,
    dead_code,
    reason = "a test stops where it is wrong, and uses what it needs"
)]

use std::fs::{File, OpenOptions};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, ExitStatus, Stdio};
use std::time::{Duration, Instant};

use chrono::{DateTime, TimeDelta, Utc};

use super::platform::FakePlatform;

/// How the program is started: each time on the same database, its log added to the same file.
pub struct Program {
    token: String,
    api_url: String,
    folder: PathBuf,
    send_rate: u32,
    /// What the program's clock shows, and when it showed that.
    clock: Option<(DateTime<Utc>, Instant)>,
}

/// A program that runs; it is killed when this is dropped.
pub struct Running {
    child: Child,
}

impl Program {
    /// A program that talks to `platform` and keeps everything in `folder`.
    pub fn new(platform: &FakePlatform, folder: &Path) -> Self {
        Self {
            token: platform.token(),
            api_url: platform.url(),
            folder: folder.to_owned(),
            // The platform's own rate would make a test of a thousand messages take a minute.
            send_rate: 1000,
            clock: None,
        }
    }

    /// It sends at most so many messages a second.
    pub fn send_rate(mut self, rate: u32) -> Self {
        self.send_rate = rate;
        self
    }

    /// Its clock shows `start` now and goes on from there, through all restarts.
    pub fn clock_from(mut self, start: DateTime<Utc>) -> Self {
        self.clock = Some((start, Instant::now()));
        self
    }

    /// What the program's clock shows now.
    pub fn now(&self) -> DateTime<Utc> {
        self.clock.map_or_else(Utc::now, |(start, began)| {
            start + TimeDelta::from_std(began.elapsed()).unwrap_or(TimeDelta::zero())
        })
    }

    /// The database's URL.
    pub fn database_url(&self) -> String {
        format!("sqlite://{}", self.folder.join("sowbell.db").display())
    }

    /// Starts it.
    pub fn start(&self) -> Running {
        let mut command = Command::new(env!("CARGO_BIN_EXE_sowbell"));
        command
            .arg("serve")
            .args(["--send-rate", &self.send_rate.to_string()])
            // Nothing of the machine's own settings, a proxy for one, may matter.
            .env_clear()
            .env("SOWBELL_TOKEN", &self.token)
            .env("SOWBELL_API_URL", &self.api_url)
            .env("SOWBELL_DATABASE_URL", self.database_url())
            .env("SOWBELL_LOG", "warn")
            .env("NO_COLOR", "1")
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(self.log_file());
        if self.clock.is_some() {
            command.args(["--clock-from", &self.now().to_rfc3339()]);
        }
        let child = command.spawn().unwrap_or_else(|error| panic!("no process: {error}"));
        Running { child }
    }

    fn log_path(&self) -> PathBuf {
        self.folder.join("log")
    }

    fn log_file(&self) -> File {
        let file = OpenOptions::new().create(true).append(true).open(self.log_path());
        file.unwrap_or_else(|error| panic!("no log: {error}"))
    }

    /// What it has logged so far, through all restarts.
    pub fn log(&self) -> String {
        std::fs::read_to_string(self.log_path()).unwrap_or_default()
    }
}

impl Running {
    /// The process's number.
    pub fn id(&self) -> u32 {
        self.child.id()
    }

    /// Kills it as a power cut would: nothing of it runs any more.
    pub fn kill(mut self) {
        assert_eq!(self.ended(), None, "the program ended by itself");
        self.kill_and_wait();
    }

    /// Asks it to stop, as a service manager does.
    pub fn terminate(&self) {
        let told = Command::new("kill").args(["-TERM", &self.id().to_string()]).status();
        assert!(told.is_ok_and(|status| status.success()), "the signal could not be sent");
    }

    /// How it ended, if it did.
    pub fn ended(&mut self) -> Option<ExitStatus> {
        self.child.try_wait().unwrap_or_else(|error| panic!("the process is lost: {error}"))
    }

    /// Asks it to stop and gives how long that took.
    ///
    /// # Panics
    ///
    /// When it has not stopped within `limit`, or not well.
    pub async fn stop_within(mut self, limit: Duration) -> Duration {
        let began = Instant::now();
        self.terminate();
        loop {
            if let Some(status) = self.ended() {
                assert!(status.success(), "told to stop, the program ended with {status}");
                return began.elapsed();
            }
            assert!(began.elapsed() < limit, "told to stop, the program still ran after {limit:?}");
            tokio::time::sleep(Duration::from_millis(5)).await;
        }
    }

    /// A line of the kernel's account of the process, such as `VmRSS`, in KiB.
    pub fn memory(&self, line: &str) -> Option<u64> {
        let status = std::fs::read_to_string(format!("/proc/{}/status", self.id())).ok()?;
        let line = status.lines().find(|found| found.starts_with(line))?;
        line.split_whitespace().nth(1)?.parse().ok()
    }

    fn kill_and_wait(&mut self) {
        // It may have ended by now, and then there is nothing to kill.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        self.kill_and_wait();
    }
}

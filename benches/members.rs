//! What many members cost: how soon the program polls after its start, and how much memory it
//! holds, idle and after questions.
//!
//! `cargo bench --bench members`. The program is the real one, in the release profile; the chat
//! platform is the one of the tests. Memory is the kernel's account (`VmRSS`, and `VmHWM` for the
//! most it ever was), which Linux alone gives.

#![allow(clippy::panic, clippy::print_stdout, reason = "a bench prints, and stops where it fails")]

#[path = "../tests/whole/filled.rs"]
mod filled;
#[path = "../tests/whole/platform/mod.rs"]
mod platform;
#[path = "../tests/whole/process.rs"]
mod process;

use std::path::Path;
use std::time::{Duration, Instant};

use chrono::{DateTime, TimeDelta, Utc};
use sowbell::catalogue::Catalogue;
use sowbell::planning::CropId;

use platform::{FakePlatform, State};
use process::{Program, Running};

const MEMBERS: usize = 10_000;
const CROPS_EACH: usize = 20;
const QUESTIONS: usize = 200;
const ROUNDS: usize = 3;

/// How long it is left alone before its memory is read.
const IDLE: Duration = Duration::from_secs(3);

#[tokio::main]
async fn main() {
    if !std::env::args().any(|argument| argument == "--bench") {
        println!("a bench: run it with cargo bench --bench members");
        return;
    }
    let folder = tempfile::tempdir().unwrap_or_else(|error| panic!("no folder: {error}"));
    let platform = FakePlatform::start().await;
    // At noon nobody's reminder is due for the next 19 hours.
    let noon: DateTime<Utc> = "2026-04-20T12:00:00Z".parse().unwrap_or_default();
    let program = Program::new(&platform, folder.path()).clock_from(noon);
    let users: Vec<(i64, String)> = (0..MEMBERS)
        .map(|number| {
            let name = format!("Member {number}");
            (platform.open_private(platform.add_user(&name, None)), name)
        })
        .collect();
    let catalogue = Catalogue::embedded().unwrap_or_else(|error| panic!("{error}"));
    let ids: Vec<CropId> = catalogue.iter().map(|crop| crop.id.clone()).collect();
    let crops = |member: usize| {
        ids.iter().cycle().skip(member % ids.len()).take(CROPS_EACH).cloned().collect::<Vec<_>>()
    };
    let began = Instant::now();
    let filled = filled::fill(&program.database_url(), &users, crops, noon).await;
    filled.unwrap_or_else(|error| panic!("not filled: {error}"));
    let size = std::fs::metadata(folder.path().join("sowbell.db")).map_or(0, |file| file.len());
    println!(
        "{MEMBERS} members with {CROPS_EACH} crops each, filled in {:.1} s; the file has {:.1} MB",
        began.elapsed().as_secs_f64(),
        mb(size)
    );
    for round in 1..=ROUNDS {
        let polls = platform.requests_of("getUpdates");
        let began = Instant::now();
        let running = program.start();
        let first_poll = platform
            .wait_for("the first poll", |state| {
                let mut calls = state.calls().iter().filter(|call| call.method == "getUpdates");
                calls.nth(polls).map(|call| call.at)
            })
            .await;
        println!("round {round}: polls {:.0} ms after its start", ms(first_poll - began));
        tokio::time::sleep(IDLE).await;
        println!("  idle: {}", memory(&running));
        let mut longest = Duration::ZERO;
        for (user, _) in users.iter().skip(round * QUESTIONS).take(QUESTIONS) {
            longest = longest.max(ask(&platform, *user).await);
        }
        println!(
            "  after {QUESTIONS} questions: {}; the slowest answer took {:.1} ms",
            memory(&running),
            ms(longest)
        );
        running.stop_within(Duration::from_secs(10)).await;
    }

    morning(&platform, folder.path(), &users).await;
}

/// Seven in the morning, when everybody's reminder is due at once.
async fn morning(platform: &FakePlatform, folder: &Path, users: &[(i64, String)]) {
    let seven: DateTime<Utc> = "2026-04-21T07:00:00Z".parse().unwrap_or_default();
    let program = Program::new(platform, folder).clock_from(seven - TimeDelta::seconds(3));
    let before = platform.read().sent().len();
    let running = program.start();
    let limit = Duration::from_mins(1);
    let sent = |state: &State| state.sent().len() - before;
    platform.wait_within(limit, "a reminder", |state| (sent(state) > 0).then_some(())).await;
    println!(
        "all mornings due: the first reminder comes {} ms after seven",
        (program.now() - seven).num_milliseconds()
    );
    let asker = users.first().map_or(0, |(user, _)| *user);
    println!("  a question meanwhile is answered in {:.0} ms", ms(ask(platform, asker).await));
    tokio::time::sleep(Duration::from_secs(5)).await;
    let sent = sent(&platform.read());
    println!(
        "  {} s after seven {sent} messages were sent; {}",
        (program.now() - seven).num_seconds(),
        memory(&running)
    );
    running.stop_within(Duration::from_secs(10)).await;
}

async fn ask(platform: &FakePlatform, user: i64) -> Duration {
    let before = platform.read().sent_to(user).len();
    let asked = Instant::now();
    platform.user_says(user, "what can I sow now?");
    let answered = platform
        .wait_for("an answer", |state| {
            let sent = state.sent_to(user);
            let mut new = sent.iter().skip(before);
            new.find(|reply| !reply.text.starts_with("Good morning")).map(|reply| reply.sent_at)
        })
        .await;
    answered - asked
}

fn memory(running: &Running) -> String {
    let mib = |line| running.memory(line).map_or(0, |kib| kib / 1024);
    format!("{} MiB resident, {} MiB at most", mib("VmRSS"), mib("VmHWM"))
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}

#[expect(clippy::cast_precision_loss, reason = "a size in megabytes, to one digit")]
fn mb(bytes: u64) -> f64 {
    bytes as f64 / 1_000_000.0
}

//! What a tick costs: one where nobody is due, and the morning of 10,000 members, in a store with
//! 10,000 members and in one with 100,000.
//!
//! `cargo bench --bench mornings`. The cost should follow the number due, not the number kept, so
//! what counts is the ratio between the two stores, measured in one run. The app runs within the
//! bench, on a database file; nothing is sent, since sending is bounded by the platform's limits.
//! Memory is the kernel's account of the bench's process (`VmHWM`, reset before each measure),
//! which Linux alone gives.

#![allow(clippy::panic, clippy::print_stdout, reason = "a bench prints, and stops where it fails")]

#[path = "../tests/whole/filled.rs"]
mod filled;

use std::sync::Arc;
use std::time::{Duration, Instant};

use chrono::{DateTime, TimeDelta, Utc};
use sowbell::app::App;
use sowbell::catalogue::Catalogue;
use sowbell::chat::Knowledge;
use sowbell::planning::CropId;
use sowbell::store::Store;
use sqlx::Connection;

const DUE: usize = 10_000;
const STORES: [usize; 2] = [10_000, 100_000];
const CROPS_EACH: usize = 20;
const IDLE_TICKS: usize = 200;
const MORNINGS: usize = 3;

#[tokio::main]
async fn main() {
    if !std::env::args().any(|argument| argument == "--bench") {
        println!("a bench: run it with cargo bench --bench mornings");
        return;
    }
    let mut idle = Vec::new();
    let mut mornings = Vec::new();
    for members in STORES {
        let (of_idle, of_morning) = measure(members).await;
        idle.push(of_idle);
        mornings.push(of_morning);
    }
    for (what, times) in [("a tick where nobody is due", idle), ("a morning", mornings)] {
        if let [few, many] = times.as_slice() {
            let ratio = many.as_secs_f64() / few.as_secs_f64();
            println!("{what}: {ratio:.2} times as long with ten times the members kept");
        }
    }
}

/// The median time of an idle tick and of a morning, with so many members kept.
async fn measure(members: usize) -> (Duration, Duration) {
    let folder = tempfile::tempdir().unwrap_or_else(|error| panic!("no folder: {error}"));
    let file = folder.path().join("sowbell.db");
    let url = format!("sqlite://{}", file.display());
    let evening: DateTime<Utc> = "2026-04-19T20:00:00Z".parse().unwrap_or_default();
    let users: Vec<(i64, String)> =
        (1..=members).map(|n| (i64::try_from(n).unwrap_or(0), format!("Member {n}"))).collect();
    let catalogue = Catalogue::embedded().unwrap_or_else(|error| panic!("{error}"));
    let ids: Vec<CropId> = catalogue.iter().map(|crop| crop.id.clone()).collect();
    let crops =
        |n: usize| ids.iter().cycle().skip(n % ids.len()).take(CROPS_EACH).cloned().collect();
    let filled = filled::fill(&url, &users, crops, evening).await;
    filled.unwrap_or_else(|error| panic!("not filled: {error}"));
    let others = others_have_a_rest(&url).await;
    others.unwrap_or_else(|error| panic!("not filled: {error}"));
    let size = std::fs::metadata(&file).map_or(0, |file| file.len()) / 1_000_000;
    println!("{members} members with {CROPS_EACH} crops each; the file has {size} MB");

    let store = Store::open(&url).await.unwrap_or_else(|error| panic!("{error}"));
    let knowledge = Knowledge::embedded().unwrap_or_else(|error| panic!("{error}"));
    let app = App::new(store, Arc::new(knowledge));
    let tick = async |now: DateTime<Utc>| {
        let began = Instant::now();
        let due = app.tick(now).await.unwrap_or_else(|error| panic!("{error}"));
        app.next_tick(now).await.unwrap_or_else(|error| panic!("{error}"));
        (due, began.elapsed())
    };

    forget_peak();
    let mut idle = Vec::new();
    for n in 0..IDLE_TICKS {
        let (due, time) = tick(evening + TimeDelta::seconds(i64::try_from(n).unwrap_or(0))).await;
        assert_eq!(due, 0, "somebody was due in the evening");
        idle.push(time);
    }
    let idle = median(idle);
    println!("  a tick where nobody is due: {:.3} ms; {}", ms(idle), peak());

    let mut mornings = Vec::new();
    for day in 1..=MORNINGS {
        let day = TimeDelta::days(i64::try_from(day).unwrap_or(0));
        forget_peak();
        let spent = spent();
        let (due, time) = tick(evening + day - TimeDelta::hours(13)).await;
        assert_eq!(due, DUE, "not those of the morning");
        let spent = self::spent().zip(spent).map(|(after, before)| after.saturating_sub(before));
        let spent =
            spent.map_or_else(String::new, |spent| format!(" ({:.0} ms of CPU)", ms(spent)));
        println!("  a morning with {due} due: {:.0} ms{spent}; {}", ms(time), peak());
        mornings.push(time);
    }
    (idle, median(mornings))
}

/// Nobody but the first members is due in the days of the bench.
async fn others_have_a_rest(url: &str) -> sqlx::Result<()> {
    let mut file = sqlx::SqliteConnection::connect(url).await?;
    let next_year: DateTime<Utc> = "2027-01-01T07:00:00Z".parse().unwrap_or_default();
    sqlx::query("UPDATE members SET next_reminder_at = $1 WHERE id > $2")
        .bind(next_year)
        .bind(i64::try_from(DUE).unwrap_or(0))
        .execute(&mut file)
        .await?;
    file.close().await
}

fn median(mut times: Vec<Duration>) -> Duration {
    times.sort_unstable();
    times.get(times.len() / 2).copied().unwrap_or_default()
}

/// Lets the kernel begin a new account of the most memory held.
fn forget_peak() {
    // Without it the account goes on from the start, which is more and never less.
    let _ = std::fs::write("/proc/self/clear_refs", "5");
}

fn peak() -> String {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find(|line| line.starts_with("VmHWM"));
    let kib = line.and_then(|line| line.split_whitespace().nth(1)?.parse::<u64>().ok());
    kib.map_or_else(|| "memory unknown".to_owned(), |kib| format!("{} MiB at most", kib / 1024))
}

/// The CPU time that the process has used, which says more than a clock on a busy machine. The
/// kernel's account is in hundredths of a second.
fn spent() -> Option<Duration> {
    let status = std::fs::read_to_string("/proc/self/stat").ok()?;
    // The name of the process, in parentheses, may hold anything.
    let (_, fields) = status.rsplit_once(')')?;
    let ticks = |field: usize| fields.split_whitespace().nth(field)?.parse::<u64>().ok();
    Some(Duration::from_millis((ticks(11)? + ticks(12)?) * 10))
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}

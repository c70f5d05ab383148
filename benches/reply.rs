//! How long a member waits for an answer: from the moment the platform has the question to the
//! moment it has the reply.
//!
//! `cargo bench --bench reply`. The running program is the real one, in the release profile, on a
//! database file; the chat platform is the one of the tests, on the same machine, so no network
//! is in the figures. Questions are asked one after the other: each is answered before the next.

#![allow(clippy::panic, clippy::print_stdout, reason = "a bench prints, and stops where it fails")]

#[path = "../tests/whole/filled.rs"]
mod filled;
#[path = "../tests/whole/platform/mod.rs"]
mod platform;
#[path = "../tests/whole/process.rs"]
mod process;

use std::time::{Duration, Instant};

use chrono::Utc;
use sowbell::catalogue::Catalogue;
use sowbell::planning::CropId;

use platform::FakePlatform;
use process::Program;

const MEMBERS: usize = 50;
const GROUPS: usize = 5;
const CROPS_EACH: usize = 20;
const QUESTIONS: usize = 1000;
const ROUNDS: usize = 3;

/// What is asked in turn; `{}` stands for a crop.
const ASKED: [&str; 5] = [
    "can I start {} now?",
    "when do I plant out {}?",
    "what can I sow now?",
    "how deep do I sow {}?",
    "will {} still ripen?",
];

const CROPS: [&str; 8] =
    ["tomatoes", "peppers", "cucumbers", "kale", "leeks", "basil", "zinnias", "pumpkins"];

#[tokio::main]
async fn main() {
    if !std::env::args().any(|argument| argument == "--bench") {
        println!("a bench: run it with cargo bench --bench reply");
        return;
    }
    let folder = tempfile::tempdir().unwrap_or_else(|error| panic!("no folder: {error}"));
    let platform = FakePlatform::start().await;
    // So fast that no limit of a chat is met, which would be measured instead.
    let program = Program::new(&platform, folder.path()).send_rate(100_000);
    let users: Vec<(i64, String)> = (0..MEMBERS)
        .map(|number| {
            let name = format!("Member {number}");
            (platform.open_private(platform.add_user(&name, None)), name)
        })
        .collect();
    let groups = groups(&platform, &users);
    let catalogue = Catalogue::embedded().unwrap_or_else(|error| panic!("{error}"));
    let ids: Vec<CropId> = catalogue.iter().map(|crop| crop.id.clone()).collect();
    let crops = |member: usize| {
        ids.iter().cycle().skip(member * 7).take(CROPS_EACH).cloned().collect::<Vec<_>>()
    };
    let filled = filled::fill(&program.database_url(), &users, crops, Utc::now()).await;
    filled.unwrap_or_else(|error| panic!("not filled: {error}"));
    let running = program.start();
    platform.wait_for("the greetings", |state| (state.sent().len() == GROUPS).then_some(())).await;

    println!(
        "{QUESTIONS} questions one after the other, half in private and half in {GROUPS} groups, \
         by {MEMBERS} members with {CROPS_EACH} crops each; platform on the same machine:"
    );
    for round in 1..=ROUNDS {
        let mut private = Vec::new();
        let mut in_groups = Vec::new();
        for number in 0..QUESTIONS {
            let place = number / 2;
            let (user, _) = users.get(place % MEMBERS).unwrap_or_else(|| panic!("a member"));
            let asked = ASKED.iter().cycle().nth(place).unwrap_or(&"");
            let crop = CROPS.iter().cycle().nth(place / ASKED.len()).unwrap_or(&"");
            let question = asked.replace("{}", crop);
            if number % 2 == 0 {
                private.push(time_of(&platform, *user, *user, &question).await);
            } else {
                let group = groups.get(place % GROUPS).unwrap_or_else(|| panic!("a group"));
                let question = format!("/ask@{} {question}", platform.bot_username());
                in_groups.push(time_of(&platform, *group, *user, &question).await);
            }
        }
        println!("round {round}: private {}; groups {}", line(private), line(in_groups));
    }
    let resident = running.memory("VmRSS").unwrap_or_default();
    println!("resident afterwards: {resident} KiB");
    running.stop_within(Duration::from_secs(10)).await;
    for violation in platform.violations() {
        println!("the platform objects: {violation}");
    }
}

fn groups(platform: &FakePlatform, users: &[(i64, String)]) -> Vec<i64> {
    let Some(((creator, _), others)) = users.split_first() else { return Vec::new() };
    let mut groups = Vec::new();
    for number in 0..GROUPS {
        let group = platform.create_supergroup(&format!("Group {number}"), *creator);
        for (user, _) in others {
            platform.join(group, *user);
        }
        platform.add_bot_to_group(group, *creator);
        groups.push(group);
    }
    groups
}

/// From the question to its reply.
async fn time_of(platform: &FakePlatform, chat: i64, user: i64, question: &str) -> Duration {
    let before = platform.read().sent_to(chat).len();
    let asked = Instant::now();
    platform.user_says_in(chat, user, question, None, None);
    let answered = platform
        .wait_for("an answer", |state| state.sent_to(chat).get(before).map(|reply| reply.sent_at))
        .await;
    answered - asked
}

fn line(mut times: Vec<Duration>) -> String {
    times.sort_unstable();
    let part = |percent: usize| {
        let place = (times.len() * percent).div_ceil(100).saturating_sub(1);
        times.get(place).map_or(0.0, |time| time.as_secs_f64() * 1000.0)
    };
    format!(
        "median {:.1} ms, 99 % within {:.1} ms, longest {:.1} ms",
        part(50),
        part(99),
        part(100)
    )
}

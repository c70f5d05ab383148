//! A simulated year: members of many zones and their clubs, a platform that limits, fails and
//! stalls, groups that become supergroups, and a program that is killed, all in virtual time and
//! from a seed.
//!
//! Nothing waits and nothing is random but by the seed, so a seed that fails fails again, at the
//! same moment and with the same words. `SOWBELL_YEARS=n` runs n whole years of 200 members,
//! beginning with the seed `SOWBELL_SEED` (1 unless set); `SOWBELL_MEMBERS` and `SOWBELL_DAYS`
//! make them smaller, and `SOWBELL_SHOW` prints what the person of this number does. A run that
//! fails says with which of these it fails again, and one that ends prints a line.

#![allow(
    clippy::panic,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::print_stderr,
    reason = "a test stops where it is wrong, and says how it went"
)]

mod agenda;
mod checks;
mod clubs;
mod doing;
mod fuse;
mod hearing;
mod kills;
mod letters;
mod list_words;
mod people;
mod platform;
mod process;
mod replay;
mod report;
mod running;
mod rush;
mod said;
mod talk;
mod told;
mod world;

use report::{Plan, Report};
use world::World;

fn number(variable: &str) -> Option<u64> {
    std::env::var(variable).ok()?.parse().ok()
}

async fn year(plan: Plan) -> Report {
    let report = World::new(plan).await.run().await;
    eprintln!("{report}");
    report
}

/// A number of things that a variable says, or as many as usual.
fn size(variable: &str, usual: usize) -> usize {
    number(variable).and_then(|number| usize::try_from(number).ok()).unwrap_or(usual)
}

#[tokio::test]
async fn years_from_a_few_seeds() {
    let seed = number("SOWBELL_SEED");
    let years = number("SOWBELL_YEARS").or(seed.map(|_| 1));
    if let Some(years) = years {
        let members = size("SOWBELL_MEMBERS", 200);
        let days = i64::try_from(size("SOWBELL_DAYS", 365)).expect("a number of days");
        let first = seed.unwrap_or(1);
        for seed in first..first + years {
            year(Plan { seed, members, days }).await;
        }
        return;
    }
    for (seed, members, days) in [(11, 8, 365), (12, 30, 60), (13, 30, 60)] {
        let report = year(Plan { seed, members, days }).await;
        // A year in which nothing happens shows nothing.
        assert!(report.reminders > 50 && report.accepted > 300, "{report}");
        assert!(report.kills() > 10 && report.repeats() > 0, "{report}");
        assert!(report.lists_told > 5 && report.weeks > 2 && report.refusals > 1, "{report}");
    }
}

#[tokio::test]
async fn a_seed_gives_the_same_year_again() {
    let plan = Plan { seed: 5, members: 12, days: 40 };
    let (one, again) = (year(plan).await, year(plan).await);
    assert_eq!(one.digest, again.digest, "{one}\n{again}");
    assert_eq!(one.to_string(), again.to_string());
    let other = year(Plan { seed: plan.seed + 1, ..plan }).await;
    assert_ne!(one.digest, other.digest, "the seed decides nothing");
}

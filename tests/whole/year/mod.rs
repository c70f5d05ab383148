//! A simulated year: members of many zones, a platform that limits, fails and stalls, and a
//! program that is killed, all in virtual time and from a seed.
//!
//! Nothing waits and nothing is random but by the seed, so a seed that fails fails again, at the
//! same moment and with the same words. `SOWBELL_YEARS=n` runs n whole years of 200 members,
//! beginning with the seed `SOWBELL_SEED` (1 unless set); each run prints a line.

#![allow(
    clippy::panic,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::print_stderr,
    reason = "a test stops where it is wrong, and says how it went"
)]

mod agenda;
mod checks;
mod fuse;
mod letters;
mod people;
mod platform;
mod process;
mod replay;
mod talk;
mod world;

use world::{Plan, Report, World};

fn number(variable: &str) -> Option<u64> {
    std::env::var(variable).ok()?.parse().ok()
}

async fn year(plan: Plan) -> Report {
    let report = World::new(plan).await.run().await;
    eprintln!("{report}");
    report
}

#[tokio::test]
async fn zz_one() {
    let (seed, members, days) =
        (number("S").unwrap_or(1), number("M").unwrap_or(40), number("D").unwrap_or(90));
    for seed in seed..seed + number("N").unwrap_or(1) {
        year(Plan { seed, members: members as usize, days: days as i64 }).await;
    }
}

#[tokio::test]
async fn years_of_two_clubs() {
    if let Some(years) = number("SOWBELL_YEARS") {
        let first = number("SOWBELL_SEED").unwrap_or(1);
        for seed in first..first + years {
            year(Plan { seed, members: 200, days: 365 }).await;
        }
        return;
    }
    for (seed, members, days) in [(11, 16, 365), (12, 40, 90), (13, 40, 90)] {
        let seed = number("SOWBELL_SEED").unwrap_or(seed);
        let report = year(Plan { seed, members, days }).await;
        // A year in which nothing happens shows nothing.
        assert!(report.reminders > 50 && report.accepted > 500, "{report}");
        assert!(report.kills() > 10 && report.repeats() > 0, "{report}");
    }
}

#[tokio::test]
async fn a_seed_gives_the_same_year_again() {
    let plan = Plan { seed: number("SOWBELL_SEED").unwrap_or(5), members: 12, days: 40 };
    let (one, again) = (year(plan).await, year(plan).await);
    assert_eq!(one.digest, again.digest, "{one}\n{again}");
    assert_eq!(one.to_string(), again.to_string());
    let other = year(Plan { seed: plan.seed + 1, ..plan }).await;
    assert_ne!(one.digest, other.digest, "the seed decides nothing");
}

//! Clubs: which one is a member's, joining, leaving, closing and merging.

use chrono_tz::Tz;

use super::{at, bench, group, private, say};
use crate::chat::Change;
use crate::club::Club;
use crate::messages::Priority;
use crate::planning::Frost;

fn open(title: &str) -> Change {
    Change::OpenClub { title: title.to_owned() }
}

fn id(club: Option<Club>) -> Option<i64> {
    club.map(|club| club.id)
}

#[tokio::test]
async fn in_private_the_club_joined_last_counts() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    let elm = id(bench.keep(&group(7, -5), &[open("Elm Row")], now).await.unwrap().club).unwrap();
    let oak = id(bench.keep(&group(7, -6), &[open("Oak Lane")], now).await.unwrap().club).unwrap();
    assert_ne!(elm, oak);
    assert_eq!(id(bench.keep(&private(7), &[], now).await.unwrap().club), None);

    let mine = |change: Vec<Change>, minutes| {
        let bench = &bench;
        async move {
            let now = now + chrono::TimeDelta::minutes(minutes);
            id(bench.keep(&private(7), &change, now).await.expect("kept").club)
        }
    };
    assert_eq!(mine(vec![Change::JoinClub(elm)], 1).await, Some(elm));
    assert_eq!(mine(vec![Change::JoinClub(oak)], 2).await, Some(oak));
    // Being noticed in a group again is no wish; asking for a club again is one.
    bench.keep(&group(7, -5), &[Change::JoinClub(elm)], at("2026-04-10T06:03:00Z")).await.unwrap();
    assert_eq!(mine(vec![], 4).await, Some(oak));
    assert_eq!(mine(vec![Change::JoinClub(elm)], 5).await, Some(elm));
    bench.keep(&group(7, -5), &[Change::LeaveClub], at("2026-04-10T06:06:00Z")).await.unwrap();
    assert_eq!(mine(vec![], 7).await, Some(oak));
    bench.keep(&group(7, -6), &[Change::CloseClub], at("2026-04-10T06:08:00Z")).await.unwrap();
    assert_eq!(mine(vec![], 9).await, None);
    // The group is there again, and so is its club with its members.
    let again = bench.keep(&group(7, -6), &[open("Oak Lane 2")], at("2026-04-10T06:10:00Z")).await;
    let again = again.unwrap().club.unwrap();
    assert_eq!((again.id, again.title.as_str(), again.chat), (oak, "Oak Lane 2", Some(-6)));
    assert_eq!(mine(vec![], 11).await, Some(oak));
}

#[tokio::test]
async fn join_tokens_lead_to_open_clubs_only() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    let club = bench.keep(&group(7, -5), &[open("Elm Row")], now).await.unwrap().club.unwrap();
    let other = bench.keep(&group(7, -6), &[open("Oak Lane")], now).await.unwrap().club.unwrap();
    assert!(club.join_token.len() >= 16 && club.join_token != other.join_token);
    assert!(club.join_token.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_'));
    let invited = |token: &'static str| {
        let (bench, token) = (&bench, token.replace("ELM", &club.join_token));
        async move {
            let mut work = bench.store.begin().await.expect("a transaction");
            id(work.facts(&private(8), Some(&token), now).await.expect("facts").invited_to)
        }
    };
    assert_eq!(invited("ELM").await, Some(club.id));
    assert_eq!(invited("nobody's").await, None);
    bench.keep(&group(7, -5), &[Change::CloseClub], now).await.unwrap();
    assert_eq!(invited("ELM").await, None);
}

#[tokio::test]
async fn a_closed_club_gets_nothing_that_waited_for_it() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    bench.keep(&group(7, -5), &[open("Elm Row")], now).await.unwrap();
    let in_group = bench.queue(&say(-5, "hello"), Priority::Reply, now).await;
    let elsewhere = bench.queue(&say(-6, "hello"), Priority::Reply, now).await;
    for _ in 0..2 {
        bench.keep(&group(7, -5), &[Change::CloseClub], now).await.unwrap();
    }
    assert_eq!(bench.outcome(in_group).await.as_deref(), Some("cancelled"));
    assert_eq!(bench.waiting(now).await, [elsewhere]);
    assert_eq!(bench.store.counts().await.unwrap().clubs, 0);
}

#[tokio::test]
async fn settings_follow_the_opening_within_one_update() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    let changes = [
        open("Elm Row"),
        Change::ClubFrost(Some(Frost::Free)),
        Change::ClubZone(Some(Tz::Europe__Oslo)),
        Change::ClubLanguage(Some("nb-NO".parse().unwrap())),
    ];
    let club = bench.keep(&group(7, -5), &changes, now).await.unwrap().club.unwrap();
    assert_eq!(club.frost, Some(Frost::Free));
    assert_eq!(club.zone, Some(Tz::Europe__Oslo));
    assert_eq!(club.language.unwrap().to_string(), "nb-NO");
    // A change of a club where there is none is passed over.
    let none = bench.keep(&group(7, -6), &[Change::ClubZone(None)], now).await.unwrap();
    assert_eq!(none.club, None);
    let cleared = [Change::ClubFrost(None), Change::ClubZone(None), Change::ClubLanguage(None)];
    let club = bench.keep(&group(7, -5), &cleared, now).await.unwrap().club.unwrap();
    assert_eq!((club.frost, club.zone, club.language), (None, None, None));
}

#[tokio::test]
async fn a_second_club_made_by_a_move_is_merged_into_the_first() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    let changes = [open("Elm Row"), Change::ClubZone(Some(Tz::Europe__Oslo))];
    let first = bench.keep(&group(7, -5), &changes, now).await.unwrap().club.unwrap();
    bench.keep(&private(7), &[Change::JoinClub(first.id)], now).await.unwrap();
    // The bot is told that it was added to the new group before it is told of the move.
    let changes = [
        open("Elm Row"),
        Change::ClubZone(Some(Tz::Europe__Rome)),
        Change::ClubFrost(Some(Frost::Free)),
    ];
    let second = bench.keep(&group(7, -1_005), &changes, now).await.unwrap().club.unwrap();
    assert_ne!(first.id, second.id);
    bench.keep(&private(8), &[Change::JoinClub(second.id)], now).await.unwrap();
    for _ in 0..2 {
        bench.keep(&group(7, -5), &[Change::MoveClub { to: -1_005 }], now).await.unwrap();
    }

    let club = bench.keep(&group(7, -1_005), &[], now).await.unwrap().club.unwrap();
    assert_eq!((club.id, club.zone, club.frost), (first.id, first.zone, Some(Frost::Free)));
    for user in [7, 8] {
        let mine = bench.keep(&private(user), &[], now).await.unwrap().club;
        assert_eq!(id(mine), Some(first.id), "{user}");
    }
    assert_eq!(bench.store.counts().await.unwrap().clubs, 1);
    // Buttons of both greetings lead into the club, and so does a decision that still names it.
    let mut work = bench.store.begin().await.unwrap();
    for token in [&first.join_token, &second.join_token] {
        let facts = work.facts(&private(9), Some(token), now).await.unwrap();
        assert_eq!(id(facts.invited_to), Some(first.id));
    }
    let facts = work.facts(&private(9), None, now).await.unwrap();
    work.apply(&facts, &private(9), &Change::JoinClub(second.id), now).await.unwrap();
    assert_eq!(id(work.facts(&private(9), None, now).await.unwrap().club), Some(first.id));
}

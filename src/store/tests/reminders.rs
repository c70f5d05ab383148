//! Reminders that a change or a failure makes untrue before they are sent.

use chrono::TimeDelta;
use chrono_tz::Tz;

use super::{Bench, at, bench, date, group, morning, private};
use crate::chat::Change;
use crate::club::{Mark, MemberId, ReminderTime};
use crate::planning::{CropId, Frost};
use crate::store::{SendEnd, Store};

/// A member with a crop, whose reminder of 10 April waits and names a job for the second time.
async fn waiting_reminder(bench: &Bench) -> (MemberId, i64) {
    let yesterday = at("2026-04-09T07:00:00Z");
    let now = at("2026-04-10T07:00:00Z");
    let member = bench.member(7, yesterday - TimeDelta::hours(1)).await.expect("a member");
    let crops = Change::AddCrops(vec![CropId::new("pea")]);
    bench.keep(&private(7), &[crops], yesterday - TimeDelta::hours(1)).await.expect("kept");
    let first = morning(member, 7, "2026-04-09", &["pea.so.s.2026"]);
    bench.store.keep_mornings(&[first], yesterday).await.expect("kept");
    let sent = bench.waiting(yesterday).await[0];
    let sent_as = SendEnd::Sent { message: Some(1) };
    bench.store.settle(sent, &sent_as, yesterday).await.expect("settled");
    let second = morning(member, 7, "2026-04-10", &["pea.so.s.2026", "beet.so.s.2026"]);
    bench.store.keep_mornings(&[second], now).await.expect("kept");
    (member, bench.waiting(now).await[0])
}

/// The jobs with the date of the last reminder that named each.
async fn named(bench: &Bench) -> Vec<String> {
    let facts = bench.keep(&private(7), &[], at("2026-04-10T07:00:00Z")).await.expect("facts");
    let text = |mark: &crate::club::JobMark| {
        format!("{} {}", mark.key, mark.named_on.map(|on| on.to_string()).unwrap_or_default())
    };
    facts.marks.iter().map(text).collect()
}

#[tokio::test]
async fn a_change_cancels_the_reminder_that_waits_and_the_morning_is_made_again() {
    let later = Change::MemberReminderTime(ReminderTime::from_minutes(540).unwrap());
    for change in [
        Change::MemberFrost(Some(Frost::Free)),
        Change::MemberZone(Some(Tz::Europe__Oslo)),
        Change::MemberHotAndWet(Some("May, June".to_owned())),
        Change::MemberHold(Some("2026-04-10/2026-04-17".parse().unwrap())),
        Change::MemberPlace(Some(crate::planning::Place::Windowsill)),
        Change::MemberCover(Some(crate::planning::Cover::Tunnel)),
        Change::MemberLanguage(Some("de".parse().unwrap())),
        later,
        Change::AddCrops(vec![CropId::new("beet")]),
        Change::DropCrops(vec![CropId::new("pea")]),
    ] {
        let bench = bench().await;
        let (member, row) = waiting_reminder(&bench).await;
        let both = ["beet.so.s.2026 2026-04-10", "pea.so.s.2026 2026-04-10"];
        assert_eq!(named(&bench).await, both);
        let now = at("2026-04-10T07:00:05Z");
        bench.keep(&private(7), std::slice::from_ref(&change), now).await.unwrap();
        assert_eq!(bench.outcome(row).await.as_deref(), Some("cancelled"), "{change:?}");
        assert_eq!(bench.next_reminder(member).await, Some(now), "{change:?}");
        // What it would have named was not named: yesterday's reminder was the last that did.
        assert_eq!(named(&bench).await, ["pea.so.s.2026 2026-04-09"], "{change:?}");

        let again = morning(member, 7, "2026-04-10", &["beet.so.s.2026"]);
        bench.store.keep_mornings(&[again], now).await.unwrap();
        assert_eq!(bench.waiting(now).await, [row + 1], "{change:?}");
    }
}

#[tokio::test]
async fn a_reminder_that_is_under_way_is_taken_back_only_when_it_was_not_sent() {
    let now = at("2026-04-10T07:00:05Z");
    let tomorrow = at("2026-04-11T07:00:00Z");
    let sent = SendEnd::Sent { message: Some(2) };
    let limited = SendEnd::Retry { at: now, counts: false, why: "told to wait".to_owned() };
    for (end, outcome, next) in [(sent, "sent", tomorrow), (limited, "cancelled", now)] {
        let bench = bench().await;
        let (member, row) = waiting_reminder(&bench).await;
        let up = bench.store.take_up(now, &[], 9).await.unwrap();
        assert_eq!(up.iter().map(|queued| queued.id).collect::<Vec<_>>(), [row]);
        // The member has read it already and says that the peas are sown.
        let sown = Change::DropCrops(vec![CropId::new("pea")]);
        bench.keep(&private(7), &[sown], now).await.unwrap();
        assert_eq!(bench.outcome(row).await, None);
        assert_eq!(bench.next_reminder(member).await, Some(tomorrow));
        bench.store.settle(row, &end, now).await.unwrap();
        assert_eq!(bench.outcome(row).await.as_deref(), Some(outcome));
        assert_eq!(bench.next_reminder(member).await, Some(next), "{outcome}");
    }
}

#[tokio::test]
async fn a_reminder_that_became_untrue_under_way_is_not_sent_again_after_a_crash() {
    let (now, soon) = (at("2026-04-10T07:00:05Z"), at("2026-04-10T07:00:20Z"));
    for (changes, waits) in [(true, false), (false, true)] {
        let bench = bench().await;
        let (member, row) = waiting_reminder(&bench).await;
        assert_eq!(bench.store.take_up(now, &[], 9).await.unwrap().len(), 1);
        if changes {
            let moved = Change::MemberZone(Some(Tz::Pacific__Auckland));
            bench.keep(&private(7), &[moved], now).await.unwrap();
        }
        // The program is killed before the platform answers, and starts again.
        let again = Store::open(&bench.url).await.unwrap();
        let up = again.take_up(soon, &[], 9).await.unwrap();
        assert_eq!(up.iter().any(|queued| queued.id == row), waits);
        assert_eq!(bench.outcome(row).await.as_deref(), changes.then_some("cancelled"));
        // And the morning is made anew, for the day it is now.
        assert_eq!(bench.next_reminder(member).await == Some(soon), changes);
    }
}

#[tokio::test]
async fn a_reminder_that_was_taken_back_is_not_taken_up() {
    let bench = bench().await;
    let (_, row) = waiting_reminder(&bench).await;
    let now = at("2026-04-10T07:00:05Z");
    let mut work = bench.store.begin().await.unwrap();
    let taking_up = {
        let store = bench.store.clone();
        tokio::spawn(async move { store.take_up(now, &[], 9).await })
    };
    let change = Change::MemberFrost(Some(Frost::Free));
    let facts = work.facts(&private(7), None, now).await.unwrap();
    work.apply(&facts, &private(7), &change, now).await.unwrap();
    tokio::task::yield_now().await;
    work.commit().await.unwrap();
    assert_eq!(taking_up.await.unwrap().unwrap(), []);
    assert_eq!(bench.outcome(row).await.as_deref(), Some("cancelled"));
}

#[tokio::test]
async fn what_changes_nothing_cancels_nothing() {
    let bench = bench().await;
    let (member, row) = waiting_reminder(&bench).await;
    let now = at("2026-04-10T07:00:05Z");
    let changes = [
        Change::AddCrops(vec![CropId::new("pea")]),
        Change::DropCrops(vec![CropId::new("leek")]),
        Change::Expect(None),
        Change::MemberReachable(true),
    ];
    bench.keep(&private(7), &changes, now).await.unwrap();
    assert_eq!(bench.waiting(now).await, [row]);
    assert_eq!(bench.next_reminder(member).await, Some(at("2026-04-11T07:00:00Z")));
}

#[tokio::test]
async fn a_job_that_is_done_is_not_named_again_by_what_waits() {
    let bench = bench().await;
    let (member, row) = waiting_reminder(&bench).await;
    let now = at("2026-04-10T07:00:05Z");
    let done = Some(Mark::Done(date("2026-04-10")));
    let key: crate::planning::JobKey = "beet.so.s.2026".parse().unwrap();
    let facts = bench.keep(&private(7), &[Change::MarkJob(key.clone(), done)], now).await.unwrap();
    assert_eq!(facts.marks[0].mark, done);
    assert_eq!(bench.outcome(row).await.as_deref(), Some("cancelled"));
    assert_eq!(bench.next_reminder(member).await, Some(now));
    // Taken back, nothing is left to keep of it.
    let facts = bench.keep(&private(7), &[Change::MarkJob(key, None)], now).await.unwrap();
    assert_eq!(facts.marks.len(), 1);
    assert_eq!(facts.marks[0].key.to_string(), "pea.so.s.2026");
}

#[tokio::test]
async fn the_clubs_frost_touches_those_who_have_none_of_their_own() {
    let bench = bench().await;
    let (_, row) = waiting_reminder(&bench).await;
    let now = at("2026-04-10T07:00:05Z");
    let open = Change::OpenClub { title: "Elm Row".to_owned() };
    let club = bench.keep(&group(9, -5), &[open], now).await.unwrap().club.unwrap().id;
    let frost = || Change::ClubFrost(Some(Frost::Free));
    bench.keep(&group(9, -5), &[frost()], now).await.unwrap();
    assert_eq!(bench.outcome(row).await, None, "a stranger to the club");
    let own = [Change::MemberFrost(Some(Frost::Free)), Change::JoinClub(club)];
    let member = bench.keep(&private(7), &own, now).await.unwrap().member.id;
    let row = {
        let again = morning(member, 7, "2026-04-10", &[]);
        bench.store.keep_mornings(&[again], now).await.unwrap();
        bench.waiting(now).await[0]
    };
    bench.keep(&group(9, -5), &[frost()], now).await.unwrap();
    assert_eq!(bench.outcome(row).await, None, "a frost of their own");
    bench.keep(&private(7), &[Change::MemberFrost(None)], now).await.unwrap();
    let again = morning(member, 7, "2026-04-10", &[]);
    bench.store.keep_mornings(&[again], now).await.unwrap();
    let row = bench.waiting(now).await[0];
    bench.keep(&group(9, -5), &[frost()], now).await.unwrap();
    assert_eq!(bench.outcome(row).await.as_deref(), Some("cancelled"));
}

#[tokio::test]
async fn a_morning_that_is_due_is_not_moved_to_tomorrow() {
    let bench = bench().await;
    let member = bench.member(7, at("2026-04-09T12:00:00Z")).await.unwrap();
    // The time has come, and the tick has not looked yet.
    let now = at("2026-04-10T07:00:01Z");
    let changes = [
        Change::AddCrops(vec![CropId::new("pea")]),
        Change::MemberZone(Some(Tz::Europe__Oslo)),
        Change::MemberReachable(true),
    ];
    bench.keep(&private(7), &changes, now).await.unwrap();
    assert_eq!(bench.next_reminder(member).await, Some(at("2026-04-10T07:00:00Z")));
}

#[tokio::test]
async fn a_reminder_that_is_not_sent_named_nothing() {
    for how in [
        SendEnd::Expired,
        SendEnd::Failed { why: "no".to_owned() },
        SendEnd::Unreachable { why: "blocked".to_owned() },
    ] {
        let bench = bench().await;
        let (_, row) = waiting_reminder(&bench).await;
        bench.store.settle(row, &how, at("2026-04-10T08:00:00Z")).await.unwrap();
        assert_eq!(named(&bench).await, ["pea.so.s.2026 2026-04-09"], "{how:?}");
    }
}

#[tokio::test]
async fn one_who_blocked_the_bot_has_no_more_reminders() {
    let bench = bench().await;
    let (member, first) = waiting_reminder(&bench).await;
    let now = at("2026-04-11T07:00:00Z");
    bench.store.keep_mornings(&[morning(member, 7, "2026-04-11", &[])], now).await.unwrap();
    let gone = SendEnd::Unreachable { why: "blocked".to_owned() };
    bench.store.settle(first, &gone, now).await.unwrap();
    assert!(bench.waiting(now).await.is_empty());
    assert_eq!(bench.outcome(first + 1).await.as_deref(), Some("unreachable"));
    assert_eq!(bench.next_reminder(member).await, None);
    assert!(!bench.keep(&private(7), &[], now).await.unwrap().member.reachable);
    // A morning that was on its way is not kept either.
    bench.store.keep_mornings(&[morning(member, 7, "2026-04-12", &[])], now).await.unwrap();
    assert!(bench.waiting(now).await.is_empty());
    assert_eq!(bench.next_reminder(member).await, None);
}

#[tokio::test]
async fn one_that_has_passed_its_time_does_not_make_the_morning_again() {
    let bench = bench().await;
    let (member, row) = waiting_reminder(&bench).await;
    let evening = at("2026-04-10T20:00:00Z");
    bench.keep(&private(7), &[Change::MemberFrost(Some(Frost::Free))], evening).await.unwrap();
    assert_eq!(bench.outcome(row).await.as_deref(), Some("cancelled"));
    assert_eq!(bench.next_reminder(member).await, Some(at("2026-04-11T07:00:00Z")));
}

#[tokio::test]
async fn a_morning_in_one_transaction_sees_no_change_in_between() {
    let bench = bench().await;
    let member = bench.member(7, at("2026-04-09T12:00:00Z")).await.unwrap();
    let now = at("2026-04-10T07:00:00Z");
    let mut work = bench.store.begin().await.unwrap();
    let due = work.members_due(now, 9).await.unwrap();
    assert_eq!(due.len(), 1);
    let incoming = private(7);
    let changes = [Change::AddCrops(vec![CropId::new("pea")])];
    let change = bench.keep(&incoming, &changes, now);
    let tick = async {
        tokio::task::yield_now().await;
        work.keep_mornings(&[morning(member, 7, "2026-04-10", &[])], now).await.unwrap();
        work.commit().await.unwrap();
    };
    let (facts, ()) = tokio::join!(change, tick);
    assert_eq!(facts.unwrap().crops.len(), 1);
    // The change came after, and found the reminder that it made untrue.
    assert!(bench.waiting(now).await.is_empty());
    assert_eq!(bench.next_reminder(member).await, Some(now));
}

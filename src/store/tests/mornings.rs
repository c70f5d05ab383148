//! Who is due, when the next morning comes, and what is kept of it.

use chrono::TimeDelta;
use chrono_tz::Tz;

use super::{at, bench, group, morning, private};
use crate::chat::Change;
use crate::club::ReminderTime;
use crate::planning::CropId;
use crate::store::SendEnd;

fn hour(hour: u16) -> Change {
    Change::MemberReminderTime(ReminderTime::from_minutes(hour * 60).expect("a time"))
}

#[tokio::test]
async fn the_first_morning_is_set_by_reachability_zone_and_time() {
    let bench = bench().await;
    let now = at("2026-04-10T12:00:00Z");
    let someone = bench.keep(&private(7), &[], now).await.unwrap().member.id;
    assert_eq!(bench.next_reminder(someone).await, None);
    assert_eq!(bench.store.next_morning().await.unwrap(), None);
    // Seven in the morning in UTC, where nobody set a zone.
    let member = bench.member(7, now).await.unwrap();
    assert_eq!(bench.next_reminder(member).await, Some(at("2026-04-11T07:00:00Z")));
    // Oslo is two hours ahead in April: 07:00 there is 05:00 in UTC, and 16:00 is still to come.
    bench.keep(&private(7), &[Change::MemberZone(Some(Tz::Europe__Oslo))], now).await.unwrap();
    assert_eq!(bench.next_reminder(member).await, Some(at("2026-04-11T05:00:00Z")));
    bench.keep(&private(7), &[hour(16)], now).await.unwrap();
    assert_eq!(bench.next_reminder(member).await, Some(at("2026-04-10T14:00:00Z")));
    assert_eq!(bench.store.next_morning().await.unwrap(), Some(at("2026-04-10T14:00:00Z")));
    bench.keep(&private(7), &[Change::MemberReachable(false)], now).await.unwrap();
    assert_eq!(bench.next_reminder(member).await, None);
    bench.keep(&private(7), &[hour(7)], now).await.unwrap();
    assert_eq!(bench.next_reminder(member).await, None);
    assert_eq!(bench.store.next_morning().await.unwrap(), None);
}

#[tokio::test]
async fn the_clubs_zone_moves_those_who_inherit_it() {
    let bench = bench().await;
    let now = at("2026-04-10T12:00:00Z");
    let open = Change::OpenClub { title: "Elm Row".to_owned() };
    let club =
        bench.keep(&group(9, -5), std::slice::from_ref(&open), now).await.unwrap().club.unwrap().id;
    let heir = bench.member(7, now).await.unwrap();
    let settled = bench.member(8, now).await.unwrap();
    let stranger = bench.member(9, now).await.unwrap();
    bench.keep(&private(7), &[Change::JoinClub(club)], now).await.unwrap();
    let own = [Change::MemberZone(Some(Tz::UTC)), Change::JoinClub(club)];
    bench.keep(&private(8), &own, now).await.unwrap();

    let mut seen = Vec::new();
    // Denver is six hours behind in April, Oslo two ahead; without a club's zone it is UTC.
    for change in [
        Change::ClubZone(Some(Tz::America__Denver)),
        Change::CloseClub,
        open,
        Change::ClubZone(Some(Tz::Europe__Oslo)),
    ] {
        bench.keep(&group(9, -5), &[change], now).await.unwrap();
        seen.push(bench.next_reminder(heir).await.unwrap());
        for member in [settled, stranger] {
            assert_eq!(bench.next_reminder(member).await, Some(at("2026-04-11T07:00:00Z")));
        }
    }
    // At noon in UTC it is six in the morning in Denver: the reminder is still to come that day.
    let expected = [
        "2026-04-10T13:00:00Z",
        "2026-04-11T07:00:00Z",
        "2026-04-10T13:00:00Z",
        "2026-04-11T05:00:00Z",
    ];
    assert_eq!(seen, expected.map(at));
    bench.keep(&group(7, -5), &[Change::LeaveClub], now).await.unwrap();
    assert_eq!(bench.next_reminder(heir).await, Some(at("2026-04-11T07:00:00Z")));
}

#[tokio::test]
async fn those_due_come_with_what_their_morning_needs() {
    let bench = bench().await;
    let before = at("2026-04-09T12:00:00Z");
    let now = at("2026-04-10T07:00:00Z");
    let open = Change::OpenClub { title: "Elm Row".to_owned() };
    let club = bench.keep(&group(9, -5), &[open], before).await.unwrap().club.unwrap().id;
    let with = bench.member(7, before).await.unwrap();
    let alone = bench.member(8, before).await.unwrap();
    bench.keep(&private(9), &[], before).await.unwrap();
    let crops = ["zinnia", "beet", "pea"].map(CropId::new);
    let key = "pea.so.s.2026".parse().unwrap();
    let mark = Some(crate::club::Mark::Later("2026-04-12".parse().unwrap()));
    let changes = [
        Change::JoinClub(club),
        Change::AddCrops(crops.to_vec()),
        Change::AddCrops(vec![crops[1].clone()]),
        Change::MarkJob(key, mark),
    ];
    bench.keep(&private(7), &changes, before).await.unwrap();

    assert!(bench.store.members_due(now - TimeDelta::seconds(1), 9).await.unwrap().is_empty());
    let due = bench.store.members_due(now, 9).await.unwrap();
    assert_eq!(due.iter().map(|due| due.member.id).collect::<Vec<_>>(), [with, alone]);
    assert_eq!(due[0].club.as_ref().map(|club| club.id), Some(club));
    assert_eq!(due[0].crops, crops);
    assert_eq!((due[0].marks.len(), due[0].marks[0].mark), (1, mark));
    assert_eq!((due[1].club.is_none(), due[1].crops.len(), due[1].marks.len()), (true, 0, 0));
    assert_eq!(bench.store.members_due(now, 1).await.unwrap().len(), 1);

    // The one cannot be read any more; the other has their morning, and the rest of the day is
    // not spent on the first.
    bench.sql("UPDATE members SET units = 'ells' WHERE user_id = 7").await;
    let due = bench.store.members_due(now, 9).await.unwrap();
    assert_eq!(due.iter().map(|due| due.member.id).collect::<Vec<_>>(), [alone]);
    assert_eq!(bench.next_reminder(with).await, Some(now + TimeDelta::days(1)));
}

#[tokio::test]
async fn a_date_has_one_reminder() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let member = bench.member(7, now - TimeDelta::days(1)).await.unwrap();
    let first = morning(member, 7, "2026-04-10", &["pea.so.s.2026"]);
    bench.store.keep_mornings(std::slice::from_ref(&first), now).await.unwrap();
    let mut again = morning(member, 7, "2026-04-10", &["beet.so.s.2026"]);
    again.next = now + TimeDelta::hours(30);
    bench.store.keep_mornings(&[again.clone()], now).await.unwrap();

    let facts = bench.keep(&private(7), &[], now).await.unwrap();
    assert_eq!(facts.marks.len(), 1, "what was not said was not named");
    assert_eq!(facts.marks[0].key.to_string(), "pea.so.s.2026");
    assert_eq!(facts.marks[0].named_on, Some(first.date));
    assert_eq!(bench.next_reminder(member).await, Some(again.next));
    let waiting = bench.store.waiting(now, &[], 9).await.unwrap();
    assert_eq!(waiting.len(), 1);
    assert_eq!(waiting[0].member, Some(member));
    bench.store.settle(waiting[0].id, &SendEnd::Sent { message: Some(3) }, now).await.unwrap();
    bench.store.keep_mornings(&[again], now).await.unwrap();
    assert!(bench.waiting(now).await.is_empty());
    // The next date is another matter.
    let next = morning(member, 7, "2026-04-11", &[]);
    bench.store.keep_mornings(&[next], now).await.unwrap();
    assert_eq!(bench.waiting(now).await.len(), 1);
}

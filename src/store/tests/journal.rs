//! Recorded sowings, and changes that are taken back.

use chrono_tz::Tz;
use proptest::prelude::*;
use sqlx::Row as _;

use super::{Bench, at, bench, date, private};
use crate::chat::Change;
use crate::club::{Habits, Mark, ReminderTime, Sowing, Variety};
use crate::planning::{CropId, Label, Packet, Place, Span, Way};

fn sowing(crop: &str, on: &str) -> Sowing {
    Sowing {
        id: 0,
        crop: CropId::new(crop),
        variety: None,
        way: Way::Indoors,
        count: Some(12),
        sown_on: date(on),
        room_c: Some(18),
        label: Label::Spring,
        season: 2026,
        came_up_on: None,
        failed_on: None,
        ended_on: None,
        job: Some("basil.si.s.2026".parse().expect("a job")),
    }
}

fn variety(crop: &str, name: Option<&str>, days: i64) -> Variety {
    let days = Some(Span { low: days, high: days });
    let packet = Packet { days, ..Packet::default() };
    Variety { id: 0, crop: CropId::new(crop), name: name.map(ToOwned::to_owned), packet }
}

/// Everything that is kept of the members, a line a row, but for the journal itself.
async fn dump(bench: &Bench) -> Vec<String> {
    let mut lines = Vec::new();
    for (table, order) in [
        ("members", "id"),
        ("varieties", "id"),
        ("member_crops", "id"),
        ("job_marks", "member_id, job"),
        ("sowings", "id"),
    ] {
        let columns: Vec<String> =
            sqlx::query(sqlx::AssertSqlSafe(format!("PRAGMA table_info({table})")))
                .fetch_all(&bench.store.reader)
                .await
                .expect("columns")
                .iter()
                .map(|row| format!("quote({})", row.get::<String, _>("name")))
                .collect();
        let all =
            format!("SELECT {} AS line FROM {table} ORDER BY {order}", columns.join(" || '|' || "));
        let rows: Vec<String> = sqlx::query_scalar(sqlx::AssertSqlSafe(all))
            .fetch_all(&bench.store.reader)
            .await
            .expect("rows");
        lines.extend(rows.into_iter().map(|row| format!("{table}: {row}")));
    }
    lines
}

#[tokio::test]
async fn a_sowing_is_kept_changed_and_removed() {
    let bench = bench().await;
    let now = at("2026-04-22T08:00:00Z");
    let record = [Change::RecordSowing(sowing("basil", "2026-04-03"))];
    let facts = bench.keep(&private(7), &record, now).await.unwrap();
    let kept = Sowing { id: 1, ..sowing("basil", "2026-04-03") };
    assert_eq!(facts.sowings, std::slice::from_ref(&kept));
    let up = Sowing { came_up_on: Some(date("2026-04-12")), ..kept.clone() };
    let facts = bench.keep(&private(7), &[Change::KeepSowing(up.clone())], now).await.unwrap();
    assert_eq!(facts.sowings, [up]);
    // Nobody changes what is another's.
    let strange = [Change::KeepSowing(kept), Change::RemoveSowing(1)];
    assert!(bench.keep(&private(8), &strange, now).await.unwrap().sowings.is_empty());
    assert_eq!(bench.keep(&private(7), &[], now).await.unwrap().sowings.len(), 1);
    let facts = bench.keep(&private(7), &[Change::RemoveSowing(1)], now).await.unwrap();
    assert!(facts.sowings.is_empty());
    let again = [Change::RecordSowing(sowing("basil", "2026-04-03"))];
    let facts = bench.keep(&private(7), &again, now).await.unwrap();
    assert_eq!(facts.sowings[0].id, 2, "a number is never used again");
}

#[tokio::test]
async fn a_sowing_is_in_the_members_morning() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    bench.member(7, now).await.unwrap();
    let record = [Change::RecordSowing(sowing("basil", "2026-04-03"))];
    bench.keep(&private(7), &record, now).await.unwrap();
    let due = bench.store.members_due(at("2026-04-10T07:00:00Z"), 9).await.unwrap();
    assert_eq!(due[0].sowings.len(), 1);
}

#[tokio::test]
async fn a_variety_told_again_takes_the_place_of_the_old_one_and_is_followed() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    bench.member(7, now).await.unwrap();
    let keep = |name, days| [Change::KeepVariety(variety("pea", name, days))];
    bench.keep(&private(7), &keep(Some("Early Lantern"), 50), now).await.unwrap();
    bench.keep(&private(7), &keep(None, 60), now).await.unwrap();
    let before = dump(&bench).await;
    let facts = bench.keep(&private(7), &keep(Some("early lantern"), 51), now).await.unwrap();
    let names: Vec<Option<&str>> =
        facts.varieties.iter().map(|variety| variety.name.as_deref()).collect();
    assert_eq!(names, [None, Some("early lantern")]);
    let followed = crate::club::followed(&facts.varieties, &CropId::new("pea")).unwrap();
    assert_eq!((followed.id, followed.packet.days.unwrap().low), (3, 51));
    let due = bench.store.members_due(at("2026-04-10T07:00:00Z"), 9).await.unwrap();
    assert_eq!(due[0].varieties, facts.varieties);
    // Told once more it is no change, and nobody removes what is another's.
    let again = bench.keep(&private(7), &keep(Some("early lantern"), 51), now).await.unwrap();
    assert_eq!(again.next_change, facts.next_change);
    bench.keep(&private(8), &[Change::RemoveVariety(3)], now).await.unwrap();
    assert_eq!(bench.keep(&private(7), &[], now).await.unwrap().varieties.len(), 2);
    let last = facts.last_change.unwrap().number;
    bench.keep(&private(7), &[Change::Undo(last)], now).await.unwrap();
    // The other member's row came since.
    let after: Vec<String> = dump(&bench).await;
    assert!(before.iter().all(|line| after.contains(line)), "{before:?}\n{after:?}");
}

#[tokio::test]
async fn one_that_cannot_be_read_sets_only_its_member_aside() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    for user in [7, 8] {
        bench.member(user, now).await.unwrap();
        let record = [Change::RecordSowing(sowing("basil", "2026-04-03"))];
        bench.keep(&private(user), &record, now).await.unwrap();
    }
    bench.sql("UPDATE sowings SET way = 'sideways' WHERE id = 1").await;
    let due = bench.store.members_due(at("2026-04-10T07:00:00Z"), 9).await.unwrap();
    assert_eq!(due.iter().map(|due| due.member.user).collect::<Vec<_>>(), [8]);
}

#[tokio::test]
async fn changes_that_belong_together_are_taken_back_together_and_numbers_are_not_used_again() {
    let bench = bench().await;
    let now = at("2026-04-22T08:00:00Z");
    bench.keep(&private(7), &[Change::AddCrops(vec![CropId::new("pea")])], now).await.unwrap();
    let before = dump(&bench).await;
    let job: crate::planning::JobKey = "basil.si.s.2026".parse().unwrap();
    let together = Change::Together(vec![
        Change::AddCrops(vec![CropId::new("basil")]),
        Change::RecordSowing(sowing("basil", "2026-04-03")),
        Change::MarkJob(job, Some(Mark::Done(date("2026-04-22")))),
    ]);
    let facts = bench.keep(&private(7), &[together], now).await.unwrap();
    let last = facts.last_change.unwrap();
    assert_eq!((last.number, last.put_back.len(), facts.next_change), (2, 3, 3));
    // An older number takes nothing back.
    bench.keep(&private(7), &[Change::Undo(1)], now).await.unwrap();
    assert_ne!(dump(&bench).await, before);
    let facts = bench.keep(&private(7), &[Change::Undo(2)], now).await.unwrap();
    assert_eq!(dump(&bench).await, before);
    assert_eq!(facts.last_change.unwrap().number, 1);
    assert_eq!(facts.next_change, 3);
    // Twice takes back once.
    bench.keep(&private(7), &[Change::Undo(2)], now).await.unwrap();
    assert_eq!(dump(&bench).await, before);
}

#[tokio::test]
async fn what_changes_nothing_cannot_be_taken_back_and_the_journal_stays_short() {
    let bench = bench().await;
    let now = at("2026-04-22T08:00:00Z");
    let nothing = [Change::DropCrops(vec![CropId::new("pea")]), Change::RemoveSowing(9)];
    assert_eq!(bench.keep(&private(7), &nothing, now).await.unwrap().last_change, None);
    for _ in 0..15 {
        let pea = || vec![CropId::new("pea")];
        bench.keep(&private(7), &[Change::AddCrops(pea())], now).await.unwrap();
        bench.keep(&private(7), &[Change::DropCrops(pea())], now).await.unwrap();
    }
    let kept: i64 = sqlx::query_scalar("SELECT COUNT(*) FROM journal")
        .fetch_one(&bench.store.reader)
        .await
        .unwrap();
    assert_eq!(kept, 20);
}

/// A change as a member could make it, with small numbers so that they meet one another.
fn changes() -> impl Strategy<Value = Change> {
    let crop = || prop::sample::select(vec!["pea", "basil", "leek"]);
    let day = || prop::sample::select(vec!["2026-04-03", "2026-04-04"]);
    let jobs = ["pea.so.s.2026", "basil.po.s.2026.1", "leek.si.s.2026"];
    let mark = || {
        prop_oneof![
            Just(None),
            day().prop_map(|on| Some(Mark::Done(date(on)))),
            day().prop_map(|on| Some(Mark::Later(date(on)))),
        ]
    };
    let one = prop_oneof![
        prop::collection::vec(crop(), 1..3)
            .prop_map(|ids| Change::AddCrops(ids.into_iter().map(CropId::new).collect())),
        prop::collection::vec(crop(), 1..3)
            .prop_map(|ids| Change::DropCrops(ids.into_iter().map(CropId::new).collect())),
        (prop::sample::select(jobs.to_vec()), mark())
            .prop_map(|(job, mark)| Change::MarkJob(job.parse().expect("a job"), mark)),
        (crop(), day()).prop_map(|(crop, on)| Change::RecordSowing(sowing(crop, on))),
        (1i64..4, crop(), day()).prop_map(|(id, crop, on)| {
            Change::KeepSowing(Sowing { id, failed_on: Some(date(on)), ..sowing(crop, on) })
        }),
        (1i64..4).prop_map(Change::RemoveSowing),
        (
            crop(),
            prop::option::of(prop::sample::select(vec!["Early Lantern", "Amber Bell"])),
            50i64..52
        )
            .prop_map(|(crop, name, days)| Change::KeepVariety(variety(crop, name, days))),
        (1i64..4).prop_map(Change::RemoveVariety),
        prop::option::of(prop::sample::select(vec![Place::Lights, Place::HeatMat]))
            .prop_map(Change::MemberPlace),
        prop::sample::select(vec![0, 390, 420]).prop_map(|at| Change::MemberReminderTime(
            ReminderTime::from_minutes(at).expect("a time")
        )),
        prop::option::of(prop::sample::select(vec![Tz::UTC, Tz::America__Denver]))
            .prop_map(Change::MemberZone),
        prop::option::of(-60i64..60).prop_map(Change::MemberLatitude),
        any::<bool>().prop_map(|at_weekends| Change::MemberHabits(Habits {
            at_weekends,
            ..Habits::default()
        })),
    ];
    prop_oneof![
        3 => one.clone(),
        1 => prop::collection::vec(one, 1..4).prop_map(Change::Together),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn undo_restores_the_store_exactly(changes in prop::collection::vec(changes(), 1..12)) {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
        runtime.expect("a runtime").block_on(async {
            let bench = bench().await;
            let now = at("2026-04-22T08:00:00Z");
            bench.keep(&private(7), &[], now).await.expect("a member");
            let mut before = Vec::new();
            for change in changes {
                let was = dump(&bench).await;
                let facts = bench.keep(&private(7), &[change], now).await.expect("kept");
                let number = facts.last_change.map(|last| last.number);
                let last_seen = before.last().map(|(n, _): &(Option<i64>, Vec<String>)| *n);
                if number == Some(facts.next_change - 1) && last_seen != Some(number) {
                    before.push((number, was));
                } else {
                    // What is no change is not in the journal.
                    assert_eq!(dump(&bench).await, was);
                }
            }
            while let Some((number, was)) = before.pop().map(|(n, was)| (n.expect("a number"), was)) {
                bench.keep(&private(7), &[Change::Undo(number)], now).await.expect("taken back");
                assert_eq!(dump(&bench).await, was, "after {number}");
            }
        });
    }
}

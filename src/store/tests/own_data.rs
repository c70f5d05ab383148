//! Every table that has anything of a member is known to what is exported and what is forgotten.

use std::collections::BTreeSet;

use sqlx::Row;

use super::{Bench, at, bench, group, morning, private, say};
use crate::chat::understand::Subject;
use crate::chat::{Change, Expected, GroupQuestion, ListChange, Understood};
use crate::club::{Mark, MemberId, Sowing, Variety};
use crate::messages::Priority;
use crate::planning::{CropId, Label, Packet, Way};
use crate::store::own_data::HELD;

/// Columns that look as if they told of somebody and do not, each with the reason.
const NOBODYS: [(&str, &str, &str); 6] = [
    ("clubs", "chat", "a group's id, which is no person's"),
    ("clubs", "id", "a club's number; memberships tell who is in it"),
    ("memberships", "club_id", "a club's number; the member stands in member_id"),
    ("clubs", "merged_into", "a club's number"),
    ("lists", "club_id", "a club's number"),
    ("helpers", "club_id", "a club's number; the member stands in member_id"),
];

/// The columns that may tell whose a row is: those that refer to members or clubs, and those whose
/// names speak of a person, a chat or a member.
async fn suspects(bench: &Bench) -> BTreeSet<(String, String)> {
    let tables: Vec<String> = sqlx::query_scalar(
        "SELECT name FROM sqlite_master WHERE type = 'table' \
         AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '_sqlx_%'",
    )
    .fetch_all(&bench.store.reader)
    .await
    .expect("the schema");
    let mut found = BTreeSet::new();
    for table in tables {
        let refers = sqlx::query("SELECT \"from\", \"table\" FROM pragma_foreign_key_list($1)")
            .bind(&table)
            .fetch_all(&bench.store.reader)
            .await
            .expect("its references");
        for row in refers {
            let (from, to): (String, String) = (row.get(0), row.get(1));
            if to == "members" || to == "clubs" {
                found.insert((table.clone(), from));
            }
        }
        let columns: Vec<String> = sqlx::query_scalar("SELECT name FROM pragma_table_info($1)")
            .bind(&table)
            .fetch_all(&bench.store.reader)
            .await
            .expect("its columns");
        let speaks = |name: &str| {
            let parts: Vec<&str> = name.split('_').collect();
            ["chat", "user", "member", "person", "by"].iter().any(|word| parts.contains(word))
        };
        found.extend(columns.into_iter().filter(|name| speaks(name)).map(|c| (table.clone(), c)));
    }
    found
}

#[tokio::test]
async fn no_column_that_tells_of_a_member_is_overlooked() {
    let bench = bench().await;
    let mut known: BTreeSet<(String, String)> = HELD
        .iter()
        .flat_map(|held| held.whose.iter().map(|column| (held.table, *column)))
        .chain(NOBODYS.iter().map(|(table, column, _)| (*table, *column)))
        .map(|(table, column)| (table.to_owned(), column.to_owned()))
        .collect();
    let suspects = suspects(&bench).await;
    assert!(suspects.len() >= 12, "the schema was read: {suspects:?}");
    for suspect in &suspects {
        assert!(
            known.contains(suspect),
            "{suspect:?} tells of a member: add its table to HELD in store/own_data.rs, so that \
             /export and /forget know it, or to NOBODYS here with the reason"
        );
    }
    // The table of the members themselves refers to nobody.
    known.remove(&("members".to_owned(), "id".to_owned()));
    known.remove(&("clubs".to_owned(), "id".to_owned()));
    for (table, column) in known {
        let there = suspects.contains(&(table.clone(), column.clone()));
        assert!(there, "{table}.{column} is listed and is no column that tells of a member");
    }
}

fn sowing() -> Sowing {
    Sowing {
        id: 0,
        crop: CropId::new("basil"),
        variety: None,
        way: Way::Indoors,
        count: Some(12),
        sown_on: super::date("2026-04-03"),
        room_c: None,
        label: Label::Spring,
        season: 2026,
        came_up_on: None,
        failed_on: None,
        ended_on: None,
        job: None,
    }
}

fn asked() -> Subject {
    let understood = Understood::can_start(CropId::new("pea"), super::date("2026-04-10"));
    Subject::of(&understood).expect("a subject")
}

/// A member with something in every table.
async fn full(bench: &Bench, user: i64) -> MemberId {
    let now = at("2026-04-10T06:00:00Z");
    let question = Change::KeepQuestion {
        message: i32::try_from(user).expect("a small id"),
        question: GroupQuestion { text: "peas?".to_owned(), before: Some(asked()) },
    };
    let in_group = [Change::OpenClub { title: "Elm Row".to_owned() }, question];
    bench.keep(&group(user, -5), &in_group, now).await.expect("kept");
    let club = bench.keep(&group(user, -5), &[], now).await.expect("facts").club.expect("a club");
    let list = ListChange::Make {
        name: format!("Bed {user}"),
        note: None,
        crops: vec![CropId::new("leek")],
    };
    let of_club =
        [Change::List(list), Change::NameHelper { user, name: format!("Gardener {user}") }];
    bench.keep(&group(user, -5), &of_club, now).await.expect("kept");
    let changes = [
        Change::JoinClub(club.id),
        Change::Subscribe(user - 6),
        Change::SkipCrops(vec![CropId::new("leek")]),
        Change::MemberReachable(true),
        Change::AddCrops(vec![CropId::new("pea")]),
        Change::RecordSowing(sowing()),
        Change::KeepVariety(Variety {
            id: 0,
            crop: CropId::new("pea"),
            name: Some("Early Lantern".to_owned()),
            packet: Packet::default(),
        }),
        Change::MarkJob(
            "pea.so.s.2026".parse().expect("a job"),
            Some(Mark::Skipped(super::date("2026-04-10"))),
        ),
        Change::Expect(Some(Expected::Forget)),
        Change::Asked(asked()),
    ];
    let member = bench.keep(&private(user), &changes, now).await.expect("kept").member.id;
    let named = morning(member, user, "2026-04-10", &["pea.so.s.2026"]);
    bench.store.keep_mornings(&[named], now).await.expect("a morning");
    bench.queue(&say(user, "A reply"), Priority::Reply, now).await;
    member
}

/// How many rows of each listed table tell of this member, by the listed columns.
async fn rows_of(bench: &Bench, member: MemberId, user: i64) -> Vec<(&'static str, i64)> {
    let mut rows = Vec::new();
    for held in &HELD {
        let by_number =
            held.whose.iter().find(|column| **column != "chat" && **column != "user_id");
        let column = by_number.copied().unwrap_or("member_id");
        let or_chat = if held.whose.contains(&"chat") { "OR chat = $2" } else { "" };
        let statement =
            format!("SELECT COUNT(*) FROM {} WHERE {column} = $1 {or_chat}", held.table);
        let query = sqlx::query_scalar(sqlx::AssertSqlSafe(statement)).bind(member);
        let query = if or_chat.is_empty() { query } else { query.bind(user) };
        rows.push((held.table, query.fetch_one(&bench.store.reader).await.expect("a number")));
    }
    rows
}

#[tokio::test]
async fn who_is_forgotten_leaves_no_row_and_takes_nobody_elses() {
    let bench = bench().await;
    let now = at("2026-04-10T06:30:00Z");
    let (fern, wren) = (full(&bench, 7).await, full(&bench, 8).await);
    let before = rows_of(&bench, wren, 8).await;
    for (table, rows) in rows_of(&bench, fern, 7).await {
        assert!(rows > 0, "{table} has nothing of the member, so this test shows nothing of it");
    }
    // What is queued after it in the same transaction stays.
    let mut work = bench.store.begin().await.expect("a transaction");
    let facts = work.facts(&private(7), None, now).await.expect("facts");
    work.apply(&facts, &private(7), &Change::Forget, now).await.expect("forgotten");
    work.queue(&say(7, "Goodbye"), Priority::Reply, None, now, None).await.expect("a row");
    work.commit().await.expect("a commit");

    let left: Vec<_> =
        rows_of(&bench, fern, 7).await.into_iter().filter(|(_, rows)| *rows > 0).collect();
    assert_eq!(left, [("outgoing", 1)], "only the goodbye");
    assert_eq!(rows_of(&bench, wren, 8).await, before);
    let clubs: i64 = sqlx::query_scalar("SELECT COUNT(*) FROM clubs WHERE closed_at IS NULL")
        .fetch_one(&bench.store.reader)
        .await
        .expect("a number");
    assert_eq!(clubs, 1);
    // Once it was sent, the goodbye goes as well.
    let goodbye = bench.store.waiting(now, &[8], 9).await.expect("the queue").remove(0);
    let sent = super::super::SendEnd::Sent { message: Some(1) };
    bench.store.settle(goodbye.id, &sent, now).await.expect("settled");
    bench.store.prune(now).await.expect("pruned");
    let left = rows_of(&bench, fern, 7).await;
    assert!(left.iter().all(|(_, rows)| *rows == 0), "{left:?}");
}

#[tokio::test]
async fn an_export_has_every_table_and_nothing_of_others() {
    let bench = bench().await;
    let now = at("2026-04-10T06:30:00Z");
    let fern = full(&bench, 7).await;
    full(&bench, 8).await;
    let mut work = bench.store.begin().await.expect("a transaction");
    let all = work.own_data(fern, now).await.expect("data");
    work.rollback().await.expect("a rollback");
    for held in &HELD {
        let rows = all[held.table].as_array().map_or(0, Vec::len);
        assert!(rows > 0, "{} is missing", held.table);
    }
    let text = all.to_string();
    assert!(text.contains("Gardener 7") && !text.contains("Gardener 8"), "{text}");
    assert_eq!(all["members"].as_array().map(Vec::len), Some(1));
    assert_eq!(all["outgoing"].as_array().map(Vec::len), Some(2));
}

#[tokio::test]
async fn a_group_finds_its_question_until_it_is_old() {
    let bench = bench().await;
    full(&bench, 7).await;
    let mut work = bench.store.begin().await.expect("a transaction");
    let kept = work.group_question(-5, 7).await.expect("a look").expect("a question");
    assert_eq!(kept, GroupQuestion { text: "peas?".to_owned(), before: Some(asked()) });
    assert_eq!(work.group_question(-6, 7).await.expect("a look"), None);
    work.rollback().await.expect("a rollback");
    bench.store.prune(at("2026-04-18T06:00:00Z")).await.expect("pruned");
    let mut work = bench.store.begin().await.expect("a transaction");
    assert_eq!(work.group_question(-5, 7).await.expect("a look"), None);
    work.rollback().await.expect("a rollback");
}

//! Clubs' lists: who follows them, what is told of them, and what takes a change back.

use chrono::{DateTime, TimeDelta, Utc};
use sqlx::Row;

use super::{Bench, at, bench, group, private, say};
use crate::chat::{Change, Facts, ListChange};
use crate::club::{ClubId, ListId, ListNews, MemberId};
use crate::planning::CropId;
use crate::store::{Morning, SendEnd};

fn ids(names: &[&str]) -> Vec<CropId> {
    names.iter().map(|name| CropId::new(*name)).collect()
}

fn now() -> DateTime<Utc> {
    at("2026-04-10T06:00:00Z")
}

fn make(name: &str, crops: &[&str]) -> Change {
    let (name, crops) = (name.to_owned(), ids(crops));
    Change::List(ListChange::Make { name, note: None, crops })
}

fn add(list: ListId, crops: &[&str]) -> Change {
    Change::List(ListChange::Add(list, ids(crops)))
}

/// The club of the group -5 with the list 1, and the member 7 who subscribes to it.
async fn salsa(bench: &Bench) -> (ClubId, MemberId) {
    let open = Change::OpenClub { title: "Elm Row".to_owned() };
    let made = [open, make("Salsa bed", &["tomato", "onion"])];
    let club = bench.keep(&group(9, -5), &made, now()).await.unwrap().club.unwrap().id;
    let joins = [Change::MemberReachable(true), Change::JoinClub(club), Change::Subscribe(1)];
    (club, bench.keep(&private(7), &joins, now()).await.unwrap().member.id)
}

impl Bench {
    /// The next morning of everybody: each message tells all the news, where there are any.
    async fn mornings_come(&self, day: i64) -> Vec<(MemberId, Vec<CropId>, Vec<ListNews>)> {
        let seven = at("2026-04-10T07:00:00Z") + TimeDelta::days(day);
        let due = self.store.members_due(seven, 100).await.expect("those due");
        let mut seen = Vec::new();
        let mut mornings = Vec::new();
        for due in due {
            let told: Vec<ListId> = due.news.iter().map(|news| news.list).collect();
            mornings.push(Morning {
                member: due.member.id,
                date: seven.date_naive(),
                outgoing: (!told.is_empty()).then(|| say(due.member.user, "Good morning")),
                named: Vec::new(),
                told,
                next: seven + TimeDelta::days(1),
                expires: seven + TimeDelta::hours(12),
            });
            seen.push((due.member.id, due.crops, due.news));
        }
        self.store.keep_mornings(&mornings, seven).await.expect("kept");
        seen
    }

    /// The reminders that wait are sent.
    async fn all_are_sent(&self) {
        self.sql("UPDATE outgoing SET outcome = 'sent' WHERE outcome IS NULL").await;
    }

    async fn private_facts(&self, user: i64) -> Facts {
        self.keep(&private(user), &[], now()).await.expect("facts")
    }
}

#[tokio::test]
async fn facts_and_mornings_have_the_same_plan() {
    let bench = bench().await;
    let (club, member) = salsa(&bench).await;
    let mine =
        [Change::AddCrops(ids(&["basil", "onion"])), Change::SkipCrops(ids(&["tomato", "onion"]))];
    bench.keep(&private(7), &mine, now()).await.unwrap();
    bench.keep(&group(9, -5), &[add(1, &["dill", "basil"])], now()).await.unwrap();
    // Another club's list is none of theirs while that club is not meant.
    let other = [Change::OpenClub { title: "Oak Lane".to_owned() }, make("Oak", &["leek"])];
    let oak = bench.keep(&group(9, -6), &other, now()).await.unwrap().club.unwrap().id;
    bench.keep(&group(7, -6), &[Change::JoinClub(oak), Change::Subscribe(2)], now()).await.unwrap();

    let facts = bench.private_facts(7).await;
    assert_eq!(facts.club.map(|club| club.id), Some(club), "the first club, since none was chosen");
    assert_eq!(facts.crops, ids(&["basil", "onion", "dill"]));
    let due = bench.store.members_due(at("2026-04-10T07:00:00Z"), 9).await.unwrap();
    assert_eq!((due[0].member.id, &due[0].crops), (member, &facts.crops));
    let in_oak = bench.keep(&group(7, -6), &[], now()).await.unwrap();
    assert_eq!(in_oak.crops, ids(&["basil", "onion", "leek"]));
    let later = now() + TimeDelta::minutes(1);
    let chosen = bench.keep(&private(7), &[Change::JoinClub(oak)], later).await.unwrap();
    assert_eq!(chosen.club.map(|club| club.id), Some(oak));
    assert_eq!(chosen.clubs.len(), 2);
    let due = bench.store.members_due(at("2026-04-10T07:00:00Z"), 9).await.unwrap();
    assert_eq!(due[0].crops, ids(&["basil", "onion", "leek"]));
}

#[tokio::test]
async fn a_change_is_told_once_and_again_only_where_it_was_not_sent() {
    let bench = bench().await;
    let (_, member) = salsa(&bench).await;
    assert_eq!(bench.mornings_come(0).await[0].2, []);
    bench.keep(&group(9, -5), &[add(1, &["basil"])], now()).await.unwrap();
    let later = [Change::List(ListChange::TakeOff(1, ids(&["onion"])))];
    bench.keep(&group(9, -5), &later, now()).await.unwrap();
    let seen = bench.mornings_come(1).await;
    let news = &seen[0].2[0];
    assert_eq!((news.came(), news.went()), (ids(&["basil"]), ids(&["onion"])));
    // It could not be sent that day, so the next morning tells it.
    let row: i64 = sqlx::query("SELECT MAX(id) AS id FROM outgoing")
        .fetch_one(&bench.store.reader)
        .await
        .and_then(|row| row.try_get("id"))
        .unwrap();
    bench.store.settle(row, &SendEnd::Expired, at("2026-04-11T19:00:00Z")).await.unwrap();
    bench.keep(&group(9, -5), &[add(1, &["dill"])], now()).await.unwrap();
    let seen = bench.mornings_come(2).await;
    assert_eq!(seen[0].2[0].came(), ids(&["basil", "dill"]));
    bench.all_are_sent().await;
    assert_eq!(bench.mornings_come(3).await[0].2, []);
    // A change while a reminder waits takes it back, and its morning is due again.
    bench.keep(&group(9, -5), &[add(1, &["leek"])], now()).await.unwrap();
    bench.mornings_come(4).await;
    let changed = at("2026-04-14T07:05:00Z");
    bench.keep(&group(9, -5), &[add(1, &["kale"])], changed).await.unwrap();
    assert_eq!(bench.next_reminder(member).await, Some(changed));
    let due = bench.store.members_due(changed, 9).await.unwrap();
    assert_eq!(due[0].news[0].came(), ids(&["leek", "kale"]));
}

#[tokio::test]
async fn a_reminder_that_waits_calls_no_list_by_its_old_name() {
    let bench = bench().await;
    let (_, member) = salsa(&bench).await;
    bench.keep(&group(9, -5), &[add(1, &["basil"])], now()).await.unwrap();
    bench.mornings_come(0).await;
    let renamed = at("2026-04-10T07:05:00Z");
    let rename = Change::List(ListChange::Rename(1, "Hot bed".to_owned()));
    bench.keep(&group(9, -5), &[rename], renamed).await.unwrap();
    assert_eq!(bench.next_reminder(member).await, Some(renamed));
    let due = bench.store.members_due(renamed, 9).await.unwrap();
    assert_eq!((due[0].news[0].name.as_str(), due[0].news[0].came()), ("Hot bed", ids(&["basil"])));
}

#[tokio::test]
async fn an_archived_list_is_in_nobodys_plan_and_its_code_is_gone() {
    let bench = bench().await;
    salsa(&bench).await;
    let share = Change::List(ListChange::Share(1));
    bench.keep(&group(9, -5), &[share], now()).await.unwrap();
    let shared = |code: String| {
        let bench = &bench;
        async move {
            let mut work = bench.store.begin().await.unwrap();
            work.list_of_code(&code).await.unwrap().map(|list| list.id)
        }
    };
    let code = |facts: &Facts| {
        let club = facts.club.as_ref().map(|club| club.id).unwrap();
        let bench = &bench;
        async move {
            let mut work = bench.store.begin().await.unwrap();
            work.lists(club).await.unwrap().remove(0).code
        }
    };
    let facts = bench.private_facts(7).await;
    let first = code(&facts).await;
    assert_eq!(shared(first.clone()).await, Some(1));
    bench.keep(&group(9, -5), &[Change::List(ListChange::Archive(1))], now()).await.unwrap();
    assert_eq!(shared(first.clone()).await, None);
    assert_eq!(bench.private_facts(7).await.crops, []);
    let seen = bench.mornings_come(0).await;
    assert!(seen[0].2[0].archived);
    assert_eq!(seen[0].2[0].went(), ids(&["tomato", "onion"]));
    bench.all_are_sent().await;
    bench.keep(&group(9, -5), &[Change::List(ListChange::Reopen(1))], now()).await.unwrap();
    assert_eq!(bench.private_facts(7).await.crops, ids(&["tomato", "onion"]));
    let second = code(&facts).await;
    assert_ne!(first, second);
    assert_eq!((shared(first).await, shared(second).await), (None, None));
    // Who had been told that it is gone is told that it is there again.
    assert_eq!(bench.mornings_come(1).await[0].2[0].came(), ids(&["tomato", "onion"]));
}

#[tokio::test]
async fn another_clubs_list_is_left_alone() {
    let bench = bench().await;
    salsa(&bench).await;
    let open = Change::OpenClub { title: "Oak Lane".to_owned() };
    let changes = [
        open,
        add(1, &["leek"]),
        Change::List(ListChange::Rename(1, "Ours".to_owned())),
        Change::List(ListChange::Archive(1)),
        Change::List(ListChange::Share(1)),
    ];
    bench.keep(&group(9, -6), &changes, now()).await.unwrap();
    let facts = bench.private_facts(7).await;
    assert_eq!(facts.growing.lists[0].name, "Salsa bed");
    assert_eq!(facts.crops, ids(&["tomato", "onion"]));
}

#[tokio::test]
async fn undo_puts_subscriptions_and_skips_back_as_they_were() {
    let bench = bench().await;
    salsa(&bench).await;
    bench.keep(&group(9, -5), &[add(1, &["basil"])], now()).await.unwrap();
    let before = bench.private_facts(7).await;
    let tables = "SELECT (SELECT group_concat(list_id || subscribed_at || told) FROM subscriptions) \
                  || (SELECT count(*) FROM skipped_crops) || (SELECT count(*) FROM member_crops)";
    let kept = || {
        let reader = bench.store.reader.clone();
        async move { sqlx::query_scalar::<_, String>(tables).fetch_one(&reader).await.unwrap() }
    };
    let was = kept().await;
    for changes in [
        Change::Unsubscribe(1),
        Change::SkipCrops(ids(&["tomato"])),
        Change::Together(vec![
            Change::AddCrops(ids(&["leek"])),
            Change::SkipCrops(ids(&["onion"])),
            Change::Unsubscribe(1),
        ]),
    ] {
        let later = now() + TimeDelta::minutes(5);
        let changed = bench.keep(&private(7), &[changes], later).await.unwrap();
        assert_ne!(changed.crops, before.crops);
        let last = changed.last_change.expect("a change").number;
        let is = kept().await;
        let undone = bench.keep(&private(7), &[Change::Undo(last)], later).await.unwrap();
        assert_eq!(undone.growing, before.growing);
        assert_eq!(kept().await, was);
        bench.keep(&private(7), &[Change::Redo(last)], later).await.unwrap();
        assert_eq!(kept().await, is);
        bench.keep(&private(7), &[Change::Undo(last)], later).await.unwrap();
        assert_eq!(kept().await, was);
    }
    // Unskipping and subscribing are undone as well.
    bench.keep(&private(7), &[Change::SkipCrops(ids(&["tomato"]))], now()).await.unwrap();
    let skipped = bench.private_facts(7).await.growing;
    let unskip = [Change::UnskipCrops(ids(&["tomato"]))];
    let last = bench.keep(&private(7), &unskip, now()).await.unwrap().last_change.unwrap().number;
    let undone = bench.keep(&private(7), &[Change::Undo(last)], now()).await.unwrap();
    assert_eq!(undone.growing, skipped);
}

#[tokio::test]
async fn what_changed_between_the_end_of_a_subscription_and_its_undo_is_told() {
    let bench = bench().await;
    let (_, member) = salsa(&bench).await;
    let ended = bench.keep(&private(7), &[Change::Unsubscribe(1)], now()).await.unwrap();
    let last = ended.last_change.expect("a change").number;
    bench.keep(&group(9, -5), &[add(1, &["basil"])], now()).await.unwrap();
    bench.keep(&private(7), &[Change::Undo(last)], now()).await.unwrap();
    let seen = bench.mornings_come(0).await;
    let (_, crops, news) = seen.iter().find(|(id, ..)| *id == member).expect("a morning");
    assert_eq!(*crops, ids(&["tomato", "onion", "basil"]));
    let [news] = news.as_slice() else { panic!("{news:?}") };
    assert_eq!((news.came(), news.went()), (ids(&["basil"]), Vec::new()));
}

#[tokio::test]
async fn a_merged_club_brings_its_lists_and_helpers() {
    let bench = bench().await;
    let (club, _) = salsa(&bench).await;
    let second = [
        Change::OpenClub { title: "Elm Row".to_owned() },
        make("Late bed", &["leek"]),
        Change::NameHelper { user: 8, name: "Moss".to_owned() },
    ];
    bench.keep(&group(9, -1_005), &second, now()).await.unwrap();
    bench.keep(&group(9, -5), &[Change::MoveClub { to: -1_005 }], now()).await.unwrap();
    let facts = bench.keep(&group(9, -1_005), &[], now()).await.unwrap();
    assert_eq!(facts.club.map(|club| club.id), Some(club));
    assert_eq!(facts.helpers.len(), 1);
    let mut work = bench.store.begin().await.unwrap();
    let names: Vec<String> =
        work.lists(club).await.unwrap().into_iter().map(|list| list.name).collect();
    assert_eq!(names, ["Salsa bed", "Late bed"]);
}

#[tokio::test]
async fn only_so_many_archived_lists_are_kept() {
    let bench = bench().await;
    salsa(&bench).await;
    let mut changes = vec![Change::List(ListChange::Archive(1))];
    for list in 2..=30 {
        changes.push(make(&format!("List {list}"), &["leek"]));
        changes.push(Change::List(ListChange::Archive(list)));
    }
    for (minute, change) in changes.into_iter().enumerate() {
        let at = now() + TimeDelta::minutes(i64::try_from(minute).unwrap());
        bench.keep(&group(9, -5), &[change], at).await.unwrap();
    }
    let lists: i64 = sqlx::query_scalar("SELECT COUNT(*) FROM lists")
        .fetch_one(&bench.store.reader)
        .await
        .unwrap();
    assert_eq!(lists, 20);
    let left: i64 = sqlx::query_scalar(
        "SELECT COUNT(*) FROM subscriptions s LEFT JOIN lists l ON l.id = s.list_id \
         WHERE l.id IS NULL",
    )
    .fetch_one(&bench.store.reader)
    .await
    .unwrap();
    assert_eq!(left, 0);
}

#[tokio::test]
async fn the_kept_forms_stay() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00.25Z");
    let changes = [
        Change::OpenClub { title: "Elm Row".to_owned() },
        Change::List(ListChange::Make {
            name: "Salsa bed".to_owned(),
            note: Some("by the gate".to_owned()),
            crops: ids(&["tomato"]),
        }),
        Change::Subscribe(1),
        Change::SkipCrops(ids(&["dill"])),
        add(1, &["onion"]),
        Change::NameHelper { user: 7, name: "Wren".to_owned() },
    ];
    bench.keep(&group(7, -5), &changes, now).await.unwrap();
    for (statement, kept) in [
        ("SELECT name || ' ' || note || ' ' || shared FROM lists", "Salsa bed by the gate 0"),
        ("SELECT list_id || ' ' || crop FROM list_crops ORDER BY id", "1 tomato"),
        (
            "SELECT subscribed_at || ' ' || told FROM subscriptions",
            r#"2026-04-10T06:00:00.250+00:00 ["tomato"]"#,
        ),
        ("SELECT crop FROM skipped_crops", "dill"),
        ("SELECT named_at FROM helpers", "2026-04-10T06:00:00.250+00:00"),
        (
            "SELECT number || ' ' || put_back FROM journal WHERE number = 1",
            r#"1 [{"unsubscribe":1}]"#,
        ),
    ] {
        let text: String =
            sqlx::query_scalar(statement).fetch_one(&bench.store.reader).await.expect("a text");
        assert_eq!(text, kept, "{statement}");
    }
}

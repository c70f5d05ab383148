//! Opening, transactions, and values that cannot be read.

use chrono::TimeDelta;
use sqlx::Row;

use super::{at, bench, group, private, say};
use crate::chat::Change;
use crate::messages::{Priority, UpdateKey};
use crate::store::{Store, StoreError};

async fn refusal(url: &str) -> String {
    match Store::open(url).await {
        Err(StoreError::Url(why)) => why,
        other => panic!("{url}: {other:?}"),
    }
}

#[tokio::test]
async fn urls_that_name_no_database_are_refused_with_the_mend() {
    let postgres = "PostgreSQL is not supported yet: set SOWBELL_DATABASE_URL to a SQLite URL \
                    such as sqlite:sowbell.db";
    assert_eq!(refusal("postgres://keeper:secret@db/sowbell").await, postgres);
    assert_eq!(refusal("postgresql://db/sowbell").await, postgres);
    let other = refusal("mysql://keeper:secret@db/sowbell").await;
    assert!(other.contains("sqlite:sowbell.db") && !other.contains("secret"), "{other}");
    assert!(refusal("sowbell.db").await.contains("sqlite:sowbell.db"));
    assert!(refusal("sqlite:").await.contains("names no file"));
    assert!(refusal("sqlite:club.db?mode=upside-down").await.contains("mode"));

    let folder = tempfile::tempdir().expect("a folder");
    let missing = folder.path().join("not there");
    let why = refusal(&format!("sqlite:{}/club.db", missing.display())).await;
    assert!(why.contains("not there") && why.contains("make it"), "{why}");
    let why = refusal(&format!("sqlite://{}", folder.path().display())).await;
    assert!(why.contains("is a folder"), "{why}");
}

#[tokio::test]
async fn a_file_is_kept_safely_and_one_in_memory_works_too() {
    let bench = bench().await;
    let pragma = |statement: &'static str| {
        let writer = bench.store.writer.clone();
        async move {
            let row = sqlx::query(statement).fetch_one(&writer).await.expect("a pragma");
            row.try_get::<String, _>(0).or_else(|_| row.try_get::<i64, _>(0).map(|n| n.to_string()))
        }
    };
    assert_eq!(pragma("PRAGMA journal_mode").await.expect("a value"), "wal");
    // 2 is FULL: https://www.sqlite.org/pragma.html#pragma_synchronous
    assert_eq!(pragma("PRAGMA synchronous").await.expect("a value"), "2");
    assert_eq!(pragma("PRAGMA foreign_keys").await.expect("a value"), "1");

    let memory = Store::open("sqlite::memory:").await.expect("a database in memory");
    let other = Store::open("sqlite::memory:").await.expect("another one");
    let mut work = memory.begin().await.expect("a transaction");
    let now = at("2026-04-10T06:00:00Z");
    work.facts(&private(7), None, now).await.expect("facts");
    work.commit().await.expect("a commit");
    assert_eq!(memory.counts().await.expect("counts").members, 1);
    assert_eq!(other.counts().await.expect("counts").members, 0);
}

#[tokio::test]
async fn what_was_committed_is_there_again_and_nothing_else() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    let key = |update| UpdateKey { bot: 1, update };
    let mut work = bench.store.begin().await.expect("a transaction");
    work.mark_seen(key(10), now).await.expect("seen");
    work.queue(&say(5, "kept"), Priority::Reply, None, now, None).await.expect("a row");
    work.commit().await.expect("a commit");
    let mut lost = bench.store.begin().await.expect("a transaction");
    lost.mark_seen(key(11), now).await.expect("seen");
    lost.queue(&say(5, "lost"), Priority::Reply, None, now, None).await.expect("a row");
    drop(lost);
    let mut undone = bench.store.begin().await.expect("a transaction");
    undone.mark_seen(key(12), now).await.expect("seen");
    undone.rollback().await.expect("a rollback");
    bench.store.close().await;

    let store = Store::open(&bench.url).await.expect("the same file");
    assert_eq!(store.waiting(now, &[], 9).await.expect("the queue").len(), 1);
    let mut work = store.begin().await.expect("a transaction");
    assert!(work.already_seen(key(10)).await.expect("a look"));
    assert!(!work.already_seen(key(11)).await.expect("a look"));
    assert!(!work.already_seen(key(12)).await.expect("a look"));
    assert!(!work.already_seen(UpdateKey { bot: 2, update: 10 }).await.expect("a look"));
}

#[tokio::test]
async fn one_bad_update_is_undone_alone() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    let key = |update| UpdateKey { bot: 1, update };
    let mut work = bench.store.begin().await.expect("a transaction");
    for update in 1..=3 {
        work.savepoint().await.expect("a savepoint");
        work.mark_seen(key(update), now).await.expect("seen");
        work.queue(&say(5, &update.to_string()), Priority::Reply, None, now, None)
            .await
            .expect("a row");
        if update == 2 {
            // A refused statement on the way does not spoil what is around it.
            let facts = work.facts(&private(7), None, now).await.expect("facts");
            let no_club = Change::JoinClub(99);
            assert!(work.apply(&facts, &private(7), &no_club, now).await.is_err());
            work.rollback_to_savepoint().await.expect("undone");
        } else {
            work.release().await.expect("released");
        }
    }
    assert!(work.release().await.is_err(), "no savepoint is left");
    work.commit().await.expect("a commit");

    let counts = bench.store.counts().await.expect("counts");
    assert_eq!((counts.waiting, counts.members), (2, 0));
    let mut work = bench.store.begin().await.expect("a transaction");
    for (update, seen) in [(1, true), (2, false), (3, true)] {
        assert_eq!(work.already_seen(key(update)).await.expect("a look"), seen, "{update}");
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 4)]
async fn two_programs_on_one_file_take_turns() {
    let folder = tempfile::tempdir().expect("a folder");
    let url = format!("sqlite:{}", folder.path().join("club.db").display());
    // Both make the file and its tables at once.
    let (one, two) = tokio::join!(Store::open(&url), Store::open(&url));
    let stores = [one.expect("a store"), two.expect("a store")];
    let now = at("2026-04-10T06:00:00Z");
    let mut tasks = Vec::new();
    for task in 0..8_i64 {
        let store = stores[usize::try_from(task % 2).expect("an index")].clone();
        tasks.push(tokio::spawn(async move {
            for update in 0..10 {
                let mut work = store.begin().await?;
                let key = UpdateKey { bot: task, update };
                assert!(!work.already_seen(key).await?);
                work.mark_seen(key, now).await?;
                work.queue(&say(task, "hello"), Priority::Reply, None, now, None).await?;
                work.commit().await?;
                store.waiting(now, &[], 3).await?;
            }
            Ok::<_, StoreError>(())
        }));
    }
    for task in tasks {
        task.await.expect("no panic").expect("no locked database");
    }
    assert_eq!(stores[0].counts().await.expect("counts").waiting, 80);
    assert_eq!(stores[1].waiting(now, &[], 100).await.expect("the queue").len(), 8);
}

#[tokio::test(flavor = "multi_thread", worker_threads = 4)]
async fn several_programs_make_the_same_file_at_once() {
    for _ in 0..10 {
        let folder = tempfile::tempdir().expect("a folder");
        let url = format!("sqlite:{}", folder.path().join("club.db").display());
        let open = |url: String| tokio::spawn(async move { Store::open(&url).await });
        let opening: Vec<_> = (0..4).map(|_| open(url.clone())).collect();
        for store in opening {
            store.await.expect("no panic").expect("a store").close().await;
        }
    }
}

/// The app spawns tasks that call these, so their futures must be `Send`; this only has to compile.
#[tokio::test]
async fn every_verb_may_be_called_from_a_spawned_task() {
    async fn all(store: Store) -> Result<(), StoreError> {
        let (now, incoming) = (at("2026-04-10T06:00:00Z"), private(7));
        let mut work = store.begin().await?;
        work.mark_seen(UpdateKey { bot: 1, update: 1 }, now).await?;
        work.savepoint().await?;
        let facts = work.facts(&incoming, Some("token"), now).await?;
        work.apply(&facts, &incoming, &Change::LeaveClub, now).await?;
        work.release().await?;
        work.members_due(now, 5).await?;
        work.keep_mornings(&[], now).await?;
        work.commit().await?;
        store.members_due(now, 5).await?;
        store.keep_mornings(&[], now).await?;
        store.settle_many(&[], now).await?;
        store.waiting(now, &[], 5).await?;
        store.prune(now).await?;
        Ok(())
    }
    let bench = bench().await;
    tokio::spawn(all(bench.store.clone())).await.expect("no panic").expect("no error");
}

#[tokio::test]
async fn instants_compare_as_text_in_their_order() {
    let bench = bench().await;
    let second = at("2026-04-10T06:59:59Z");
    // Fractions are written with 0, 3, 6 or 9 digits, so texts of unequal length meet.
    let nanos = [0, 1, 1_000, 1_001, 1_000_000, 1_000_001, 500_000_000, 999_999_999];
    let mut instants: Vec<_> =
        nanos.into_iter().map(|nanos| second + TimeDelta::nanoseconds(nanos)).collect();
    instants.push(at("2026-04-10T07:00:00Z"));
    for (i, early) in instants.iter().enumerate() {
        for (j, late) in instants.iter().enumerate() {
            let less: bool = sqlx::query_scalar("SELECT $1 < $2")
                .bind(early)
                .bind(late)
                .fetch_one(&bench.store.reader)
                .await
                .expect("a comparison");
            assert_eq!(less, i < j, "{early} and {late}");
        }
    }
}

#[tokio::test]
async fn a_value_that_cannot_be_read_is_named() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    bench.keep(&group(7, -5), &[Change::OpenClub { title: "Elm Row".into() }], now).await.unwrap();
    let mut seen = Vec::new();
    for statement in [
        "UPDATE members SET frost = '{'",
        "UPDATE members SET frost = NULL, zone = 'Mars/Olympus'",
        "UPDATE members SET zone = NULL, units = 'ells'",
        "UPDATE members SET units = NULL, reminder_minutes = 1440",
        "UPDATE members SET reminder_minutes = 420; UPDATE clubs SET language = '?'",
        "UPDATE clubs SET language = NULL; INSERT INTO job_marks VALUES (1, 'dig', NULL, NULL, NULL)",
        "UPDATE job_marks SET job = 'pea.so.s.2026', mark = 'dug', mark_on = '2026-04-01'",
        "UPDATE job_marks SET mark = 'done', mark_on = '2026-04-31'",
    ] {
        sqlx::raw_sql(statement).execute(&bench.store.writer).await.expect("a statement");
        let mut work = bench.store.begin().await.expect("a transaction");
        match work.facts(&group(7, -5), None, now).await {
            Err(StoreError::Corrupt(why)) => {
                seen.push(why.split(':').next().unwrap_or_default().to_owned());
            }
            other => panic!("{statement}: {other:?}"),
        }
    }
    assert_eq!(
        seen,
        [
            "members 1, frost",
            "members 1, zone",
            "members 1, units",
            "members 1, reminder_minutes",
            "clubs 1, language",
            "job_marks of member 1, job",
            "job_marks of member 1, mark",
            "job_marks of member 1, mark_on",
        ]
    );
}

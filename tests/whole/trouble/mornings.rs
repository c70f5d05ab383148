//! A morning that cannot be made.

use chrono::{DateTime, Utc};
use sowbell::app::morning;
use sowbell::store::{MemberDue, Morning};

use super::*;

/// Makes mornings as the program does, but for one member.
fn thunders_for_fern(knowledge: &Knowledge, due: &MemberDue, now: DateTime<Utc>) -> Morning {
    assert!(due.member.name != "Fern", "thunder");
    morning(knowledge, due, now)
}

#[tokio::test(flavor = "multi_thread")]
async fn one_members_morning_that_panics_keeps_nobody_else_from_theirs() {
    let mut world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let moss = world.member("Moss").await;
    for member in [&fern, &moss] {
        member.asks("/frost 05-15 10-05").await;
        member.asks("/grow basil").await;
    }
    world.sleep().await;
    let seven = instant("2026-04-17T07:00:00Z");
    world.clock.set(seven);
    let store = Store::open(&world.database_url()).await.expect("the store");
    let knowledge = Arc::new(Knowledge::embedded().expect("what is built in"));
    let app = App::new(store.clone(), knowledge).making_mornings_by(thunders_for_fern);
    app.tick(seven).await.expect("a tick");
    store.close().await;
    fern.news();
    moss.news();

    world.wake().await;
    world.quiet().await;
    assert!(only(moss.news()).text.starts_with("Good morning!"));
    assert!(fern.news().is_empty());
    // Set aside for a day, she has her message on the next morning.
    world.at(instant("2026-04-18T07:00:00Z")).await;
    assert!(only(fern.news()).text.starts_with("Good morning!"));
}

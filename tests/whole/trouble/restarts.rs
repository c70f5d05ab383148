//! A program that ends and begins again.

use super::*;

#[tokio::test(flavor = "multi_thread")]
async fn nothing_is_said_twice_and_nothing_is_forgotten() {
    let mut world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow cucumber").await;
    fern.asks("/zone").await;
    let before = world.platform.sent().len();
    world.sleep().await;
    world.wake().await;
    world.quiet().await;
    assert_eq!(world.platform.sent().len(), before, "a new start is nobody's business");
    // What was asked before the stop is still awaited.
    assert!(fern.asks("Denver").await.text.starts_with("Your time zone is America/Denver"));
    assert!(fern.asks("/mycrops").await.text.contains("cucumber"));
    club.hears(&ash, "/help").await;
}

#[tokio::test(flavor = "multi_thread")]
async fn what_waits_is_delivered_after_a_restart() {
    let mut world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let moss = world.member("Moss").await;
    world.platform.on_request(|call| {
        (call.method == "sendMessage").then_some(Fault::TooManyRequests { retry_after: 1 })
    });
    fern.writes("/help");
    moss.writes("/mycrops");
    world.wait_until_waiting(2).await;
    world.sleep().await;
    assert_eq!(world.waiting().await, 2);
    world.platform.behave();
    world.wake().await;
    world.quiet().await;
    assert_eq!(helped(&world, &fern), 1);
    assert!(moss.last().text.starts_with("Your list is empty"));
}

#[tokio::test(flavor = "multi_thread")]
async fn an_update_that_was_kept_but_not_confirmed_is_not_answered_again() {
    let mut world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let start = world.platform.confirmed_offset();
    // The poll that would confirm it never reaches the platform.
    let said = fern.writes("/help");
    world.platform.fail(Which::method("getUpdates"), 1000, Fault::CutBefore);
    world.platform.wait_for_messages(fern.id, 2).await;
    world.wait_until_waiting(0).await;
    world.sleep().await;
    assert_eq!(world.platform.confirmed_offset(), start, "{said:?} is not confirmed");
    world.platform.behave();
    world.wake().await;
    world.quiet().await;
    assert_eq!(helped(&world, &fern), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn the_reminder_of_a_day_is_not_sent_again() {
    let mut world = World::start("2026-04-16T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow cucumber").await;
    world.morning_of("2026-04-17").await;
    only(fern.news());
    world.sleep().await;
    world.wake().await;
    world.at(instant("2026-04-17T07:30:00Z")).await;
    // Nor when the hour is put off on the same day.
    fern.asks("/hour 9:00").await;
    world.at(instant("2026-04-17T09:00:00Z")).await;
    assert!(fern.news().is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_stop_while_nothing_is_answered_is_quick() {
    let mut world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    world.platform.fail(Which::method("sendMessage"), 1, Fault::AcceptThenSilence);
    fern.writes("/help");
    world.platform.wait_for("the try", |state| (state.faults_left() == 0).then_some(())).await;
    let told = Instant::now();
    world.sleep().await;
    assert!(told.elapsed() < Duration::from_secs(10));
    world.wake().await;
    world.quiet().await;
    assert!((1..=2).contains(&helped(&world, &fern)), "sent, and perhaps once more");
}

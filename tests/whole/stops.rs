//! The program stood still for hours or days: what comes of the mornings.

use super::harness::{World, instant, only};
use super::platform::Message;

fn reminders(news: Vec<Message>) -> Vec<Message> {
    news.into_iter().filter(|message| message.text.starts_with("Good morning")).collect()
}

/// A member with a garden whose last frost is around May 15.
async fn grower(world: &World, crops: &str) -> super::harness::Person {
    let fern = world.member("Fern").await;
    fern.tells("/zone UTC").await;
    fern.tells("/frost 05-15 10-05").await;
    fern.tells(&format!("/grow {crops}")).await;
    fern.news();
    fern
}

#[tokio::test(flavor = "multi_thread")]
async fn after_hours_the_mornings_message_still_comes_the_same_day_and_once() {
    let mut world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "cucumber").await;
    world.sleep().await;
    world.clock.set(instant("2026-04-17T19:30:00Z"));
    world.wake().await;
    world.at(instant("2026-04-17T19:30:05Z")).await;
    let text = only(reminders(fern.news())).text;
    assert!(text.starts_with("Good morning! Friday, April 17:"), "{text}");
    // Neither another stop nor the rest of the day brings it again.
    world.sleep().await;
    world.clock.set(instant("2026-04-17T22:00:00Z"));
    world.wake().await;
    world.at(instant("2026-04-17T23:59:00Z")).await;
    assert_eq!(reminders(fern.news()).len(), 0);
    world.morning_of("2026-04-18").await;
    assert_eq!(reminders(fern.news()).len(), 0, "nothing new on the next morning");
}

#[tokio::test(flavor = "multi_thread")]
async fn after_days_one_message_names_what_was_missed_as_well() {
    let mut world = World::start("2026-03-30T12:00:00Z").await;
    // Basil may be sown indoors before cucumbers may, and both days fall into the stop.
    let fern = grower(&world, "basil, cucumber").await;
    world.morning_of("2026-03-31").await;
    fern.news();
    world.sleep().await;
    world.clock.set(instant("2026-04-21T09:00:00Z"));
    world.wake().await;
    world.at(instant("2026-04-21T09:00:05Z")).await;
    let text = only(reminders(fern.news())).text;
    assert!(text.starts_with("Good morning! Tuesday, April 21:"), "{text}");
    assert!(text.contains("Sow basil") && text.contains("Sow cucumbers"), "{text}");
    world.morning_of("2026-04-22").await;
    assert_eq!(reminders(fern.news()).len(), 0, "each is left in peace for now");
}

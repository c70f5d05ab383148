//! Buttons of long ago, and presses that come too fast.

use super::*;

#[tokio::test(flavor = "multi_thread")]
async fn data_that_nobody_can_read_any_more_says_so_and_changes_nothing() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let page = fern.asks("/settings").await;
    for data in ["zz:9", "g:", "j:d:nothing", "f:m:a02-30", "🌱", "c:99999999999"] {
        let notice = fern.presses_data(&page, data).await;
        let expected = "This button is from an older message and I can no longer read it. \
                        Nothing changed. /help shows what I can do.";
        assert_eq!(notice.as_deref(), Some(expected), "{data}");
    }
    let notice = fern.presses_data(&page, "g:triffid").await;
    assert!(notice.unwrap_or_default().starts_with("This button is from an older message"));
    assert!(fern.news().is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_page_that_is_not_there_shows_the_last_one() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    fern.asks("/grow leek").await;
    let list = fern.asks("/mycrops").await;
    assert_eq!(fern.presses_data(&list, "c:999").await, None);
    assert_eq!(fern.last().text, list.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_job_that_is_no_longer_planned_is_not_noted() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow cucumber").await;
    world.morning_of("2026-04-17").await;
    let morning = fern.last();
    fern.asks("/frost none").await;
    let notice = fern.presses_under(&morning, "1 done").await;
    insta::assert_snapshot!(
        notice.unwrap_or_default(),
        @"That job is no longer in your plan, so nothing changed. /now shows what is."
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn one_under_a_message_too_old_to_be_told_is_taken_at_its_word() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow cucumber").await;
    world.morning_of("2026-04-17").await;
    let morning = only(fern.news());
    let data = morning.button("1 done").and_then(|button| button.callback_data.clone());
    let notice = fern.presses_on_old(&morning, &data.expect("data")).await;
    assert_eq!(notice.as_deref(), Some("Noted as done on April 17."));
    assert!(fern.news().is_empty());
    let list = fern.asks("/now").await.text;
    assert!(list.starts_with("Nothing to do today"), "{list}");
    // A page cannot be turned in place there, so it comes anew.
    fern.presses_on_old(&morning, "c:0").await;
    assert!(only(fern.news()).text.starts_with("You grow one crop"));
}

#[tokio::test(flavor = "multi_thread")]
async fn two_quick_presses_are_both_kept() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow cucumber, zinnia").await;
    world.morning_of("2026-04-17").await;
    let morning = only(fern.news());
    world.platform.press(fern.id, fern.id, morning.message_id, "1 done");
    world.platform.press(fern.id, fern.id, morning.message_id, "2 done");
    world.quiet().await;
    assert_eq!(fern.last().labels(), ["1 is done · undo", "2 is done · undo"]);
    // Pressed again on a phone that has not caught up, it stays done.
    world.platform.press_data(
        fern.id,
        fern.id,
        morning.message_id,
        morning.button("1 done").and_then(|b| b.callback_data.as_deref()).expect("data"),
    );
    world.quiet().await;
    assert_eq!(fern.last().labels(), ["1 is done · undo", "2 is done · undo"]);
}

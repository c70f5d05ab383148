//! A platform that fails, limits and drops the line.

use super::*;
use crate::platform::State;

#[tokio::test(flavor = "multi_thread")]
async fn a_send_that_fails_slowly_holds_up_nobody_else() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let moss = world.member("Moss").await;
    // The library takes ten seconds over a server's error.
    let failing = Which::method("sendMessage").in_chat(fern.id);
    world.platform.fail(failing, 1, Fault::ServerError);
    fern.writes("/help");
    world.platform.wait_for("the try", |state| (state.faults_left() == 0).then_some(())).await;
    moss.writes("/help");
    let soon = Duration::from_secs(5);
    let answered = |state: &State| (state.sent_to(moss.id).len() == 2).then_some(());
    world.platform.wait_within(soon, "Moss's answer", answered).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn who_is_limited_waits_and_nobody_else_does() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let moss = world.member("Moss").await;
    fern.news();
    world.platform.flood(Some(fern.id), 2);
    fern.writes("/help");
    world
        .platform
        .wait_for("Fern's answer to be refused", |state| {
            state.calls().iter().any(|call| call.answer == Some(429)).then_some(())
        })
        .await;
    moss.writes("/help");
    world.platform.wait_for_messages(moss.id, 2).await;
    assert!(fern.news().is_empty(), "Moss was served while Fern waited");
    world.quiet().await;
    assert_eq!(helped(&world, &fern), 1);
    // That the bot waited as long as it was told is asserted at the end of every story.
}

#[tokio::test(flavor = "multi_thread")]
async fn a_server_that_fails_is_tried_again() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let failing = Which::method("sendMessage").in_chat(fern.id);
    world.platform.fail(failing, 1, Fault::ServerError);
    fern.asks("/help").await;
    assert_eq!(helped(&world, &fern), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn polling_goes_on_after_failures() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let conflict = "Conflict: terminated by other getUpdates request; make sure that only one \
                    bot instance is running";
    let failures = [
        Fault::CutBefore,
        Fault::AcceptThenCut,
        Fault::TooManyRequests { retry_after: 1 },
        Fault::Refuse { code: 409, description: conflict.to_owned() },
        // The token is good: the platform is in trouble.
        Fault::Refuse { code: 401, description: "Unauthorized".to_owned() },
        Fault::Refuse { code: 404, description: "Not Found".to_owned() },
    ];
    for failure in &failures {
        world.platform.fail(Which::method("getUpdates"), 1, failure.clone());
        fern.asks("/help").await;
    }
    assert_eq!(helped(&world, &fern), failures.len(), "each is answered, and once");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_line_that_is_cut_before_anything_was_done_loses_and_repeats_nothing() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    world.platform.fail(Which::method("sendMessage"), 2, Fault::CutBefore);
    fern.asks("/help").await;
    assert_eq!(helped(&world, &fern), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_line_that_is_cut_after_all_was_done_may_repeat_a_message_but_no_change() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    world.platform.fail(Which::method("sendMessage"), 1, Fault::AcceptThenCut);
    let added = fern.tells("/grow basil").await;
    assert!((1..=2).contains(&added.len()), "{added:?}");
    for message in added {
        assert!(message.text.starts_with("On your list: basil."), "{}", message.text);
    }
    assert!(fern.asks("/mycrops").await.text.starts_with("You grow one crop:"));
}

#[tokio::test(flavor = "multi_thread")]
async fn an_answer_to_a_press_that_came_too_late_is_let_go() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let page = fern.asks("/settings").await;
    world.platform.fail(
        Which::method("answerCallbackQuery"),
        1,
        Fault::TooManyRequests { retry_after: 1 },
    );
    world.platform.press(fern.id, fern.id, page.message_id, "Reminder time");
    world.platform.wait_for("a try", |state| (state.faults_left() == 0).then_some(())).await;
    world.platform.expire_callbacks();
    world.quiet().await;
    assert!(only(fern.news()).text.starts_with("Reminders come at 7:00"));
    assert!(world.platform.callback_answers().is_empty());
}

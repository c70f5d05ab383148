//! Reminders: when they come, what they say, and what their buttons do.

use chrono_tz::Tz;

use crate::harness::{Person, World, instant, only, shown};
use crate::platform::{Fault, Which};

/// A member with these dates and crops.
async fn grower(world: &World, name: &str, crops: &str) -> Person {
    let person = world.member(name).await;
    person.asks("/frost 05-15 10-05").await;
    person.asks(&format!("/grow {crops}")).await;
    person
}

#[tokio::test(flavor = "multi_thread")]
async fn the_morning_names_what_is_due_in_one_message() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber, zinnia, basil").await;
    world.morning_of("2026-04-17").await;
    insta::assert_snapshot!(shown(&only(fern.news())), @r"
    Good morning! Friday, April 17:
    1. Sow basil indoors: good until April 24.
    2. Sow cucumbers indoors: good until May 1.
    3. Sow zinnias indoors: good until May 1.
    [1 done] [later] [skip]
    [2 done] [later] [skip]
    [3 done] [later] [skip]
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn it_comes_at_the_members_hour_in_the_members_zone() {
    let world = World::start("2026-04-16T18:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    fern.asks("/zone Denver").await;
    fern.asks("/hour 6:30").await;
    let moss = grower(&world, "Moss", "cucumber").await;
    moss.asks("/zone Auckland").await;
    fern.news();
    moss.news();

    // Auckland (UTC+12 in April) has its morning of the 17th at 19:00 UTC on the 16th.
    world.at(instant("2026-04-16T18:59:00Z")).await;
    assert!(moss.news().is_empty(), "a minute early");
    world.at(instant("2026-04-16T19:00:00Z")).await;
    assert!(only(moss.news()).text.starts_with("Good morning! Friday, April 17:"));
    // Denver (UTC-6) has 6:30 at 12:30 UTC on the 17th.
    world.at(instant("2026-04-17T12:29:00Z")).await;
    assert!(fern.news().is_empty(), "a minute early");
    world.at(instant("2026-04-17T12:30:00Z")).await;
    assert!(only(fern.news()).text.starts_with("Good morning! Friday, April 17:"));
    assert!(moss.news().is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_member_without_a_zone_has_the_clubs() {
    let world = World::start("2026-04-16T18:00:00Z").await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let fern = world.person("Fern");
    club.welcomes(&[&fern]);
    club.hears(&fern, "/help").await;
    fern.asks("/start").await;
    fern.asks("/grow cucumber").await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    club.hears(&ash, "/club zone Denver").await;
    fern.news();
    world.morning_of("2026-04-17").await;
    assert!(fern.news().is_empty(), "one o'clock at night in Denver");
    world.morning_in("2026-04-17", Tz::America__Denver).await;
    let text = only(fern.news()).text;
    assert!(text.contains("Sow cucumbers indoors: good until May 1"), "{text}");
}

#[tokio::test(flavor = "multi_thread")]
async fn where_nothing_is_due_nothing_is_said() {
    let world = World::start("2026-01-09T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber, zinnia").await;
    fern.news();
    for day in 10..20 {
        world.morning_of(&format!("2026-01-{day}")).await;
    }
    assert!(fern.news().is_empty());
    let empty = world.member("Moss").await;
    empty.asks("/frost 05-15 10-05").await;
    empty.news();
    world.morning_of("2026-04-17").await;
    assert!(empty.news().is_empty(), "nothing grows");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_buttons_change_the_message_in_its_place() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber, zinnia, basil").await;
    world.morning_of("2026-04-17").await;
    let morning = only(fern.news());
    assert_eq!(fern.presses("1 done").await.as_deref(), Some("Noted as done on April 17."));
    insta::assert_snapshot!(shown(&fern.last()), @r"
    Good morning! Friday, April 17:
    1. Sow basil indoors: good until April 24.
    2. Sow cucumbers indoors: good until May 1.
    3. Sow zinnias indoors: good until May 1.
    [1 is done · undo]
    [2 done] [later] [skip]
    [3 done] [later] [skip]
    ");
    let later = fern.last().buttons[1][1].text.clone();
    assert_eq!(later, "later");
    let second_later = fern.last().buttons[0].len() + 1;
    world.platform.press(fern.id, fern.id, morning.message_id, second_later);
    world.quiet().await;
    insta::assert_snapshot!(shown(&fern.last()), @r"
    Good morning! Friday, April 17:
    1. Sow basil indoors: good until April 24.
    2. Sow cucumbers indoors: good until May 1.
    3. Sow zinnias indoors: good until May 1.
    [1 is done · undo]
    [2 done] [2 later · undo]
    [3 done] [later] [skip]
    ");
    assert_eq!(
        fern.presses("skip").await.as_deref(),
        Some("I will not name it again this season.")
    );
    insta::assert_snapshot!(shown(&fern.last()), @r"
    Good morning! Friday, April 17:
    1. Sow basil indoors: good until April 24.
    2. Sow cucumbers indoors: good until May 1.
    3. Sow zinnias indoors: good until May 1.
    [1 is done · undo]
    [2 done] [2 later · undo]
    [3 is skipped · undo]
    ");
    assert_eq!(fern.presses("1 is done · undo").await.as_deref(), Some("Taken back."));
    insta::assert_snapshot!(shown(&fern.last()), @r"
    Good morning! Friday, April 17:
    1. Sow basil indoors: good until April 24.
    2. Sow cucumbers indoors: good until May 1.
    3. Sow zinnias indoors: good until May 1.
    [1 done] [later] [skip]
    [2 done] [2 later · undo]
    [3 is skipped · undo]
    ");
    assert_eq!(fern.last().message_id, morning.message_id);
    assert_eq!(fern.last().text, morning.text);
    assert!(fern.news().is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_answered_decides_what_is_named_again() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber, zinnia, pumpkin").await;
    world.morning_of("2026-04-17").await;
    let morning = only(fern.news());
    insta::assert_snapshot!(shown(&morning), @r"
    Good morning! Friday, April 17:
    1. Sow cucumbers indoors: good until May 1.
    2. Sow pumpkins indoors: good until May 1.
    3. Sow zinnias indoors: good until May 1.
    [1 done] [later] [skip]
    [2 done] [later] [skip]
    [3 done] [later] [skip]
    ");
    let line =
        |crop: &str| morning.text.lines().position(|line| line.contains(crop)).expect("a line") - 1;
    let press = async |crop: &str, answer: usize| {
        let pressed = world.platform.press_data(
            fern.id,
            fern.id,
            morning.message_id,
            morning.buttons[line(crop)][answer].callback_data.as_deref().expect("data"),
        );
        fern.notice(&pressed.query_id).await
    };
    press("cucumbers", 0).await;
    press("zinnias", 1).await;
    press("pumpkins", 2).await;
    // The window is April 17 to May 1: its middle is April 24 and its last good day May 1.
    let mut named = Vec::new();
    for day in 18..=30 {
        world.morning_of(&format!("2026-04-{day}")).await;
        named.extend(fern.news().into_iter().map(|message| message.text));
    }
    for day in 1..=3 {
        world.morning_of(&format!("2026-05-0{day}")).await;
        named.extend(fern.news().into_iter().map(|message| message.text));
    }
    insta::assert_snapshot!(named.join("\n\n"), @"
    Good morning! Saturday, April 18:
    1. Sow zinnias indoors: good until May 1.

    Good morning! Friday, April 24:
    1. Sow zinnias indoors: good until May 1.

    Good morning! Saturday, April 25:
    1. Look for seedlings of cucumbers (sown April 17): they should be up by now.

    Good morning! Friday, May 1:
    1. Sow zinnias indoors: today is the last good day.

    Good morning! Sunday, May 3:
    1. Look for seedlings of cucumbers (sown April 17): if nothing shows by now, sow again.

    Coming this week:
    • Friday, May 8: harden off cucumbers
    • Friday, May 8: harden off zinnias
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_stop_over_several_mornings_ends_in_one_message() {
    let mut world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    fern.news();
    world.quiet().await;
    world.sleep().await;
    world.clock.set(instant("2026-04-20T15:00:00Z"));
    world.wake().await;
    world.at(instant("2026-04-20T15:00:05Z")).await;
    let text = only(fern.news()).text;
    assert!(text.starts_with("Good morning! Monday, April 20:"), "{text}");
}

#[tokio::test(flavor = "multi_thread")]
async fn an_unsent_reminder_that_a_change_makes_untrue_is_made_anew() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber, zinnia").await;
    fern.news();
    // The platform takes no reminder for now.
    let refuse = Fault::TooManyRequests { retry_after: 1 };
    world.platform.fail(Which::method("sendMessage").containing("Good morning"), 2, refuse);
    world.set_clock(instant("2026-04-17T07:00:00Z")).await;
    world.platform.wait_for("a try", |state| (state.faults_left() < 2).then_some(())).await;
    fern.writes("/drop cucumber");
    world.quiet().await;
    let reminders: Vec<String> = fern
        .news()
        .into_iter()
        .map(|message| message.text)
        .filter(|text| text.starts_with("Good morning"))
        .collect();
    insta::assert_snapshot!(reminders.join("\n\n"), @r"
    Good morning! Friday, April 17:
    1. Sow zinnias indoors: good until May 1.
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn dropping_the_last_crop_leaves_no_reminder() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    fern.news();
    let refuse = Fault::TooManyRequests { retry_after: 1 };
    world.platform.fail(Which::method("sendMessage").containing("Good morning"), 1, refuse);
    world.set_clock(instant("2026-04-17T07:00:00Z")).await;
    world.platform.wait_for("a try", |state| (state.faults_left() < 1).then_some(())).await;
    fern.writes("/drop cucumber");
    world.quiet().await;
    let texts: Vec<String> = fern.news().into_iter().map(|message| message.text).collect();
    assert_eq!(texts, ["Off your list: cucumber."]);
}

#[tokio::test(flavor = "multi_thread")]
async fn who_blocks_the_bot_is_left_alone_until_they_let_it_write_again() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    fern.news();
    fern.blocks_the_bot();
    world.quiet().await;
    let before = world.platform.requests_of("sendMessage");
    world.morning_of("2026-04-17").await;
    world.morning_of("2026-04-18").await;
    assert_eq!(world.platform.requests_of("sendMessage"), before, "nothing was even tried");
    fern.lets_the_bot_write_again();
    world.quiet().await;
    world.morning_of("2026-04-19").await;
    let text = only(fern.news()).text;
    assert!(text.contains("Sow cucumbers indoors"), "{text}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_block_that_nobody_told_of_shows_when_a_message_is_refused() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber, zinnia").await;
    fern.news();
    let blocked =
        Fault::Refuse { code: 403, description: "Forbidden: bot was blocked by the user".into() };
    world.platform.fail(Which::method("sendMessage").in_chat(fern.id), 1, blocked);
    world.morning_of("2026-04-17").await;
    let tries = world.platform.requests_of("sendMessage");
    world.morning_of("2026-04-24").await;
    assert_eq!(world.platform.requests_of("sendMessage"), tries, "the refusal is believed");
    // Whoever writes can be written to, and what was refused was not named.
    fern.tells("/help").await;
    world.morning_of("2026-04-25").await;
    let text = only(fern.news()).text;
    assert!(text.contains("cucumbers") && text.contains("zinnias"), "{text}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_reminder_that_could_not_be_sent_all_day_is_not_sent_the_next() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    fern.news();
    world.platform.on_request(|call| {
        (call.method == "sendMessage").then_some(Fault::TooManyRequests { retry_after: 3600 })
    });
    world.set_clock(instant("2026-04-17T07:00:00Z")).await;
    world.wait_until_waiting(1).await;
    world
        .platform
        .wait_for("a try", |state| {
            state.calls().iter().any(|call| call.answer == Some(429)).then_some(())
        })
        .await;
    world.platform.behave();
    world.skip_waits_to(instant("2026-04-18T07:00:00Z")).await;
    let text = only(fern.news()).text;
    assert!(text.starts_with("Good morning! Saturday, April 18:"), "{text}");
    assert!(text.contains("Sow cucumbers indoors"), "it was not named yesterday: {text}");
}

#[tokio::test(flavor = "multi_thread")]
async fn many_jobs_are_spread_over_mornings_and_leafed_through_in_now() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    // All of them may be sown from April 17 on, four weeks before the last frost.
    let crops = "cucumber, pumpkin, zinnia, beet, radish, turnip, arugula, cress, \
                 mustard greens, love in a mist, bachelor's button";
    let fern = grower(&world, "Fern", crops).await;
    world.morning_of("2026-04-17").await;
    let first = only(fern.news());
    world.morning_of("2026-04-18").await;
    let second = only(fern.news());
    let named = |message: &crate::platform::Message| -> Vec<String> {
        let lines = message.text.lines().filter_map(|line| line.split_once(". "));
        lines.map(|(_, job)| job.to_owned()).collect()
    };
    assert_eq!((named(&first).len(), named(&second).len()), (8, 3), "{first:?} {second:?}");
    assert!(first.text.ends_with("3 more jobs wait: /now"), "{}", first.text);
    assert!(named(&first).iter().all(|job| !named(&second).contains(job)), "none is named twice");

    let page = fern.asks("/now").await;
    assert_eq!(named(&page).len(), 8);
    assert_eq!(fern.presses("More").await, None);
    let rest = fern.last();
    assert_eq!((rest.message_id, named(&rest).len()), (page.message_id, 3));
    // What is done on a page changes its buttons and keeps the way back.
    fern.presses("1 done").await;
    assert_eq!(fern.last().text, rest.text);
    assert!(fern.last().labels().contains(&"1 is done · undo"), "{:?}", fern.last().labels());
    fern.presses("Back").await;
    assert_eq!(named(&fern.last()), named(&page));
}

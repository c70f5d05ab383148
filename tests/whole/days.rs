//! The days on which messages come: quiet days, weekends, holidays; and what a morning lists of
//! the week to come.

use crate::harness::{Person, World, only, shown};

/// A member with these dates and crops.
async fn grower(world: &World, name: &str, crops: &str) -> Person {
    let person = world.member(name).await;
    person.asks("/frost 05-15 10-05").await;
    person.asks(&format!("/grow {crops}")).await;
    person
}

/// What came on the mornings of these days of April and May 2026, day by day.
async fn mornings(world: &World, person: &Person, month: u32, days: [u32; 2]) -> Vec<String> {
    person.news();
    let mut came = Vec::new();
    for day in days[0]..=days[1] {
        world.morning_of(&format!("2026-{month:02}-{day:02}")).await;
        let news = person.news();
        assert!(news.len() <= 1, "one message a morning: {news:?}");
        came.extend(news.into_iter().map(|message| message.text));
    }
    came
}

// Cucumbers and zinnias are sown indoors from Friday 17 April to Friday 1 May 2026, basil to
// Friday 24 April, tomatoes from Friday 27 March to Friday 10 April.

#[tokio::test(flavor = "multi_thread")]
async fn what_falls_on_a_quiet_day_is_told_on_the_next_and_a_last_day_before() {
    let world = World::start("2026-04-15T12:00:00Z").await;
    let fern = grower(&world, "Fern", "basil").await;
    insta::assert_snapshot!(shown(&fern.asks("no messages on Fridays").await), @"
    No messages on Friday. What would have come then is in the next message, and a last good day among them is told before.
    Press a day to change it, or write it, like this: /quiet Sunday
    [Monday] [Tuesday] [Wednesday] [Thursday] [Friday: quiet]
    [Saturday] [Sunday]
    ");
    let came = mornings(&world, &fern, 4, [16, 27]).await;
    insta::assert_snapshot!(came.join("\n\n"), @"
    Good morning! Thursday, April 16:
    1. Sow basil indoors: good until April 24.

    Good morning! Thursday, April 23:
    1. Sow basil indoors: the last good day is April 24.
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn quiet_days_are_set_by_words_and_buttons_and_bad_words_change_nothing() {
    let world = World::start("2026-04-15T12:00:00Z").await;
    let fern = grower(&world, "Fern", "basil").await;
    let page = fern.asks("/quiet saturday, sunday").await;
    fern.presses("Sunday: quiet").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    No messages on Saturday. What would have come then is in the next message, and a last good day among them is told before.
    Press a day to change it, or write it, like this: /quiet Sunday
    [Monday] [Tuesday] [Wednesday] [Thursday] [Friday]
    [Saturday: quiet] [Sunday]
    ");
    assert_eq!(fern.last().message_id, page.message_id, "changed in its place");
    for (text, answer) in [
        ("/quiet moonday", "I found no day of the week in “moonday”, so nothing changed."),
        (
            "/quiet mon tue wed thu fri sat sun",
            "That would leave no day for messages, so nothing changed.",
        ),
    ] {
        let said = fern.asks(text).await.text;
        assert!(said.starts_with(answer), "{said}");
    }
    let settings = fern.asks("/settings").await.text;
    assert!(settings.contains("• No messages on Saturday\n"), "{settings}");
    let off = fern.asks("/quiet off").await.text;
    assert!(off.starts_with("Messages may come on any day."), "{off}");
}

#[tokio::test(flavor = "multi_thread")]
async fn later_is_tomorrow_or_the_next_weekend() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    world.morning_of("2026-04-17").await;
    let notice = fern.presses("later").await;
    assert_eq!(notice.as_deref(), Some("I will name it again on April 18."));
    let again = mornings(&world, &fern, 4, [18, 20]).await;
    assert_eq!(again.len(), 1, "{again:?}");

    let moss = grower(&world, "Moss", "zinnia").await;
    let noted = moss.asks("I garden at weekends").await.text;
    assert!(noted.starts_with("Noted: you garden at weekends."), "{noted}");
    world.morning_of("2026-04-21").await;
    let notice = moss.presses("later").await;
    assert_eq!(notice.as_deref(), Some("I will name it again on April 25."));
    let again = mornings(&world, &moss, 4, [22, 26]).await;
    assert_eq!(again.len(), 1);
    assert!(again[0].starts_with("Good morning! Saturday, April 25:"), "{again:?}");
    // The weekend after is past the last good day, so it is that day.
    let notice = moss.presses("later").await;
    assert_eq!(notice.as_deref(), Some("I will name it again on May 1."));
    let any_day = moss.asks("I garden on any day").await.text;
    assert!(any_day.starts_with("Noted: you garden on any day."), "{any_day}");
}

#[tokio::test(flavor = "multi_thread")]
async fn later_on_the_last_day_that_is_worth_it_changes_nothing() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    world.morning_of("2026-04-17").await;
    // Worth it until July 16; the plan then has no later day.
    world.clock.set(crate::harness::instant("2026-07-16T12:00:00Z"));
    let morning = fern.last();
    let notice = fern.presses_under(&morning, "later").await.unwrap_or_default();
    assert_eq!(notice, "Today is the last day that is worth it, so nothing changed.");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_holiday_is_quiet_and_what_was_missed_comes_after_it() {
    let world = World::start("2026-04-15T12:00:00Z").await;
    let fern = grower(&world, "Fern", "basil, zinnia, tomato").await;
    insta::assert_snapshot!(fern.asks("/holiday until 27 April").await.text, @"
    Have a good time! No messages before April 27. What you miss and is still worth doing then is in the first one.
    These end before that, so do them before you go:
    • Sow tomatoes indoors: late, but worth it until May 9.
    • Sow basil indoors: the last good day is April 24.
    ");
    let came = mornings(&world, &fern, 4, [16, 28]).await;
    insta::assert_snapshot!(came.join("\n\n"), @"
    Good morning! Monday, April 27:
    1. Sow tomatoes indoors: late, but worth it until May 9.
    2. Sow basil indoors: late, but worth it until July 2.
    3. Sow zinnias indoors: good until May 1.
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_holiday_is_ended_shown_and_refused() {
    let world = World::start("2026-04-15T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    for (text, answer) in [
        ("/holiday until 31 June", "The calendar has no day “31 June”, so nothing changed."),
        ("/holiday until 2026-04-01", "April 1 is not after today, so nothing changed."),
        ("/holiday until 2027-05-01", "May 1, 2027 is more than a year away, so nothing changed."),
        ("/holiday soon", "I could not read a day in “soon”, so nothing changed."),
        ("/holiday 20 June to 3 July", "That is more than one day, so nothing changed."),
        ("/holiday off", "You are not on holiday; messages come as usual."),
        ("I am back", "You are not on holiday; messages come as usual."),
    ] {
        let said = fern.asks(text).await.text;
        assert!(said.starts_with(answer), "{text}: {said}");
    }
    // Asked for, the day may come alone.
    let asked = fern.asks("/holiday").await.text;
    assert!(asked.starts_with("Until when are you away?"), "{asked}");
    let set = fern.asks("3 July").await.text;
    assert!(set.starts_with("Have a good time! No messages before July 3."), "{set}");
    let page = fern.asks("/settings").await;
    assert!(page.text.contains("• On holiday, no messages before July 3"), "{}", page.text);
    world.morning_of("2026-04-17").await;
    assert!(fern.news().is_empty());
    fern.presses_under(&page, "Back from holiday").await;
    assert_eq!(fern.last().text, "Welcome back! Messages come again from the next morning on.");
    fern.news();
    world.morning_of("2026-04-18").await;
    assert!(only(fern.news()).text.contains("Sow cucumbers indoors"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_change_of_days_takes_an_unsent_message_back() {
    use crate::platform::{Fault, Which};
    let world = World::start("2026-04-16T12:00:00Z").await;
    let fern = grower(&world, "Fern", "cucumber").await;
    fern.news();
    let refuse = Fault::TooManyRequests { retry_after: 1 };
    world.platform.fail(Which::method("sendMessage").containing("Good morning"), 1, refuse);
    world.set_clock(crate::harness::instant("2026-04-17T07:00:00Z")).await;
    world.platform.wait_for("a try", |state| (state.faults_left() < 1).then_some(())).await;
    fern.writes("/holiday until 20 April");
    world.quiet().await;
    let texts: Vec<String> = fern.news().into_iter().map(|message| message.text).collect();
    assert!(texts.iter().all(|text| !text.starts_with("Good morning")), "{texts:?}");
    let after = mornings(&world, &fern, 4, [18, 20]).await;
    assert_eq!(after.len(), 1, "{after:?}");
    assert!(after[0].starts_with("Good morning! Monday, April 20:"), "{after:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_morning_lists_what_is_coming_and_says_first_what_cannot_wait() {
    let world = World::start("2026-04-09T12:00:00Z").await;
    let fern = grower(&world, "Fern", "tomato, basil, cucumber, carrot, kale").await;
    let came = mornings(&world, &fern, 4, [10, 12]).await;
    insta::assert_snapshot!(came.join("\n\n"), @"
    Good morning! Friday, April 10:
    1. Sow kale indoors: late, but worth it until June 13.
    2. Sow tomatoes indoors: today is the last good day.
    3. Sow basil indoors: good until April 24.
    4. Harden off kale: over 7 to 14 days, while nights stay above 27 °F.
    ");
    // A week before cucumbers are sown indoors it is not their week yet.
    let moss = grower(&world, "Moss", "basil, cucumber, zinnia").await;
    let came = mornings(&world, &moss, 4, [13, 14]).await;
    insta::assert_snapshot!(came.join("\n\n"), @"
    Good morning! Monday, April 13:
    1. Sow basil indoors: good until April 24.

    Coming this week:
    • Friday, April 17: sow cucumbers indoors
    • Friday, April 17: sow zinnias indoors
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn in_a_group_only_the_asker_says_what_was_meant() {
    let world = World::start("2026-04-20T12:00:00Z").await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let fern = grower(&world, "Fern", "leek").await;
    let moss = grower(&world, "Moss", "leek").await;
    club.welcomes(&[&fern, &moss]);
    let asked = club.hears(&fern, "/ask can I start marigolds now?").await;
    let notice = moss.presses_under(&asked, "calendulas").await.unwrap_or_default();
    assert!(notice.starts_with("This belongs to whoever asked for it"), "{notice}");
    assert!(club.news().is_empty());
    fern.presses_under(&asked, "calendulas").await;
    assert!(only(club.news()).text.contains("calendulas"));
}

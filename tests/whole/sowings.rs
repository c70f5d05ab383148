//! Sowings that members record: told in words and by buttons, what follows, and taking it back.

use crate::harness::{Person, World, shown};

const SPRING: &str = "2026-04-22T12:00:00Z";

async fn grower(world: &World) -> Person {
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern
}

async fn sowings(world: &World) -> i64 {
    world.count("SELECT count(*) FROM sowings").await
}

#[tokio::test(flavor = "multi_thread")]
async fn a_sowing_told_in_words_has_its_own_dates_until_it_is_taken_back() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    insta::assert_snapshot!(shown(&fern.asks("sowed 12 basil today").await), @"
    Noted: 12 basil, sown indoors on April 22.
    • Up April 27 to May 6. Nothing by May 20? Then sow again.
    • Pot up basil: May 13–20
    • Harden off basil: from May 8
    • Set out basil: from May 22, when the week's nights stay above 50 °F
    • First harvest: June 16 to July 6

    On your list: basil.
    [Undo]
    ");
    fern.asks("/sown 6 basil on 1 April").await;
    insta::assert_snapshot!(fern.asks("/sowings").await.text, @"
    2 sowings:
    1. 12 basil, sown indoors on April 22. Next: look for seedlings of basil, from May 6
    2. 6 basil, sown indoors on April 1. Now: look for seedlings of basil
    ");
    fern.asks("/undo").await;
    insta::assert_snapshot!(fern.asks("/sowings").await.text, @"
    One sowing:
    1. 12 basil, sown indoors on April 22. Next: look for seedlings of basil, from May 6
    ");
    fern.asks("/undo").await;
    assert_eq!(sowings(&world).await, 0);
    insta::assert_snapshot!(fern.asks("/mycrops").await.text, @"Your list is empty. Send what you grow, like this: /grow tomato, basil");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_button_takes_back_its_own_sowing_and_no_later_change() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    let first = fern.asks("sowed 12 basil today").await;
    let second = fern.asks("sowed 3 cucumbers today").await;
    fern.presses_under(&first, "Undo").await;
    assert_eq!(sowings(&world).await, 2, "something else changed since");
    fern.presses_under(&second, "Undo").await;
    assert_eq!(sowings(&world).await, 1);
    fern.presses_under(&first, "Undo").await;
    assert_eq!(sowings(&world).await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_word_for_two_crops_is_asked_about_and_keeps_its_number() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    insta::assert_snapshot!(shown(&fern.asks("sowed 6 marigolds yesterday").await), @"
    “marigold” can mean marigolds or calendulas. Which do you mean?
    [marigolds]
    [calendulas]
    ");
    assert_eq!(sowings(&world).await, 0);
    fern.presses("calendulas").await;
    let noted = fern.last().text;
    assert!(noted.starts_with("Noted: 6 calendulas, sown"), "{noted}");
    assert!(noted.contains("April 21"), "{noted}");
    fern.asks("/sown marigold 8").await;
    let noted = fern.asks("marigolds, the french ones").await.text;
    assert!(!noted.starts_with("Noted"), "still a word for two crops: {noted}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_reminders_done_is_a_sowing_and_what_follows_counts_from_it() {
    let world = World::start("2026-03-26T12:00:00Z").await;
    let fern = grower(&world).await;
    fern.asks("/grow tomato").await;
    world.morning_of("2026-03-27").await;
    fern.asks("/now").await;
    fern.presses("1 done").await;
    assert_eq!(sowings(&world).await, 1);
    // Tomatoes take 6 to 14 days; the morning after that somebody looks.
    world.morning_of("2026-04-10").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    Good morning! Friday, April 10:
    1. Look for seedlings of tomatoes (sown March 27): they should be up by now.
    [1 is up] [1 nothing came up] [later]
    ");
    fern.presses("1 nothing came up").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    A pity. Noted that nothing came up: tomatoes, sown indoors on March 27.
    You can sow tomatoes again now; that is worth it until May 9.
    [Sown again today]
    [Undo]
    ");
    fern.presses("Sown again today").await;
    insta::assert_snapshot!(fern.asks("/sowings").await.text, @"
    One sowing:
    1. Tomatoes, sown indoors on April 10. Next: look for seedlings of tomatoes, from April 20
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn what_cannot_be_is_said_in_one_sentence_and_changes_nothing() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    let mut told = Vec::new();
    for text in [
        "/sown",
        "/sown basil 12 tomorrow",
        "/sown basil 0",
        "/sown basil 10000",
        "/sown basil 12 on 31 February",
        "/sown sqwzx 12",
        "/sown basil 12 at 90 °C",
        "/sown garlic 12",
    ] {
        told.push(format!("{text}\n  {}", fern.asks(text).await.text));
    }
    insta::assert_snapshot!(told.join("\n"), @"
    /sown
      What did you sow, how many and when? Like this: /sown basil 12 on 3 April
    /sown basil 12 tomorrow
      April 23 is still to come, so nothing changed. Tell me once you have sown.
    /sown basil 0
      I can note 1 to 2,000 plants for one sowing, so nothing changed.
    /sown basil 10000
      I can note 1 to 2,000 plants for one sowing, so nothing changed.
    /sown basil 12 on 31 February
      I know no day “31 February”, so nothing changed. Like this: /sown basil 12 on 3 April
    /sown sqwzx 12
      I don't know “sqwzx”. Try its everyday name, such as “tomato”.
    /sown basil 12 at 90 °C
      194 °F cannot be right for soil or a room; I can reckon with -4 °F to 122 °F, so nothing changed.
    /sown garlic 12
      Not noted: you plant garlic, and only sowings are kept here.
    ");
    assert_eq!(sowings(&world).await, 0);
    assert_eq!(world.count("SELECT count(*) FROM member_crops").await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn plants_begun_too_early_are_said_to_outgrow_their_cells() {
    let world = World::start("2026-02-01T12:00:00Z").await;
    let fern = grower(&world).await;
    insta::assert_snapshot!(fern.asks("sowed 4 cucumbers").await.text, @"
    Noted: 4 cucumbers, sown indoors on February 1.
    • Up February 7–9 in a room of about 68 °F. Nothing by February 17? Then sow again from April 17.
    • Harden off cucumbers: from May 8
    • Set out cucumbers: from May 22, when the week's nights stay above 50 °F
    • First harvest: June 13 to July 3
    • By the day they go out they are 15½ weeks old, and 6 weeks is the most they bear. Better sow again from April 17.

    On your list: cucumber.
    ");
}

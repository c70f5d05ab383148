//! Words that were once taken for something else: two dates in one order, days that are quiet no
//! more, what was done and not asked, and frost that comes.

use crate::harness::{Person, World, shown};

const SPRING: &str = "2026-04-22T12:00:00Z";
const LANGUAGES: [&str; 4] = ["en", "de", "fr", "es"];

/// A new member whose app speaks this language.
async fn reader(world: &World, tag: &str) -> Person {
    let person = world.person_reading(&format!("Fern {tag}"), tag);
    person.asks("/start").await;
    person
}

/// A member whose app speaks this language, with these frost dates.
async fn grower(world: &World, tag: &str) -> Person {
    let person = reader(world, tag).await;
    person.asks("/frost 05-15 10-05").await;
    person
}

/// How many sowings there are for which this holds.
async fn sowings(world: &World, condition: &str) -> i64 {
    let question = format!("SELECT count(*) FROM sowings WHERE {condition}");
    world.count(Box::leak(question.into_boxed_str())).await
}

#[tokio::test(flavor = "multi_thread")]
async fn two_frost_dates_in_figures_have_one_order_and_make_a_season() {
    let world = World::start(SPRING).await;
    for tag in LANGUAGES {
        let fern = reader(&world, tag).await;
        let noted = fern.asks("/frost 5/15 10/5").await.text;
        // From May 15 to October 5 are 143 days.
        assert!(noted.contains("143"), "{tag}: {noted}");
        let kept = fern.asks("/settings").await.text;
        // The day first, that is 15 May and 10 May, 360 days later.
        let odd = fern.asks("/frost 15/5 10/5").await.text;
        assert!(odd.contains("360") && odd.contains("15") && odd.contains("10"), "{odd}");
        assert_eq!(fern.asks("/settings").await.text, kept, "{tag}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_season_of_hardly_any_or_nearly_all_days_is_asked_about() {
    let world = World::start(SPRING).await;
    let fern = grower(&world, "en").await;
    insta::assert_snapshot!(shown(&fern.asks("/frost 05-15 05-10").await), @"
    I read that as last frost around May 15, first frost around May 10. Those would be 360 days without frost, which is rare, so I kept nothing yet. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
    [They are right]
    ");
    insta::assert_snapshot!(shown(&fern.asks("my first frost is May 10").await), @"
    I read that as last frost around May 15, first frost around May 10. Those would be 360 days without frost, which is rare, so I kept nothing yet. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
    [They are right]
    ");
    insta::assert_snapshot!(shown(&fern.asks("/frost 05-15 06-10").await), @"
    I read that as last frost around May 15, first frost around June 10. Those would be 26 days without frost, which is rare, so I kept nothing yet. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
    [They are right]
    ");
    insta::assert_snapshot!(fern.asks("/frost 05-15 05-20").await.text, @"The dates May 15 and May 20 leave only 5 days without frost, so I kept neither. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none");
    let kept = fern.asks("/settings").await.text;
    assert!(kept.contains("last frost around May 15, first frost around October 5"), "{kept}");
    // A coast with hardly any frost says so by the button.
    let coast = fern.asks("/frost 01-15 12-20").await;
    assert!(coast.text.contains("339 days"), "{}", coast.text);
    fern.presses("They are right").await;
    let kept = fern.asks("/settings").await.text;
    assert!(kept.contains("last frost around January 15"), "{kept}");
    // The southern hemisphere has its autumn in May.
    let south = fern.asks("/frost 10/5 5/15").await.text;
    assert!(south.contains("last frost around October 5") && south.contains("new year"), "{south}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_day_is_taken_off_the_quiet_ones_or_added_to_them() {
    let world = World::start(SPRING).await;
    let fern = grower(&world, "en").await;
    let first = |text: &str| text.lines().next().unwrap_or_default().to_owned();
    for (said, answer) in [
        ("/quiet Saturday, Sunday", "No messages on Saturday and Sunday."),
        ("/quiet off Sunday", "No messages on Saturday."),
        ("/quiet off Friday", "No messages on Saturday."),
        ("/quiet not saturday", "Messages may come on any day."),
        ("no messages on sundays", "No messages on Sunday."),
        ("no messages on mondays", "No messages on Monday and Sunday."),
        ("messages on sundays again", "No messages on Monday."),
        ("/quiet Friday", "No messages on Friday."),
        ("/quiet off", "Messages may come on any day."),
    ] {
        let got = first(&fern.asks(said).await.text);
        assert!(got.starts_with(answer), "{said}: {got}");
    }
    let moss = grower(&world, "de").await;
    for (said, answer) in [
        ("/quiet samstag, sonntag", "Keine Nachrichten an diesen Tagen: Samstag und Sonntag."),
        ("/quiet aus sonntag", "Keine Nachrichten an diesen Tagen: Samstag."),
        ("/quiet samstag aus", "Nachrichten dürfen an jedem Tag kommen."),
        ("keine Nachrichten am Montag", "Keine Nachrichten an diesen Tagen: Montag."),
        ("wieder Nachrichten am Montag", "Nachrichten dürfen an jedem Tag kommen."),
    ] {
        let got = first(&moss.asks(said).await.text);
        assert!(got.starts_with(answer), "{said}: {got}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_sowing_told_with_its_verb_behind_is_noted() {
    let world = World::start(SPRING).await;
    for (tag, text, crop, plants, day) in [
        ("en", "12 basil sown today", "basil", 12, "2026-04-22"),
        ("en", "6 cucumbers sown yesterday", "cucumber", 6, "2026-04-21"),
        ("de", "heute 12 basilikum gesät", "basil", 12, "2026-04-22"),
        ("de", "heute 6 gurken ausgesät", "cucumber", 6, "2026-04-22"),
        ("de", "5 Gurken gestern gesät", "cucumber", 5, "2026-04-21"),
        ("fr", "12 basilic semés aujourd'hui", "basil", 12, "2026-04-22"),
        ("fr", "7 concombres semés hier", "cucumber", 7, "2026-04-21"),
        ("es", "9 pepinos sembrados hoy", "cucumber", 9, "2026-04-22"),
    ] {
        let fern = grower(&world, tag).await;
        let answer = fern.asks(text).await.text;
        let row = format!("crop = '{crop}' AND plants = {plants} AND sown_on = '{day}'");
        assert_eq!(sowings(&world, &row).await, 1, "{text}: {answer}");
        fern.asks("/undo").await;
        assert_eq!(sowings(&world, &row).await, 0, "{text}");
    }
    // A question is none.
    let fern = grower(&world, "en").await;
    for text in ["is basil best sown today", "when are cucumbers sown", "12 basil sown today?"] {
        let answer = fern.asks(text).await.text;
        assert_eq!(sowings(&world, "1").await, 0, "{text}: {answer}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn potting_up_and_hardening_off_that_were_done_are_ticked_off() {
    let world = World::start("2026-03-25T12:00:00Z").await;
    let fern = grower(&world, "en").await;
    fern.asks("sowed 12 tomatoes today").await;
    world.clock.set(crate::harness::instant("2026-04-22T12:00:00Z"));
    insta::assert_snapshot!(shown(&fern.asks("potted up the tomatoes today").await), @"
    Noted as potted up on April 22: tomatoes.
    [Undo]
    ");
    insta::assert_snapshot!(shown(&fern.asks("hardened off tomatoes today").await), @"
    Noted as hardened off on April 22: tomatoes.
    [Undo]
    ");
    insta::assert_snapshot!(fern.asks("hardened off peppers today").await.text, @"Nothing to tick off: I have no sowing of peppers waiting for that, and it is not in your plan. To note a sowing: /sown");
    insta::assert_snapshot!(fern.asks("/sowings").await.text, @"
    One sowing:
    1. 12 tomatoes, sown indoors on March 25. Next: set out tomatoes, from May 22
    ");
    for (tag, sown, done, answer) in [
        ("de", "/sown 6 tomaten", "habe heute die tomaten pikiert", "Als umgetopft notiert"),
        ("fr", "/sown 6 brocolis", "j'ai repiqué les brocolis aujourd'hui", "C’est noté, repiqué"),
        ("es", "/sown 6 tomates", "hoy repiqué los tomates", "Anotado como repicado"),
    ] {
        let moss = grower(&world, tag).await;
        moss.asks(sown).await;
        let got = moss.asks(done).await.text;
        assert!(got.starts_with(answer), "{got}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn frost_that_is_asked_about_comes_or_came() {
    let world = World::start(SPRING).await;
    let fern = grower(&world, "en").await;
    for text in [
        "when's the last frost?",
        "what is my last frost date?",
        "when's my first frost?",
        "what is my first frost date?",
    ] {
        let answer = fern.asks(text).await.text;
        assert!(answer.contains("last frost around May 15"), "{text}: {answer}");
    }
    insta::assert_snapshot!(fern.asks("frost tonight").await.text, @"I see no weather forecast, but if frost comes: bring seedlings in, and cover tender plants in the beds with fleece before dusk. If planting out should wait, send /hold 7 days.");
    fern.asks("sowed 12 tomatoes on 1 April").await;
    insta::assert_snapshot!(fern.asks("tomatoes froze last night").await.text, @"
    I am sorry. Noted that they are gone: 12 tomatoes, sown indoors on April 1.
    You can sow tomatoes again now; that is worth it until May 9.
    ");
    for (tag, text, answer) in [
        ("en", "how do I harden off seedlings", "Hardening off"),
        ("en", "How do I harden off tomatoes?", "Hardening off"),
        ("de", "wie härte ich tomaten ab?", "Abhärten"),
        ("fr", "comment endurcir les tomates ?", "L’endurcissement"),
        ("es", "¿cómo aclimato los tomates?", "Aclimatar"),
    ] {
        let got = grower(&world, tag).await.asks(text).await.text;
        assert!(got.starts_with(answer), "{text}: {got}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_variety_that_is_not_known_is_not_lost_in_silence() {
    let world = World::start(SPRING).await;
    let fern = grower(&world, "en").await;
    insta::assert_snapshot!(fern.asks("/sown pepper King of the North 8 on 10 March").await.text, @"
    Noted: 8 peppers, sown indoors on March 10.
    • Up March 23–27 in a room of about 68 °F. Nothing by April 10? Then sow again.
    • Pot up peppers: March 31 to April 7
    • Harden off peppers: from May 8
    • Set out peppers: from May 22, when the week's nights stay above 50 °F
    • First harvest: July 31 to August 10
    • By the day they go out they are 10½ weeks old, and 10 weeks is the most they bear: pot them up, and give them light.

    I don't know the variety “King of the North”. To keep it, send what its packet says, like this: /variety peppers King of the North: 75 days

    On your list: pepper.
    ");
    assert_eq!(sowings(&world, "crop = 'pepper' AND plants = 8").await, 1);
    fern.asks("/variety tomato Early Robin: 75 days").await;
    for text in [
        "/sown 12 basil in the green tray for grandma",
        "/sown Early Robin tomatoes 4",
        "/sown 12 tomatoes Early Robin on 10 April",
        "sowed 12 basil indoors today",
        "Sowed 6 cucumbers on April 20 indoors at 70 F",
    ] {
        let answer = fern.asks(text).await.text;
        assert!(!answer.contains("I don't know the variety"), "{text}: {answer}");
    }
    let before = fern.asks("sowed 12 Purple Wren basil today").await.text;
    assert!(before.contains("I don't know the variety “Purple Wren”"), "{before}");
}

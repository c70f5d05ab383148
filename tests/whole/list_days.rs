//! Club lists and the days on which messages come: what changed waits for a free morning, comes in
//! one piece, and counts in the club's week.

use crate::harness::{Club, Person, World, instant, only, shown};
use crate::platform::{Fault, Which};

/// Monday in mid-winter: nothing is due on the next mornings.
const WINTER: &str = "2026-01-05T12:00:00Z";

/// Ash's club with its list, and Fern who subscribes to it.
async fn salsa(world: &World) -> (Person, Person, Club) {
    let ash = world.person("Ash");
    let fern = world.person("Fern");
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&fern]);
    club.hears(&ash, "/club frost 05-15 10-05").await;
    club.hears(&ash, "/list new Salsa bed: tomato, pepper, onion").await;
    club.hears(&fern, "/help").await;
    fern.asks("/start").await;
    fern.asks("/list join salsa").await;
    (ash, fern, club)
}

#[tokio::test(flavor = "multi_thread")]
async fn what_changes_before_a_quiet_day_is_told_on_the_next() {
    let world = World::start(WINTER).await;
    let (ash, fern, club) = salsa(&world).await;
    fern.asks("/quiet Wednesday").await;
    world.morning_of("2026-01-06").await;
    club.hears(&ash, "/list salsa + basil").await;
    fern.news();
    world.morning_of("2026-01-07").await;
    assert!(fern.news().is_empty(), "Wednesday is quiet");
    world.morning_of("2026-01-08").await;
    insta::assert_snapshot!(shown(&only(fern.news())), @"
    Good morning! Thursday, January 8:
    Your club put basil on “Salsa bed”, and so into your plan.
    /mycrops shows your plan; /grow keeps a crop in it, and /drop leaves one out.
    ");
    world.morning_of("2026-01-09").await;
    assert!(fern.news().is_empty(), "it was told");
}

#[tokio::test(flavor = "multi_thread")]
async fn what_leaves_a_list_and_stays_by_the_members_choice_is_said() {
    let world = World::start(WINTER).await;
    let (ash, fern, club) = salsa(&world).await;
    fern.asks("/grow tomato").await;
    club.hears(&ash, "/list archive salsa").await;
    fern.news();
    world.morning_of("2026-01-06").await;
    let text = only(fern.news()).text;
    let gone = "away. Gone with it: tomato, pepper, and onion. In your plan all the same: tomato.";
    assert!(text.contains(gone), "{text}");
    let plan = fern.asks("/mycrops").await.text;
    assert!(plan.to_lowercase().contains("tomato") && !plan.contains("pepper"), "{plan}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_holidays_changes_come_in_one_piece_after_it() {
    let world = World::start(WINTER).await;
    let (ash, fern, club) = salsa(&world).await;
    fern.asks("/holiday until 12 January").await;
    fern.news();
    for (day, change) in [
        (6, "/list salsa + basil, dill"),
        (7, "/list salsa - onion"),
        (8, "/list salsa - dill, pepper"),
        (9, "/list salsa + pepper"),
        (10, "/list note salsa: for the bed by the gate"),
        (11, "/list rename salsa to Hot bed"),
    ] {
        world.morning_of(&format!("2026-01-{day:02}")).await;
        assert!(fern.news().is_empty(), "January {day} is in the holiday");
        club.hears(&ash, change).await;
    }
    world.morning_of("2026-01-12").await;
    insta::assert_snapshot!(shown(&only(fern.news())), @"
    Good morning! Monday, January 12:
    Your club changed “Hot bed”. New: basil. Gone: onion.
    /mycrops shows your plan; /grow keeps a crop in it, and /drop leaves one out.
    ");
    world.morning_of("2026-01-13").await;
    assert!(fern.news().is_empty(), "it was told");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_holiday_takes_unsent_news_back_and_tells_it_after() {
    let world = World::start(WINTER).await;
    let (ash, fern, club) = salsa(&world).await;
    club.hears(&ash, "/list salsa + basil").await;
    fern.news();
    let refuse = Fault::TooManyRequests { retry_after: 1 };
    world.platform.fail(Which::method("sendMessage").containing("Good morning"), 1, refuse);
    world.set_clock(instant("2026-01-06T07:00:00Z")).await;
    world.platform.wait_for("a try", |state| (state.faults_left() < 1).then_some(())).await;
    fern.writes("/holiday until 9 January");
    world.quiet().await;
    let texts: Vec<String> = fern.news().into_iter().map(|message| message.text).collect();
    assert!(texts.iter().all(|text| !text.starts_with("Good morning")), "{texts:?}");
    for day in [7, 8] {
        world.morning_of(&format!("2026-01-{day:02}")).await;
        assert!(fern.news().is_empty());
    }
    world.morning_of("2026-01-09").await;
    let told = only(fern.news()).text;
    assert!(told.contains("Your club put basil on “Salsa bed”"), "{told}");
}

#[tokio::test(flavor = "multi_thread")]
async fn news_stand_above_what_is_coming_by_the_list_and_ones_own_packet() {
    let world = World::start("2026-04-13T12:00:00Z").await;
    let (ash, fern, club) = salsa(&world).await;
    fern.asks("/drop tomato, pepper, onion").await;
    // Four to three weeks before May 15 are April 17 to 24; the crop's own are four to two.
    fern.asks("/variety zinnia Lamplight: start indoors 3-4 weeks before last frost").await;
    fern.asks("/drop zinnia").await;
    club.hears(&ash, "/list salsa + zinnia").await;
    fern.news();
    world.morning_of("2026-04-14").await;
    insta::assert_snapshot!(shown(&only(fern.news())), @"
    Good morning! Tuesday, April 14:
    Your club put zinnia on “Salsa bed”, and so into your plan.
    /mycrops shows your plan; /grow keeps a crop in it, and /drop leaves one out.

    Coming this week:
    • Friday, April 17: sow zinnias indoors
    ");
    world.morning_of("2026-04-17").await;
    insta::assert_snapshot!(shown(&only(fern.news())), @"
    Good morning! Friday, April 17:
    1. Sow zinnias indoors: good until April 24.
    [1 done] [later] [skip]
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_clubs_week_counts_whom_a_list_brings_a_crop() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    club.hears(&ash, "/club zone Denver").await;
    club.hears(&ash, "/list new Summer: cucumber, zinnia").await;
    for (name, says) in [
        // By their own choice and by the list: counted once.
        ("Fern", &["/grow cucumber", "/list join summer"][..]),
        // By the list, but for what they leave out.
        ("Moss", &["/list join summer", "/drop zinnia"][..]),
        ("Sage", &["/list join summer"][..]),
        ("Wren", &["/grow leek"][..]),
    ] {
        let person = world.person(name);
        club.welcomes(&[&person]);
        club.hears(&person, "/help").await;
        person.asks("/start").await;
        for text in says {
            person.asks(text).await;
        }
    }
    club.hears(&ash, "/club digest Monday 8:00").await;
    club.news();
    world.at(instant("2026-04-13T14:00:00Z")).await;
    insta::assert_snapshot!(only(club.news()).text, @"
    The club's week, April 13–19, by the club's frost dates:

    Opens this week:
    • Sow cucumbers indoors: from April 17 (3 members grow them)
    • Set out leeks: from April 17 (one member grows them)
    • Sow zinnias indoors: from April 17 (2 members grow them)

    Your own dates may differ: ask me /now.
    ");
}

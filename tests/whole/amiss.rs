//! Sowings that were made too early, too late or in the wrong place: they are noted, and the
//! answer and the mornings say what a good grower would.

use crate::harness::{Person, World};

async fn grower(start: &str) -> (World, Person) {
    let world = World::start(start).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    (world, fern)
}

#[tokio::test(flavor = "multi_thread")]
async fn a_hopeless_sowing_is_noted_with_its_verdict_and_the_next_step() {
    let (world, fern) = grower("2026-04-03T12:00:00Z").await;
    // The ground is ready for pole beans with the last frost, six weeks later.
    let beans = fern.asks("sowed pole beans outdoors today").await.text;
    insta::assert_snapshot!(beans.lines().take(2).collect::<Vec<_>>().join("\n"), @"
    Noted: pole beans, sown in the ground on April 3.
    • That is 6 weeks too early for the ground, and a frost would kill what comes up. Wait with pole beans: the next good day to sow again is May 15.
    ");
    assert_eq!(world.count("SELECT count(*) FROM sowings").await, 1);
    // Tomatoes are not sown in place here at all, and it is not too late to begin them indoors.
    let tomatoes = fern.asks("sowed tomatoes outdoors today").await.text;
    insta::assert_snapshot!(tomatoes.lines().nth(1).unwrap_or_default(), @"• Sown in the ground, tomatoes hardly make it here: they need a start indoors. Instead, sow tomatoes indoors: that works now, until May 9.");
    // In good time nothing is amiss.
    let peas = fern.asks("sowed peas outdoors on 12 April 2026").await.text;
    assert!(peas.contains("is still to come"), "{peas}");
    world.morning_of("2026-04-14").await;
    let peas = fern.asks("sowed peas outdoors today").await.text;
    let second = peas.lines().nth(1).unwrap_or_default();
    assert!(second.starts_with("• Up "), "{peas}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_sowing_that_is_too_late_says_so_and_what_is_left() {
    let (world, fern) = grower("2026-07-10T12:00:00Z").await;
    let peas = fern.asks("sowed peas outdoors today").await.text;
    insta::assert_snapshot!(peas.lines().nth(1).unwrap_or_default(), @"• That was too late to be worth it. Last day worth it: May 29; summer heat would catch them before they are ready. The next good day to sow peas is April 10, 2027.");
    let peppers = fern.asks("sowed peppers indoors today").await.text;
    insta::assert_snapshot!(peppers.lines().nth(1).unwrap_or_default(), @"• That was too late to be worth it. Started today, the first harvest would come around November 23, and the season ends around October 5. The next good day to sow peppers is March 20, 2027.");
    assert_eq!(world.count("SELECT count(*) FROM sowings").await, 2);
}

#[tokio::test(flavor = "multi_thread")]
async fn nobody_is_told_to_sow_again_when_it_is_too_late() {
    let (world, fern) = grower("2026-05-02T12:00:00Z").await;
    let noted = fern.asks("sowed 12 peppers indoors today").await.text;
    insta::assert_snapshot!(noted.lines().nth(1).unwrap_or_default(), @"• Up May 15–19 in a room of about 68 °F. Nothing by June 2? Then it is too late to sow again; buy young plants, worth setting out until June 20.");
    // The morning on which an empty tray would be sown again.
    let mut named = String::new();
    for day in ["2026-05-20", "2026-06-02", "2026-06-03"] {
        world.morning_of(day).await;
        for message in fern.news() {
            let line = message.text.lines().find(|line| line.contains("nothing to see by now"));
            named.push_str(line.unwrap_or_default());
        }
    }
    insta::assert_snapshot!(named, @"2. Look for seedlings of peppers (sown May 2): nothing to see by now? It is too late to sow peppers again this season. Instead, buy young plants: setting out is worth it until June 20.");
    let failed = fern.asks("no peppers came up").await;
    assert!(failed.text.contains("Instead, buy young plants"), "{}", failed.text);
    assert!(failed.labels().iter().all(|label| *label != "Sown again today"), "{}", failed.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_club_without_frost_is_asked_for_its_hot_and_wet_months() {
    let world = World::start("2026-08-10T12:00:00Z").await;
    let ash = world.person("Ash");
    let club = world.club("Shoreline", &ash).await;
    club.news();
    let asked = club.hears(&ash, "/club frost none").await;
    assert!(asked.text.starts_with("Noted for the club: no frost. Which months"), "{}", asked.text);
    let said = club.replies(&ash, &asked, "wet June to October");
    let noted = club.answer_to(said).await.text;
    insta::assert_snapshot!(noted, @"Noted: wet June to October. So I plan with planting from the beginning of October, until the rain is back in June. You named no hot months, so I reckon without heat; to add them, send /club frost none and both.");
    let answer = club.hears(&ash, "/ask can I start bush beans now?").await.text;
    assert!(answer.starts_with("Not yet. Wait until October 1"), "{answer}");
    assert!(answer.contains("so I reckon without heat") || !answer.contains("heat"), "{answer}");
    let asked = club.hears(&ash, "/club frost none").await;
    let said = club.replies(&ash, &asked, "hot June to September, wet June to October");
    let noted = club.answer_to(said).await.text;
    assert!(noted.contains("until the heat is back in June"), "{noted}");
    // A member who has no months of their own gardens by the club's.
    let fern = world.member("Fern").await;
    let garlic = fern.asks("/frost none").await;
    assert!(garlic.text.starts_with("Noted: your garden has no frost."), "{}", garlic.text);
    fern.asks("hot June to September, wet June to October").await;
    insta::assert_snapshot!(fern.asks("can I plant garlic now?").await.text, @"
    Your winter is too warm for garlic: without cold no bulbs form.
    What can help: chill the cloves of garlic for 6–8 weeks at about 40 °F, dry and not frozen, and plant them before the coolest weeks, by January 1, 2027. Expect small bulbs.
    ");
    let page = club.hears(&ash, "/club").await.text;
    assert!(page.contains("Hot and wet months: hot June to September"), "{page}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_sowing_too_early_for_the_ground_promises_no_harvest() {
    let (world, fern) = grower("2026-04-01T12:00:00Z").await;
    // Cells are filled before the ground is ready for cucumbers.
    let cucumbers = fern.asks("sowed cucumbers in the ground on April 1").await.text;
    insta::assert_snapshot!(cucumbers, @"
    Noted: cucumbers, sown in the ground on April 1.
    • That is 7½ weeks too early for the ground, and a frost would kill what comes up. Instead, sow cucumbers indoors from April 17.

    On your list: cucumber.
    ");
    let corn = fern.asks("sowed sweet corn in the ground today").await.text;
    assert!(corn.contains("too early for the ground"), "{corn}");
    for word in ["Up ", "First harvest", "Nothing by"] {
        assert!(!corn.contains(word), "{corn}");
    }
    // Its question counts from the first day on which the ground allows it.
    insta::assert_snapshot!(fern.asks("will sweet corn ripen?").await.text, @"
    Yes, in time: the first sweet corn around July 27 to August 22.
    Your sowing in the ground on April 1 was too early, so this counts from May 8. The season ends around October 5: 44 days to spare at the slow end.
    ");
    // No morning before that has it picked.
    for day in ["2026-05-21", "2026-06-10", "2026-06-30"] {
        world.morning_of(day).await;
        for message in fern.news() {
            assert!(!message.text.contains("Pick the first sweet corn"), "{day}: {}", message.text);
        }
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn whether_it_is_ripe_by_a_day_counts_from_what_was_sown() {
    let (_world, fern) = grower("2026-04-15T12:00:00Z").await;
    fern.asks("sowed tomatoes indoors on April 1").await;
    let august = fern.asks("will tomatoes be ripe in August?").await.text;
    insta::assert_snapshot!(august, @"
    Yes, in time: the first tomatoes around August 5–30.
    Counted from your sowing indoors on April 1. The season ends around October 5: 36 days to spare at the slow end.
    ");
    let june = fern.asks("will tomatoes be ripe by June 10?").await.text;
    insta::assert_snapshot!(june, @"
    Not by then: the first tomatoes around August 5–30.
    Counted from your sowing indoors on April 1. The season ends around October 5: 36 days to spare at the slow end.
    ");
}

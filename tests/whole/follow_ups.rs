//! Questions that lean on the one before, days that are none, and talk that is not about crops.

use chrono::TimeDelta;

use crate::harness::{World, instant};

const SPRING: &str = "2026-04-22T12:00:00Z";

#[tokio::test(flavor = "multi_thread")]
async fn a_short_question_follows_the_one_before_for_half_an_hour() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("can I plant out tomatoes on May 10?").await;
    let basil = fern.asks("and basil?").await.text;
    assert_eq!(basil, fern.asks("can I plant out basil on May 10?").await.text);
    fern.asks("can I start cucumbers now?").await;
    let outdoors = fern.asks("what about outdoors?").await.text;
    assert_eq!(outdoors, fern.asks("can I start cucumbers outdoors now?").await.text);
    let then = fern.asks("when then?").await.text;
    assert_eq!(then, fern.asks("when do I start cucumbers outdoors?").await.text);
    // A word with several meanings is settled first, and the question goes on from there.
    fern.asks("how deep do I sow peas?").await;
    fern.asks("and squash?").await;
    let squash = fern.asks("summer squash").await.text;
    assert_eq!(squash, fern.asks("how deep do I sow summer squash?").await.text);

    fern.asks("when do I start leeks?").await;
    world.at(instant(SPRING) + TimeDelta::minutes(31)).await;
    insta::assert_snapshot!(fern.asks("when then?").await.text, @"Which crop do you mean? Send me its name.");
    let leeks = fern.asks("leeks").await.text;
    assert_eq!(leeks, fern.asks("when do I start leeks?").await.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn each_member_follows_their_own_question_in_the_group() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let fern = world.person("Fern");
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&fern]);
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let deep = club.hears(&ash, "/ask how deep do I sow peas?").await;
    club.hears(&fern, "/ask when do I start leeks?").await;
    let said = club.replies(&ash, &deep, "and basil?");
    let basil = club.answer_to(said).await;
    let asked = club.hears(&ash, "/ask how deep do I sow basil?").await;
    assert_eq!(basil.text, asked.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_day_that_is_none_is_told() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    insta::assert_snapshot!(fern.asks("can I sow kale on 13/45").await.text, @"The calendar has no day “13/45”. Ask again with a day like “May 1”.");
    insta::assert_snapshot!(fern.asks("what can I start on 31 April?").await.text, @"The calendar has no day “31 April”. Ask again with a day like “May 1”.");
    insta::assert_snapshot!(fern.asks("can I sow kale on 5/6").await.text, @"I can't tell which day “5/6” is. Ask again with a day like “May 1”.");
    let may = fern.asks("May 6").await.text;
    assert_eq!(may, fern.asks("can I sow kale on May 6?").await.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn talk_that_is_not_about_crops_gets_a_sentence_or_silence() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let bot = world.platform.bot_username();
    for text in [
        "can I start my car now",
        "my daughter Rosemary can start school now?",
        "can we plant a meeting next week",
    ] {
        let said = club.says(&ash, text);
        club.silence_after(said).await;
        let answer = club.hears(&ash, &format!("@{bot} {text}")).await;
        insta::allow_duplicates! {
            insta::assert_snapshot!(answer.text, @"I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”");
        }
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_sentence_tells_the_day_of_a_sowing_at_its_beginning() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    let told = fern.asks("Yesterday I sowed 12 basil").await.text;
    assert!(told.contains("April 21"), "{told}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_question_about_something_else_is_none_about_the_crop_before() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    for other in ["is it safe for my cat", "is it safe to eat rhubarb leaves", "is it spring"] {
        fern.asks("can I start cabbages now?").await;
        let told = fern.asks(other).await.text;
        assert!(told.starts_with("I did not understand that"), "{other}: {told}");
    }
}

//! The bot's name typed in any chat, with a crop behind it.

use crate::harness::World;

const SPRING: &str = "2026-04-22T12:00:00Z";

#[tokio::test(flavor = "multi_thread")]
async fn a_crop_typed_in_any_chat_gives_the_askers_own_verdict() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let wren = world.member("Wren").await;
    fern.asks("/frost 05-15 10-05").await;
    wren.asks("/frost 06-20 09-01").await;
    let offered = fern.types_inline("cucumber").await;
    assert!(offered.personal && offered.cache_time <= 10, "{offered:?}");
    assert_eq!(offered.button, None);
    let [cucumbers] = offered.articles.as_slice() else { panic!("one crop: {offered:?}") };
    assert_eq!(cucumbers.title, "Cucumber");
    assert_eq!(cucumbers.description, "Go ahead: sow cucumbers indoors today.");
    assert_eq!(cucumbers.text, fern.asks("can I start cucumbers now?").await.text);
    let others = wren.types_inline("cucumber").await;
    assert!(others.articles[0].description.starts_with("Not yet"), "{others:?}");

    let when = fern.types_inline("when do I sow leeks?").await;
    assert_eq!(when.articles[0].text, fern.asks("when do I sow leeks?").await.text);
    let several = fern.types_inline("basil, dill").await;
    let titles: Vec<&str> = several.articles.iter().map(|one| one.title.as_str()).collect();
    assert_eq!(titles, ["Basil", "Dill"]);
    let now = fern.types_inline("").await;
    assert_eq!(now.articles[0].title, "What can be started now");
    let unknown = fern.types_inline("can I start my car").await;
    assert!(unknown.articles.is_empty());
    assert_eq!(unknown.button.expect("a button").1, "ask");
}

#[tokio::test(flavor = "multi_thread")]
async fn who_has_no_dates_is_led_to_give_them_and_nothing_is_kept_of_them() {
    let world = World::start(SPRING).await;
    let fern = world.person("Fern");
    let offered = fern.types_inline("cucumber").await;
    assert!(offered.articles.is_empty());
    assert_eq!(
        offered.button,
        Some(("First tell me your frost dates".to_owned(), "frost".to_owned()))
    );
    for question in [
        "SELECT count(*) FROM members",
        "SELECT count(*) FROM outgoing",
        "SELECT count(*) FROM expectations",
    ] {
        assert_eq!(world.count(question).await, 0, "{question}");
    }
    assert_eq!(world.count("SELECT count(*) FROM seen_updates").await, 1);
    let greeting = fern.asks("/start frost").await;
    assert!(greeting.text.contains("First, when are your frosts?"), "{}", greeting.text);
    assert!(!greeting.text.contains("invitation"), "{}", greeting.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn of_what_is_typed_in_a_rush_the_last_is_answered() {
    let mut world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    world.sleep().await;
    for typed in ["cu", "cucu", "cucumber"] {
        world.platform.types_inline(fern.id, typed);
    }
    world.wake().await;
    world.quiet().await;
    let answers = world.platform.inline_answers();
    assert_eq!(answers.len(), 1, "{answers:?}");
    assert_eq!(answers[0].articles[0].title, "Cucumber");
}

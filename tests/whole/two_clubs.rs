//! A member of two clubs, and what one club sees of another: nothing.

use crate::harness::{Club, Person, World, shown};

const SPRING: &str = "2026-04-10T12:00:00Z";

/// Fern belongs to Ash's club and to Bree's, and was in Ash's first.
async fn two_clubs(world: &World) -> (Person, Person, Person, Club, Club) {
    let ash = world.person("Ash");
    let bree = world.person("Bree");
    let fern = world.person("Fern");
    let hill = world.club("Hillside Growers", &ash).await;
    let valley = world.club("Valley Plots", &bree).await;
    hill.welcomes(&[&fern]);
    valley.welcomes(&[&fern]);
    hill.hears(&ash, "/club frost 05-15 10-05").await;
    hill.hears(&ash, "/club zone Denver").await;
    hill.hears(&ash, "/list new Salsa bed: tomato, pepper").await;
    valley.hears(&bree, "/club frost 04-20 10-25").await;
    valley.hears(&bree, "/club zone Oslo").await;
    valley.hears(&bree, "/list new Cutting garden: zinnia").await;
    hill.hears(&fern, "/help").await;
    fern.asks("/start").await;
    valley.hears(&fern, "/help").await;
    (ash, bree, fern, hill, valley)
}

#[tokio::test(flavor = "multi_thread")]
async fn a_member_of_two_clubs_chooses_which_is_meant() {
    let world = World::start(SPRING).await;
    let (_, _, fern, hill, valley) = two_clubs(&world).await;
    // To speak in the second group is no choice.
    insta::assert_snapshot!(shown(&fern.asks("/settings").await), @"
    Your settings
    • Frost: last frost around May 15, first frost around October 5 (your club's)
    • Time zone: America/Denver (your club's)
    • Reminders at 7:00 AM
    • Units: °F and inches
    • Language: English
    • Club: Hillside Growers
    [Frost dates] [Time zone]
    [Reminder time] [°C and cm]
    [Quiet days] [I garden at weekends]
    [Holiday] [Where it grows]
    [Language]
    [Another club]
    ");
    fern.asks("/list join salsa").await;
    insta::assert_snapshot!(shown(&fern.asks("/club").await), @"
    In private the frost dates, time zone, language and lists of Hillside Growers hold for you. Which club's shall it be?
    [Valley Plots]
    ");
    fern.presses("Valley Plots").await;
    insta::assert_snapshot!(shown(&fern.last()), @"In private Valley Plots holds from now on: its frost dates, time zone, language and lists, where you set none of your own.");
    let settings = fern.asks("/settings").await.text;
    assert!(settings.contains("April 20") && settings.contains("Europe/Oslo"), "{settings}");
    // The lists go with their club, and come back with it.
    assert!(fern.asks("/mycrops").await.text.starts_with("Your list is empty"));
    insta::assert_snapshot!(shown(&fern.asks("/lists").await), @"
    Lists of Valley Plots. Subscribe to one, and its crops are in your plan:
    • Cutting garden: one crop
    [Cutting garden]
    [Another club]
    ");
    let list = valley.hears(&fern, "/list cutting").await;
    assert_eq!(
        fern.presses_under(&list, "Subscribe").await.as_deref(),
        Some("“Cutting garden” is in your plan now.")
    );
    fern.asks("/club").await;
    fern.presses("Hillside Growers").await;
    let crops = fern.asks("/mycrops").await.text;
    assert!(crops.contains("tomato") && !crops.contains("zinnia"), "{crops}");
    assert_eq!(
        fern.presses_under(&list, "Unsubscribe").await.as_deref(),
        Some("“Cutting garden” is not in your plan any more. What you chose yourself stays.")
    );
    assert_eq!(
        fern.presses_under(&list, "Subscribe").await.as_deref(),
        Some(
            "“Cutting garden” is in your plan now. In private Hillside Growers holds for you at \
             present; /club changes that there."
        )
    );
    // In a group its own club holds, whichever is meant in private.
    assert!(!valley.hears(&fern, "/mycrops share").await.text.contains("Salsa bed"));
    assert!(hill.hears(&fern, "/mycrops share").await.text.contains("Salsa bed"));
}

#[tokio::test(flavor = "multi_thread")]
async fn one_club_never_sees_anothers_lists() {
    let world = World::start(SPRING).await;
    let (ash, bree, fern, hill, valley) = two_clubs(&world).await;
    let salsa = hill.hears(&ash, "/list salsa").await;
    let data = salsa.button("Subscribe").and_then(|b| b.callback_data.clone()).expect("data");
    let id = data.trim_start_matches("l+:").to_owned();
    assert!(
        valley.hears(&bree, "/list salsa").await.text.starts_with("I know no list “salsa” here")
    );
    // A press with the number of another club's list, under a message of one's own club.
    let cutting = valley.hears(&bree, "/list cutting").await;
    let rows = "SELECT (SELECT count(*) FROM subscriptions) * 10 + \
                (SELECT count(*) FROM lists WHERE archived_at IS NULL)";
    let before = world.count(rows).await;
    for data in [format!("l+:{id}"), format!("l-:{id}"), format!("li:{id}"), format!("lo:{id}")] {
        let notice = bree.presses_data(&cutting, &data).await.unwrap_or_default();
        assert!(notice.contains("nothing changed"), "{data}: {notice}");
    }
    assert_eq!(world.count(rows).await, before);
    // In private only a club that one belongs to can be chosen.
    let moss = world.member("Moss").await;
    let greeting = moss.last();
    for club in 1..=2 {
        let notice = moss.presses_data(&greeting, &format!("cu:{club}")).await.unwrap_or_default();
        assert!(notice.starts_with("You don't belong to that club"), "{notice}");
    }
    assert!(moss.asks("/lists").await.text.starts_with("Lists belong to a club"));
    // A helper of one club is nobody in the other.
    let hello = hill.says(&fern, "hello");
    let named = world.platform.user_says_in(
        hill.id,
        ash.id,
        "/club helper add",
        Some(hello.message_id),
        None,
    );
    hill.answer_to(named).await;
    assert!(hill.hears(&fern, "/list salsa + basil").await.text.starts_with("On “Salsa bed”"));
    assert!(
        valley.hears(&fern, "/list cutting + dill").await.text.starts_with("Only administrators")
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn who_joins_a_second_club_by_its_button_is_told_of_the_first() {
    let world = World::start(SPRING).await;
    let (_, _, fern, _, valley) = two_clubs(&world).await;
    let greeting = world.platform.sent_to(valley.id).remove(0);
    let url = greeting.button("Get my reminders").and_then(|b| b.url.clone()).expect("a link");
    let (_, token) = url.split_once("?start=").expect("a token");
    let hello = fern.asks(&format!("/start {token}")).await.text;
    let told = "You also belong to Hillside Growers. In private Valley Plots holds from now on; \
                /club changes that.";
    assert!(hello.contains("You are with Valley Plots.") && hello.contains(told), "{hello}");
    assert!(fern.asks("/settings").await.text.contains("Club: Valley Plots"));
}

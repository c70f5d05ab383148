//! Sowings remember their variety: they are named by it and reckoned by its packet, whichever
//! variety is followed later.

use crate::harness::{Person, World};

/// Set out at four to five weeks, and 60 days from then.
const ROBIN: &str =
    "tomato Early Robin: start indoors 4-5 weeks before last frost, 60 days from transplant";
const OTTER: &str =
    "tomato Slow Otter: start indoors 8-10 weeks before last frost, 100 days from transplant";

async fn grower(world: &World) -> Person {
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern
}

/// How many sowings there are, of twelve Early Robin, of six Slow Otter.
async fn kept(world: &World) -> (i64, i64, i64) {
    let robin = "SELECT count(*) FROM sowings WHERE variety = 'Early Robin' AND plants = 12";
    let otter = "SELECT count(*) FROM sowings WHERE variety = 'Slow Otter' AND plants = 6";
    (
        world.count("SELECT count(*) FROM sowings").await,
        world.count(robin).await,
        world.count(otter).await,
    )
}

#[tokio::test(flavor = "multi_thread")]
async fn two_varieties_of_a_crop_sown_in_one_week_are_two_sowings() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = grower(&world).await;
    fern.asks(&format!("/variety {ROBIN}")).await;
    fern.asks(&format!("/variety {OTTER}")).await;
    let noted = fern.asks("sowed 12 Early Robin and 6 Slow Otter tomatoes today").await.text;
    insta::assert_snapshot!(noted, @"
    Noted: 12 tomatoes “Early Robin”, sown indoors on April 10.
    • Up April 18–20 in a room of about 68 °F. Nothing by April 30? Then sow again.
    • Pot up tomatoes: May 1–8
    • Harden off tomatoes: from May 8
    • Set out tomatoes: from May 22, when the week's nights stay above 50 °F
    • First harvest: July 21

    Noted: 6 tomatoes “Slow Otter”, sown indoors on April 10.
    • That was too late to be worth it. Last day worth it: April 4. Instead, buy young plants: they can go out from May 22.
    • Up April 18–20 in a room of about 68 °F. Nothing by April 30? Then it is too late to sow again; buy young plants, worth setting out until May 30.
    • Pot up tomatoes: May 1–8
    • Harden off tomatoes: from May 29
    • Set out tomatoes: from June 12, when the week's nights stay above 50 °F
    • First harvest: October 4
    ");
    assert_eq!(kept(&world).await, (2, 1, 1));
    // A bare crop is the variety that is followed.
    let bare = fern.asks("sowed 3 tomatoes today").await.text;
    assert!(bare.starts_with("Noted: 3 tomatoes “Slow Otter”, sown indoors"), "{bare}");
    fern.asks("/undo").await;
    assert_eq!(kept(&world).await, (2, 1, 1));
    let list = fern.asks("/sowings").await.text;
    insta::assert_snapshot!(list, @"
    2 sowings:
    1. 12 tomatoes “Early Robin”, sown indoors on April 10. Next: look for seedlings of tomatoes, from April 20
    2. 6 tomatoes “Slow Otter”, sown indoors on April 10. Next: look for seedlings of tomatoes, from April 20
    ");
    // Which of them came up is asked, or told by the name.
    let which = fern.asks("the tomatoes came up").await;
    assert_eq!(which.text, "Good! Which of them?");
    assert!(which.labels().iter().any(|label| label.contains("“Early Robin”")));
    let up = fern.asks("Early Robin came up").await.text;
    assert!(up.starts_with("Good, they are up: 12 tomatoes “Early Robin”"), "{up}");
    assert_eq!(kept(&world).await, (2, 1, 1));
}

#[tokio::test(flavor = "multi_thread")]
async fn following_another_variety_moves_no_sowing() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = grower(&world).await;
    fern.asks(&format!("/variety {ROBIN}")).await;
    let first = fern.asks("sowed 12 tomatoes today").await.text;
    assert!(first.starts_with("Noted: 12 tomatoes “Early Robin”"), "{first}");
    let before = fern.asks("will tomatoes ripen?").await.text;
    assert!(before.contains("By your packet of tomato “Early Robin”"), "{before}");
    fern.asks(&format!("/variety {OTTER}")).await;
    assert_eq!(fern.asks("will tomatoes ripen?").await.text, before);
    // Its mornings name it.
    let mut named = String::new();
    for day in 15..=30 {
        world.morning_of(&format!("2026-04-{day:02}")).await;
        named.extend(fern.news().into_iter().map(|message| message.text));
    }
    let looked = "Look for seedlings of tomatoes “Early Robin” (sown April 10)";
    assert!(named.contains(looked), "{named}");
    // Forgotten, it is still that variety, reckoned as the crop is listed.
    fern.asks("/variety remove Early Robin").await;
    let list = fern.asks("/sowings").await.text;
    assert!(list.contains("12 tomatoes “Early Robin”, sown indoors on April 10"), "{list}");
    fern.asks("/undo").await;
    assert_eq!(fern.asks("will Early Robin ripen?").await.text, before);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_button_and_trays_know_the_variety() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = grower(&world).await;
    fern.asks(&format!("/variety {OTTER}")).await;
    fern.asks(&format!("/variety {ROBIN}")).await;
    insta::assert_snapshot!(fern.asks("/trays Early Robin 12, Slow Otter 6").await.text, @"
    Trays for what you sow indoors April 10–24:
    Tray 1, 48 cells of 1½ inches (heat 65–85 °F): tomatoes “Early Robin” 12. Upright, out at 5–6 weeks.
    Tomatoes “Slow Otter”: too late for a tray now; next good day March 6, 2027.
    ");
    fern.asks("/now").await;
    fern.presses("1 done").await;
    let robin = "SELECT count(*) FROM sowings WHERE variety = 'Early Robin' AND plants IS NULL";
    assert_eq!(world.count(robin).await, 1);
    // What is told in words that day is that sowing, with what was really sown.
    fern.asks("sowed 6 Slow Otter tomatoes today").await;
    assert_eq!(kept(&world).await, (1, 0, 1));
}

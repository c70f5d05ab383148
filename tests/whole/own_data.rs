//! What is kept about a member: shown to them, and deleted.

use serde_json::Value;

use crate::harness::{Person, World, only, shown};

const SPRING: &str = "2026-04-22T12:00:00Z";

/// A member with something of everything.
async fn grower(world: &World, name: &str) -> Person {
    let person = world.member(name).await;
    person.asks("/frost 05-15 10-05").await;
    person.asks("/grow tomato, leek").await;
    person.asks("sowed 12 basil today").await;
    person
}

/// The only file of a member's chat, with the words under it.
fn file(person: &Person) -> (String, String, Value) {
    let message = only(person.news());
    let file = message.file.clone().expect("a file");
    let content = serde_json::from_slice(&file.bytes).expect("JSON");
    (file.name, message.text, content)
}

#[tokio::test(flavor = "multi_thread")]
async fn an_export_has_all_of_one_member_and_nothing_of_another() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let fern = grower(&world, "Fern").await;
    let wren = grower(&world, "Wren").await;
    club.welcomes(&[&fern, &wren]);
    club.hears(&fern, "/ask how deep do I sow peas?").await;

    fern.news();
    fern.writes("/export");
    world.quiet().await;
    let (name, caption, all) = file(&fern);
    assert_eq!(name, "sowbell-export.json");
    assert!(caption.contains("All that I keep about you"), "{caption}");
    let member = &all["members"][0];
    assert_eq!((&member["name"], &member["user_id"]), (&"Fern".into(), &fern.id.into()));
    assert_eq!(member["frost"]["dates"]["last"], "05-15", "kept JSON is JSON");
    let crops: Vec<&Value> =
        all["member_crops"].as_array().expect("rows").iter().map(|row| &row["crop"]).collect();
    assert_eq!(crops, ["tomato", "leek", "basil"]);
    assert_eq!(all["sowings"][0]["plants"], 12);
    assert_eq!(all["memberships"][0]["club"], "Hillside Growers");
    let text = all.to_string();
    assert!(!text.contains("Wren") && !text.contains(&wren.id.to_string()), "{text}");
    // The file itself is not kept, so that the next one does not hold it.
    assert_eq!(
        world.count("SELECT count(*) FROM outgoing WHERE payload LIKE '{\"document%'").await,
        0
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn in_a_group_ones_data_is_spoken_of_in_private() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let fern = grower(&world, "Fern").await;
    club.welcomes(&[&fern]);
    fern.news();
    for command in ["/export", "/forget"] {
        let answer = club.hears(&fern, command).await;
        assert!(answer.text.contains(&format!("send {command} there")), "{}", answer.text);
        assert!(answer.buttons[0][0].url.is_some());
    }
    assert!(fern.news().is_empty());
    assert_eq!(world.count("SELECT count(*) FROM member_crops").await, 3);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_member_who_asks_to_be_forgotten_is_told_what_goes_and_is_then_gone() {
    let world = World::start(SPRING).await;
    let fern = grower(&world, "Fern").await;
    let question = fern.asks("/forget").await;
    insta::assert_snapshot!(shown(&question), @"
    This deletes all that I keep about you: your name and your settings, your list (3 crops), your sowings (1), what you told me of jobs, which clubs you are with, and every reminder still to come. Your clubs themselves stay as they are. It cannot be taken back; /export gives you a copy first.
    If you want that, press the button or send the words “forget me”.
    [Delete everything]
    [Keep it]
    ");
    fern.presses("Keep it").await;
    assert_eq!(fern.last().text, "Nothing was deleted.");
    // The old question deletes nothing.
    let notice = fern.presses_data(&question, "forget").await.expect("a notice");
    assert!(notice.contains("too old"), "{notice}");
    assert_eq!(world.count("SELECT count(*) FROM sowings").await, 1);

    fern.asks("/forget").await;
    fern.news();
    fern.presses("Delete everything").await;
    assert_eq!(
        only(fern.news()).text,
        "Done: all that I kept about you is deleted, and no reminder comes any more. This is my \
         last message. If you ever want to begin anew, send /start. Good growing!"
    );
    for question in [
        "SELECT count(*) FROM members",
        "SELECT count(*) FROM member_crops",
        "SELECT count(*) FROM sowings",
        "SELECT count(*) FROM job_marks",
        "SELECT count(*) FROM journal",
        "SELECT count(*) FROM expectations",
        "SELECT count(*) FROM memberships",
        "SELECT count(*) FROM outgoing WHERE kind IS NOT NULL",
        "SELECT count(*) FROM outgoing WHERE outcome IS NULL",
    ] {
        assert_eq!(world.count(question).await, 0, "{question}");
    }
    // No morning comes, and going away keeps nothing either.
    world.morning_of("2026-05-22").await;
    fern.blocks_the_bot();
    world.quiet().await;
    assert!(fern.news().is_empty());
    assert_eq!(world.count("SELECT count(*) FROM members").await, 0);
    fern.lets_the_bot_write_again();
    let greeting = fern.asks("/start").await;
    assert!(greeting.text.contains("First, when are your frosts?"), "{}", greeting.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn the_word_deletes_too_while_the_question_stands_and_nothing_else_does() {
    let world = World::start(SPRING).await;
    let fern = grower(&world, "Fern").await;
    fern.asks("forget me").await;
    assert_eq!(world.count("SELECT count(*) FROM members").await, 1, "nobody asked");
    fern.asks("/forget").await;
    fern.asks("how deep do I sow peas?").await;
    assert_eq!(world.count("SELECT count(*) FROM members").await, 1);
    let last = fern.asks("Forget me!").await;
    assert!(last.text.starts_with("Done"), "{}", last.text);
    assert_eq!(world.count("SELECT count(*) FROM members").await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_coordinator_who_is_forgotten_leaves_the_club_as_it_is() {
    let world = World::start(SPRING).await;
    let ash = world.member("Ash").await;
    let club = world.club("Hillside Growers", &ash).await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let fern = world.person("Fern");
    club.welcomes(&[&fern]);
    ash.asks("/forget").await;
    ash.presses("Delete everything").await;
    assert_eq!(world.count("SELECT count(*) FROM members WHERE name = 'Ash'").await, 0);
    let answer = club.hears(&fern, "/ask can I start cucumbers now?").await;
    assert!(answer.text.contains("May 15"), "{}", answer.text);
    // Whoever comes back is an administrator still, and a member anew.
    let page = club.hears(&ash, "/club").await;
    assert!(page.text.contains("last frost around May 15"), "{}", page.text);
}

//! Groups that move, and groups that the bot is taken out of.

use super::*;

#[tokio::test(flavor = "multi_thread")]
async fn one_that_becomes_a_supergroup_keeps_its_club() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let group = world.platform.create_group("Hillside Growers", ash.id);
    world.platform.add_bot_to_group(group, ash.id);
    world.quiet().await;
    let club = world.group(group);
    club.news();
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let moved = world.group(world.platform.migrate_group(group));
    world.quiet().await;
    assert!(moved.news().is_empty(), "a move is no arrival, and nobody is greeted again");
    let page = moved.hears(&ash, "/club").await;
    assert!(page.text.contains("last frost around May 15"), "{}", page.text);
    assert_eq!(world.count("SELECT count(*) FROM clubs").await, 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn one_that_moved_without_a_word_is_found_by_the_refusal() {
    let mut world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let group = world.platform.create_group("Hillside Growers", ash.id);
    world.platform.add_bot_to_group(group, ash.id);
    world.quiet().await;
    let club = world.group(group);
    club.news();
    club.hears(&ash, "/club frost 05-15 10-05").await;
    world.sleep().await;
    // A question is under way when the group moves, and another comes from the new one.
    club.says(&ash, "/ask can I start cucumbers now?");
    let moved = world.group(world.platform.migrate_group_quietly(group));
    let after = moved.says(&ash, "/help");
    world.wake().await;
    world.quiet().await;
    let mut answers = moved.news();
    answers.sort_by_key(|answer| answer.reply_to);
    assert_eq!(answers.len(), 2, "{answers:?}");
    // The message that it answers is in the old group.
    assert_eq!(answers[0].reply_to, None);
    assert!(answers[0].text.contains("sow cucumbers indoors"), "{}", answers[0].text);
    assert_eq!(answers[1].reply_to, Some(after.message_id));
    let page = moved.hears(&ash, "/club").await;
    assert!(page.text.contains("last frost around May 15"), "{}", page.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn one_that_the_bot_is_removed_from_is_left_and_found_again() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let greeting = world.platform.sent_to(club.id).remove(0);
    let button = greeting.button("Get my reminders").and_then(|button| button.url.clone());
    let token = button.as_deref().and_then(|url| url.rsplit('=').next()).expect("a token");
    let start = format!("/start {token}");
    let fern = world.member("Fern").await;
    assert!(fern.asks(&start).await.text.contains("You are with Hillside Growers."));

    world.platform.remove_bot(club.id, ash.id);
    world.quiet().await;
    assert!(fern.asks("/settings").await.text.contains("• Frost: not given"));
    let late = world.member("Moss").await;
    let text = late.asks(&start).await.text;
    assert!(text.contains("That invitation is no longer valid"), "{text}");

    world.platform.add_bot_to_group(club.id, ash.id);
    world.quiet().await;
    assert!(only(club.news()).text.starts_with("Hello! I help with the timing"));
    assert!(fern.asks("/settings").await.text.contains("last frost around May 15"));
}

#[tokio::test(flavor = "multi_thread")]
async fn an_answer_for_a_group_that_threw_the_bot_out_is_let_go() {
    let mut world = World::start(SPRING).await;
    let ash = world.person("Ash");
    for basic in [true, false] {
        let group = if basic {
            world.platform.create_group("Hillside Growers", ash.id)
        } else {
            world.platform.create_supergroup("Hillside Growers", ash.id)
        };
        world.platform.add_bot_to_group(group, ash.id);
        world.quiet().await;
        world.sleep().await;
        let club = world.group(group);
        club.news();
        club.says(&ash, "/help");
        world.platform.remove_bot(group, ash.id);
        world.wake().await;
        world.quiet().await;
        assert!(club.news().is_empty());
    }
    assert_eq!(world.count("SELECT count(*) FROM clubs WHERE closed_at IS NULL").await, 0);
}

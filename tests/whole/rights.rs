//! Who may do what in a club: administrators, the helpers they name, and everybody else.

use crate::harness::{Club, Person, World, shown};

const SPRING: &str = "2026-04-10T12:00:00Z";

async fn hillside(world: &World) -> (Person, Person, Club) {
    let ash = world.person("Ash");
    let fern = world.person("Fern");
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&fern]);
    club.hears(&fern, "/help").await;
    fern.asks("/start").await;
    (ash, fern, club)
}

#[tokio::test(flavor = "multi_thread")]
async fn nobody_else_changes_a_list() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    club.hears(&ash, "/list new Salsa bed: tomato, pepper").await;
    let put_away = club.hears(&ash, "/list archive salsa").await;
    let rows = "SELECT (SELECT count(*) FROM lists WHERE archived_at IS NULL) * 100 + \
                (SELECT count(*) FROM list_crops) * 10 + (SELECT count(*) FROM lists WHERE shared)";
    let before = world.count(rows).await;
    for tried in ["/list new Mine: basil", "/list + basil", "/list take ABCD-EFGH"] {
        let refused = club.hears(&fern, tried).await.text;
        assert_eq!(
            refused,
            "Only administrators of this group and the helpers they name can change its lists. \
             /grow and /drop are for your own crops.",
            "{tried}"
        );
    }
    let notice = fern.presses_under(&put_away, "Undo").await.unwrap_or_default();
    assert!(notice.starts_with("Only administrators"), "{notice}");
    assert_eq!(world.count(rows).await, before);
    ash.presses_under(&put_away, "Undo").await;
    let before = world.count(rows).await;
    for tried in [
        "salsa + basil",
        "salsa - tomato",
        "archive salsa",
        "share salsa",
        "rename salsa to X",
        "note salsa hi",
    ] {
        let refused = club.hears(&fern, &format!("/list {tried}")).await.text;
        assert!(refused.starts_with("Only administrators"), "{tried}: {refused}");
    }
    assert_eq!(
        fern.asks("/list salsa + basil").await.text,
        "The club's lists are changed in its group, where I can see who may."
    );
    assert_eq!(world.count(rows).await, before);
}

#[tokio::test(flavor = "multi_thread")]
async fn administrators_name_helpers_in_reply_to_a_person() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    insta::assert_snapshot!(shown(&club.hears(&ash, "/club helpers").await), @"
    Nobody helps you yet.
    To name somebody, reply to a message of theirs with /club helper add; to end it, with /club helper remove.
    ");
    let hello = world.platform.user_says_in(club.id, fern.id, "good morning", None, None);
    let reply = |who: &Person, text: &str| {
        world.platform.user_says_in(club.id, who.id, text, Some(hello.message_id), None)
    };
    // Not by a member, and not without a person.
    let refused = club.answer_to(reply(&fern, "/club helper add")).await.text;
    assert_eq!(refused, "Only administrators of this group can name its helpers.");
    let alone = club.hears(&ash, "/club helper add").await;
    assert!(alone.text.starts_with("To name somebody, reply to a message of theirs"));
    let bot = club.replies(&ash, &alone, "/club helper add");
    assert!(
        club.answer_to(bot).await.text.starts_with("A bot, or somebody who writes anonymously")
    );
    assert_eq!(world.count("SELECT count(*) FROM helpers").await, 0);

    insta::assert_snapshot!(shown(&club.answer_to(reply(&ash, "/club helper add")).await), @"Fern may now change the club's settings and its lists. /club helpers shows everybody who may.");
    assert!(club.hears(&fern, "/list new Salsa bed: tomato").await.text.starts_with("New list"));
    assert!(club.hears(&fern, "/club zone Denver").await.text.starts_with("The club's time zone"));
    let again = club.answer_to(reply(&fern, "/club helper add")).await.text;
    assert_eq!(again, "Only administrators of this group can name its helpers.");

    let page = club.hears(&ash, "/club helpers").await;
    insta::assert_snapshot!(shown(&page), @"
    These helpers may change the club's settings and lists: Fern.
    To name somebody, reply to a message of theirs with /club helper add; to end it, with /club helper remove.
    [Remove Fern]
    ");
    let notice = fern.presses_under(&page, "Remove Fern").await.unwrap_or_default();
    assert_eq!(notice, "Only administrators of this group can name its helpers.");
    ash.presses_under(&page, "Remove Fern").await;
    assert!(club.hears(&fern, "/list salsa + basil").await.text.starts_with("Only administrators"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_helper_who_left_the_group_is_none_any_more() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    let hello = club.says(&fern, "good morning");
    let named = world.platform.user_says_in(
        club.id,
        ash.id,
        "/club helper add",
        Some(hello.message_id),
        None,
    );
    club.answer_to(named).await;
    world.platform.leave(club.id, fern.id);
    world.quiet().await;
    world.platform.join(club.id, fern.id);
    assert!(club.hears(&fern, "/list new Mine").await.text.starts_with("Only administrators"));
}

#[tokio::test(flavor = "multi_thread")]
async fn in_a_topic_nobody_is_named_who_was_not_replied_to() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let forum = world.platform.create_forum("Hillside Growers", ash.id);
    world.platform.add_bot_to_group(forum, ash.id);
    world.quiet().await;
    let club = world.group(forum);
    club.news();
    let topic = world.platform.create_topic(forum, ash.id, "Lists");
    world.quiet().await;
    // In a topic the platform tells every message as a reply to the topic's beginning.
    let said =
        world.platform.user_says_in(forum, ash.id, "/club helper add", Some(topic), Some(topic));
    let answer = club.answer_to(said).await;
    assert!(answer.text.starts_with("To name somebody, reply"), "{}", answer.text);
    assert_eq!(answer.thread, Some(topic));
    assert_eq!(world.count("SELECT count(*) FROM helpers").await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn an_anonymous_administrator_keeps_lists_and_subscribes_to_none() {
    let world = World::start(SPRING).await;
    let (_, _, club) = hillside(&world).await;
    let say = |text: &str| world.platform.anonymous_admin_says(club.id, text, None);
    assert!(club.answer_to(say("/list new Salsa bed: tomato")).await.text.starts_with("New list"));
    let refused = club.answer_to(say("/list join salsa")).await.text;
    assert!(refused.starts_with("You write anonymously here"), "{refused}");
    assert_eq!(world.count("SELECT count(*) FROM subscriptions").await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn nobody_takes_back_what_is_anothers() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let moss = world.member("Moss").await;
    club.welcomes(&[&moss]);
    moss.asks("/grow basil").await;
    // Fern's change in the group has the same number as Moss's own.
    let noted = club.hears(&fern, "/grow basil").await;
    assert!(noted.buttons.is_empty(), "{}", shown(&noted));
    for data in ["U:1", "U:2"] {
        // Nor does whoever asked: it is not known whose change a number in a group is.
        for who in [&moss, &fern] {
            let notice = who.presses_data(&noted, data).await;
            assert_eq!(notice.as_deref(), Some("Please do that in our private chat."));
        }
    }
    assert!(moss.asks("/mycrops").await.text.contains("basil"));
    assert!(fern.asks("/undo").await.text.contains("Off your list again: basil"));
}

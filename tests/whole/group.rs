//! The bot among the members of a club's group.

use crate::harness::{World, shown};
use crate::platform::User;

const SPRING: &str = "2026-04-10T12:00:00Z";

/// The payload of the button that opens the private chat.
fn join_token(world: &World, message: &crate::platform::Message) -> String {
    let button = message.button("Get my reminders").expect("a button that leads to the bot");
    let url = button.url.clone().expect("a link");
    let link = format!("https://t.me/{}?start=", world.platform.bot_username());
    let token = url.strip_prefix(&link).unwrap_or_else(|| panic!("{url} leads elsewhere"));
    assert!(
        (1..=64).contains(&token.len())
            && token.chars().all(|c| c.is_ascii_alphanumeric() || c == '_' || c == '-'),
        "{token:?} is no payload of a deep link"
    );
    token.to_owned()
}

#[tokio::test(flavor = "multi_thread")]
async fn the_bot_greets_once_and_its_button_leads_a_member_into_the_club() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let group = world.platform.create_supergroup("Hillside Growers", ash.id);
    world.platform.add_bot_to_group(group, ash.id);
    world.quiet().await;
    let greetings = world.platform.sent_to(group);
    assert_eq!(greetings.len(), 1, "the two updates of one arrival make one greeting");
    insta::assert_snapshot!(shown(&greetings[0]), @"
    Hello! I help with the timing of sowing and planting. Ask me by command, for example /ask can I start cucumbers now?, or reply to one of my messages.
    For morning reminders, open a private chat with me: I may not write first.
    An administrator can set the club's frost dates and time zone with /club, and keep lists of crops with /list.
    [Get my reminders]
    ");

    let club = world.group(group);
    club.news();
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let fern = world.person("Fern");
    let token = join_token(&world, &greetings[0]);
    let greeting = fern.asks(&format!("/start {token}")).await;
    insta::assert_snapshot!(shown(&greeting), @r"
    Hello Fern! I tell you what to sow, harden off and plant out, and when.
    Tell me what you grow (/grow tomato, basil) and I write you on the mornings when something is due.

    You are with Hillside Growers.

    I reckon with last frost around May 15, first frost around October 5. /frost changes that for your garden.

    Which time zone are you in? Send a city, like this: /zone Denver. Until then I use UTC.
    [Time zone]
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_question_is_answered_where_it_is_addressed() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let fern = world.person("Fern");
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&fern]);
    club.hears(&ash, "/club frost 05-15 10-05").await;

    let bot = world.platform.bot_username();
    let answer = club.hears(&fern, &format!("/ask@{bot} can I start cucumbers now?")).await;
    insta::assert_snapshot!(shown(&answer), @"
    A little early to sow cucumbers indoors, but it can work.
    Sown today, the plants are 6 weeks old when they can go out, around May 22; 3–5 weeks is best. Your average last frost is around May 15.
    Better to wait until April 17: they dislike being moved. If you start now, give each a large cell of its own and plenty of light.
    Care: never eat a fruit of this family that tastes bitter; spit it out and throw it away.
    Care: seed may be treated. Read the packet, wear gloves, and keep it from children and animals.
    ");

    // The same question as an answer to the bot, by a mention, and as a bare command.
    let by_reply = club.replies(&fern, &answer, "can I start cucumbers now?");
    assert_eq!(club.answer_to(by_reply).await.text, answer.text);
    for asked in [
        format!("@{bot} can I start cucumbers now?"),
        format!("can I start cucumbers now @{bot}?"),
        "/ask can I start cucumbers now?".to_owned(),
    ] {
        assert_eq!(club.hears(&fern, &asked).await.text, answer.text, "{asked}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_not_for_the_bot_is_left_alone() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let fern = world.person("Fern");
    let club = world.club("Hillside Growers", &ash).await;
    let machine = world.person("Quiz");
    world.platform.set_user(User { is_bot: true, ..world.platform.user(machine.id) });
    club.welcomes(&[&fern, &machine]);
    club.silence_after(club.says(&fern, "can I start cucumbers now?")).await;
    club.silence_after(club.says(&fern, "/ask@quiz_bot can I start cucumbers now?")).await;
    club.silence_after(club.says(&fern, "@quiz_bot can I start cucumbers now?")).await;
    let said = club.says(&fern, "nice weather");
    let about_it = world.platform.user_says_in(
        club.id,
        ash.id,
        "can I start cucumbers now?",
        Some(said.message_id),
        None,
    );
    club.silence_after(about_it).await;
    club.silence_after(club.says(&machine, "/ask can I start cucumbers now?")).await;
    assert_eq!(world.count("SELECT count(*) FROM members WHERE name = 'Quiz'").await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn an_answer_stays_in_its_topic() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let forum = world.platform.create_forum("Hillside Growers", ash.id);
    world.platform.add_bot_to_group(forum, ash.id);
    world.quiet().await;
    let club = world.group(forum);
    club.news();
    let topic = world.platform.create_topic(forum, ash.id, "Seeds");
    let ask = |thread| {
        world.platform.user_says_in(forum, ash.id, "/ask how deep do I sow peas?", None, thread)
    };
    let in_topic = club.answer_to(ask(Some(topic))).await;
    assert_eq!((in_topic.thread, in_topic.is_topic_message), (Some(topic), true));
    let in_general = club.answer_to(ask(None)).await;
    assert!(!in_general.is_topic_message);
    assert_eq!(in_topic.text, in_general.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_thread_of_replies_is_no_topic() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let first = club.hears(&ash, "/help").await;
    let second = club.replies(&ash, &first, "how deep do I sow peas?");
    let second = club.answer_to(second).await;
    let third = club.replies(&ash, &second, "how deep do I sow beans?");
    club.answer_to(third).await;
    // The platform would refuse a thread that is no topic; nothing was tried twice.
    assert_eq!(world.platform.requests_of("sendMessage"), world.platform.sent().len());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_changed_message_is_not_answered_again() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let said = club.says(&ash, "/ask how deep do I sow peas?");
    club.answer_to(said).await;
    let edited =
        world.platform.edited_message(club.id, said.message_id, "/ask how deep do I sow beans?");
    club.silence_after(edited).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn words_under_a_picture_count() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let written = club.hears(&ash, "/ask how deep do I sow peas?").await;
    let shot = world.platform.photo_with_caption(club.id, ash.id, "/ask how deep do I sow peas?");
    assert_eq!(club.answer_to(shot).await.text, written.text);
    let bare = world.platform.photo_with_caption(club.id, ash.id, "");
    club.silence_after(bare).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn with_privacy_on_commands_by_name_replies_and_presses_are_enough() {
    let world = World::start(SPRING).await;
    world.platform.set_privacy_mode(true);
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let bot = world.platform.bot_username();
    let page = club.hears(&ash, &format!("/club@{bot}")).await;
    ash.presses_under(&page, "Frost dates").await;
    let question = club.news().pop().expect("a question for the dates");
    let set = club.replies(&ash, &question, "05-15 10-05");
    let set = club.answer_to(set).await;
    assert!(set.text.starts_with("Noted for the club: last frost around May 15"), "{}", set.text);
}

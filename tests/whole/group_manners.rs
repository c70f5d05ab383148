//! Manners in a group: short answers, nothing of a member's own garden, no word to bots.

use serde_json::json;

use crate::harness::{Club, Person, World, only, shown};

const SPRING: &str = "2026-04-22T12:00:00Z";

/// A club with dates, and a member whose own garden is colder.
async fn club_and_member(world: &World) -> (Club, Person) {
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let fern = world.member("Fern").await;
    club.welcomes(&[&fern]);
    fern.asks("/frost 06-20 09-01").await;
    fern.asks("/grow tomato").await;
    fern.asks("sowed 12 basil on April 20").await;
    fern.asks("/place greenhouse").await;
    fern.asks("/latitude 61").await;
    fern.asks("/hold 9 days").await;
    fern.news();
    club.news();
    (club, fern)
}

#[tokio::test(flavor = "multi_thread")]
async fn an_answer_in_the_group_goes_by_the_clubs_dates_unless_the_member_shares_theirs() {
    let world = World::start(SPRING).await;
    let (club, fern) = club_and_member(&world).await;
    let answer = club.hears(&fern, "/ask when do I sow cucumbers?").await;
    assert!(answer.text.contains("frost around May 15"), "{}", answer.text);
    let own = club.hears(&fern, "/ask when do I sow cucumbers? Share!").await;
    assert!(own.text.contains("frost around June 20"), "{}", own.text);
    let shared = club.hears(&fern, "/mycrops share").await;
    assert!(shared.text.contains("• tomato"), "{}", shared.text);
    let now = club.hears(&fern, "/now").await;
    assert!(now.text.starts_with("What you can start today"), "{}", now.text);
}

/// Whatever a member asks for there, the group reads nothing of what is their own.
#[tokio::test(flavor = "multi_thread")]
async fn what_is_about_a_members_garden_is_answered_in_private() {
    let world = World::start(SPRING).await;
    let (club, fern) = club_and_member(&world).await;
    for (said, in_private) in [
        ("/mycrops", "Tomato"),
        ("/sowings", "12 basil"),
        ("/settings", "June 20"),
        ("/frost", "June 20"),
        ("/place", "greenhouse"),
        ("/hold", "May 1"),
        ("/latitude 60", "60"),
        ("/trays", "basil"),
        ("/grow leek", "leek"),
        ("/drop leek", "leek"),
        ("/sown 3 leeks today", "leek"),
        ("/undo", "leek"),
        ("/hour 6:00", "6"),
        ("/zone Denver", "Denver"),
    ] {
        let answer = club.hears(&fern, said).await;
        assert_eq!(
            answer.text,
            "I have answered you in private. If all may read it, end your message with “share”.",
            "{said}"
        );
        let own = only(fern.news());
        let text = own.text.to_lowercase();
        assert!(text.contains(&in_private.to_lowercase()), "{said}: {}", own.text);
    }
    // What it then waits to hear, it waits to hear there.
    club.hears(&fern, "/latitude").await;
    fern.news();
    assert!(fern.asks("47").await.text.contains("47"));
}

#[tokio::test(flavor = "multi_thread")]
async fn whom_the_bot_may_not_write_to_gets_a_way_into_the_private_chat() {
    let world = World::start(SPRING).await;
    let (club, _) = club_and_member(&world).await;
    let wren = world.person("Wren");
    club.welcomes(&[&wren]);
    let answer = club.hears(&wren, "/grow tomato").await;
    insta::assert_snapshot!(shown(&answer), @"
    That is about your own garden, so it stays between us. Open our private chat with the button, and ask me there.
    [Open our chat]
    ");
    assert_eq!(world.count("SELECT count(*) FROM member_crops").await, 2, "basil and tomato");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_long_answer_is_short_in_the_group_and_whole_in_private() {
    let world = World::start(SPRING).await;
    let (club, fern) = club_and_member(&world).await;
    let question = "/ask can I start cucumbers, tomatoes and peppers now?";
    let short = club.hears(&fern, question).await;
    insta::assert_snapshot!(shown(&short), @"
    Go ahead: sow cucumbers indoors today.
    Late, but still worth it: sow tomatoes indoors today.
    Late, but still worth it: sow peppers indoors today.
    There is more to it, cautions among it where there are any.
    [Read on in private]
    ");

    // A member reads the whole of it at once, by their own dates.
    let notice = fern.presses_under(&short, "Read on").await;
    assert_eq!(notice.as_deref(), Some("I have written to you in private."));
    let whole = only(fern.news());
    let asked = fern.asks("can I start cucumbers, tomatoes and peppers now?").await;
    assert_eq!(shown(&whole), shown(&asked));
    assert!(whole.text.contains("June 20"), "{}", whole.text);

    // Somebody who never started the bot is led there, and into the club.
    let wren = world.person("Wren");
    club.welcomes(&[&wren]);
    let pressed = world.platform.press(wren.id, club.id, short.message_id, "Read on");
    world.quiet().await;
    let answers = world.platform.callback_answers();
    let answer = answers.iter().find(|answer| answer.query_id == pressed.query_id).expect("one");
    let url = answer.url.clone().expect("a link");
    let link = format!("https://t.me/{}?start=", world.platform.bot_username());
    let payload = url.strip_prefix(&link).expect("the bot's own link");
    let told = wren.tells(&format!("/start {payload}")).await;
    assert_eq!(told.len(), 2);
    assert!(told[0].text.contains("You are with Hillside Growers"), "{}", told[0].text);
    assert!(told[1].text.contains("May 15") && told[1].text.len() > short.text.len());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_question_of_long_ago_is_asked_again() {
    let world = World::start(SPRING).await;
    let (club, fern) = club_and_member(&world).await;
    let short = club.hears(&fern, "/ask can I start cucumbers, tomatoes and peppers now?").await;
    let notice = fern.presses_data(&short, "ro:99").await.expect("a notice");
    assert_eq!(notice, "That was asked too long ago. Please ask it again.");
    assert!(fern.news().is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn bots_channels_and_the_bots_own_words_are_not_answered() {
    let world = World::start(SPRING).await;
    let (club, fern) = club_and_member(&world).await;
    let user = json!({ "id": fern.id, "is_bot": false, "first_name": "Fern" });
    let bot = json!({ "id": world.platform.bot_id(), "is_bot": true, "first_name": "Garden" });
    let command = json!([{ "type": "bot_command", "offset": 0, "length": 4 }]);
    let group = json!({ "id": club.id, "type": "supergroup", "title": "Hillside Growers" });
    let own_chat = json!({ "id": fern.id, "type": "private", "first_name": "Fern" });
    let channel = json!({ "id": -100_777, "type": "channel", "title": "News" });
    let copier = json!({ "id": 777_000, "is_bot": false, "first_name": "Channel" });
    let text = "/ask can I start peas?";
    for message in [
        // The bot's own inline answer, chosen in the group and in its private chat.
        json!({ "from": user, "via_bot": bot, "chat": group, "text": text, "entities": command }),
        json!({ "from": user, "via_bot": bot, "chat": own_chat, "text": "Go ahead: sow peas." }),
        json!({ "from": bot, "chat": group, "text": text, "entities": command }),
        json!({ "from": copier, "sender_chat": channel, "is_automatic_forward": true,
            "chat": group, "text": text, "entities": command }),
    ] {
        let mut message = message;
        message["message_id"] = json!(9000);
        message["date"] = json!(1);
        world.platform.raw_update(json!({ "message": message }));
    }
    world.quiet().await;
    assert!(club.news().is_empty() && fern.news().is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_short_answer_and_its_button_stay_in_their_topic() {
    let world = World::start(SPRING).await;
    let ash = world.person("Ash");
    let forum = world.platform.create_forum("Hillside Growers", ash.id);
    world.platform.add_bot_to_group(forum, ash.id);
    world.quiet().await;
    let club = world.group(forum);
    let topic = world.platform.create_topic(forum, ash.id, "Seeds");
    let say = |text: &str| world.platform.user_says_in(forum, ash.id, text, None, Some(topic));
    club.news();
    for text in [
        "/club frost 05-15 10-05",
        "/ask can I start cucumbers, tomatoes and peppers now?",
        "/mycrops",
    ] {
        let answer = club.answer_to(say(text)).await;
        assert_eq!(answer.thread, Some(topic), "{text}");
    }
}

//! What a message looks like when it reaches the platform, and what its answers mean.

use serde_json::{Value, json};
use teloxide::Bot;

use super::*;
use crate::messages::{AnswerInline, Article, Button, OpenPrivate, Press};
use crate::telegram::Myself;
use crate::telegram::fake::{Fake, TOKEN, no, yes};

/// The platform's answer to a message that it took.
fn taken(id: i32) -> (u16, String) {
    yes(json!({
        "message_id": id, "date": 1_700_000_000, "text": "x",
        "chat": { "id": 5, "type": "private", "first_name": "Anna" },
        "from": { "id": 77, "is_bot": true, "first_name": "Sowbell", "username": "sowbell_bot" },
    }))
}

fn say() -> Say {
    Say { chat: -1_005, text: "Sow peas today.".to_owned(), ..Say::default() }
}

/// Delivers to a platform that answers so; gives what came of it and what was asked.
async fn deliver(outgoing: Outgoing, answer: (u16, String)) -> (Delivery, String, Value) {
    let fake = Fake::start(move |_, _| answer.clone()).await;
    let delivery = fake.telegram().await.deliver(&outgoing).await;
    let (method, body) = fake.last_call();
    (delivery, method, body)
}

async fn refused(sentence: &str) -> Delivery {
    deliver(Outgoing::Say(say()), no(400, sentence)).await.0
}

#[tokio::test]
async fn a_message_is_sent_as_plain_text_with_all_that_belongs_to_it() {
    let say = Say {
        thread: Some(9),
        reply_to: Some(4),
        buttons: vec![vec![Button::press("Settings", Press::Settings)]],
        ..say()
    };
    let (delivery, method, body) = deliver(Outgoing::Say(say), taken(12)).await;
    assert_eq!(delivery, Delivery::Sent { message: Some(12) });
    assert_eq!(method, "SendMessage");
    let expected = json!({
        "chat_id": -1_005,
        "text": "Sow peas today.",
        "message_thread_id": 9,
        "link_preview_options": { "is_disabled": true },
        "reply_parameters": { "message_id": 4, "allow_sending_without_reply": true },
        "reply_markup": { "inline_keyboard": [[{ "text": "Settings", "callback_data": "s" }]] },
    });
    assert_eq!(body, expected);
}

#[tokio::test]
async fn a_bare_message_carries_nothing_else() {
    let (_, _, body) = deliver(Outgoing::Say(say()), taken(12)).await;
    let expected = json!({
        "chat_id": -1_005,
        "text": "Sow peas today.",
        "link_preview_options": { "is_disabled": true },
    });
    assert_eq!(body, expected);
}

#[tokio::test]
async fn an_edit_changes_the_text_and_takes_old_buttons_away() {
    let edit = Edit { chat: 5, message: 8, text: "Done.".to_owned(), buttons: Vec::new() };
    let (delivery, method, body) = deliver(Outgoing::Edit(edit), taken(8)).await;
    assert_eq!((delivery, method.as_str()), (Delivery::Sent { message: None }, "EditMessageText"));
    let expected = json!({
        "chat_id": 5, "message_id": 8, "text": "Done.",
        "link_preview_options": { "is_disabled": true },
    });
    assert_eq!(body, expected);
}

#[tokio::test]
async fn a_press_is_answered_with_or_without_a_notice() {
    let answer = |notice: Option<String>| {
        Outgoing::AnswerPress(AnswerPress { press: "q1".to_owned(), notice })
    };
    let (delivery, method, body) = deliver(answer(None), yes(json!(true))).await;
    assert_eq!(delivery, Delivery::Sent { message: None });
    assert_eq!(
        (method.as_str(), body),
        ("AnswerCallbackQuery", json!({ "callback_query_id": "q1" }))
    );
    let long = answer(Some("ä".repeat(300)));
    let (_, _, body) = deliver(long, yes(json!(true))).await;
    assert_eq!(body["text"].as_str().unwrap().chars().count(), 200);
}

#[tokio::test]
async fn an_inline_answer_is_for_the_asker_alone_and_not_for_long() {
    let article = Article {
        id: "pea".to_owned(),
        title: "Peas".to_owned(),
        description: "Go ahead".to_owned(),
        text: "Go ahead: sow peas.".to_owned(),
    };
    let button = OpenPrivate { label: "Frost dates".to_owned(), payload: "frost".to_owned() };
    let answer = AnswerInline {
        query: "i1".to_owned(),
        articles: vec![article],
        open_private: Some(button),
    };
    let (delivery, method, body) = deliver(Outgoing::AnswerInline(answer), yes(json!(true))).await;
    assert_eq!(
        (delivery, method.as_str()),
        (Delivery::Sent { message: None }, "AnswerInlineQuery")
    );
    let expected = json!({
        "inline_query_id": "i1",
        "results": [{
            "type": "article",
            "id": "pea",
            "title": "Peas",
            "description": "Go ahead",
            "input_message_content": {
                "message_text": "Go ahead: sow peas.",
                "link_preview_options": { "is_disabled": true },
            },
        }],
        "cache_time": 10,
        "is_personal": true,
        "button": { "text": "Frost dates", "start_parameter": "frost" },
    });
    assert_eq!(body, expected);
}

#[tokio::test]
async fn a_press_may_open_the_private_chat() {
    let answer = OpenByPress { press: "q1".to_owned(), payload: "read_aB_7".to_owned() };
    let (_, method, body) = deliver(Outgoing::OpenByPress(answer), yes(json!(true))).await;
    assert_eq!(method, "AnswerCallbackQuery");
    let url = "https://t.me/sowbell_bot?start=read_aB_7";
    assert_eq!(body, json!({ "callback_query_id": "q1", "url": url }));
}

#[tokio::test]
async fn a_file_is_a_new_message() {
    let document = Document {
        chat: 5,
        name: "sowbell-export.json".to_owned(),
        caption: "All".to_owned(),
        content: "{}".to_owned(),
    };
    let (delivery, method, _) = deliver(Outgoing::Document(document), taken(14)).await;
    assert_eq!((delivery, method.as_str()), (Delivery::Sent { message: Some(14) }, "SendDocument"));
}

#[tokio::test]
async fn refusals_end_as_what_they_mean() {
    let why = |why: &str| why.to_owned();
    let kicked = "Forbidden: bot was kicked from the group chat";
    let Delivery::Unreachable(text) = refused(kicked).await else { panic!("unreachable") };
    assert!(text.contains("kicked"), "{text}");
    assert!(matches!(refused("Bad Request: BUTTON_DATA_INVALID").await, Delivery::Refused(_)));
    assert!(matches!(refused("Bad Request: message to edit not found").await, Delivery::Gone(_)));
    let wait = refused("Too Many Requests: retry after 9").await;
    assert_eq!(wait, Delivery::Wait(Duration::from_secs(9)));
    let same = refused("Bad Request: message is not modified").await;
    assert_eq!(same, Delivery::Sent { message: None });
    let moved = json!({ "ok": false, "error_code": 400,
        "description": why("Bad Request: group chat was upgraded to a supergroup chat"),
        "parameters": { "migrate_to_chat_id": -10_077 } });
    let (moved, ..) = deliver(Outgoing::Say(say()), (400, moved.to_string())).await;
    assert_eq!(moved, Delivery::Moved(-10_077));
}

#[tokio::test]
async fn a_yes_of_an_unknown_form_is_not_sent_again() {
    let odd = yes(json!({ "message_id": 31, "chat": "of a new form" }));
    let (delivery, ..) = deliver(Outgoing::Say(say()), odd).await;
    assert_eq!(delivery, Delivery::Sent { message: Some(31) });
}

#[tokio::test]
async fn without_its_topic_a_message_still_goes_to_the_group() {
    let fake = Fake::start(|_, body| {
        if body.get("message_thread_id").is_some() {
            no(400, "Bad Request: message thread not found")
        } else {
            taken(13)
        }
    })
    .await;
    let outgoing = Outgoing::Say(Say { thread: Some(9), ..say() });
    let delivery = fake.telegram().await.deliver(&outgoing).await;
    assert_eq!(delivery, Delivery::Sent { message: Some(13) });
    assert_eq!(fake.calls("SendMessage").len(), 2);
}

#[tokio::test]
async fn a_closed_general_topic_is_a_refusal_and_not_tried_in_circles() {
    let fake = Fake::start(|_, _| no(400, "Bad Request: TOPIC_CLOSED")).await;
    let telegram = fake.telegram().await;
    for thread in [None, Some(9)] {
        let outgoing = Outgoing::Say(Say { thread, ..say() });
        assert!(matches!(telegram.deliver(&outgoing).await, Delivery::Refused(_)));
    }
    assert_eq!(fake.calls("SendMessage").len(), 3);
}

#[tokio::test]
async fn a_servers_error_is_given_up_in_time() {
    // The library sleeps ten seconds over it.
    let fake = Fake::start(|_, _| no(500, "Internal Server Error")).await;
    let telegram = fake.telegram().await;
    let started = std::time::Instant::now();
    let outgoing = Outgoing::Say(say());
    let delivery = telegram.deliver_within(&outgoing, Duration::from_millis(200)).await;
    assert!(matches!(delivery, Delivery::Transient(_)), "{delivery:?}");
    assert!(started.elapsed() < Duration::from_secs(5));
}

#[tokio::test]
async fn without_a_connection_surely_nothing_was_sent() {
    // Nothing listens on port 1 of this machine.
    let bot = Bot::new(TOKEN).set_api_url("http://127.0.0.1:1".parse().unwrap());
    let myself = Myself { id: 77, username: "sowbell_bot".to_owned() };
    let telegram = Telegram { bot, myself };
    let delivery = telegram.deliver(&Outgoing::Say(say())).await;
    let Delivery::Offline(why) = delivery else { panic!("{delivery:?}") };
    assert!(!why.contains("secret"), "{why}");
}

#[test]
fn a_text_that_is_too_long_is_cut_between_characters() {
    // Each seedling takes two units.
    let cut = fitting(&"🌱".repeat(3000));
    assert_eq!(cut.encode_utf16().count(), LONGEST_TEXT - 1, "an even number and the mark");
    assert!(cut.ends_with('…'));
    let just = "a".repeat(LONGEST_TEXT);
    assert_eq!(fitting(&just), just);
}

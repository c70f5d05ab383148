//! The fake platform, tried with the library that the bot uses, and with raw
//! requests where the library would not let a mistake through.

#![allow(clippy::expect_used, clippy::indexing_slicing, reason = "a test stops where it is wrong")]

use std::time::{Duration, Instant};

use serde_json::{Value, json};
use teloxide::payloads::{
    AnswerCallbackQuerySetters, EditMessageTextSetters, GetUpdatesSetters, SendMessageSetters,
    SendPhotoSetters,
};
use teloxide::prelude::{Bot, ChatId, Request, Requester, UserId};
use teloxide::types::{
    AllowedUpdate, BotCommand, CallbackQueryId, InlineKeyboardButton, InlineKeyboardMarkup,
    InputFile, MessageId, ReactionType, ReplyParameters, ThreadId, Update, UpdateKind,
};
use teloxide::{ApiError, RequestError};

use super::schema::SCHEMA;
use super::{FakePlatform, Fault, Rates, Status, Which};

fn bot(platform: &FakePlatform) -> Bot {
    let url = platform.url().parse().expect("the url of the server");
    Bot::new(platform.token()).set_api_url(url)
}

/// A request as raw as it gets; the status and the body of the answer.
async fn post(platform: &FakePlatform, method: &str, kind: &str, body: &str) -> (u16, Value) {
    let url = format!("{}/bot{}/{method}", platform.url(), platform.token());
    let request = reqwest::Client::new().post(url).body(body.to_owned());
    let answer = request.header("content-type", kind).send().await;
    let answer = answer.expect("an answer");
    let status = answer.status().as_u16();
    let text = answer.text().await.expect("a body");
    (status, serde_json::from_str(&text).expect("JSON"))
}

async fn post_json(platform: &FakePlatform, method: &str, body: Value) -> (u16, String) {
    let (status, answer) = post(platform, method, "application/json", &body.to_string()).await;
    let description = answer["description"].as_str().unwrap_or_default();
    (status, description.to_owned())
}

fn sentence<T: std::fmt::Debug>(result: Result<T, RequestError>) -> String {
    match result {
        Err(RequestError::Api(error)) => error.to_string(),
        other => format!("{other:?}"),
    }
}

#[tokio::test]
async fn a_question_a_button_and_an_edit() {
    let platform = FakePlatform::start().await;
    let bot = bot(&platform);
    let ana = platform.add_user("Ana", Some("es"));
    let club = platform.create_group("Huerto", ana);
    platform.add_bot_to_group(club, ana);
    let command = format!("🍅 /when@{} tomate", platform.bot_username());
    let said = platform.user_says_in(club, ana, &command, None, None);

    let updates = bot.get_updates().await.expect("updates");
    let Some(UpdateKind::Message(asked)) = updates.last().map(|update| &update.kind) else {
        panic!("no message in {updates:?}");
    };
    let entities = asked.parse_entities().expect("entities");
    let texts: Vec<&str> = entities.iter().map(teloxide::types::MessageEntityRef::text).collect();
    assert_eq!(texts, ["/when@garden_test_bot"]);

    let keyboard = |label: &str| {
        InlineKeyboardMarkup::new([[InlineKeyboardButton::callback(label, "sown:1")]])
    };
    bot.send_message(asked.chat.id, "Sí, ya.")
        .reply_parameters(ReplyParameters::new(asked.id).allow_sending_without_reply())
        .reply_markup(keyboard("Sembrado"))
        .await
        .expect("sent");
    let sent = platform.wait_for_messages(club, 1).await.remove(0);
    assert_eq!(sent.text, "Sí, ya.");
    assert_eq!(sent.reply_to, Some(said.message_id));
    assert_eq!(sent.labels(), ["Sembrado"]);

    let pressed = platform.press(ana, club, sent.message_id, "Semb");
    let offset = said.update_id.expect("told") + 1;
    let updates = bot.get_updates().offset(i32::try_from(offset).expect("a small id")).await;
    let updates = updates.expect("updates");
    let Some(UpdateKind::CallbackQuery(query)) = updates.first().map(|update| &update.kind) else {
        panic!("no button in {updates:?}");
    };
    assert_eq!(query.data.as_deref(), Some("sown:1"));
    assert_eq!(query.id.0, pressed.query_id);
    assert_eq!(platform.confirmed_offset(), Some(offset));
    bot.answer_callback_query(query.id.clone()).text("Anotado").await.expect("answered");
    let answers = platform.callback_answers();
    assert_eq!(answers[0].text.as_deref(), Some("Anotado"));
    assert_eq!((answers[0].user, answers[0].chat), (ana, club));

    let id = MessageId(sent.message_id);
    let edit = |text: &str| bot.edit_message_text(ChatId(club), id, text);
    edit("Sembrado hoy.").reply_markup(keyboard("Deshacer")).await.expect("edited");
    let again = edit("Sembrado hoy.").reply_markup(keyboard("Deshacer"));
    assert!(matches!(again.await, Err(RequestError::Api(ApiError::MessageNotModified))));
    let edited = platform.message(club, sent.message_id).expect("there");
    assert_eq!(edited.text, "Sembrado hoy.");
    assert_eq!(edited.versions[0].text, "Sí, ya.");
    // An edit without a keyboard takes the keyboard away.
    edit("Sembrado hoy.").await.expect("edited");
    assert!(platform.sent_to(club)[0].buttons.is_empty());

    platform.expire_callbacks();
    let late = bot.answer_callback_query(query.id.clone()).await;
    assert!(sentence(late).contains("query is too old"));
    let unknown = bot.answer_callback_query(CallbackQueryId("7".to_owned()));
    assert!(sentence(unknown.await).contains("query is too old"));
    assert_eq!(platform.violations(), Vec::<String>::new());
}

#[tokio::test]
async fn every_update_fits_the_schema_and_the_library() {
    let platform = FakePlatform::start().await;
    let (ana, bo) = (platform.add_user("Ana", None), platform.add_user("Bo", Some("en")));
    // Also the kinds that must be asked for.
    post_json(
        &platform,
        "getUpdates",
        json!({ "allowed_updates": ["message", "edited_message", "callback_query",
                                    "my_chat_member", "chat_member"] }),
    )
    .await;
    platform.starts(ana, Some("club"));
    platform.block(ana);
    platform.unblock(ana);
    let club = platform.create_group("Club", ana);
    platform.add_bot_to_group(club, ana);
    platform.promote(club, platform.bot_id());
    platform.join(club, bo);
    let said = platform.user_says_in(club, bo, "@ana_g /help, /no.", None, None);
    platform.edited_message(club, said.message_id, "/help");
    platform.user_says_in(club, ana, "yes", Some(said.message_id), None);
    platform.anonymous_admin_says(club, "/settings", None);
    platform.photo_with_caption(club, bo, "/add tomato");
    platform.press_data(bo, club, said.message_id, "x");
    platform.press_on_old_message(bo, club, said.message_id, "x");
    platform.demote(club, platform.bot_id());
    platform.leave(club, bo);
    let club = platform.migrate_group(club);
    platform.remove_bot(club, ana);
    let forum = platform.create_forum("Forum", ana);
    platform.add_bot_to_group(forum, ana);
    let topic = platform.create_topic(forum, ana, "Tomatoes");
    platform.user_says_in(forum, ana, "hello", None, Some(topic));

    let body = r#"{"timeout":1}"#;
    let (_, answer) = post(&platform, "getUpdates", "application/json", body).await;
    let updates = answer["result"].as_array().expect("a list");
    assert!(updates.len() >= 20, "{}", updates.len());
    for update in updates {
        let faults = SCHEMA.faults_of_value("Update", update);
        assert!(faults.is_empty(), "{faults:?} in {update}");
        let read: Update = serde_json::from_str(&update.to_string()).expect("an update");
        assert!(!matches!(read.kind, UpdateKind::Error(_)), "{update}");
    }
    let kinds = |kind: &str| updates.iter().filter(|update| update.get(kind).is_some()).count();
    assert_eq!(kinds("my_chat_member"), 7);
    assert_eq!(kinds("chat_member"), 1);
    let last = updates.last().expect("the last");
    assert_eq!(last["message"]["is_topic_message"], json!(true));
    assert_eq!(platform.violations(), Vec::<String>::new());
}

#[tokio::test]
async fn those_who_do_not_listen() {
    let platform = FakePlatform::start().await;
    let bot = bot(&platform);
    let ana = platform.add_user("Ana", None);
    let to = |chat: i64| bot.send_message(ChatId(chat), "Hello");
    assert!(sentence(to(99).await).contains("chat not found"));
    assert!(sentence(to(ana).await).contains("can't initiate conversation"));
    platform.open_private(ana);
    to(ana).await.expect("sent");
    platform.block(ana);
    assert!(matches!(to(ana).await, Err(RequestError::Api(ApiError::BotBlocked))));

    let club = platform.create_group("Club", ana);
    assert!(sentence(to(club).await).contains("chat not found"));
    platform.add_bot_to_group(club, ana);
    let reply = to(club).reply_parameters(ReplyParameters::new(MessageId(77)));
    assert!(matches!(reply.await, Err(RequestError::Api(ApiError::MessageToReplyNotFound))));
    let thread = to(club).message_thread_id(ThreadId(MessageId(1)));
    assert!(sentence(thread.await).contains("message thread not found"));
    platform.remove_bot(club, ana);
    assert!(sentence(to(club).await).contains("bot was kicked from the group chat"));
    platform.add_bot_to_group(club, ana);
    let new = platform.migrate_group_quietly(club);
    assert!(matches!(
        to(club).await,
        Err(RequestError::MigrateToChatId(ChatId(id))) if id == new
    ));
    to(new).await.expect("sent");

    let admins = bot.get_chat_administrators(ChatId(new)).await;
    assert_eq!(admins.expect("a list").len(), 1);
    let member = || bot.get_chat_member(ChatId(new), UserId(ana.cast_unsigned()));
    assert!(sentence(member().await).contains("member list is inaccessible"));
    platform.promote(new, platform.bot_id());
    assert!(member().await.expect("a member").is_owner());
    bot.get_chat(ChatId(new)).await.expect("a chat");
    bot.leave_chat(ChatId(new)).await.expect("left");
    assert!(sentence(to(new).await).contains("bot is not a member"));
    let state = platform.read();
    assert_eq!(state.chat(new).status(state.bot.id), Status::Left);
    assert_eq!(state.violations(), Vec::<String>::new());
}

#[tokio::test]
async fn wrong_requests_are_violations() {
    let platform = FakePlatform::start().await;
    let ana = platform.add_user("Ana", None);
    platform.open_private(ana);
    let button = |data: &str| json!({ "text": "x", "callback_data": data });
    let message = |extra: Value| {
        let mut body = json!({ "chat_id": ana, "text": "hi" });
        let fields = extra.as_object().expect("an object").clone();
        body.as_object_mut().expect("an object").extend(fields);
        body
    };
    let keyboard = |rows: Value| message(json!({ "reply_markup": { "inline_keyboard": rows } }));
    let wrong = [
        ("sendMessage", json!({ "chat_id": ana })),
        ("sendMessage", message(json!({ "colour": "red" }))),
        ("sendMessage", message(json!({ "chat_id": 1.5 }))),
        ("sendMessage", message(json!({ "text": " \n" }))),
        ("sendMessage", message(json!({ "text": "🍅".repeat(2049) }))),
        ("sendMessage", message(json!({ "text": "<b>x", "parse_mode": "HTML" }))),
        ("sendMessage", message(json!({ "text": "<br>", "parse_mode": "HTML" }))),
        ("sendMessage", message(json!({ "reply_parameters": { "id": 1 } }))),
        ("sendMessage", keyboard(json!([[{ "text": "x" }]]))),
        ("sendMessage", keyboard(json!([[button(&"x".repeat(65))]]))),
        ("sendMessage", keyboard(json!([vec![button("x"); 101]]))),
        ("sendMessage", keyboard(json!([button("x")]))),
        ("setMyCommands", json!({ "commands": [{ "command": "Hello", "description": "x" }] })),
        ("setMyCommands", json!({ "commands": [{ "command": "hello", "description": "" }] })),
        ("setMyCommands", json!({ "commands": [], "language_code": "español" })),
        (
            "setMessageReaction",
            json!({ "chat_id": ana, "message_id": 1,
                                       "reaction": [{ "type": "emoji", "emoji": "🍅" }] }),
        ),
        ("answerCallbackQuery", json!({ "callback_query_id": "1", "text": "x".repeat(201) })),
    ];
    for (method, body) in wrong {
        let (status, description) = post_json(&platform, method, body.clone()).await;
        assert_eq!(status, 400, "{method} {body}: {description}");
        assert_eq!(platform.take_violations().len(), 1, "{method} {body}");
    }
    let (status, _) = post(&platform, "sendMessage", "application/json", "{").await;
    assert_eq!((status, platform.take_violations().len()), (400, 1));
    assert_eq!(post_json(&platform, "sing", json!({})).await.0, 404);
    let pinned = json!({ "chat_id": ana, "message_id": 1 });
    assert_eq!(post_json(&platform, "pinChatMessage", pinned).await.0, 200);
    let seen = platform.take_violations();
    assert_eq!(seen, ["sing: Not Found", "pinChatMessage: unexpected method"]);

    // The same message is right in a form, and in any case of the method's name.
    let form = format!(
        "chat_id={ana}&text=%3Ci%3Ea%20%26amp%3B%20b%3C%2Fi%3E&parse_mode=HTML&reply_markup={}",
        r#"{"inline_keyboard":[[{"text":"x","callback_data":"1"}]]}"#
    );
    let kind = "application/x-www-form-urlencoded";
    let (status, _) = post(&platform, "SENDMESSAGE", kind, &form).await;
    assert_eq!((status, platform.violations().len()), (200, 0));
    let sent = platform.sent_to(ana).remove(0);
    assert_eq!(sent.text, "a & b");
    assert_eq!(sent.entities, [json!({ "type": "italic", "offset": 0, "length": 5 })]);
    assert_eq!(sent.buttons.len(), 1);
}

#[tokio::test]
async fn pictures_reactions_and_the_bots_own_settings() {
    let platform = FakePlatform::start().await;
    let bot = bot(&platform);
    let ana = platform.add_user("Ana", None);
    let said = platform.photo_with_caption(ana, ana, "mine");
    let mine = platform.message(ana, said.message_id).expect("there");
    let bytes = mine.picture.expect("a picture").bytes;
    let file = InputFile::memory(bytes.clone()).file_name("calendar.png");
    let sent = bot.send_photo(ChatId(ana), file).caption("Your <year>");
    sent.await.expect("sent");
    let picture = platform.sent_to(ana).remove(0).picture.expect("a picture");
    assert_eq!((picture.width, picture.file_name.as_str()), (1, "calendar.png"));
    assert_eq!(picture.bytes, bytes);
    let no_picture = bot.send_photo(ChatId(ana), InputFile::memory("text"));
    assert!(sentence(no_picture.await).contains("IMAGE_PROCESS_FAILED"));
    assert_eq!(platform.take_violations().len(), 1);

    let seedling = ReactionType::Emoji { emoji: "👍".to_owned() };
    let mut reaction = bot.set_message_reaction(ChatId(ana), MessageId(said.message_id));
    reaction.reaction = Some(vec![seedling]);
    reaction.send().await.expect("reacted");
    let reacted = platform.message(ana, said.message_id).expect("there");
    assert_eq!(reacted.reaction.as_deref(), Some("👍"));

    bot.delete_webhook().await.expect("no webhook");
    let me = bot.get_me().await.expect("me");
    assert_eq!(me.username(), platform.bot_username());
    let commands = [BotCommand::new("when", "When to sow")];
    bot.set_my_commands(commands).await.expect("set");
    let set = platform.commands("default", "").expect("set");
    assert_eq!(set, [("when".to_owned(), "When to sow".to_owned())]);
    assert_eq!(platform.requests()["setMyCommands"], 1);
    assert_eq!(platform.violations(), Vec::<String>::new());
}

#[tokio::test]
async fn updates_wait_until_they_are_confirmed() {
    let platform = FakePlatform::start().await;
    let bot = bot(&platform);
    let ana = platform.add_user("Ana", None);
    let ids = |updates: Vec<Update>| updates.iter().map(|u| i64::from(u.id.0)).collect::<Vec<_>>();

    // A long poll wakes at once.
    let poll = tokio::spawn({
        let poll = bot.get_updates().timeout(4);
        async move { poll.await.expect("updates") }
    });
    platform.wait_for("a poll", |state| (!state.calls().is_empty()).then_some(())).await;
    let started = Instant::now();
    platform.set_next_update_id(2_000_000_000);
    platform.user_says(ana, "one");
    platform.user_says(ana, "two");
    assert_eq!(ids(poll.await.expect("polled"))[0], 2_000_000_000);
    assert!(started.elapsed() < Duration::from_secs(2));

    // A bot that was killed gets them again.
    let again = bot.get_updates().limit(1).await.expect("updates");
    assert_eq!(ids(again), [2_000_000_000]);
    let rest = bot.get_updates().offset(2_000_000_001).await;
    assert_eq!(ids(rest.expect("updates")), [2_000_000_001]);
    assert_eq!(platform.pending_updates(), 1);
    let none = bot.get_updates().offset(2_000_000_002).await;
    assert_eq!(none.expect("updates"), []);

    // After a quiet week ids restart; an offset of the old sequence confirms nothing.
    platform.set_next_update_id(5_000);
    platform.user_says(ana, "three");
    for _ in 0..2 {
        let updates = bot.get_updates().offset(2_000_000_002).await;
        assert_eq!(ids(updates.expect("updates")), [5_000]);
    }
    let none = bot.get_updates().offset(5_001).await;
    assert_eq!(none.expect("updates"), []);

    // Only what was asked for arrives; saying nothing changes nothing.
    let only = [AllowedUpdate::CallbackQuery];
    bot.get_updates().allowed_updates(only).await.expect("none");
    bot.get_updates().await.expect("none");
    assert_eq!(platform.user_says(ana, "four").update_id, None);
    assert_eq!(platform.raw_update(json!({ "message": {} })), 5_001);

    // A second bot ends the first one's poll.
    platform.change(|state| state.updates.forget_pending());
    let first = tokio::spawn({
        let poll = bot.get_updates().timeout(4);
        async move { poll.await }
    });
    let polls = platform.requests_of("getUpdates");
    platform
        .wait_for("the poll", |state| (state.requests()["getUpdates"] > polls).then_some(()))
        .await;
    bot.get_updates().await.expect("none");
    assert!(sentence(first.await.expect("ended")).contains("terminated by other getUpdates"));
    assert_eq!(platform.violations(), Vec::<String>::new());
}

#[tokio::test]
async fn faults_strike_as_asked() {
    let platform = FakePlatform::start().await;
    let bot = bot(&platform);
    let ana = platform.add_user("Ana", None);
    platform.open_private(ana);
    let send = |text: &str| bot.send_message(ChatId(ana), text);
    let in_ana = || Which::method("sendmessage").in_chat(ana);

    platform.fail(in_ana(), 1, Fault::TooManyRequests { retry_after: 2 });
    assert!(matches!(
        send("a").await,
        Err(RequestError::RetryAfter(wait)) if wait.seconds() == 2
    ));
    tokio::time::sleep(Duration::from_millis(300)).await;
    send("a").await.expect("sent");
    assert_eq!(platform.read().early_calls().len(), 1);

    platform.fail(in_ana().containing("b"), 1, Fault::CutBefore);
    assert!(matches!(send("b").await, Err(RequestError::Network(_))));
    assert_eq!(platform.sent_to(ana).len(), 1);
    platform.fail(Which::any(), 1, Fault::AcceptThenCut);
    assert!(matches!(send("b").await, Err(RequestError::Network(_))));
    assert_eq!(platform.sent_to(ana).len(), 2);

    platform.fail(Which::any(), 1, Fault::AnswerLate(Duration::from_millis(300)));
    let (started, _) = (Instant::now(), send("c").await.expect("sent"));
    assert!(started.elapsed() >= Duration::from_millis(300));
    platform.fail(Which::any(), 1, Fault::AcceptThenSilence);
    let silence = tokio::time::timeout(Duration::from_millis(200), send("d").send()).await;
    assert!(silence.is_err());
    assert_eq!(platform.sent_to(ana).len(), 4);
    assert_eq!(platform.calls().last().expect("a call").answer, None);

    platform.fail(Which::any(), 1, Fault::ServerError);
    let (status, _) = post_json(&platform, "getMe", json!({})).await;
    assert_eq!((status, platform.read().faults_left()), (500, 0));

    platform.on_request(|call| {
        (call.text_param("text") == Some("e")).then(|| Fault::Refuse {
            code: 403,
            description: "Forbidden: user is deactivated".to_owned(),
        })
    });
    assert!(matches!(send("e").await, Err(RequestError::Api(ApiError::UserDeactivated))));
    platform.behave();
    send("e").await.expect("sent");
    platform.flood(None, 60);
    assert!(matches!(
        send("f").await,
        Err(RequestError::RetryAfter(wait)) if wait.seconds() == 60
    ));
    assert_eq!(platform.violations(), Vec::<String>::new());
}

#[tokio::test]
async fn who_sends_too_fast_must_wait() {
    let platform = FakePlatform::start().await;
    let bot = bot(&platform);
    let ana = platform.add_user("Ana", None);
    platform.open_private(ana);
    let club = platform.create_group("Club", ana);
    platform.add_bot_to_group(club, ana);
    platform.set_rates(Some(Rates {
        overall: 4,
        overall_within: Duration::from_millis(500),
        per_group: 2,
        per_group_within: Duration::from_mins(1),
    }));
    let send = |chat: i64| bot.send_message(ChatId(chat), "x");
    for _ in 0..2 {
        send(club).await.expect("sent");
    }
    assert!(matches!(
        send(club).await,
        Err(RequestError::RetryAfter(wait)) if wait.seconds() == 60
    ));
    for _ in 0..2 {
        send(ana).await.expect("sent");
    }
    assert!(matches!(
        send(ana).await,
        Err(RequestError::RetryAfter(wait)) if wait.seconds() == 1
    ));
    tokio::time::sleep(Duration::from_millis(600)).await;
    send(ana).await.expect("sent");
}

#[tokio::test]
async fn privacy_mode_hides_what_is_not_for_the_bot() {
    let platform = FakePlatform::start().await;
    let bot = bot(&platform);
    let ana = platform.add_user("Ana", None);
    let club = platform.create_supergroup("Club", ana);
    platform.add_bot_to_group(club, ana);
    platform.set_privacy_mode(true);
    let sent = bot.send_message(ChatId(club), "Hello").await.expect("sent");
    let told = |text: &str, reply_to: Option<i32>| {
        let said = platform.user_says_in(club, ana, text, reply_to, None);
        said.update_id.is_some()
    };
    assert!(!told("good morning", None));
    assert!(!told("/when tomato", None));
    assert!(told("/when@garden_test_bot tomato", None));
    assert!(told("thanks", Some(sent.id.0)));
    platform.promote(club, platform.bot_id());
    assert!(told("good morning", None));
}

#[tokio::test]
async fn the_end_of_the_platform_ends_every_connection() {
    let platform = FakePlatform::start().await;
    let poll = tokio::spawn({
        let poll = bot(&platform).get_updates().timeout(4);
        async move { poll.await }
    });
    platform.wait_for("a poll", |state| (!state.calls().is_empty()).then_some(())).await;
    let started = Instant::now();
    drop(platform);
    let ended = poll.await.expect("ended");
    assert!(matches!(ended, Err(RequestError::Network(_))), "{ended:?}");
    assert!(started.elapsed() < Duration::from_secs(1));
}

//! Updates as the platform writes them, and what the bot makes of them.

use serde_json::{Value, json};

use super::*;

const GROUP: i64 = -1_002_000_000_001;
const ANNA: i64 = 5_100_000_001;

fn me() -> Myself {
    Myself { id: 77, username: "sowbell_bot".to_owned() }
}

fn read(update: Value) -> Incoming {
    let update = serde_json::from_value(update).expect("a readable update");
    incoming(update, &me()).expect("a kind that was asked for")
}

fn anna() -> Value {
    json!({ "id": ANNA, "is_bot": false, "first_name": "Anna", "language_code": "de" })
}

fn myself() -> Value {
    json!({ "id": 77, "is_bot": true, "first_name": "Sowbell", "username": "sowbell_bot" })
}

fn group() -> Value {
    json!({ "id": GROUP, "type": "supergroup", "title": "Club" })
}

/// A message of Anna's in the group, with these fields over the usual ones.
fn in_group(fields: Value) -> Value {
    message(json!({ "chat": group() }), fields)
}

fn in_private(fields: Value) -> Value {
    message(json!({ "chat": { "id": ANNA, "type": "private", "first_name": "Anna" } }), fields)
}

fn message(chat: Value, fields: Value) -> Value {
    let mut message = json!({ "message_id": 5, "date": 1_700_000_000, "from": anna() });
    for from in [chat, fields] {
        for (name, value) in from.as_object().unwrap() {
            message[name] = value.clone();
        }
    }
    json!({ "update_id": 1, "message": message })
}

fn text(text: &str, addressed: bool) -> What {
    What::Text { text: text.to_owned(), message: 5, addressed, replies_to: None }
}

#[test]
fn a_private_text_is_addressed() {
    let read = read(in_private(json!({ "text": "can I sow tomatoes?" })));
    assert_eq!(read.what, text("can I sow tomatoes?", true));
    assert_eq!(read.chat.kind, ChatKind::Private);
    assert_eq!((read.chat.id, read.chat.title.as_str()), (ANNA, ""));
    let expected = Person {
        user: ANNA,
        name: "Anna".to_owned(),
        is_bot: false,
        anonymous: false,
        language: Some("de".to_owned()),
        role: Role::Unknown,
    };
    assert_eq!(read.from, expected);
}

#[test]
fn in_a_group_only_what_speaks_to_the_bot_is_addressed() {
    let command = |length: usize| json!([{ "type": "bot_command", "offset": 0, "length": length }]);
    let said = |said: &str, entities: Value| {
        read(in_group(json!({ "text": said, "entities": entities }))).what
    };
    assert_eq!(said("lovely weather", json!([])), text("lovely weather", false));
    assert_eq!(said("/now", command(4)), text("/now", true));
    assert_eq!(said("/now@sowbell_bot pea", command(16)), text("/now pea", true));
    assert_eq!(said("/now@other_bot", command(14)), text("/now@other_bot", false));
    let mention = json!([{ "type": "mention", "offset": 0, "length": 12 }]);
    assert_eq!(said("@sowbell_bot peas?", mention), text("peas?", true));
}

#[test]
fn a_reply_to_the_bot_is_addressed_and_one_to_somebody_else_is_not() {
    let reply_to = |from: Value| {
        let replied = json!({ "message_id": 4, "date": 1, "chat": group(), "from": from });
        read(in_group(json!({ "text": "15 May", "reply_to_message": replied }))).what
    };
    let to = |what: What| match what {
        What::Text { addressed, replies_to, .. } => (addressed, replies_to.map(|to| to.user)),
        other => panic!("{other:?} is no text"),
    };
    assert_eq!(to(reply_to(myself())), (true, Some(me().id)));
    assert_eq!(to(reply_to(anna())), (false, Some(ANNA)));
}

#[test]
fn in_a_topic_what_replies_to_nothing_replies_to_nobody() {
    let replies_to = |to: i32| {
        let replied = json!({ "message_id": to, "date": 1, "chat": group(), "from": anna() });
        let said = json!({
            "text": "/club helper add", "message_thread_id": 3, "is_topic_message": true,
            "entities": [{ "type": "bot_command", "offset": 0, "length": 5 }],
            "reply_to_message": replied,
        });
        match read(in_group(said)).what {
            What::Text { replies_to, .. } => replies_to.map(|to| to.user),
            other => panic!("{other:?} is no text"),
        }
    };
    assert_eq!(replies_to(3), None, "the topic's beginning");
    assert_eq!(replies_to(4), Some(ANNA));
}

#[test]
fn another_bots_command_is_not_ours_even_in_reply_to_us() {
    let update = in_group(json!({
        "text": "/now@other_bot",
        "entities": [{ "type": "bot_command", "offset": 0, "length": 14 }],
        "reply_to_message": { "message_id": 4, "from": myself() },
    }));
    let What::Text { text, addressed, .. } = read(update).what else { panic!("a text") };
    assert_eq!((text.as_str(), addressed), ("/now@other_bot", false));
}

#[test]
fn a_caption_counts_as_text() {
    let update = in_group(json!({
        "photo": [{ "file_id": "f", "file_unique_id": "u", "width": 1, "height": 1 }],
        "caption": "@sowbell_bot too leggy?",
        "caption_entities": [{ "type": "mention", "offset": 0, "length": 12 }],
    }));
    assert_eq!(read(update).what, text("too leggy?", true));
}

#[test]
fn a_text_with_an_entity_of_an_unknown_kind_keeps_its_words() {
    let update = in_private(json!({
        "text": "last frost 15 May",
        "entities": [{
            "type": "date_time", "offset": 11, "length": 6,
            "unix_time": 1_778_800_000, "date_time_format": "D",
        }],
        "something_new": { "deep": [1, 2, 3] },
    }));
    assert_eq!(read(update).what, text("last frost 15 May", true));
}

#[test]
fn a_message_without_words_is_nothing() {
    let update = in_private(json!({ "sticker": { "file_id": "x" } }));
    assert_eq!(read(update).what, What::Nothing);
}

#[test]
fn a_thread_is_told_only_for_topic_messages() {
    let thread = |fields: Value| read(in_group(fields)).chat.thread;
    let topic = json!({ "text": "x", "message_thread_id": 9, "is_topic_message": true });
    assert_eq!(thread(topic), Some(9));
    assert_eq!(thread(json!({ "text": "x", "message_thread_id": 9 })), None);
}

#[test]
fn an_anonymous_administrator_is_a_person_and_an_administrator() {
    let account = json!({
        "id": 1_087_968_824, "is_bot": true, "first_name": "Group", "username": "GroupAnonymousBot"
    });
    let update = in_group(json!({ "text": "/club", "from": account, "sender_chat": group(),
        "entities": [{ "type": "bot_command", "offset": 0, "length": 5 }] }));
    let read = read(update);
    assert_eq!(read.what, text("/club", true));
    let from = read.from;
    assert_eq!((from.anonymous, from.is_bot, from.role), (true, false, Role::Administrator));
}

#[test]
fn that_account_in_another_chats_name_is_only_a_bot() {
    let account = json!({ "id": 1_087_968_824, "is_bot": true, "first_name": "Group" });
    let other = json!({ "id": -100_999, "type": "supergroup", "title": "Other" });
    let read = read(in_group(json!({ "text": "/club", "from": account, "sender_chat": other })));
    assert_eq!(read.what, What::Nothing);
    assert_eq!((read.from.anonymous, read.from.role), (false, Role::Unknown));
}

#[test]
fn bots_and_channels_are_nothing() {
    let bot = json!({ "id": 9, "is_bot": true, "first_name": "Bot" });
    assert_eq!(read(in_group(json!({ "text": "/now", "from": bot }))).what, What::Nothing);
    let channel = json!({ "id": -1_005, "type": "channel", "title": "News" });
    let copied = json!({ "text": "news", "sender_chat": channel,
        "from": { "id": 777_000, "is_bot": false, "first_name": "Telegram" } });
    assert_eq!(read(in_group(copied)).what, What::Nothing);
    let post = json!({ "text": "post", "chat": channel, "from": null });
    assert_eq!(read(in_group(post)).what, What::Nothing);
    let chosen = json!({ "text": "Go ahead: sow peas.", "via_bot": myself() });
    assert_eq!(read(in_private(chosen)).what, What::Nothing, "the bot's own words");
}

#[test]
fn what_is_typed_inline_is_its_typers_and_of_no_chat() {
    let query = |from: Value| {
        let body = json!({ "id": "i1", "from": from, "query": "cucumber", "offset": "",
            "chat_type": "supergroup" });
        read(json!({ "update_id": 1, "inline_query": body }))
    };
    let typed = query(anna());
    let what = What::Inline { query: "i1".to_owned(), text: "cucumber".to_owned() };
    assert_eq!((typed.from.user, typed.what), (ANNA, what));
    assert_eq!((typed.chat.kind, typed.chat.id), (ChatKind::Private, ANNA));
    assert_eq!(query(myself()).what, What::Nothing);
}

#[test]
fn a_group_that_moves_tells_the_same_in_both_chats() {
    let old = json!({ "id": -4_000_000_001_i64, "type": "group", "title": "Club" });
    let told_old = read(in_group(json!({ "chat": old, "migrate_to_chat_id": GROUP })));
    let told_new = read(in_group(json!({ "migrate_from_chat_id": -4_000_000_001_i64 })));
    for told in [told_old, told_new] {
        assert_eq!(told.chat.id, -4_000_000_001);
        assert_eq!(told.what, What::MovedTo { chat: GROUP });
    }
}

#[test]
fn who_left_is_named_not_who_removed_them() {
    let ben = json!({ "id": 6, "is_bot": false, "first_name": "Ben" });
    let told = read(in_group(json!({ "left_chat_member": ben })));
    assert_eq!((told.what, told.from.user), (What::LeftGroup, 6));
    let told = read(in_group(json!({ "left_chat_member": myself() })));
    assert_eq!(told.what, What::RemovedFromGroup);
    let bot = json!({ "id": 9, "is_bot": true, "first_name": "Bot" });
    assert_eq!(read(in_group(json!({ "left_chat_member": bot }))).what, What::Nothing);
}

fn member_update(kind: &str, chat: &Value, user: &Value, old: &Value, new: &Value) -> What {
    let with = |status: &Value| {
        let mut member = status.clone();
        member["user"] = user.clone();
        member
    };
    let change = json!({
        "chat": chat, "from": anna(), "date": 1,
        "old_chat_member": with(old), "new_chat_member": with(new),
    });
    read(json!({ "update_id": 1, kind: change })).what
}

#[test]
fn the_bots_own_membership_tells_of_groups_and_blocks() {
    let status = |status: &str| json!({ "status": status });
    let (member, admin) = (status("member"), status("administrator"));
    let (left, kicked) = (status("left"), status("kicked"));
    let muted = json!({ "status": "restricted", "is_member": true });
    let out = json!({ "status": "restricted", "is_member": false });
    let group = group();
    let private = json!({ "id": ANNA, "type": "private", "first_name": "Anna" });
    let channel = json!({ "id": -5, "type": "channel", "title": "News" });
    let cases = [
        (&group, &left, &member, What::AddedToGroup),
        (&group, &kicked, &admin, What::AddedToGroup),
        (&group, &left, &muted, What::AddedToGroup),
        (&group, &member, &kicked, What::RemovedFromGroup),
        (&group, &admin, &left, What::RemovedFromGroup),
        (&group, &muted, &out, What::RemovedFromGroup),
        (&group, &member, &admin, What::Nothing),
        (&group, &left, &kicked, What::Nothing),
        (&private, &member, &kicked, What::Blocked),
        (&private, &kicked, &member, What::Unblocked),
        (&channel, &left, &admin, What::Nothing),
    ];
    for (chat, old, new, expected) in cases {
        let told = member_update("my_chat_member", chat, &myself(), old, new);
        assert_eq!(told, expected, "{old} to {new} in {chat}");
    }
}

#[test]
fn a_members_leaving_is_told_by_their_membership_too() {
    let (member, left) = (json!({ "status": "member" }), json!({ "status": "left" }));
    let told = |user: &Value, old: &Value, new: &Value| {
        member_update("chat_member", &group(), user, old, new)
    };
    assert_eq!(told(&anna(), &member, &left), What::LeftGroup);
    assert_eq!(told(&anna(), &left, &member), What::Nothing);
    assert_eq!(told(&myself(), &member, &left), What::Nothing, "my_chat_member tells this");
}

fn press(message: Option<Value>) -> Value {
    let mut query = json!({
        "id": "q1", "from": anna(), "chat_instance": "c", "data": "s",
    });
    if let Some(message) = message {
        query["message"] = message;
    }
    json!({ "update_id": 1, "callback_query": query })
}

#[test]
fn a_press_tells_its_message_and_place() {
    let message = json!({ "message_id": 8, "date": 1, "chat": group(), "from": myself(),
        "message_thread_id": 3, "is_topic_message": true, "text": "?",
        "reply_markup": { "inline_keyboard": [
            [{ "text": "Yes", "callback_data": "s" }, { "text": "Page", "url": "https://x" }],
        ] } });
    let read = read(press(Some(message)));
    let data = "s".to_owned();
    let buttons = vec![vec![("Yes".to_owned(), "s".to_owned())]];
    let shown = Some(Shown { text: "?".to_owned(), buttons, asked_by: None });
    assert_eq!(read.what, What::Pressed { press: "q1".to_owned(), message: Some(8), data, shown });
    assert_eq!((read.chat.id, read.chat.thread, read.from.user), (GROUP, Some(3), ANNA));
}

#[test]
fn a_press_tells_who_asked_for_its_message() {
    let asked_by = |replied: Value| {
        let message = json!({ "message_id": 8, "date": 1, "chat": group(), "from": myself(),
            "message_thread_id": 3, "is_topic_message": true, "text": "?",
            "reply_to_message": replied });
        let What::Pressed { shown, .. } = read(press(Some(message))).what else {
            panic!("a press")
        };
        shown.expect("what it says").asked_by
    };
    assert_eq!(asked_by(json!({ "message_id": 7, "from": anna() })), Some(ANNA));
    assert_eq!(asked_by(json!({ "message_id": 7, "from": myself() })), None);
    // Every message of a topic that answers none is told as answering the topic's beginning.
    assert_eq!(asked_by(json!({ "message_id": 3, "from": anna() })), None);
}

#[test]
fn a_press_under_a_message_that_is_gone_still_tells_its_chat() {
    let read = read(press(Some(json!({ "message_id": 8, "date": 0, "chat": group() }))));
    assert!(matches!(read.what, What::Pressed { message: None, .. }));
    assert_eq!(read.chat.id, GROUP);
}

#[test]
fn a_press_without_a_message_belongs_to_the_persons_own_chat() {
    let read = read(press(None));
    assert!(matches!(read.what, What::Pressed { message: None, .. }));
    assert_eq!((read.chat.id, read.chat.kind), (ANNA, ChatKind::Private));
}

#[test]
fn edited_messages_and_unknown_kinds_tell_nothing() {
    for kind in ["edited_message", "channel_post", "poll", "a_kind_of_next_year"] {
        let update = serde_json::from_value(json!({ "update_id": 1, kind: {} })).unwrap();
        assert_eq!(incoming(update, &me()), None, "{kind}");
    }
}

//! From an update to what happened.

use super::Myself;
use super::addressed::{Addressed, Heard, hear};
use super::names::plain;
use super::update::{
    CallbackQuery, Chat, InlineQuery, MarkupButton, MemberChange, Message, RepliedTo, Update, User,
};
use crate::messages::{self, ChatKind, Incoming, Person, Role, Shown, What};

/// The account in whose name every administrator writes who stays anonymous (Bot API, `Message`,
/// `sender_chat`).
const ANONYMOUS_ADMINISTRATOR: i64 = 1_087_968_824;

/// The longest language tag that is passed on, in bytes (RFC 5646, section 4.4.1, asks for 35).
const LONGEST_TAG: usize = 35;

/// What the update tells, or `None` when it is of a kind that the bot did not ask for.
pub(super) fn incoming(update: Update, me: &Myself) -> Option<Incoming> {
    if let Some(message) = update.message {
        return Some(message_said(message, me));
    }
    if let Some(query) = update.callback_query {
        return Some(pressed(query));
    }
    if let Some(query) = update.inline_query {
        return Some(typed_inline(query));
    }
    if let Some(change) = update.my_chat_member {
        return Some(bot_changed(&change));
    }
    update.chat_member.map(|change| member_changed(&change, me))
}

fn message_said(message: Message, me: &Myself) -> Incoming {
    let anonymous = is_anonymous(&message);
    let mut from = message.from.as_ref().map_or_else(nobody, |user| person(user, anonymous));
    let thread = message.message_thread_id.filter(|_| message.is_topic_message);
    let mut place = chat(&message.chat, thread);
    let what = if message.chat.kind == "channel" {
        What::Nothing
    } else if let Some(to) = message.migrate_to_chat_id {
        What::MovedTo { chat: to }
    } else if let Some(old) = message.migrate_from_chat_id {
        // The same news as the other service message, told in the new chat.
        place.id = old;
        What::MovedTo { chat: message.chat.id }
    } else if let Some(left) = &message.left_chat_member {
        if left.id == me.id {
            What::RemovedFromGroup
        } else {
            from = person(left, false);
            gone(left)
        }
    } else if from.is_bot
        || message.via_bot.is_some()
        || (message.sender_chat.is_some() && !anonymous)
    {
        // A channel's post that the platform copied into its group, a member who writes as one, or
        // a bot's words that somebody chose, this bot's own among them.
        What::Nothing
    } else {
        text_said(message, me, place.kind)
    };
    Incoming { chat: place, from, what }
}

fn text_said(message: Message, me: &Myself, kind: ChatKind) -> What {
    let (text, entities) = match (message.text, message.caption) {
        (Some(text), _) => (text, message.entities),
        (None, Some(caption)) => (caption, message.caption_entities),
        (None, None) => return What::Nothing,
    };
    let Heard { text, addressed } = hear(&text, &entities, me);
    // In a topic every message that replies to none is told as a reply to the topic's beginning.
    let in_topic = message.message_thread_id.filter(|_| message.is_topic_message);
    let replied = message.reply_to_message;
    let begins_topic = replied
        .as_ref()
        .is_some_and(|replied| replied.message_id.is_some() && replied.message_id == in_topic);
    let replies_to = replied.as_ref().filter(|_| !begins_topic).and_then(written_by);
    let replies_to_me =
        replied.and_then(|replied| replied.from).is_some_and(|user| user.id == me.id);
    let addressed = match addressed {
        _ if kind == ChatKind::Private => true,
        Addressed::Bot => true,
        Addressed::OtherBot => false,
        Addressed::Nobody => replies_to_me,
    };
    What::Text { text, message: message.message_id, addressed, replies_to }
}

/// Who wrote the message that was replied to; a channel or a whole group is nobody.
fn written_by(replied: &RepliedTo) -> Option<Box<Person>> {
    let user = replied.from.as_ref().filter(|_| replied.sender_chat.is_none())?;
    Some(Box::new(person(user, false)))
}

fn pressed(query: CallbackQuery) -> Incoming {
    let from = person(&query.from, false);
    let place = query.message.as_ref().map_or_else(
        // Without its message a press can only be answered; the person's own chat stands for the
        // one that is not told.
        || messages::Chat {
            id: query.from.id,
            kind: ChatKind::Private,
            title: String::new(),
            thread: None,
        },
        |message| {
            chat(&message.chat, message.message_thread_id.filter(|_| message.is_topic_message))
        },
    );
    // A message that the platform no longer tells was deleted or is too old to be changed.
    let message = query.message.filter(|message| message.date != 0);
    let what = match query.data {
        Some(data) if !from.is_bot => {
            let id = message.as_ref().map(|message| message.message_id);
            let shown = message.and_then(shown);
            What::Pressed { press: query.id, message: id, data, shown }
        }
        _ => What::Nothing,
    };
    Incoming { chat: place, from, what }
}

/// The chat in which somebody types is not told; their own stands for it.
fn typed_inline(query: InlineQuery) -> Incoming {
    let from = person(&query.from, false);
    let place = messages::Chat {
        id: query.from.id,
        kind: ChatKind::Private,
        title: String::new(),
        thread: None,
    };
    let what = if from.is_bot {
        What::Nothing
    } else {
        What::Inline { query: query.id, text: query.query }
    };
    Incoming { chat: place, from, what }
}

/// What a message of the bot's own says now, with the buttons that carry data.
fn shown(message: Message) -> Option<Shown> {
    let rows = message.reply_markup.map(|markup| markup.inline_keyboard).unwrap_or_default();
    let with_data = |button: MarkupButton| Some((button.text, button.callback_data?));
    let buttons = rows.into_iter().map(|row| row.into_iter().filter_map(with_data).collect());
    // What answers nothing stands under the beginning of its topic, as if it answered that.
    let answered = message.reply_to_message.filter(|replied| {
        replied.message_id.is_none_or(|id| Some(id) != message.message_thread_id)
    });
    let asked_by = answered.and_then(|replied| replied.from).filter(|user| !user.is_bot);
    Some(Shown {
        text: message.text?,
        buttons: buttons.collect(),
        asked_by: asked_by.map(|user| user.id),
    })
}

fn bot_changed(change: &MemberChange) -> Incoming {
    let place = chat(&change.chat, None);
    let (was, is) = (change.old_chat_member.is_present(), change.new_chat_member.is_present());
    let what = match (change.chat.kind.as_str(), was, is) {
        ("private", true, false) => What::Blocked,
        ("private", false, true) => What::Unblocked,
        ("group" | "supergroup", false, true) => What::AddedToGroup,
        ("group" | "supergroup", true, false) => What::RemovedFromGroup,
        _ => What::Nothing,
    };
    Incoming { chat: place, from: person(&change.from, false), what }
}

/// Somebody else's membership changed; told only where the bot is an administrator.
fn member_changed(change: &MemberChange, me: &Myself) -> Incoming {
    let whose = &change.new_chat_member.user;
    let left = change.old_chat_member.is_present() && !change.new_chat_member.is_present();
    let group = matches!(change.chat.kind.as_str(), "group" | "supergroup");
    let what = if left && group && whose.id != me.id { gone(whose) } else { What::Nothing };
    Incoming { chat: chat(&change.chat, None), from: person(whose, false), what }
}

fn gone(who: &User) -> What {
    if who.is_bot { What::Nothing } else { What::LeftGroup }
}

fn is_anonymous(message: &Message) -> bool {
    let in_the_groups_name = message.sender_chat.as_ref().map(|chat| chat.id);
    message.from.as_ref().is_some_and(|user| user.id == ANONYMOUS_ADMINISTRATOR)
        && in_the_groups_name == Some(message.chat.id)
}

fn chat(chat: &Chat, thread: Option<i32>) -> messages::Chat {
    let kind = if chat.kind == "private" { ChatKind::Private } else { ChatKind::Group };
    let title = match kind {
        ChatKind::Private => String::new(),
        ChatKind::Group => chat.title.as_deref().map(plain).unwrap_or_default(),
    };
    messages::Chat { id: chat.id, kind, title, thread }
}

/// The platform marks the account of anonymous administrators as a bot's; a person writes.
fn person(user: &User, anonymous: bool) -> Person {
    let language = user.language_code.clone().filter(|tag| tag.len() <= LONGEST_TAG);
    Person {
        user: user.id,
        name: plain(&user.first_name),
        is_bot: user.is_bot && !anonymous,
        anonymous,
        language,
        role: if anonymous { Role::Administrator } else { Role::Unknown },
    }
}

pub(super) fn nobody() -> Person {
    Person {
        user: 0,
        name: String::new(),
        is_bot: false,
        anonymous: false,
        language: None,
        role: Role::Unknown,
    }
}

#[cfg(test)]
#[path = "incoming_tests.rs"]
mod tests;

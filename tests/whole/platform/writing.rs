//! What people write and press, and what the bot is told of it.

use std::time::Instant;

use serde_json::{Value, json};

use super::callbacks::Query;
use super::chats::Kind;
use super::entities::entities_of;
use super::keyboard::Button;
use super::message::{Message, Picture};
use super::state::State;
use super::{ANONYMOUS_ADMIN, FakePlatform};

/// What became of something that somebody wrote.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Said {
    pub message_id: i32,
    /// The update that tells the bot; none when the bot is not told, because
    /// it is not there, reads only what is for it, or did not ask for the kind.
    pub update_id: Option<i64>,
}

/// What became of a pressed button.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pressed {
    pub query_id: String,
    /// None when the bot did not ask to be told of pressed buttons.
    pub update_id: Option<i64>,
}

/// Which of a message's buttons is pressed.
#[derive(Clone, Debug)]
pub enum WhichButton {
    /// The one with this label, or else the first whose label contains it.
    Label(String),
    /// Counted from 0 in reading order.
    Index(usize),
}

impl From<&str> for WhichButton {
    fn from(label: &str) -> Self {
        Self::Label(label.to_owned())
    }
}

impl From<usize> for WhichButton {
    fn from(index: usize) -> Self {
        Self::Index(index)
    }
}

/// A single white pixel.
const PIXEL: &[u8] = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\0\x01\0\0\0\x01\x08\0\0\0\0:~\x9bU\
    \0\0\0\nIDATx\x9cc\xf8\x0f\0\x01\x01\x01\0\x1b\xb6\xeeV\0\0\0\0IEND\xaeB`\x82";

impl FakePlatform {
    /// Somebody writes to the bot in private.
    pub fn user_says(&self, user: i64, text: &str) -> Said {
        self.user_says_in(user, user, text, None, None)
    }

    /// Somebody writes in a chat: perhaps as an answer, perhaps in a forum's topic.
    pub fn user_says_in(
        &self,
        chat: i64,
        user: i64,
        text: &str,
        reply_to: Option<i32>,
        thread: Option<i32>,
    ) -> Said {
        self.change(|state| {
            let mut message = state.written(chat, user, text);
            message.thread = thread;
            message.reply_to = reply_to;
            state.say(message)
        })
    }

    /// An administrator who stays anonymous writes in a group.
    pub fn anonymous_admin_says(&self, group: i64, text: &str, reply_to: Option<i32>) -> Said {
        self.change(|state| {
            let mut message = state.blank(group, ANONYMOUS_ADMIN);
            message.sender_chat = Some(group);
            text.clone_into(&mut message.text);
            message.entities = entities_of(text);
            message.reply_to = reply_to;
            state.say(message)
        })
    }

    /// Somebody sends a picture, with words under it.
    pub fn photo_with_caption(&self, chat: i64, user: i64, caption: &str) -> Said {
        self.change(|state| {
            let mut message = state.written(chat, user, caption);
            message.picture = Some(Picture {
                file_id: format!("photo-{}", state.fresh_number()),
                file_name: String::new(),
                bytes: PIXEL.to_vec(),
                width: 1,
                height: 1,
            });
            state.say(message)
        })
    }

    /// Somebody changes what they wrote.
    pub fn edited_message(&self, chat: i64, message_id: i32, text: &str) -> Said {
        self.change(|state| {
            let Some(message) = state.chat_mut(chat).messages.get_mut(&message_id) else {
                panic!("chat {chat} has no message {message_id} to edit");
            };
            message.replace(|message| {
                text.clone_into(&mut message.text);
                message.entities = entities_of(text);
            });
            let message = message.clone();
            state.tell("edited_message", &message)
        })
    }

    /// Somebody presses a button under a message.
    pub fn press(
        &self,
        user: i64,
        chat: i64,
        message_id: i32,
        button: impl Into<WhichButton>,
    ) -> Pressed {
        let button = button.into();
        self.change(|state| {
            let Some(message) = state.message(chat, message_id) else {
                panic!("chat {chat} has no message {message_id}");
            };
            let Some(found) = find(message, &button) else {
                let labels = message.labels();
                panic!("no button {button:?} among {labels:?} under {:?}", message.text);
            };
            let Some(data) = found.callback_data.clone() else {
                panic!("the button {:?} tells the bot nothing when pressed", found.text);
            };
            let shown = state.message_json(message);
            state.press(user, chat, &shown, &data)
        })
    }

    /// Somebody presses a button that their app still shows, though the
    /// message has others by now.
    pub fn press_data(&self, user: i64, chat: i64, message_id: i32, data: &str) -> Pressed {
        self.change(|state| {
            let Some(message) = state.message(chat, message_id) else {
                panic!("chat {chat} has no message {message_id}");
            };
            let shown = state.message_json(message);
            state.press(user, chat, &shown, data)
        })
    }

    /// As [`Self::press_data`], on a message so old that the platform no
    /// longer tells what it said.
    pub fn press_on_old_message(
        &self,
        user: i64,
        chat: i64,
        message_id: i32,
        data: &str,
    ) -> Pressed {
        self.change(|state| {
            let chat_json = state.chat_json(state.chat(chat));
            let shown = json!({ "chat": chat_json, "message_id": message_id, "date": 0 });
            state.press(user, chat, &shown, data)
        })
    }

    /// Every pressed button is too old to answer, as after half a minute.
    pub fn expire_callbacks(&self) {
        self.change(|state| {
            for query in state.queries.values_mut() {
                query.expired = true;
            }
        });
    }
}

fn find<'a>(message: &'a Message, which: &WhichButton) -> Option<&'a Button> {
    let mut buttons = message.buttons.iter().flatten();
    match which {
        WhichButton::Index(index) => buttons.nth(*index),
        WhichButton::Label(label) => {
            buttons.find(|button| button.text == *label).or_else(|| message.button(label))
        }
    }
}

impl State {
    /// Words of somebody who may write there.
    fn written(&mut self, chat: i64, user: i64, text: &str) -> Message {
        if chat == user {
            self.open_private(user);
        }
        let there = self.chat(chat);
        let name = &self.user(user).first_name;
        assert!(!there.blocked, "{name} has blocked the bot: `unblock` first");
        assert!(
            there.kind == Kind::Private || there.status(user).is_present(),
            "{name} is not in {:?}: `join` first",
            there.title
        );
        let mut message = self.blank(chat, user);
        text.clone_into(&mut message.text);
        message.entities = entities_of(text);
        message
    }

    fn say(&mut self, mut message: Message) -> Said {
        let chat = self.chat(message.chat);
        assert!(chat.migrated_to.is_none(), "the group moved: write in the new one");
        let answered = message.reply_to.map(|id| {
            chat.messages
                .get(&id)
                .unwrap_or_else(|| panic!("chat {} has no message {id} to answer", message.chat))
        });
        if chat.is_forum() {
            message.thread = message.thread.or(answered.and_then(|answered| answered.thread));
            message.is_topic_message = message.thread.is_some();
            if let Some(topic) = message.thread {
                assert!(chat.topics.contains(&topic), "no topic {topic}: `create_topic` first");
            }
        } else {
            assert!(message.thread.is_none(), "only a forum has topics");
            // Here a thread is only the chain of answers; it is no address.
            message.thread = answered
                .filter(|_| chat.has_threads())
                .map(|answered| answered.thread.unwrap_or(answered.message_id));
        }
        let message = self.log(message);
        self.tell("message", &message)
    }

    /// A service message: the platform says what happened.
    pub(crate) fn serve(&mut self, chat: i64, by: i64, field: &str, value: Value) -> Said {
        let mut message = self.blank(chat, by);
        message.service = Some((field.to_owned(), value));
        let message = self.log(message);
        self.tell("message", &message)
    }

    fn tell(&mut self, kind: &str, message: &Message) -> Said {
        let update_id = if self.shown_to_bot(message) {
            let body = self.message_json(message);
            self.updates.push(kind, body)
        } else {
            None
        };
        Said { message_id: message.message_id, update_id }
    }

    fn shown_to_bot(&self, message: &Message) -> bool {
        let chat = self.chat(message.chat);
        if chat.kind == Kind::Private {
            return true;
        }
        let status = chat.status(self.bot.id);
        if !status.is_present() {
            return false;
        }
        if !self.privacy || status.is_admin() || message.service.is_some() {
            return true;
        }
        let own = |message: &Message| message.from == self.bot.id;
        let answers_bot = message.reply_to.and_then(|id| chat.messages.get(&id)).is_some_and(own);
        let name = self.bot.username.as_deref().unwrap_or_default();
        let addressed = message.text.starts_with('/')
            && message
                .text
                .split_whitespace()
                .next()
                .and_then(|command| command.split_once('@'))
                .is_some_and(|(_, to)| to.eq_ignore_ascii_case(name));
        answers_bot || addressed
    }

    fn press(&mut self, user: i64, chat: i64, shown: &Value, data: &str) -> Pressed {
        let there = self.chat(chat);
        let name = &self.user(user).first_name;
        assert!(
            there.kind == Kind::Private || there.status(user).is_present(),
            "{name} is not in {:?}, and cannot press there",
            there.title
        );
        let from = self.user(user).json();
        let query_id = format!("{}", 430_000_000_000_000 + self.fresh_number());
        let query = Query { user, chat, at: Instant::now(), expired: false };
        self.queries.insert(query_id.clone(), query);
        let body = json!({
            "id": query_id,
            "from": from,
            "message": shown,
            "chat_instance": format!("instance{chat}"),
            "data": data,
        });
        let update_id = self.updates.push("callback_query", body);
        Pressed { query_id, update_id }
    }
}

//! Messages, as people see them and as the bot is told of them.

use std::time::Instant;

use serde_json::{Value, json};

use super::keyboard::Button;
use super::state::{State, set};

/// A message in a chat, of the bot or of anybody.
#[derive(Clone, Debug)]
#[expect(clippy::struct_field_names, reason = "the names are the platform's")]
pub struct Message {
    pub chat: i64,
    /// Counted per chat: only chat and id together name a message.
    pub message_id: i32,
    /// The user who wrote it.
    pub from: i64,
    /// Written in the name of this chat, by an anonymous administrator.
    pub sender_chat: Option<i64>,
    /// What is read: the text, or a picture's caption, without markup.
    pub text: String,
    /// What is bold, a command, a mention, ... in the text.
    pub entities: Vec<Value>,
    /// The buttons under it, row by row.
    pub buttons: Vec<Vec<Button>>,
    /// The whole `reply_markup`, whatever its kind.
    pub markup: Option<Value>,
    pub picture: Option<Picture>,
    pub file: Option<SentFile>,
    /// The message that it answers.
    pub reply_to: Option<i32>,
    /// The topic, or in a plain supergroup the thread of replies.
    pub thread: Option<i32>,
    /// Whether the thread is a forum's topic.
    pub is_topic_message: bool,
    /// A service message: its field and what the field says.
    pub service: Option<(String, Value)>,
    /// Sent without a sound.
    pub silent: bool,
    /// The bot's reaction to it.
    pub reaction: Option<String>,
    /// When it came.
    pub sent_at: Instant,
    /// When it was last edited.
    pub edited_at: Option<Instant>,
    /// What it was before each edit, the oldest first.
    pub versions: Vec<Version>,
    pub(crate) date: i64,
}

/// What a message was before an edit.
#[derive(Clone, Debug)]
pub struct Version {
    pub text: String,
    pub buttons: Vec<Vec<Button>>,
    /// When this version came.
    pub since: Instant,
}

/// A picture that came with a message.
#[derive(Clone, Debug)]
pub struct Picture {
    pub file_id: String,
    pub file_name: String,
    pub bytes: Vec<u8>,
    pub width: u32,
    pub height: u32,
}

/// A file that came with a message.
#[derive(Clone, Debug)]
pub struct SentFile {
    pub name: String,
    pub bytes: Vec<u8>,
}

impl Message {
    /// The buttons in reading order.
    pub fn all_buttons(&self) -> Vec<&Button> {
        self.buttons.iter().flatten().collect()
    }

    /// The labels of the buttons in reading order.
    pub fn labels(&self) -> Vec<&str> {
        self.buttons.iter().flatten().map(|button| button.text.as_str()).collect()
    }

    /// The first button whose label contains this.
    pub fn button(&self, label: &str) -> Option<&Button> {
        self.buttons.iter().flatten().find(|button| button.text.contains(label))
    }

    /// Puts a new text and keyboard in place of what is there.
    pub(crate) fn replace(&mut self, new: impl FnOnce(&mut Self)) {
        self.versions.push(Version {
            text: self.text.clone(),
            buttons: self.buttons.clone(),
            since: self.edited_at.unwrap_or(self.sent_at),
        });
        new(self);
        self.edited_at = Some(Instant::now());
    }
}

impl State {
    /// An empty message, not yet in its chat's log.
    pub(crate) fn blank(&self, chat: i64, from: i64) -> Message {
        Message {
            chat,
            message_id: 0,
            from,
            sender_chat: None,
            text: String::new(),
            entities: Vec::new(),
            buttons: Vec::new(),
            markup: None,
            picture: None,
            file: None,
            reply_to: None,
            thread: None,
            is_topic_message: false,
            service: None,
            silent: false,
            reaction: None,
            sent_at: Instant::now(),
            edited_at: None,
            versions: Vec::new(),
            date: self.date(),
        }
    }

    /// Puts a message into its chat's log under the chat's next id.
    pub(crate) fn log(&mut self, mut message: Message) -> Message {
        let chat = self.chat_mut(message.chat);
        chat.last_message_id += 1;
        message.message_id = chat.last_message_id;
        chat.messages.insert(message.message_id, message.clone());
        message
    }

    /// The message as the Bot API writes it.
    pub(crate) fn message_json(&self, message: &Message) -> Value {
        let mut json = self.shallow_json(message);
        // The message that is answered is told without what it answers itself.
        if let Some(answered) = message.reply_to
            && let Some(answered) = self.chat(message.chat).messages.get(&answered)
        {
            set(&mut json, "reply_to_message", self.shallow_json(answered));
        }
        json
    }

    fn shallow_json(&self, message: &Message) -> Value {
        let chat = self.chat(message.chat);
        let mut json = json!({
            "message_id": message.message_id,
            "from": self.user(message.from).json(),
            "date": message.date,
            "chat": self.chat_json(chat),
        });
        if let Some(sender) = message.sender_chat {
            set(&mut json, "sender_chat", self.chat_json(self.chat(sender)));
        }
        if let Some(thread) = message.thread {
            set(&mut json, "message_thread_id", json!(thread));
        }
        if message.is_topic_message {
            set(&mut json, "is_topic_message", json!(true));
        }
        if message.edited_at.is_some() {
            set(&mut json, "edit_date", json!(self.date()));
        }
        let (text, entities) = match (&message.picture, &message.file) {
            (Some(picture), _) => {
                set(&mut json, "photo", json!([picture.json()]));
                ("caption", "caption_entities")
            }
            (None, Some(file)) => {
                set(&mut json, "document", file.json());
                ("caption", "caption_entities")
            }
            (None, None) => ("text", "entities"),
        };
        if let Some((field, value)) = &message.service {
            set(&mut json, field, value.clone());
        } else if !message.text.is_empty() {
            set(&mut json, text, json!(message.text));
        }
        if !message.entities.is_empty() {
            set(&mut json, entities, json!(message.entities));
        }
        if !message.buttons.is_empty()
            && let Some(markup) = &message.markup
        {
            set(&mut json, "reply_markup", markup.clone());
        }
        json
    }
}

impl Picture {
    fn json(&self) -> Value {
        json!({
            "file_id": self.file_id,
            "file_unique_id": format!("unique-{}", self.file_id),
            "width": self.width,
            "height": self.height,
            "file_size": self.bytes.len(),
        })
    }
}

//! Everything the platform knows: people, chats, messages, what was asked of it.

use std::collections::BTreeMap;
use std::time::{Instant, SystemTime, UNIX_EPOCH};

use serde_json::{Map, Value, json};

use super::ANONYMOUS_ADMIN;
use super::callbacks::{CallbackAnswer, Query};
use super::chats::Chat;
use super::faults::Faults;
use super::inline::{InlineAnswer, InlineQuery};
use super::own_settings::OwnSettings;
use super::rates::Recent;
use super::updates::Updates;

/// A person, or a bot.
#[derive(Clone, Debug)]
pub struct User {
    /// Above 2³², as new ones are.
    pub id: i64,
    pub first_name: String,
    /// Without the `@`.
    pub username: Option<String>,
    pub is_bot: bool,
    /// The language of the person's app, such as `es`; not every app tells.
    pub language_code: Option<String>,
}

impl User {
    pub(crate) fn json(&self) -> Value {
        let mut user = json!({
            "id": self.id,
            "is_bot": self.is_bot,
            "first_name": self.first_name,
        });
        for (name, value) in [("username", &self.username), ("language_code", &self.language_code)]
        {
            if let Some(value) = value {
                set(&mut user, name, json!(value));
            }
        }
        user
    }
}

/// Sets a field of a JSON object.
pub(crate) fn set(object: &mut Value, field: &str, value: Value) {
    if let Some(fields) = object.as_object_mut() {
        fields.insert(field.to_owned(), value);
    }
}

/// One request of the bot.
#[derive(Clone, Debug)]
pub struct Call {
    /// In the schema's spelling.
    pub method: String,
    pub params: Map<String, Value>,
    pub at: Instant,
    /// The status it was answered with; none while, or if never, answered.
    pub answer: Option<u16>,
}

impl Call {
    /// The chat that the request is about, by number.
    pub fn chat(&self) -> Option<i64> {
        self.params.get("chat_id").and_then(Value::as_i64)
    }

    /// A parameter that is text.
    pub fn text_param(&self, name: &str) -> Option<&str> {
        self.params.get(name).and_then(Value::as_str)
    }
}

/// The world, as the platform sees it.
pub struct State {
    pub(crate) token: String,
    pub(crate) bot: User,
    pub(crate) privacy: bool,
    pub(crate) users: BTreeMap<i64, User>,
    pub(crate) chats: BTreeMap<i64, Chat>,
    pub(crate) updates: Updates,
    pub(crate) queries: BTreeMap<String, Query>,
    pub(crate) callback_answers: Vec<CallbackAnswer>,
    pub(crate) inline_queries: BTreeMap<String, InlineQuery>,
    pub(crate) inline_answers: Vec<InlineAnswer>,
    pub(crate) settings: OwnSettings,
    pub(crate) faults: Faults,
    pub(crate) recent: Recent,
    pub(crate) calls: Vec<Call>,
    pub(crate) violations: Vec<String>,
    pub(crate) now: Option<i64>,
    last_id: i64,
}

impl State {
    pub(crate) fn new() -> Self {
        let bot = User {
            id: 7_300_000_001,
            first_name: "Garden".to_owned(),
            username: Some("garden_test_bot".to_owned()),
            is_bot: true,
            language_code: None,
        };
        let anonymous = User {
            id: ANONYMOUS_ADMIN,
            first_name: "Group".to_owned(),
            username: Some("GroupAnonymousBot".to_owned()),
            is_bot: true,
            language_code: None,
        };
        Self {
            token: format!("{}:not-a-secret-for-tests-only", bot.id),
            privacy: false,
            users: [&bot, &anonymous].map(|user| (user.id, user.clone())).into(),
            bot,
            chats: BTreeMap::new(),
            updates: Updates::default(),
            queries: BTreeMap::new(),
            callback_answers: Vec::new(),
            inline_queries: BTreeMap::new(),
            inline_answers: Vec::new(),
            settings: OwnSettings::default(),
            faults: Faults::default(),
            recent: Recent::default(),
            calls: Vec::new(),
            violations: Vec::new(),
            now: None,
            last_id: 0,
        }
    }

    /// A number that was never given before.
    pub(crate) fn fresh_number(&mut self) -> i64 {
        self.last_id += 1;
        self.last_id
    }

    /// Seconds since 1970, as messages are stamped.
    pub(crate) fn date(&self) -> i64 {
        self.now.unwrap_or_else(|| {
            SystemTime::now()
                .duration_since(UNIX_EPOCH)
                .map_or(0, |since| i64::try_from(since.as_secs()).unwrap_or(i64::MAX))
        })
    }

    /// The user, whom the test must have introduced.
    pub(crate) fn user(&self, id: i64) -> &User {
        if id == self.bot.id {
            return &self.bot;
        }
        self.users
            .get(&id)
            .unwrap_or_else(|| panic!("nobody has the user id {id}: `add_user` first"))
    }

    /// The chat, which the test must have made.
    pub(crate) fn chat(&self, id: i64) -> &Chat {
        self.chats.get(&id).unwrap_or_else(|| panic!("there is no chat {id}"))
    }

    pub(crate) fn chat_mut(&mut self, id: i64) -> &mut Chat {
        self.chats.get_mut(&id).unwrap_or_else(|| panic!("there is no chat {id}"))
    }
}

//! What the bot tells the platform about itself: commands and descriptions.

use std::collections::BTreeMap;

use serde_json::{Value, json};

use super::FakePlatform;
use super::body::Params;
use super::entities::utf16_len;
use super::refusal::Refusal;
use super::state::{State, set};

const SCOPES: [&str; 7] = [
    "default",
    "all_private_chats",
    "all_group_chats",
    "all_chat_administrators",
    "chat",
    "chat_administrators",
    "chat_member",
];

/// A scope and a language; an empty language is for everybody else.
type For = (String, String);

/// What was set, by scope or method and by language.
#[derive(Default)]
pub(crate) struct OwnSettings {
    commands: BTreeMap<For, Vec<(String, String)>>,
    descriptions: BTreeMap<For, String>,
}

impl State {
    pub(crate) fn get_me(&self) -> Value {
        let mut me = self.bot.json();
        set(&mut me, "can_join_groups", json!(true));
        set(&mut me, "can_read_all_group_messages", json!(!self.privacy));
        for no in ["supports_inline_queries", "can_connect_to_business", "has_main_web_app"] {
            set(&mut me, no, json!(false));
        }
        me
    }

    pub(crate) fn set_my_commands(&mut self, params: &Params) -> Result<Value, Refusal> {
        let key = scope_and_language(params)?;
        let given = params.values.get("commands").and_then(Value::as_array);
        let mut commands = Vec::new();
        for command in given.into_iter().flatten() {
            commands.push(command_of(command)?);
        }
        if commands.len() > 100 {
            return Err(Refusal::violation(
                "BOT_COMMANDS_TOO_MUCH",
                format!("{} commands", commands.len()),
            ));
        }
        self.settings.commands.insert(key, commands);
        Ok(json!(true))
    }

    pub(crate) fn delete_my_commands(&mut self, params: &Params) -> Result<Value, Refusal> {
        self.settings.commands.remove(&scope_and_language(params)?);
        Ok(json!(true))
    }

    pub(crate) fn get_my_commands(&self, params: &Params) -> Result<Value, Refusal> {
        let commands = self.settings.commands.get(&scope_and_language(params)?);
        Ok(commands
            .into_iter()
            .flatten()
            .map(|(name, description)| json!({ "command": name, "description": description }))
            .collect())
    }

    /// `setMyName`, `setMyDescription`, `setMyShortDescription`.
    pub(crate) fn set_description(
        &mut self,
        method: &str,
        (field, longest): (&str, usize),
        params: &Params,
    ) -> Result<Value, Refusal> {
        let text = params.text(field).unwrap_or_default();
        if utf16_len(text) > longest {
            return Err(Refusal::violation(
                "BOT_DESCRIPTION_INVALID",
                format!("{method}: more than {longest} characters"),
            ));
        }
        let key = (method.to_owned(), language(params)?);
        self.settings.descriptions.insert(key, text.to_owned());
        Ok(json!(true))
    }
}

fn command_of(command: &Value) -> Result<(String, String), Refusal> {
    let text = |name: &str| {
        let text = command.get(name).and_then(Value::as_str);
        text.unwrap_or_default().to_owned()
    };
    let (name, description) = (text("command"), text("description"));
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
    if !(1..=32).contains(&name.len()) || !name.chars().all(plain) {
        return Err(Refusal::violation("BOT_COMMAND_INVALID", format!("the command {name:?}")));
    }
    if !(1..=256).contains(&utf16_len(description.trim())) {
        return Err(Refusal::violation(
            "BOT_COMMAND_DESCRIPTION_INVALID",
            format!("the description of {name:?} is empty or too long"),
        ));
    }
    Ok((name, description))
}

fn language(params: &Params) -> Result<String, Refusal> {
    let code = params.text("language_code").unwrap_or_default();
    if code.is_empty() || (code.len() == 2 && code.chars().all(|c| c.is_ascii_lowercase())) {
        return Ok(code.to_owned());
    }
    Err(Refusal::violation(
        "LANG_CODE_INVALID",
        format!("the language code {code:?} is not two letters"),
    ))
}

fn scope_and_language(params: &Params) -> Result<For, Refusal> {
    let scope = params.values.get("scope");
    let kind =
        scope.and_then(|scope| scope.get("type")).and_then(Value::as_str).unwrap_or("default");
    if !SCOPES.contains(&kind) {
        return Err(Refusal::violation(
            "can't parse BotCommandScope",
            format!("the scope {kind:?}"),
        ));
    }
    let mut name = kind.to_owned();
    for part in ["chat_id", "user_id"] {
        if let Some(id) = scope.and_then(|scope| scope.get(part)) {
            name = format!("{name}:{id}");
        }
    }
    Ok((name, language(params)?))
}

impl FakePlatform {
    /// The commands (name, description) set for a scope, such as `default`,
    /// `all_group_chats` or `chat:-1001`, and a language (empty: all others).
    pub fn commands(&self, scope: &str, language: &str) -> Option<Vec<(String, String)>> {
        let key = (scope.to_owned(), language.to_owned());
        self.read().settings.commands.get(&key).cloned()
    }

    /// Every scope and language that commands were set for.
    pub fn command_scopes(&self) -> Vec<(String, String)> {
        self.read().settings.commands.keys().cloned().collect()
    }

    /// What `setMyName`, `setMyDescription` or `setMyShortDescription` said.
    pub fn description(&self, method: &str, language: &str) -> Option<String> {
        let key = (method.to_owned(), language.to_owned());
        self.read().settings.descriptions.get(&key).cloned()
    }
}

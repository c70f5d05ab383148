//! Messages of the bot: sent, edited, reacted to.

use serde_json::{Value, json};

use super::body::Params;
use super::chats::{Chat, Kind};
use super::entities::utf16_len;
use super::html::read_html;
use super::keyboard::buttons_of;
use super::message::{Message, Picture};
use super::refusal::Refusal;
use super::state::State;

const LONGEST_TEXT: usize = 4096;
const LONGEST_CAPTION: usize = 1024;
const LARGEST_PICTURE: usize = 10 * 1024 * 1024;

/// The emoji that the platform takes as reactions.
const REACTIONS: &str = "❤ 👍 👎 🔥 🥰 👏 😁 🤔 🤯 😱 🤬 😢 🎉 🤩 🤮 💩 🙏 👌 🕊 🤡 🥱 🥴 😍 🐳 \
    ❤‍🔥 🌚 🌭 💯 🤣 ⚡ 🍌 🏆 💔 🤨 😐 🍓 🍾 💋 🖕 😈 😴 😭 🤓 👻 👨‍💻 👀 🎃 🙈 😇 😨 🤝 ✍ 🤗 🫡 🎅 🎄 ☃ 💅 🤪 🗿 \
    🆒 💘 🙉 🦄 😘 💊 🙊 😎 👾 🤷‍♂ 🤷 🤷‍♀ 😡";

impl State {
    pub(crate) fn send_message(&mut self, params: &Params) -> Result<Value, Refusal> {
        let mut message = self.addressed(params)?;
        (message.text, message.entities) = readable(params, "text", "entities")?;
        if message.text.is_empty() {
            return Err(Refusal::violation("message text is empty", "a message says nothing"));
        }
        check_length(&message.text, LONGEST_TEXT, "message is too long")?;
        Ok(self.deliver(message))
    }

    pub(crate) fn send_photo(&mut self, params: &Params) -> Result<Value, Refusal> {
        let mut message = self.addressed(params)?;
        self.caption(&mut message, params)?;
        message.picture = Some(self.picture(params)?);
        Ok(self.deliver(message))
    }

    /// What stands under a picture or a file.
    #[expect(clippy::unused_self, reason = "reads as a step of sending")]
    pub(crate) fn caption(&self, message: &mut Message, params: &Params) -> Result<(), Refusal> {
        (message.text, message.entities) = readable(params, "caption", "caption_entities")?;
        check_length(&message.text, LONGEST_CAPTION, "message caption is too long")
    }

    pub(crate) fn send_chat_action(&self, params: &Params) -> Result<Value, Refusal> {
        self.reachable(params).map(|_| json!(true))
    }

    pub(crate) fn edit_text(&mut self, params: &Params) -> Result<Value, Refusal> {
        let old = self.own_message(params)?;
        if old.picture.is_some() || old.file.is_some() {
            return Err(Refusal::bad_request("there is no text in the message to edit"));
        }
        let (text, entities) = readable(params, "text", "entities")?;
        if text.is_empty() {
            return Err(Refusal::violation("message text is empty", "an edit leaves nothing"));
        }
        check_length(&text, LONGEST_TEXT, "MESSAGE_TOO_LONG")?;
        self.edit(params, Some((text, entities)))
    }

    pub(crate) fn edit_caption(&mut self, params: &Params) -> Result<Value, Refusal> {
        let old = self.own_message(params)?;
        if old.picture.is_none() {
            return Err(Refusal::bad_request("there is no caption in the message to edit"));
        }
        let (text, entities) = readable(params, "caption", "caption_entities")?;
        check_length(&text, LONGEST_CAPTION, "MESSAGE_TOO_LONG")?;
        self.edit(params, Some((text, entities)))
    }

    pub(crate) fn edit_keyboard(&mut self, params: &Params) -> Result<Value, Refusal> {
        self.own_message(params)?;
        self.edit(params, None)
    }

    pub(crate) fn react(&mut self, params: &Params) -> Result<Value, Refusal> {
        let chat = self.reachable(params)?.id;
        let reactions = params.values.get("reaction").and_then(Value::as_array);
        let emoji: Vec<&str> = reactions
            .into_iter()
            .flatten()
            .filter_map(|reaction| reaction.get("emoji").and_then(Value::as_str))
            .collect();
        if emoji.len() > 1 {
            return Err(Refusal::violation("REACTIONS_TOO_MANY", "a bot has one reaction"));
        }
        let emoji = emoji.first().copied();
        if let Some(emoji) = emoji
            && !REACTIONS.split_whitespace().any(|known| known == emoji)
        {
            return Err(Refusal::violation(
                "REACTION_INVALID",
                format!("{emoji} is not a reaction"),
            ));
        }
        let message = params
            .message_id("message_id")
            .and_then(|id| self.chat_mut(chat).messages.get_mut(&id))
            .ok_or_else(|| Refusal::bad_request("message to react not found"))?;
        message.reaction = emoji.map(str::to_owned);
        Ok(json!(true))
    }

    /// A message with everything but its content: where it goes, what it
    /// answers, the keyboard under it.
    pub(crate) fn addressed(&self, params: &Params) -> Result<Message, Refusal> {
        let chat = self.reachable(params)?;
        let mut message = self.blank(chat.id, self.bot.id);
        message.thread = thread(chat, params)?;
        message.is_topic_message = message.thread.is_some();
        message.reply_to = answered(chat, params)?;
        message.silent = params.flag("disable_notification");
        message.markup = params.values.get("reply_markup").cloned();
        message.buttons = buttons_of(message.markup.as_ref())?;
        Ok(message)
    }

    pub(crate) fn deliver(&mut self, message: Message) -> Value {
        let message = self.log(message);
        self.message_json(&message)
    }

    fn own_message(&self, params: &Params) -> Result<&Message, Refusal> {
        let chat = self.reachable(params)?;
        let id = params
            .message_id("message_id")
            .ok_or_else(|| Refusal::bad_request("message identifier is not specified"))?;
        let message = chat
            .messages
            .get(&id)
            .ok_or_else(|| Refusal::bad_request("message to edit not found"))?;
        if message.from != self.bot.id {
            return Err(Refusal::bad_request("message can't be edited"));
        }
        Ok(message)
    }

    /// Edits the bot's message. Without a new keyboard the old one goes away.
    fn edit(
        &mut self,
        params: &Params,
        text: Option<(String, Vec<Value>)>,
    ) -> Result<Value, Refusal> {
        let old = self.own_message(params)?;
        let markup = params.values.get("reply_markup");
        let buttons = buttons_of(markup)?;
        let (text, entities) = text.unwrap_or_else(|| (old.text.clone(), old.entities.clone()));
        if (&text, &entities, &buttons) == (&old.text, &old.entities, &old.buttons) {
            return Err(Refusal::bad_request(
                "message is not modified: specified new message content and reply markup \
                 are exactly the same as a current content and reply markup of the message",
            ));
        }
        let (chat, id, markup) = (old.chat, old.message_id, markup.cloned());
        let Some(message) = self.chat_mut(chat).messages.get_mut(&id) else {
            return Err(Refusal::bad_request("message to edit not found"));
        };
        message.replace(|message| {
            message.text = text;
            message.entities = entities;
            message.buttons = buttons;
            message.markup = markup;
        });
        let message = message.clone();
        Ok(self.message_json(&message))
    }

    /// The picture that came with the request, or that an earlier file id names.
    fn picture(&mut self, params: &Params) -> Result<Picture, Refusal> {
        let named = params.text("photo").unwrap_or_default();
        let Some(part) = named.strip_prefix("attach://") else {
            let known = self.chats.values().flat_map(|chat| chat.messages.values());
            return known
                .filter_map(|message| message.picture.as_ref())
                .find(|picture| picture.file_id == named)
                .cloned()
                .ok_or_else(|| Refusal::bad_request("wrong file identifier/HTTP URL specified"));
        };
        let upload = params
            .files
            .get(part)
            .ok_or_else(|| Refusal::violation("there is no photo in the request", "no photo"))?;
        let too_large = upload.bytes.len() > LARGEST_PICTURE;
        let (width, height) = size_of_picture(&upload.bytes)
            .filter(|(width, height)| {
                let longest = u64::from(*width.max(height));
                let shortest = u64::from(*width.min(height)).max(1);
                width.saturating_add(*height) <= 10_000 && longest <= 20 * shortest
            })
            .filter(|_| !too_large)
            .ok_or_else(|| {
                Refusal::violation("IMAGE_PROCESS_FAILED", "the photo is no picture, or too large")
            })?;
        Ok(Picture {
            file_id: format!("photo-{}", self.fresh_number()),
            file_name: upload.name.clone(),
            bytes: upload.bytes.clone(),
            width,
            height,
        })
    }
}

/// The text as people read it, without markup and blank ends, and its entities.
fn readable(params: &Params, text: &str, entities: &str) -> Result<(String, Vec<Value>), Refusal> {
    let raw = params.text(text).unwrap_or_default();
    let given = params.values.get(entities).and_then(Value::as_array);
    let (text, entities) = match params.text("parse_mode").unwrap_or_default() {
        "" => (raw.to_owned(), given.cloned().unwrap_or_default()),
        mode if mode.eq_ignore_ascii_case("html") => {
            read_html(raw).map_err(|why| Refusal::violation(&why, format!("{why} in {raw:?}")))?
        }
        mode => {
            return Err(Refusal::violation(
                "unsupported parse_mode",
                format!("parse_mode {mode} is not covered by the fake platform"),
            ));
        }
    };
    let end = u64::try_from(utf16_len(&text)).unwrap_or(u64::MAX);
    for entity in &entities {
        let number = |name: &str| entity.get(name).and_then(Value::as_u64);
        let (offset, length) = (number("offset"), number("length"));
        if offset.zip(length).is_none_or(|(at, length)| at.saturating_add(length) > end) {
            return Err(Refusal::violation(
                "entity beyond the end of the text",
                format!("the entity {entity} does not fit {text:?}"),
            ));
        }
    }
    // Cutting at the front would move the entities; only plain text is cut there.
    let text = if entities.is_empty() { text.trim() } else { text.trim_end() };
    Ok((text.to_owned(), entities))
}

fn check_length(text: &str, longest: usize, refusal: &str) -> Result<(), Refusal> {
    let length = utf16_len(text);
    if length <= longest {
        return Ok(());
    }
    Err(Refusal::violation(refusal, format!("{length} characters where {longest} are allowed")))
}

/// The topic that the message goes to. Plain groups have no topics, whatever
/// thread a member's message told of.
fn thread(chat: &Chat, params: &Params) -> Result<Option<i32>, Refusal> {
    let Some(id) = params.message_id("message_thread_id") else {
        return Ok(None);
    };
    if chat.closed_topics.contains(&id) {
        return Err(Refusal::bad_request("TOPIC_CLOSED"));
    }
    if chat.is_forum() && chat.topics.contains(&id) {
        return Ok(Some(id));
    }
    Err(Refusal::bad_request("message thread not found"))
}

fn answered(chat: &Chat, params: &Params) -> Result<Option<i32>, Refusal> {
    let Some(reply) = params.values.get("reply_parameters") else {
        return Ok(None);
    };
    let id = reply.get("message_id").and_then(Value::as_i64).and_then(|id| i32::try_from(id).ok());
    // A message of another chat can only be quoted, which no bot of ours does.
    let elsewhere = reply.get("chat_id").is_some_and(|other| other.as_i64() != Some(chat.id));
    match id.filter(|id| !elsewhere && chat.messages.contains_key(id)) {
        Some(id) => Ok(Some(id)),
        None if reply.get("allow_sending_without_reply") == Some(&Value::Bool(true)) => Ok(None),
        None => Err(Refusal::bad_request("message to be replied not found")),
    }
}

/// Width and height; a kind whose header is not read counts as 512 square.
fn size_of_picture(bytes: &[u8]) -> Option<(u32, u32)> {
    if bytes.starts_with(b"\x89PNG\r\n\x1a\n") {
        let number = |at: usize| {
            let four = bytes.get(at..at + 4)?;
            four.try_into().ok().map(u32::from_be_bytes)
        };
        return number(16).zip(number(20));
    }
    let jpeg = bytes.starts_with(b"\xff\xd8\xff");
    let webp = bytes.starts_with(b"RIFF") && bytes.get(8..12) == Some(b"WEBP");
    (jpeg || webp).then_some((512, 512))
}

/// Whether messages sent there may count against a group's limits.
pub(crate) fn is_new_message(method: &str) -> bool {
    method.starts_with("send") && method != "sendChatAction"
}

impl Chat {
    /// Whether a message in this chat can be in a thread of replies.
    pub(crate) fn has_threads(&self) -> bool {
        matches!(self.kind, Kind::Supergroup { .. })
    }
}

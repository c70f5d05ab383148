//! The little of an update that the bot reads; everything else in it may be anything.
//!
//! Fields and their meaning are those of the platform's Bot API (`Update`, `Message`,
//! `CallbackQuery`, `InlineQuery`, `ChatMemberUpdated`).

use serde::Deserialize;

#[derive(Debug, Deserialize)]
pub(super) struct Update {
    pub message: Option<Message>,
    pub callback_query: Option<CallbackQuery>,
    pub inline_query: Option<InlineQuery>,
    pub my_chat_member: Option<MemberChange>,
    pub chat_member: Option<MemberChange>,
}

#[derive(Debug, Deserialize)]
#[expect(clippy::struct_field_names, reason = "the names are the platform's")]
pub(super) struct Message {
    pub message_id: i32,
    pub message_thread_id: Option<i32>,
    #[serde(default)]
    pub is_topic_message: bool,
    /// 0 for a message that is too old to be told.
    #[serde(default)]
    pub date: i64,
    pub from: Option<User>,
    pub sender_chat: Option<Chat>,
    /// The bot whose inline answer was sent as this message.
    pub via_bot: Option<User>,
    pub chat: Chat,
    pub text: Option<String>,
    #[serde(default)]
    pub entities: Vec<Entity>,
    pub caption: Option<String>,
    #[serde(default)]
    pub caption_entities: Vec<Entity>,
    pub reply_to_message: Option<RepliedTo>,
    pub reply_markup: Option<Markup>,
    pub left_chat_member: Option<User>,
    pub migrate_to_chat_id: Option<i64>,
    pub migrate_from_chat_id: Option<i64>,
}

/// The buttons under a message.
#[derive(Debug, Deserialize)]
pub(super) struct Markup {
    #[serde(default)]
    pub inline_keyboard: Vec<Vec<MarkupButton>>,
}

#[derive(Debug, Deserialize)]
pub(super) struct MarkupButton {
    #[serde(default)]
    pub text: String,
    pub callback_data: Option<String>,
}

#[derive(Debug, Deserialize)]
pub(super) struct RepliedTo {
    pub message_id: Option<i32>,
    pub sender_chat: Option<Chat>,
    pub from: Option<User>,
}

#[derive(Debug, Clone, Deserialize)]
pub(super) struct User {
    pub id: i64,
    #[serde(default)]
    pub is_bot: bool,
    #[serde(default)]
    pub first_name: String,
    pub language_code: Option<String>,
}

#[derive(Debug, Clone, Deserialize)]
pub(super) struct Chat {
    pub id: i64,
    #[serde(rename = "type", default)]
    pub kind: String,
    pub title: Option<String>,
}

/// A part of a text that means something; offsets and lengths are in UTF-16 units.
#[derive(Debug, Deserialize)]
pub(super) struct Entity {
    #[serde(rename = "type")]
    pub kind: String,
    pub offset: usize,
    pub length: usize,
    pub user: Option<User>,
}

#[derive(Debug, Deserialize)]
pub(super) struct CallbackQuery {
    pub id: String,
    pub from: User,
    pub message: Option<Message>,
    pub data: Option<String>,
}

#[derive(Debug, Deserialize)]
pub(super) struct InlineQuery {
    pub id: String,
    pub from: User,
    #[serde(default)]
    pub query: String,
}

#[derive(Debug, Deserialize)]
pub(super) struct MemberChange {
    pub chat: Chat,
    pub from: User,
    pub old_chat_member: ChatMember,
    pub new_chat_member: ChatMember,
}

#[derive(Debug, Deserialize)]
pub(super) struct ChatMember {
    pub status: String,
    pub is_member: Option<bool>,
    pub user: User,
}

impl ChatMember {
    /// Whether the person (or the bot) is in the chat; a restricted one may be or not.
    pub(super) fn is_present(&self) -> bool {
        match self.status.as_str() {
            "creator" | "administrator" | "member" => true,
            "restricted" => self.is_member.unwrap_or(true),
            _ => false,
        }
    }
}

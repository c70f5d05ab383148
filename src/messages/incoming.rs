//! What came in from a chat.

/// Identifies an update of one bot, so that it is never applied twice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct UpdateKey {
    /// The bot's own id.
    pub bot: i64,
    /// The update's id; it may restart at random after a quiet week.
    pub update: i64,
}

/// Which kind of chat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum ChatKind {
    /// One person and the bot.
    Private,
    /// A group or a supergroup.
    Group,
}

/// A chat.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Chat {
    /// The platform's id.
    pub id: i64,
    /// Private or group.
    pub kind: ChatKind,
    /// A group's title; empty for a private chat.
    pub title: String,
    /// The topic of a forum the message stands in.
    pub thread: Option<i32>,
}

/// What the sender may do in the group; looked up before deciding, where it matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Role {
    /// An administrator (or creator) of the group, or one who writes anonymously.
    Administrator,
    /// Anybody else in it.
    Member,
    /// Not looked up, or the platform did not say.
    Unknown,
}

/// Who wrote or pressed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Person {
    /// The platform's id of the person.
    pub user: i64,
    /// Their first name.
    pub name: String,
    /// Whether they are a bot; no bot is answered.
    pub is_bot: bool,
    /// Whether an administrator writes anonymously, in the group's name.
    pub anonymous: bool,
    /// The language their app is set to, as a BCP 47 tag.
    pub language: Option<String>,
    /// Their role in the group.
    pub role: Role,
}

/// One thing that happened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Incoming {
    /// Where.
    pub chat: Chat,
    /// By whom.
    pub from: Person,
    /// What.
    pub what: What,
}

/// A message of the bot's own as it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shown {
    /// Its text.
    pub text: String,
    /// The labels and data of its buttons, row by row; buttons without data are left out.
    pub buttons: Vec<Vec<(String, String)>>,
    /// The person whose message it answers, when the platform tells; never a bot.
    pub asked_by: Option<i64>,
}

/// What happened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum What {
    /// A text, or the caption of a picture.
    Text {
        /// The text as it was written, without the bot's own name where that spoke to the bot;
        /// empty when the name was all there was.
        text: String,
        /// The message's id.
        message: i32,
        /// Whether it surely speaks to the bot: in private, a command that names the bot or no
        /// bot, a reply to the bot's message, or a mention of its name.
        addressed: bool,
        /// Who wrote the message that it replies to, where a person or a bot did.
        replies_to: Option<Box<Person>>,
    },
    /// A button under one of the bot's messages.
    Pressed {
        /// The id by which the press is answered.
        press: String,
        /// The message that carries the button, when the platform tells.
        message: Option<i32>,
        /// The button's data.
        data: String,
        /// What the message says at the moment, when the platform tells.
        shown: Option<Shown>,
    },
    /// Somebody types the bot's name and some words in any chat; the chat is not told.
    Inline {
        /// The id by which the query is answered.
        query: String,
        /// The words.
        text: String,
    },
    /// The bot was added to the group.
    AddedToGroup,
    /// The bot was removed from the group.
    RemovedFromGroup,
    /// The person blocked the bot.
    Blocked,
    /// The person unblocked the bot.
    Unblocked,
    /// The group became a supergroup with this id.
    MovedTo {
        /// The new id.
        chat: i64,
    },
    /// The person left the group or was removed.
    LeftGroup,
    /// Something the bot has no use for; it is noted as seen and nothing else.
    Nothing,
}

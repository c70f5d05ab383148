//! What goes out to a chat.

use serde::{Deserialize, Serialize};

use super::press::Press;

/// The platform's limit for a message's text, in UTF-16 units.
pub const LONGEST_TEXT: usize = 4096;

/// The platform's limit for the buttons under one message.
pub const MOST_BUTTONS: usize = 100;

/// The platform's limit for the choices of one inline answer.
pub const MOST_ARTICLES: usize = 50;

/// Rows of buttons.
pub type Buttons = Vec<Vec<Button>>;

/// A button under a message.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Button {
    /// What it says.
    pub label: String,
    /// What it does.
    pub does: Does,
}

/// What a button does.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Does {
    /// Sends typed data back.
    Press(Press),
    /// Opens the private chat with the bot and hands it this payload (letters, digits, `_`, `-`).
    OpenPrivate(String),
}

impl Button {
    /// A button that sends `press` back.
    pub fn press(label: impl Into<String>, press: Press) -> Self {
        Self { label: label.into(), does: Does::Press(press) }
    }

    /// A button that opens the private chat.
    pub fn open_private(label: impl Into<String>, payload: impl Into<String>) -> Self {
        Self { label: label.into(), does: Does::OpenPrivate(payload.into()) }
    }
}

/// One message, edit or answer on its way out.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Outgoing {
    /// A new message.
    Say(Say),
    /// A change of an earlier message.
    Edit(Edit),
    /// The answer to a press, shown for a moment; it expires within seconds.
    AnswerPress(AnswerPress),
    /// The answer to a press that opens the private chat; it expires likewise.
    OpenByPress(OpenByPress),
    /// A file.
    Document(Document),
    /// What is offered to somebody who types the bot's name in any chat; it expires within seconds.
    AnswerInline(AnswerInline),
}

/// A new message.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Say {
    /// To which chat.
    pub chat: i64,
    /// In which topic of a forum.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thread: Option<i32>,
    /// What is added where that topic is closed or gone, so that it comes in the group instead.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub without_topic: Option<String>,
    /// The message it replies to; it is sent even when that is gone.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reply_to: Option<i32>,
    /// Plain text of 1 to [`LONGEST_TEXT`] UTF-16 units.
    pub text: String,
    /// Buttons below it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub buttons: Buttons,
}

/// A change of an earlier message.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Edit {
    /// In which chat.
    pub chat: i64,
    /// Which message.
    pub message: i32,
    /// Its new text.
    pub text: String,
    /// Its new buttons.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub buttons: Buttons,
}

/// The answer to a press.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct AnswerPress {
    /// The press's id.
    pub press: String,
    /// A short notice of at most 200 characters, or nothing but the end of the waiting mark.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub notice: Option<String>,
}

/// The answer to a press that opens the private chat with the bot.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OpenByPress {
    /// The press's id.
    pub press: String,
    /// What is handed to the bot there: 1 to 64 letters, digits, `_` and `-`.
    pub payload: String,
}

/// A file that is made of text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Document {
    /// To which chat.
    pub chat: i64,
    /// The file's name.
    pub name: String,
    /// What stands under it, up to 1024 UTF-16 units.
    pub caption: String,
    /// What is in it.
    pub content: String,
}

/// The answer to an inline query.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct AnswerInline {
    /// The query's id.
    pub query: String,
    /// What may be chosen, at most [`MOST_ARTICLES`].
    pub articles: Vec<Article>,
    /// A button above them that opens the private chat with the bot.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub open_private: Option<OpenPrivate>,
}

/// One message that may be chosen and is then sent in the chooser's name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Article {
    /// Tells it from the others; 1 to 64 bytes.
    pub id: String,
    /// What it is about.
    pub title: String,
    /// A line more about it.
    pub description: String,
    /// The message.
    pub text: String,
}

/// A button that opens the private chat.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct OpenPrivate {
    /// What it says.
    pub label: String,
    /// What is handed to the bot: 1 to 64 letters, digits, `_` and `-`.
    pub payload: String,
}

/// What goes first when several wait.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Priority {
    /// An answer to a press, which expires.
    Press,
    /// An answer to what somebody said or did.
    Reply,
    /// A reminder.
    Reminder,
}

/// The commands that the platform offers in one kind of chat.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CommandMenu {
    /// The chats it is for; administrators of groups have a menu of their own.
    pub scope: MenuScope,
    /// Two-letter language code, or `None` for everybody without a menu of their own.
    pub language: Option<String>,
    /// Command names without the slash, each with its description.
    pub commands: Vec<(String, String)>,
}

/// Where a command menu is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum MenuScope {
    /// Private chats.
    Private,
    /// Groups.
    Groups,
    /// Groups, to their administrators.
    Administrators,
}

impl Outgoing {
    /// The chat it goes to, or `None` for the answer to a press or to an inline query.
    #[must_use]
    pub fn chat(&self) -> Option<i64> {
        match self {
            Self::Say(say) => Some(say.chat),
            Self::Edit(edit) => Some(edit.chat),
            Self::Document(document) => Some(document.chat),
            Self::AnswerPress(_) | Self::OpenByPress(_) | Self::AnswerInline(_) => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What waits in the queue while the program is replaced by a newer one.
    #[test]
    fn the_form_in_the_queue_is_pinned() {
        let say = Outgoing::Say(Say {
            chat: -100,
            thread: Some(3),
            without_topic: Some("Closed".to_owned()),
            reply_to: Some(7),
            text: "Yes".to_owned(),
            buttons: vec![vec![
                Button::press("Undo", Press::Settings),
                Button::open_private("Open", "token"),
            ]],
        });
        let edit = Outgoing::Edit(Edit {
            chat: 5,
            message: 9,
            text: "No".to_owned(),
            buttons: Vec::new(),
        });
        let answer = Outgoing::AnswerPress(AnswerPress {
            press: "q".to_owned(),
            notice: Some("Ok".to_owned()),
        });
        let opens = Outgoing::OpenByPress(OpenByPress {
            press: "q".to_owned(),
            payload: "read_-100_7".to_owned(),
        });
        let document = Outgoing::Document(Document {
            chat: 5,
            name: "sowbell-export.json".to_owned(),
            caption: "All".to_owned(),
            content: "{}".to_owned(),
        });
        let article = Article {
            id: "pea".to_owned(),
            title: "Peas".to_owned(),
            description: "Now".to_owned(),
            text: "Sow peas.".to_owned(),
        };
        let inline = Outgoing::AnswerInline(AnswerInline {
            query: "i".to_owned(),
            articles: vec![article],
            open_private: Some(OpenPrivate {
                label: "Open".to_owned(),
                payload: "frost".to_owned(),
            }),
        });
        let bare = Outgoing::AnswerInline(AnswerInline {
            query: "i".to_owned(),
            articles: Vec::new(),
            open_private: None,
        });
        let plain = Outgoing::Say(Say { chat: 5, text: "Hi".to_owned(), ..Say::default() });
        for (outgoing, json) in [
            (
                say,
                r#"{"say":{"chat":-100,"thread":3,"without_topic":"Closed","reply_to":7,"text":"Yes","buttons":[[{"label":"Undo","does":{"press":"s"}},{"label":"Open","does":{"open_private":"token"}}]]}}"#,
            ),
            (edit, r#"{"edit":{"chat":5,"message":9,"text":"No"}}"#),
            (answer, r#"{"answer_press":{"press":"q","notice":"Ok"}}"#),
            (plain, r#"{"say":{"chat":5,"text":"Hi"}}"#),
            (opens, r#"{"open_by_press":{"press":"q","payload":"read_-100_7"}}"#),
            (
                document,
                r#"{"document":{"chat":5,"name":"sowbell-export.json","caption":"All","content":"{}"}}"#,
            ),
            (
                inline,
                r#"{"answer_inline":{"query":"i","articles":[{"id":"pea","title":"Peas","description":"Now","text":"Sow peas."}],"open_private":{"label":"Open","payload":"frost"}}}"#,
            ),
            (bare, r#"{"answer_inline":{"query":"i","articles":[]}}"#),
        ] {
            assert_eq!(serde_json::to_string(&outgoing).expect("JSON"), json);
            assert_eq!(serde_json::from_str::<Outgoing>(json).expect("read"), outgoing);
        }
    }
}

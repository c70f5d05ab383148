//! What goes out to a chat.

use serde::{Deserialize, Serialize};

use super::press::Press;

/// The platform's limit for a message's text, in UTF-16 units.
pub const LONGEST_TEXT: usize = 4096;

/// The platform's limit for the buttons under one message.
pub const MOST_BUTTONS: usize = 100;

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
}

/// A new message.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Say {
    /// To which chat.
    pub chat: i64,
    /// In which topic of a forum.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thread: Option<i32>,
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
    /// The chat it goes to, or `None` for the answer to a press.
    #[must_use]
    pub fn chat(&self) -> Option<i64> {
        match self {
            Self::Say(say) => Some(say.chat),
            Self::Edit(edit) => Some(edit.chat),
            Self::AnswerPress(_) => None,
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
        let plain = Outgoing::Say(Say { chat: 5, text: "Hi".to_owned(), ..Say::default() });
        for (outgoing, json) in [
            (
                say,
                r#"{"say":{"chat":-100,"thread":3,"reply_to":7,"text":"Yes","buttons":[[{"label":"Undo","does":{"press":"s"}},{"label":"Open","does":{"open_private":"token"}}]]}}"#,
            ),
            (edit, r#"{"edit":{"chat":5,"message":9,"text":"No"}}"#),
            (answer, r#"{"answer_press":{"press":"q","notice":"Ok"}}"#),
            (plain, r#"{"say":{"chat":5,"text":"Hi"}}"#),
        ] {
            assert_eq!(serde_json::to_string(&outgoing).expect("JSON"), json);
            assert_eq!(serde_json::from_str::<Outgoing>(json).expect("read"), outgoing);
        }
    }
}

//! Everybody's phone: the platform that takes what the sender sends and keeps it for the screen.

use std::collections::HashMap;
use std::sync::{Mutex, MutexGuard, PoisonError};

use crate::app::{Delivery, Platform};
use crate::messages::{AnswerInline, Button, Buttons, Does, Outgoing, Say, Shown};

/// Messages of the bot that stay within reach of a press in one chat.
const WITHIN_REACH: usize = 200;

/// A message of the bot as it stands on the phones of a chat.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Standing {
    /// Its id.
    pub message: i32,
    /// Its text.
    pub text: String,
    /// Its buttons.
    pub buttons: Buttons,
    /// The person whose message in the group it answers.
    pub asked_by: Option<i64>,
}

impl Standing {
    /// Its buttons in the order of their numbers.
    pub fn numbered(&self) -> impl Iterator<Item = &Button> {
        self.buttons.iter().flatten()
    }

    /// The message as the platform tells of it when one of its buttons is pressed.
    pub fn shown(&self) -> Shown {
        let data = |button: &Button| match &button.does {
            Does::Press(press) => Some((button.label.clone(), press.to_string())),
            Does::OpenPrivate(_) => None,
        };
        let rows = self.buttons.iter().map(|row| row.iter().filter_map(data).collect());
        Shown { text: self.text.clone(), buttons: rows.collect(), asked_by: self.asked_by }
    }
}

/// Something that a phone shows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Shows {
    /// A new message.
    New {
        /// In which chat.
        chat: i64,
        /// Whose message it replies to.
        to: Option<String>,
        /// The message.
        message: Standing,
    },
    /// A message that changed.
    Changed {
        /// In which chat.
        chat: i64,
        /// The message as it is now.
        message: Standing,
    },
    /// A notice over a pressed button.
    Notice(String),
    /// What is offered to whoever types the bot's name.
    Offered(AnswerInline),
}

/// The phones of all.
#[derive(Debug, Default)]
pub struct Phones(Mutex<State>);

#[derive(Debug, Default)]
struct State {
    last_message: i32,
    /// Who wrote a message of the group, by its id.
    authors: HashMap<i32, (String, i64)>,
    standing: HashMap<i64, Vec<Standing>>,
    /// The message of each chat that stands last on the screen.
    in_view: HashMap<i64, i32>,
    /// The payload of a press that opens the private chat.
    opened: Option<String>,
    /// What happened since the screen last looked.
    fresh: Vec<Shows>,
}

impl Phones {
    fn state(&self) -> MutexGuard<'_, State> {
        // Nothing is left half done in here, so what a panic left behind is still whole.
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The id of a new message that a person wrote.
    pub fn wrote(&self, name: &str, user: i64) -> i32 {
        let mut state = self.state();
        state.last_message = state.last_message.saturating_add(1);
        let message = state.last_message;
        state.authors.insert(message, (name.to_owned(), user));
        message
    }

    /// The payload with which the last press opened the private chat, if it did.
    pub fn opened(&self) -> Option<String> {
        self.state().opened.take()
    }

    /// What phones showed since this was last asked, in order.
    pub fn fresh(&self) -> Vec<Shows> {
        std::mem::take(&mut self.state().fresh)
    }

    /// The message of a chat that came or changed last, or that was scrolled back to.
    pub fn in_view(&self, chat: i64) -> Option<Standing> {
        let state = self.state();
        let id = state.in_view.get(&chat)?;
        state.standing.get(&chat)?.iter().find(|message| message.message == *id).cloned()
    }

    /// Brings the chat's last message with buttons into view, unless one is.
    pub fn scroll_to_buttons(&self, chat: i64) -> Option<Standing> {
        let has_buttons = |message: &Standing| message.numbered().next().is_some();
        if let Some(message) = self.in_view(chat).filter(has_buttons) {
            return Some(message);
        }
        let mut state = self.state();
        let messages = state.standing.get(&chat)?;
        let message = messages.iter().rev().find(|message| has_buttons(message))?.clone();
        state.in_view.insert(chat, message.message);
        Some(message)
    }

    /// The buttons of all messages of a chat, the oldest first.
    pub fn all_buttons(&self, chat: i64) -> Vec<Button> {
        let state = self.state();
        let messages = state.standing.get(&chat).into_iter().flatten();
        messages.flat_map(|message| message.numbered().cloned()).collect()
    }
}

impl State {
    fn say(&mut self, say: &Say) -> Delivery {
        self.last_message = self.last_message.saturating_add(1);
        let (text, buttons) = (say.text.clone(), say.buttons.clone());
        let author = say.reply_to.and_then(|id| self.authors.get(&id).cloned());
        let (to, asked_by) = author.unzip();
        let message = Standing { message: self.last_message, text, buttons, asked_by };
        let standing = self.standing.entry(say.chat).or_default();
        standing.push(message.clone());
        let beyond = standing.len().saturating_sub(WITHIN_REACH);
        standing.drain(..beyond);
        self.in_view.insert(say.chat, self.last_message);
        self.fresh.push(Shows::New { chat: say.chat, to, message });
        Delivery::Sent { message: Some(self.last_message) }
    }
}

impl Platform for Phones {
    async fn deliver(&self, outgoing: &Outgoing) -> Delivery {
        let mut state = self.state();
        match outgoing {
            Outgoing::Say(say) => state.say(say),
            Outgoing::Edit(edit) => {
                let standing = state.standing.get_mut(&edit.chat).into_iter().flatten();
                let found = { standing }.find(|message| message.message == edit.message);
                let Some(message) = found else {
                    return Delivery::Gone("the message is no longer there".to_owned());
                };
                let (text, buttons) = (edit.text.clone(), edit.buttons.clone());
                let asked_by = message.asked_by;
                let changed = Standing { message: edit.message, text, buttons, asked_by };
                if *message != changed {
                    message.clone_from(&changed);
                    state.in_view.insert(edit.chat, edit.message);
                    state.fresh.push(Shows::Changed { chat: edit.chat, message: changed });
                }
                Delivery::Sent { message: None }
            }
            // A phone would show the file; here it is read at once, and nothing is written anywhere.
            Outgoing::Document(document) => state.say(&Say {
                chat: document.chat,
                text: format!("{}\n[{}]\n{}", document.caption, document.name, document.content),
                ..Say::default()
            }),
            Outgoing::OpenByPress(answer) => {
                state.opened = Some(answer.payload.clone());
                Delivery::Sent { message: None }
            }
            Outgoing::AnswerInline(answer) => {
                state.fresh.push(Shows::Offered(answer.clone()));
                Delivery::Sent { message: None }
            }
            Outgoing::AnswerPress(answer) => {
                state.fresh.extend(answer.notice.clone().map(Shows::Notice));
                Delivery::Sent { message: None }
            }
        }
    }
}

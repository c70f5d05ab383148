//! Messages as data: what comes in, what goes out, and what a button means.
//!
//! Ids of chats, messages and people are the platform's. Outgoing messages and button data
//! outlive a release (they wait in the queue and under old messages), so their forms are pinned
//! by tests.

mod incoming;
mod outgoing;
mod press;

pub use incoming::{Chat, ChatKind, Incoming, Person, Role, Shown, UpdateKey, What};
pub use outgoing::{
    AnswerInline, AnswerPress, Article, Button, Buttons, CommandMenu, Document, Does, Edit,
    LONGEST_TEXT, MOST_ARTICLES, MOST_BUTTONS, MenuScope, OpenByPress, OpenPrivate, Outgoing,
    Priority, Say,
};
pub use press::{JobAnswer, Press, PressError, Topic};

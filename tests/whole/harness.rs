//! The world of one test: the real program on a database of its own, a platform to talk to, and
//! people who talk.
//!
//! A test speaks in verbs: `fern.asks("/now")`, `club.says(&fern, "...")`,
//! `world.morning_of("2026-04-22")`. What a person says is answered before the verb ends, so a
//! test never sleeps; where it must wait for something it waits for that thing, within a limit.
//!
//! A [`World`] that goes out of scope asserts that the bot broke none of the platform's rules,
//! that nothing is left in its queue and that it stops within ten seconds.

mod club;
mod hands;
mod person;
mod store;
mod world;

pub use club::Club;
pub use hands::Hands;
pub use person::Person;
pub use world::{World, instant};

use crate::platform::Message;

/// A message as a test reads it: the text, then each row of buttons in a line.
pub fn shown(message: &Message) -> String {
    let mut lines = vec![message.text.clone()];
    for row in &message.buttons {
        let labels: Vec<String> = row.iter().map(|button| format!("[{}]", button.text)).collect();
        lines.push(labels.join(" "));
    }
    lines.join("\n")
}

/// The only message, where there must be just one.
#[track_caller]
pub fn only(mut messages: Vec<Message>) -> Message {
    let texts: Vec<&str> = messages.iter().map(|message| message.text.as_str()).collect();
    assert_eq!(messages.len(), 1, "one message was expected, not {texts:?}");
    messages.remove(0)
}

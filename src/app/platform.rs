//! What the sender needs of a chat platform: to take one message and say how that ended.

use std::future::Future;
use std::time::Duration;

use crate::messages::Outgoing;

/// How the platform answered one message, edit or press answer.
///
/// The reasons are the platform's words, for the log and the queue; no secret is in them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Delivery {
    /// Taken; an edit that changes nothing is taken as well.
    Sent {
        /// The id of the new message; `None` for edits and press answers.
        message: Option<i32>,
    },
    /// Too many messages: nothing more to this chat before so much time has passed.
    Wait(Duration),
    /// The group became a supergroup and has this new id.
    Moved(i64),
    /// The person or group cannot be written to any more: blocked, removed, deleted, never met.
    Unreachable(String),
    /// What it answers or changes is no longer there: a press of long ago, a deleted message.
    Gone(String),
    /// The platform could not be reached at all, so that surely nothing was sent.
    Offline(String),
    /// A passing fault; whether the message was sent may be unknown.
    Transient(String),
    /// The platform will never take this message.
    Refused(String),
}

/// A chat platform, as the sender sees it.
pub trait Platform {
    /// Hands one message to the platform and waits, for a bounded time, for its answer.
    fn deliver(&self, outgoing: &Outgoing) -> impl Future<Output = Delivery> + Send;
}

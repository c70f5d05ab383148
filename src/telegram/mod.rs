//! The face towards the chat platform, and the only code that names teloxide.
//!
//! Of teloxide this uses the connection, the requests and the forms of what is sent. It does not
//! use its dispatcher, which tells the platform that an update is confirmed before it is handled;
//! and it reads updates with its own small forms (`update.rs`), because a text that carries one
//! entity of a kind that is newer than the library would otherwise arrive without its words.

mod addressed;
mod connect;
mod deliver;
mod deliver_inline;
#[cfg(test)]
mod fake;
mod incoming;
mod intake;
mod keyboard;
mod menus;
mod names;
mod refusal;
mod roles;
mod secret;
mod serving;
mod update;

use std::fmt;
use std::time::Duration;

use teloxide::requests::{Output, Request};
use teloxide::{Bot, RequestError};

pub use connect::ConnectError;
pub use intake::{ALLOWED_UPDATES, LONGEST_POLL, PollError, Received};
pub use roles::Roles;
pub use serving::{ServeError, Serving, serve};

/// The bot's own account.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Myself {
    /// Its id.
    pub id: i64,
    /// Its name for mentions, without the `@`.
    pub username: String,
}

/// A connection to the platform; cheap to clone.
#[derive(Clone)]
pub struct Telegram {
    bot: Bot,
    myself: Myself,
}

/// A request that was not answered as hoped.
#[derive(Debug)]
enum CallError {
    /// No answer within the time that was given.
    Late(Duration),
    /// An answer that says no, or none.
    Request(RequestError),
}

impl Telegram {
    /// The bot's own account.
    #[must_use]
    pub fn myself(&self) -> &Myself {
        &self.myself
    }

    /// What went wrong, for the log, without the token.
    fn explain(&self, error: &CallError) -> String {
        explain(error, self.bot.token())
    }
}

impl fmt::Debug for Telegram {
    /// Leaves out the connection, which would print the token.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Telegram").field("myself", &self.myself).finish_non_exhaustive()
    }
}

/// Sends a request and waits for the answer no longer than `within`: the library sleeps ten
/// seconds at a server's error, and a line that was cut may stay silent.
async fn call<R>(request: R, within: Duration) -> Result<Output<R>, CallError>
where
    R: Request<Err = RequestError>,
{
    match tokio::time::timeout(within, request.send()).await {
        Ok(answer) => answer.map_err(CallError::Request),
        Err(_) => Err(CallError::Late(within)),
    }
}

fn explain(error: &CallError, token: &str) -> String {
    match error {
        CallError::Late(within) => format!("no answer within {} s", within.as_secs()),
        CallError::Request(error) => secret::explain(error, token),
    }
}

//! A stand-in for the chat platform: an HTTP server that speaks the Bot API.
//!
//! The bot under test is pointed at [`FakePlatform::url`] and cannot tell the
//! difference. A test plays the people (*verbs*: somebody writes, presses,
//! leaves), looks at what the bot did (`sent_to`, `callback_answers`, ...) and
//! can make the platform misbehave (`fail`, `flood`, `limit_rates`).
//!
//! The world lives in the test's process, so a bot that is killed and started
//! again finds it as it left it. The server runs on a thread and a runtime of
//! its own: a test may block, and dropping the platform closes every connection.
//!
//! Every request is held against the published schema and the platform's
//! documented limits; what breaks them is a *violation*, and a harness should
//! end each test by asserting that [`FakePlatform::violations`] is empty.

#![allow(
    dead_code,
    unused_imports,
    reason = "a platform offers more than any one test binary uses"
)]

mod body;
mod callbacks;
mod chats;
mod connection;
mod entities;
mod faults;
mod files;
mod html;
mod inline;
mod keyboard;
mod message;
mod methods;
mod own_settings;
mod rates;
mod refusal;
mod schema;
mod sending;
mod server;
mod state;
mod updates;
mod verbs;
mod watching;
mod writing;

mod platform_selftest;

use std::net::{Ipv4Addr, SocketAddr, TcpListener};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread::JoinHandle;

use tokio::sync::{oneshot, watch};

pub use callbacks::CallbackAnswer;
pub use chats::Status;
pub use faults::{EarlyCall, Fault, Which};
pub use inline::{InlineAnswer, InlineArticle};
pub use keyboard::Button;
pub use message::{Message, Picture, SentFile, Version};
pub use rates::Rates;
pub use state::{Call, State, User};
pub use writing::{Pressed, Said, WhichButton};

/// The user that stands for every administrator who writes anonymously.
pub const ANONYMOUS_ADMIN: i64 = 1_087_968_824;

/// The platform, its people and the server that the bot talks to.
pub struct FakePlatform {
    shared: Arc<Shared>,
    address: SocketAddr,
    stop: Option<oneshot::Sender<()>>,
    server: Option<JoinHandle<()>>,
}

/// What the server's thread and the test share.
pub(crate) struct Shared {
    state: Mutex<State>,
    /// Counts changes, so that long polls and waiting tests wake at once.
    changes: watch::Sender<u64>,
}

impl Shared {
    fn read(&self) -> MutexGuard<'_, State> {
        // A test that panicked while it held the lock still wants its report.
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn change<T>(&self, act: impl FnOnce(&mut State) -> T) -> T {
        let done = act(&mut self.read());
        self.changes.send_modify(|count| *count += 1);
        done
    }
}

impl FakePlatform {
    /// Starts the server on a free port of this machine.
    ///
    /// # Panics
    ///
    /// When no port can be bound or no thread started: no test can go on.
    #[expect(
        clippy::unused_async,
        reason = "whoever starts it waits for it, as for everything else"
    )]
    pub async fn start() -> Self {
        let shared =
            Arc::new(Shared { state: Mutex::new(State::new()), changes: watch::Sender::new(0) });
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))
            .and_then(|listener| listener.set_nonblocking(true).map(|()| listener))
            .unwrap_or_else(|error| panic!("the fake platform could not listen: {error}"));
        let address = listener
            .local_addr()
            .unwrap_or_else(|error| panic!("the fake platform has no address: {error}"));
        let (stop, stopped) = oneshot::channel();
        let for_server = Arc::clone(&shared);
        let server = std::thread::Builder::new()
            .name("fake platform".to_owned())
            .spawn(move || server::run(listener, for_server, stopped))
            .unwrap_or_else(|error| panic!("the fake platform got no thread: {error}"));
        Self { shared, address, stop: Some(stop), server: Some(server) }
    }

    /// The base address, for `Bot::set_api_url`.
    pub fn url(&self) -> String {
        format!("http://{}", self.address)
    }

    /// The token that the platform knows the bot by; any other is answered 401.
    pub fn token(&self) -> String {
        self.read().token.clone()
    }

    /// The bot's own user id.
    pub fn bot_id(&self) -> i64 {
        self.read().bot.id
    }

    /// The bot's name for mentions, without the `@`.
    pub fn bot_username(&self) -> String {
        self.read().bot.username.clone().unwrap_or_default()
    }

    /// Gives the bot another name for mentions.
    pub fn set_bot_username(&self, username: &str) {
        self.change(|state| state.bot.username = Some(username.to_owned()));
    }

    /// The world, locked: for questions that no method of this type answers.
    /// Let go of it before the next `await`.
    pub fn read(&self) -> MutexGuard<'_, State> {
        self.shared.read()
    }

    fn change<T>(&self, act: impl FnOnce(&mut State) -> T) -> T {
        self.shared.change(act)
    }
}

impl Drop for FakePlatform {
    fn drop(&mut self) {
        drop(self.stop.take());
        if let Some(server) = self.server.take() {
            // A panic of the server was printed by its own thread.
            let _ = server.join();
        }
    }
}

//! The running bot: polling, sending, mornings and housekeeping, until it is told to stop.

use std::future::Future;
use std::pin::pin;
use std::sync::Arc;
use std::time::Duration;

use tokio::sync::watch;
use tokio::task::{JoinError, JoinSet};
use url::Url;

use super::{ConnectError, PollError, Received, Roles, Telegram};
use crate::app::{App, Clock, SendLimits, Sender, Update, run_sender};
use crate::chat::{Knowledge, KnowledgeError, RoleMatters, command_menus, needs};
use crate::config::Secret;
use crate::messages::Role;
use crate::store::{Store, StoreError};

/// How long one poll waits for something to happen.
const POLL: Duration = Duration::from_secs(25);

/// How long the parts may take to stop; together with the rest it stays below ten seconds.
const STOPPING: Duration = Duration::from_secs(8);

/// How often old rows are cleared away.
const PRUNING: Duration = Duration::from_hours(1);

/// The longest pause after a failure.
const LONGEST_PAUSE: Duration = Duration::from_secs(30);

/// After so many failures in a row a batch is taken in one by one, so that an update which the
/// store cannot take does not hold up the others for ever.
const TRIES_TOGETHER: u32 = 3;

/// After so many refusals of the token in a row, some four minutes, it was taken back. The
/// platform refuses good ones too while it is in trouble.
const TOKEN_REFUSALS: u32 = 12;

/// What the running bot needs to be told; all of it are ordinary arguments.
#[derive(Debug)]
pub struct Serving {
    /// The bot's token.
    pub token: Secret,
    /// Where the Bot API is; the platform's own by default.
    pub api_url: Option<Url>,
    /// Where everything is kept.
    pub database_url: String,
    /// Where *now* comes from.
    pub clock: Clock,
    /// How fast it may send.
    pub limits: SendLimits,
}

/// Why the bot could not run.
#[derive(Debug, thiserror::Error)]
pub enum ServeError {
    /// The database.
    #[error("SOWBELL_DATABASE_URL: {0}")]
    Store(#[from] StoreError),
    /// The built-in data.
    #[error("the built-in data is broken: {0}")]
    Knowledge(#[from] KnowledgeError),
    /// The platform.
    #[error(transparent)]
    Connect(#[from] ConnectError),
    /// The platform took the token back while the bot ran.
    #[error(transparent)]
    Polling(#[from] PollError),
    /// The part that sends, makes mornings or clears away ended by itself, which is a fault of the
    /// program: without it reminders would fail silently, so everything ends and can be started
    /// again.
    #[error("a part of the bot ended by itself: {0}")]
    PartEnded(String),
}

/// Runs the bot until `shutdown`, then lets what is under way end within ten seconds.
///
/// # Errors
/// When it cannot start, or when the platform refuses the token. A platform or a database that
/// fails later is waited for.
pub async fn serve(
    serving: Serving,
    shutdown: impl Future<Output = ()> + Send + 'static,
) -> Result<(), ServeError> {
    let (stop, stopped) = watch::channel(false);
    let told = stop.clone();
    let waiting = tokio::spawn(async move {
        shutdown.await;
        let _ = told.send(true);
    });
    let result = run(serving, &stop, stopped).await;
    waiting.abort();
    result
}

async fn run(
    serving: Serving,
    stop: &watch::Sender<bool>,
    stopped: watch::Receiver<bool>,
) -> Result<(), ServeError> {
    let Serving { token, api_url, database_url, clock, limits } = serving;
    let knowledge = Arc::new(Knowledge::embedded()?);
    let store = Store::open(&database_url).await?;
    let counts = store.counts().await?;
    tracing::info!(?counts, "the database is open");
    let telegram = tokio::select! {
        connected = Telegram::connect(token.reveal(), api_url) => connected?,
        () = stopping(stopped.clone()) => return Ok(()),
    };
    tracing::info!(bot = telegram.myself().username, "connected");

    let app = App::new(store.clone(), Arc::clone(&knowledge));
    let mut parts = JoinSet::new();
    parts.spawn({
        let (app, telegram, clock) = (app.clone(), telegram.clone(), clock.clone());
        let stopped = stopping(stopped.clone());
        async move {
            let sender = Sender::new(limits);
            let now = move || clock.now();
            run_sender(sender, &app.store, &telegram, now, &app.queued, stopped).await;
        }
    });
    parts.spawn(mornings(app.clone(), clock.clone(), stopped.clone()));
    parts.spawn(housekeeping(store.clone(), clock.clone(), stopped.clone()));
    let waking = tokio::spawn(wake_when_set(app.clone(), clock.clone()));
    let menus = {
        let telegram = telegram.clone();
        let menus = command_menus(&knowledge);
        tokio::spawn(async move { telegram.set_menus(&menus).await })
    };

    let ended = {
        let mut polling = pin!(poll(&app, &telegram, &clock, stopped.clone()));
        tokio::select! {
            polled = &mut polling => polled.map_err(ServeError::from),
            // Told to stop, all parts end; before that, none does.
            Some(part) = parts.join_next() => {
                let told = *stopped.borrow();
                let _ = stop.send(true);
                polling.await.map_err(ServeError::from).and(by_itself(part, told))
            }
        }
    };
    // Whatever ended the polling ends the other parts too.
    let _ = stop.send(true);
    menus.abort();
    waking.abort();
    let others = async {
        while let Some(part) = parts.join_next().await {
            if let Err(error) = part {
                tracing::error!(%error, "a part of the bot ended badly");
            }
        }
    };
    if tokio::time::timeout(STOPPING, others).await.is_err() {
        tracing::warn!("stopped while something was still under way");
    }
    let closing = tokio::time::timeout(Duration::from_secs(1), store.close()).await;
    if closing.is_err() {
        tracing::warn!("the database was still busy");
    }
    tracing::info!("stopped");
    ended
}

/// What it means that a part ended: nothing, where all were told to stop.
fn by_itself(part: Result<(), JoinError>, told_to_stop: bool) -> Result<(), ServeError> {
    match part {
        Ok(()) if told_to_stop => Ok(()),
        Ok(()) => Err(ServeError::PartEnded("without a reason".to_owned())),
        Err(error) => Err(ServeError::PartEnded(error.to_string())),
    }
}

async fn stopping(mut stopped: watch::Receiver<bool>) {
    // An error means that the sender is gone, and then it is time to stop too.
    let _ = stopped.wait_for(|stopped| *stopped).await;
}

/// Pauses; `true` when the bot is to stop.
async fn pause(length: Duration, stopped: &watch::Receiver<bool>) -> bool {
    tokio::select! {
        () = tokio::time::sleep(length) => *stopped.borrow(),
        () = stopping(stopped.clone()) => true,
    }
}

fn backoff(failures: u32) -> Duration {
    Duration::from_secs(1).saturating_mul(2_u32.saturating_pow(failures.min(10))).min(LONGEST_PAUSE)
}

/// Polls and takes in, batch by batch. The platform is told that a batch is confirmed only by the
/// poll after the one whose transaction kept it.
async fn poll(
    app: &App,
    telegram: &Telegram,
    clock: &Clock,
    stopped: watch::Receiver<bool>,
) -> Result<(), PollError> {
    let roles = Roles::new(telegram.clone());
    let mut offset = None;
    let mut failures = 0;
    let mut refusals = 0;
    loop {
        let polled = tokio::select! {
            polled = telegram.poll(offset, POLL) => polled,
            () = stopping(stopped.clone()) => return Ok(()),
        };
        let received = match polled {
            Ok(received) => {
                failures = 0;
                refusals = 0;
                received
            }
            Err(error) => {
                refusals = if error == PollError::TokenRefused { refusals + 1 } else { 0 };
                if refusals == TOKEN_REFUSALS {
                    return Err(error);
                }
                tracing::warn!(%error, "polling again after a pause");
                let length = match error {
                    PollError::Wait(length) => length,
                    _ => backoff(failures),
                };
                failures += 1;
                if pause(length, &stopped).await {
                    return Ok(());
                }
                continue;
            }
        };
        // Ids may restart lower after a quiet week, so the last one counts, not the highest.
        let Some(last) = received.last().map(|received| received.key.update) else { continue };
        let updates = with_roles(received, &roles, clock).await;
        if !keep(app, &updates, clock, &stopped).await {
            return Ok(());
        }
        offset = Some(last + 1);
    }
}

/// Looks up the role of the senders whose role matters, since deciding is pure.
async fn with_roles(received: Vec<Received>, roles: &Roles, clock: &Clock) -> Vec<Update> {
    let mut updates = Vec::with_capacity(received.len());
    for Received { key, mut incoming } in received {
        if let Some(incoming) = &mut incoming
            && incoming.from.role == Role::Unknown
        {
            let refused = match needs(incoming).role {
                RoleMatters::No => None,
                RoleMatters::Perhaps => Some(false),
                RoleMatters::Surely => Some(true),
            };
            if let Some(refused) = refused {
                let (chat, user) = (incoming.chat.id, incoming.from.user);
                incoming.from.role = roles.role_of(chat, user, refused, clock.now()).await;
            }
        }
        updates.push(Update { key, incoming });
    }
    updates
}

/// Keeps a batch, trying for as long as it takes; `false` when the bot is to stop before that.
async fn keep(
    app: &App,
    updates: &[Update],
    clock: &Clock,
    stopped: &watch::Receiver<bool>,
) -> bool {
    let mut failures = 0;
    loop {
        let kept = if failures < TRIES_TOGETHER {
            app.take_in(updates, clock.now()).await
        } else {
            app.take_in_one_by_one(updates, clock.now()).await
        };
        let Err(error) = kept else { return true };
        tracing::error!(%error, "updates could not be kept and are tried again");
        failures += 1;
        if pause(backoff(failures - 1), stopped).await {
            return false;
        }
    }
}

/// Ticks whenever somebody's reminder time has come.
async fn mornings(app: App, clock: Clock, stopped: watch::Receiver<bool>) {
    loop {
        let now = clock.now();
        let next = match app.tick(now).await {
            Ok(_) => app.next_tick(now).await,
            Err(error) => Err(error),
        };
        let wait = match next {
            Ok(next) => (next - clock.now()).to_std().unwrap_or_default(),
            Err(error) => {
                tracing::error!(%error, "the morning's tick failed and is tried again");
                Duration::from_secs(5)
            }
        };
        tokio::select! {
            stop = pause(wait, &stopped) => if stop { return },
            () = app.mornings_changed.notified() => {}
        }
    }
}

/// What waits for a time of day looks at the clock again whenever it was set.
async fn wake_when_set(app: App, clock: Clock) {
    loop {
        clock.until_set().await;
        app.queued.notify_one();
        app.mornings_changed.notify_one();
    }
}

async fn housekeeping(store: Store, clock: Clock, stopped: watch::Receiver<bool>) {
    loop {
        match store.prune(clock.now()).await {
            Ok(rows) => tracing::debug!(rows, "cleared away"),
            Err(error) => tracing::error!(%error, "clearing away failed"),
        }
        if pause(PRUNING, &stopped).await {
            return;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[tokio::test]
    async fn a_part_that_ends_before_it_was_told_to_ends_the_program() {
        let ended = |part: &'static str| tokio::spawn(async move { assert_eq!(part, "sound") });
        assert!(by_itself(ended("sound").await, true).is_ok());
        for (part, told) in [("sound", false), ("broken", false), ("broken", true)] {
            let error = by_itself(ended(part).await, told).expect_err("it is told");
            assert!(matches!(error, ServeError::PartEnded(_)), "{part}, {told}: {error}");
        }
    }
}

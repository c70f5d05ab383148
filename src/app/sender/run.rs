//! The loop around the sender's step.

use std::future::Future;
use std::pin::pin;
use std::time::Duration;

use chrono::{DateTime, Utc};
use futures_util::StreamExt;
use futures_util::future::FutureExt;
use futures_util::stream::FuturesUnordered;
use tokio::sync::Notify;

use super::{Begun, Outbox, Sender, SenderStep, attempt, backoff};
use crate::app::Platform;

/// How long what is under way may go on after the program was told to stop.
const LAST_TRIES: Duration = Duration::from_secs(5);

/// The longest sleep of the loop, so that a clock that was set is noticed.
const LONGEST_SLEEP: Duration = Duration::from_secs(30);

/// Sends until `shutdown`, then lets what is under way end within a few seconds.
///
/// Each try is settled when it ends; what ends in the same moment is settled together. `clock` is
/// read once a turn. `queued` is notified (with [`Notify::notify_one`]) whenever something was
/// queued or the clock was set.
pub async fn run_sender(
    mut sender: Sender,
    outbox: &impl Outbox,
    platform: &impl Platform,
    clock: impl Fn() -> DateTime<Utc>,
    queued: &Notify,
    shutdown: impl Future<Output = ()>,
) {
    let mut shutdown = pin!(shutdown);
    let mut tries = FuturesUnordered::new();
    let mut failures = 0;
    loop {
        let begun = Begun::at(clock());
        let wait = match sender.take(outbox, begun.since).await {
            Ok((rows, step)) => {
                failures = 0;
                tries.extend(rows.into_iter().map(|row| attempt(platform, row, begun)));
                match step {
                    SenderStep::Again => Duration::ZERO,
                    SenderStep::At(when) => (when - clock()).to_std().unwrap_or_default(),
                    SenderStep::Idle => LONGEST_SLEEP,
                }
            }
            Err(error) => {
                tracing::error!(%error, "the sender cannot use the queue");
                failures += 1;
                backoff(failures).to_std().unwrap_or(LONGEST_SLEEP)
            }
        };
        tokio::select! {
            biased;
            () = &mut shutdown => break,
            // While the queue fails, what lands waits with the rest, so that the pause is kept.
            Some(landed) = tries.next(), if failures == 0 => {
                sender.landed(landed);
                while let Some(Some(landed)) = tries.next().now_or_never() {
                    sender.landed(landed);
                }
            }
            () = queued.notified(), if failures == 0 => {}
            () = tokio::time::sleep(wait.min(LONGEST_SLEEP)) => {}
        }
    }
    let last = async {
        while let Some(landed) = tries.next().await {
            sender.landed(landed);
        }
    };
    if tokio::time::timeout(LAST_TRIES, last).await.is_err() {
        tracing::warn!("stopped while messages were under way; they are sent again");
    }
    if let Err(error) = sender.settle(outbox, clock()).await {
        tracing::error!(%error, "what was sent last could not be kept and is sent again");
    }
}

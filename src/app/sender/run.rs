//! The loop around the sender's step.

use std::future::Future;
use std::pin::pin;
use std::time::Duration;

use chrono::{DateTime, Utc};
use tokio::sync::Notify;

use super::{Outbox, Sender, SenderStep, backoff};
use crate::app::Platform;

/// How long a step that is under way may go on after the program was told to stop.
const LAST_STEP: Duration = Duration::from_secs(5);

/// The longest sleep of the loop, so that a clock that was set is noticed.
const LONGEST_SLEEP: Duration = Duration::from_secs(30);

/// Steps until `shutdown`, then lets the step under way end within a few seconds.
///
/// `clock` is read once a step. `queued` is notified (with [`Notify::notify_one`]) whenever
/// something was queued or the clock was set.
pub async fn run_sender(
    mut sender: Sender,
    outbox: &impl Outbox,
    platform: &impl Platform,
    clock: impl Fn() -> DateTime<Utc>,
    queued: &Notify,
    shutdown: impl Future<Output = ()>,
) {
    let mut shutdown = pin!(shutdown);
    let mut failures = 0;
    loop {
        let stepped = {
            let mut step = pin!(sender.step(outbox, platform, clock()));
            tokio::select! {
                biased;
                stepped = &mut step => stepped,
                () = &mut shutdown => {
                    if tokio::time::timeout(LAST_STEP, step).await.is_err() {
                        tracing::warn!("stopped while messages were under way; they are sent again");
                    }
                    return;
                }
            }
        };
        if stepped.is_ok() {
            failures = 0;
        }
        let wait = match stepped {
            Ok(SenderStep::Again) => Duration::ZERO,
            Ok(SenderStep::At(when)) => (when - clock()).to_std().unwrap_or_default(),
            Ok(SenderStep::Idle) => LONGEST_SLEEP,
            Err(error) => {
                tracing::error!(%error, "the sender cannot use the queue");
                failures += 1;
                backoff(failures).to_std().unwrap_or(LONGEST_SLEEP)
            }
        };
        tokio::select! {
            biased;
            () = &mut shutdown => return,
            () = queued.notified(), if failures == 0 => {}
            () = tokio::time::sleep(wait.min(LONGEST_SLEEP)) => {}
        }
    }
}

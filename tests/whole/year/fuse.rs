//! Where the program is killed next.

use chrono::{DateTime, Utc};
use rand::Rng;
use rand::rngs::StdRng;
use sowbell::app::{App, Update, morning};
use sowbell::chat::decide;
use sowbell::messages::Priority;
use sowbell::store::StoreError;

/// The point at which the program is killed when it next gets there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fuse {
    /// It has polled updates and taken none in.
    BeforeTakingIn,
    /// It has decided what updates lead to, and is about to commit.
    TakingIn,
    /// Updates are taken in and not confirmed to the platform.
    AfterTakingIn,
    /// It has made mornings, and is about to commit them.
    Ticking,
    /// It has handed so many more messages over and was not answered.
    Sending(u32),
    /// It was answered and has noted nothing.
    Answered,
    /// It does nothing in particular.
    Idle,
}

impl Fuse {
    /// Any point.
    pub fn any(chance: &mut StdRng) -> Self {
        match chance.random_range(0..7) {
            0 => Self::BeforeTakingIn,
            1 => Self::TakingIn,
            2 => Self::AfterTakingIn,
            3 => Self::Ticking,
            4 => Self::Sending(chance.random_range(1..12)),
            5 => Self::Answered,
            _ => Self::Idle,
        }
    }

    pub fn name(self) -> &'static str {
        match self {
            Self::BeforeTakingIn => "before taking in",
            Self::TakingIn => "between decide and commit",
            Self::AfterTakingIn => "before confirming",
            Self::Ticking => "in a tick",
            Self::Sending(_) => "in a send",
            Self::Answered => "between send and settle",
            Self::Idle => "at rest",
        }
    }
}

/// Takes updates in as the program does, up to the commit, which never comes.
pub async fn take_in_without_commit(
    app: &App,
    updates: &[Update],
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let mut work = app.store.begin().await?;
    for update in updates {
        if work.already_seen(update.key).await? {
            continue;
        }
        work.mark_seen(update.key, now).await?;
        let Some(incoming) = &update.incoming else { continue };
        let facts = work.facts(incoming, None, now).await?;
        let outcome = decide(&app.knowledge, incoming, &facts);
        for change in &outcome.changes {
            work.apply(&facts, incoming, change, now).await?;
        }
        for outgoing in &outcome.outgoing {
            work.queue(outgoing, Priority::Reply, None, now, None).await?;
        }
    }
    Ok(())
}

/// Makes mornings as the program does, up to the commit, which never comes; gives how many.
pub async fn tick_without_commit(app: &App, now: DateTime<Utc>) -> Result<usize, StoreError> {
    let mut work = app.store.begin().await?;
    let due = work.members_due(now, 100).await?;
    let mornings: Vec<_> = due.iter().map(|due| morning(&app.knowledge, due, now)).collect();
    work.keep_mornings(&mornings, now).await?;
    Ok(mornings.len())
}

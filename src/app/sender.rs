//! The sender: the only code that talks out, one step at a time.
//!
//! A step takes what waits in the queue, hands it to the platform within the limits and notes how
//! each try ended. The loop around it, [`run_sender`], keeps the tries under way and settles each
//! as it ends, so that a slow one holds up its own chat and nobody else.

mod outbox;
mod run;

use std::collections::{BTreeMap, BTreeSet, HashMap};

use chrono::{DateTime, TimeDelta, Utc};
use futures_util::future::join_all;
use tokio::time::Instant;

use super::limits::{Limits, SendLimits};
use super::platform::{Delivery, Platform};
use crate::messages::{Outgoing, Priority};
use crate::store::{Queued, SendEnd, StoreError};

pub use outbox::Outbox;
pub use run::run_sender;

/// How many messages are under way at once, each to another chat.
const MOST_AT_ONCE: usize = 16;

/// The longest pause before a try is repeated.
const LONGEST_BACKOFF: TimeDelta = TimeDelta::seconds(60);

/// The longest wait that the platform may ask for; more than that is taken for a slip.
const LONGEST_WAIT: TimeDelta = TimeDelta::days(7);

/// When so many chats are told to wait within [`LIMITED_TOGETHER`], everybody waits.
const SEVERAL_CHATS: usize = 3;

/// How close together they are told.
const LIMITED_TOGETHER: TimeDelta = TimeDelta::seconds(5);

/// When the next step is worth taking.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SenderStep {
    /// At once: something was sent, and more may wait.
    Again,
    /// At this instant, or when something new is queued.
    At(DateTime<Utc>),
    /// When something new is queued.
    Idle,
}

/// What the sender remembers between steps; a new one after a restart loses nothing.
#[derive(Debug)]
pub struct Sender {
    limits: Limits,
    /// Chats that nothing is sent to before an instant.
    holds: HashMap<i64, DateTime<Utc>>,
    /// Nothing is sent to anybody before this instant.
    paused_until: Option<DateTime<Utc>>,
    /// Who was told to wait lately: when they were told, and until when.
    limited: BTreeMap<i64, (DateTime<Utc>, DateTime<Utc>)>,
    /// What is under way: the number of each row, with its chat.
    under_way: BTreeMap<i64, Option<i64>>,
    /// When the platform last answered at all.
    last_answer: Option<DateTime<Utc>>,
    /// How many pauses in a row the platform could not be reached.
    offline_in_a_row: u32,
    /// Ends that the store has not taken yet; a message that was sent must not be sent again
    /// because the store failed for a moment.
    unsettled: Vec<(i64, SendEnd)>,
}

/// The moment at which something began, with what passes since measured by the machine.
#[derive(Debug, Clone, Copy)]
struct Begun {
    since: DateTime<Utc>,
    started: Instant,
}

impl Begun {
    /// `now` is of this moment: what the queue takes to answer counts as passed as well, or waits
    /// would end too early by as much.
    fn at(now: DateTime<Utc>) -> Self {
        Self { since: now, started: Instant::now() }
    }

    /// The moment it is now.
    fn now(self) -> DateTime<Utc> {
        self.since + TimeDelta::from_std(self.started.elapsed()).unwrap_or(TimeDelta::zero())
    }
}

/// A try that ended.
#[derive(Debug)]
pub struct Landed {
    /// What was handed to the platform.
    pub row: Queued,
    /// What the platform answered.
    pub delivery: Delivery,
    /// When it was taken from the queue.
    pub begun: DateTime<Utc>,
    /// When the platform answered.
    pub at: DateTime<Utc>,
}

/// Hands one message to the platform.
async fn attempt(platform: &impl Platform, row: Queued, begun: Begun) -> Landed {
    let delivery = platform.deliver(&row.outgoing).await;
    Landed { row, delivery, begun: begun.since, at: begun.now() }
}

impl Sender {
    /// A sender that keeps these limits.
    #[must_use]
    pub fn new(limits: SendLimits) -> Self {
        Self {
            limits: Limits::new(limits),
            holds: HashMap::new(),
            paused_until: None,
            limited: BTreeMap::new(),
            under_way: BTreeMap::new(),
            last_answer: None,
            offline_in_a_row: 0,
            unsettled: Vec::new(),
        }
    }

    /// Sends what may be sent at `now`, waits for every answer, and says when to come back.
    ///
    /// [`run_sender`] does the same without waiting for the slowest.
    ///
    /// # Errors
    ///
    /// When the store fails. What was sent meanwhile is remembered and settled at the next step.
    pub async fn step(
        &mut self,
        outbox: &impl Outbox,
        platform: &impl Platform,
        now: DateTime<Utc>,
    ) -> Result<SenderStep, StoreError> {
        let begun = Begun::at(now);
        let (rows, step) = self.take(outbox, now).await?;
        if rows.is_empty() {
            return Ok(step);
        }
        let tries = rows.into_iter().map(|row| attempt(platform, row, begun));
        for landed in join_all(tries).await {
            self.landed(landed);
        }
        self.settle(outbox, begun.now()).await?;
        Ok(SenderStep::Again)
    }

    /// Settles what has landed, then gives what may be handed to the platform at `now` beside what
    /// is under way, and when to come back where that is nothing. Each of these must come back
    /// through [`Sender::landed`].
    ///
    /// # Errors
    ///
    /// When the store fails. Ends that it has not taken are remembered.
    pub async fn take(
        &mut self,
        outbox: &impl Outbox,
        now: DateTime<Utc>,
    ) -> Result<(Vec<Queued>, SenderStep), StoreError> {
        self.settle(outbox, now).await?;
        if let Some(until) = self.paused_until.filter(|&until| until > now) {
            return Ok((Vec::new(), SenderStep::At(until)));
        }
        if self.under_way.len() >= MOST_AT_ONCE {
            return Ok((Vec::new(), SenderStep::Idle));
        }
        // What is under way was not answered yet, so the limits do not know of it.
        let room = self.limits.room(now).saturating_sub(self.under_way.len());
        let room = room.min(MOST_AT_ONCE - self.under_way.len());
        if room == 0 {
            let free = self.limits.free_at(now);
            // Only what lands makes room where the limits alone would still have some.
            let step = if free > now { SenderStep::At(free) } else { SenderStep::Idle };
            return Ok((Vec::new(), step));
        }
        let held = self.held(now);
        let busy = self.under_way.values().flatten();
        let except: Vec<i64> = held.keys().chain(busy).copied().collect();
        let rows = self.sendable(outbox.waiting(now, &except, room).await?);
        if rows.is_empty() {
            let wake = outbox.next_wake(now).await?;
            return Ok((rows, rest(now, wake, held.into_values().min())));
        }
        self.under_way.extend(rows.iter().map(|row| (row.id, row.outgoing.chat())));
        Ok((rows, SenderStep::Again))
    }

    /// Notes how a try ended; it is settled with the next step.
    pub fn landed(&mut self, Landed { row, delivery, begun, at }: Landed) {
        self.under_way.remove(&row.id);
        if matches!(delivery, Delivery::Offline(_)) {
            // Where others were answered meanwhile, or everybody waits already, this was one line.
            let answered = self.last_answer.is_some_and(|last| last >= begun);
            let waits = self.paused_until.is_some_and(|until| until > at);
            if !answered && !waits {
                let until = at + backoff(self.offline_in_a_row);
                self.offline_in_a_row = self.offline_in_a_row.saturating_add(1);
                tracing::warn!(%until, "the chat platform cannot be reached; everything waits");
                self.pause(until);
            }
        } else {
            self.last_answer = Some(self.last_answer.map_or(at, |last| last.max(at)));
            self.offline_in_a_row = 0;
        }
        self.limits.sent(row.outgoing.chat(), at);
        let end = self.end_of(&row, delivery, at);
        log_end(&row, &end);
        self.unsettled.push((row.id, end));
    }

    /// Settles what is not settled yet. Where one end cannot be kept, the others are all the same.
    async fn settle(&mut self, outbox: &impl Outbox, now: DateTime<Utc>) -> Result<(), StoreError> {
        if self.unsettled.is_empty() {
            return Ok(());
        }
        let Err(error) = outbox.settle_many(&self.unsettled, now).await else {
            self.unsettled.clear();
            return Ok(());
        };
        let mut left = Vec::new();
        for end in &self.unsettled {
            if let Err(error) = outbox.settle_many(std::slice::from_ref(end), now).await {
                tracing::error!(id = end.0, %error, "how a message ended cannot be kept");
                left.push(end.clone());
            }
        }
        let some_were_kept = left.len() < self.unsettled.len();
        self.unsettled = left;
        // With a single end that fails alone, the next question shows whether the store works.
        if some_were_kept || self.unsettled.len() == 1 { Ok(()) } else { Err(error) }
    }

    /// Keeps the first row of each chat, since two messages under way to one chat could change
    /// places, and none that is under way or was sent but could not be settled. (A press answer
    /// has no chat by which the queue could leave it out.)
    fn sendable(&self, rows: Vec<Queued>) -> Vec<Queued> {
        let mut chats = BTreeSet::new();
        let settled = |row: &Queued| {
            self.unsettled.iter().all(|&(id, _)| id != row.id)
                && !self.under_way.contains_key(&row.id)
        };
        let mut first = |row: &Queued| row.outgoing.chat().is_none_or(|chat| chats.insert(chat));
        rows.into_iter().filter(|row| settled(row) && first(row)).collect()
    }

    /// The chats that nothing may be sent to now, each with the end of its wait.
    fn held(&mut self, now: DateTime<Utc>) -> BTreeMap<i64, DateTime<Utc>> {
        self.holds.retain(|_, until| *until > now);
        let mut held = self.limits.full_chats(now);
        for (&chat, &until) in &self.holds {
            let end = held.entry(chat).or_insert(until);
            *end = until.max(*end);
        }
        held
    }

    fn end_of(&mut self, row: &Queued, delivery: Delivery, at: DateTime<Utc>) -> SendEnd {
        let chat = row.outgoing.chat();
        match delivery {
            Delivery::Sent { message } => SendEnd::Sent { message },
            Delivery::Moved(to) => SendEnd::Moved { to },
            Delivery::Unreachable(why) => SendEnd::Unreachable { why },
            Delivery::Gone(_) if chat.is_none() => SendEnd::Expired,
            Delivery::Gone(why) | Delivery::Refused(why) => SendEnd::Failed { why },
            Delivery::Wait(wait) => {
                let told = TimeDelta::from_std(wait).unwrap_or(LONGEST_WAIT);
                let until = at + told.clamp(TimeDelta::seconds(1), LONGEST_WAIT);
                self.told_to_wait(chat, at, until);
                let why = format!("told to wait {} s", wait.as_secs());
                SendEnd::Retry { at: until, counts: false, why }
            }
            Delivery::Offline(why) => {
                let until =
                    self.paused_until.filter(|&until| until > at).unwrap_or(at + backoff(0));
                SendEnd::Retry { at: until, counts: false, why }
            }
            Delivery::Transient(why) => again(row, at, why),
        }
    }

    fn told_to_wait(&mut self, chat: Option<i64>, at: DateTime<Utc>, until: DateTime<Utc>) {
        let Some(chat) = chat else {
            // A press answer counts against no chat, so the limit it met is everybody's.
            self.pause(until);
            return;
        };
        self.hold(chat, until);
        self.limited.insert(chat, (at, until));
        self.limited.retain(|_, (told, _)| *told + LIMITED_TOGETHER >= at);
        if self.limited.len() >= SEVERAL_CHATS {
            // One limit for all is lifted for all at the same time, so everybody waits for the
            // first end; a chat that has a longer wait of its own is held by that anyway.
            let first_end = self.limited.values().map(|&(_, until)| until).min();
            tracing::warn!(?first_end, "several chats are limited at once; everything waits");
            self.pause(first_end.unwrap_or(until));
        }
    }

    fn hold(&mut self, chat: i64, until: DateTime<Utc>) {
        let end = self.holds.entry(chat).or_insert(until);
        *end = until.max(*end);
    }

    fn pause(&mut self, until: DateTime<Utc>) {
        self.paused_until = Some(self.paused_until.map_or(until, |end| end.max(until)));
    }
}

/// How often a message is tried when the platform fails; reminders go on until they expire, for
/// which this is only an upper bound.
const fn most_tries(priority: Priority) -> u32 {
    match priority {
        Priority::Press => 4,
        Priority::Reply => 8,
        Priority::Reminder => 500,
    }
}

/// After a passing fault: again after a pause, or the end when that was tried often enough.
fn again(row: &Queued, at: DateTime<Utc>, why: String) -> SendEnd {
    if row.attempts.saturating_add(1) >= most_tries(row.priority) {
        return match row.priority {
            Priority::Press => SendEnd::Expired,
            Priority::Reply | Priority::Reminder => SendEnd::Failed { why },
        };
    }
    SendEnd::Retry { at: at + backoff(row.attempts), counts: true, why }
}

/// 1, 2, 4 ... 60 seconds.
fn backoff(tries_before: u32) -> TimeDelta {
    TimeDelta::seconds(1 << tries_before.min(6)).min(LONGEST_BACKOFF)
}

/// When to come back if nothing can be sent now.
fn rest(
    now: DateTime<Utc>,
    wake: Option<DateTime<Utc>>,
    first_free: Option<DateTime<Utc>>,
) -> SenderStep {
    let later = wake.filter(|&wake| wake > now);
    later.into_iter().chain(first_free).min().map_or(SenderStep::Idle, SenderStep::At)
}

fn log_end(row: &Queued, end: &SendEnd) {
    let id = row.id;
    let kind = match row.outgoing {
        Outgoing::Say(_) => "message",
        Outgoing::Edit(_) => "edit",
        Outgoing::Document(_) => "document",
        Outgoing::AnswerPress(_) | Outgoing::OpenByPress(_) => "press answer",
        Outgoing::AnswerInline(_) => "inline answer",
    };
    match end {
        SendEnd::Sent { .. } => tracing::debug!(id, kind, "sent"),
        SendEnd::Expired => tracing::info!(id, kind, "expired"),
        SendEnd::Retry { at, why, .. } => tracing::info!(id, kind, %at, why, "will be tried again"),
        SendEnd::Unreachable { why } => tracing::info!(id, kind, why, "nobody to reach"),
        SendEnd::Failed { why } => tracing::warn!(id, kind, why, "could not be sent"),
        SendEnd::Moved { to } => tracing::info!(id, kind, to, "the group has a new id"),
    }
}

#[cfg(test)]
mod tests;

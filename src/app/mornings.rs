//! The morning's tick: the members whose time has come get their one message.

use chrono::{DateTime, Days, TimeDelta, Utc};

use crate::chat::Knowledge;
use crate::club::{ReminderTime, Settings, as_grown};
use crate::messages::{Outgoing, Say};
use crate::planning::JobKey;
use crate::reminders::{Known, MOST_JOBS, due_jobs, reminder_buttons, reminder_text};
use crate::store::{MemberDue, Morning, StoreError};

use super::App;

/// How many mornings are made and kept in one transaction. Whoever asks something meanwhile waits
/// for up to three of these: for one to be taken in, and for two until the sender has its turn.
const TOGETHER: usize = 100;

/// The longest pause between two looks at the clock, so that a machine that slept is noticed.
const LONGEST_PAUSE: TimeDelta = TimeDelta::seconds(15);

impl App {
    /// Queues the morning's message of every member whose reminder time has passed and says how
    /// many members that were. A member with nothing due gets none.
    ///
    /// # Errors
    /// When the store fails; what was kept before stays kept, and the rest is due again.
    pub async fn tick(&self, now: DateTime<Utc>) -> Result<usize, StoreError> {
        self.store.expire(now).await?;
        let mut members = 0;
        loop {
            // Read and kept in one transaction, so that no change of a member falls in between.
            let mut work = self.store.begin().await?;
            let due = work.members_due(now, TOGETHER).await?;
            let mornings: Vec<Morning> =
                due.iter().map(|due| morning(&self.knowledge, due, now)).collect();
            work.keep_mornings(&mornings, now).await?;
            work.commit().await?;
            members += due.len();
            if mornings.iter().any(|morning| morning.outgoing.is_some()) {
                self.queued.notify_one();
            }
            if due.len() < TOGETHER {
                return Ok(members);
            }
        }
    }

    /// When to look again: at the next reminder time, and at least every few seconds.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn next_tick(&self, now: DateTime<Utc>) -> Result<DateTime<Utc>, StoreError> {
        let latest = now + LONGEST_PAUSE;
        let next = self.store.next_morning().await?;
        Ok(next.map_or(latest, |next| next.clamp(now, latest)))
    }
}

/// What a member's morning comes to at `now`: at most one message, for today.
#[must_use]
pub fn morning(knowledge: &Knowledge, due: &MemberDue, now: DateTime<Utc>) -> Morning {
    let settings = Settings::of(Some(&due.member), due.club.as_ref());
    let zone = settings.zone.is;
    let time = due.member.reminder_time;
    let date = now.with_timezone(&zone).date_naive();
    let midnight = ReminderTime::from_minutes(0).unwrap_or_default();
    let mut morning = Morning {
        member: due.member.id,
        date,
        outgoing: None,
        named: Vec::new(),
        next: time.next_after(now, zone),
        expires: midnight.on(date + Days::new(1), zone),
    };
    // After a stop over night, today's message waits for its own hour.
    if time.on(date, zone) > now {
        return morning;
    }
    let Some(garden) = settings.garden.is else { return morning };
    let known = Known { marks: &due.marks, sowings: &due.sowings };
    let own = as_grown(&knowledge.catalogue, &due.varieties);
    let catalogue = own.as_ref().unwrap_or(&knowledge.catalogue);
    let crops = due.crops.iter().filter_map(|id| catalogue.get(id.as_str()));
    let mut jobs = due_jobs(crops, known, garden, date);
    let more = jobs.len().saturating_sub(MOST_JOBS);
    jobs.truncate(MOST_JOBS);
    if jobs.is_empty() {
        return morning;
    }
    let speech = knowledge.speech_for(&settings);
    let keys: Vec<JobKey> = jobs.iter().map(|due| due.job.key.clone()).collect();
    morning.outgoing = Some(Outgoing::Say(Say {
        chat: due.member.user,
        text: reminder_text(&jobs, more, catalogue, &speech, date),
        buttons: reminder_buttons(&keys, &due.marks, &speech),
        ..Say::default()
    }));
    morning.named = keys;
    morning
}

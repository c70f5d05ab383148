//! The morning's tick: the members whose time has come get their one message.

use chrono::{DateTime, TimeDelta, Utc};

use crate::chat::Knowledge;
use crate::club::{ListNews, ReminderTime, Settings, as_grown};
use crate::messages::{LONGEST_TEXT, Outgoing, Say};
use crate::planning::JobKey;
use crate::reminders::{
    DueJob, Known, MOST_AT_ONCE, MOST_JOBS, MOST_LISTS_TOLD, Named, cannot_wait, due_jobs,
    jobs_of_the_week, reminder_buttons, reminder_text,
};
use crate::store::{ClubDue, DigestMade, MemberDue, Morning, StoreError};
use crate::wording::shorten_to_limit;

use super::App;
use super::digests::digest;
use super::unharmed::unharmed;

/// Makes a member's morning; [`morning`] is the one of this program.
pub type MakeMorning = fn(&Knowledge, &MemberDue, DateTime<Utc>) -> Morning;

/// How many mornings are made and kept in one transaction. Whoever asks something meanwhile waits
/// for up to three of these: for one to be taken in, and for two until the sender has its turn.
const TOGETHER: usize = 100;

/// The longest pause between two looks at the clock, so that a machine that slept is noticed.
const LONGEST_PAUSE: TimeDelta = TimeDelta::seconds(15);

impl App {
    /// Queues the morning's message of every member whose reminder time has passed and says how
    /// many members that were. A member with nothing due and no news gets none. The clubs' digests
    /// likewise.
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
            let mornings: Vec<Morning> = due.iter().map(|due| self.morning(due, now)).collect();
            work.keep_mornings(&mornings, now).await?;
            let clubs = work.clubs_due(now, TOGETHER).await?;
            let digests: Vec<DigestMade> = clubs.iter().map(|due| self.digest(due, now)).collect();
            work.keep_digests(&digests, now).await?;
            work.commit().await?;
            members += due.len();
            let said = mornings.iter().any(|morning| morning.outgoing.is_some())
                || digests.iter().any(|digest| digest.outgoing.is_some());
            if said {
                self.queued.notify_one();
            }
            if due.len() < TOGETHER && clubs.len() < TOGETHER {
                return Ok(members);
            }
        }
    }

    /// A member whose morning cannot be made is set aside for a day, as one whose rows cannot be
    /// read is: the others get theirs.
    fn morning(&self, due: &MemberDue, now: DateTime<Utc>) -> Morning {
        unharmed(|| (self.make_morning)(&self.knowledge, due, now)).unwrap_or_else(|why| {
            let member = due.member.id;
            tracing::error!(
                member,
                why,
                "a morning cannot be made, and the member gets none today"
            );
            Morning {
                member,
                date: now.date_naive(),
                outgoing: None,
                named: Vec::new(),
                told: Vec::new(),
                next: now + TimeDelta::days(1),
                expires: now,
            }
        })
    }

    fn digest(&self, due: &ClubDue, now: DateTime<Utc>) -> DigestMade {
        unharmed(|| digest(&self.knowledge, due, now)).unwrap_or_else(|why| {
            let club = due.club.id;
            tracing::error!(club, why, "a digest cannot be made, and the club gets none today");
            let next = Some(now + TimeDelta::days(1));
            DigestMade { club, made_for: None, outgoing: None, next, expires: None }
        })
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
    let mut morning = Morning {
        member: due.member.id,
        date,
        outgoing: None,
        named: Vec::new(),
        told: Vec::new(),
        next: time.next_after(now, zone),
        expires: ReminderTime::end_of(date, zone),
    };
    // After a stop over night, today's message waits for its own hour.
    if time.on(date, zone) > now {
        return morning;
    }
    // On a quiet day and in a holiday nothing comes; the next morning's has what is missed, and
    // what changed in lists meanwhile.
    let habits = due.member.habits;
    if !habits.allow(date) {
        return morning;
    }
    let own = as_grown(&knowledge.catalogue, &due.varieties);
    let catalogue = own.as_ref().unwrap_or(&knowledge.catalogue);
    let known = Known { marks: &due.marks, sowings: &due.sowings, catalogue: Some(catalogue) };
    let crops = || due.crops.iter().filter_map(|id| catalogue.get(id.as_str()));
    let garden = settings.garden.is;
    let mut jobs = match garden {
        Some(garden) => due_jobs(crops(), known, garden, date, habits.quiet),
        None => Vec::new(),
    };
    // What cannot wait is never left for another morning, as far as one message carries it.
    let must = cannot_wait(&jobs, known, date, habits.quiet).min(MOST_AT_ONCE);
    let named = MOST_JOBS.max(must);
    let more = jobs.len().saturating_sub(named);
    jobs.truncate(named);
    // A list that changed is told on the next morning, whether or not a job is due.
    if jobs.is_empty() && due.news.is_empty() {
        return morning;
    }
    let mut coming = match garden {
        Some(garden) => jobs_of_the_week(crops(), known, garden, date),
        None => Vec::new(),
    };
    coming.retain(|due| jobs.iter().all(|named| named.job.key != due.job.key));
    let speech = knowledge.speech_for(&settings);
    let keys: Vec<JobKey> = jobs.iter().map(|due| due.job.key.clone()).collect();
    let text = |news: &[ListNews], coming: &[DueJob]| {
        let growing = &due.crops;
        let named = Named { due: &jobs, more, news, growing, coming };
        reminder_text(&named, catalogue, &speech, date)
    };
    // What would not fit is told on another morning; what is coming is cut off first.
    let news = (1..=due.news.len().min(MOST_LISTS_TOLD))
        .rev()
        .filter_map(|lists| due.news.get(..lists))
        .find(|news| text(news, &[]).encode_utf16().count() <= LONGEST_TEXT)
        .unwrap_or_default();
    morning.outgoing = Some(Outgoing::Say(Say {
        chat: due.member.user,
        text: shorten_to_limit(&text(news, &coming), LONGEST_TEXT).into_owned(),
        buttons: reminder_buttons(&keys, &due.marks, &speech, date),
        ..Say::default()
    }));
    morning.named = keys;
    morning.told = news.iter().map(|news| news.list).collect();
    morning
}

#[cfg(test)]
mod tests;

//! The club's week: the groups whose time has come get their one digest.

use chrono::{DateTime, Utc};

use crate::chat::Knowledge;
use crate::club::{ReminderTime, Settings};
use crate::messages::{Outgoing, Say};
use crate::reminders::ClubWeek;
use crate::store::{ClubDue, DigestMade};

/// What a club's digest comes to at `now`.
///
/// One that was missed, for a stop or for want of a network, is made on a later day of its week at
/// the same hour, and speaks of the days that are left of it. One that could not be sent on the
/// day it was made for is stale, and counts as missed.
#[must_use]
pub fn digest(knowledge: &Knowledge, due: &ClubDue, now: DateTime<Utc>) -> DigestMade {
    let settings = Settings::of(None, Some(&due.club));
    let zone = settings.zone.is;
    let date = now.with_timezone(&zone).date_naive();
    let nothing = |next| DigestMade {
        club: due.club.id,
        made_for: None,
        outgoing: None,
        next,
        expires: None,
    };
    let Some(plan) = due.club.digest else { return nothing(None) };
    let todays = plan.at.on(date, zone);
    if todays > now {
        return nothing(Some(todays));
    }
    let made_for = Some(plan.stands_for(date));
    let next = plan.next_after(now, zone, made_for);
    let mut made = DigestMade { made_for, ..nothing(Some(next)) };
    let (Some(garden), Some(chat)) = (settings.garden.is, due.club.chat) else { return made };
    let until = plan.speaks_until(date);
    let week = ClubWeek::of(&due.grown, &knowledge.catalogue, garden, date, until);
    if week.is_empty() {
        return made;
    }
    let speech = knowledge.speech_for(&settings);
    made.expires = Some(ReminderTime::end_of(date, zone));
    made.outgoing = Some(Outgoing::Say(Say {
        chat,
        thread: plan.thread,
        without_topic: plan.thread.map(|_| speech.plain("digest-topic-closed")),
        text: week.text(&knowledge.catalogue, &speech, date, until),
        ..Say::default()
    }));
    made
}

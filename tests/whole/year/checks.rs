//! What must hold all year: of each reminder when it is handed over, of what came twice, and of
//! each day when it is over.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use sowbell::chat::{Facts, Knowledge};
use sowbell::club::{Mark, QuietDays, as_grown};
use sowbell::messages::Say;
use sowbell::planning::{Crop, JobKey};
use sowbell::reminders::{DueJob, MOST_AT_ONCE, MOST_JOBS, coming_jobs, job_line};

use super::letters::jobs_named;
use super::platform::Fate;
use super::said::Said;
use super::told::{OfList, Told};

/// Days for which a job that was named is left in peace, but for its last good day.
const PEACE_DAYS: i64 = 3;

/// A message of the morning is on its way no longer than this, in nearly all cases.
const LONGEST_ON_THE_WAY: TimeDelta = TimeDelta::hours(1);

/// Its beginning, its middle and its last good day.
const MOST_NAMINGS: usize = 3;

/// What may come once only.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Once {
    /// The reminder of a person's morning.
    Morning(i64, NaiveDate),
    /// A club's week, by the day that it stands for.
    Week(usize, NaiveDate),
    /// Any other message, by its row.
    Row(i64),
}

/// Why something that came may come again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Excuse {
    /// The answer was lost, so that nobody knew whether it came.
    LostAnswer,
    /// The program was killed before it had noted the answer.
    Kill,
}

#[derive(Debug, Default)]
struct Came {
    times: u32,
    excuse: Option<Excuse>,
}

/// One naming of a job.
#[derive(Debug)]
struct Naming {
    on: NaiveDate,
    row: i64,
    /// How much the person had changed by then.
    changes: u32,
}

/// A morning's message that came.
#[derive(Debug, Clone, Copy)]
struct Morning {
    on: NaiveDate,
    jobs: usize,
    /// Of how many lists it told.
    lists: usize,
    came: DateTime<Utc>,
}

#[derive(Default)]
pub struct Checks {
    came: BTreeMap<Once, Came>,
    namings: BTreeMap<(i64, JobKey), Vec<Naming>>,
    /// The reminders that the program has noted as sent.
    noted: BTreeSet<i64>,
    /// The last morning that came.
    mornings: BTreeMap<i64, Morning>,
    changes: BTreeMap<i64, (u32, Option<DateTime<Utc>>)>,
    pub said: Said,
    pub told: Told,
    /// Old ids of groups to which nothing may be written any more.
    pub left_behind: BTreeSet<i64>,
    /// In which ways groups moved.
    pub moves: BTreeMap<usize, usize>,
    /// The day for which each club's last week stood.
    weeks: BTreeMap<usize, NaiveDate>,
    pub weeks_came: usize,
    /// How many were refused who may not change a club.
    pub refusals: usize,
    pub over_kills: usize,
    pub over_lost_answers: usize,
    pub days_audited: usize,
    pub jobs_audited: usize,
}

/// By how many days quiet ones may move what is said of a job.
fn slack(facts: &Facts) -> i64 {
    if facts.member.habits.quiet == QuietDays::NONE { 0 } else { 6 }
}

/// The jobs of which a reminder may speak on the day of these facts.
fn speakable(knowledge: &Knowledge, facts: &Facts) -> Vec<(DueJob, Crop)> {
    let today = facts.today();
    let Some(garden) = facts.settings().garden.is else { return Vec::new() };
    let own = as_grown(&knowledge.catalogue, &facts.varieties);
    let catalogue = own.as_ref().unwrap_or(&knowledge.catalogue);
    let crops = facts.crops.iter().filter_map(|id| catalogue.get(id.as_str()));
    // What is good on quiet days only is spoken of before.
    let early = slack(facts);
    coming_jobs(crops, facts.known(catalogue), garden, today)
        .into_iter()
        .filter(|due| due.job.window.ideal_from <= today + TimeDelta::days(early))
        .filter_map(|due| {
            let crop = catalogue.get(due.job.key.crop.as_str())?.clone();
            Some((due, crop))
        })
        .collect()
}

impl Checks {
    /// Something changed for this person.
    pub fn touched(&mut self, user: i64, now: DateTime<Utc>) {
        let (count, at) = self.changes.entry(user).or_default();
        *count += 1;
        *at = Some(now);
    }

    /// A list changed to which this person subscribes. What was named stays named.
    pub fn list_changed(&mut self, user: i64, now: DateTime<Utc>) {
        let (_, at) = self.changes.entry(user).or_default();
        *at = Some(now);
    }

    fn changes_of(&self, user: i64) -> u32 {
        self.changes.get(&user).map_or(0, |(count, _)| *count)
    }

    /// The program has noted this reminder as sent.
    pub fn noted(&mut self, row: i64) {
        self.noted.insert(row);
    }

    /// A reminder is handed to the platform: is it true, is it the time, is there anybody?
    ///
    /// # Errors
    /// What is wrong.
    pub fn handed_over(
        &mut self,
        knowledge: &Arc<Knowledge>,
        (row, dated): (i64, Option<NaiveDate>),
        say: &Say,
        facts: &Facts,
        lists: &[OfList],
    ) -> Result<(), String> {
        let settings = facts.settings();
        let today = facts.today();
        let user = facts.member.user;
        if !facts.member.reachable || self.said.is_gone(user) {
            return Err("a reminder to somebody who left".to_owned());
        }
        if dated != Some(today) {
            return Err(format!("the reminder of {dated:?} is sent on {today}"));
        }
        if facts.member.reminder_time.on(today, settings.zone.is) > facts.now {
            return Err("a reminder before its hour".to_owned());
        }
        if !facts.member.habits.allow(today) {
            return Err("a reminder on a quiet day or in a holiday".to_owned());
        }
        let keys = jobs_named(&say.buttons);
        let different: BTreeSet<&JobKey> = keys.iter().collect();
        let speech = knowledge.speech_for(&settings);
        let told = self.told.handed_over(row, &say.text, lists, &facts.crops, &speech)?;
        let nothing = keys.is_empty() && told == 0;
        if nothing || different.len() != keys.len() || keys.len() > MOST_AT_ONCE {
            return Err(format!("a reminder that names {keys:?} and tells of {told} lists"));
        }
        let speakable = speakable(knowledge, facts);
        for key in &keys {
            if self.said.is_done(user, key) {
                return Err(format!("{key} was done"));
            }
            let mark = facts.known(&knowledge.catalogue).mark(key).and_then(|mark| mark.mark);
            // A day that became quiet since then may call a last good day out before.
            let put_off = matches!(mark, Some(Mark::Later(until)) if until > today);
            if put_off && slack(facts) == 0 {
                return Err(format!("{key} was put off: {mark:?}"));
            }
            let Some((due, crop)) = speakable.iter().find(|(due, _)| due.job.key == *key) else {
                return Err(format!("{key} is not to be done (any more): {mark:?}"));
            };
            // Where the last good day is quiet, the one before it is the last chance.
            let line = |last_chance| {
                let due = DueJob { last_chance: due.last_chance || last_chance, ..due.clone() };
                job_line(&due, crop, &speech, today)
            };
            if !say.text.contains(&line(false)) && !say.text.contains(&line(true)) {
                return Err(format!("{key} would be {:?} by now", line(false)));
            }
            // The last good day may be quiet, and is spoken of before.
            let good_until = due.job.window.ideal_to;
            let last_call = today >= good_until - TimeDelta::days(slack(facts));
            let call = last_call.then_some(good_until);
            self.not_too_often(user, key, row, today, call)?;
        }
        Ok(())
    }

    fn not_too_often(
        &self,
        user: i64,
        key: &JobKey,
        row: i64,
        today: NaiveDate,
        last_call: Option<NaiveDate>,
    ) -> Result<(), String> {
        let changes = self.changes_of(user);
        let before = self.namings.get(&(user, key.clone()));
        // Only what is known to have been sent, and since when nothing has changed.
        let counts = |naming: &&Naming| {
            naming.row != row && naming.changes == changes && self.noted.contains(&naming.row)
        };
        let before: Vec<&Naming> = before.into_iter().flatten().filter(counts).collect();
        let Some(last) = before.last() else { return Ok(()) };
        if before.len() >= MOST_NAMINGS {
            return Err(format!("{key} is named for the {}th time", before.len() + 1));
        }
        let peace = today.signed_duration_since(last.on).num_days() < PEACE_DAYS;
        let last_good_day = last_call.is_some_and(|good_until| last.on < good_until);
        if peace && !last_good_day {
            return Err(format!("{key} was named on {} and again on {today}", last.on));
        }
        Ok(())
    }

    /// Something came to a chat; gives whether it is the first time.
    ///
    /// # Errors
    /// Where it came before and nothing explains it.
    pub fn came(&mut self, what: Once, fate: Fate) -> Result<bool, String> {
        let came = self.came.entry(what).or_default();
        came.times += 1;
        let first = came.times == 1;
        let excuse = came.excuse.take();
        if fate.lost {
            came.excuse = Some(Excuse::LostAnswer);
        }
        match excuse {
            _ if first => {}
            Some(Excuse::Kill) => self.over_kills += 1,
            Some(Excuse::LostAnswer) => self.over_lost_answers += 1,
            None => return Err(format!("{what:?} came {} times", came.times)),
        }
        Ok(first)
    }

    /// A club's week came: a week or more after the one before it.
    ///
    /// # Errors
    /// Where it came too soon.
    pub fn week_came(&mut self, club: usize, day: NaiveDate) -> Result<(), String> {
        let before = self.weeks.insert(club, day);
        self.weeks_came += 1;
        match before.filter(|before| *before != day && (day - *before).num_days() < 7) {
            Some(before) => Err(format!("club {club} got its week for {before} and for {day}")),
            None => Ok(()),
        }
    }

    /// What came and was under way when the program was killed may come again.
    pub fn may_come_again(&mut self, what: Once) {
        self.came.entry(what).or_default().excuse = Some(Excuse::Kill);
    }

    /// A reminder came with these jobs.
    pub fn named(
        &mut self,
        user: i64,
        row: i64,
        on: NaiveDate,
        keys: &[JobKey],
        now: DateTime<Utc>,
    ) {
        let changes = self.changes_of(user);
        for key in keys {
            let of_job = self.namings.entry((user, key.clone())).or_default();
            if of_job.last().is_none_or(|last| last.row != row) {
                of_job.push(Naming { on, row, changes });
            }
        }
        let lists = self.told.told_by(row).len();
        self.mornings.insert(user, Morning { on, jobs: keys.len(), lists, came: now });
    }

    /// A day on which a reminder could come is over: each job that was to be spoken of has been
    /// named by now, at the latest. (So each is named before its window closes.)
    ///
    /// # Errors
    /// With the job that nobody named.
    pub fn audit(
        &mut self,
        knowledge: &Arc<Knowledge>,
        facts: &Facts,
        lists: &[OfList],
    ) -> Result<(), String> {
        let user = facts.member.user;
        let today = facts.today();
        let settings = facts.settings();
        let hour = facts.member.reminder_time.on(today, settings.zone.is);
        let since = self.changes.get(&user).and_then(|(_, at)| *at);
        let quiet = !facts.member.habits.allow(today);
        if quiet || !facts.member.reachable || since.is_some_and(|since| since >= hour) {
            return Ok(());
        }
        let todays = self.mornings.get(&user).copied().filter(|morning| morning.on >= today);
        if let Some(Morning { on, came, .. }) = todays {
            // A day has one message, though the hour or the zone was changed since, so that
            // another hour of it came.
            let changed = since.is_some_and(|since| since >= came - LONGEST_ON_THE_WAY);
            if on > today || changed {
                return Ok(());
            }
        }
        self.told.all_told(lists, todays.map_or(0, |morning| morning.lists))?;
        if todays.is_some_and(|morning| morning.jobs >= MOST_JOBS) {
            // The rest waits for another morning.
            return Ok(());
        }
        self.days_audited += 1;
        for (due, _) in speakable(knowledge, facts) {
            let key = due.job.key;
            // What was spoken of early is spoken of at the latest when it is good.
            if due.job.window.ideal_from > today {
                continue;
            }
            let unmarked =
                facts.known(&knowledge.catalogue).mark(&key).and_then(|mark| mark.mark).is_none();
            self.jobs_audited += 1;
            if unmarked && !self.namings.contains_key(&(user, key.clone())) {
                let window = due.job.window;
                return Err(format!(
                    "{key} was not named by {today}, good from {} to {}, worth it until {}; the \
                     last morning was {:?}, the last change {since:?}, {:?}",
                    window.ideal_from,
                    window.ideal_to,
                    window.to,
                    self.mornings.get(&user),
                    facts.member.habits
                ));
            }
        }
        Ok(())
    }
}

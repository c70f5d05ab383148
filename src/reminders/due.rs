//! Which jobs a reminder names on a morning.

use std::cmp::Reverse;

use chrono::{NaiveDate, TimeDelta};

use super::applicable::{Known, applicable};
use super::calls::{Calls, is_due};
use crate::club::{Mark, QuietDays};
use crate::planning::{Crop, Garden, Job, JobBasis, StartAgain, Step, start_again};
use crate::wording::Speech;

/// How far ahead a morning's message looks at what is coming: a week from the day itself.
const COMING_DAYS: i64 = 6;

/// A job that a morning's message names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DueJob {
    /// The job.
    pub job: Job,
    /// Whether it cannot wait: this is the last good day on which a message comes, or that day has
    /// passed while it is still worth doing.
    pub last_chance: bool,
    /// The variety of the sowing that it follows, where that has one.
    pub variety: Option<String>,
    /// For a check of a sowing that is not simply made again where nothing came up: how it was
    /// sown, and what is worth doing instead.
    pub if_not_up: Option<(Step, StartAgain)>,
}

impl DueJob {
    /// A job of `crop` as it is named on `date`.
    pub(super) fn new(
        crop: &Crop,
        job: Job,
        known: Known<'_>,
        garden: Option<Garden>,
        date: NaiveDate,
    ) -> Self {
        let sowing = known.sowing_of(&job.key);
        let check = sowing.zip(garden).filter(|_| job.key.step == Step::Check);
        let if_not_up = check.and_then(|(sowing, garden)| {
            let step = Step::from(sowing.way);
            let again = start_again(known.crop_of(sowing, crop), garden, step, date);
            (!again.at_once(step)).then_some((step, again))
        });
        let variety = sowing.and_then(|sowing| sowing.variety.clone());
        Self { job, last_chance: false, variety, if_not_up }
    }

    /// What to do, as it stands in a sentence.
    #[must_use]
    pub fn what(&self, crop: &Crop, speech: &Speech) -> String {
        speech.step_phrase_of(self.job.key.step, crop, self.variety.as_deref())
    }
}

/// The jobs of these crops that make sense for the member, each with its crop.
fn jobs_of<'c>(
    crops: impl IntoIterator<Item = &'c Crop>,
    known: Known<'_>,
    garden: Garden,
    date: NaiveDate,
) -> impl Iterator<Item = (&'c Crop, Job)> {
    let of =
        move |crop| applicable(crop, known, garden, date).into_iter().map(move |job| (crop, job));
    crops.into_iter().flat_map(of)
}

/// The jobs to name on `date`, a day on which a message may come: those that cannot wait first,
/// then what is named for the first time, then what is named again.
///
/// A job is named when its good days begin, once more in their middle and on the last of them,
/// for as long as it is neither done nor skipped. What falls on a quiet day is named on the next
/// day that is none; a last good day that is quiet is named on the last day before it. A job put
/// off is named on the day it was put off to. Setting out a crop that frost kills is never named
/// as a last chance. A repeat sowing, a second sowing as a hedge and a first harvest are named
/// once; a check when the sowing should be up, and once more when it is time to sow again.
#[must_use]
pub fn due_jobs<'c>(
    crops: impl IntoIterator<Item = &'c Crop>,
    known: Known<'_>,
    garden: Garden,
    date: NaiveDate,
    quiet: QuietDays,
) -> Vec<DueJob> {
    let mut due: Vec<DueJob> = jobs_of(crops, known, garden, date)
        .filter(|(crop, job)| is_due(crop, job, known.mark(&job.key), date, quiet))
        .map(|(crop, job)| DueJob {
            last_chance: last_chance(crop, &job, date, quiet),
            ..DueJob::new(crop, job, known, Some(garden), date)
        })
        .collect();
    due.sort_by_cached_key(|due| {
        let named = known.mark(&due.job.key).and_then(|mark| mark.named_on);
        // What was never named and is about to close would otherwise never be.
        let closing = named.is_none() && Calls::of(&due.job.window, quiet).last <= date;
        (
            Reverse((due.last_chance, closing, named.is_none())),
            due.job.window.ideal_to,
            due.job.key.clone(),
        )
    });
    due
}

/// How many of a morning's jobs, which are in their order, cannot wait for another morning.
#[must_use]
pub fn cannot_wait(due: &[DueJob], known: Known<'_>, date: NaiveDate, quiet: QuietDays) -> usize {
    let must = |due: &&DueJob| {
        let named = known.mark(&due.job.key).and_then(|mark| mark.named_on);
        due.last_chance || (named.is_none() && Calls::of(&due.job.window, quiet).last <= date)
    };
    due.iter().take_while(must).count()
}

/// The jobs whose good days begin in the week from `date` on, but not on the day itself, the next
/// first: what is worth getting ready for. What is merely offered, and what was put off, is left
/// out.
#[must_use]
pub fn jobs_of_the_week<'c>(
    crops: impl IntoIterator<Item = &'c Crop>,
    known: Known<'_>,
    garden: Garden,
    date: NaiveDate,
) -> Vec<DueJob> {
    let week = date + TimeDelta::days(1)..=date + TimeDelta::days(COMING_DAYS);
    let put_off = |job: &Job| {
        let mark = known.mark(&job.key);
        mark.is_some_and(|mark| {
            mark.named_on.is_some() || matches!(mark.mark, Some(Mark::Later(_)))
        })
    };
    let mut coming: Vec<DueJob> = jobs_of(crops, known, garden, date)
        .filter(|(_, job)| week.contains(&job.window.ideal_from) && !named_once(job))
        .filter(|(_, job)| !put_off(job))
        .map(|(crop, job)| DueJob::new(crop, job, known, Some(garden), date))
        .collect();
    coming.sort_by_cached_key(|due| (due.job.window.ideal_from, due.job.key.clone()));
    coming
}

/// The jobs that can be done on `date` and were not, the most urgent first: good and workable
/// days alike, whether or not a reminder has named them.
#[must_use]
pub fn open_jobs<'c>(
    crops: impl IntoIterator<Item = &'c Crop>,
    known: Known<'_>,
    garden: Garden,
    date: NaiveDate,
) -> Vec<DueJob> {
    let none = QuietDays::NONE;
    let mut open: Vec<DueJob> = jobs_of(crops, known, garden, date)
        .filter(|(_, job)| job.window.covers(date))
        .map(|(crop, job)| DueJob {
            last_chance: last_chance(crop, &job, date, none),
            ..DueJob::new(crop, job, known, Some(garden), date)
        })
        .collect();
    open.sort_by_cached_key(|due| {
        let good = due.job.window.ideal_from <= date;
        (!due.last_chance, !good, due.job.window.ideal_to, due.job.key.clone())
    });
    open
}

/// The jobs still to come or under way for these crops from `date` on, the next first: those that
/// are open today by their last good day, then the others by their first.
#[must_use]
pub fn coming_jobs<'c>(
    crops: impl IntoIterator<Item = &'c Crop>,
    known: Known<'_>,
    garden: Garden,
    date: NaiveDate,
) -> Vec<DueJob> {
    let mut coming: Vec<DueJob> = jobs_of(crops, known, garden, date)
        .filter(|(_, job)| job.window.to >= date)
        .map(|(crop, job)| DueJob::new(crop, job, known, Some(garden), date))
        .collect();
    coming.sort_by_cached_key(|due| {
        let window = &due.job.window;
        (window.ideal_from.max(date), window.ideal_to, due.job.key.clone())
    });
    coming
}

/// The open jobs that a holiday would cost: their last good day, or the last on which they are
/// worth it, lies before `until`, and nobody is pressed to set out tender plants.
#[must_use]
pub fn jobs_before<'c>(
    crops: impl IntoIterator<Item = &'c Crop>,
    known: Known<'_>,
    garden: Garden,
    date: NaiveDate,
    until: NaiveDate,
) -> Vec<DueJob> {
    let mut ending: Vec<DueJob> = jobs_of(crops, known, garden, date)
        .filter(|(crop, job)| !never_pressed(crop, job) && !named_once(job))
        .filter(|(_, job)| {
            let ends = |last: NaiveDate| date <= last && last < until;
            ends(job.window.ideal_to) || ends(job.window.to)
        })
        .map(|(crop, job)| DueJob {
            last_chance: true,
            ..DueJob::new(crop, job, known, Some(garden), date)
        })
        .collect();
    ending.sort_by_cached_key(|due| (due.job.window.ideal_to, due.job.key.clone()));
    ending
}

fn last_chance(crop: &Crop, job: &Job, date: NaiveDate, quiet: QuietDays) -> bool {
    let last = Calls::of(&job.window, quiet).last;
    date >= last && !never_pressed(crop, job) && !named_once(job)
}

/// Whether it is offered rather than asked for: what can wait, and what may never be needed.
pub(super) fn named_once(job: &Job) -> bool {
    matches!(job.key.step, Step::Check | Step::Harvest)
        || matches!(job.basis, JobBasis::Repeat(_) | JobBasis::Hedge)
}

/// Tender plants are never pressed out on a last day: the week's nights decide.
pub(super) fn never_pressed(crop: &Crop, job: &Job) -> bool {
    matches!(job.key.step, Step::PlantOut | Step::HardenOff) && crop.frost_kills()
}

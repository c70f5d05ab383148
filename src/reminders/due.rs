//! Which jobs a reminder names on a morning.

use chrono::{NaiveDate, TimeDelta};

use super::applicable::{Known, applicable};
use crate::club::{JobMark, Mark};
use crate::planning::{Crop, Garden, Job, JobBasis, Step};

/// A job that a morning's message names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DueJob {
    /// The job.
    pub job: Job,
    /// Whether this is its last good day, or that day has passed while it is still worth doing.
    pub last_chance: bool,
}

/// The jobs to name on `date`, those that cannot wait first.
///
/// A job is named when its good days begin, once more in their middle and on the last of them,
/// for as long as it is neither done nor skipped. A job put off is named on the day it was put
/// off to. Setting out a crop that frost kills is never named as a last chance. A repeat sowing,
/// a second sowing as a hedge and a first harvest are named once; a check when the sowing should
/// be up, and once more when it is time to sow again.
#[must_use]
pub fn due_jobs<'c>(
    crops: impl IntoIterator<Item = &'c Crop>,
    known: Known<'_>,
    garden: Garden,
    date: NaiveDate,
) -> Vec<DueJob> {
    let mut due: Vec<DueJob> = crops
        .into_iter()
        .flat_map(|crop| {
            applicable(crop, known, garden, date)
                .into_iter()
                .filter(|job| is_due(crop, job, known.mark(&job.key), date))
                .map(|job| DueJob { last_chance: last_chance(crop, &job, date), job })
                .collect::<Vec<_>>()
        })
        .collect();
    due.sort_by_key(|due| (!due.last_chance, due.job.window.ideal_to, due.job.key.clone()));
    due
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
    let mut open: Vec<DueJob> = crops
        .into_iter()
        .flat_map(|crop| {
            applicable(crop, known, garden, date)
                .into_iter()
                .filter(|job| job.window.covers(date))
                .map(|job| DueJob { last_chance: last_chance(crop, &job, date), job })
                .collect::<Vec<_>>()
        })
        .collect();
    open.sort_by_key(|due| {
        let good = due.job.window.ideal_from <= date;
        (!due.last_chance, !good, due.job.window.ideal_to, due.job.key.clone())
    });
    open
}

/// Days for which a job that was just named is left in peace, but for its last good day.
const PEACE_DAYS: i64 = 3;

fn is_due(crop: &Crop, job: &Job, mark: Option<&JobMark>, date: NaiveDate) -> bool {
    let window = &job.window;
    if date < window.ideal_from || date > window.to {
        return false;
    }
    let named_on = mark.and_then(|mark| mark.named_on);
    if let Some(Mark::Later(until)) = mark.and_then(|mark| mark.mark) {
        if date < until {
            return false;
        }
        if named_on.is_none_or(|named| named < until) {
            return true;
        }
    }
    let Some(named_on) = named_on else { return true };
    if named_once(job) {
        let again = job.key.step == Step::Check && named_on < window.ideal_to;
        return again && date >= window.ideal_to;
    }
    let half = window.ideal_to.signed_duration_since(window.ideal_from).num_days() / 2;
    let middle = window.ideal_from + TimeDelta::days(half);
    let reached = |day: NaiveDate| named_on < day && day <= date;
    let long_ago = date.signed_duration_since(named_on).num_days() >= PEACE_DAYS;
    ((reached(window.ideal_from) || reached(middle)) && long_ago)
        || (reached(window.ideal_to) && !never_pressed(crop, job))
}

fn last_chance(crop: &Crop, job: &Job, date: NaiveDate) -> bool {
    date >= job.window.ideal_to && !never_pressed(crop, job) && !named_once(job)
}

/// Whether it is offered rather than asked for: what can wait, and what may never be needed.
fn named_once(job: &Job) -> bool {
    matches!(job.key.step, Step::Check | Step::Harvest)
        || matches!(job.basis, JobBasis::Repeat(_) | JobBasis::Hedge)
}

/// Tender plants are never pressed out on a last day: the week's nights decide.
fn never_pressed(crop: &Crop, job: &Job) -> bool {
    matches!(job.key.step, Step::PlantOut | Step::HardenOff) && crop.frost_kills()
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
    let mut coming: Vec<DueJob> = crops
        .into_iter()
        .flat_map(|crop| applicable(crop, known, garden, date))
        .filter(|job| job.window.to >= date)
        .map(|job| DueJob { job, last_chance: false })
        .collect();
    coming.sort_by_key(|due| {
        let window = &due.job.window;
        (window.ideal_from.max(date), window.ideal_to, due.job.key.clone())
    });
    coming
}

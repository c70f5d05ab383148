//! Which jobs a reminder names on a morning.

use std::collections::HashMap;

use chrono::{Datelike, NaiveDate, TimeDelta};

use crate::club::{JobMark, Mark};
use crate::planning::{Crop, Garden, Job, JobKey, Label, Step, Way, jobs};

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
/// off to. Setting out a crop that frost kills is never named as a last chance.
#[must_use]
pub fn due_jobs<'c>(
    crops: impl IntoIterator<Item = &'c Crop>,
    marks: &[JobMark],
    garden: Garden,
    date: NaiveDate,
) -> Vec<DueJob> {
    let marks: HashMap<&JobKey, &JobMark> = marks.iter().map(|mark| (&mark.key, mark)).collect();
    let mut due: Vec<DueJob> = crops
        .into_iter()
        .flat_map(|crop| {
            applicable(crop, &marks, garden, date)
                .into_iter()
                .filter(|job| is_due(crop, job, marks.get(&job.key).copied(), date))
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
    marks: &[JobMark],
    garden: Garden,
    date: NaiveDate,
) -> Vec<DueJob> {
    let marks: HashMap<&JobKey, &JobMark> = marks.iter().map(|mark| (&mark.key, mark)).collect();
    let mut open: Vec<DueJob> = crops
        .into_iter()
        .flat_map(|crop| {
            applicable(crop, &marks, garden, date)
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

/// The jobs of the seasons around `date` that make sense for this member: not done, not skipped,
/// and on the way of starting that the member has taken or would best take.
fn applicable(
    crop: &Crop,
    marks: &HashMap<&JobKey, &JobMark>,
    garden: Garden,
    date: NaiveDate,
) -> Vec<Job> {
    let all: Vec<Job> = (date.year() - 1..=date.year() + 1)
        .filter_map(|year| garden.season_of(year))
        .flat_map(|season| jobs(crop, &season))
        .collect();
    let mark_of = |step: Step, label: Label, season: i32| {
        let key = JobKey { crop: crop.id.clone(), step, label, season };
        marks.get(&key).and_then(|mark| mark.mark)
    };
    let indoors_first = crop.ways.first() != Some(&Way::Outdoors);
    let from_its_sowing = |job: &Job| match mark_of(Step::SowIndoors, job.key.label, job.key.season)
    {
        Some(Mark::Done(sown)) => {
            Job { window: job.window.after_sowing(job.key.step, crop, sown), ..job.clone() }
        }
        _ => job.clone(),
    };
    all.iter()
        .filter(|job| {
            let JobKey { step, label, season, .. } = job.key;
            let of = |step| mark_of(step, label, season);
            let done = |step| matches!(of(step), Some(Mark::Done(_)));
            let skipped = |step| matches!(of(step), Some(Mark::Skipped(_)));
            if done(step) || skipped(step) {
                return false;
            }
            // What follows a finished step is not asked for again.
            let further_on = |steps: &[Step]| steps.iter().any(|later| done(*later));
            match step {
                Step::SowIndoors => {
                    indoors_first
                        && !further_on(&[
                            Step::SowOutdoors,
                            Step::PotUp,
                            Step::HardenOff,
                            Step::PlantOut,
                        ])
                }
                Step::SowOutdoors => {
                    let missed_indoors = all.iter().any(|other| {
                        other.key.step == Step::SowIndoors
                            && (other.key.label, other.key.season) == (label, season)
                            && other.window.ideal_to < date
                    });
                    !further_on(&[Step::SowIndoors, Step::HardenOff, Step::PlantOut])
                        && (!indoors_first || missed_indoors || skipped(Step::SowIndoors))
                }
                Step::PotUp => {
                    done(Step::SowIndoors) && !further_on(&[Step::HardenOff, Step::PlantOut])
                }
                Step::HardenOff | Step::PlantOut => {
                    // Where sowing in place is the better way, plants in trays are assumed only
                    // when the member said so.
                    // The same holds for a second crop in autumn.
                    let expected = indoors_first && label == Label::Spring;
                    let raised = crop.ways.is_empty()
                        || done(Step::SowIndoors)
                        || (expected && !skipped(Step::SowIndoors));
                    raised
                        && !done(Step::SowOutdoors)
                        && !(step == Step::HardenOff && done(Step::PlantOut))
                }
            }
        })
        .map(from_its_sowing)
        .filter_map(|job| match garden.hold {
            Some(hold) => hold.stand(job, crop, date),
            None => Some(job),
        })
        .collect()
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
    let half = window.ideal_to.signed_duration_since(window.ideal_from).num_days() / 2;
    let middle = window.ideal_from + TimeDelta::days(half);
    let reached = |day: NaiveDate| named_on < day && day <= date;
    let long_ago = date.signed_duration_since(named_on).num_days() >= PEACE_DAYS;
    ((reached(window.ideal_from) || reached(middle)) && long_ago)
        || (reached(window.ideal_to) && !never_pressed(crop, job))
}

fn last_chance(crop: &Crop, job: &Job, date: NaiveDate) -> bool {
    date >= job.window.ideal_to && !never_pressed(crop, job)
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
    marks: &[JobMark],
    garden: Garden,
    date: NaiveDate,
) -> Vec<DueJob> {
    let marks: HashMap<&JobKey, &JobMark> = marks.iter().map(|mark| (&mark.key, mark)).collect();
    let mut coming: Vec<DueJob> = crops
        .into_iter()
        .flat_map(|crop| applicable(crop, &marks, garden, date))
        .filter(|job| job.window.to >= date)
        .map(|job| DueJob { job, last_chance: false })
        .collect();
    coming.sort_by_key(|due| {
        let window = &due.job.window;
        (window.ideal_from.max(date), window.ideal_to, due.job.key.clone())
    });
    coming
}

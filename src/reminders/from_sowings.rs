//! The jobs that follow from recorded sowings.

use super::applicable::Known;
use crate::club::Sowing;
use crate::planning::{Crop, Garden, Job, JobBasis, Step, Way, repeat_after, sowing_plan};

/// The jobs that follow from the member's sowings of a crop: the steps of each, and the next
/// sowing of a series.
pub(super) fn jobs_of_sowings(crop: &Crop, known: Known<'_>, garden: Garden) -> Vec<Job> {
    let of_crop = || known.sowings.iter().filter(|sowing| sowing.crop == crop.id);
    let mut all: Vec<Job> = of_crop()
        .filter(|sowing| sowing.lives())
        .flat_map(|sowing| steps_left(crop, sowing, known, Some(garden)))
        .collect();
    let last = of_crop()
        .filter(|sowing| sowing.failed_on.is_none())
        .max_by_key(|sowing| (sowing.sown_on, sowing.id));
    all.extend(last.and_then(|last| next_of_series(crop, last, known, garden)));
    all
}

/// The steps of a living sowing that are neither done nor skipped nor overtaken by a later step
/// that is done, in their order; reckoned with the variety that it remembers.
#[must_use]
pub fn steps_left(
    crop: &Crop,
    sowing: &Sowing,
    known: Known<'_>,
    garden: Option<Garden>,
) -> Vec<Job> {
    let crop = known.crop_of(sowing, crop);
    let plan = sowing_plan(crop, garden, &sowing.sown(known.marks));
    let overtaken = |step: Step| {
        let later = Step::ALL.into_iter().filter(|later| *later >= step);
        later.into_iter().any(|later| known.done(&sowing.key(later)))
    };
    plan.steps
        .into_iter()
        .map(|(step, window)| Job {
            key: sowing.key(step),
            window,
            better_way: crop.ways.first() == Some(&sowing.way),
            basis: JobBasis::Sowing(sowing.sown_on),
        })
        .filter(|job| !overtaken(job.key.step) && !known.skipped(&job.key))
        .collect()
}

/// The repeat sowing that follows the last sowing of a crop.
fn next_of_series(crop: &Crop, last: &Sowing, known: Known<'_>, garden: Garden) -> Option<Job> {
    let crop = known.crop_of(last, crop);
    // Beside plants raised as a hedge, the sowing in place is a job of the season.
    let hedged = crop.hedge && last.way == Way::Indoors;
    let season = garden.season_of(last.season)?;
    let window = repeat_after(crop, &season, last.label, last.sown_on).filter(|_| !hedged)?;
    let key = last.key(Step::SowOutdoors);
    let open = !known.done(&key) && !known.skipped(&key);
    open.then(|| Job {
        key,
        window,
        better_way: crop.ways.first() == Some(&Way::Outdoors),
        basis: JobBasis::Repeat(last.sown_on),
    })
}

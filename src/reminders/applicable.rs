//! Which jobs make sense for a member.

use chrono::{Datelike, NaiveDate, TimeDelta};

use super::from_sowings::jobs_of_sowings;
use crate::catalogue::Catalogue;
use crate::club::{JobMark, Mark, Sowing};
use crate::planning::{Crop, CropId, Garden, Job, JobBasis, JobKey, Label, Step, Way, jobs};

/// What is known of a member's work: what they said of jobs, and the sowings they recorded.
#[derive(Debug, Clone, Copy, Default)]
pub struct Known<'a> {
    /// What is kept of jobs.
    pub marks: &'a [JobMark],
    /// Recorded sowings.
    pub sowings: &'a [Sowing],
    /// The crops as the member grows them; without it a sowing is of no variety.
    pub catalogue: Option<&'a Catalogue>,
}

impl<'a> Known<'a> {
    /// What is kept of a job.
    #[must_use]
    pub fn mark(&self, key: &JobKey) -> Option<&'a JobMark> {
        self.marks.iter().find(|mark| mark.key == *key)
    }

    /// `crop` as a sowing of it is grown: by the packet of the variety that it remembers.
    pub(super) fn crop_of<'c>(&self, sowing: &Sowing, crop: &'c Crop) -> &'c Crop
    where
        'a: 'c,
    {
        let Some(name) = sowing.variety.as_deref() else { return crop };
        let catalogue = self.catalogue;
        catalogue.and_then(|all| all.variety(crop.id.as_str(), Some(name))).unwrap_or(crop)
    }

    /// The sowing that a job follows from.
    pub(super) fn sowing_of(&self, key: &JobKey) -> Option<&'a Sowing> {
        self.sowings.iter().find(|sowing| Some(sowing.id) == key.sowing)
    }

    /// Whether a job was said to be done.
    pub(super) fn done(&self, key: &JobKey) -> bool {
        matches!(self.mark(key).and_then(|mark| mark.mark), Some(Mark::Done(_)))
    }

    /// Whether a job was said to be left this season.
    pub(super) fn skipped(&self, key: &JobKey) -> bool {
        matches!(self.mark(key).and_then(|mark| mark.mark), Some(Mark::Skipped(_)))
    }

    /// The sowings of one crop, label and season, those that failed among them.
    fn sowings_of(
        &self,
        crop: &CropId,
        label: Label,
        season: i32,
    ) -> impl Iterator<Item = &'a Sowing> {
        let crop = crop.clone();
        self.sowings.iter().filter(move |sowing| {
            sowing.crop == crop && (sowing.label, sowing.season) == (label, season)
        })
    }
}

/// The jobs around `date` that make sense for this member: those of the seasons that are not
/// done, not skipped and on the way of starting that the member has taken or would best take, and
/// those that follow from the sowings they recorded.
pub(super) fn applicable(
    crop: &Crop,
    known: Known<'_>,
    garden: Garden,
    date: NaiveDate,
) -> Vec<Job> {
    let mut all = jobs_of_sowings(crop, known, garden);
    let of_seasons: Vec<Job> = (date.year() - 1..=date.year() + 1)
        .filter_map(|year| garden.season_of(year))
        .flat_map(|season| jobs(crop, &season))
        .collect();
    let of = OfSeasons { crop, known, all: &of_seasons, date };
    let sensible: Vec<Job> = of_seasons.iter().filter(|job| of.makes_sense(job)).cloned().collect();
    all.extend(of.with_treatments(&sensible));
    match garden.hold {
        Some(hold) => all.into_iter().filter_map(|job| hold.stand(job, crop, date)).collect(),
        None => all,
    }
}

/// The jobs of the seasons around a day, against what is known.
struct OfSeasons<'a> {
    crop: &'a Crop,
    known: Known<'a>,
    all: &'a [Job],
    date: NaiveDate,
}

impl OfSeasons<'_> {
    /// Whether a sowing was made: one that did not fail was recorded, or, where none is recorded,
    /// the job was said to be done.
    fn sown(&self, way: Way, label: Label, season: i32) -> bool {
        let mut recorded = self
            .known
            .sowings_of(&self.crop.id, label, season)
            .filter(|sowing| sowing.way == way)
            .peekable();
        if recorded.peek().is_some() {
            return recorded.any(|sowing| sowing.failed_on.is_none());
        }
        self.known.done(&self.key(way.into(), label, season))
    }

    fn key(&self, step: Step, label: Label, season: i32) -> JobKey {
        JobKey { crop: self.crop.id.clone(), step, label, season, sowing: None }
    }

    fn makes_sense(&self, job: &Job) -> bool {
        let JobKey { step, label, season, .. } = job.key;
        let done = |step| match step {
            Step::SowIndoors => self.sown(Way::Indoors, label, season),
            Step::SowOutdoors => self.sown(Way::Outdoors, label, season),
            step => self.known.done(&self.key(step, label, season)),
        };
        let skipped = |step| self.known.skipped(&self.key(step, label, season));
        if done(step) || skipped(step) {
            return false;
        }
        let indoors_first = self.crop.ways.first() != Some(&Way::Outdoors);
        // What follows a finished step is not asked for again.
        let further_on = |steps: &[Step]| steps.iter().any(|later| done(*later));
        // From a recorded sowing on, its own dates rule.
        let recorded = || {
            self.known
                .sowings_of(&self.crop.id, label, season)
                .any(|sowing| sowing.way == Way::Indoors)
        };
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
                let missed_indoors = self.all.iter().any(|other| {
                    other.key.step == Step::SowIndoors
                        && (other.key.label, other.key.season) == (label, season)
                        && other.window.ideal_to < self.date
                });
                // A second sowing in place is wise beside the first one in cells.
                let hedge = job.basis == JobBasis::Hedge && done(Step::SowIndoors);
                let ruled_out = further_on(&[Step::SowIndoors, Step::HardenOff, Step::PlantOut]);
                hedge
                    || (!ruled_out
                        && (!indoors_first || missed_indoors || skipped(Step::SowIndoors)))
            }
            Step::PotUp => {
                done(Step::SowIndoors)
                    && !recorded()
                    && !further_on(&[Step::HardenOff, Step::PlantOut])
            }
            Step::HardenOff | Step::PlantOut => {
                // Where sowing in place is the better way, plants in trays are assumed only when
                // the member said so. The same holds for a second crop in autumn.
                let expected = indoors_first && label == Label::Spring;
                let raised = self.crop.ways.is_empty()
                    || done(Step::SowIndoors)
                    || (expected && !skipped(Step::SowIndoors));
                let out_already = step == Step::HardenOff && done(Step::PlantOut);
                raised && !recorded() && !done(Step::SowOutdoors) && !out_already
            }
            // Treatments stand and fall with the start that they prepare.
            Step::Soak | Step::Nick | Step::Chill | Step::Chit | Step::RootSlips => true,
            Step::Check | Step::Harvest => false,
        }
    }

    /// The jobs that make sense, each treatment only beside the start that it prepares and once
    /// where two starts are open, and each date counted from what was really done before.
    fn with_treatments(&self, sensible: &[Job]) -> Vec<Job> {
        let mut kept: Vec<Job> = Vec::new();
        for job in sensible {
            if let JobBasis::Before(start) = job.basis {
                let start = self.key(start, job.key.label, job.key.season);
                let open = sensible.iter().any(|other| other.key == start);
                let begun = self.known.mark(&start).and_then(|mark| mark.mark).is_some();
                let double = kept.iter().any(|other| other.key == job.key);
                if !open || begun || double {
                    continue;
                }
            }
            kept.push(self.after_what_was_done(job));
        }
        kept
    }

    fn after_what_was_done(&self, job: &Job) -> Job {
        let JobKey { step, label, season, .. } = job.key;
        let done_on = |step| match self.known.mark(&self.key(step, label, season))?.mark {
            Some(Mark::Done(on)) => Some(on),
            _ => None,
        };
        let mut window = job.window;
        // Where the first sowing was missed, the second way is no second chance but the only one.
        let first = self.crop.ways.first().is_some_and(|way| self.sown(*way, label, season));
        let basis = match job.basis {
            JobBasis::Hedge if !first => JobBasis::Season,
            basis => basis,
        };
        if let Some(sown) = done_on(Step::SowIndoors) {
            window = window.after_sowing(step, self.crop, sown);
        }
        for treatment in &self.crop.seed.pretreat {
            let starts = step.is_sowing() || (step == Step::PlantOut && self.crop.ways.is_empty());
            if let Some(begun) = done_on(treatment.is.into()).filter(|_| starts) {
                window = window.not_before(begun + TimeDelta::days(treatment.lead_days));
            }
        }
        Job { window, basis, ..job.clone() }
    }
}

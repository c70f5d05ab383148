//! The dated jobs of a season.

use std::fmt;
use std::str::FromStr;

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::crop::{Crop, CropId, Way};
use super::season::Season;
use super::succession::repeats;
use super::windows::{Label, Step, Window, windows};

/// What makes a job the same job next week: crop, step, label and season, and for what follows
/// from a sowing that was recorded, that sowing.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct JobKey {
    /// The crop.
    pub crop: CropId,
    /// The step.
    pub step: Step,
    /// Spring, autumn or overwintering.
    pub label: Label,
    /// The year that names the season.
    pub season: i32,
    /// The number of the recorded sowing that it follows; `None` for the season's own jobs.
    pub sowing: Option<i64>,
}

/// What puts a job where it stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum JobBasis {
    /// The garden's season.
    Season,
    /// The sowing or planting that it prepares.
    Before(Step),
    /// It is the second chance of a crop that is wisely started in both ways.
    Hedge,
    /// The sowing before it, made or expected on this day: a repeat sowing.
    Repeat(NaiveDate),
    /// A sowing that was recorded, made on this day.
    Sowing(NaiveDate),
}

/// One dated job: a step of a crop with its window.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Job {
    /// What identifies it.
    pub key: JobKey,
    /// When it is done.
    pub window: Window,
    /// Whether it belongs to the better way of starting this crop, or to the other one.
    pub better_way: bool,
    /// What puts it there.
    pub basis: JobBasis,
}

/// The jobs of `crop` in `season`, in the order of their first good days.
///
/// A treatment before sowing stands before each start that it prepares; the two of a crop that is
/// started in both ways share a key, since it is done for one of them.
#[must_use]
pub fn jobs(crop: &Crop, season: &Season) -> Vec<Job> {
    let all = windows(crop, season);
    let indoors_first = crop.ways.first() != Some(&Way::Outdoors);
    let second = match crop.ways.as_slice() {
        [_, second] if crop.hedge => Some(Step::from(*second)),
        _ => None,
    };
    let job = |step: Step, start: Step, window: Window, basis: JobBasis| Job {
        key: JobKey {
            crop: crop.id.clone(),
            step,
            label: window.label,
            season: window.season,
            sowing: None,
        },
        window,
        better_way: (start == Step::SowOutdoors) != indoors_first,
        basis,
    };
    let mut jobs = Vec::new();
    for step in Step::ALL {
        for window in all.of(step) {
            let hedge = second == Some(step) && window.label == Label::Spring;
            let basis = if hedge { JobBasis::Hedge } else { JobBasis::Season };
            jobs.push(job(step, step, *window, basis));
            let starts = step.is_sowing() || (step == Step::PlantOut && crop.ways.is_empty());
            for treatment in crop.seed.pretreat.iter().filter(|_| starts) {
                let lead = -treatment.lead_days;
                let window = window.shifted(lead, lead, lead, lead);
                jobs.push(job(treatment.is.into(), step, window, JobBasis::Before(step)));
            }
        }
    }
    jobs.sort_by_key(|job| (job.window.ideal_from, job.key.step));
    jobs
}

/// The jobs of a whole season as a plan lists them: those of [`jobs`], and the repeat sowings
/// that would follow a first sowing made on its first good day.
#[must_use]
pub fn planned_jobs(crop: &Crop, season: &Season) -> Vec<Job> {
    let mut all = jobs(crop, season);
    all.extend(repeats(crop, season));
    all.sort_by_key(|job| (job.window.ideal_from, job.key.step));
    all
}

/// A text that is not a job's key.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is not a job")]
pub struct JobKeyError(String);

impl fmt::Display for JobKey {
    /// The short form that buttons carry: `tomato.si.s.2026`, and `tomato.po.s.2026.17` for what
    /// follows the sowing 17.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let step = match self.step {
            Step::Soak => "sk",
            Step::Nick => "ni",
            Step::Chill => "cl",
            Step::Chit => "ct",
            Step::RootSlips => "rs",
            Step::Check => "ck",
            Step::Harvest => "ha",
            Step::SowIndoors => "si",
            Step::SowOutdoors => "so",
            Step::PotUp => "pu",
            Step::HardenOff => "ho",
            Step::PlantOut => "po",
        };
        let label = match self.label {
            Label::Spring => "s",
            Label::Autumn => "a",
            Label::Overwintering => "o",
        };
        write!(f, "{}.{step}.{label}.{}", self.crop, self.season)?;
        self.sowing.map_or(Ok(()), |sowing| write!(f, ".{sowing}"))
    }
}

impl FromStr for JobKey {
    type Err = JobKeyError;

    fn from_str(text: &str) -> Result<Self, JobKeyError> {
        let wrong = || JobKeyError(text.to_owned());
        let mut parts = text.split('.');
        let mut part = || parts.next().ok_or_else(wrong);
        let crop = CropId::new(part()?);
        let step = match part()? {
            "sk" => Step::Soak,
            "ni" => Step::Nick,
            "cl" => Step::Chill,
            "ct" => Step::Chit,
            "rs" => Step::RootSlips,
            "ck" => Step::Check,
            "ha" => Step::Harvest,
            "si" => Step::SowIndoors,
            "so" => Step::SowOutdoors,
            "pu" => Step::PotUp,
            "ho" => Step::HardenOff,
            "po" => Step::PlantOut,
            _ => return Err(wrong()),
        };
        let label = match part()? {
            "s" => Label::Spring,
            "a" => Label::Autumn,
            "o" => Label::Overwintering,
            _ => return Err(wrong()),
        };
        let season = part()?.parse().map_err(|_| wrong())?;
        let sowing = match parts.next() {
            Some(number) => Some(number.parse().ok().filter(|n| *n > 0).ok_or_else(wrong)?),
            None => None,
        };
        if crop.as_str().is_empty() || parts.next().is_some() {
            return Err(wrong());
        }
        Ok(Self { crop, step, label, season, sowing })
    }
}

impl Serialize for JobKey {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for JobKey {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?.parse().map_err(serde::de::Error::custom)
    }
}

//! The dated jobs of a season.

use std::fmt;
use std::str::FromStr;

use super::crop::{Crop, CropId, Way};
use super::season::Season;
use super::windows::{Label, Step, Window, windows};

/// What makes a job the same job next week: crop, step, label and season.
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
}

/// The jobs of `crop` in `season`, in the order of their first good days.
#[must_use]
pub fn jobs(crop: &Crop, season: &Season) -> Vec<Job> {
    let all = windows(crop, season);
    let indoors_first = crop.ways.first() != Some(&Way::Outdoors);
    let mut jobs: Vec<Job> = Step::ALL
        .into_iter()
        .flat_map(|step| all.of(step).iter().map(move |window| (step, *window)))
        .map(|(step, window)| Job {
            key: JobKey { crop: crop.id.clone(), step, label: window.label, season: window.season },
            window,
            better_way: (step == Step::SowOutdoors) != indoors_first,
        })
        .collect();
    jobs.sort_by_key(|job| (job.window.ideal_from, job.key.step));
    jobs
}

/// A text that is not a job's key.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is not a job")]
pub struct JobKeyError(String);

impl fmt::Display for JobKey {
    /// The short form that buttons carry: `tomato.si.s.2026`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let step = match self.step {
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
        write!(f, "{}.{step}.{label}.{}", self.crop, self.season)
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
        if crop.as_str().is_empty() || parts.next().is_some() {
            return Err(wrong());
        }
        Ok(Self { crop, step, label, season })
    }
}

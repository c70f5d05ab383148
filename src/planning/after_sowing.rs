//! What follows a sowing counts from the day it was really sown.

use chrono::{NaiveDate, TimeDelta};

use super::crop::Crop;
use super::windows::{Step, Window};

impl Window {
    /// The window of a step that follows a sowing indoors, once that was done on `sown`.
    ///
    /// Potting up falls three to four weeks after it (common practice, no source). Setting out
    /// waits until the plant has reached the youngest age it bears, and hardening off begins 14
    /// days before (University of Maryland Extension, 2023); where the season comes later than
    /// that, the season rules. A sowing itself, and a crop never raised indoors, is left as it is.
    #[must_use]
    pub fn after_sowing(self, step: Step, crop: &Crop, sown: NaiveDate) -> Self {
        let Some(indoors) = &crop.indoors else { return self };
        let weeks = |n: i64| sown + TimeDelta::weeks(n);
        match step {
            Step::PotUp => {
                let to = weeks(indoors.stay_weeks.longest.max(4));
                Self { from: weeks(3), ideal_from: weeks(3), ideal_to: weeks(4), to, ..self }
            }
            Step::HardenOff => self.not_before(weeks(indoors.age_weeks.workable.low - 2)),
            Step::PlantOut => self.not_before(weeks(indoors.age_weeks.workable.low)),
            _ => self,
        }
    }

    /// The same window, with no good or workable day before `date`.
    #[must_use]
    pub fn not_before(self, date: NaiveDate) -> Self {
        let later = |day: NaiveDate| day.max(date);
        Self {
            from: later(self.from),
            ideal_from: later(self.ideal_from),
            ideal_to: later(self.ideal_to),
            to: later(self.to),
            ..self
        }
    }
}

//! Whether what is started on a day still ripens.

use chrono::{NaiveDate, TimeDelta};
use serde::Serialize;

use super::assess::{Assessment, best_ways};
use super::crop::Crop;
use super::garden::Garden;
use super::harvest::{days_after_direct_sowing, days_after_setting_out, harvest_end};
use super::windows::Step;

/// Whether it ripens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Ripens {
    /// Even the slow end of the days to harvest falls before the season ends.
    Yes,
    /// Only the quick end does.
    Tight,
    /// Not before the season ends.
    No,
}

/// When something started on a day is ready, and what is left of the season then.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Ripening {
    /// The start that was weighed: the best way on that day.
    pub start: Assessment,
    /// Yes, tight or no.
    pub ripens: Ripens,
    /// The earliest first harvest or bloom.
    pub first_early: NaiveDate,
    /// The latest first harvest or bloom.
    pub first_late: NaiveDate,
    /// The day that ends the harvest.
    pub end: NaiveDate,
    /// Days between the latest first harvest and the end; negative when it comes too late.
    pub days_to_spare: i64,
}

/// Whether `crop`, started in the best way on the day `on`, ripens in `garden`; `None` as for
/// [`ripening_of`].
#[must_use]
pub fn ripening(crop: &Crop, garden: Garden, on: NaiveDate) -> Option<Ripening> {
    ripening_of(crop, &best_ways(crop, garden, on).into_iter().next()?)
}

/// Whether `crop`, started as `start` weighs it, ripens.
///
/// `None` where no frost ends the season, where the crop is harvested in another year, where it
/// is never started this way, or where the step comes after the start.
#[must_use]
pub fn ripening_of(crop: &Crop, start: &Assessment) -> Option<Ripening> {
    if crop.crops_in_year > 1 || crop.autumn_planting_weeks.is_some() || start.verdict.is_err() {
        return None;
    }
    let on = start.on;
    let season = start.season?;
    let end = harvest_end(crop, &season)?;
    let days = crop.harvest.days;
    let (from, low, high) = match start.step {
        Step::SowOutdoors => (
            on,
            days_after_direct_sowing(crop, days.low),
            days_after_direct_sowing(crop, days.high),
        ),
        Step::SowIndoors => (
            start.set_out?,
            days_after_setting_out(crop, days.low),
            days_after_setting_out(crop, days.high),
        ),
        Step::PlantOut => {
            (on, days_after_setting_out(crop, days.low), days_after_setting_out(crop, days.high))
        }
        _ => return None,
    };
    let first_early = from + TimeDelta::days(low);
    let first_late = from + TimeDelta::days(high);
    let days_to_spare = end.signed_duration_since(first_late).num_days();
    let ripens = if first_late <= end {
        Ripens::Yes
    } else if first_early <= end {
        Ripens::Tight
    } else {
        Ripens::No
    };
    Some(Ripening { start: start.clone(), ripens, first_early, first_late, end, days_to_spare })
}

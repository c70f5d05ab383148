//! Whether what is started on a day, or was sown, still ripens.

use chrono::{Days, NaiveDate, TimeDelta};
use serde::Serialize;

use super::assess::{Assessment, best_ways};
use super::crop::{Crop, CropId, Way};
use super::garden::{Frost, Garden, RISK_MARGIN_DAYS};
use super::harvest::{
    days_after_direct_sowing, days_after_setting_out, harvest_end, slowed_by_autumn,
};
use super::season::Season;
use super::sowing::{Sown, sowing_plan};
use super::windows::Step;

/// Whether it ripens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Ripens {
    /// Even the slow end of the days to harvest falls before the first frost at the member's risk.
    Yes,
    /// The quick end falls before the season ends in an average year, and no more is sure.
    Tight,
    /// Not before the season ends in an average year.
    No,
}

/// When something started on a day is ready, and what is left of the season then.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Ripening {
    /// The crop.
    pub crop: CropId,
    /// The start that was weighed.
    pub step: Step,
    /// Its day.
    pub on: NaiveDate,
    /// Whether it is a sowing that was made.
    pub recorded: bool,
    /// Yes, tight or no.
    pub ripens: Ripens,
    /// The earliest first harvest or bloom.
    pub first_early: NaiveDate,
    /// The latest first harvest or bloom.
    pub first_late: NaiveDate,
    /// The day that ends the harvest, by the first frost as the member stated it.
    pub end: NaiveDate,
    /// The day that ends it at the member's risk: the date that is trusted, or for a crop that
    /// frost ends, [`RISK_MARGIN_DAYS`] before the average, when about one autumn in ten has
    /// frozen.
    pub risk_end: NaiveDate,
    /// The day that ends it in an average year.
    pub average_end: NaiveDate,
    /// Days between the latest first harvest and [`Ripening::end`]; negative when it comes later.
    pub days_to_spare: i64,
    /// The day from which the days to harvest count: sowing in place, or setting out.
    pub counted_from: NaiveDate,
    /// The season.
    pub(super) season: Season,
}

impl Ripening {
    /// Days between the latest first harvest and the end at the member's risk.
    #[must_use]
    pub fn days_to_spare_at_risk(&self) -> i64 {
        self.risk_end.signed_duration_since(self.first_late).num_days()
    }

    /// Days between the earliest first harvest and the end in an average year.
    #[must_use]
    pub fn days_to_spare_at_best(&self) -> i64 {
        self.average_end.signed_duration_since(self.first_early).num_days()
    }

    /// Days from the counted start to the first harvest, for a variety of `days` by the trade's
    /// figure.
    pub(super) fn first_after(&self, crop: &Crop, days: i64) -> NaiveDate {
        let lead = match self.step {
            Step::SowOutdoors => days_after_direct_sowing(crop, days),
            _ => days_after_setting_out(crop, days),
        };
        slowed_by_autumn(self.counted_from + TimeDelta::days(lead), self.season.first_frost)
    }
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
    if never_asked(crop) || start.verdict.is_err() {
        return None;
    }
    let counted_from = match start.step {
        Step::SowIndoors => start.set_out?,
        Step::SowOutdoors | Step::PlantOut => start.on,
        _ => return None,
    };
    reckoned(crop, start.season?, start.step, start.on, counted_from)
}

/// Whether a recorded sowing ripens: counted from the day it was really sown or set out, or will
/// be set out by its plan. `None` as for [`ripening_of`].
#[must_use]
pub fn ripening_of_sowing(crop: &Crop, garden: Garden, sown: &Sown) -> Option<Ripening> {
    let Frost::Dates(frost) = garden.frost else { return None };
    if never_asked(crop) {
        return None;
    }
    let plan = sowing_plan(crop, Some(garden), sown);
    let step = match sown.way {
        Way::Indoors => Step::SowIndoors,
        Way::Outdoors => Step::SowOutdoors,
    };
    let season = Season::of_year(frost, sown.season);
    let ripe = reckoned(crop, season, step, sown.on, plan.harvest_counts_from?)?;
    Some(Ripening { recorded: true, ..ripe })
}

/// Harvested in another year, so that this season's frost says nothing.
fn never_asked(crop: &Crop) -> bool {
    crop.crops_in_year > 1 || crop.autumn_planting_weeks.is_some()
}

fn reckoned(
    crop: &Crop,
    season: Season,
    step: Step,
    on: NaiveDate,
    counted_from: NaiveDate,
) -> Option<Ripening> {
    let end = harvest_end(crop, &season)?;
    let margin = Days::new(RISK_MARGIN_DAYS);
    // A harvest that stands frost does not hang on a single night.
    let (average_end, risk_end) = match (crop.harvest.stands_frost, season.trusted) {
        (true, _) => (end, end),
        (false, Some(_)) => (end + margin, end),
        (false, None) => (end, end - margin),
    };
    let mut ripe = Ripening {
        crop: crop.id.clone(),
        step,
        on,
        recorded: false,
        ripens: Ripens::No,
        first_early: counted_from,
        first_late: counted_from,
        end,
        risk_end,
        average_end,
        days_to_spare: 0,
        counted_from,
        season,
    };
    ripe.first_early = ripe.first_after(crop, crop.harvest.days.low);
    ripe.first_late = ripe.first_after(crop, crop.harvest.days.high);
    ripe.days_to_spare = end.signed_duration_since(ripe.first_late).num_days();
    ripe.ripens = if ripe.first_late <= risk_end {
        Ripens::Yes
    } else if ripe.first_early <= average_end {
        Ripens::Tight
    } else {
        Ripens::No
    };
    Some(ripe)
}

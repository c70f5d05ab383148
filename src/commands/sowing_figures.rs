//! What a planned sowing carries in figures: the seeds to sow, and when they should be up.

use serde::Serialize;

use crate::chat::SeedCountFigures;
use crate::planning::{Crop, Place, Step, Way, coming_up, estimated_rate, fit_soil_c};

/// Days to come up of a planned sowing; days are counted from the sowing.
#[derive(Debug, Serialize)]
pub(super) struct PlannedEmergence {
    /// The temperature in degrees Celsius that was reckoned with: indoors the usual room; `null`
    /// where the usual days of the crop stand.
    at_c: Option<i64>,
    /// The first day on which it should be up.
    up_after: i64,
    /// The last of those days.
    up_by: i64,
    /// The day at which an empty tray or row is sown again.
    resow_after: i64,
    /// The coolest soil in degrees Celsius that is warm enough.
    soil_from_c: Option<f64>,
    /// The warmest soil in degrees Celsius that is cool enough.
    soil_to_c: Option<f64>,
}

fn way_of(step: Step) -> Option<Way> {
    match step {
        Step::SowIndoors => Some(Way::Indoors),
        Step::SowOutdoors => Some(Way::Outdoors),
        _ => None,
    }
}

/// When a sowing of `crop` should be up; `None` for a job that is no sowing.
pub(super) fn planned_emergence(
    crop: &Crop,
    step: Step,
    place: Option<Place>,
) -> Option<PlannedEmergence> {
    let coming = coming_up(crop, way_of(step)?, place, None)?;
    let days = coming.days?;
    let fit = fit_soil_c(crop);
    Some(PlannedEmergence {
        at_c: coming.at_c,
        up_after: days.low,
        up_by: days.high,
        resow_after: coming.resow_after,
        soil_from_c: fit.map(|(from, _)| from),
        soil_to_c: fit.map(|(_, to)| to),
    })
}

/// How many fresh seeds of `crop` to sow for so many plants; `None` for a job that is no sowing.
pub(super) fn planned_seeds(crop: &Crop, step: Step, plants: u32) -> Option<SeedCountFigures> {
    let per_cell = match way_of(step)? {
        Way::Indoors => crop.seeds_per_cell(),
        Way::Outdoors => None,
    };
    SeedCountFigures::reckoned(plants, per_cell, estimated_rate(crop, 0.0)?).ok()
}

//! Sowings in the ground that were made before the ground was ready.

use chrono::NaiveDate;

use super::assess::Verdict;
use super::crop::{Crop, Way};
use super::garden::Garden;
use super::soil::{degrees, soil_verdict, which_to_believe};
use super::sowing::Sown;
use super::windows::{Label, windows};

/// The first workable day for a sowing in the ground that was made before it; `None` where it was
/// made in time or later, under cover, for the autumn or the next year, or in a soil that was
/// measured and allows it before its date.
///
/// Seed that lies in cold ground, and seedlings that a frost meets, gain nothing on those that are
/// sown in time (common practice, no source), so what follows from such a sowing counts from here.
#[must_use]
pub fn sown_too_early(crop: &Crop, garden: Garden, sown: &Sown) -> Option<NaiveDate> {
    if sown.way != Way::Outdoors || sown.label != Label::Spring {
        return None;
    }
    let season = garden.season_of(sown.season)?;
    let of_season = windows(crop, &season).sow_outdoors;
    let window = of_season.into_iter().find(|window| window.label == sown.label)?;
    let soil = sown.at_c.and_then(|at_c| soil_verdict(crop, degrees(at_c)));
    let by_date = Some((Verdict::TooEarly, window.label));
    let soil_allows = soil.is_some_and(|soil| which_to_believe(crop, soil, by_date).sow);
    (sown.on < window.from && !soil_allows).then_some(window.from)
}

//! Sowing outdoors by the temperature of the soil, and which to believe where the date differs.

use serde::Serialize;

use super::assess::Verdict;
use super::crop::{Crop, SoilTemperature};
use super::emergence::{
    Emergence, EmergenceRow, LONGEST_EMERGENCE_DAYS, Side, days_to_emerge, too_slow_side,
};
use super::windows::Label;

/// The catalogue rounds the trade's figures to whole degrees Celsius: 60 °F, which is 15.6 °C,
/// is kept as 16. A measured temperature within half a degree of a limit meets it.
const ROUNDING_C: f64 = 0.5;

/// What a soil temperature that lasts means for a seed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SoilVerdict {
    /// It comes up within three weeks, in about so many days where the trials tell.
    Warm(Option<f64>),
    /// Above the least that it needs and below its best, and no trial tells the days: it can work.
    Cool,
    /// It would not come up, take over three weeks, or come up uncertainly.
    TooCold,
    /// The same on the hot side.
    TooHot,
}

/// The verdict on sowing `crop` in soil that stays at `soil_c` degrees Celsius; `None` where the
/// crop is not started from seed.
///
/// The published range of the crop and the days in the trials are both asked, and the more careful
/// one rules: a soil below the least that a crop needs is too cold whatever the trials say, and
/// over [`LONGEST_EMERGENCE_DAYS`] to come up count as too cold however low the minimum is.
#[must_use]
pub fn soil_verdict(crop: &Crop, soil_c: f64) -> Option<SoilVerdict> {
    let range = crop.seed.soil_c.as_ref()?;
    if below_the_least(crop, soil_c) {
        return Some(SoilVerdict::TooCold);
    }
    if soil_c - ROUNDING_C > degrees(range.maximum) {
        return Some(SoilVerdict::TooHot);
    }
    Some(match days_to_emerge(&crop.id, soil_c) {
        Emergence::Days(days) if days <= LONGEST_EMERGENCE_DAYS => SoilVerdict::Warm(Some(days)),
        Emergence::Days(_) => match too_slow_side(&crop.id, soil_c) {
            Side::TooCold => SoilVerdict::TooCold,
            Side::TooHot => SoilVerdict::TooHot,
        },
        Emergence::NotAtAll(side) | Emergence::Uncertain { side, .. } => match side {
            Side::TooCold => SoilVerdict::TooCold,
            Side::TooHot => SoilVerdict::TooHot,
        },
        // Colder than where it already takes too long it is not quicker, tested or not.
        Emergence::NotTested
            if EmergenceRow::of(&crop.id)
                .and_then(|row| row.days_where_next_warmer(soil_c))
                .is_some_and(|days| days > LONGEST_EMERGENCE_DAYS) =>
        {
            SoilVerdict::TooCold
        }
        Emergence::NotTested | Emergence::NoTable => by_range(range, soil_c),
    })
}

/// Whether soil of `soil_c` degrees Celsius is frozen or colder than the published least for the
/// crop.
#[must_use]
pub fn below_the_least(crop: &Crop, soil_c: f64) -> bool {
    let least = crop.seed.soil_c.as_ref().map(|range| degrees(range.minimum));
    soil_c <= 0.0 || least.is_some_and(|least| soil_c + ROUNDING_C < least)
}

fn by_range(range: &SoilTemperature, soil_c: f64) -> SoilVerdict {
    if soil_c + ROUNDING_C >= degrees(range.optimum.low) {
        SoilVerdict::Warm(None)
    } else {
        SoilVerdict::Cool
    }
}

#[expect(clippy::cast_precision_loss, reason = "soil temperatures are two-digit numbers")]
pub(super) fn degrees(celsius: i64) -> f64 {
    celsius as f64
}

/// The coolest and the warmest soil, to a tenth of a degree Celsius, between which the soil is
/// neither too cold nor too hot for the crop; `None` where it is not started from seed.
#[must_use]
pub fn fit_soil_c(crop: &Crop) -> Option<(f64, f64)> {
    let best = crop.seed.soil_c.as_ref()?.optimum;
    let fits = |tenths: &i64| {
        let verdict = soil_verdict(crop, degrees(*tenths) / 10.0);
        matches!(verdict, Some(SoilVerdict::Warm(_) | SoilVerdict::Cool))
    };
    let good = (10 * best.low..=10 * best.high).find(fits)?;
    let coolest = (0..=good).rev().take_while(fits).last()?;
    let warmest = (good..=500).take_while(fits).last()?;
    Some((degrees(coolest) / 10.0, degrees(warmest) / 10.0))
}

/// Which of the two rules, the soil or the date.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Believe {
    /// They agree.
    Both,
    /// The soil.
    Soil,
    /// The date.
    Date,
}

/// What to do about sowing in the ground, by soil and date together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct SoilAdvice {
    /// Whether to sow on that day.
    pub sow: bool,
    /// Which of the two rules.
    pub believe: Believe,
}

/// Which to believe of the soil's verdict and the date's.
///
/// A soil that was measured at sowing depth over several days beats the calendar, which only
/// guesses at cold soil: cold soil means waiting though the date is right, and warm soil lets a
/// crop that bears frost be sown before its date. What frost kills waits for both, the later of
/// the two, because the frost date still rules what comes up; and no soil makes up for a date that
/// is too late, or for a sowing whose window belongs to the autumn or the next year. Common
/// practice, no source. Without a verdict by date (no frost here) the soil rules.
#[must_use]
pub fn which_to_believe(
    crop: &Crop,
    soil: SoilVerdict,
    date: Option<(Verdict, Label)>,
) -> SoilAdvice {
    let soil_allows = matches!(soil, SoilVerdict::Warm(_) | SoilVerdict::Cool);
    let advice = |sow, believe| SoilAdvice { sow, believe };
    let Some((verdict, label)) = date else { return advice(soil_allows, Believe::Soil) };
    let cold_date = label == Label::Spring && !crop.frost_kills();
    match verdict {
        Verdict::OnTime | Verdict::Late if soil_allows => advice(true, Believe::Both),
        Verdict::TooEarly | Verdict::Early if soil_allows && cold_date => {
            advice(true, Believe::Soil)
        }
        Verdict::TooEarly | Verdict::Early | Verdict::TooLate if soil_allows => {
            advice(false, Believe::Date)
        }
        Verdict::TooLate => advice(false, Believe::Date),
        Verdict::TooEarly => advice(false, Believe::Both),
        Verdict::OnTime | Verdict::Late | Verdict::Early => advice(false, Believe::Soil),
    }
}

//! When a sowing should be up, by the temperature that it stands at.

use serde::Serialize;

use super::crop::{Crop, Span, Way};
use super::emergence::{Emergence, LONGEST_EMERGENCE_DAYS, Side, days_to_emerge, too_slow_side};
use super::place::Place;
use super::soil::{SoilVerdict, below_the_least, soil_verdict};

/// The temperature in degrees Celsius of the usual room that seed is raised in, where the gardener
/// gave none: 20 °C, 68 °F. Common practice, no source.
pub const USUAL_ROOM_C: i64 = 20;

/// What a temperature means for a sowing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Outlook {
    /// It comes up.
    Good,
    /// It comes up, but only after more than [`LONGEST_EMERGENCE_DAYS`].
    TooSlow(Side),
    /// Slowly and unevenly, if at all: between a temperature at which little or none came up in
    /// the trials and one that was counted.
    Uncertain(Side),
    /// In the trials little or none came up.
    NoneInTrials(Side),
    /// Outside the published range of a crop of which there is no trial at that temperature.
    OutOfRange(Side),
    /// It was not tested there, and the published range tells nothing against it.
    NotTested,
}

impl Outlook {
    /// Whether the sowing is not to be expected up at all.
    #[must_use]
    pub fn comes_up(self) -> bool {
        !matches!(self, Self::NoneInTrials(_) | Self::OutOfRange(_))
    }
}

/// When a sowing should be up.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ComingUp {
    /// The temperature in degrees Celsius that was reckoned with; `None` where none was given and
    /// the catalogue's usual days stand.
    pub at_c: Option<i64>,
    /// What it means.
    pub outlook: Outlook,
    /// The first and the last day after sowing on which it should come up; `None` where it is not
    /// to be expected.
    pub days: Option<Span>,
    /// Days after sowing at which it is looked for.
    pub look_after: i64,
    /// Days after sowing at which an empty tray or row is sown again.
    pub resow_after: i64,
}

/// Days after the usual last day of coming up at which a sowing counts as failed: as many as the
/// seed usually takes, but at least 7 and at most 14. Common practice ("twice the usual time")
/// with no source; the bounds are our own, for the quickest and the slowest seed.
#[must_use]
pub fn resow_margin_days(usual_days: i64) -> i64 {
    usual_days.clamp(7, 14)
}

/// When a sowing of `crop` in `way` should be up that stands at `given_c` degrees Celsius, the
/// temperature of the soil or the room as the gardener gave it. `None` where the trade states no
/// days.
///
/// The days are those of the trials of Harrington and Minges (1954) at that temperature, and the
/// last of them is a quarter later, at least two days: not all seed of a sowing comes up at once
/// (our own allowance). Indoors without a temperature the usual room counts, [`USUAL_ROOM_C`],
/// and on a heat mat [`Place::emerge_days`].
/// Where the trials have nothing, the catalogue's usual days stand, unless the temperature lies
/// outside the published range of the crop. A sowing that is not to be expected up is given up
/// after three weeks ([`LONGEST_EMERGENCE_DAYS`]): longer in such soil the seed rots.
///
/// ```
/// use sowbell::planning::{Outlook, Side, Way, coming_up};
/// let catalogue = sowbell::catalogue::Catalogue::embedded()?;
/// let pepper = catalogue.get("pepper").ok_or("no pepper")?;
/// // 25 days at 15 °C; none at 10 °C.
/// let cool = coming_up(pepper, Way::Indoors, None, Some(15)).ok_or("no days")?;
/// assert_eq!(cool.days.map(|days| days.low), Some(25));
/// let cold = coming_up(pepper, Way::Indoors, None, Some(10)).ok_or("no days")?;
/// assert_eq!((cold.outlook, cold.days), (Outlook::NoneInTrials(Side::TooCold), None));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn coming_up(
    crop: &Crop,
    way: Way,
    place: Option<Place>,
    given_c: Option<i64>,
) -> Option<ComingUp> {
    let usual = crop.seed.emerge_days.as_ref()?.is;
    if given_c.is_none() && way == Way::Indoors && place == Some(Place::HeatMat) {
        return Some(reckoned(None, Outlook::Good, Place::HeatMat.emerge_days(usual)));
    }
    let room = (way == Way::Indoors).then_some(USUAL_ROOM_C);
    let Some(at_c) = given_c.or(room) else { return Some(reckoned(None, Outlook::Good, usual)) };
    let soil_c = degrees(at_c);
    let in_trials = days_to_emerge(&crop.id, soil_c);
    Some(match in_trials {
        Emergence::Days(days) => {
            let slow = days > LONGEST_EMERGENCE_DAYS;
            let outlook = if slow {
                Outlook::TooSlow(too_slow_side(&crop.id, soil_c))
            } else {
                Outlook::Good
            };
            reckoned(Some(at_c), outlook, spread(days))
        }
        Emergence::NotAtAll(side) => none(at_c, Outlook::NoneInTrials(side)),
        Emergence::Uncertain { side, days, .. } => {
            let days = spread(days);
            let longest = whole(LONGEST_EMERGENCE_DAYS).max(days.high);
            let days = Span { low: days.low, high: longest };
            reckoned(Some(at_c), Outlook::Uncertain(side), days)
        }
        // Nobody gave a temperature, and the trials tell nothing of the usual room.
        Emergence::NotTested | Emergence::NoTable if given_c.is_none() => {
            reckoned(None, Outlook::Good, usual)
        }
        Emergence::NotTested | Emergence::NoTable => match untold(crop, soil_c) {
            Outlook::OutOfRange(side) => none(at_c, Outlook::OutOfRange(side)),
            outlook => reckoned(Some(at_c), outlook, usual),
        },
    })
}

fn reckoned(at_c: Option<i64>, outlook: Outlook, days: Span) -> ComingUp {
    let resow_after = days.high.saturating_add(resow_margin_days(days.high));
    ComingUp { at_c, outlook, days: Some(days), look_after: days.high, resow_after }
}

fn none(at_c: i64, outlook: Outlook) -> ComingUp {
    let longest = whole(LONGEST_EMERGENCE_DAYS);
    ComingUp { at_c: Some(at_c), outlook, days: None, look_after: longest, resow_after: longest }
}

/// From the days of the trials to a quarter more, at least two days.
fn spread(days: f64) -> Span {
    let low = whole(days.round()).max(1);
    Span { low, high: whole((days * 1.25).ceil()).max(low.saturating_add(2)) }
}

/// What a temperature means at which there is no trial.
fn untold(crop: &Crop, soil_c: f64) -> Outlook {
    match soil_verdict(crop, soil_c) {
        Some(SoilVerdict::TooCold) if below_the_least(crop, soil_c) => {
            Outlook::OutOfRange(Side::TooCold)
        }
        // Colder than where it already takes too long.
        Some(SoilVerdict::TooCold) => Outlook::TooSlow(Side::TooCold),
        Some(SoilVerdict::TooHot) => Outlook::OutOfRange(Side::TooHot),
        Some(SoilVerdict::Warm(_)) => Outlook::Good,
        Some(SoilVerdict::Cool) | None => Outlook::NotTested,
    }
}

#[expect(clippy::cast_precision_loss, reason = "temperatures of soil are two-digit numbers")]
fn degrees(celsius: i64) -> f64 {
    celsius as f64
}

#[expect(clippy::cast_possible_truncation, reason = "the cast keeps to the range of i64")]
fn whole(days: f64) -> i64 {
    days as i64
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;
    use crate::planning::EmergenceRow;

    fn catalogue() -> &'static Catalogue {
        static CATALOGUE: std::sync::OnceLock<Catalogue> = std::sync::OnceLock::new();
        CATALOGUE.get_or_init(|| Catalogue::embedded().expect("the catalogue"))
    }

    fn at(crop: &str, given_c: impl Into<Option<i64>>) -> ComingUp {
        let crop = catalogue().get(crop).expect("listed");
        coming_up(crop, Way::Indoors, None, given_c.into()).expect("from seed")
    }

    #[expect(clippy::unnecessary_wraps, reason = "compared with days that may be missing")]
    fn days(low: i64, high: i64) -> Option<Span> {
        Some(Span { low, high })
    }

    #[test]
    fn the_usual_room_counts_where_no_temperature_was_given() {
        // Table: tomato 8 days at 20 °C, pepper 13. A quarter more: 10, and 16.25, so 17.
        assert_eq!(at("tomato", None).days, days(8, 10));
        assert_eq!(at("pepper", None).days, days(13, 17));
        assert_eq!(at("pepper", None), at("pepper", USUAL_ROOM_C));
        // Pepper is given up after 17 days and as many more, but at most 14.
        assert_eq!((at("pepper", None).look_after, at("pepper", None).resow_after), (17, 31));
        // Basil is not in the table: the catalogue's days.
        let basil = catalogue().get("basil").expect("listed").seed.emerge_days.clone();
        assert_eq!(at("basil", None).days, basil.map(|days| days.is));
    }

    #[test]
    fn a_heat_mat_is_warmer_than_the_room_unless_a_temperature_was_given() {
        let pepper = catalogue().get("pepper").expect("listed");
        let usual = pepper.seed.emerge_days.as_ref().expect("days").is;
        let mat = |given_c| coming_up(pepper, Way::Indoors, Some(Place::HeatMat), given_c);
        let quick = Some(Place::HeatMat.emerge_days(usual));
        assert_eq!(mat(None).expect("from seed").days, quick);
        assert_eq!(mat(Some(15)).expect("from seed").days, days(25, 32));
    }

    #[test]
    fn in_the_ground_the_usual_days_stand_until_a_temperature_is_given() {
        let bean = catalogue().get("bush_bean").expect("listed");
        let usual = bean.seed.emerge_days.as_ref().expect("days").is;
        let unmeasured = coming_up(bean, Way::Outdoors, None, None).expect("from seed");
        assert_eq!((unmeasured.at_c, unmeasured.days), (None, Some(usual)));
        // Table: 16 days at 15 °C; a quarter more is 20.
        let cool = coming_up(bean, Way::Outdoors, None, Some(15)).expect("from seed");
        assert_eq!((cool.at_c, cool.days), (Some(15), days(16, 20)));
    }

    #[test]
    fn what_will_not_come_up_is_given_up_after_three_weeks() {
        // Table: snap bean NG at 10 °C and at 40 °C, lettuce NG at 35 °C.
        for (crop, at_c, side) in [
            ("bush_bean", 10, Side::TooCold),
            ("bush_bean", 40, Side::TooHot),
            ("lettuce", 35, Side::TooHot),
        ] {
            let cold = at(crop, at_c);
            assert_eq!(cold.outlook, Outlook::NoneInTrials(side), "{crop}");
            assert_eq!((cold.days, cold.look_after, cold.resow_after), (None, 21, 21), "{crop}");
            assert!(!cold.outlook.comes_up());
        }
        // Basil has no trial: its published range begins at 15 °C or above.
        let least = catalogue().get("basil").and_then(|crop| crop.seed.soil_c.clone());
        let least = least.expect("a range").minimum;
        assert_eq!(at("basil", least - 1).outlook, Outlook::OutOfRange(Side::TooCold));
        assert!(at("basil", least).outlook.comes_up());
        assert_eq!(at("basil", 45).outlook, Outlook::OutOfRange(Side::TooHot));
        assert_eq!(at("tomato", -3).outlook, Outlook::OutOfRange(Side::TooCold));
    }

    #[test]
    fn the_margin_is_the_usual_time_within_bounds() {
        assert_eq!((resow_margin_days(4), resow_margin_days(11)), (7, 11));
        assert_eq!(resow_margin_days(28), 14);
    }

    #[test]
    fn slow_and_uncertain_ones_are_waited_for() {
        // Table: tomato 43 days at 10 °C; carrot 51 at 5 °C; parsnip 32 at 30 °C, past its best.
        assert_eq!(at("tomato", 10).outlook, Outlook::TooSlow(Side::TooCold));
        assert_eq!(at("tomato", 10).days, days(43, 54));
        assert_eq!(at("carrot", 5).outlook, Outlook::TooSlow(Side::TooCold));
        assert_eq!(at("parsnip", 30).outlook, Outlook::TooSlow(Side::TooHot));
        // Snap bean: none at 10 °C, 16 days at 15 °C.
        let between = at("bush_bean", 13);
        assert_eq!(between.outlook, Outlook::Uncertain(Side::TooCold));
        assert_eq!(between.days, days(16, 21));
        // Cabbage was not tested at 7 °C, and its published range begins at 4 °C.
        assert_eq!(at("cabbage", 7).outlook, Outlook::NotTested);
    }

    #[test]
    fn warmer_soil_up_to_the_quickest_never_takes_longer() {
        for crop in catalogue().iter() {
            let Some((quickest, _)) = EmergenceRow::of(&crop.id).and_then(|row| row.quickest())
            else {
                continue;
            };
            let days: Vec<i64> = (0..=quickest)
                .filter_map(|at_c| coming_up(crop, Way::Indoors, None, Some(at_c)))
                .filter(|is| matches!(is.outlook, Outlook::Good | Outlook::TooSlow(_)))
                .filter(|is| {
                    is.at_c.is_some_and(|at_c| {
                        matches!(days_to_emerge(&crop.id, degrees(at_c)), Emergence::Days(_))
                    })
                })
                .filter_map(|is| is.days.map(|days| days.high))
                .collect();
            assert!(days.is_sorted_by(|one, next| one >= next), "{}: {days:?}", crop.id);
        }
    }
}

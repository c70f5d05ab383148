//! The windows of a season that heat and rain bound, where no frost does.

use chrono::{Datelike, NaiveDate, TimeDelta};

use super::crop::{Class, Crop, LifeCycle, Way};
use super::harvest::{ROOTING_WEEKS, days_after_direct_sowing, days_after_setting_out};
use super::months::{HotAndWet, Months};
use super::place::oldest_weeks;
use super::season::Season;
use super::windows::{Label, Window, Windows};

/// The dates of a season without frost.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DrySeason {
    /// The day on which the heat, or the rain that leads into it, is back.
    pub heat: NaiveDate,
    /// The first day of the two coolest months.
    pub coolest_from: NaiveDate,
    /// The first day after them.
    pub coolest_to: NaiveDate,
    /// Whether no hot month was given, so that rain alone bounds the season.
    pub by_rain: bool,
}

/// How a crop takes heat and rain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Takes {
    /// Suffers as soon as days grow warm: crops that bear cold.
    Cool,
    /// Bears warm days, and must have set before the heat.
    Mild,
    /// Bears warm days, and sickens in heat and rain: the warm-loving crops.
    Dry,
    /// Bears heat and rain, and stands still in the coolest months.
    Heat,
}

fn takes(crop: &Crop) -> Takes {
    match crop.class.is {
        _ if crop.outdoors.bears_heat => Takes::Heat,
        Class::VeryHardy | Class::FrostTolerant => Takes::Cool,
        Class::Tender => Takes::Mild,
        Class::WarmLoving => Takes::Dry,
    }
}

/// The season without frost that begins in `year`; `None` outside the calendar.
pub(super) fn season(months: HotAndWet, year: i32) -> Option<Season> {
    let rhythm = months.rhythm()?;
    let starts = NaiveDate::from_ymd_opt(year, rhythm.starts, 1)?;
    let first_of = |month: u32, from: NaiveDate| {
        let same_year = NaiveDate::from_ymd_opt(from.year(), month, 1)?;
        if same_year > from { Some(same_year) } else { same_year.with_year(from.year() + 1) }
    };
    let heat = first_of(rhythm.heat, starts)?;
    // Where rain puts the season off beyond the coolest months, those before it are meant.
    let mut coolest_from = first_of(rhythm.coolest, starts)?;
    if coolest_from >= heat {
        coolest_from = coolest_from.with_year(coolest_from.year() - 1)?;
    }
    let dry = DrySeason {
        heat,
        coolest_from,
        coolest_to: coolest_from.checked_add_months(chrono::Months::new(2))?,
        by_rain: months.hot() == Months::NONE,
    };
    Some(Season {
        year,
        last_frost: starts,
        trusted: None,
        ten_percent: starts,
        first_frost: None,
        place: None,
        cover: None,
        dry: Some(dry),
    })
}

/// Weeks of picking that a planting should give; more is welcome but not waited for.
const MOST_PICKING_WEEKS: i64 = 6;

/// Days before the heat at which the days are too warm for cool crops already.
const WARMING_DAYS: i64 = 28;

/// Days in hand before the last worthwhile day, within which it is late.
const IN_HAND_DAYS: i64 = 7;

/// The windows of `crop`.
///
/// Planting begins with the season, and for crops that bear heat after the coolest months. Its
/// last day is counted back from the heat, by what the crop bears:
///
/// - a cool crop must have been picked (for six weeks at most) four weeks before it,
/// - a tender crop must give its first harvest before it,
/// - a warm-loving crop must have been picked before it, since heat comes with rain and sickness,
/// - a crop that bears heat must have been picked before the next coolest months.
///
/// The rules are fitted to University of Florida IFAS, SP 103, South Florida (bush bean September
/// to April, cucumber and lettuce September to February); the weeks in them are our own.
pub(super) fn windows(crop: &Crop, season: &Season, dry: &DrySeason) -> Windows {
    let mut all = Windows::default();
    let plants = crop.ways.contains(&Way::Indoors) || crop.ways.is_empty();
    let lead = |days| days_after_setting_out(crop, days);
    if let Some(plant_out) = window(crop, season, dry, lead).filter(|_| plants) {
        all.plant_out.push(plant_out);
        if let Some(indoors) = &crop.indoors {
            let age = &indoors.age_weeks;
            all.sow_indoors.push(
                Window {
                    from: plant_out.from - TimeDelta::weeks(oldest_weeks(age, season.place)),
                    ideal_from: plant_out.ideal_from - TimeDelta::weeks(age.ideal.high),
                    ideal_to: plant_out.ideal_to - TimeDelta::weeks(age.ideal.low),
                    to: plant_out.to - TimeDelta::weeks(age.workable.low),
                    ..plant_out
                }
                .ordered(),
            );
        }
    }
    let in_place = crop.ways.contains(&Way::Outdoors) && crop.outdoors.sow_weeks.is_some();
    let lead = |days| days_after_direct_sowing(crop, days);
    all.sow_outdoors.extend(window(crop, season, dry, lead).filter(|_| in_place));
    all.season_too_short = all.plant_out.is_empty() && all.sow_outdoors.is_empty();
    all
}

/// The window of a start that gives its first harvest `lead` days later; `None` where the season
/// is too short for it.
fn window(
    crop: &Crop,
    season: &Season,
    dry: &DrySeason,
    lead: impl Fn(i64) -> i64,
) -> Option<Window> {
    let first_harvest = TimeDelta::days(lead(crop.harvest.days.middle()));
    let picking = TimeDelta::weeks(crop.harvest.lasts_weeks.min(MOST_PICKING_WEEKS));
    let takes = takes(crop);
    let (from, to) = match takes {
        // What lives on must take root before the heat, whenever it crops.
        _ if crop.life == LifeCycle::Perennial || crop.crops_in_year > 1 => {
            (season.last_frost, dry.heat - TimeDelta::weeks(ROOTING_WEEKS))
        }
        Takes::Cool => {
            let warm = dry.heat - TimeDelta::days(WARMING_DAYS);
            (season.last_frost, warm - first_harvest - picking)
        }
        Takes::Mild => (season.last_frost, dry.heat - first_harvest),
        Takes::Dry => (season.last_frost, dry.heat - first_harvest - picking),
        Takes::Heat => {
            let cool_again = dry.coolest_from.with_year(dry.coolest_from.year() + 1)?;
            (dry.coolest_to, cool_again - first_harvest - picking)
        }
    };
    if to < from {
        return None;
    }
    let middle = season.last_frost + dry.heat.signed_duration_since(season.last_frost) / 2;
    Some(Window {
        label: if from < middle { Label::Autumn } else { Label::Spring },
        from,
        ideal_from: from,
        ideal_to: (to - TimeDelta::days(IN_HAND_DAYS)).max(from),
        to,
        season: season.year,
    })
}

//! How much harvest is left: the second loss that every verdict weighs.

use chrono::{Days, NaiveDate, TimeDelta};

use super::crop::{Class, CountedFrom, Crop, HarvestKind, LifeCycle};
use super::season::Season;

/// Days that a harvest which stands frost goes on after the first frost, by class.
///
/// Common practice with no source: two weeks for frost-tolerant crops, four for very hardy ones.
fn frost_grace_days(crop: &Crop) -> u64 {
    match crop.class.is {
        Class::VeryHardy => 28,
        Class::FrostTolerant => 14,
        Class::Tender | Class::WarmLoving => 0,
    }
}

/// Weeks before the first frost by which a plant that lives on must stand in the ground, so that
/// it roots before winter. Common practice with no source.
pub(super) const ROOTING_WEEKS: i64 = 6;

/// The day that ends a crop's harvest in a season, or `None` where no frost does; a cover puts it
/// off.
#[must_use]
pub fn harvest_end(crop: &Crop, season: &Season) -> Option<NaiveDate> {
    let first = season.first_frost?;
    let grace = if crop.harvest.stands_frost { frost_grace_days(crop) } else { 0 };
    let covered = season.cover.map_or(0, |cover| cover.autumn_weeks(crop));
    Some(first + Days::new(grace) + TimeDelta::weeks(covered))
}

/// Days by which a harvest comes later as autumn days shorten. Source: Virginia Cooperative
/// Extension 426-334.
const SHORT_DAY_FACTOR: i64 = 14;

/// Days before the first frost from which growth slows down, as autumn days shorten and cool.
///
/// Our own reading of the source of [`SHORT_DAY_FACTOR`], which gives the fortnight and not the
/// day it begins: in its worked cases (snap bean and radish, first frost 15 October) the harvest
/// would come six and three weeks before the frost without the fortnight, and gets the whole of
/// it; so it is spread over the two weeks before those six.
const SLOWS_FROM_DAYS: i64 = 56;

/// The day on which a harvest comes that would come on `date` in long days, where the first frost
/// is on `first_frost`: the autumn slow-down.
///
/// A harvest in midsummer comes as the trade's days say. From eight weeks before the first frost
/// on, each day costs a second one, until a fortnight is lost. The fortnight is the short-day
/// factor of Virginia Cooperative Extension 426-334; when it begins is our own reading of that
/// publication's cases. A later date never comes out earlier.
///
/// ```
/// use sowbell::planning::slowed_by_autumn;
/// let day = |text: &str| text.parse().expect("a date");
/// let frost = Some(day("2026-10-15"));
/// assert_eq!(slowed_by_autumn(day("2026-08-01"), frost), day("2026-08-01"));
/// // Snap beans sown on 10 July: 55 days would be 3 September, and a fortnight later is the
/// // 17th; 14 days of harvest and 14 for frost-tender crops reach 15 October.
/// assert_eq!(slowed_by_autumn(day("2026-09-03"), frost), day("2026-09-17"));
/// ```
#[must_use]
pub fn slowed_by_autumn(date: NaiveDate, first_frost: Option<NaiveDate>) -> NaiveDate {
    let Some(first) = first_frost else { return date };
    let slows_from = first - TimeDelta::days(SLOWS_FROM_DAYS);
    let within = date.signed_duration_since(slows_from).num_days();
    date + TimeDelta::days(within.clamp(0, SHORT_DAY_FACTOR))
}

/// Days to count back from the average first autumn frost for an autumn sowing.
///
/// Days to harvest, plus the harvest period, plus a fortnight because days shorten, plus another
/// for crops that frost kills. Source: Virginia Cooperative Extension 426-334.
///
/// ```
/// use sowbell::planning::autumn_count_back;
/// assert_eq!(autumn_count_back(55, 14, true), 97); // snap bean
/// assert_eq!(autumn_count_back(28, 7, false), 49); // radish
/// ```
#[must_use]
pub fn autumn_count_back(days_to_harvest: i64, harvest_days: i64, frost_kills: bool) -> i64 {
    const FROST_TENDER_FACTOR: i64 = 14;
    let tender = if frost_kills { FROST_TENDER_FACTOR } else { 0 };
    days_to_harvest + harvest_days + SHORT_DAY_FACTOR + tender
}

/// Days from setting a plant out to its first harvest; `days` is the figure the trade states.
///
/// Where the trade counts from sowing, the usual age at setting out is taken off, but never below
/// two weeks: a plant needs that long to take hold (common practice, no source).
pub(super) fn days_after_setting_out(crop: &Crop, days: i64) -> i64 {
    match crop.harvest.counted_from {
        CountedFrom::SettingOut => days,
        CountedFrom::Sowing => (days - usual_age_days(crop)).max(14),
    }
}

/// The day of the first harvest of plants that were begun on `begun` and set out on `set_out`, in
/// long days; `days` is the figure the trade states.
///
/// Where the trade counts from sowing, plants that are set out younger than usual are not ready
/// before those days have passed since they were begun.
pub(super) fn harvest_of_raised(
    crop: &Crop,
    begun: NaiveDate,
    set_out: NaiveDate,
    days: i64,
) -> NaiveDate {
    let by_setting_out = set_out + TimeDelta::days(days_after_setting_out(crop, days));
    match crop.harvest.counted_from {
        CountedFrom::SettingOut => by_setting_out,
        CountedFrom::Sowing => by_setting_out.max(begun + TimeDelta::days(days)),
    }
}

/// Days from sowing in place to the first harvest; `days` is the figure the trade states.
pub(super) fn days_after_direct_sowing(crop: &Crop, days: i64) -> i64 {
    match crop.harvest.counted_from {
        CountedFrom::Sowing => days,
        CountedFrom::SettingOut => days + usual_age_days(crop),
    }
}

fn usual_age_days(crop: &Crop) -> i64 {
    crop.indoors.as_ref().map_or(0, |indoors| indoors.age_weeks.ideal.middle() * 7)
}

/// The last day on which a start is still worth it.
pub(super) enum LastStart {
    /// No frost ends it.
    Open,
    /// The last worthwhile day.
    On(NaiveDate),
    /// The crop cannot make it in this season even when started in good time.
    SeasonTooShort,
}

/// The last day on which a start that yields `lead(days)` days later is still worth it; `lead`
/// turns the trade's days to harvest into days from this start.
///
/// `on_time` is the day on which the same start would be made in good time. A crop that ripens
/// once must ripen before the harvest ends. One that yields over weeks must keep at least a third
/// of the harvest of an on-time start, and two weeks of it (a rule of our own: common practice with
/// no source). A late start ripens as days shorten, so the fortnight of Virginia Cooperative
/// Extension 426-334 is added to the middle of the days to harvest. What lives on into another
/// year must root before winter instead.
pub(super) fn last_worthwhile_start(
    crop: &Crop,
    season: &Season,
    on_time: NaiveDate,
    lead: impl Fn(i64) -> i64,
) -> LastStart {
    const LEAST_HARVEST_DAYS: i64 = 14;
    let Some(end) = harvest_end(crop, season) else { return LastStart::Open };
    if crop.life == LifeCycle::Perennial || crop.crops_in_year > 1 {
        let Some(first) = season.first_frost else { return LastStart::Open };
        let last = first - TimeDelta::weeks(ROOTING_WEEKS);
        return if last < on_time { LastStart::SeasonTooShort } else { LastStart::On(last) };
    }
    let days = crop.harvest.days;
    let left_after = |lead: i64| end.signed_duration_since(on_time).num_days() - lead;
    let earliest = on_time + TimeDelta::days(lead(days.low));
    if slowed_by_autumn(earliest, season.first_frost) > end {
        return LastStart::SeasonTooShort;
    }
    let full = left_after(lead(days.middle())).max(0);
    let need = match crop.harvest.kind {
        HarvestKind::Once => 0,
        HarvestKind::Continuing | HarvestKind::Bloom => {
            let usual = full.min(crop.harvest.lasts_weeks * 7);
            (usual / 3).max(LEAST_HARVEST_DAYS).min(full)
        }
    };
    let last = end - TimeDelta::days(lead(days.middle()) + SHORT_DAY_FACTOR + need);
    // Where it is tight even in good time, good time is the last time.
    LastStart::On(last.max(on_time))
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;

    #[test]
    fn virginia_formula() {
        // Virginia Cooperative Extension 426-334: snap bean and radish, first frost 15 October.
        let first = NaiveDate::from_ymd_opt(2026, 10, 15).expect("a date");
        let back = |days| first - TimeDelta::days(days);
        assert_eq!(back(autumn_count_back(55, 14, true)).to_string(), "2026-07-10");
        assert_eq!(back(autumn_count_back(28, 7, false)).to_string(), "2026-08-27");
    }
}

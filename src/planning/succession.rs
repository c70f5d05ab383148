//! Sowing again: repeat sowings at the crop's interval.

use chrono::{NaiveDate, TimeDelta};

use super::crop::{Bolting, Crop, Way};
use super::jobs::{Job, JobBasis, JobKey};
use super::season::Season;
use super::windows::{Label, Step, Window, windows};

/// The most repeat sowings that a plan lists for one label of a season; a season's windows hold
/// fewer at every interval of the catalogue but the shortest.
const MOST_REPEATS: usize = 12;

/// The window of the sowing in place that follows one made on `last` for `label`: from the lower
/// to the upper end of the crop's interval after it, and worth it as long as that label's window
/// for sowing in place is open. `None` where repeats are not usual or the window closes before.
///
/// Where summer heat ends a crop, its window for sowing in place ends in time for that
/// ([`Crop::outdoors`]), and the autumn sowings begin a series of their own.
#[must_use]
pub fn repeat_after(crop: &Crop, season: &Season, label: Label, last: NaiveDate) -> Option<Window> {
    let interval = crop.outdoors.repeat_days.as_ref()?.is;
    if !crop.ways.contains(&Way::Outdoors) {
        return None;
    }
    let from = last + TimeDelta::days(interval.low);
    let all = windows(crop, season);
    let open = all.of(Step::SowOutdoors).iter().find(|window| window.label == label)?;
    if from > open.to {
        return None;
    }
    // Nobody sows a second time into soil that is too cold for the first.
    let from = from.max(open.ideal_from.min(open.to));
    let ideal_to = (last + TimeDelta::days(interval.high)).max(from).min(open.to);
    Some(Window { label, from, ideal_from: from, ideal_to, to: open.to, season: season.year })
}

/// The repeat sowings of a season, each the upper end of the interval after the one before it,
/// the first after a sowing on the first good day.
pub(super) fn repeats(crop: &Crop, season: &Season) -> Vec<Job> {
    let Some(interval) = crop.outdoors.repeat_days.as_ref() else { return Vec::new() };
    let mut jobs = Vec::new();
    for open in windows(crop, season).of(Step::SowOutdoors) {
        let mut last = open.ideal_from;
        for _ in 0..MOST_REPEATS {
            let Some(window) = repeat_after(crop, season, open.label, last) else { break };
            jobs.push(Job {
                key: JobKey {
                    crop: crop.id.clone(),
                    step: Step::SowOutdoors,
                    label: open.label,
                    season: season.year,
                    sowing: None,
                },
                window,
                better_way: crop.ways.first() == Some(&Way::Outdoors),
                basis: JobBasis::Repeat(last),
            });
            last += TimeDelta::days(interval.is.high.max(1));
        }
    }
    jobs
}

/// Whether summer heat ends the crop or makes it run to seed, so that one sowing is soon over.
#[must_use]
pub fn cut_short_by_heat(crop: &Crop) -> bool {
    crop.outdoors.heat_stops_c.is_some() || crop.outdoors.bolts_from.contains(&Bolting::Heat)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::catalogue::Catalogue;
    use crate::planning::{Basis, FrostDates};

    fn season() -> Season {
        let day = |text: &str| text.parse().expect("a month-day");
        let dates = FrostDates::new(day("05-15"), Some(day("10-05")), Basis::Average);
        Season::of_year(dates.expect("frost dates"), 2026)
    }

    fn date(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    #[test]
    fn lettuce_is_sown_again_ten_to_fourteen_days_later_while_it_is_worth_it() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let lettuce = catalogue.get("lettuce").expect("listed");
        let season = season();
        let open = windows(lettuce, &season).sow_outdoors[0];
        let again = repeat_after(lettuce, &season, Label::Spring, open.ideal_from).expect("open");
        assert_eq!(again.ideal_from, open.ideal_from + TimeDelta::days(10));
        assert_eq!(again.ideal_to, open.ideal_from + TimeDelta::days(14));
        assert_eq!(again.to, open.to);
        assert_eq!(repeat_after(lettuce, &season, Label::Spring, open.to), None);
        let tomato = catalogue.get("tomato").expect("listed");
        assert_eq!(repeat_after(tomato, &season, Label::Spring, date("2026-04-03")), None);
    }

    proptest! {
        /// A plan never asks for two sowings of a series within the interval, nor outside the
        /// days on which a sowing is worth it.
        #[test]
        fn repeats_keep_their_distance(index in 0usize..200) {
            static CATALOGUE: std::sync::OnceLock<Catalogue> = std::sync::OnceLock::new();
            let catalogue = CATALOGUE.get_or_init(|| Catalogue::embedded().expect("the catalogue"));
            let all: Vec<&Crop> = catalogue.iter().collect();
            let crop = all[index % all.len()];
            let season = season();
            let open = windows(crop, &season).sow_outdoors;
            let series = repeats(crop, &season);
            for job in &series {
                let JobBasis::Repeat(last) = job.basis else { panic!("a repeat") };
                let interval = crop.outdoors.repeat_days.as_ref().expect("an interval").is;
                prop_assert!((job.window.ideal_from - last).num_days() >= interval.low);
                prop_assert!(open.iter().any(|w| w.label == job.window.label
                    && w.covers(job.window.ideal_from) && w.covers(job.window.ideal_to)));
            }
        }
    }
}

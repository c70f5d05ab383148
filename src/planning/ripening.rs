//! Whether what is started on a day, or was sown, still ripens.

use chrono::{Days, NaiveDate, TimeDelta};
use serde::Serialize;

use super::assess::{Assessment, best_ways};
use super::crop::{Crop, CropId, Way};
use super::garden::{Garden, RISK_MARGIN_DAYS};
use super::harvest::{
    days_after_direct_sowing, days_after_setting_out, harvest_end, harvest_of_raised,
    slowed_by_autumn,
};
use super::season::Season;
use super::sowing::{Sown, sowing_plan};
use super::too_early::sown_too_early;
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
    /// Whether that was in the ground and too early, so that it counts from a later day.
    pub too_early: bool,
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
    /// The day of sowing, by as much later as it came up late.
    pub(super) begun: NaiveDate,
    /// The season.
    pub(super) season: Season,
}

impl Ripening {
    /// Whether a cover carries the harvest past the first frosts, so that the end lies behind them.
    #[must_use]
    pub fn covered(&self) -> bool {
        self.season.cover.is_some()
    }

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
        let from = self.counted_from;
        let ready = match self.step {
            Step::SowOutdoors => from + TimeDelta::days(days_after_direct_sowing(crop, days)),
            Step::SowIndoors => harvest_of_raised(crop, self.begun, from, days),
            _ => from + TimeDelta::days(days_after_setting_out(crop, days)),
        };
        slowed_by_autumn(ready, self.season.first_frost)
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
    reckoned(crop, start.season?, start.step, start.on, (start.on, counted_from))
}

/// Whether a recorded sowing ripens: counted from the day it was really sown or set out, or will
/// be set out by its plan. `None` as for [`ripening_of`].
#[must_use]
pub fn ripening_of_sowing(crop: &Crop, garden: Garden, sown: &Sown) -> Option<Ripening> {
    if never_asked(crop) {
        return None;
    }
    let plan = sowing_plan(crop, Some(garden), sown);
    let step = match sown.way {
        Way::Indoors => Step::SowIndoors,
        Way::Outdoors => Step::SowOutdoors,
    };
    let season = garden.season_of(sown.season)?;
    let ripe = reckoned(crop, season, step, sown.on, plan.harvest_counts_from?)?;
    let too_early = sown_too_early(crop, garden, sown).is_some();
    Some(Ripening { recorded: true, too_early, ..ripe })
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
    (begun, counted_from): (NaiveDate, NaiveDate),
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
        too_early: false,
        ripens: Ripens::No,
        first_early: counted_from,
        first_late: counted_from,
        end,
        risk_end,
        average_end,
        days_to_spare: 0,
        counted_from,
        begun,
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

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::catalogue::Catalogue;
    use crate::planning::{Basis, FrostCover, Packet, Span, Verdict, assess, what_helps};

    fn catalogue() -> &'static Catalogue {
        static CATALOGUE: std::sync::OnceLock<Catalogue> = std::sync::OnceLock::new();
        CATALOGUE.get_or_init(|| Catalogue::embedded().expect("the catalogue"))
    }

    fn date(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    fn garden(basis: Basis) -> Garden {
        let day = |text: &str| Some(text.parse().expect("a month-day"));
        Garden::new(day("05-15"), day("10-05"), basis).expect("a garden")
    }

    /// Tomatoes of so many days from setting out.
    fn tomato(days: i64) -> Crop {
        let days = Some(Span { low: days, high: days });
        let packet = Packet { days, ..Packet::default() };
        packet.grown(catalogue().get("tomato").expect("listed"))
    }

    /// Set out on the first of June.
    fn set_out(days: i64, basis: Basis) -> Ripening {
        let crop = tomato(days);
        let start = assess(&crop, garden(basis), Step::PlantOut, date("2026-06-01"));
        ripening_of(&crop, &start).expect("it may ripen")
    }

    #[test]
    fn yes_tight_and_no_by_the_frost_at_the_members_risk() {
        // 75 days are 15 August; growth slows from 10 August, eight weeks before 5 October, so
        // five days more.
        let early = set_out(75, Basis::Average);
        assert_eq!((early.first_early, early.ripens), (date("2026-08-20"), Ripens::Yes));
        assert_eq!(early.days_to_spare, 46);
        // 97 days are 6 September and a fortnight later the 20th, by which one autumn in ten
        // has frozen; 112 days reach 5 October itself.
        let ripens = |days, basis| set_out(days, basis).ripens;
        assert_eq!(ripens(97, Basis::Average), Ripens::Yes);
        assert_eq!(ripens(98, Basis::Average), Ripens::Tight);
        assert_eq!(ripens(112, Basis::Average), Ripens::Tight);
        assert_eq!(ripens(113, Basis::Average), Ripens::No);
        assert_eq!(set_out(112, Basis::Average).days_to_spare_at_best(), 0);
        // The same day as one that is trusted: on average the frost comes fifteen days later.
        assert_eq!(ripens(112, Basis::Trusted), Ripens::Yes);
        assert_eq!(ripens(113, Basis::Trusted), Ripens::Tight);
        assert_eq!(ripens(127, Basis::Trusted), Ripens::Tight);
        assert_eq!(ripens(128, Basis::Trusted), Ripens::No);
    }

    #[test]
    fn what_helps_is_an_earlier_start_a_faster_variety_and_cover() {
        let crop = tomato(100);
        let garden = garden(Basis::Average);
        let helps = |days, today: &str| {
            what_helps(&tomato(days), garden, &set_out(days, Basis::Average), date(today))
        };
        let tight = helps(100, "2026-04-01");
        assert_eq!(tight.days_at_most, Some(97));
        assert_eq!(tight.cover, Some(FrostCover { fleece_c: -2, blanket_c: -4 }));
        let (step, on) = tight.earlier.expect("an earlier start");
        let earlier = assess(&crop, garden, step, on);
        let ripe = ripening_of(&crop, &earlier).expect("it may ripen");
        assert_eq!((step, ripe.ripens), (Step::SowIndoors, Ripens::Yes));
        let next = assess(&crop, garden, step, on + Days::new(1));
        let next_ripens = ripening_of(&crop, &next).map(|ripe| ripe.ripens);
        let last =
            next_ripens != Some(Ripens::Yes) || !next.verdict().is_some_and(Verdict::workable);
        assert!(last, "{on} is the last such day");
        // Once that day has passed it is the next year's.
        let (_, on) = helps(100, "2026-06-01").earlier.expect("a start next year");
        assert!(on > date("2027-01-01"), "{on}");
        // No fleece wins five weeks.
        assert_eq!(helps(120, "2026-06-01").cover, None);
        assert_eq!(helps(75, "2026-06-01"), crate::planning::Helps::default());
    }

    #[test]
    fn a_sowing_counts_from_what_was_really_done() {
        let crop = tomato(98);
        let sown = Sown {
            way: Way::Indoors,
            on: date("2026-03-27"),
            label: crate::planning::Label::Spring,
            season: 2026,
            at_c: None,
            came_up_on: Some(date("2026-04-03")),
            set_out_on: Some(date("2026-06-01")),
        };
        let ripe = ripening_of_sowing(&crop, garden(Basis::Average), &sown).expect("reckoned");
        let by_setting_out = set_out(98, Basis::Average);
        assert!(ripe.recorded);
        assert_eq!(ripe.first_late, by_setting_out.first_late);
        assert_eq!(ripe.ripens, Ripens::Tight);
        let helps = what_helps(&crop, garden(Basis::Average), &ripe, date("2026-06-10"));
        assert_eq!(helps.days_at_most, None, "what is sown is sown");
        // Set out a week earlier it is sure.
        let earlier = Sown { set_out_on: Some(date("2026-05-25")), ..sown };
        let ripe = ripening_of_sowing(&crop, garden(Basis::Average), &earlier).expect("reckoned");
        assert_eq!(ripe.ripens, Ripens::Yes);
    }

    proptest! {
        #[test]
        fn a_faster_variety_never_ripens_later(
            at in 0usize..200, on in 0u64..700, quick in 10i64..200, more in 0i64..100,
            step in prop::sample::select(vec![Step::SowIndoors, Step::SowOutdoors, Step::PlantOut]),
        ) {
            let crops: Vec<_> = catalogue().iter().collect();
            let crop = crops[at % crops.len()];
            let start = assess(crop, garden(Basis::Average), step, date("2026-01-01") + Days::new(on));
            let of = |days: i64| {
                let days = Some(Span { low: days, high: days });
                ripening_of(&Packet { days, ..Packet::default() }.grown(crop), &start)
            };
            if let (Some(quick), Some(slow)) = (of(quick), of(quick + more)) {
                prop_assert!(quick.first_early <= slow.first_early);
                prop_assert!(quick.first_late <= slow.first_late);
                prop_assert!(quick.ripens <= slow.ripens);
            }
        }

        #[test]
        fn autumn_never_turns_the_order_of_days(first in 0u64..400, later in 0u64..60) {
            let day = date("2026-01-01") + Days::new(first);
            let frost = Some(date("2026-10-05"));
            let (slowed, next) = (slowed_by_autumn(day, frost), slowed_by_autumn(day + Days::new(later), frost));
            prop_assert!(slowed <= next);
            prop_assert!((0..=14).contains(&(slowed - day).num_days()));
        }
    }
}

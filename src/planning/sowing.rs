//! What follows from a sowing that was really made.

use chrono::{Datelike, NaiveDate, TimeDelta};

use super::assess::assess;
use super::coming_up::{ComingUp, coming_up};
use super::crop::{Crop, Indoors, StartFrom, Way};
use super::garden::Garden;
use super::harvest::{days_after_direct_sowing, harvest_end, harvest_of_raised, slowed_by_autumn};
use super::place::{Place, oldest_weeks};
use super::season::Season;
use super::too_early::sown_too_early;
use super::windows::{Label, Step, Window, setting_out, windows};

/// A sowing as it was made, and what has become of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sown {
    /// Indoors or in place.
    pub way: Way,
    /// The day of sowing.
    pub on: NaiveDate,
    /// The temperature in degrees Celsius of the soil or the room, where the gardener gave one.
    pub at_c: Option<i64>,
    /// Which sowing of the year it counts as.
    pub label: Label,
    /// The year that names its season.
    pub season: i32,
    /// The day on which it was seen to be up.
    pub came_up_on: Option<NaiveDate>,
    /// The day on which its plants were set out.
    pub set_out_on: Option<NaiveDate>,
}

/// The dated steps that follow from a sowing.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct SowingPlan {
    /// What its temperature means for it; `None` once it has come up, and where the trade states
    /// no days.
    pub coming_up: Option<ComingUp>,
    /// The first and the last day on which it should come up; `None` once it has, where it is not
    /// to be expected up, and where the trade states no days.
    pub emergence: Option<(NaiveDate, NaiveDate)>,
    /// The day from which an empty tray or row is sown again.
    pub resow_on: Option<NaiveDate>,
    /// The steps with their windows, in the order a plant goes through them.
    pub steps: Vec<(Step, Window)>,
    /// Whether tender plants would be ready only after the first frost, so that nothing is left
    /// to set out.
    pub too_late: bool,
    /// The days from which the days to harvest count: the sowing, by as much later as it came up
    /// late; and the setting out, made or planned, or again the sowing where it was in place.
    pub harvest_counts_from: Option<(NaiveDate, NaiveDate)>,
}

impl SowingPlan {
    /// The window of `step`, where the sowing has one.
    #[must_use]
    pub fn of(&self, step: Step) -> Option<Window> {
        self.steps.iter().find(|(is, _)| *is == step).map(|(_, window)| *window)
    }
}

/// The label and season that a sowing of `crop` in `way` on the day `on` counts for: those of the
/// window that decides the verdict on that day; without frost dates, the spring of the year.
#[must_use]
pub fn sowing_place(crop: &Crop, garden: Option<Garden>, way: Way, on: NaiveDate) -> (Label, i32) {
    let weighed = garden.map(|garden| assess(crop, garden, way.into(), on));
    let season = weighed.as_ref().and_then(|weighed| weighed.season).map(|season| season.year);
    let window = weighed.and_then(|weighed| weighed.window);
    window.map_or((Label::Spring, season.unwrap_or(on.year())), |w| (w.label, w.season))
}

/// What follows from `sown`.
///
/// Coming up is counted from the sowing; potting up three to four weeks after it, later by as
/// much as it came up late. Setting out is the later of the plant's age and the season's date for
/// it, so a later sowing is never set out earlier; hardening off begins 14 to 7 days before
/// (University of Maryland Extension, 2023). The first harvest is counted from setting out, or
/// from the sowing in place, and comes later as days shorten ([`slowed_by_autumn`]). A sowing in
/// the ground that was made too early counts from the first workable day ([`sown_too_early`]).
#[must_use]
pub fn sowing_plan(crop: &Crop, garden: Option<Garden>, sown: &Sown) -> SowingPlan {
    let season = garden.and_then(|garden| garden.season_of(sown.season));
    let place = garden.and_then(|garden| garden.place).filter(|_| sown.way == Way::Indoors);
    let mut plan = SowingPlan::default();
    let ready = garden.and_then(|garden| sown_too_early(crop, garden, sown)).unwrap_or(sown.on);
    // What has come up tells by its own day how late it is.
    let waits = Sown { on: if sown.came_up_on.is_none() { ready } else { sown.on }, ..*sown };
    let late = emergence(crop, &waits, place, &mut plan);
    let raised = crop.indoors.as_ref().filter(|_| sown.way == Way::Indoors);
    match raised {
        Some(indoors) => raise(crop, indoors, place, season.as_ref(), sown, late, &mut plan),
        None if sown.way == Way::Outdoors => {
            let begun = (sown.on + late).max(ready);
            plan.harvest_counts_from = Some((begun, begun));
            let ready = |days| begun + TimeDelta::days(days_after_direct_sowing(crop, days));
            harvest(crop, season.as_ref(), sown, ready, &mut plan);
        }
        None => {}
    }
    plan
}

fn window(sown: &Sown, from: NaiveDate, ideal_to: NaiveDate, to: NaiveDate) -> Window {
    Window { label: sown.label, from, ideal_from: from, ideal_to, to, season: sown.season }
}

/// Adds the check, and gives by how much the sowing came up late.
fn emergence(crop: &Crop, sown: &Sown, place: Option<Place>, plan: &mut SowingPlan) -> TimeDelta {
    let Some(coming) = coming_up(crop, sown.way, place, sown.at_c) else {
        return TimeDelta::zero();
    };
    let after = |days: i64| sown.on + TimeDelta::days(days);
    let look = after(coming.look_after);
    if let Some(up) = sown.came_up_on {
        return up.signed_duration_since(look).max(TimeDelta::zero());
    }
    let resow = after(coming.resow_after);
    plan.coming_up = Some(coming);
    plan.emergence = coming.days.map(|days| (after(days.low), after(days.high)));
    plan.resow_on = Some(resow);
    plan.steps.push((Step::Check, window(sown, look, resow, resow + TimeDelta::days(14))));
    TimeDelta::zero()
}

/// The steps of a sowing in cells.
fn raise(
    crop: &Crop,
    indoors: &Indoors,
    place: Option<Place>,
    season: Option<&Season>,
    sown: &Sown,
    late: TimeDelta,
    plan: &mut SowingPlan,
) {
    let begun = sown.on + late;
    let weeks = |n: i64| begun + TimeDelta::weeks(n);
    let stay = &indoors.stay_weeks;
    let oldest = oldest_weeks(&indoors.age_weeks, place);
    let out = out_window(crop, indoors, oldest, season, sown, begun);
    // What frost kills is not raised for the first frost.
    let first_frost = season.and_then(|season| season.first_frost);
    plan.too_late = sown.label != Label::Overwintering
        && crop.frost_kills()
        && first_frost.is_some_and(|frost| out.ideal_from >= frost);
    if stay.potted_up.is_some() {
        let to = weeks(stay.longest.max(4));
        plan.steps.push((Step::PotUp, window(sown, weeks(3), weeks(4), to)));
    }
    let from = sown.set_out_on.unwrap_or(out.ideal_from);
    plan.harvest_counts_from = Some((begun, from));
    if plan.too_late {
        return;
    }
    if sown.set_out_on.is_none() {
        plan.steps.push((Step::HardenOff, out.shifted(-14, -14, -7, -7)));
        plan.steps.push((Step::PlantOut, out));
    }
    let ready = |days| harvest_of_raised(crop, begun, from, days);
    harvest(crop, season, sown, ready, plan);
}

/// When plants that were begun on a day go out: their age or the season, whichever comes later.
fn out_window(
    crop: &Crop,
    indoors: &Indoors,
    oldest: i64,
    season: Option<&Season>,
    sown: &Sown,
    begun: NaiveDate,
) -> Window {
    let age = &indoors.age_weeks;
    let weeks = |n: i64| begun + TimeDelta::weeks(n);
    let by_age = Window {
        label: sown.label,
        from: weeks(age.workable.low),
        ideal_from: weeks(age.ideal.low),
        ideal_to: weeks(age.ideal.high).max(weeks(age.ideal.low) + TimeDelta::days(7)),
        to: weeks(oldest).max(weeks(age.ideal.high) + TimeDelta::days(7)),
        season: sown.season,
    };
    let Some(season) = season else { return by_age };
    let of_season = windows(crop, season);
    match of_season.plant_out.iter().find(|window| window.label == sown.label) {
        Some(usual) => {
            let from = usual.from.max(by_age.from);
            let ideal_from = usual.ideal_from.max(by_age.ideal_from);
            // A week is left for mild nights, however late the plants are ready.
            let ideal_to = usual.ideal_to.max(ideal_from + TimeDelta::days(7));
            Window { from, ideal_from, ideal_to, to: usual.to.max(ideal_to), ..*usual }
        }
        None if sown.label == Label::Spring => by_age.not_before(setting_out(crop, season).0),
        None => by_age,
    }
}

/// Adds the first harvest or bloom, where it falls into this season.
fn harvest(
    crop: &Crop,
    season: Option<&Season>,
    sown: &Sown,
    ready: impl Fn(i64) -> NaiveDate,
    plan: &mut SowingPlan,
) {
    let seed = crop.start_from.contains(&StartFrom::Seed);
    if crop.crops_in_year > 1 || !seed || sown.label == Label::Overwintering {
        return;
    }
    let days = crop.harvest.days;
    let first_frost = season.and_then(|season| season.first_frost);
    let ready = |days| slowed_by_autumn(ready(days), first_frost);
    let (first, last) = (ready(days.low), ready(days.high));
    let end = season.and_then(|season| harvest_end(crop, season));
    if end.is_some_and(|end| first > end) {
        return;
    }
    let lasts = TimeDelta::weeks(crop.harvest.lasts_weeks.max(1));
    plan.steps.push((Step::Harvest, window(sown, first, last, last + lasts)));
}

#[cfg(test)]
mod tests {
    use chrono::Days;
    use proptest::prelude::*;

    use super::*;
    use crate::catalogue::Catalogue;
    use crate::planning::Basis;

    fn catalogue() -> &'static Catalogue {
        static CATALOGUE: std::sync::OnceLock<Catalogue> = std::sync::OnceLock::new();
        CATALOGUE.get_or_init(|| Catalogue::embedded().expect("the catalogue"))
    }

    fn date(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    fn garden() -> Garden {
        let day = |text: &str| Some(text.parse().expect("a month-day"));
        Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden")
    }

    fn sown(crop: &Crop, way: Way, on: NaiveDate) -> Sown {
        let (label, season) = sowing_place(crop, Some(garden()), way, on);
        Sown { way, on, at_c: None, label, season, came_up_on: None, set_out_on: None }
    }

    fn planned(crop: &str, way: Way, on: &str) -> SowingPlan {
        let catalogue = catalogue();
        let crop = catalogue.get(crop).expect("listed");
        sowing_plan(crop, Some(garden()), &sown(crop, way, date(on)))
    }

    #[test]
    fn the_frost_date_rules_an_early_sowing_and_age_a_late_one() {
        // Tomatoes go out a week after the average last frost (22 May), at six weeks or more.
        let early = planned("tomato", Way::Indoors, "2026-03-27");
        assert_eq!(early.of(Step::PlantOut).expect("out").ideal_from, date("2026-05-22"));
        assert_eq!(early.of(Step::HardenOff).expect("hardened").ideal_from, date("2026-05-08"));
        let catalogue = catalogue();
        let age =
            &catalogue.get("tomato").expect("listed").indoors.as_ref().expect("raised").age_weeks;
        let late = planned("tomato", Way::Indoors, "2026-05-01");
        let ready = date("2026-05-01") + TimeDelta::weeks(age.ideal.low);
        assert_eq!(late.of(Step::PlantOut).expect("out").ideal_from, ready);
    }

    #[test]
    fn an_empty_row_is_sown_again_after_twice_the_usual_time() {
        // Bush beans take 6 to 11 days, so they are given up after 22.
        let beans = planned("bush_bean", Way::Outdoors, "2026-05-22");
        assert_eq!(beans.emergence, Some((date("2026-05-28"), date("2026-06-02"))));
        assert_eq!(beans.resow_on, Some(date("2026-06-13")));
        assert_eq!(beans.of(Step::PlantOut), None);
        // 50 to 60 days to the first beans, from sowing.
        assert_eq!(beans.of(Step::Harvest).expect("beans").ideal_from, date("2026-07-11"));
    }

    #[test]
    fn the_temperature_decides_when_it_is_up_and_when_it_is_sown_again() {
        let catalogue = catalogue();
        let bean = catalogue.get("bush_bean").expect("listed");
        let of = |at_c| {
            let sown = Sown { at_c, ..sown(bean, Way::Outdoors, date("2026-05-22")) };
            sowing_plan(bean, Some(garden()), &sown)
        };
        // Table: 16 days at 15 °C, a quarter more is 20; given up after 14 more.
        let cool = of(Some(15));
        assert_eq!(cool.emergence, Some((date("2026-06-07"), date("2026-06-11"))));
        assert_eq!(cool.resow_on, Some(date("2026-06-25")));
        // None at 10 °C: given up after three weeks.
        let cold = of(Some(10));
        assert_eq!((cold.emergence, cold.resow_on), (None, Some(date("2026-06-12"))));
        assert_eq!(cold.of(Step::Check).expect("looked for").ideal_from, date("2026-06-12"));
    }

    #[test]
    fn a_sowing_too_early_for_the_ground_gains_nothing() {
        // Frost kills sweet corn: what was sown in February counts from the first workable day.
        let catalogue = catalogue();
        let corn = catalogue.get("sweet_corn").expect("listed");
        let early = sown(corn, Way::Outdoors, date("2026-03-20"));
        let from = sown_too_early(corn, garden(), &early).expect("too early");
        assert!(from > date("2026-04-20"), "{from}");
        let plan = |on| sowing_plan(corn, Some(garden()), &Sown { on, ..early });
        let in_time = plan(from);
        assert_eq!(sown_too_early(corn, garden(), &Sown { on: from, ..early }), None);
        assert_eq!(plan(early.on), in_time);
        // One that did come up still meets the cold.
        let up = Sown { came_up_on: Some(date("2026-04-12")), ..early };
        let harvest = |plan: &SowingPlan| plan.of(Step::Harvest).expect("ears").ideal_from;
        assert_eq!(harvest(&sowing_plan(corn, Some(garden()), &up)), harvest(&in_time));
        // A measured soil lets what bears frost be sown before its date, and nothing else.
        let pea = catalogue.get("pea").expect("listed");
        let peas = sown(pea, Way::Outdoors, date("2026-03-10"));
        assert!(sown_too_early(pea, garden(), &peas).is_some());
        assert_eq!(sown_too_early(pea, garden(), &Sown { at_c: Some(12), ..peas }), None);
        assert!(sown_too_early(corn, garden(), &Sown { at_c: Some(20), ..early }).is_some());
    }

    #[test]
    fn what_came_up_is_not_looked_for_and_moves_what_follows() {
        let catalogue = catalogue();
        let pepper = catalogue.get("pepper").expect("listed");
        let mut sowing = sown(pepper, Way::Indoors, date("2026-03-20"));
        let before = sowing_plan(pepper, Some(garden()), &sowing);
        let (_, usual) = before.emergence.expect("days to come up");
        sowing.came_up_on = Some(usual + Days::new(6));
        let after = sowing_plan(pepper, Some(garden()), &sowing);
        assert_eq!(after.of(Step::Check), None);
        let pot_up = |plan: &SowingPlan| plan.of(Step::PotUp).expect("potted up").ideal_from;
        assert_eq!(pot_up(&after), pot_up(&before) + Days::new(6));
    }

    #[test]
    fn plants_that_would_meet_the_first_frost_are_not_set_out() {
        let late = planned("tomato", Way::Indoors, "2026-08-25");
        assert!(late.too_late, "{late:?}");
        assert_eq!(late.of(Step::PlantOut), None);
        // Foxglove sown in June stands out over winter and blooms in the next year.
        let foxglove = planned("foxglove", Way::Indoors, "2026-06-20");
        assert!(foxglove.of(Step::PlantOut).is_some());
        assert_eq!(foxglove.of(Step::Harvest), None);
    }

    #[test]
    fn without_frost_dates_age_alone_decides() {
        let catalogue = catalogue();
        let basil = catalogue.get("basil").expect("listed");
        for garden in [None, Some(Garden::FROST_FREE)] {
            let (label, season) = sowing_place(basil, garden, Way::Indoors, date("2026-04-01"));
            assert_eq!((label, season), (Label::Spring, 2026));
            let sown = Sown { label, season, ..sown(basil, Way::Indoors, date("2026-04-01")) };
            let plan = sowing_plan(basil, garden, &sown);
            let age = &basil.indoors.as_ref().expect("raised").age_weeks;
            let out = plan.of(Step::PlantOut).expect("out");
            assert_eq!(out.ideal_from, sown.on + TimeDelta::weeks(age.ideal.low));
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(400))]
        #[test]
        fn a_later_sowing_never_plants_out_earlier(
            index in 0usize..200, first in 0u64..700, later in 0u64..120, last_frost in 1u32..=365,
            length in 60u32..=300, trusted in any::<bool>(),
        ) {
            let catalogue = catalogue();
            let crops: Vec<&Crop> = catalogue.iter().filter(|c| c.indoors.is_some()).collect();
            let crop = crops[index % crops.len()];
            let day = |n: u32| {
                let date = NaiveDate::from_yo_opt(2025, (n - 1) % 365 + 1).expect("a day");
                crate::planning::MonthDay::from(date)
            };
            let basis = if trusted { Basis::Trusted } else { Basis::Average };
            let garden =
                Garden::new(Some(day(last_frost)), Some(day(last_frost + length)), basis).expect("a garden");
            let out = |on: NaiveDate| {
                let (label, season) = sowing_place(crop, Some(garden), Way::Indoors, on);
                let sown = Sown { way: Way::Indoors, on, at_c: None, label, season, came_up_on: None, set_out_on: None };
                sowing_plan(crop, Some(garden), &sown).of(Step::PlantOut)
            };
            let a = date("2026-01-01") + Days::new(first);
            let (a, b) = (out(a), out(a + Days::new(later)));
            if let (Some(a), Some(b)) = (a, b) {
                prop_assert!(a.ideal_from <= b.ideal_from, "{a:?} {b:?}");
                prop_assert!(a.from <= b.from, "{a:?} {b:?}");
            }
            for window in [a, b].into_iter().flatten() {
                let dates = [window.from, window.ideal_from, window.ideal_to, window.to];
                prop_assert!(dates.is_sorted(), "{dates:?}");
            }
        }
    }
}

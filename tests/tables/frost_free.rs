//! Gardens without frost: the season that the hot and the wet months leave.

use std::sync::LazyLock;

use chrono::{Datelike, Days, NaiveDate};
use proptest::prelude::*;
use sowbell::catalogue::Catalogue;
use sowbell::planning::{
    Assessment, Crop, Garden, HotAndWet, Label, Months, Step, Verdict, Window, assess, best_ways,
    jobs, windows,
};

fn catalogue() -> &'static Catalogue {
    static CATALOGUE: LazyLock<Catalogue> = LazyLock::new(crate::catalogue);
    &CATALOGUE
}

fn get(id: &str) -> &'static Crop {
    catalogue().get(id).expect("listed")
}

fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn garden(hot: &str, wet: &str) -> Garden {
    let months = |text: &str| text.parse::<Months>().expect("months");
    let months = HotAndWet::new(months(hot), months(wet)).expect("a season");
    Garden::FROST_FREE.with_months(Some(months))
}

fn south_florida() -> Garden {
    garden("6-9", "6-10")
}

fn first(windows: &[Window]) -> Window {
    *windows.first().expect("a window")
}

fn sown_in_place(id: &str) -> Window {
    let season = south_florida().season_of(2026).expect("a season");
    first(&windows(get(id), &season).sow_outdoors)
}

#[test]
fn south_florida_plants_when_ifas_says() {
    // University of Florida IFAS, SP 103, South Florida: bush bean September to April, cucumber
    // and lettuce September to February.
    for (id, last) in [("bush_bean", (2027, 4)), ("cucumber", (2027, 2)), ("lettuce", (2027, 2))] {
        let window = sown_in_place(id);
        assert_eq!(window.from, date("2026-09-01"), "{id}");
        assert_eq!(window.ideal_from, window.from, "{id}");
        assert_eq!((window.to.year(), window.to.month()), last, "{id}: {}", window.to);
        assert_eq!(window.label, Label::Autumn);
        for month in [9, 10, 11, 12, 1, 2] {
            let year = if month > 8 { 2026 } else { 2027 };
            let on = NaiveDate::from_ymd_opt(year, month, 8).expect("a date");
            let verdict = assess(get(id), south_florida(), Step::SowOutdoors, on).verdict();
            assert_eq!(verdict, Some(Verdict::OnTime), "{id} on {on}");
        }
        for on in ["2027-05-15", "2027-07-15"] {
            let verdict = assess(get(id), south_florida(), Step::SowOutdoors, date(on)).verdict();
            assert!(!verdict.expect("a verdict").workable(), "{id} on {on}");
        }
    }
}

#[test]
fn what_bears_heat_is_planted_after_the_coolest_months() {
    // Okra is a crop of the warm and wet months: from March, picked before the next January.
    let okra = sown_in_place("okra");
    assert_eq!((okra.from, okra.label), (date("2027-03-01"), Label::Spring));
    assert_eq!((okra.to.year(), okra.to.month()), (2027, 9), "{}", okra.to);
}

#[test]
fn raised_plants_go_out_with_the_season() {
    let season = south_florida().season_of(2026).expect("a season");
    let tomato = windows(get("tomato"), &season);
    assert_eq!(first(&tomato.plant_out).ideal_from, date("2026-09-01"));
    // Eight weeks before.
    assert_eq!(first(&tomato.sow_indoors).ideal_from, date("2026-07-07"));
    let sown = assess(get("tomato"), south_florida(), Step::SowIndoors, date("2026-07-14"));
    assert_eq!(sown.set_out, Some(date("2026-09-01")));
    assert_eq!(sown.age_days(), Some(49));
}

#[test]
fn the_south_has_the_same_season_half_a_year_on() {
    let north = sown_in_place("bush_bean");
    let south = garden("12-3", "12-4").season_of(2026).expect("a season");
    let south = first(&windows(get("bush_bean"), &south).sow_outdoors);
    assert_eq!(south.from, date("2026-03-01"));
    let length = |w: Window| w.to.signed_duration_since(w.from).num_days();
    assert!((length(north) - length(south)).abs() <= 3);
}

#[test]
fn what_cannot_ripen_between_the_heats_has_too_short_a_season() {
    let season = garden("3-11", "none").season_of(2026).expect("a season");
    assert!(windows(get("onion"), &season).season_too_short);
    let verdict = assess(get("onion"), garden("3-11", "none"), Step::PlantOut, date("2026-12-01"));
    assert_eq!(verdict.verdict(), Some(Verdict::TooLate));
    assert!(verdict.windows.season_too_short);
}

fn months() -> impl Strategy<Value = HotAndWet> {
    let months = || {
        (1..=12_u32, 1..=12_u32, any::<bool>()).prop_map(|(from, to, none)| {
            if none { Months::NONE } else { Months::from_to(from, to) }
        })
    };
    (months(), months()).prop_filter_map("a season", |(hot, wet)| HotAndWet::new(hot, wet).ok())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1500, ..ProptestConfig::default() })]

    #[test]
    fn with_months_known_every_way_has_a_verdict(
        crop in proptest::sample::select(catalogue().iter().collect::<Vec<&Crop>>()),
        months in months(), days in 0..2000_u64,
    ) {
        let garden = Garden::FROST_FREE.with_months(Some(months));
        let on = date("2024-01-01") + Days::new(days);
        let season = garden.season_on(on).expect("a season");
        prop_assert!(season.end() >= on && season.last_frost <= season.end());
        prop_assert!(garden.season_of(season.year - 1).expect("one before").end() < on);
        for way in best_ways(crop, garden, on) {
            let Assessment { verdict, window, next_date, .. } = &way;
            let verdict = verdict.expect("a verdict");
            if let Some(w) = window {
                prop_assert!(w.from <= w.ideal_from && w.ideal_from <= w.ideal_to
                    && w.ideal_to <= w.to, "{} {:?}", crop.id, w);
                prop_assert_eq!(verdict.workable(), w.covers(on));
            }
            if let (Some(next), false) = (next_date, verdict.workable()) {
                prop_assert!(*next > on);
                let then = assess(crop, garden, way.step, *next).verdict();
                prop_assert_eq!(then, Some(Verdict::OnTime), "{}", crop.id);
            }
            if let (Some(age), true) = (way.age_days(), verdict.workable()) {
                let bears = crop.indoors.as_ref().map_or(0, |i| 7 * i.age_weeks.workable.high);
                prop_assert!((0..=bears).contains(&age), "{} at {age} days", crop.id);
            }
        }
        prop_assert!(jobs(crop, &season).iter().all(|job| job.key.season == season.year));
    }
}

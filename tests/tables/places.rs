//! How the seed-raising place and the cover outdoors move a crop's windows.

use std::sync::LazyLock;

use chrono::NaiveDate;
use proptest::prelude::*;
use sowbell::catalogue::Catalogue;
use sowbell::planning::{
    Basis, Cover, Crop, Frost, FrostDates, Garden, Label, MonthDay, Place, Season, Step, Verdict,
    Window, assess, harvest_end, oldest_weeks, windows,
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

fn month_day() -> impl Strategy<Value = MonthDay> {
    (1..=12_u32, 1..=31_u32).prop_filter_map("a day of the calendar", |(m, d)| MonthDay::new(m, d))
}

fn frost_dates() -> impl Strategy<Value = FrostDates> {
    let basis = prop_oneof![Just(Basis::Average), Just(Basis::Trusted)];
    (month_day(), month_day(), basis).prop_filter_map("a season lies between", |(l, f, basis)| {
        FrostDates::new(l, Some(f), basis).ok()
    })
}

fn crop() -> impl Strategy<Value = &'static Crop> {
    proptest::sample::select(catalogue().iter().collect::<Vec<&Crop>>())
}

fn garden() -> Garden {
    let day = |text: &str| Some(text.parse().expect("a month-day"));
    Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden")
}

fn season(garden: Garden) -> Season {
    garden.season_of(2026).expect("it freezes there")
}

fn spring_of(crop: &Crop, garden: Garden, step: Step) -> Window {
    let all = windows(crop, &season(garden));
    *all.of(step).iter().find(|w| w.label == Label::Spring).expect("a spring window")
}

/// Days by which the good days begin sooner under the cover.
fn sooner(id: &str, cover: Cover, step: Step) -> i64 {
    let crop = get(id);
    let with = spring_of(crop, garden().with(None, Some(cover)), step).ideal_from;
    spring_of(crop, garden(), step).ideal_from.signed_duration_since(with).num_days()
}

#[test]
fn a_tunnel_brings_all_forward_by_three_weeks() {
    for id in ["tomato", "cucumber", "lettuce", "broccoli"] {
        assert_eq!(sooner(id, Cover::Tunnel, Step::PlantOut), 21, "{id}");
        assert_eq!(sooner(id, Cover::Tunnel, Step::SowIndoors), 21, "{id}");
    }
    assert_eq!(sooner("bush_bean", Cover::Tunnel, Step::SowOutdoors), 21);
}

#[test]
fn fleece_does_not_heat_soil_and_keeps_off_a_light_frost_only() {
    // 2 to 4 °F (Colorado State University Extension, GardenNotes 722) make no 10 °C nights.
    for id in ["tomato", "cucumber", "bush_bean"] {
        assert_eq!(sooner(id, Cover::Fleece, Step::PlantOut), 0, "{id}");
    }
    assert_eq!(sooner("cucumber", Cover::Fleece, Step::SowOutdoors), 0);
    // Fennel bears cold, but it needs soil of 10 °C to come up.
    assert_eq!(sooner("fennel", Cover::Fleece, Step::SowOutdoors), 0);
    // Lettuce is sown from three weeks before the last frost, and from five under cover.
    assert_eq!(sooner("lettuce", Cover::Fleece, Step::SowOutdoors), 14);
    // Peas from five weeks before, and never before the six that the trade states.
    assert_eq!(sooner("pea", Cover::Fleece, Step::SowOutdoors), 7);
}

#[test]
fn a_cold_frame_is_for_crops_that_bear_cold() {
    // Two to four weeks for cool-season crops: University of Vermont Extension, 2024.
    assert_eq!(sooner("lettuce", Cover::ColdFrame, Step::PlantOut), 21);
    assert_eq!(sooner("tomato", Cover::ColdFrame, Step::PlantOut), 0);
}

#[test]
fn the_autumn_end_comes_later_under_cover() {
    let end = |id: &str, cover| {
        harvest_end(get(id), &season(garden().with(None, cover))).expect("frost ends it")
    };
    assert_eq!(end("tomato", None), date("2026-10-05"));
    assert_eq!(end("tomato", Some(Cover::Fleece)), date("2026-10-19"));
    assert_eq!(end("tomato", Some(Cover::Tunnel)), date("2026-10-26"));
    assert_eq!(end("tomato", Some(Cover::ColdFrame)), date("2026-10-05"));
}

#[test]
fn on_a_windowsill_the_upper_ages_are_too_old() {
    // Tomato bears 12 weeks, so 10 on a windowsill; cucumber 6, but 5 are good anywhere.
    let oldest = |id: &str, place| {
        oldest_weeks(&get(id).indoors.as_ref().expect("raised indoors").age_weeks, place)
    };
    assert_eq!(oldest("tomato", None), 12);
    assert_eq!(oldest("tomato", Some(Place::Windowsill)), 10);
    assert_eq!(oldest("cucumber", Some(Place::Windowsill)), 5);
    for place in [Place::Lights, Place::HeatMat, Place::Greenhouse] {
        assert_eq!(oldest("tomato", Some(place)), 12);
    }
    // Eleven weeks before setting out on 22 May.
    let on = date("2026-03-06");
    let verdict =
        |place| assess(get("tomato"), garden().with(place, None), Step::SowIndoors, on).verdict();
    assert_eq!(verdict(None), Some(Verdict::Early));
    assert_eq!(verdict(Some(Place::Windowsill)), Some(Verdict::TooEarly));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, ..ProptestConfig::default() })]

    #[test]
    fn without_place_and_cover_nothing_changes(
        crop in crop(), frost in frost_dates(), year in 2024..2030_i32,
    ) {
        let plain = Season::of_year(frost, year);
        prop_assert_eq!(Garden::of(Frost::Dates(frost)).season_of(year), Some(plain));
        let lit = plain.in_garden(Garden::of(Frost::Dates(frost)).with(Some(Place::Lights), None));
        prop_assert_eq!(windows(crop, &plain), windows(crop, &lit));
    }

    #[test]
    fn the_season_of_a_garden_is_the_one_that_matters(
        frost in frost_dates(), days in 0..3000_u64,
    ) {
        let on = date("2023-06-01") + chrono::Days::new(days);
        prop_assert_eq!(
            Garden::of(Frost::Dates(frost)).season_on(on),
            Some(Season::that_matters(frost, on))
        );
    }

    #[test]
    fn cover_never_sets_out_later_nor_ends_a_start_sooner(
        crop in crop(), frost in frost_dates(),
        cover in proptest::sample::select(Cover::ALL.to_vec()),
    ) {
        let garden = Garden::of(Frost::Dates(frost));
        let plain = windows(crop, &garden.season_of(2026).expect("it freezes"));
        let covered = garden.with(None, Some(cover)).season_of(2026).expect("it freezes");
        let covered = windows(crop, &covered);
        prop_assert!(plain.season_too_short || !covered.season_too_short);
        for step in [Step::PlantOut, Step::SowOutdoors] {
            let first = |all: &[Window]| all.iter().find(|w| w.label == Label::Spring).copied();
            if let (Some(plain), Some(covered)) = (first(plain.of(step)), first(covered.of(step))) {
                prop_assert!(covered.ideal_from <= plain.ideal_from, "{} {step:?}", crop.id);
                let autumn = crop.autumn.is_some();
                prop_assert!(autumn || covered.to >= plain.to, "{} {step:?}", crop.id);
                prop_assert!(covered.ideal_to >= plain.ideal_to || autumn, "{}", crop.id);
            }
        }
    }

    #[test]
    fn a_windowsill_never_asks_for_older_plants(crop in crop(), frost in frost_dates()) {
        let garden = Garden::of(Frost::Dates(frost));
        let sill = garden.with(Some(Place::Windowsill), None);
        let of = |garden: Garden| windows(crop, &garden.season_of(2026).expect("it freezes"));
        for (plain, sill) in of(garden).sow_indoors.iter().zip(of(sill).sow_indoors) {
            prop_assert!(sill.from >= plain.from);
            prop_assert_eq!((sill.ideal_from, sill.ideal_to, sill.to),
                (plain.ideal_from, plain.ideal_to, plain.to));
        }
    }
}

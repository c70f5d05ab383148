//! The windows of every crop, in gardens of several kinds.

use sowbell::planning::{Basis, Season, Step, Windows, windows};

use super::{catalogue, frost};

fn gardens() -> Vec<(&'static str, Season)> {
    let of = |name, last, first, basis| (name, Season::of_year(frost(last, first, basis), 2026));
    vec![
        ("usual", "05-15", "10-05"),
        ("short", "06-05", "09-10"),
        ("long", "03-15", "11-20"),
        ("southern", "09-15", "05-01"),
    ]
    .into_iter()
    .flat_map(|(name, last, first)| {
        [of(name, last, first, Basis::Average), of(name, last, first, Basis::Trusted)]
    })
    .collect()
}

#[test]
fn every_window_runs_forwards() {
    let catalogue = catalogue();
    for (garden, season) in gardens() {
        for crop in catalogue.iter() {
            let all = windows(crop, &season);
            for step in Step::ALL {
                for w in all.of(step) {
                    let dates = [w.from, w.ideal_from, w.ideal_to, w.to];
                    assert!(dates.is_sorted(), "{garden}: {} {step:?} {dates:?}", crop.id);
                    assert_eq!(w.season, 2026, "{garden}: {} {step:?}", crop.id);
                }
            }
        }
    }
}

#[test]
fn windows_of_one_step_do_not_overlap() {
    let catalogue = catalogue();
    // Starts of hardening off and potting up follow from these and may touch.
    let steps = [Step::SowIndoors, Step::SowOutdoors, Step::PlantOut];
    for (garden, season) in gardens() {
        for crop in catalogue.iter() {
            let all = windows(crop, &season);
            for step in steps {
                for pair in all.of(step).windows(2) {
                    assert!(pair[0].to < pair[1].from, "{garden}: {} {step:?} {pair:?}", crop.id);
                }
            }
        }
    }
}

#[test]
fn a_season_of_140_days_is_long_enough_for_every_crop() {
    let catalogue = catalogue();
    let season = Season::of_year(frost("05-15", "10-05", Basis::Average), 2026);
    for crop in catalogue.iter() {
        let all = windows(crop, &season);
        assert!(!all.season_too_short, "{}", crop.id);
        assert_ne!(all, Windows::default(), "{} has no dates at all", crop.id);
    }
}

#[test]
fn the_best_way_has_a_window_before_midsummer() {
    let catalogue = catalogue();
    let season = Season::of_year(frost("05-15", "10-05", Basis::Average), 2026);
    let midsummer = "2026-06-24".parse().expect("a date");
    for crop in catalogue.iter().filter(|crop| crop.autumn_planting_weeks.is_none()) {
        let all = windows(crop, &season);
        let first =
            Step::ALL.into_iter().filter_map(|step| all.of(step).first()).map(|w| w.ideal_from);
        assert!(first.min().expect("a window") < midsummer, "{}", crop.id);
    }
}

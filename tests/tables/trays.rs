//! What holds for trays, whatever is asked for on whatever day.

#![expect(clippy::indexing_slicing, reason = "a test stops at the first thing that is wrong")]

use std::sync::LazyLock;

use chrono::{Days, NaiveDate};
use proptest::prelude::*;
use sowbell::catalogue::Catalogue;
use sowbell::planning::{
    Basis, CELL_TRAYS, Crop, DAYS_AHEAD, Garden, Light, NoTray, Seedling, Step, TrayPlan, Vigour,
    Wanted, assess, lay_out, may_share_a_tray,
};

/// The catalogue, read once for all of this file.
fn catalogue() -> &'static Catalogue {
    static CATALOGUE: LazyLock<Catalogue> = LazyLock::new(crate::catalogue);
    &CATALOGUE
}

fn garden() -> Garden {
    let day = |text: &str| Some(text.parse().expect("a month-day"));
    Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden")
}

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn wanted(id: &str, cells: u32) -> Wanted<'static> {
    Wanted { crop: crate::crop(catalogue(), id), variety: None, cells }
}

/// Half of the days drawn lie in spring, when there is much to sow.
fn on() -> impl Strategy<Value = NaiveDate> {
    let days = prop_oneof![0..120_u64, 0..800_u64];
    days.prop_map(|days| day("2026-02-01") + Days::new(days))
}

fn wishes(most_crops: usize, most_cells: u32) -> impl Strategy<Value = Vec<Wanted<'static>>> {
    let crops: Vec<&'static Crop> = catalogue().iter().collect();
    proptest::sample::subsequence(crops, 0..=most_crops).prop_shuffle().prop_flat_map(
        move |crops| {
            let cells = proptest::collection::vec(1..=most_cells, crops.len());
            cells.prop_map(move |cells| {
                crops
                    .iter()
                    .zip(cells)
                    .map(|(crop, cells)| Wanted { crop, variety: None, cells })
                    .collect()
            })
        },
    )
}

/// Every two that share a tray.
fn pairs<'p>(plan: &'p TrayPlan<'static>) -> Vec<(&'p Seedling<'static>, &'p Seedling<'static>)> {
    let mut pairs = Vec::new();
    for tray in &plan.trays {
        for (at, one) in tray.crops.iter().enumerate() {
            pairs.extend(tray.crops[at + 1..].iter().map(|other| (&one.seedling, &other.seedling)));
        }
    }
    pairs
}

proptest! {
    #[test]
    fn only_crops_that_are_alike_share_a_tray(wishes in wishes(40, 60), on in on()) {
        let plan = lay_out(&wishes, garden(), on);
        for (one, other) in pairs(&plan) {
            prop_assert!(may_share_a_tray(one, other) && may_share_a_tray(other, one));
            // What the rule promises, said once more without it.
            prop_assert_eq!(one.crop.vigour, other.crop.vigour);
            let lights = [one.light(), other.light()];
            prop_assert!(!(lights.contains(&Light::Light) && lights.contains(&Light::Dark)));
            let leave = one.leaves_on().signed_duration_since(other.leaves_on()).num_days();
            prop_assert!(leave.abs() <= 14);
        }
        for tray in &plan.trays {
            let of = |vigour| tray.crops.iter().any(|one| one.seedling.crop.vigour == vigour);
            prop_assert!(!(of(Vigour::Sprawling) && (of(Vigour::Small) || of(Vigour::Upright))));
            if let Some(warmth) = tray.common.warmth_c {
                for one in &tray.crops {
                    let best = one.seedling.warmth_c().expect("a warmth");
                    prop_assert!(best.contains(warmth) && warmth.ordered());
                }
            }
            for one in &tray.crops {
                prop_assert!(one.seedling.crop.indoors.as_ref().expect("indoors").age_weeks.ideal
                    .contains(tray.common.ideal_weeks));
            }
        }
    }

    #[test]
    fn every_cell_has_its_place_or_its_crop_a_reason(wishes in wishes(40, 500), on in on()) {
        let plan = lay_out(&wishes, garden(), on);
        for Wanted { crop, cells, .. } in &wishes {
            let standing = plan.trays.iter().flat_map(|tray| &tray.crops);
            let placed: u32 =
                standing.filter(|one| one.seedling.crop.id == crop.id).map(|one| one.cells).sum();
            let refused = plan.left_out.iter().filter(|one| one.crop == crop.id).count();
            prop_assert!((placed, refused) == (*cells, 0) || (placed, refused) == (0, 1),
                "{}: {placed} of {cells}, {refused} refusals", crop.id);
        }
        for tray in &plan.trays {
            prop_assert!(0 < tray.used() && tray.used() <= tray.cell_tray.cells());
            for one in &tray.crops {
                let cell = one.seedling.crop.indoors.as_ref().expect("indoors").cell_mm.sow;
                let smallest = CELL_TRAYS.iter().map(|tray| tray.cell_mm).find(|mm| *mm >= cell);
                prop_assert_eq!(smallest, Some(tray.cell_tray.cell_mm));
            }
        }
        prop_assert_eq!(&plan, &lay_out(&wishes, garden(), on));
    }

    #[test]
    fn a_tray_of_its_own_for_each_crop_would_be_as_many_or_more(
        wishes in wishes(40, 120), on in on(), more in 1..60_u32, at in any::<prop::sample::Index>(),
    ) {
        let plan = lay_out(&wishes, garden(), on);
        let alone: usize =
            wishes.iter().map(|one| lay_out(&[*one], garden(), on).trays.len()).sum();
        prop_assert!(plan.trays.len() <= alone);
        let mut larger = wishes.clone();
        if !larger.is_empty() {
            let at = at.index(larger.len());
            larger[at].cells += more;
        }
        prop_assert!(lay_out(&larger, garden(), on).trays.len() >= plan.trays.len());
    }

    #[test]
    fn a_few_crops_stand_in_as_few_trays_as_there_can_be(wishes in wishes(9, 1), on in on()) {
        // One cell of each: the trays are the groups, so trying every grouping gives the least.
        let plan = lay_out(&wishes, garden(), on);
        let due: Vec<Seedling> =
            wishes.iter().filter_map(|one| Seedling::due(one.crop, garden(), on).ok()).collect();
        prop_assert_eq!(plan.trays.len(), fewest_groups(&due, &mut Vec::new()));
    }

    #[test]
    fn what_is_due_can_be_sown_on_its_day(wishes in wishes(40, 6), on in on()) {
        let plan = lay_out(&wishes, garden(), on);
        for one in plan.trays.iter().flat_map(|tray| &tray.crops) {
            let seedling = &one.seedling;
            let days = seedling.sow_on.signed_duration_since(on).num_days();
            prop_assert!((0..=DAYS_AHEAD).contains(&days));
            let verdict = assess(seedling.crop, garden(), Step::SowIndoors, seedling.sow_on).verdict;
            prop_assert!(verdict.is_ok_and(sowbell::planning::Verdict::workable));
            prop_assert!(seedling.sow_on < seedling.leaves_on());
            prop_assert!(seedling.leaves_on() <= seedling.out_on);
            if let Some(pot_up) = seedling.pot_up {
                let indoors = seedling.crop.indoors.as_ref().expect("indoors");
                prop_assert!(indoors.stay_weeks.potted_up.is_some());
                prop_assert!(seedling.age_days() > 7 * indoors.stay_weeks.longest);
                prop_assert!(pot_up.from <= pot_up.by && pot_up.by < seedling.out_on);
            }
        }
        for left_out in &plan.left_out {
            if left_out.reason == NoTray::TooEarly {
                prop_assert!(left_out.next.is_some_and(|next| next > on + Days::new(14)));
            }
        }
    }
}

/// The fewest groups of crops that may share a tray: each joins every group it may, or begins one.
fn fewest_groups<'c>(left: &[Seedling<'c>], groups: &mut Vec<Vec<Seedling<'c>>>) -> usize {
    let Some((first, rest)) = left.split_first() else { return groups.len() };
    let mut best = usize::MAX;
    for at in 0..groups.len() {
        if groups[at].iter().all(|other| may_share_a_tray(first, other)) {
            groups[at].push(*first);
            best = best.min(fewest_groups(rest, groups));
            groups[at].pop();
        }
    }
    groups.push(vec![*first]);
    best = best.min(fewest_groups(rest, groups));
    groups.pop();
    best
}

#[test]
fn cucumbers_never_stand_beside_basil_or_dill() {
    let wishes = ["basil", "cucumber", "dill", "melon", "tomato"].map(|id| wanted(id, 6));
    let plan = lay_out(&wishes, garden(), day("2026-04-17"));
    let ids: Vec<Vec<&str>> = plan
        .trays
        .iter()
        .map(|tray| tray.crops.iter().map(|one| one.seedling.crop.id.as_str()).collect())
        .collect();
    // Basil and dill share cells, vigour and warmth; tomatoes want smaller cells, older.
    assert_eq!(ids, [vec!["basil", "dill"], vec!["cucumber", "melon"], vec!["tomato"]]);
}

#[test]
fn only_what_outstays_its_cell_is_potted_up() {
    let pot_up = |id: &str, on: &str| {
        Seedling::due(crate::crop(catalogue(), id), garden(), day(on)).expect("due").pot_up
    };
    // Tomatoes bear eight weeks in their cell and go out on 22 May, a week after the last frost.
    assert_eq!(pot_up("tomato", "2026-03-27"), None);
    // Asked on 6 March they are sown at the end of the fortnight, nine weeks before they go out.
    let early = pot_up("tomato", "2026-03-06").expect("potted up");
    assert_eq!((early.from, early.by), (day("2026-04-10"), day("2026-05-15")));
    // Cucumbers go out young, whenever they are sown.
    assert_eq!(pot_up("cucumber", "2026-04-10"), None);
}

#[test]
fn what_gets_no_tray_is_told_why() {
    let wishes = ["carrot", "potato", "cucumber", "onion"].map(|id| wanted(id, 6));
    let reasons = |garden, on: &str| {
        let plan = lay_out(&wishes, garden, day(on));
        plan.left_out
            .iter()
            .map(|one| (one.crop.as_str().to_owned(), one.reason))
            .collect::<Vec<_>>()
    };
    let told = |reasons: &[(&str, NoTray)]| -> Vec<(String, NoTray)> {
        reasons.iter().map(|(crop, reason)| ((*crop).to_owned(), *reason)).collect()
    };
    assert_eq!(
        reasons(garden(), "2026-03-01"),
        told(&[
            ("carrot", NoTray::NeverThisWay),
            ("potato", NoTray::NotFromSeed),
            ("cucumber", NoTray::TooEarly),
        ])
    );
    assert_eq!(
        reasons(garden(), "2026-08-20")[2..],
        told(&[("cucumber", NoTray::TooLate), ("onion", NoTray::TooLate),])
    );
    assert!(
        reasons(Garden::FROST_FREE, "2026-03-01").iter().any(|one| one.1 == NoTray::NoFrostHere)
    );
}

#[test]
fn a_crop_named_twice_gets_the_cells_of_both() {
    let plan = lay_out(&[wanted("tomato", 6), wanted("tomato", 7)], garden(), day("2026-04-01"));
    assert_eq!(plan.trays.iter().map(sowbell::planning::Tray::used).collect::<Vec<_>>(), [13]);
}

#[test]
fn no_crop_wants_a_larger_cell_than_there_is() {
    let largest = CELL_TRAYS.iter().map(|tray| tray.cell_mm).max();
    for crop in catalogue().iter() {
        let cell = crop.indoors.as_ref().map(|indoors| indoors.cell_mm.sow);
        assert!(cell <= largest, "{} wants {cell:?} mm", crop.id);
    }
}

use std::collections::HashMap;

use proptest::prelude::*;

use super::exact;
use super::fewest::{MOST_KINDS_FOR_EXACT, Share, fewest_trays};

/// Which of `count` crops may stand together: a symmetric relation, drawn pair by pair.
fn relation(count: usize) -> impl Strategy<Value = Vec<Vec<bool>>> {
    proptest::collection::vec(any::<bool>(), count * count).prop_map(move |drawn| {
        let pair = |one: usize, other: usize| drawn[one.min(other) * count + one.max(other)];
        (0..count).map(|one| (0..count).map(|other| pair(one, other)).collect()).collect()
    })
}

fn crops(
    counts: std::ops::Range<usize>,
    most: u32,
) -> impl Strategy<Value = (Vec<u32>, Vec<Vec<bool>>)> {
    counts.prop_flat_map(move |count| (proptest::collection::vec(1..=most, count), relation(count)))
}

fn pack(wanted: &[u32], fit: &[Vec<bool>], holds: u32) -> Vec<Vec<Share>> {
    fewest_trays(wanted, |one, other| fit[one][other], holds)
}

/// The least number of trays by trying out every filling of the next tray.
fn least(
    left: &[u32],
    fit: &[Vec<bool>],
    holds: u32,
    known: &mut HashMap<Vec<u32>, usize>,
) -> usize {
    if left.iter().all(|cells| *cells == 0) {
        return 0;
    }
    if let Some(least) = known.get(left) {
        return *least;
    }
    let mut best = usize::MAX;
    let mut fillings: Vec<(Vec<u32>, Vec<usize>, u32)> = vec![(left.to_vec(), Vec::new(), holds)];
    for crop in 0..left.len() {
        for (rest, inside, room) in fillings.clone() {
            if inside.iter().all(|other| fit[crop][*other]) {
                for cells in 1..=room.min(rest[crop]) {
                    let mut rest = rest.clone();
                    rest[crop] -= cells;
                    let inside = inside.iter().copied().chain([crop]).collect();
                    fillings.push((rest, inside, room - cells));
                }
            }
        }
    }
    for (rest, inside, _) in fillings {
        if !inside.is_empty() {
            best = best.min(1 + least(&rest, fit, holds, known));
        }
    }
    known.insert(left.to_vec(), best);
    best
}

/// Every cell once, no tray over-full, and only crops together that may be.
fn is_sound(trays: &[Vec<Share>], wanted: &[u32], fit: &[Vec<bool>], holds: u32) {
    let mut placed = vec![0; wanted.len()];
    for tray in trays {
        let used: u32 = tray.iter().map(|(_, cells)| *cells).sum();
        assert!(used <= holds && tray.iter().all(|(_, cells)| *cells > 0), "{tray:?}");
        for (crop, cells) in tray {
            placed[*crop] += cells;
            let others = tray.iter().filter(|(other, _)| other != crop);
            assert_eq!(others.clone().count(), tray.len() - 1, "a crop twice in {tray:?}");
            assert!(others.clone().all(|(other, _)| fit[*crop][*other]), "{tray:?}");
        }
    }
    assert_eq!(placed, wanted);
}

fn one_tray_or_more_for_each(wanted: &[u32], holds: u32) -> usize {
    wanted.iter().map(|cells| cells.div_ceil(holds) as usize).sum()
}

proptest! {
    #[test]
    fn no_packing_takes_fewer_trays((wanted, fit) in crops(1..6, 5), holds in 1..=4_u32) {
        let trays = pack(&wanted, &fit, holds);
        is_sound(&trays, &wanted, &fit, holds);
        prop_assert_eq!(trays.len(), least(&wanted, &fit, holds, &mut HashMap::new()));
    }

    #[test]
    fn more_cells_never_take_fewer_trays(
        (wanted, fit) in crops(1..14, 120), more in 1..60_u32, at in any::<prop::sample::Index>(),
    ) {
        let trays = pack(&wanted, &fit, 48);
        is_sound(&trays, &wanted, &fit, 48);
        prop_assert!(trays.len() <= one_tray_or_more_for_each(&wanted, 48));
        let mut larger = wanted.clone();
        larger[at.index(wanted.len())] += more;
        prop_assert!(pack(&larger, &fit, 48).len() >= trays.len());
    }

}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(50))]

    #[test]
    fn ten_kinds_are_packed_at_once((wanted, fit) in crops(10..11, 500), holds in 10..=48_u32) {
        let all: Vec<usize> = (0..MOST_KINDS_FOR_EXACT).collect();
        let fit_or_same = |one: usize, other: usize| one == other || fit[one][other];
        let trays = exact::pack(&all, |kind| wanted[kind], fit_or_same, holds);
        is_sound(&trays, &wanted, &fit, holds);
    }
}

#[test]
fn a_crop_is_split_where_that_saves_a_tray() {
    // The first crop fits both others, which do not fit each other. Alone they would take three
    // trays of four; with two cells of the first beside each of the others, two.
    let fit = [[true, true, true], [true, true, false], [true, false, true]].map(Vec::from);
    let trays = pack(&[4, 2, 2], &fit, 4);
    assert_eq!(trays.len(), 2);
    is_sound(&trays, &[4, 2, 2], &fit, 4);
}

#[test]
fn crops_in_a_ring_need_more_than_their_cells_say() {
    // Five crops of which each fits its two neighbours alone: ten cells would fill two trays of
    // five, and no tray holds more than two crops.
    let fit: Vec<Vec<bool>> = (0..5_usize)
        .map(|a| (0..5).map(|b| (a + 5 - b) % 5 <= 1 || (b + 5 - a) % 5 <= 1).collect())
        .collect();
    assert_eq!(pack(&[2; 5], &fit, 5).len(), 3);
}

#[test]
fn many_kinds_are_grouped() {
    // Thirteen crops in a row, each fitting the next: the first-come groups are pairs.
    let fit: Vec<Vec<bool>> =
        (0..13_usize).map(|a| (0..13).map(|b| a.abs_diff(b) <= 1).collect()).collect();
    let trays = pack(&[3; 13], &fit, 6);
    is_sound(&trays, &[3; 13], &fit, 6);
    assert_eq!(trays.len(), 7);
}

#[test]
fn nothing_takes_no_tray() {
    assert!(pack(&[], &[], 48).is_empty());
    assert!(pack(&[0], &[vec![true]], 48).is_empty());
}

//! As few trays as possible for crops of which only some may stand together.

use super::exact;

/// Up to this many kinds of crop that hang together the number of trays is the least there is;
/// beyond it, see [`fewest_trays`].
pub(super) const MOST_KINDS_FOR_EXACT: usize = 10;

/// One tray's share of a crop, by the crop's index, in cells.
pub(super) type Share = (usize, u32);

/// Packs crops into trays of `holds` cells: `wanted` has the cells of each, and `fit` says of two
/// of them whether they may share a tray (it is symmetric). A crop may be split over trays.
///
/// Crops that fit the same others are of one kind and are packed as one. Kinds that hang together
/// by `fit`, directly or through others, are packed together: up to [`MOST_KINDS_FOR_EXACT`] of
/// them into the fewest trays there can be, more of them into groups formed without regard to the
/// numbers. That takes at most one tray fewer than there are groups more than the cells alone
/// would fill, and never more than a tray for each crop by itself would. Either way, more cells
/// never take fewer trays.
pub(super) fn fewest_trays(
    wanted: &[u32],
    fit: impl Fn(usize, usize) -> bool,
    holds: u32,
) -> Vec<Vec<Share>> {
    if holds == 0 {
        return Vec::new();
    }
    let fit = |one: usize, other: usize| one == other || fit(one, other);
    let kinds = kinds(wanted.len(), fit);
    let kinds_fit = |one: usize, other: usize| {
        let first = |kind: usize| kinds.get(kind).and_then(|crops| crops.first()).copied();
        matches!((first(one), first(other)), (Some(one), Some(other)) if fit(one, other))
    };
    let mut stores: Vec<Store> = kinds.iter().map(|crops| Store::of(crops, wanted)).collect();
    let cells: Vec<u32> = stores.iter().map(Store::left).collect();
    let of = |kind: usize| cells.get(kind).copied().unwrap_or_default();

    let mut trays: Vec<Vec<Share>> = Vec::new();
    for together in hanging_together(kinds.len(), kinds_fit) {
        let by_kind = if together.len() <= MOST_KINDS_FOR_EXACT {
            exact::pack(&together, of, kinds_fit, holds)
        } else {
            in_groups(&together, of, kinds_fit, holds)
        };
        for tray in by_kind {
            let shares = tray.into_iter().flat_map(|(kind, cells)| {
                stores.get_mut(kind).map(|store| store.take(cells)).unwrap_or_default()
            });
            trays.push(shares.collect());
        }
    }
    trays
}

/// The crops of one kind with the cells that each still wants, in their order.
struct Store(std::collections::VecDeque<Share>);

impl Store {
    fn of(crops: &[usize], wanted: &[u32]) -> Self {
        let share = |crop: &usize| Some((*crop, *wanted.get(*crop)?));
        Self(crops.iter().filter_map(share).filter(|(_, cells)| *cells > 0).collect())
    }

    fn left(&self) -> u32 {
        self.0.iter().map(|(_, cells)| *cells).fold(0, u32::saturating_add)
    }

    /// Takes `cells` cells, from the first crops on.
    fn take(&mut self, mut cells: u32) -> Vec<Share> {
        let mut taken = Vec::new();
        while cells > 0 {
            let Some((crop, left)) = self.0.pop_front() else { break };
            let now = left.min(cells);
            taken.push((crop, now));
            cells -= now;
            if left > now {
                self.0.push_front((crop, left - now));
            }
        }
        taken
    }
}

/// Crops that fit exactly the same crops, themselves among them, are of one kind.
fn kinds(count: usize, fit: impl Fn(usize, usize) -> bool) -> Vec<Vec<usize>> {
    let mut kinds: Vec<(Vec<bool>, Vec<usize>)> = Vec::new();
    for crop in 0..count {
        let fits: Vec<bool> = (0..count).map(|other| fit(crop, other)).collect();
        match kinds.iter_mut().find(|(same, _)| *same == fits) {
            Some((_, crops)) => crops.push(crop),
            None => kinds.push((fits, vec![crop])),
        }
    }
    kinds.into_iter().map(|(_, crops)| crops).collect()
}

/// Splits what does not hang together, directly or through others.
fn hanging_together(count: usize, fit: impl Fn(usize, usize) -> bool) -> Vec<Vec<usize>> {
    let mut waiting: Vec<usize> = (0..count).collect();
    let mut all = Vec::new();
    while let Some(first) = waiting.first().copied() {
        let mut reached = vec![first];
        let mut at = 0;
        while let Some(from) = reached.get(at).copied() {
            let (near, far): (Vec<usize>, Vec<usize>) = waiting
                .into_iter()
                .filter(|one| !reached.contains(one))
                .partition(|one| fit(from, *one));
            reached.extend(near);
            waiting = far;
            at += 1;
        }
        reached.sort_unstable();
        all.push(reached);
    }
    all
}

/// Groups in which all fit all, each filled tray by tray: every kind joins the first group that
/// it fits.
fn in_groups(
    kinds: &[usize],
    cells: impl Fn(usize) -> u32,
    fit: impl Fn(usize, usize) -> bool,
    holds: u32,
) -> Vec<Vec<Share>> {
    let mut groups: Vec<Vec<usize>> = Vec::new();
    for kind in kinds {
        let fits_all = |group: &&mut Vec<usize>| group.iter().all(|other| fit(*kind, *other));
        match groups.iter_mut().find(fits_all) {
            Some(group) => group.push(*kind),
            None => groups.push(vec![*kind]),
        }
    }
    groups.iter().flat_map(|group| filled(group.iter().map(|k| (*k, cells(*k))), holds)).collect()
}

/// Tray after tray, each filled before the next is begun.
pub(super) fn filled(shares: impl Iterator<Item = Share>, holds: u32) -> Vec<Vec<Share>> {
    let mut trays: Vec<Vec<Share>> = Vec::new();
    let mut free = 0;
    for (kind, mut left) in shares {
        while left > 0 {
            if free == 0 {
                trays.push(Vec::new());
                free = holds;
            }
            let now = left.min(free);
            if let Some(tray) = trays.last_mut() {
                tray.push((kind, now));
            }
            left -= now;
            free -= now;
        }
    }
    trays
}

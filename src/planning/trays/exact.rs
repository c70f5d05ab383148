//! The fewest trays there can be, for a few kinds of crop.
//!
//! A tray holds kinds that all fit each other, a *group*; it does no harm to take each group as
//! large as it can be. What is looked for is how many trays each group gets. Such a choice can be
//! filled if and only if every set of kinds finds enough trays that may hold one of them (the
//! theorem of Hall for cells and trays): the cells of the set, in whole trays. Where a set falls
//! into parts that do not fit each other, no tray serves two parts, so each part is rounded up by
//! itself.

use super::fewest::Share;

/// A set of kinds, one bit for each.
type Set = u16;

/// The kinds, with everything that the search asks of them.
struct Kinds {
    /// Cells of each.
    cells: Vec<u32>,
    /// For each, those that it fits, itself among them.
    fits: Vec<Set>,
    holds: u32,
}

/// How many trays a group gets.
#[derive(Clone)]
struct Group {
    of: Set,
    trays: u32,
}

/// Packs `kinds`, at most 16 of them, into the fewest trays of `holds` cells.
pub(super) fn pack(
    kinds: &[usize],
    cells: impl Fn(usize) -> u32,
    fit: impl Fn(usize, usize) -> bool,
    holds: u32,
) -> Vec<Vec<Share>> {
    let fits = |one: &usize| {
        kinds
            .iter()
            .enumerate()
            .filter(|(_, other)| fit(*one, **other))
            .map(|(at, _)| bit(at))
            .sum()
    };
    let mut all = Kinds {
        cells: kinds.iter().map(|kind| cells(*kind)).collect(),
        fits: kinds.iter().map(fits).collect(),
        holds,
    };
    let groups = all.largest_groups();
    let mut trays = all.take_whole_trays(&groups);
    trays.extend(all.fill(&all.fewest(&groups)));
    let named = |(at, cells): Share| kinds.get(at).map(|kind| (*kind, cells));
    trays.into_iter().map(|tray| tray.into_iter().filter_map(named).collect()).collect()
}

fn bit(at: usize) -> Set {
    u32::try_from(at).ok().and_then(|at| Set::checked_shl(1, at)).unwrap_or_default()
}

impl Kinds {
    fn everything(&self) -> Set {
        (0..self.cells.len()).map(bit).sum()
    }

    /// Every set but the empty one.
    fn sets(&self) -> impl Iterator<Item = Set> + use<> {
        1..=self.everything()
    }

    /// Those of `set` with what they fit.
    fn fits_of(&self, set: Set) -> impl Iterator<Item = Set> + '_ {
        self.fits.iter().enumerate().filter(move |(at, _)| set & bit(*at) != 0).map(|(_, f)| *f)
    }

    fn cells_of(&self, set: Set) -> u32 {
        let of = self.cells.iter().enumerate().filter(|(at, _)| set & bit(*at) != 0);
        of.map(|(_, cells)| *cells).fold(0, u32::saturating_add)
    }

    /// The groups that cannot be made larger.
    fn largest_groups(&self) -> Vec<Set> {
        let common = |set: Set| self.fits_of(set).fold(self.everything(), |all, fits| all & fits);
        // All fit all, and nobody else fits all of them.
        self.sets().filter(|set| common(*set) == *set).collect()
    }

    /// Takes out whole trays of one kind, where that costs nothing.
    ///
    /// A kind that has more cells than one tray for each of its groups has more than a tray's in
    /// some group's trays, and within a group's trays cells may change places until one of them
    /// holds that kind alone.
    fn take_whole_trays(&mut self, groups: &[Set]) -> Vec<Vec<Share>> {
        let mut trays = Vec::new();
        for (at, cells) in self.cells.iter_mut().enumerate() {
            let in_groups = groups.iter().filter(|group| **group & bit(at) != 0).count();
            let in_groups = u32::try_from(in_groups).unwrap_or(u32::MAX);
            while *cells > in_groups.saturating_mul(self.holds) {
                *cells -= self.holds;
                trays.push(vec![(at, self.holds)]);
            }
        }
        trays
    }

    /// The parts of `set` that do not fit each other.
    fn parts(&self, mut set: Set) -> Vec<Set> {
        let mut parts = Vec::new();
        while set != 0 {
            let mut part = set & set.wrapping_neg();
            loop {
                let wider = self.fits_of(part).fold(part, |all, fits| all | fits) & set;
                if wider == part {
                    break;
                }
                part = wider;
            }
            parts.push(part);
            set &= !part;
        }
        parts
    }

    /// The fewest trays, as how many of them each group gets.
    fn fewest(&self, groups: &[Set]) -> Vec<Group> {
        let whole = |part: Set| self.cells_of(part).div_ceil(self.holds);
        let needs: Vec<(Set, u32)> = self
            .sets()
            .map(|set| (set, self.parts(set).into_iter().map(whole).sum()))
            .filter(|(_, need)| *need > 0)
            .collect();
        let least = needs.iter().map(|(_, need)| *need).max().unwrap_or_default();
        // A tray of its own for every kind is always enough, so the search ends.
        let most: u32 = (0..self.cells.len()).map(|at| whole(bit(at))).sum();
        let mut search =
            Search { needs, groups: groups.iter().map(|of| Group { of: *of, trays: 0 }).collect() };
        for trays in least..=most {
            if search.within(trays, &(0..groups.len()).collect::<Vec<_>>()) {
                break;
            }
        }
        search.groups
    }

    /// Fills the trays, keeping a kind together where that leaves the rest enough room.
    fn fill(&self, groups: &[Group]) -> Vec<Vec<Share>> {
        let mut trays: Vec<Open> = groups
            .iter()
            .flat_map(|group| (0..group.trays).map(|_| Open::new(group.of, self.holds)))
            .collect();
        let mut left = self.cells.clone();
        let mut order: Vec<usize> = (0..left.len()).collect();
        let choices = |at: &usize| groups.iter().filter(|group| group.of & bit(*at) != 0).count();
        order.sort_by_key(|at| (choices(at), *at));
        for at in order {
            while let Some(cells) = left.get(at).copied().filter(|cells| *cells > 0) {
                let best = self.most_at_once(at, cells, &trays, &left);
                let Some((tray, now)) =
                    best.and_then(|(tray, now)| Some((trays.get_mut(tray)?, now)))
                else {
                    // Never so: a choice that can be filled has room for the next cell. Should it
                    // ever be, nothing may get lost.
                    let mut own = Open::new(bit(at), self.holds);
                    own.take(at, cells.min(self.holds));
                    trays.push(own);
                    reduce(&mut left, at, cells.min(self.holds));
                    continue;
                };
                tray.take(at, now);
                reduce(&mut left, at, now);
            }
        }
        trays.into_iter().map(|tray| tray.shares).filter(|shares| !shares.is_empty()).collect()
    }

    /// The tray that can take the most of a kind, and how much, so that the rest still fits.
    ///
    /// Cells of this kind take room from the sets without it that the tray serves; those sets can
    /// spare what they have over their own cells. Every set with this kind wants as much less as
    /// it has less room.
    fn most_at_once(
        &self,
        at: usize,
        cells: u32,
        trays: &[Open],
        left: &[u32],
    ) -> Option<(usize, u32)> {
        let spare = |set: Set| {
            let wanted = left.iter().enumerate().filter(|(one, _)| set & bit(*one) != 0);
            let free = trays.iter().filter(|tray| tray.of & set != 0);
            let wanted: u32 = wanted.map(|(_, cells)| *cells).sum();
            free.map(|tray| tray.free).sum::<u32>().saturating_sub(wanted)
        };
        let without = self.sets().filter(|set| set & bit(at) == 0);
        let spares: Vec<(Set, u32)> = without.map(|set| (set, spare(set))).collect();
        let most_in = |tray: &Open| {
            let bound = spares.iter().filter(|(set, _)| set & tray.of != 0).map(|(_, s)| *s).min();
            cells.min(tray.free).min(bound.unwrap_or(u32::MAX))
        };
        let open = trays.iter().enumerate().filter(|(_, tray)| tray.of & bit(at) != 0);
        let most = open.map(|(index, tray)| (index, most_in(tray))).filter(|(_, now)| *now > 0);
        most.min_by_key(|(index, now)| (std::cmp::Reverse(*now), *index))
    }
}

fn reduce(left: &mut [u32], at: usize, by: u32) {
    if let Some(cells) = left.get_mut(at) {
        *cells = cells.saturating_sub(by);
    }
}

/// A tray that is being filled.
#[derive(Clone)]
struct Open {
    of: Set,
    free: u32,
    shares: Vec<Share>,
}

impl Open {
    fn new(of: Set, holds: u32) -> Self {
        Self { of, free: holds, shares: Vec::new() }
    }

    fn take(&mut self, at: usize, cells: u32) {
        self.shares.push((at, cells));
        self.free = self.free.saturating_sub(cells);
    }
}

/// The search for a number of trays.
struct Search {
    /// Sets of kinds with the trays that each needs.
    needs: Vec<(Set, u32)>,
    /// The groups with the trays given to each so far.
    groups: Vec<Group>,
}

impl Search {
    /// Whether `left` more trays, for groups among `allowed`, are enough; if so, they are given.
    ///
    /// Where a set lacks trays, one of the groups that touch it must get another. Each is tried,
    /// and one that led nowhere is not given another in what is tried after it.
    fn within(&mut self, left: u32, allowed: &[usize]) -> bool {
        let Some((set, lacks)) = self.worst() else { return true };
        if lacks > left {
            return false;
        }
        let mut allowed = allowed.to_vec();
        let touching: Vec<usize> = allowed
            .iter()
            .copied()
            .filter(|at| self.groups.get(*at).is_some_and(|group| group.of & set != 0))
            .collect();
        for at in touching {
            self.give(at, 1);
            if self.within(left - 1, &allowed) {
                return true;
            }
            self.give(at, -1);
            allowed.retain(|other| *other != at);
        }
        false
    }

    fn give(&mut self, at: usize, trays: i32) {
        if let Some(group) = self.groups.get_mut(at) {
            group.trays = group.trays.saturating_add_signed(trays);
        }
    }

    /// The set that lacks the most trays, and how many; of several, one with the fewest kinds.
    fn worst(&self) -> Option<(Set, u32)> {
        let lacking = self.needs.iter().filter_map(|(set, need)| {
            let touching = self.groups.iter().filter(|group| group.of & set != 0);
            let has: u32 = touching.map(|group| group.trays).sum();
            let lacks = need.saturating_sub(has);
            (lacks > 0).then_some((*set, lacks))
        });
        lacking.min_by_key(|(set, lacks)| (std::cmp::Reverse(*lacks), set.count_ones(), *set))
    }
}

//! How many seeds to sow for so many plants.

use serde::Serialize;

use super::crop::Crop;
use super::germination_rate::LOWEST_RATE;

/// The chance of enough plants that the number of seeds is reckoned for.
pub const WANTED_CHANCE: f64 = 0.9;

/// The share of seedlings lost after they came up, to damping off, slugs and clumsy hands.
/// Common practice, no source.
pub const USUAL_LOSSES: f64 = 0.1;

/// The most plants that are reckoned for.
pub const MOST_PLANTS: u32 = 5_000;

/// The most seeds in one cell that are reckoned with.
pub const MOST_PER_CELL: u32 = 20;

/// What stands between a seed and a plant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Odds {
    rate: f64,
    losses: f64,
}

/// Why no number is reckoned.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum SeedCountError {
    /// Not 1 to [`MOST_PLANTS`] plants.
    #[error("plants wanted must be from 1 to {MOST_PLANTS}")]
    Plants,
    /// Not 1 to [`MOST_PER_CELL`] seeds to a cell.
    #[error("seeds to a cell must be from 1 to {MOST_PER_CELL}")]
    PerCell,
    /// A rate below [`LOWEST_RATE`]: the seed is to be replaced.
    #[error("the seed is too weak to reckon with")]
    TooWeak,
    /// A rate above 1, or losses that are no share or leave nothing.
    #[error("a rate or the losses are no share")]
    NoShare,
}

/// The number of seeds for so many plants.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SeedCount {
    /// The smallest number of seeds with at least [`WANTED_CHANCE`] of enough plants.
    pub seeds: u32,
    /// The chance of enough plants from that many, from 0 to 1.
    pub chance: f64,
}

/// The number of cells for so many plants, several seeds to a cell and one plant left in each.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct CellCount {
    /// Seeds sown in each cell.
    pub per_cell: u32,
    /// The smallest number of cells with at least [`WANTED_CHANCE`] of enough plants.
    pub cells: u32,
    /// The chance of enough plants from that many, from 0 to 1.
    pub chance: f64,
    /// How many of the cells stay empty on average, because nothing in them came up.
    pub empty_cells: f64,
}

impl Crop {
    /// Seeds usually sown in a cell, where the crop is raised in cells.
    #[must_use]
    pub fn seeds_per_cell(&self) -> Option<u32> {
        self.indoors.as_ref()?;
        u32::try_from(self.seed.per_cell.as_ref()?.is).ok()
    }
}

impl Odds {
    /// Odds from a germination rate and the losses after emergence, both from 0 to 1.
    ///
    /// # Errors
    /// [`SeedCountError::TooWeak`] below [`LOWEST_RATE`], [`SeedCountError::NoShare`] for a rate
    /// above 1 or losses outside 0 to 0.9.
    pub fn new(rate: f64, losses: f64) -> Result<Self, SeedCountError> {
        if !(0.0..=1.0).contains(&rate) || !(0.0..=0.9).contains(&losses) {
            return Err(SeedCountError::NoShare);
        }
        if rate < LOWEST_RATE {
            return Err(SeedCountError::TooWeak);
        }
        Ok(Self { rate, losses })
    }

    /// The chance that one seed becomes a plant.
    #[must_use]
    pub fn per_seed(self) -> f64 {
        self.rate * (1.0 - self.losses)
    }

    /// The chance that nothing comes up in a cell of so many seeds.
    #[must_use]
    pub fn cell_stays_empty(self, per_cell: u32) -> f64 {
        (1.0 - self.rate).powf(f64::from(per_cell))
    }

    /// The seeds to sow for `plants` plants.
    ///
    /// # Errors
    /// [`SeedCountError::Plants`] outside 1 to [`MOST_PLANTS`].
    pub fn seeds_for(self, plants: u32) -> Result<SeedCount, SeedCountError> {
        let (seeds, chance) = smallest(plants, self.per_seed())?;
        Ok(SeedCount { seeds, chance })
    }

    /// The cells to sow for `plants` plants with `per_cell` seeds in each, thinned to one: a cell
    /// gives a plant where anything comes up and the one that stays is not lost.
    ///
    /// # Errors
    /// [`SeedCountError::Plants`] outside 1 to [`MOST_PLANTS`], [`SeedCountError::PerCell`]
    /// outside 1 to [`MOST_PER_CELL`].
    pub fn cells_for(self, plants: u32, per_cell: u32) -> Result<CellCount, SeedCountError> {
        if !(1..=MOST_PER_CELL).contains(&per_cell) {
            return Err(SeedCountError::PerCell);
        }
        let empty = self.cell_stays_empty(per_cell);
        let (cells, chance) = smallest(plants, (1.0 - empty) * (1.0 - self.losses))?;
        Ok(CellCount { per_cell, cells, chance, empty_cells: f64::from(cells) * empty })
    }
}

/// The smallest number of tries with at least [`WANTED_CHANCE`] of `plants` successes, and that
/// chance.
fn smallest(plants: u32, each: f64) -> Result<(u32, f64), SeedCountError> {
    if !(1..=MOST_PLANTS).contains(&plants) {
        return Err(SeedCountError::Plants);
    }
    let enough = |tries| chance_of_at_least(plants, tries, each) >= WANTED_CHANCE;
    // More tries never lower the chance, so the smallest number lies between a doubled one that
    // is enough and the one before it that is not.
    let mut too_few = plants - 1;
    let mut plenty = plants;
    while !enough(plenty) {
        too_few = plenty;
        plenty = plenty.saturating_mul(2);
    }
    while plenty - too_few > 1 {
        let middle = too_few.midpoint(plenty);
        if enough(middle) {
            plenty = middle;
        } else {
            too_few = middle;
        }
    }
    Ok((plenty, chance_of_at_least(plants, plenty, each)))
}

/// The chance of at least `wanted` successes in `tries` tries that each succeed with the chance
/// `each` (from above 0 to 1): the upper tail of the binomial distribution.
///
/// The lower tail is summed term by term as logarithms, each from the one before it, so that
/// neither large factorials nor tiny powers leave the range of the numbers.
#[must_use]
pub fn chance_of_at_least(wanted: u32, tries: u32, each: f64) -> f64 {
    if wanted == 0 {
        return 1.0;
    }
    if wanted > tries {
        return 0.0;
    }
    if each >= 1.0 {
        return 1.0;
    }
    let odds = (each / (1.0 - each)).ln();
    let mut term = f64::from(tries) * (1.0 - each).ln();
    let mut terms = Vec::new();
    for successes in 0..wanted {
        terms.push(term);
        term += (f64::from(tries - successes) / f64::from(successes + 1)).ln() + odds;
    }
    let largest = terms.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let sum: f64 = terms.iter().map(|term| (term - largest).exp()).sum();
    (1.0 - largest.exp() * sum).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    /// Every outcome of `tries` tries, one by one.
    fn enumerated(wanted: u32, tries: u32, each: f64) -> f64 {
        (0_u32..1 << tries)
            .filter(|outcome| outcome.count_ones() >= wanted)
            .map(|outcome| {
                let successes = i32::try_from(outcome.count_ones()).expect("few");
                let failures = i32::try_from(tries).expect("few") - successes;
                each.powi(successes) * (1.0 - each).powi(failures)
            })
            .sum()
    }

    #[test]
    fn the_chance_is_the_enumerated_one() {
        for tries in 0..=12 {
            for wanted in 0..=tries + 1 {
                for each in [0.045, 0.3, 0.5, 0.675, 0.9, 1.0] {
                    let got = chance_of_at_least(wanted, tries, each);
                    let want = enumerated(wanted, tries, each);
                    assert!((got - want).abs() < 1e-12, "{wanted} of {tries} at {each}");
                }
            }
        }
    }

    #[test]
    fn small_numbers_by_hand() {
        let seeds = |rate, losses, plants| {
            Odds::new(rate, losses).expect("odds").seeds_for(plants).expect("a number").seeds
        };
        // One plant: 1 - 0.5^n reaches 0.9 with n = 4 (0.9375), not with 3 (0.875).
        assert_eq!(seeds(0.5, 0.0, 1), 4);
        // Two plants at 0.9: of 2 seeds 0.81, of 3 seeds 0.729 + 3 * 0.081 = 0.972.
        assert_eq!(seeds(0.9, 0.0, 2), 3);
        assert_eq!(seeds(1.0, 0.0, 7), 7);
        // 0.75 with a tenth lost is 0.675: 1 - 0.325^2 = 0.894 is just short, 0.966 is enough.
        assert_eq!(seeds(0.75, 0.1, 1), 3);
    }

    #[test]
    fn cells_by_hand() {
        let odds = Odds::new(0.5, 0.0).expect("odds");
        // Two seeds to a cell: a quarter of the cells stay empty, each gives a plant with 0.75.
        // For two plants: 3 cells give 0.84375, 4 give 1 - 0.25^4 - 4 * 0.75 * 0.25^3 = 0.949.
        let cells = odds.cells_for(2, 2).expect("a number");
        assert_eq!((cells.cells, cells.per_cell), (4, 2));
        assert!((cells.empty_cells - 1.0).abs() < 1e-12);
        assert!((cells.chance - 0.949_218_75).abs() < 1e-12);
        assert_eq!(odds.cells_for(2, 0), Err(SeedCountError::PerCell));
        assert_eq!(odds.cells_for(2, 21), Err(SeedCountError::PerCell));
    }

    #[test]
    fn what_cannot_be_reckoned() {
        let odds = Odds::new(0.5, 0.1).expect("odds");
        assert_eq!(odds.seeds_for(0), Err(SeedCountError::Plants));
        assert_eq!(odds.seeds_for(5_001), Err(SeedCountError::Plants));
        assert_eq!(Odds::new(0.049, 0.1), Err(SeedCountError::TooWeak));
        for (rate, losses) in [(1.1, 0.1), (-0.1, 0.1), (0.5, 1.0), (f64::NAN, 0.1)] {
            assert_eq!(Odds::new(rate, losses), Err(SeedCountError::NoShare));
        }
    }

    #[test]
    fn the_weakest_seed_and_the_most_plants_are_still_reckoned() {
        let count = Odds::new(0.05, 0.1).expect("odds").seeds_for(5_000).expect("a number");
        // 0.045 a seed gives 5,000 plants from 111,111 seeds on average; the standard deviation of
        // the plants is 69, and 1.28 of those more are about 2,000 seeds.
        assert!((112_500..=113_700).contains(&count.seeds), "{count:?}");
    }

    proptest! {
        #[test]
        fn more_seeds_never_lower_the_chance(wanted in 1_u32..300, more in 0_u32..600, each in 0.045_f64..=1.0) {
            let tries = wanted + more;
            let (fewer, one_more) =
                (chance_of_at_least(wanted, tries, each), chance_of_at_least(wanted, tries + 1, each));
            prop_assert!(one_more >= fewer - 1e-12, "{fewer} {one_more}");
        }

        #[test]
        fn the_number_is_the_smallest(
            plants in 1_u32..=5_000, rate in 0.05_f64..=1.0, losses in 0.0_f64..0.5,
        ) {
            let odds = Odds::new(rate, losses).expect("odds");
            let count = odds.seeds_for(plants).expect("a number");
            prop_assert!(count.chance >= WANTED_CHANCE);
            prop_assert!(chance_of_at_least(plants, count.seeds - 1, odds.per_seed()) < WANTED_CHANCE);
        }

        #[test]
        fn more_seeds_to_a_cell_never_need_more_cells(
            plants in 1_u32..200, rate in 0.05_f64..=1.0, per_cell in 1_u32..20,
        ) {
            let odds = Odds::new(rate, USUAL_LOSSES).expect("odds");
            let few = odds.cells_for(plants, per_cell).expect("a number");
            let more = odds.cells_for(plants, per_cell + 1).expect("a number");
            prop_assert!(more.cells <= few.cells);
        }
    }
}

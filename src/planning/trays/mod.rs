//! Trays for what is sown indoors in the next two weeks: which crops share one, and in what cells.

mod cells;
mod company;
mod exact;
mod fewest;
#[cfg(test)]
mod fewest_tests;
mod seedling;

use chrono::NaiveDate;

pub use cells::{CELL_TRAYS, CellTray};
pub use company::{Common, DAYS_APART, may_share_a_tray};
pub use seedling::{DAYS_AHEAD, LeftOut, NoTray, PotUp, Seedling};

use super::crop::Crop;
use super::garden::Garden;

/// How many cells a crop gets where nobody said a number.
pub const USUAL_CELLS: u32 = 6;

/// The most cells that one crop may be given.
pub const MOST_CELLS: u32 = 500;

/// A crop with the cells that are wanted of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wanted<'c> {
    /// The crop, as its variety is grown.
    pub crop: &'c Crop,
    /// The name of that variety, where one is meant.
    pub variety: Option<&'c str>,
    /// The cells, from 1 to [`MOST_CELLS`]; more are taken as that many.
    pub cells: u32,
}

/// A crop in a tray, with its cells there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Standing<'c> {
    /// The crop with its dates.
    pub seedling: Seedling<'c>,
    /// Its cells in this tray.
    pub cells: u32,
}

/// One tray.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tray<'c> {
    /// The flat and its cells.
    pub cell_tray: CellTray,
    /// The crops in it, in the order they were asked for; never empty.
    pub crops: Vec<Standing<'c>>,
    /// What they have in common.
    pub common: Common,
}

impl Tray<'_> {
    /// How many of its cells are taken.
    #[must_use]
    pub fn used(&self) -> u32 {
        self.crops.iter().map(|standing| standing.cells).sum()
    }
}

/// Where everything stands.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct TrayPlan<'c> {
    /// The trays, in the order in which their first crops were asked for.
    pub trays: Vec<Tray<'c>>,
    /// The crops that get no place, in the order they were asked for.
    pub left_out: Vec<LeftOut>,
}

impl<'c> TrayPlan<'c> {
    /// The crops that outstay their cell and are potted up, each once.
    #[must_use]
    pub fn to_pot_up(&self) -> Vec<(&Seedling<'c>, PotUp)> {
        let mut all: Vec<(&Seedling<'c>, PotUp)> = Vec::new();
        for standing in self.trays.iter().flat_map(|tray| &tray.crops) {
            let seedling = &standing.seedling;
            if let Some(pot_up) = seedling.pot_up
                && !all.iter().any(|(other, _)| other.is_of(seedling))
            {
                all.push((seedling, pot_up));
            }
        }
        all
    }
}

/// Lays out trays for the crops that are sown indoors from `on` to [`DAYS_AHEAD`] days later.
///
/// Which crops may share a tray is what [`may_share_a_tray`] says; each stands in the smallest
/// cells that carry it. The trays are as few as they can be: exactly so for up to ten kinds of
/// crop that hang together, a kind being crops that fit the same others; beyond that, groups are
/// formed without regard to the numbers, which takes fewer trays over the cells' own number than
/// there are groups. A crop that is named twice gets the cells of both.
///
/// ```
/// use sowbell::planning::{Basis, Garden, Wanted, lay_out};
/// let catalogue = sowbell::catalogue::Catalogue::embedded()?;
/// let wanted = |id: &str, cells| Some(Wanted { crop: catalogue.get(id)?, variety: None, cells });
/// let wanted: Vec<Wanted> =
///     [wanted("tomato", 12), wanted("cucumber", 6)].into_iter().flatten().collect();
/// let garden = Garden::new(Some("05-15".parse()?), Some("10-05".parse()?), Basis::Average)?;
/// let plan = lay_out(&wanted, garden, "2026-04-10".parse()?);
/// // Cucumbers sprawl, and start in a larger cell.
/// assert_eq!(plan.trays.len(), 2);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn lay_out<'c>(wanted: &[Wanted<'c>], garden: Garden, on: NaiveDate) -> TrayPlan<'c> {
    let mut plan = TrayPlan::default();
    let mut standing: Vec<Standing<'c>> = Vec::new();
    for Wanted { crop, variety, cells } in each_once(wanted) {
        match Seedling::due(crop, garden, on) {
            Ok(seedling) => {
                standing.push(Standing { seedling: Seedling { variety, ..seedling }, cells });
            }
            Err(left_out) => {
                let variety = variety.map(ToOwned::to_owned);
                plan.left_out.push(LeftOut { variety, ..left_out });
            }
        }
    }
    let place = |tray: &Tray<'_>| {
        let first = tray.crops.first()?;
        standing.iter().position(|standing| standing.seedling.is_of(&first.seedling))
    };
    plan.trays = CELL_TRAYS.into_iter().flat_map(|size| trays_of(size, &standing)).collect();
    plan.trays.sort_by_cached_key(|tray| (place(tray), std::cmp::Reverse(tray.used())));
    plan
}

/// Each crop and variety once, with all the cells that are wanted of it.
fn each_once<'c>(wanted: &[Wanted<'c>]) -> Vec<Wanted<'c>> {
    let mut all: Vec<Wanted<'c>> = Vec::new();
    for one in wanted.iter().filter(|wanted| wanted.cells > 0) {
        let same =
            |other: &&mut Wanted<'c>| other.crop.id == one.crop.id && other.variety == one.variety;
        match all.iter_mut().find(same) {
            Some(other) => other.cells = other.cells.saturating_add(one.cells).min(MOST_CELLS),
            None => all.push(Wanted { cells: one.cells.min(MOST_CELLS), ..*one }),
        }
    }
    all
}

/// The trays with cells of one size.
fn trays_of<'c>(size: CellTray, standing: &[Standing<'c>]) -> Vec<Tray<'c>> {
    let mut here: Vec<&Standing<'c>> =
        standing.iter().filter(|standing| standing.seedling.cell_tray == size).collect();
    // Where groups are formed one crop after another, crops that leave together come together.
    here.sort_by_key(|standing| standing.seedling.leaves_on());
    let cells: Vec<u32> = here.iter().map(|standing| standing.cells).collect();
    let fit = |one: usize, other: usize| match (here.get(one), here.get(other)) {
        (Some(one), Some(other)) => may_share_a_tray(&one.seedling, &other.seedling),
        _ => false,
    };
    let asked =
        |of: &Standing<'_>| standing.iter().position(|other| other.seedling.is_of(&of.seedling));
    let trays = fewest::fewest_trays(&cells, fit, size.cells());
    let tray = |shares: Vec<fewest::Share>| {
        let standing = |(at, cells): fewest::Share| Some(Standing { cells, ..**here.get(at)? });
        let mut crops: Vec<Standing<'c>> = shares.into_iter().filter_map(standing).collect();
        crops.sort_by_key(&asked);
        let common = Common::of(crops.iter().map(|standing| &standing.seedling))?;
        Some(Tray { cell_tray: size, crops, common })
    };
    trays.into_iter().filter_map(tray).collect()
}

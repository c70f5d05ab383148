//! What was reckoned of seed and soil, as programs read it.

use serde::Serialize;

use crate::planning::{
    Believe, CellCount, Emergence, GerminationRate, GerminationTest, Odds, RateBasis,
    SeedCountError, SoilVerdict, USUAL_LOSSES,
};

/// The figures of an answer; each only where the question was about it.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize)]
pub struct Figures {
    /// How many seeds to sow.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub seed_count: Option<SeedCountFigures>,
    /// What a germination test says.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub germination_test: Option<GerminationTest>,
    /// Days to come up.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub emergence: Option<EmergenceFigures>,
    /// Sowing by the temperature of the soil.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub soil: Option<SoilFigures>,
}

/// How many seeds to sow for so many plants.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SeedCountFigures {
    /// Plants wanted.
    pub plants: u32,
    /// Seeds to sow.
    pub seeds: u32,
    /// The chance of enough plants, from 0 to 1.
    pub chance: f64,
    /// The germination rate, from 0 to 1.
    pub rate: f64,
    /// Whether the rate is only an estimate.
    pub estimated: bool,
    /// How the rate is known.
    pub basis: RateBasis,
    /// The share of seedlings lost after they came up.
    pub losses: f64,
    /// The same in cells, where the crop is raised in them.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub in_cells: Option<CellCount>,
}

impl SeedCountFigures {
    /// The figures for `plants` plants with so many seeds to a cell, where there are cells, and
    /// the usual losses; rounded as far as they mean anything.
    ///
    /// # Errors
    /// [`SeedCountError`] where no number can be reckoned.
    pub fn reckoned(
        plants: u32,
        per_cell: Option<u32>,
        rate: GerminationRate,
    ) -> Result<Self, SeedCountError> {
        let odds = Odds::new(rate.rate, USUAL_LOSSES)?;
        let count = odds.seeds_for(plants)?;
        let in_cells = per_cell.map(|each| odds.cells_for(plants, each)).transpose()?;
        Ok(Self {
            plants,
            seeds: count.seeds,
            chance: thousandths(count.chance),
            rate: thousandths(rate.rate),
            estimated: rate.estimated(),
            basis: rate.basis,
            losses: USUAL_LOSSES,
            in_cells: in_cells.map(|cells| CellCount {
                chance: thousandths(cells.chance),
                empty_cells: thousandths(cells.empty_cells),
                ..cells
            }),
        })
    }
}

/// Days to come up at a temperature.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct EmergenceFigures {
    /// The temperature in degrees Celsius.
    pub soil_c: f64,
    /// What the trials say.
    pub result: Emergence,
}

impl EmergenceFigures {
    /// The figures, with days to a tenth.
    pub(super) fn new(soil_c: f64, result: Emergence) -> Self {
        let result = match result {
            Emergence::Days(days) => Emergence::Days(tenths(days)),
            other => other,
        };
        Self { soil_c: tenths(soil_c), result }
    }
}

/// Sowing in the ground by the temperature of the soil.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SoilFigures {
    /// The measured temperature in degrees Celsius.
    pub soil_c: f64,
    /// The verdict by the soil alone.
    pub by_soil: SoilVerdict,
    /// Whether to sow, by soil and date together.
    pub sow: bool,
    /// Which of the two rules.
    pub believe: Believe,
    /// The coolest soil that is warm enough, in degrees Celsius.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub warm_enough_c: Option<f64>,
}

/// A number rounded to a tenth.
pub(super) fn tenths(number: f64) -> f64 {
    (number * 10.0).round() / 10.0
}

fn thousandths(number: f64) -> f64 {
    (number * 1000.0).round() / 1000.0
}

/// A germination test, with its shares to a thousandth.
pub(super) fn rounded_test(test: GerminationTest) -> GerminationTest {
    GerminationTest {
        rate: thousandths(test.rate),
        low: thousandths(test.low),
        high: thousandths(test.high),
        ..test
    }
}

//! A crop's seed, and what it wants to come up.

use serde::Deserialize;

use super::sourced::{Sourced, Sources, Span};

/// Whether seed comes up in light or in the dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Light {
    /// Needs light: not covered.
    Light,
    /// Needs darkness: covered well.
    Dark,
    /// Comes up in either.
    Either,
}

/// Soil temperature for germination, in whole degrees Celsius.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SoilTemperature {
    /// Below this it hardly comes up.
    pub minimum: i64,
    /// The range in which it comes up best.
    pub optimum: Span,
    /// Above this it hardly comes up.
    pub maximum: i64,
    /// Where the figures come from.
    pub source: Sources,
}

/// A treatment before sowing or planting.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Treatment {
    /// Soak in water.
    Soak,
    /// Nick or file the seed coat.
    Nick,
    /// Chill moist.
    Chill,
    /// Sprout tubers in light.
    Chit,
    /// Grow slips from a root.
    RootSlips,
}

/// A treatment with the days it needs before sowing or planting.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PreTreatment {
    /// What is done.
    pub is: Treatment,
    /// How many days before sowing or planting it begins.
    pub lead_days: i64,
    /// Where the figure comes from.
    pub source: Sources,
}

/// What the trade states about the seed (or, of a tuber or clove, its planting depth).
#[derive(Debug, Clone, PartialEq, Eq, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Seed {
    /// Sowing or planting depth in millimetres; `[0, 0]` is the surface.
    pub depth_mm: Option<Sourced<Span>>,
    /// Light or dark.
    pub light: Option<Sourced<Light>>,
    /// Soil temperature.
    pub soil_c: Option<SoilTemperature>,
    /// Usual days to come up at a good temperature.
    pub emerge_days: Option<Sourced<Span>>,
    /// Treatments before sowing.
    #[serde(default)]
    pub pretreat: Vec<PreTreatment>,
    /// Seeds sown in each cell.
    pub per_cell: Option<Sourced<i64>>,
    /// Years that seed stays usable.
    pub life_years: Option<Sourced<i64>>,
}

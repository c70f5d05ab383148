//! A crop's harvest or bloom, and a second sowing for autumn.

use serde::{Deserialize, Serialize};

use super::sourced::{Sources, Span};

/// What days to harvest are counted from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CountedFrom {
    /// From sowing.
    Sowing,
    /// From setting out plants, or from planting sets, tubers or slips.
    SettingOut,
}

/// How a crop yields.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum HarvestKind {
    /// It ripens once.
    Once,
    /// It is picked over weeks.
    Continuing,
    /// It blooms over weeks.
    Bloom,
}

/// Harvest or bloom.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Harvest {
    /// Days to the first harvest or bloom in the season.
    pub days: Span,
    /// What the days are counted from.
    pub counted_from: CountedFrom,
    /// How it yields.
    pub kind: HarvestKind,
    /// How many weeks it yields.
    pub lasts_weeks: i64,
    /// Whether the harvest goes on after the first frosts.
    pub stands_frost: bool,
    /// Where the figures come from.
    pub source: Sources,
}

/// A second sowing for autumn.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Autumn {
    /// Length of the autumn harvest in days, for the count back from the first frost.
    pub harvest_days: i64,
    /// Where the figure comes from.
    pub source: Sources,
}

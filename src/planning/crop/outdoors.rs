//! A crop's life in the ground.

use serde::Deserialize;

use super::sourced::{Sourced, Sources, Span};

/// Direct sowing, in weeks from the average last frost.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DirectSowing {
    /// The usual range.
    pub is: Span,
    /// Earliest under cover or in soil warmed on purpose.
    pub earliest: i64,
    /// Last worthwhile spring sowing of a crop that summer heat ends.
    pub latest: Option<i64>,
    /// Where the figures come from.
    pub source: Sources,
}

/// Spacing in the ground, in centimetres.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Spacing {
    /// Between plants.
    pub plants: i64,
    /// Between rows.
    pub rows: i64,
    /// Where the figures come from.
    pub source: Sources,
}

/// What makes a crop run to seed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Bolting {
    /// A spell of cold on a young plant.
    Cold,
    /// Long days.
    LongDays,
    /// Heat.
    Heat,
}

/// Life in the ground.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Outdoors {
    /// Direct sowing; absent where a crop is never sown in place.
    pub sow_weeks: Option<DirectSowing>,
    /// Spacing.
    pub spacing_cm: Spacing,
    /// Days between repeat sowings, where those are usual.
    pub repeat_days: Option<Sourced<Span>>,
    /// Day heat in degrees Celsius that ends cropping or makes it bolt.
    pub heat_stops_c: Option<Sourced<i64>>,
    /// Whether it bears the heat and the rain of a hot season.
    #[serde(default)]
    pub bears_heat: bool,
    /// What makes it run to seed.
    #[serde(default)]
    pub bolts_from: Vec<Bolting>,
    /// Whether it forms bulbs by the length of the day.
    #[serde(default)]
    pub bulbs_by_daylength: bool,
}

//! Raising a crop indoors.

use serde::Deserialize;

use super::sourced::{Sources, Span};

/// Weeks from sowing indoors to setting out.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlantAge {
    /// The age at which the plant moves best.
    pub ideal: Span,
    /// The age at which it still moves with care.
    pub workable: Span,
    /// Where the ranges come from.
    pub source: Sources,
}

/// How long a plant may stay in the cell it was sown in, in weeks.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CellStay {
    /// The longest stay without potting up.
    pub longest: i64,
    /// The longest stay with one potting up, where that helps.
    pub potted_up: Option<i64>,
    /// How long it may be held beyond, in a cold spell.
    pub hold: i64,
    /// Where the figures come from.
    pub source: Sources,
}

/// Widths of cells and pots, in millimetres.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CellSize {
    /// The cell it is sown in.
    pub sow: i64,
    /// The pot it goes to when potted up.
    pub next: Option<i64>,
    /// Where the figures come from.
    pub source: Sources,
}

/// Raising a crop indoors.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Indoors {
    /// Age when set out.
    pub age_weeks: PlantAge,
    /// Longest stay in the cell.
    pub stay_weeks: CellStay,
    /// Cell size and where it goes next.
    pub cell_mm: CellSize,
}

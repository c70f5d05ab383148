//! The planting classes, and what follows from a class.

use serde::{Deserialize, Serialize};

use super::sourced::Span;

/// The planting class of the extension tables.
///
/// It says when to plant, relative to the average last spring frost, and where sources conflict
/// the catalogue holds the tenderer. Sources: Colorado State University Extension, `GardenNotes`
/// 720; University of Illinois Extension (Hentschel, 2017).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Class {
    /// Planted two to four weeks before the average last frost.
    VeryHardy,
    /// Planted up to two weeks before it.
    FrostTolerant,
    /// Planted on or after it.
    Tender,
    /// Planted one to two weeks after it.
    WarmLoving,
}

impl Class {
    /// The class's usual setting out, in weeks from the average last frost.
    ///
    /// Sources: Colorado State University Extension, `GardenNotes` 720 (very hardy 4 to 2 and
    /// frost-tolerant 2 to 0 weeks before; tender on or after, read as the first week after);
    /// University of Illinois Extension, 2017 (warm-loving 1 to 2 weeks after).
    #[must_use]
    pub fn setting_out(self) -> Span {
        let (low, high) = match self {
            Self::VeryHardy => (-4, -2),
            Self::FrostTolerant => (-2, 0),
            Self::Tender => (0, 1),
            Self::WarmLoving => (1, 2),
        };
        Span { low, high }
    }

    /// The class's earliest setting out under fleece or a cloche, in weeks from the average last
    /// frost.
    ///
    /// Sources: University of Illinois Extension, 2017, whose earlier dates (very hardy 6, frost
    /// tolerant 3 weeks before) are read here as the dates for covered plants; one week for the
    /// two frost-tender classes is common practice with no source.
    #[must_use]
    pub fn under_cover(self) -> i64 {
        match self {
            Self::VeryHardy => -6,
            Self::FrostTolerant => -3,
            Self::Tender => -1,
            Self::WarmLoving => 0,
        }
    }

    /// The class's killing air temperature in whole degrees Celsius.
    ///
    /// Source: Utah Department of Agriculture and Food (very hardy below 28 °F, semi-hardy 28 to
    /// 32 °F, tender about 32 °F, very tender no freezing); the 4 °C for very hardy plants is the
    /// next whole degree below 28 °F and deliberately careful.
    #[must_use]
    pub fn killed_at_c(self) -> i64 {
        match self {
            Self::VeryHardy => -4,
            Self::FrostTolerant => -2,
            Self::Tender | Self::WarmLoving => 0,
        }
    }

    /// The class's coldest night for a hardened plant, in whole degrees Celsius.
    ///
    /// Source: University of Maryland Extension, 2023, for tender seedlings (45 °F) and cucumber
    /// and melon (50 °F); the two hardy figures are common practice with no source.
    #[must_use]
    pub fn coldest_night_c(self) -> i64 {
        match self {
            Self::VeryHardy => -3,
            Self::FrostTolerant => 0,
            Self::Tender => 7,
            Self::WarmLoving => 10,
        }
    }
}

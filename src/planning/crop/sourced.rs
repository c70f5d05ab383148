//! Ranges, and where a number comes from.

use serde::{Deserialize, Serialize};

/// A closed range from `low` to `high`, written `[low, high]`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "(i64, i64)", into = "(i64, i64)")]
pub struct Span {
    /// The lower end, included.
    pub low: i64,
    /// The upper end, included.
    pub high: i64,
}

impl From<(i64, i64)> for Span {
    fn from((low, high): (i64, i64)) -> Self {
        Self { low, high }
    }
}

impl From<Span> for (i64, i64) {
    fn from(span: Span) -> Self {
        (span.low, span.high)
    }
}

impl Span {
    /// Whether `low` is not above `high`.
    #[must_use]
    pub fn ordered(self) -> bool {
        self.low <= self.high
    }

    /// Whether `inner` lies within this range.
    #[must_use]
    pub fn contains(self, inner: Span) -> bool {
        self.low <= inner.low && inner.high <= self.high
    }

    /// The middle, rounded down.
    #[must_use]
    pub fn middle(self) -> i64 {
        self.low.midpoint(self.high)
    }
}

/// Where a number comes from: one id of the catalogue's list of sources, or several.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(untagged)]
pub enum Sources {
    /// A single source.
    One(String),
    /// Several sources that together give the figure.
    Many(Vec<String>),
}

impl Sources {
    /// The ids, in the order they are written.
    pub fn ids(&self) -> impl Iterator<Item = &str> {
        let slice = match self {
            Self::One(id) => std::slice::from_ref(id),
            Self::Many(ids) => ids.as_slice(),
        };
        slice.iter().map(String::as_str)
    }
}

/// A quantity with its source.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sourced<T> {
    /// The quantity itself.
    pub is: T,
    /// Where it comes from.
    pub source: Sources,
}

//! How much of a seed packet comes up, by its age.

use serde::Serialize;

use super::crop::{Crop, CropId};

const STANDARDS: &str = include_str!("germination_standards.csv");

/// The share of fresh seed that is taken to come up where no standard lists the crop. An
/// assumption, near the middle of the standards for small seed; no source.
pub const ASSUMED_FRESH_RATE: f64 = 0.6;

/// Below this rate no number of seeds is reckoned: so weak a seed is replaced.
pub const LOWEST_RATE: f64 = 0.05;

/// How a rate is known.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(rename_all = "snake_case", tag = "is")]
pub enum RateBasis {
    /// The gardener gave it, as a packet states it.
    Stated,
    /// Counted in a germination test.
    Tested {
        /// How many sprouted.
        sprouted: u32,
        /// Of how many.
        tested: u32,
    },
    /// Estimated by the straight line from the US minimum standard for fresh seed.
    Standard {
        /// The standard, from 0 to 1.
        fresh: f64,
    },
    /// Estimated by the same line from [`ASSUMED_FRESH_RATE`].
    Assumed {
        /// The assumed rate of fresh seed, from 0 to 1.
        fresh: f64,
    },
}

/// A germination rate with how it is known.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct GerminationRate {
    /// The share of seeds that come up, from 0 to 1.
    pub rate: f64,
    /// How it is known.
    pub basis: RateBasis,
}

impl GerminationRate {
    /// Whether it is an estimate and not known.
    #[must_use]
    pub fn estimated(&self) -> bool {
        matches!(self.basis, RateBasis::Standard { .. } | RateBasis::Assumed { .. })
    }
}

/// The US minimum standard for fresh seed, from 0 to 1 (7 CFR 201.31), where it lists the crop.
#[must_use]
pub fn standard_rate(crop: &CropId) -> Option<f64> {
    STANDARDS.lines().find_map(|line| {
        let rest = line.strip_prefix(crop.as_str())?.strip_prefix(',')?;
        let percent: f64 = rest.rsplit(',').next()?.parse().ok()?;
        Some(percent / 100.0)
    })
}

/// The estimated rate of seed that is `age_years` old: the fresh rate, falling in a straight line
/// to half of itself at the end of the crop's seed life and to nothing at twice that. `None` where
/// the crop is not started from seed.
///
/// The line is a rule of our own, simple on purpose: the tables of seed life give years and no
/// percentages. The years are the catalogue's (Iowa State University Extension, 1999, for most
/// vegetables); the fresh rate is 7 CFR 201.31 or [`ASSUMED_FRESH_RATE`].
#[must_use]
pub fn estimated_rate(crop: &Crop, age_years: f64) -> Option<GerminationRate> {
    let life = f64::from(u32::try_from(crop.seed.life_years.as_ref()?.is).ok()?);
    let (fresh, basis) = match standard_rate(&crop.id) {
        Some(fresh) => (fresh, RateBasis::Standard { fresh }),
        None => (ASSUMED_FRESH_RATE, RateBasis::Assumed { fresh: ASSUMED_FRESH_RATE }),
    };
    let left = (1.0 - age_years.max(0.0) / (2.0 * life)).max(0.0);
    Some(GerminationRate { rate: fresh * left, basis })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;

    fn estimate(id: &str, age: f64) -> f64 {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let crop = catalogue.get(id).expect("listed");
        estimated_rate(crop, age).expect("from seed").rate
    }

    #[test]
    fn the_standards_that_are_quoted_elsewhere() {
        // Also given by the comment of the table of seed life.
        for (id, rate) in [("tomato", 0.75), ("carrot", 0.55), ("pepper", 0.55)] {
            assert_eq!(standard_rate(&CropId::new(id)), Some(rate), "{id}");
        }
        assert_eq!(standard_rate(&CropId::new("basil")), None);
        assert_eq!(standard_rate(&CropId::new("crop")), None, "the header is no crop");
        assert_eq!(standard_rate(&CropId::new("")), None);
    }

    #[test]
    fn every_standard_is_a_crop_of_the_catalogue_and_a_share() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let rows: Vec<&str> = STANDARDS.lines().filter(|line| !line.starts_with('#')).collect();
        for row in rows.iter().skip(1) {
            let id = row.split(',').next().expect("an id");
            assert!(catalogue.get(id).is_some(), "{id}");
            let rate = standard_rate(&CropId::new(id)).expect("a rate");
            // The regulation's own range: water cress 40, lettuce 80.
            assert!((0.4..=0.8).contains(&rate), "{id}: {rate}");
        }
    }

    #[test]
    fn half_is_left_at_the_end_of_life_and_nothing_at_twice_that() {
        // Tomato: 75 % fresh, four years of life.
        for (age, rate) in [(0.0, 0.75), (2.0, 0.5625), (4.0, 0.375), (8.0, 0.0), (30.0, 0.0)] {
            assert!((estimate("tomato", age) - rate).abs() < 1e-12, "{age}");
        }
        assert!((estimate("basil", 0.0) - 0.6).abs() < 1e-12);
        assert!((estimate("basil", 5.0) - 0.3).abs() < 1e-12);
    }
}

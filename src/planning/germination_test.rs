//! A germination test at home: seeds on damp paper, counted when they have sprouted.

use serde::Serialize;

/// The standard normal quantile of a two-sided 95 % interval.
const Z_95: f64 = 1.959_963_984_540_054;

/// The most seeds of a test that are believed.
pub const MOST_TESTED: u32 = 10_000;

/// A rate from fewer seeds than this says little: Iowa State University Extension, 1999, as
/// quoted by the University of Wisconsin-Madison gardening calendar.
pub const ENOUGH_TESTED: u32 = 20;

/// Seed of a lower rate than this is better replaced (the source of [`SeedAdvice`]).
pub const REPLACE_BELOW: f64 = 0.4;

/// What to do with seed of a tested rate.
///
/// Source: University of Wisconsin-Madison gardening calendar, after Iowa State University
/// Extension, 1999: below 40 % replace, 40 to 50 % sow thicker, 50 to 80 % sow by the number
/// needed. What lies above is sown as usual. A rate of exactly 50 % is sown by number, of exactly
/// 80 % too.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SeedAdvice {
    /// Below 40 %: get fresh seed.
    Replace,
    /// 40 to 50 %: sow thicker.
    SowThicker,
    /// 50 to 80 %: sow by the number needed.
    SowByNumber,
    /// Above 80 %: sow as usual.
    SowAsUsual,
}

/// Why a count is no germination test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum GerminationTestError {
    /// Not 1 to [`MOST_TESTED`] seeds.
    #[error("a test needs 1 to {MOST_TESTED} seeds")]
    Tested,
    /// More sprouted than were tested.
    #[error("more seeds sprouted than were tested")]
    MoreThanTested,
}

/// What a germination test says.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct GerminationTest {
    /// How many sprouted.
    pub sprouted: u32,
    /// Of how many.
    pub tested: u32,
    /// The share that sprouted, from 0 to 1.
    pub rate: f64,
    /// The lower end of the 95 % interval.
    pub low: f64,
    /// The upper end of the 95 % interval.
    pub high: f64,
    /// What to do with the seed.
    pub advice: SeedAdvice,
}

impl GerminationTest {
    /// The test in which `sprouted` of `tested` seeds sprouted, with Wilson's score interval
    /// (E.B. Wilson, 1927, J. Am. Stat. Assoc. 22:209-212).
    ///
    /// ```
    /// use sowbell::planning::{GerminationTest, SeedAdvice};
    /// let test = GerminationTest::new(4, 10)?;
    /// assert_eq!((test.rate, test.advice), (0.4, SeedAdvice::SowThicker));
    /// # Ok::<(), sowbell::planning::GerminationTestError>(())
    /// ```
    ///
    /// # Errors
    /// [`GerminationTestError`] where the numbers cannot be.
    pub fn new(sprouted: u32, tested: u32) -> Result<Self, GerminationTestError> {
        if !(1..=MOST_TESTED).contains(&tested) {
            return Err(GerminationTestError::Tested);
        }
        if sprouted > tested {
            return Err(GerminationTestError::MoreThanTested);
        }
        let (n, rate) = (f64::from(tested), f64::from(sprouted) / f64::from(tested));
        let squared = Z_95 * Z_95;
        let centre = (rate + squared / (2.0 * n)) / (1.0 + squared / n);
        let spread = (rate * (1.0 - rate) / n + squared / (4.0 * n * n)).sqrt();
        let half = Z_95 * spread / (1.0 + squared / n);
        // Whole numbers, so that a rate on the border of two rules is not moved by rounding.
        let advice = match (u64::from(sprouted) * 100, u64::from(tested)) {
            (part, whole) if part < 40 * whole => SeedAdvice::Replace,
            (part, whole) if part < 50 * whole => SeedAdvice::SowThicker,
            (part, whole) if part <= 80 * whole => SeedAdvice::SowByNumber,
            _ => SeedAdvice::SowAsUsual,
        };
        Ok(Self {
            sprouted,
            tested,
            rate,
            low: (centre - half).max(0.0),
            high: (centre + half).min(1.0),
            advice,
        })
    }

    /// Whether enough seeds were tested to rely on the rate.
    #[must_use]
    pub fn enough_tested(&self) -> bool {
        self.tested >= ENOUGH_TESTED
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn advice(sprouted: u32, tested: u32) -> SeedAdvice {
        GerminationTest::new(sprouted, tested).expect("a test").advice
    }

    #[test]
    fn four_of_ten() {
        // Published case: 10 seeds, 4 sprout, 40 %: sow thicker; test at least 20.
        let test = GerminationTest::new(4, 10).expect("a test");
        assert_eq!((test.rate, test.advice), (0.4, SeedAdvice::SowThicker));
        assert!(!test.enough_tested());
        // By hand with z^2 = 3.8415: centre (0.4 + 0.19207) / 1.38415 = 0.42775, half
        // 1.95996 * sqrt(0.024 + 0.0096036) / 1.38415 = 0.25957.
        assert!((test.low - 0.168_18).abs() < 5e-5, "{test:?}");
        assert!((test.high - 0.687_32).abs() < 5e-5, "{test:?}");
    }

    #[test]
    fn the_advice_changes_at_the_published_shares() {
        assert_eq!(advice(39, 100), SeedAdvice::Replace);
        assert_eq!(advice(40, 100), SeedAdvice::SowThicker);
        assert_eq!(advice(49, 100), SeedAdvice::SowThicker);
        assert_eq!(advice(50, 100), SeedAdvice::SowByNumber);
        assert_eq!(advice(80, 100), SeedAdvice::SowByNumber);
        assert_eq!(advice(81, 100), SeedAdvice::SowAsUsual);
        assert_eq!(advice(0, 20), SeedAdvice::Replace);
        assert!(GerminationTest::new(16, 20).expect("a test").enough_tested());
    }

    #[test]
    fn numbers_that_cannot_be() {
        assert_eq!(GerminationTest::new(12, 10), Err(GerminationTestError::MoreThanTested));
        assert_eq!(GerminationTest::new(0, 0), Err(GerminationTestError::Tested));
        assert_eq!(GerminationTest::new(1, 10_001), Err(GerminationTestError::Tested));
    }

    proptest! {
        #[test]
        fn the_interval_holds_the_rate(tested in 1_u32..=10_000, part in 0.0_f64..=1.0) {
            #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a part of tested")]
            let sprouted = (f64::from(tested) * part) as u32;
            let test = GerminationTest::new(sprouted, tested).expect("a test");
            prop_assert!(test.low <= test.rate + 1e-12 && test.rate <= test.high + 1e-12);
            prop_assert!(0.0 <= test.low && test.high <= 1.0);
        }
    }
}

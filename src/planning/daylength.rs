//! Which onions form bulbs at a latitude.

use serde::Serialize;

/// A class of bulb onions by the length of day at which they begin to form a bulb.
///
/// Short-day onions begin at 10 to 12 hours of daylight, intermediate ones at 12 to 14, long-day
/// ones at 14 or more. Source: Iowa State University Extension, Horticulture and Home Pest News,
/// "What is a long-day type onion variety?".
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum OnionClass {
    /// From 14 hours.
    LongDay,
    /// From 12 to 14 hours.
    Intermediate,
    /// From 10 to 12 hours.
    ShortDay,
}

/// The classes that form good bulbs at `latitude` (degrees from the equator, either side), the
/// first choice first; where two regions overlap both are given.
///
/// Long-day from about 40 degrees, intermediate from 32 to 42, short-day below 35. The hours are
/// published ([`OnionClass`]); these latitudes are common practice of the seed trade, with no
/// publication found.
///
/// ```
/// use sowbell::planning::{OnionClass, onion_classes};
/// assert_eq!(onion_classes(47), [OnionClass::LongDay]);
/// assert_eq!(onion_classes(-33), [OnionClass::Intermediate, OnionClass::ShortDay]);
/// ```
#[must_use]
pub fn onion_classes(latitude: i64) -> Vec<OnionClass> {
    let degrees = latitude.saturating_abs();
    let mut classes = Vec::new();
    if degrees >= 40 {
        classes.push(OnionClass::LongDay);
    }
    if (32..=42).contains(&degrees) {
        classes.push(OnionClass::Intermediate);
    }
    if degrees < 35 {
        classes.push(OnionClass::ShortDay);
    }
    classes
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_latitude_has_a_class_and_the_overlaps_have_two() {
        for latitude in -90..=90 {
            let classes = onion_classes(latitude);
            assert!((1..=2).contains(&classes.len()), "{latitude}: {classes:?}");
            assert_eq!(classes, onion_classes(-latitude), "both halves of the earth alike");
        }
        assert_eq!(onion_classes(41), [OnionClass::LongDay, OnionClass::Intermediate]);
        assert_eq!(onion_classes(37), [OnionClass::Intermediate]);
        assert_eq!(onion_classes(28), [OnionClass::ShortDay]);
    }
}

//! A reader's language and units.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};
use unic_langid::LanguageIdentifier;

/// Units of temperature and length.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Units {
    /// Degrees Celsius, centimetres, millimetres.
    Metric,
    /// Degrees Fahrenheit, inches, feet.
    Customary,
}

/// How a day is written in figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum DayOrder {
    /// "5/15".
    MonthFirst,
    /// "15/5".
    DayFirst,
}

/// A BCP 47 language tag, such as `en` or `en-GB`.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct LanguageTag(LanguageIdentifier);

/// A text that is not a language tag.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is not a language tag")]
pub struct LanguageError(pub String);

impl LanguageTag {
    /// The tag as a language identifier.
    #[must_use]
    pub fn identifier(&self) -> &LanguageIdentifier {
        &self.0
    }

    /// The language subtag alone, in lower case.
    #[must_use]
    pub fn language(&self) -> &str {
        self.0.language.as_str()
    }

    /// The units of the tag's region; English without a region counts as American, as the
    /// likely subtags of Unicode CLDR have it. The regions that measure weather in Fahrenheit
    /// are those of CLDR's `unitPreferenceData` (temperature, weather).
    #[must_use]
    pub fn units(&self) -> Units {
        const FAHRENHEIT: [&str; 5] = ["US", "BS", "BZ", "KY", "PW"];
        let region = self.0.region.as_ref().map(unic_langid::subtags::Region::as_str);
        match region {
            Some(region) if FAHRENHEIT.contains(&region) => Units::Customary,
            None if self.language() == "en" => Units::Customary,
            _ => Units::Metric,
        }
    }
}

impl LanguageTag {
    /// How the tag's region writes a day in figures; `None` without a region, and where both ways
    /// are usual. The United States and their territories write the month first, after the short
    /// date formats of Unicode CLDR; that Canada and the Philippines write both is from memory.
    #[must_use]
    pub fn day_order(&self) -> Option<DayOrder> {
        const MONTH_FIRST: [&str; 7] = ["US", "AS", "GU", "MP", "PR", "UM", "VI"];
        const BOTH: [&str; 2] = ["CA", "PH"];
        let region = self.0.region.as_ref().map(unic_langid::subtags::Region::as_str)?;
        if BOTH.contains(&region) {
            return None;
        }
        let month_first = MONTH_FIRST.contains(&region);
        Some(if month_first { DayOrder::MonthFirst } else { DayOrder::DayFirst })
    }
}

impl Default for LanguageTag {
    fn default() -> Self {
        let english = unic_langid::subtags::Language::from_bytes(b"en").unwrap_or_default();
        Self(LanguageIdentifier::from_parts(english, None, None, &[]))
    }
}

impl FromStr for LanguageTag {
    type Err = LanguageError;

    fn from_str(text: &str) -> Result<Self, LanguageError> {
        let known_form = text.parse::<LanguageIdentifier>().ok();
        // An empty language subtag parses as "undetermined", which is nobody's language.
        known_form
            .filter(|id| !id.language.is_empty())
            .map(Self)
            .ok_or_else(|| LanguageError(text.to_owned()))
    }
}

impl fmt::Display for LanguageTag {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl Serialize for LanguageTag {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(&self.0)
    }
}

impl<'de> Deserialize<'de> for LanguageTag {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_in_figures_are_written_as_the_region_has_it() {
        for (tag, order) in [
            ("en-US", Some(DayOrder::MonthFirst)),
            ("en-GB", Some(DayOrder::DayFirst)),
            ("en-AU", Some(DayOrder::DayFirst)),
            ("en-CA", None),
            ("en", None),
        ] {
            assert_eq!(tag.parse::<LanguageTag>().expect("a tag").day_order(), order, "{tag}");
        }
    }
}

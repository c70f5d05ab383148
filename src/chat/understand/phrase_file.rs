//! The form of a language's `phrases.toml`; the English file explains each list.

use std::collections::HashMap;

use serde::Deserialize;

use super::Intent;
use super::dates::Reading;
use super::quantities::{Needed, QuantityReading};
use crate::planning::{Kind, Step};

/// What the words of a question besides a rule's pattern may be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Rest {
    /// The rule does not hold.
    Never,
    /// Only the bare words of the list, dates and crops.
    Bare,
    /// Only words that the phrase lists know, dates and crops.
    Known,
    /// What the pattern's verb is about is a crop, or nothing: not "start my car".
    Object,
    /// Anything.
    Anything,
}

/// Where what a verb is about stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Objects {
    /// Behind the verb: "can I start cucumbers".
    #[default]
    Behind,
    /// Before it or behind it: "kann ich Gurken säen", "wann säe ich Gurken".
    Around,
}

/// How a day in figures, "5/1", is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Figures {
    /// The 5th of January; "5.1." as well.
    DayFirst,
    /// The month first: "5/1" is the first of May.
    MonthFirst,
    /// Only where a number above 12 makes it clear.
    #[default]
    Unclear,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawPhrases {
    #[serde(default)]
    pub objects: Objects,
    #[serde(default)]
    pub spelling: RawSpelling,
    #[serde(default)]
    pub follow_ups: RawFollowUps,
    pub classes: Vec<RawClass>,
    pub small_words: String,
    pub bare_words: String,
    pub ordinary_words: String,
    pub names: RawNames,
    pub calendar: RawCalendar,
    pub dates: Vec<RawDate>,
    pub kinds: Vec<RawKind>,
    pub steps: Vec<RawStep>,
    pub intents: Vec<RawIntent>,
    pub frost: RawFrost,
    pub sowing: RawSowing,
    pub figures: RawFigures,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawClass {
    pub name: String,
    pub ways: Vec<String>,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(super) struct RawSpelling {
    pub stands_for: HashMap<String, String>,
    pub fold: Vec<(String, String)>,
    pub elisions: String,
    pub compound_fronts: String,
    pub compound_links: String,
    pub compound_tails: String,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(super) struct RawFollowUps {
    pub pronouns: String,
    pub patterns: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawNames {
    pub forgiving: String,
    pub plural_endings: Vec<(String, String)>,
    pub and: String,
    pub before: String,
    pub behind: String,
    pub other_plants: String,
    pub inside: String,
    #[serde(default)]
    pub never_ending: String,
    pub asked_after: Vec<String>,
    #[serde(default)]
    pub asked_before: Vec<String>,
    pub not_crops: Vec<String>,
    #[serde(default)]
    pub only_behind: HashMap<String, String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawCalendar {
    pub months: Vec<String>,
    pub weekdays: Vec<String>,
    pub units: Vec<String>,
    pub unclear: String,
    pub numbers: HashMap<String, u32>,
    pub day_endings: String,
    #[serde(default)]
    pub figures: Figures,
    #[serde(default)]
    pub not_dates: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawDate {
    pub read_as: Reading,
    pub patterns: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawKind {
    pub is: Kind,
    pub patterns: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawStep {
    pub is: Step,
    pub patterns: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawIntent {
    pub is: Intent,
    #[serde(default)]
    pub when: bool,
    pub with_crop: Rest,
    pub without_crop: Rest,
    /// The quantity that the question must give.
    pub needs: Option<Needed>,
    #[serde(default)]
    pub leans: bool,
    #[serde(default)]
    pub unless: Vec<String>,
    pub patterns: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawFigures {
    pub percent: String,
    pub degrees: String,
    pub celsius: String,
    pub fahrenheit: String,
    pub numbers: HashMap<String, u32>,
    pub quantities: Vec<RawQuantity>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawQuantity {
    pub read_as: QuantityReading,
    pub patterns: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawFrost {
    pub words: String,
    pub last: Vec<String>,
    pub first: Vec<String>,
    pub free: Vec<String>,
    pub average: Vec<String>,
    pub trusted: Vec<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawSowing {
    pub came_up: Vec<String>,
    pub not_up: Vec<String>,
    #[serde(default)]
    pub lost: Vec<String>,
    #[serde(default)]
    pub lost_some: Vec<String>,
    #[serde(default)]
    pub lost_unless: Vec<String>,
    pub unless: Vec<String>,
    #[serde(default)]
    pub day_of_start: Vec<String>,
    pub not_counts: String,
    pub articles: String,
}

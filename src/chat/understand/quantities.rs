//! The quantities that a question gives: plants wanted, temperature, seed age and so on.

use std::collections::HashMap;

use serde::Deserialize;

use super::QUESTION_CHARACTERS;
use super::figure_line::FigureLine;
use super::pattern::{Held, Pattern};
use super::phrases::Phrases;
use crate::club::Units;

pub use super::figure_line::Figure;

/// How a phrase with figures is read. The phrase lists name these readings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum QuantityReading {
    /// "4 of 10": so many sprouted of so many.
    Sprouted,
    /// A temperature in degrees Celsius.
    Celsius,
    /// A temperature in degrees Fahrenheit.
    Fahrenheit,
    /// A temperature without its scale.
    Degrees,
    /// A temperature of a room, without its scale; only a sowing is told with it.
    RoomDegrees,
    /// A germination rate in percent.
    Percent,
    /// The age of seed in years.
    SeedYears,
    /// The year that seed is from.
    SeedFrom,
    /// "Last year's seed": so many years old.
    SeedAged(u32),
    /// Seeds to a cell.
    PerCell,
    /// Plants wanted.
    Plants,
    /// A figure that is none of these: "5 inches", "in 3 weeks".
    PassedOver,
}

/// A quantity without which a question is not of some intent.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Needed {
    Temperature,
    Plants,
    Sprouted,
}

/// The scale of a temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scale {
    /// Degrees Celsius.
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

/// A temperature as it was written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Temperature {
    /// The figure.
    pub degrees: Figure,
    /// The scale, where it was written.
    pub scale: Option<Scale>,
}

impl Temperature {
    /// The temperature in degrees Celsius; without a scale it is in the reader's.
    ///
    /// Where only the other scale makes it the temperature of soil that somebody asks about, that
    /// one is meant: nobody sows at 60 °C, and nobody asks about sowing at 14 °F.
    #[must_use]
    pub fn celsius(self, units: Units) -> f64 {
        let degrees = self.degrees.value();
        let scale = self.scale.unwrap_or(match units {
            Units::Metric if (45.0..=110.0).contains(&degrees) => Scale::Fahrenheit,
            Units::Customary if (0.0..32.0).contains(&degrees) => Scale::Celsius,
            Units::Metric => Scale::Celsius,
            Units::Customary => Scale::Fahrenheit,
        });
        match scale {
            Scale::Celsius => degrees,
            Scale::Fahrenheit => (degrees - 32.0) / 1.8,
        }
    }
}

/// The age of seed as it was written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SeedAge {
    /// So many years old.
    Years(Figure),
    /// From the packet of this year.
    From(i32),
}

/// The quantities of a question; each as it was written, possible or not.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Quantities {
    /// A temperature of soil or air.
    pub temperature: Option<Temperature>,
    /// A temperature of the room that seed is raised in, written without its scale.
    pub room: Option<Temperature>,
    /// Plants wanted.
    pub plants: Option<Figure>,
    /// The age of the seed.
    pub seed_age: Option<SeedAge>,
    /// The germination rate in percent.
    pub percent: Option<Figure>,
    /// How many sprouted, of how many.
    pub sprouted: Option<(Figure, Figure)>,
    /// Seeds to a cell.
    pub per_cell: Option<Figure>,
}

impl Quantities {
    /// Whether the question gives this quantity.
    pub(crate) fn give(&self, needed: Needed) -> bool {
        match needed {
            Needed::Temperature => self.temperature.is_some(),
            Needed::Plants => self.plants.is_some(),
            Needed::Sprouted => self.sprouted.is_some(),
        }
    }

    fn take(&mut self, reading: QuantityReading, held: Held, line: &FigureLine) {
        let figure = || line.figure(held.figure?);
        let temperature = |scale| figure().map(|degrees| Temperature { degrees, scale });
        match reading {
            QuantityReading::Sprouted => {
                let total = || line.figure(held.total?);
                self.sprouted = self.sprouted.or_else(|| figure().zip(total()));
            }
            QuantityReading::Celsius => {
                self.temperature = self.temperature.or_else(|| temperature(Some(Scale::Celsius)));
            }
            QuantityReading::Fahrenheit => {
                let fahrenheit = || temperature(Some(Scale::Fahrenheit));
                self.temperature = self.temperature.or_else(fahrenheit);
            }
            QuantityReading::Degrees => {
                self.temperature = self.temperature.or_else(|| temperature(None));
            }
            QuantityReading::RoomDegrees => self.room = self.room.or_else(|| temperature(None)),
            QuantityReading::Percent => self.percent = self.percent.or_else(figure),
            QuantityReading::SeedYears => {
                self.seed_age = self.seed_age.or_else(|| figure().map(SeedAge::Years));
            }
            QuantityReading::SeedFrom => {
                let year = || i32::try_from(line.figure(held.year?)?.whole()?).ok();
                self.seed_age = self.seed_age.or_else(|| year().map(SeedAge::From));
            }
            QuantityReading::SeedAged(years) => {
                let years = SeedAge::Years(Figure::of(years));
                self.seed_age = self.seed_age.or(Some(years));
            }
            QuantityReading::PerCell => self.per_cell = self.per_cell.or_else(figure),
            QuantityReading::Plants => self.plants = self.plants.or_else(figure),
            QuantityReading::PassedOver => {}
        }
    }
}

/// A phrase with figures and its reading.
#[derive(Debug)]
pub(crate) struct QuantityPhrase {
    /// How it is read.
    pub reading: QuantityReading,
    /// How it is written.
    pub patterns: Vec<Pattern>,
}

/// The words that signs stand for.
#[derive(Debug)]
pub(crate) struct Signs {
    /// What "%" stands for.
    pub percent: String,
    /// What "°" stands for.
    pub degrees: String,
    /// The scale of "℃".
    pub celsius: String,
    /// The scale of "℉".
    pub fahrenheit: String,
}

/// How a language writes quantities.
#[derive(Debug)]
pub(crate) struct FigurePhrases {
    /// The words that signs stand for.
    pub signs: Signs,
    /// Numbers as words, by the number of the word.
    pub numbers: HashMap<u32, u32>,
    /// The phrases, the more telling ones first.
    pub quantities: Vec<QuantityPhrase>,
}

impl Phrases {
    /// The quantities that a question gives. Each figure is read once, by the first phrase of the
    /// list that it fits.
    pub(crate) fn quantities_in(&self, text: &str) -> Quantities {
        self.read_quantities(&mut FigureLine::new(text, QUESTION_CHARACTERS, self)).0
    }

    /// The temperature that is told of a sowing, and the text without its figure.
    pub(crate) fn temperature_told(
        &self,
        text: &str,
        limit: usize,
    ) -> (Option<Temperature>, String) {
        let mut line = FigureLine::new(text, limit, self);
        let (quantities, place) = self.read_quantities(&mut line);
        let told = quantities.temperature.or(quantities.room);
        match place.filter(|_| told.is_some()) {
            Some(place) => (told, line.without(place)),
            None => (None, text.to_owned()),
        }
    }

    /// The quantities, and the place of the figure of the temperature.
    fn read_quantities(&self, line: &mut FigureLine) -> (Quantities, Option<u32>) {
        let mut quantities = Quantities::default();
        let mut place = None;
        for phrase in &self.figures.quantities {
            for at in 0..line.len() {
                let ends = phrase.patterns.iter().flat_map(|pattern| pattern.ends(&*line, at));
                if let Some((_, held)) = ends.min_by_key(|(end, _)| *end) {
                    let before = quantities;
                    quantities.take(phrase.reading, held, line);
                    let new_room =
                        quantities.temperature.is_none() && quantities.room != before.room;
                    if quantities.temperature != before.temperature || new_room {
                        place = held.figure;
                    }
                    line.used(held);
                }
            }
        }
        (quantities, place)
    }
}

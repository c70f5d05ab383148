//! That a season is too short for a crop, and what would help.

use chrono::{Datelike, NaiveDate, TimeDelta};

use crate::planning::{Crop, Season};
use crate::wording::Speech;

/// The temperature in degrees Celsius at which cloves are chilled where no winter does it: that of
/// a refrigerator. Common practice of growers in warm winters, no source.
const CHILLED_AT_C: i64 = 4;

/// Weeks for which they are chilled. Common practice likewise: growers name six to eight.
const CHILLED_WEEKS: (i64, i64) = (6, 8);

/// Whether the crop is planted in autumn for the cold of the winter that follows.
pub(super) fn needs_cold(crop: &Crop) -> bool {
    crop.autumn_planting_weeks.is_some()
}

/// A crop that cannot make it in a season on its own.
pub(super) struct TooShort<'a> {
    pub crop: &'a Crop,
    pub season: Option<Season>,
    /// The day asked about.
    pub on: NaiveDate,
    pub speech: &'a Speech,
}

impl TooShort<'_> {
    /// The verdict.
    pub(super) fn verdict(&self) -> String {
        let about = self.speech.about(&self.crop.id);
        if self.season.is_some_and(|season| season.dry.is_some()) && needs_cold(self.crop) {
            return self.speech.voice.say("verdict-no-cold", &about);
        }
        self.speech.voice.say("verdict-season-too-short", &about)
    }

    /// What would help: time or grown plants and, where heat is in the way and not frost, no
    /// tunnel; for what lacks cold, that cold.
    pub(super) fn helps(&self) -> String {
        let voice = &self.speech.voice;
        let Some(dry) = self.season.and_then(|season| season.dry) else {
            return self.speech.plain("instead-faster-variety");
        };
        if !needs_cold(self.crop) {
            return self.speech.plain("instead-before-heat");
        }
        let (low, high) = CHILLED_WEEKS;
        // In time for the coolest weeks, and not before the chilling is over.
        let chilled = self.on + TimeDelta::weeks(low);
        let plant = (0..3)
            .filter_map(|years| dry.coolest_from.with_year(dry.coolest_from.year() + years))
            .find(|day| *day >= chilled)
            .unwrap_or(dry.coolest_from);
        let date = if plant.year() == self.on.year() {
            voice.date(plant)
        } else {
            voice.date_with_year(plant)
        };
        let args = self
            .speech
            .about(&self.crop.id)
            .text("cold", voice.temperature(CHILLED_AT_C))
            .text("weeks", voice.weeks_range(7 * low, 7 * high))
            .text("date", date);
        voice.say("instead-chill-cloves", &args)
    }
}

//! The stretch from one last frost to the next first frost.

use chrono::{Datelike, Days, NaiveDate};

use super::frost_free::DrySeason;
use super::garden::{FrostDates, Garden};
use super::place::{Cover, Place};

/// One growing season of a garden: from the average last spring frost to the first autumn frost
/// that follows. In the southern hemisphere it spans the new year.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Season {
    /// The year of the last spring frost; it names the season.
    pub year: i32,
    /// The average last spring frost; without frost, the day on which planting begins.
    pub last_frost: NaiveDate,
    /// The date the member trusts, where one was stated.
    pub trusted: Option<NaiveDate>,
    /// The date after which about one spring in ten still freezes.
    pub ten_percent: NaiveDate,
    /// The first autumn frost, where one ends the season.
    pub first_frost: Option<NaiveDate>,
    /// Where seedlings are raised for it.
    pub place: Option<Place>,
    /// What covers the beds in it.
    pub cover: Option<Cover>,
    /// Where no frost bounds it, what does.
    pub dry: Option<DrySeason>,
}

impl Season {
    /// The season whose last spring frost falls in `year`.
    #[must_use]
    pub fn of_year(frost: FrostDates, year: i32) -> Self {
        Self {
            year,
            last_frost: frost.average_last(year),
            trusted: frost.trusted_last(year),
            ten_percent: frost.ten_percent_last(year),
            first_frost: frost.first_after_last(year),
            place: None,
            cover: None,
            dry: None,
        }
    }

    /// The same season with the seed-raising place and the cover of a garden.
    #[must_use]
    pub fn in_garden(self, garden: Garden) -> Self {
        Self { place: garden.place, cover: garden.cover, ..self }
    }

    /// The season that matters on `date`: the earliest whose end has not passed.
    #[must_use]
    pub fn that_matters(frost: FrostDates, date: NaiveDate) -> Self {
        let earlier = Self::of_year(frost, date.year() - 1);
        let this = Self::of_year(frost, date.year());
        if earlier.end() >= date {
            earlier
        } else if this.end() >= date {
            this
        } else {
            Self::of_year(frost, date.year() + 1)
        }
    }

    /// The last day of the season: the first autumn frost, or the day before a year has passed
    /// where none ends it; without any frost, the day before the heat is back.
    #[must_use]
    pub fn end(&self) -> NaiveDate {
        if let Some(dry) = self.dry {
            return dry.heat - Days::new(1);
        }
        self.first_frost.unwrap_or(self.last_frost + Days::new(300))
    }

    /// The season before.
    #[must_use]
    pub fn before(frost: FrostDates, season: &Self) -> Self {
        Self::of_year(frost, season.year - 1)
    }

    /// The season after.
    #[must_use]
    pub fn after(frost: FrostDates, season: &Self) -> Self {
        Self::of_year(frost, season.year + 1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::planning::{Basis, FrostDates};

    fn frost(last: &str, first: &str) -> FrostDates {
        let day = |text: &str| text.parse().expect("a month-day");
        FrostDates::new(day(last), Some(day(first)), Basis::Average).expect("frost dates")
    }

    fn date(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    #[test]
    fn the_season_that_matters_is_the_earliest_that_has_not_ended() {
        let north = frost("05-15", "10-05");
        assert_eq!(Season::that_matters(north, date("2026-01-10")).year, 2026);
        assert_eq!(Season::that_matters(north, date("2026-10-05")).year, 2026);
        assert_eq!(Season::that_matters(north, date("2026-10-06")).year, 2027);
        let south = frost("09-15", "05-01");
        assert_eq!(Season::that_matters(south, date("2026-01-10")).year, 2025);
        assert_eq!(Season::that_matters(south, date("2026-05-02")).year, 2026);
        let season = Season::that_matters(south, date("2026-12-31"));
        assert_eq!(season.first_frost, Some(date("2027-05-01")));
    }
}

//! A garden's frost dates.

use chrono::{Datelike, Days, NaiveDate};
use serde::{Deserialize, Serialize};

use super::frost_free;
use super::hold::Hold;
use super::month_day::MonthDay;
use super::months::HotAndWet;
use super::place::{Cover, Place};
use super::season::Season;

/// Days between the average last frost and the date after which one spring in ten still freezes.
///
/// Source: W.J. Moyer, ESSA and University of Delaware, 1970: 32 °F at Georgetown has its median
/// on 25 April and its 10 % date on 10 May. Used only where a garden's own spread is unknown.
pub const RISK_MARGIN_DAYS: u64 = 15;

/// What a member's frost dates are.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// The average: one year in two still freezes after the spring date.
    Average,
    /// The date the member trusts: about one year in ten still freezes after it.
    Trusted,
}

/// A garden's frost, as its gardener stated it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Frost {
    /// It does not freeze here.
    Free,
    /// It freezes in winter.
    Dates(FrostDates),
}

/// The last spring frost and the first autumn frost.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct FrostDates {
    last: MonthDay,
    first: Option<MonthDay>,
    basis: Basis,
}

/// Why two dates are not a garden's frost dates.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum FrostError {
    /// Both dates are the same day.
    #[error("the last spring frost and the first autumn frost are the same day: check both dates")]
    SameDay,
    /// Fewer than [`FrostDates::SHORTEST_SEASON_DAYS`] days lie between them.
    #[error(
        "only {0} days lie between the last spring frost and the first autumn frost: check both dates"
    )]
    TooShort(i64),
    /// An autumn frost without a spring frost.
    #[error(
        "a first autumn frost needs a last spring frost before it: give both dates, or none for both"
    )]
    OnlyAutumn,
}

impl FrostDates {
    /// The shortest season that is taken for a garden's, in days; fewer is a slip of the pen.
    pub const SHORTEST_SEASON_DAYS: i64 = 14;

    /// The season lengths in days that are kept without asking first. A shorter or longer one is
    /// more often two dates that were read wrongly than a garden's season (our own margin, from no
    /// published figure); mild coasts have longer ones.
    pub const LIKELY_SEASON_DAYS: std::ops::RangeInclusive<i64> = 30..=330;

    /// Frost dates from the last spring frost to the first autumn frost (or `None` where no
    /// autumn frost ends the season).
    ///
    /// # Errors
    /// [`FrostError::SameDay`] and [`FrostError::TooShort`] where no season fits in between.
    pub fn new(last: MonthDay, first: Option<MonthDay>, basis: Basis) -> Result<Self, FrostError> {
        if let Some(first) = first {
            let spring = last.in_year(2025);
            let days = first.next_after(spring).signed_duration_since(spring).num_days();
            if last == first {
                return Err(FrostError::SameDay);
            }
            if days < Self::SHORTEST_SEASON_DAYS {
                return Err(FrostError::TooShort(days));
            }
        }
        Ok(Self { last, first, basis })
    }

    /// The spring date as stated.
    #[must_use]
    pub fn stated_last(self) -> MonthDay {
        self.last
    }

    /// The autumn date as stated.
    #[must_use]
    pub fn stated_first(self) -> Option<MonthDay> {
        self.first
    }

    /// Whether the dates are averages or trusted.
    #[must_use]
    pub fn basis(self) -> Basis {
        self.basis
    }

    /// The same dates read on another basis.
    #[must_use]
    pub fn with_basis(self, basis: Basis) -> Self {
        Self { basis, ..self }
    }

    /// The average last spring frost in `year`; from a trusted date, fifteen days before it.
    #[must_use]
    pub fn average_last(self, year: i32) -> NaiveDate {
        let stated = self.last.in_year(year);
        match self.basis {
            Basis::Average => stated,
            Basis::Trusted => stated - Days::new(RISK_MARGIN_DAYS),
        }
    }

    /// The date in spring that the member trusts, where one was stated.
    #[must_use]
    pub fn trusted_last(self, year: i32) -> Option<NaiveDate> {
        (self.basis == Basis::Trusted).then(|| self.last.in_year(year))
    }

    /// The date after which about one spring in ten still freezes: stated, or average plus
    /// [`RISK_MARGIN_DAYS`].
    #[must_use]
    pub fn ten_percent_last(self, year: i32) -> NaiveDate {
        match self.basis {
            Basis::Average => self.last.in_year(year) + Days::new(RISK_MARGIN_DAYS),
            Basis::Trusted => self.last.in_year(year),
        }
    }

    /// The first autumn frost that follows the spring frost of `year`, as stated.
    #[must_use]
    pub fn first_after_last(self, year: i32) -> Option<NaiveDate> {
        Some(self.first?.next_after(self.last.in_year(year)))
    }

    /// Days from the last spring frost to the first autumn frost, in a common year.
    #[must_use]
    pub fn season_days(self) -> Option<i64> {
        let spring = self.last.in_year(2025);
        Some(self.first_after_last(2025)?.signed_duration_since(spring).num_days())
    }

    /// Whether the season spans the new year, as in the southern hemisphere.
    #[must_use]
    pub fn spans_new_year(self) -> bool {
        self.first_after_last(2025).is_some_and(|first| first.year() != 2025)
    }
}

/// What planning needs to know of a garden.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Garden {
    /// Its frost.
    pub frost: Frost,
    /// Where its seedlings are raised, where that was said; otherwise light enough is assumed.
    pub place: Option<Place>,
    /// What covers its beds, where something does.
    pub cover: Option<Cover>,
    /// The cold spell that is waited out in it, now or lately.
    pub hold: Option<Hold>,
    /// The hot and the wet months, which decide where it does not freeze.
    pub months: Option<HotAndWet>,
}

impl Garden {
    /// A garden without frost.
    pub const FROST_FREE: Self = Self::of(Frost::Free);

    /// A garden with this frost, of which nothing else is known.
    #[must_use]
    pub const fn of(frost: Frost) -> Self {
        Self { frost, place: None, cover: None, hold: None, months: None }
    }

    /// The same garden with this seed-raising place and this cover.
    #[must_use]
    pub fn with(self, place: Option<Place>, cover: Option<Cover>) -> Self {
        Self { place, cover, ..self }
    }

    /// The same garden with this cold spell waited out.
    #[must_use]
    pub fn holding(self, hold: Option<Hold>) -> Self {
        Self { hold, ..self }
    }

    /// The same garden with these hot and wet months.
    #[must_use]
    pub fn with_months(self, months: Option<HotAndWet>) -> Self {
        Self { months, ..self }
    }

    /// The season that begins in `year`, or `None` where nothing tells one season from the next.
    #[must_use]
    pub fn season_of(self, year: i32) -> Option<Season> {
        match self.frost {
            Frost::Dates(frost) => Some(Season::of_year(frost, year).in_garden(self)),
            Frost::Free => Some(frost_free::season(self.months?, year)?.in_garden(self)),
        }
    }

    /// The season that matters on `date`: the earliest whose end has not passed.
    #[must_use]
    pub fn season_on(self, date: NaiveDate) -> Option<Season> {
        let mut years = date.year() - 1..=date.year() + 1;
        years.find_map(|year| self.season_of(year).filter(|season| season.end() >= date))
    }

    /// A garden from the two flags that the command line and members give: a month-day, or
    /// `None` for a frost that does not come.
    ///
    /// # Errors
    /// As [`FrostDates::new`], and [`FrostError::OnlyAutumn`] for an autumn frost alone.
    pub fn new(
        last: Option<MonthDay>,
        first: Option<MonthDay>,
        basis: Basis,
    ) -> Result<Self, FrostError> {
        match (last, first) {
            (None, None) => Ok(Self::FROST_FREE),
            (None, Some(_)) => Err(FrostError::OnlyAutumn),
            (Some(last), first) => {
                FrostDates::new(last, first, basis).map(|dates| Self::of(Frost::Dates(dates)))
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> MonthDay {
        text.parse().expect("a month-day")
    }

    #[test]
    fn ten_percent_is_fifteen_days_after_the_average() {
        // W.J. Moyer, ESSA and University of Delaware, 1970: median 25 April, 10 % on 10 May.
        let georgetown =
            FrostDates::new(day("04-25"), Some(day("10-20")), Basis::Average).expect("frost dates");
        assert_eq!(MonthDay::from(georgetown.ten_percent_last(1970)), day("05-10"));
        let trusted = georgetown.with_basis(Basis::Trusted);
        assert_eq!(MonthDay::from(trusted.average_last(1970)), day("04-10"));
        assert_eq!(MonthDay::from(trusted.ten_percent_last(1970)), day("04-25"));
    }

    #[test]
    fn dates_without_a_season_are_refused() {
        let dates = |last, first| FrostDates::new(day(last), Some(day(first)), Basis::Average);
        assert_eq!(dates("05-15", "05-15"), Err(FrostError::SameDay));
        assert_eq!(dates("05-15", "05-20"), Err(FrostError::TooShort(5)));
        assert_eq!(dates("12-28", "01-05"), Err(FrostError::TooShort(8)));
        assert!(dates("09-15", "05-01").expect("southern").spans_new_year());
    }

    #[test]
    fn one_frost_alone() {
        assert_eq!(
            Garden::new(None, Some(day("10-05")), Basis::Average),
            Err(FrostError::OnlyAutumn)
        );
        assert!(Garden::new(Some(day("02-01")), None, Basis::Average).is_ok());
        assert_eq!(Garden::new(None, None, Basis::Average), Ok(Garden::FROST_FREE));
    }
}

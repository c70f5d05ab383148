//! A day that comes round every year.

use std::fmt;
use std::str::FromStr;

use chrono::{Datelike, NaiveDate};
use serde::{Deserialize, Serialize};

/// A month and a day without a year: how gardeners state a frost date.
///
/// Ordered by its place in the calendar year. The 29th of February is a valid month-day; in a
/// common year it falls on the 28th.
///
/// ```
/// use sowbell::planning::MonthDay;
/// let last_frost: MonthDay = "05-15".parse()?;
/// assert_eq!(last_frost.in_year(2026).to_string(), "2026-05-15");
/// let leap: MonthDay = "02-29".parse()?;
/// assert_eq!(leap.in_year(2026).to_string(), "2026-02-28");
/// # Ok::<(), sowbell::planning::MonthDayError>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct MonthDay {
    month: u32,
    day: u32,
}

/// Why a text is not a month-day.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum MonthDayError {
    /// The text does not have the form `MM-DD`.
    #[error("'{0}' is not a month and day: write it as MM-DD, for example 05-15")]
    Form(String),
    /// The form is right but the calendar has no such day.
    #[error("the calendar has no day {0}: write it as MM-DD, for example 05-15")]
    NoSuchDay(String),
}

impl MonthDay {
    /// The month-day of `month` (1 to 12) and `day` (1 to 31), or `None` where the calendar of a
    /// leap year has no such day.
    #[must_use]
    pub fn new(month: u32, day: u32) -> Option<Self> {
        NaiveDate::from_ymd_opt(2024, month, day).map(|_| Self { month, day })
    }

    /// The month, 1 to 12.
    #[must_use]
    pub fn month(self) -> u32 {
        self.month
    }

    /// The day of the month, 1 to 31.
    #[must_use]
    pub fn day(self) -> u32 {
        self.day
    }

    /// The date in `year`; the 29th of February falls on the 28th in a common year.
    #[must_use]
    pub fn in_year(self, year: i32) -> NaiveDate {
        NaiveDate::from_ymd_opt(year, self.month, self.day)
            .or_else(|| NaiveDate::from_ymd_opt(year, self.month, 28))
            .unwrap_or(if year < 0 { NaiveDate::MIN } else { NaiveDate::MAX })
    }

    /// The first occurrence strictly after `date`.
    #[must_use]
    pub fn next_after(self, date: NaiveDate) -> NaiveDate {
        let same_year = self.in_year(date.year());
        if same_year > date { same_year } else { self.in_year(date.year() + 1) }
    }
}

impl From<NaiveDate> for MonthDay {
    fn from(date: NaiveDate) -> Self {
        Self { month: date.month(), day: date.day() }
    }
}

impl FromStr for MonthDay {
    type Err = MonthDayError;

    fn from_str(text: &str) -> Result<Self, MonthDayError> {
        let form = || MonthDayError::Form(text.to_owned());
        let (month, day) = text.trim().split_once('-').ok_or_else(form)?;
        let number = |part: &str| {
            let plain = (1..=2).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
            if plain { part.parse::<u32>().ok() } else { None }
        };
        let (month, day) = number(month).zip(number(day)).ok_or_else(form)?;
        Self::new(month, day).ok_or_else(|| MonthDayError::NoSuchDay(text.trim().to_owned()))
    }
}

impl fmt::Display for MonthDay {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}-{:02}", self.month, self.day)
    }
}

impl TryFrom<String> for MonthDay {
    type Error = MonthDayError;

    fn try_from(text: String) -> Result<Self, MonthDayError> {
        text.parse()
    }
}

impl From<MonthDay> for String {
    fn from(value: MonthDay) -> Self {
        value.to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_month_and_day_are_taken() {
        for bad in ["", "5", "May 15", "05/15", "2026-05-15", "+5-15", "05-1x", "005-15"] {
            assert!(matches!(bad.parse::<MonthDay>(), Err(MonthDayError::Form(_))), "{bad}");
        }
        for absent in ["02-30", "13-01", "00-10", "04-31", "06-00"] {
            assert!(
                matches!(absent.parse::<MonthDay>(), Err(MonthDayError::NoSuchDay(_))),
                "{absent}"
            );
        }
        assert_eq!("5-3".parse::<MonthDay>().map(|d| d.to_string()).as_deref(), Ok("05-03"));
    }

    #[test]
    fn the_leap_day_falls_on_the_28th_in_common_years() {
        let leap = MonthDay::new(2, 29).expect("a leap day");
        assert_eq!(leap.in_year(2028).to_string(), "2028-02-29");
        assert_eq!(leap.in_year(2027).to_string(), "2027-02-28");
        assert_eq!(leap.next_after("2027-02-28".parse().expect("date")).to_string(), "2028-02-29");
    }
}

//! The day on which something ends: "until 3 July", "for two weeks".

use chrono::NaiveDate;

use super::crops::as_written;
use super::dates::When;
use super::{QUESTION_CHARACTERS, Understanding};
use crate::planning::MonthDay;

/// The day that a text names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum DayAhead {
    /// None, or nothing that is read as one.
    NotSaid,
    /// This day; with a year it may lie in the past.
    On(NaiveDate),
    /// What was written is no day of any calendar, or one beyond reckoning.
    Impossible(String),
    /// More than one day.
    Several,
}

impl Understanding {
    /// The one day that a text names, counted ahead from `today`.
    #[must_use]
    pub fn day_ahead(&self, text: &str, today: NaiveDate) -> DayAhead {
        let words = self.words(text, QUESTION_CHARACTERS);
        let mut dates: Vec<_> = self
            .phrases
            .dates_in(&words, |_| true)
            .into_iter()
            .map(|date| (date.from, date.to, date.when))
            .collect();
        for (at, word) in words.iter().enumerate() {
            let month_day = word.plain.len() == 5 && word.plain.contains('-');
            if month_day && dates.iter().all(|(from, to, _)| !(*from..*to).contains(&at)) {
                let when = word.plain.parse::<MonthDay>().map_or(When::Impossible, When::Yearly);
                dates.push((at, at + 1, when));
            }
        }
        match dates.as_slice() {
            [] => DayAhead::NotSaid,
            [(from, to, when)] => when.counted_from(today).map_or_else(
                || DayAhead::Impossible(as_written(words.get(*from..*to).unwrap_or_default())),
                DayAhead::On,
            ),
            _ => DayAhead::Several,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;

    #[test]
    fn ends_of_holidays_as_people_write_them() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let english = Understanding::english(&catalogue).expect("English");
        // 22 April 2026 is a Wednesday.
        let today = "2026-04-22".parse().expect("a date");
        for (text, is) in [
            ("3 July", "2026-07-03"),
            ("until July 3", "2026-07-03"),
            ("until 07-03", "2026-07-03"),
            ("2026-07-03", "2026-07-03"),
            ("until the 3rd of April", "2027-04-03"),
            ("until Saturday", "2026-04-25"),
            ("in two weeks", "2026-05-06"),
            ("2025-07-03", "2025-07-03"),
        ] {
            let expected = DayAhead::On(is.parse().expect("a date"));
            assert_eq!(english.day_ahead(text, today), expected, "{text}");
        }
        assert_eq!(english.day_ahead("soon", today), DayAhead::NotSaid);
        assert_eq!(english.day_ahead("20 June to 3 July", today), DayAhead::Several);
        for bad in ["31 June", "13-40"] {
            let read = english.day_ahead(bad, today);
            assert_eq!(read, DayAhead::Impossible(bad.to_owned()), "{bad}");
        }
    }
}

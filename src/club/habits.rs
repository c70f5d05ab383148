//! On which days a member gardens and wants to hear of it.

use std::fmt;
use std::str::FromStr;

use chrono::{Datelike, Days, NaiveDate, Weekday};

/// The days of the week, as most calendars of the trade's countries begin it.
pub const WEEK: [Weekday; 7] = [
    Weekday::Mon,
    Weekday::Tue,
    Weekday::Wed,
    Weekday::Thu,
    Weekday::Fri,
    Weekday::Sat,
    Weekday::Sun,
];

/// The days of the week on which no message comes: none to six of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct QuietDays(u8);

/// A text or a number that is no set of quiet days.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is no set of quiet days")]
pub struct QuietDaysError(pub String);

impl QuietDays {
    /// No quiet day.
    pub const NONE: Self = Self(0);

    /// These days, or `None` where that is all seven: then no message would ever come.
    #[must_use]
    pub fn of(days: impl IntoIterator<Item = Weekday>) -> Option<Self> {
        Self::from_bits(days.into_iter().fold(0, |bits, day| bits | bit(day)))
    }

    /// The kept form: Monday is 1, Tuesday 2, Wednesday 4, up to Sunday, 64.
    #[must_use]
    pub fn bits(self) -> u8 {
        self.0
    }

    /// Reads the kept form; `None` from 127 on, which are all days and more.
    #[must_use]
    pub fn from_bits(bits: u8) -> Option<Self> {
        (bits < 127).then_some(Self(bits))
    }

    /// Whether no message comes on this day of the week.
    #[must_use]
    pub fn has(self, day: Weekday) -> bool {
        self.0 & bit(day) != 0
    }

    /// The days, Monday first.
    pub fn days(self) -> impl Iterator<Item = Weekday> {
        WEEK.into_iter().filter(move |day| self.has(*day))
    }

    /// The same with this day changed over; `None` where no day would be left.
    #[must_use]
    pub fn toggled(self, day: Weekday) -> Option<Self> {
        Self::from_bits(self.0 ^ bit(day))
    }

    /// Whether a message may come on this day.
    #[must_use]
    pub fn allow(self, date: NaiveDate) -> bool {
        !self.has(date.weekday())
    }

    /// The last day up to `date` on which a message may come; at most six days before it.
    #[must_use]
    pub fn last_allowed(self, date: NaiveDate) -> NaiveDate {
        let back = (0..7).filter_map(|days| date.checked_sub_days(Days::new(days)));
        back.into_iter().find(|day| self.allow(*day)).unwrap_or(date)
    }

    /// The first day from `date` on on which a message may come; at most six days after it.
    #[must_use]
    pub fn first_allowed(self, date: NaiveDate) -> NaiveDate {
        let ahead = (0..7).filter_map(|days| date.checked_add_days(Days::new(days)));
        ahead.into_iter().find(|day| self.allow(*day)).unwrap_or(date)
    }
}

fn bit(day: Weekday) -> u8 {
    1 << day.num_days_from_monday()
}

impl fmt::Display for QuietDays {
    /// The form that buttons carry: the days' numbers, Monday 1 to Sunday 7, or `-` for none.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if *self == Self::NONE {
            return f.write_str("-");
        }
        self.days().try_for_each(|day| write!(f, "{}", day.number_from_monday()))
    }
}

impl FromStr for QuietDays {
    type Err = QuietDaysError;

    fn from_str(text: &str) -> Result<Self, QuietDaysError> {
        let wrong = || QuietDaysError(text.to_owned());
        if text == "-" {
            return Ok(Self::NONE);
        }
        let day = |c: char| {
            let index = c.to_digit(10)?.checked_sub(1)?;
            WEEK.get(usize::try_from(index).ok()?).copied()
        };
        let days: Option<Vec<Weekday>> = text.chars().map(day).collect();
        let quiet = days.filter(|days| !days.is_empty()).and_then(Self::of).ok_or_else(wrong)?;
        // One form for each set, so that what is read is what was written.
        if quiet.to_string() == text { Ok(quiet) } else { Err(wrong()) }
    }
}

/// A member's days.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Habits {
    /// The days of the week on which no message comes.
    pub quiet: QuietDays,
    /// Whether the member gardens at weekends, so that what is put off waits for the next one.
    pub at_weekends: bool,
    /// The first day after a holiday: no message comes before it. It may lie in the past.
    pub holiday_until: Option<NaiveDate>,
}

impl Habits {
    /// Whether the member is on holiday on this day.
    #[must_use]
    pub fn on_holiday(self, date: NaiveDate) -> bool {
        self.holiday_until.is_some_and(|until| date < until)
    }

    /// Whether a message may come on this day.
    #[must_use]
    pub fn allow(self, date: NaiveDate) -> bool {
        !self.on_holiday(date) && self.quiet.allow(date)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    #[test]
    fn the_forms_of_quiet_days_are_pinned() {
        for (days, bits, text) in [
            (&[][..], 0, "-"),
            (&[Weekday::Mon], 1, "1"),
            (&[Weekday::Sun, Weekday::Sat], 96, "67"),
            (&[Weekday::Tue, Weekday::Wed, Weekday::Thu, Weekday::Fri], 30, "2345"),
        ] {
            let quiet = QuietDays::of(days.iter().copied()).expect("not all");
            assert_eq!((quiet.bits(), quiet.to_string().as_str()), (bits, text));
            assert_eq!(QuietDays::from_bits(bits), Some(quiet));
            assert_eq!(text.parse(), Ok(quiet));
        }
        assert_eq!(QuietDays::of(WEEK), None, "a message must be able to come on some day");
        for bad in ["", "0", "8", "76", "11", "1234567", "x", "1-"] {
            assert!(bad.parse::<QuietDays>().is_err(), "{bad}");
        }
    }

    #[test]
    fn the_nearest_days_on_which_a_message_may_come() {
        let weekend = QuietDays::of([Weekday::Sat, Weekday::Sun]).expect("not all");
        // 18 April 2026 is a Saturday.
        assert_eq!(weekend.last_allowed(day("2026-04-19")), day("2026-04-17"));
        assert_eq!(weekend.first_allowed(day("2026-04-18")), day("2026-04-20"));
        assert_eq!(weekend.last_allowed(day("2026-04-20")), day("2026-04-20"));
        let only_friday = QuietDays::of(WEEK.into_iter().filter(|day| *day != Weekday::Fri));
        let only_friday = only_friday.expect("not all");
        assert_eq!(only_friday.first_allowed(day("2026-04-18")), day("2026-04-24"));
        assert_eq!(only_friday.last_allowed(day("2026-04-16")), day("2026-04-10"));
        assert_eq!(QuietDays::NONE.last_allowed(NaiveDate::MIN), NaiveDate::MIN);
        assert_eq!(only_friday.toggled(Weekday::Fri), None);
    }

    #[test]
    fn a_holiday_ends_on_the_day_that_was_named() {
        let habits = Habits { holiday_until: Some(day("2026-07-03")), ..Habits::default() };
        assert!(!habits.allow(day("2026-07-02")));
        assert!(habits.allow(day("2026-07-03")));
    }
}

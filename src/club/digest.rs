//! When a club's group gets its week.

use chrono::{DateTime, Datelike, Days, NaiveDate, TimeDelta, Utc, Weekday};
use chrono_tz::Tz;

use super::ReminderTime;

/// The weekly digest as the coordinator set it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Digest {
    /// On which day of the week.
    pub on: Weekday,
    /// At which time of day, in the club's zone.
    pub at: ReminderTime,
    /// In which topic of the group; `None` where the group has none or it goes to all.
    pub thread: Option<i32>,
}

/// Kept numbers that are no digest.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("weekday {weekday}, minute {minutes} is no digest")]
pub struct DigestError {
    /// Monday 1 to Sunday 7.
    pub weekday: i64,
    /// After midnight.
    pub minutes: i64,
}

impl Digest {
    /// Reads the kept numbers: Monday 1 to Sunday 7, and minutes after midnight.
    ///
    /// # Errors
    /// Where they are no day or no time.
    pub fn of_numbers(
        weekday: i64,
        minutes: i64,
        thread: Option<i32>,
    ) -> Result<Self, DigestError> {
        let on = super::WEEK.into_iter().find(|day| i64::from(day.number_from_monday()) == weekday);
        let at = u16::try_from(minutes).ok().and_then(ReminderTime::from_minutes);
        on.zip(at).map(|(on, at)| Self { on, at, thread }).ok_or(DigestError { weekday, minutes })
    }

    /// The first time for it strictly after `now`.
    ///
    /// A week has one digest: where the last one stood for the day `last`, the next is on the first
    /// of its days that is a week or more after it, also where its day was changed meanwhile.
    #[must_use]
    pub fn next_after(
        self,
        now: DateTime<Utc>,
        zone: Tz,
        last: Option<NaiveDate>,
    ) -> DateTime<Utc> {
        let today = now.with_timezone(&zone).date_naive();
        // A time that falls into a gap of the clocks may come on the day after its own.
        let from = today.checked_sub_days(Days::new(1)).unwrap_or(today);
        let days = (0..16).filter_map(|days| from.checked_add_days(Days::new(days)));
        days.into_iter()
            .filter(|day| day.weekday() == self.on)
            .filter(|day| last.is_none_or(|last| *day - last >= TimeDelta::days(7)))
            .map(|day| self.at.on(day, zone))
            .find(|at| *at > now)
            .unwrap_or(now + TimeDelta::days(7))
    }

    /// When a digest that was missed is made up for: at its hour of today, or now where that has
    /// passed.
    #[must_use]
    pub fn made_up_for(self, now: DateTime<Utc>, zone: Tz) -> DateTime<Utc> {
        self.at.on(now.with_timezone(&zone).date_naive(), zone).max(now)
    }

    /// The day that a digest made on `date` stands for: the last of its own days up to then.
    #[must_use]
    pub fn stands_for(self, date: NaiveDate) -> NaiveDate {
        let back = (0..7).filter_map(|days| date.checked_sub_days(Days::new(days)));
        back.into_iter().find(|day| day.weekday() == self.on).unwrap_or(date)
    }

    /// The last day that a digest made on `date` speaks of: the day before the next one's.
    #[must_use]
    pub fn speaks_until(self, date: NaiveDate) -> NaiveDate {
        let days = (0..7).filter_map(|days| date.checked_add_days(Days::new(days)));
        days.into_iter()
            .find(|day| day.succ_opt().is_some_and(|next| next.weekday() == self.on))
            .unwrap_or(date)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(text: &str) -> DateTime<Utc> {
        text.parse().expect("an instant")
    }

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    fn monday() -> Digest {
        Digest::of_numbers(1, 480, None).expect("a digest")
    }

    #[test]
    fn it_comes_on_its_day_at_its_time_in_the_clubs_zone() {
        let denver = Tz::America__Denver;
        // 13 April 2026 is a Monday; Denver is six hours behind then.
        let first = monday().next_after(at("2026-04-13T13:59:59Z"), denver, None);
        assert_eq!(first, at("2026-04-13T14:00:00Z"));
        assert_eq!(monday().next_after(first, denver, None), at("2026-04-20T14:00:00Z"));
        // The clocks went forward on 8 March: 8 o'clock stays 8 o'clock.
        let before = monday().next_after(at("2026-03-01T00:00:00Z"), denver, None);
        assert_eq!(before, at("2026-03-02T15:00:00Z"));
        assert_eq!(monday().next_after(before, denver, None), at("2026-03-09T14:00:00Z"));
    }

    #[test]
    fn a_week_has_one_even_when_its_day_is_changed() {
        let made = Some(day("2026-04-13"));
        let wednesday = Digest { on: Weekday::Wed, ..monday() };
        let next = wednesday.next_after(at("2026-04-13T09:00:00Z"), Tz::UTC, made);
        assert_eq!(next, at("2026-04-22T08:00:00Z"));
        // One that is made late, on a Sunday, stands for its Monday, and the next comes in time.
        assert_eq!(monday().stands_for(day("2026-04-19")), day("2026-04-13"));
        let next = monday().next_after(at("2026-04-19T09:00:00Z"), Tz::UTC, made);
        assert_eq!(next, at("2026-04-20T08:00:00Z"));
        // Over the new year the weeks go on: 28 December 2026 and 4 January 2027 are Mondays.
        let next =
            monday().next_after(at("2026-12-28T08:00:00Z"), Tz::UTC, Some(day("2026-12-28")));
        assert_eq!(next, at("2027-01-04T08:00:00Z"));
    }

    #[test]
    fn it_speaks_of_the_days_up_to_the_next() {
        assert_eq!(monday().speaks_until(day("2026-04-13")), day("2026-04-19"));
        assert_eq!(monday().speaks_until(day("2026-04-16")), day("2026-04-19"));
        assert_eq!(monday().speaks_until(day("2026-04-19")), day("2026-04-19"));
    }

    #[test]
    fn other_numbers_are_no_digest() {
        for (weekday, minutes) in [(0, 480), (8, 480), (1, -1), (1, 1440)] {
            assert_eq!(
                Digest::of_numbers(weekday, minutes, None),
                Err(DigestError { weekday, minutes })
            );
        }
    }
}

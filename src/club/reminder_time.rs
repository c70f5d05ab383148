//! The time of day at which a morning reminder comes.

use std::fmt;
use std::str::FromStr;

use chrono::{DateTime, Days, LocalResult, NaiveDate, NaiveTime, TimeDelta, TimeZone, Utc};
use chrono_tz::Tz;

/// A time of day in minutes after midnight, 0 to 1439; seven in the morning by default.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ReminderTime(u16);

/// A text that is not a time of day.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is not a time of day")]
pub struct ReminderTimeError(pub String);

impl Default for ReminderTime {
    fn default() -> Self {
        Self(7 * 60)
    }
}

impl ReminderTime {
    /// The time `minutes` after midnight, or `None` from 1440 on.
    #[must_use]
    pub fn from_minutes(minutes: u16) -> Option<Self> {
        (minutes < 24 * 60).then_some(Self(minutes))
    }

    /// Minutes after midnight.
    #[must_use]
    pub fn minutes(self) -> u16 {
        self.0
    }

    /// The instant of this time on `date` in `zone`.
    ///
    /// A time that does not exist on that day (clocks go forward) is the first instant that does
    /// exist after it; one that exists twice (clocks go back) is the earlier.
    #[must_use]
    pub fn on(self, date: NaiveDate, zone: Tz) -> DateTime<Utc> {
        let midnight = date.and_time(NaiveTime::MIN);
        let wall = midnight + TimeDelta::minutes(i64::from(self.0));
        // Gaps in the zone data are at most a day long (a date line crossed); a minute's step
        // finds their end exactly, since changes of clocks fall on whole minutes.
        (0..=24 * 60)
            .find_map(|minute| {
                match zone.from_local_datetime(&(wall + TimeDelta::minutes(minute))) {
                    LocalResult::Single(at) | LocalResult::Ambiguous(at, _) => {
                        Some(at.with_timezone(&Utc))
                    }
                    LocalResult::None => None,
                }
            })
            .unwrap_or_else(|| wall.and_utc())
    }

    /// The instant at which the day `date` is over in `zone`: what was made for it is stale then.
    #[must_use]
    pub fn end_of(date: NaiveDate, zone: Tz) -> DateTime<Utc> {
        Self(0).on(date.checked_add_days(Days::new(1)).unwrap_or(date), zone)
    }

    /// The first instant of this time in `zone` that lies strictly after `now`.
    #[must_use]
    pub fn next_after(self, now: DateTime<Utc>, zone: Tz) -> DateTime<Utc> {
        let today = now.with_timezone(&zone).date_naive();
        // The day before counts too: a gap can push its reminder past midnight.
        let days = [today - Days::new(1), today, today + Days::new(1), today + Days::new(2)];
        days.into_iter()
            .map(|date| self.on(date, zone))
            .find(|at| *at > now)
            .unwrap_or(now + TimeDelta::days(1))
    }
}

impl FromStr for ReminderTime {
    type Err = ReminderTimeError;

    /// Reads `7`, `07:00`, `7.30`, `7am`, `7:30 pm`, `19h`, `7 Uhr`, `7 Uhr 30`.
    fn from_str(text: &str) -> Result<Self, ReminderTimeError> {
        let wrong = || ReminderTimeError(text.trim().to_owned());
        let lower = text.trim().to_lowercase().replace(' ', "");
        let lower = lower.replace("uhr", ":");
        let lower = lower.strip_suffix(':').unwrap_or(&lower);
        let (digits, noon) = match lower.strip_suffix("am").or_else(|| lower.strip_suffix("a.m.")) {
            Some(rest) => (rest, Some(false)),
            None => match lower.strip_suffix("pm").or_else(|| lower.strip_suffix("p.m.")) {
                Some(rest) => (rest, Some(true)),
                None => (lower.trim_end_matches('h'), None),
            },
        };
        let (hour, minute) = digits.split_once([':', '.', 'h']).unwrap_or((digits, "0"));
        let number = |part: &str| {
            let plain = (1..=2).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
            if plain { part.parse::<u16>().ok() } else { None }
        };
        let (hour, minute) = number(hour).zip(number(minute)).ok_or_else(wrong)?;
        let hour = match noon {
            None if hour < 24 => hour,
            Some(afternoon) if (1..=12).contains(&hour) => {
                hour % 12 + if afternoon { 12 } else { 0 }
            }
            _ => return Err(wrong()),
        };
        if minute >= 60 {
            return Err(wrong());
        }
        Ok(Self(hour * 60 + minute))
    }
}

impl fmt::Display for ReminderTime {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:02}:{:02}", self.0 / 60, self.0 % 60)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(text: &str) -> DateTime<Utc> {
        text.parse().expect("an instant")
    }

    #[test]
    fn times_are_read_as_people_write_them() {
        let read = |text: &str| text.parse::<ReminderTime>().map(|t| t.to_string());
        for (text, is) in [
            ("7", "07:00"),
            ("07:00", "07:00"),
            ("6.30", "06:30"),
            ("7am", "07:00"),
            ("12 am", "00:00"),
            ("12pm", "12:00"),
            ("7:15 PM", "19:15"),
            ("19h", "19:00"),
            ("0", "00:00"),
        ] {
            assert_eq!(read(text).as_deref(), Ok(is), "{text}");
        }
        for bad in ["", "24", "7:60", "13pm", "0am", "-1", "seven", "7:5:3", "007", "1e1"] {
            assert!(read(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn a_missing_hour_comes_at_the_next_that_exists_and_a_double_one_once() {
        let half_past_two = ReminderTime(150);
        let berlin = Tz::Europe__Berlin;
        // 2026-03-29 02:30 does not exist in Berlin: 02:00 becomes 03:00, at 01:00 UTC.
        assert_eq!(
            half_past_two.next_after(at("2026-03-28T12:00:00Z"), berlin),
            at("2026-03-29T01:00:00Z")
        );
        assert_eq!(
            half_past_two.next_after(at("2026-03-29T01:00:00Z"), berlin),
            at("2026-03-30T00:30:00Z")
        );
        // 2026-10-25 02:30 exists twice: it comes at the first and not again at the second.
        let first = half_past_two.next_after(at("2026-10-24T12:00:00Z"), berlin);
        assert_eq!(first, at("2026-10-25T00:30:00Z"));
        assert_eq!(half_past_two.next_after(first, berlin), at("2026-10-26T01:30:00Z"));
    }
}

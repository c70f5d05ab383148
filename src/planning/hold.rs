//! Waiting out a cold spell: what is put off, and which seedlings cannot wait that long.

use std::fmt;
use std::str::FromStr;

use chrono::{Days, NaiveDate, TimeDelta};
use serde::{Deserialize, Serialize};

use super::crop::Crop;
use super::jobs::Job;
use super::place::Place;
use super::windows::{Label, Step, Window};

/// A cold spell that a gardener waits out: nothing is hardened off or set out before it ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Hold {
    from: NaiveDate,
    until: NaiveDate,
}

/// Why something is no hold.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum HoldError {
    /// Fewer than one day, or more than [`Hold::LONGEST_DAYS`].
    #[error("a hold lasts from 1 to 60 days, not {0}")]
    Days(u64),
    /// A text of another form than two dates with a slash between, or with the days turned round.
    #[error("'{0}' is no hold: it is written 2026-05-01/2026-05-08")]
    Form(String),
}

/// What a cold spell means for a seedling.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wait {
    /// It can wait until the end.
    Can,
    /// It is too old for its cell by then, but not for a larger pot.
    PottedUp,
    /// It is too old by then, whatever pot it stands in.
    TooOld,
}

impl Hold {
    /// The longest hold, in days. A longer wait is no cold spell but another frost date.
    pub const LONGEST_DAYS: u64 = 60;

    /// A hold that begins on `today` and ends after `days`, 1 to [`Hold::LONGEST_DAYS`].
    ///
    /// # Errors
    /// [`HoldError::Days`].
    pub fn for_days(today: NaiveDate, days: u64) -> Result<Self, HoldError> {
        if (1..=Self::LONGEST_DAYS).contains(&days) {
            Ok(Self { from: today, until: today + Days::new(days) })
        } else {
            Err(HoldError::Days(days))
        }
    }

    /// The first day of the cold spell.
    #[must_use]
    pub fn from(self) -> NaiveDate {
        self.from
    }

    /// The day on which jobs go on.
    #[must_use]
    pub fn until(self) -> NaiveDate {
        self.until
    }

    /// Whether it still holds on `date`.
    #[must_use]
    pub fn holds_on(self, date: NaiveDate) -> bool {
        (self.from..self.until).contains(&date)
    }

    /// The same hold as a continuation of an earlier one that has not ended when it begins.
    #[must_use]
    pub fn continuing(self, earlier: Option<Self>) -> Self {
        let open = earlier.filter(|earlier| earlier.holds_on(self.from));
        Self { from: open.map_or(self.from, |earlier| earlier.from), ..self }
    }

    /// The hold ended on `today`: what it put off stays put off to that day. `None` where it only
    /// began on that day, and so put nothing off.
    #[must_use]
    pub fn ended(self, today: NaiveDate) -> Option<Self> {
        (self.from < today).then_some(Self { until: self.until.min(today), ..self })
    }

    /// The one that lasts longer.
    #[must_use]
    pub fn longer(one: Option<Self>, other: Option<Self>) -> Option<Self> {
        match (one, other) {
            (Some(one), Some(other)) => Some(if other.until > one.until { other } else { one }),
            (one, other) => one.or(other),
        }
    }

    /// Whether the cold spell keeps this job waiting: hardening off and setting out whose days
    /// begin before it ends and were not over when it began. What is planted in autumn for the
    /// next year bears the cold.
    #[must_use]
    pub fn keeps_waiting(self, job: &Job) -> bool {
        waits_for_warmth(job) && job.window.ideal_from < self.until && job.window.to >= self.from
    }

    /// The job of `crop` as it stands on `today` with the cold spell; `None` while it waits as one
    /// whose good days were over before.
    ///
    /// A job whose good days meet the cold spell is put off: it has no day before the end. To
    /// hardening off at least a week is then left to begin in, and where it could not begin before
    /// the cold spell, setting out follows a week after the end: hardening off takes 7 to 14 days
    /// (University of Maryland Extension, 2023).
    #[must_use]
    pub fn stand(self, job: Job, crop: &Crop, today: NaiveDate) -> Option<Job> {
        if !waits_for_warmth(&job) {
            return Some(job);
        }
        let week = TimeDelta::days(7);
        let (room, earliest) = match job.key.step {
            Step::HardenOff => (week, self.until),
            _ => (TimeDelta::zero(), self.until + self.hardening_after(&job, crop)),
        };
        let begins_before = job.window.ideal_from < earliest;
        if begins_before && job.window.ideal_to >= self.from {
            let ideal_to = job.window.ideal_to.max(earliest + room);
            let window = Window {
                from: job.window.from.max(earliest),
                ideal_from: job.window.ideal_from.max(earliest),
                ideal_to,
                to: job.window.to.max(ideal_to),
                ..job.window
            };
            return Some(Job { window, ..job });
        }
        (!(begins_before && self.holds_on(today))).then_some(job)
    }

    /// The time that plants still need to harden off after the cold spell before they go out: a
    /// week where their hardening off would have begun within it, else none.
    fn hardening_after(self, set_out: &Job, crop: &Crop) -> TimeDelta {
        let begins = set_out.window.ideal_from - TimeDelta::days(14);
        let within = self.from <= begins && begins < self.until;
        if within && crop.indoors.is_some() { TimeDelta::days(7) } else { TimeDelta::zero() }
    }

    /// Whether a seedling of `crop`, sown on `sown` and raised at `place`, can wait until the end.
    ///
    /// A seedling bears its longest stay in the cell (or in the pot, once potted up) and, in a
    /// cold spell, the crop's `hold` weeks beyond; both are the catalogue's figures. On a
    /// windowsill it is less, by [`Place::weeks_younger`].
    #[must_use]
    pub fn wait(self, crop: &Crop, place: Option<Place>, sown: NaiveDate, potted_up: bool) -> Wait {
        let Some(indoors) = &crop.indoors else { return Wait::Can };
        let stay = &indoors.stay_weeks;
        let less = place.map_or(0, Place::weeks_younger);
        let age = self.until.signed_duration_since(sown).num_days();
        let bears = |weeks: i64| age <= 7 * (weeks - less + stay.hold);
        let longest = if potted_up { stay.potted_up } else { None };
        if bears(longest.unwrap_or(stay.longest)) {
            Wait::Can
        } else if !potted_up && stay.potted_up.is_some_and(bears) {
            Wait::PottedUp
        } else {
            Wait::TooOld
        }
    }
}

fn waits_for_warmth(job: &Job) -> bool {
    matches!(job.key.step, Step::HardenOff | Step::PlantOut)
        && job.window.label != Label::Overwintering
}

impl fmt::Display for Hold {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}", self.from, self.until)
    }
}

impl FromStr for Hold {
    type Err = HoldError;

    fn from_str(text: &str) -> Result<Self, HoldError> {
        let wrong = || HoldError::Form(text.to_owned());
        let (from, until) = text.split_once('/').ok_or_else(wrong)?;
        let date = |text: &str| text.parse::<NaiveDate>().map_err(|_| wrong());
        let (from, until) = (date(from)?, date(until)?);
        if from < until { Ok(Self { from, until }) } else { Err(wrong()) }
    }
}

impl TryFrom<String> for Hold {
    type Error = HoldError;

    fn try_from(text: String) -> Result<Self, HoldError> {
        text.parse()
    }
}

impl From<Hold> for String {
    fn from(hold: Hold) -> Self {
        hold.to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;

    fn date(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    fn hold(from: &str, days: u64) -> Hold {
        Hold::for_days(date(from), days).expect("a hold")
    }

    #[test]
    fn from_one_to_sixty_days() {
        assert_eq!(Hold::for_days(date("2026-05-01"), 0), Err(HoldError::Days(0)));
        assert_eq!(Hold::for_days(date("2026-05-01"), 61), Err(HoldError::Days(61)));
        assert_eq!(hold("2026-05-01", 7).to_string(), "2026-05-01/2026-05-08");
        assert_eq!("2026-05-01/2026-05-08".parse(), Ok(hold("2026-05-01", 7)));
        for bad in ["", "2026-05-01", "2026-05-08/2026-05-01", "2026-05-01/2026-05-01", "a/b"] {
            assert!(bad.parse::<Hold>().is_err(), "{bad}");
        }
    }

    #[test]
    fn a_hold_within_a_hold_goes_on_from_the_first() {
        let first = hold("2026-05-01", 7);
        assert_eq!(hold("2026-05-05", 7).continuing(Some(first)).from(), date("2026-05-01"));
        assert_eq!(hold("2026-05-08", 7).continuing(Some(first)).from(), date("2026-05-08"));
        assert_eq!(first.ended(date("2026-05-01")), None);
        assert_eq!(first.ended(date("2026-05-03")).map(Hold::until), Some(date("2026-05-03")));
        assert_eq!(
            Hold::longer(Some(first), Some(hold("2026-05-02", 7))),
            Some(hold("2026-05-02", 7))
        );
    }

    #[test]
    fn a_seedling_waits_as_long_as_it_bears() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let get = |id: &str| catalogue.get(id).expect("listed");
        let wait = |id: &str, weeks: i64, potted_up: bool, place: Option<Place>| {
            let hold = hold("2026-05-20", 7);
            hold.wait(get(id), place, hold.until() - TimeDelta::weeks(weeks), potted_up)
        };
        // Tomato: eight weeks in the cell, twelve potted up, and two more in a cold spell.
        assert_eq!(wait("tomato", 10, false, None), Wait::Can);
        assert_eq!(wait("tomato", 11, false, None), Wait::PottedUp);
        assert_eq!(wait("tomato", 14, false, None), Wait::PottedUp);
        assert_eq!(wait("tomato", 14, true, None), Wait::Can);
        assert_eq!(wait("tomato", 15, true, None), Wait::TooOld);
        assert_eq!(wait("tomato", 10, false, Some(Place::Windowsill)), Wait::PottedUp);
        // Cucumber: six weeks and one more; potting up does not help it.
        assert_eq!(wait("cucumber", 7, false, None), Wait::Can);
        assert_eq!(wait("cucumber", 8, false, None), Wait::TooOld);
        // Peas are sown in place.
        assert_eq!(wait("pea", 30, false, None), Wait::Can);
    }
}

//! When a job is called out: on its first good day, in their middle and on their last, moved by
//! the days on which no message comes, and when one that was put off comes back.

use chrono::{Datelike, Days, NaiveDate, TimeDelta, Weekday};

use super::due::{named_once, never_pressed};
use crate::club::{Habits, JobMark, Mark, QuietDays};
use crate::planning::{Crop, Job, Step, Window};

/// Days for which a job that was just named is left in peace, but for its last good day.
const PEACE_DAYS: i64 = 3;

/// How far ahead the next day for a job that is put off is looked for: beyond the longest window.
const FURTHEST_LATER: u64 = 200;

/// The days on which a window is called out to a member.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Calls {
    /// The first day for it.
    pub first: NaiveDate,
    /// The last good day for it.
    pub last: NaiveDate,
}

impl Calls {
    /// The good days of `window` on which a message may come. Where all of them are quiet, both
    /// are the last day before on which one may: it is better to hear of it too early than never.
    pub fn of(window: &Window, quiet: QuietDays) -> Self {
        let first = quiet.first_allowed(window.ideal_from);
        let last = quiet.last_allowed(window.ideal_to);
        if first <= window.ideal_to { Self { first, last } } else { Self { first: last, last } }
    }
}

/// Whether a morning's message names the job on `date`, a day on which one may come.
pub(super) fn is_due(
    crop: &Crop,
    job: &Job,
    mark: Option<&JobMark>,
    date: NaiveDate,
    quiet: QuietDays,
) -> bool {
    let window = &job.window;
    let calls = Calls::of(window, quiet);
    if date < calls.first || date > window.to {
        return false;
    }
    let named_on = mark.and_then(|mark| mark.named_on);
    let reached = |day: NaiveDate| named_on.is_none_or(|named| named < day) && day <= date;
    let last_call = reached(calls.last) && !never_pressed(crop, job) && !named_once(job);
    if let Some(Mark::Later(until)) = mark.and_then(|mark| mark.mark) {
        // A day that became quiet since it was put off must not take its last good day away.
        let overtaken = last_call && until <= window.ideal_to;
        if date < until && !overtaken {
            return false;
        }
        if named_on.is_none_or(|named| named < until) {
            return true;
        }
    }
    let Some(named_on) = named_on else { return true };
    if named_once(job) {
        let again = job.key.step == Step::Check && named_on < window.ideal_to;
        return again && date >= window.ideal_to;
    }
    let half = window.ideal_to.signed_duration_since(window.ideal_from).num_days() / 2;
    let middle = window.ideal_from + TimeDelta::days(half);
    let long_ago = date.signed_duration_since(named_on).num_days() >= PEACE_DAYS;
    ((reached(window.ideal_from) || reached(middle)) && long_ago) || last_call
}

/// The day to which *later* puts a job off on `today`, or `None` where no day that is worth it is
/// left.
///
/// That is the next free day, one that is neither quiet nor in the holiday; for a member who
/// gardens at weekends the next free day of a weekend, where one is left. Before its last good day
/// a job is not put off beyond it.
#[must_use]
pub fn later_day(window: &Window, habits: Habits, today: NaiveDate) -> Option<NaiveDate> {
    let free = || {
        let ahead = (1..FURTHEST_LATER).filter_map(|days| today.checked_add_days(Days::new(days)));
        ahead.filter(|day| habits.allow(*day)).take_while(|day| *day <= window.to)
    };
    let weekend = |day: &NaiveDate| matches!(day.weekday(), Weekday::Sat | Weekday::Sun);
    let next = if habits.at_weekends { free().find(weekend) } else { None };
    let next = next.or_else(|| free().next())?;
    let last = free().take_while(|day| *day <= window.ideal_to).last();
    Some(last.map_or(next, |last| next.min(last)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::planning::Label;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    fn window(ideal_from: &str, ideal_to: &str, to: &str) -> Window {
        Window {
            label: Label::Spring,
            season: 2026,
            from: day(ideal_from),
            ideal_from: day(ideal_from),
            ideal_to: day(ideal_to),
            to: day(to),
        }
    }

    fn quiet(days: &[Weekday]) -> QuietDays {
        QuietDays::of(days.iter().copied()).expect("not all")
    }

    // 17 April 2026 is a Friday.

    #[test]
    fn a_quiet_first_day_is_called_after_and_a_quiet_last_one_before() {
        let calls = |from, to, days| {
            let Calls { first, last } = Calls::of(&window(from, to, "2026-06-01"), quiet(days));
            (first.to_string(), last.to_string())
        };
        let is = |first: &str, last: &str| (first.to_owned(), last.to_owned());
        let weekend = &[Weekday::Sat, Weekday::Sun];
        assert_eq!(calls("2026-04-18", "2026-05-03", weekend), is("2026-04-20", "2026-05-01"));
        assert_eq!(calls("2026-04-18", "2026-05-03", &[]), is("2026-04-18", "2026-05-03"));
        // Good on a quiet weekend only: told on the Friday before it.
        assert_eq!(calls("2026-04-18", "2026-04-19", weekend), is("2026-04-17", "2026-04-17"));
    }

    #[test]
    fn later_is_the_next_free_day_and_never_beyond_the_last_good_one() {
        let good = window("2026-04-17", "2026-05-01", "2026-05-20");
        let later = |habits: Habits, today: &str| {
            later_day(&good, habits, day(today)).map(|day| day.to_string())
        };
        let any = Habits::default();
        let weekends = Habits { at_weekends: true, ..any };
        let quiet_weekend =
            Habits { quiet: quiet(&[Weekday::Sat, Weekday::Sun]), at_weekends: true, ..any };
        let quiet_sunday = Habits { quiet: quiet(&[Weekday::Sun]), at_weekends: true, ..any };
        let away = Habits { holiday_until: Some(day("2026-04-24")), ..any };
        for (habits, today, is) in [
            (any, "2026-04-17", Some("2026-04-18")),
            (weekends, "2026-04-20", Some("2026-04-25")),
            (weekends, "2026-04-25", Some("2026-04-26")),
            (weekends, "2026-04-26", Some("2026-05-01")),
            (quiet_sunday, "2026-04-25", Some("2026-05-01")),
            // No weekend day is free: then it is the next day that is.
            (quiet_weekend, "2026-04-17", Some("2026-04-20")),
            (away, "2026-04-18", Some("2026-04-24")),
            // From the last good day on it is any free day that is still worth it.
            (any, "2026-05-01", Some("2026-05-02")),
            (weekends, "2026-05-04", Some("2026-05-09")),
            (weekends, "2026-05-18", Some("2026-05-19")),
            (any, "2026-05-20", None),
        ] {
            assert_eq!(later(habits, today).as_deref(), is, "{habits:?} on {today}");
        }
    }
}

//! Dates as people write them in a sentence.

use chrono::{Datelike, Days, Months, NaiveDate, Weekday};
use serde::Deserialize;

use super::pattern::{Held, Line, Pattern};
use super::phrase_file::Figures;
use crate::planning::MonthDay;

/// How a date phrase is read. The phrase lists name these readings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Reading {
    /// "today", "now", "this week": today.
    Today,
    /// "tomorrow", "next week": so many days from today.
    DaysAhead(u32),
    /// "in three weeks": the number and the unit that were written, from today.
    InUnits,
    /// "this weekend": the coming Saturday, or today on a Saturday or Sunday.
    ThisWeekend,
    /// "next weekend": the Saturday after this weekend's.
    NextWeekend,
    /// "on Saturday": the coming one; today counts.
    Weekday,
    /// "next Saturday": the coming one; today does not count.
    NextWeekday,
    /// "May 1", "1 May 2027": that day; without a year its next occurrence, today included.
    MonthDay,
    /// "mid May": this day of the month; its next occurrence, today included.
    PartOfMonth(u32),
    /// "end of May": the last day of the month.
    EndOfMonth,
    /// "in March": the first of the month; while that month is running, today.
    WholeMonth,
    /// "next month": its first day.
    NextMonth,
    /// "on the 15th": the next day with that number, today included.
    DayOfMonth,
    /// "yesterday": so many days before today.
    DaysBack(u32),
    /// "three weeks ago": the number and the unit that were written, before today.
    UnitsBack,
    /// "last Saturday": the one before today.
    LastWeekday,
}

/// A date as it was meant, before it is counted from a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum When {
    /// Today.
    Today,
    /// A day with its year.
    Exact(NaiveDate),
    /// A day of every year.
    Yearly(MonthDay),
    /// A month as a whole, 1 to 12.
    Month(u32),
    /// So many days from today.
    Days(u32),
    /// So many months from today.
    Months(u32),
    /// The first day of the next month.
    NextMonth,
    /// The next day with this number.
    DayOfMonth(u32),
    /// A day of the week; whether today counts.
    Weekday(Weekday, bool),
    /// A Saturday; whether it is the one after the coming one.
    Weekend(bool),
    /// So many days before today.
    DaysBack(u32),
    /// So many months before today.
    MonthsBack(u32),
    /// The day of the week before today.
    LastWeekday(Weekday),
    /// A date that no calendar has, such as the 31st of February.
    Impossible,
    /// A day in figures, such as "5/1", that may be one of two.
    Unclear,
}

/// No date further ahead than this is taken from a count of days, weeks or months: about ten
/// years, beyond which nobody plans a bed.
const FURTHEST_DAYS: u32 = 3_660;

impl When {
    /// The day that is meant, counted from `today`; `None` where there is none.
    pub fn counted_from(self, today: NaiveDate) -> Option<NaiveDate> {
        match self {
            Self::Today => Some(today),
            Self::Exact(date) => Some(date),
            Self::Yearly(day) => Some(next_from(day, today)),
            Self::Month(month) if month == today.month() => Some(today),
            Self::Month(month) => Some(next_from(MonthDay::new(month, 1)?, today)),
            Self::Days(days) if days <= FURTHEST_DAYS => {
                today.checked_add_days(Days::new(days.into()))
            }
            Self::Months(months) if months <= FURTHEST_DAYS / 30 => {
                today.checked_add_months(Months::new(months))
            }
            Self::NextMonth => today.with_day(1)?.checked_add_months(Months::new(1)),
            Self::DayOfMonth(day) => next_with_day(day, today),
            Self::Weekday(weekday, today_counts) => {
                let from = if today_counts { today } else { today.succ_opt()? };
                next_weekday(weekday, from)
            }
            Self::Weekend(after_next) => {
                let this = if today.weekday() == Weekday::Sun {
                    today
                } else {
                    next_weekday(Weekday::Sat, today)?
                };
                if after_next { next_weekday(Weekday::Sat, this.succ_opt()?) } else { Some(this) }
            }
            // Questions are about what is to come, and not about days gone by.
            Self::DaysBack(_)
            | Self::MonthsBack(_)
            | Self::LastWeekday(_)
            | Self::Days(_)
            | Self::Months(_)
            | Self::Impossible
            | Self::Unclear => None,
        }
    }

    /// Whether a month is meant as a whole.
    pub fn is_whole_month(self) -> bool {
        matches!(self, Self::Month(_) | Self::NextMonth)
    }

    /// The day that is meant by somebody who tells on the day `today` what they did; it lies in
    /// the future where nothing else can be meant.
    pub fn counted_back(self, today: NaiveDate) -> Option<NaiveDate> {
        match self {
            Self::Yearly(day) => Some(last_until(day, today)),
            Self::Month(month) => Some(last_until(MonthDay::new(month, 1)?, today)),
            Self::DayOfMonth(day) => (0..3).find_map(|months| {
                let month = today.with_day(1)?.checked_sub_months(Months::new(months))?;
                month.with_day(day).filter(|date| *date <= today)
            }),
            Self::Weekday(weekday, true) => last_weekday(weekday, today),
            Self::LastWeekday(weekday) => last_weekday(weekday, today.pred_opt()?),
            Self::Weekend(false) => last_weekday(Weekday::Sat, today),
            Self::DaysBack(days) if days <= FURTHEST_DAYS => {
                today.checked_sub_days(Days::new(days.into()))
            }
            Self::MonthsBack(months) if months <= FURTHEST_DAYS / 30 => {
                today.checked_sub_months(Months::new(months))
            }
            Self::DaysBack(_) | Self::MonthsBack(_) => None,
            ahead => ahead.counted_from(today),
        }
    }
}

fn next_from(day: MonthDay, today: NaiveDate) -> NaiveDate {
    let this_year = day.in_year(today.year());
    if this_year >= today { this_year } else { day.in_year(today.year() + 1) }
}

/// The last occurrence of a day until today, or the next one where the last lies so far back that
/// the next must be meant.
fn last_until(day: MonthDay, today: NaiveDate) -> NaiveDate {
    /// Nobody tells of a sowing of ten months ago by its day alone.
    const LONG_AGO_DAYS: i64 = 300;
    let next = next_from(day, today);
    if next == today {
        return today;
    }
    let last = day.in_year(next.year() - 1);
    let ago = today.signed_duration_since(last).num_days();
    if ago > LONG_AGO_DAYS { next } else { last }
}

fn last_weekday(weekday: Weekday, until: NaiveDate) -> Option<NaiveDate> {
    let back = (7 + until.weekday().num_days_from_monday() - weekday.num_days_from_monday()) % 7;
    until.checked_sub_days(Days::new(back.into()))
}

fn next_weekday(weekday: Weekday, from: NaiveDate) -> Option<NaiveDate> {
    let ahead = (7 + weekday.num_days_from_monday() - from.weekday().num_days_from_monday()) % 7;
    from.checked_add_days(Days::new(ahead.into()))
}

fn next_with_day(day: u32, today: NaiveDate) -> Option<NaiveDate> {
    // Two months in a row never both lack a day that any month has, except around February;
    // three months always hold one.
    (0..3).find_map(|months| {
        let month = today.with_day(1)?.checked_add_months(Months::new(months))?;
        month.with_day(day).filter(|date| *date >= today)
    })
}

impl Reading {
    /// What the slots of a matched phrase mean under this reading.
    pub fn read(self, held: Held) -> Option<When> {
        Some(match self {
            Self::Today => When::Today,
            Self::DaysAhead(days) => When::Days(days),
            Self::InUnits => {
                let number = held.number?;
                match held.unit? {
                    0 => When::Days(number),
                    1 => When::Days(number.saturating_mul(7)),
                    _ => When::Months(number),
                }
            }
            Self::ThisWeekend => When::Weekend(false),
            Self::NextWeekend => When::Weekend(true),
            Self::Weekday => When::Weekday(weekday(held.weekday?)?, true),
            Self::NextWeekday => When::Weekday(weekday(held.weekday?)?, false),
            Self::MonthDay => day_of(held.month?, held.day?, held.year),
            Self::PartOfMonth(day) => day_of(held.month?, day, held.year),
            Self::EndOfMonth => {
                let month = held.month?;
                // In February this is the 29th, which falls on the 28th in a common year.
                let last = (28..=31).rev().find(|day| MonthDay::new(month, *day).is_some())?;
                match held.year {
                    Some(year) => When::Exact(MonthDay::new(month, last)?.in_year(as_year(year))),
                    None => day_of(month, last, None),
                }
            }
            Self::WholeMonth => match held.year {
                Some(_) => day_of(held.month?, 1, held.year),
                None => When::Month(held.month?),
            },
            Self::NextMonth => When::NextMonth,
            Self::DaysBack(days) => When::DaysBack(days),
            Self::UnitsBack => match (held.number?, held.unit?) {
                (number, 0) => When::DaysBack(number),
                (number, 1) => When::DaysBack(number.saturating_mul(7)),
                (number, _) => When::MonthsBack(number),
            },
            Self::LastWeekday => When::LastWeekday(weekday(held.weekday?)?),
            Self::DayOfMonth => match held.day? {
                day @ 1..=31 => When::DayOfMonth(day),
                _ => When::Impossible,
            },
        })
    }
}

fn as_year(year: u32) -> i32 {
    i32::try_from(year).unwrap_or(i32::MAX)
}

fn weekday(days_from_monday: u32) -> Option<Weekday> {
    u8::try_from(days_from_monday).ok().and_then(|days| Weekday::try_from(days).ok())
}

fn day_of(month: u32, day: u32, year: Option<u32>) -> When {
    let found = match year {
        Some(year) => NaiveDate::from_ymd_opt(as_year(year), month, day).map(When::Exact),
        None => MonthDay::new(month, day).map(When::Yearly),
    };
    found.unwrap_or(When::Impossible)
}

/// A date phrase with its reading.
#[derive(Debug, Clone)]
pub(crate) struct DatePhrase {
    /// How it is read.
    pub reading: Reading,
    /// How it is written.
    pub patterns: Vec<Pattern>,
}

/// A date found in a line of words.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct DateFound {
    /// The first word.
    pub from: usize,
    /// The word after the last.
    pub to: usize,
    /// What it means.
    pub when: When,
}

/// The dates of a line in order, the longest phrase first at each place; `free` says whether a
/// word may belong to a date, `iso` reads a word that is a date by itself.
pub(crate) fn dates_in(
    line: &impl Line,
    length: usize,
    phrases: &[DatePhrase],
    free: impl Fn(usize) -> bool,
    iso: impl Fn(usize) -> Option<When>,
) -> Vec<DateFound> {
    let mut found = Vec::new();
    let mut at = 0;
    while at < length {
        let date = iso(at)
            .map(|when| DateFound { from: at, to: at + 1, when })
            .or_else(|| longest_at(line, at, phrases));
        match date {
            Some(date) if (date.from..date.to).all(&free) => {
                at = date.to;
                found.push(date);
            }
            _ => at += 1,
        }
    }
    found
}

fn longest_at(line: &impl Line, at: usize, phrases: &[DatePhrase]) -> Option<DateFound> {
    let mut best: Option<DateFound> = None;
    for phrase in phrases {
        for pattern in &phrase.patterns {
            let Some((to, held)) = pattern.longest(line, at) else { continue };
            if best.is_none_or(|best| to > best.to) {
                let Some(when) = phrase.reading.read(held) else { continue };
                best = Some(DateFound { from: at, to, when });
            }
        }
    }
    best.filter(|date| date.to > date.from)
}

/// Reads a word such as `2026-05-01`; an impossible one is [`When::Impossible`].
pub(crate) fn iso_date(word: &str) -> Option<When> {
    let mut parts = word.split('-');
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    if parts.next().is_some() || year.len() != 4 || month.len() > 2 || day.len() > 2 {
        return None;
    }
    let number = |text: &str| text.parse::<u32>().ok();
    Some(day_of(number(month)?, number(day)?, Some(number(year)?)))
}

/// Reads a word such as `5/1`, `1.5` or `31/12/2026` as a day in figures. Full stops make a day
/// only in a language that writes the day first.
pub(crate) fn date_in_figures(word: &str, figures: Figures) -> Option<When> {
    let mark = ['/', '.'].into_iter().find(|mark| word.contains(*mark))?;
    if mark == '.' && figures != Figures::DayFirst {
        return None;
    }
    let mut parts = word.split(mark);
    let (one, two, year) = (parts.next()?, parts.next()?, parts.next());
    let number = |text: &str| {
        let short = (1..=2).contains(&text.len());
        short.then(|| text.parse::<u32>().ok()).flatten()
    };
    if parts.next().is_some() {
        return None;
    }
    let (one, two) = (number(one)?, number(two)?);
    let year = match year.filter(|year| !year.is_empty()) {
        None => None,
        Some(year) if year.len() == 4 => Some(year.parse::<u32>().ok()?),
        Some(year) => Some(2000 + number(year)?),
    };
    let day_first = day_of(two, one, year);
    let month_first = day_of(one, two, year);
    Some(match (day_first, month_first) {
        (When::Impossible, other) | (other, When::Impossible) => other,
        (one, other) if one == other || figures == Figures::DayFirst => one,
        (_, other) if figures == Figures::MonthFirst => other,
        _ => When::Unclear,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    #[test]
    fn an_iso_date_is_read_whole_or_not_at_all() {
        assert_eq!(iso_date("2026-05-01"), Some(When::Exact(day("2026-05-01"))));
        assert_eq!(iso_date("2026-02-30"), Some(When::Impossible));
        for other in ["05-01", "2026-05", "2026-05-01-02", "26-05-01", "2026-005-01", ""] {
            assert_eq!(iso_date(other), None, "{other}");
        }
    }

    #[test]
    fn a_day_in_figures_is_read_where_it_is_clear() {
        let yearly = |month, d| When::Yearly(MonthDay::new(month, d).expect("a day"));
        let unclear = |word| date_in_figures(word, Figures::Unclear);
        assert_eq!(unclear("5/1"), Some(When::Unclear));
        assert_eq!(unclear("5/5"), Some(yearly(5, 5)));
        assert_eq!(unclear("5/13"), Some(yearly(5, 13)));
        assert_eq!(unclear("13/5"), Some(yearly(5, 13)));
        assert_eq!(unclear("13/45"), Some(When::Impossible));
        assert_eq!(unclear("0/0"), Some(When::Impossible));
        assert_eq!(unclear("13/5/2026"), Some(When::Exact(day("2026-05-13"))));
        for other in ["1.5", "5", "5/1/2/3", "500/1", "5/", "/", ""] {
            assert_eq!(unclear(other), None, "{other}");
        }
        let day_first = |word| date_in_figures(word, Figures::DayFirst);
        assert_eq!(day_first("5/1"), Some(yearly(1, 5)));
        assert_eq!(day_first("1.5"), Some(yearly(5, 1)));
        assert_eq!(day_first("01.05.26"), Some(When::Exact(day("2026-05-01"))));
        assert_eq!(day_first("31.4"), Some(When::Impossible));
        assert_eq!(day_first("5/13"), Some(yearly(5, 13)));
        let month_first = |word| date_in_figures(word, Figures::MonthFirst);
        assert_eq!(month_first("5/1"), Some(yearly(5, 1)));
        assert_eq!(month_first("13/5"), Some(yearly(5, 13)));
    }

    #[test]
    fn weekdays_and_weekends_are_the_coming_ones() {
        let wednesday = day("2026-04-15");
        let saturday = day("2026-04-18");
        let on = |when: When, today| when.counted_from(today).map(|d| d.to_string());
        let sat = |today_counts| When::Weekday(Weekday::Sat, today_counts);
        assert_eq!(on(sat(true), wednesday).as_deref(), Some("2026-04-18"));
        assert_eq!(on(sat(true), saturday).as_deref(), Some("2026-04-18"));
        assert_eq!(on(sat(false), saturday).as_deref(), Some("2026-04-25"));
        assert_eq!(on(When::Weekend(false), day("2026-04-19")).as_deref(), Some("2026-04-19"));
        assert_eq!(on(When::Weekend(true), day("2026-04-19")).as_deref(), Some("2026-04-25"));
        assert_eq!(on(When::Weekend(true), wednesday).as_deref(), Some("2026-04-25"));
    }

    #[test]
    fn the_next_day_with_a_number_skips_the_months_without_it() {
        let on = |d, today| When::DayOfMonth(d).counted_from(day(today)).map(|d| d.to_string());
        assert_eq!(on(31, "2026-02-10").as_deref(), Some("2026-03-31"));
        assert_eq!(on(10, "2026-02-10").as_deref(), Some("2026-02-10"));
        assert_eq!(on(9, "2026-12-10").as_deref(), Some("2027-01-09"));
    }

    #[test]
    fn what_was_done_lies_before_today() {
        let wednesday = day("2026-04-22");
        let on = |when: When| when.counted_back(wednesday).map(|d| d.to_string());
        let yearly = |month, d| When::Yearly(MonthDay::new(month, d).expect("a day"));
        assert_eq!(on(yearly(4, 3)).as_deref(), Some("2026-04-03"));
        assert_eq!(on(yearly(4, 22)).as_deref(), Some("2026-04-22"));
        assert_eq!(on(yearly(10, 5)).as_deref(), Some("2025-10-05"));
        // The day after tomorrow is not the one of last year.
        assert_eq!(on(yearly(4, 24)).as_deref(), Some("2026-04-24"));
        assert_eq!(on(When::DayOfMonth(30)).as_deref(), Some("2026-03-30"));
        assert_eq!(on(When::Weekday(Weekday::Wed, true)).as_deref(), Some("2026-04-22"));
        assert_eq!(on(When::LastWeekday(Weekday::Wed)).as_deref(), Some("2026-04-15"));
        assert_eq!(on(When::Weekend(false)).as_deref(), Some("2026-04-18"));
        assert_eq!(on(When::DaysBack(1)).as_deref(), Some("2026-04-21"));
        assert_eq!(on(When::MonthsBack(1)).as_deref(), Some("2026-03-22"));
        assert_eq!(on(When::Days(1)).as_deref(), Some("2026-04-23"));
        assert_eq!(on(When::DaysBack(u32::MAX)), None);
        assert_eq!(When::DaysBack(1).counted_back(NaiveDate::MIN), None);
        assert_eq!(When::LastWeekday(Weekday::Mon).counted_back(NaiveDate::MIN), None);
    }

    #[test]
    fn far_counts_and_the_end_of_the_calendar_give_no_date() {
        assert_eq!(When::Days(u32::MAX).counted_from(day("2026-01-01")), None);
        assert_eq!(When::Months(500).counted_from(day("2026-01-01")), None);
        assert_eq!(When::Days(7).counted_from(NaiveDate::MAX), None);
        assert_eq!(When::Weekend(true).counted_from(NaiveDate::MAX), None);
        let may = MonthDay::new(5, 1).expect("May 1");
        assert!(When::Yearly(may).counted_from(NaiveDate::MAX).is_some());
    }
}

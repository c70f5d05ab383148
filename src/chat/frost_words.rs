//! Frost dates as gardeners write them: "May 15 and October 5".

use super::understand::{
    DateFound, Figures, Pause, Phrases, When, Word, WordLine, date_in_figures, figures,
    matches_anywhere,
};
use crate::club::DayOrder;
use crate::planning::{Basis, MonthDay};

/// How many characters of a text are read.
const CHARACTERS: usize = 400;

/// What was understood of a text about frost dates.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum FrostReading {
    /// Both dates.
    Dates {
        /// The last frost in spring.
        last: MonthDay,
        /// The first frost in autumn.
        first: MonthDay,
        /// Average or trusted, where the text says so.
        basis: Option<Basis>,
    },
    /// It does not freeze there.
    Free,
    /// Only the last frost in spring; a single date is taken for it.
    OnlyLast(MonthDay),
    /// Only the first frost in autumn, as the words say.
    OnlyFirst(MonthDay),
    /// Days in figures, such as "5/6", of which it is not known whether the month stands first:
    /// what they mean if it does, and what if the day does.
    EitherWay(Box<FrostReading>, Box<FrostReading>),
    /// A date that the calendar does not have, as it was written.
    Impossible(String),
    /// No date, too many, or one without a clear day.
    NotUnderstood,
}

/// Reads frost dates.
///
/// The first date is the last spring frost unless words beside the dates ("first frost",
/// "autumn") say otherwise. A date may be written as `05-15`, `2026-05-15`, "May 15", "15 May" or
/// "mid May"; a year is left out of account. "5/1" is read in
/// the order that another date beside it shows ("5/15 10/5"), or else as the language writes it,
/// or else in the reader's order, and both ways where that is not known.
#[must_use]
pub fn read_frost(text: &str, phrases: &Phrases, order: Option<DayOrder>) -> FrostReading {
    let words = phrases.words(text, CHARACTERS, |_| false);
    let mut dates = phrases.dates_in(&words, |_| true);
    dates.extend(plain_dates(&words));
    dates.sort_by_key(|date| date.from);

    if let Some(date) = dates.iter().find(|date| date.when == When::Impossible) {
        return FrostReading::Impossible(as_written(&words, date));
    }
    // One that can be read in one way only decides for the other, whatever the language's own order.
    if let Some(shown) = order_shown(&words, &dates) {
        return reading(&words, ordered(&words, &dates, shown, |_| true), phrases);
    }
    let unclear = |date: &DateFound| date.when == When::Unclear;
    if !dates.iter().any(unclear) {
        return reading(&words, dates, phrases);
    }
    let in_order = |order| reading(&words, ordered(&words, &dates, order, unclear), phrases);
    match order {
        Some(order) => in_order(order),
        None => match [DayOrder::MonthFirst, DayOrder::DayFirst].map(in_order) {
            [FrostReading::NotUnderstood, _] | [_, FrostReading::NotUnderstood] => {
                FrostReading::NotUnderstood
            }
            [month_first, day_first] => {
                FrostReading::EitherWay(Box::new(month_first), Box::new(day_first))
            }
        },
    }
}

/// The order in which the days in figures are written, where one of them can be read in one way
/// only and none in the other only.
fn order_shown(words: &[Word], dates: &[DateFound]) -> Option<DayOrder> {
    let mut shown = dates.iter().filter_map(|date| {
        let mut numbers = words.get(date.from)?.plain.split('/').map(|part| figures(part, 1..=2));
        match (numbers.next()??, numbers.next()??) {
            (1..=12, 13..) => Some(DayOrder::MonthFirst),
            (13.., 1..=12) => Some(DayOrder::DayFirst),
            _ => None,
        }
    });
    let first = shown.next()?;
    shown.all(|other| other == first).then_some(first)
}

/// The dates, those in figures for which `meant` holds read in this order.
fn ordered(
    words: &[Word],
    dates: &[DateFound],
    order: DayOrder,
    meant: impl Fn(&DateFound) -> bool,
) -> Vec<DateFound> {
    let order = match order {
        DayOrder::MonthFirst => Figures::MonthFirst,
        DayOrder::DayFirst => Figures::DayFirst,
    };
    let read = |date: &DateFound| {
        let reread = words.get(date.from).filter(|_| meant(date));
        let when = reread.and_then(|word| date_in_figures(&word.plain, order));
        DateFound { when: when.unwrap_or(date.when), ..*date }
    };
    dates.iter().map(read).collect()
}

/// What the dates mean, and the words beside them.
fn reading(words: &[Word], dates: Vec<DateFound>, phrases: &Phrases) -> FrostReading {
    let mut days: Vec<(DateFound, MonthDay)> = Vec::new();
    for date in dates {
        match date.when {
            When::Yearly(day) => days.push((date, day)),
            When::Exact(exact) => days.push((date, exact.into())),
            // "Now", "in May" and "next week" name no day of every year.
            _ => {}
        }
    }
    let line = WordLine { words, calendar: &phrases.calendar };
    match days.as_slice() {
        [] if matches_anywhere(&phrases.frost.free, &line, 0..words.len()) => FrostReading::Free,
        // "none 10-05": no last frost, and then the first.
        [(date, day)] if date.from == 1 && matches_anywhere(&phrases.frost.free, &line, 0..1) => {
            FrostReading::OnlyFirst(*day)
        }
        [(date, day)] => match season_beside(&line, phrases, 0..date.from)
            .or_else(|| season_beside(&line, phrases, date.to..words.len()))
        {
            Some(Frost::First) => FrostReading::OnlyFirst(*day),
            Some(Frost::Last) | None => FrostReading::OnlyLast(*day),
        },
        [(one, day), (two, other_day)] => {
            let (last, first) = if autumn_comes_first(&line, phrases, one, two) {
                (*other_day, *day)
            } else {
                (*day, *other_day)
            };
            FrostReading::Dates { last, first, basis: basis(&line, phrases) }
        }
        _ => FrostReading::NotUnderstood,
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Frost {
    Last,
    First,
}

/// Which frost the words of a range name, if they name one.
fn season_beside(
    line: &WordLine<'_>,
    phrases: &Phrases,
    range: std::ops::Range<usize>,
) -> Option<Frost> {
    let last = matches_anywhere(&phrases.frost.last, line, range.clone());
    let first = matches_anywhere(&phrases.frost.first, line, range);
    match (last, first) {
        (true, false) => Some(Frost::Last),
        (false, true) => Some(Frost::First),
        _ => None,
    }
}

/// Whether the words say that the date written first is the autumn's.
fn autumn_comes_first(
    line: &WordLine<'_>,
    phrases: &Phrases,
    one: &DateFound,
    two: &DateFound,
) -> bool {
    let before = season_beside(line, phrases, 0..one.from);
    let between = season_beside(line, phrases, one.to..two.from);
    let after = season_beside(line, phrases, two.to..line.words.len());
    match (before, between, after) {
        // The names stand before the dates, or behind both: "5 October first frost, 15 May last".
        (Some(named), _, _) | (None, Some(named), Some(_)) => named == Frost::First,
        // A name between the dates belongs to the one it is not cut off from.
        (None, Some(named), None) => {
            let cut_off = line.words.get(one.to.saturating_sub(1)).map(|word| word.pause);
            let belongs_to_the_second = cut_off.is_some_and(|pause| pause != Pause::None);
            (named == Frost::First) != belongs_to_the_second
        }
        (None, None, Some(named)) => named == Frost::Last,
        (None, None, None) => false,
    }
}

fn basis(line: &WordLine<'_>, phrases: &Phrases) -> Option<Basis> {
    let all = 0..line.words.len();
    let average = matches_anywhere(&phrases.frost.average, line, all.clone());
    let trusted = matches_anywhere(&phrases.frost.trusted, line, all);
    match (average, trusted) {
        (true, false) => Some(Basis::Average),
        (false, true) => Some(Basis::Trusted),
        _ => None,
    }
}

/// Words that are a month and a day in figures: `05-15`.
fn plain_dates(words: &[Word]) -> impl Iterator<Item = DateFound> {
    words.iter().enumerate().filter_map(|(at, word)| {
        let (month, day) = word.plain.split_once('-')?;
        let (month, day) = (figures(month, 1..=2)?, figures(day, 1..=2)?);
        let when = MonthDay::new(month, day).map_or(When::Impossible, When::Yearly);
        Some(DateFound { from: at, to: at + 1, when })
    })
}

fn as_written(words: &[Word], date: &DateFound) -> String {
    let written = words.iter().take(date.to).skip(date.from).map(|word| word.written.as_str());
    written.collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn english() -> &'static Phrases {
        static ENGLISH: std::sync::OnceLock<Phrases> = std::sync::OnceLock::new();
        ENGLISH.get_or_init(|| {
            Phrases::parse(include_str!("../../locales/en/phrases.toml")).expect("the phrases")
        })
    }

    fn day(text: &str) -> MonthDay {
        text.parse().expect("a month-day")
    }

    fn dates(last: &str, first: &str, basis: Option<Basis>) -> FrostReading {
        FrostReading::Dates { last: day(last), first: day(first), basis }
    }

    #[test]
    fn both_dates_in_every_form() {
        for text in [
            "05-15 10-05",
            "2026-05-15 2026-10-05",
            "05-15, 10-05",
            "5-15 to 10-5",
            "May 15 and October 5",
            "may 15 oct 5",
            "15 may - 5 oct",
            "15 May–5 Oct",
            "may 15-oct 5",
            "15th of May to the 5th of October",
            "May 15th, Oct. 5th",
            "last frost May 15, first frost Oct 5",
            "first frost oct 5, last frost may 15",
            "first frost is Oct 5 and the last is May 15",
            "Oct 5 first frost, May 15 last frost",
            "spring May 15, autumn Oct 5",
            "fall: oct 5; spring: may 15",
            "oct 5 is the first frost, may 15",
            "oct 5, last frost may 15",
            "May 15, first frost oct 5",
            "may 15 2025 and oct 5 2025",
        ] {
            assert_eq!(read_frost(text, english(), None), dates("05-15", "10-05", None), "{text}");
        }
        let read = read_frost("mid May to early October", english(), None);
        assert_eq!(read, dates("05-15", "10-05", None));
        // In the south the season spans the new year.
        let read = read_frost("last frost sept 20, first frost may 1", english(), None);
        assert_eq!(read, dates("09-20", "05-01", None));
        let read = read_frost("end of may, 1st of september", english(), None);
        assert_eq!(read, dates("05-31", "09-01", None));
    }

    #[test]
    fn the_basis_is_heard() {
        let average = Some(Basis::Average);
        let trusted = Some(Basis::Trusted);
        for (text, basis) in [
            ("on average May 15 and Oct 5", average),
            ("usually may 15, oct 5", average),
            ("average last frost May 15 and first frost Oct 5", average),
            ("the dates I trust are May 15 and Oct 5", trusted),
            ("safe date may 15, oct 5", trusted),
            ("average may 15 but I trust oct 5", None),
        ] {
            assert_eq!(read_frost(text, english(), None), dates("05-15", "10-05", basis), "{text}");
        }
    }

    #[test]
    fn a_garden_without_frost() {
        for text in [
            "none",
            "No frost",
            "never freezes",
            "it doesn't freeze here",
            "frost-free",
            "we dont get any frost",
        ] {
            assert_eq!(read_frost(text, english(), None), FrostReading::Free, "{text}");
        }
        // A date says more than the word.
        let read = read_frost("no frost after May 15", english(), None);
        assert_eq!(read, FrostReading::OnlyLast(day("05-15")));
    }

    #[test]
    fn one_date_alone() {
        for text in ["May 15", "05-15", "last frost is may 15", "15 may last frost"] {
            assert_eq!(
                read_frost(text, english(), None),
                FrostReading::OnlyLast(day("05-15")),
                "{text}"
            );
        }
        for text in ["first frost Oct 5", "oct 5 first frost", "autumn: 10-05", "none 10-05"] {
            assert_eq!(
                read_frost(text, english(), None),
                FrostReading::OnlyFirst(day("10-05")),
                "{text}"
            );
        }
    }

    #[test]
    fn a_day_that_no_calendar_has_is_told_as_written() {
        for (text, written) in [
            ("02-31 10-05", "02-31"),
            ("May 15 and 31 September", "31 September"),
            ("15-05 05-10", "15-05"),
            ("Febuary 30", "Febuary 30"),
            ("2026-13-01", "2026-13-01"),
            ("May 15 to Oct 45", "Oct 45"),
        ] {
            let read = read_frost(text, english(), None);
            assert_eq!(read, FrostReading::Impossible(written.to_owned()), "{text}");
        }
        let read = read_frost("02-29 11-01", english(), None);
        assert_eq!(read, dates("02-29", "11-01", None));
    }

    #[test]
    fn what_is_not_clear_is_not_guessed() {
        for text in [
            "",
            "soon",
            "May",
            "in May",
            "next week",
            "tomorrow",
            "today and tomorrow",
            "May 15, Oct 5, Nov 1",
            "15 10",
            "05-15-10-05",
        ] {
            assert_eq!(read_frost(text, english(), None), FrostReading::NotUnderstood, "{text}");
        }
    }

    #[test]
    fn days_in_figures_are_read_in_the_order_that_is_known() {
        let spring = dates("05-15", "10-05", None);
        // One that can be read in one way only tells of the other.
        for text in
            ["5/15 10/5", "15/5 5/10", "last frost 5/15, first frost 10/5", "5/15/2026 10/5/2026"]
        {
            for order in [None, Some(DayOrder::MonthFirst), Some(DayOrder::DayFirst)] {
                assert_eq!(read_frost(text, english(), order), spring, "{text} {order:?}");
            }
        }
        let month_first = dates("05-06", "10-05", None);
        let day_first = dates("06-05", "05-10", None);
        let read = |order| read_frost("5/6 10/5", english(), order);
        assert_eq!(read(Some(DayOrder::MonthFirst)), month_first);
        assert_eq!(read(Some(DayOrder::DayFirst)), day_first);
        assert_eq!(read(None), FrostReading::EitherWay(Box::new(month_first), Box::new(day_first)));
        // A date that says its month tells nothing of the order of the other.
        assert!(matches!(
            read_frost("5/6 and October 5", english(), None),
            FrostReading::EitherWay(..)
        ));
        assert_eq!(read_frost("5/5 10/10", english(), None), dates("05-05", "10-10", None));
        assert_eq!(
            read_frost("13/45 10/5", english(), None),
            FrostReading::Impossible("13/45".to_owned())
        );
    }

    #[test]
    fn two_days_in_figures_are_read_in_one_order_in_every_language() {
        let knowledge = crate::chat::Knowledge::embedded().expect("the built-in data");
        for tag in ["en", "de", "fr", "es"] {
            let phrases = knowledge.tongue(&tag.parse().expect("a tag")).understanding.phrases();
            for (text, last, first) in [
                ("5/15 10/5", "05-15", "10-05"),
                ("5/5 10/15", "05-05", "10-15"),
                ("10/5 5/15", "10-05", "05-15"),
                ("15/5 10/5", "05-15", "05-10"),
                ("15/5 5/10", "05-15", "10-05"),
            ] {
                let read = read_frost(text, phrases, None);
                assert_eq!(read, dates(last, first, None), "{tag} {text}");
            }
        }
    }

    proptest! {
        #[test]
        fn no_text_makes_it_fail(text in any::<String>()) {
            let _ = read_frost(&text, english(), None);
        }

        #[test]
        fn no_mixture_of_dates_makes_it_fail(text in "([0-9]{1,3}|-| |may|first|last|frost|of|,|\\.){0,40}") {
            let _ = read_frost(&text, english(), None);
        }

        #[test]
        fn every_pair_of_days_is_read(a in 0_u64..365, b in 0_u64..365) {
            prop_assume!(a != b);
            let start = chrono::NaiveDate::from_ymd_opt(2025, 1, 1).expect("a date");
            let (a, b) = (start + chrono::Days::new(a), start + chrono::Days::new(b));
            let want = FrostReading::Dates { last: a.into(), first: b.into(), basis: None };
            let written = [
                format!("{} {}", a.format("%m-%d"), b.format("%m-%d")),
                format!("{} and {}", a.format("%B %-d"), b.format("%B %-d")),
                format!("{} - {}", a.format("%-d %b"), b.format("%-d %b")),
            ];
            for text in written {
                prop_assert_eq!(read_frost(&text, english(), None), want.clone(), "{}", text);
            }
        }
    }
}

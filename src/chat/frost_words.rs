//! Frost dates as gardeners write them: "May 15 and October 5".

use super::understand::{
    DateFound, Pause, Phrases, When, Word, WordLine, figures, matches_anywhere, split,
};
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
    /// A date that the calendar does not have, as it was written.
    Impossible(String),
    /// No date, too many, or one without a clear day.
    NotUnderstood,
}

/// Reads frost dates.
///
/// The first date is the last spring frost unless words beside the dates ("first frost",
/// "autumn") say otherwise. A date may be written as `05-15`, `2026-05-15`, "May 15", "15 May" or
/// "mid May"; a year is left out of account. "5/15" is not guessed at.
#[must_use]
pub fn read_frost(text: &str, phrases: &Phrases) -> FrostReading {
    let mut words = split(text, CHARACTERS);
    phrases.recognise(&mut words);
    let mut dates = phrases.dates_in(&words, |_| true);
    dates.extend(plain_dates(&words));
    dates.sort_by_key(|date| date.from);

    if let Some(date) = dates.iter().find(|date| date.when == When::Impossible) {
        return FrostReading::Impossible(as_written(&words, date));
    }
    let mut days: Vec<(DateFound, MonthDay)> = Vec::new();
    for date in dates {
        match date.when {
            When::Yearly(day) => days.push((date, day)),
            When::Exact(exact) => days.push((date, exact.into())),
            // "Now", "in May" and "next week" name no day of every year.
            _ => {}
        }
    }
    let line = WordLine { words: &words, calendar: &phrases.calendar };
    match days.as_slice() {
        [] if matches_anywhere(&phrases.frost.free, &line, 0..words.len()) => FrostReading::Free,
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
        // The names stand before the dates, or only one of them is named.
        (Some(named), _, _) => named == Frost::First,
        // They stand behind: "5 October first frost, 15 May last frost".
        (None, Some(named), Some(_)) => named == Frost::First,
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

//! Patterns of words, as the phrase lists write them.
//!
//! | written | matches |
//! |---|---|
//! | `word` | that word |
//! | `(a\|b c)` | one of several |
//! | `[a\|b]` | one of several, or nothing |
//! | `..` | up to [`LONGEST_GAP`] words of any kind |
//! | `@class` | one of a class of the list's `[classes]` |
//! | `{slot}` | a crop, a date, a month and so on |
//!
//! A pattern never reaches over the end of a sentence.

use super::words::Pause;

/// How many words a gap `..` may pass over.
pub(crate) const LONGEST_GAP: usize = 6;

/// A place in a pattern that something other than a fixed word fills.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Slot {
    /// A crop, or several in a list.
    Crop,
    /// A date.
    Date,
    /// The name of a month.
    Month,
    /// The name of a month that is no everyday word besides.
    ClearMonth,
    /// A day of the month as a number.
    Day,
    /// A day of the month with its ending, as in "15th".
    OrdinalDay,
    /// A number in figures or as a word.
    Number,
    /// Days, weeks or months.
    Unit,
    /// The name of a day of the week.
    Weekday,
    /// The name of a day of the week that is no everyday word besides.
    ClearWeekday,
    /// A year in four figures.
    Year,
    /// Any figure; only among the quantities of a question.
    Figure,
    /// A second figure of one phrase, the whole of which the first is a part.
    Total,
}

impl Slot {
    /// The slot that the phrase lists call so.
    pub(super) fn named(name: &str) -> Option<Self> {
        Some(match name {
            "crop" => Self::Crop,
            "date" => Self::Date,
            "month" => Self::Month,
            "clear_month" => Self::ClearMonth,
            "day" => Self::Day,
            "ordinal_day" => Self::OrdinalDay,
            "number" => Self::Number,
            "unit" => Self::Unit,
            "weekday" => Self::Weekday,
            "clear_weekday" => Self::ClearWeekday,
            "year" => Self::Year,
            "figure" => Self::Figure,
            "total" => Self::Total,
            _ => return None,
        })
    }
}

/// What the slots of a match held.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) struct Held {
    /// 1 to 12.
    pub month: Option<u32>,
    /// The day of the month as written, possible or not.
    pub day: Option<u32>,
    /// A count.
    pub number: Option<u32>,
    /// 0 days, 1 weeks, 2 months.
    pub unit: Option<u32>,
    /// 0 Monday to 6 Sunday.
    pub weekday: Option<u32>,
    /// The year.
    pub year: Option<u32>,
    /// The place of a figure in its line.
    pub figure: Option<u32>,
    /// The place of a second figure in its line.
    pub total: Option<u32>,
}

impl Held {
    fn with(mut self, slot: Slot, value: u32) -> Self {
        let place = match slot {
            Slot::Crop | Slot::Date => return self,
            Slot::Month | Slot::ClearMonth => &mut self.month,
            Slot::Day | Slot::OrdinalDay => &mut self.day,
            Slot::Number => &mut self.number,
            Slot::Unit => &mut self.unit,
            Slot::Weekday | Slot::ClearWeekday => &mut self.weekday,
            Slot::Year => &mut self.year,
            Slot::Figure => &mut self.figure,
            Slot::Total => &mut self.total,
        };
        *place = Some(value);
        self
    }
}

/// A line of words that a pattern is held against.
pub(crate) trait Line {
    /// The vocabulary number of the word at `at`, where it is a plain word that has one.
    fn word(&self, at: usize) -> Option<u32>;
    /// What the item at `at` gives for `slot`, if anything.
    fn slot(&self, at: usize, slot: Slot) -> Option<u32>;
    /// The pause after the item at `at`; `None` past the end of the line.
    fn pause(&self, at: usize) -> Option<Pause>;
}

/// A part of a pattern.
#[derive(Debug, Clone)]
pub(super) enum Element {
    /// The word with this number.
    Word(u32),
    /// One of these single words, sorted; most choices are only such.
    OneWordOf(Vec<u32>),
    /// One of several sequences.
    OneOf(Vec<Vec<Element>>),
    /// One of several sequences, or nothing.
    Maybe(Vec<Vec<Element>>),
    /// Some words of any kind.
    Gap,
    /// A slot.
    Slot(Slot),
}

/// The end of a match (exclusive) and what its slots held.
pub(crate) type End = (usize, Held);

/// A compiled pattern.
#[derive(Debug, Clone)]
pub(crate) struct Pattern {
    elements: Vec<Element>,
    firsts: Firsts,
}

/// What a match may begin with: most patterns are ruled out by their first word.
#[derive(Debug, Clone, Default)]
struct Firsts {
    /// Sorted.
    words: Vec<u32>,
    slots: Vec<Slot>,
    anything: bool,
}

impl Firsts {
    fn of(elements: &[Element]) -> Self {
        let mut firsts = Self::default();
        firsts.collect(elements);
        firsts.words.sort_unstable();
        firsts.words.dedup();
        firsts
    }

    /// Adds the beginnings of a sequence, element after element while they may match nothing.
    fn collect(&mut self, elements: &[Element]) {
        for element in elements {
            match element {
                Element::Word(id) => self.words.push(*id),
                Element::OneWordOf(ids) => self.words.extend(ids),
                Element::Slot(slot) => self.slots.push(*slot),
                Element::Gap => self.anything = true,
                Element::OneOf(ways) | Element::Maybe(ways) => {
                    for way in ways {
                        self.collect(way);
                    }
                }
            }
            if !matches!(element, Element::Maybe(_)) {
                return;
            }
        }
        // Every element may match nothing.
        self.anything = true;
    }

    fn may_match(&self, line: &impl Line, at: usize) -> bool {
        self.anything
            || line.word(at).is_some_and(|id| self.words.binary_search(&id).is_ok())
            || self.slots.iter().any(|slot| line.slot(at, *slot).is_some())
    }
}

impl Pattern {
    /// A pattern of these elements.
    pub(super) fn new(elements: Vec<Element>) -> Self {
        Self { firsts: Firsts::of(&elements), elements }
    }

    /// Every end that a match from `at` may have, each once.
    pub fn ends(&self, line: &impl Line, at: usize) -> Vec<End> {
        if !self.firsts.may_match(line, at) {
            return Vec::new();
        }
        sequence_ends(&self.elements, line, vec![(at, Held::default())])
    }

    /// The earliest end of a match from `at`.
    pub fn shortest(&self, line: &impl Line, at: usize) -> Option<usize> {
        self.ends(line, at).into_iter().map(|(end, _)| end).min()
    }

    /// The latest end of a match from `at`, with what its slots held.
    pub fn longest(&self, line: &impl Line, at: usize) -> Option<End> {
        self.ends(line, at).into_iter().max_by_key(|(end, _)| *end)
    }
}

/// Whether one of the patterns matches somewhere within `range`.
pub(crate) fn matches_anywhere(
    patterns: &[Pattern],
    line: &impl Line,
    range: std::ops::Range<usize>,
) -> bool {
    let end = range.end;
    range.into_iter().any(|at| {
        patterns.iter().filter_map(|p| p.shortest(line, at)).any(|matched| matched <= end)
    })
}

fn sequence_ends(elements: &[Element], line: &impl Line, mut from: Vec<End>) -> Vec<End> {
    let start = from.first().map_or(0, |(at, _)| *at);
    for element in elements {
        let mut next: Vec<End> = Vec::new();
        for end in from {
            // A match may begin after a pause but not reach over the end of a sentence.
            let at = end.0;
            let over = at > start && line.pause(at - 1) == Some(Pause::Sentence);
            element_ends(element, line, end, over, &mut next);
        }
        if next.is_empty() {
            return next;
        }
        from = next;
    }
    from
}

fn element_ends(
    element: &Element,
    line: &impl Line,
    (at, held): End,
    over: bool,
    out: &mut Vec<End>,
) {
    match element {
        Element::Word(id) if !over && line.word(at) == Some(*id) => add(out, (at + 1, held)),
        Element::OneWordOf(ids)
            if !over && line.word(at).is_some_and(|id| ids.binary_search(&id).is_ok()) =>
        {
            add(out, (at + 1, held));
        }
        Element::Slot(slot) if !over => {
            if let Some(value) = line.slot(at, *slot) {
                add(out, (at + 1, held.with(*slot, value)));
            }
        }
        Element::OneOf(ways) if !over => {
            for end in ways.iter().flat_map(|way| sequence_ends(way, line, vec![(at, held)])) {
                add(out, end);
            }
        }
        Element::Maybe(ways) => {
            add(out, (at, held));
            if !over {
                for end in ways.iter().flat_map(|way| sequence_ends(way, line, vec![(at, held)])) {
                    add(out, end);
                }
            }
        }
        Element::Gap => {
            add(out, (at, held));
            for passed in at..at + LONGEST_GAP {
                let before = passed.checked_sub(1).and_then(|before| line.pause(before));
                let sentence_ended = (over || passed > at) && before == Some(Pause::Sentence);
                if sentence_ended || line.pause(passed).is_none() {
                    break;
                }
                add(out, (passed + 1, held));
            }
        }
        _ => {}
    }
}

fn add(out: &mut Vec<End>, end: End) {
    if out.iter().all(|(at, _)| *at != end.0) {
        out.push(end);
    }
}

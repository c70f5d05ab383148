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

use std::collections::HashMap;

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
}

impl Slot {
    fn named(name: &str) -> Option<Self> {
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

#[derive(Debug, Clone)]
enum Element {
    Word(u32),
    /// Single words, sorted: most choices are only these.
    OneWordOf(Vec<u32>),
    OneOf(Vec<Vec<Element>>),
    Maybe(Vec<Vec<Element>>),
    Gap,
    Slot(Slot),
}

/// The end of a match (exclusive) and what its slots held.
pub(crate) type End = (usize, Held);

/// A compiled pattern.
#[derive(Debug, Clone)]
pub(crate) struct Pattern(Vec<Element>);

/// Gives each word of the patterns its number and keeps the classes.
#[derive(Debug, Default)]
pub(crate) struct Compiler {
    ids: HashMap<String, u32>,
    classes: HashMap<String, Vec<Vec<Element>>>,
}

impl Compiler {
    /// The number of `word`, a new one where it is met for the first time.
    pub fn id(&mut self, word: &str) -> u32 {
        let next = u32::try_from(self.ids.len()).unwrap_or(u32::MAX);
        *self.ids.entry(word.to_owned()).or_insert(next)
    }

    /// Adds a class; its entries are patterns and may name earlier classes.
    pub fn class(&mut self, name: &str, entries: &[String]) -> Result<(), String> {
        let ways = entries.iter().map(|entry| self.sequence(entry)).collect::<Result<_, _>>()?;
        self.classes.insert(name.to_owned(), ways);
        Ok(())
    }

    /// Compiles one pattern.
    pub fn pattern(&mut self, text: &str) -> Result<Pattern, String> {
        let elements = self.sequence(text)?;
        if elements.is_empty() {
            return Err("an empty pattern".to_owned());
        }
        Ok(Pattern(elements))
    }

    /// The numbers of all words that were met.
    pub fn into_ids(self) -> HashMap<String, u32> {
        self.ids
    }

    fn sequence(&mut self, text: &str) -> Result<Vec<Element>, String> {
        let mut elements = Vec::new();
        let mut rest = text.trim_start();
        while let Some(first) = rest.chars().next() {
            let (element, after) = match first {
                '(' => {
                    let (inside, after) = enclosed(rest, '(', ')')?;
                    (one_of(self.choices(inside)?), after)
                }
                '[' => {
                    let (inside, after) = enclosed(rest, '[', ']')?;
                    (Element::Maybe(self.choices(inside)?), after)
                }
                '{' => {
                    let (inside, after) = enclosed(rest, '{', '}')?;
                    let slot = Slot::named(inside).ok_or(format!("no slot '{inside}'"))?;
                    (Element::Slot(slot), after)
                }
                _ => {
                    let end = rest.find(char::is_whitespace).unwrap_or(rest.len());
                    let (word, after) = rest.split_at(end);
                    (self.single(word)?, after)
                }
            };
            elements.push(element);
            rest = after.trim_start();
        }
        Ok(elements)
    }

    fn choices(&mut self, inside: &str) -> Result<Vec<Vec<Element>>, String> {
        let mut ways = Vec::new();
        for choice in split_choices(inside) {
            let way = self.sequence(choice)?;
            if way.is_empty() {
                return Err(format!("an empty choice in '{inside}'"));
            }
            ways.push(way);
        }
        Ok(ways)
    }

    fn single(&mut self, word: &str) -> Result<Element, String> {
        if word == ".." {
            return Ok(Element::Gap);
        }
        if let Some(class) = word.strip_prefix('@') {
            let ways = self.classes.get(class).ok_or(format!("no class '{class}'"))?;
            return Ok(one_of(ways.clone()));
        }
        let plain = crate::catalogue::normalise(word);
        if plain.is_empty() || plain.contains(|c: char| !c.is_alphanumeric()) {
            return Err(format!("'{word}' is not one word"));
        }
        Ok(Element::Word(self.id(&plain)))
    }
}

fn one_of(ways: Vec<Vec<Element>>) -> Element {
    let mut single: Vec<u32> = ways
        .iter()
        .filter_map(|way| match way.as_slice() {
            [Element::Word(id)] => Some(*id),
            _ => None,
        })
        .collect();
    if single.len() == ways.len() {
        single.sort_unstable();
        Element::OneWordOf(single)
    } else {
        Element::OneOf(ways)
    }
}

/// What stands between `open` at the start of `text` and its `close`, and what follows.
fn enclosed(text: &str, open: char, close: char) -> Result<(&str, &str), String> {
    let mut depth = 0_usize;
    for (at, letter) in text.char_indices() {
        if letter == open {
            depth += 1;
        } else if letter == close {
            depth = depth.saturating_sub(1);
            if depth == 0 {
                let inside = text.get(open.len_utf8()..at).unwrap_or_default();
                return Ok((inside, text.get(at + close.len_utf8()..).unwrap_or_default()));
            }
        }
    }
    Err(format!("'{open}' without '{close}' in '{text}'"))
}

/// Splits at the bars that are not inside further brackets.
fn split_choices(inside: &str) -> Vec<&str> {
    let mut depth = 0_usize;
    inside
        .split(|letter| {
            match letter {
                '(' | '[' => depth += 1,
                ')' | ']' => depth = depth.saturating_sub(1),
                _ => {}
            }
            letter == '|' && depth == 0
        })
        .collect()
}

impl Pattern {
    /// Every end that a match from `at` may have, each once.
    pub fn ends(&self, line: &impl Line, at: usize) -> Vec<End> {
        sequence_ends(&self.0, line, vec![(at, Held::default())])
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
        Element::OneWordOf(ids) if !over => {
            if line.word(at).is_some_and(|id| ids.binary_search(&id).is_ok()) {
                add(out, (at + 1, held));
            }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chat::understand::words::{Word, split};

    struct Plain(Vec<Word>);

    impl Line for Plain {
        fn word(&self, at: usize) -> Option<u32> {
            self.0.get(at)?.id
        }
        fn slot(&self, at: usize, slot: Slot) -> Option<u32> {
            (slot == Slot::Number).then(|| self.0.get(at)?.plain.parse().ok()).flatten()
        }
        fn pause(&self, at: usize) -> Option<Pause> {
            Some(self.0.get(at)?.pause)
        }
    }

    fn matches(pattern: &str, text: &str) -> Option<(usize, usize)> {
        let mut compiler = Compiler::default();
        compiler.class("start", &["start".into(), "(set|put) out".into()]).expect("class");
        let pattern = compiler.pattern(pattern).expect("pattern");
        let ids = compiler.into_ids();
        let mut words = split(text, 400);
        for word in &mut words {
            word.id = ids.get(&word.plain).copied();
        }
        let line = Plain(words);
        (0..line.0.len()).find_map(|at| pattern.shortest(&line, at).map(|end| (at, end)))
    }

    #[test]
    fn choices_options_gaps_and_classes() {
        assert_eq!(matches("can (i|we) [still] @start", "Well, can we start?"), Some((1, 4)));
        assert_eq!(matches("can (i|we) [still] @start", "can I still put out"), Some((0, 5)));
        assert_eq!(matches("can (i|we) [still] @start", "can I never start"), None);
        assert_eq!(matches("can .. @start", "can my basil in cells start"), Some((0, 6)));
        assert_eq!(matches("can .. @start", "can a b c d e f g start"), None);
        assert_eq!(matches("in {number} start", "start in 4 start"), Some((1, 4)));
        assert_eq!(matches("(a (b|c)|d)", "x a c"), Some((1, 3)));
    }

    #[test]
    fn no_match_over_the_end_of_a_sentence() {
        assert_eq!(matches("can .. start", "yes we can. start it"), None);
        assert_eq!(matches("can start", "can, start"), Some((0, 2)));
        assert_eq!(matches("can start", "can! start"), None);
        assert_eq!(matches("start", "can! start"), Some((1, 2)));
    }

    #[test]
    fn mistakes_in_a_pattern_are_told() {
        let mut compiler = Compiler::default();
        for bad in ["", "(a", "[a|]", "@nothing", "{nothing}", "a,b"] {
            assert!(compiler.pattern(bad).is_err(), "{bad}");
        }
    }
}

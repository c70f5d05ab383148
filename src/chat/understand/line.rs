//! A question as a line of items: words, crops and dates.

use super::pattern::{Line, Slot};
use super::phrases::{Calendar, Phrases};
use super::words::{Pause, Word};

/// What an item of a question is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Sort {
    /// A word by itself.
    Word,
    /// A crop, an ambiguous crop word, or several in a list.
    Crops,
    /// A date.
    Date,
    /// A name of something that the catalogue does not know.
    Unknown,
    /// Words that hold a crop's name without meaning the crop: "tomato soup".
    NoCrop,
}

/// A stretch of words that is one thing.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Item {
    /// What it is.
    pub sort: Sort,
    /// The first word.
    pub from: usize,
    /// The word after the last.
    pub to: usize,
}

/// The words alone, for dates.
pub(crate) struct WordLine<'a> {
    /// The words.
    pub words: &'a [Word],
    /// The names of months and so on.
    pub calendar: &'a Calendar,
}

impl Line for WordLine<'_> {
    fn word(&self, at: usize) -> Option<u32> {
        self.words.get(at)?.id
    }

    fn slot(&self, at: usize, slot: Slot) -> Option<u32> {
        let word = self.words.get(at)?;
        let named = |names: &std::collections::HashMap<u32, u32>| names.get(&word.id?).copied();
        let clear = || word.id.is_some_and(|id| !self.calendar.unclear.contains(&id));
        match slot {
            Slot::Month => named(&self.calendar.months),
            Slot::ClearMonth => named(&self.calendar.months).filter(|_| clear()),
            Slot::Weekday => named(&self.calendar.weekdays),
            Slot::ClearWeekday => named(&self.calendar.weekdays).filter(|_| clear()),
            Slot::Unit => named(&self.calendar.units),
            Slot::Number => figures(&word.plain, 1..=4).or_else(|| named(&self.calendar.numbers)),
            Slot::Day => figures(&word.plain, 1..=2).or_else(|| self.ordinal(word)),
            Slot::OrdinalDay => self.ordinal(word),
            Slot::Year => figures(&word.plain, 4..=4).filter(|year| (2000..2200).contains(year)),
            Slot::Crop | Slot::Date | Slot::Figure | Slot::Total => None,
        }
    }

    fn pause(&self, at: usize) -> Option<Pause> {
        Some(self.words.get(at)?.pause)
    }
}

impl WordLine<'_> {
    fn ordinal(&self, word: &Word) -> Option<u32> {
        let mut endings = self.calendar.day_endings.iter();
        endings.find_map(|ending| figures(word.plain.strip_suffix(ending.as_str())?, 1..=2))
    }
}

/// The number that `text` writes in so many figures.
pub(crate) fn figures(text: &str, count: std::ops::RangeInclusive<usize>) -> Option<u32> {
    let plain = count.contains(&text.len()) && text.bytes().all(|b| b.is_ascii_digit());
    if plain { text.parse().ok() } else { None }
}

/// The items of a question, for intents and steps.
pub(crate) struct ItemLine<'a> {
    /// The words that the items are made of.
    pub words: &'a [Word],
    /// The items in order.
    pub items: Vec<Item>,
}

impl Line for ItemLine<'_> {
    fn word(&self, at: usize) -> Option<u32> {
        let item = self.items.get(at)?;
        if item.sort == Sort::Word { self.words.get(item.from)?.id } else { None }
    }

    fn slot(&self, at: usize, slot: Slot) -> Option<u32> {
        let sort = self.items.get(at)?.sort;
        match slot {
            Slot::Crop => (sort == Sort::Crops).then_some(0),
            Slot::Date => (sort == Sort::Date).then_some(0),
            _ => None,
        }
    }

    fn pause(&self, at: usize) -> Option<Pause> {
        Some(self.words.get(self.items.get(at)?.to.checked_sub(1)?)?.pause)
    }
}

impl<'a> ItemLine<'a> {
    /// Puts the stretches that are known to be something, in order and not overlapping, between
    /// the words that remain.
    pub fn new(words: &'a [Word], stretches: &[Item]) -> Self {
        let mut items = Vec::with_capacity(words.len());
        let mut at = 0;
        for stretch in stretches {
            items.extend((at..stretch.from).map(word_item));
            items.push(*stretch);
            at = stretch.to;
        }
        items.extend((at..words.len()).map(word_item));
        Self { words, items }
    }

    /// The word that the item at `at` is, where it is one.
    pub fn plain_word(&self, at: usize) -> Option<&Word> {
        let item = self.items.get(at).filter(|item| item.sort == Sort::Word)?;
        self.words.get(item.from)
    }

    /// Whether any item is of this sort.
    pub fn has(&self, sort: Sort) -> bool {
        self.items.iter().any(|item| item.sort == sort)
    }

    /// Takes each of these words for a crop; whether there was one.
    pub fn put_crop_for(&mut self, pronouns: &std::collections::HashSet<u32>) -> bool {
        let mut put = false;
        for at in 0..self.items.len() {
            let stands_for_one = self.word(at).is_some_and(|id| pronouns.contains(&id));
            if let Some(item) = self.items.get_mut(at).filter(|_| stands_for_one) {
                item.sort = Sort::Crops;
                put = true;
            }
        }
        put
    }

    /// Makes one item of crops that stand in a list: "tomato, basil and dill".
    pub fn join_lists(&mut self, phrases: &Phrases) {
        let mut joined: Vec<Item> = Vec::with_capacity(self.items.len());
        let mut waiting: Option<Item> = None;
        for item in &self.items {
            let and = self.words.get(item.from).and_then(|word| word.id);
            let is_and = item.sort == Sort::Word && and.is_some_and(|id| phrases.and.contains(&id));
            match (joined.last_mut(), item.sort) {
                (Some(last), Sort::Crops) if last.sort == Sort::Crops => {
                    last.to = item.to;
                    waiting = None;
                    continue;
                }
                (Some(last), Sort::Word)
                    if last.sort == Sort::Crops && is_and && waiting.is_none() =>
                {
                    waiting = Some(*item);
                    continue;
                }
                _ => {}
            }
            joined.extend(waiting.take());
            joined.push(*item);
        }
        joined.extend(waiting);
        self.items = joined;
    }
}

fn word_item(at: usize) -> Item {
    Item { sort: Sort::Word, from: at, to: at + 1 }
}

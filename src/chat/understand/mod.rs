//! What a gardener's words mean: the crops, the step, the day and the question.
//!
//! The code knows no language. Every word it looks for stands in a language's `phrases.toml`
//! (patterns of words; that file explains how they are written) and in its crop names. Nothing here fails on any text.
//!
//! A question is read in this order: its words; the names in it, the longest first; the dates
//! among the words that remain; unknown names in a crop's place; then its intent, the first rule
//! of the list that holds, and its step, the one named first.

mod compiler;
mod crops;
mod dates;
mod day_ahead;
mod figure_line;
mod intent;
mod line;
mod list;
mod lost;
mod own_names;
mod pattern;
mod phrase_file;
mod phrases;
mod quantities;
mod ripe_by;
mod sown;
mod spelling;
mod strange;
mod subject;
mod unknown;
mod word_forms;
mod words;

#[cfg(test)]
mod other_language_tests;
#[cfg(test)]
mod question_tests;
#[cfg(test)]
mod spanish_tests;
#[cfg(test)]
mod tests;

use chrono::{Datelike, Months, NaiveDate};
use serde::{Deserialize, Serialize};

use crate::catalogue::{AmbiguousWord, Catalogue, Meaning, Names};
use crate::planning::{CropId, Kind, Step};
use crops::{NameFinder, Named, as_written, joined};
use dates::{dates_in, iso_date};
use line::{Item, ItemLine, Sort};

pub(super) use dates::{DateFound, When, date_in_figures};
pub(super) use line::{WordLine, figures};
pub(super) use pattern::matches_anywhere;
pub(super) use phrase_file::Figures;
pub(super) use words::{Pause, Word};

pub use day_ahead::DayAhead;
pub use own_names::OwnName;
pub use sown::{CameUp, SownText, ToldDay};
pub use subject::Subject;

pub use phrases::{Phrases, PhrasesError};
pub use quantities::{Figure, Quantities, Scale, SeedAge, Temperature};

/// How many characters of a question are read; what stands behind them is not looked at.
pub const QUESTION_CHARACTERS: usize = 400;

/// How many characters of a list of crops are read: enough for a hundred names.
pub const LIST_CHARACTERS: usize = 2_000;

/// What a question is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Intent {
    /// Whether to start a crop, or take another step with it, on a day.
    CanStart,
    /// When a step is due.
    When,
    /// What there is to start or do.
    WhatNow,
    /// How it is sown: depth, warmth, light, spacing, days to come up.
    How,
    /// Whether or when it gives a harvest.
    WillItRipen,
    /// How many seeds to sow for so many plants.
    HowMany,
    /// What a measured soil temperature allows to sow.
    SoilTemperature,
    /// What a germination test at home says of the seed.
    GerminationTest,
    /// How long seed takes to come up at a temperature.
    DaysToEmerge,
    /// What the bot can do; also a bare greeting.
    Help,
    /// Anything else. The crops that were named are kept.
    Unknown,
}

/// A name in a crop's place that the catalogue does not know.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct UnknownName {
    /// As it was written.
    pub written: String,
    /// Up to three crops whose names are near, the nearest first.
    pub near: Vec<CropId>,
}

/// What was understood of a question.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Understood {
    /// What it is about.
    pub intent: Intent,
    /// The crops it names, in its order, each once.
    pub crops: Vec<CropId>,
    /// The step it names, if any. "Plant" without a place names none.
    pub step: Option<Step>,
    /// The day it is about; today where it names none.
    ///
    /// A day without a year is its next occurrence, today included. "Early", "mid" and "late" May
    /// are the 5th, 15th and 25th, "start" and "end" of May the first and last day, "in May" the
    /// 1st, or today while it is May. "This weekend" is Saturday, or today on a Sunday; "on
    /// Saturday" and "next Saturday" are both the coming one, and only "next" leaves today out.
    /// "5/1" and days that no calendar has are told in `date_trouble`.
    pub on: NaiveDate,
    /// The last day of the month, where it is about a month as a whole.
    pub until: Option<NaiveDate>,
    /// The day by which a harvest is asked for: "will it be ripe in August?" has the last of that
    /// month, and says nothing of the day of sowing.
    pub ripe_by: Option<NaiveDate>,
    /// A day gone by that a question names beside a crop and nothing else, as it was written; the
    /// question is then about today.
    pub gone_by: Option<String>,
    /// Words that may mean several crops.
    pub ambiguous: Vec<AmbiguousWord>,
    /// Names that are no crop's, or equally near to several.
    pub unknown_words: Vec<UnknownName>,
    /// The kind of crops it is limited to, as in "which herbs"; only where it names no crop.
    pub kind: Option<Kind>,
    /// Whether a question about the harvest wants to know its day.
    pub asks_when: bool,
    /// Whether it names a day, "now" and "today" included.
    pub date_given: bool,
    /// A day that was named and cannot be reckoned with.
    pub date_trouble: Option<DateTrouble>,
    /// The quantities it gives: plants wanted, temperature, seed age and so on.
    pub quantities: Quantities,
}

/// Why a day that was named cannot be reckoned with, with the day as it was written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum DateTrouble {
    /// No calendar has it: "31 February", "13/45".
    Impossible(String),
    /// It may be one of two, as "5/1", or lies beyond reckoning.
    Unclear(String),
}

/// What was understood of a list of crops.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct CropList {
    /// The crops, in the order of the list, each once.
    pub found: Vec<CropId>,
    /// Words that may mean several crops.
    pub ambiguous: Vec<AmbiguousWord>,
    /// Pieces that are no crop's name, each with the names to offer for it.
    pub unknown: Vec<UnknownName>,
}

impl CropList {
    fn add_meaning(&mut self, meaning: &Meaning) {
        match meaning {
            Meaning::Crop(id) if !self.found.contains(id) => self.found.push(id.clone()),
            Meaning::Ambiguous(word) if self.ambiguous.iter().all(|w| w.means != word.means) => {
                self.ambiguous.push(word.clone());
            }
            _ => {}
        }
    }

    fn add_unknown(&mut self, name: UnknownName) {
        if !self.unknown.contains(&name) {
            self.unknown.push(name);
        }
    }
}

/// Understands one language: its phrases and its names of crops.
#[derive(Debug)]
pub struct Understanding {
    phrases: Phrases,
    names: NameFinder,
}

impl Understanding {
    /// Builds the understanding of a language from the text of its `phrases.toml` and its names.
    ///
    /// # Errors
    /// A [`PhrasesError`] that says where the phrase list is wrong.
    pub fn new(phrases: &str, names: Names) -> Result<Self, PhrasesError> {
        Ok(Self { phrases: Phrases::parse(phrases)?, names: NameFinder::new(names) })
    }

    /// The understanding of English, which is built into the program.
    ///
    /// ```
    /// use sowbell::catalogue::Catalogue;
    /// use sowbell::chat::understand::{Intent, Understanding};
    /// let english = Understanding::english(&Catalogue::embedded()?)?;
    /// let today = chrono::NaiveDate::from_ymd_opt(2026, 4, 15).ok_or("a date")?;
    /// let understood = english.understand("can i start my cukes in 2 weeks?", today);
    /// assert_eq!(understood.intent, Intent::CanStart);
    /// assert_eq!(understood.crops[0].as_str(), "cucumber");
    /// assert_eq!(understood.on.to_string(), "2026-04-29");
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    /// A [`PhrasesError`] that says where the phrase list or the list of names is wrong.
    pub fn english(catalogue: &Catalogue) -> Result<Self, PhrasesError> {
        let phrases = include_str!("../../../locales/en/phrases.toml");
        Self::new(phrases, Names::english(catalogue)?)
    }

    /// The compiled phrases, as [`crate::chat::frost_words::read_frost`] needs them.
    #[must_use]
    pub fn phrases(&self) -> &Phrases {
        &self.phrases
    }

    /// What a question means on the day `today`.
    ///
    /// Where several days are named, "now" and "today" come before the others, then the first
    /// one; a day that is said to be a frost's ("my last frost is May 15") is left out.
    #[must_use]
    pub fn understand(&self, text: &str, today: NaiveDate) -> Understood {
        self.understand_after(text, today, None)
    }

    /// The same for a question that may lean on what was asked `before` it: "and basil?".
    #[must_use]
    pub fn understand_after(
        &self,
        text: &str,
        today: NaiveDate,
        before: Option<&Subject>,
    ) -> Understood {
        self.understand_words(text, self.words(text, QUESTION_CHARACTERS), today, before)
    }

    /// What the words of `text` mean; figures are read from the text itself.
    fn understand_words(
        &self,
        text: &str,
        mut words: Vec<Word>,
        today: NaiveDate,
        before: Option<&Subject>,
    ) -> Understood {
        let mentions = self.names.mentions(&words, &self.phrases);
        let mut named = vec![false; words.len()];
        for mention in &mentions {
            named.iter_mut().take(mention.to).skip(mention.from).for_each(|word| *word = true);
        }
        for (word, named) in words.iter_mut().zip(&named) {
            if !named && let Some(id) = self.phrases.corrected(word) {
                word.id = Some(id);
            }
        }
        let mut dates = self.phrases.dates_in(&words, |at| named.get(at) == Some(&false));
        let quantities = self.phrases.quantities_in(text);
        if quantities.sprouted.is_some() {
            // "9/25 sprouted" is no day.
            dates.retain(|date| words.get(date.from).is_none_or(|word| !word.plain.contains('/')));
        }
        let mut stretches: Vec<Item> = dates
            .iter()
            .map(|date| Item { sort: Sort::Date, from: date.from, to: date.to })
            .chain(mentions.iter().map(|m| Item { sort: sort(&m.named), from: m.from, to: m.to }))
            .collect();
        stretches.sort_by_key(|item| item.from);
        let mut line = ItemLine::new(&words, &stretches);
        unknown::mark_unknown_names(&mut line, &self.phrases);

        let mut list = CropList::default();
        for mention in &mentions {
            let words = words.get(mention.from..mention.to).unwrap_or_default();
            match &mention.named {
                Named::Known(meaning) => list.add_meaning(meaning),
                Named::Between(near) => {
                    list.add_unknown(UnknownName {
                        written: as_written(words),
                        near: near.clone(),
                    });
                }
                Named::NoCrop => {}
            }
        }
        for item in line.items.iter().filter(|item| item.sort == Sort::Unknown) {
            let words = words.get(item.from..item.to).unwrap_or_default();
            // A slip between two crops is on the list already.
            if mentions.iter().all(|mention| mention.from != item.from) {
                let near = self.names.offered(&joined(words));
                list.add_unknown(UnknownName { written: as_written(words), near });
            }
        }
        line.join_lists(&self.phrases);
        let rule = intent::rule(&line, &self.phrases, &quantities);
        let (of_start, of_harvest) = match rule.map(|rule| rule.is) {
            Some(Intent::WillItRipen) => ripe_by::told_apart(&dates, &line, &self.phrases),
            _ => (dates, Vec::new()),
        };
        let DayMeant { on: date, until, gone_by, trouble } =
            self.day_meant(&of_start, &words, today);
        let harvest = self.day_meant(&of_harvest, &words, today);
        let mut understood = Understood {
            intent: rule.map_or(Intent::Unknown, |rule| rule.is),
            asks_when: rule.is_some_and(|rule| rule.when),
            step: intent::step(&line, &self.phrases),
            on: date.unwrap_or(today),
            until,
            ripe_by: harvest.until.or(harvest.on),
            gone_by: gone_by.filter(|_| rule.is_some_and(|rule| rule.leans)),
            kind: intent::kind(&line, &self.phrases).filter(|_| !line.has(Sort::Crops)),
            date_given: date.is_some(),
            date_trouble: trouble.or(harvest.trouble),
            quantities,
            crops: list.found,
            ambiguous: list.ambiguous,
            unknown_words: list.unknown,
        };
        if let Some(before) = before {
            let leans = rule.is_some_and(|rule| rule.leans);
            subject::lean(&mut understood, &mut line, leans, before, &self.phrases);
            if rule.is_none_or(|rule| rule.is != Intent::WillItRipen) && date.is_some() {
                ripe_by::of_follow_up(&mut understood, before, today);
            }
        }
        understood
    }

    /// The crops of a list such as "tomato, basil and pole beans".
    ///
    /// Each piece between commas, "and" or line ends must be a crop's name; one that is not is
    /// unknown and comes with the names to offer for it.
    #[must_use]
    pub fn crops_in(&self, text: &str) -> CropList {
        list::read(&self.words(text, LIST_CHARACTERS), &self.names, &self.phrases)
    }

    fn words(&self, text: &str, characters: usize) -> Vec<Word> {
        let words = self.phrases.words(text, characters, |word| self.names.has_word(word));
        self.names.apart(words, &self.phrases)
    }

    /// The day that a question is about, and what is wrong with a day in it.
    fn day_meant(&self, dates: &[DateFound], words: &[Word], today: NaiveDate) -> DayMeant {
        let of_frost = |date: &&DateFound| {
            let before = words.iter().take(date.from).skip(date.from.saturating_sub(3));
            let mut ids = before.filter_map(|word| word.id);
            ids.any(|id| self.phrases.frost.words.contains(&id))
        };
        let asked: Vec<&DateFound> = dates.iter().filter(|date| !of_frost(date)).collect();
        let written =
            |date: &DateFound| as_written(words.get(date.from..date.to).unwrap_or_default());
        if let Some(date) = asked.iter().find(|date| date.when == When::Impossible) {
            let trouble = Some(DateTrouble::Impossible(written(date)));
            return DayMeant { trouble, ..DayMeant::default() };
        }
        if dates.iter().any(|date| date.when == When::Today) {
            return DayMeant { on: Some(today), ..DayMeant::default() };
        }
        let day = asked.iter().find_map(|date| Some((date, date.when.counted_from(today)?)));
        if let Some((date, on)) = day {
            let until = if date.when.is_whole_month() { last_of_month(on) } else { None };
            return DayMeant { on: Some(on), until, ..DayMeant::default() };
        }
        let lost = |date: &&&DateFound| {
            date.when == When::Unclear || date.when.counted_back(today).is_none()
        };
        let trouble = asked.iter().find(lost).map(|date| DateTrouble::Unclear(written(date)));
        let gone_by = asked.first().map(|date| written(date)).filter(|_| trouble.is_none());
        DayMeant { gone_by, trouble, ..DayMeant::default() }
    }
}

/// The day of a question.
#[derive(Debug, Default)]
struct DayMeant {
    on: Option<NaiveDate>,
    until: Option<NaiveDate>,
    gone_by: Option<String>,
    trouble: Option<DateTrouble>,
}

fn last_of_month(on: NaiveDate) -> Option<NaiveDate> {
    on.with_day(1)?.checked_add_months(Months::new(1))?.pred_opt()
}

impl Phrases {
    /// The dates among the words for which `free` holds.
    pub(crate) fn dates_in(&self, words: &[Word], free: impl Fn(usize) -> bool) -> Vec<DateFound> {
        let line = WordLine { words, calendar: &self.calendar };
        let counted = |at: usize| {
            let word = words.get(at).and_then(|word| word.id);
            word.is_some_and(|id| {
                self.sowing.not_counts.contains(&id) || self.calendar.units.contains_key(&id)
            })
        };
        // "1/2 inch" and "18.5 degrees" are no days.
        let in_figures = |at: usize| {
            let word = &words.get(at)?.plain;
            iso_date(word).or_else(|| {
                let none = self.calendar.not_dates.contains(word) || counted(at + 1);
                if none { None } else { date_in_figures(word, self.calendar.figures) }
            })
        };
        dates_in(&line, words.len(), &self.dates, free, in_figures)
    }
}

fn sort(named: &Named<'_>) -> Sort {
    match named {
        Named::Known(_) => Sort::Crops,
        Named::Between(_) => Sort::Unknown,
        Named::NoCrop => Sort::NoCrop,
    }
}

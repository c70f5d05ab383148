//! How people ask, compiled from a language's `phrases.toml`.

use std::collections::{HashMap, HashSet};

use super::Intent;
use super::compiler::Compiler;
use super::dates::DatePhrase;
use super::pattern::Pattern;
pub(crate) use super::phrase_file::{Figures, Objects, Rest};
use super::phrase_file::{
    RawCalendar, RawClass, RawFigures, RawFrost, RawPhrases, RawSowing, RawSpelling,
};
use super::quantities::{FigurePhrases, Needed, QuantityPhrase, Signs};
use super::spelling::slip_of;
use super::word_forms::WordForms;
use super::words::{Pause, Word, split};
use crate::catalogue::{CatalogueError, normalise};
use crate::planning::{Kind, Step};

/// What is wrong with a phrase list.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PhrasesError {
    /// It is not the TOML that is expected; the text names line and column.
    #[error("the phrase list cannot be read: {0}")]
    Form(String),
    /// A pattern is not well written.
    #[error("the phrase list has a mistake in '{pattern}': {reason}")]
    Pattern {
        /// The pattern.
        pattern: String,
        /// What is wrong with it.
        reason: String,
    },
    /// The names of the crops are wrong.
    #[error(transparent)]
    Names(#[from] CatalogueError),
}

/// A rule that gives a question its intent; the first that holds does.
#[derive(Debug)]
pub(crate) struct IntentRule {
    pub is: Intent,
    /// Whether it asks for a day.
    pub when: bool,
    pub with_crop: Rest,
    pub without_crop: Rest,
    /// Whether such a question says little by itself and leans on the one before: "and basil?".
    pub leans: bool,
    pub needs: Option<Needed>,
    pub unless: Vec<Pattern>,
    pub patterns: Vec<Pattern>,
}

/// The words around frost dates.
#[derive(Debug)]
pub(crate) struct FrostPhrases {
    /// "frost", "freeze": a date after one of them is a frost date.
    pub words: HashSet<u32>,
    pub last: Vec<Pattern>,
    pub first: Vec<Pattern>,
    pub free: Vec<Pattern>,
    pub average: Vec<Pattern>,
    pub trusted: Vec<Pattern>,
}

/// The words in which members tell what became of a sowing.
#[derive(Debug)]
pub(crate) struct SowingPhrases {
    pub came_up: Vec<Pattern>,
    pub not_up: Vec<Pattern>,
    /// The plants died.
    pub lost: Vec<Pattern>,
    /// Only some of them did.
    pub lost_some: Vec<Pattern>,
    /// Words with which it was something else that got lost.
    pub lost_unless: Vec<Pattern>,
    /// Words that make a question of it.
    pub unless: Vec<Pattern>,
    /// In a question whether something ripens, words that make its day one of sowing.
    pub day_of_start: Vec<Pattern>,
    /// A number before one of these does not count plants.
    pub not_counts: HashSet<u32>,
    /// Number words that are no count: "a row of peas".
    pub articles: HashSet<u32>,
}

/// Names of months and so on, by the number of the word.
#[derive(Debug, Default)]
pub(crate) struct Calendar {
    pub months: HashMap<u32, u32>,
    pub weekdays: HashMap<u32, u32>,
    pub units: HashMap<u32, u32>,
    pub numbers: HashMap<u32, u32>,
    pub unclear: HashSet<u32>,
    pub day_endings: Vec<String>,
    pub figures: Figures,
    /// Words in figures that look like dates and are none: "24/7".
    pub not_dates: HashSet<String>,
}

/// A language's way of asking, compiled from its `phrases.toml`.
#[derive(Debug)]
pub struct Phrases {
    ids: HashMap<String, u32>,
    forgiving: Vec<(String, u32)>,
    pub(crate) forms: WordForms,
    pub(crate) objects: Objects,
    /// Words that stand for the crop of the question before: "it".
    pub(crate) pronouns: HashSet<u32>,
    /// What is asked by naming only a step, a day or a kind: "what about outdoors?".
    pub(crate) follow_ups: Vec<Pattern>,
    ordinary: HashSet<String>,
    other_plants: HashSet<String>,
    pub(crate) calendar: Calendar,
    pub(crate) dates: Vec<DatePhrase>,
    pub(crate) kinds: Vec<(Kind, Vec<Pattern>)>,
    pub(crate) steps: Vec<(Step, Vec<Pattern>)>,
    pub(crate) intents: Vec<IntentRule>,
    pub(crate) frost: FrostPhrases,
    pub(crate) sowing: SowingPhrases,
    pub(crate) figures: FigurePhrases,
    pub(crate) plural_endings: Vec<(String, String)>,
    pub(crate) and: HashSet<u32>,
    pub(crate) before_names: HashSet<u32>,
    pub(crate) behind_names: HashSet<u32>,
    pub(crate) bare: HashSet<u32>,
    inside_names: HashSet<String>,
    never_ending: Vec<String>,
    pub(crate) places: Pattern,
    pub(crate) links: Pattern,
    pub(crate) asked_after: Vec<Pattern>,
    pub(crate) asked_before: Vec<Pattern>,
    pub(crate) not_crops: Vec<Vec<String>>,
    /// Everyday words that are names besides, with the words behind which they are: "le maïs".
    only_behind: HashMap<String, HashSet<String>>,
}

impl Phrases {
    /// Compiles the text of a `phrases.toml`.
    ///
    /// # Errors
    /// A [`PhrasesError`] that names the line, or the pattern with what is wrong in it.
    pub fn parse(text: &str) -> Result<Self, PhrasesError> {
        let raw: RawPhrases =
            toml::from_str(text).map_err(|error| PhrasesError::Form(error.to_string()))?;
        let mut of = Compiler::default();
        for RawClass { name, ways } in &raw.classes {
            of.class(name, ways)
                .map_err(|reason| PhrasesError::Pattern { pattern: format!("@{name}"), reason })?;
        }
        let calendar = calendar(&raw.calendar, &mut of);
        let frost = frost(&raw.frost, &mut of)?;
        let sowing = sowing(&raw.sowing, &mut of)?;
        let figures = figures(&raw.figures, &mut of)?;
        ids_of(&raw.small_words, &mut of);
        let bare = ids_of(&raw.bare_words, &mut of);
        let forgiving: Vec<(String, u32)> = plain_words(&raw.names.forgiving)
            .into_iter()
            .map(|word| (word.clone(), of.id(&word)))
            .collect();
        let and = ids_of(&raw.names.and, &mut of);
        // What compounds join to a name stands beside it once they are taken apart.
        let RawSpelling { compound_fronts, compound_tails, .. } = &raw.spelling;
        let before_names = ids_of(&format!("{} {compound_fronts}", raw.names.before), &mut of);
        let behind_names = ids_of(&format!("{} {compound_tails}", raw.names.behind), &mut of);
        let mut dates = Vec::new();
        for date in &raw.dates {
            let patterns = compile(&date.patterns, &mut of)?;
            dates.push(DatePhrase { reading: date.read_as, patterns });
        }
        let mut kinds = Vec::new();
        for kind in &raw.kinds {
            kinds.push((kind.is, compile(&kind.patterns, &mut of)?));
        }
        let mut steps = Vec::new();
        for step in &raw.steps {
            steps.push((step.is, compile(&step.patterns, &mut of)?));
        }
        let mut intents = Vec::new();
        for rule in &raw.intents {
            intents.push(IntentRule {
                is: rule.is,
                when: rule.when,
                with_crop: rule.with_crop,
                without_crop: rule.without_crop,
                leans: rule.leans,
                needs: rule.needs,
                unless: compile(&rule.unless, &mut of)?,
                patterns: compile(&rule.patterns, &mut of)?,
            });
        }
        let not_crops = raw.names.not_crops.iter().map(|p| plain_words(p)).collect();
        let only_behind = raw.names.only_behind.iter();
        let only_behind = only_behind
            .map(|(word, before)| (normalise(word), plain_words(before).into_iter().collect()))
            .collect();
        Ok(Self {
            only_behind,
            calendar,
            dates,
            kinds,
            steps,
            intents,
            frost,
            sowing,
            figures,
            and,
            before_names,
            behind_names,
            bare,
            places: one("@place", &mut of)?,
            links: one("@link", &mut of)?,
            asked_after: compile(&raw.names.asked_after, &mut of)?,
            asked_before: compile(&raw.names.asked_before, &mut of)?,
            forms: WordForms::new(&raw.spelling),
            objects: raw.objects,
            pronouns: ids_of(&raw.follow_ups.pronouns, &mut of),
            follow_ups: compile(&raw.follow_ups.patterns, &mut of)?,
            not_crops,
            inside_names: plain_words(&raw.names.inside).into_iter().collect(),
            never_ending: plain_words(&raw.names.never_ending),
            forgiving,
            other_plants: plain_words(&raw.names.other_plants).into_iter().collect(),
            ordinary: plain_words(&raw.ordinary_words).into_iter().collect(),
            plural_endings: raw.names.plural_endings,
            ids: of.into_ids(),
        })
    }

    /// The words of the first `characters` of a text, with the numbers of those that the phrases
    /// know. `is_name` knows the words of names, which are right as they are written.
    pub(crate) fn words(
        &self,
        text: &str,
        characters: usize,
        is_name: impl Fn(&str) -> bool,
    ) -> Vec<Word> {
        let mut words = self.forms.written_out(self.forms.apart(split(text, characters)));
        for word in &mut words {
            let known = |plain: &str| self.ids.contains_key(plain) || is_name(plain);
            if !known(&word.plain)
                && !self.is_fixed(word)
                && let Some(folded) = self.forms.folded(&word.plain)
            {
                word.plain = folded;
            }
            self.number(word);
        }
        words
    }

    /// Gives a word its number, where the phrases know it.
    pub(crate) fn number(&self, word: &mut Word) {
        word.id = self.ids.get(&word.plain).copied();
    }

    /// The number of the one forgiving phrase word that `word` is a slip of.
    pub(crate) fn corrected(&self, word: &Word) -> Option<u32> {
        if word.id.is_some() || word.has_digit() || self.is_fixed(word) {
            return None;
        }
        let mut meant = self.forgiving.iter().filter(|(known, _)| slip_of(&word.plain, known));
        let (_, id) = meant.next()?;
        meant.next().is_none().then_some(*id)
    }

    /// Whether `word` is right as it is: an everyday word, or a plant that no catalogue entry is.
    pub(crate) fn is_fixed(&self, word: &Word) -> bool {
        self.is_ordinary(word) || self.other_plants.contains(&word.plain)
    }

    /// Whether `word` is an everyday word, which is nobody's crop.
    pub(crate) fn is_ordinary(&self, word: &Word) -> bool {
        self.ordinary.contains(&word.plain)
    }

    /// Whether an everyday word that is a name besides is a name here: written with its accents,
    /// alone, or behind certain words. "Mais" is "but" in French, and "le mais" is sweet corn.
    pub(crate) fn is_name_here(&self, words: &[Word], at: usize) -> bool {
        let Some(word) = words.get(at) else { return true };
        let Some(leads) = self.only_behind.get(&word.plain) else { return true };
        let before = at.checked_sub(1).and_then(|before| words.get(before));
        let led = before
            .is_some_and(|before| before.pause == Pause::None && leads.contains(&before.plain));
        led || words.len() == 1 || word.written.to_lowercase() != word.plain
    }

    /// Whether `word` may stand inside an unknown name, though not begin one: "fruit", "flower".
    pub(crate) fn may_continue_a_name(&self, word: &Word) -> bool {
        self.inside_names.contains(&word.plain)
    }

    /// Whether `word` may be the name of something that the catalogue does not hold.
    pub(crate) fn may_be_a_name(&self, word: &Word) -> bool {
        let never = |ending: &String| word.plain.ends_with(ending.as_str());
        self.is_strange(word) && !self.never_ending.iter().any(never)
    }

    /// Whether `word` is neither a phrase word nor an ordinary one nor a number.
    pub(crate) fn is_strange(&self, word: &Word) -> bool {
        word.id.is_none() && !word.has_digit() && !self.is_ordinary(word)
    }
}

fn one(text: &str, of: &mut Compiler) -> Result<Pattern, PhrasesError> {
    of.pattern(text).map_err(|reason| PhrasesError::Pattern { pattern: text.to_owned(), reason })
}

fn compile(texts: &[String], of: &mut Compiler) -> Result<Vec<Pattern>, PhrasesError> {
    texts.iter().map(|text| one(text, of)).collect()
}

fn plain_words(list: &str) -> Vec<String> {
    normalise(list).split_whitespace().map(str::to_owned).collect()
}

fn ids_of(list: &str, of: &mut Compiler) -> HashSet<u32> {
    plain_words(list).iter().map(|word| of.id(word)).collect()
}

fn numbered(lists: &[String], from: u32, of: &mut Compiler) -> HashMap<u32, u32> {
    let mut numbers = HashMap::new();
    for (value, list) in (from..).zip(lists) {
        for id in ids_of(list, of) {
            numbers.insert(id, value);
        }
    }
    numbers
}

fn calendar(raw: &RawCalendar, of: &mut Compiler) -> Calendar {
    Calendar {
        months: numbered(&raw.months, 1, of),
        weekdays: numbered(&raw.weekdays, 0, of),
        units: numbered(&raw.units, 0, of),
        numbers: raw
            .numbers
            .iter()
            .map(|(word, value)| (of.id(&normalise(word)), *value))
            .collect(),
        unclear: ids_of(&raw.unclear, of),
        day_endings: plain_words(&raw.day_endings),
        figures: raw.figures,
        not_dates: raw.not_dates.split_whitespace().map(str::to_owned).collect(),
    }
}

fn frost(raw: &RawFrost, of: &mut Compiler) -> Result<FrostPhrases, PhrasesError> {
    Ok(FrostPhrases {
        words: ids_of(&raw.words, of),
        last: compile(&raw.last, of)?,
        first: compile(&raw.first, of)?,
        free: compile(&raw.free, of)?,
        average: compile(&raw.average, of)?,
        trusted: compile(&raw.trusted, of)?,
    })
}

fn sowing(raw: &RawSowing, of: &mut Compiler) -> Result<SowingPhrases, PhrasesError> {
    Ok(SowingPhrases {
        came_up: compile(&raw.came_up, of)?,
        not_up: compile(&raw.not_up, of)?,
        lost: compile(&raw.lost, of)?,
        lost_some: compile(&raw.lost_some, of)?,
        lost_unless: compile(&raw.lost_unless, of)?,
        unless: compile(&raw.unless, of)?,
        day_of_start: compile(&raw.day_of_start, of)?,
        not_counts: ids_of(&raw.not_counts, of),
        articles: ids_of(&raw.articles, of),
    })
}

fn figures(raw: &RawFigures, of: &mut Compiler) -> Result<FigurePhrases, PhrasesError> {
    let numbers = raw.numbers.iter();
    let numbers = numbers.map(|(word, value)| (of.id(&normalise(word)), *value)).collect();
    let mut quantities = Vec::new();
    for quantity in &raw.quantities {
        let patterns = compile(&quantity.patterns, of)?;
        quantities.push(QuantityPhrase { reading: quantity.read_as, patterns });
    }
    let signs = Signs {
        percent: raw.percent.clone(),
        degrees: raw.degrees.clone(),
        celsius: raw.celsius.clone(),
        fahrenheit: raw.fahrenheit.clone(),
    };
    Ok(FigurePhrases { signs, numbers, quantities })
}

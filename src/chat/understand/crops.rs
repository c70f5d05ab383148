//! The crops that a text names.

use std::collections::HashSet;

use super::phrases::Phrases;
use super::spelling::Spelling;
use super::words::{Pause, Word};
use crate::catalogue::{Meaning, Names};
use crate::planning::CropId;

/// No more ways of writing a name in another number are tried.
const MOST_WAYS: usize = 64;

/// What a stretch of words names.
#[derive(Debug, Clone)]
pub(crate) enum Named<'a> {
    /// A crop, or a word that may mean several.
    Known(&'a Meaning),
    /// A slip of the pen that is equally near to these crops.
    Between(Vec<CropId>),
    /// Words that hold a crop's name without meaning the crop.
    NoCrop,
}

/// Words `from..to` with what they name.
#[derive(Debug, Clone)]
pub(crate) struct Mention<'a> {
    /// The first word.
    pub from: usize,
    /// The word after the last.
    pub to: usize,
    /// What they name.
    pub named: Named<'a>,
}

/// Finds names: exact, in the other number, or with slips of the pen.
#[derive(Debug)]
pub(crate) struct NameFinder {
    names: Names,
    spelling: Spelling,
    /// Every single word of every name.
    words: HashSet<String>,
}

impl NameFinder {
    /// Prepares the names.
    pub fn new(names: Names) -> Self {
        let words = names.words().flat_map(|name| name.split(' ')).map(str::to_owned).collect();
        Self { spelling: Spelling::new(&names), names, words }
    }

    /// Whether a name holds this word.
    pub fn has_word(&self, plain: &str) -> bool {
        self.words.contains(plain)
    }

    /// The words with compounds of a crop and something else taken apart: "gurkensamen".
    pub fn apart(&self, words: Vec<Word>, phrases: &Phrases) -> Vec<Word> {
        let mut apart = Vec::with_capacity(words.len());
        for word in words {
            let whole = !phrases.is_strange(&word)
                || phrases.is_fixed(&word)
                || self.named(std::slice::from_ref(&word), phrases).is_some();
            let is_name = |name: &str| {
                let alone = Word { plain: name.to_owned(), id: None, ..word.clone() };
                name.chars().count() >= 3 && self.named(&[alone], phrases).is_some()
            };
            let parts = if whole { None } else { phrases.forms.parts(&word.plain, is_name) };
            match parts {
                None => apart.push(word),
                Some((first, second)) => {
                    for mut part in word.cut(&first, &second, false) {
                        phrases.number(&mut part);
                        apart.push(part);
                    }
                }
            }
        }
        apart
    }

    /// The plural of a crop's name.
    pub fn plural<'n>(&'n self, id: &'n CropId) -> &'n str {
        self.names.plural(id)
    }

    /// Up to three crops whose names are like `written`.
    pub fn offered(&self, written: &str) -> Vec<CropId> {
        self.spelling.offered(written)
    }

    /// The names in `words` in order, the longest at each place.
    pub fn mentions(&self, words: &[Word], phrases: &Phrases) -> Vec<Mention<'_>> {
        let mut mentions = Vec::new();
        let mut at = 0;
        while at < words.len() {
            let mention = self.longest_at(words, at, phrases);
            at = mention.as_ref().map_or(at + 1, |mention| mention.to);
            mentions.extend(mention);
        }
        mentions
    }

    fn longest_at(&self, words: &[Word], at: usize, phrases: &Phrases) -> Option<Mention<'_>> {
        let rest = words.get(at..)?;
        for not_crop in &phrases.not_crops {
            let spelt = rest.iter().map(|word| &word.plain).take(not_crop.len());
            if not_crop.len() <= rest.len() && spelt.eq(not_crop) {
                return Some(Mention { from: at, to: at + not_crop.len(), named: Named::NoCrop });
            }
        }
        // A name does not reach over a comma or the end of a sentence.
        let unbroken = rest.iter().position(|word| word.pause != Pause::None);
        // What an apostrophe joins counts as one word.
        let joined = rest.iter().take_while(|word| word.pause == Pause::None);
        let elided = joined.filter(|word| word.elided).count();
        let longest = self.names.longest_words() + elided;
        let longest = unbroken.map_or(rest.len(), |last| last + 1).min(longest);
        (1..=longest).rev().find_map(|count| {
            if count == 1 && !phrases.is_name_here(words, at) {
                return None;
            }
            let named = self.named(rest.get(..count)?, phrases)?;
            let count = self.without_words_behind(rest, count, &named, phrases);
            Some(Mention { from: at, to: at + count, named })
        })
    }

    /// How many of `count` words are the name itself: "onion seed" is onion, and the seed tells
    /// the step.
    fn without_words_behind(
        &self,
        words: &[Word],
        count: usize,
        named: &Named<'_>,
        phrases: &Phrases,
    ) -> usize {
        let Named::Known(meaning) = named else { return count };
        let is_behind = |word: &Word| word.id.is_some_and(|id| phrases.behind_names.contains(&id));
        let fewer = count - 1;
        let (Some(name), Some(last)) = (words.get(..fewer), words.get(fewer)) else { return count };
        let same = self.names.lookup(&joined(name)) == Some(meaning);
        if same && is_behind(last) { fewer } else { count }
    }

    /// What exactly these words name, taken together.
    pub fn named(&self, words: &[Word], phrases: &Phrases) -> Option<Named<'_>> {
        let text = joined(words);
        if let Some(meaning) = self.names.lookup(&text) {
            return Some(Named::Known(meaning));
        }
        let last = words.last()?;
        if phrases.is_fixed(last) || last.has_digit() {
            return None;
        }
        if let Some(meaning) = self.in_another_number(words, phrases) {
            return Some(Named::Known(meaning));
        }
        self.with_slips(&text, words, phrases)
    }

    /// Plurals where the names hold singulars, or the other way round, in one word or in several:
    /// "haricot vert" for "haricots verts".
    fn in_another_number(&self, words: &[Word], phrases: &Phrases) -> Option<&Meaning> {
        let mut ways: Vec<String> = Vec::new();
        for (at, word) in words.iter().enumerate() {
            let forms = self.forms_of(word, phrases);
            if at == 0 {
                ways = forms;
                continue;
            }
            let joint =
                if words.get(at - 1).is_some_and(|before| before.elided) { "" } else { " " };
            let longer = ways
                .iter()
                .flat_map(|way| forms.iter().map(move |form| format!("{way}{joint}{form}")));
            ways = longer.take(MOST_WAYS).collect();
        }
        ways.iter().find_map(|way| self.names.lookup(way))
    }

    /// The word with its ending as it is and with other endings, as far as names hold them.
    fn forms_of(&self, word: &Word, phrases: &Phrases) -> Vec<String> {
        let mut forms: Vec<String> = Vec::new();
        // A short word must not become a name by losing or gaining an ending.
        if word.id.is_none() && word.plain.chars().count() >= 4 {
            for (plural, singular) in &phrases.plural_endings {
                for (from, to) in [(plural, singular), (singular, plural)] {
                    let Some(stem) = word.plain.strip_suffix(from.as_str()) else { continue };
                    let other = format!("{stem}{to}");
                    if self.has_word(&other) && !forms.contains(&other) {
                        forms.push(other);
                    }
                }
            }
        }
        if word.elided || self.has_word(&word.plain) {
            forms.push(word.plain.clone());
        }
        forms
    }

    fn with_slips(&self, text: &str, words: &[Word], phrases: &Phrases) -> Option<Named<'_>> {
        let strange = |word: &Word| phrases.is_strange(word) && !phrases.is_fixed(word);
        if !words.iter().any(strange) || words.iter().any(Word::has_digit) {
            return None;
        }
        // Several words are near to a name of as many words, each near to its own.
        let word_by_word = |name: &str| {
            let parts: Vec<&str> = name.split(' ').collect();
            parts.len() == words.len()
                && words.iter().zip(parts).all(|(word, part)| {
                    word.plain == part || (strange(word) && word.plain.chars().count() >= 4)
                })
        };
        let nearest = self.spelling.nearest(text, |name| words.len() == 1 || word_by_word(name))?;
        if nearest.rivals.is_empty() {
            self.names.lookup(&nearest.name).map(Named::Known)
        } else {
            Some(Named::Between(nearest.rivals))
        }
    }
}

/// The plain forms with spaces between.
pub(crate) fn joined(words: &[Word]) -> String {
    join(words.iter().map(|word| (word.plain.as_str(), if word.elided { "" } else { " " })))
}

/// The words as they were written, with spaces between.
pub(crate) fn as_written(words: &[Word]) -> String {
    join(words.iter().map(|word| (word.written.as_str(), if word.elided { "’" } else { " " })))
}

/// The words with what stands behind each but the last.
fn join<'a>(words: impl Iterator<Item = (&'a str, &'a str)>) -> String {
    let mut text = String::new();
    let mut joint = "";
    for (word, behind) in words {
        text.push_str(joint);
        text.push_str(word);
        joint = behind;
    }
    text
}

//! The words of a seed packet in one language.

use serde::Deserialize;

use crate::catalogue::normalise;

/// What is wrong with a language's `packet.toml`.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("packet.toml: {0}")]
pub struct PacketWordsError(String);

/// A phrase as its words.
pub(super) type Phrase = Vec<String>;

/// The words of a language's `packet.toml`; that file says what each list is for.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PacketWords {
    pub(super) days: Phrases,
    pub(super) weeks: Phrases,
    pub(super) inches: Phrases,
    pub(super) feet: Phrases,
    pub(super) centimetres: Phrases,
    pub(super) millimetres: Phrases,
    pub(super) range: Phrases,
    pub(super) indoors: Phrases,
    /// Absent where a language's file is older than this list.
    #[serde(default)]
    pub(super) start: Phrases,
    pub(super) in_place: Phrases,
    pub(super) set_out: Phrases,
    pub(super) before: Phrases,
    pub(super) after: Phrases,
    pub(super) frost: Phrases,
    pub(super) ripe: Phrases,
    pub(super) come_up: Phrases,
    pub(super) from_setting_out: Phrases,
    pub(super) from_sowing: Phrases,
    pub(super) passing: Phrases,
    pub(super) depth: Phrases,
    pub(super) depth_behind: Phrases,
    pub(super) apart: Phrases,
    pub(super) apart_behind: Phrases,
    pub(super) rows: Phrases,
    pub(super) rows_behind: Phrases,
    pub(super) around_names: Phrases,
}

/// Phrases in the plain form of words.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(from = "Vec<String>")]
pub(super) struct Phrases(Vec<Phrase>);

impl From<Vec<String>> for Phrases {
    fn from(list: Vec<String>) -> Self {
        let words = |text: &String| normalise(text).split(' ').map(ToOwned::to_owned).collect();
        Self(list.iter().map(words).collect())
    }
}

impl Phrases {
    /// The number of words of the longest phrase that `words` begin with; 0 where there is none.
    pub(super) fn begin(&self, words: &[&str]) -> usize {
        let fits = |phrase: &&Phrase| {
            phrase.len() <= words.len() && phrase.iter().zip(words).all(|(is, word)| is == word)
        };
        self.0.iter().filter(fits).map(Vec::len).max().unwrap_or(0)
    }

    /// Where in `words` the last of the phrases stands: the word at which it begins.
    pub(super) fn last_in(&self, words: &[&str]) -> Option<usize> {
        (0..words.len()).rev().find(|at| self.begin(words.get(*at..).unwrap_or_default()) > 0)
    }

    /// Where in `words` the last of the phrases ends, and its length in words.
    pub(super) fn last_end(&self, words: &[&str]) -> Option<(usize, usize)> {
        let ends = (0..words.len()).filter_map(|at| {
            let length = self.begin(words.get(at..).unwrap_or_default());
            (length > 0).then_some((at + length, length))
        });
        ends.max()
    }

    /// Where in `words` the first of the phrases stands.
    pub(super) fn first_in(&self, words: &[&str]) -> Option<usize> {
        (0..words.len()).find(|at| self.begin(words.get(*at..).unwrap_or_default()) > 0)
    }

    /// Whether one of the phrases stands in `words`.
    pub(super) fn are_in(&self, words: &[&str]) -> bool {
        self.first_in(words).is_some()
    }
}

impl PacketWords {
    /// Reads a language's `packet.toml`.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn new(text: &str) -> Result<Self, PacketWordsError> {
        toml::from_str(text).map_err(|error| PacketWordsError(error.to_string()))
    }

    /// The words of a name without those around it that do not belong to it.
    pub(in crate::chat) fn name_alone(&self, mut words: Vec<String>) -> Vec<String> {
        let around = |word: &String| self.around_names.begin(&[normalise(word).as_str()]) > 0;
        while words.first().is_some_and(around) {
            words.remove(0);
        }
        while words.last().is_some_and(around) {
            words.pop();
        }
        words
    }

    /// Whether a text that begins with `words` begins to speak of the packet's numbers.
    pub(super) fn opens(&self, words: &[&str]) -> bool {
        let lists = [
            &self.indoors,
            &self.in_place,
            &self.set_out,
            &self.ripe,
            &self.come_up,
            &self.depth,
            &self.apart,
            &self.rows,
        ];
        lists.iter().any(|list| list.begin(words) > 0)
    }
}

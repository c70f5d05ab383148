//! What one language calls the crops, and which crop a word means.

use indexmap::IndexMap;
use serde::Deserialize;
use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

use super::word_index::{index, line_of, wrong};
use super::{Catalogue, CatalogueError};
use crate::planning::CropId;

/// What a word means.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Meaning {
    /// One crop.
    Crop(CropId),
    /// Several crops, or one and something that the catalogue does not hold.
    Ambiguous(AmbiguousWord),
}

/// A word that people use for more than one thing.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AmbiguousWord {
    /// The word as inside a sentence.
    pub word: String,
    /// Its plural.
    pub plural: String,
    /// The crops it may mean, the likeliest first; never empty.
    pub means: Vec<CropId>,
    /// In words, what else it may mean that the catalogue does not hold.
    pub outside: Option<String>,
}

/// A crop's names as a locale writes them.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CropName {
    pub name: String,
    pub plural: String,
    /// The name in the middle of a sentence, in languages where it needs an article there.
    pub with_article: Option<String>,
    pub aliases: Vec<String>,
}

/// The names of every crop in one language, and the index from words to meanings.
#[derive(Debug, Clone)]
pub struct Names {
    of_crop: IndexMap<CropId, CropName>,
    index: IndexMap<String, Meaning>,
    longest_words: usize,
}

impl Names {
    /// The English names, which are built into the program.
    ///
    /// ```
    /// use sowbell::catalogue::{Catalogue, Meaning, Names, normalise};
    /// use sowbell::planning::CropId;
    /// let names = Names::english(&Catalogue::embedded()?)?;
    /// assert_eq!(names.plural(&CropId::new("tomato")), "tomatoes");
    /// let eggplant = Meaning::Crop(CropId::new("eggplant"));
    /// assert_eq!(names.lookup(&normalise("Aubergine")), Some(&eggplant));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    /// As [`Names::from_toml`].
    pub fn english(catalogue: &Catalogue) -> Result<Self, CatalogueError> {
        Self::from_toml(include_str!("../../locales/en/crops.toml"), catalogue)
    }

    /// The names of a locale's `crops.toml`.
    ///
    /// # Errors
    /// A [`CatalogueError`] that names the entry and its line: the text is no TOML or has unknown
    /// lines, an alias is claimed twice, a crop of the catalogue has no name, or a name refers to
    /// a crop that the catalogue does not hold.
    pub fn from_toml(text: &str, catalogue: &Catalogue) -> Result<Self, CatalogueError> {
        let mut table: toml::Table = toml::from_str(text).map_err(|error| {
            let offset = error.span().map_or(0, |span| span.start);
            let line = text.bytes().take(offset).filter(|byte| *byte == b'\n').count() + 1;
            CatalogueError(format!("line {line}: {}", error.message()))
        })?;
        let ambiguous = match table.remove("ambiguous") {
            Some(list) => list.try_into().map_err(|error: toml::de::Error| {
                let line = line_of(text, "[[ambiguous]]");
                CatalogueError(format!("[[ambiguous]], from line {line}: {}", error.message()))
            })?,
            None => Vec::new(),
        };
        let mut written = IndexMap::new();
        for (id, entry) in table {
            let wrong = |what: &str| wrong(text, &id, what);
            let name: CropName = entry.try_into().map_err(|e| wrong(e.message()))?;
            let article_empty = name.with_article.as_ref().is_some_and(|it| it.trim().is_empty());
            if name.name.trim().is_empty() || name.plural.trim().is_empty() || article_empty {
                return Err(wrong("a name is empty; write one"));
            }
            let crop = catalogue.get(&id).ok_or_else(|| {
                wrong("the catalogue has no such crop; correct the id or take the entry out")
            })?;
            written.insert(crop.id.clone(), name);
        }
        let mut names = IndexMap::with_capacity(written.len());
        for crop in catalogue.iter() {
            let name = written.swap_remove(&crop.id).ok_or_else(|| {
                CatalogueError(format!("crop '{0}' has no name; add an entry [{0}]", crop.id))
            })?;
            names.insert(crop.id.clone(), name);
        }
        let index = index(text, &names, ambiguous, catalogue)?;
        let longest_words = index.keys().map(|words| words.split(' ').count()).max().unwrap_or(0);
        Ok(Self { of_crop: names, index, longest_words })
    }

    /// The name of a crop as inside a sentence: "sweet corn". A crop that is not in the catalogue
    /// is called by its id.
    #[must_use]
    pub fn name<'a>(&'a self, id: &'a CropId) -> &'a str {
        self.of_crop.get(id).map_or(id.as_str(), |name| &name.name)
    }

    /// The plural of a crop's name, which for many crops is the name itself: "tomatoes", "basil".
    #[must_use]
    pub fn plural<'a>(&'a self, id: &'a CropId) -> &'a str {
        self.of_crop.get(id).map_or(id.as_str(), |name| &name.plural)
    }

    /// The name of a crop in the middle of a sentence about many plants of it: its plural, with the
    /// article where the language cannot do without: "tomatoes", "les tomates", "le basilic".
    #[must_use]
    pub fn in_sentence<'a>(&'a self, id: &'a CropId) -> &'a str {
        let name = self.of_crop.get(id);
        name.map_or(id.as_str(), |name| name.with_article.as_ref().unwrap_or(&name.plural))
    }

    /// What a word or phrase means, or `None` where nobody uses it for a crop. The phrase must
    /// have gone through [`normalise`].
    #[must_use]
    pub fn lookup(&self, normalised: &str) -> Option<&Meaning> {
        self.index.get(normalised)
    }

    /// The number of words in the longest phrase, so that text can be searched for the longest
    /// match first.
    #[must_use]
    pub fn longest_words(&self) -> usize {
        self.longest_words
    }

    /// Every word and phrase, normalised.
    pub fn words(&self) -> impl Iterator<Item = &str> {
        self.index.keys().map(String::as_str)
    }

    /// Every word and phrase, normalised, with its meaning.
    pub fn entries(&self) -> impl Iterator<Item = (&str, &Meaning)> {
        self.index.iter().map(|(words, meaning)| (words.as_str(), meaning))
    }
}

/// Text in the form in which words are compared: small letters, no accents, no apostrophes,
/// single spaces in place of hyphens and underscores, and two letters for those that are two in
/// one (`ß` is "ss", `œ` is "oe"). Other punctuation stays.
///
/// ```
/// use sowbell::catalogue::normalise;
/// assert_eq!(normalise("  Jalapeño  "), "jalapeno");
/// assert_eq!(normalise("Bachelor’s-Button"), "bachelors button");
/// assert_eq!(normalise("Süßkartoffel"), "susskartoffel");
/// ```
#[must_use]
pub fn normalise(text: &str) -> String {
    const APOSTROPHES: [char; 6] = ['\'', '’', '‘', '`', '´', 'ʼ'];
    const JOINERS: [char; 6] = ['-', '_', '‐', '‑', '–', '—'];
    let plain: String = text
        .nfd()
        .filter(|c| !is_combining_mark(*c) && !APOSTROPHES.contains(c))
        .flat_map(char::to_lowercase)
        .map(|c| if JOINERS.contains(&c) { ' ' } else { c })
        .fold(String::with_capacity(text.len()), |mut plain, letter| {
            match letter {
                'ß' => plain.push_str("ss"),
                'œ' => plain.push_str("oe"),
                'æ' => plain.push_str("ae"),
                'ø' => plain.push('o'),
                'ł' => plain.push('l'),
                _ => plain.push(letter),
            }
            plain
        });
    plain.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    proptest::proptest! {
        #[test]
        fn normalised_text_stays_as_it_is(text in ".*") {
            let once = normalise(&text);
            proptest::prop_assert_eq!(normalise(&once), once);
        }

        #[test]
        fn no_text_breaks_the_loaders(text in ".{0,200}") {
            let _ = Catalogue::from_toml(&text);
            let _ = Catalogue::from_toml(&format!("[crop.x]\n{text}"));
            let _ = Names::from_toml(&text, &Catalogue::from_toml("").expect("empty is sound"));
        }
    }
}

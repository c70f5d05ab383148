//! The languages that are built in, and which of them serves a reader.

use std::collections::{BTreeSet, HashMap};
use std::fmt;
use std::sync::{Arc, PoisonError, RwLock};

use icu_locale::{LanguageIdentifier, LocaleExpander};

use super::texts::Texts;
use super::voice::{Tongue, Voice};
use crate::club::{LanguageTag, Units};

/// The languages the bot speaks. English comes first: it stands in where another lacks something.
const EMBEDDED: &[(&str, &str)] = &[
    ("en", include_str!("../../locales/en/messages.ftl")),
    ("de", include_str!("../../locales/de/messages.ftl")),
    ("es", include_str!("../../locales/es/messages.ftl")),
    ("fr", include_str!("../../locales/fr/messages.ftl")),
];

/// How many locales' formatters are kept. Readers choose their tag freely, and tags are many.
const MOST_KEPT: usize = 64;

/// What is wrong with the texts of a language.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum WordingError {
    /// The file is not written in the syntax of Fluent.
    #[error("locales/{locale}/messages.ftl, line {line}: {message}")]
    Syntax {
        /// The language.
        locale: String,
        /// The line, from 1.
        line: usize,
        /// What the parser says.
        message: String,
    },
    /// One of its messages cannot be used.
    #[error("locales/{locale}/messages.ftl, line {line}: the message {key} {message}")]
    Message {
        /// The language.
        locale: String,
        /// The line, from 1.
        line: usize,
        /// The message's key.
        key: String,
        /// What is wrong with it.
        message: String,
    },
    /// The name of the language's folder is not a language tag.
    #[error("locales/{locale}: '{locale}' is not a language tag")]
    Tag {
        /// The name.
        locale: String,
    },
    /// No language is built in.
    #[error("no language is built in")]
    NoLanguage,
    /// There are no formats for the language.
    #[error("{locale}: dates and numbers cannot be written: {message}")]
    Formats {
        /// The language.
        locale: String,
        /// What the formatting library says.
        message: String,
    },
}

/// All languages, with the formatters that were needed so far. Shared between threads as it is.
pub struct Wording {
    languages: Vec<Texts>,
    english: Arc<Tongue>,
    kept: RwLock<HashMap<LanguageTag, Arc<Tongue>>>,
}

impl Wording {
    /// The languages that are built into the program.
    ///
    /// # Errors
    /// A [`WordingError`] that names the language, the line and the message.
    pub fn embedded() -> Result<Self, WordingError> {
        Self::of(EMBEDDED)
    }

    /// `sources` are tags with Fluent texts, the first being what others fall back to.
    pub(super) fn of(sources: &[(&str, &str)]) -> Result<Self, WordingError> {
        let languages = sources
            .iter()
            .map(|(locale, source)| Texts::parse(locale, source))
            .collect::<Result<Vec<_>, _>>()?;
        let first = languages.first().ok_or(WordingError::NoLanguage)?;
        let english = Arc::new(Tongue::new(first, first.tag.clone())?);
        Ok(Self { languages, english, kept: RwLock::default() })
    }

    /// The languages there are texts in.
    #[must_use]
    pub fn available(&self) -> Vec<LanguageTag> {
        self.languages.iter().map(|texts| texts.tag.clone()).collect()
    }

    /// The language whose texts serve a reader of `wanted`: the same language in the same
    /// script, and of several the one of the same region. `None` where there is none.
    ///
    /// ```
    /// # let wording = sowbell::wording::Wording::embedded()?;
    /// let texts = wording.negotiate(&"en-GB".parse()?);
    /// assert_eq!(texts.map(|tag| tag.to_string()).as_deref(), Some("en"));
    /// assert_eq!(wording.negotiate(&"tlh".parse()?), None);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn negotiate(&self, wanted: &LanguageTag) -> Option<LanguageTag> {
        self.texts_for(wanted).map(|texts| texts.tag.clone())
    }

    /// The voice for a reader of `wanted`; English where there are no texts in that language,
    /// with the formats of the reader's region.
    #[must_use]
    pub fn voice(&self, wanted: &LanguageTag, units: Units) -> Voice {
        Voice { tongue: self.tongue(wanted), english: Arc::clone(&self.english), units }
    }

    /// The keys of the messages in `language`, sorted; none where it is not one of
    /// [`Wording::available`].
    #[must_use]
    pub fn keys(&self, language: &LanguageTag) -> BTreeSet<String> {
        self.exactly(language)
            .map(|texts| texts.variables.keys().cloned().collect())
            .unwrap_or_default()
    }

    /// The variables that the message `key` reads in `language`, also through other messages
    /// that it uses.
    #[must_use]
    pub fn variables(&self, language: &LanguageTag, key: &str) -> BTreeSet<String> {
        self.exactly(language)
            .and_then(|texts| texts.variables.get(key))
            .cloned()
            .unwrap_or_default()
    }

    fn exactly(&self, language: &LanguageTag) -> Option<&Texts> {
        self.languages.iter().find(|texts| texts.tag == *language)
    }

    fn texts_for(&self, wanted: &LanguageTag) -> Option<&Texts> {
        let wanted_full = likely(wanted)?;
        let fitting = self.languages.iter().filter_map(|texts| {
            let full = likely(&texts.tag)?;
            let same =
                (&full.language, &full.script) == (&wanted_full.language, &wanted_full.script);
            same.then_some((texts, full.region == wanted_full.region))
        });
        // `min_by_key` keeps the first of equals, `max_by_key` the last.
        fitting.min_by_key(|(_, same_region)| !same_region).map(|(texts, _)| texts)
    }

    fn tongue(&self, wanted: &LanguageTag) -> Arc<Tongue> {
        let kept = self.kept.read().unwrap_or_else(PoisonError::into_inner).get(wanted).cloned();
        if let Some(tongue) = kept {
            return tongue;
        }
        // Built outside the lock: two threads may both build one, which costs a little time once.
        let tongue = self.build(wanted);
        let mut kept = self.kept.write().unwrap_or_else(PoisonError::into_inner);
        if kept.len() >= MOST_KEPT {
            kept.clear();
        }
        kept.insert(wanted.clone(), Arc::clone(&tongue));
        tongue
    }

    fn build(&self, wanted: &LanguageTag) -> Arc<Tongue> {
        let built = match self.texts_for(wanted) {
            Some(texts) => Tongue::new(texts, wanted.clone()),
            None => match (self.languages.first(), in_english(wanted)) {
                (Some(english), Some(tag)) => Tongue::new(english, tag),
                _ => return Arc::clone(&self.english),
            },
        };
        match built {
            Ok(tongue) => Arc::new(tongue),
            Err(error) => {
                tracing::error!(%error, language = %wanted, "a language cannot be spoken");
                Arc::clone(&self.english)
            }
        }
    }
}

impl fmt::Debug for Wording {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Wording").field("available", &self.available()).finish_non_exhaustive()
    }
}

/// The tag with its likely script and region, after the likely subtags of Unicode CLDR.
fn likely(tag: &LanguageTag) -> Option<LanguageIdentifier> {
    let mut full: LanguageIdentifier = tag.to_string().parse().ok()?;
    LocaleExpander::new_extended().maximize(&mut full);
    Some(full)
}

/// English as it is written where a reader of `tag` lives: for Finnish, the English of Finland.
fn in_english(tag: &LanguageTag) -> Option<LanguageTag> {
    let region = likely(tag)?.region?;
    format!("en-{region}").parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tag(text: &str) -> LanguageTag {
        text.parse().expect("a tag")
    }

    #[test]
    fn all_languages_have_the_same_messages_with_the_same_variables() {
        let wording = Wording::embedded().expect("wording");
        let english = LanguageTag::default();
        let keys = wording.keys(&english);
        assert!(keys.contains("weeks"));
        for language in wording.available() {
            assert_eq!(wording.keys(&language), keys, "{language}");
            for key in &keys {
                assert_eq!(
                    wording.variables(&language, key),
                    wording.variables(&english, key),
                    "{key} in {language}"
                );
            }
        }
    }

    #[test]
    fn the_nearest_texts_serve() {
        let wording = Wording::of(&[
            ("en", "a = A"),
            ("pt", "a = A"),
            ("pt-PT", "a = A"),
            ("zh", "a = A"),
            ("zh-Hant", "a = A"),
        ])
        .expect("wording");
        let chosen = |wanted: &str| wording.negotiate(&tag(wanted)).map(|tag| tag.to_string());
        for (wanted, is) in [
            ("en", "en"),
            ("en-GB", "en"),
            ("en-Latn-NZ", "en"),
            ("pt-BR", "pt"),
            ("pt-PT", "pt-PT"),
            ("pt-AO", "pt"),
            ("zh-CN", "zh"),
            // Taiwan and Hong Kong write the traditional script.
            ("zh-TW", "zh-Hant"),
            ("zh-HK", "zh-Hant"),
        ] {
            assert_eq!(chosen(wanted).as_deref(), Some(is), "{wanted}");
        }
        for unknown in ["fi", "en-Dsrt", "xx", "mis"] {
            assert_eq!(chosen(unknown), None, "{unknown}");
        }
    }

    #[test]
    fn a_reader_without_texts_hears_english_with_the_dates_of_their_region() {
        let wording = Wording::embedded().expect("wording");
        let date = "2026-04-22".parse().expect("a date");
        let said = |wanted: &str| wording.voice(&tag(wanted), Units::Metric).date(date);
        assert_eq!(said("fi"), "22 April");
        assert_eq!(said("ja-JP"), "April 22");
        assert_eq!(said("xx"), "April 22");
        let finnish = wording.voice(&tag("fi"), Units::Metric);
        assert_eq!(finnish.language(), &tag("en"));
        assert_eq!(finnish.locale(), &tag("en-FI"));
    }

    #[test]
    fn what_is_kept_stays_bounded_and_is_used_again() {
        let wording = Wording::embedded().expect("wording");
        let first = wording.tongue(&tag("en-GB"));
        assert!(Arc::ptr_eq(&first, &wording.tongue(&tag("en-GB"))));
        for number in 0..(MOST_KEPT + 5) {
            let _ = wording.tongue(&tag(&format!("en-{number:03}")));
        }
        assert!(wording.kept.read().expect("kept").len() <= MOST_KEPT);
    }

    #[test]
    fn wording_and_voices_go_between_threads() {
        fn shared<T: Send + Sync>() {}
        shared::<Wording>();
        shared::<Voice>();
    }
}

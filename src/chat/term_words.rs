//! Terms of the trade that people ask about: "what is hardening off?".

use serde::Deserialize;

/// The lists of `sentences.toml`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawTerms {
    openings: Vec<String>,
    small_words: String,
    hardening_off: Vec<String>,
    potting_up: Vec<String>,
    setting_out: Vec<String>,
    succession: Vec<String>,
    cover: Vec<String>,
    last_frost: Vec<String>,
    first_frost: Vec<String>,
}

/// A term that can be explained.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Term {
    HardeningOff,
    PottingUp,
    SettingOut,
    Succession,
    Cover,
    LastFrost,
    FirstFrost,
}

/// How a language asks what a term means.
#[derive(Debug)]
pub(super) struct TermWords {
    /// The longest first.
    openings: Vec<String>,
    small_words: Vec<String>,
    names: Vec<(String, Term)>,
}

impl TermWords {
    /// The lists in the form that `plain` gives a text.
    pub(super) fn new(raw: &RawTerms, plain: impl Fn(&str) -> String) -> Self {
        let mut openings: Vec<String> = raw.openings.iter().map(|text| plain(text)).collect();
        openings.sort_by_key(|opening| std::cmp::Reverse(opening.len()));
        let mut words =
            Self { openings, small_words: split(&plain(&raw.small_words)), names: Vec::new() };
        let lists = [
            (&raw.hardening_off, Term::HardeningOff),
            (&raw.potting_up, Term::PottingUp),
            (&raw.setting_out, Term::SettingOut),
            (&raw.succession, Term::Succession),
            (&raw.cover, Term::Cover),
            (&raw.last_frost, Term::LastFrost),
            (&raw.first_frost, Term::FirstFrost),
        ];
        let names = lists.into_iter().flat_map(|(list, term)| list.iter().map(move |n| (n, term)));
        words.names = names.map(|(name, term)| (words.without_small(&plain(name)), term)).collect();
        words
    }

    /// The term that the whole text asks about, which is given in the plain form.
    pub(super) fn read(&self, plain: &str) -> Option<Term> {
        let marks = |c: char| !c.is_alphanumeric() && !c.is_whitespace();
        let plain = split(&plain.replace(marks, " ")).join(" ");
        self.openings.iter().find_map(|opening| {
            let rest = plain.strip_prefix(opening.as_str())?;
            let asked = self.without_small(rest.strip_prefix(' ')?);
            let known = self.names.iter().find(|(name, _)| *name == asked);
            known.map(|(_, term)| *term)
        })
    }

    fn without_small(&self, text: &str) -> String {
        let kept =
            text.split(' ').filter(|word| !self.small_words.iter().any(|small| small == word));
        kept.collect::<Vec<_>>().join(" ")
    }
}

fn split(text: &str) -> Vec<String> {
    text.split_whitespace().map(ToOwned::to_owned).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chat::Knowledge;
    use crate::chat::sentences::Sentences;

    #[test]
    fn a_term_is_asked_about_in_every_language_and_nothing_else_is() {
        let knowledge = Knowledge::embedded().expect("the built-in data");
        let read = |tag: &str, text: &str| {
            knowledge.tongue(&tag.parse().expect("a tag")).sentences.term(text)
        };
        for (tag, text, term) in [
            ("en", "What is hardening off?", Term::HardeningOff),
            ("en", "what does hardening off mean", Term::HardeningOff),
            ("en", "what's potting-up", Term::PottingUp),
            ("en", "what is succession sowing?", Term::Succession),
            ("en", "what is a cover", Term::Cover),
            ("en", "what is last frost date", Term::LastFrost),
            ("en", "explain the average first frost, please", Term::FirstFrost),
            ("en", "what does setting out mean?", Term::SettingOut),
            ("de", "Was ist Abhärten?", Term::HardeningOff),
            ("de", "was heißt pikieren", Term::PottingUp),
            ("de", "Was bedeutet letzter Frost?", Term::LastFrost),
            ("es", "¿Qué es el endurecimiento?", Term::HardeningOff),
            ("es", "que significa siembra escalonada", Term::Succession),
            ("fr", "C’est quoi l’endurcissement ?", Term::HardeningOff),
            ("fr", "qu'est-ce que le repiquage", Term::PottingUp),
        ] {
            assert_eq!(read(tag, text), Some(term), "{text}");
        }
        for text in [
            "what is my last frost",
            "when is the last frost",
            "what is hardening off for tomatoes",
            "what is a cover crop",
            "hardening off",
            "what is",
            "",
        ] {
            assert_eq!(read("en", text), None, "{text}");
        }
    }

    proptest::proptest! {
        #[test]
        fn no_text_upsets_it(text in ".{0,80}") {
            static ENGLISH: std::sync::OnceLock<Sentences> = std::sync::OnceLock::new();
            let words = include_str!("../../locales/en/sentences.toml");
            let english = ENGLISH.get_or_init(|| Sentences::new(words).expect("the sentences"));
            let _ = english.term(&text);
            let _ = english.term(&format!("what is {text}"));
        }
    }
}

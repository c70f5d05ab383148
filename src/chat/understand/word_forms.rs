//! How a language writes its words: elisions, letters for other letters, and compounds.

use std::collections::HashMap;

use super::phrase_file::RawSpelling;
use super::words::{APOSTROPHES, Pause, Word};
use crate::catalogue::normalise;

/// A language's ways of writing, from `[spelling]` of its `phrases.toml`.
#[derive(Debug, Default)]
pub(crate) struct WordForms {
    stands_for: HashMap<String, Vec<String>>,
    fold: Vec<(String, String)>,
    elisions: Vec<String>,
    fronts: Vec<String>,
    links: Vec<String>,
    tails: Vec<String>,
}

impl WordForms {
    /// The ways of writing that a phrase list states.
    pub(super) fn new(raw: &RawSpelling) -> Self {
        let list = |text: &str| -> Vec<String> {
            normalise(text).split_whitespace().map(str::to_owned).collect()
        };
        let mut tails = list(&raw.compound_tails);
        // "jungpflanzen" says more than "pflanzen".
        tails.sort_by_key(|tail| std::cmp::Reverse(tail.len()));
        Self {
            stands_for: raw
                .stands_for
                .iter()
                .map(|(short, long)| (normalise(short), list(long)))
                .collect(),
            fold: raw.fold.clone(),
            elisions: list(&raw.elisions),
            fronts: list(&raw.compound_fronts),
            links: list(&raw.compound_links),
            tails,
        }
    }

    /// The words with those that an apostrophe joins taken apart: "l'ail" is "l" and "ail".
    pub fn apart(&self, words: Vec<Word>) -> Vec<Word> {
        if self.elisions.is_empty() {
            return words;
        }
        let mut apart = Vec::with_capacity(words.len());
        for mut word in words {
            while let Some((short, rest)) = self.elision(&word) {
                let [first, second] = word.cut(&short, &rest, true);
                apart.push(first);
                word = second;
            }
            apart.push(word);
        }
        apart
    }

    /// The words with short forms written out: "wot" is "what", "cani" is "can i".
    pub fn written_out(&self, words: Vec<Word>) -> Vec<Word> {
        let mut out = Vec::with_capacity(words.len());
        for word in words {
            let Some((last, before)) =
                self.stands_for.get(&word.plain).and_then(|long| long.split_last())
            else {
                out.push(word);
                continue;
            };
            for plain in before {
                out.push(Word { plain: plain.clone(), pause: Pause::None, ..word.clone() });
            }
            out.push(Word { plain: last.clone(), ..word });
        }
        out
    }

    fn elision(&self, word: &Word) -> Option<(String, String)> {
        let (before, after) = word.written.split_once(APOSTROPHES)?;
        let (short, rest) = (normalise(before), normalise(after));
        (!rest.is_empty() && self.elisions.contains(&short)).then_some((short, rest))
    }

    /// The word with the letters that are written for others ("kuerbis" for "kürbis"); `None`
    /// where it holds none.
    pub fn folded(&self, plain: &str) -> Option<String> {
        let mut folded = plain.to_owned();
        for (written, meant) in &self.fold {
            folded = folded.replace(written, meant);
        }
        (folded != plain).then_some(folded)
    }

    /// The compound `plain` as a name and what stands behind it, or before it; `is_name` knows the
    /// names. "gurkensamen" is "gurken" and "samen", "freilandgurken" is "freiland" and "gurken".
    pub fn parts(&self, plain: &str, is_name: impl Fn(&str) -> bool) -> Option<(String, String)> {
        for tail in &self.tails {
            let Some(stem) = plain.strip_suffix(tail.as_str()) else { continue };
            let unlinked = self.links.iter().filter_map(|link| stem.strip_suffix(link.as_str()));
            if let Some(name) = std::iter::once(stem).chain(unlinked).find(|name| is_name(name)) {
                return Some((name.to_owned(), tail.clone()));
            }
        }
        self.fronts.iter().find_map(|front| {
            let name = plain.strip_prefix(front.as_str()).filter(|name| is_name(name))?;
            Some((front.clone(), name.to_owned()))
        })
    }
}

#[cfg(test)]
mod tests {
    use super::super::words::split;
    use super::*;

    fn forms() -> WordForms {
        WordForms::new(&RawSpelling {
            stands_for: HashMap::from([("cani".into(), "can i".into())]),
            fold: vec![("ue".into(), "u".into())],
            elisions: "l d qu".into(),
            compound_fronts: "freiland".into(),
            compound_links: "n s".into(),
            compound_tails: "samen pflanzen jungpflanzen".into(),
        })
    }

    #[test]
    fn an_apostrophe_joins_two_words() {
        let words = forms().apart(split("qu'est-ce que l’ail d'aujourd'hui", 400));
        let plain: Vec<(&str, bool)> =
            words.iter().map(|word| (word.plain.as_str(), word.elided)).collect();
        assert_eq!(
            plain,
            [
                ("qu", true),
                ("est", false),
                ("ce", false),
                ("que", false),
                ("l", true),
                ("ail", false),
                ("d", true),
                ("aujourdhui", false)
            ]
        );
        let written: Vec<&str> = words.iter().map(|word| word.written.as_str()).collect();
        assert_eq!(written, ["qu", "est", "ce", "que", "l", "ail", "d", "aujourd'hui"]);
    }

    #[test]
    fn short_forms_are_written_out() {
        let words = forms().written_out(split("Cani, or", 400));
        let plain: Vec<(&str, Pause)> =
            words.iter().map(|word| (word.plain.as_str(), word.pause)).collect();
        assert_eq!(plain, [("can", Pause::None), ("i", Pause::Clause), ("or", Pause::None)]);
    }

    #[test]
    fn compounds_come_apart_at_a_name_and_nowhere_else() {
        let parts = |word: &str| forms().parts(word, |name| matches!(name, "gurke" | "gurken"));
        let two = |a: &str, b: &str| Some((a.to_owned(), b.to_owned()));
        assert_eq!(parts("gurkensamen"), two("gurken", "samen"));
        assert_eq!(parts("gurkejungpflanzen"), two("gurke", "jungpflanzen"));
        assert_eq!(parts("freilandgurken"), two("freiland", "gurken"));
        assert_eq!(parts("gurkensuppe"), None);
        assert_eq!(parts("steinsamen"), None);
        assert_eq!(forms().folded("kuerbis").as_deref(), Some("kurbis"));
        assert_eq!(forms().folded("kurbis"), None);
    }
}

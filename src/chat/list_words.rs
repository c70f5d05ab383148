//! What `/list …` asks for: verbs, names of lists and crops in the order that comes to mind.
//!
//! `/list Salsa bed + basil`, `/list add basil to salsa` and `/list salsa add basil` are the same.

use std::collections::HashMap;

use serde::Deserialize;

use crate::catalogue::normalise;
use crate::club::CODE_LENGTH;

/// What can be done with lists.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Verb {
    /// A new list.
    New,
    /// Crops come on it.
    Add,
    /// Crops go off it.
    TakeOff,
    /// Another name.
    Rename,
    /// A line of text.
    Note,
    /// Put away.
    Archive,
    /// A code for another club.
    Share,
    /// Copy the list of a code.
    Copy,
    /// Subscribe.
    Subscribe,
    /// End a subscription.
    Unsubscribe,
    /// Look at it.
    Show,
    /// How it works.
    Help,
}

/// The verbs that are understood in every language, since the examples show them.
const VERBS: [(&str, Verb); 27] = [
    ("new", Verb::New),
    ("create", Verb::New),
    ("make", Verb::New),
    ("add", Verb::Add),
    ("plus", Verb::Add),
    ("remove", Verb::TakeOff),
    ("drop", Verb::TakeOff),
    ("delete", Verb::TakeOff),
    ("minus", Verb::TakeOff),
    ("rename", Verb::Rename),
    ("note", Verb::Note),
    ("archive", Verb::Archive),
    ("close", Verb::Archive),
    ("share", Verb::Share),
    ("code", Verb::Share),
    ("take", Verb::Copy),
    ("copy", Verb::Copy),
    ("subscribe", Verb::Subscribe),
    ("join", Verb::Subscribe),
    ("follow", Verb::Subscribe),
    ("unsubscribe", Verb::Unsubscribe),
    ("leave", Verb::Unsubscribe),
    ("unfollow", Verb::Unsubscribe),
    ("show", Verb::Show),
    ("open", Verb::Show),
    ("see", Verb::Show),
    ("help", Verb::Help),
];

/// The words of one language for `/list`.
#[derive(Debug, Clone, Default, Deserialize)]
pub struct ListWords {
    /// Words between crops and a list: "basil to salsa". The longest is one word.
    #[serde(default)]
    between: Vec<String>,
    /// Words before a new name: "rename salsa to Hot bed".
    #[serde(default)]
    new_name: Vec<String>,
    /// The verbs beside those of [`VERBS`].
    #[serde(flatten)]
    verbs: HashMap<Verb, Vec<String>>,
}

/// Whether a list has this word, as it is written.
fn has(list: &[String], word: &str) -> bool {
    let word = normalise(word);
    list.iter().any(|known| normalise(known) == word)
}

/// What was asked; a list is its place among the names that were given.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum ListAsked<'t> {
    /// All lists.
    All,
    /// How it works.
    Help,
    /// A new list.
    New {
        /// Its name as written; may be empty.
        name: &'t str,
        /// Its crops as written.
        crops: &'t str,
    },
    /// Copy the list of this code.
    Copy(&'t str),
    /// Something with a list; what follows is as written and may be empty.
    Of(usize, Verb, &'t str),
    /// No list was named where one is needed.
    Which,
    /// There is no list of this name.
    NoSuch(&'t str),
}

/// The verb at the beginning of a text, with the rest.
fn verb_at<'t>(text: &'t str, words: &ListWords) -> Option<(Verb, &'t str)> {
    if let Some(rest) = text.strip_prefix('+') {
        return Some((Verb::Add, rest.trim()));
    }
    if let Some(rest) = text.strip_prefix(['-', '–', '−', '—']) {
        return Some((Verb::TakeOff, rest.trim()));
    }
    let (word, rest) = text.split_once(char::is_whitespace).unwrap_or((text, ""));
    let word = normalise(word.trim_matches(|c: char| c.is_ascii_punctuation()));
    let known = VERBS.iter().find(|(known, _)| *known == word).map(|(_, verb)| *verb);
    let own = || words.verbs.iter().find(|(_, said)| has(said, &word));
    let verb = known.or_else(|| own().map(|(verb, _)| *verb))?;
    Some((verb, rest.trim()))
}

/// Whether a name begins with a verb, so that it could not be told from what to do.
pub(super) fn begins_with_verb(name: &str, words: &ListWords) -> bool {
    verb_at(name.trim(), words).is_some()
}

/// Whether what follows the command may be a change that only coordinators make.
pub(super) fn may_change(rest: &str) -> bool {
    let looks = [Verb::Show, Verb::Help, Verb::Subscribe, Verb::Unsubscribe];
    let verb = verb_at(rest.trim(), &ListWords::default()).map(|(verb, _)| verb);
    !rest.trim().is_empty() && verb.is_none_or(|verb| !looks.contains(&verb))
}

/// The code of a list behind the first word: its letters and digits in capitals, however they are
/// grouped. `None` where what stands there has not the form of one.
pub(super) fn code_in(rest: &str) -> Option<String> {
    let (_, written) = rest.trim().split_once(char::is_whitespace)?;
    let divides = |c: char| c.is_whitespace() || matches!(c, '-' | '–' | '—' | '.');
    let code: String = written.chars().filter(|c| !divides(*c)).collect();
    let is_code = code.len() == CODE_LENGTH && code.bytes().all(|b| b.is_ascii_alphanumeric());
    is_code.then(|| code.to_ascii_uppercase())
}

/// Reads what follows `/list`; `names` are those of the club's lists.
pub(super) fn read<'t>(text: &'t str, names: &[&str], words: &ListWords) -> ListAsked<'t> {
    let text = text.trim();
    if text.is_empty() {
        return ListAsked::All;
    }
    // The whole name of a list is that list, whatever it begins with.
    if let Some(list) = exactly(text, names) {
        return ListAsked::Of(list, Verb::Show, "");
    }
    let Some((verb, rest)) = verb_at(text, words) else {
        let Some((list, tail)) = find(text, names) else { return ListAsked::NoSuch(text) };
        return match verb_at(tail, words) {
            Some((verb, tail)) => of(list, verb, tail, words),
            None if tail.is_empty() => ListAsked::Of(list, Verb::Show, ""),
            None => ListAsked::Of(list, Verb::Add, tail),
        };
    };
    match verb {
        Verb::Help => ListAsked::Help,
        Verb::Copy => ListAsked::Copy(rest),
        Verb::New => {
            let (name, crops) = rest.split_once([':', '\n']).unwrap_or((rest, ""));
            ListAsked::New { name: name.trim(), crops: crops.trim() }
        }
        Verb::Add | Verb::TakeOff => crops_and_list(verb, rest, names, words),
        _ => match find(rest, names) {
            Some((list, tail)) => of(list, verb, tail, words),
            None if rest.is_empty() && names.len() == 1 => of(0, verb, "", words),
            None if rest.is_empty() && verb == Verb::Show => ListAsked::All,
            None if rest.is_empty() => ListAsked::Which,
            None => ListAsked::NoSuch(rest),
        },
    }
}

fn of<'t>(list: usize, verb: Verb, tail: &'t str, words: &ListWords) -> ListAsked<'t> {
    match verb {
        Verb::Help => ListAsked::Help,
        Verb::New | Verb::Copy => ListAsked::Of(list, Verb::Show, ""),
        Verb::Rename => ListAsked::Of(list, verb, without_to(tail, words)),
        _ => ListAsked::Of(list, verb, tail),
    }
}

/// "to Salsa garden" is the name Salsa garden.
fn without_to<'t>(text: &'t str, words: &ListWords) -> &'t str {
    let text = text.trim_start_matches(['=', '-', '>', '→', ':']).trim();
    match text.split_once(char::is_whitespace) {
        Some((to, rest)) if has(&words.new_name, to) => rest.trim(),
        _ => text,
    }
}

/// "basil, dill to salsa" or "salsa basil, dill"; where there is one list only, it is meant.
fn crops_and_list<'t>(
    verb: Verb,
    rest: &'t str,
    names: &[&str],
    words: &ListWords,
) -> ListAsked<'t> {
    let mut from = 0;
    while let Some(at) = rest.get(from..).and_then(|rest| rest.find(' ')) {
        let (before, behind) = rest.split_at(from + at);
        let behind = behind.trim_start();
        let (word, list) = behind.split_once(' ').unwrap_or((behind, ""));
        if has(&words.between, word)
            && let Some((list, "")) = find(list, names)
        {
            return ListAsked::Of(list, verb, before.trim());
        }
        from = rest.len() - behind.len();
    }
    match find(rest, names) {
        // "remove Salsa bed" means the whole of it.
        Some((list, "")) if verb == Verb::TakeOff => ListAsked::Of(list, Verb::Archive, ""),
        Some((list, tail)) => ListAsked::Of(list, verb, tail),
        None if names.len() == 1 => ListAsked::Of(0, verb, rest),
        None => ListAsked::Which,
    }
}

fn plain(name: &str) -> String {
    let quotes = |c: char| matches!(c, '"' | '“' | '”' | '„' | '«' | '»' | ':' | ',');
    normalise(name.trim_matches(|c: char| quotes(c) || c.is_whitespace()))
}

/// The list of exactly this name.
pub(super) fn exactly(name: &str, names: &[&str]) -> Option<usize> {
    let name = plain(name);
    names.iter().position(|known| plain(known) == name)
}

/// The list that a text begins with, and what follows: the longest whole name, or else the longest
/// beginning of one list's name only.
fn find<'t>(text: &'t str, names: &[&str]) -> Option<(usize, &'t str)> {
    let mut heads: Vec<(&str, &str)> = Vec::new();
    let mut read = 0;
    for word in text.split_whitespace() {
        // A sign stands between the name and the crops.
        if word.starts_with(['+', '-', '–', '−', '—', '=']) {
            break;
        }
        read = text.get(read..).and_then(|rest| rest.find(word)).map_or(read, |at| read + at);
        read += word.len();
        let (head, tail) = text.split_at(read);
        heads.push((head, tail.trim_start_matches(|c: char| c.is_whitespace() || c == ':')));
    }
    let whole = heads.iter().rev().find_map(|(head, tail)| Some((exactly(head, names)?, *tail)));
    whole.or_else(|| {
        heads.iter().rev().find_map(|(head, tail)| {
            let head = plain(head);
            let begins = |name: &&str| {
                let name = plain(name);
                name.strip_prefix(&head).is_some_and(|rest| rest.starts_with(' '))
            };
            let mut fitting = names.iter().enumerate().filter(|(_, name)| begins(name));
            match (fitting.next(), fitting.next()) {
                (Some((list, _)), None) if !head.is_empty() => Some((list, *tail)),
                _ => None,
            }
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const NAMES: [&str; 3] = ["Salsa bed", "Cutting garden", "First-year bed"];

    /// The words of the English file.
    fn english() -> &'static ListWords {
        static ENGLISH: std::sync::OnceLock<crate::chat::sentences::Sentences> =
            std::sync::OnceLock::new();
        let words = include_str!("../../locales/en/sentences.toml");
        let read = || crate::chat::sentences::Sentences::new(words).expect("the sentences");
        ENGLISH.get_or_init(read).list_words()
    }

    fn asked(text: &str) -> ListAsked<'_> {
        read(text, &NAMES, english())
    }

    #[test]
    fn a_change_is_read_in_any_order_of_words() {
        for text in [
            "Salsa bed + basil, dill",
            "salsa bed +basil, dill",
            "salsa + basil, dill",
            "add basil, dill to salsa bed",
            "add basil, dill to Salsa",
            "salsa add basil, dill",
            "Salsa bed: basil, dill",
            "“Salsa bed” basil, dill",
            "add salsa basil, dill",
        ] {
            assert_eq!(asked(text), ListAsked::Of(0, Verb::Add, "basil, dill"), "{text}");
        }
        for text in [
            "salsa bed - sweet pepper",
            "salsa – sweet pepper",
            "remove sweet pepper from salsa bed",
            "salsa remove sweet pepper",
            "drop sweet pepper off salsa",
        ] {
            assert_eq!(asked(text), ListAsked::Of(0, Verb::TakeOff, "sweet pepper"), "{text}");
        }
        for text in
            ["rename salsa to Hot bed", "salsa rename Hot bed", "salsa bed rename to Hot bed"]
        {
            assert_eq!(asked(text), ListAsked::Of(0, Verb::Rename, "Hot bed"), "{text}");
        }
        for text in ["archive first-year", "first-year bed close", "delete First-year bed"] {
            assert_eq!(asked(text), ListAsked::Of(2, Verb::Archive, ""), "{text}");
        }
        assert_eq!(
            asked("note cutting: for the vases"),
            ListAsked::Of(1, Verb::Note, "for the vases")
        );
        assert_eq!(asked("share cutting"), ListAsked::Of(1, Verb::Share, ""));
        assert_eq!(asked("join cutting garden"), ListAsked::Of(1, Verb::Subscribe, ""));
        assert_eq!(asked("leave cutting"), ListAsked::Of(1, Verb::Unsubscribe, ""));
    }

    #[test]
    fn the_rest_is_read_too() {
        assert_eq!(asked(" "), ListAsked::All);
        assert_eq!(asked("show"), ListAsked::All);
        assert_eq!(asked("help"), ListAsked::Help);
        assert_eq!(asked("SALSA BED"), ListAsked::Of(0, Verb::Show, ""));
        let new = |name, crops| ListAsked::New { name, crops };
        assert_eq!(asked("new Herb spiral: basil, dill"), new("Herb spiral", "basil, dill"));
        assert_eq!(asked("new Herb spiral\nbasil"), new("Herb spiral", "basil"));
        assert_eq!(asked("new"), new("", ""));
        assert_eq!(asked("take AB2C-DE3F"), ListAsked::Copy("AB2C-DE3F"));
        assert_eq!(asked("rename"), ListAsked::Which);
        assert_eq!(asked("+ basil"), ListAsked::Which);
        assert_eq!(asked("orchard + pear"), ListAsked::NoSuch("orchard + pear"));
        assert_eq!(asked("share orchard"), ListAsked::NoSuch("orchard"));
        // "bed" begins no list's name, and a part that begins two names none.
        assert_eq!(asked("bed + basil"), ListAsked::NoSuch("bed + basil"));
        let two = ["Salsa bed", "Salsa pots"];
        assert_eq!(read("salsa", &two, &ListWords::default()), ListAsked::NoSuch("salsa"));
    }

    #[test]
    fn a_clubs_only_list_need_not_be_named() {
        let one = |text| read(text, &["Salsa bed"], &ListWords::default());
        assert_eq!(one("+ basil"), ListAsked::Of(0, Verb::Add, "basil"));
        assert_eq!(one("remove basil"), ListAsked::Of(0, Verb::TakeOff, "basil"));
        assert_eq!(one("share"), ListAsked::Of(0, Verb::Share, ""));
    }

    #[test]
    fn a_languages_own_verbs_are_read() {
        let words: ListWords = toml::from_str(
            "add = ['ajouter']\nrename = ['renomme']\nbetween = ['à']\nnew_name = ['en']",
        )
        .expect("the words");
        let asked = read("ajouter basil à salsa", &NAMES, &words);
        assert_eq!(asked, ListAsked::Of(0, Verb::Add, "basil"));
        let asked = read("renomme salsa en Hot bed", &NAMES, &words);
        assert_eq!(asked, ListAsked::Of(0, Verb::Rename, "Hot bed"));
        assert!(toml::from_str::<ListWords>("dance = ['tanze']").is_err());
        assert!(begins_with_verb("Ajouter ici", &words));
        assert!(begins_with_verb("New beds", &words) && !begins_with_verb("Newcomers", &words));
    }

    #[test]
    fn a_code_is_read_however_it_is_grouped() {
        for written in ["take ab2c-de3f", "take AB2C DE3F", "copy  ab2cde3f "] {
            assert_eq!(code_in(written).as_deref(), Some("AB2CDE3F"), "{written}");
        }
        for bad in ["take", "take AB2C", "take AB2CDE3FG", "take ÄB2CDE3"] {
            assert_eq!(code_in(bad), None, "{bad}");
        }
    }

    #[test]
    fn only_changes_need_a_role() {
        for looks in ["", "show salsa", "help", "join salsa", "leave salsa"] {
            assert!(!may_change(looks), "{looks}");
        }
        for changes in ["new Herbs", "salsa + basil", "archive salsa", "take AB2CDE3F"] {
            assert!(may_change(changes), "{changes}");
        }
    }

    proptest::proptest! {
        #[test]
        fn no_text_upsets_it(text in ".{0,60}", name in ".{0,20}") {
            let _ = read(&text, &[&name, "Salsa bed"], english());
            let _ = (code_in(&text), may_change(&text));
        }
    }
}

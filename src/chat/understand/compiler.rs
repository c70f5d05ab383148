//! Turns the patterns of a phrase list, as they are written, into what is held against questions.

use std::collections::HashMap;

use super::pattern::{Element, Pattern, Slot};

/// Gives each word of the patterns its number and keeps the classes.
#[derive(Debug, Default)]
pub(crate) struct Compiler {
    ids: HashMap<String, u32>,
    classes: HashMap<String, Vec<Vec<Element>>>,
}

impl Compiler {
    /// The number of `word`, a new one where it is met for the first time.
    pub fn id(&mut self, word: &str) -> u32 {
        let next = u32::try_from(self.ids.len()).unwrap_or(u32::MAX);
        *self.ids.entry(word.to_owned()).or_insert(next)
    }

    /// Adds a class; its entries are patterns and may name earlier classes.
    pub fn class(&mut self, name: &str, entries: &[String]) -> Result<(), String> {
        let ways = entries.iter().map(|entry| self.sequence(entry)).collect::<Result<_, _>>()?;
        self.classes.insert(name.to_owned(), ways);
        Ok(())
    }

    /// Compiles one pattern.
    pub fn pattern(&mut self, text: &str) -> Result<Pattern, String> {
        let elements = self.sequence(text)?;
        if elements.is_empty() {
            return Err("an empty pattern".to_owned());
        }
        Ok(Pattern::new(elements))
    }

    /// The numbers of all words that were met.
    pub fn into_ids(self) -> HashMap<String, u32> {
        self.ids
    }

    fn sequence(&mut self, text: &str) -> Result<Vec<Element>, String> {
        let mut elements = Vec::new();
        let mut rest = text.trim_start();
        while let Some(first) = rest.chars().next() {
            let (element, after) = match first {
                '(' => {
                    let (inside, after) = enclosed(rest, '(', ')')?;
                    (one_of(self.choices(inside)?), after)
                }
                '[' => {
                    let (inside, after) = enclosed(rest, '[', ']')?;
                    (Element::Maybe(self.choices(inside)?), after)
                }
                '{' => {
                    let (inside, after) = enclosed(rest, '{', '}')?;
                    let slot = Slot::named(inside).ok_or(format!("no slot '{inside}'"))?;
                    (Element::Slot(slot), after)
                }
                _ => {
                    let end = rest.find(char::is_whitespace).unwrap_or(rest.len());
                    let (word, after) = rest.split_at(end);
                    (self.single(word)?, after)
                }
            };
            elements.push(element);
            rest = after.trim_start();
        }
        Ok(elements)
    }

    fn choices(&mut self, inside: &str) -> Result<Vec<Vec<Element>>, String> {
        let mut ways = Vec::new();
        for choice in split_choices(inside) {
            let way = self.sequence(choice)?;
            if way.is_empty() {
                return Err(format!("an empty choice in '{inside}'"));
            }
            ways.push(way);
        }
        Ok(ways)
    }

    fn single(&mut self, word: &str) -> Result<Element, String> {
        if word == ".." {
            return Ok(Element::Gap);
        }
        if let Some(class) = word.strip_prefix('@') {
            let ways = self.classes.get(class).ok_or(format!("no class '{class}'"))?;
            return Ok(one_of(ways.clone()));
        }
        let plain = crate::catalogue::normalise(word);
        if plain.is_empty() || plain.contains(|c: char| !c.is_alphanumeric()) {
            return Err(format!("'{word}' is not one word"));
        }
        Ok(Element::Word(self.id(&plain)))
    }
}

fn one_of(ways: Vec<Vec<Element>>) -> Element {
    let mut single: Vec<u32> = ways
        .iter()
        .filter_map(|way| match way.as_slice() {
            [Element::Word(id)] => Some(*id),
            _ => None,
        })
        .collect();
    if single.len() == ways.len() {
        single.sort_unstable();
        Element::OneWordOf(single)
    } else {
        Element::OneOf(ways)
    }
}

/// What stands between `open` at the start of `text` and its `close`, and what follows.
fn enclosed(text: &str, open: char, close: char) -> Result<(&str, &str), String> {
    let mut depth = 0_usize;
    for (at, letter) in text.char_indices() {
        if letter == open {
            depth += 1;
        } else if letter == close {
            depth = depth.saturating_sub(1);
            if depth == 0 {
                let inside = text.get(open.len_utf8()..at).unwrap_or_default();
                return Ok((inside, text.get(at + close.len_utf8()..).unwrap_or_default()));
            }
        }
    }
    Err(format!("'{open}' without '{close}' in '{text}'"))
}

/// Splits at the bars that are not inside further brackets.
fn split_choices(inside: &str) -> Vec<&str> {
    let mut depth = 0_usize;
    inside
        .split(|letter| {
            match letter {
                '(' | '[' => depth += 1,
                ')' | ']' => depth = depth.saturating_sub(1),
                _ => {}
            }
            letter == '|' && depth == 0
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chat::understand::pattern::Line;
    use crate::chat::understand::words::{Pause, Word, split};

    struct Plain(Vec<Word>);

    impl Line for Plain {
        fn word(&self, at: usize) -> Option<u32> {
            self.0.get(at)?.id
        }
        fn slot(&self, at: usize, slot: Slot) -> Option<u32> {
            (slot == Slot::Number).then(|| self.0.get(at)?.plain.parse().ok()).flatten()
        }
        fn pause(&self, at: usize) -> Option<Pause> {
            Some(self.0.get(at)?.pause)
        }
    }

    fn matches(pattern: &str, text: &str) -> Option<(usize, usize)> {
        let mut compiler = Compiler::default();
        compiler.class("start", &["start".into(), "(set|put) out".into()]).expect("class");
        let pattern = compiler.pattern(pattern).expect("pattern");
        let ids = compiler.into_ids();
        let mut words = split(text, 400);
        for word in &mut words {
            word.id = ids.get(&word.plain).copied();
        }
        let line = Plain(words);
        (0..line.0.len()).find_map(|at| pattern.shortest(&line, at).map(|end| (at, end)))
    }

    #[test]
    fn choices_options_gaps_and_classes() {
        assert_eq!(matches("can (i|we) [still] @start", "Well, can we start?"), Some((1, 4)));
        assert_eq!(matches("can (i|we) [still] @start", "can I still put out"), Some((0, 5)));
        assert_eq!(matches("can (i|we) [still] @start", "can I never start"), None);
        assert_eq!(matches("can .. @start", "can my basil in cells start"), Some((0, 6)));
        assert_eq!(matches("can .. @start", "can a b c d e f g start"), None);
        assert_eq!(matches("in {number} start", "start in 4 start"), Some((1, 4)));
        assert_eq!(matches("(a (b|c)|d)", "x a c"), Some((1, 3)));
    }

    #[test]
    fn no_match_over_the_end_of_a_sentence() {
        assert_eq!(matches("can .. start", "yes we can. start it"), None);
        assert_eq!(matches("can start", "can, start"), Some((0, 2)));
        assert_eq!(matches("can start", "can! start"), None);
        assert_eq!(matches("start", "can! start"), Some((1, 2)));
    }

    #[test]
    fn mistakes_in_a_pattern_are_told() {
        let mut compiler = Compiler::default();
        for bad in ["", "(a", "[a|]", "@nothing", "{nothing}", "a,b"] {
            assert!(compiler.pattern(bad).is_err(), "{bad}");
        }
    }
}

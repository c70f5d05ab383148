//! A text as words, with what people put between them.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

use crate::catalogue::normalise;

/// What is written for an apostrophe.
pub(crate) const APOSTROPHES: [char; 6] = ['\'', '’', '‘', 'ʼ', '`', '´'];

/// What stands between a word and the next one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Pause {
    /// Nothing but space.
    None,
    /// A comma, a dash or another mark inside a sentence.
    Clause,
    /// The end of a sentence or a line.
    Sentence,
}

/// One word of a text.
#[derive(Debug, Clone)]
pub(crate) struct Word {
    /// As it was written.
    pub written: String,
    /// In the plain form of the word lists: lower case, no accents, no apostrophes.
    pub plain: String,
    /// Whether an apostrophe joins it to the next word, as in "l'ail".
    pub elided: bool,
    /// The pause after it.
    pub pause: Pause,
    /// Its number in the vocabulary of the phrases, where it has one.
    pub id: Option<u32>,
}

impl Word {
    /// Whether it holds a digit: numbers are neither crop names nor slips of the pen.
    pub fn has_digit(&self) -> bool {
        self.plain.bytes().any(|b| b.is_ascii_digit())
    }
}

/// Splits the first `limit` characters of `text` into words.
///
/// A hyphen separates words ("pole-beans") except between numbers, where it belongs to a date
/// ("2026-05-01"); a slash or a full stop between digits stays too, so that "5/1" and "1.5" are one
/// word each.
pub(crate) fn split(text: &str, limit: usize) -> Vec<Word> {
    let text: Vec<char> = text.chars().take(limit).nfc().collect();
    let mut words: Vec<Word> = Vec::new();
    let mut chunk = String::new();
    for (at, &letter) in text.iter().enumerate() {
        if belongs_to_a_word(letter) {
            chunk.push(letter);
            continue;
        }
        let after_number = chunk.bytes().all(|b| b.is_ascii_digit() || b == b'.');
        let next = text.get(at + 1).copied();
        if letter == '.' && after_number && !chunk.is_empty() && next.is_some_and(is_digit) {
            chunk.push(letter);
            continue;
        }
        push_chunk(&mut words, &chunk);
        chunk.clear();
        let following = text.iter().skip(at + 1);
        let before_number =
            || following.clone().find(|c| !c.is_whitespace()).is_some_and(char::is_ascii_digit);
        let pause = match letter {
            // "Oct. 5" and "5. Oktober" do not end a sentence.
            '.' if after_number || before_number() => Pause::None,
            '.' | '!' | '?' | '\n' | '\r' | '\u{2028}' | '\u{2029}' => Pause::Sentence,
            ',' | ';' | ':' | '&' | '+' | '(' | ')' | '–' | '—' | '•' | '|' => Pause::Clause,
            _ => Pause::None,
        };
        if let Some(last) = words.last_mut() {
            last.pause = last.pause.max(pause);
        }
    }
    push_chunk(&mut words, &chunk);
    words
}

fn is_digit(letter: char) -> bool {
    letter.is_ascii_digit()
}

fn belongs_to_a_word(letter: char) -> bool {
    letter.is_alphanumeric()
        || is_combining_mark(letter)
        || matches!(letter, '\'' | '’' | '‘' | 'ʼ' | '`' | '´' | '-' | '‐' | '‑' | '_' | '/')
}

fn push_chunk(words: &mut Vec<Word>, chunk: &str) {
    let chunk = chunk.trim_matches(|c: char| matches!(c, '-' | '_' | '/' | '\'' | '’' | '‘' | '`'));
    if chunk.is_empty() {
        return;
    }
    let numeric = chunk.bytes().all(|b| b.is_ascii_digit() || matches!(b, b'-' | b'/' | b'.'));
    if numeric {
        words.push(word(chunk, chunk));
        return;
    }
    for part in chunk.split(['-', '‐', '‑', '_', '/', '.']) {
        let plain = normalise(part);
        // A letter may normalise to several words in some scripts; each is looked up alone.
        for plain in plain.split_whitespace() {
            words.push(word(part, plain));
        }
    }
}

fn word(written: &str, plain: &str) -> Word {
    Word {
        written: written.to_owned(),
        plain: plain.to_owned(),
        elided: false,
        pause: Pause::None,
        id: None,
    }
}

impl Word {
    /// This word as two, the first of them spelt so in its plain form.
    pub fn cut(self, first: &str, second: &str, elided: bool) -> [Self; 2] {
        let letters = if elided { first.chars().count() + 1 } else { first.chars().count() };
        let at = self.written.char_indices().nth(letters).map_or(self.written.len(), |(at, _)| at);
        let (before, after) = self.written.split_at(at);
        let first = Self { elided, ..word(before.trim_end_matches(APOSTROPHES), first) };
        [first, Self { pause: self.pause, ..word(after, second) }]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn plain(text: &str) -> Vec<String> {
        split(text, 400).into_iter().map(|word| word.plain).collect()
    }

    #[test]
    fn hyphens_separate_words_but_not_numbers() {
        assert_eq!(plain("pole-beans on 2026-05-01"), ["pole", "beans", "on", "2026-05-01"]);
        assert_eq!(plain("15-Oct, 5/1"), ["15", "oct", "5/1"]);
        assert_eq!(plain("am 1.5.2026, 1.5. und 3."), ["am", "1.5.2026", "1.5", "und", "3"]);
    }

    #[test]
    fn accents_and_apostrophes_are_dropped() {
        assert_eq!(plain("Jalapeño lady’s"), ["jalapeno", "ladys"]);
    }

    #[test]
    fn pauses_are_kept() {
        use Pause::{Clause, None, Sentence};
        let pauses: Vec<Pause> =
            split("tomato, basil & dill. Oct. 5\nnow", 400).iter().map(|w| w.pause).collect();
        assert_eq!(pauses, [Clause, Clause, Sentence, None, Sentence, None]);
    }

    #[test]
    fn only_the_beginning_is_read() {
        assert_eq!(split(&"a ".repeat(10_000), 400).len(), 200);
    }
}

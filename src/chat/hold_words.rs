//! How long a cold spell is waited out, in words: "7", "7 days", "a week", "off".

use serde::Deserialize;

use crate::catalogue::normalise;

/// The lists of `sentences.toml`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawHold {
    days: Vec<String>,
    weeks: Vec<String>,
    small_words: String,
    off: Vec<String>,
    numbers: Vec<String>,
}

/// What a text says of a hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum HoldTold {
    /// This many days; whether that can be is another matter.
    Days(u64),
    /// The hold ends.
    Off,
}

/// How a language tells of holds.
#[derive(Debug)]
pub struct HoldWords {
    days: Vec<String>,
    weeks: Vec<String>,
    small_words: Vec<String>,
    off: Vec<String>,
    /// The words of each number, from one on.
    numbers: Vec<Vec<String>>,
}

impl HoldWords {
    pub(super) fn new(raw: &RawHold) -> Self {
        let plain = |list: &[String]| list.iter().map(|text| normalise(text)).collect();
        let split = |text: &str, by: char| text.split(by).map(normalise).collect::<Vec<_>>();
        Self {
            days: plain(&raw.days),
            weeks: plain(&raw.weeks),
            small_words: raw.small_words.split_whitespace().map(normalise).collect(),
            off: plain(&raw.off),
            numbers: raw.numbers.iter().map(|text| split(text, '|')).collect(),
        }
    }

    /// What `text` says; `None` where it says neither a length nor an end.
    ///
    /// A number alone counts days.
    pub(super) fn read(&self, text: &str) -> Option<HoldTold> {
        let text: String = text.chars().take(100).collect();
        // A minus sign would pass for a hyphen.
        if text.contains('-') || text.contains('−') {
            return None;
        }
        let text = normalise(text.trim_end_matches(|c: char| ".!".contains(c)));
        if self.off.contains(&text) {
            return Some(HoldTold::Off);
        }
        let small = |word: &&str| self.small_words.iter().any(|small| small == word);
        let mut words: Vec<&str> = text.split(' ').filter(|word| !small(word)).collect();
        // "7days" is a number and a unit.
        if let [one] = words.as_slice() {
            let digits = one.find(|c: char| !c.is_ascii_digit()).unwrap_or(one.len());
            let (number, unit) = one.split_at(digits);
            if !number.is_empty() && !unit.is_empty() {
                words = vec![number, unit];
            }
        }
        let is = |list: &[String], word: &str| list.iter().any(|known| known == word);
        let (number, each) = match words.as_slice() {
            [number @ .., unit] if is(&self.weeks, unit) => (number.join(" "), 7),
            [number @ .., unit] if is(&self.days, unit) => (number.join(" "), 1),
            number => (number.join(" "), 1),
        };
        // Somebody who holds everything "for the week" holds it for one.
        let number = if number.is_empty() && each > 1 { 1 } else { self.number(&number)? };
        Some(HoldTold::Days(number.saturating_mul(each)))
    }

    fn number(&self, text: &str) -> Option<u64> {
        if !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit()) {
            // What has too many digits is too long anyway.
            return Some(text.parse().unwrap_or(u64::MAX));
        }
        let at = self.numbers.iter().position(|words| words.iter().any(|word| word == text))?;
        u64::try_from(at + 1).ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chat::Knowledge;

    #[test]
    fn lengths_are_read_in_digits_and_words() {
        let knowledge = Knowledge::embedded().expect("the built-in data");
        let tongue = knowledge.tongue(&"en".parse().expect("a tag"));
        let read = |text: &str| tongue.sentences.hold.read(text);
        for (text, days) in [
            ("7", 7),
            ("7 days", 7),
            ("7days", 7),
            ("for the next ten days", 10),
            ("a week", 7),
            ("1 week.", 7),
            ("two weeks", 14),
            ("the week", 7),
            ("a couple of days", 2),
            ("0", 0),
            ("99999999999999999999999", u64::MAX),
            ("99999999999999999999999 weeks", u64::MAX),
        ] {
            assert_eq!(read(text), Some(HoldTold::Days(days)), "{text}");
        }
        for text in ["off", "Over!", "no more"] {
            assert_eq!(read(text), Some(HoldTold::Off), "{text}");
        }
        for text in ["", "-3", "1.5 days", "some days", "days", "7 tomatoes", "seven or so"] {
            assert_eq!(read(text), None, "{text}");
        }
    }
}

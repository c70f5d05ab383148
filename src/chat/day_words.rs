//! Words about days that follow a command: days of the week, "weekends", "here", "on" and "off".

use chrono::Weekday;
use serde::Deserialize;

use crate::catalogue::normalise;
use crate::club::{Digest, ReminderTime, WEEK};

/// The lists of a language's `sentences.toml`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct DayLists {
    /// From Monday, the words for each.
    weekdays: Vec<String>,
    weekend: Vec<String>,
    working_days: Vec<String>,
    here: Vec<String>,
    on: Vec<String>,
    off: Vec<String>,
    /// Words beside a day that take it off the quiet ones: "not Sunday".
    lift: Vec<String>,
}

/// A language's words about days.
#[derive(Debug)]
pub struct DayWords {
    weekdays: Vec<(String, Vec<Weekday>)>,
    here: Vec<String>,
    on: Vec<String>,
    off: Vec<String>,
    lift: Vec<String>,
}

/// What was said of a digest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DigestSaid {
    /// None any more.
    Off,
    /// On this day and at this time; `here` is the topic in which it was said.
    On {
        /// The day of the week.
        on: Weekday,
        /// The time; eight in the morning where none was said.
        at: ReminderTime,
        /// Whether it is to come in this topic.
        here: bool,
    },
}

/// When the digest comes where only its day was said: eight in the morning.
const USUAL_DIGEST: u16 = 8 * 60;

/// The most words that follow such a command and are looked at.
const MOST_WORDS: usize = 30;

impl DayWords {
    /// # Errors
    /// Where the list of days has not seven entries.
    pub(super) fn new(lists: DayLists) -> Result<Self, String> {
        if lists.weekdays.len() != WEEK.len() {
            return Err(format!("days.weekdays: {} instead of 7", lists.weekdays.len()));
        }
        let plain = |list: Vec<String>| -> Vec<String> {
            list.iter().map(|word| normalise(word)).collect()
        };
        let mut weekdays = Vec::new();
        for (day, words) in WEEK.into_iter().zip(&lists.weekdays) {
            weekdays.extend(words.split(' ').map(|word| (normalise(word), vec![day])));
        }
        let (weekend, working) = (vec![Weekday::Sat, Weekday::Sun], WEEK.into_iter().take(5));
        let working: Vec<Weekday> = working.collect();
        weekdays.extend(plain(lists.weekend).into_iter().map(|word| (word, weekend.clone())));
        weekdays.extend(plain(lists.working_days).into_iter().map(|word| (word, working.clone())));
        let (here, on, off) = (plain(lists.here), plain(lists.on), plain(lists.off));
        Ok(Self { weekdays, here, on, off, lift: plain(lists.lift) })
    }

    /// Yes or no, where the text says nothing else.
    #[must_use]
    pub fn on_or_off(&self, text: &str) -> Option<bool> {
        let text = normalise(text.trim_matches(|c: char| c.is_ascii_punctuation()));
        if self.on.contains(&text) { Some(true) } else { self.off.contains(&text).then_some(false) }
    }

    /// Whether the words beside a day of the week take it off the quiet ones: "off Sunday".
    #[must_use]
    pub fn lifts(&self, text: &str) -> bool {
        words(text).iter().any(|(_, plain)| self.lift.contains(plain))
    }

    fn days_of(&self, word: &str) -> &[Weekday] {
        let found = self.weekdays.iter().find(|(known, _)| known == word);
        found.map_or(&[], |(_, days)| days.as_slice())
    }

    /// The days of the week that a text names, in the week's order; empty where it names none.
    #[must_use]
    pub fn weekdays(&self, text: &str) -> Vec<Weekday> {
        let words = words(text);
        let said: Vec<Weekday> =
            words.iter().flat_map(|(_, plain)| self.days_of(plain)).copied().collect();
        WEEK.into_iter().filter(|day| said.contains(day)).collect()
    }

    /// Reads "Monday 8:00 here", "off"; `None` where it is neither.
    #[must_use]
    pub fn digest(&self, text: &str) -> Option<DigestSaid> {
        if self.on_or_off(text) == Some(false) {
            return Some(DigestSaid::Off);
        }
        let (mut on, mut here, mut time) = (None, false, Vec::new());
        for (written, plain) in words(text) {
            match self.days_of(&plain) {
                [day] if on.is_none() => on = Some(*day),
                [] if self.here.contains(&plain) => here = true,
                [] => time.push(written),
                _ => return None,
            }
        }
        let time = time.join(" ");
        // "at 8": a word before the time says nothing more.
        let behind_a_word = || time.split_once(' ').map_or("", |(_, rest)| rest);
        let at = if time.is_empty() {
            ReminderTime::from_minutes(USUAL_DIGEST)?
        } else {
            time.parse::<ReminderTime>().or_else(|_| behind_a_word().parse()).ok()?
        };
        Some(DigestSaid::On { on: on?, at, here })
    }
}

/// The words of a text, as written and in their plain form.
fn words(text: &str) -> Vec<(&str, String)> {
    let parts = text.split(|c: char| c.is_whitespace() || matches!(c, ',' | ';' | '&' | '+'));
    let parts = parts.filter(|part| !part.is_empty()).take(MOST_WORDS);
    parts.map(|part| (part, normalise(part.trim_matches(['.', '!', '-', '('])))).collect()
}

impl DigestSaid {
    /// The digest, said in the topic `thread`.
    #[must_use]
    pub fn in_topic(self, thread: Option<i32>) -> Option<Digest> {
        match self {
            Self::Off => None,
            Self::On { on, at, here } => Some(Digest { on, at, thread: thread.filter(|_| here) }),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::sentences::Sentences;
    use super::*;

    fn english() -> Sentences {
        Sentences::new(include_str!("../../locales/en/sentences.toml")).expect("English")
    }

    #[test]
    fn days_of_the_week_as_people_write_them() {
        let days = |text: &str| english().days.weekdays(text);
        assert_eq!(days("Sundays"), [Weekday::Sun]);
        assert_eq!(days("sat & SUN"), [Weekday::Sat, Weekday::Sun]);
        assert_eq!(days("Wednesday, Monday."), [Weekday::Mon, Weekday::Wed]);
        assert_eq!(days("weekends"), [Weekday::Sat, Weekday::Sun]);
        assert_eq!(days("weekdays").len(), 5);
        assert_eq!(days("the moon"), []);
    }

    #[test]
    fn a_word_beside_a_day_takes_it_off() {
        let knowledge = crate::chat::Knowledge::embedded().expect("the built-in data");
        for (tag, text, lifts) in [
            ("en", "off Sunday", true),
            ("en", "not sunday", true),
            ("en", "Sunday", false),
            ("en", "Sunday and Monday please", false),
            ("de", "aus sonntag", true),
            ("de", "Samstag aus", true),
            ("de", "Sonntag", false),
            ("fr", "fin dimanche", true),
            ("fr", "dimanche", false),
            ("es", "domingo no", true),
            ("es", "domingo", false),
        ] {
            let days = &knowledge.tongue(&tag.parse().expect("a tag")).sentences.days;
            assert_eq!(days.lifts(text), lifts, "{tag} {text}");
            assert!(!days.weekdays(text).is_empty(), "{tag} {text}");
        }
    }

    #[test]
    fn digests_as_coordinators_write_them() {
        let digest = |text: &str| english().days.digest(text);
        let on = |on, minutes, here| {
            let at = ReminderTime::from_minutes(minutes).expect("a time");
            Some(DigestSaid::On { on, at, here })
        };
        assert_eq!(digest("Monday 8:00 here"), on(Weekday::Mon, 480, true));
        assert_eq!(digest("here, Sundays at 6 pm"), on(Weekday::Sun, 1080, true));
        assert_eq!(digest("Friday"), on(Weekday::Fri, 480, false));
        assert_eq!(digest("7:30 thu"), on(Weekday::Thu, 450, false));
        assert_eq!(digest("off"), Some(DigestSaid::Off));
        for bad in ["", "8:00", "Monday Tuesday 8:00", "weekends 8:00", "Monday 25:00", "Moonday 8"]
        {
            assert_eq!(digest(bad), None, "{bad}");
        }
    }

    proptest::proptest! {
        #[test]
        fn no_text_upsets_them(text in ".{0,80}") {
            static WORDS: std::sync::OnceLock<Sentences> = std::sync::OnceLock::new();
            let words = &WORDS.get_or_init(english).days;
            let days = words.weekdays(&text);
            proptest::prop_assert!(days.is_sorted_by_key(chrono::Weekday::num_days_from_monday));
            let _ = words.digest(&text);
        }
    }
}

//! How one reader is spoken to.

use std::fmt;
use std::sync::Arc;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use intl_memoizer::concurrent::IntlLangMemoizer;

use super::WordingError;
use super::args::{Args, Value};
use super::formats::{Formats, Numerals};
use super::texts::Texts;
use crate::club::{LanguageTag, Units};

/// Texts, formats and units for one reader; cheap to clone.
#[derive(Clone)]
pub struct Voice {
    pub(super) tongue: Arc<Tongue>,
    pub(super) english: Arc<Tongue>,
    pub(super) units: Units,
}

/// One language's texts with the formats of one locale.
pub(super) struct Tongue {
    /// The language of the texts.
    language: LanguageTag,
    /// The locale of the formats.
    tag: LanguageTag,
    bundle: FluentBundle<Arc<FluentResource>>,
    pub(super) formats: Formats,
}

impl Tongue {
    /// `texts` with the formats of the locale `tag`.
    pub(super) fn new(texts: &Texts, tag: LanguageTag) -> Result<Self, WordingError> {
        let wrong = |message| WordingError::Formats { locale: tag.to_string(), message };
        let formats = Formats::new(&tag.to_string()).map_err(wrong)?;
        let mut bundle = FluentBundle::new_concurrent(vec![tag.identifier().clone()]);
        // The marks that isolate directions show as boxes in some terminals and on old phones.
        bundle.set_use_isolating(false);
        bundle.set_formatter(Some(write_number));
        bundle.add_builtins().map_err(|error| wrong(error.to_string()))?;
        // Keys that come twice were refused when the texts were parsed.
        bundle.add_resource_overriding(Arc::clone(&texts.resource));
        Ok(Self { language: texts.tag.clone(), tag, bundle, formats })
    }

    /// The message `key`, or `None` where there is none. Whatever it lacks is logged and shows
    /// in the text as its name in braces.
    fn say(&self, key: &str, args: &Args) -> Option<String> {
        let pattern = self.bundle.get_message(key)?.value()?;
        let values: FluentArgs<'_> =
            args.iter().map(|(name, value)| (name, fluent(value))).collect();
        let mut errors = Vec::new();
        let said = self.bundle.format_pattern(pattern, Some(&values), &mut errors).into_owned();
        for error in errors {
            tracing::error!(key, language = %self.tag, %error, "a message lacks something");
        }
        Some(said)
    }
}

impl Voice {
    /// The language that is spoken: one of [`Wording::available`](super::Wording::available).
    #[must_use]
    pub fn language(&self) -> &LanguageTag {
        &self.tongue.language
    }

    /// The locale that dates and numbers are written for.
    #[must_use]
    pub fn locale(&self) -> &LanguageTag {
        &self.tongue.tag
    }

    /// The units that measures are given in.
    #[must_use]
    pub fn units(&self) -> Units {
        self.units
    }

    /// The message `key` with `args`.
    ///
    /// A message that the reader's language lacks is said in English; one that there is not at
    /// all shows as its key, and a value that is missing as its name in braces. Both are logged:
    /// a reader sees that something is wrong, and nothing breaks.
    #[must_use]
    pub fn say(&self, key: &str, args: &Args) -> String {
        if let Some(said) = self.tongue.say(key, args) {
            return said;
        }
        tracing::error!(key, language = %self.tongue.tag, "there is no such message");
        self.english.say(key, args).unwrap_or_else(|| key.to_owned())
    }
}

impl fmt::Debug for Voice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Voice")
            .field("locale", &self.tongue.tag)
            .field("units", &self.units)
            .finish_non_exhaustive()
    }
}

fn fluent(value: &Value) -> FluentValue<'_> {
    match value {
        Value::Text(text) => FluentValue::from(text.as_str()),
        Value::Number(number) => FluentValue::from(*number),
    }
}

/// Writes the whole numbers within a message in the reader's way; the rest is left to Fluent.
fn write_number(value: &FluentValue<'_>, memoizer: &IntlLangMemoizer) -> Option<String> {
    /// Whole numbers up to here are exact as floating-point numbers.
    const EXACT: f64 = 9_007_199_254_740_992.0;
    let FluentValue::Number(number) = value else { return None };
    if number.value.fract() != 0.0 || number.value.abs() > EXACT {
        return None;
    }
    #[expect(clippy::cast_possible_truncation, reason = "whole and within range, as just checked")]
    let whole = number.value as i64;
    memoizer.with_try_get::<Numerals, _, _>((), |numerals| numerals.whole(whole)).ok()
}

#[cfg(test)]
pub(super) mod tests {
    use super::super::{Wording, args};
    use super::*;

    /// The voice of a reader of `tag`, with the tag's own units.
    pub(in super::super) fn voice(tag: &str) -> Voice {
        let tag: LanguageTag = tag.parse().expect("a tag");
        let units = tag.units();
        Wording::embedded().expect("wording").voice(&tag, units)
    }

    fn wording(source: &str) -> Wording {
        Wording::of(&[("en", source), ("pl", "own = Sam")]).expect("wording")
    }

    #[test]
    fn plural_forms_follow_the_language() {
        let source = "n = { $n ->\n [one] one\n [few] few\n [many] many\n *[other] other\n }";
        let wording = Wording::of(&[("en", source), ("pl", source)]).expect("wording");
        let say = |tag: &str, n| {
            let voice = wording.voice(&tag.parse().expect("a tag"), Units::Metric);
            voice.say("n", &args().number("n", n))
        };
        // CLDR's plural rules: Polish has "few" for 2 to 4 and 22 to 24, "many" for 0, 5 to 21.
        for (n, english, polish) in [
            (0, "other", "many"),
            (1, "one", "one"),
            (2, "other", "few"),
            (5, "other", "many"),
            (12, "other", "many"),
            (22, "other", "few"),
        ] {
            assert_eq!(say("en-GB", n), english, "{n}");
            assert_eq!(say("pl", n), polish, "{n}");
        }
    }

    #[test]
    fn numbers_in_messages_are_written_in_the_readers_way() {
        let source = "n = { $n } ({ $t })";
        let wording = Wording::of(&[("en", source), ("de", source)]).expect("wording");
        let say = |tag: &str, n| {
            let voice = wording.voice(&tag.parse().expect("a tag"), Units::Metric);
            voice.say("n", &args().number("n", n).text("t", "1500"))
        };
        assert_eq!(say("en", 1500), "1,500 (1500)");
        assert_eq!(say("de", -1500), "-1.500 (1500)");
    }

    #[test]
    fn what_is_missing_shows_and_does_not_break() {
        let wording = wording("a = Sow { $crop } now\nown = Own\nn = { $n ->\n *[other] some\n }");
        let polish = wording.voice(&"pl".parse().expect("a tag"), Units::Metric);
        assert_eq!(polish.say("own", &args()), "Sam");
        assert_eq!(polish.say("a", &args().text("crop", "leek")), "Sow leek now");
        assert_eq!(polish.say("absent", &args()), "absent");
        assert_eq!(polish.say("", &args()), "");
        assert_eq!(polish.say("a", &args()), "Sow {$crop} now");
        assert_eq!(polish.say("n", &args()), "some");
    }

    #[test]
    fn texts_of_people_are_not_read_as_messages() {
        let wording = wording("a = { $crop }");
        let voice = wording.voice(&LanguageTag::default(), Units::Metric);
        assert_eq!(
            voice.say("a", &args().text("crop", "{ $x } {a}\n-b = c")),
            "{ $x } {a}\n-b = c"
        );
    }
}

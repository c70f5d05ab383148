//! How far north a garden lies, which decides the onions that form bulbs there.

use crate::wording::args;

use super::desk::Desk;
use super::facts::{Change, Expected};
use super::onion_text::onion_sentence;
use super::sentences::Sentences;

/// `/latitude 47`.
pub(super) fn latitude(desk: &mut Desk<'_>, rest: &str) {
    if rest.trim().is_empty() {
        desk.expect(Expected::Latitude);
        let text = desk.say_key("latitude-how-to");
        desk.reply(text);
    } else if !latitude_came(desk, rest) {
        let written: String = rest.trim().chars().take(40).collect();
        let text = desk.say("latitude-bad", &args().text("written", written));
        desk.reply(text);
    }
}

/// Takes a text as a latitude; `false` where it is none.
pub(super) fn latitude_came(desk: &mut Desk<'_>, text: &str) -> bool {
    let Some(latitude) = read_latitude(text, &desk.tongue.sentences) else { return false };
    desk.change(Change::MemberLatitude(Some(latitude)));
    let degrees = args().number("degrees", latitude.saturating_abs());
    let noted = if latitude < 0 {
        desk.say("latitude-set-south", &degrees)
    } else {
        desk.say("latitude-set", &degrees)
    };
    let text = format!("{noted}\n{}", onion_sentence(latitude, &desk.speech));
    desk.reply(text);
    true
}

/// Reads "47", "47.6 N", "33° south", "-33": whole degrees, north positive.
fn read_latitude(text: &str, sentences: &Sentences) -> Option<i64> {
    let lower = text.trim().to_lowercase().replace(['°', 'º'], " ");
    let mut words = lower.split_whitespace();
    let first = words.next()?;
    let digits = first.trim_end_matches(|c: char| c.is_alphabetic());
    let glued = first.get(digits.len()..).unwrap_or_default();
    let degrees: f64 = digits.replace(',', ".").parse().ok()?;
    let side: String = std::iter::once(glued).chain(words).collect::<Vec<_>>().join(" ");
    let south = sentences.means_south(&side)?;
    if !(-90.0..=90.0).contains(&degrees) || (south && degrees < 0.0) {
        return None;
    }
    #[expect(clippy::cast_possible_truncation, reason = "within 90 degrees, as just checked")]
    let whole = degrees.round() as i64;
    Some(if south { -whole } else { whole })
}

/// Which onions to buy, or the question how far north the garden lies.
pub(super) fn onion_line(desk: &Desk<'_>) -> String {
    match desk.facts.member.latitude {
        Some(latitude) => onion_sentence(latitude, &desk.speech),
        None => desk.say_key("onion-ask-latitude"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn latitudes_as_people_write_them() {
        let english = include_str!("../../locales/en/sentences.toml");
        let english = Sentences::new(english).expect("the sentences");
        let read_latitude = |text: &str| read_latitude(text, &english);
        for (text, is) in [
            ("47", 47),
            ("47.6", 48),
            ("47 N", 47),
            ("47n", 47),
            ("33° South", -33),
            ("-33", -33),
            ("0", 0),
            ("45 degrees north", 45),
        ] {
            assert_eq!(read_latitude(text), Some(is), "{text}");
        }
        for bad in ["", "north", "91", "-91", "120 W", "NaN", "inf", "47 47", "-33 S", "1e9"] {
            assert_eq!(read_latitude(bad), None, "{bad}");
        }
    }
}

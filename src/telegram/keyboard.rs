//! Buttons in the platform's form.

use teloxide::types::{InlineKeyboardButton, InlineKeyboardMarkup};
use url::Url;

use crate::messages::{Button, Does, MOST_BUTTONS};

/// The platform's limit for a button's data, in bytes.
const LONGEST_DATA: usize = 64;

/// The platform's limit for what a link that opens the private chat hands over, in characters.
const LONGEST_PAYLOAD: usize = 64;

/// The buttons below a message, or `None` where there are none.
///
/// A button that the platform would not take is left out rather than the message.
pub(super) fn keyboard(rows: &[Vec<Button>], bot_name: &str) -> Option<InlineKeyboardMarkup> {
    let mut left = MOST_BUTTONS;
    let mut keyboard = Vec::new();
    for row in rows {
        let buttons: Vec<_> =
            row.iter().filter_map(|one| button(one, bot_name)).take(left).collect();
        left = left.saturating_sub(buttons.len());
        if !buttons.is_empty() {
            keyboard.push(buttons);
        }
    }
    (!keyboard.is_empty()).then(|| InlineKeyboardMarkup::new(keyboard))
}

fn button(button: &Button, bot_name: &str) -> Option<InlineKeyboardButton> {
    let label = button.label.as_str();
    let made = match &button.does {
        Does::Press(press) => {
            let data = press.to_string();
            let fits = !data.is_empty() && data.len() <= LONGEST_DATA;
            fits.then(|| InlineKeyboardButton::callback(label, data))
        }
        Does::OpenPrivate(payload) => {
            private_link(bot_name, payload).map(|link| InlineKeyboardButton::url(label, link))
        }
    };
    let made = made.filter(|_| !label.is_empty());
    if made.is_none() {
        tracing::error!(?button, "the platform would not take this button; it is left out");
    }
    made
}

/// The link that opens the private chat and sends `/start` with the payload (Bot features, "Deep
/// linking": letters, digits, `_` and `-`, up to 64).
pub(super) fn private_link(bot_name: &str, payload: &str) -> Option<Url> {
    let plain = |c: char| c.is_ascii_alphanumeric() || c == '_' || c == '-';
    if bot_name.is_empty() || payload.len() > LONGEST_PAYLOAD || !payload.chars().all(plain) {
        return None;
    }
    let start = if payload.is_empty() { String::new() } else { format!("?start={payload}") };
    Url::parse(&format!("https://t.me/{bot_name}{start}")).ok()
}

#[cfg(test)]
mod tests {
    use chrono::NaiveDate;
    use serde_json::json;

    use super::*;
    use crate::messages::{JobAnswer, Press, Topic};
    use crate::planning::{Basis, CropId, Frost, FrostDates, JobKey, Label, MonthDay, Step};

    fn shown(rows: &[Vec<Button>]) -> serde_json::Value {
        serde_json::to_value(keyboard(rows, "sowbell_bot")).unwrap()
    }

    #[test]
    fn buttons_carry_their_data_and_links_their_payload() {
        let rows = vec![
            vec![Button::press("Settings", Press::Settings), Button::press("Hour", Press::AskHour)],
            vec![Button::open_private("Write to me", "join_aB-9")],
        ];
        let expected = json!({ "inline_keyboard": [
            [{ "text": "Settings", "callback_data": "s" }, { "text": "Hour", "callback_data": "H" }],
            [{ "text": "Write to me", "url": "https://t.me/sowbell_bot?start=join_aB-9" }],
        ]});
        assert_eq!(shown(&rows), expected);
    }

    #[test]
    fn no_buttons_are_no_keyboard() {
        assert_eq!(keyboard(&[], "sowbell_bot"), None);
        assert_eq!(keyboard(&[vec![], vec![]], "sowbell_bot"), None);
    }

    #[test]
    fn what_the_platform_would_not_take_is_left_out_alone() {
        let long = Press::Grow(CropId::new("x".repeat(63)));
        let rows = vec![vec![
            Button::press("too long", long),
            Button::open_private("bad payload", "a b"),
            Button::press("", Press::Settings),
            Button::press("good", Press::Settings),
        ]];
        let expected = json!({ "inline_keyboard": [[{ "text": "good", "callback_data": "s" }]] });
        assert_eq!(shown(&rows), expected);
    }

    #[test]
    fn no_more_buttons_than_the_platform_takes() {
        let rows = vec![vec![Button::press("x", Press::Settings); 8]; 20];
        let keyboard = keyboard(&rows, "sowbell_bot").unwrap();
        assert_eq!(keyboard.inline_keyboard.iter().map(Vec::len).sum::<usize>(), MOST_BUTTONS);
    }

    /// The longest data of every kind that has a length to speak of, with the longest crop id
    /// that still fits beside the longest job key.
    #[test]
    fn the_longest_real_data_fits() {
        let crop = || CropId::new("x".repeat(32));
        let day = NaiveDate::from_ymd_opt(2026, 12, 31).unwrap();
        let end = MonthDay::new(12, 31).unwrap();
        let start = MonthDay::new(10, 15).unwrap();
        let frost = FrostDates::new(start, Some(end), Basis::Trusted).unwrap();
        let mut presses = vec![
            Press::Frost(Topic::Club, Some(Frost::Dates(frost))),
            Press::Grow(crop()),
            Press::Drop(crop()),
            Press::Crops(u16::MAX),
            Press::Now(u16::MAX, day),
            Press::Meant(crop(), day),
            Press::Language(Topic::Club, "zh-Hant-TW".to_owned()),
        ];
        for step in Step::ALL {
            let label = Label::Overwintering;
            let sowing = Some(9_999_999_999);
            let key = JobKey { crop: crop(), step, label, season: 2026, sowing };
            presses.push(Press::Job(key, JobAnswer::Undo));
        }
        presses.extend(chrono_tz::TZ_VARIANTS.iter().map(|&zone| Press::Zone(Topic::Club, zone)));
        for press in presses {
            let data = press.to_string();
            assert!(data.len() <= LONGEST_DATA, "{data}");
        }
    }
}

//! Keyboards under messages, and their limits.

use serde_json::Value;

use super::refusal::Refusal;

/// A button under a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Button {
    pub text: String,
    /// What the bot is told when it is pressed.
    pub callback_data: Option<String>,
    /// Where it leads.
    pub url: Option<String>,
}

const MOST_BUTTONS: usize = 100;
const LONGEST_DATA: usize = 64;
const LINKS: [&str; 3] = ["https://", "http://", "tg://"];

/// The buttons of an inline keyboard; other kinds of markup have none here.
///
/// # Errors
///
/// When a documented limit is broken.
pub(crate) fn buttons_of(markup: Option<&Value>) -> Result<Vec<Vec<Button>>, Refusal> {
    let rows = markup.and_then(|markup| markup.get("inline_keyboard")).and_then(Value::as_array);
    let mut keyboard = Vec::new();
    for row in rows.into_iter().flatten() {
        let row: Result<Vec<_>, _> = row.as_array().into_iter().flatten().map(button).collect();
        let row = row?;
        if !row.is_empty() {
            keyboard.push(row);
        }
    }
    let count: usize = keyboard.iter().map(Vec::len).sum();
    if count > MOST_BUTTONS {
        return Err(Refusal::violation(
            "REPLY_MARKUP_TOO_LONG",
            format!("{count} buttons under one message"),
        ));
    }
    Ok(keyboard)
}

fn button(json: &Value) -> Result<Button, Refusal> {
    let string = |name: &str| json.get(name).and_then(Value::as_str).map(str::to_owned);
    let button = Button {
        text: string("text").unwrap_or_default(),
        callback_data: string("callback_data"),
        url: string("url"),
    };
    let label = &button.text;
    if label.trim().is_empty() {
        return Err(Refusal::violation(
            "can't parse inline keyboard button: Field \"text\" must be non-empty",
            "a button has no label",
        ));
    }
    // Besides its looks, a button has exactly one thing that it does.
    let looks = ["text", "style", "icon_custom_emoji_id"];
    let does = json
        .as_object()
        .map_or(0, |fields| fields.keys().filter(|name| !looks.contains(&name.as_str())).count());
    if does != 1 {
        return Err(Refusal::violation(
            "can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
            format!("the button {label:?} does {does} things"),
        ));
    }
    if let Some(data) = &button.callback_data
        && !(1..=LONGEST_DATA).contains(&data.len())
    {
        return Err(Refusal::violation(
            "BUTTON_DATA_INVALID",
            format!("the button {label:?} carries {} bytes", data.len()),
        ));
    }
    if let Some(url) = &button.url
        && !LINKS.iter().any(|scheme| url.starts_with(scheme))
    {
        return Err(Refusal::violation(
            "BUTTON_URL_INVALID",
            format!("the button {label:?} leads to {url:?}"),
        ));
    }
    Ok(button)
}

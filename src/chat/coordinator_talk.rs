//! Whom a club's administrators name to help them.

use crate::club::{Helper, MOST_HELPERS, MemberId};
use crate::messages::{Button, Buttons, Press, What};
use crate::wording::args;

use super::desk::Desk;
use super::facts::Change;

/// `/club helper`, alone, with *add* or with *remove*; the last two in reply to a person.
pub(super) fn helpers(desk: &mut Desk<'_>, rest: &str) {
    if !desk.may_name_helpers() {
        return;
    }
    let what = rest.split_whitespace().next().unwrap_or_default().to_lowercase();
    match what.as_str() {
        "" | "list" | "show" => page(desk),
        "add" | "+" | "new" | "name" => add(desk),
        "remove" | "-" | "drop" | "delete" => remove(desk),
        _ => {
            let text = desk.say_key("helper-how-to");
            desk.reply(text);
        }
    }
}

fn page(desk: &mut Desk<'_>) {
    let helpers = desk.facts.helpers.clone();
    let (text, buttons) = words(desk, &helpers);
    desk.reply_with(text, buttons);
}

fn words(desk: &Desk<'_>, helpers: &[Helper]) -> (String, Buttons) {
    let how_to = desk.say_key("helper-how-to");
    if helpers.is_empty() {
        return (format!("{}\n{how_to}", desk.say_key("helpers-none")), Vec::new());
    }
    let names: Vec<String> = helpers.iter().map(|helper| helper.name.clone()).collect();
    let names = desk.speech.voice.list_and(&names);
    let text = format!("{}\n{how_to}", desk.say("helpers-head", &args().text("names", names)));
    let buttons = helpers
        .iter()
        .map(|helper| {
            let label = desk.say("button-helper-remove", &args().text("name", &helper.name));
            vec![Button::press(label, Press::DismissHelper(helper.member))]
        })
        .collect();
    (text, buttons)
}

fn add(desk: &mut Desk<'_>) {
    let person = match &desk.incoming.what {
        What::Text { replies_to, .. } => replies_to.clone(),
        _ => None,
    };
    let text = match person {
        None => desk.say_key("helper-how-to"),
        Some(person) if person.is_bot => desk.say_key("helper-is-bot"),
        Some(person) => {
            let name = args().text("name", &person.name);
            if desk.facts.helpers.iter().any(|helper| helper.user == person.user) {
                desk.say("helper-already", &name)
            } else if desk.facts.helpers.len() >= MOST_HELPERS {
                desk.say("helpers-too-many", &args().count("most", MOST_HELPERS))
            } else {
                desk.change(Change::NameHelper { user: person.user, name: person.name.clone() });
                desk.say("helper-added", &name)
            }
        }
    };
    desk.reply(text);
}

fn remove(desk: &mut Desk<'_>) {
    let user = match &desk.incoming.what {
        What::Text { replies_to: Some(person), .. } => person.user,
        _ => return page(desk),
    };
    let helper = desk.facts.helpers.iter().find(|helper| helper.user == user).cloned();
    let text = match helper {
        Some(helper) => {
            desk.change(Change::DismissHelper(helper.member));
            desk.say("helper-removed", &args().text("name", &helper.name))
        }
        None => desk.say_key("helper-unknown"),
    };
    desk.reply(text);
}

/// A button of the page.
pub(super) fn dismiss(desk: &mut Desk<'_>, member: MemberId) {
    if !desk.may_name_helpers() {
        return;
    }
    let (gone, left): (Vec<Helper>, Vec<Helper>) =
        desk.facts.helpers.iter().cloned().partition(|helper| helper.member == member);
    let Some(gone) = gone.first() else {
        let notice = desk.say_key("helper-unknown");
        desk.answer_press(Some(notice));
        return;
    };
    desk.change(Change::DismissHelper(member));
    let (text, buttons) = words(desk, &left);
    desk.edit_with(text, buttons);
    let notice = desk.say("helper-removed", &args().text("name", &gone.name));
    desk.answer_press(Some(notice));
}

//! What is kept about a member: `/export` gives all of it, `/forget` deletes all of it.

use crate::catalogue::normalise;
use crate::messages::{Document, Outgoing, Press};
use crate::wording::args;

use super::desk::Desk;
use super::facts::{Change, Expected};

/// The name of the exported file.
const EXPORT: &str = "sowbell-export.json";

/// `/export`, in private: a file with everything.
pub(super) fn export(desk: &mut Desk<'_>) {
    let all = desk.facts.in_private.own_data.as_ref();
    let Some(content) = all.and_then(|all| serde_json::to_string_pretty(all).ok()) else {
        let text = desk.say_key("went-wrong");
        desk.reply(text);
        return;
    };
    let document = Document {
        chat: desk.incoming.chat.id,
        name: EXPORT.to_owned(),
        caption: desk.say_key("export-caption"),
        content,
    };
    desk.outcome.outgoing.push(Outgoing::Document(document));
}

/// `/forget`, in private: says what would be deleted, and asks.
pub(super) fn forget(desk: &mut Desk<'_>) {
    let word = desk.say_key("forget-word");
    let what = args()
        .count("crops", desk.facts.crops.len())
        .count("sowings", desk.facts.sowings.len())
        .text("word", word);
    let text = desk.say("forget-ask", &what);
    let buttons = vec![
        vec![desk.button("button-forget", Press::Forget)],
        vec![desk.button("button-keep", Press::DoNotForget)],
    ];
    desk.expect(Expected::Forget);
    desk.reply_with(text, buttons);
}

/// The word that confirms it; `false` where the text is something else.
pub(super) fn word_came(desk: &mut Desk<'_>, text: &str) -> bool {
    let said =
        normalise(text.trim_matches(|c: char| c.is_whitespace() || c.is_ascii_punctuation()));
    if said != normalise(&desk.say_key("forget-word")) {
        return false;
    }
    forgotten(desk);
    true
}

/// The button that confirms it. The question must have been asked lately: a stray press on a
/// message of long ago deletes nothing.
pub(super) fn confirmed(desk: &mut Desk<'_>) {
    if desk.facts.expected == Some(Expected::Forget) {
        forgotten(desk);
    } else {
        let notice = desk.say_key("notice-forget-old");
        desk.answer_press(Some(notice));
    }
}

/// The button that keeps everything.
pub(super) fn kept(desk: &mut Desk<'_>) {
    if desk.facts.expected == Some(Expected::Forget) {
        desk.change(Change::Expect(None));
    }
    let text = desk.say_key("forget-kept");
    desk.edit_with(text, Vec::new());
}

fn forgotten(desk: &mut Desk<'_>) {
    desk.change(Change::Forget);
    let text = desk.say_key("forget-done");
    desk.reply(text);
}

//! Showing the club's lists, and one of them.

use crate::club::{ClubList, ListId};
use crate::messages::{Button, Buttons, Press, What};
use crate::wording::args;

use super::desk::Desk;

/// The club's lists that are not archived, the oldest first.
pub(super) fn open_lists(desk: &Desk<'_>) -> Vec<ClubList> {
    desk.facts.lists.iter().filter(|list| !list.archived).cloned().collect()
}

/// The open list of this number.
pub(super) fn open_list(desk: &Desk<'_>, id: ListId) -> Option<ClubList> {
    desk.facts.lists.iter().find(|list| list.id == id && !list.archived).cloned()
}

/// All lists of the club, each a button that opens it.
pub(super) fn all(desk: &mut Desk<'_>) {
    let Some(club) = desk.facts.club.clone() else {
        let text = desk.say_key("lists-no-club");
        show(desk, text, Vec::new());
        return;
    };
    let lists = open_lists(desk);
    let about = args().text("club", &club.title);
    let mut lines = Vec::new();
    if lists.is_empty() {
        lines.push(desk.say("lists-none", &about));
    } else {
        lines.push(desk.say("lists-head", &about));
    }
    for list in &lists {
        let about = args().text("list", &list.name).count("count", list.crops.len());
        // In the group nobody need see who subscribes to what.
        let mine = desk.in_private() && is_mine(desk, list.id);
        lines.push(if mine {
            desk.say("lists-line-mine", &about)
        } else {
            desk.say("lists-line", &about)
        });
    }
    if !lists.is_empty() && !desk.in_private() {
        lines.push(desk.say_key("lists-how-to-short"));
    }
    let mut buttons: Buttons = lists
        .iter()
        .map(|list| {
            let label = desk.say("button-list", &args().text("list", &list.name));
            vec![Button::press(label, Press::List(list.id))]
        })
        .collect();
    if desk.in_private() && desk.facts.clubs.len() > 1 {
        buttons.push(vec![desk.button("button-which-club", Press::WhichClub)]);
    }
    show(desk, lines.join("\n"), buttons);
}

/// Edits the message that was pressed, and answers what was written.
fn show(desk: &mut Desk<'_>, text: String, buttons: Buttons) {
    if matches!(desk.incoming.what, What::Pressed { .. }) {
        desk.edit_with(text, buttons);
    } else {
        desk.reply_with(text, buttons);
    }
}

/// A list by the button that names it.
pub(super) fn one_by_button(desk: &mut Desk<'_>, id: ListId) {
    if let Some(list) = open_list(desk, id) {
        one(desk, &list);
    } else {
        let notice = desk.say_key("list-gone");
        desk.answer_press(Some(notice));
    }
}

/// One list with its crops and the buttons to subscribe.
pub(super) fn one(desk: &mut Desk<'_>, list: &ClubList) {
    let subscribes = is_mine(desk, list.id);
    one_as(desk, list, subscribes);
}

/// The same, as it is when the member subscribes or does not.
pub(super) fn one_as(desk: &mut Desk<'_>, list: &ClubList, subscribes: bool) {
    let text = page(desk, list);
    let mut buttons = subscribe_buttons(desk, list.id, subscribes);
    if open_lists(desk).len() > 1 {
        buttons.push(vec![desk.button("button-all-lists", Press::Lists)]);
    }
    show(desk, text, buttons);
}

fn page(desk: &Desk<'_>, list: &ClubList) -> String {
    let mut lines = vec![list.name.clone()];
    lines.extend(list.note.clone());
    if list.crops.is_empty() {
        let about = args().text("list", &list.name);
        lines.push(desk.say("list-without-crops", &about));
    } else {
        let names = desk.speech.crop_list(&list.crops);
        lines.push(desk.say("list-crops", &args().text("crops", names)));
    }
    lines.push(desk.say("list-subscribers", &args().count("count", list.subscribers)));
    if desk.in_private() {
        let left_out = desk.facts.growing.left_out();
        let here: Vec<_> = left_out.iter().filter(|crop| list.crops.contains(crop)).collect();
        if !here.is_empty() && is_mine(desk, list.id) {
            let names = desk.speech.crop_list(here);
            lines.push(desk.say("list-left-out", &args().text("crops", names)));
        }
    }
    lines.join("\n")
}

/// In the group both, since the message is everybody's; in private the one that does something.
pub(super) fn subscribe_buttons(desk: &Desk<'_>, id: ListId, subscribes: bool) -> Buttons {
    let mut row = Vec::new();
    if !desk.in_private() || !subscribes {
        row.push(desk.button("button-subscribe", Press::Subscribe(id)));
    }
    if !desk.in_private() || subscribes {
        row.push(desk.button("button-unsubscribe", Press::Unsubscribe(id)));
    }
    vec![row]
}

/// Whether the member subscribes to a list.
pub(super) fn is_mine(desk: &Desk<'_>, id: ListId) -> bool {
    desk.whole.growing.lists.iter().any(|list| list.id == id)
}

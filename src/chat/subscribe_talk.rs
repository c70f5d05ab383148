//! Subscribing to a list of the club, by a button or in words.

use crate::club::{ClubList, ListId};
use crate::messages::What;
use crate::wording::args;

use super::desk::Desk;
use super::facts::Change;
use super::list_show::{is_mine, one_as, open_list};
use super::sowing_talk::undo_buttons;

/// The member subscribes.
pub(super) fn subscribe(desk: &mut Desk<'_>, id: ListId) {
    let Some(list) = ready(desk, id) else { return };
    let name = args().text("list", &list.name);
    if is_mine(desk, id) {
        let text = desk.say("list-subscribed-already", &name);
        tell(desk, &list, true, text, false);
        return;
    }
    desk.change(Change::Subscribe(id));
    let mut text = desk.say("list-subscribed", &name);
    if let Some(hint) = why_not_yet(desk) {
        text = format!("{text} {hint}");
    }
    tell(desk, &list, true, text, true);
}

/// The member does not subscribe any more.
pub(super) fn unsubscribe(desk: &mut Desk<'_>, id: ListId) {
    let Some(list) = ready(desk, id) else { return };
    let name = args().text("list", &list.name);
    if !is_mine(desk, id) {
        let text = desk.say("list-not-subscribed", &name);
        tell(desk, &list, false, text, false);
        return;
    }
    desk.change(Change::Unsubscribe(id));
    let text = desk.say("list-unsubscribed", &name);
    tell(desk, &list, false, text, true);
}

/// The list, where it is one of the club that is meant and the bot knows who asks.
fn ready(desk: &mut Desk<'_>, id: ListId) -> Option<ClubList> {
    if desk.incoming.from.anonymous {
        let text = desk.say_key("list-anonymous");
        desk.refuse(text);
        return None;
    }
    let Some(list) = open_list(desk, id) else {
        let text = desk.say_key("list-gone");
        desk.refuse(text);
        return None;
    };
    // Whoever presses a button in the group belongs to its club, as one who speaks there does.
    let pressed = matches!(desk.incoming.what, What::Pressed { .. });
    if let Some(club) = desk.facts.club.as_ref().filter(|_| pressed && !desk.in_private()) {
        desk.change(Change::JoinClub(club.id));
    }
    Some(list)
}

/// What still stands between the list and the member's mornings.
fn why_not_yet(desk: &Desk<'_>) -> Option<String> {
    if desk.in_private() {
        return None;
    }
    let here = desk.facts.club.as_ref().map(|club| club.id);
    match desk.whole.clubs.first() {
        Some(meant) if Some(meant.id) != here => {
            Some(desk.say("list-other-club-holds", &args().text("club", &meant.title)))
        }
        _ if !desk.whole.member.reachable => Some(desk.say_key("list-open-private")),
        _ => None,
    }
}

/// In the group only the one who pressed is told; in private the list is shown as it is now.
fn tell(desk: &mut Desk<'_>, list: &ClubList, subscribes: bool, text: String, changed: bool) {
    let pressed = matches!(desk.incoming.what, What::Pressed { .. });
    if pressed {
        if desk.in_private() {
            let mut list = list.clone();
            if changed {
                let others = list.subscribers.saturating_sub(usize::from(!subscribes));
                list.subscribers = others + usize::from(subscribes);
            }
            one_as(desk, &list, subscribes);
        }
        desk.answer_press(Some(text));
        return;
    }
    let buttons = if changed { undo_buttons(desk) } else { Vec::new() };
    desk.reply_with(text, buttons);
}

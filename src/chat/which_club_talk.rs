//! Which club is meant in private, for a member of several.

use crate::club::{Club, ClubId};
use crate::messages::{Button, Buttons, Press, What};
use crate::wording::args;

use super::desk::Desk;
use super::facts::Change;

/// Asks which club's settings and lists hold.
pub(super) fn ask(desk: &mut Desk<'_>) {
    if !desk.in_private() {
        let text = desk.say_key("notice-private-only");
        desk.refuse(text);
        return;
    }
    let [now, others @ ..] = desk.facts.clubs.as_slice() else {
        let text = desk.say_key("club-only-in-group");
        desk.refuse(text);
        return;
    };
    if others.is_empty() {
        let text = desk.say_key("club-only-in-group");
        desk.refuse(text);
        return;
    }
    let text = desk.say("which-club", &args().text("club", &now.title));
    let buttons: Buttons = others
        .iter()
        .map(|club| {
            let label = desk.say("button-club", &args().text("club", &club.title));
            vec![Button::press(label, Press::UseClub(club.id))]
        })
        .collect();
    desk.reply_with(text, buttons);
}

/// A club was chosen; only one that the member belongs to.
pub(super) fn choose(desk: &mut Desk<'_>, id: ClubId) {
    if !desk.in_private() {
        let text = desk.say_key("notice-private-only");
        desk.refuse(text);
        return;
    }
    let Some(club) = desk.facts.clubs.iter().find(|club| club.id == id).cloned() else {
        let text = desk.say_key("which-club-gone");
        desk.refuse(text);
        return;
    };
    desk.change(Change::JoinClub(id));
    desk.speak_within(&club);
    let text = desk.say("club-chosen", &args().text("club", &club.title));
    if matches!(desk.incoming.what, What::Pressed { .. }) {
        desk.edit_with(text, Vec::new());
    } else {
        desk.reply(text);
    }
}

/// What a member who joins a club is told of the others they belong to.
pub(super) fn of_several(desk: &Desk<'_>, joined: &Club) -> Option<String> {
    let others: Vec<String> = desk
        .facts
        .clubs
        .iter()
        .filter(|club| club.id != joined.id)
        .map(|club| club.title.clone())
        .collect();
    if others.is_empty() {
        return None;
    }
    let others = desk.speech.voice.list_and(&others);
    Some(desk.say("start-several", &args().text("club", &joined.title).text("others", others)))
}

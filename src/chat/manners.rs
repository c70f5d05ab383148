//! Manners in a group: what is a member's own stays between them and the bot, and answers are
//! short.
//!
//! In a group the desk has the public facts only ([`Facts::public`]), so that no answer can tell
//! of a member's garden, place or plans: answers go by the club's dates. What is about the
//! member's own garden is answered in the private chat. A member who ends their message with the
//! word for sharing is answered in the group, by their own garden.

use std::borrow::Cow;

use crate::club::as_grown;
use crate::messages::{
    AnswerPress, Button, Buttons, Chat, ChatKind, Does, Incoming, Outgoing, Press, Topic, What,
};
use crate::wording::args;

use super::desk::Desk;
use super::facts::{Change, Facts, Outcome};
use super::knowledge::Knowledge;
use super::read_on;
use super::sentences::Request;
use super::understand::Subject;

/// Whether a request is about the member's own garden and data, and not about anybody's.
pub(super) fn is_own(request: Request, rest: &str) -> bool {
    match request {
        Request::Settings
        | Request::Frost
        | Request::Grow
        | Request::Drop
        | Request::MyCrops
        | Request::Zone
        | Request::Hour
        | Request::Quiet
        | Request::QuietToo
        | Request::QuietNoMore
        | Request::Weekends
        | Request::AtWeekends
        | Request::AnyDay
        | Request::Holiday
        | Request::Back
        | Request::Hold
        | Request::Place
        | Request::Sown
        | Request::PlantedOut
        | Request::PottedUp
        | Request::HardenedOff
        | Request::Sowings
        | Request::Undo
        | Request::Variety
        | Request::Latitude
        | Request::Export
        | Request::Forget
        | Request::Stop => true,
        // Without crops it is about the member's list.
        Request::Trays => rest.trim().is_empty(),
        Request::Start
        | Request::Help
        | Request::Now
        | Request::Ask
        | Request::HowToHarden
        | Request::FrostSoon
        | Request::Club
        | Request::Lists
        | Request::Thanks => false,
    }
}

/// Whether a button is about the member's own garden and data; such a button works in the private
/// chat only.
pub(super) fn is_own_press(press: &Press) -> bool {
    match press {
        Press::Frost(topic, _)
        | Press::AskFrost(topic)
        | Press::Zone(topic, _)
        | Press::AskZone(topic)
        | Press::Language(topic, _)
        | Press::AskLanguage(topic)
        | Press::Hold(topic, _) => *topic == Topic::Mine,
        Press::Job(..)
        | Press::Grow(_)
        | Press::Drop(_)
        | Press::Crops(_)
        | Press::Now(..)
        | Press::Sowings(_)
        | Press::EndSowing(..)
        | Press::SowAgain(_)
        | Press::SowingLost(_)
        | Press::Undo(_)
        | Press::UndoOld(_)
        | Press::PutBack(_)
        | Press::FollowVariety(_)
        | Press::DropVariety(_)
        | Press::Hour(_)
        | Press::AskHour
        | Press::Quiet(_)
        | Press::AskQuiet
        | Press::Weekends(_)
        | Press::AskHoliday
        | Press::HolidayOver
        | Press::Units(_)
        | Press::Place(_)
        | Press::Cover(_)
        | Press::AskPlace
        | Press::Forget
        | Press::DoNotForget
        | Press::Settings
        | Press::WhichClub
        | Press::UseClub(_) => true,
        Press::Meant(..)
        | Press::ReadOn(_)
        | Press::ClubPage
        | Press::Lists
        | Press::List(_)
        | Press::Subscribe(_)
        | Press::Unsubscribe(_)
        | Press::ReopenList(_)
        | Press::DismissHelper(_) => false,
    }
}

/// What was said in a group without the word that shares the answer, and whether it was there.
pub(super) fn sharing<'i>(
    knowledge: &Knowledge,
    incoming: &'i Incoming,
    facts: &Facts,
) -> (Cow<'i, Incoming>, bool) {
    let What::Text { text, message, addressed, replies_to } = &incoming.what else {
        return (Cow::Borrowed(incoming), false);
    };
    let word = knowledge.speech_for(&facts.settings()).plain("share-word").to_lowercase();
    let said = text.trim_end_matches(|c: char| c.is_whitespace() || c.is_ascii_punctuation());
    let rest =
        said.char_indices().rev().find(|(_, c)| c.is_whitespace()).filter(|(at, _)| {
            said.get(*at..).is_some_and(|last| last.trim().to_lowercase() == word)
        });
    let Some((at, _)) = rest else { return (Cow::Borrowed(incoming), false) };
    let text = said.get(..at).unwrap_or_default().trim_end().to_owned();
    let what = What::Text {
        text,
        message: *message,
        addressed: *addressed,
        replies_to: replies_to.clone(),
    };
    (Cow::Owned(Incoming { what, ..incoming.clone() }), true)
}

/// What `act` decides as if `text` had been said in the private chat, and whether it took it.
pub(super) fn as_in_private(
    desk: &Desk<'_>,
    text: &str,
    subject: Option<Subject>,
    act: impl FnOnce(&mut Desk<'_>) -> bool,
) -> (bool, Outcome) {
    let whole = desk.whole;
    let facts =
        Facts { club: whole.in_private.club.clone(), expected: None, subject, ..whole.clone() };
    let chat =
        Chat { id: whole.member.user, kind: ChatKind::Private, title: String::new(), thread: None };
    let what = What::Text { text: text.to_owned(), message: 0, addressed: true, replies_to: None };
    let incoming = Incoming { chat, what, ..desk.incoming.clone() };
    let grown = as_grown(&desk.knowledge.catalogue, &facts.varieties);
    let catalogue = grown.as_ref().unwrap_or(&desk.knowledge.catalogue);
    let mut own = Desk::new(desk.knowledge, catalogue, &facts, &incoming);
    let taken = act(&mut own);
    let mut outcome = own.outcome;
    // It was not asked in this chat, and what the bot then waits to hear it waits to hear there.
    outcome.changes.retain(|change| !matches!(change, Change::Asked(_)));
    for change in &mut outcome.changes {
        if let Change::Expect(expected) = change {
            *change = Change::ExpectInPrivate(expected.take());
        }
    }
    (taken, outcome)
}

/// Whether the bot may write to the sender's private chat.
pub(super) fn may_write(desk: &Desk<'_>) -> bool {
    desk.whole.member.reachable && !desk.incoming.from.anonymous
}

/// Lets `act` decide what is the member's own: at once in private or where they share it, and
/// otherwise in the private chat, of which the group is told no more than that. `false` where
/// `act` did not take it.
pub(super) fn own_matter(
    desk: &mut Desk<'_>,
    text: &str,
    act: impl FnOnce(&mut Desk<'_>) -> bool,
) -> bool {
    if desk.in_private() || desk.shares {
        return act(desk);
    }
    let (taken, outcome) = as_in_private(desk, text, None, act);
    if !taken {
        return false;
    }
    if may_write(desk) {
        desk.outcome.changes.extend(outcome.changes);
        desk.outcome.outgoing.extend(outcome.outgoing);
        let word = args().text("word", desk.say_key("share-word"));
        let text = desk.say("own-answered", &word);
        desk.reply(text);
    } else {
        let text = desk.say_key("own-pointer");
        let buttons = our_chat(desk);
        desk.reply_with(text, buttons);
    }
    true
}

/// The button that opens the private chat.
fn our_chat(desk: &Desk<'_>) -> Buttons {
    let club = desk.facts.club.iter();
    let open = |token: &str| Button::open_private(desk.say_key("button-our-chat"), token);
    club.map(|club| vec![open(&club.join_token)]).collect()
}

/// What is said of one's data in a group: where to ask for it.
pub(super) fn data_pointer(desk: &mut Desk<'_>, request: Request) {
    let command = if request == Request::Export { "/export" } else { "/forget" };
    let text = desk.say("data-private-only", &args().text("command", command));
    let buttons = our_chat(desk);
    desk.reply_with(text, buttons);
}

/// The last touch to what goes to a group: buttons that work in private only are left off, and a
/// long answer becomes short, with a button to the whole of it.
pub(super) fn for_the_group(desk: &mut Desk<'_>) {
    let group = desk.incoming.chat.id;
    let works_here = |button: &Button| match &button.does {
        Does::Press(press) => !is_own_press(press),
        Does::OpenPrivate(_) => true,
    };
    for outgoing in &mut desk.outcome.outgoing {
        if let Outgoing::Say(say) = outgoing
            && say.chat == group
        {
            for row in &mut say.buttons {
                row.retain(works_here);
            }
            say.buttons.retain(|row| !row.is_empty());
        }
    }
    read_on::shorten(desk);
}

/// Answers a press that works in the private chat only.
pub(super) fn private_only(desk: &mut Desk<'_>) {
    let notice = desk.say_key("notice-private-only");
    if let What::Pressed { press, .. } = &desk.incoming.what {
        let answer = AnswerPress { press: press.clone(), notice: Some(notice) };
        desk.outcome.outgoing.push(Outgoing::AnswerPress(answer));
    }
}

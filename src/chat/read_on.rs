//! A long answer is short in the group, with a button to the whole of it in the private chat.

use crate::messages::{Button, OpenByPress, Outgoing, Press, What};
use crate::wording::shorten_to_limit;

use super::conversation::ask_or_run;
use super::desk::Desk;
use super::facts::{Change, GroupQuestion};
use super::manners::{as_in_private, may_write};

/// The longest answer that a group gets whole, in UTF-16 units: about what a phone shows without
/// scrolling. Our own choice.
const SHORT: usize = 600;

/// The beginning of the payload of a button that reads on in private.
const READ_ON: &str = "read_";

/// Makes the one answer to a group's question short, where it is long and changed nothing.
pub(super) fn shorten(desk: &mut Desk<'_>) {
    let group = desk.incoming.chat.id;
    // What changed something is not said again in private: it would change it again. What was
    // shared is the member's own wish.
    let only_answers = desk.outcome.changes.iter().all(|change| {
        matches!(
            change,
            Change::JoinClub(_) | Change::Expect(_) | Change::Asked(_) | Change::OpenClub { .. }
        )
    });
    let What::Text { text, message, .. } = &desk.incoming.what else { return };
    let question = GroupQuestion { text: text.clone(), before: desk.facts.subject.clone() };
    let message = *message;
    let more = desk.say_key("group-more");
    let label = desk.say_key("button-read-on");
    let [Outgoing::Say(say)] = desk.outcome.outgoing.as_mut_slice() else { return };
    if !only_answers || desk.shares || say.chat != group {
        return;
    }
    let Some(short) = beginning(&say.text) else { return };
    say.text = format!("{short}\n{more}");
    say.buttons.push(vec![Button::press(label, Press::ReadOn(message))]);
    desk.change(Change::KeepQuestion { message, question });
}

/// A long text made short; `None` where it is short enough. Of several paragraphs, as of several
/// crops, the first line of each says the verdict; of a single one the first lines are kept.
fn beginning(text: &str) -> Option<String> {
    let units = |text: &str| text.encode_utf16().count();
    if units(text) <= SHORT {
        return None;
    }
    let paragraphs = text.split("\n\n").map(|paragraph| paragraph.trim_start_matches('\n'));
    let verdicts: Vec<&str> = paragraphs.filter_map(|paragraph| paragraph.lines().next()).collect();
    let all = verdicts.join("\n");
    if verdicts.len() > 1 && units(&all) <= SHORT && !verdicts.iter().any(|v| v.ends_with(':')) {
        return Some(all);
    }
    let mut kept: Vec<&str> = Vec::new();
    let mut used = 0;
    for line in text.lines() {
        used += units(line) + 1;
        if used > SHORT && !kept.is_empty() {
            break;
        }
        kept.push(line);
    }
    // A heading without what it heads, or an empty line, ends nothing.
    while kept.len() > 1 && kept.last().is_some_and(|line| line.is_empty() || line.ends_with(':')) {
        kept.pop();
    }
    Some(shorten_to_limit(&kept.join("\n"), SHORT).into_owned())
}

/// The payload of a deep link that reads on in private: the club's token and the question's
/// message.
fn read_on_payload(token: &str, message: i32) -> String {
    format!("{READ_ON}{token}_{message}")
}

/// The club's token and the question's message in a payload.
pub(super) fn payload(payload: &str) -> Option<(&str, i32)> {
    let (token, message) = payload.strip_prefix(READ_ON)?.rsplit_once('_')?;
    Some((token, message.parse().ok()?))
}

/// *Read on in private* was pressed, by anybody: the question is answered to them, by their own
/// garden.
pub(super) fn pressed(desk: &mut Desk<'_>, message: i32) {
    let Some(question) = desk.whole.in_private.question.clone() else {
        let notice = desk.say_key("notice-question-gone");
        desk.answer_press(Some(notice));
        return;
    };
    if may_write(desk) {
        let GroupQuestion { text, before } = question;
        let (_, outcome) = as_in_private(desk, &text, before, |own| {
            ask_or_run(own, &text);
            true
        });
        desk.outcome.changes.extend(outcome.changes);
        desk.outcome.outgoing.extend(outcome.outgoing);
        let notice = desk.say_key("notice-read-on");
        desk.answer_press(Some(notice));
        return;
    }
    let (What::Pressed { press, .. }, Some(club)) = (&desk.incoming.what, &desk.facts.club) else {
        return;
    };
    let payload = read_on_payload(&club.join_token, message);
    let opens = OpenByPress { press: press.clone(), payload };
    desk.outcome.outgoing.push(Outgoing::OpenByPress(opens));
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn the_payload_of_a_link_is_read_as_it_was_written() {
        let payload = read_on_payload("aB3", 77);
        assert_eq!(payload, "read_aB3_77");
        assert_eq!(super::payload(&payload), Some(("aB3", 77)));
        for other in ["", "aB3", "read_", "read_aB3", "read_aB3_x", "frost"] {
            assert_eq!(super::payload(other), None, "{other}");
        }
        // 22 letters and digits, and the longest number: within the 64 that a link carries.
        assert!(read_on_payload(&"x".repeat(22), i32::MAX).len() <= 64);
    }

    #[test]
    fn a_long_answer_begins_with_its_verdict_and_ends_with_a_whole_line() {
        let line = "x".repeat(200);
        assert_eq!(beginning(&format!("Yes.\n{line}\n{line}")), None);
        let long = format!("Yes.\n{line}\nAlso:\n{line}\n{line}");
        assert_eq!(beginning(&long), Some(format!("Yes.\n{line}\nAlso:\n{line}")));
        let headed = format!("Yes.\n{line}\n\nAlso:\n{line}{line}");
        assert_eq!(beginning(&headed), Some(format!("Yes.\n{line}")));
        let several = format!("Yes.\n{line}\n{line}\n\nNot yet.\n{line}\n\nToo late.");
        assert_eq!(beginning(&several), Some("Yes.\nNot yet.\nToo late.".to_owned()));
    }

    proptest! {
        #[test]
        fn a_beginning_is_short_and_begins_alike(text in "[a-z🌱:\n ]{0,1500}") {
            let Some(short) = beginning(&text) else {
                prop_assert!(text.encode_utf16().count() <= SHORT);
                return Ok(());
            };
            prop_assert!(short.encode_utf16().count() <= SHORT);
            let first = short.lines().next().unwrap_or_default().trim_end_matches('…');
            prop_assert!(text.trim_start_matches('\n').starts_with(first));
        }
    }
}

//! Whether a text surely speaks to the bot, and the text without the bot's own name.

use std::ops::Range;

use super::Myself;
use super::update::Entity;

/// A text as the bot should read it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Heard {
    /// The words, without `@` and the bot's name where they addressed it.
    pub text: String,
    /// Whether they address the bot, or nobody else by a command of another bot.
    pub addressed: Addressed,
}

/// To whom a text speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Addressed {
    /// To the bot.
    Bot,
    /// To another bot, whose command it is.
    OtherBot,
    /// To nobody in particular.
    Nobody,
}

/// Reads the entities of a text.
///
/// A command at the very beginning speaks to the bot if it names the bot or no bot: a group's
/// members write bare commands, and the platform brings them. A mention speaks to the bot
/// wherever it stands. Entities that do not fit the text are passed over.
pub(super) fn hear(text: &str, entities: &[Entity], me: &Myself) -> Heard {
    let mut addressed = Addressed::Nobody;
    let mut cut: Vec<Range<usize>> = Vec::new();
    for entity in entities {
        let Some(place) = byte_range(text, entity) else { continue };
        let words = text.get(place.clone()).unwrap_or_default();
        match entity.kind.as_str() {
            "bot_command" => {
                let (command, bot) = words.split_once('@').unwrap_or((words, ""));
                if is_me(bot, me) {
                    addressed = Addressed::Bot;
                    cut.push(place.start + command.len()..place.end);
                } else if entity.offset == 0 {
                    addressed = if bot.is_empty() { Addressed::Bot } else { Addressed::OtherBot };
                }
            }
            "mention" if words.strip_prefix('@').is_some_and(|name| is_me(name, me)) => {
                addressed = Addressed::Bot;
                cut.push(place);
            }
            "text_mention" if entity.user.as_ref().is_some_and(|user| user.id == me.id) => {
                addressed = Addressed::Bot;
                cut.push(place);
            }
            _ => {}
        }
    }
    Heard { text: without(text, cut), addressed }
}

fn is_me(name: &str, me: &Myself) -> bool {
    !name.is_empty() && name.eq_ignore_ascii_case(&me.username)
}

/// The entity's place in bytes, or `None` when it does not lie between characters of the text.
fn byte_range(text: &str, entity: &Entity) -> Option<Range<usize>> {
    let start = byte_at(text, entity.offset)?;
    let end = byte_at(text, entity.offset.checked_add(entity.length)?)?;
    Some(start..end)
}

/// The byte at which this many UTF-16 units have passed.
fn byte_at(text: &str, units: usize) -> Option<usize> {
    let mut passed = 0;
    for (byte, character) in text.char_indices() {
        if passed >= units {
            return (passed == units).then_some(byte);
        }
        passed += character.len_utf16();
    }
    (passed == units).then_some(text.len())
}

/// The text without these parts. A mention at the beginning takes the comma or colon after it
/// along, and one between words leaves a single space; all else stays as it was written.
fn without(text: &str, mut cut: Vec<Range<usize>>) -> String {
    if cut.is_empty() {
        return text.to_owned();
    }
    cut.sort_by_key(|place| place.start);
    let mut kept = String::with_capacity(text.len());
    let mut read = 0;
    for place in cut {
        kept.push_str(text.get(read..place.start).unwrap_or_default());
        read = read.max(place.end);
        let rest = text.get(read..).unwrap_or_default();
        let left = if kept.trim().is_empty() {
            rest.trim_start_matches(|c: char| c.is_whitespace() || matches!(c, ',' | ':' | ';'))
        } else if kept.ends_with(char::is_whitespace) {
            rest.trim_start_matches(' ')
        } else {
            rest
        };
        read = text.len() - left.len();
    }
    kept.push_str(text.get(read..).unwrap_or_default());
    kept.trim().to_owned()
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn me() -> Myself {
        Myself { id: 77, username: "sowbell_bot".to_owned() }
    }

    fn entity(kind: &str, offset: usize, length: usize) -> Entity {
        Entity { kind: kind.to_owned(), offset, length, user: None }
    }

    /// Hears a text of which this part is an entity of this kind.
    fn heard(text: &str, kind: &str, part: &str) -> (String, Addressed) {
        let byte = text.find(part).expect("the part is in the text");
        let units = |text: &str| text.encode_utf16().count();
        let heard = hear(text, &[entity(kind, units(&text[..byte]), units(part))], &me());
        (heard.text, heard.addressed)
    }

    #[test]
    fn commands_with_our_name_or_none_speak_to_the_bot() {
        let bot = |text: &str| (text.to_owned(), Addressed::Bot);
        assert_eq!(heard("/now", "bot_command", "/now"), bot("/now"));
        let named = heard("/now@sowbell_bot tomato", "bot_command", "/now@sowbell_bot");
        assert_eq!(named, bot("/now tomato"));
        let loud = heard("/now@SowBell_Bot", "bot_command", "/now@SowBell_Bot");
        assert_eq!(loud, bot("/now"));
    }

    #[test]
    fn a_command_of_another_bot_does_not() {
        let other = heard("/now@other_bot", "bot_command", "/now@other_bot");
        assert_eq!(other, ("/now@other_bot".to_owned(), Addressed::OtherBot));
        let within = heard("try /now later", "bot_command", "/now");
        assert_eq!(within, ("try /now later".to_owned(), Addressed::Nobody));
    }

    #[test]
    fn a_mention_speaks_to_the_bot_wherever_it_stands() {
        let cases = [
            ("@sowbell_bot can I sow tomatoes?", "can I sow tomatoes?"),
            ("@sowbell_bot, can I?", "can I?"),
            ("can I, @sowbell_bot?", "can I, ?"),
            ("hey @sowbell_bot can I", "hey can I"),
            ("🌱 @sowbell_bot", "🌱"),
            ("@sowbell_bot", ""),
        ];
        for (text, left) in cases {
            let expected = (left.to_owned(), Addressed::Bot);
            assert_eq!(heard(text, "mention", "@sowbell_bot"), expected, "{text}");
        }
        let other = heard("@somebody can I", "mention", "@somebody");
        assert_eq!(other, ("@somebody can I".to_owned(), Addressed::Nobody));
    }

    #[test]
    fn a_name_that_is_no_entity_or_a_longer_name_is_nobody() {
        assert_eq!(hear("@sowbell_bot hi", &[], &me()).addressed, Addressed::Nobody);
        let longer = heard("@sowbell_bottle hi", "mention", "@sowbell_bottle");
        assert_eq!(longer.1, Addressed::Nobody);
    }

    #[test]
    fn a_bot_without_a_name_is_not_named_by_an_empty_one() {
        let nameless = Myself { id: 77, username: String::new() };
        let heard = hear("/now@", &[entity("bot_command", 0, 5)], &nameless);
        assert_eq!(heard.text, "/now@");
    }

    #[test]
    fn entities_that_do_not_fit_are_passed_over() {
        // The seedling takes two UTF-16 units; 1 lies inside it.
        for (offset, length) in [(1, 3), (0, 99), (usize::MAX, 2), (99, 1)] {
            let heard = hear("🌱 hi", &[entity("mention", offset, length)], &me());
            assert_eq!((heard.text.as_str(), heard.addressed), ("🌱 hi", Addressed::Nobody));
        }
    }

    proptest! {
        #[test]
        fn nothing_panics_and_words_are_never_added(
            text in "[ @/a🌱ü,sowbell_bot]{0,40}",
            places in prop::collection::vec((0usize..50, 0usize..20, 0usize..3), 0..6),
        ) {
            let kinds = ["mention", "bot_command", "text_mention"];
            let entities: Vec<Entity> =
                places.iter().map(|&(offset, length, kind)| entity(kinds[kind], offset, length)).collect();
            let heard = hear(&text, &entities, &me());
            prop_assert!(heard.text.len() <= text.len());
        }
    }
}

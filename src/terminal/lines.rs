//! What a typed line asks for: a message, or one of the practice's own commands.

use chrono::NaiveDate;

use super::cast::{Place, Who};

/// A typed line, understood.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Line {
    /// Nothing was typed.
    Empty,
    /// A message to the chat.
    Say(String),
    /// A message that replies to the bot.
    Reply(String),
    /// A message that replies to this person.
    ReplyTo(Who, String),
    /// The bot's name and these words are typed in any chat.
    Inline(String),
    /// This person speaks from now on.
    Speaker(Who),
    /// Speak in this place from now on.
    Place(Place),
    /// Go to the next morning.
    Morning,
    /// Go to a day.
    Day(Day),
    /// Press the button with this number.
    Press(usize),
    /// Show the buttons again.
    Buttons,
    /// Tell who is who, and what time it is for them.
    Who,
    /// List the commands.
    Help,
    /// Leave.
    Quit,
    /// Not understood; the sentence says what would be.
    Wrong(String),
}

/// The day to go to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Day {
    /// So many days on.
    Later(u32),
    /// A date.
    On(NaiveDate),
}

const PRESS_HOW: &str = "Press which button? Give its number, like this: :2";
const DAY_HOW: &str = "Which day? Give days or a date, like this: :day +3 or :day 2026-05-01";

/// Reads a line. One that begins with a colon is a command of the practice.
pub fn read(line: &str) -> Line {
    let line = line.trim();
    let Some(command) = line.strip_prefix(':') else {
        return if line.is_empty() { Line::Empty } else { Line::Say(line.to_owned()) };
    };
    let (name, rest) = command.split_once(char::is_whitespace).unwrap_or((command, ""));
    let rest = rest.trim();
    match name.to_lowercase().as_str() {
        "oda" => Line::Speaker(Who::Oda),
        "fern" => Line::Speaker(Who::Fern),
        "ilse" => Line::Speaker(Who::Ilse),
        "private" => Line::Place(Place::Private),
        "group" => Line::Place(Place::Group),
        "morning" => Line::Morning,
        "day" => day(rest),
        "press" => press(rest),
        "buttons" => Line::Buttons,
        "reply" if rest.is_empty() => {
            Line::Wrong("Reply what? Write it behind, like this: :reply when do I sow peas?".into())
        }
        "reply" => reply(rest),
        "inline" => Line::Inline(rest.to_owned()),
        "who" => Line::Who,
        "help" => Line::Help,
        "quit" | "exit" | "q" => Line::Quit,
        number if number.starts_with(|c: char| c.is_ascii_digit()) => press(number),
        _ => {
            let name: String = name.chars().take(20).collect();
            Line::Wrong(format!("There is no :{name} here; :help lists what there is."))
        }
    }
}

/// "@fern hello" replies to Fern, and anything else to the bot.
fn reply(text: &str) -> Line {
    let named = |who: &Who| {
        let rest = text.strip_prefix('@')?.split_once(char::is_whitespace);
        let (name, rest) = rest.filter(|(_, rest)| !rest.trim().is_empty())?;
        name.eq_ignore_ascii_case(who.name()).then(|| Line::ReplyTo(*who, rest.trim().to_owned()))
    };
    let to_somebody = Who::ALL.iter().find_map(named);
    to_somebody.unwrap_or_else(|| Line::Reply(text.to_owned()))
}

fn press(text: &str) -> Line {
    match text.parse() {
        Ok(number) if number > 0 => Line::Press(number),
        _ => Line::Wrong(PRESS_HOW.to_owned()),
    }
}

fn day(text: &str) -> Line {
    if text.starts_with('-') {
        return Line::Wrong("Time only goes forward here; start anew for an earlier day.".into());
    }
    let days = text.strip_prefix('+').unwrap_or(text);
    if let Ok(days) = days.trim().parse() {
        return Line::Day(Day::Later(days));
    }
    match text.parse() {
        Ok(date) => Line::Day(Day::On(date)),
        Err(_) => Line::Wrong(DAY_HOW.to_owned()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_has_no_colon_is_a_message() {
        assert_eq!(read("  can I start peas? "), Line::Say("can I start peas?".to_owned()));
        assert_eq!(read("/grow basil"), Line::Say("/grow basil".to_owned()));
        assert_eq!(read("at 7:30"), Line::Say("at 7:30".to_owned()));
        assert_eq!(read(" \t"), Line::Empty);
    }

    #[test]
    fn commands_begin_with_a_colon_in_any_case() {
        assert_eq!(read(":ILSE"), Line::Speaker(Who::Ilse));
        assert_eq!(read(" :group "), Line::Place(Place::Group));
        assert_eq!(read(":reply when?  "), Line::Reply("when?".to_owned()));
        assert_eq!(
            read(":reply @Fern /club helper add"),
            Line::ReplyTo(Who::Fern, "/club helper add".to_owned())
        );
        assert_eq!(read(":reply @fern"), Line::Reply("@fern".to_owned()));
        assert_eq!(read(":morning"), Line::Morning);
        assert_eq!(read(":q"), Line::Quit);
    }

    #[test]
    fn buttons_are_pressed_by_number() {
        assert_eq!(read(":2"), Line::Press(2));
        assert_eq!(read(":press 12"), Line::Press(12));
        for bad in [":press", ":press two", ":0", ":press -1", ":2x", ":99999999999999999999999"] {
            assert_eq!(read(bad), Line::Wrong(PRESS_HOW.to_owned()), "{bad}");
        }
    }

    #[test]
    fn days_are_counted_or_named_and_never_go_back() {
        let may = NaiveDate::from_ymd_opt(2026, 5, 1).expect("a date");
        assert_eq!(read(":day +3"), Line::Day(Day::Later(3)));
        assert_eq!(read(":day 3"), Line::Day(Day::Later(3)));
        assert_eq!(read(":day 2026-05-01"), Line::Day(Day::On(may)));
        assert!(matches!(read(":day -3"), Line::Wrong(why) if why.contains("forward")));
        for bad in [":day", ":day soon", ":day 2026-02-30", ":day +99999999999", ":day +"] {
            assert_eq!(read(bad), Line::Wrong(DAY_HOW.to_owned()), "{bad}");
        }
    }

    #[test]
    fn anything_else_with_a_colon_is_told_about_help() {
        for bad in [":", ":)", ":dance", "::"] {
            assert!(matches!(read(bad), Line::Wrong(why) if why.contains(":help")), "{bad}");
        }
    }
}

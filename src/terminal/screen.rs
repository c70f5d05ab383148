//! What is printed: messages as a phone shows them, and the practice's own few words.

use std::io::{self, Write};

use super::cast::{Place, Who, owner};
use super::phones::{Shows, Standing};
use crate::messages::{AnswerInline, Does};

/// How the output looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Look {
    /// Bold and dim text, for a terminal.
    pub styled: bool,
    /// Whether what was typed is repeated behind the prompt; a terminal does that by itself.
    pub echo: bool,
}

const BOLD: &str = "\u{1b}[1m";
const DIM: &str = "\u{1b}[2m";
const PLAIN: &str = "\u{1b}[0m";

/// The output of a practice.
pub struct Screen<W> {
    out: W,
    look: Look,
}

impl<W: Write> Screen<W> {
    /// A screen over this output.
    pub fn new(out: W, look: Look) -> Self {
        Self { out, look }
    }

    fn line(&mut self, style: &str, text: &str) -> io::Result<()> {
        let text = printable(text);
        if self.look.styled && !text.is_empty() {
            writeln!(self.out, "{style}{text}{PLAIN}")
        } else {
            writeln!(self.out, "{text}")
        }
    }

    /// A line of the practice itself.
    pub fn note(&mut self, text: &str) -> io::Result<()> {
        self.line(DIM, text)
    }

    /// The prompt, which says who speaks, where, and on which day.
    pub fn prompt(&mut self, day: &str, who: Who, place: Place) -> io::Result<()> {
        let place = match place {
            Place::Private => "private",
            Place::Group => "group",
        };
        let (bold, plain) = if self.look.styled { (BOLD, PLAIN) } else { ("", "") };
        write!(self.out, "{bold}{day} · {}, {place} > {plain}", who.name())?;
        self.out.flush()
    }

    /// What was typed, where nobody has seen it yet.
    pub fn typed(&mut self, text: &str) -> io::Result<()> {
        const ENOUGH: usize = 200;
        if !self.look.echo {
            return Ok(());
        }
        let mut shown: String = text.chars().take(ENOUGH).collect();
        if shown.len() < text.len() {
            shown.push('…');
        }
        writeln!(self.out, "{}", printable(&shown))
    }

    /// The end of the input, which leaves the cursor behind the prompt.
    pub fn end(&mut self) -> io::Result<()> {
        writeln!(self.out)?;
        self.out.flush()
    }

    /// What a phone shows; `when` is the time there, where time is passing.
    pub fn show(&mut self, shows: &Shows, when: Option<&str>) -> io::Result<()> {
        let when = when.map(|when| format!("{when}, ")).unwrap_or_default();
        match shows {
            Shows::New { chat, to, message } => {
                let reader = owner(*chat).map_or("group", Who::name);
                let to = to.as_deref().filter(|_| owner(*chat).is_none());
                let reply = to.map(|name| format!(", in reply to {name}")).unwrap_or_default();
                self.line(BOLD, &format!("{when}bot → {reader}{reply}"))?;
                self.message(message)
            }
            Shows::Changed { chat, message } => {
                let reader = owner(*chat).map_or("group", Who::name);
                self.line(BOLD, &format!("{when}bot → {reader}, changes its message:"))?;
                self.message(message)
            }
            Shows::Offered(answer) => self.offered(answer),
            Shows::Notice(text) => self.line(DIM, &format!("  (notice) {text}")),
        }
    }

    /// What may be sent, each with its first line; and the message of the first.
    fn offered(&mut self, answer: &AnswerInline) -> io::Result<()> {
        self.line(BOLD, "bot offers:")?;
        if let Some(button) = &answer.open_private {
            self.indented(&format!("[{} ↗]", button.label))?;
        }
        for article in &answer.articles {
            self.indented(&format!("{} – {}", article.title, article.description))?;
        }
        if let Some(first) = answer.articles.first() {
            self.line(BOLD, "the first, sent:")?;
            for line in first.text.lines() {
                self.indented(line)?;
            }
        }
        Ok(())
    }

    fn message(&mut self, message: &Standing) -> io::Result<()> {
        for line in message.text.lines() {
            self.indented(line)?;
        }
        self.buttons(message)
    }

    /// The first line of a message, to tell which one is meant, and its buttons.
    pub fn reminder_of(&mut self, message: &Standing) -> io::Result<()> {
        self.indented(message.text.lines().next().unwrap_or_default())?;
        self.buttons(message)
    }

    fn indented(&mut self, line: &str) -> io::Result<()> {
        let line = printable(line);
        if line.is_empty() { writeln!(self.out) } else { writeln!(self.out, "  {line}") }
    }

    fn buttons(&mut self, message: &Standing) -> io::Result<()> {
        let mut number = 0;
        for row in message.buttons.iter().filter(|row| !row.is_empty()) {
            let labels = row.iter().map(|button| {
                number += 1;
                let leads_away =
                    if matches!(button.does, Does::OpenPrivate(_)) { " ↗" } else { "" };
                format!("[{number}] {}{leads_away}", printable(&button.label))
            });
            let labels: Vec<String> = labels.collect();
            writeln!(self.out, "  {}", labels.join("   "))?;
        }
        Ok(())
    }
}

/// The text without characters that would steer a terminal.
fn printable(text: &str) -> String {
    text.chars().filter(|c| !c.is_control()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::messages::{Button, Press};

    fn shown(look: Look, shows: &Shows, when: Option<&str>) -> String {
        let mut out = Vec::new();
        Screen::new(&mut out, look).show(shows, when).expect("written");
        String::from_utf8(out).expect("text")
    }

    fn message() -> Standing {
        let row =
            vec![Button::press("Settings", Press::Settings), Button::press("Hour", Press::AskHour)];
        let buttons = vec![row, vec![], vec![Button::open_private("Write to me", "abc")]];
        Standing {
            message: 7,
            text: "Hello!\n\nHow are\u{1b}[2J you?".to_owned(),
            buttons,
            asked_by: None,
        }
    }

    #[test]
    fn a_message_stands_with_its_reader_and_numbered_buttons() {
        let chat = super::super::cast::chat_id(Who::Fern, Place::Private);
        let shows = Shows::New { chat, to: None, message: message() };
        let expected = "bot → Fern\n  Hello!\n\n  How are[2J you?\n  \
                        [1] Settings   [2] Hour\n  [3] Write to me ↗\n";
        assert_eq!(shown(Look { styled: false, echo: false }, &shows, None), expected);
    }

    #[test]
    fn styling_is_only_where_it_was_asked_for() {
        let notice = Shows::Notice("Noted.".to_owned());
        let plain = shown(Look { styled: false, echo: false }, &notice, None);
        assert_eq!(plain, "  (notice) Noted.\n");
        let styled = shown(Look { styled: true, echo: false }, &notice, None);
        assert_eq!(styled, "\u{1b}[2m  (notice) Noted.\u{1b}[0m\n");
    }
}

//! The practice chat in the terminal: the bot's own conversation, a demo club and a date that the
//! user moves.
//!
//! What is typed goes the way of every update ([`crate::app::App::take_in`]), mornings come from
//! the same tick, and the same sender hands the answers to a platform that keeps them for the
//! screen. Nothing of the conversation is decided here.

mod cast;
mod lines;
mod phones;
mod reading;
mod screen;
mod talk;
mod world;

use std::io::{self, BufRead, IsTerminal, Write};

use anyhow::Context;
use chrono::{NaiveDate, Utc};

use screen::{Look, Screen};
use world::World;

/// Runs the practice chat on the terminal, or on piped lines, until the input ends.
///
/// Practice begins at half past six in the morning of the day `on` at the demo club's place; on
/// today's date (UTC) where none is given.
///
/// # Errors
/// When the input or output fails (a closed output too) or the embedded database does.
pub fn practice(on: Option<NaiveDate>) -> anyhow::Result<()> {
    let on = on.unwrap_or_else(|| Utc::now().date_naive());
    let (typed, shown) = (io::stdin().is_terminal(), io::stdout().is_terminal());
    let no_color = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
    let look = Look { styled: shown && !no_color, echo: !(typed && shown) };
    converse(io::stdin().lock(), io::stdout().lock(), on, look)
}

/// The practice chat on any input and output, without styling and with what was typed repeated
/// after the prompt, so that the output reads as a whole conversation.
///
/// # Errors
/// When the input, the output or the embedded database fails.
pub fn run(input: impl BufRead, output: impl Write, on: NaiveDate) -> anyhow::Result<()> {
    converse(input, output, on, Look { styled: false, echo: true })
}

fn converse(
    input: impl BufRead,
    output: impl Write,
    on: NaiveDate,
    look: Look,
) -> anyhow::Result<()> {
    // The database's pool wants a runtime; one thread is enough for one reader.
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .context("the practice chat could not start")?;
    runtime.block_on(async {
        let mut world = World::open(on).await?;
        cast::set_up(&mut world).await?;
        talk::talk(input, Screen::new(output, look), &mut world).await
    })
}

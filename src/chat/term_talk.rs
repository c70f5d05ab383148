//! Saying what a term of the trade means, and which rule the answers take from it.

use crate::planning::{Frost, RISK_MARGIN_DAYS};
use crate::wording::args;

use super::desk::Desk;
use super::term_words::Term;

/// The coldest night in degrees Celsius for seedlings that are being hardened off (University of
/// Maryland Extension, 2023): see [`crate::planning::Crop::hardening_night_c`].
const HARDENING_NIGHT_C: i64 = 7;

/// Answers what a term means; `false` where the text asks something else.
pub(super) fn explained(desk: &mut Desk<'_>, text: &str) -> bool {
    let Some(term) = desk.tongue.sentences.term(text) else { return false };
    explain(desk, term);
    true
}

/// Says what a term means.
pub(super) fn explain(desk: &mut Desk<'_>, term: Term) {
    let days = i64::try_from(RISK_MARGIN_DAYS).unwrap_or_default();
    let margin = args().number("days", days);
    let said = match term {
        Term::HardeningOff => {
            let night = desk.speech.voice.temperature(HARDENING_NIGHT_C);
            desk.say("term-hardening-off", &args().text("night", night))
        }
        Term::PottingUp => desk.say_key("term-potting-up"),
        Term::SettingOut => desk.say_key("term-setting-out"),
        Term::Succession => desk.say_key("term-succession"),
        Term::Cover => desk.say_key("term-cover"),
        Term::LastFrost => desk.say("term-last-frost", &margin),
        Term::FirstFrost => desk.say("term-first-frost", &margin),
    };
    let asks_dates = matches!(term, Term::LastFrost | Term::FirstFrost);
    let garden = desk.garden().filter(|garden| asks_dates && garden.frost != Frost::Free);
    let dates = garden.map(|garden| {
        desk.say("term-your-frost", &args().text("frost", desk.frost_words(&garden.frost)))
    });
    let lines: Vec<String> = [Some(said), dates].into_iter().flatten().collect();
    desk.reply(lines.join("\n"));
}

//! Where a packet's numbers begin: the figures of a variety's name are none of them.

use super::lexer::{Piece, Token};
use super::read::{Item, Unit, items};
use super::words::PacketWords;

/// The token at which the packet's numbers begin: a figure with its unit, or a word that speaks
/// of one. "Sunrise F1", "Sweet 100" and "4th of July" are names.
pub(super) fn numbers_begin(text: &str, tokens: &[Token], words: &PacketWords) -> Option<usize> {
    (0..tokens.len()).find(|at| {
        let rest = tokens.get(*at..).unwrap_or_default();
        match rest.first().map(|token| &token.is) {
            Some(Piece::Number(_)) => !is_of_name(text, rest, words),
            Some(Piece::Word(_)) => {
                let ahead = words_ahead(rest);
                words.opens(&ahead) || starts_by_weeks(rest, ahead.len(), words)
            }
            _ => false,
        }
    })
}

/// The words up to the next figure or mark; "start-indoors" is two.
fn words_ahead(rest: &[Token]) -> Vec<&str> {
    rest.iter()
        .map_while(|token| match &token.is {
            Piece::Word(word) => Some(word.as_str()),
            Piece::Dash => Some("-"),
            _ => None,
        })
        .filter(|word| *word != "-")
        .take(6)
        .collect()
}

/// "start 6-8 weeks …", and not the "Start" of a name.
fn starts_by_weeks(rest: &[Token], ahead: usize, words: &PacketWords) -> bool {
    let first = words_ahead(rest);
    ahead <= 2
        && words.start.begin(&first) > 0
        && matches!(
            items(rest.get(ahead..).unwrap_or_default(), words).first(),
            Some(Item::Quantity(_, _, Unit::Weeks))
        )
}

/// Whether the figure at the beginning of `rest` belongs to the variety's name: it is joined to
/// letters that are no unit, or stands without a unit and without a word of packets behind it.
fn is_of_name(text: &str, rest: &[Token], words: &PacketWords) -> bool {
    let Some(from) = rest.first().map(|token| token.from) else { return false };
    if text
        .get(..from)
        .and_then(|before| before.chars().next_back())
        .is_some_and(char::is_alphabetic)
    {
        return true;
    }
    if apart_and_falling(text, rest) {
        return true;
    }
    let figure = items(rest, words);
    if !matches!(figure.first(), Some(Item::Quantity(_, _, Unit::None))) {
        return false;
    }
    // "Sweet 100 germinates in 7 days": the word speaks of the figure that follows it.
    let mut clause =
        figure.iter().skip(1).take_while(|item| !matches!(item, Item::Comma | Item::End));
    if clause.any(|item| matches!(item, Item::Quantity(_, _, unit) if *unit != Unit::None)) {
        return true;
    }
    let behind: Vec<&str> = figure
        .iter()
        .skip(1)
        .map_while(|item| match item {
            Item::Word(word) => Some(word.as_str()),
            _ => None,
        })
        .take(2)
        .collect();
    !(0..behind.len()).any(|at| words.opens(behind.get(at..).unwrap_or_default()))
}

/// "Sweet 100 – 65 days": a dash between spaces before a lower figure makes no range.
fn apart_and_falling(text: &str, rest: &[Token]) -> bool {
    let [Token { is: Piece::Number(first), .. }, Token { is: Piece::Dash, from }, third, ..] = rest
    else {
        return false;
    };
    let spaced = text.get(..*from).is_some_and(|before| before.ends_with(char::is_whitespace));
    spaced && matches!(third.is, Piece::Number(second) if second < *first)
}

//! A packet's text as words, numbers and the marks between them.

use std::iter::Peekable;

use super::PACKET_CHARACTERS;
use crate::catalogue::normalise;

/// One piece of the text, with the byte at which it begins.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Token {
    pub from: usize,
    pub is: Piece,
}

/// What a piece is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Piece {
    /// A number, in hundredths.
    Number(i64),
    /// A word in its plain form.
    Word(String),
    /// The mark for inches behind a number.
    InchMark,
    /// A dash.
    Dash,
    /// A comma, a colon or another mark inside a sentence.
    Comma,
    /// The end of a sentence or of a line.
    End,
}

/// The largest number that is read, in hundredths; a longer one counts as this.
const LARGEST: i64 = 1_000_000;

/// Cuts the first [`PACKET_CHARACTERS`] of `text` into pieces.
pub(super) fn lex(text: &str) -> Vec<Token> {
    let mut tokens: Vec<Token> = Vec::new();
    let mut letters = text.char_indices().take(PACKET_CHARACTERS).peekable();
    while let Some((from, letter)) = letters.next() {
        let piece = match letter {
            '0'..='9' => {
                let number = number(letter, &mut letters);
                push_number(&mut tokens, from, number);
                continue;
            }
            _ if vulgar(letter).is_some() => {
                push_number(&mut tokens, from, vulgar(letter).unwrap_or(0));
                continue;
            }
            _ if letter.is_alphabetic() => {
                let mut word = String::from(letter);
                while let Some((_, next)) = letters.next_if(|(_, next)| {
                    next.is_alphabetic() || matches!(next, '\'' | '’' | '\u{300}'..='\u{36f}')
                }) {
                    word.push(next);
                }
                for part in normalise(&word).split_whitespace() {
                    tokens.push(Token { from, is: Piece::Word(part.to_owned()) });
                }
                continue;
            }
            '"' | '″' | '”'
                if matches!(tokens.last(), Some(Token { is: Piece::Number(_), .. })) =>
            {
                Piece::InchMark
            }
            '-' | '–' | '—' | '‐' | '‑' | '−' | '~' => Piece::Dash,
            '\n' | '\r' | '\u{2028}' | '\u{2029}' | ';' | '!' | '•' | '*' => Piece::End,
            '.' => {
                // "1/4 in. deep" goes on.
                let goes_on = letters.clone().find(|(_, next)| !next.is_whitespace());
                let goes_on = goes_on.is_some_and(|(_, next)| next.is_lowercase());
                let short = matches!(tokens.last(), Some(Token { is: Piece::Word(word), .. })
                    if word.chars().count() <= 3);
                if goes_on && short {
                    continue;
                }
                Piece::End
            }
            ',' | ':' | '(' | ')' | '|' | '/' | '&' => Piece::Comma,
            _ => continue,
        };
        tokens.push(Token { from, is: piece });
    }
    tokens
}

type Letters<'t> = Peekable<std::iter::Take<std::str::CharIndices<'t>>>;

/// A number in hundredths that begins with `first`: "75", "0.5", "1,5", "1/4".
fn number(first: char, letters: &mut Letters<'_>) -> i64 {
    let whole = digits(digit(first), letters);
    let mark = |letters: &Letters<'_>, marks: &[char]| {
        let mut ahead = letters.clone();
        ahead.next().is_some_and(|(_, letter)| marks.contains(&letter))
            && ahead.next().is_some_and(|(_, letter)| letter.is_ascii_digit())
    };
    if mark(letters, &['/', '⁄']) {
        letters.next();
        let under = digits(0, letters);
        return if under == 0 { LARGEST } else { (whole * 100 / under).min(LARGEST) };
    }
    let mut hundredths = whole.saturating_mul(100);
    if mark(letters, &['.', ',']) {
        letters.next();
        for worth in [10, 1] {
            if let Some((_, letter)) = letters.next_if(|(_, letter)| letter.is_ascii_digit()) {
                hundredths += worth * digit(letter);
            }
        }
        while letters.next_if(|(_, letter)| letter.is_ascii_digit()).is_some() {}
    }
    hundredths.min(LARGEST)
}

fn digits(begun: i64, letters: &mut Letters<'_>) -> i64 {
    let mut number = begun;
    while let Some((_, letter)) = letters.next_if(|(_, letter)| letter.is_ascii_digit()) {
        number = (number * 10 + digit(letter)).min(LARGEST);
    }
    number
}

fn digit(letter: char) -> i64 {
    letter.to_digit(10).map_or(0, i64::from)
}

/// A fraction behind a whole number belongs to it: "1 1/2", "1½".
fn push_number(tokens: &mut Vec<Token>, from: usize, hundredths: i64) {
    if let Some(Token { is: Piece::Number(whole), .. }) = tokens.last_mut()
        && (1..100).contains(&hundredths)
        && *whole % 100 == 0
    {
        *whole = (*whole + hundredths).min(LARGEST);
        return;
    }
    tokens.push(Token { from, is: Piece::Number(hundredths) });
}

/// The hundredths of a fraction that is one letter.
fn vulgar(letter: char) -> Option<i64> {
    Some(match letter {
        '½' => 50,
        '¼' => 25,
        '¾' => 75,
        '⅓' => 33,
        '⅔' => 67,
        '⅛' => 12,
        '⅜' => 38,
        '⅝' => 62,
        '⅞' => 88,
        _ => return None,
    })
}

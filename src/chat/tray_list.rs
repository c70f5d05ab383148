//! "tomato 12, basil 6": crops with the cells that are wanted of each.

use crate::planning::MOST_CELLS;

/// The most pieces that one list may have.
const MOST_PIECES: usize = 100;

/// A piece of the list: names as they were written, with the number beside them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Piece {
    /// The names, without the number; never empty.
    pub names: String,
    /// The cells, where a number was given.
    pub cells: Option<u32>,
}

/// What is wrong with a list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum ListError {
    /// This is no number of cells.
    Count(String),
    /// A number stands without a crop.
    NoCrop(String),
    /// There are too many pieces.
    TooLong,
}

/// Reads a list. The number stands before or behind the name, alone or as in "x12" and "12×", and
/// may have a colon before it.
pub(super) fn pieces(text: &str) -> Result<Vec<Piece>, ListError> {
    let text = text.replace([':', '='], " ");
    let mut all = Vec::new();
    for piece in split_at_commas(&text) {
        let words: Vec<&str> = piece.split_whitespace().collect();
        let number_first = words.first().is_some_and(|word| is_number(word));
        let mut names: Vec<&str> = Vec::new();
        let mut number: Option<&str> = None;
        for word in words {
            if !is_number(word) {
                names.push(word);
                continue;
            }
            // "12 tomatoes 6 basil": a number begins what it counts; "tomato 12 basil 6": it ends it.
            if number_first {
                if let Some(before) = number.replace(word) {
                    all.push(counted(&names, Some(before))?);
                    names.clear();
                }
            } else {
                all.push(counted(&names, Some(word))?);
                names.clear();
            }
        }
        if !names.is_empty() || number.is_some() {
            all.push(counted(&names, number)?);
        }
        if all.len() > MOST_PIECES {
            return Err(ListError::TooLong);
        }
    }
    Ok(all)
}

fn counted(names: &[&str], number: Option<&str>) -> Result<Piece, ListError> {
    let cells = number.map(cells).transpose()?;
    if names.is_empty() {
        return Err(ListError::NoCrop(number.unwrap_or_default().to_owned()));
    }
    Ok(Piece { names: names.join(" "), cells })
}

/// Splits at commas, semicolons and line ends, but not within a number such as "10,000".
fn split_at_commas(text: &str) -> Vec<&str> {
    let mut pieces = Vec::new();
    let mut from = 0;
    for (at, sign) in text.char_indices() {
        let digit_before =
            text.get(..at).is_some_and(|b| b.ends_with(|c: char| c.is_ascii_digit()));
        let after = at + sign.len_utf8();
        let digit_after =
            text.get(after..).is_some_and(|a| a.starts_with(|c: char| c.is_ascii_digit()));
        let within_number = sign == ',' && digit_before && digit_after;
        if matches!(sign, ',' | ';' | '\n') && !within_number {
            pieces.extend(text.get(from..at));
            from = after;
        }
    }
    pieces.extend(text.get(from..));
    pieces
}

fn is_number(word: &str) -> bool {
    word.contains(|c: char| c.is_ascii_digit())
}

fn cells(word: &str) -> Result<u32, ListError> {
    let bare = word.trim_matches(['x', 'X', '×', '*', '(', ')', '.', '!', '?']).replace(',', "");
    let wrong = || ListError::Count(word.chars().take(20).collect());
    let digits_only = bare.chars().all(|c| c.is_ascii_digit());
    let count = bare.parse().ok().filter(|_| digits_only).ok_or_else(wrong)?;
    if (1..=MOST_CELLS).contains(&count) { Ok(count) } else { Err(wrong()) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<Vec<(String, Option<u32>)>, ListError> {
        Ok(pieces(text)?.into_iter().map(|piece| (piece.names, piece.cells)).collect())
    }

    fn told(pieces: &[(&str, u32)]) -> Vec<(String, Option<u32>)> {
        let piece = |(names, cells): &(&str, u32)| {
            ((*names).to_owned(), Some(*cells).filter(|cells| *cells > 0))
        };
        pieces.iter().map(piece).collect()
    }

    #[test]
    fn a_number_stands_before_or_behind_the_name() {
        let two = Ok(told(&[("tomato", 12), ("pole bean", 6)]));
        for text in [
            "tomato 12, pole bean 6",
            "12 tomato, 6 pole bean",
            "tomato: 12; pole bean x6",
            "tomato 12 pole bean 6",
            "12 tomato 6 pole bean",
            "tomato=12\n6× pole bean",
            "tomato (12),, pole bean 6,",
        ] {
            assert_eq!(read(text), two, "{text}");
        }
        assert_eq!(read("tomato, basil 6"), Ok(told(&[("tomato", 0), ("basil", 6)])));
        assert_eq!(read("tomato and basil 6"), Ok(told(&[("tomato and basil", 6)])));
        assert_eq!(read("6 basil and 9 dill"), Ok(told(&[("basil and", 6), ("dill", 9)])));
        assert_eq!(read(" , "), Ok(told(&[])));
    }

    #[test]
    fn what_is_no_number_of_cells_is_told() {
        for wrong in ["0", "501", "10,000", "2.5", "-3", "12ish", "99999999999999", "+4"] {
            let is = read(&format!("basil 6, dill {wrong}"));
            assert_eq!(is, Err(ListError::Count(wrong.to_owned())));
        }
        assert_eq!(read("basil 500"), Ok(told(&[("basil", 500)])));
        assert_eq!(read("basil, 12"), Err(ListError::NoCrop("12".to_owned())));
        assert_eq!(read(&"dill,".repeat(101)), Err(ListError::TooLong));
    }
}

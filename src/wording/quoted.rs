//! Words of a person, quoted back to them.

/// The most characters that are quoted; whoever wrote more knows the rest.
const LONGEST: usize = 40;

/// What somebody wrote, fit to stand in a sentence of the bot's: one line, without control
/// characters and without the marks that turn the direction of what follows (Unicode UAX #9,
/// section 2), at most 40 characters and then "…".
///
/// ```
/// use sowbell::wording::quoted;
/// assert_eq!(quoted("  dragon\nfruit "), "dragon fruit");
/// assert_eq!(quoted(&"a".repeat(41)), format!("{}…", "a".repeat(40)));
/// ```
#[must_use]
pub fn quoted(written: &str) -> String {
    let turns = |c: char| matches!(c, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}');
    let line: String = written
        .chars()
        .filter(|&c| !turns(c))
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect();
    let line = line.split_whitespace().collect::<Vec<_>>().join(" ");
    match line.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", line.get(..end).unwrap_or_default().trim_end()),
        None => line,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_quotation_is_one_short_line_that_reads_forwards() {
        assert_eq!(quoted("\u{202e}Oslo\u{2069}\t?\r\n"), "Oslo ?");
        assert_eq!(quoted("\u{0}\n"), "");
        assert_eq!(quoted(&"ü".repeat(40)), "ü".repeat(40));
        assert_eq!(quoted(&format!("{} b", "a".repeat(39))), format!("{}…", "a".repeat(39)));
    }
}

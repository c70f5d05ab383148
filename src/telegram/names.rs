//! Names that people and groups give themselves, made fit for a line of text.

/// The longest name that is passed on, in characters; the platform's own limits are 64 for a
/// first name and 128 for a group's title.
const LONGEST: usize = 128;

/// One line without control characters and without the marks that turn the direction of what
/// follows, at most [`LONGEST`] characters long.
pub(super) fn plain(name: &str) -> String {
    let shown = name.chars().filter(|&c| !turns_direction(c));
    let line: String = shown.map(|c| if c.is_control() { ' ' } else { c }).collect();
    let words: Vec<&str> = line.split_whitespace().collect();
    words.join(" ").chars().take(LONGEST).collect()
}

/// The explicit directional embeddings, overrides and isolates of Unicode's bidirectional
/// algorithm (UAX #9, section 2).
fn turns_direction(c: char) -> bool {
    matches!(c, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_stays_one_line_and_reads_forwards() {
        assert_eq!(plain("  Anna\nMaria\t\u{202E}x "), "Anna Maria x");
        assert_eq!(plain("Ольга 🌱"), "Ольга 🌱");
        assert_eq!(plain("\u{0}\n"), "");
    }

    #[test]
    fn a_long_name_is_cut_between_characters() {
        assert_eq!(plain(&"ü".repeat(500)), "ü".repeat(128));
    }
}

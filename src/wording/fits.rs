//! Texts that fit the platform's limit.

use std::borrow::Cow;

use unicode_normalization::char::is_combining_mark;

/// Shortens `text` to at most `limit_utf16` UTF-16 units, the unit in which the platform counts.
///
/// The cut is at the end of a line (a line with "…" follows) or of a word ("…" follows at once),
/// where one lies in the second half of what fits, and else anywhere between two characters.
/// What is short enough is left as it is.
///
/// ```
/// use sowbell::wording::shorten_to_limit;
/// assert_eq!(shorten_to_limit("sow leeks now", 20), "sow leeks now");
/// assert_eq!(shorten_to_limit("sow leeks now", 12), "sow leeks…");
/// ```
#[must_use]
pub fn shorten_to_limit(text: &str, limit_utf16: usize) -> Cow<'_, str> {
    if text.encode_utf16().count() <= limit_utf16 {
        return Cow::Borrowed(text);
    }
    if let Some(line) =
        cut(text, limit_utf16.saturating_sub("\n…".chars().count()), |c| c == '\n')
    {
        return Cow::Owned(format!("{line}\n…"));
    }
    let Some(room) = limit_utf16.checked_sub(1) else { return Cow::Borrowed("") };
    if let Some(words) = cut(text, room, char::is_whitespace) {
        return Cow::Owned(format!("{words}…"));
    }
    let mut head = head(text, room);
    // An accent or a joined sign stays with the character it belongs to.
    while joins_on(head, text.get(head.len()..).unwrap_or_default()) {
        let Some((at, _)) = head.char_indices().next_back() else { break };
        head = head.get(..at).unwrap_or_default();
    }
    Cow::Owned(format!("{head}…"))
}

/// The longest beginning of `text` with at most `room` UTF-16 units.
fn head(text: &str, room: usize) -> &str {
    let mut used = 0;
    let end = text.char_indices().find_map(|(at, c)| {
        used += c.len_utf16();
        (used > room).then_some(at)
    });
    text.get(..end.unwrap_or(text.len())).unwrap_or_default()
}

/// The longest beginning of `text` that ends before one of `ends`, leaves no blanks at its end
/// and fills the second half of `room`.
fn cut(text: &str, room: usize, ends: impl Fn(char) -> bool) -> Option<&str> {
    let fits = head(text, room);
    // The character after the last that fits may be such an end itself.
    let next_ends = text.get(fits.len()..)?.chars().next().is_none_or(&ends);
    let end = if next_ends { fits.len() } else { fits.rfind(&ends)? };
    let kept = fits.get(..end)?.trim_end();
    (!kept.is_empty() && kept.encode_utf16().count() >= room / 2).then_some(kept)
}

/// Whether the first character of `rest` belongs to the last one of `head`.
fn joins_on(head: &str, rest: &str) -> bool {
    const JOINER: char = '\u{200d}';
    let joins = |c: char| {
        c == JOINER
            || is_combining_mark(c)
            || matches!(c, '\u{fe00}'..='\u{fe0f}' | '\u{1f3fb}'..='\u{1f3ff}')
    };
    head.ends_with(JOINER) || rest.chars().next().is_some_and(joins)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn lines_go_before_words_and_words_before_characters() {
        for (text, limit, is) in [
            ("", 0, ""),
            ("abc", 0, ""),
            ("abc", 1, "…"),
            ("abc", 3, "abc"),
            ("abcdef", 3, "ab…"),
            ("one two three", 9, "one two…"),
            ("one two three", 8, "one two…"),
            ("first line\nsecond line here", 20, "first line\n…"),
            ("first line\nsecond", 12, "first line\n…"),
            // The line's end lies in the first half: the words tell more.
            ("a\nlong line of many words", 20, "a\nlong line of many…"),
            // No word ends in the second half.
            ("a bcdefghijklmnop", 10, "a bcdefgh…"),
        ] {
            assert_eq!(shorten_to_limit(text, limit), is, "{text:?} to {limit}");
        }
    }

    #[test]
    fn nothing_is_cut_within_a_character() {
        // A seedling takes two units: one of three fits beside the mark.
        assert_eq!(shorten_to_limit("🌱🌱🌱", 4), "🌱…");
        assert_eq!(shorten_to_limit("🌱🌱", 4), "🌱🌱");
        // The accent stays with its letter, and a person with the skin and the tools.
        assert_eq!(shorten_to_limit("abe\u{301}cd", 4), "ab…");
        assert_eq!(shorten_to_limit("ab👩🏽\u{200d}🌾cd", 8), "ab…");
    }

    proptest! {
        #[test]
        fn what_comes_out_fits_and_begins_alike(text in "[a-z🌱é \n\u{301}]{0,60}", limit in 0usize..50) {
            let short = shorten_to_limit(&text, limit);
            prop_assert!(short.encode_utf16().count() <= limit);
            if text.encode_utf16().count() <= limit {
                prop_assert_eq!(&short, &text);
            } else if limit > 0 {
                let kept = short.strip_suffix('…').expect("the mark");
                prop_assert!(text.starts_with(kept.strip_suffix('\n').unwrap_or(kept)));
            }
        }
    }
}

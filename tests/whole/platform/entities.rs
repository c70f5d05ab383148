//! Commands and mentions in what people write, found as the platform finds them.

use serde_json::{Value, json};

/// How long a text is as the platform counts: in UTF-16 units.
pub(crate) fn utf16_len(text: &str) -> usize {
    text.encode_utf16().count()
}

/// The entities of a text, in order: `/command`, `/command@bot` and `@name`.
pub(crate) fn entities_of(text: &str) -> Vec<Value> {
    let mut entities = Vec::new();
    let mut offset = 0;
    let mut rest = text;
    let mut before = ' ';
    while let Some(first) = rest.chars().next() {
        let kind_and_length = match first {
            '/' if !is_word(before) && before != '/' => {
                command_length(rest).map(|n| ("bot_command", n))
            }
            '@' if !is_word(before) => mention_length(rest).map(|n| ("mention", n)),
            _ => None,
        };
        let bytes = match kind_and_length {
            Some((kind, length)) => {
                // Both are plain ASCII, so bytes are UTF-16 units as well.
                entities.push(json!({ "type": kind, "offset": offset, "length": length }));
                length
            }
            None => first.len_utf8(),
        };
        let (taken, left) = rest.split_at(bytes);
        offset += utf16_len(taken);
        before = taken.chars().next_back().unwrap_or(first);
        rest = left;
    }
    entities
}

fn is_word(c: char) -> bool {
    c.is_alphanumeric() || c == '_'
}

/// The number of letters, digits and underscores at the beginning, if the word
/// ends there.
fn word_length(text: &str) -> usize {
    let plain = |c: &char| c.is_ascii_alphanumeric() || *c == '_';
    let length = text.chars().take_while(plain).count();
    let goes_on = text.chars().nth(length).is_some_and(is_word);
    if goes_on { 0 } else { length }
}

fn command_length(text: &str) -> Option<usize> {
    let name = word_length(text.get(1..)?);
    if !(1..=64).contains(&name) {
        return None;
    }
    let end = 1 + name;
    let addressed = text.get(end..).and_then(mention_length).unwrap_or(0);
    Some(end + addressed)
}

fn mention_length(text: &str) -> Option<usize> {
    let name = word_length(text.strip_prefix('@')?);
    (3..=32).contains(&name).then_some(name + 1)
}

//! Text with `parse_mode` HTML, read as strictly as the platform reads it.

use serde_json::{Value, json};

use super::entities::utf16_len;
use super::state::set;

/// The readable text and its entities.
///
/// # Errors
///
/// The sentence that the platform answers with when it cannot parse the markup.
pub(crate) fn read_html(html: &str) -> Result<(String, Vec<Value>), String> {
    let mut text = String::new();
    let mut open: Vec<(String, usize, Value)> = Vec::new();
    let mut entities = Vec::new();
    let mut rest = html;
    while let Some(at) = rest.find(['<', '&']) {
        let (plain, special) = rest.split_at(at);
        text.push_str(plain);
        if special.starts_with('&') {
            let (character, length) = character_reference(special);
            text.push_str(character);
            rest = special.get(length..).unwrap_or_default();
            continue;
        }
        let end = special.find('>').ok_or_else(|| {
            can_not(&format!("Unclosed start tag at byte offset {}", html.len() - special.len()))
        })?;
        let (tag, left) = special.split_at(end + 1);
        rest = left;
        let tag = tag.trim_start_matches('<').trim_end_matches('>');
        let offset = utf16_len(&text);
        if let Some(name) = tag.strip_prefix('/') {
            let (opened, start, mut entity) =
                open.pop().ok_or_else(|| can_not(&format!("Unexpected end tag \"{name}\"")))?;
            if opened != name.trim() {
                return Err(can_not(&format!(
                    "Unmatched end tag, expected \"</{opened}>\", found \"</{name}>\""
                )));
            }
            if offset > start {
                set(&mut entity, "offset", json!(start));
                set(&mut entity, "length", json!(offset - start));
                entities.push(entity);
            }
        } else {
            let (name, entity) = start_tag(tag)?;
            open.push((name, offset, entity));
        }
    }
    text.push_str(rest);
    if let Some((name, _, _)) = open.pop() {
        return Err(can_not(&format!("Can't find end tag corresponding to start tag \"{name}\"")));
    }
    entities.sort_by_key(|entity| entity["offset"].as_u64());
    Ok((text, entities))
}

fn can_not(why: &str) -> String {
    format!("can't parse entities: {why}")
}

fn character_reference(text: &str) -> (&'static str, usize) {
    [("&lt;", "<"), ("&gt;", ">"), ("&amp;", "&"), ("&quot;", "\"")]
        .into_iter()
        .find(|(name, _)| text.starts_with(name))
        .map_or(("&", 1), |(name, character)| (character, name.len()))
}

fn start_tag(tag: &str) -> Result<(String, Value), String> {
    let (name, attributes) = tag.split_once(' ').unwrap_or((tag, ""));
    let kind = match name {
        "b" | "strong" => "bold",
        "i" | "em" => "italic",
        "u" | "ins" => "underline",
        "s" | "strike" | "del" => "strikethrough",
        "tg-spoiler" | "span" => "spoiler",
        "code" => "code",
        "pre" => "pre",
        "blockquote" if attributes == "expandable" => "expandable_blockquote",
        "blockquote" => "blockquote",
        "a" => {
            let url = attributes
                .strip_prefix("href=\"")
                .and_then(|url| url.strip_suffix('"'))
                .unwrap_or_default();
            return Ok((name.to_owned(), json!({ "type": "text_link", "url": url })));
        }
        _ => return Err(can_not(&format!("Unsupported start tag \"{name}\""))),
    };
    Ok((name.to_owned(), json!({ "type": kind })))
}

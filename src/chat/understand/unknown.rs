//! Names in a crop's place that the catalogue does not know.

use super::line::{Item, ItemLine, Sort};
use super::pattern::Line;
use super::phrases::Phrases;
use super::words::Pause;

/// An unknown name is at most this many words long.
const LONGEST: usize = 3;

/// Marks the unknown names of a question: after a verb of starting ("start quinoa"), in a list
/// with other crops, or as all that was written.
pub(crate) fn mark_unknown_names(line: &mut ItemLine, phrases: &Phrases) {
    let mut places: Vec<usize> = Vec::new();
    for at in 0..line.items.len() {
        places.extend(phrases.asked_after.iter().filter_map(|lead| lead.shortest(line, at)));
        places.extend(after_a_crop(line, at, phrases));
    }
    for at in 0..line.items.len() {
        if phrases.asked_before.iter().any(|verb| verb.shortest(line, at).is_some()) {
            places.extend(before_a_verb(line, at, phrases));
        }
    }
    places.sort_unstable();
    places.dedup();
    let mut unknown: Vec<(usize, usize)> = Vec::new();
    let mut place = 0;
    while let Some(start) = places.get(place).copied() {
        place += 1;
        let Some((from, to)) = name_at(line, start, phrases) else { continue };
        if unknown.last().is_some_and(|(_, end)| *end > from) {
            continue;
        }
        unknown.push((from, to));
        // The list may go on: "quinoa, teff and millet".
        if let Some(next) = after_a_name(line, to, phrases) {
            places.insert(place, next);
        }
    }
    if unknown.is_empty() && !line.has(Sort::Crops) {
        unknown.extend(all_that_was_written(line, phrases));
    }
    merge(line, &unknown);
}

/// The place of the strange words that end before a verb at `end`: "kann ich Quinoa säen".
fn before_a_verb(line: &ItemLine, end: usize, phrases: &Phrases) -> Option<usize> {
    let strange = |at: usize| {
        let word = line.plain_word(at)?;
        (phrases.may_be_a_name(word) && word.pause == Pause::None).then_some(at)
    };
    let within = (end.saturating_sub(LONGEST)..end).rev();
    within.map_while(strange).last()
}

/// The item after a crop and a comma or "and".
fn after_a_crop(line: &ItemLine, at: usize, phrases: &Phrases) -> Option<usize> {
    let crop = line.items.get(at)?.sort == Sort::Crops;
    if crop { after_a_name(line, at + 1, phrases) } else { None }
}

/// The place after a comma or "and" at `end`.
fn after_a_name(line: &ItemLine, end: usize, phrases: &Phrases) -> Option<usize> {
    let pause = line.pause(end.checked_sub(1)?)?;
    let and = line.word(end).is_some_and(|id| phrases.and.contains(&id));
    match pause {
        Pause::Sentence => None,
        _ if and => Some(end + 1),
        Pause::Clause => Some(end),
        Pause::None => None,
    }
}

/// The unknown name that begins at `start` or after its small words.
fn name_at(line: &ItemLine, start: usize, phrases: &Phrases) -> Option<(usize, usize)> {
    let mut from = start;
    while line.word(from).is_some_and(|id| phrases.before_names.contains(&id)) {
        if line.pause(from) == Some(Pause::Sentence) {
            return None;
        }
        from += 1;
    }
    let over_a_sentence = |at: usize| {
        at.checked_sub(1).and_then(|before| line.pause(before)) == Some(Pause::Sentence)
    };
    if over_a_sentence(from) {
        return None;
    }
    let mut to = from;
    while to < from + LONGEST {
        let Some(word) = line.plain_word(to) else { break };
        let fits =
            if phrases.may_continue_a_name(word) { to > from } else { phrases.may_be_a_name(word) };
        if !fits {
            break;
        }
        to += 1;
        if word.pause != Pause::None {
            break;
        }
    }
    if to == from {
        return None;
    }
    // Before a crop it is a variety: "Brandywine tomatoes".
    let unbroken = line.pause(to - 1) == Some(Pause::None);
    let crop_follows = line.items.get(to).is_some_and(|item| item.sort == Sort::Crops);
    if unbroken && crop_follows { None } else { Some((from, to)) }
}

/// One or two strange words beside nothing but phrase words and dates.
fn all_that_was_written(line: &ItemLine, phrases: &Phrases) -> Option<(usize, usize)> {
    let known = |at: usize| match line.items.get(at).map(|item| item.sort) {
        Some(Sort::Word) => line.word(at).is_some(),
        Some(Sort::Date) => true,
        _ => false,
    };
    let from = (0..line.items.len()).find(|at| !known(*at))?;
    let to = (from..line.items.len()).find(|at| known(*at)).unwrap_or(line.items.len());
    let strange = |at: usize| line.plain_word(at).is_some_and(|word| phrases.may_be_a_name(word));
    let short = to - from <= 2 && line.items.len() <= LONGEST + 1;
    let alone = (to..line.items.len()).all(known) && (from..to).all(strange);
    (short && alone).then_some((from, to))
}

fn merge(line: &mut ItemLine, unknown: &[(usize, usize)]) {
    let mut items: Vec<Item> = Vec::with_capacity(line.items.len());
    let mut names = unknown.iter().copied().peekable();
    for (at, item) in line.items.iter().enumerate() {
        while names.peek().is_some_and(|(_, to)| at >= *to) {
            names.next();
        }
        match names.peek() {
            Some((from, _)) if at == *from => items.push(Item { sort: Sort::Unknown, ..*item }),
            Some((from, _)) if at > *from => {
                if let Some(last) = items.last_mut() {
                    last.to = item.to;
                }
            }
            _ => items.push(*item),
        }
    }
    line.items = items;
}

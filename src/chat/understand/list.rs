//! A list of crops, as in "/grow tomato, basil and pole beans".

use super::crops::{NameFinder, Named, as_written, joined};
use super::phrases::Phrases;
use super::words::{Pause, Word};
use super::{CropList, UnknownName};
use crate::planning::CropId;

/// Reads a list: commas, "and" and line ends separate, and each piece is a crop's name.
pub(crate) fn read(words: &[Word], names: &NameFinder, phrases: &Phrases) -> CropList {
    let mut list = CropList::default();
    for piece in words.split_inclusive(|word| word.pause != Pause::None) {
        // "cut and come again lettuce" is one name, so the whole piece is tried first.
        if !add_named(piece, names, phrases, &mut list) {
            let is_and = |word: &Word| word.id.is_some_and(|id| phrases.and.contains(&id));
            for part in piece.split(is_and) {
                if !add_named(part, names, phrases, &mut list) {
                    add_unknown(part, names, phrases, &mut list);
                }
            }
        }
    }
    list
}

/// Adds what the piece names; whether it names anything, or is empty.
fn add_named(piece: &[Word], names: &NameFinder, phrases: &Phrases, list: &mut CropList) -> bool {
    if piece.is_empty() {
        return true;
    }
    let named = names.named(piece, phrases);
    let bare = bare(piece, phrases);
    let named = named.or_else(|| names.named(bare, phrases));
    if let Some(named) = named {
        add(named, piece, list);
        return true;
    }
    // Names with nothing but spaces between them: "tomato basil leek".
    let mentions = names.mentions(bare, phrases);
    let covered: usize = mentions.iter().map(|mention| mention.to - mention.from).sum();
    let all_known = mentions.iter().all(|m| matches!(m.named, Named::Known(_)));
    if bare.is_empty() || covered < bare.len() || !all_known {
        return false;
    }
    for mention in mentions {
        add(mention.named, bare, list);
    }
    true
}

/// The piece without a leading number or "some", "my", and without the "seeds" behind its name.
fn bare<'a>(piece: &'a [Word], phrases: &Phrases) -> &'a [Word] {
    let small = |word: &Word| {
        word.has_digit() || word.id.is_some_and(|id| phrases.before_names.contains(&id))
    };
    let from = piece.iter().position(|word| !small(word)).unwrap_or(piece.len());
    let rest = piece.get(from..).unwrap_or_default();
    let behind = |word: &Word| word.id.is_some_and(|id| phrases.behind_names.contains(&id));
    let to = rest.iter().rposition(|word| !behind(word)).map_or(rest.len(), |last| last + 1);
    rest.get(..to).unwrap_or_default()
}

fn add(named: Named<'_>, piece: &[Word], list: &mut CropList) {
    match named {
        Named::Known(meaning) => list.add_meaning(meaning),
        Named::Between(near) => {
            list.add_unknown(UnknownName { written: as_written(piece), near });
        }
        Named::NoCrop => {
            list.add_unknown(UnknownName { written: as_written(piece), near: Vec::new() });
        }
    }
}

fn add_unknown(part: &[Word], names: &NameFinder, phrases: &Phrases, list: &mut CropList) {
    let bare = bare(part, phrases);
    if bare.is_empty() {
        return;
    }
    // "Brandywine tomato" is not on the list, but tomato is what to offer.
    let mut inside = CropList::default();
    for mention in names.mentions(bare, phrases) {
        add(mention.named, bare, &mut inside);
    }
    let mut near: Vec<CropId> = inside.found;
    near.extend(inside.ambiguous.into_iter().flat_map(|word| word.means));
    near.extend(names.offered(&joined(bare)));
    list.add_unknown(UnknownName { written: as_written(bare), near: first_three(near) });
}

fn first_three(near: Vec<CropId>) -> Vec<CropId> {
    let mut kept: Vec<CropId> = Vec::new();
    for crop in near {
        if kept.len() < 3 && !kept.contains(&crop) {
            kept.push(crop);
        }
    }
    kept
}

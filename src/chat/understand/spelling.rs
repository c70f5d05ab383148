//! Names that are near to what was written.

use crate::catalogue::{Meaning, Names};
use crate::planning::CropId;

/// How many names are offered for an unknown one.
const OFFERED: usize = 3;

/// Longer words are nobody's crop.
const LONGEST_NAME: usize = 40;

/// Every name with what makes a comparison cheap.
#[derive(Debug)]
pub(crate) struct Spelling {
    names: Vec<Name>,
}

#[derive(Debug)]
struct Name {
    text: String,
    letters: usize,
    letter_set: u64,
    crops: Vec<CropId>,
}

/// The name or names nearest to what was written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Nearest {
    /// The text of the nearest name.
    pub name: String,
    /// Crops of names that are equally near, each once; empty where `name` alone is nearest.
    pub rivals: Vec<CropId>,
}

/// How many slips of the pen a word of so many letters may hold: one from five letters, two
/// from eight.
fn slips_allowed(letters: usize) -> usize {
    match letters {
        0..5 => 0,
        5..8 => 1,
        _ => 2,
    }
}

/// The letters of a word as a set: one slip changes at most two members of it.
fn letter_set(word: &str) -> u64 {
    word.chars().fold(0, |set, letter| set | 1 << (u32::from(letter) % 64))
}

fn crops_of(meaning: &Meaning) -> Vec<CropId> {
    match meaning {
        Meaning::Crop(id) => vec![id.clone()],
        Meaning::Ambiguous(word) => word.means.clone(),
    }
}

impl Spelling {
    /// Prepares the names.
    pub fn new(names: &Names) -> Self {
        let mut prepared: Vec<Name> = names
            .words()
            .filter_map(|text| {
                let crops = crops_of(names.lookup(text)?);
                let letters = text.chars().count();
                Some(Name { text: text.to_owned(), letters, letter_set: letter_set(text), crops })
            })
            .collect();
        prepared.sort_by(|a, b| (a.letters, &a.text).cmp(&(b.letters, &b.text)));
        Self { names: prepared }
    }

    /// The nearest name within the slips that a word of this length may hold.
    ///
    /// `fits` may refuse a name.
    pub fn nearest(&self, written: &str, fits: impl Fn(&str) -> bool) -> Option<Nearest> {
        let letters = written.chars().count();
        let near = self.within(written, slips_allowed(letters), fits);
        let least = near.iter().map(|(slips, _)| *slips).min()?;
        let mut nearest: Vec<&Name> =
            near.into_iter().filter(|(slips, _)| *slips == least).map(|(_, name)| name).collect();
        // A name of one crop comes before a word that may mean many, so that all are offered.
        nearest.sort_by_key(|name| name.crops.len());
        let first = nearest.first()?;
        let mut rivals: Vec<CropId> = Vec::new();
        if nearest.iter().any(|other| other.crops != first.crops) {
            for crop in nearest.iter().flat_map(|name| &name.crops) {
                if !rivals.contains(crop) {
                    rivals.push(crop.clone());
                }
            }
            rivals.truncate(OFFERED);
        }
        Some(Nearest { name: first.text.clone(), rivals })
    }

    /// Up to three crops with names like `written`, the nearest first, for "did you mean".
    pub fn offered(&self, written: &str) -> Vec<CropId> {
        let letters = written.chars().count();
        // A third of the letters may differ: enough to recognise a name, too loose to decide.
        let mut near = self.within(written, (letters / 3).clamp(1, 3), |_| true);
        near.sort_by(|(a, name), (b, other)| (a, &name.crops).cmp(&(b, &other.crops)));
        let mut crops: Vec<CropId> = Vec::new();
        for crop in near.into_iter().flat_map(|(_, name)| &name.crops) {
            if !crops.contains(crop) {
                crops.push(crop.clone());
            }
        }
        crops.truncate(OFFERED);
        crops
    }

    fn within(
        &self,
        written: &str,
        slips: usize,
        fits: impl Fn(&str) -> bool,
    ) -> Vec<(usize, &Name)> {
        let letters = written.chars().count();
        if slips == 0 || letters > LONGEST_NAME {
            return Vec::new();
        }
        let set = letter_set(written);
        let from = self.names.partition_point(|name| name.letters + slips < letters);
        self.names
            .iter()
            .skip(from)
            .take_while(|name| name.letters <= letters + slips)
            .filter(|name| (name.letter_set ^ set).count_ones() as usize <= 2 * slips)
            .filter(|name| fits(&name.text))
            .map(|name| (strsim::damerau_levenshtein(written, &name.text), name))
            .filter(|(distance, _)| *distance <= slips)
            .collect()
    }
}

/// Whether `written` is `meant` with a slip: one slip from five letters, in shorter words only
/// two neighbouring letters the wrong way round.
pub(crate) fn slip_of(written: &str, meant: &str) -> bool {
    let letters = written.chars().count();
    let other = meant.chars().count();
    if letters < 3 || letters.abs_diff(other) > 1 || letters > LONGEST_NAME {
        return false;
    }
    if letters >= 5 {
        let differing = (letter_set(written) ^ letter_set(meant)).count_ones();
        return differing <= 2 && strsim::damerau_levenshtein(written, meant) == 1;
    }
    letters == other
        && letter_set(written) == letter_set(meant)
        && strsim::damerau_levenshtein(written, meant) == 1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn short_words_may_only_be_turned_round() {
        assert!(slip_of("cna", "can"));
        assert!(slip_of("whne", "when"));
        assert!(!slip_of("cat", "can"));
        assert!(slip_of("tommorrow", "tomorrow"));
        assert!(slip_of("strat", "start"));
        assert!(!slip_of("start", "start"));
        assert!(!slip_of("strain", "start"));
    }
}

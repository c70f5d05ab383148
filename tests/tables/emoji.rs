//! What every language calls the crops, against what Unicode CLDR calls the plants that have an
//! emoji: an independent list of everyday words.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use sowbell::catalogue::{Catalogue, Meaning, Names, normalise};
use sowbell::planning::CropId;

use super::catalogue;
use super::csv::rows;

const ANNOTATIONS: &str = include_str!("../fixtures/cldr_annotations.csv");

/// The languages of the table's columns, behind the emoji and the crop.
const COLUMNS: [&str; 4] = ["en", "de", "es", "fr"];

/// The languages that have a folder under `locales`, with the names of the crops.
fn languages(catalogue: &Catalogue) -> Vec<(String, Names)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("locales");
    let mut found: Vec<(String, Names)> = fs::read_dir(folder)
        .expect("the folder of the locales")
        .map(|entry| {
            let path = entry.expect("a folder").path();
            let language = path.file_name().expect("a name").to_string_lossy().into_owned();
            let text = fs::read_to_string(path.join("crops.toml"))
                .unwrap_or_else(|error| panic!("locales/{language}/crops.toml: {error}"));
            let names = Names::from_toml(&text, catalogue)
                .unwrap_or_else(|error| panic!("locales/{language}/crops.toml: {error}"));
            (language, names)
        })
        .collect();
    found.sort_by(|one, other| one.0.cmp(&other.0));
    found
}

/// What is wrong with how `word` is understood, if anything: `expected` are the crops that the
/// table says it means.
fn fault(word: &str, understood: Option<&Meaning>, expected: &BTreeSet<CropId>) -> Option<String> {
    let means: BTreeSet<CropId> = match understood {
        None => BTreeSet::new(),
        Some(Meaning::Crop(id)) => BTreeSet::from([id.clone()]),
        Some(Meaning::Ambiguous(word)) => word.means.iter().cloned().collect(),
    };
    // A word may mean more than the emoji shows, and is then asked about; a word for none of our
    // crops must mean none.
    let right = if expected.is_empty() { means.is_empty() } else { means.is_superset(expected) };
    (!right).then(|| format!("{word} means {means:?} and should mean {expected:?}"))
}

#[test]
fn the_words_of_unicode_cldr_are_understood() {
    let catalogue = catalogue();
    let languages = languages(&catalogue);
    assert!(languages.iter().any(|(language, _)| language == "en"));
    for (language, names) in languages {
        let column = COLUMNS
            .iter()
            .position(|column| *column == language)
            .unwrap_or_else(|| panic!("cldr_annotations.csv has no column for {language}"));
        let mut faults = Vec::new();
        let mut held = 0;
        for row in rows(ANNOTATIONS) {
            let ids = row.fields[0].split(' ').filter(|id| *id != "-");
            let expected: BTreeSet<CropId> = ids
                .map(|id| catalogue.get(id).expect("a crop of the catalogue").id.clone())
                .collect();
            for word in row.fields[column + 1].split('|').filter(|word| !word.is_empty()) {
                held += 1;
                faults.extend(fault(word, names.lookup(&normalise(word)), &expected));
            }
        }
        assert!(faults.is_empty(), "{language}: {faults:#?}");
        // The table has 46 rows, most of them with a word in each language.
        assert!(held >= 40, "only {held} words in {language}");
    }
}

#[test]
fn a_wrong_meaning_is_a_fault() {
    let names = Names::english(&catalogue()).expect("sound names");
    let fault = |word: &str, ids: &[&str]| {
        let expected = ids.iter().map(|id| CropId::new(*id)).collect();
        fault(word, names.lookup(word), &expected).is_some()
    };
    assert!(!fault("corn", &["sweet_corn"]));
    assert!(fault("corn", &["tomato"]));
    assert!(fault("corn", &[]));
    assert!(fault("strawberry", &["tomato"]));
    assert!(!fault("strawberry", &[]));
    assert!(!fault("beans", &["bush_bean", "pole_bean"]));
    assert!(fault("beans", &["bush_bean", "lima_bean"]));
    // Understood as one crop where it means several.
    assert!(fault("bush beans", &["bush_bean", "pole_bean"]));
}

//! The index from words to the crops they mean.

use indexmap::IndexMap;

use super::names::{AmbiguousWord, CropName, Meaning, normalise};
use super::{Catalogue, CatalogueError};
use crate::planning::CropId;

/// The index from words to meanings. Ambiguous words come first: they overrule the name and the
/// id of a crop, but an alias that repeats one is a slip.
pub(super) fn index(
    text: &str,
    names: &IndexMap<CropId, CropName>,
    ambiguous: Vec<AmbiguousWord>,
    catalogue: &Catalogue,
) -> Result<IndexMap<String, Meaning>, CatalogueError> {
    let mut index: IndexMap<String, Meaning> = IndexMap::new();
    for entry in ambiguous {
        let at = |what: String| {
            let line = line_of(text, &format!("word = \"{}\"", entry.word));
            CatalogueError(format!("ambiguous word '{}', line {line}: {what}", entry.word))
        };
        if entry.means.is_empty() {
            return Err(at("it means no crop; list in means what it may be".to_owned()));
        }
        if let Some(unknown) = entry.means.iter().find(|id| catalogue.get(id.as_str()).is_none()) {
            return Err(at(format!("the catalogue has no crop '{unknown}'; correct means")));
        }
        if entry.means.len() == 1 && entry.outside.is_none() {
            return Err(at(
                "it has one meaning; make it an alias or say what is outside".to_owned()
            ));
        }
        let (word, plural) = (normalise(&entry.word), normalise(&entry.plural));
        for words in [word, plural] {
            let meaning = Meaning::Ambiguous(entry.clone());
            let before = index.insert(words.clone(), meaning.clone());
            if before.is_some_and(|before| before != meaning) {
                return Err(at(format!("'{words}' is listed twice; keep one entry")));
            }
        }
    }
    for (id, name) in names {
        for words in [&name.name, &name.plural] {
            let words = normalise(words);
            match index.get(&words) {
                Some(Meaning::Crop(other)) if other != id => {
                    return Err(claimed_twice(text, id, &words, other.as_str()));
                }
                Some(_) => {}
                None => {
                    index.insert(words, Meaning::Crop(id.clone()));
                }
            }
        }
    }
    for (id, name) in names {
        for alias in &name.aliases {
            let words = normalise(alias);
            if words.is_empty() {
                return Err(wrong(text, id.as_str(), "an alias is empty; take it out"));
            }
            match index.get(&words) {
                Some(Meaning::Crop(other)) if other == id => {}
                Some(Meaning::Crop(other)) => {
                    return Err(claimed_twice(text, id, &words, other.as_str()));
                }
                Some(Meaning::Ambiguous(_)) => {
                    return Err(claimed_twice(text, id, &words, "the ambiguous words"));
                }
                None => {
                    index.insert(words, Meaning::Crop(id.clone()));
                }
            }
        }
    }
    Ok(index)
}

fn claimed_twice(text: &str, id: &CropId, words: &str, other: &str) -> CatalogueError {
    let what = format!(
        "'{words}' is claimed by {other} as well; keep it in one place, or list it as ambiguous"
    );
    wrong(text, id.as_str(), &what)
}

pub(super) fn wrong(text: &str, id: &str, what: &str) -> CatalogueError {
    let line = line_of(text, &format!("[{id}]"));
    CatalogueError(format!("names of '{id}', line {line}: {what}"))
}

/// The first line (from 1) that begins with `start`, or the first line where none does.
pub(super) fn line_of(text: &str, start: &str) -> usize {
    text.lines().position(|line| line.trim_start().starts_with(start)).map_or(1, |at| at + 1)
}

#[cfg(test)]
mod tests {
    use super::super::Names;
    use super::*;

    /// A catalogue of four crops: the built-in one has all four.
    fn small() -> Catalogue {
        let mut catalogue = Catalogue::embedded().expect("sound");
        let four = ["tomato", "summer_squash", "winter_squash", "geranium"];
        catalogue.crops.retain(|id, _| four.contains(&id.as_str()));
        catalogue
    }

    const SOUND: &str = r#"[tomato]
name = "tomato"
plural = "tomatoes"
aliases = ["love apple"]

[summer_squash]
name = "courgette"
plural = "courgettes"
aliases = ["zucchini", "patty-pan"]

[winter_squash]
name = "winter squash"
plural = "winter squashes"
aliases = ["crème squash"]

[geranium]
name = "geranium"
plural = "geraniums"
aliases = []

[[ambiguous]]
word = "squash"
plural = "squashes"
means = ["summer_squash", "winter_squash"]

[[ambiguous]]
word = "geranium"
plural = "geraniums"
means = ["geranium"]
outside = "hardy cranesbill"
"#;

    fn crop(id: &str) -> Meaning {
        Meaning::Crop(CropId::new(id))
    }

    #[test]
    fn every_way_of_writing_a_crop_is_found() {
        let names = Names::from_toml(SOUND, &small()).expect("sound");
        for (words, id) in [
            ("Tomatoes", "tomato"),
            ("love-apple", "tomato"),
            ("Patty Pan", "summer_squash"),
            ("Creme  Squash", "winter_squash"),
        ] {
            assert_eq!(names.lookup(&normalise(words)), Some(&crop(id)), "{words}");
        }
        assert_eq!(names.lookup("potato"), None);
        // An id is no word: "beet" is a garden bed in German, and "sage" is wise in French.
        assert_eq!(names.lookup("summer squash"), None);
        assert_eq!(names.longest_words(), 2);
        assert!(names.words().any(|words| words == "patty pan"));
        assert_eq!(names.entries().count(), names.words().count());
    }

    #[test]
    fn an_ambiguous_word_overrules_the_name_of_a_crop() {
        let names = Names::from_toml(SOUND, &small()).expect("sound");
        let Some(Meaning::Ambiguous(word)) = names.lookup("geraniums") else {
            panic!("geraniums may be cranesbills")
        };
        assert_eq!(word.outside.as_deref(), Some("hardy cranesbill"));
        assert_eq!(names.name(&CropId::new("geranium")), "geranium");
        let Some(Meaning::Ambiguous(word)) = names.lookup("squash") else {
            panic!("squash may be two crops")
        };
        assert_eq!(word.means, [CropId::new("summer_squash"), CropId::new("winter_squash")]);
    }

    /// Breaks the names and holds the message to the entry, the line and the advice.
    fn broken(from: &str, to: &str, begin: &str, advice: &str) {
        assert!(SOUND.contains(from), "the sound names have no {from}");
        let text = SOUND.replacen(from, to, 1);
        let message = Names::from_toml(&text, &small()).expect_err("broken names").to_string();
        assert!(message.starts_with(begin), "{begin} expected, got: {message}");
        assert!(message.contains(advice), "'{advice}' expected in: {message}");
    }

    #[test]
    fn an_alias_belongs_to_one_crop() {
        let squash = "names of 'winter_squash', line 11: 'zucchini'";
        broken("crème squash", "Zucchini", squash, "claimed by summer_squash");
        let tomato = "names of 'tomato', line 1: 'squash'";
        broken("love apple", "squash", tomato, "claimed by the ambiguous words");
        let name = "names of 'summer_squash', line 6: 'tomato'";
        broken("name = \"courgette\"", "name = \"tomato\"", name, "claimed by tomato");
        broken("love apple", "'", "names of 'tomato', line 1: an alias is empty", "take it out");
    }

    #[test]
    fn names_and_crops_must_match() {
        let missing = "crop 'geranium' has no name";
        let entry = "[geranium]\nname = \"geranium\"\nplural = \"geraniums\"\naliases = []\n";
        broken(entry, "", missing, "add an entry [geranium]");
        let unknown = "names of 'tomatoe', line 1: the catalogue has no such crop";
        broken("[tomato]", "[tomatoe]", unknown, "correct the id");
        let plural = "names of 'tomato', line 1: missing field";
        broken("plural = \"tomatoes\"\n", "", plural, "`plural`");
        broken("\"tomatoes\"", "\" \"", "names of 'tomato', line 1: a name is empty", "write one");
        broken("name = \"tomato\"", "name = \"tomato", "line 2: ", "");
    }

    #[test]
    fn an_ambiguous_word_must_mean_two_things_we_can_name() {
        let means = "means = [\"geranium\"]";
        let begin = "ambiguous word 'geranium', line 27: ";
        broken(means, "means = []", begin, "list in means");
        broken(means, "means = [\"cranesbill\"]", begin, "no crop 'cranesbill'");
        broken("outside = \"hardy cranesbill\"\n", "", begin, "say what is outside");
        broken("plural = \"squashes\"", "plural = \"geranium\"", begin, "listed twice");
        broken("outside =", "elsewhere =", "[[ambiguous]], from line 21: ", "`elsewhere`");
    }
}

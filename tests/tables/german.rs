//! The German names and messages: what Austria calls things by treaty, what gardeners of the three
//! countries say, and the grammar that lets any crop stand in any sentence.

use std::fs;
use std::path::Path;

use sowbell::catalogue::{Meaning, Names, normalise};
use sowbell::planning::CropId;

use super::catalogue;

fn german() -> Names {
    Names::from_toml(&file("crops.toml"), &catalogue()).expect("sound names")
}

fn file(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("locales/de").join(name);
    fs::read_to_string(path).expect("a file of the locale")
}

/// The crops that a word means, parted by spaces; nothing where it means none.
fn means(names: &Names, words: &str) -> String {
    match names.lookup(&normalise(words)) {
        None => String::new(),
        Some(Meaning::Crop(id)) => id.to_string(),
        Some(Meaning::Ambiguous(word)) => {
            word.means.iter().map(CropId::as_str).collect::<Vec<_>>().join(" ")
        }
    }
}

#[test]
fn the_austrian_words_of_the_treaty_of_accession_are_understood() {
    // Act of Accession of Austria to the European Union, 1994, Protocol No 10 on the use of
    // specifically Austrian terms: those of its 23 words that name plants or what looks like one.
    let names = german();
    for (austrian, german) in [
        ("Erdäpfel", "Kartoffeln"),
        ("Fisolen", "Grüne Bohnen"),
        ("Karfiol", "Blumenkohl"),
        ("Kohlsprossen", "Rosenkohl"),
        ("Melanzani", "Aubergine"),
        ("Paradeiser", "Tomaten"),
        ("Vogerlsalat", "Feldsalat"),
    ] {
        assert!(!means(&names, german).is_empty(), "{german}");
        assert_eq!(means(&names, austrian), means(&names, german), "{austrian}");
    }
    for other in ["Eierschwammerl", "Kren", "Marillen", "Ribisel", "Weichseln", "Topfen", "Powidl"]
    {
        assert_eq!(means(&names, other), "", "{other}");
    }
}

#[test]
fn everyday_words_of_the_three_countries_are_understood() {
    let names = german();
    for (words, id) in [
        ("Möhren", "carrot"),
        ("Moehren", "carrot"),
        ("mohren", "carrot"),
        ("Rüebli", "carrot"),
        ("gelbe Rüben", "carrot"),
        ("Kukuruz", "sweet_corn"),
        ("Porree", "leek"),
        ("Randen", "beet"),
        ("Rote Rüben", "beet"),
        ("Rote Beete", "beet"),
        ("Weisskohl", "cabbage"),
        ("Weißkraut", "cabbage"),
        ("Kabis", "cabbage"),
        ("Federkohl", "kale"),
        ("Kefen", "pea"),
        ("Krautstiel", "chard"),
        ("Zucchetti", "summer_squash"),
        ("Peperoni", "pepper"),
        ("Suesskartoffeln", "sweet_potato"),
        ("Süsskartoffel", "sweet_potato"),
        ("Käferbohnen", "runner_bean"),
        ("Saubohnen", "broad_bean"),
        ("Häuptelsalat", "lettuce"),
        ("Schnittling", "chives"),
        ("Fleissige Lieschen", "impatiens"),
        ("Löwenmaul", "snapdragon"),
        ("Studentenblumen", "marigold"),
        ("Schmuckkörbchen", "cosmos"),
        ("Gretel im Busch", "love_in_a_mist"),
        // A false friend: the English black-eyed Susan is a rudbeckia, the German one is not.
        ("Schwarzäugige Susanne", ""),
        // A bed in the garden is no beet, and to say is no sage.
        ("Beet", ""),
        ("Beete", ""),
        ("sage", ""),
    ] {
        assert_eq!(means(&names, words), id, "{words}");
    }
}

#[test]
fn words_that_mean_several_things_are_asked_about() {
    let names = german();
    for (words, ids) in [
        ("Bohnen", "bush_bean pole_bean runner_bean"),
        ("Kürbisse", "winter_squash pumpkin"),
        ("Kuerbis", "winter_squash pumpkin"),
        ("Melonen", "melon watermelon"),
        // Steckrübe in Germany, Kohlrabi in Austria.
        ("Kohlrüben", "rutabaga kohlrabi"),
        // A head of savoy in Austria, kale in the north.
        ("Kohl", "cabbage kale"),
        // Borage or dill, after who pickles.
        ("Gurkenkraut", "borage dill"),
        ("Sellerie", "celeriac celery"),
    ] {
        assert_eq!(means(&names, words), ids, "{words}");
        let meaning = names.lookup(&normalise(words));
        assert!(matches!(meaning, Some(Meaning::Ambiguous(_))), "{words}");
    }
    for words in ["Nüsslisalat", "Rettich", "Senf", "Phlox", "Sonnenhut", "Rittersporn"] {
        let Some(Meaning::Ambiguous(word)) = names.lookup(&normalise(words)) else {
            panic!("{words} means several things")
        };
        let outside = word.outside.as_deref().unwrap_or_default();
        // It follows "für" and "Meinst du", which take the accusative.
        let article = outside.split(' ').next();
        assert!(matches!(article, Some("den" | "die" | "das")), "{words}: {outside}");
    }
}

#[test]
fn names_stand_in_nominative_and_accusative_alike() {
    let catalogue = catalogue();
    let names = german();
    for crop in catalogue.iter() {
        for name in [names.name(&crop.id), names.plural(&crop.id)] {
            assert!(name.starts_with(char::is_uppercase), "{name}");
            let mut words = name.split(' ');
            let first = words.next().unwrap_or_default();
            // "Echter Salbei" would have to become "Echten Salbei".
            let changes = words.next().is_some_and(|next| next.starts_with(char::is_uppercase))
                && ["er", "en", "em"].iter().any(|ending| first.ends_with(ending));
            assert!(!changes, "{name}");
        }
    }
}

#[test]
fn no_message_needs_a_form_that_a_word_may_not_have() {
    const DATIVE: [&str; 10] =
        ["aus", "bei", "in", "mit", "nach", "seit", "von", "vor", "zu", "innerhalb"];
    const ARTICLES: [&str; 12] = [
        "der", "die", "das", "dem", "den", "des", "ein", "eine", "einen", "einem", "einer",
        "ersten",
    ];
    // Lengths of time: "5 Tage" would have to become "in 5 Tagen".
    const LENGTHS: [&str; 6] = ["age", "behind", "best", "days", "lead", "most"];
    let mut faults = Vec::new();
    for line in file("messages.ftl").lines().filter(|line| !line.starts_with('#')) {
        for (at, _) in line.match_indices("{ $") {
            let (before, after) = line.split_at(at);
            let word = before.trim_end().rsplit([' ', '(', '„']).next().unwrap_or_default();
            let word = word.to_lowercase();
            let name = after.trim_start_matches("{ $").split(' ').next().unwrap_or_default();
            let takes_dative = DATIVE.contains(&word.as_str());
            let takes_article = ARTICLES.contains(&word.as_str());
            let fault = match name {
                "crops" | "crop" => takes_dative || takes_article,
                _ if LENGTHS.contains(&name) && !after.starts_with("{ $days ->") => takes_dative,
                _ => false,
            };
            if fault {
                faults.push(line.to_owned());
            }
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

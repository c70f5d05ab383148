//! What French-speaking gardeners say, against what the French names and texts make of it.
//!
//! The regional words are common usage; that of Québec (fève, échalote, navet) is from memory.

use sowbell::catalogue::{Meaning, Names, normalise};

use crate::catalogue;

const TEXTS: &str = include_str!("../../locales/fr/messages.ftl");
const NARROW: char = '\u{202f}';

fn names() -> Names {
    let text = include_str!("../../locales/fr/crops.toml");
    Names::from_toml(text, &catalogue()).expect("the French names are sound")
}

fn means(names: &Names, written: &str) -> Vec<String> {
    match names.lookup(&normalise(written)) {
        None => Vec::new(),
        Some(Meaning::Crop(id)) => vec![id.to_string()],
        Some(Meaning::Ambiguous(word)) => word.means.iter().map(ToString::to_string).collect(),
    }
}

#[test]
fn regional_words_mean_the_same_crop_with_and_without_accents() {
    let names = names();
    for (written, crop) in [
        ("blé d’Inde", "sweet_corn"),
        ("maïs", "sweet_corn"),
        ("Zucchini", "summer_squash"),
        ("courgettes", "summer_squash"),
        ("piment", "pepper"),
        ("poivrons", "pepper"),
        ("carottes rouges", "beet"),
        ("côtes de bettes", "chard"),
        ("poiree", "chard"),
        ("rabiole", "turnip"),
        ("chou de Siam", "rutabaga"),
        ("gourganes", "broad_bean"),
        ("melon d'eau", "watermelon"),
        ("céleri-pomme", "celeriac"),
        ("colrave", "kohlrabi"),
        ("choux raves", "kohlrabi"),
        ("patates", "potato"),
        ("aulx", "garlic"),
        ("oeillet d'Inde", "marigold"),
        ("œillets d’inde", "marigold"),
        ("cébettes", "scallion"),
        ("rucola", "arugula"),
        ("gueules-de-loup", "snapdragon"),
    ] {
        assert_eq!(means(&names, written), [crop], "{written}");
    }
}

#[test]
fn a_word_with_two_meanings_is_asked_about() {
    let names = names();
    for (written, crops) in [
        ("fève", &["broad_bean", "bush_bean", "pole_bean"][..]),
        ("haricots", &["bush_bean", "pole_bean", "runner_bean"]),
        ("échalote", &["shallot", "scallion"]),
        ("navets", &["turnip", "rutabaga"]),
        ("courges", &["winter_squash", "pumpkin", "summer_squash"]),
        ("céleri", &["celery", "celeriac"]),
        ("chou chinois", &["chinese_cabbage", "bok_choy"]),
        ("oeillets", &["carnation", "marigold"]),
        ("sauge", &["sage", "salvia"]),
    ] {
        assert_eq!(means(&names, written), crops, "{written}");
    }
    for written in ["endive", "chicons", "witloof", "bleuet", "géranium", "pois chiches"] {
        let meaning = names.lookup(&normalise(written));
        let outside = matches!(meaning, Some(Meaning::Ambiguous(word)) if word.outside.is_some());
        assert!(outside, "{written} may be something that the catalogue does not hold");
    }
}

#[test]
fn every_name_has_its_article_in_a_sentence() {
    let names = names();
    for crop in catalogue().iter() {
        let told = names.in_sentence(&crop.id);
        let bare =
            ["les ", "le ", "la ", "l’"].iter().find_map(|article| told.strip_prefix(article));
        let bare = bare.unwrap_or_else(|| panic!("{told} has no article"));
        let both = [names.name(&crop.id), names.plural(&crop.id)];
        // The bed of curly endives holds escaroles too, and a name may stay in the singular.
        assert!(both.iter().any(|name| bare.starts_with(name)), "{told} is none of {both:?}");
        let silent = bare.starts_with(['a', 'e', 'é', 'i', 'o', 'œ', 'u']);
        assert_eq!(told.starts_with("l’"), silent && !told.starts_with("les "), "{told}");
    }
}

/// The texts of the messages, a line each with its number; comments and empty lines left out.
fn lines() -> impl Iterator<Item = (usize, &'static str)> {
    let lines = TEXTS.lines().enumerate().map(|(index, line)| (index + 1, line));
    lines.filter(|(_, line)| !line.is_empty() && !line.starts_with('#'))
}

#[test]
fn punctuation_stands_as_the_french_set_it() {
    for (number, line) in lines() {
        assert!(!line.contains('\''), "line {number}: an apostrophe that is not curved");
        let signs: Vec<char> = line.chars().collect();
        for (at, sign) in signs.iter().enumerate() {
            let (before, after) = (at.checked_sub(1).map(|at| signs[at]), signs.get(at + 1));
            match sign {
                // The time 7:00 has no space.
                ':' if before.is_some_and(char::is_numeric) => {}
                ':' | ';' | '?' | '!' | '»' => {
                    assert_eq!(before, Some(NARROW), "line {number}: before {sign}");
                }
                '«' => assert_eq!(after, Some(&NARROW), "line {number}: after {sign}"),
                '“' | '”' | '"' if !line.contains("{ \"") && !line.contains("{\"") => {
                    panic!("line {number}: {sign} is not how the French quote")
                }
                _ => {}
            }
        }
    }
}

#[test]
fn nothing_stands_before_a_crop_that_melts_with_its_article() {
    for (number, line) in lines() {
        for word in ["de", "à", "du", "des", "au", "aux", "le", "la", "les", "un", "une", "tes"] {
            let slot = format!(" {word} {{ $crops }}");
            assert!(!line.contains(&slot), "line {number}: «{slot} » with an article after it");
        }
    }
}

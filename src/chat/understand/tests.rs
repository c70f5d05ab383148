use chrono::NaiveDate;
use proptest::prelude::*;

use super::*;

/// The tests share one understanding: building it takes a while in a debug build.
pub(super) fn english() -> &'static Understanding {
    static ENGLISH: std::sync::OnceLock<Understanding> = std::sync::OnceLock::new();
    ENGLISH.get_or_init(|| {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        Understanding::english(&catalogue).expect("the English phrases")
    })
}

#[test]
fn a_question_for_the_day_of_harvest_is_told_from_one_for_the_verdict() {
    let today = "2026-04-15".parse().expect("a date");
    for (question, when) in [
        ("when can I harvest tomatoes?", true),
        ("how long until my radishes are ripe", true),
        ("when will my tomatoes be ripe", true),
        ("will pumpkins ripen?", false),
        ("can i get a crop of beets before the first frost", false),
    ] {
        let understood = english().understand(question, today);
        assert_eq!(
            (understood.intent, understood.asks_when),
            (Intent::WillItRipen, when),
            "{question}"
        );
    }
}

#[test]
fn a_temperature_without_its_scale_is_in_the_readers_unless_that_cannot_be() {
    use crate::club::Units::{Customary, Metric};
    let celsius = |text: &str, units| {
        let temperature = english().understand(text, NaiveDate::default()).quantities.temperature;
        temperature.expect("a temperature").celsius(units)
    };
    for (text, units, want) in [
        ("soil is 14 degrees", Metric, 14.0),
        ("soil is 14 degrees", Customary, 14.0),
        ("soil is 59 degrees", Customary, 15.0),
        ("soil is 59 degrees", Metric, 15.0),
        ("soil is 60 °C", Metric, 60.0),
        ("soil is 32F", Metric, 0.0),
        ("soil is 14 °C", Customary, 14.0),
        ("soil is 12,5 °C", Metric, 12.5),
        ("soil is -3º C", Metric, -3.0),
    ] {
        let got = celsius(text, units);
        assert!((got - want).abs() < 1e-9, "{text} in {units:?}: {got}");
    }
}

#[test]
fn ever_so_long_figures_are_only_large() {
    let got = english().understand(
        "how many basil seeds for 99999999999999999999999999 plants",
        NaiveDate::default(),
    );
    assert_eq!(got.intent, Intent::HowMany);
    assert_eq!(got.quantities.plants.expect("a figure").count(), None);
}

fn ids(crops: &[CropId]) -> Vec<&str> {
    crops.iter().map(CropId::as_str).collect()
}

#[test]
fn every_name_is_understood_as_itself() {
    let names = Names::english(&Catalogue::embedded().expect("the catalogue")).expect("the names");
    for (word, meaning) in names.entries() {
        for question in [format!("can i start {word} now"), word.to_owned()] {
            let got = english().understand(&question, NaiveDate::default());
            assert_eq!(got.intent, Intent::CanStart, "{question}");
            match meaning {
                Meaning::Crop(id) => assert_eq!(got.crops, std::slice::from_ref(id), "{question}"),
                Meaning::Ambiguous(word) => {
                    assert_eq!(got.ambiguous, std::slice::from_ref(word), "{question}");
                }
            }
            assert_eq!(got.unknown_words, [], "{question}");
        }
        let list = english().crops_in(word);
        assert!(list.unknown.is_empty(), "{word}: {list:?}");
    }
}

#[test]
fn a_slip_never_makes_another_crop_of_a_name() {
    let names = Names::english(&Catalogue::embedded().expect("the catalogue")).expect("the names");
    let mut understood = 0;
    for (name, meaning) in
        names.entries().filter(|(name, _)| name.len() >= 6 && !name.contains(' '))
    {
        for at in 0..name.len() {
            let mut slip = name.to_owned();
            slip.remove(at);
            let words = english().words(&slip, 100);
            match english().names.named(&words, english().phrases()) {
                // What is left may happen to be a name: "leeks" without its s.
                Some(Named::Known(got)) if names.lookup(&slip).is_none() => {
                    understood += 1;
                    assert_eq!(format!("{got:?}"), format!("{meaning:?}"), "{slip} for {name}");
                }
                _ => {}
            }
        }
    }
    assert!(understood > 1_000, "only {understood} slips were understood");
}

#[test]
fn ordinary_words_are_nobodys_name() {
    let names = Names::english(&Catalogue::embedded().expect("the catalogue")).expect("the names");
    let text: toml::Table =
        toml::from_str(include_str!("../../../locales/en/phrases.toml")).expect("the phrases");
    let ordinary = text["ordinary_words"].as_str().expect("a list");
    let others = text["names"]["other_plants"].as_str().expect("a list");
    for word in ordinary.split_whitespace().chain(others.split_whitespace()) {
        assert_eq!(names.lookup(word), None, "{word} is a crop's name: take it off the list");
    }
}

#[test]
fn everyday_words_are_not_read_as_misspelt_crops() {
    for word in "car bear been mind peat plan plants seed seeds bed beds garden leaf beat chars corner paper \
        theme union press stage basic meets chess means jeans snap tom"
        .split_whitespace()
    {
        let got = english().understand(word, NaiveDate::default());
        assert_eq!((got.crops, got.ambiguous, got.unknown_words), (vec![], vec![], vec![]), "{word}");
    }
}

#[test]
fn lists_of_crops() {
    let list = english().crops_in("tomato, basil and pole beans");
    assert_eq!(ids(&list.found), ["tomato", "basil", "pole_bean"]);
    assert!(list.ambiguous.is_empty() && list.unknown.is_empty());

    let list =
        english().crops_in("- Tomatoes\n- 3 cukes\n- my zuchini\n2. brocoli & tomatos + leeks");
    assert_eq!(ids(&list.found), ["tomato", "cucumber", "summer_squash", "broccoli", "leek"]);
    assert!(list.unknown.is_empty(), "{list:?}");

    let list = english().crops_in("cut-and-come-again lettuce, love in a mist, 4 o'clocks");
    assert_eq!(ids(&list.found), ["lettuce", "love_in_a_mist", "four_oclock"]);

    let list = english().crops_in("sweet corn tomato sweet pea");
    assert_eq!(ids(&list.found), ["sweet_corn", "tomato", "sweet_pea"]);

    let list = english().crops_in("beans, squash, beans");
    let words: Vec<&str> = list.ambiguous.iter().map(|word| word.word.as_str()).collect();
    assert_eq!(words, ["bean", "squash"]);
}

#[test]
fn unknown_pieces_of_a_list_come_with_names_to_offer() {
    let list = english().crops_in("Brandywine tomato, kolrabbii, my car, xyzzy, peans and basil");
    // Two slips in "kolrabi", which is how some write kohlrabi.
    assert_eq!(ids(&list.found), ["kohlrabi", "basil"]);
    let told: Vec<(&str, Vec<&str>)> =
        list.unknown.iter().map(|name| (name.written.as_str(), ids(&name.near))).collect();
    assert_eq!(
        told,
        [
            ("Brandywine tomato", vec!["tomato"]),
            ("car", vec![]),
            ("xyzzy", vec![]),
            ("peans", vec!["pea", "bush_bean", "pole_bean"]),
        ]
    );
}

#[test]
fn nothing_of_a_list_gives_nothing() {
    for empty in ["", " ", ",,,", "and", "- \n - \n", "my", "3"] {
        assert_eq!(english().crops_in(empty), CropList::default(), "{empty:?}");
    }
}

#[test]
fn a_long_text_is_read_only_at_its_beginning() {
    let far = format!("{} tomato", "x ".repeat(QUESTION_CHARACTERS));
    assert!(english().understand(&far, NaiveDate::default()).crops.is_empty());
    let near = format!("tomato {}", "x ".repeat(100_000));
    assert_eq!(ids(&english().understand(&near, NaiveDate::default()).crops), ["tomato"]);
    let word = "tomato".repeat(100_000);
    assert!(english().understand(&word, NaiveDate::default()).crops.is_empty());
}

#[test]
fn a_mistake_in_the_phrase_list_is_told_with_its_place() {
    let names =
        || Names::english(&Catalogue::embedded().expect("the catalogue")).expect("the names");
    let text = include_str!("../../../locales/en/phrases.toml");
    let broken = text.replace("\"what next\"", "\"what (next\"");
    let told = Understanding::new(&broken, names()).expect_err("a mistake").to_string();
    assert!(told.contains("what (next") && told.contains("'('"), "{told}");
    let broken = text.replace("read_as = \"next_month\"", "read_as = \"soon\"");
    let told = Understanding::new(&broken, names()).expect_err("a mistake").to_string();
    assert!(told.contains("soon") && told.contains("line"), "{told}");
}

proptest! {
    #[test]
    fn no_text_makes_it_fail(text in any::<String>(), days in any::<i32>()) {
        let today = NaiveDate::from_num_days_from_ce_opt(days).unwrap_or(NaiveDate::MAX);
        let _ = english().understand(&text, today);
        let _ = english().crops_in(&text);
    }

    #[test]
    fn no_mixture_of_phrase_words_makes_it_fail(
        words in proptest::collection::vec(
            prop_oneof![
                "[a-z]{1,9}", "[0-9]{1,5}", "[.,!?\n-]", Just("can i start".to_owned()),
                Just("in".to_owned()), Just("weeks".to_owned()), Just("may".to_owned()),
                Just("sweet".to_owned()), Just("potatos".to_owned()), Just("and".to_owned()),
                Just("the 31st of february".to_owned()), Just("when do they go out".to_owned()),
            ],
            0..60,
        ),
        latest in any::<bool>(),
    ) {
        let today = if latest { NaiveDate::MAX } else { NaiveDate::MIN };
        let text = words.join(" ");
        let got = english().understand(&text, today);
        prop_assert!(got.date_given || got.on == today);
        let mut once = got.crops.clone();
        once.sort();
        once.dedup();
        prop_assert_eq!(once.len(), got.crops.len());
        prop_assert!(got.unknown_words.iter().all(|name| name.near.len() <= 3));
        let _ = english().crops_in(&text);
    }
}

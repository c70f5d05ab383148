//! The Spanish names: what a crop is called in one country or another, and the words that mean one
//! plant here and another there.

use sowbell::catalogue::{Catalogue, Meaning, Names, normalise};

fn spanish() -> Names {
    Names::from_toml(
        include_str!("../../locales/es/crops.toml"),
        &Catalogue::embedded().expect("sound"),
    )
    .expect("sound names")
}

/// What a word means: the crops' ids, and what else it may be.
fn meant(names: &Names, written: &str) -> (Vec<String>, Option<String>) {
    match names.lookup(&normalise(written)) {
        Some(Meaning::Crop(id)) => (vec![id.to_string()], None),
        Some(Meaning::Ambiguous(word)) => {
            (word.means.iter().map(ToString::to_string).collect(), word.outside.clone())
        }
        None => (Vec::new(), None),
    }
}

// From memory, as all regional words here; the Diccionario de americanismos (ASALE) is where to look
// them up.
#[test]
fn every_country_finds_its_own_word() {
    let names = spanish();
    for (words, crop) in [
        ("tomate jitomate jitomates tomates", "tomato"),
        ("pimiento chile chiles ají ajíes ajies morrón morron morrones locote chiltoma", "pepper"),
        (
            "calabacín calabacines calabacin calabacita calabacitas zapallito zapallitos",
            "summer_squash",
        ),
        ("patata patatas papa papas", "potato"),
        ("maíz maiz choclo choclos elote elotes jojoto", "sweet_corn"),
        ("guisante guisantes arveja arvejas alverja chícharo chícharos chicharos", "pea"),
        ("remolacha betabel betabeles beterraga betarraga", "beet"),
        ("batata batatas camote camotes boniato boniatos", "sweet_potato"),
        ("sandía sandia patilla", "watermelon"),
        ("alcachofa alcaucil alcauciles", "artichoke"),
        ("rúcula rucula rúgula arúgula", "arugula"),
        ("puerro puerros poro poros", "leek"),
        ("rábano rabano rabanito rabanitos", "radish"),
        ("menta hierbabuena yerbabuena", "mint"),
        ("melisa toronjil", "lemon_balm"),
        ("lavanda espliego alhucema", "lavender"),
        ("tagete tagetes cempasúchil cempasuchil copete copetes", "marigold"),
        ("geranio geranios malvón malvones", "geranium"),
        ("caléndula calendula", "calendula"),
    ] {
        for word in words.split(' ') {
            assert_eq!(meant(&names, word), (vec![crop.to_owned()], None), "{word}");
        }
    }
}

#[test]
fn a_word_that_differs_between_countries_is_asked_about() {
    let names = spanish();
    for (word, crops) in [
        // Whether the plant climbs is not said, nor whether the grain or the pod is meant.
        ("frijoles", "bush_bean pole_bean runner_bean"),
        ("judías", "bush_bean pole_bean runner_bean"),
        ("porotos", "bush_bean pole_bean runner_bean"),
        ("habichuelas", "bush_bean pole_bean runner_bean"),
        ("chauchas", "bush_bean pole_bean"),
        ("ejotes", "bush_bean pole_bean"),
        ("judías verdes", "bush_bean pole_bean"),
        // Phaseolus lunatus in Peru, Phaseolus coccineus in Chile.
        ("pallares", "lima_bean runner_bean"),
        ("zapallo", "winter_squash pumpkin summer_squash"),
        // The one with a husk in Mexico, the unripe one everywhere.
        ("tomate verde", "tomatillo tomato"),
        ("colinabo", "kohlrabi rutabaga"),
        ("cebollín", "chives scallion"),
        ("mastuerzo", "cress nasturtium"),
        ("mirasol", "sunflower cosmos"),
        ("maravilla", "calendula four_oclock sunflower"),
        ("salvia", "sage salvia"),
    ] {
        assert_eq!(meant(&names, word).0.join(" "), crops, "{word}");
    }
    for (word, crop) in
        [("aliso", "sweet_alyssum"), ("culantro", "cilantro"), ("verdolaga", "moss_rose")]
    {
        let (crops, outside) = meant(&names, word);
        assert_eq!(crops, [crop], "{word}");
        assert!(outside.is_some(), "{word} is another plant too");
    }
}

#[test]
fn what_no_crop_of_ours_is_called_means_nothing() {
    let names = spanish();
    // An avocado, a cassava, a true yam, a chayote, a strawberry; a caterpillar is no rocket.
    for word in ["aguacate", "palta", "yuca", "ñame", "chayote", "fresa", "frutilla", "oruga"] {
        assert_eq!(meant(&names, word), (Vec::new(), None), "{word}");
    }
}

#[test]
fn nothing_agrees_with_a_name_whose_gender_it_does_not_know() {
    let messages = include_str!("../../locales/es/messages.ftl");
    for (at, _) in messages.match_indices("{ $crop") {
        let before = messages[..at].split_whitespace().next_back().unwrap_or_default();
        let articles = ["el", "la", "los", "las", "un", "una", "unos", "unas", "al", "del"];
        let line = messages[..at].lines().count();
        assert!(!articles.contains(&before), "line {line}: an article stands before the name");
    }
}

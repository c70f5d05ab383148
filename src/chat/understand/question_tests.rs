//! The lists of questions in `tests/questions`, each held to what a person means by it.

use std::collections::HashSet;
use std::sync::OnceLock;

use serde::Deserialize;

use super::tests::english;
use super::*;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct List {
    today: String,
    questions: Vec<Question>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Question {
    ask: String,
    is: Intent,
    #[serde(default)]
    crops: Vec<CropId>,
    step: Option<Step>,
    kind: Option<Kind>,
    on: Option<String>,
    /// The day by which it is to be ripe.
    by: Option<String>,
    not_a_day: Option<String>,
    #[serde(default)]
    unsure: Vec<String>,
    #[serde(default)]
    unknown: Vec<Unknown>,
    /// What its figures come to; held only where it stands.
    gives: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Unknown {
    written: String,
    /// Left out where only the word is held to.
    near: Option<Vec<CropId>>,
}

impl Question {
    /// What was read otherwise than it was meant; nothing where all is right.
    fn mistakes(&self, got: &Understood, today: NaiveDate) -> Vec<String> {
        let mut mistakes = Vec::new();
        let mut compare = |what: &str, got: String, want: String| {
            if got != want {
                mistakes.push(format!("{what} is {got}, not {want}"));
            }
        };
        compare("intent", format!("{:?}", got.intent), format!("{:?}", self.is));
        let unknown: Vec<&str> =
            got.unknown_words.iter().map(|name| name.written.as_str()).collect();
        let wanted: Vec<&str> = self.unknown.iter().map(|name| name.written.as_str()).collect();
        compare("unknown", format!("{unknown:?}"), format!("{wanted:?}"));
        for (got, wanted) in got.unknown_words.iter().zip(&self.unknown) {
            if let Some(near) = &wanted.near {
                compare("near", format!("{:?}", got.near), format!("{near:?}"));
            }
        }
        if let Some(gives) = &self.gives {
            compare("quantities", in_short(&got.quantities), gives.clone());
        }
        if self.is == Intent::Unknown {
            return mistakes;
        }
        compare("crops", format!("{:?}", got.crops), format!("{:?}", self.crops));
        compare("step", format!("{:?}", got.step), format!("{:?}", self.step));
        compare("kind", format!("{:?}", got.kind), format!("{:?}", self.kind));
        let day = self.on.as_deref().unwrap_or("none");
        let got_day = if got.date_given { got.on.to_string() } else { "none".to_owned() };
        compare("day", got_day, day.to_owned());
        let by = got.ripe_by.map(|by| by.to_string());
        compare("by", format!("{by:?}"), format!("{:?}", self.by));
        if self.on.is_none() {
            compare("day without a date", got.on.to_string(), today.to_string());
        }
        let trouble = got.date_trouble.as_ref().map(|trouble| match trouble {
            DateTrouble::Impossible(written) | DateTrouble::Unclear(written) => written.clone(),
        });
        compare("no day", format!("{trouble:?}"), format!("{:?}", self.not_a_day));
        let unsure: Vec<&str> = got.ambiguous.iter().map(|word| word.word.as_str()).collect();
        compare("unsure", format!("{unsure:?}"), format!("{:?}", self.unsure));
        mistakes
    }

    /// Whether advice would be given about a crop that was not named.
    fn wrong_crop(&self, got: &Understood) -> bool {
        let advises = !matches!(got.intent, Intent::Unknown | Intent::Help);
        let named = |crop| self.is != Intent::Unknown && self.crops.contains(crop);
        advises && got.crops.iter().any(|crop| !named(crop))
    }
}

/// The quantities of a question in a line: "12 plants, 3 years".
fn in_short(quantities: &Quantities) -> String {
    let number = |figure: Figure| figure.value().to_string();
    let temperature = quantities.temperature.map(|temperature| {
        let scale = match temperature.scale {
            Some(Scale::Celsius) => "C",
            Some(Scale::Fahrenheit) => "F",
            None => "degrees",
        };
        format!("{} {scale}", number(temperature.degrees))
    });
    let parts = [
        temperature,
        quantities.plants.map(|figure| format!("{} plants", number(figure))),
        quantities.seed_age.map(|age| match age {
            SeedAge::Years(years) => format!("{} years", number(years)),
            SeedAge::From(year) => format!("from {year}"),
        }),
        quantities.percent.map(|figure| format!("{} percent", number(figure))),
        quantities.sprouted.map(|(part, whole)| format!("{} of {}", number(part), number(whole))),
        quantities.per_cell.map(|figure| format!("{} a cell", number(figure))),
    ];
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// Holds a list to 97 in a hundred and to no wrong crop, and tells the figure.
#[allow(clippy::print_stdout, reason = "the figure is what the test is for")]
pub(super) fn hold(name: &str, reader: &Understanding, text: &str, at_least: usize) {
    let list: List = toml::from_str(text).expect("the questions");
    let today: NaiveDate = list.today.parse().expect("a date");
    let asked: HashSet<&str> = list.questions.iter().map(|q| q.ask.as_str()).collect();
    assert_eq!(asked.len(), list.questions.len(), "{name}: a question stands there twice");
    assert!(asked.len() >= at_least, "{name}: only {} questions", asked.len());
    let mut wrong = Vec::new();
    let mut wrong_crops = Vec::new();
    for question in &list.questions {
        let got = reader.understand(&question.ask, today);
        let mistakes = question.mistakes(&got, today);
        if !mistakes.is_empty() {
            wrong.push(format!("{:?}: {}", question.ask, mistakes.join("; ")));
        }
        if question.wrong_crop(&got) {
            wrong_crops.push(&question.ask);
        }
    }
    let right = asked.len() - wrong.len();
    println!("{name}: {right} of {} questions understood", asked.len());
    println!("{}", wrong.join("\n"));
    assert!(wrong_crops.is_empty(), "{name}: advice about a crop not named: {wrong_crops:?}");
    assert!(right * 100 >= asked.len() * 97, "{name}: {right} of {}", asked.len());
}

#[test]
fn english_questions_are_understood() {
    hold("en", english(), include_str!("../../../tests/questions/en.toml"), 150);
}

#[test]
fn english_questions_that_were_set_aside_are_understood() {
    let questions = include_str!("../../../tests/questions/en_set_aside.toml");
    hold("en, set aside", english(), questions, 150);
}

fn reader(names: &str, phrases: &str) -> Understanding {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    let names = Names::from_toml(names, &catalogue).expect("the names");
    Understanding::new(phrases, names).expect("the phrases")
}

fn german() -> &'static Understanding {
    static GERMAN: OnceLock<Understanding> = OnceLock::new();
    GERMAN.get_or_init(|| {
        reader(
            include_str!("../../../locales/de/crops.toml"),
            include_str!("../../../locales/de/phrases.toml"),
        )
    })
}

#[test]
fn german_questions_are_understood() {
    hold("de", german(), include_str!("../../../tests/questions/de.toml"), 70);
}

#[test]
fn german_questions_that_were_set_aside_are_understood() {
    let questions = include_str!("../../../tests/questions/de_set_aside.toml");
    hold("de, set aside", german(), questions, 60);
}

fn french() -> &'static Understanding {
    static FRENCH: OnceLock<Understanding> = OnceLock::new();
    FRENCH.get_or_init(|| {
        reader(
            include_str!("../../../locales/fr/crops.toml"),
            include_str!("../../../locales/fr/phrases.toml"),
        )
    })
}

#[test]
fn french_questions_are_understood() {
    hold("fr", french(), include_str!("../../../tests/questions/fr.toml"), 70);
}

#[test]
fn french_questions_that_were_set_aside_are_understood() {
    let questions = include_str!("../../../tests/questions/fr_set_aside.toml");
    hold("fr, set aside", french(), questions, 60);
}

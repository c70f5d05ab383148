use std::fmt::Write as _;

use chrono::NaiveDate;
use proptest::prelude::*;
use serde::Deserialize;

use super::*;

/// The tests share one understanding: building it takes a while in a debug build.
fn english() -> &'static Understanding {
    static ENGLISH: std::sync::OnceLock<Understanding> = std::sync::OnceLock::new();
    ENGLISH.get_or_init(|| {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        Understanding::english(&catalogue).expect("the English phrases")
    })
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Fixture {
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
    #[serde(default)]
    unsure: Vec<String>,
    #[serde(default)]
    unknown: Vec<Unknown>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Unknown {
    written: String,
    /// Left out where only the word is held to.
    near: Option<Vec<CropId>>,
}

fn differences(question: &Question, today: NaiveDate) -> String {
    let got = english().understand(&question.ask, today);
    let mut told = String::new();
    let mut compare = |what: &str, got: String, want: String| {
        if got != want {
            writeln!(told, "{:?}: {what} is {got}, not {want}", question.ask).expect("written");
        }
    };
    compare("intent", format!("{:?}", got.intent), format!("{:?}", question.is));
    compare("crops", format!("{:?}", got.crops), format!("{:?}", question.crops));
    compare("step", format!("{:?}", got.step), format!("{:?}", question.step));
    compare("kind", format!("{:?}", got.kind), format!("{:?}", question.kind));
    let day = question.on.as_deref().unwrap_or("none");
    let got_day = if got.date_given { got.on.to_string() } else { "none".to_owned() };
    compare("day", got_day, day.to_owned());
    if question.on.is_none() {
        compare("day without a date", got.on.to_string(), today.to_string());
    }
    let unsure: Vec<&str> = got.ambiguous.iter().map(|word| word.word.as_str()).collect();
    compare("unsure", format!("{unsure:?}"), format!("{:?}", question.unsure));
    let unknown: Vec<&str> = got.unknown_words.iter().map(|name| name.written.as_str()).collect();
    let wanted: Vec<&str> = question.unknown.iter().map(|name| name.written.as_str()).collect();
    compare("unknown", format!("{unknown:?}"), format!("{wanted:?}"));
    for (got, wanted) in got.unknown_words.iter().zip(&question.unknown) {
        if let Some(near) = &wanted.near {
            compare("near", format!("{:?}", got.near), format!("{near:?}"));
        }
    }
    told
}

#[test]
fn english_questions_are_understood() {
    let fixture: Fixture =
        toml::from_str(include_str!("../../../tests/questions/en.toml")).expect("the questions");
    let today: NaiveDate = fixture.today.parse().expect("a date");
    assert!(fixture.questions.len() >= 150);
    let told: String = fixture.questions.iter().map(|q| differences(q, today)).collect();
    assert!(told.is_empty(), "\n{told}");
}

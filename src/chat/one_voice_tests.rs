//! No answer says one thing in its verdict and another behind it.

use chrono::{NaiveDate, TimeDelta};

use super::understand::Understood;
use super::{Asked, Knowledge};
use crate::club::Units;
use crate::planning::{
    Assessment, Basis, Cover, Frost, Garden, HarvestKind, HotAndWet, Months, Place, Step, Verdict,
    ripening_of,
};
use crate::wording::Speech;

fn frost(last: &str, first: &str) -> Garden {
    let day = |text: &str| Some(text.parse().expect("a month-day"));
    Garden::new(day(last), day(first), Basis::Average).expect("a garden")
}

/// Gardens that differ in what decides: frost, a short season, the south, cover and place, and
/// none but the hot and the wet months.
fn gardens() -> Vec<Garden> {
    let short = frost("06-05", "09-05").with(Some(Place::Windowsill), None);
    let covered = frost("05-15", "10-05").with(Some(Place::Greenhouse), Some(Cover::Tunnel));
    let months = HotAndWet::new(Months::from_to(6, 9), Months::from_to(6, 10)).ok();
    vec![
        frost("05-15", "10-05"),
        short,
        covered,
        frost("09-20", "05-01"),
        Garden::of(Frost::Free).with_months(months),
    ]
}

fn every_answer(mut tell: impl FnMut(&str, NaiveDate, Option<Step>, &[Assessment], &str)) {
    let knowledge = Knowledge::embedded().expect("the built-in data");
    let speech: Speech = knowledge.speech(&"en-GB".parse().expect("a tag"), Units::Metric);
    let first: NaiveDate = "2026-01-02".parse().expect("a date");
    let steps = [None, Some(Step::SowIndoors), Some(Step::SowOutdoors), Some(Step::PlantOut)];
    for garden in gardens() {
        for crop in knowledge.catalogue.iter() {
            for days in (0..364).step_by(13) {
                let today = first + TimeDelta::days(days);
                for step in steps {
                    let mut understood = Understood::can_start(crop.id.clone(), today);
                    understood.step = step;
                    let answer = Asked {
                        understood: &understood,
                        garden,
                        own_crops: None,
                        today,
                        catalogue: &knowledge.catalogue,
                        own: None,
                        speech: &speech,
                    }
                    .answer();
                    tell(crop.id.as_str(), today, step, &answer.assessments, &answer.text);
                }
            }
        }
    }
}

#[test]
fn verdict_and_advice_are_one_voice() {
    let go = ["Go ahead", "Late, but still worth it", "A little early"];
    let wait = ["Not yet", "It is too late", "No, ", "Your season is too short"];
    let elsewhere = ["Instead,", "Better,", "Next season's good days", "What can help:"];
    let at_once = ["Good until", "Last day worth it:", "A good hedge:"];
    let mut wrong: Vec<String> = Vec::new();
    let mut seen = 0;
    every_answer(|crop, on, step, _, text| {
        let mut lines = text.lines();
        let verdict = lines.next().unwrap_or_default();
        let says = |words: &[&str]| {
            text.lines().skip(1).any(|line| words.iter().any(|word| line.starts_with(word)))
        };
        let starts = |words: &[&str]| words.iter().any(|word| verdict.starts_with(word));
        seen += 1;
        // "Last day worth it" is when it was, where it is too late.
        let over = verdict.starts_with("It is too late");
        let contradicts = (starts(&go) && says(&elsewhere))
            || (starts(&wait) && !over && says(&at_once))
            || (over && says(&["Good until", "A good hedge:"]));
        if contradicts && wrong.len() < 5 {
            wrong.push(format!("{crop} {step:?} on {on}:\n{text}"));
        }
    });
    assert!(seen > 50_000, "{seen} answers");
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

#[test]
fn what_is_still_worth_it_is_ready_before_the_season_ends() {
    let knowledge = Knowledge::embedded().expect("the built-in data");
    let mut wrong: Vec<String> = Vec::new();
    every_answer(|id, on, step, weighed, text| {
        let Some(crop) = knowledge.catalogue.get(id) else { return };
        if crop.harvest.kind != HarvestKind::Once || crop.crops_in_year > 1 {
            return;
        }
        let late = weighed.first().filter(|first| first.verdict() == Some(Verdict::Late));
        let ripe = late.and_then(|late| ripening_of(crop, late));
        if ripe.is_some_and(|ripe| ripe.first_early > ripe.end) && wrong.len() < 5 {
            wrong.push(format!("{id} {step:?} on {on}:\n{text}"));
        }
    });
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

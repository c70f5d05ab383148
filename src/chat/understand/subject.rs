//! What a question was about, for the questions that follow it: "and basil?", "when then?".

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::line::{ItemLine, Sort};
use super::phrases::Phrases;
use super::{Intent, Understood, intent};
use crate::planning::{CropId, Kind, Step};

/// What a question was about. Its JSON form is kept and outlives a release.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Subject {
    /// What was asked.
    pub intent: Intent,
    /// The crops it was about.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub crops: Vec<CropId>,
    /// The step it named.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<Step>,
    /// The kind of crops it was limited to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kind: Option<Kind>,
    /// The day it named.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub on: Option<NaiveDate>,
}

impl Subject {
    /// What was asked, where a later question can lean on it.
    #[must_use]
    pub fn of(understood: &Understood) -> Option<Self> {
        let intent = match understood.intent {
            Intent::Help | Intent::Unknown => return None,
            // What only its figures make a question is not asked again of another crop.
            Intent::HowMany
            | Intent::GerminationTest
            | Intent::DaysToEmerge
            | Intent::SoilTemperature => Intent::CanStart,
            intent => intent,
        };
        Some(Self {
            intent,
            crops: understood.weighed_crops().cloned().collect(),
            step: understood.step,
            kind: understood.kind,
            on: understood.date_given.then_some(understood.on),
        })
    }
}

/// Completes a question from the one before it. A question that names its crops takes from it only
/// where it says little else (`leans`); one that names none takes the crops.
pub(crate) fn lean(
    understood: &mut Understood,
    line: &mut ItemLine,
    leans: bool,
    before: &Subject,
    phrases: &Phrases,
) {
    let names_something = !understood.crops.is_empty()
        || !understood.ambiguous.is_empty()
        || !understood.unknown_words.is_empty()
        || line.has(Sort::NoCrop);
    if names_something {
        if leans && understood.intent != Intent::Unknown {
            take_intent(understood, before);
            take_rest(understood, before);
        }
        return;
    }
    let has_crops = !before.crops.is_empty() && understood.kind.is_none();
    match understood.intent {
        Intent::When | Intent::How | Intent::WillItRipen if has_crops => {
            understood.crops.clone_from(&before.crops);
            // "When then?" asks for another day than the one that was named.
            understood.step = understood.step.or(before.step);
        }
        Intent::WhatNow if leans => take_rest(understood, before),
        Intent::Unknown => {
            let whole = line.items.len();
            let follows = |line: &ItemLine| {
                let mut ends = phrases.follow_ups.iter().flat_map(|p| p.ends(line, 0));
                ends.any(|(end, _)| end == whole)
            };
            if follows(line) {
                understood.intent = before.intent;
                understood.crops.clone_from(&before.crops);
                understood.kind = understood.kind.or(before.kind);
                take_intent(understood, before);
                take_rest(understood, before);
            } else if has_crops && intent::all_known(line) && line.put_crop_for(&phrases.pronouns) {
                // A question that only names a crop says nothing where "it" stands for one: "is
                // it spring" is about no crop.
                let rule = intent::rule(line, phrases, &understood.quantities);
                if let Some(rule) = rule.filter(|rule| !rule.leans) {
                    understood.intent = rule.is;
                    understood.crops.clone_from(&before.crops);
                }
            }
        }
        _ => {}
    }
}

fn take_intent(understood: &mut Understood, before: &Subject) {
    let of_crops = matches!(
        before.intent,
        Intent::CanStart | Intent::When | Intent::How | Intent::WillItRipen
    );
    // "And tomorrow?" behind "when do I sow basil?" asks about that day.
    let about_a_day = before.intent == Intent::When && understood.date_given;
    if about_a_day {
        understood.intent = Intent::CanStart;
    } else if of_crops {
        understood.intent = before.intent;
    }
}

fn take_rest(understood: &mut Understood, before: &Subject) {
    understood.step = understood.step.or(before.step);
    if let Some(on) = before.on.filter(|_| !understood.date_given) {
        understood.on = on;
        understood.date_given = true;
    }
}

#[cfg(test)]
mod tests {
    use super::super::tests::english;
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    /// What the second question means behind the first.
    fn after(first: &str, second: &str) -> (Intent, Vec<String>, Option<Step>, Option<NaiveDate>) {
        let today = day("2026-04-15");
        let subject = Subject::of(&english().understand(first, today));
        let got = english().understand_after(second, today, subject.as_ref());
        let crops = got.crops.iter().map(ToString::to_string).collect();
        (got.intent, crops, got.step, got.date_given.then_some(got.on))
    }

    fn crops(of: &[&str]) -> Vec<String> {
        of.iter().map(|&id| id.to_owned()).collect()
    }

    #[test]
    fn another_crop_takes_the_question_over() {
        let basil = crops(&["basil"]);
        let may = Some(day("2026-05-01"));
        let first = "can I plant out tomatoes on May 1?";
        let want = (Intent::CanStart, basil.clone(), Some(Step::PlantOut), may);
        for second in ["and basil?", "basil?", "what about basil", "ok and the basil then"] {
            assert_eq!(after(first, second), want, "{second}");
        }
        let want = (Intent::How, basil.clone(), None, None);
        assert_eq!(after("how deep do I sow peas?", "and basil?"), want);
        let want = (Intent::When, crops(&["basil", "dill"]), None, None);
        assert_eq!(after("when do I sow peas?", "and basil and dill?"), want);
        // A question that says what it asks asks that.
        let want = (Intent::WillItRipen, basil.clone(), None, None);
        assert_eq!(after("how deep do I sow peas?", "will basil ripen?"), want);
        let want = (Intent::CanStart, basil.clone(), None, Some(day("2026-04-15")));
        assert_eq!(after("when do I sow peas?", "can I start basil now?"), want);
        assert_eq!(after("when do I sow peas?", "and basil now?"), want);
        let want = (Intent::CanStart, basil, None, Some(day("2026-05-01")));
        assert_eq!(after("what can I start on May 1?", "and basil?"), want);
    }

    #[test]
    fn another_place_or_day_takes_the_crops_over() {
        let cucumber = crops(&["cucumber"]);
        let today = Some(day("2026-04-15"));
        let want = (Intent::CanStart, cucumber.clone(), Some(Step::SowOutdoors), today);
        for second in ["what about outdoors?", "and outside?", "outdoors?", "or outside then?"] {
            assert_eq!(after("can I start cucumbers now?", second), want, "{second}");
        }
        let want = (Intent::CanStart, cucumber.clone(), None, Some(day("2026-05-01")));
        for second in ["and on May 1?", "may 1?", "what about the 1st of May", "what if 1 May"] {
            assert_eq!(after("can I start cucumbers now?", second), want, "{second}");
        }
        let want = (Intent::When, cucumber.clone(), None, None);
        for second in ["when then?", "when?", "ok when then", "so when"] {
            assert_eq!(after("can I start cucumbers now?", second), want, "{second}");
        }
        let want = (Intent::How, cucumber.clone(), None, None);
        assert_eq!(after("can I start cucumbers?", "how deep?"), want);
        let want = (Intent::WillItRipen, cucumber.clone(), None, None);
        assert_eq!(after("can I start cucumbers?", "will they ripen?"), want);
        let want = (Intent::CanStart, cucumber.clone(), Some(Step::PlantOut), None);
        assert_eq!(after("when do I start cucumbers?", "can they go out?"), want);
        let want = (Intent::CanStart, cucumber, None, today);
        assert_eq!(after("when do I start cucumbers?", "can i start them now"), want);
    }

    #[test]
    fn a_day_behind_a_question_of_ripening_is_the_harvests() {
        let got = |first: &str, second: &str| {
            let today = day("2026-04-15");
            let subject = Subject::of(&english().understand(first, today));
            let got = english().understand_after(second, today, subject.as_ref());
            (got.intent, got.date_given.then_some(got.on), got.ripe_by)
        };
        let ripens = Intent::WillItRipen;
        let august = Some(day("2026-08-31"));
        assert_eq!(got("will tomatoes ripen?", "and in August?"), (ripens, None, august));
        assert_eq!(
            got("will melons ripen?", "will they be ripe in August?"),
            (ripens, None, august)
        );
        // Behind a day of sowing it is another one.
        let sown = Some(day("2026-06-03"));
        let first = "will melons ripen if I sow them on May 20?";
        assert_eq!(got(first, "and on June 3?"), (ripens, sown, None));
    }

    #[test]
    fn kinds_and_days_follow_a_question_without_a_crop() {
        let none = crops(&[]);
        let may = Some(day("2026-05-01"));
        let want = (Intent::WhatNow, none.clone(), None, may);
        assert_eq!(after("which herbs can I start on May 1?", "and flowers?"), want);
        let subject =
            Subject::of(&english().understand("which herbs can I sow?", day("2026-04-15")));
        let got = english().understand_after("and in June?", day("2026-04-15"), subject.as_ref());
        assert_eq!((got.intent, got.kind), (Intent::WhatNow, Some(Kind::Herb)));
        assert_eq!(got.on, day("2026-06-01"));
        let want = (Intent::When, crops(&["tomato"]), Some(Step::PlantOut), None);
        assert_eq!(after("when do they go out?", "tomatoes"), want);
    }

    #[test]
    fn small_talk_is_no_question_about_the_crop_before() {
        for second in [
            "thanks!",
            "ok",
            "thanks for today",
            "can I start my car now",
            "lol",
            "what time is it",
            "and the meeting?",
            "quinoa?",
            "tomato soup?",
            "good",
            "see you tomorrow",
            "is it safe for my cat",
            "is it safe to eat rhubarb leaves",
            "is it safe to eat",
            "are they ok to eat?",
            "is it OK to smoke",
            "is it spring",
            "is it cold outside",
            "can i start it in my car",
            "did I sow it",
            "did I plant them outside",
            "I don't want to sow them",
        ] {
            let (intent, named, ..) = after("can I start cucumbers now?", second);
            assert_eq!((intent, named), (Intent::Unknown, crops(&[])), "{second}");
        }
    }

    #[test]
    fn the_form_that_is_kept_is_pinned() {
        let whole = Subject {
            intent: Intent::CanStart,
            crops: vec![CropId::new("basil")],
            step: Some(Step::SowIndoors),
            kind: Some(Kind::Herb),
            on: Some(day("2026-05-01")),
        };
        let bare =
            Subject { intent: Intent::When, crops: Vec::new(), step: None, kind: None, on: None };
        for (subject, json) in [
            (
                whole,
                r#"{"intent":"can_start","crops":["basil"],"step":"sow_indoors","kind":"herb","on":"2026-05-01"}"#,
            ),
            (bare, r#"{"intent":"when"}"#),
        ] {
            assert_eq!(serde_json::to_string(&subject).expect("JSON"), json);
            assert_eq!(serde_json::from_str::<Subject>(json).expect("read"), subject);
        }
    }
}

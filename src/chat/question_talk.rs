//! Answering a question in a chat.

use chrono::NaiveDate;

use crate::catalogue::AmbiguousWord;
use crate::messages::{Button, Buttons, Press};
use crate::planning::{CropId, Garden, Verdict};
use crate::wording::args;

use super::answer::Asked;
use super::crop_talk::frost_needed;
use super::desk::Desk;
use super::facts::{Change, Expected};
use super::own::Own;
use super::sowing_talk;
use super::understand::{Intent, OwnName, Subject, Understood};

/// A question came, as it was written.
pub(super) fn asked(desk: &mut Desk<'_>, question: &str) {
    let (understood, named) = understand(desk, question);
    if which_first(desk, &understood, question) {
        return;
    }
    answer(desk, &understood, &named);
}

/// What a question means behind the one that was asked before it here, and the numbers of the
/// member's varieties that it names.
fn understand(desk: &Desk<'_>, question: &str) -> (Understood, Vec<i64>) {
    let own = OwnName::all(&desk.facts.varieties);
    let before = desk.facts.subject.as_ref();
    desk.tongue.understanding.understand_own(question, desk.today, &own, before)
}

/// Whether a text asks something that only its figures make a question.
pub(super) fn asks_with_figures(desk: &Desk<'_>, text: &str) -> bool {
    let understood = desk.tongue.understanding.understand(text, desk.today);
    matches!(
        understood.intent,
        Intent::HowMany | Intent::SoilTemperature | Intent::GerminationTest | Intent::DaysToEmerge
    )
}

/// Asks which crop is meant where a word can mean several; `true` where it was asked.
fn which_first(desk: &mut Desk<'_>, understood: &Understood, question: &str) -> bool {
    let Some(word) = understood.ambiguous.iter().find(|word| word.means.len() > 1) else {
        return false;
    };
    let (text, buttons) = which_crop(desk, word, understood.on);
    desk.expect(Expected::WhichCrop { question: question.chars().take(400).collect() });
    desk.reply_with(text, buttons);
    true
}

/// Asks which crop a word of several meanings means, with a button for each.
pub(super) fn which_crop(
    desk: &Desk<'_>,
    word: &AmbiguousWord,
    on: NaiveDate,
) -> (String, Buttons) {
    let names: Vec<String> = word.means.iter().map(|id| desk.speech.crops(id).to_owned()).collect();
    let about = args().text("word", &word.word).text("crops", desk.speech.voice.list_or(&names));
    let button = |id: &CropId| {
        let label = desk.say("button-crop", &args().text("crop", desk.speech.crops(id)));
        vec![Button::press(label, Press::Meant(id.clone(), on))]
    };
    (desk.say("which-crop", &about), word.means.iter().map(button).collect())
}

/// The name of the crop that was meant came in words; `false` where it is something else.
pub(super) fn which_came(desk: &mut Desk<'_>, question: &str, text: &str) -> bool {
    let list = desk.tongue.understanding.crops_in(text);
    let ([crop], true) = (list.found.as_slice(), list.unknown.is_empty()) else { return false };
    let (mut understood, named) = understand(desk, question);
    understood.means(crop);
    answer(desk, &understood, &named);
    true
}

/// The crop that was meant came by a button; the question is the one that waited, if it still
/// does, and else "can I start it?".
pub(super) fn meant(desk: &mut Desk<'_>, crop: &CropId, on: NaiveDate) {
    if let Some(Expected::WhichSown { told }) = desk.facts.expected.clone() {
        desk.change(Change::Expect(None));
        sowing_talk::meant(desk, &told, crop, on);
        return;
    }
    let (mut understood, named) = match &desk.facts.expected {
        Some(Expected::WhichCrop { question }) => understand(desk, question),
        _ => (Understood::can_start(crop.clone(), on), Vec::new()),
    };
    understood.means(crop);
    understood.on = on;
    desk.change(Change::Expect(None));
    answer(desk, &understood, &named);
}

/// A question as it is asked at this desk, about `garden`; `named` are the numbers of the varieties
/// that it names.
pub(super) fn question_of<'q>(
    desk: &'q Desk<'_>,
    understood: &'q Understood,
    garden: Garden,
    named: &'q [i64],
) -> Asked<'q> {
    let private = desk.in_private();
    let crops = &desk.facts.crops;
    Asked {
        understood,
        garden,
        // In private "what now" is about one's own list; in the group about everybody's crops.
        own_crops: (private && !crops.is_empty()).then_some(crops.as_slice()),
        today: desk.today,
        catalogue: desk.catalogue(),
        own: Some(Own {
            catalogue: &desk.knowledge.catalogue,
            varieties: &desk.facts.varieties,
            follows: private,
            named,
            // What somebody sowed is nobody else's business in the group.
            sowings: if private { &desk.facts.sowings } else { &[] },
            marks: &desk.facts.marks,
        }),
        speech: &desk.speech,
    }
}

fn answer(desk: &mut Desk<'_>, understood: &Understood, named: &[i64]) {
    if let Some(subject) = Subject::of(understood) {
        desk.change(Change::Asked(subject));
    }
    let needs_garden = matches!(
        understood.intent,
        Intent::CanStart
            | Intent::When
            | Intent::WhatNow
            | Intent::WillItRipen
            | Intent::SoilTemperature
    );
    let garden = match desk.garden() {
        Some(garden) => garden,
        None if needs_garden => {
            let text = frost_needed(desk);
            desk.reply(text);
            return;
        }
        None => {
            let member = &desk.facts.member;
            Garden::FROST_FREE.with(member.place, member.cover)
        }
    };
    let answer = question_of(desk, understood, garden, named).answer();
    let mut buttons = Vec::new();
    let may_remind = desk.in_private() && garden.season_on(desk.today).is_some();
    if let ([crop], true) = (understood.crops.as_slice(), may_remind) {
        let wait = answer.assessments.first().and_then(crate::planning::Assessment::verdict);
        let worth_it = wait.is_some_and(|verdict| verdict != Verdict::TooLate);
        if worth_it && !desk.facts.crops.contains(crop) {
            let label = desk.say("button-remind", &args().text("crop", desk.speech.crops(crop)));
            buttons.push(vec![Button::press(label, Press::Grow(crop.clone()))]);
        }
    }
    if understood.intent == Intent::Unknown {
        // A near name is a tap away.
        let near = understood.unknown_words.iter().flat_map(|name| &name.near);
        buttons.extend(near.map(|id| {
            let label = desk.say("button-crop", &args().text("crop", desk.speech.crops(id)));
            vec![Button::press(label, Press::Meant(id.clone(), understood.on))]
        }));
    }
    let mut text = answer.text;
    let by_season = matches!(understood.intent, Intent::CanStart | Intent::When | Intent::WhatNow);
    if by_season && let Some(lacking) = super::frost_talk::months_lacking(desk, garden) {
        text = format!("{text}\n{lacking}");
    }
    let bulbs = |id: &CropId| desk.crop(id).is_some_and(|crop| crop.outdoors.bulbs_by_daylength);
    let about_start = matches!(understood.intent, Intent::CanStart | Intent::When | Intent::How);
    if about_start && understood.crops.iter().any(bulbs) {
        text = format!("{text}\n{}", super::latitude_talk::onion_line(desk));
        if desk.in_private() && desk.facts.member.latitude.is_none() {
            desk.expect(Expected::Latitude);
        }
    }
    desk.reply_with(text, buttons);
}

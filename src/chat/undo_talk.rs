//! Taking the last change back: `/undo`, and the button under a confirmation.

use crate::club::{LastChange, PutBack, Variety};
use crate::planning::CropId;
use crate::wording::args;

use super::desk::Desk;
use super::facts::Change;
use super::sowing_text::sowing_words;
use super::variety_text::variety_words;

/// `/undo`.
pub(super) fn undo(desk: &mut Desk<'_>) {
    let Some(last) = desk.facts.last_change.clone() else {
        let text = desk.say_key("undo-nothing");
        desk.reply(text);
        return;
    };
    desk.change(Change::Undo(last.number));
    let text = words(desk, &last);
    desk.reply(text);
}

/// The button: only while that change is still the last one.
pub(super) fn undo_this(desk: &mut Desk<'_>, number: i64) {
    // Under a message in a group it is not known whose change that was.
    if !desk.in_private() {
        let notice = desk.say_key("notice-private-only");
        return desk.answer_press(Some(notice));
    }
    let last = desk.facts.last_change.clone().filter(|last| last.number == number);
    let Some(last) = last else {
        let notice = desk.say_key("notice-undo-stale");
        desk.answer_press(Some(notice));
        return;
    };
    desk.change(Change::Undo(number));
    let text = words(desk, &last);
    desk.edit_with(text, Vec::new());
    let notice = desk.say_key("notice-undone");
    desk.answer_press(Some(notice));
}

/// What is as it was before.
fn words(desk: &Desk<'_>, last: &LastChange) -> String {
    let mut lines = Vec::new();
    let (mut off, mut on): (Vec<CropId>, Vec<CropId>) = (Vec::new(), Vec::new());
    let mut jobs = Vec::new();
    let (mut back, mut out): (Vec<CropId>, Vec<CropId>) = (Vec::new(), Vec::new());
    for put_back in &last.put_back {
        match put_back {
            PutBack::CropOff(crop) => off.push(crop.clone()),
            PutBack::CropOn { crop, .. } => on.push(crop.clone()),
            PutBack::Mark { job, .. } => {
                let what = desk.crop(&job.crop);
                jobs.extend(what.map(|crop| desk.speech.step_phrase(job.step, crop)));
            }
            PutBack::SowingOff(id) => {
                let sowing = desk.facts.sowings.iter().find(|sowing| sowing.id == *id);
                lines.extend(sowing.map(|sowing| {
                    let what = sowing_words(desk, sowing);
                    desk.say("undo-sowing-off", &args().text("what", what))
                }));
            }
            PutBack::VarietyOff(id) => {
                let variety = desk.facts.varieties.iter().find(|variety| variety.id == *id);
                // What stood in its place comes back and is told instead.
                let replaced = |variety: &&Variety| {
                    !last.put_back.iter().any(|other| match other {
                        PutBack::VarietyAs(was) => was.is(&variety.crop, variety.name.as_deref()),
                        _ => false,
                    })
                };
                lines.extend(variety.filter(replaced).map(|variety| {
                    let what = variety_words(desk, variety);
                    desk.say("undo-variety-off", &args().text("variety", what))
                }));
            }
            PutBack::VarietyAs(variety) => {
                let what = variety_words(desk, variety);
                lines.push(desk.say("undo-variety-as", &args().text("variety", what)));
            }
            PutBack::SowingAs(sowing) => {
                let what = sowing_words(desk, sowing);
                lines.push(desk.say("undo-sowing-as", &args().text("what", what)));
            }
            PutBack::Unsubscribe(id) => {
                let lists = &desk.facts.growing.lists;
                let list = lists.iter().find(|list| list.id == *id);
                lines.extend(
                    list.map(|list| {
                        desk.say("list-unsubscribed", &args().text("list", &list.name))
                    }),
                );
            }
            PutBack::Subscribe { list, .. } => {
                let list = desk.facts.lists.iter().find(|known| known.id == *list);
                lines.extend(
                    list.map(|list| desk.say("undo-subscribed", &args().text("list", &list.name))),
                );
            }
            PutBack::SkipOff(crop) => back.push(crop.clone()),
            PutBack::SkipOn(crop) => out.push(crop.clone()),
        }
    }
    // The mark of a sowing job goes with its sowing.
    if lines.is_empty() {
        lines.extend(
            jobs.iter().map(|what| desk.say("undo-job", &args().text("what", what.as_str()))),
        );
    }
    if !off.is_empty() {
        let names = desk.speech.crop_list(&off);
        lines.push(desk.say("undo-crops-off", &args().text("crops", names)));
    }
    if !on.is_empty() {
        let names = desk.speech.crop_list(&on);
        lines.push(desk.say("undo-crops-on", &args().text("crops", names)));
    }
    if !back.is_empty() {
        let names = desk.speech.crop_list(&back);
        lines.push(desk.say("undo-skip-off", &args().text("crops", names)));
    }
    if !out.is_empty() {
        let names = desk.speech.crop_list(&out);
        lines.push(desk.say("undo-skip-on", &args().text("crops", names)));
    }
    if lines.is_empty() {
        lines.push(desk.say_key("notice-undone"));
    }
    lines.join("\n")
}

//! Taking the last change back: `/undo`, and the button under a confirmation; and putting it back
//! again.

use chrono::{TimeDelta, Timelike};

use crate::club::{LastChange, PutBack, ReminderTime, Variety};
use crate::messages::{Buttons, Press};
use crate::planning::CropId;
use crate::wording::args;

use super::desk::Desk;
use super::facts::Change;
use super::sowing_text::sowing_words;
use super::variety_text::variety_words;

/// A change that is older is named before it is taken back.
const LONGEST_AGO: TimeDelta = TimeDelta::days(1);

/// A change that is not older was made just now.
const JUST_NOW: TimeDelta = TimeDelta::minutes(10);

/// `/undo`. A change of long ago is hardly the one that is meant, so it is named first.
pub(super) fn undo(desk: &mut Desk<'_>) {
    let Some(last) = desk.facts.last_change.clone() else {
        let text = desk.say_key("undo-nothing");
        desk.reply(text);
        return;
    };
    let what = words(desk, &last);
    if age(desk, &last) > LONGEST_AGO {
        let about = args().text("date", made_on(desk, &last)).text("what", what);
        let text = desk.say("undo-old", &about);
        let buttons = vec![vec![desk.button("button-undo-old", Press::UndoOld(last.number))]];
        desk.reply_with(text, buttons);
        return;
    }
    desk.change(Change::Undo(last.number));
    let text = with_age(desk, &last, what);
    let buttons = put_back_buttons(desk, last.number);
    desk.reply_with(text, buttons);
}

/// The buttons that name a change: only while that change is still the last one.
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
    let what = words(desk, &last);
    let text = with_age(desk, &last, what);
    let buttons = put_back_buttons(desk, number);
    desk.edit_with(text, buttons);
    let notice = desk.say_key("notice-undone");
    desk.answer_press(Some(notice));
}

/// The button that puts back what was taken back, while nothing else changed since.
pub(super) fn put_back(desk: &mut Desk<'_>, number: i64) {
    if !desk.in_private() {
        let notice = desk.say_key("notice-private-only");
        return desk.answer_press(Some(notice));
    }
    let undone = desk.facts.last_undone.clone().filter(|undone| undone.number == number);
    let Some(undone) = undone else {
        let notice = desk.say_key("notice-put-back-stale");
        desk.answer_press(Some(notice));
        return;
    };
    desk.change(Change::Redo(number));
    let text = desk.say("undo-put-back", &args().text("what", words(desk, &undone)));
    let buttons = vec![vec![desk.button("button-undo", Press::Undo(number))]];
    desk.edit_with(text, buttons);
}

fn put_back_buttons(desk: &Desk<'_>, number: i64) -> Buttons {
    vec![vec![desk.button("button-put-back", Press::PutBack(number))]]
}

fn age(desk: &Desk<'_>, last: &LastChange) -> TimeDelta {
    desk.facts.now.signed_duration_since(last.changed_at)
}

/// The day on which a change was made, at the member's place.
fn made_on(desk: &Desk<'_>, last: &LastChange) -> String {
    let zone = desk.settings.zone.is;
    desk.date(last.changed_at.with_timezone(&zone).date_naive())
}

/// What was taken back, and when it had been made where that was not just now.
fn with_age(desk: &Desk<'_>, last: &LastChange, what: String) -> String {
    if age(desk, last) <= JUST_NOW {
        return what;
    }
    let made = last.changed_at.with_timezone(&desk.settings.zone.is);
    let time = u16::try_from(made.hour() * 60 + made.minute()).ok();
    let made = match time.and_then(ReminderTime::from_minutes) {
        Some(time) if made.date_naive() == desk.today => {
            desk.say("undo-made-today", &args().text("time", desk.speech.voice.time(time)))
        }
        _ => desk.say("undo-made-on", &args().text("date", made_on(desk, last))),
    };
    format!("{what}\n{made}")
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
            PutBack::SettingAs { setting, .. } => {
                let line = desk.say("undo-setting", &args().text("setting", setting.name()));
                if !lines.contains(&line) {
                    lines.push(line);
                }
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

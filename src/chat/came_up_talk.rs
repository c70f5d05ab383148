//! What became of a sowing: it came up, or nothing did and it is sown again.

use chrono::NaiveDate;

use crate::club::{Mark, Sowing};
use crate::messages::{Button, Buttons, JobAnswer, Press};
use crate::planning::{Crop, CropId, Step, Verdict, Way, assess};
use crate::wording::args;

use super::desk::Desk;
use super::facts::Change;
use super::sowing_talk::undo_buttons;
use super::sowing_text::{follow_up, sowing_words};
use super::understand::{CameUp, ToldDay};

/// The changes for a sowing that was seen to be up, or of which nothing came up.
pub(super) fn came_up(sowing: &Sowing, came_up: CameUp, on: NaiveDate) -> Vec<Change> {
    let key = sowing.key(Step::Check);
    match came_up {
        CameUp::Yes => vec![
            Change::KeepSowing(Sowing { came_up_on: Some(on), failed_on: None, ..sowing.clone() }),
            Change::MarkJob(key, Some(Mark::Done(on))),
        ],
        CameUp::No => {
            let failed = Sowing { failed_on: Some(on), came_up_on: None, ..sowing.clone() };
            let mut changes =
                vec![Change::KeepSowing(failed), Change::MarkJob(key, Some(Mark::Skipped(on)))];
            // The job that it answered is open again.
            changes.extend(sowing.job.clone().map(|job| Change::MarkJob(job, None)));
            changes
        }
    }
}

/// "Basil came up", "nothing came up"; `false` where the text is something else.
pub(super) fn what_became(desk: &mut Desk<'_>, text: &str) -> bool {
    let Some(mut came) = desk.tongue.understanding.came_up_in(text) else { return false };
    let told = desk.tongue.understanding.sown_in(text, desk.today);
    let named: Vec<&CropId> = told.crops.iter().map(|(id, _)| id).collect();
    let waits = |sowing: &&Sowing| {
        sowing.lives()
            && sowing.came_up_on.is_none()
            && (named.is_empty() || named.contains(&&sowing.crop))
    };
    if let Some((sprouted, of)) = desk.tongue.understanding.sprouted_in(text) {
        // "8 of 12 came up" tells of the sowing of twelve; any other number is a germination test.
        let counted = |sowing: &Sowing| sowing.count.is_some() && sowing.count == of.count();
        if !desk.facts.sowings.iter().filter(waits).any(counted) {
            return false;
        }
        if sprouted.count() == Some(0) {
            came = CameUp::No;
        }
    }
    let mut waiting: Vec<Sowing> = desk.facts.sowings.iter().filter(waits).cloned().collect();
    waiting.sort_by_key(|sowing| (sowing.sown_on, sowing.id));
    let on = match told.on {
        ToldDay::On(on) if on <= desk.today => on,
        _ => desk.today,
    };
    match waiting.as_slice() {
        [] => {
            let text = desk.say_key("came-up-none-waits");
            desk.reply(text);
        }
        // Of one crop the earliest comes up first.
        [first, rest @ ..] if rest.iter().all(|other| other.crop == first.crop) => {
            tell_came_up(desk, first, came, on);
        }
        several => {
            let text = match came {
                CameUp::Yes => desk.say_key("came-up-which"),
                CameUp::No => desk.say_key("not-up-which"),
            };
            let answer = match came {
                CameUp::Yes => JobAnswer::Done,
                CameUp::No => JobAnswer::NotUp,
            };
            let buttons: Buttons = several
                .iter()
                .take(8)
                .map(|sowing| {
                    let label = sowing_words(desk, sowing);
                    vec![Button::press(label, Press::Job(sowing.key(Step::Check), answer))]
                })
                .collect();
            desk.reply_with(text, buttons);
        }
    }
    true
}

fn tell_came_up(desk: &mut Desk<'_>, sowing: &Sowing, came: CameUp, on: NaiveDate) {
    desk.change(Change::Together(came_up(sowing, came, on)));
    match came {
        CameUp::Yes => {
            let what = sowing_words(desk, sowing);
            let head = desk.say("came-up-noted", &args().text("what", what));
            let up = Sowing { came_up_on: Some(on), ..sowing.clone() };
            let next = desk.crop(&sowing.crop).and_then(|crop| follow_up(desk, crop, &up));
            let text = [Some(head), next].into_iter().flatten().collect::<Vec<_>>().join("\n");
            let buttons = undo_buttons(desk);
            desk.reply_with(text, buttons);
        }
        CameUp::No => offer_to_sow_again(desk, sowing),
    }
}

/// After nothing came up: when to sow again, or that it is too late for that.
pub(super) fn offer_to_sow_again(desk: &mut Desk<'_>, sowing: &Sowing) {
    let head = desk.say("not-up-noted", &args().text("what", sowing_words(desk, sowing)));
    let undo = undo_buttons(desk);
    offer_again(desk, &sowing.crop, Some(sowing), head, undo);
}

/// What was said first, and when to sow the crop again, with a button for the same sowing once
/// more where there was one.
pub(super) fn offer_again(
    desk: &mut Desk<'_>,
    id: &CropId,
    like: Option<&Sowing>,
    head: String,
    others: Buttons,
) {
    let Some(crop) = desk.crop(id) else { return };
    let way = like.map(|sowing| sowing.way).or_else(|| crop.ways.first().copied());
    let Some(way) = way else { return desk.reply_with(head, others) };
    let (advice, possible) = sow_again_advice(desk, crop, way);
    let mut buttons: Buttons = Vec::new();
    if let Some(sowing) = like.filter(|_| possible) {
        buttons.push(vec![desk.button("button-sown-again", Press::SowAgain(sowing.id))]);
    }
    buttons.extend(others);
    desk.reply_with(format!("{head}\n{advice}"), buttons);
}

/// Whether and when sowing again is worth it, and whether it can be done today.
fn sow_again_advice(desk: &Desk<'_>, crop: &Crop, way: Way) -> (String, bool) {
    let about = desk.speech.about(&crop.id);
    let Some(garden) = desk.garden() else { return (desk.say_key("sow-again-now"), true) };
    let weighed = assess(crop, garden, way.into(), desk.today);
    let other = match way {
        Way::Indoors => Step::SowOutdoors,
        Way::Outdoors => Step::SowIndoors,
    };
    let date = |date: Option<NaiveDate>| date.map_or_else(String::new, |date| desk.date(date));
    match weighed.verdict {
        Err(_) => (desk.say_key("sow-again-now"), true),
        Ok(Verdict::OnTime | Verdict::Late | Verdict::Early) => {
            let last = date(weighed.window.map(|window| window.to));
            (desk.say("sow-again-until", &about.text("last", last)), true)
        }
        Ok(Verdict::TooEarly) => {
            (desk.say("sow-again-from", &about.text("from", date(weighed.next_date))), false)
        }
        Ok(Verdict::TooLate) => {
            let elsewhere = assess(crop, garden, other, desk.today);
            let what = desk.speech.step_phrase(other, crop);
            if elsewhere.verdict().is_some_and(Verdict::workable) {
                let last = date(elsewhere.window.map(|window| window.to));
                let args = about.text("what", what).text("last", last);
                (desk.say("sow-again-other-way", &args), false)
            } else {
                let next = date(weighed.next_date);
                (desk.say("sow-again-too-late", &about.text("next", next)), false)
            }
        }
    }
}

//! What became of a sowing: it came up, or nothing did and it is sown again.

use chrono::NaiveDate;

use crate::club::{Mark, Sowing, Variety};
use crate::messages::{Button, Buttons, JobAnswer, Press};
use crate::planning::{Crop, CropId, StartAgain, Step, Way, start_again};
use crate::reminders::start_again_text;
use crate::wording::args;

use super::desk::Desk;
use super::facts::Change;
use super::sowing_talk::undo_buttons;
use super::sowing_text::{follow_up, sowing_words};
use super::understand::{CameUp, OwnName, ToldDay};

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
    let own = OwnName::all(&desk.facts.varieties);
    let told = desk.tongue.understanding.sown_in_own(text, desk.today, &own);
    let named: Vec<(&CropId, Option<&Variety>)> = told
        .crops
        .iter()
        .enumerate()
        .map(|(at, (id, _))| {
            let number = told.varieties.get(at).copied().flatten();
            let variety = desk.facts.varieties.iter().find(|one| Some(one.id) == number);
            (id, variety)
        })
        .collect();
    let means = |sowing: &Sowing| {
        named.iter().any(|(crop, variety)| {
            **crop == sowing.crop
                && variety.is_none_or(|one| one.is(crop, sowing.variety.as_deref()))
        })
    };
    let waits = |sowing: &&Sowing| {
        sowing.lives() && sowing.came_up_on.is_none() && (named.is_empty() || means(sowing))
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
        // Of one crop and variety the earliest comes up first.
        [first, rest @ ..] if rest.iter().all(|other| other.is_of(first)) => {
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
            let next = desk.crop_of(sowing).and_then(|crop| follow_up(desk, crop, &up));
            let text = [Some(head), next].into_iter().flatten().collect::<Vec<_>>().join("\n");
            let buttons = undo_buttons(desk);
            desk.reply_with(text, buttons);
        }
        CameUp::No => offer_to_sow_again(desk, sowing),
    }
}

/// After nothing came up: when to sow again, or that it is too late for that.
pub(super) fn offer_to_sow_again(desk: &mut Desk<'_>, sowing: &Sowing) {
    let Some(crop) = desk.crop_of(sowing) else { return };
    let head = desk.say("not-up-noted", &args().text("what", sowing_words(desk, sowing)));
    let (advice, possible) = sow_again_advice(desk, crop, sowing.way);
    let mut buttons: Buttons = Vec::new();
    if possible {
        buttons.push(vec![desk.button("button-sown-again", Press::SowAgain(sowing.id))]);
    }
    buttons.extend(undo_buttons(desk));
    desk.reply_with(format!("{head}\n{advice}"), buttons);
}

/// Whether and when sowing again is worth it, and whether it can be done today.
fn sow_again_advice(desk: &Desk<'_>, crop: &Crop, way: Way) -> (String, bool) {
    let step = Step::from(way);
    let again = match desk.garden() {
        Some(garden) => start_again(crop, garden, step, desk.today),
        None => StartAgain::NotKnown,
    };
    let text = start_again_text(crop, step, again, &desk.speech, desk.today);
    (text, again.at_once(step))
}

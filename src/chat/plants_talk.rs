//! What became of plants: they were potted up, hardened off or set out, or they died.

use chrono::NaiveDate;

use crate::club::{Mark, Sowing};
use crate::messages::{Button, Buttons, Press};
use crate::planning::{Crop, CropId, JobKey, Step, Verdict, Way, assess};
use crate::reminders::coming_jobs;
use crate::wording::args;

use super::answer::unknown_name;
use super::came_up_talk::offer_again;
use super::desk::Desk;
use super::facts::Change;
use super::sowing_list::still_grows;
use super::sowing_talk::{self, undo_buttons};
use super::sowing_text::sowing_words;
use super::understand::{SownText, ToldDay};

/// The most sowings that are offered to choose from.
const MOST_OFFERED: usize = 8;

/// "Planted out 6 broccoli today", "potted up the tomatoes": the step is done, of the sowing that
/// waits for it or of the plan. `false` where no crop is named.
///
/// `rest` is the sentence `text` without its frame, which may name the day.
pub(super) fn done(desk: &mut Desk<'_>, step: Step, rest: &str, text: &str) -> bool {
    let understanding = &desk.tongue.understanding;
    let mut told = understanding.sown_in(rest, desk.today);
    if told.on == ToldDay::NotSaid {
        told.on = understanding.sown_in(text, desk.today).on;
    }
    let crops = crops_told(desk, &told);
    if crops.is_empty() {
        return false;
    }
    // What is never raised indoors was sown where it stands: "planted peas".
    let sown_there = |id: &CropId| {
        desk.crop(id).is_some_and(|crop| crop.indoors.is_none() && !crop.ways.is_empty())
    };
    if step == Step::PlantOut && crops.iter().all(|(id, _)| sown_there(id)) {
        sowing_talk::sown(desk, rest, text);
        return true;
    }
    if let Some(name) = told.unknown.first() {
        let text = unknown_name(&name.written, &name.near, &desk.speech);
        desk.reply(text);
        return true;
    }
    let on = match &told.on {
        ToldDay::NotSaid => desk.today,
        ToldDay::On(on) => *on,
        ToldDay::Impossible(written) => {
            let text = desk.say("planted-impossible-day", &args().text("written", written));
            desk.reply(text);
            return true;
        }
    };
    if on > desk.today {
        let date = args().text("date", desk.date(on));
        let text = match step {
            Step::PlantOut => desk.say("planted-future", &date),
            _ => desk.say("step-future", &date),
        };
        desk.reply(text);
        return true;
    }
    let (mut done, mut missing): (Vec<CropId>, Vec<CropId>) = (Vec::new(), Vec::new());
    let mut marks = Vec::new();
    let mut early = Vec::new();
    for (id, count) in &crops {
        let Some(crop) = desk.crop(id) else { continue };
        let Some(key) = waiting_step(desk, crop, step, *count) else {
            missing.push(id.clone());
            continue;
        };
        marks.push(Change::MarkJob(key, Some(Mark::Done(on))));
        done.push(id.clone());
        early.extend(too_early(desk, crop, on).filter(|_| step == Step::PlantOut));
    }
    let mut lines = Vec::new();
    let mut buttons = Vec::new();
    if !done.is_empty() {
        let about = args().text("crops", names(desk, &done)).text("date", desk.date(on));
        lines.push(match step {
            Step::PotUp => desk.say("potted-noted", &about),
            Step::HardenOff => desk.say("hardened-noted", &about),
            _ => desk.say("planted-noted", &about),
        });
        lines.extend(early);
        desk.change(Change::Together(marks));
        buttons = undo_buttons(desk);
    }
    if !missing.is_empty() {
        let about = args().text("crops", names(desk, &missing));
        lines.push(match step {
            Step::PlantOut => desk.say("planted-none", &about),
            _ => desk.say("step-none", &about),
        });
    }
    desk.reply_with(lines.join("\n"), buttons);
    true
}

/// "Cucumbers and peas".
fn names(desk: &Desk<'_>, crops: &[CropId]) -> String {
    let names: Vec<String> = crops.iter().map(|id| desk.speech.crops(id).to_owned()).collect();
    desk.speech.voice.list_and(&names)
}

/// The crops that were told, each with its number; a word for several is the one that the member
/// grows, where that is one.
fn crops_told(desk: &Desk<'_>, told: &SownText) -> Vec<(CropId, Option<u32>)> {
    let mine = |id: &&CropId| {
        desk.facts.crops.contains(id) || desk.facts.sowings.iter().any(|s| s.crop == **id)
    };
    let mut crops = told.crops.clone();
    for (word, count) in &told.ambiguous {
        if let [only] = word.means.iter().filter(mine).collect::<Vec<_>>().as_slice() {
            crops.push(((*only).clone(), *count));
        }
    }
    crops
}

/// The step that was meant: of the sowing of so many plants, or else of the earliest one, that has
/// neither this step nor a later one behind it; without a sowing, of the plan.
fn waiting_step(desk: &Desk<'_>, crop: &Crop, step: Step, count: Option<u32>) -> Option<JobKey> {
    let known = desk.known();
    let waits = |sowing: &&Sowing| {
        let done = |step: &Step| {
            let mark = known.mark(&sowing.key(*step)).and_then(|mark| mark.mark);
            matches!(mark, Some(Mark::Done(_)))
        };
        let overtaken = [Step::PotUp, Step::HardenOff, Step::PlantOut];
        sowing.crop == crop.id
            && sowing.way == Way::Indoors
            && still_grows(desk, sowing)
            && !overtaken.iter().filter(|later| **later >= step).any(done)
    };
    let waiting: Vec<&Sowing> = desk.facts.sowings.iter().filter(waits).collect();
    let counted = waiting.iter().find(|sowing| count.is_some() && sowing.count == count);
    let earliest = || waiting.iter().min_by_key(|sowing| (sowing.sown_on, sowing.id));
    if let Some(sowing) = counted.or_else(earliest) {
        return Some(sowing.key(step));
    }
    if !desk.facts.crops.contains(&crop.id) {
        return None;
    }
    let coming = coming_jobs([crop], known, desk.garden()?, desk.today);
    let mut planned = coming.into_iter().map(|due| due.job.key);
    planned.find(|key| key.step == step && key.sowing.is_none())
}

/// What to do for plants that went out before their days.
fn too_early(desk: &Desk<'_>, crop: &Crop, on: NaiveDate) -> Option<String> {
    let weighed = assess(crop, desk.garden()?, Step::PlantOut, on);
    let too_early = weighed.verdict().is_some_and(|verdict| verdict == Verdict::TooEarly);
    let from = weighed.next_date.filter(|_| too_early)?;
    Some(desk.say("planted-early", &desk.speech.about(&crop.id).text("from", desk.date(from))))
}

/// "The cucumbers died": their sowing ends, and the answer says whether sowing again is worth it.
/// `false` where the text tells no such thing, or of no crop.
pub(super) fn lost(desk: &mut Desk<'_>, text: &str) -> bool {
    let understanding = &desk.tongue.understanding;
    let Some(some) = understanding.lost_in(text) else { return false };
    let told = understanding.sown_in(text, desk.today);
    let crops = crops_told(desk, &told);
    let Some((first, count)) = crops.first().cloned() else { return false };
    let named: Vec<CropId> = crops.into_iter().map(|(id, _)| id).collect();
    let of_crop = |sowing: &&Sowing| named.contains(&sowing.crop) && still_grows(desk, sowing);
    let growing: Vec<Sowing> = desk.facts.sowings.iter().filter(of_crop).cloned().collect();
    let whole = |sowing: &&Sowing| count.is_none() || sowing.count == count;
    if some || (count.is_some() && !growing.iter().any(|sowing| whole(&sowing))) {
        let about = args().text("crops", names(desk, &named));
        let text = desk.say("lost-some", &about);
        desk.reply(text);
        return true;
    }
    let growing: Vec<Sowing> = growing.into_iter().filter(|sowing| whole(&sowing)).collect();
    let on = match told.on {
        ToldDay::On(on) if on <= desk.today => on,
        _ => desk.today,
    };
    match growing.as_slice() {
        [] => {
            let head = desk.say("lost-none", &desk.speech.about(&first));
            offer_again(desk, &first, None, head, Vec::new());
        }
        [only] => end(desk, only, on),
        several => {
            let buttons: Buttons = several
                .iter()
                .take(MOST_OFFERED)
                .map(|sowing| {
                    let label = sowing_words(desk, sowing);
                    vec![Button::press(label, Press::SowingLost(sowing.id))]
                })
                .collect();
            let text = desk.say_key("lost-which");
            desk.reply_with(text, buttons);
        }
    }
    true
}

/// The sowing of this number died, said by a button.
pub(super) fn lost_by_button(desk: &mut Desk<'_>, id: i64) {
    let sowing = desk.facts.sowings.iter().find(|sowing| sowing.id == id && sowing.lives());
    let Some(sowing) = sowing.cloned() else {
        let notice = desk.say_key("notice-job-gone");
        desk.answer_press(Some(notice));
        return;
    };
    end(desk, &sowing, desk.today);
}

fn end(desk: &mut Desk<'_>, sowing: &Sowing, on: NaiveDate) {
    let on = on.max(sowing.sown_on);
    let ended = Sowing { ended_on: Some(on), ..sowing.clone() };
    let mut changes = vec![Change::KeepSowing(ended)];
    // The job that it answered is open again.
    changes.extend(sowing.job.clone().map(|job| Change::MarkJob(job, None)));
    desk.change(Change::Together(changes));
    let head = desk.say("lost-noted", &args().text("what", sowing_words(desk, sowing)));
    let undo = undo_buttons(desk);
    offer_again(desk, &sowing.crop, Some(sowing), head, undo);
}

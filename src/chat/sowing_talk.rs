//! Talking about sowings that were made: recording them, and what became of them.

use chrono::{NaiveDate, TimeDelta};

use crate::club::{MOST_PLANTS, Mark, Sowing, followed};
use crate::messages::{Buttons, Press};
use crate::planning::{Crop, CropId, Garden, JobKey, Step, Way, best_ways, sowing_place};
use crate::wording::{args, quoted};

use super::amiss_text::amiss;
use super::answer::unknown_name;
use super::desk::Desk;
use super::emergence_answer::{bounds, is_believed, whole};
use super::facts::{Change, Expected};
use super::question_talk::which_crop;
use super::sowing_text::{follow_up, short_follow_up, sowing_words};
use super::understand::{OwnName, SownText, ToldDay};

/// The most crops for which each sowing is told with all that follows.
const MOST_WHOLE: usize = 3;

/// The most characters of a text that waits for an answer.
const MOST_KEPT: usize = 400;

/// The most sowings that one message can record.
const MOST_AT_ONCE: usize = 50;

/// Days after which nobody records a sowing any more.
const LONGEST_AGO_DAYS: i64 = 400;

/// `/sown basil 12 on 3 April`, or "sowed 12 basil today" without its first word. `head` is how the
/// sentence began, which may name the day: "yesterday I sowed".
pub(super) fn sown(desk: &mut Desk<'_>, rest: &str, head: &str) {
    if rest.trim().is_empty() {
        desk.expect(Expected::Sown);
        let text = desk.say_key("sown-how-to");
        desk.reply(text);
        return;
    }
    let mut told = sown_in(desk, rest, desk.today);
    if told.on == ToldDay::NotSaid {
        told.on = sown_in(desk, head, desk.today).on;
    }
    take(desk, rest, &told);
}

/// Whether what stands before "sown" is what was sown and nothing else: a number and a crop, or
/// crops alone.
pub(super) fn tells_a_sowing(desk: &Desk<'_>, rest: &str) -> bool {
    let counted = rest.trim_start().starts_with(|c: char| c.is_ascii_digit());
    if counted {
        return !sown_in(desk, rest, desk.today).crops.is_empty();
    }
    let list = desk.tongue.understanding.crops_in(rest);
    !list.found.is_empty() && list.unknown.is_empty()
}

/// Records what was told, asks which crop is meant, or says why nothing changed.
fn take(desk: &mut Desk<'_>, text: &str, told: &SownText) {
    if let Some((word, _)) = told.ambiguous.first() {
        let (ask, buttons) = which_crop(desk, word, desk.today);
        desk.expect(Expected::WhichSown { told: text.chars().take(MOST_KEPT).collect() });
        desk.reply_with(ask, buttons);
        return;
    }
    match sowings_of(desk, told) {
        Ok(sowings) => record(desk, sowings, &told.strange),
        Err(why) => desk.reply(why),
    }
}

/// The name of the crop that was sown came in words; `false` where it is something else.
pub(super) fn which_came(desk: &mut Desk<'_>, told: &str, text: &str) -> bool {
    let list = desk.tongue.understanding.crops_in(text);
    let ([crop], true) = (list.found.as_slice(), list.unknown.is_empty()) else { return false };
    meant(desk, told, crop, desk.today);
    true
}

/// A word of what was told on the day `on` means this crop.
pub(super) fn meant(desk: &mut Desk<'_>, text: &str, crop: &CropId, on: NaiveDate) {
    let told = sown_in(desk, text, on).meaning(crop);
    take(desk, text, &told);
}

/// Takes a text as what was sown; `false` where it names no crop.
pub(super) fn sown_came(desk: &mut Desk<'_>, text: &str) -> bool {
    if text.contains('?') || sown_in(desk, text, desk.today).crops.is_empty() {
        return false;
    }
    sown(desk, text, "");
    true
}

/// What a text tells of sowings; a variety's name stands for its crop.
fn sown_in(desk: &Desk<'_>, text: &str, on: NaiveDate) -> SownText {
    let own = OwnName::all(&desk.facts.varieties);
    desk.tongue.understanding.sown_in_own(text, on, &own)
}

/// The sowings that were told, or the one sentence that says why there are none.
fn sowings_of(desk: &Desk<'_>, told: &SownText) -> Result<Vec<Sowing>, String> {
    if let Some(name) = told.unknown.first() {
        return Err(unknown_name(&name.written, &name.near, &desk.speech));
    }
    let on = match &told.on {
        ToldDay::NotSaid => desk.today,
        ToldDay::On(on) => *on,
        ToldDay::Impossible(written) => {
            return Err(desk.say("sown-impossible-day", &args().text("written", written)));
        }
    };
    if let Some(written) = &told.stray {
        return Err(desk.say("sown-stray", &args().text("written", written)));
    }
    if told.crops.is_empty() {
        return Err(desk.say_key("sown-how-to"));
    }
    if on > desk.today {
        return Err(desk.say("sown-future", &args().text("date", desk.date(on))));
    }
    if desk.today.signed_duration_since(on).num_days() > LONGEST_AGO_DAYS {
        return Err(desk.say("sown-long-ago", &args().text("date", desk.date(on))));
    }
    let voice = &desk.speech.voice;
    let warmth = told.warmth.map(|warmth| warmth.celsius(voice.units()));
    if let Some(celsius) = warmth.filter(|celsius| !is_believed(*celsius)) {
        return Err(voice.say("sown-bad-warmth", &bounds(voice, celsius)));
    }
    let room_c = warmth.map(whole);
    let mut sowings = Vec::new();
    for (at, (id, count)) in told.crops.iter().take(MOST_AT_ONCE).enumerate() {
        if count.is_some_and(|count| !(1..=MOST_PLANTS).contains(&count)) {
            let most = args().number("most", i64::from(MOST_PLANTS));
            return Err(desk.say("sown-bad-count", &most));
        }
        let strange = told.strange.iter().any(|(of, _)| of == id);
        let named = told.varieties.get(at).copied().flatten();
        // Of a variety that is not known it is not the one that is followed.
        let variety = if strange { None } else { variety_of(desk, id, named) };
        let crop = desk.catalogue().variety(id.as_str(), variety.as_deref());
        let Some(crop) = crop else { return Err(desk.say_key("sown-how-to")) };
        let Some(way) = told.way.or_else(|| usual_way(crop, desk.garden(), on)) else {
            return Err(desk.say("sown-planted", &desk.speech.about(id)));
        };
        if crop.ways.is_empty() {
            return Err(desk.say("sown-planted", &desk.speech.about(id)));
        }
        let sowing = Sowing { count: *count, room_c, ..new_sowing(desk, crop, variety, way, on) };
        sowings.push(sowing);
    }
    Ok(sowings)
}

/// The name of the variety that a sowing of a crop is of: the one with the number that was told,
/// or else the one that is followed; `None` where that has no name.
fn variety_of(desk: &Desk<'_>, crop: &CropId, told: Option<i64>) -> Option<String> {
    let kept = &desk.facts.varieties;
    let told = told.and_then(|number| kept.iter().find(|variety| variety.id == number));
    told.or_else(|| followed(kept, crop))?.name.clone()
}

/// A sowing of which only the crop, its variety, the way and the day are known.
fn new_sowing(
    desk: &Desk<'_>,
    crop: &Crop,
    variety: Option<String>,
    way: Way,
    on: NaiveDate,
) -> Sowing {
    let (label, season) = sowing_place(crop, desk.garden(), way, on);
    Sowing {
        id: 0,
        crop: crop.id.clone(),
        variety,
        way,
        count: None,
        sown_on: on,
        room_c: None,
        label,
        season,
        came_up_on: None,
        failed_on: None,
        ended_on: None,
        job: None,
    }
}

/// The way in which somebody most likely sowed on that day who did not say.
fn usual_way(crop: &Crop, garden: Option<Garden>, on: NaiveDate) -> Option<Way> {
    let best = garden.and_then(|garden| best_ways(crop, garden, on).into_iter().next());
    let by_date = match best.filter(|best| best.verdict.is_ok()).map(|best| best.step) {
        Some(Step::SowIndoors) => Some(Way::Indoors),
        Some(Step::SowOutdoors) => Some(Way::Outdoors),
        _ => None,
    };
    by_date.or_else(|| crop.ways.first().copied())
}

/// Keeps sowings and says what follows; `strange` are words beside crops that name no variety of
/// the member's.
fn record(desk: &mut Desk<'_>, sowings: Vec<Sowing>, strange: &[(CropId, String)]) {
    let mut parts = Vec::new();
    let mut lines = Vec::new();
    let mut new_crops: Vec<CropId> = Vec::new();
    let mut by_button: Vec<i64> = Vec::new();
    let whole = sowings.len() <= MOST_WHOLE;
    for sowing in sowings {
        let Some(crop) = desk.crop_of(&sowing) else { continue };
        // What was sown is the member's own from then on, whatever becomes of a list.
        if !desk.facts.growing.own.contains(&sowing.crop) && !new_crops.contains(&sowing.crop) {
            new_crops.push(sowing.crop.clone());
        }
        let what = sowing_words(desk, &sowing);
        let follow_up = if whole {
            follow_up(desk, crop, &sowing)
        } else {
            short_follow_up(desk, crop, &sowing)
        };
        let head = desk.say("sown-noted", &args().text("what", what));
        let amiss = amiss(desk, crop, &sowing);
        let told = [Some(head), amiss, follow_up].into_iter().flatten();
        lines.push(told.collect::<Vec<_>>().join("\n"));
        // What a button said already today is this sowing, now with its number and variety.
        let same = desk.facts.sowings.iter().find(|kept| {
            kept.lives()
                && kept.job.is_some()
                && kept.count.is_none()
                && !by_button.contains(&kept.id)
                && (&kept.crop, kept.way, kept.sown_on)
                    == (&sowing.crop, sowing.way, sowing.sown_on)
        });
        by_button.extend(same.map(|kept| kept.id));
        parts.push(match same {
            Some(kept) => Change::KeepSowing(Sowing {
                variety: sowing.variety,
                count: sowing.count,
                room_c: sowing.room_c,
                ..kept.clone()
            }),
            None => Change::RecordSowing(sowing),
        });
    }
    for (id, written) in strange {
        let about = args().text("crop", desk.speech.crops(id)).text("written", quoted(written));
        lines.push(desk.say("sown-variety-unknown", &about));
    }
    if !new_crops.is_empty() {
        let names = desk.speech.crop_list(&new_crops);
        lines.push(desk.say("grow-added", &args().text("crops", names)));
        parts.insert(0, Change::AddCrops(new_crops));
    }
    if desk.garden().is_none() {
        lines.push(desk.say_key("sown-without-frost"));
    }
    desk.change(Change::Together(parts));
    let buttons = undo_buttons(desk);
    desk.reply_with(lines.join("\n\n"), buttons);
}

/// The button that takes back what this message changed. In a group everybody could press it, so
/// there /undo does.
pub(super) fn undo_buttons(desk: &Desk<'_>) -> Buttons {
    if !desk.in_private() {
        return Vec::new();
    }
    vec![vec![desk.button("button-undo", Press::Undo(desk.facts.next_change))]]
}

/// The changes that the *done* of a sowing job makes: one sowing, and the mark.
pub(super) fn done_by_button(desk: &Desk<'_>, key: &JobKey) -> Vec<Change> {
    let mark = Change::MarkJob(key.clone(), Some(Mark::Done(desk.today)));
    let way = match key.step {
        Step::SowIndoors => Way::Indoors,
        Step::SowOutdoors => Way::Outdoors,
        _ => return vec![mark],
    };
    let of_job = |sowing: &&Sowing| sowing.lives() && sowing.job.as_ref() == Some(key);
    if desk.facts.sowings.iter().any(|sowing| of_job(&sowing)) {
        return vec![mark];
    }
    // One more of a series is like the one before it.
    let variety = match sowing_of(desk, key) {
        Some(before) => before.variety.clone(),
        None => variety_of(desk, &key.crop, None),
    };
    let crop = desk.catalogue().variety(key.crop.as_str(), variety.as_deref());
    let Some(crop) = crop else { return vec![mark] };
    // What was told in words today is this job's sowing.
    let told = desk.facts.sowings.iter().find(|sowing| {
        sowing.lives()
            && sowing.job.is_none()
            && (&sowing.crop, sowing.way, sowing.sown_on) == (&key.crop, way, desk.today)
    });
    let sowing = match told {
        Some(told) => Change::KeepSowing(Sowing { job: Some(key.clone()), ..told.clone() }),
        None => Change::RecordSowing(Sowing {
            // The job says which sowing of the year it is.
            label: key.label,
            season: key.season,
            job: Some(key.clone()),
            ..new_sowing(desk, crop, variety, way, desk.today)
        }),
    };
    vec![sowing, mark]
}

/// The changes that take back what was said of a job.
pub(super) fn undone_by_button(desk: &Desk<'_>, key: &JobKey) -> Vec<Change> {
    let mut changes = vec![Change::MarkJob(key.clone(), None)];
    if key.step.is_sowing() {
        let made = desk.facts.sowings.iter().rev().find(|sowing| sowing.job.as_ref() == Some(key));
        changes.extend(made.map(|sowing| Change::RemoveSowing(sowing.id)));
    }
    if key.step == Step::Check
        && let Some(sowing) = sowing_of(desk, key)
    {
        let as_before = Sowing { came_up_on: None, failed_on: None, ..sowing.clone() };
        if sowing.failed_on.is_some()
            && let Some(job) = &sowing.job
        {
            changes.push(Change::MarkJob(job.clone(), Some(Mark::Done(sowing.sown_on))));
        }
        changes.push(Change::KeepSowing(as_before));
    }
    changes
}

/// The sowing that a job follows from.
pub(super) fn sowing_of<'d>(desk: &Desk<'d>, key: &JobKey) -> Option<&'d Sowing> {
    desk.facts.sowings.iter().find(|sowing| Some(sowing.id) == key.sowing)
}

/// Records a sowing of today like an earlier one, by a button.
pub(super) fn sow_again(desk: &mut Desk<'_>, id: i64) {
    let like = desk.facts.sowings.iter().find(|sowing| sowing.id == id).cloned();
    let Some((like, crop)) = like.and_then(|like| Some((like.clone(), desk.crop_of(&like)?)))
    else {
        let notice = desk.say_key("notice-job-gone");
        desk.answer_press(Some(notice));
        return;
    };
    // A second press of the same button records nothing more.
    let sowing = Sowing {
        count: like.count,
        room_c: like.room_c,
        ..new_sowing(desk, crop, like.variety.clone(), like.way, desk.today)
    };
    if desk.facts.sowings.iter().any(|kept| kept.id > like.id && kept.like(&sowing)) {
        let notice = desk.say_key("notice-sown-already");
        desk.answer_press(Some(notice));
        return;
    }
    record(desk, vec![sowing], &[]);
}

/// Whether a sowing is over for the list: long past its harvest.
pub(super) fn is_over(sowing: &Sowing, last_step: Option<NaiveDate>, today: NaiveDate) -> bool {
    let until = last_step.unwrap_or(sowing.sown_on + TimeDelta::days(120));
    !sowing.lives() || today > until
}

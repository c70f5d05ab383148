//! Talking about cold spells that are waited out, a member's own and the club's.

use chrono::NaiveDate;

use crate::club::Mark;
use crate::messages::{Press, Topic, What};
use crate::planning::{Crop, Hold, JobKey, Label, Step, Verdict, Wait, assess};
use crate::reminders::coming_jobs;
use crate::wording::{args, sentence};

use super::desk::Desk;
use super::facts::Change;
use super::hold_words::HoldTold;
use super::sowing_talk::sowing_of;

/// The most jobs that the answer names.
const MOST_NAMED: usize = 8;

/// `/hold` or `/club hold`, with a length, with "off", or alone.
pub(super) fn hold(desk: &mut Desk<'_>, topic: Topic, rest: &str) {
    if !desk.topic_allowed(topic) {
        return;
    }
    let before = current(desk, topic);
    let open = before.filter(|hold| hold.holds_on(desk.today));
    if rest.trim().is_empty() {
        show(desk, topic);
        return;
    }
    let new = match desk.tongue.sentences.hold.read(rest) {
        Some(HoldTold::Off) if open.is_none() => {
            let lines = [Some(desk.say_key("hold-none")), club_counts(desk, topic, None)];
            desk.reply(lines.into_iter().flatten().collect::<Vec<_>>().join(" "));
            return;
        }
        Some(HoldTold::Off) => Some(open.and_then(|hold| hold.ended(desk.today))),
        Some(HoldTold::Days(days)) => {
            let hold = Hold::for_days(desk.today, days).ok();
            hold.map(|hold| Some(hold.continuing(before)))
        }
        None => None,
    };
    if let Some(hold) = new {
        keep(desk, topic, hold);
        return;
    }
    let text = match topic {
        Topic::Mine => desk.say_key("hold-bad"),
        Topic::Club => desk.say_key("hold-bad-club"),
    };
    desk.reply(text);
}

/// Sets a hold by a button, which takes a change back.
pub(super) fn set(desk: &mut Desk<'_>, topic: Topic, hold: Option<Hold>) {
    if desk.topic_allowed(topic) {
        keep(desk, topic, hold);
    }
}

fn current(desk: &Desk<'_>, topic: Topic) -> Option<Hold> {
    match topic {
        Topic::Mine => desk.facts.member.hold,
        Topic::Club => desk.facts.club.as_ref().and_then(|club| club.hold),
    }
}

fn show(desk: &mut Desk<'_>, topic: Topic) {
    let how_to = match topic {
        Topic::Mine => desk.say_key("hold-how-to"),
        Topic::Club => desk.say_key("hold-how-to-club"),
    };
    let holds = match topic {
        Topic::Mine => desk.settings.hold.is,
        Topic::Club => current(desk, topic),
    };
    let mut lines = Vec::new();
    match holds.filter(|hold| hold.holds_on(desk.today)) {
        Some(hold) => {
            let date = args().text("date", desk.date(hold.until()));
            lines.push(desk.say("hold-show", &date));
            if topic == Topic::Mine {
                lines.extend(consequences(desk, hold));
            }
        }
        None => lines.push(desk.say_key("hold-none")),
    }
    lines.push(how_to);
    desk.reply(lines.join("\n"));
}

/// Keeps a hold and says what it means, with a button that brings back what was before.
fn keep(desk: &mut Desk<'_>, topic: Topic, hold: Option<Hold>) {
    let before = current(desk, topic);
    desk.change(match topic {
        Topic::Mine => Change::MemberHold(hold),
        Topic::Club => Change::ClubHold(hold),
    });
    let open = hold.filter(|hold| hold.holds_on(desk.today));
    let mut lines = Vec::new();
    match (open, topic) {
        (Some(hold), Topic::Mine) => {
            lines.push(desk.say("hold-set", &args().text("date", desk.date(hold.until()))));
            lines.extend(club_counts(desk, topic, Some(hold)));
            let club = desk.facts.club.as_ref().and_then(|club| club.hold);
            lines.extend(consequences(desk, Hold::longer(Some(hold), club).unwrap_or(hold)));
        }
        (Some(hold), Topic::Club) => {
            lines.push(desk.say("hold-set-club", &args().text("date", desk.date(hold.until()))));
        }
        (None, Topic::Mine) => match club_counts(desk, topic, None) {
            Some(counts) => lines.extend([desk.say_key("hold-off-own"), counts]),
            None => lines.push(desk.say_key("hold-off")),
        },
        (None, Topic::Club) => lines.push(desk.say_key("hold-off-club")),
    }
    let mut buttons = Vec::new();
    if before != hold {
        buttons.push(vec![desk.button("button-undo", Press::Hold(topic, before))]);
    }
    let text = lines.join("\n");
    if matches!(desk.incoming.what, What::Pressed { .. }) {
        desk.edit_with(text, buttons);
    } else {
        desk.reply_with(text, buttons);
    }
}

/// That the club's hold counts for a member whose own is shorter.
fn club_counts(desk: &Desk<'_>, topic: Topic, own: Option<Hold>) -> Option<String> {
    let club = desk.facts.club.as_ref()?.hold?;
    let longer = club.holds_on(desk.today) && own.is_none_or(|own| own.until() < club.until());
    let date = args().text("date", desk.date(club.until()));
    (topic == Topic::Mine && longer).then(|| desk.say("hold-club-counts", &date))
}

/// The line of a settings page; none when nothing is held today.
pub(super) fn settings_line(desk: &Desk<'_>, hold: Option<Hold>, clubs: bool) -> Option<String> {
    let hold = hold.filter(|hold| hold.holds_on(desk.today))?;
    let date = args().text("date", desk.date(hold.until()));
    Some(if clubs {
        desk.say("settings-hold-club", &date)
    } else {
        desk.say("settings-hold", &date)
    })
}

/// What `/now` says of a hold that holds on the day.
pub(super) fn now_line(desk: &Desk<'_>, on: NaiveDate) -> Option<String> {
    let hold = desk.settings.hold.is.filter(|hold| hold.holds_on(on))?;
    Some(desk.say("now-held", &args().text("date", desk.date(hold.until()))))
}

/// What waits, and which seedlings cannot; nothing where no frost dates are known.
fn consequences(desk: &Desk<'_>, hold: Hold) -> Vec<String> {
    let Some(garden) = desk.garden() else { return Vec::new() };
    let bare = garden.holding(None);
    let put_off: Vec<_> = coming_jobs(desk.own_crops(), desk.known(), bare, desk.today)
        .into_iter()
        .filter(|due| hold.keeps_waiting(&due.job))
        .collect();
    let names: Vec<String> = put_off
        .iter()
        .filter_map(|due| Some(due.what(desk.crop(&due.job.key.crop)?, &desk.speech)))
        .take(MOST_NAMED)
        .collect();
    if names.is_empty() {
        return vec![desk.say_key("hold-nothing-waits")];
    }
    let jobs = args().text("jobs", desk.speech.voice.list_and(&names));
    let mut lines = vec![desk.say("hold-waits", &jobs)];
    let waiting: Vec<&JobKey> =
        put_off.iter().map(|due| &due.job.key).filter(|key| key.step == Step::PlantOut).collect();
    let seedlings: Vec<(&Crop, Seedling)> = waiting
        .into_iter()
        .filter_map(|key| {
            let seedling = seedling(desk, key)?;
            let variety = seedling.variety.as_deref();
            Some((desk.catalogue().variety(key.crop.as_str(), variety)?, seedling))
        })
        .collect();
    let told: Vec<String> = seedlings
        .iter()
        .filter_map(|(crop, seedling)| cannot_wait(desk, hold, crop, seedling))
        .collect();
    if told.is_empty() && !seedlings.is_empty() {
        lines.push(desk.say_key("hold-can-wait"));
    }
    lines.extend(told);
    lines
}

/// A sowing indoors whose plants wait to go out.
struct Seedling {
    sown: NaiveDate,
    potted_up: bool,
    /// The name of its variety, where it was recorded with one.
    variety: Option<String>,
}

/// The seedling that a setting out is about, where its sowing was recorded or said to be done.
fn seedling(desk: &Desk<'_>, set_out: &JobKey) -> Option<Seedling> {
    let done = |step| {
        let key = JobKey { step, ..set_out.clone() };
        let mark = desk.facts.marks.iter().find(|mark| mark.key == key)?.mark;
        if let Some(Mark::Done(on)) = mark { Some(on) } else { None }
    };
    let (sown, variety) = match set_out.sowing {
        Some(_) => {
            let sowing = sowing_of(desk, set_out)?;
            (sowing.sown_on, sowing.variety.clone())
        }
        None => (done(Step::SowIndoors)?, None),
    };
    Some(Seedling { sown, potted_up: done(Step::PotUp).is_some(), variety })
}

/// What to do with a seedling that cannot wait.
fn cannot_wait(desk: &Desk<'_>, hold: Hold, crop: &Crop, seedling: &Seedling) -> Option<String> {
    let garden = desk.garden()?;
    let age = hold.until().signed_duration_since(seedling.sown).num_days();
    let about = args()
        .text("crops", sentence(&desk.speech.crops_of(&crop.id, seedling.variety.as_deref())))
        .text("age", desk.speech.voice.weeks(age));
    match hold.wait(crop, garden.place, seedling.sown, seedling.potted_up) {
        Wait::Can => None,
        Wait::PottedUp => Some(desk.say("hold-pot-up", &about)),
        Wait::TooOld => {
            let again = [Step::SowIndoors, Step::SowOutdoors]
                .map(|step| assess(crop, garden, step, desk.today))
                .into_iter()
                .filter(|again| again.verdict().is_some_and(Verdict::workable))
                .filter_map(|again| again.window)
                .filter(|window| window.label == Label::Spring)
                .map(|window| window.to)
                .max();
            Some(match again {
                Some(last) => {
                    desk.say("hold-too-old-sow-again", &about.text("last", desk.date(last)))
                }
                None => desk.say("hold-too-old", &about),
            })
        }
    }
}

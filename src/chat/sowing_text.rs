//! Sowings in words: which one it is, and what follows from it.

use crate::club::Sowing;
use crate::planning::{
    Crop, HarvestKind, SowingPlan, Step, Verdict, Way, assess, oldest_weeks, sowing_plan,
    sown_too_early,
};
use crate::wording::{args, sentence};

use super::coming_up_text::coming_up_lines;
use super::desk::Desk;

/// "12 basil, sown indoors on April 22", with the name of its variety where that is known.
pub(super) fn sowing_words(desk: &Desk<'_>, sowing: &Sowing) -> String {
    let crops = desk.speech.crops_of(&sowing.crop, sowing.variety.as_deref());
    let crops = match sowing.count {
        Some(count) => {
            let counted = args().number("count", i64::from(count));
            desk.say("sowing-count", &counted.text("crops", crops))
        }
        None => crops,
    };
    let args = args().text("crops", crops).text("date", desk.date(sowing.sown_on));
    match sowing.way {
        Way::Indoors => desk.say("sowing-indoors", &args),
        Way::Outdoors => desk.say("sowing-outdoors", &args),
    }
}

/// The plan of a sowing in the member's garden.
pub(super) fn plan_of(desk: &Desk<'_>, crop: &Crop, sowing: &Sowing) -> SowingPlan {
    sowing_plan(crop, desk.garden(), &sowing.sown(&desk.facts.marks))
}

/// When it should be up, or that it will not, in a line.
pub(super) fn short_follow_up(desk: &Desk<'_>, crop: &Crop, sowing: &Sowing) -> Option<String> {
    let plan = plan_of(desk, crop, sowing);
    let told = !leaves_dates_out(desk, crop, sowing, &plan);
    told.then(|| coming_up(desk, crop, sowing, &plan).into_iter().next()).flatten()
}

/// Whether it was sown in the ground so early that days to look forward to would only mislead. That
/// its soil is too cold to come up is told all the same.
fn leaves_dates_out(desk: &Desk<'_>, crop: &Crop, sowing: &Sowing, plan: &SowingPlan) -> bool {
    let sown = sowing.sown(&desk.facts.marks);
    let early = desk.garden().and_then(|garden| sown_too_early(crop, garden, &sown));
    early.is_some() && plan.coming_up.is_none_or(|coming| coming.outlook.comes_up())
}

fn coming_up(desk: &Desk<'_>, crop: &Crop, sowing: &Sowing, plan: &SowingPlan) -> Vec<String> {
    coming_up_lines(desk, crop, sowing, plan)
}

/// That plants sown too early outgrow their cells before they can go out, and when to sow again.
fn too_old(desk: &Desk<'_>, crop: &Crop, sowing: &Sowing, plan: &SowingPlan) -> Option<String> {
    let garden = desk.garden()?;
    let indoors = crop.indoors.as_ref().filter(|_| sowing.way == Way::Indoors)?;
    let out = plan.of(Step::PlantOut)?;
    let oldest = oldest_weeks(&indoors.age_weeks, garden.place);
    let age = out.ideal_from.signed_duration_since(sowing.sown_on).num_days();
    if age <= oldest * 7 {
        return None;
    }
    let voice = &desk.speech.voice;
    let about = args().text("age", voice.weeks(age)).text("most", voice.weeks(oldest * 7));
    let again = assess(crop, garden, Step::SowIndoors, desk.today);
    match again.next_date.filter(|_| again.verdict() == Some(Verdict::TooEarly)) {
        Some(from) => Some(desk.say("sowing-too-old", &about.text("from", desk.date(from)))),
        None => Some(desk.say("sowing-old", &about)),
    }
}

/// Everything that follows from a sowing, a line each.
pub(super) fn follow_up(desk: &Desk<'_>, crop: &Crop, sowing: &Sowing) -> Option<String> {
    let voice = &desk.speech.voice;
    let plan = plan_of(desk, crop, sowing);
    if leaves_dates_out(desk, crop, sowing, &plan) {
        return None;
    }
    let mut lines = coming_up(desk, crop, sowing, &plan);
    if plan.coming_up.is_some_and(|coming| !coming.outlook.comes_up()) {
        // Dates of plants that do not come up would only mislead.
        return Some(lines.join("\n"));
    }
    for (step, window) in &plan.steps {
        let days = voice.range(window.ideal_from, window.ideal_to);
        let what = sentence(&desk.speech.step_phrase(*step, crop));
        let args = args().text("what", what).text("days", days);
        lines.push(match step {
            Step::Check => continue,
            Step::PlantOut if crop.frost_kills() => {
                let nights = voice.temperature(crop.coldest_night_c());
                let from = args.text("from", desk.date(window.ideal_from)).text("nights", nights);
                desk.say("sowing-out-mild", &from)
            }
            Step::PlantOut | Step::HardenOff => {
                desk.say("sowing-from", &args.text("from", desk.date(window.ideal_from)))
            }
            Step::Harvest if crop.harvest.kind == HarvestKind::Bloom => {
                desk.say("sowing-bloom", &args)
            }
            Step::Harvest => desk.say("sowing-harvest", &args),
            _ => desk.say("sowing-step", &args),
        });
    }
    lines.extend(too_old(desk, crop, sowing, &plan));
    if plan.too_late {
        lines.push(desk.say("sowing-too-late", &desk.speech.about(&crop.id)));
    }
    (!lines.is_empty()).then(|| lines.join("\n"))
}

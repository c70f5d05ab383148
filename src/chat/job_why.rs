//! Why a job of the plan stands where it does, in one sentence.

use crate::planning::{Crop, Job, JobBasis, Label, Season, Step, cut_short_by_heat, windows};
use crate::wording::{Speech, args};

use super::place_text::cover_name;

/// The reason for a job's dates, and the cover that moved them where one did.
#[must_use]
pub fn job_why(crop: &Crop, job: &Job, season: &Season, speech: &Speech) -> String {
    let why = season_why(crop, job, season, speech);
    let Some(cover) = season.cover else { return why };
    let bare = windows(crop, &Season { cover: None, ..*season });
    let mut bare = bare.of(job.key.step).iter().filter(|window| window.label == job.window.label);
    let moved = bare.next().is_some_and(|window| window.ideal_from != job.window.ideal_from);
    if !moved {
        return why;
    }
    let args = args().text("cover", cover_name(cover, speech));
    format!("{why} {}", speech.voice.say("plan-why-cover", &args))
}

fn season_why(crop: &Crop, job: &Job, season: &Season, speech: &Speech) -> String {
    let voice = &speech.voice;
    if let Some(dry) = season.dry.filter(|_| !matches!(job.key.step, Step::HardenOff | Step::PotUp))
    {
        let args = args()
            .text("starts", voice.date(season.last_frost))
            .text("heat", voice.date(dry.heat))
            .text("coolest", voice.date(dry.coolest_to));
        return if crop.outdoors.bears_heat {
            voice.say("why-months-bears-heat", &args)
        } else if dry.by_rain {
            voice.say("plan-why-months-rain", &args)
        } else {
            voice.say("plan-why-months", &args)
        };
    }
    let first = season.first_frost.map_or_else(String::new, |first| voice.date(first));
    let args = args().text("last_frost", voice.date(season.last_frost)).text("first_frost", first);
    match job.basis {
        JobBasis::Before(start) => {
            let days = lead_days(crop, job.key.step);
            let then = speech.step_phrase(start, crop);
            let args = args.text("days", voice.weeks(days)).text("then", then);
            return voice.say("plan-why-before", &args);
        }
        JobBasis::Hedge => return voice.say("plan-why-hedge", &args),
        JobBasis::Repeat(last) => {
            let args = args.text("last", voice.date(last));
            return if cut_short_by_heat(crop) {
                voice.say("plan-why-repeat-heat", &args)
            } else {
                voice.say("plan-why-repeat", &args)
            };
        }
        JobBasis::Sowing(sown) => {
            return voice.say("plan-why-sown", &args.text("sown", voice.date(sown)));
        }
        JobBasis::Season => {}
    }
    match (job.key.step, job.window.label) {
        (Step::HardenOff, _) => voice.say("plan-why-harden-off", &args),
        (Step::PotUp, _) => voice.say("plan-why-pot-up", &args),
        (_, Label::Autumn) => voice.say("plan-why-autumn", &args),
        (_, Label::Overwintering) if crop.ways.is_empty() => {
            voice.say("plan-why-overwinter", &args)
        }
        (_, Label::Overwintering) => voice.say("plan-why-second-year", &args),
        (Step::SowIndoors, Label::Spring) => {
            let age = crop.indoors.as_ref().map(|indoors| indoors.age_weeks.ideal);
            let age =
                age.map_or_else(String::new, |age| voice.weeks_range(7 * age.low, 7 * age.high));
            voice.say("plan-why-sow-indoors", &args.text("age", age))
        }
        (Step::SowOutdoors, Label::Spring) => {
            let minimum = crop.seed.soil_c.as_ref().map(|soil| voice.temperature(soil.minimum));
            let args = args.text("minimum", minimum.unwrap_or_default());
            voice.say("plan-why-sow-outdoors", &args)
        }
        (_, Label::Spring) => {
            let args = args.text("nights", voice.temperature(crop.coldest_night_c()));
            voice.say("plan-why-plant-out", &args)
        }
    }
}

/// How many days before the start a treatment begins.
fn lead_days(crop: &Crop, step: Step) -> i64 {
    let treatment = crop.seed.pretreat.iter().find(|treatment| Step::from(treatment.is) == step);
    treatment.map_or(0, |treatment| treatment.lead_days)
}

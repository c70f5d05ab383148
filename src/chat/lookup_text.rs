//! Answers that look something up: the windows of a crop, and how it is sown and grown.

use chrono::{Datelike, NaiveDate};

use crate::planning::{
    Assessment, Crop, Garden, Label, Light, Place, Reason, StartFrom, Step, Treatment, Way, Window,
    Windows, windows as windows_of,
};
use crate::wording::{Speech, args, sentence};

use super::caution_text::caution_line;
use super::too_short_text::TooShort;

/// The season's windows of a crop, a line each; one step's alone where it was asked for.
///
/// A window that is over has no line. Where none is left, the lines are the next season's; where
/// only the steps of plants already begun are left, the next season's sowing follows them.
pub(super) fn when_text(
    crop: &Crop,
    garden: Garden,
    weighed: &Assessment,
    step: Option<Step>,
    speech: &Speech,
) -> String {
    let voice = &speech.voice;
    let windows = &weighed.windows;
    let about = speech.about(&crop.id);
    if weighed.verdict == Err(Reason::NoFrostHere) {
        return format!(
            "{}\n{}",
            voice.say("reason-no-frost-here", &about),
            speech.plain("why-no-frost")
        );
    }
    if windows.season_too_short && windows.plant_out.is_empty() && windows.sow_outdoors.is_empty() {
        let too_short = TooShort { crop, season: weighed.season, on: weighed.on, speech };
        return format!("{}\n{}", too_short.verdict(), too_short.helps());
    }
    let steps: Vec<Step> = match step {
        Some(step) if !windows.of(step).is_empty() => vec![step],
        _ => ordered_steps(crop),
    };
    let open = |steps: &[Step], windows: &Windows| -> Vec<(Step, Window)> {
        let of_step = |step: Step| windows.of(step).iter().map(move |window| (step, *window));
        steps
            .iter()
            .copied()
            .flat_map(of_step)
            .filter(|(_, window)| window.to >= weighed.on)
            .collect()
    };
    let mut told = open(&steps, windows);
    let next = next_season(crop, garden, weighed);
    let begins = |step: Step| step.is_sowing() || crop.ways.is_empty();
    let mut headed = weighed;
    if let Some(next) = &next {
        if told.is_empty() {
            headed = next;
            told = open(&steps, &next.windows);
        } else if !told.iter().any(|(step, _)| begins(*step)) && step.is_none() {
            let sowing: Vec<Step> = steps.into_iter().filter(|step| begins(*step)).collect();
            told.extend(open(&sowing, &next.windows));
        }
    }
    let mut lines = vec![sentence(&when_head(crop, headed, &headed.windows, speech))];
    for (step, mut window) in told {
        if headed.season.is_some_and(|season| season.dry.is_some()) {
            // The season is one, so its windows are not for autumn alone.
            window.label = Label::Spring;
        }
        lines.push(window_line(crop, step, &window, speech, weighed.on));
    }
    lines.join("\n")
}

/// The same assessment with the season after and its windows.
fn next_season(crop: &Crop, garden: Garden, weighed: &Assessment) -> Option<Assessment> {
    let season = garden.season_of(weighed.season?.year + 1)?;
    let windows = windows_of(crop, &season);
    Some(Assessment { season: Some(season), windows, ..weighed.clone() })
}

fn when_head(crop: &Crop, weighed: &Assessment, windows: &Windows, speech: &Speech) -> String {
    let voice = &speech.voice;
    let about = speech.about(&crop.id);
    let Some(season) = weighed.season else { return voice.say("when-head", &about) };
    if season.dry.is_some() {
        return voice.say("when-head-months", &about);
    }
    let from_autumn =
        windows.plant_out.iter().any(|w| w.label == Label::Overwintering && crop.ways.is_empty());
    match season.first_frost.filter(|_| from_autumn) {
        Some(first) => voice
            .say("when-head-first-frost", &about.text("frost", date(speech, first, weighed.on))),
        None => voice.say(
            "when-head-last-frost",
            &about.text("frost", date(speech, season.last_frost, weighed.on)),
        ),
    }
}

/// The steps in the order worth reading: the better way of starting first.
fn ordered_steps(crop: &Crop) -> Vec<Step> {
    let indoors = [Step::SowIndoors, Step::PotUp, Step::HardenOff, Step::PlantOut];
    if crop.ways.first() == Some(&Way::Outdoors) {
        std::iter::once(Step::SowOutdoors).chain(indoors).collect()
    } else {
        indoors.into_iter().chain(std::iter::once(Step::SowOutdoors)).collect()
    }
}

fn window_line(crop: &Crop, step: Step, window: &Window, speech: &Speech, on: NaiveDate) -> String {
    let voice = &speech.voice;
    let days = if window.ideal_from == window.ideal_to {
        date(speech, window.ideal_from, on)
    } else if window.ideal_from.year() > on.year() {
        voice.range_with_year(window.ideal_from, window.ideal_to)
    } else {
        voice.range(window.ideal_from, window.ideal_to)
    };
    let args = args()
        .text("what", sentence(&speech.step_phrase(step, crop)))
        .text("days", &days)
        .text("last", date(speech, window.to, on));
    match window.label {
        Label::Autumn => voice.say("when-line-autumn", &args),
        Label::Spring | Label::Overwintering if window.to > window.ideal_to => {
            voice.say("when-line-late", &args)
        }
        Label::Spring | Label::Overwintering => voice.say("when-line", &args),
    }
}

fn date(speech: &Speech, date: NaiveDate, on: NaiveDate) -> String {
    if date.year() == on.year() {
        speech.voice.date(date)
    } else {
        speech.voice.date_with_year(date)
    }
}

/// How a crop is sown and grown: depth, warmth, light, cell, days to come up, spacing.
pub(super) fn how_text(crop: &Crop, place: Option<Place>, speech: &Speech) -> String {
    let voice = &speech.voice;
    let about = || speech.about(&crop.id);
    let mut lines = vec![sentence(&voice.say("how-head", &about()))];
    let seed = &crop.seed;
    match crop.start_from.first() {
        Some(StartFrom::Tubers) => lines.push(voice.say("how-from-tubers", &about())),
        Some(StartFrom::Cloves) => lines.push(voice.say("how-from-cloves", &about())),
        Some(StartFrom::Slips) => lines.push(voice.say("how-from-slips", &about())),
        Some(StartFrom::Crowns) => lines.push(voice.say("how-from-crowns", &about())),
        Some(StartFrom::Sets) => lines.push(voice.say("how-from-sets", &about())),
        Some(StartFrom::Seed) | None => {}
    }
    for treatment in &seed.pretreat {
        let args = about().text("lead", voice.weeks(treatment.lead_days));
        lines.push(match treatment.is {
            Treatment::Soak => voice.say("how-soak", &args),
            Treatment::Nick => voice.say("how-nick", &args),
            Treatment::Chill => voice.say("how-chill", &args),
            Treatment::Chit => voice.say("how-chit", &args),
            Treatment::RootSlips => voice.say("how-root-slips", &args),
        });
    }
    if let Some(depth) = &seed.depth_mm {
        let args = about().text("depth", voice.length_range_mm(depth.is.low, depth.is.high));
        lines.push(match (depth.is.high, crop.ways.is_empty()) {
            (0, _) => voice.say("how-surface", &args),
            (_, true) => voice.say("how-planting-depth", &args),
            (_, false) => voice.say("how-depth", &args),
        });
    }
    match seed.light.as_ref().map(|light| light.is) {
        Some(Light::Light) => lines.push(speech.plain("how-light")),
        Some(Light::Dark) => lines.push(speech.plain("how-dark")),
        Some(Light::Either) | None => {}
    }
    if let Some(soil) = &seed.soil_c {
        let args = about()
            .text("best", voice.temperature_range(soil.optimum.low, soil.optimum.high))
            .text("minimum", voice.temperature(soil.minimum));
        lines.push(voice.say("how-warmth", &args));
    }
    if let Some(days) = &seed.emerge_days {
        let days = place.map_or(days.is, |place| place.emerge_days(days.is));
        let days = about().text("days", voice.days_range(days.low, days.high));
        lines.push(voice.say("how-days", &days));
    }
    if let Some(indoors) = &crop.indoors {
        let age = &indoors.age_weeks.ideal;
        let seeds = seed.per_cell.as_ref().map_or(1, |seeds| seeds.is);
        let args = about()
            .text("cell", voice.length_mm(indoors.cell_mm.sow))
            .number("seeds", seeds)
            .text("age", voice.weeks_range(7 * age.low, 7 * age.high));
        lines.push(voice.say("how-cell", &args));
        if let Some(next) = indoors.cell_mm.next.filter(|_| indoors.stay_weeks.potted_up.is_some())
        {
            lines.push(voice.say("how-next-pot", &about().text("pot", voice.length_mm(next))));
        }
    }
    let spacing = &crop.outdoors.spacing_cm;
    let args = about()
        .text("apart", voice.length_mm(spacing.plants * 10))
        .text("rows", voice.length_mm(spacing.rows * 10));
    lines.push(voice.say("how-spacing", &args));
    let warm_indoors =
        crop.indoors.is_some() && seed.soil_c.as_ref().is_some_and(|soil| soil.optimum.low >= 21);
    if warm_indoors {
        lines.push(speech.plain("caution-heat-and-water"));
    }
    if crop.indoors.is_some() {
        lines.push(speech.plain("caution-dusty-compost"));
    }
    lines.extend(crop.cautions.iter().map(|caution| caution_line(*caution, speech)));
    lines.join("\n")
}

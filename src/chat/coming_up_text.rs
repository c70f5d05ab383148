//! When a sowing should be up in words: the days, or that it will not come up and why.

use chrono::NaiveDate;

use crate::club::Sowing;
use crate::planning::{
    ComingUp, Crop, Outlook, Side, SowingPlan, StartAgain, Step, Way, fit_soil_c, start_again,
};
use crate::wording::{Speech, args};

use super::desk::Desk;
use super::emergence_answer::{degrees, told_by_trials, too_slow};

/// A line or two about coming up; the first is what matters most. Empty where nothing is known.
pub(super) fn coming_up_lines(
    desk: &Desk<'_>,
    crop: &Crop,
    sowing: &Sowing,
    plan: &SowingPlan,
) -> Vec<String> {
    let Some(coming) = plan.coming_up else { return Vec::new() };
    let given = sowing.room_c.is_some();
    let resow = args()
        .text("resow", plan.resow_on.map_or_else(String::new, |day| desk.date(day)))
        .text("then", then(desk, crop, sowing.way, plan.resow_on));
    let warning = warning(&desk.speech, crop, sowing.way, coming);
    let days = plan.emergence.map(|(first, last)| desk.speech.voice.range(first, last));
    let at = coming.at_c.map(|at_c| desk.speech.voice.measured_temperature(degrees(at_c)));
    let expected = match (days, at, coming.outlook) {
        (None, ..) | (_, _, Outlook::Uncertain(_)) => desk.say("sowing-none-by", &resow),
        (Some(days), Some(_), Outlook::NotTested) | (Some(days), None, _) => {
            desk.say("sowing-up", &resow.text("days", days))
        }
        (Some(days), Some(at), _) if given => {
            desk.say("sowing-up-at", &resow.text("days", days).text("at", at))
        }
        (Some(days), Some(at), _) => {
            desk.say("sowing-up-room", &resow.text("days", days).text("at", at))
        }
    };
    let warning = warning.map(|what| desk.say("sowing-warning", &args().text("what", what)));
    if matches!(coming.outlook, Outlook::TooSlow(_) | Outlook::NotTested) {
        [Some(expected), warning].into_iter().flatten().collect()
    } else {
        warning.into_iter().chain([expected]).collect()
    }
}

/// What is done where nothing has come up by the day on which it is sown again, if that is still
/// worth it.
fn then(desk: &Desk<'_>, crop: &Crop, way: Way, by: Option<NaiveDate>) -> String {
    let step = Step::from(way);
    let Some((by, garden)) = by.zip(desk.garden()) else { return desk.say_key("nothing-up-again") };
    let date = |date: NaiveDate| args().text("date", desk.date(date));
    let again = start_again(crop, garden, step, by);
    if again.at_once(step) {
        return desk.say_key("nothing-up-again");
    }
    match again {
        StartAgain::From(same, from) if same == step => {
            desk.say("nothing-up-again-from", &date(from))
        }
        StartAgain::Now(other, _) | StartAgain::From(other, _) => {
            let what = desk.speech.step_phrase(other, crop);
            desk.say("nothing-up-other-way", &args().text("what", what))
        }
        StartAgain::BuyPlants { until, .. } => desk.say("nothing-up-buy", &date(until)),
        StartAgain::TooLate(Some(next)) => desk.say("nothing-up-too-late", &date(next)),
        StartAgain::TooLate(None) => desk.say_key("nothing-up-too-late-for-good"),
        StartAgain::NotKnown => desk.say_key("nothing-up-again"),
    }
}

/// What is wrong with the temperature and what would mend it; `None` where it comes up.
fn warning(speech: &Speech, crop: &Crop, way: Way, coming: ComingUp) -> Option<String> {
    let at_c = coming.at_c?;
    let voice = &speech.voice;
    let about = || speech.about(&crop.id).text("at", voice.measured_temperature(degrees(at_c)));
    let (why, side) = match coming.outlook {
        Outlook::Good => return None,
        Outlook::TooSlow(side) => (too_slow(speech, side), side),
        Outlook::Uncertain(side) | Outlook::NoneInTrials(side) => {
            (told_by_trials(speech, crop, degrees(at_c)), side)
        }
        Outlook::OutOfRange(Side::TooCold) if at_c <= 0 => {
            (speech.plain("soil-frozen"), Side::TooCold)
        }
        Outlook::OutOfRange(side) => {
            let range = crop.seed.soil_c.as_ref()?;
            let why = match side {
                Side::TooCold => {
                    let least = about().text("minimum", voice.temperature(range.minimum));
                    voice.say("sowing-below-least", &least)
                }
                Side::TooHot => {
                    let most = about().text("maximum", voice.temperature(range.maximum));
                    voice.say("sowing-above-most", &most)
                }
            };
            (why, side)
        }
        Outlook::NotTested => {
            let best = crop.seed.soil_c.as_ref().map(|range| range.optimum)?;
            let best = voice.temperature_range(best.low, best.high);
            return Some(voice.say("sowing-not-tested", &about().text("best", best)));
        }
    };
    let mend = mend(speech, crop, way, side);
    Some([Some(why), mend].into_iter().flatten().collect::<Vec<_>>().join(" "))
}

/// What makes the seed come up after all.
fn mend(speech: &Speech, crop: &Crop, way: Way, side: Side) -> Option<String> {
    let voice = &speech.voice;
    Some(match (side, way) {
        (Side::TooCold, Way::Indoors) => {
            let best = crop.seed.soil_c.as_ref()?.optimum;
            let days = crop.seed.emerge_days.as_ref()?.is;
            let args = args()
                .text("best", voice.temperature_range(best.low, best.high))
                .text("days", voice.days_range(days.low, days.high));
            voice.say("sowing-move-warmer", &args)
        }
        (Side::TooCold, Way::Outdoors) => {
            voice.say("sowing-ground-warmer", &args().text("warm", warm_enough(speech, crop)))
        }
        (Side::TooHot, _) => {
            voice.say("sowing-cooler", &args().text("cool", cool_enough(speech, crop)))
        }
    })
}

/// The coolest soil that is warm enough: the published minimum as it was published, or where the
/// crop comes up within three weeks.
pub(super) fn warm_enough(speech: &Speech, crop: &Crop) -> String {
    let coolest = fit_soil_c(crop).map_or(0.0, |(coolest, _)| coolest);
    match crop.seed.soil_c.as_ref().map(|range| range.minimum) {
        Some(minimum) if coolest <= degrees(minimum) => speech.voice.temperature(minimum),
        _ => speech.voice.temperature_or_more(coolest),
    }
}

/// The warmest soil that is cool enough, likewise.
pub(super) fn cool_enough(speech: &Speech, crop: &Crop) -> String {
    let warmest = fit_soil_c(crop).map_or(0.0, |(_, warmest)| warmest);
    match crop.seed.soil_c.as_ref().map(|range| range.maximum) {
        Some(maximum) if warmest >= degrees(maximum) => speech.voice.temperature(maximum),
        _ => speech.voice.temperature_or_less(warmest),
    }
}

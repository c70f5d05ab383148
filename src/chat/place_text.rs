//! What the seed-raising place and the cover change in an answer, in a sentence each.

use crate::planning::{
    Assessment, Cover, Crop, Garden, Label, Place, Season, Step, Verdict, Windows, oldest_weeks,
    windows,
};
use crate::wording::Speech;

/// The cover's name as it stands in a sentence.
pub(super) fn cover_name(cover: Cover, speech: &Speech) -> String {
    match cover {
        Cover::Fleece => speech.plain("cover-fleece"),
        Cover::ColdFrame => speech.plain("cover-cold-frame"),
        Cover::Tunnel => speech.plain("cover-tunnel"),
    }
}

/// Where seedlings are raised, as it stands in a sentence.
pub(super) fn place_name(place: Place, speech: &Speech) -> String {
    match place {
        Place::Windowsill => speech.plain("place-windowsill"),
        Place::Lights => speech.plain("place-lights"),
        Place::HeatMat => speech.plain("place-heat-mat"),
        Place::Greenhouse => speech.plain("place-greenhouse"),
    }
}

/// By how much the garden's cover moved the dates of an answer, or that it could not.
pub(super) fn cover_line(
    crop: &Crop,
    garden: Garden,
    assessment: &Assessment,
    speech: &Speech,
) -> Option<String> {
    let cover = garden.cover?;
    let verdict = assessment.verdict()?;
    let (season, window) = (assessment.season?, assessment.window?);
    if season.dry.is_some() {
        return None;
    }
    let args = speech.about(&crop.id).text("cover", cover_name(cover, speech));
    let bare = windows(crop, &Season { cover: None, ..season });
    let first = |all: &Windows| {
        all.of(assessment.step).iter().find(|w| w.label == window.label).map(|w| w.ideal_from)
    };
    let sooner = match first(&bare) {
        Some(bare) => bare.signed_duration_since(window.ideal_from).num_days(),
        None => 0,
    };
    let voice = &speech.voice;
    match (window.label, verdict) {
        (Label::Spring, Verdict::TooEarly | Verdict::Early | Verdict::OnTime) if sooner > 0 => {
            Some(voice.say("cover-sooner", &args.text("weeks", voice.weeks(sooner))))
        }
        (Label::Spring, Verdict::TooEarly | Verdict::Early) => {
            let starts = matches!(assessment.step, Step::SowOutdoors | Step::PlantOut);
            starts.then(|| voice.say("cover-no-sooner", &args))
        }
        (Label::Spring, Verdict::Late | Verdict::TooLate) | (Label::Autumn, _) => {
            let later = 7 * cover.autumn_weeks(crop);
            let weighs = later > 0 && season.first_frost.is_some();
            weighs.then(|| voice.say("cover-later", &args.text("weeks", voice.weeks(later))))
        }
        _ => None,
    }
}

/// What the seed-raising place asks of somebody who sows indoors.
pub(super) fn place_line(
    crop: &Crop,
    garden: Garden,
    assessment: &Assessment,
    speech: &Speech,
) -> Option<String> {
    let place = garden.place.filter(|_| assessment.step == Step::SowIndoors)?;
    let verdict = assessment.verdict()?;
    let age = &crop.indoors.as_ref()?.age_weeks;
    let voice = &speech.voice;
    let args = speech.about(&crop.id);
    match place {
        Place::Windowsill => {
            let oldest = oldest_weeks(age, Some(place));
            let bounds = oldest < age.workable.high && verdict != Verdict::TooLate;
            let args = args.text("most", voice.weeks(7 * oldest));
            bounds.then(|| voice.say("place-line-windowsill", &args))
        }
        _ if !verdict.workable() => None,
        Place::Lights => Some(voice.say("place-line-lights", &args)),
        Place::HeatMat => Some(voice.say("place-line-heat-mat", &args)),
        Place::Greenhouse => Some(voice.say("place-line-greenhouse", &args)),
    }
}

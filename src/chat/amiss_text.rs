//! That a sowing which was noted was made too early, too late or in the wrong place.

use crate::club::Sowing;
use crate::planning::{
    Assessment, Crop, Label, Reason, Step, Verdict, Way, assess, better_start, soil_verdict,
    which_to_believe,
};
use crate::reminders::instead_text;
use crate::wording::args;

use super::desk::Desk;
use super::emergence_answer::degrees;
use super::verdict_text::Telling;

/// What is amiss with the day or the way of a sowing, by the verdict on that day, and what is worth
/// doing now; `None` where it was worth it. A sowing indoors that was too early is weighed by the
/// age of its plants instead.
pub(super) fn amiss(desk: &Desk<'_>, crop: &Crop, sowing: &Sowing) -> Option<String> {
    let garden = desk.garden()?;
    let step = Step::from(sowing.way);
    let made = assess(crop, garden, step, sowing.sown_on);
    if believes_the_soil(crop, sowing, &made) {
        return None;
    }
    let why = match (made.verdict, sowing.way) {
        (Ok(Verdict::TooEarly), Way::Outdoors) => too_early(desk, crop, &made)?,
        (Ok(Verdict::Early), Way::Outdoors) => {
            let from = made.next_date.filter(|from| *from > desk.today)?;
            let from = args().text("from", desk.date(from));
            return Some(bullet(desk, &[desk.say("amiss-early", &from)]));
        }
        (Ok(Verdict::TooLate), _) => {
            let today = sowing.sown_on == desk.today;
            let speech = &desk.speech;
            let why = Telling { speech, garden, crop, assessment: &made, today }.why();
            let late = desk.say_key("amiss-too-late");
            [Some(late), why].into_iter().flatten().collect::<Vec<_>>().join(" ")
        }
        (Err(Reason::NeverThisWay), Way::Outdoors) => {
            desk.say("amiss-never-outdoors", &desk.speech.about(&crop.id))
        }
        _ => return None,
    };
    let again = better_start(crop, garden, step, desk.today);
    let next = instead_text(crop, step, again, &desk.speech, desk.today);
    Some(bullet(desk, &[Some(why), next].into_iter().flatten().collect::<Vec<_>>()))
}

/// Whether the soil that was measured speaks for a sowing in the ground against its date.
fn believes_the_soil(crop: &Crop, sowing: &Sowing, made: &Assessment) -> bool {
    let measured = sowing.room_c.filter(|_| sowing.way == Way::Outdoors);
    let Some(soil) = measured.and_then(|at_c| soil_verdict(crop, degrees(at_c))) else {
        return false;
    };
    let label = made.window.map_or(Label::Spring, |window| window.label);
    which_to_believe(crop, soil, made.verdict().map(|verdict| (verdict, label))).sow
}

fn bullet(desk: &Desk<'_>, sentences: &[String]) -> String {
    desk.say("sowing-warning", &args().text("what", sentences.join(" ")))
}

/// By how much it was too early for the ground, and what spoils it there.
fn too_early(desk: &Desk<'_>, crop: &Crop, made: &Assessment) -> Option<String> {
    let voice = &desk.speech.voice;
    let good = made.next_date?;
    let early = voice.weeks(good.signed_duration_since(made.on).num_days());
    let args = args().text("early", early);
    let spring = made.window.is_some_and(|window| window.label == Label::Spring);
    let frost = made.season.is_some_and(|season| season.dry.is_none());
    Some(match crop.seed.soil_c.as_ref() {
        _ if spring && frost && crop.frost_kills() => voice.say("amiss-too-early-frost", &args),
        Some(soil) if spring && frost => {
            let minimum = voice.temperature(soil.minimum);
            voice.say("amiss-too-early-cold", &args.text("minimum", minimum))
        }
        _ => voice.say("amiss-too-early", &args),
    })
}

//! What is worth doing where a sowing failed or was missed, in words.

use chrono::{Datelike, NaiveDate};

use crate::planning::{Crop, StartAgain, Step};
use crate::wording::{Speech, args};

/// Whether and when `crop`, sown by the step `step`, can be sown again, told on the day `today`.
#[must_use]
pub fn start_again_text(
    crop: &Crop,
    step: Step,
    again: StartAgain,
    speech: &Speech,
    today: NaiveDate,
) -> String {
    let too_late = matches!(again, StartAgain::BuyPlants { .. } | StartAgain::TooLate(_));
    let head = too_late.then(|| speech.voice.say("sow-again-too-late", &speech.about(&crop.id)));
    let next = instead_text(crop, step, again, speech, today);
    head.into_iter().chain(next).collect::<Vec<_>>().join(" ")
}

/// The next thing worth doing alone; `None` where there is none.
#[must_use]
pub fn instead_text(
    crop: &Crop,
    step: Step,
    again: StartAgain,
    speech: &Speech,
    today: NaiveDate,
) -> Option<String> {
    let voice = &speech.voice;
    let date = |date: NaiveDate| {
        if date.year() == today.year() { voice.date(date) } else { voice.date_with_year(date) }
    };
    let about = speech.about(&crop.id);
    Some(match again {
        StartAgain::NotKnown => speech.plain("sow-again-now"),
        StartAgain::Now(same, last) if same == step => {
            voice.say("sow-again-until", &about.text("last", date(last)))
        }
        StartAgain::Now(other, last) => {
            let what = speech.step_phrase(other, crop);
            voice.say("other-now", &args().text("what", what).text("until", date(last)))
        }
        StartAgain::From(same, from) if same == step => {
            voice.say("sow-again-from", &about.text("from", date(from)))
        }
        StartAgain::From(other, from) => {
            let what = speech.step_phrase(other, crop);
            voice.say("other-from", &args().text("what", what).text("from", date(from)))
        }
        StartAgain::BuyPlants { from, until } if from <= today => {
            voice.say("instead-buy-plants", &args().text("until", date(until)))
        }
        StartAgain::BuyPlants { from, .. } => {
            voice.say("instead-buy-plants-from", &args().text("from", date(from)))
        }
        StartAgain::TooLate(next) => voice.say("sow-again-next", &about.text("next", date(next?))),
    })
}

//! What can be started now, grouped by urgency and step.

use chrono::NaiveDate;

use crate::catalogue::Catalogue;
use crate::planning::{Assessment, Garden, Step, Verdict};
use crate::wording::{Speech, args, sentence};

use super::answer::kind_word;
use super::understand::Understood;

/// The most crops that one group of the list names; a phone shows no more at a glance.
const MOST_NAMED: usize = 8;

/// The list as a message: what cannot wait, what is on time, what works with care.
pub(super) fn now_text(
    open: &[Assessment],
    garden: Garden,
    understood: &Understood,
    today: NaiveDate,
    speech: &Speech,
    catalogue: &Catalogue,
) -> String {
    let voice = &speech.voice;
    let on = understood.on;
    if garden.season_on(on).is_none() {
        return speech.plain("now-no-frost");
    }
    let kind =
        understood.kind.map_or_else(|| speech.plain("kind-crops"), |kind| kind_word(kind, speech));
    let date_args = args().text("date", voice.date(on)).text("kind", &kind);
    if open.is_empty() {
        return voice.say("now-nothing", &date_args);
    }
    let head = if on == today {
        voice.say("now-head", &date_args)
    } else {
        voice.say("now-head-on", &date_args)
    };
    let mut parts = vec![head];
    for verdict in [Verdict::Late, Verdict::OnTime, Verdict::Early] {
        for step in
            [Step::SowIndoors, Step::SowOutdoors, Step::PlantOut, Step::HardenOff, Step::PotUp]
        {
            let group: Vec<&Assessment> =
                open.iter().filter(|a| a.verdict() == Some(verdict) && a.step == step).collect();
            if group.is_empty() {
                continue;
            }
            let named: Vec<String> = group
                .iter()
                .take(MOST_NAMED)
                .map(|assessment| with_date(assessment, verdict, speech))
                .collect();
            let mut line = sentence(&group_head(verdict, step, speech));
            line.push(' ');
            line.push_str(&named.join(", "));
            if group.len() > MOST_NAMED {
                let more = group.len() - MOST_NAMED;
                line.push_str(&voice.say("now-more", &args().count("count", more)));
            }
            parts.push(line);
        }
    }
    let tender = open.iter().any(|a| {
        a.step == Step::PlantOut
            && catalogue.get(a.crop.as_str()).is_some_and(crate::planning::Crop::frost_kills)
    });
    if tender {
        parts.push(speech.plain("morning-check-forecast"));
    }
    parts.join("\n")
}

/// The crop with the day that matters: until when it is good, worth it, or from when it is good.
fn with_date(assessment: &Assessment, verdict: Verdict, speech: &Speech) -> String {
    let voice = &speech.voice;
    let Some(window) = assessment.window else { return speech.crop(&assessment.crop).to_owned() };
    let args = args().text("crop", speech.crop(&assessment.crop));
    match verdict {
        Verdict::Late => voice.say("now-until", &args.text("date", voice.date(window.to))),
        Verdict::Early => voice.say("now-from", &args.text("date", voice.date(window.ideal_from))),
        _ => voice.say("now-until", &args.text("date", voice.date(window.ideal_to))),
    }
}

fn group_head(verdict: Verdict, step: Step, speech: &Speech) -> String {
    let how = match step {
        Step::SowIndoors => speech.plain("group-sow-indoors"),
        Step::SowOutdoors => speech.plain("group-sow-outdoors"),
        Step::PlantOut => speech.plain("group-plant-out"),
        Step::HardenOff => speech.plain("group-harden-off"),
        _ => speech.plain("group-pot-up"),
    };
    let args = args().text("how", &how);
    match verdict {
        Verdict::Late => speech.voice.say("group-late", &args),
        Verdict::Early => speech.voice.say("group-early", &args),
        _ => speech.voice.say("group-on-time", &args),
    }
}

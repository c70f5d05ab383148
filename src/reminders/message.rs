//! The one message of a morning, and how it looks after a button was pressed.

use std::fmt::Write;

use chrono::NaiveDate;

use crate::catalogue::Catalogue;
use crate::club::{JobMark, ListNews, Mark, Sowing};
use crate::messages::{Button, Buttons, JobAnswer, Press};
use crate::planning::{
    Crop, CropId, Garden, JobBasis, JobKey, Label, Step, cut_short_by_heat, jobs, repeat_after,
};
use crate::wording::{Speech, args, sentence};

use super::applicable::Known;
use super::due::DueJob;
use super::from_sowings::steps_left;
use super::list_news::list_news_text;
use super::start_again_text::start_again_text;

/// The most jobs that one message names where they can wait; the rest are named on the next
/// mornings.
pub const MOST_JOBS: usize = 8;

/// The most jobs that one message names where none of them can wait: with a row of buttons each
/// they stay within what the platform carries.
pub const MOST_AT_ONCE: usize = 30;

/// How many jobs of the coming week a message lists.
const MOST_COMING: usize = 5;

/// One job in a line, without its number: what to do, and until when it is good.
#[must_use]
pub fn job_line(due: &DueJob, crop: &Crop, speech: &Speech, date: NaiveDate) -> String {
    let window = &due.job.window;
    let voice = &speech.voice;
    let good_days = window.ideal_to.signed_duration_since(window.ideal_from).num_days();
    let what = sentence(&due.what(crop, speech));
    let what = match due.job.basis {
        // Several sowings of one crop stand side by side.
        JobBasis::Sowing(sown) => {
            voice.say("job-of-sowing", &args().text("what", what).text("date", voice.date(sown)))
        }
        _ => what,
    };
    let what = match window.label {
        // Counted back from a frost, an autumn sowing has some good weeks; one with more than two
        // months is bounded by heat and rain, and is not for autumn alone.
        Label::Autumn if good_days <= 60 => voice.say("job-for-autumn", &args().text("what", what)),
        Label::Spring | Label::Autumn | Label::Overwintering => what,
    };
    let nights_c = match due.job.key.step {
        Step::HardenOff => crop.hardening_night_c(),
        _ => crop.coldest_night_c(),
    };
    let args = args()
        .text("from", voice.date(window.ideal_from))
        .text("what", &what)
        .text("until", voice.date(window.ideal_to))
        .text("last", voice.date(window.to))
        .text("nights", voice.temperature(nights_c));
    let line = match due.job.key.step {
        Step::Check if date < window.ideal_to => voice.say("job-check", &args),
        Step::Check => match due.if_not_up {
            None => voice.say("job-check-resow", &args),
            Some((step, again)) => {
                let then = start_again_text(crop, step, again, speech, date);
                voice.say("job-check-nothing", &args.text("then", then))
            }
        },
        Step::Harvest => voice.say("job-harvest", &args),
        // What is offered as one more of a series is never late.
        _ if matches!(due.job.basis, JobBasis::Repeat(_)) => voice.say("job-worth-until", &args),
        // Told on the last day before on which a message comes.
        _ if due.last_chance && date < window.ideal_to => voice.say("job-last-good-is", &args),
        _ if date < window.ideal_from => voice.say("job-early", &args),
        Step::HardenOff => voice.say("job-harden-off", &args),
        Step::PlantOut if crop.frost_kills() => voice.say("job-when-nights-allow", &args),
        _ if date > window.ideal_to => voice.say("job-late", &args),
        _ if date == window.ideal_to => voice.say("job-last-good-day", &args),
        _ => voice.say("job-good-until", &args),
    };
    match remark(due, crop, speech) {
        Some(remark) => format!("{line} {remark}"),
        None => line,
    }
}

/// What else the line says: why the job is offered, or how the seed wants to lie.
fn remark(due: &DueJob, crop: &Crop, speech: &Speech) -> Option<String> {
    let voice = &speech.voice;
    match due.job.basis {
        JobBasis::Before(start) => {
            let then = speech.step_phrase(start, crop);
            return Some(voice.say("job-before", &args().text("then", then)));
        }
        JobBasis::Hedge => return Some(speech.plain("job-hedge")),
        JobBasis::Repeat(last) => {
            let last = args().text("last", voice.date(last));
            return Some(if cut_short_by_heat(crop) {
                voice.say("job-repeat-heat", &last)
            } else {
                voice.say("job-repeat", &last)
            });
        }
        JobBasis::Season | JobBasis::Sowing(_) => {}
    }
    let on_surface = crop.seed.depth_mm.as_ref().is_some_and(|depth| depth.is.high == 0);
    (due.job.key.step.is_sowing() && on_surface).then(|| speech.plain("job-on-surface"))
}

/// What a morning's message names.
#[derive(Debug, Clone, Copy)]
pub struct Named<'a> {
    /// The jobs of the day, in their order.
    pub due: &'a [DueJob],
    /// How many more wait for another morning.
    pub more: usize,
    /// The lists whose change is told.
    pub news: &'a [ListNews],
    /// What is in the member's plan now.
    pub growing: &'a [CropId],
    /// What opens in the week to come, the next first.
    pub coming: &'a [DueJob],
}

/// The morning's text: the jobs of the day, numbered from 1, then what changed in lists,
/// and last what is coming.
#[must_use]
pub fn reminder_text(
    Named { due, more, news, growing, coming }: &Named<'_>,
    catalogue: &Catalogue,
    speech: &Speech,
    date: NaiveDate,
) -> String {
    let voice = &speech.voice;
    let mut text =
        voice.say("morning-greeting", &args().text("date", voice.date_with_weekday(date)));
    let lines = due.iter().filter_map(|due| {
        Some(job_line(due, catalogue.get(due.job.key.crop.as_str())?, speech, date))
    });
    for (number, line) in lines.enumerate() {
        let _ = write!(text, "\n{}. {line}", number + 1);
    }
    if due.iter().any(|due| needs_mild_nights(due, catalogue)) {
        text.push_str("\n\n");
        text.push_str(&speech.plain("morning-check-forecast"));
    }
    if *more > 0 {
        text.push_str("\n\n");
        text.push_str(&voice.say("morning-more", &args().count("count", *more)));
    }
    if !news.is_empty() {
        text.push_str(if due.is_empty() { "\n" } else { "\n\n" });
        text.push_str(&list_news_text(news, growing, speech));
    }
    if !coming.is_empty() {
        text.push_str("\n\n");
        text.push_str(&speech.plain("morning-coming"));
        for due in coming.iter().take(MOST_COMING) {
            let Some(crop) = catalogue.get(due.job.key.crop.as_str()) else { continue };
            let what = due.what(crop, speech);
            let line = args()
                .text("date", voice.date_with_weekday(due.job.window.ideal_from))
                .text("what", what);
            let _ = write!(text, "\n{}", voice.say("morning-coming-line", &line));
        }
        let beyond = coming.len().saturating_sub(MOST_COMING);
        if beyond > 0 {
            let _ = write!(text, "\n{}", voice.say("digest-more", &args().count("count", beyond)));
        }
    }
    text
}

/// Whether the job sets something out that a frost would kill.
#[must_use]
pub fn needs_mild_nights(due: &DueJob, catalogue: &Catalogue) -> bool {
    let crop = catalogue.get(due.job.key.crop.as_str());
    due.job.key.step == Step::PlantOut && crop.is_some_and(Crop::frost_kills)
}

/// The buttons under a morning's message: a row for each job, by what was said of it up to today.
#[must_use]
pub fn reminder_buttons(
    keys: &[JobKey],
    marks: &[JobMark],
    speech: &Speech,
    today: NaiveDate,
) -> Buttons {
    keys.iter()
        .enumerate()
        .map(|(index, key)| {
            let number = index + 1;
            let label = |text: &str| speech.voice.say(text, &args().count("number", number));
            let press = |answer| Press::Job(key.clone(), answer);
            let is_check = key.step == Step::Check;
            let said = marks.iter().find(|mark| mark.key == *key).and_then(|mark| mark.mark);
            // What was put off to a day that has come is to be answered again.
            let come_back = matches!(said, Some(Mark::Later(until)) if until <= today);
            match said.filter(|_| !come_back) {
                Some(Mark::Done(_)) if is_check => {
                    vec![Button::press(label("button-up-undo"), press(JobAnswer::Undo))]
                }
                Some(Mark::Skipped(_)) if is_check => {
                    vec![Button::press(label("button-not-up-undo"), press(JobAnswer::Undo))]
                }
                Some(Mark::Done(_)) => {
                    vec![Button::press(label("button-done-undo"), press(JobAnswer::Undo))]
                }
                Some(Mark::Skipped(_)) => {
                    vec![Button::press(label("button-skipped-undo"), press(JobAnswer::Undo))]
                }
                Some(Mark::Later(_)) => vec![
                    Button::press(label("button-done"), press(JobAnswer::Done)),
                    Button::press(label("button-later-undo"), press(JobAnswer::Undo)),
                ],
                None if is_check => vec![
                    Button::press(label("button-up"), press(JobAnswer::Done)),
                    Button::press(label("button-not-up"), press(JobAnswer::NotUp)),
                    Button::press(label("button-later"), press(JobAnswer::Later)),
                ],
                None => vec![
                    Button::press(label("button-done"), press(JobAnswer::Done)),
                    Button::press(label("button-later"), press(JobAnswer::Later)),
                    Button::press(label("button-skip"), press(JobAnswer::Skip)),
                ],
            }
        })
        .collect()
}

/// The dated job that a key names, where it still exists: one of a garden's season, or one that
/// follows from a recorded sowing, whether or not it was done already.
#[must_use]
pub fn job_of(
    key: &JobKey,
    sowings: &[Sowing],
    catalogue: &Catalogue,
    garden: Option<Garden>,
) -> Option<DueJob> {
    let crop = catalogue.get(key.crop.as_str())?;
    let known = Known { catalogue: Some(catalogue), ..Known::default() };
    let job = match key.sowing {
        None => {
            let season = garden?.season_of(key.season)?;
            jobs(crop, &season).into_iter().find(|job| job.key == *key)
        }
        Some(id) => {
            let sowing = sowings.iter().find(|sowing| sowing.id == id)?;
            if key.step == Step::SowOutdoors {
                let season = garden?.season_of(key.season)?;
                let crop = known.crop_of(sowing, crop);
                let window = repeat_after(crop, &season, key.label, sowing.sown_on)?;
                let basis = JobBasis::Repeat(sowing.sown_on);
                let key = key.clone();
                Some(crate::planning::Job { key, window, better_way: true, basis })
            } else {
                // What was answered already is still this sowing's.
                let mut unanswered = sowing.clone();
                unanswered.came_up_on = None;
                let all = steps_left(crop, &unanswered, known, garden);
                all.into_iter().find(|job| job.key == *key)
            }
        }
    };
    let date = job.as_ref()?.window.ideal_to;
    Some(DueJob::new(crop, job?, Known { sowings, ..known }, garden, date))
}

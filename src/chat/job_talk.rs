//! Talking about the day's jobs: `/now`, and the answers to a reminder.

use chrono::NaiveDate;

use crate::club::{JobMark, Mark};
use crate::messages::{Button, JobAnswer, Press, What};
use crate::planning::{JobKey, Step, Window};
use crate::reminders::{
    DueJob, MOST_JOBS, coming_jobs, job_line, job_of, later_day, needs_mild_nights, open_jobs,
    reminder_buttons,
};
use crate::wording::args;

use super::answer::Asked;
use super::came_up_talk::{came_up, offer_to_sow_again};
use super::crop_talk::{frost_needed, page_buttons, sentence_of_job};
use super::desk::Desk;
use super::facts::Change;
use super::frost_talk::months_lacking;
use super::hold_talk;
use super::sowing_talk::{done_by_button, sowing_of, undone_by_button};
use super::understand::{CameUp, Understood};

/// `/now`: the open jobs of one's crops, or what anybody could start where the list is empty.
pub(super) fn now(desk: &mut Desk<'_>) {
    let Some(garden) = desk.garden() else {
        let text = frost_needed(desk);
        desk.reply(text);
        return;
    };
    let no_plan = garden.season_on(desk.today).is_none() && desk.facts.sowings.is_empty();
    if desk.facts.crops.is_empty() || no_plan {
        let understood = Understood::what_now(desk.today);
        let answer = Asked {
            understood: &understood,
            garden,
            own_crops: None,
            today: desk.today,
            catalogue: desk.catalogue(),
            own: None,
            speech: &desk.speech,
        }
        .answer();
        let lacking = months_lacking(desk, garden);
        let text = [answer.text].into_iter().chain(lacking).collect::<Vec<_>>().join("\n");
        desk.reply(text);
        return;
    }
    let (text, buttons) = jobs_page(desk, 0, desk.today);
    desk.reply_with(text, buttons);
}

/// Another page of the open jobs, as of the day the list was made.
pub(super) fn now_page(desk: &mut Desk<'_>, page: u16, on: NaiveDate) {
    let (text, buttons) = jobs_page(desk, usize::from(page), on);
    desk.edit_with(text, buttons);
}

fn jobs_page(
    desk: &mut Desk<'_>,
    page: usize,
    on: NaiveDate,
) -> (String, crate::messages::Buttons) {
    let Some(garden) = desk.garden() else { return (frost_needed(desk), Vec::new()) };
    let open = open_jobs(desk.own_crops(), desk.known(), garden, on);
    let held = hold_talk::now_line(desk, on);
    let voice = &desk.speech.voice;
    let date = args().text("date", voice.date_with_weekday(on));
    if open.is_empty() {
        let nothing = desk.say("now-jobs-none", &date);
        let coming = coming_jobs(desk.own_crops(), desk.known(), garden, on);
        let next = coming.first().map(|due| sentence_of_job(desk, due));
        return (
            [Some(nothing), held, next].into_iter().flatten().collect::<Vec<_>>().join("\n"),
            Vec::new(),
        );
    }
    let pages = open.len().div_ceil(MOST_JOBS);
    let page = page.min(pages - 1);
    let shown: Vec<DueJob> = open.into_iter().skip(page * MOST_JOBS).take(MOST_JOBS).collect();
    let mut lines = vec![desk.say("now-jobs-head", &date)];
    lines.extend(numbered(desk, &shown, on));
    lines.extend(held);
    if shown.iter().any(|due| needs_mild_nights(due, desk.catalogue())) {
        lines.push(desk.say_key("morning-check-forecast"));
    }
    let mut buttons = Vec::new();
    if desk.in_private() {
        let keys: Vec<JobKey> = shown.iter().map(|due| due.job.key.clone()).collect();
        buttons = reminder_buttons(&keys, &desk.facts.marks, &desk.speech, desk.today);
    }
    buttons.extend(page_buttons(desk, page, pages, |page| Press::Now(page, on)));
    if pages > 1 {
        lines.push(desk.say("page-of", &args().count("page", page + 1).count("pages", pages)));
    }
    (lines.join("\n"), buttons)
}

fn numbered(desk: &Desk<'_>, jobs: &[DueJob], on: NaiveDate) -> Vec<String> {
    jobs.iter()
        .filter_map(|due| Some((due, desk.crop(&due.job.key.crop)?)))
        .enumerate()
        .map(|(index, (due, crop))| {
            format!("{}. {}", index + 1, job_line(due, crop, &desk.speech, on))
        })
        .collect()
}

/// The answer to a job of a reminder or of `/now`: done, later, skip, or undo.
pub(super) fn answered(desk: &mut Desk<'_>, key: &JobKey, answer: JobAnswer) {
    if !desk.in_private() {
        let notice = desk.say_key("notice-private-only");
        desk.answer_press(Some(notice));
        return;
    }
    let job = job_of(key, &desk.facts.sowings, desk.catalogue(), desk.garden());
    if job.is_none() && answer != JobAnswer::Undo {
        let notice = desk.say_key("notice-job-gone");
        desk.answer_press(Some(notice));
        return;
    }
    let today = desk.today;
    let until = job.and_then(|due| later(desk, key, due.job.window));
    let on_today = args().text("date", desk.date(today));
    let sowing = sowing_of(desk, key).cloned();
    let check = sowing.as_ref().filter(|_| key.step == Step::Check);
    let (changes, mark, notice) = match (answer, check) {
        (JobAnswer::Done, Some(sowing)) => (
            came_up(sowing, CameUp::Yes, today),
            Some(Mark::Done(today)),
            desk.say("notice-came-up", &on_today),
        ),
        (JobAnswer::NotUp, Some(sowing)) => (
            came_up(sowing, CameUp::No, today),
            Some(Mark::Skipped(today)),
            desk.say_key("notice-not-up"),
        ),
        (JobAnswer::Done, None) => {
            (done_by_button(desk, key), Some(Mark::Done(today)), desk.say("notice-done", &on_today))
        }
        (JobAnswer::Later, _) => {
            let Some(until) = until else {
                let notice = desk.say_key("notice-later-too-late");
                desk.answer_press(Some(notice));
                return;
            };
            let mark = Some(Mark::Later(until));
            let notice = desk.say("notice-later", &args().text("date", desk.date(until)));
            (vec![Change::MarkJob(key.clone(), mark)], mark, notice)
        }
        (JobAnswer::Skip | JobAnswer::NotUp, _) => {
            let mark = Some(Mark::Skipped(today));
            let notice = desk.say_key("notice-skip");
            (vec![Change::MarkJob(key.clone(), mark)], mark, notice)
        }
        (JobAnswer::Undo, _) => (undone_by_button(desk, key), None, desk.say_key("notice-undone")),
    };
    // A lone change is taken back alone, and one is kept as it always was.
    match <[Change; 1]>::try_from(changes) {
        Ok([only]) => desk.change(only),
        Err(several) => desk.change(Change::Together(several)),
    }
    redraw(desk, key, mark);
    if let (JobAnswer::NotUp, Some(sowing)) = (answer, check) {
        offer_to_sow_again(desk, sowing);
    }
    desk.answer_press(Some(notice));
}

/// The day to which *later* puts the job off. Its window is the one that a reminder goes by, which
/// may have moved with what was done before; `otherwise` stands for a job that is not open now.
fn later(desk: &Desk<'_>, key: &JobKey, otherwise: Window) -> Option<NaiveDate> {
    let crop = desk.crop(&key.crop)?;
    let as_named = desk.garden().and_then(|garden| {
        let coming = coming_jobs([crop], desk.known(), garden, desk.today);
        coming.into_iter().find(|due| due.job.key == *key).map(|due| due.job.window)
    });
    later_day(&as_named.unwrap_or(otherwise), desk.facts.member.habits, desk.today)
}

/// Changes the pressed message so that its buttons show what was said of every job in it. The
/// jobs are those that its buttons carry, and their state is the store's with this answer in it,
/// so that two quick presses cannot undo each other.
fn redraw(desk: &mut Desk<'_>, key: &JobKey, mark: Option<Mark>) {
    let What::Pressed { shown: Some(shown), .. } = &desk.incoming.what else { return };
    let mut keys: Vec<JobKey> = Vec::new();
    let mut others = Vec::new();
    for row in &shown.buttons {
        let mut of_row = None;
        let mut rest = Vec::new();
        for (label, data) in row {
            match data.parse::<Press>() {
                Ok(Press::Job(key, _)) => of_row = Some(key),
                Ok(press) => rest.push(Button::press(label.clone(), press)),
                Err(_) => {}
            }
        }
        keys.extend(of_row);
        if !rest.is_empty() {
            others.push(rest);
        }
    }
    let mut marks: Vec<JobMark> =
        desk.facts.marks.iter().filter(|kept| kept.key != *key).cloned().collect();
    marks.push(JobMark { key: key.clone(), mark, named_on: None });
    let mut buttons = reminder_buttons(&keys, &marks, &desk.speech, desk.today);
    buttons.extend(others);
    let text = shown.text.clone();
    desk.edit_with(text, buttons);
}

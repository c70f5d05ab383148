//! `/sowings`: the list of one's sowings, a page at a time, each with its next step.

use crate::club::Sowing;
use crate::messages::{Button, Press, What};
use crate::reminders::steps_left;
use crate::wording::{args, sentence};

use super::crop_talk::page_buttons;
use super::desk::Desk;
use super::facts::Change;
use super::sowing_talk::is_over;
use super::sowing_text::{plan_of, sowing_words};

/// Sowings on one page.
const PAGE: usize = 8;

/// Shows a page of the sowings that live.
pub(super) fn list(desk: &mut Desk<'_>, page: u16) {
    show(desk, page, None);
}

/// Gives up a sowing and shows the list without it.
pub(super) fn give_up(desk: &mut Desk<'_>, id: i64, page: u16) {
    let sowing = desk.facts.sowings.iter().find(|sowing| sowing.id == id && sowing.lives());
    let Some(sowing) = sowing.cloned() else {
        let notice = desk.say_key("notice-job-gone");
        desk.answer_press(Some(notice));
        return;
    };
    desk.change(Change::KeepSowing(Sowing { ended_on: Some(desk.today), ..sowing }));
    show(desk, page, Some(id));
    let notice = desk.say_key("notice-given-up");
    desk.answer_press(Some(notice));
}

fn show(desk: &mut Desk<'_>, page: u16, without: Option<i64>) {
    let today = desk.today;
    let lasting: Vec<&Sowing> = desk
        .facts
        .sowings
        .iter()
        .filter(|sowing| Some(sowing.id) != without)
        .filter(|sowing| {
            let plan = desk.crop_of(sowing).map(|crop| plan_of(desk, crop, sowing));
            let last = plan.and_then(|plan| plan.steps.last().map(|(_, window)| window.to));
            !is_over(sowing, last, today)
        })
        .collect();
    let pressed = matches!(desk.incoming.what, What::Pressed { .. });
    if lasting.is_empty() {
        let text = desk.say_key("sowings-none");
        if pressed {
            desk.edit_with(text, Vec::new());
        } else {
            desk.reply(text);
        }
        return;
    }
    let pages = lasting.len().div_ceil(PAGE);
    let page = usize::from(page).min(pages - 1);
    let mut lines = vec![desk.say("sowings-head", &args().count("count", lasting.len()))];
    let mut buttons = Vec::new();
    for (index, sowing) in lasting.iter().enumerate().skip(page * PAGE).take(PAGE) {
        let number = args().count("number", index + 1);
        lines.push(format!("{}. {}", index + 1, line(desk, sowing)));
        let label = desk.say("button-give-up", &number);
        let page = u16::try_from(page).unwrap_or(u16::MAX);
        buttons.push(Button::press(label, Press::EndSowing(sowing.id, page)));
    }
    if pages > 1 {
        lines.push(desk.say("page-of", &args().count("page", page + 1).count("pages", pages)));
    }
    let mut rows: Vec<Vec<Button>> = buttons.chunks(2).map(<[Button]>::to_vec).collect();
    if !desk.in_private() {
        rows.clear();
    }
    rows.extend(page_buttons(desk, page, pages, Press::Sowings));
    let text = lines.join("\n");
    if pressed { desk.edit_with(text, rows) } else { desk.reply_with(text, rows) }
}

/// A sowing with its next step.
fn line(desk: &Desk<'_>, sowing: &Sowing) -> String {
    let what = sentence(&sowing_words(desk, sowing));
    let next = desk.crop_of(sowing).and_then(|crop| {
        let steps = steps_left(crop, sowing, desk.known(), desk.garden());
        let job = steps.into_iter().find(|job| job.window.to >= desk.today)?;
        Some((crop, job))
    });
    let args = args().text("what", what);
    match next {
        None => desk.say("sowings-line-plain", &args),
        Some((crop, job)) => {
            let step = desk.speech.step_phrase(job.key.step, crop);
            let date = desk.date(job.window.ideal_from);
            if job.window.ideal_from > desk.today {
                desk.say("sowings-line", &args.text("step", step).text("date", date))
            } else {
                desk.say("sowings-line-now", &args.text("step", step))
            }
        }
    }
}

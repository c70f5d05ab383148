//! Talking about a member's list of crops.

use std::collections::HashSet;

use crate::club::followed;
use crate::messages::{Button, Buttons, Press, What};
use crate::planning::CropId;
use crate::reminders::{DueJob, coming_jobs};
use crate::wording::{args, quoted, sentence};

use super::answer::unknown_name;
use super::desk::Desk;
use super::facts::{Change, Expected, ExpectedTopic};
use super::sowing_talk::undo_buttons;
use super::understand::Intent;
use super::variety_text::variety_words;

/// Crops on one page of the list.
const PAGE: usize = 10;

/// The most crops that one message can add; more than the catalogue holds makes no sense.
const MOST_AT_ONCE: usize = 200;

/// `/grow tomato, basil`.
pub(super) fn grow(desk: &mut Desk<'_>, rest: &str) {
    if rest.trim().is_empty() {
        let text = desk.say_key("grow-how-to");
        desk.expect(Expected::Crops);
        desk.reply(text);
        return;
    }
    if !crops_came(desk, rest) {
        let text = format!(
            "{}\n{}",
            desk.say("unknown-crop", &args().text("written", quoted(rest))),
            desk.say_key("grow-how-to")
        );
        desk.expect(Expected::Crops);
        desk.reply(text);
    }
}

/// Takes a text as the crops that were asked for; a question is a question even while crops are
/// awaited.
pub(super) fn crops_awaited_came(desk: &mut Desk<'_>, text: &str) -> bool {
    let understanding = &desk.tongue.understanding;
    let only_crops = understanding.crops_in(text).unknown.is_empty();
    let asks = || understanding.understand(text, desk.today).intent != Intent::Unknown;
    let is_question = text.contains('?') || (!only_crops && asks());
    !is_question && crops_came(desk, text)
}

/// Takes a text as names of crops to add; `false` where none of it is one or near one.
pub(super) fn crops_came(desk: &mut Desk<'_>, text: &str) -> bool {
    let list = desk.tongue.understanding.crops_in(text);
    if list.found.is_empty() && list.ambiguous.is_empty() {
        let nothing_near = list.unknown.iter().all(|name| name.near.is_empty());
        if nothing_near {
            return false;
        }
    }
    let mut notes = Vec::new();
    let mut buttons: Buttons = Vec::new();
    for word in &list.ambiguous {
        let names: Vec<String> =
            word.means.iter().map(|id| desk.speech.crops(id).to_owned()).collect();
        let about = args()
            .text("word", &word.word)
            .text("crops", desk.speech.voice.list_or(&names))
            .text("crop", desk.speech.voice.list_or(&names));
        notes.push(match &word.outside {
            Some(outside) => desk.say("which-or-outside-ask", &about.text("outside", outside)),
            None => desk.say("grow-which", &about),
        });
        buttons.extend(word.means.iter().map(|id| vec![add_button(desk, id)]));
    }
    for name in &list.unknown {
        notes.push(unknown_name(&name.written, &name.near, &desk.speech));
        buttons.extend(name.near.iter().map(|id| vec![add_button(desk, id)]));
    }
    if !list.ambiguous.is_empty() {
        desk.expect(Expected::WhichToGrow);
    }
    if list.found.is_empty() {
        desk.reply_with(notes.join("\n"), buttons);
    } else {
        keep_added(desk, list.found, notes, buttons);
    }
    true
}

fn add_button(desk: &Desk<'_>, id: &CropId) -> Button {
    let label = desk.say("button-add", &args().text("crop", desk.speech.crop(id)));
    Button::press(label, Press::Grow(id.clone()))
}

/// Adds crops by a button.
pub(super) fn add(desk: &mut Desk<'_>, crops: Vec<CropId>) {
    let known: Vec<CropId> = crops.into_iter().filter(|id| desk.crop(id).is_some()).collect();
    if known.is_empty() {
        let notice = desk.say_key("notice-old-button");
        desk.answer_press(Some(notice));
        return;
    }
    if desk.facts.expected == Some(Expected::WhichToGrow) {
        desk.change(Change::Expect(None));
    }
    keep_added(desk, known, Vec::new(), Vec::new());
}

fn keep_added(desk: &mut Desk<'_>, found: Vec<CropId>, notes: Vec<String>, mut buttons: Buttons) {
    // What a club's list brings can be one's own choice too, and then stays without the list.
    let on_list: HashSet<&CropId> = desk.facts.growing.own.iter().collect();
    let (already, new): (Vec<CropId>, Vec<CropId>) =
        found.into_iter().take(MOST_AT_ONCE).partition(|id| on_list.contains(id));
    let mut lines = Vec::new();
    if !new.is_empty() {
        let names = desk.speech.crop_list(&new);
        lines.push(desk.say("grow-added", &args().text("crops", &names)));
    }
    if !already.is_empty() {
        let names = desk.speech.crop_list(&already);
        lines.push(desk.say("grow-already", &args().text("crops", &names)));
    }
    let growing = &desk.facts.growing;
    let unskipped: Vec<CropId> =
        new.iter().filter(|id| growing.skipped.contains(id)).cloned().collect();
    if let [only] = new.as_slice()
        && growing.lists_with(only).next().is_none()
        && desk.in_private()
    {
        buttons.push(vec![desk.button("button-undo", Press::Drop(only.clone()))]);
    } else if new.len() == 1 {
        // Taking it off would leave it out of the list as well, so the change itself is undone.
        buttons.extend(undo_buttons(desk));
    }
    match desk.garden() {
        Some(_) => lines.extend(first_up(desk, &new)),
        None => lines.push(frost_needed(desk)),
    }
    lines.extend(notes);
    if !unskipped.is_empty() {
        desk.change(Change::Together(vec![Change::AddCrops(new), Change::UnskipCrops(unskipped)]));
    } else if !new.is_empty() {
        desk.change(Change::AddCrops(new));
    }
    desk.reply_with(lines.join("\n"), buttons);
}

/// That frost dates are needed, and how to give them. In private they are then awaited, unless
/// the bot awaits something else already.
pub(super) fn frost_needed(desk: &mut Desk<'_>) -> String {
    if !desk.in_private() {
        return desk.say_key("frost-first-needed-group");
    }
    let awaits = |change: &Change| matches!(change, Change::Expect(Some(_)));
    if !desk.outcome.changes.iter().any(awaits) {
        desk.expect(Expected::Frost(ExpectedTopic::Mine));
    }
    desk.say_key("frost-first-needed")
}

/// The first job that the crops bring, now or next.
fn first_up(desk: &Desk<'_>, crops: &[CropId]) -> Option<String> {
    let garden = desk.garden()?;
    garden.season_on(desk.today)?;
    let crops: Vec<_> = crops.iter().filter_map(|id| desk.crop(id)).collect();
    let jobs = coming_jobs(crops, desk.known(), garden, desk.today);
    Some(sentence_of_job(desk, jobs.first()?))
}

/// "Next: sow tomatoes indoors, from March 27", or that it can be done now.
pub(super) fn sentence_of_job(desk: &Desk<'_>, due: &DueJob) -> String {
    let Some(crop) = desk.crop(&due.job.key.crop) else { return String::new() };
    let what = due.what(crop, &desk.speech);
    let window = &due.job.window;
    let args = args().text("what", &what);
    if window.ideal_from > desk.today {
        desk.say("grow-first-up", &args.text("date", desk.date(window.ideal_from)))
    } else if desk.today > window.ideal_to {
        desk.say("grow-late-up", &args.text("date", desk.date(window.to)))
    } else {
        desk.say("grow-now-up", &args.text("date", desk.date(window.ideal_to)))
    }
}

/// `/drop basil`.
pub(super) fn drop(desk: &mut Desk<'_>, rest: &str) {
    if desk.facts.crops.is_empty() {
        let text = desk.say_key("drop-nothing");
        desk.reply(text);
        return;
    }
    if rest.trim().is_empty() {
        let text = desk.say_key("drop-how-to");
        desk.reply(text);
        return;
    }
    if desk.tongue.sentences.means_everything(rest) {
        take_off_all(desk);
        return;
    }
    let list = desk.tongue.understanding.crops_in(rest);
    let mut found = list.found;
    let mut notes = Vec::new();
    // A word with two meanings is clear when only one of them is on the list.
    for word in &list.ambiguous {
        let mine: Vec<CropId> =
            word.means.iter().filter(|id| desk.facts.crops.contains(id)).cloned().collect();
        if let [only] = mine.as_slice() {
            found.push(only.clone());
        } else {
            let names: Vec<String> =
                word.means.iter().map(|id| desk.speech.crops(id).to_owned()).collect();
            let about =
                args().text("word", &word.word).text("crops", desk.speech.voice.list_or(&names));
            notes.push(desk.say("which-crop", &about));
        }
    }
    notes.extend(list.unknown.iter().map(|n| unknown_name(&n.written, &n.near, &desk.speech)));
    if found.is_empty() {
        if notes.is_empty() {
            notes.push(desk.say_key("drop-how-to"));
        }
        desk.reply(notes.join("\n"));
        return;
    }
    take_off_with(desk, found, notes);
}

/// Takes crops off by a button.
pub(super) fn take_off(desk: &mut Desk<'_>, crops: Vec<CropId>) {
    take_off_with(desk, crops, Vec::new());
}

/// Everything goes: one's own crops, and the subscriptions with theirs.
fn take_off_all(desk: &mut Desk<'_>) {
    let growing = desk.facts.growing.clone();
    if growing.lists.is_empty() {
        return take_off_with(desk, growing.own, Vec::new());
    }
    let names: Vec<String> = growing.lists.iter().map(|list| list_quoted(&list.name)).collect();
    let names = desk.speech.voice.list_and(&names);
    let mut lines = Vec::new();
    let mut changes = Vec::new();
    if !growing.own.is_empty() {
        let crops = desk.speech.crop_list(&growing.own);
        lines.push(desk.say("drop-done", &args().text("crops", crops)));
        changes.push(Change::DropCrops(growing.own));
    }
    lines.push(desk.say("drop-unsubscribed", &args().text("lists", names)));
    changes.extend(growing.lists.iter().map(|list| Change::Unsubscribe(list.id)));
    desk.change(Change::Together(changes));
    let buttons = undo_buttons(desk);
    desk.reply_with(lines.join("\n"), buttons);
}

/// A list's name as it stands in a sentence.
fn list_quoted(name: &str) -> String {
    format!("“{name}”")
}

/// What a list brings is left out from then on; the list itself stays as it is.
fn take_off_with(desk: &mut Desk<'_>, crops: Vec<CropId>, notes: Vec<String>) {
    let growing = &desk.facts.growing;
    let (by_list, crops): (Vec<CropId>, Vec<CropId>) =
        crops.into_iter().partition(|id| growing.by_list(id));
    if !by_list.is_empty() {
        return leave_out(desk, by_list, crops, notes);
    }
    let (there, missing): (Vec<CropId>, Vec<CropId>) =
        crops.into_iter().partition(|id| desk.facts.crops.contains(id));
    let mut lines = Vec::new();
    let mut buttons: Buttons = Vec::new();
    if !there.is_empty() {
        let names = desk.speech.crop_list(&there);
        lines.push(desk.say("drop-done", &args().text("crops", &names)));
    }
    if !missing.is_empty() {
        let names = desk.speech.crop_list(&missing);
        lines.push(desk.say("drop-not-there", &args().text("crops", &names)));
    }
    lines.extend(notes);
    if let [only] = there.as_slice()
        && desk.in_private()
    {
        buttons.push(vec![desk.button("button-undo", Press::Grow(only.clone()))]);
    }
    if !there.is_empty() {
        desk.change(Change::DropCrops(there));
    }
    desk.reply_with(lines.join("\n"), buttons);
}

/// Takes off crops of which some come from lists.
fn leave_out(desk: &mut Desk<'_>, by_list: Vec<CropId>, others: Vec<CropId>, notes: Vec<String>) {
    let growing = &desk.facts.growing;
    let lists: Vec<String> = growing
        .lists
        .iter()
        .filter(|list| by_list.iter().any(|crop| list.crops.contains(crop)))
        .map(|list| list_quoted(&list.name))
        .collect();
    let (there, missing): (Vec<CropId>, Vec<CropId>) =
        others.into_iter().partition(|id| growing.own.contains(id));
    let own_too: Vec<CropId> =
        by_list.iter().filter(|id| growing.own.contains(id)).chain(&there).cloned().collect();
    let about = args()
        .text("crops", desk.speech.crop_list(&by_list))
        .text("lists", desk.speech.voice.list_and(&lists));
    let mut lines = vec![desk.say("drop-left-out", &about)];
    if !there.is_empty() {
        let names = desk.speech.crop_list(&there);
        lines.push(desk.say("drop-done", &args().text("crops", &names)));
    }
    if !missing.is_empty() {
        let names = desk.speech.crop_list(&missing);
        lines.push(desk.say("drop-not-there", &args().text("crops", &names)));
    }
    lines.extend(notes);
    let mut changes = vec![Change::SkipCrops(by_list)];
    if !own_too.is_empty() {
        changes.push(Change::DropCrops(own_too));
    }
    desk.change(Change::Together(changes));
    let buttons = undo_buttons(desk);
    desk.reply_with(lines.join("\n"), buttons);
}

/// `/mycrops`, a page at a time, each crop with its next job and the list that brings it.
pub(super) fn my_crops(desk: &mut Desk<'_>, page: u16) {
    let crops = desk.own_crops();
    let pressed = matches!(desk.incoming.what, What::Pressed { .. });
    if crops.is_empty() {
        let text = desk.say_key("mycrops-empty");
        if pressed {
            desk.edit_with(text, Vec::new());
        } else {
            desk.reply(text);
        }
        return;
    }
    let pages = crops.len().div_ceil(PAGE);
    let page = usize::from(page).min(pages - 1);
    let mut lines = vec![desk.say("mycrops-head", &args().count("count", crops.len()))];
    for crop in crops.iter().skip(page * PAGE).take(PAGE) {
        let next = desk.garden().and_then(|garden| {
            coming_jobs([*crop], desk.known(), garden, desk.today).into_iter().next()
        });
        let grown = followed(&desk.facts.varieties, &crop.id);
        let name = grown.map_or_else(
            || desk.speech.crop(&crop.id).to_owned(),
            |variety| variety_words(desk, variety),
        );
        let line = args().text("crop", name);
        lines.push(match next {
            Some(due) => {
                let what = due.what(crop, &desk.speech);
                let window = &due.job.window;
                let line = line.text("what", &what);
                if window.ideal_from > desk.today {
                    desk.say("mycrops-line", &line.text("date", desk.date(window.ideal_from)))
                } else if desk.today > window.ideal_to {
                    desk.say("mycrops-line-late", &line.text("date", desk.date(window.to)))
                } else {
                    desk.say("mycrops-line-now", &line.text("date", desk.date(window.ideal_to)))
                }
            }
            None => desk.say("mycrops-line-plain", &line),
        });
        if let Some(line) = lines.last_mut() {
            *line = with_origin(desk, line, &crop.id);
        }
    }
    let left_out = desk.facts.growing.left_out();
    if !left_out.is_empty() {
        let names = desk.speech.crop_list(&left_out);
        lines.push(desk.say("mycrops-left-out", &args().text("crops", names)));
    }
    if desk.garden().is_none() {
        lines.push(frost_needed(desk));
    }
    if pages > 1 {
        lines.push(desk.say("page-of", &args().count("page", page + 1).count("pages", pages)));
    }
    let buttons = page_buttons(desk, page, pages, Press::Crops);
    let text = sentence(&lines.join("\n"));
    if pressed { desk.edit_with(text, buttons) } else { desk.reply_with(text, buttons) }
}

/// The line of a crop, and which lists bring it where one does.
fn with_origin(desk: &Desk<'_>, line: &str, crop: &CropId) -> String {
    let growing = &desk.facts.growing;
    if !growing.by_list(crop) {
        return line.to_owned();
    }
    let lists: Vec<String> = growing.lists_with(crop).map(|list| list_quoted(&list.name)).collect();
    let about = args().text("line", line).text("lists", desk.speech.voice.list_and(&lists));
    if growing.own.contains(crop) {
        desk.say("mycrops-own-and-list", &about)
    } else {
        desk.say("mycrops-by-list", &about)
    }
}

/// Buttons to the page before and the page behind, where there are any.
pub(super) fn page_buttons(
    desk: &Desk<'_>,
    page: usize,
    pages: usize,
    press: impl Fn(u16) -> Press,
) -> Buttons {
    let to = |page: usize| press(u16::try_from(page).unwrap_or(u16::MAX));
    let mut row = Vec::new();
    if page > 0 {
        row.push(desk.button("button-previous-page", to(page - 1)));
    }
    if page + 1 < pages {
        row.push(desk.button("button-next-page", to(page + 1)));
    }
    if row.is_empty() { Vec::new() } else { vec![row] }
}

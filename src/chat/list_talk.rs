//! Keeping the club's lists: what coordinators do with `/list`.

use crate::club::{
    ClubList, LONGEST_LIST_NAME, LONGEST_LIST_NOTE, ListId, MOST_LIST_CROPS, MOST_LISTS,
};
use crate::messages::Press;
use crate::planning::CropId;
use crate::wording::{args, quoted};

use super::answer::unknown_name;
use super::desk::Desk;
use super::facts::{Change, ListChange};
use super::list_show::{is_mine, one, open_lists, subscribe_buttons};
use super::list_words::{ListAsked, Verb, begins_with_verb, exactly, read};
use super::{list_show, subscribe_talk};

/// `/lists` and `/list …`.
pub(super) fn lists(desk: &mut Desk<'_>, rest: &str) {
    if desk.facts.club.is_none() {
        let text = desk.say_key("lists-no-club");
        desk.reply(text);
        return;
    }
    let open = open_lists(desk);
    let names: Vec<&str> = open.iter().map(|list| list.name.as_str()).collect();
    let of = |list: usize| open.get(list);
    match read(rest, &names, desk.tongue.sentences.list_words()) {
        ListAsked::All => list_show::all(desk),
        ListAsked::Help => {
            let text = desk.say_key("lists-how-to");
            desk.reply(text);
        }
        ListAsked::NoSuch(written) => no_such(desk, written, &names),
        ListAsked::Of(list, verb, text) => {
            if let Some(list) = of(list) {
                with_list(desk, list, verb, text);
            }
        }
        ListAsked::Which => {
            if desk.may_keep_lists() {
                let text = desk.say_key("list-which");
                desk.reply(text);
            }
        }
        ListAsked::New { name, crops } => {
            if desk.may_keep_lists() {
                make(desk, name, crops);
            }
        }
        ListAsked::Copy(code) => {
            if desk.may_keep_lists() {
                copy(desk, code);
            }
        }
    }
}

fn no_such(desk: &mut Desk<'_>, written: &str, names: &[&str]) {
    let written = args().text("written", quoted(written));
    let text = if names.is_empty() {
        let club = desk.facts.club.as_ref().map(|club| club.title.clone()).unwrap_or_default();
        desk.say("lists-none", &args().text("club", club))
    } else {
        let names: Vec<String> = names.iter().map(|name| format!("“{name}”")).collect();
        let names = desk.speech.voice.list_and(&names);
        desk.say("list-unknown", &written.text("lists", names))
    };
    desk.reply(text);
}

fn with_list(desk: &mut Desk<'_>, list: &ClubList, verb: Verb, text: &str) {
    match verb {
        Verb::Subscribe => return subscribe_talk::subscribe(desk, list.id),
        Verb::Unsubscribe => return subscribe_talk::unsubscribe(desk, list.id),
        Verb::Show | Verb::Help | Verb::New | Verb::Copy => return one(desk, list),
        _ => {}
    }
    if !desk.may_keep_lists() {
        return;
    }
    match verb {
        Verb::Add => add(desk, list, text),
        Verb::TakeOff => take_off(desk, list, text),
        Verb::Rename => rename(desk, list, text),
        Verb::Note => note(desk, list, text),
        Verb::Archive => archive(desk, list),
        _ => share(desk, list),
    }
}

/// Crops of a text, with a note for each name that is none or several.
fn crops_of(desk: &Desk<'_>, text: &str) -> (Vec<CropId>, Vec<String>) {
    let list = desk.tongue.understanding.crops_in(text);
    let mut notes = Vec::new();
    for word in &list.ambiguous {
        let names: Vec<String> =
            word.means.iter().map(|id| desk.speech.crops(id).to_owned()).collect();
        let about =
            args().text("word", &word.word).text("crops", desk.speech.voice.list_or(&names));
        notes.push(desk.say("list-which-crop", &about));
    }
    notes.extend(list.unknown.iter().map(|n| unknown_name(&n.written, &n.near, &desk.speech)));
    (list.found, notes)
}

/// A name as it is kept, or the sentence that says why it is none. `of` is the list that has it.
fn name_of(desk: &Desk<'_>, written: &str, of: Option<ListId>) -> Result<String, String> {
    let quotes = |c: char| matches!(c, '"' | '“' | '”' | '„' | '«' | '»' | ':' | ',');
    let name = written.trim_matches(|c: char| quotes(c) || c.is_whitespace());
    let shown = quoted(name);
    if shown.is_empty() || !shown.chars().any(char::is_alphanumeric) {
        return Err(desk.say_key("list-new-how-to"));
    }
    if shown.chars().count() > LONGEST_LIST_NAME {
        return Err(desk.say("list-name-too-long", &args().count("most", LONGEST_LIST_NAME)));
    }
    if begins_with_verb(&shown, desk.tongue.sentences.list_words()) {
        let first = shown.split_whitespace().next().unwrap_or_default();
        return Err(desk.say("list-name-is-verb", &args().text("word", first)));
    }
    let others: Vec<ClubList> =
        open_lists(desk).into_iter().filter(|list| Some(list.id) != of).collect();
    let names: Vec<&str> = others.iter().map(|list| list.name.as_str()).collect();
    if exactly(&shown, &names).is_some() {
        return Err(desk.say("list-name-taken", &args().text("list", &shown)));
    }
    Ok(shown)
}

fn make(desk: &mut Desk<'_>, name: &str, crops: &str) {
    if open_lists(desk).len() >= MOST_LISTS {
        let text = desk.say("lists-too-many", &args().count("most", MOST_LISTS));
        desk.reply(text);
        return;
    }
    let name = match name_of(desk, name, None) {
        Ok(name) => name,
        Err(why) => return desk.reply(why),
    };
    let (found, notes) = crops_of(desk, crops);
    if found.len() > MOST_LIST_CROPS {
        let text = desk.say("list-too-many-crops", &args().count("most", MOST_LIST_CROPS));
        return desk.reply(text);
    }
    let about = args().text("list", &name);
    let mut lines = vec![if found.is_empty() {
        desk.say("list-made-empty", &about)
    } else {
        desk.say("list-made", &about.text("crops", desk.speech.crop_list(&found)))
    }];
    lines.extend(notes);
    lines.push(desk.say_key("list-made-next"));
    desk.change(Change::List(ListChange::Make { name, note: None, crops: found }));
    let buttons = vec![vec![desk.button("button-lists", Press::Lists)]];
    desk.reply_with(lines.join("\n"), buttons);
}

fn add(desk: &mut Desk<'_>, list: &ClubList, text: &str) {
    let (found, notes) = crops_of(desk, text);
    let (already, new): (Vec<CropId>, Vec<CropId>) =
        found.into_iter().partition(|crop| list.crops.contains(crop));
    if list.crops.len() + new.len() > MOST_LIST_CROPS {
        let text = desk.say("list-too-many-crops", &args().count("most", MOST_LIST_CROPS));
        return desk.reply(text);
    }
    let mut lines = Vec::new();
    let about = || args().text("list", &list.name);
    if !new.is_empty() {
        lines.push(desk.say("list-added", &about().text("crops", desk.speech.crop_list(&new))));
    }
    if !already.is_empty() {
        let crops = desk.speech.crop_list(&already);
        lines.push(desk.say("list-already", &about().text("crops", crops)));
    }
    lines.extend(notes);
    if new.is_empty() {
        if lines.is_empty() {
            lines.push(desk.say("list-add-how-to", &about()));
        }
        return desk.reply(lines.join("\n"));
    }
    lines.extend(who_hears(desk, list));
    desk.change(Change::List(ListChange::Add(list.id, new)));
    let buttons = subscribe_buttons(desk, list.id, is_mine(desk, list.id));
    desk.reply_with(lines.join("\n"), buttons);
}

fn take_off(desk: &mut Desk<'_>, list: &ClubList, text: &str) {
    let understood = desk.tongue.understanding.crops_in(text);
    let mut found = understood.found;
    let mut notes = Vec::new();
    // A word with two meanings is clear when only one of them is on the list.
    for word in &understood.ambiguous {
        let here: Vec<&CropId> = word.means.iter().filter(|id| list.crops.contains(id)).collect();
        if let [only] = here.as_slice() {
            found.push((*only).clone());
        } else {
            let names: Vec<String> =
                word.means.iter().map(|id| desk.speech.crops(id).to_owned()).collect();
            let names = desk.speech.voice.list_or(&names);
            let about = args().text("word", &word.word).text("crops", names);
            notes.push(desk.say("list-which-crop", &about));
        }
    }
    let unknown = &understood.unknown;
    notes.extend(unknown.iter().map(|n| unknown_name(&n.written, &n.near, &desk.speech)));
    let (there, missing): (Vec<CropId>, Vec<CropId>) =
        found.into_iter().partition(|crop| list.crops.contains(crop));
    let about = || args().text("list", &list.name);
    let mut lines = Vec::new();
    if !there.is_empty() {
        let crops = desk.speech.crop_list(&there);
        lines.push(desk.say("list-taken-off", &about().text("crops", crops)));
    }
    if !missing.is_empty() {
        let crops = desk.speech.crop_list(&missing);
        lines.push(desk.say("list-not-on-it", &about().text("crops", crops)));
    }
    lines.extend(notes);
    if there.is_empty() {
        if lines.is_empty() {
            lines.push(desk.say("list-take-off-how-to", &about()));
        }
        return desk.reply(lines.join("\n"));
    }
    lines.extend(who_hears(desk, list));
    desk.change(Change::List(ListChange::TakeOff(list.id, there)));
    desk.reply(lines.join("\n"));
}

/// That the subscribers are told, where there are any.
fn who_hears(desk: &Desk<'_>, list: &ClubList) -> Option<String> {
    let count = args().count("count", list.subscribers);
    (list.subscribers > 0).then(|| desk.say("list-who-hears", &count))
}

fn rename(desk: &mut Desk<'_>, list: &ClubList, name: &str) {
    if name.is_empty() {
        let text = desk.say("list-rename-how-to", &args().text("list", &list.name));
        return desk.reply(text);
    }
    match name_of(desk, name, Some(list.id)) {
        Ok(name) => {
            let text =
                desk.say("list-renamed", &args().text("list", &list.name).text("name", &name));
            desk.change(Change::List(ListChange::Rename(list.id, name)));
            desk.reply(text);
        }
        Err(why) => desk.reply(why),
    }
}

fn note(desk: &mut Desk<'_>, list: &ClubList, text: &str) {
    let about = args().text("list", &list.name);
    // Control characters and line ends would make two lines of it.
    let line: String = text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
    let line = line.split_whitespace().collect::<Vec<_>>().join(" ");
    if line.is_empty() {
        let text = desk.say("list-note-how-to", &about);
        return desk.reply(text);
    }
    if line.chars().count() > LONGEST_LIST_NOTE {
        let text = desk.say("list-note-too-long", &args().count("most", LONGEST_LIST_NOTE));
        return desk.reply(text);
    }
    let none = matches!(line.to_lowercase().as_str(), "none" | "-");
    let text =
        if none { desk.say("list-note-gone", &about) } else { desk.say("list-noted", &about) };
    desk.change(Change::List(ListChange::Note(list.id, (!none).then_some(line))));
    desk.reply(text);
}

fn archive(desk: &mut Desk<'_>, list: &ClubList) {
    let mut lines = vec![desk.say("list-archived", &args().text("list", &list.name))];
    lines.extend(who_hears(desk, list));
    desk.change(Change::List(ListChange::Archive(list.id)));
    let undo = Press::ReopenList(list.id);
    let buttons = vec![vec![desk.button("button-undo", undo)]];
    desk.reply_with(lines.join("\n"), buttons);
}

/// The button under the message that says that a list was put away.
pub(super) fn reopen(desk: &mut Desk<'_>, id: ListId) {
    if !desk.may_keep_lists() {
        return;
    }
    let archived = desk.facts.lists.iter().find(|list| list.id == id && list.archived).cloned();
    let Some(list) = archived else {
        let notice = desk.say_key("list-not-archived");
        desk.answer_press(Some(notice));
        return;
    };
    if open_lists(desk).len() >= MOST_LISTS {
        let text = desk.say("lists-too-many", &args().count("most", MOST_LISTS));
        return desk.refuse(text);
    }
    // Its name may belong to another one by now.
    if let Err(why) = name_of(desk, &list.name, Some(id)) {
        return desk.refuse(why);
    }
    desk.change(Change::List(ListChange::Reopen(id)));
    let text = desk.say("list-reopened", &args().text("list", &list.name));
    desk.edit_with(text, Vec::new());
}

fn share(desk: &mut Desk<'_>, list: &ClubList) {
    let (head, tail) = list.code.split_at_checked(4).unwrap_or((&list.code, ""));
    let code = format!("{head}-{tail}");
    let text = desk.say("list-shared", &args().text("list", &list.name).text("code", code));
    desk.change(Change::List(ListChange::Share(list.id)));
    desk.reply(text);
}

fn copy(desk: &mut Desk<'_>, code: &str) {
    let Some(list) = desk.facts.offered_list.clone() else {
        let text = if code.is_empty() {
            desk.say_key("list-copy-how-to")
        } else {
            desk.say("list-code-unknown", &args().text("written", quoted(code)))
        };
        return desk.reply(text);
    };
    if open_lists(desk).len() >= MOST_LISTS {
        let text = desk.say("lists-too-many", &args().count("most", MOST_LISTS));
        return desk.reply(text);
    }
    let name = match name_of(desk, &list.name, None) {
        Ok(name) => name,
        Err(why) => return desk.reply(why),
    };
    let about = args().text("list", &name);
    let text = if list.crops.is_empty() {
        desk.say("list-made-empty", &about)
    } else {
        let crops = desk.speech.crop_list(&list.crops);
        desk.say("list-copied", &about.text("crops", crops))
    };
    let text = format!("{text}\n{}", desk.say_key("list-made-next"));
    desk.change(Change::List(ListChange::Make { name, note: list.note, crops: list.crops }));
    let buttons = vec![vec![desk.button("button-lists", Press::Lists)]];
    desk.reply_with(text, buttons);
}

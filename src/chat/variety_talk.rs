//! Talking about one's own varieties: `/variety`, and a packet's text that was pasted.

use crate::catalogue::{Meaning, normalise};
use crate::club::{MOST_VARIETIES, Variety, followed};
use crate::messages::{Button, Buttons, Press};
use crate::wording::{args, quoted};

use super::desk::Desk;
use super::facts::{Change, Expected};
use super::sentences::{Request, Said};
use super::sowing_talk::undo_buttons;
use super::variety_reading::head_of;
use super::variety_text::{by_packet, left_out_line, packet_words, variety_words};

/// `/variety`: the list; `/variety tomato Early Lantern, 75 days`; `/variety remove Early Lantern`.
pub(super) fn variety(desk: &mut Desk<'_>, rest: &str) {
    if rest.trim().is_empty() {
        return list(desk);
    }
    match desk.tongue.sentences.read(rest) {
        Some(Said { request: Request::Drop, rest: which, .. }) => remove(desk, which),
        Some(Said { request: Request::Grow, rest: packet, .. }) => tell(desk, packet),
        _ => tell(desk, rest),
    }
}

/// Takes a text that was pasted in the private chat as a packet's, where it surely is one: it
/// speaks of the last frost or of maturity as packets do, and begins with a crop.
pub(super) fn pasted(desk: &mut Desk<'_>, text: &str) -> bool {
    if !desk.in_private() || text.contains('?') {
        return false;
    }
    let read = desk.knowledge.read_packet_text(text, &desk.settings.language.is);
    let surely = read.sure && head_of(&read.head, desk.tongue, &desk.speech).is_ok();
    if surely {
        tell(desk, text);
    }
    surely
}

/// Takes a text as the packet that was asked for; `false` where it has no number of one.
pub(super) fn packet_awaited_came(desk: &mut Desk<'_>, text: &str) -> bool {
    let read = desk.knowledge.read_packet_text(text, &desk.settings.language.is);
    if text.contains('?') || read.packet.is_empty() {
        return false;
    }
    tell(desk, text);
    true
}

/// Keeps the variety that a text tells of.
fn tell(desk: &mut Desk<'_>, text: &str) {
    let told = desk.knowledge.read_variety(text, &desk.settings.language.is, &desk.speech);
    let told = match told {
        Ok(told) => told,
        Err(why) => {
            let text = why.said(&desk.speech);
            return desk.reply(text);
        }
    };
    let kept = &desk.facts.varieties;
    let same = kept.iter().find(|known| known.is(&told.crop, told.name.as_deref()));
    if same.is_none() && kept.len() >= MOST_VARIETIES {
        let text = desk.say("variety-too-many", &args().count("most", MOST_VARIETIES));
        return desk.reply(text);
    }
    let what = args().text("variety", variety_words(desk, &told));
    let already = same
        .is_some_and(|same| same.packet == told.packet && followed(kept, &told.crop) == Some(same));
    if already {
        let text = desk.say("variety-already", &what);
        return desk.reply(text);
    }
    let packet = packet_words(&told.packet, &desk.speech);
    let mut lines = vec![desk.say("variety-noted", &what.text("packet", packet))];
    if let Some(crop) = desk.knowledge.catalogue.get(told.crop.as_str()) {
        let left_out = told.packet.left_out(crop);
        lines.extend(left_out.into_iter().map(|one| left_out_line(one, &told, &desk.speech)));
    }
    let others = kept
        .iter()
        .any(|other| other.crop == told.crop && !other.is(&told.crop, told.name.as_deref()));
    if others {
        lines.push(desk.say("variety-follows", &desk.speech.about(&told.crop)));
    }
    let mut parts = Vec::new();
    if !desk.facts.crops.contains(&told.crop) {
        let names = desk.speech.crop_list([&told.crop]);
        lines.push(desk.say("grow-added", &args().text("crops", names)));
        parts.push(Change::AddCrops(vec![told.crop.clone()]));
    }
    parts.push(Change::KeepVariety(told));
    desk.change(Change::Together(parts));
    let buttons = undo_buttons(desk);
    desk.reply_with(lines.join("\n"), buttons);
}

/// The list of one's varieties.
fn list(desk: &mut Desk<'_>) {
    let kept = &desk.facts.varieties;
    if kept.is_empty() {
        if desk.in_private() {
            desk.expect(Expected::Variety);
        }
        let text = desk.say_key("variety-how-to");
        return desk.reply(text);
    }
    let mut lines = vec![desk.say_key("varieties-head")];
    let mut buttons: Buttons = Vec::new();
    for (index, variety) in kept.iter().enumerate() {
        let number = args().count("number", index + 1);
        let what = number
            .clone()
            .text("variety", variety_words(desk, variety))
            .text("packet", packet_words(&variety.packet, &desk.speech));
        let is_followed = followed(kept, &variety.crop) == Some(variety);
        let alone = kept.iter().filter(|other| other.crop == variety.crop).count() == 1;
        lines.push(if is_followed && !alone {
            desk.say("varieties-line-followed", &what)
        } else {
            desk.say("varieties-line", &what)
        });
        let mut row = Vec::new();
        if !is_followed {
            let label = desk.say("button-follow", &number);
            row.push(Button::press(label, Press::FollowVariety(variety.id)));
        }
        let label = desk.say("button-drop-variety", &number);
        row.push(Button::press(label, Press::DropVariety(variety.id)));
        buttons.push(row);
    }
    if !desk.in_private() {
        buttons.clear();
    }
    desk.reply_with(lines.join("\n"), buttons);
}

/// Removes the variety that a text names.
fn remove(desk: &mut Desk<'_>, which: &str) {
    let meant = named(desk, which);
    match meant.as_slice() {
        [only] => {
            let (id, text) = (only.id, removed_text(desk, only));
            desk.change(Change::RemoveVariety(id));
            let buttons = undo_buttons(desk);
            desk.reply_with(text, buttons);
        }
        [] => {
            let text = desk.say("variety-unknown", &args().text("written", quoted(which)));
            desk.reply(text);
        }
        several => {
            let names: Vec<String> =
                several.iter().map(|variety| variety_words(desk, variety)).collect();
            let names = desk.speech.voice.list_or(&names);
            let text = desk.say("variety-which-one", &args().text("varieties", names));
            desk.reply(text);
        }
    }
}

/// The varieties that a text may mean: by name, by crop and name, or all of a crop.
fn named<'d>(desk: &Desk<'d>, which: &str) -> Vec<&'d Variety> {
    let kept = &desk.facts.varieties;
    let plain =
        normalise(which.trim_matches(|c: char| c.is_ascii_punctuation() || c.is_whitespace()));
    let by_name: Vec<&Variety> = kept
        .iter()
        .filter(|variety| variety.name.as_deref().is_some_and(|name| normalise(name) == plain))
        .collect();
    if !by_name.is_empty() {
        return by_name;
    }
    let (crops, rest) = desk.tongue.understanding.crops_and_rest(which);
    let rest = desk.tongue.packet.name_alone(rest).join(" ");
    let of_crop = |variety: &&Variety| {
        let named = crops.contains(&Meaning::Crop(variety.crop.clone()));
        named && (rest.is_empty() || variety.is(&variety.crop, Some(&rest)))
    };
    kept.iter().filter(of_crop).collect()
}

/// That a variety is gone, and what is reckoned with from now on.
fn removed_text(desk: &Desk<'_>, gone: &Variety) -> String {
    let left: Vec<Variety> =
        desk.facts.varieties.iter().filter(|variety| variety.id != gone.id).cloned().collect();
    let head = desk.say("variety-removed", &args().text("variety", variety_words(desk, gone)));
    match followed(&left, &gone.crop) {
        Some(next) => format!("{head}\n{}", by_packet(next, &desk.speech)),
        None => {
            format!("{head}\n{}", desk.say("variety-crop-again", &desk.speech.about(&gone.crop)))
        }
    }
}

/// Follows a variety from now on, by a button.
pub(super) fn follow(desk: &mut Desk<'_>, id: i64) {
    let Some(variety) = by_number(desk, id) else { return };
    let text =
        desk.say("variety-now-follows", &args().text("variety", variety_words(desk, &variety)));
    desk.change(Change::KeepVariety(variety));
    let buttons = undo_buttons(desk);
    desk.reply_with(text, buttons);
}

/// Removes a variety by a button.
pub(super) fn drop_by_button(desk: &mut Desk<'_>, id: i64) {
    let Some(variety) = by_number(desk, id) else { return };
    let text = removed_text(desk, &variety);
    desk.change(Change::RemoveVariety(id));
    let buttons = undo_buttons(desk);
    desk.reply_with(text, buttons);
}

/// The variety of a button; says so where it is there no longer.
fn by_number(desk: &mut Desk<'_>, id: i64) -> Option<Variety> {
    let variety = desk.facts.varieties.iter().find(|variety| variety.id == id).cloned();
    if variety.is_none() {
        let notice = desk.say_key("notice-variety-gone");
        desk.answer_press(Some(notice));
    }
    variety
}

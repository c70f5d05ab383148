//! Talking about where seedlings are raised and what covers the beds.

use crate::messages::{Button, Buttons, Press, What};
use crate::planning::{Cover, Place};
use crate::wording::{args, sentence};

use super::desk::Desk;
use super::facts::{Change, Expected};
use super::place_text::{cover_name, place_name};
use super::place_words::PlaceTold;

/// `/place` with or without words.
pub(super) fn place(desk: &mut Desk<'_>, rest: &str) {
    if rest.trim().is_empty() {
        let member = &desk.facts.member;
        let (text, buttons) = page(desk, member.place, member.cover);
        desk.expect(Expected::Place);
        desk.reply_with(text, buttons);
    } else if !came(desk, rest) {
        let written: String = rest.trim().chars().take(40).collect();
        let text = desk.say("place-bad", &args().text("written", &written));
        desk.expect(Expected::Place);
        desk.reply(text);
    }
}

/// Takes a whole sentence as one that tells of the place or the cover; `false` where it is none.
pub(super) fn told(desk: &mut Desk<'_>, text: &str) -> bool {
    let Some(told) = desk.tongue.sentences.places.sentence(text) else { return false };
    if desk.facts.expected.is_some() {
        desk.change(Change::Expect(None));
    }
    keep(desk, told);
    true
}

/// Takes a text as the place or the cover that was asked for; `false` where it is neither.
pub(super) fn came(desk: &mut Desk<'_>, text: &str) -> bool {
    let Some(told) = desk.tongue.sentences.places.answer(text) else { return false };
    keep(desk, told);
    true
}

/// Sets the place by a button.
pub(super) fn set_place(desk: &mut Desk<'_>, place: Option<Place>) {
    keep(desk, PlaceTold { place: Some(place), cover: None });
}

/// Sets the cover by a button.
pub(super) fn set_cover(desk: &mut Desk<'_>, cover: Option<Cover>) {
    keep(desk, PlaceTold { place: None, cover: Some(cover) });
}

/// Keeps what was told and shows what holds now; the buttons change it again.
fn keep(desk: &mut Desk<'_>, told: PlaceTold) {
    let member = &desk.facts.member;
    let place = told.place.unwrap_or(member.place);
    let cover = told.cover.unwrap_or(member.cover);
    if let Some(place) = told.place {
        desk.change(Change::MemberPlace(place));
    }
    if let Some(cover) = told.cover {
        desk.change(Change::MemberCover(cover));
    }
    let (text, buttons) = page(desk, place, cover);
    let noted = desk.say_key("place-noted");
    if matches!(desk.incoming.what, What::Pressed { .. }) {
        desk.edit_with(text, buttons);
        desk.answer_press(Some(noted));
    } else {
        desk.reply_with(format!("{noted} {text}"), buttons);
    }
}

fn page(desk: &Desk<'_>, place: Option<Place>, cover: Option<Cover>) -> (String, Buttons) {
    let place_is = place
        .map_or_else(|| desk.say_key("place-not-said"), |place| place_name(place, &desk.speech));
    let cover_is =
        cover.map_or_else(|| desk.say_key("cover-none"), |cover| cover_name(cover, &desk.speech));
    let shown = args().text("place", place_is).text("cover", cover_is);
    let text = format!("{}\n{}", desk.say("place-show", &shown), desk.say_key("place-how-to"));
    let button = |name: String, is: bool, press: Press| {
        let label = args().text("name", &name);
        Button::press(if is { desk.say("button-place-is", &label) } else { name }, press)
    };
    let place_button = |one: Place| {
        let name = match one {
            Place::Windowsill => desk.say_key("button-place-windowsill"),
            Place::Lights => desk.say_key("button-place-lights"),
            Place::HeatMat => desk.say_key("button-place-heat-mat"),
            Place::Greenhouse => desk.say_key("button-place-greenhouse"),
        };
        // Tapping what holds takes it back.
        let is = place == Some(one);
        button(name, is, Press::Place((!is).then_some(one)))
    };
    let cover_button = |one: Option<Cover>| {
        let name = match one {
            Some(Cover::Fleece) => desk.say_key("button-cover-fleece"),
            Some(Cover::ColdFrame) => desk.say_key("button-cover-cold-frame"),
            Some(Cover::Tunnel) => desk.say_key("button-cover-tunnel"),
            None => desk.say_key("button-cover-none"),
        };
        button(name, cover == one, Press::Cover(one))
    };
    let buttons = vec![
        [Place::Windowsill, Place::Lights].map(place_button).to_vec(),
        [Place::HeatMat, Place::Greenhouse].map(place_button).to_vec(),
        [Some(Cover::Fleece), Some(Cover::ColdFrame)].map(cover_button).to_vec(),
        [Some(Cover::Tunnel), None].map(cover_button).to_vec(),
    ];
    (text, buttons)
}

/// The lines of the settings page; none where nothing was said.
pub(super) fn settings_lines(desk: &Desk<'_>) -> Vec<String> {
    let member = &desk.facts.member;
    let place = member.place.map(|place| {
        desk.say("settings-place", &args().text("place", place_name(place, &desk.speech)))
    });
    let cover = member.cover.map(|cover| {
        let name = sentence(&cover_name(cover, &desk.speech));
        desk.say("settings-cover", &args().text("cover", name))
    });
    place.into_iter().chain(cover).collect()
}

//! The coordinator's page: the club's frost dates, time zone and language.

use crate::messages::{Press, Topic};
use crate::wording::args;

use super::desk::Desk;
use super::{frost_talk, hold_talk, settings_talk};

/// `/club`, alone or with one of its settings.
pub(super) fn club(desk: &mut Desk<'_>, rest: &str) {
    if !desk.may_change_club() {
        return;
    }
    let (what, rest) = rest.trim().split_once(char::is_whitespace).unwrap_or((rest.trim(), ""));
    match what.to_lowercase().as_str() {
        "frost" => frost_talk::frost(desk, Topic::Club, rest),
        "zone" => settings_talk::zone(desk, Topic::Club, rest),
        "language" if rest.trim().is_empty() => settings_talk::ask_language(desk, Topic::Club),
        "language" => settings_talk::language(desk, Topic::Club, rest.trim()),
        "hold" => hold_talk::hold(desk, Topic::Club, rest),
        _ => page(desk),
    }
}

fn page(desk: &mut Desk<'_>) {
    let Some(club) = &desk.facts.club else { return };
    let mut lines = vec![desk.say("club-head", &args().text("club", &club.title))];
    lines.push(match &club.frost {
        Some(frost) => desk.say("settings-frost", &args().text("frost", desk.frost_words(frost))),
        None => desk.say_key("settings-frost-none"),
    });
    lines.push(match club.zone {
        Some(zone) => {
            desk.say("settings-zone", &args().text("zone", settings_talk::zone_name(zone)))
        }
        None => desk.say_key("settings-zone-none"),
    });
    let language = settings_talk::language_name(desk, &club.language.clone().unwrap_or_default());
    lines.push(desk.say("settings-language", &args().text("language", &language)));
    lines.extend(hold_talk::settings_line(desk, club.hold, false));
    lines.push(desk.say_key("club-how-to"));
    let buttons = vec![vec![
        desk.button("button-frost", Press::AskFrost(Topic::Club)),
        desk.button("button-zone", Press::AskZone(Topic::Club)),
        desk.button("button-language", Press::AskLanguage(Topic::Club)),
    ]];
    let text = lines.join("\n");
    desk.reply_with(text, buttons);
}

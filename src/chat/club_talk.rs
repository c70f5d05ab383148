//! The coordinator's page: the club's frost dates, time zone, language and helpers.

use crate::club::Digest;
use crate::messages::{Press, Topic};
use crate::planning::Frost;
use crate::wording::{Args, args, quoted};

use super::desk::Desk;
use super::facts::Change;
use super::{coordinator_talk, frost_talk, hold_talk, settings_talk, which_club_talk};

/// `/club`, alone or with one of its settings.
pub(super) fn club(desk: &mut Desk<'_>, rest: &str) {
    // In private there is nothing to set, but a member of several clubs says which one is meant.
    if desk.in_private() && desk.facts.clubs.len() > 1 {
        return which_club_talk::ask(desk);
    }
    let (what, rest) = rest.trim().split_once(char::is_whitespace).unwrap_or((rest.trim(), ""));
    let what = what.to_lowercase();
    if matches!(what.as_str(), "helper" | "helpers" | "volunteer" | "volunteers") {
        return coordinator_talk::helpers(desk, rest);
    }
    if !desk.may_change_club() {
        return;
    }
    match what.as_str() {
        "frost" => frost_talk::frost(desk, Topic::Club, rest),
        "zone" => settings_talk::zone(desk, Topic::Club, rest),
        "language" if rest.trim().is_empty() => settings_talk::ask_language(desk, Topic::Club),
        "language" => settings_talk::language(desk, Topic::Club, rest.trim()),
        "digest" => digest(desk, rest),
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
    if let Some(months) = club.hot_and_wet.as_ref().filter(|_| club.frost == Some(Frost::Free)) {
        lines.push(desk.say("settings-hot-and-wet", &args().text("months", months)));
    }
    lines.push(match club.zone {
        Some(zone) => {
            desk.say("settings-zone", &args().text("zone", settings_talk::zone_name(zone)))
        }
        None => desk.say_key("settings-zone-none"),
    });
    let language = settings_talk::language_name(desk, &club.language.clone().unwrap_or_default());
    lines.push(desk.say("settings-language", &args().text("language", &language)));
    lines.push(match club.digest {
        Some(digest) => desk.say("settings-digest", &digest_args(desk, digest)),
        None => desk.say_key("settings-digest-none"),
    });
    lines.extend(hold_talk::settings_line(desk, club.hold, false));
    lines.extend(reach_line(desk));
    lines.push(desk.say_key("club-how-to"));
    let buttons = vec![vec![
        desk.button("button-frost", Press::AskFrost(Topic::Club)),
        desk.button("button-zone", Press::AskZone(Topic::Club)),
        desk.button("button-language", Press::AskLanguage(Topic::Club)),
    ]];
    let text = lines.join("\n");
    desk.reply_with(text, buttons);
}

/// How many members there are, and whether reminders reach them; nothing where there are none.
fn reach_line(desk: &Desk<'_>) -> Option<String> {
    let reach = desk.facts.reach.filter(|reach| reach.members > 0)?;
    let args = args().number("members", reach.members).number("reached", reach.reached);
    Some(if reach.reached < reach.members {
        desk.say("club-reach", &args)
    } else {
        desk.say("club-reach-all", &args)
    })
}

/// `/club digest Monday 8:00 here`, `/club digest off`.
fn digest(desk: &mut Desk<'_>, rest: &str) {
    let Some(club) = &desk.facts.club else { return };
    if rest.trim().is_empty() {
        let shown = match club.digest {
            Some(digest) => desk.say("digest-show", &digest_args(desk, digest)),
            None => desk.say_key("digest-show-none"),
        };
        let text = format!("{shown}\n{}", desk.say_key("digest-how-to"));
        desk.reply(text);
        return;
    }
    let Some(said) = desk.tongue.sentences.days.digest(rest) else {
        let text = desk.say("digest-bad", &args().text("written", quoted(rest)));
        desk.reply(text);
        return;
    };
    let digest = said.in_topic(desk.incoming.chat.thread);
    desk.change(Change::ClubDigest(digest));
    let text = match digest {
        Some(digest) if digest.thread.is_some() => {
            desk.say("digest-set-here", &digest_args(desk, digest))
        }
        Some(digest) => desk.say("digest-set", &digest_args(desk, digest)),
        None => desk.say_key("digest-off"),
    };
    let needs_frost = digest.is_some() && club.frost.is_none();
    let frost = needs_frost.then(|| desk.say_key("digest-needs-frost"));
    desk.reply([Some(text), frost].into_iter().flatten().collect::<Vec<_>>().join("\n"));
}

fn digest_args(desk: &Desk<'_>, digest: Digest) -> Args {
    let voice = &desk.speech.voice;
    args().text("day", voice.weekday(digest.on)).text("time", voice.time(digest.at))
}

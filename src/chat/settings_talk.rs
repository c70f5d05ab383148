//! Talking about time zone, reminder time, language and units, and the page that shows them all.

use chrono::{NaiveTime, Timelike};
use chrono_tz::Tz;

use crate::club::{LanguageTag, QuietDays, ReminderTime, SettingFrom, Units, ZoneMatch, find_zone};
use crate::messages::{Button, Buttons, Press, Topic};
use crate::wording::{args, quoted};

use super::days_talk;
use super::desk::Desk;
use super::facts::{Change, Expected};
use super::{hold_talk, place_talk};

/// `/settings`.
pub(super) fn show(desk: &mut Desk<'_>) {
    let settings = &desk.settings;
    let member = &desk.facts.member;
    let voice = &desk.speech.voice;
    let mut lines = vec![desk.say_key("settings-head")];
    lines.push(match (settings.garden.is, settings.garden.from) {
        (Some(garden), SettingFrom::Club) => {
            desk.say("settings-frost-club", &args().text("frost", desk.frost_words(&garden.frost)))
        }
        (Some(garden), _) => {
            desk.say("settings-frost", &args().text("frost", desk.frost_words(&garden.frost)))
        }
        (None, _) => desk.say_key("settings-frost-none"),
    });
    let clubs = desk.facts.club.as_ref().filter(|_| member.months.is_none());
    let months = member.hot_and_wet.as_ref().or(clubs.and_then(|club| club.hot_and_wet.as_ref()));
    if let Some(months) = months {
        lines.push(desk.say("settings-hot-and-wet", &args().text("months", months)));
    }
    lines.extend(place_talk::settings_lines(desk));
    let clubs = settings.hold.from == SettingFrom::Club;
    lines.extend(hold_talk::settings_line(desk, settings.hold.is, clubs));
    let zone = args().text("zone", zone_name(settings.zone.is));
    lines.push(match settings.zone.from {
        SettingFrom::Member => desk.say("settings-zone", &zone),
        SettingFrom::Club => desk.say("settings-zone-club", &zone),
        SettingFrom::Nobody => desk.say_key("settings-zone-none"),
    });
    lines.push(desk.say("settings-hour", &args().text("time", voice.time(member.reminder_time))));
    lines.extend(days_lines(desk));
    lines.push(match settings.units {
        Units::Metric => desk.say_key("settings-units-metric"),
        Units::Customary => desk.say_key("settings-units-customary"),
    });
    let language = language_name(desk, &settings.language.is);
    lines.push(desk.say("settings-language", &args().text("language", &language)));
    if let Some(club) = &desk.facts.club {
        lines.push(desk.say("settings-club", &args().text("club", &club.title)));
    }
    if !member.reachable && !desk.in_private() {
        lines.push(desk.say_key("settings-unreachable"));
    }
    let units = match settings.units {
        Units::Metric => desk.button("button-customary", Press::Units(Units::Customary)),
        Units::Customary => desk.button("button-metric", Press::Units(Units::Metric)),
    };
    let mut buttons: Buttons = vec![
        vec![
            desk.button("button-frost", Press::AskFrost(Topic::Mine)),
            desk.button("button-zone", Press::AskZone(Topic::Mine)),
        ],
        vec![desk.button("button-hour", Press::AskHour), units],
    ];
    let weekends = if member.habits.at_weekends {
        desk.button("button-weekends-off", Press::Weekends(false))
    } else {
        desk.button("button-weekends-on", Press::Weekends(true))
    };
    buttons.push(vec![desk.button("button-quiet", Press::AskQuiet), weekends]);
    let holiday = match days_talk::coming_end(desk) {
        Some(_) => desk.button("button-holiday-over", Press::HolidayOver),
        None => desk.button("button-holiday", Press::AskHoliday),
    };
    buttons.push(vec![holiday, desk.button("button-place", Press::AskPlace)]);
    buttons.push(vec![desk.button("button-language", Press::AskLanguage(Topic::Mine))]);
    if desk.in_private() && desk.facts.clubs.len() > 1 {
        buttons.push(vec![desk.button("button-which-club", Press::WhichClub)]);
    }
    let text = lines.join("\n");
    desk.reply_with(text, buttons);
}

/// What the member set of their days.
fn days_lines(desk: &Desk<'_>) -> Vec<String> {
    let habits = desk.facts.member.habits;
    let mut lines = Vec::new();
    if habits.quiet != QuietDays::NONE {
        let days = args().text("days", days_talk::quiet_words(desk, habits.quiet));
        lines.push(desk.say("settings-quiet", &days));
    }
    if habits.at_weekends {
        lines.push(desk.say_key("settings-weekends"));
    }
    if let Some(until) = days_talk::coming_end(desk) {
        lines.push(desk.say("settings-holiday", &args().text("date", desk.date(until))));
    }
    lines
}

/// A zone's name as people read it.
pub(super) fn zone_name(zone: Tz) -> String {
    zone.name().replace('_', " ")
}

/// `/zone` with or without a place.
pub(super) fn zone(desk: &mut Desk<'_>, topic: Topic, rest: &str) {
    if !desk.topic_allowed(topic) {
        return;
    }
    if rest.trim().is_empty() {
        let how_to = match topic {
            Topic::Mine => desk.say_key("zone-how-to"),
            Topic::Club => desk.say_key("club-zone-how-to"),
        };
        let text = match (topic, desk.settings.zone.from) {
            (Topic::Club, _) => how_to,
            (Topic::Mine, SettingFrom::Nobody) => {
                format!("{}\n{how_to}", desk.say_key("zone-show-none"))
            }
            (Topic::Mine, _) => {
                let zone = args().text("zone", zone_name(desk.settings.zone.is));
                format!("{}\n{how_to}", desk.say("zone-show", &zone))
            }
        };
        desk.expect(Expected::Zone(topic.into()));
        desk.reply(text);
        return;
    }
    match find_zone(rest) {
        ZoneMatch::Found(zone) => set_zone(desk, topic, zone),
        ZoneMatch::Suggestions(near) => {
            let args = args().text("written", quoted(rest));
            desk.expect(Expected::Zone(topic.into()));
            if near.is_empty() {
                let text = desk.say("zone-unknown", &args);
                desk.reply(text);
            } else {
                let text = desk.say("zone-near", &args);
                let buttons = near
                    .into_iter()
                    .map(|zone| vec![Button::press(zone_name(zone), Press::Zone(topic, zone))])
                    .collect();
                desk.reply_with(text, buttons);
            }
        }
    }
}

/// Takes a text as a place; a question is a question even while a place is awaited.
pub(super) fn zone_came(desk: &mut Desk<'_>, topic: Topic, text: &str) -> bool {
    let looks_like_question = text.contains('?');
    match find_zone(text) {
        ZoneMatch::Found(_) => zone(desk, topic, text),
        ZoneMatch::Suggestions(near) if !near.is_empty() && !looks_like_question => {
            zone(desk, topic, text);
        }
        ZoneMatch::Suggestions(_) => return false,
    }
    true
}

/// Keeps a zone.
pub(super) fn set_zone(desk: &mut Desk<'_>, topic: Topic, zone: Tz) {
    if !desk.topic_allowed(topic) {
        return;
    }
    let (change, text) = match topic {
        Topic::Mine => {
            let local = desk.facts.now.with_timezone(&zone);
            let time = desk.speech.voice.time(wall_clock(local.time()));
            let args = args().text("zone", zone_name(zone)).text("time", &time);
            (Change::MemberZone(Some(zone)), desk.say("zone-set", &args))
        }
        Topic::Club => (
            Change::ClubZone(Some(zone)),
            desk.say("club-zone-set", &args().text("zone", zone_name(zone))),
        ),
    };
    desk.change(change);
    if matches!(desk.facts.expected, Some(Expected::Zone(_))) {
        desk.change(Change::Expect(None));
    }
    desk.reply(text);
}

/// `/hour` with or without a time.
pub(super) fn hour(desk: &mut Desk<'_>, rest: &str) {
    if rest.trim().is_empty() {
        let text = format!("{}\n{}", hour_words(desk, "hour-show"), desk.say_key("hour-how-to"));
        let buttons = [6u16, 7, 8, 9]
            .into_iter()
            .filter_map(|hour| ReminderTime::from_minutes(hour * 60))
            .map(|time| Button::press(desk.speech.voice.time(time), Press::Hour(time)))
            .collect();
        desk.expect(Expected::Hour);
        desk.reply_with(text, vec![buttons]);
    } else if !hour_came(desk, rest) {
        let text = desk.say("hour-bad", &args().text("written", quoted(rest)));
        desk.expect(Expected::Hour);
        desk.reply(text);
    }
}

fn hour_words(desk: &Desk<'_>, key: &str) -> String {
    let time = desk.speech.voice.time(desk.facts.member.reminder_time);
    let args = args().text("time", &time).text("zone", zone_name(desk.settings.zone.is));
    match key {
        "hour-set" => desk.say("hour-set", &args),
        _ => desk.say("hour-show", &args),
    }
}

/// Takes a text as a time of day; `false` where it is none.
pub(super) fn hour_came(desk: &mut Desk<'_>, text: &str) -> bool {
    // "at 8", "um 8": a word before the time says nothing more.
    let behind_a_word = || text.trim().split_once(' ').map_or("", |(_, rest)| rest);
    match text.parse::<ReminderTime>().or_else(|_| behind_a_word().parse()) {
        Ok(time) => {
            set_hour(desk, time);
            true
        }
        Err(_) => false,
    }
}

/// Keeps a reminder time.
pub(super) fn set_hour(desk: &mut Desk<'_>, time: ReminderTime) {
    let args = args()
        .text("time", desk.speech.voice.time(time))
        .text("zone", zone_name(desk.settings.zone.is));
    let text = desk.say("hour-set", &args);
    desk.change(Change::MemberReminderTime(time));
    if desk.facts.expected == Some(Expected::Hour) {
        desk.change(Change::Expect(None));
    }
    desk.reply(text);
}

/// Keeps units, and answers in them from then on.
pub(super) fn set_units(desk: &mut Desk<'_>, units: Units) {
    desk.change(Change::MemberUnits(Some(units)));
    let text = match units {
        Units::Metric => desk.say_key("units-set-metric"),
        Units::Customary => desk.say_key("units-set-customary"),
    };
    desk.reply(text);
}

/// Offers the languages.
pub(super) fn ask_language(desk: &mut Desk<'_>, topic: Topic) {
    if !desk.topic_allowed(topic) {
        return;
    }
    let buttons = desk
        .knowledge
        .languages()
        .into_iter()
        .map(|tag| {
            let label = language_name(desk, &tag);
            vec![Button::press(label, Press::Language(topic, tag.to_string()))]
        })
        .collect();
    let text = desk.say_key("language-how-to");
    desk.reply_with(text, buttons);
}

/// Keeps a language, given by its tag.
pub(super) fn language(desk: &mut Desk<'_>, topic: Topic, tag: &str) {
    if !desk.topic_allowed(topic) {
        return;
    }
    let wanted = tag.parse::<LanguageTag>().ok().filter(|tag| desk.knowledge.speaks(tag));
    let Some(wanted) = wanted else {
        let names: Vec<String> = desk
            .knowledge
            .languages()
            .iter()
            .map(|tag| format!("{} ({tag})", language_name(desk, tag)))
            .collect();
        let args = args()
            .text("written", quoted(tag))
            .text("languages", desk.speech.voice.list_and(&names));
        let text = desk.say("language-unknown", &args);
        desk.reply(text);
        return;
    };
    // The answer is in the new language already, save for whoever chose another for themselves.
    if topic == Topic::Mine || desk.settings.language.from != SettingFrom::Member {
        desk.speech = desk.knowledge.speech(&wanted, desk.settings.units);
    }
    let name = args().text("language", language_name(desk, &wanted));
    match topic {
        Topic::Mine => {
            desk.change(Change::MemberLanguage(Some(wanted)));
            let text = desk.say("language-set", &name);
            desk.reply(text);
        }
        Topic::Club => {
            desk.change(Change::ClubLanguage(Some(wanted)));
            let text = desk.say("club-language-set", &name);
            desk.reply(text);
        }
    }
}

/// A language's own name for itself.
pub(super) fn language_name(desk: &Desk<'_>, tag: &LanguageTag) -> String {
    match tag.to_string().as_str() {
        "en" => desk.say_key("language-name-en"),
        "en-GB" => desk.say_key("language-name-en-GB"),
        "en-US" => desk.say_key("language-name-en-US"),
        "de" => desk.say_key("language-name-de"),
        "es" => desk.say_key("language-name-es"),
        "fr" => desk.say_key("language-name-fr"),
        // A language of a region; the app of somebody whose language is not spoken gets English.
        other if desk.knowledge.speaks(tag) => other.to_owned(),
        _ => desk.say_key("language-name-en"),
    }
}

/// The time on a wall clock, to the minute.
fn wall_clock(time: NaiveTime) -> ReminderTime {
    let minutes = time.hour() * 60 + time.minute();
    u16::try_from(minutes).ok().and_then(ReminderTime::from_minutes).unwrap_or_default()
}

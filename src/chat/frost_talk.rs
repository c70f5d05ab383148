//! Talking about frost dates, one's own and the club's.

use crate::club::SettingFrom;
use crate::messages::{Button, Press, Topic, What};
use crate::planning::{
    Basis, Frost, FrostDates, FrostError, Garden, HotAndWet, MonthDay, Months, MonthsError,
};
use crate::wording::{Args, args, sentence};

use super::desk::Desk;
use super::facts::{Change, Expected};
use super::frost_words::{FrostReading, read_frost};
use super::understand::Intent;

/// `/frost` with or without dates; without, it shows what holds and offers what can be done.
pub(super) fn frost(desk: &mut Desk<'_>, topic: Topic, rest: &str) {
    if !desk.topic_allowed(topic) {
        return;
    }
    if rest.trim().is_empty() {
        show(desk, topic);
    } else if !frost_came(desk, topic, rest) {
        let text = format!("{} {}", desk.say_key("frost-not-understood"), how_to(desk, topic));
        desk.expect(Expected::Frost(topic.into()));
        desk.reply(text);
    }
}

fn how_to(desk: &Desk<'_>, topic: Topic) -> String {
    match topic {
        Topic::Mine => desk.say_key("frost-how-to"),
        Topic::Club => desk.say_key("club-frost-how-to"),
    }
}

fn show(desk: &mut Desk<'_>, topic: Topic) {
    let mut buttons = Vec::new();
    let how_to = how_to(desk, topic);
    let text = match topic {
        Topic::Club => how_to,
        Topic::Mine => {
            let garden = desk.settings.garden;
            let shown = match garden.is {
                None => desk.say_key("frost-show-none"),
                Some(is) => {
                    let args = args().text("frost", desk.frost_words(&is.frost));
                    if garden.from == SettingFrom::Club {
                        desk.say("frost-show-club", &args)
                    } else {
                        if let Frost::Dates(dates) = is.frost {
                            buttons.push(basis_buttons(desk, topic, dates));
                        }
                        desk.say("frost-show", &args)
                    }
                }
            };
            format!("{shown}\n{how_to}")
        }
    };
    desk.expect(Expected::Frost(topic.into()));
    desk.reply_with(text, buttons);
}

/// The two readings of dates; the one that holds is left out.
fn basis_buttons(desk: &Desk<'_>, topic: Topic, dates: FrostDates) -> Vec<Button> {
    let set = |basis| Press::Frost(topic, Some(Frost::Dates(dates.with_basis(basis))));
    match dates.basis() {
        Basis::Average => vec![desk.button("button-trusted", set(Basis::Trusted))],
        Basis::Trusted => vec![desk.button("button-average", set(Basis::Average))],
    }
}

/// Takes a text as frost dates; `false` where it is none.
pub(super) fn frost_came(desk: &mut Desk<'_>, topic: Topic, text: &str) -> bool {
    if !desk.topic_allowed(topic) {
        return true;
    }
    let answer = match read(desk, text) {
        FrostReading::NotUnderstood => return false,
        FrostReading::EitherWay(month_first, day_first) => {
            ask_which_way(desk, topic, [*month_first, *day_first]);
            return true;
        }
        FrostReading::Impossible(written) => {
            let cannot = desk.say("frost-impossible", &args().text("written", &written));
            format!("{cannot} {}", how_to(desk, topic))
        }
        FrostReading::OnlyFirst(first) => match known_last(desk, topic) {
            Some(last) => return dates_came(desk, topic, last, first, None),
            None => desk.say_key("frost-only-autumn"),
        },
        FrostReading::Free => {
            keep(desk, topic, Some(Frost::Free), true);
            return true;
        }
        FrostReading::OnlyLast(last) => {
            if let Some(first) = known_first(desk, topic) {
                return dates_came(desk, topic, last, first, None);
            }
            let args = args()
                .text("last", desk.speech.voice.month_day(last))
                .text("code", last.to_string());
            let text = desk.say("frost-only-last", &args);
            desk.expect(Expected::FirstFrost { whose: topic.into(), last });
            desk.reply(text);
            return true;
        }
        FrostReading::Dates { last, first, basis } => {
            return dates_came(desk, topic, last, first, basis);
        }
    };
    desk.expect(Expected::Frost(topic.into()));
    desk.reply(answer);
    true
}

/// Takes a text as the first autumn frost that was asked for after `last` came alone, or as both
/// dates anew; `false` where it is neither.
pub(super) fn first_frost_came(
    desk: &mut Desk<'_>,
    topic: Topic,
    last: MonthDay,
    text: &str,
) -> bool {
    match read(desk, text) {
        // A date alone is read as the last spring frost, but that is known here.
        FrostReading::OnlyLast(first) | FrostReading::OnlyFirst(first) => {
            !desk.topic_allowed(topic) || dates_came(desk, topic, last, first, None)
        }
        FrostReading::EitherWay(month_first, day_first) => {
            let both = [*month_first, *day_first].map(|reading| match reading {
                FrostReading::OnlyLast(first) | FrostReading::OnlyFirst(first) => {
                    FrostReading::Dates { last, first, basis: None }
                }
                other => other,
            });
            if desk.topic_allowed(topic) {
                ask_which_way(desk, topic, both);
            }
            true
        }
        _ => frost_came(desk, topic, text),
    }
}

/// What a text says of frost dates, days in figures read as the reader's region writes them.
fn read(desk: &Desk<'_>, text: &str) -> FrostReading {
    let order = desk.settings.language.is.day_order();
    read_frost(text, desk.tongue.understanding.phrases(), order)
}

/// Asks whether the month or the day stands first, with a button for each pair of dates that can
/// be.
fn ask_which_way(desk: &mut Desk<'_>, topic: Topic, both: [FrostReading; 2]) {
    let dates = both.into_iter().filter_map(|reading| {
        let (last, first, basis) = match reading {
            FrostReading::Dates { last, first, basis } => (last, first, basis),
            FrostReading::OnlyLast(last) => (last, known_first(desk, topic)?, None),
            FrostReading::OnlyFirst(first) => (known_last(desk, topic)?, first, None),
            _ => return None,
        };
        FrostDates::new(last, Some(first), basis.unwrap_or(Basis::Average)).ok()
    });
    let buttons: Vec<Vec<Button>> = dates
        .map(|dates| {
            let frost = Frost::Dates(dates);
            let label = sentence(&desk.frost_words(&frost));
            vec![Button::press(label, Press::Frost(topic, Some(frost)))]
        })
        .collect();
    let asked = if buttons.is_empty() {
        desk.say_key("frost-not-understood")
    } else {
        desk.say_key("frost-which-way")
    };
    let text = format!("{asked} {}", how_to(desk, topic));
    desk.expect(Expected::Frost(topic.into()));
    desk.reply_with(text, buttons);
}

fn known_first(desk: &Desk<'_>, topic: Topic) -> Option<MonthDay> {
    match current(desk, topic) {
        Some(Frost::Dates(dates)) => dates.stated_first(),
        _ => None,
    }
}

fn known_last(desk: &Desk<'_>, topic: Topic) -> Option<MonthDay> {
    match current(desk, topic) {
        Some(Frost::Dates(dates)) => Some(dates.stated_last()),
        _ => None,
    }
}

fn current(desk: &Desk<'_>, topic: Topic) -> Option<Frost> {
    match topic {
        Topic::Mine => desk.facts.member.frost,
        Topic::Club => desk.facts.club.as_ref().and_then(|club| club.frost),
    }
}

fn dates_came(
    desk: &mut Desk<'_>,
    topic: Topic,
    last: MonthDay,
    first: MonthDay,
    basis: Option<Basis>,
) -> bool {
    match FrostDates::new(last, Some(first), basis.unwrap_or(Basis::Average)) {
        Ok(dates) => match unlikely(dates) {
            Some(days) => ask_if_meant(desk, topic, dates, days),
            None => keep(desk, topic, Some(Frost::Dates(dates)), basis.is_none()),
        },
        Err(error) => {
            let text = match error {
                FrostError::SameDay => desk.say_key("frost-same-day"),
                FrostError::TooShort(days) => {
                    let voice = &desk.speech.voice;
                    let args = args().number("days", days).text("last", voice.month_day(last));
                    let args = args.text("first", voice.month_day(first));
                    let short = desk.say("frost-too-short", &args);
                    format!("{short} {}", how_to(desk, topic))
                }
                FrostError::OnlyAutumn => desk.say_key("frost-only-autumn"),
            };
            desk.expect(Expected::Frost(topic.into()));
            desk.reply(text);
        }
    }
    true
}

/// The length of a season that is likelier a slip of the pen than a garden's.
fn unlikely(dates: FrostDates) -> Option<i64> {
    dates.season_days().filter(|days| !FrostDates::LIKELY_SEASON_DAYS.contains(days))
}

/// Asks whether a season of so many days is meant, and keeps it only at the press of a button:
/// some coasts have hardly any frost.
fn ask_if_meant(desk: &mut Desk<'_>, topic: Topic, dates: FrostDates, days: i64) {
    let frost = Frost::Dates(dates);
    let args = args().text("frost", desk.frost_words(&frost)).number("days", days);
    let text = format!("{} {}", desk.say("frost-unlikely", &args), how_to(desk, topic));
    let button = desk.button("button-frost-meant", Press::Frost(topic, Some(frost)));
    desk.expect(Expected::Frost(topic.into()));
    desk.reply_with(text, vec![vec![button]]);
}

/// Sets frost by a button: an undo, or the answer to "average or trusted?".
pub(super) fn set(desk: &mut Desk<'_>, topic: Topic, frost: Option<Frost>) {
    if desk.topic_allowed(topic) {
        keep(desk, topic, frost, false);
    }
}

/// Keeps frost dates and repeats them in words, with a button that brings back what was before.
fn keep(desk: &mut Desk<'_>, topic: Topic, frost: Option<Frost>, ask_basis: bool) {
    let before = current(desk, topic);
    desk.change(match topic {
        Topic::Mine => Change::MemberFrost(frost),
        Topic::Club => Change::ClubFrost(frost),
    });
    let mut row = Vec::new();
    let mut lines = vec![confirmation(desk, topic, frost)];
    match frost {
        Some(Frost::Dates(dates)) => {
            if dates.spans_new_year() {
                lines.push(desk.say_key("frost-set-spans"));
            }
            if ask_basis {
                lines.push(desk.say_key("frost-which-basis"));
                row.push(desk.button("button-average", Press::Frost(topic, frost)));
                row.extend(basis_buttons(desk, topic, dates));
            }
        }
        Some(Frost::Free) => desk.expect(months_of(topic)),
        _ => {}
    }
    let mut buttons = vec![row];
    let undo = if before == frost { earlier_undo(desk, topic) } else { Some(before) };
    if let Some(undo) = undo.filter(|undo| *undo != frost) {
        buttons.push(vec![desk.button("button-undo", Press::Frost(topic, undo))]);
    }
    buttons.retain(|row| !row.is_empty());
    let text = lines.join("\n");
    if matches!(desk.incoming.what, What::Pressed { .. }) {
        desk.edit_with(text, buttons);
    } else {
        desk.reply_with(text, buttons);
    }
}

/// What the pressed message's own undo button brings back, so that confirming a reading does not
/// take the undo away.
#[expect(clippy::option_option, reason = "the inner `None` is frost dates that are not given")]
fn earlier_undo(desk: &Desk<'_>, topic: Topic) -> Option<Option<Frost>> {
    let What::Pressed { shown: Some(shown), .. } = &desk.incoming.what else { return None };
    let label = desk.say_key("button-undo");
    let mut undo = shown.buttons.iter().flatten().filter(|(shown, _)| *shown == label);
    undo.find_map(|(_, data)| match data.parse() {
        Ok(Press::Frost(of, frost)) if of == topic => Some(frost),
        _ => None,
    })
}

fn confirmation(desk: &Desk<'_>, topic: Topic, frost: Option<Frost>) -> String {
    let Some(frost) = frost else {
        return match topic {
            Topic::Mine => desk.say_key("frost-unset"),
            Topic::Club => desk.say_key("club-frost-unset"),
        };
    };
    let args = args().text("frost", desk.frost_words(&frost));
    let days = match frost {
        Frost::Dates(dates) => dates.season_days(),
        Frost::Free => None,
    };
    match (topic, frost, days) {
        (Topic::Mine, Frost::Free, _) => desk.say_key("frost-set-free"),
        (Topic::Club, Frost::Free, _) => desk.say_key("club-frost-set-free"),
        (Topic::Mine, _, Some(days)) => desk.say("frost-set", &args.number("days", days)),
        (Topic::Mine, _, None) => desk.say("frost-set-no-end", &args),
        (Topic::Club, _, Some(days)) => desk.say("club-frost-set", &args.number("days", days)),
        (Topic::Club, _, None) => desk.say("club-frost-set-no-end", &args),
    }
}

/// Keeps the hot and the wet months of a garden without frost, as they were written and as they
/// were understood; asks again where they were not.
pub(super) fn hot_and_wet_came(desk: &mut Desk<'_>, topic: Topic, text: &str) -> bool {
    const LONGEST: usize = 200;
    if !desk.topic_allowed(topic) {
        return true;
    }
    // Frost dates after all.
    if matches!(read(desk, text), FrostReading::Dates { .. }) {
        return frost_came(desk, topic, text);
    }
    // A question is a question, even while months are awaited.
    let understood = desk.tongue.understanding.understand(text, desk.today);
    if understood.intent != Intent::Unknown {
        return false;
    }
    let phrases = desk.tongue.understanding.phrases();
    let told = desk.tongue.sentences.seasons.read(text, phrases);
    let months = told.map(|(hot, wet)| HotAndWet::new(hot, wet));
    match months {
        Some(Ok(months)) => {
            let written: String = text.trim().chars().take(LONGEST).collect();
            let answer = months_answer(desk, topic, &written, months);
            let (as_written, as_months) = match topic {
                Topic::Mine => {
                    (Change::MemberHotAndWet(Some(written)), { Change::MemberMonths(Some(months)) })
                }
                Topic::Club => {
                    (Change::ClubHotAndWet(Some(written)), Change::ClubMonths(Some(months)))
                }
            };
            desk.change(as_written);
            desk.change(as_months);
            desk.reply(answer);
        }
        refused => {
            let answer = match refused {
                Some(Err(MonthsError::All)) => desk.say_key("frost-months-all"),
                _ => desk.say_key("frost-months-not-understood"),
            };
            desk.expect(months_of(topic));
            desk.reply(answer);
        }
    }
    true
}

/// What is waited for once somebody has said that it never freezes.
fn months_of(topic: Topic) -> Expected {
    match topic {
        Topic::Mine => Expected::HotAndWet,
        Topic::Club => Expected::ClubHotAndWet,
    }
}

/// The command that asks for the months once more.
fn frost_command(topic: Topic) -> Args {
    args().text(
        "command",
        match topic {
            Topic::Mine => "/frost none",
            Topic::Club => "/club frost none",
        },
    )
}

/// Where no frost decides: that the months are not known, or none of them as hot, and how to tell
/// them. `None` where nothing is lacking.
pub(super) fn months_lacking(desk: &Desk<'_>, garden: Garden) -> Option<String> {
    if garden.frost != Frost::Free {
        return None;
    }
    let topic = if desk.in_private() { Topic::Mine } else { Topic::Club };
    match garden.months {
        None => Some(desk.say("months-how-to", &frost_command(topic))),
        Some(months) if months.hot() == Months::NONE => {
            Some(desk.say("months-no-hot", &frost_command(topic)))
        }
        Some(_) => None,
    }
}

/// The months repeated, with the season that they leave.
fn months_answer(desk: &Desk<'_>, topic: Topic, written: &str, months: HotAndWet) -> String {
    let args = args().text("months", written);
    let season = Garden::FROST_FREE.with_months(Some(months)).season_on(desk.today);
    match season.and_then(|season| Some((season.last_frost, season.dry?.heat))) {
        Some((starts, heat)) => {
            let month =
                |date: chrono::NaiveDate| desk.speech.voice.month(chrono::Datelike::month(&date));
            let args = args.text("starts", month(starts)).text("heat", month(heat));
            if months.hot() == Months::NONE {
                let how = desk.say("months-no-hot", &frost_command(topic));
                return format!("{} {how}", desk.say("frost-only-wet", &args));
            }
            desk.say("frost-hot-and-wet", &args)
        }
        None => desk.say_key("frost-months-not-understood"),
    }
}

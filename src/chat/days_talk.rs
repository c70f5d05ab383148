//! Talking about the days on which messages come: quiet days, weekends, holidays.

use chrono::{Days, NaiveDate, Weekday};

use crate::club::{Habits, QuietDays, WEEK};
use crate::messages::{Button, Buttons, Press, What};
use crate::reminders::{job_line, jobs_before};
use crate::wording::{args, quoted, sentence};

use super::desk::Desk;
use super::facts::{Change, Expected};
use super::understand::DayAhead;

/// The furthest end of a holiday, in days from today.
const LONGEST_HOLIDAY: u64 = 366;

/// How many jobs that a holiday would cost are named.
const MOST_BEFORE: usize = 12;

/// `/quiet` with or without days of the week.
pub(super) fn quiet(desk: &mut Desk<'_>, rest: &str) {
    let words = &desk.tongue.sentences.days;
    if rest.trim().is_empty() {
        let (text, buttons) = quiet_page(desk, desk.facts.member.habits.quiet);
        desk.reply_with(text, buttons);
        return;
    }
    let days = words.weekdays(rest);
    if !days.is_empty() && words.lifts(rest) {
        lift(desk, &days);
        return;
    }
    let off = words.on_or_off(rest) == Some(false);
    if days.is_empty() && !off {
        let text = desk.say("quiet-bad", &args().text("written", quoted(rest)));
        desk.reply(text);
        return;
    }
    make_quiet(desk, &days);
}

/// "No messages on Mondays": these days are quiet besides those that are already.
pub(super) fn quiet_too(desk: &mut Desk<'_>, rest: &str) {
    let days = desk.tongue.sentences.days.weekdays(rest);
    if days.is_empty() {
        quiet(desk, rest);
        return;
    }
    let already = desk.facts.member.habits.quiet.days();
    let all: Vec<Weekday> = already.chain(days).collect();
    make_quiet(desk, &all);
}

/// "Messages on Sundays again": these days are quiet no more.
pub(super) fn quiet_no_more(desk: &mut Desk<'_>, rest: &str) {
    let days = desk.tongue.sentences.days.weekdays(rest);
    if days.is_empty() {
        quiet(desk, rest);
    } else {
        lift(desk, &days);
    }
}

/// Takes days off the quiet ones and says which are left.
fn lift(desk: &mut Desk<'_>, days: &[Weekday]) {
    let quiet = desk.facts.member.habits.quiet.days();
    let left: Vec<Weekday> = quiet.filter(|day| !days.contains(day)).collect();
    make_quiet(desk, &left);
}

/// Makes exactly these days quiet, or says why that cannot be.
fn make_quiet(desk: &mut Desk<'_>, days: &[Weekday]) {
    let Some(quiet) = QuietDays::of(days.iter().copied()) else {
        let text = desk.say_key("quiet-all");
        desk.reply(text);
        return;
    };
    keep(desk, Habits { quiet, ..desk.facts.member.habits });
    let (text, buttons) = quiet_page(desk, quiet);
    desk.reply_with(text, buttons);
}

/// Sets the quiet days by a button, which shows the page as it is then.
pub(super) fn set_quiet(desk: &mut Desk<'_>, quiet: QuietDays) {
    keep(desk, Habits { quiet, ..desk.facts.member.habits });
    let (text, buttons) = quiet_page(desk, quiet);
    desk.edit_with(text, buttons);
}

fn quiet_page(desk: &Desk<'_>, quiet: QuietDays) -> (String, Buttons) {
    let shown = if quiet == QuietDays::NONE {
        desk.say_key("quiet-none")
    } else {
        desk.say("quiet-show", &args().text("days", quiet_words(desk, quiet)))
    };
    let day_button = |day| {
        let name = args().text("day", sentence(&desk.speech.voice.weekday(day)));
        let label = if quiet.has(day) {
            desk.say("button-day-quiet", &name)
        } else {
            desk.say("button-day", &name)
        };
        // The last day on which a message may come cannot be taken.
        quiet.toggled(day).map(|set| Button::press(label, Press::Quiet(set)))
    };
    let (working, weekend) = WEEK.split_at(5);
    let rows = [working, weekend].map(|days| days.iter().copied().filter_map(day_button).collect());
    let text = format!("{shown}\n{}", desk.say_key("quiet-how-to"));
    (text, rows.into())
}

/// The quiet days as a list.
pub(super) fn quiet_words(desk: &Desk<'_>, quiet: QuietDays) -> String {
    let voice = &desk.speech.voice;
    let names: Vec<String> = quiet.days().map(|day| voice.weekday(day)).collect();
    voice.list_and(&names)
}

/// `/weekends`, alone or with on or off.
pub(super) fn weekends(desk: &mut Desk<'_>, rest: &str) {
    if let Some(yes) = desk.tongue.sentences.days.on_or_off(rest) {
        set_weekends(desk, yes);
        return;
    }
    let buttons = vec![vec![
        desk.button("button-weekends-on", Press::Weekends(true)),
        desk.button("button-weekends-off", Press::Weekends(false)),
    ]];
    let text = desk.say_key("weekends-how-to");
    desk.reply_with(text, buttons);
}

/// Keeps whether the member gardens at weekends.
pub(super) fn set_weekends(desk: &mut Desk<'_>, at_weekends: bool) {
    keep(desk, Habits { at_weekends, ..desk.facts.member.habits });
    let text = if at_weekends { desk.say_key("weekends-on") } else { desk.say_key("weekends-off") };
    desk.reply(text);
}

/// `/holiday`, alone, with a day, or with off.
pub(super) fn holiday(desk: &mut Desk<'_>, rest: &str) {
    if rest.trim().is_empty() {
        let shown = match coming_end(desk) {
            Some(until) => desk.say("holiday-show", &args().text("date", desk.date(until))),
            None => desk.say_key("holiday-how-to"),
        };
        desk.expect(Expected::Holiday);
        desk.reply(shown);
    } else if desk.tongue.sentences.days.on_or_off(rest) == Some(false) {
        back(desk);
    } else if !holiday_came(desk, rest) {
        desk.expect(Expected::Holiday);
        let text = desk.say("holiday-bad", &args().text("written", quoted(rest)));
        desk.reply(text);
    }
}

/// Takes a text as the end of a holiday; `false` where it names no day.
pub(super) fn holiday_came(desk: &mut Desk<'_>, text: &str) -> bool {
    let latest = desk.today.checked_add_days(Days::new(LONGEST_HOLIDAY));
    let refusal = match desk.tongue.understanding.day_ahead(text, desk.today) {
        DayAhead::NotSaid => return false,
        DayAhead::On(until) if until <= desk.today => {
            desk.say("holiday-past", &args().text("date", desk.date(until)))
        }
        DayAhead::On(until) if latest.is_none_or(|latest| until > latest) => {
            desk.say("holiday-too-long", &args().text("date", desk.date(until)))
        }
        DayAhead::On(until) => {
            begin_holiday(desk, until);
            return true;
        }
        DayAhead::Impossible(written) => {
            desk.say("holiday-impossible", &args().text("written", quoted(&written)))
        }
        DayAhead::Several => desk.say_key("holiday-several"),
    };
    desk.reply(refusal);
    true
}

fn begin_holiday(desk: &mut Desk<'_>, until: NaiveDate) {
    let habits = Habits { holiday_until: Some(until), ..desk.facts.member.habits };
    keep(desk, habits);
    let first = habits.quiet.first_allowed(until);
    let mut lines = vec![desk.say("holiday-set", &args().text("date", desk.date(first)))];
    // What somebody grows is nobody else's business in a group.
    if let Some(garden) = desk.garden().filter(|_| desk.in_private()) {
        let known = desk.known();
        let ending = jobs_before(desk.own_crops(), known, garden, desk.today, first);
        let line = |due: &crate::reminders::DueJob| {
            let crop = desk.crop(&due.job.key.crop)?;
            Some(format!("• {}", job_line(due, crop, &desk.speech, desk.today)))
        };
        let named: Vec<String> = ending.iter().take(MOST_BEFORE).filter_map(line).collect();
        if !named.is_empty() {
            lines.push(desk.say_key("holiday-before"));
            lines.extend(named);
        }
    }
    desk.reply(lines.join("\n"));
}

/// The holiday is over.
pub(super) fn back(desk: &mut Desk<'_>) {
    let text = if coming_end(desk).is_some() {
        keep(desk, Habits { holiday_until: None, ..desk.facts.member.habits });
        desk.say_key("holiday-off")
    } else {
        desk.say_key("holiday-off-none")
    };
    desk.reply(text);
}

/// The end of the holiday that the member is on.
pub(super) fn coming_end(desk: &Desk<'_>) -> Option<NaiveDate> {
    desk.facts.member.habits.holiday_until.filter(|until| desk.today < *until)
}

fn keep(desk: &mut Desk<'_>, habits: Habits) {
    desk.change(Change::MemberHabits(habits));
    let pressed = matches!(desk.incoming.what, What::Pressed { .. });
    if !pressed && desk.facts.expected == Some(Expected::Holiday) {
        desk.change(Change::Expect(None));
    }
}

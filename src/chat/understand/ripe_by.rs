//! The days of a question whether something ripens: those of a sowing and those of the harvest.

use chrono::NaiveDate;

use super::dates::{DateFound, When};
use super::line::{ItemLine, Sort};
use super::phrases::Phrases;
use super::{Intent, Subject, Understood};

/// The days of the start and those of the harvest in such a question.
///
/// A day is that of the harvest, "will they be ripe in August", unless words of a sowing make one
/// of them the day of that: "if I sow them on May 20". "Now" and "today" are never the harvest's.
pub(super) fn told_apart(
    dates: &[DateFound],
    line: &ItemLine,
    phrases: &Phrases,
) -> (Vec<DateFound>, Vec<DateFound>) {
    let words = &phrases.sowing.day_of_start;
    let start = (0..line.items.len())
        .find(|at| words.iter().any(|pattern| pattern.shortest(line, *at).is_some()));
    let of_start = start.and_then(|start| {
        let dated = |item: &&super::line::Item| item.sort == Sort::Date;
        let behind = line.items.iter().skip(start).find(dated);
        behind.or_else(|| line.items.iter().find(dated)).map(|item| item.from)
    });
    dates.iter().copied().partition(|date| match of_start {
        Some(from) => date.from == from,
        None => date.when == When::Today,
    })
}

/// "And in August?" behind "will tomatoes ripen?" is about the harvest as well; behind "if I sow
/// them on May 20?" it names another day of sowing.
pub(super) fn of_follow_up(understood: &mut Understood, before: &Subject, today: NaiveDate) {
    let takes_over = understood.intent == Intent::WillItRipen
        && before.intent == Intent::WillItRipen
        && before.on.is_none()
        && understood.on > today;
    if takes_over {
        understood.ripe_by = understood.until.take().or(Some(understood.on));
        understood.on = today;
        understood.date_given = false;
    }
}

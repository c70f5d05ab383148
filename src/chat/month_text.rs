//! A question about a month as a whole: on which of its days it can be done.

use chrono::{Datelike, NaiveDate};

use crate::wording::{Voice, args};

/// The line that says on which days between `from` and `until`, days of one month, it can be done:
/// those of `open`, which are in order.
pub(super) fn month_line(
    from: NaiveDate,
    until: NaiveDate,
    open: &[NaiveDate],
    voice: &Voice,
) -> String {
    let mut joined: Vec<(NaiveDate, NaiveDate)> = Vec::new();
    for day in open {
        match joined.last_mut() {
            Some((_, last)) if last.succ_opt() == Some(*day) => *last = *day,
            _ => joined.push((*day, *day)),
        }
    }
    let about = args().text("month", voice.month(from.month()));
    match joined.as_slice() {
        [] => voice.say("month-none", &about),
        [(first, last)] if (*first, *last) == (from, until) => voice.say("month-all", &about),
        stretches => {
            let days: Vec<String> =
                stretches.iter().map(|(first, last)| voice.range(*first, *last)).collect();
            voice.say("month-part", &about.text("days", voice.list_and(&days)))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chat::Knowledge;

    #[test]
    fn the_days_of_a_month_are_told_in_stretches() {
        let knowledge = Knowledge::embedded().expect("the built-in data");
        let tag = "en".parse().expect("a tag");
        let speech = knowledge.speech(&tag, crate::club::Units::Metric);
        let day = |day| NaiveDate::from_ymd_opt(2026, 7, day).expect("a day");
        let line = |open: &[u32]| {
            let open: Vec<NaiveDate> = open.iter().map(|open| day(*open)).collect();
            month_line(day(1), day(31), &open, &speech.voice)
        };
        assert!(line(&[]).contains("No day of July"), "{}", line(&[]));
        let all: Vec<u32> = (1..=31).collect();
        assert!(line(&all).contains("all through July"), "{}", line(&all));
        let part = line(&[1, 2, 3, 20, 30, 31]);
        assert!(part.contains("July 1–3, July 20, and July 30–31"), "{part}");
    }
}

//! Dates.

use chrono::{Datelike, Days, NaiveDate, Weekday};
use icu_calendar::{Date, Gregorian};

use super::{Voice, args};
use crate::planning::MonthDay;

impl Voice {
    /// The day without its year: "April 22", "22 April".
    #[must_use]
    pub fn date(&self, date: NaiveDate) -> String {
        let format = &self.tongue.formats.date;
        self.written(date, |day| format.format(day).to_string())
    }

    /// The day with its weekday, without its year: "Wednesday, April 22".
    #[must_use]
    pub fn date_with_weekday(&self, date: NaiveDate) -> String {
        let format = &self.tongue.formats.date_with_weekday;
        self.written(date, |day| format.format(day).to_string())
    }

    /// The day with its year: "April 22, 2026".
    #[must_use]
    pub fn date_with_year(&self, date: NaiveDate) -> String {
        let format = &self.tongue.formats.date_with_year;
        self.written(date, |day| format.format(day).to_string())
    }

    /// A day that comes round every year: "May 15".
    #[must_use]
    pub fn month_day(&self, day: MonthDay) -> String {
        // In a leap year every month-day is itself.
        self.date(day.in_year(2024))
    }

    /// The month's name standing alone, 1 to 12; another number is written as it is.
    #[must_use]
    pub fn month(&self, month: u32) -> String {
        let first = NaiveDate::from_ymd_opt(2024, month, 1).and_then(calendar);
        let format = &self.tongue.formats.month;
        first.map_or_else(|| month.to_string(), |day| format.format(&day).to_string())
    }

    /// The name of a day of the week: "Sunday".
    #[must_use]
    pub fn weekday(&self, day: Weekday) -> String {
        // 1 January 2024 was a Monday.
        let ahead = Days::new(day.num_days_from_monday().into());
        let date =
            NaiveDate::from_ymd_opt(2024, 1, 1).and_then(|date| date.checked_add_days(ahead));
        let format = &self.tongue.formats.weekday;
        date.and_then(calendar)
            .map_or_else(|| day.to_string(), |day| format.format(&day).to_string())
    }

    /// The days from `from` to `to`, both included: "April 17–24", "April 17 to May 1", or one
    /// date where both are the same.
    #[must_use]
    pub fn range(&self, from: NaiveDate, to: NaiveDate) -> String {
        let format = &self.tongue.formats.date;
        self.range_of([from, to], [self.date(from), self.date(to)], |day| {
            format.format(day).to_string()
        })
    }

    /// The same with the year: "March 27 to April 10, 2027", "May 15–29, 2027".
    #[must_use]
    pub fn range_with_year(&self, from: NaiveDate, to: NaiveDate) -> String {
        let same_month = (from.year(), from.month()) == (to.year(), to.month());
        let one_year = from.year() == to.year() && !same_month;
        let first = if one_year { self.date(from) } else { self.date_with_year(from) };
        let format = &self.tongue.formats.date_with_year;
        self.range_of([from, to], [first, self.date_with_year(to)], |day| {
            format.format(day).to_string()
        })
    }

    /// `format` writes a day as it stands in a stretch within one month.
    fn range_of(
        &self,
        [from, to]: [NaiveDate; 2],
        [first, last]: [String; 2],
        format: impl Fn(&Date<Gregorian>) -> String,
    ) -> String {
        if from == to {
            return last;
        }
        let same_month = (from.year(), from.month()) == (to.year(), to.month()) && from < to;
        let plain = |date: NaiveDate| calendar(date).as_ref().map(&format);
        if same_month
            && let Some((first, last)) = plain(from).zip(plain(to))
            && let Some(parts) = around_the_day(&first, &last)
        {
            let first =
                if from.day() == 1 { self.first_day(parts.first) } else { parts.first.into() };
            let days = args().text("from", first).text("to", parts.last);
            return format!("{}{}{}", parts.before, self.say("day-range", &days), parts.after);
        }
        self.say("date-range", &args().text("from", first).text("to", last))
    }

    /// The date as `format` writes it, the first of a month in the language's own way, which CLDR's
    /// patterns do not know: "1er mai".
    fn written(&self, date: NaiveDate, format: impl Fn(&Date<Gregorian>) -> String) -> String {
        let Some(day) = calendar(date) else { return date.to_string() };
        let text = format(&day);
        match number_of_first_day(&text).filter(|_| date.day() == 1) {
            Some((before, number, after)) => format!("{before}{}{after}", self.first_day(number)),
            None => text,
        }
    }

    fn first_day(&self, number: &str) -> String {
        self.say("first-day", &args().text("day", number))
    }
}

/// A date on the first of a month, taken apart at the number of its day; `None` where no "1"
/// stands alone in it.
fn number_of_first_day(text: &str) -> Option<(&str, &str, &str)> {
    text.match_indices('1').find_map(|(at, number)| {
        let (before, rest) = text.split_at_checked(at)?;
        let after = rest.strip_prefix(number)?;
        let alone = !before.ends_with(char::is_numeric) && !after.starts_with(char::is_numeric);
        alone.then_some((before, number, after))
    })
}

/// The date in the calendar that the formats take; `None` for years that it does not reach.
fn calendar(date: NaiveDate) -> Option<Date<Gregorian>> {
    let (month, day) = (u8::try_from(date.month()).ok()?, u8::try_from(date.day()).ok()?);
    Date::try_new_gregorian(date.year(), month, day).ok()
}

/// Two dates of one month, taken apart where they differ.
#[derive(Debug, PartialEq, Eq)]
struct AroundTheDay<'a> {
    before: &'a str,
    first: &'a str,
    last: &'a str,
    after: &'a str,
}

/// What two written dates of one month share before and after the number of the day, or `None`
/// where they differ in more than a number.
fn around_the_day<'a>(first: &'a str, last: &'a str) -> Option<AroundTheDay<'a>> {
    let same = |(a, b): &(char, char)| a == b;
    let size = |(a, _): (char, char)| a.len_utf8();
    let before: usize = first.chars().zip(last.chars()).take_while(same).map(size).sum();
    // A digit that both share ("17", "19") belongs to the number, not to what stands around it.
    let before = first.get(..before)?.trim_end_matches(char::is_numeric);
    let (first, last) = (first.strip_prefix(before)?, last.strip_prefix(before)?);
    let after: usize = first.chars().rev().zip(last.chars().rev()).take_while(same).map(size).sum();
    let after = first.get(first.len() - after..)?.trim_start_matches(char::is_numeric);
    let (first, last) = (first.strip_suffix(after)?, last.strip_suffix(after)?);
    let is_number = |text: &str| !text.is_empty() && text.chars().all(char::is_numeric);
    (is_number(first) && is_number(last)).then_some(AroundTheDay { before, first, last, after })
}

#[cfg(test)]
mod tests {
    use insta::assert_snapshot;

    use super::super::formats::Formats;
    use super::super::voice::tests::voice;
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    #[test]
    fn a_stretch_of_another_year_says_so_once_where_it_can() {
        let voice = voice("en-US");
        let told = |from, to| voice.range_with_year(day(from), day(to)).replace('\u{a0}', " ");
        assert_eq!(told("2027-03-27", "2027-04-10"), "March 27 to April 10, 2027");
        assert_eq!(told("2027-05-22", "2027-05-29"), "May 22–29, 2027");
        assert_eq!(told("2027-05-22", "2027-05-22"), "May 22, 2027");
        assert_eq!(told("2026-12-20", "2027-01-05"), "December 20, 2026 to January 5, 2027");
    }

    #[test]
    fn dates_are_written_as_the_region_writes_them() {
        let told = |tag: &str| {
            let voice = voice(tag);
            let date = day("2026-04-22");
            let leap = MonthDay::new(2, 29).expect("a leap day");
            [
                voice.date(date),
                voice.date_with_weekday(date),
                voice.date_with_year(date),
                voice.month_day(leap),
                voice.month(9),
                voice.month(13),
            ]
            .join("\n")
        };
        assert_snapshot!(told("en"), @r"
        April 22
        Wednesday, April 22
        April 22, 2026
        February 29
        September
        13
        ");
        assert_eq!(told("en-US"), told("en"));
        assert_snapshot!(told("en-GB"), @r"
        22 April
        Wednesday 22 April
        22 April 2026
        29 February
        September
        13
        ");
    }

    #[test]
    fn ranges_name_the_month_once_where_they_can() {
        let told = |tag: &str| {
            let voice = voice(tag);
            [
                ("2026-04-17", "2026-04-24"),
                // Both days share a digit: 17 and 19, 14 and 24.
                ("2026-04-17", "2026-04-19"),
                ("2026-04-14", "2026-04-24"),
                ("2026-04-01", "2026-04-11"),
                ("2026-04-17", "2026-05-01"),
                ("2026-12-20", "2027-01-05"),
                ("2026-04-17", "2027-04-24"),
                ("2026-04-17", "2026-04-17"),
            ]
            .map(|(from, to)| voice.range(day(from), day(to)))
            .join("\n")
        };
        assert_snapshot!(told("en-US"), @r"
        April 17–24
        April 17–19
        April 14–24
        April 1–11
        April 17 to May 1
        December 20 to January 5
        April 17 to April 24
        April 17
        ");
        assert_snapshot!(told("en-GB"), @r"
        17–24 April
        17–19 April
        14–24 April
        1–11 April
        17 April to 1 May
        20 December to 5 January
        17 April to 24 April
        17 April
        ");
        assert_snapshot!(told("de"), @r"
        17.–24. April
        17.–19. April
        14.–24. April
        1.–11. April
        17. April bis 1. Mai
        20. Dezember bis 5. Januar
        17. April bis 24. April
        17. April
        ");
        // January has a name of its own in Austria.
        assert_eq!(voice("de-AT").date(day("2027-01-05")), "5. Jänner");
    }

    #[test]
    fn spanish_ranges_bring_their_articles() {
        // "del … al …": de + el, a + el.
        for (tag, from, to, told) in [
            ("es", "2026-04-17", "2026-04-24", "del 17 al 24 de abril"),
            ("es", "2026-04-01", "2026-04-11", "del 1 al 11 de abril"),
            ("es-MX", "2026-04-17", "2026-05-01", "del 17 de abril al 1 de mayo"),
            ("es-AR", "2026-12-20", "2027-01-05", "del 20 de diciembre al 5 de enero"),
            ("es", "2026-04-17", "2026-04-17", "17 de abril"),
        ] {
            assert_eq!(voice(tag).range(day(from), day(to)), told);
        }
    }

    #[test]
    fn the_day_is_found_wherever_the_language_puts_it() {
        let found = |first, last| around_the_day(first, last).expect("a number of the day");
        let parts = |before, first, last, after| AroundTheDay { before, first, last, after };
        assert_eq!(found("17. April", "24. April"), parts("", "17", "24", ". April"));
        assert_eq!(found("4 de abril", "14 de abril"), parts("", "4", "14", " de abril"));
        assert_eq!(found("4月4日", "4月24日"), parts("4月", "4", "24", "日"));
        assert_eq!(around_the_day("May 3", "June 5"), None);
        assert_eq!(around_the_day("1er avril", "24 avril"), None);
        assert_eq!(around_the_day("", ""), None);
    }

    #[test]
    fn other_languages_have_dates_too() {
        // After the date patterns of Unicode CLDR: "d. MMMM", "d MMMM", "d 'de' MMMM".
        for (tag, date, weekday, year, month) in [
            ("de", "22. April", "Mittwoch, 22. April", "22. April 2026", "April"),
            ("fr", "22 avril", "mercredi 22 avril", "22 avril 2026", "avril"),
            ("es", "22 de abril", "miércoles, 22 de abril", "22 de abril de 2026", "abril"),
        ] {
            let formats = Formats::new(tag).expect("formats");
            let april = calendar(day("2026-04-22")).expect("a date");
            assert_eq!(formats.date.format(&april).to_string(), date);
            assert_eq!(formats.date_with_weekday.format(&april).to_string(), weekday);
            assert_eq!(formats.date_with_year.format(&april).to_string(), year);
            assert_eq!(formats.month.format(&april).to_string(), month);
        }
    }

    #[test]
    fn the_first_of_a_month_is_written_in_the_languages_own_way() {
        let french = voice("fr");
        assert_eq!(french.date(day("2026-05-01")), "1er mai");
        assert_eq!(french.date(day("2026-05-11")), "11 mai");
        assert_eq!(french.date_with_weekday(day("2026-05-01")), "vendredi 1er mai");
        assert_eq!(french.date_with_year(day("2021-01-01")), "1er janvier 2021");
        assert_eq!(french.range(day("2026-05-01"), day("2026-05-11")), "du 1er au 11 mai");
        assert_eq!(french.range(day("2026-04-17"), day("2026-05-01")), "du 17 avril au 1er mai");
        assert_eq!(voice("en-GB").date_with_weekday(day("2026-05-01")), "Friday 1 May");
    }

    #[test]
    fn dates_beyond_the_calendar_are_written_plainly() {
        let voice = voice("en");
        assert_eq!(voice.date(NaiveDate::MAX), NaiveDate::MAX.to_string());
        assert_eq!(voice.range(NaiveDate::MIN, NaiveDate::MIN), NaiveDate::MIN.to_string());
    }
}

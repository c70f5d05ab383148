//! Lengths of time.

use super::{Voice, args};

/// Lengths of time are told in days below this many of them.
const IN_DAYS_BELOW: i64 = 14;

impl Voice {
    /// A length of time: in days below two weeks, else in weeks rounded to halves ("9 days",
    /// "3 weeks", "3½ weeks"). The sign of `days` is dropped: earlier or later is the
    /// sentence's matter.
    #[must_use]
    pub fn weeks(&self, days: i64) -> String {
        let days = days.saturating_abs();
        if days < IN_DAYS_BELOW {
            return self.say("days", &args().number("n", days));
        }
        match half_weeks(days) {
            (whole, false) => self.say("weeks", &args().number("n", whole)),
            (whole, true) => self.say("weeks", &args().text("n", self.and_a_half(whole))),
        }
    }

    /// A span of days that stays in days, however long: "4–10 days", "1 day".
    #[must_use]
    pub fn days_range(&self, low: i64, high: i64) -> String {
        if low == high {
            self.say("days", &args().number("n", high))
        } else {
            self.say("days-range", &args().number("from", low).number("to", high))
        }
    }

    /// From one length of time to another, both in days: "9–12 days", "6–8½ weeks". Both are in
    /// weeks where the longer one is two weeks or more; signs are dropped, and the shorter one
    /// comes first.
    #[must_use]
    pub fn weeks_range(&self, low: i64, high: i64) -> String {
        let (one, other) = (low.saturating_abs(), high.saturating_abs());
        let (low, high) = (one.min(other), one.max(other));
        if high < IN_DAYS_BELOW && low != high {
            return self.say("days-range", &args().number("from", low).number("to", high));
        }
        if half_weeks(low) == half_weeks(high) {
            return self.weeks(high);
        }
        let from = match half_weeks(low) {
            (whole, false) => self.number(whole),
            (whole, true) => self.and_a_half(whole),
        };
        match half_weeks(high) {
            (to, false) => self.say("weeks-range", &args().text("from", from).number("to", to)),
            (whole, true) => {
                let to = self.and_a_half(whole);
                self.say("weeks-range", &args().text("from", from).text("to", to))
            }
        }
    }

    fn and_a_half(&self, whole: i64) -> String {
        if whole == 0 { "½".to_owned() } else { format!("{}½", self.number(whole)) }
    }
}

/// Days, none negative, as whole weeks and whether a half comes on top, rounded to the nearest.
fn half_weeks(days: i64) -> (i64, bool) {
    // A half week is 3.5 days; doubling makes both sides whole: 2 × days / 7, rounded.
    let halves = (days.saturating_mul(4).saturating_add(7)) / 14;
    (halves / 2, halves % 2 == 1)
}

#[cfg(test)]
mod tests {
    use super::super::voice::tests::voice;

    #[test]
    fn weeks_are_rounded_to_halves_and_short_times_told_in_days() {
        let voice = voice("en");
        for (days, told) in [
            (0, "0 days"),
            (1, "1 day"),
            (-1, "1 day"),
            (9, "9 days"),
            (13, "13 days"),
            (14, "2 weeks"),
            // 15 days are 2.14 weeks, 16 are 2.29: the half begins at 2.25.
            (15, "2 weeks"),
            (16, "2½ weeks"),
            (19, "2½ weeks"),
            (20, "3 weeks"),
            (21, "3 weeks"),
            (-24, "3½ weeks"),
            (7 * 1200, "1,200 weeks"),
        ] {
            assert_eq!(voice.weeks(days), told, "{days}");
        }
        assert!(!voice.weeks(i64::MIN).is_empty());
    }

    #[test]
    fn a_range_of_weeks_has_one_unit() {
        let voice = voice("en");
        for (low, high, told) in [
            (9, 12, "9–12 days"),
            (0, 1, "0–1 day"),
            (7, 7, "7 days"),
            (7, 21, "1–3 weeks"),
            (3, 14, "½–2 weeks"),
            (42, 56, "6–8 weeks"),
            (42, 60, "6–8½ weeks"),
            (45, 60, "6½–8½ weeks"),
            (42, 43, "6 weeks"),
            (-56, -42, "6–8 weeks"),
        ] {
            assert_eq!(voice.weeks_range(low, high), told, "{low} to {high}");
        }
    }
}

//! Numbers, temperatures and lengths.

use super::{Voice, args};
use crate::club::Units;

impl Voice {
    /// A whole number: "1,500".
    #[must_use]
    pub fn number(&self, number: i64) -> String {
        self.tongue.formats.numerals.whole(number)
    }

    /// How many there are of something.
    #[must_use]
    pub fn count(&self, count: usize) -> String {
        self.number(i64::try_from(count).unwrap_or(i64::MAX))
    }

    /// A number with at most one decimal, rounded to the nearest: "2.5", "3".
    #[must_use]
    pub fn decimal(&self, number: f64) -> String {
        #[expect(clippy::cast_possible_truncation, reason = "the cast keeps to the range of i64")]
        let tenths = (number * 10.0).round() as i64;
        self.tongue.formats.numerals.tenths(tenths)
    }

    /// A temperature in degrees Celsius: "16 °C", or "60 °F" rounded to five degrees (to one
    /// degree near freezing).
    #[must_use]
    pub fn temperature(&self, celsius: i64) -> String {
        self.degrees(self.number(self.on_the_readers_scale(celsius)))
    }

    /// From one temperature to another, in degrees Celsius: "16–18 °C", "-4 to 2 °C".
    #[must_use]
    pub fn temperature_range(&self, low: i64, high: i64) -> String {
        let (low, high) = (self.on_the_readers_scale(low), self.on_the_readers_scale(high));
        if low == high {
            return self.degrees(self.number(low));
        }
        let ends = args().text("low", self.number(low)).text("high", self.number(high));
        let signed = low < 0 || high < 0;
        self.degrees(if signed {
            self.say("number-range-signed", &ends)
        } else {
            self.say("number-range", &ends)
        })
    }

    /// A measured temperature in degrees Celsius, as a thermometer shows it: "14 °C", "57 °F".
    #[must_use]
    pub fn measured_temperature(&self, celsius: f64) -> String {
        match self.units {
            Units::Metric => self.degrees(self.decimal(celsius)),
            Units::Customary => {
                self.degrees(self.decimal(self.on_the_readers_thermometer(celsius).round()))
            }
        }
    }

    /// The least whole degree of the reader's thermometer at or above a temperature in degrees
    /// Celsius.
    #[must_use]
    pub fn temperature_or_more(&self, celsius: f64) -> String {
        self.degrees(self.decimal((self.on_the_readers_thermometer(celsius) - 1e-6).ceil()))
    }

    /// The highest whole degree of the reader's thermometer at or below a temperature in degrees
    /// Celsius.
    #[must_use]
    pub fn temperature_or_less(&self, celsius: f64) -> String {
        self.degrees(self.decimal((self.on_the_readers_thermometer(celsius) + 1e-6).floor()))
    }

    /// A share from 0 to 1 in whole percent: "75%".
    #[must_use]
    pub fn percent(&self, share: f64) -> String {
        self.say("percent", &args().text("n", self.decimal((share * 100.0).round())))
    }

    /// A number of years with at most one decimal: "1 year", "2.5 years".
    #[must_use]
    pub fn years(&self, years: f64) -> String {
        if (years - 1.0).abs() < f64::EPSILON {
            return self.say("years", &args().number("n", 1));
        }
        self.say("years", &args().text("n", self.decimal(years)))
    }

    /// A number of days, rounded to whole ones and at least one: "1 day", "18 days".
    #[must_use]
    pub fn about_days(&self, days: f64) -> String {
        #[expect(clippy::cast_possible_truncation, reason = "the cast keeps to the range of i64")]
        let days = days.round().max(1.0) as i64;
        self.say("days", &args().number("n", days))
    }

    /// A length in millimetres: in millimetres below one centimetre, then in centimetres with at
    /// most one decimal; or in inches as a ruler or seed packet has them ("¼ inch", "12 inches").
    #[must_use]
    pub fn length_mm(&self, mm: i64) -> String {
        self.length_range_mm(mm, mm)
    }

    /// From one length to another, in millimetres: "5–15 mm", "2.5–5 cm", "½–1 inch". The unit is
    /// the shorter length's, for both.
    #[must_use]
    pub fn length_range_mm(&self, low: i64, high: i64) -> String {
        match self.units {
            Units::Metric if low < 10 => {
                let ends = self.ends(self.number(low), self.number(high));
                self.say("millimetres", &args().text("n", ends))
            }
            Units::Metric => {
                let tenths = |mm| self.tongue.formats.numerals.tenths(mm);
                let ends = self.ends(tenths(low), tenths(high));
                self.say("centimetres", &args().text("n", ends))
            }
            Units::Customary => {
                let (low, high) = (eighths_of_inch(low), eighths_of_inch(high));
                let ends = self.ends(self.eighths(low), self.eighths(high));
                if (1..=8).contains(&high) {
                    self.say("inch", &args().text("n", ends))
                } else {
                    self.say("inches", &args().text("n", ends))
                }
            }
        }
    }

    /// The catalogue rounds the trade's Fahrenheit figures to whole degrees Celsius. From 4 °C on
    /// those figures are multiples of five, so that rounding back to five gives the source's own.
    fn on_the_readers_scale(&self, celsius: i64) -> i64 {
        match self.units {
            Units::Metric => celsius,
            Units::Customary if celsius >= 4 => {
                5 * nearest(celsius.saturating_mul(9).saturating_add(160), 25)
            }
            Units::Customary => nearest(celsius.saturating_mul(9), 5).saturating_add(32),
        }
    }

    fn on_the_readers_thermometer(&self, celsius: f64) -> f64 {
        match self.units {
            Units::Metric => celsius,
            Units::Customary => celsius * 1.8 + 32.0,
        }
    }

    fn degrees(&self, n: String) -> String {
        match self.units {
            Units::Metric => self.say("celsius", &args().text("n", n)),
            Units::Customary => self.say("fahrenheit", &args().text("n", n)),
        }
    }

    /// Both ends of a range of numbers, or the one number where they are written alike.
    fn ends(&self, low: String, high: String) -> String {
        if low == high {
            return low;
        }
        self.say("number-range", &args().text("low", low).text("high", high))
    }

    /// A number of eighths with its fraction: "⅛", "1½".
    fn eighths(&self, eighths: i64) -> String {
        let fraction = match eighths.rem_euclid(8) {
            1 => "⅛",
            2 => "¼",
            3 => "⅜",
            4 => "½",
            5 => "⅝",
            6 => "¾",
            7 => "⅞",
            _ => return self.number(eighths / 8),
        };
        match eighths / 8 {
            0 => fraction.to_owned(),
            whole => format!("{}{fraction}", self.number(whole)),
        }
    }
}

/// A length as gardeners give it in inches, counted in eighths of an inch.
///
/// An inch is 25.4 mm. What lies below 3/16 is an eighth; from there quarters, from two inches
/// halves, from six whole inches, and from two feet quarters of a foot: figures of that size were
/// rounded when they were stated, and 90 cm is a yard, not 35 inches.
fn eighths_of_inch(mm: i64) -> i64 {
    let step = match mm {
        ..=0 => return 0,
        1..5 => return 1,
        5..51 => 2,
        51..152 => 4,
        152..610 => 8,
        _ => 24,
    };
    nearest(mm.saturating_mul(80), 254 * step) * step
}

/// `number / by`, rounded to the nearest whole number; halves go away from zero.
fn nearest(number: i64, by: i64) -> i64 {
    let half = if number < 0 { -by / 2 } else { by / 2 };
    number.saturating_add(half) / by
}

#[cfg(test)]
mod tests {
    use super::super::voice::tests::voice;
    use super::*;

    /// Spaces at which no line breaks are written as plain ones, to be read here.
    fn plain(text: &str) -> String {
        text.replace('\u{a0}', " ")
    }

    #[test]
    fn temperatures_are_in_the_readers_units() {
        let (metric, customary) = (voice("en-GB"), voice("en-US"));
        // F = 1.8 C + 32: 16 °C is 60.8 °F, 18 °C is 64.4 °F, -2 °C is 28.4 °F, -18 °C is -0.4 °F.
        // UC ANR Publication 3382, Table 5.2, has 60, 65, 75, 85, 95 and 105 °F; the catalogue's
        // 16, 18, 24, 29, 35 and 41 °C give them back.
        for (celsius, c, f) in [
            (16, "16 °C", "60 °F"),
            (18, "18 °C", "65 °F"),
            (24, "24 °C", "75 °F"),
            (29, "29 °C", "85 °F"),
            (35, "35 °C", "95 °F"),
            (41, "41 °C", "105 °F"),
            (3, "3 °C", "37 °F"),
            (0, "0 °C", "32 °F"),
            (-2, "-2 °C", "28 °F"),
            (-18, "-18 °C", "0 °F"),
            (-40, "-40 °C", "-40 °F"),
        ] {
            assert_eq!(plain(&metric.temperature(celsius)), c);
            assert_eq!(plain(&customary.temperature(celsius)), f);
        }
        for (low, high, c, f) in [
            (16, 18, "16–18 °C", "60–65 °F"),
            (7, 7, "7 °C", "45 °F"),
            (-4, 2, "-4 to 2 °C", "25–36 °F"),
            (-30, -20, "-30 to -20 °C", "-22 to -4 °F"),
        ] {
            assert_eq!(plain(&metric.temperature_range(low, high)), c);
            assert_eq!(plain(&customary.temperature_range(low, high)), f);
        }
        assert!(metric.temperature(16).contains("\u{a0}°C"), "no line breaks before the unit");
        for extreme in [i64::MIN, i64::MAX] {
            assert!(!customary.temperature(extreme).is_empty());
        }
    }

    #[test]
    fn measured_temperatures_are_as_the_thermometer_shows_them() {
        let (metric, customary) = (voice("en-GB"), voice("en-US"));
        let f57 = (57.0 - 32.0) / 1.8;
        assert_eq!(plain(&customary.measured_temperature(f57)), "57 °F");
        assert_eq!(plain(&metric.measured_temperature(f57)), "13.9 °C");
        assert_eq!(plain(&metric.measured_temperature(14.0)), "14 °C");
        // 16.7 °C is 62.06 °F; 60 °F is 15.556 °C.
        assert_eq!(plain(&metric.temperature_or_more(16.7)), "17 °C");
        assert_eq!(plain(&customary.temperature_or_more(16.7)), "63 °F");
        assert_eq!(plain(&customary.temperature_or_more(140.0 / 9.0)), "60 °F");
        assert_eq!(plain(&metric.temperature_or_less(29.5)), "29 °C");
        assert_eq!(plain(&metric.temperature_or_more(15.0)), "15 °C");
    }

    #[test]
    fn shares_years_and_days() {
        let voice = voice("en-GB");
        assert_eq!(voice.percent(0.675), "68%");
        assert_eq!((voice.years(1.0), voice.years(2.5)), ("1 year".into(), "2.5 years".into()));
        assert_eq!(
            (voice.about_days(0.4), voice.about_days(17.8)),
            ("1 day".into(), "18 days".into())
        );
    }

    #[test]
    fn metric_lengths_change_to_centimetres_at_ten_millimetres() {
        let voice = voice("en-GB");
        for (mm, told) in [
            (0, "0 mm"),
            (3, "3 mm"),
            (9, "9 mm"),
            (10, "1 cm"),
            (13, "1.3 cm"),
            (25, "2.5 cm"),
            (300, "30 cm"),
            (15_000, "1,500 cm"),
        ] {
            assert_eq!(plain(&voice.length_mm(mm)), told);
        }
        for (low, high, told) in
            [(5, 15, "5–15 mm"), (25, 50, "2.5–5 cm"), (300, 450, "30–45 cm"), (30, 30, "3 cm")]
        {
            assert_eq!(plain(&voice.length_range_mm(low, high)), told);
        }
    }

    #[test]
    fn lengths_in_inches_are_those_of_a_ruler() {
        let voice = voice("en-US");
        // What seed packets and extension tables print beside the metric figure.
        for (mm, told) in [
            (0, "0 inches"),
            (1, "⅛ inch"),
            (3, "⅛ inch"),
            (6, "¼ inch"),
            (13, "½ inch"),
            (19, "¾ inch"),
            (25, "1 inch"),
            (38, "1½ inches"),
            (50, "2 inches"),
            (75, "3 inches"),
            (100, "4 inches"),
            (150, "6 inches"),
            (200, "8 inches"),
            (300, "12 inches"),
            (450, "18 inches"),
            (600, "24 inches"),
            (750, "30 inches"),
            (900, "36 inches"),
            (1200, "48 inches"),
            (1800, "72 inches"),
        ] {
            assert_eq!(voice.length_mm(mm), told, "{mm} mm");
        }
        for (low, high, told) in [
            (6, 13, "¼–½ inch"),
            (13, 25, "½–1 inch"),
            (25, 50, "1–2 inches"),
            (300, 450, "12–18 inches"),
            (12, 13, "½ inch"),
        ] {
            assert_eq!(voice.length_range_mm(low, high), told);
        }
    }

    #[test]
    fn a_longer_length_is_never_told_as_a_shorter_one() {
        let told: Vec<i64> = (0..3000).map(eighths_of_inch).collect();
        assert!(told.is_sorted());
        // Every step is at most a quarter of the length it rounds, so rounding moves a length by
        // an eighth of it at most. One eighth of an inch is 254 / 80 millimetres.
        for mm in 26..3000 {
            let off = (eighths_of_inch(mm) * 254 - mm * 80).abs();
            assert!(off * 8 <= mm * 80, "{mm} mm");
        }
        assert!(eighths_of_inch(i64::MAX) > 0);
        assert_eq!(eighths_of_inch(-5), 0);
    }

    #[test]
    fn numbers_are_written_in_the_readers_way() {
        assert_eq!(voice("en").number(1_234_567), "1,234,567");
        assert_eq!(voice("en-IN").number(1_234_567), "12,34,567");
        assert_eq!(voice("en").number(-5), "-5");
        assert_eq!(voice("en").count(3), "3");
        assert_eq!(voice("en").decimal(2.46), "2.5");
        assert_eq!(voice("en").decimal(3.0), "3");
        assert_eq!(voice("en").decimal(-0.04), "0");
        assert!(!voice("en").decimal(f64::NAN).is_empty());
        assert!(!voice("en").decimal(f64::INFINITY).is_empty());
    }
}

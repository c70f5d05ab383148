//! Times of day.

use icu_datetime::input::Time;

use super::Voice;
use crate::club::ReminderTime;

impl Voice {
    /// The time of day on the clock that the region reads: "7:00 AM", "07:00".
    #[must_use]
    pub fn time(&self, time: ReminderTime) -> String {
        let (hour, minute) = (time.minutes() / 60, time.minutes() % 60);
        u8::try_from(hour)
            .ok()
            .zip(u8::try_from(minute).ok())
            .and_then(|(hour, minute)| Time::try_new(hour, minute, 0, 0).ok())
            .map_or_else(
                || time.to_string(),
                |clock| self.tongue.formats.time.format(&clock).to_string(),
            )
    }
}

#[cfg(test)]
mod tests {
    use super::super::voice::tests::voice;

    #[test]
    fn times_follow_the_regions_clock() {
        let told = |tag: &str, time: &str| voice(tag).time(time.parse().expect("a time"));
        // CLDR puts a narrow no-break space before the half of the day.
        for (time, american, british) in [
            ("0:05", "12:05\u{202f}AM", "00:05"),
            ("7:00", "7:00\u{202f}AM", "07:00"),
            ("12:00", "12:00\u{202f}PM", "12:00"),
            ("19:30", "7:30\u{202f}PM", "19:30"),
        ] {
            assert_eq!(told("en-US", time), american);
            assert_eq!(told("en", time), american);
            assert_eq!(told("en-GB", time), british);
        }
        // German has its own clock, and where there are no texts, English has the region's clock.
        assert_eq!(told("de", "7:00"), "07:00");
        assert_eq!(told("fi", "7:00"), "7.00");
    }
}

//! Reminder times through every change of clocks of 2026 and 2027, in every zone, against a table
//! that another implementation made from a newer edition of the zone data: Python's `zoneinfo`
//! over the `tzdata` package, by `tests/fixtures/zone_changes.py`.
//!
//! The instants that are expected here are reckoned from that table alone: neither chrono's nor
//! chrono-tz's way of turning a clock's reading into an instant has a part in them.

use std::collections::BTreeMap;
use std::fmt::Write;

use chrono::{
    DateTime, Days, NaiveDate, NaiveDateTime, NaiveTime, Offset, TimeDelta, TimeZone, Utc,
};
use chrono_tz::{TZ_VARIANTS, Tz};
use sowbell::club::ReminderTime;

const TABLE: &str = include_str!("../fixtures/zone_changes.csv");

/// The edition that chrono-tz compiles in, and the table's own.
const COMPILED_IN: &str = "2025b";
const OF_THE_TABLE: &str = "2026f";

/// The zones for which the table's edition says something else for 2026 and 2027 than the one that
/// is compiled in. Whoever gardens there gets reminders an hour off from the day on which the
/// rules changed, until the program is built with newer data (README, "Time zones").
const DIFFER: [&str; 15] = [
    "Africa/Casablanca",
    "Africa/El_Aaiun",
    "America/Edmonton",
    "America/Havana",
    "America/Inuvik",
    "America/Rainy_River",
    "America/Vancouver",
    "America/Winnipeg",
    "America/Yellowknife",
    "Canada/Central",
    "Canada/Mountain",
    "Canada/Pacific",
    "Cuba",
    "Europe/Chisinau",
    "Europe/Tiraspol",
];

/// The zones that the table's edition has and the compiled one has not, and the other way about.
/// "Factory" is no place: it stands for a clock that nobody has set yet.
const ONLY_IN_THE_TABLE: [&str; 1] = ["Factory"];
const ONLY_COMPILED_IN: [&str; 0] = [];

/// What the clocks of a zone show: offsets in seconds east of UTC, each from an instant on.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Clocks(Vec<(DateTime<Utc>, i64)>);

fn instant(text: &str) -> DateTime<Utc> {
    text.parse().expect("an instant")
}

fn table() -> BTreeMap<&'static str, Clocks> {
    let mut zones: BTreeMap<&str, Clocks> = BTreeMap::new();
    for line in TABLE.lines().skip_while(|line| line.starts_with('#')).skip(1) {
        let fields: Vec<&str> = line.split(',').collect();
        let [zone, at, before, after] = fields[..] else { panic!("four fields: {line}") };
        let (before, after) = (before.parse().expect("seconds"), after.parse().expect("seconds"));
        let clocks = &mut zones.entry(zone).or_insert(Clocks(Vec::new())).0;
        assert_eq!(clocks.last().map_or(before, |(_, is)| *is), before, "{line}");
        clocks.push((instant(at), after));
    }
    zones
}

/// What chrono-tz has compiled in, in the same form.
fn compiled_in(zone: Tz) -> Clocks {
    let offset = |at: DateTime<Utc>| {
        i64::from(zone.offset_from_utc_datetime(&at.naive_utc()).fix().local_minus_utc())
    };
    let (mut at, end) = (instant("2026-01-01T00:00:00Z"), instant("2028-01-01T00:00:00Z"));
    let mut clocks = vec![(at, offset(at))];
    while at < end {
        let later = at + TimeDelta::hours(1);
        let (mut low, mut high) = (at, later);
        if offset(low) != offset(high) {
            while high - low > TimeDelta::seconds(1) {
                let middle = low + TimeDelta::seconds((high - low).num_seconds() / 2);
                if offset(middle) == offset(low) { low = middle } else { high = middle }
            }
            if high < end {
                clocks.push((high, offset(high)));
            }
        }
        at = later;
    }
    Clocks(clocks)
}

impl Clocks {
    /// Each offset with the instants from which and until which it holds.
    fn stretches(&self) -> impl Iterator<Item = (DateTime<Utc>, DateTime<Utc>, TimeDelta)> {
        self.0.iter().enumerate().map(|(index, (from, offset))| {
            // Before the table begins, its first offset is taken to hold.
            let from = if index == 0 { DateTime::<Utc>::MIN_UTC } else { *from };
            let to = self.0.get(index + 1).map_or(DateTime::<Utc>::MAX_UTC, |next| next.0);
            (from, to, TimeDelta::seconds(*offset))
        })
    }

    /// The first instant at which the clocks show this; where they never do, the one at which they
    /// jump over it.
    fn first_showing(&self, shown: NaiveDateTime) -> DateTime<Utc> {
        let shown_at = self.stretches().find_map(|(from, to, offset)| {
            let at = (shown - offset).and_utc();
            (from <= at && at < to).then_some(at)
        });
        let jumped_at = || {
            let jumps = self.stretches().zip(self.stretches().skip(1));
            jumps.map(|((_, to, before), (_, _, after))| (to, before, after)).find_map(
                |(at, before, after)| {
                    let wall = at.naive_utc();
                    (wall + before <= shown && shown < wall + after).then_some(at)
                },
            )
        };
        shown_at.or_else(jumped_at).expect("shown or jumped over")
    }

    /// The day that the clocks show.
    fn date(&self, at: DateTime<Utc>) -> NaiveDate {
        let offset = self.stretches().find(|(from, to, _)| *from <= at && at < *to);
        (at.naive_utc() + offset.expect("one holds").2).date()
    }
}

fn is_known_to_differ(zone: Tz) -> bool {
    DIFFER.contains(&zone.name()) || ONLY_COMPILED_IN.contains(&zone.name())
}

/// Times of day around which clocks are changed, and the others of the day: each half hour, and
/// the minutes beside full hours.
fn times() -> Vec<ReminderTime> {
    let half_hours = (0..48).map(|half| half * 30);
    let beside = [1, 59, 119, 121, 179, 181, 1_439];
    half_hours.chain(beside).filter_map(ReminderTime::from_minutes).collect()
}

fn wall(date: NaiveDate, time: ReminderTime) -> NaiveDateTime {
    date.and_time(NaiveTime::MIN) + TimeDelta::minutes(i64::from(time.minutes()))
}

#[test]
fn the_zones_that_a_newer_edition_changes_are_known() {
    assert_eq!(chrono_tz::IANA_TZDB_VERSION, COMPILED_IN, "look at the lists again");
    assert!(TABLE.starts_with(&format!("# edition {OF_THE_TABLE};")), "look at the lists again");
    let table = table();
    let mut differ = String::new();
    let mut only_compiled_in = Vec::new();
    for zone in TZ_VARIANTS {
        match table.get(zone.name()) {
            None => only_compiled_in.push(zone.name()),
            Some(of_table) if *of_table != compiled_in(zone) => {
                let _ = writeln!(differ, "{}", zone.name());
            }
            Some(_) => {}
        }
    }
    let known = |name: &&&str| TZ_VARIANTS.iter().any(|zone| zone.name() == **name);
    let only_in_the_table: Vec<&str> = table.keys().filter(|name| !known(name)).copied().collect();
    assert_eq!(differ.lines().collect::<Vec<_>>(), DIFFER);
    assert_eq!(only_in_the_table, ONLY_IN_THE_TABLE);
    assert_eq!(only_compiled_in, ONLY_COMPILED_IN);
}

#[test]
fn the_table_has_clocks_that_move_in_whole_minutes() {
    // What `ReminderTime::on` relies on when it looks for the end of a gap.
    for (zone, clocks) in table() {
        for (at, offset) in clocks.0 {
            assert_eq!((at.timestamp() % 60, offset % 60), (0, 0), "{zone} {at}");
        }
    }
}

#[test]
fn every_time_of_day_around_every_change_is_the_first_instant_that_shows_it() {
    let mut compared = 0;
    for (name, clocks) in table() {
        let Ok(zone) = name.parse::<Tz>() else { continue };
        if is_known_to_differ(zone) {
            continue;
        }
        for (change, _) in clocks.0.iter().skip(1) {
            let day = clocks.date(*change);
            let around = (0..5).map(|days| day - Days::new(2) + Days::new(days));
            for date in around {
                for time in times() {
                    let expected = clocks.first_showing(wall(date, time));
                    assert_eq!(time.on(date, zone), expected, "{name} {date} {time}");
                    compared += 1;
                }
            }
        }
    }
    // About a fifth of the zones change their clocks, most of them four times in two years.
    assert!(compared > 100_000, "{compared}");
}

#[test]
fn each_day_has_one_reminder_through_every_change() {
    for zone in TZ_VARIANTS {
        // Where the two editions differ, the one that is compiled in must hold in itself.
        let clocks = compiled_in(zone);
        for (change, _) in clocks.0.iter().skip(1) {
            for time in times() {
                let start = *change - TimeDelta::hours(50);
                let mut dates = Vec::new();
                let mut at = start;
                for _ in 0..4 {
                    let next = time.next_after(at, zone);
                    assert!(next > at && next - at <= TimeDelta::hours(49), "{zone} {time} {at}");
                    // One that falls into a gap over midnight comes on the day after its own.
                    let of = next.with_timezone(&zone).naive_local() - wall_of(time);
                    dates.push(of.date());
                    at = next;
                }
                let steps = dates.windows(2).all(|two| two[0] + Days::new(1) == two[1]);
                assert!(steps, "{zone} {time}: {dates:?}");
            }
        }
    }
}

fn wall_of(time: ReminderTime) -> TimeDelta {
    TimeDelta::minutes(i64::from(time.minutes()))
}

#[test]
fn seven_in_the_morning_comes_on_each_of_the_730_days_everywhere() {
    let seven = ReminderTime::default();
    let first: NaiveDate = "2026-01-01".parse().expect("a date");
    for (name, clocks) in table() {
        let Ok(zone) = name.parse::<Tz>() else { continue };
        if is_known_to_differ(zone) {
            continue;
        }
        let mut at = clocks.first_showing(wall(first, seven));
        assert_eq!(seven.on(first, zone), at, "{name}");
        for days in 1..730 {
            let next = seven.next_after(at, zone);
            let expected = clocks.first_showing(wall(first + Days::new(days), seven));
            assert_eq!(next, expected, "{name}, {days} days on");
            at = next;
        }
    }
}

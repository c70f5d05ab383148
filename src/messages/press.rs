//! What a button means, and the at most 64 bytes in which the platform carries it.

use std::fmt;
use std::str::FromStr;

use chrono::NaiveDate;
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};

use crate::club::{QuietDays, ReminderTime, Units};
use crate::planning::{Basis, Cover, CropId, Frost, FrostDates, Hold, JobKey, MonthDay, Place};

/// What a member answers to a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum JobAnswer {
    /// It is done.
    Done,
    /// Ask again on another day.
    Later,
    /// Not this season.
    Skip,
    /// Takes the last answer back.
    Undo,
    /// Nothing came up, said of a check.
    NotUp,
}

/// Whose frost dates are meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Topic {
    /// The member's own garden.
    Mine,
    /// The club's.
    Club,
}

/// What a button means.
///
/// Its text form begins with a letter for the meaning; fields follow, divided by `:`. Forms that
/// went out once stay readable for ever.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Press {
    /// An answer to a job of a reminder; the day is the reminder's.
    Job(JobKey, JobAnswer),
    /// Set these frost dates; `None` is "not given".
    Frost(Topic, Option<Frost>),
    /// Ask for frost dates to be typed.
    AskFrost(Topic),
    /// Add a crop to the list.
    Grow(CropId),
    /// Take a crop off the list.
    Drop(CropId),
    /// Show a page of the member's crops, from 0.
    Crops(u16),
    /// Show a page of what can be started, from 0, as on the day the list was made.
    Now(u16, NaiveDate),
    /// Answer the question that needed to know which crop was meant, about this one, on a day.
    Meant(CropId, NaiveDate),
    /// Show a page of the member's sowings, from 0.
    Sowings(u16),
    /// Give up a sowing by its number, and show that page of the list again.
    EndSowing(i64, u16),
    /// Record a new sowing today like the one of this number.
    SowAgain(i64),
    /// Follow the variety of this number.
    FollowVariety(i64),
    /// Remove the variety of this number.
    DropVariety(i64),
    /// Take back the change of this number, if it is still the last.
    Undo(i64),
    /// Set the reminder time.
    Hour(ReminderTime),
    /// Ask for a reminder time.
    AskHour,
    /// Set the days on which no message comes.
    Quiet(QuietDays),
    /// Show the days on which no message comes.
    AskQuiet,
    /// Set whether the member gardens at weekends.
    Weekends(bool),
    /// Ask for the end of a holiday.
    AskHoliday,
    /// The holiday is over.
    HolidayOver,
    /// Set the time zone.
    Zone(Topic, Tz),
    /// Ask for a zone.
    AskZone(Topic),
    /// Set the units.
    Units(Units),
    /// Set the language by its tag.
    Language(Topic, String),
    /// Ask for a language.
    AskLanguage(Topic),
    /// Set where seedlings are raised; `None` is "not said".
    Place(Option<Place>),
    /// Set what covers the beds; `None` is nothing.
    Cover(Option<Cover>),
    /// Ask where seedlings are raised and what covers the beds.
    AskPlace,
    /// Set the cold spell that is waited out; `None` is none.
    Hold(Topic, Option<Hold>),
    /// Read the whole of an answer that was short in the group, by the question's message.
    ReadOn(i32),
    /// Delete everything that is kept about the member.
    Forget,
    /// Keep it after all.
    DoNotForget,
    /// Show the settings.
    Settings,
    /// Show the coordinator's page.
    ClubPage,
    /// Show the club's lists.
    Lists,
    /// Show a list by its number.
    List(i64),
    /// Subscribe to a list by its number.
    Subscribe(i64),
    /// End the subscription to a list by its number.
    Unsubscribe(i64),
    /// Take a list out of the archive, by its number.
    ReopenList(i64),
    /// A member by their number is no helper of the club any more.
    DismissHelper(i64),
    /// Ask which of several clubs is meant in private.
    WhichClub,
    /// The club of this number is meant from now on.
    UseClub(i64),
}

/// Button data that no release of this program wrote.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("unknown button data '{0}'")]
pub struct PressError(pub String);

impl fmt::Display for Topic {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Mine => "m",
            Self::Club => "c",
        })
    }
}

impl FromStr for Topic {
    type Err = ();

    fn from_str(text: &str) -> Result<Self, ()> {
        match text {
            "m" => Ok(Self::Mine),
            "c" => Ok(Self::Club),
            _ => Err(()),
        }
    }
}

/// Frost in a button: `-` not given, `n` none, else `a` or `t` and one or two month-days.
fn write_frost(frost: Option<&Frost>) -> String {
    match frost {
        None => "-".to_owned(),
        Some(Frost::Free) => "n".to_owned(),
        Some(Frost::Dates(dates)) => {
            let basis = match dates.basis() {
                Basis::Average => 'a',
                Basis::Trusted => 't',
            };
            let first = dates.stated_first().map_or_else(String::new, |first| format!("/{first}"));
            format!("{basis}{}{first}", dates.stated_last())
        }
    }
}

/// The inner `None` is "not given"; an error is a text of another form.
fn read_frost(text: &str) -> Result<Option<Frost>, ()> {
    match text {
        "-" => Ok(None),
        "n" => Ok(Some(Frost::Free)),
        dates => read_frost_dates(dates).map(|dates| Some(Frost::Dates(dates))).ok_or(()),
    }
}

fn read_frost_dates(text: &str) -> Option<FrostDates> {
    let rest = text;
    let (basis, rest) = rest
        .strip_prefix('a')
        .map(|rest| (Basis::Average, rest))
        .or_else(|| rest.strip_prefix('t').map(|rest| (Basis::Trusted, rest)))?;
    let (last, first) = match rest.split_once('/') {
        Some((last, first)) => (last, Some(first.parse::<MonthDay>().ok()?)),
        None => (rest, None),
    };
    FrostDates::new(last.parse().ok()?, first, basis).ok()
}

/// A place in a button; `-` is "not said".
fn write_place(place: Option<Place>) -> &'static str {
    match place {
        None => "-",
        Some(Place::Windowsill) => "w",
        Some(Place::Lights) => "l",
        Some(Place::HeatMat) => "h",
        Some(Place::Greenhouse) => "g",
    }
}

/// A cover in a button; `-` is nothing.
fn write_cover(cover: Option<Cover>) -> &'static str {
    match cover {
        None => "-",
        Some(Cover::Fleece) => "f",
        Some(Cover::ColdFrame) => "c",
        Some(Cover::Tunnel) => "t",
    }
}

impl fmt::Display for Press {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Job(key, answer) => {
                let answer = match answer {
                    JobAnswer::Done => 'd',
                    JobAnswer::Later => 'l',
                    JobAnswer::Skip => 's',
                    JobAnswer::Undo => 'u',
                    JobAnswer::NotUp => 'n',
                };
                write!(f, "j:{answer}:{key}")
            }
            Self::Frost(topic, frost) => write!(f, "f:{topic}:{}", write_frost(frost.as_ref())),
            Self::AskFrost(topic) => write!(f, "F:{topic}"),
            Self::Grow(crop) => write!(f, "g:{crop}"),
            Self::Drop(crop) => write!(f, "d:{crop}"),
            Self::Crops(page) => write!(f, "c:{page}"),
            Self::Now(page, on) => write!(f, "n:{page}:{on}"),
            Self::Meant(crop, on) => write!(f, "m:{crop}:{on}"),
            Self::Sowings(page) => write!(f, "S:{page}"),
            Self::EndSowing(id, page) => write!(f, "e:{id}:{page}"),
            Self::SowAgain(id) => write!(f, "r:{id}"),
            Self::FollowVariety(id) => write!(f, "y:{id}"),
            Self::DropVariety(id) => write!(f, "Y:{id}"),
            Self::Undo(number) => write!(f, "U:{number}"),
            Self::Hour(time) => write!(f, "h:{}", time.minutes()),
            Self::AskHour => f.write_str("H"),
            Self::Quiet(days) => write!(f, "qd:{days}"),
            Self::AskQuiet => f.write_str("QD"),
            Self::Weekends(true) => f.write_str("we:y"),
            Self::Weekends(false) => f.write_str("we:n"),
            Self::AskHoliday => f.write_str("HD"),
            Self::HolidayOver => f.write_str("hd"),
            Self::Zone(topic, zone) => write!(f, "z:{topic}:{}", zone.name()),
            Self::AskZone(topic) => write!(f, "Z:{topic}"),
            Self::Units(Units::Metric) => f.write_str("u:m"),
            Self::Units(Units::Customary) => f.write_str("u:c"),
            Self::Language(topic, tag) => write!(f, "l:{topic}:{tag}"),
            Self::AskLanguage(topic) => write!(f, "L:{topic}"),
            Self::Place(place) => write!(f, "p:{}", write_place(*place)),
            Self::Cover(cover) => write!(f, "v:{}", write_cover(*cover)),
            Self::AskPlace => f.write_str("P"),
            Self::Hold(topic, None) => write!(f, "o:{topic}:-"),
            Self::Hold(topic, Some(hold)) => write!(f, "o:{topic}:{hold}"),
            Self::ReadOn(message) => write!(f, "ro:{message}"),
            Self::Forget => f.write_str("forget"),
            Self::DoNotForget => f.write_str("keep"),
            Self::Settings => f.write_str("s"),
            Self::ClubPage => f.write_str("C"),
            Self::Lists => f.write_str("ls"),
            Self::List(id) => write!(f, "li:{id}"),
            Self::Subscribe(id) => write!(f, "l+:{id}"),
            Self::Unsubscribe(id) => write!(f, "l-:{id}"),
            Self::ReopenList(id) => write!(f, "lo:{id}"),
            Self::DismissHelper(id) => write!(f, "dh:{id}"),
            Self::WhichClub => f.write_str("cw"),
            Self::UseClub(id) => write!(f, "cu:{id}"),
        }
    }
}

impl FromStr for Press {
    type Err = PressError;

    fn from_str(text: &str) -> Result<Self, PressError> {
        read(text).ok_or_else(|| PressError(text.to_owned()))
    }
}

fn read(text: &str) -> Option<Press> {
    let (kind, rest) = text.split_once(':').unwrap_or((text, ""));
    let pair = || rest.split_once(':');
    let crop = |id: &str| (!id.is_empty()).then(|| CropId::new(id));
    Some(match kind {
        "j" => {
            let (answer, key) = pair()?;
            let answer = match answer {
                "d" => JobAnswer::Done,
                "l" => JobAnswer::Later,
                "s" => JobAnswer::Skip,
                "u" => JobAnswer::Undo,
                "n" => JobAnswer::NotUp,
                _ => return None,
            };
            Press::Job(key.parse().ok()?, answer)
        }
        "f" => {
            let (topic, frost) = pair()?;
            Press::Frost(topic.parse().ok()?, read_frost(frost).ok()?)
        }
        "F" => Press::AskFrost(rest.parse().ok()?),
        "g" => Press::Grow(crop(rest)?),
        "d" => Press::Drop(crop(rest)?),
        "c" => Press::Crops(rest.parse().ok()?),
        "n" => {
            let (page, on) = pair()?;
            Press::Now(page.parse().ok()?, on.parse().ok()?)
        }
        "m" => {
            let (id, on) = pair()?;
            Press::Meant(crop(id)?, on.parse().ok()?)
        }
        "S" => Press::Sowings(rest.parse().ok()?),
        "e" => {
            let (id, page) = pair()?;
            Press::EndSowing(id.parse().ok()?, page.parse().ok()?)
        }
        "r" => Press::SowAgain(rest.parse().ok()?),
        "y" => Press::FollowVariety(rest.parse().ok()?),
        "Y" => Press::DropVariety(rest.parse().ok()?),
        "U" => Press::Undo(rest.parse().ok()?),
        "h" => Press::Hour(ReminderTime::from_minutes(rest.parse().ok()?)?),
        "H" if rest.is_empty() => Press::AskHour,
        "qd" => Press::Quiet(rest.parse().ok()?),
        "QD" if rest.is_empty() => Press::AskQuiet,
        "we" => Press::Weekends(match rest {
            "y" => true,
            "n" => false,
            _ => return None,
        }),
        "HD" if rest.is_empty() => Press::AskHoliday,
        "hd" if rest.is_empty() => Press::HolidayOver,
        "z" => {
            let (topic, zone) = pair()?;
            Press::Zone(topic.parse().ok()?, zone.parse().ok()?)
        }
        "Z" => Press::AskZone(rest.parse().ok()?),
        "u" => Press::Units(match rest {
            "m" => Units::Metric,
            "c" => Units::Customary,
            _ => return None,
        }),
        "l" => {
            let (topic, tag) = pair()?;
            Press::Language(topic.parse().ok()?, tag.to_owned())
        }
        "L" => Press::AskLanguage(rest.parse().ok()?),
        "p" => {
            let all = std::iter::once(None).chain(Place::ALL.map(Some));
            Press::Place(all.into_iter().find(|place| write_place(*place) == rest)?)
        }
        "v" => {
            let all = std::iter::once(None).chain(Cover::ALL.map(Some));
            Press::Cover(all.into_iter().find(|cover| write_cover(*cover) == rest)?)
        }
        "P" if rest.is_empty() => Press::AskPlace,
        "o" => {
            let (topic, hold) = pair()?;
            let hold = if hold == "-" { None } else { Some(hold.parse().ok()?) };
            Press::Hold(topic.parse().ok()?, hold)
        }
        "ro" => Press::ReadOn(rest.parse().ok()?),
        "forget" if rest.is_empty() => Press::Forget,
        "keep" if rest.is_empty() => Press::DoNotForget,
        "s" if rest.is_empty() => Press::Settings,
        "C" if rest.is_empty() => Press::ClubPage,
        "ls" if rest.is_empty() => Press::Lists,
        "li" => Press::List(rest.parse().ok()?),
        "l+" => Press::Subscribe(rest.parse().ok()?),
        "l-" => Press::Unsubscribe(rest.parse().ok()?),
        "lo" => Press::ReopenList(rest.parse().ok()?),
        "dh" => Press::DismissHelper(rest.parse().ok()?),
        "cw" if rest.is_empty() => Press::WhichClub,
        "cu" => Press::UseClub(rest.parse().ok()?),
        _ => return None,
    })
}

impl Serialize for Press {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Press {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer)?.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::planning::{Label, Step};

    fn frost(basis: Basis, first: Option<(u32, u32)>) -> Option<Frost> {
        let day = |(month, day)| MonthDay::new(month, day).expect("a day");
        FrostDates::new(day((5, 15)), first.map(day), basis).ok().map(Frost::Dates)
    }

    fn job(crop: &str, step: Step, label: Label) -> JobKey {
        JobKey { crop: CropId::new(crop), step, label, season: 2026, sowing: None }
    }

    fn on() -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 4, 22).expect("a date")
    }

    /// The forms about days on which messages come.
    fn pinned_days() -> Vec<(Press, &'static str)> {
        vec![
            (Press::Quiet("67".parse().expect("days")), "qd:67"),
            (Press::Quiet(QuietDays::NONE), "qd:-"),
            (Press::AskQuiet, "QD"),
            (Press::Weekends(true), "we:y"),
            (Press::Weekends(false), "we:n"),
            (Press::AskHoliday, "HD"),
            (Press::HolidayOver, "hd"),
        ]
    }

    /// Every form that ever went out under a message; none may be changed or taken off.
    #[expect(clippy::too_many_lines, reason = "a list that only grows")]
    fn pinned() -> Vec<(Press, &'static str)> {
        let crop = || CropId::new("brussels_sprouts");
        vec![
            (
                Press::Job(job("tomato", Step::SowIndoors, Label::Spring), JobAnswer::Done),
                "j:d:tomato.si.s.2026",
            ),
            (
                Press::Job(job("kale", Step::SowOutdoors, Label::Autumn), JobAnswer::Later),
                "j:l:kale.so.a.2026",
            ),
            (
                Press::Job(job("garlic", Step::PlantOut, Label::Overwintering), JobAnswer::Skip),
                "j:s:garlic.po.o.2026",
            ),
            (
                Press::Job(job("pepper", Step::HardenOff, Label::Spring), JobAnswer::Undo),
                "j:u:pepper.ho.s.2026",
            ),
            (
                Press::Job(job("basil", Step::PotUp, Label::Spring), JobAnswer::Done),
                "j:d:basil.pu.s.2026",
            ),
            (
                Press::Job(
                    JobKey { sowing: Some(17), ..job("tomato", Step::PlantOut, Label::Spring) },
                    JobAnswer::Done,
                ),
                "j:d:tomato.po.s.2026.17",
            ),
            (
                Press::Job(
                    JobKey { sowing: Some(17), ..job("pea", Step::Check, Label::Spring) },
                    JobAnswer::NotUp,
                ),
                "j:n:pea.ck.s.2026.17",
            ),
            (
                Press::Job(job("dill", Step::Harvest, Label::Autumn), JobAnswer::Done),
                "j:d:dill.ha.a.2026",
            ),
            (
                Press::Job(job("okra", Step::Soak, Label::Spring), JobAnswer::Done),
                "j:d:okra.sk.s.2026",
            ),
            (
                Press::Job(job("morning_glory", Step::Nick, Label::Spring), JobAnswer::Done),
                "j:d:morning_glory.ni.s.2026",
            ),
            (
                Press::Job(job("lavender", Step::Chill, Label::Spring), JobAnswer::Done),
                "j:d:lavender.cl.s.2026",
            ),
            (
                Press::Job(job("potato", Step::Chit, Label::Spring), JobAnswer::Done),
                "j:d:potato.ct.s.2026",
            ),
            (
                Press::Job(job("sweet_potato", Step::RootSlips, Label::Spring), JobAnswer::Done),
                "j:d:sweet_potato.rs.s.2026",
            ),
            (Press::Sowings(1), "S:1"),
            (Press::EndSowing(17, 1), "e:17:1"),
            (Press::SowAgain(17), "r:17"),
            (Press::FollowVariety(17), "y:17"),
            (Press::DropVariety(17), "Y:17"),
            (Press::Undo(42), "U:42"),
            (Press::Frost(Topic::Mine, None), "f:m:-"),
            (Press::Frost(Topic::Mine, Some(Frost::Free)), "f:m:n"),
            (Press::Frost(Topic::Club, frost(Basis::Average, Some((10, 5)))), "f:c:a05-15/10-05"),
            (Press::Frost(Topic::Mine, frost(Basis::Trusted, None)), "f:m:t05-15"),
            (Press::AskFrost(Topic::Club), "F:c"),
            (Press::Grow(crop()), "g:brussels_sprouts"),
            (Press::Drop(crop()), "d:brussels_sprouts"),
            (Press::Crops(2), "c:2"),
            (Press::Now(1, on()), "n:1:2026-04-22"),
            (Press::Meant(crop(), on()), "m:brussels_sprouts:2026-04-22"),
            (Press::Hour(ReminderTime::default()), "h:420"),
            (Press::AskHour, "H"),
            (
                Press::Zone(Topic::Mine, Tz::America__Argentina__ComodRivadavia),
                "z:m:America/Argentina/ComodRivadavia",
            ),
            (Press::AskZone(Topic::Mine), "Z:m"),
            (Press::Units(Units::Metric), "u:m"),
            (Press::Units(Units::Customary), "u:c"),
            (Press::Language(Topic::Club, "en-GB".to_owned()), "l:c:en-GB"),
            (Press::AskLanguage(Topic::Mine), "L:m"),
            (Press::Place(None), "p:-"),
            (Press::Place(Some(Place::Windowsill)), "p:w"),
            (Press::Place(Some(Place::Lights)), "p:l"),
            (Press::Place(Some(Place::HeatMat)), "p:h"),
            (Press::Place(Some(Place::Greenhouse)), "p:g"),
            (Press::Cover(None), "v:-"),
            (Press::Cover(Some(Cover::Fleece)), "v:f"),
            (Press::Cover(Some(Cover::ColdFrame)), "v:c"),
            (Press::Cover(Some(Cover::Tunnel)), "v:t"),
            (Press::AskPlace, "P"),
            (Press::Hold(Topic::Mine, None), "o:m:-"),
            (Press::Hold(Topic::Club, Hold::for_days(on(), 7).ok()), "o:c:2026-04-22/2026-04-29"),
            (Press::ReadOn(1234), "ro:1234"),
            (Press::Forget, "forget"),
            (Press::DoNotForget, "keep"),
            (Press::Settings, "s"),
            (Press::ClubPage, "C"),
        ]
    }

    /// The same, of lists and clubs.
    fn pinned_of_clubs() -> Vec<(Press, &'static str)> {
        vec![
            (Press::Lists, "ls"),
            (Press::List(7), "li:7"),
            (Press::Subscribe(7), "l+:7"),
            (Press::Unsubscribe(7), "l-:7"),
            (Press::ReopenList(7), "lo:7"),
            (Press::DismissHelper(12), "dh:12"),
            (Press::WhichClub, "cw"),
            (Press::UseClub(3), "cu:3"),
        ]
    }

    #[test]
    fn forms_that_went_out_stay_readable() {
        let all = pinned().into_iter().chain(pinned_days()).chain(pinned_of_clubs());
        for (press, text) in all {
            assert_eq!(press.to_string(), text);
            assert_eq!(text.parse(), Ok(press), "{text}");
            assert!(text.len() <= 64, "{text} is too long for a button");
        }
    }

    #[test]
    fn no_crop_and_no_zone_is_too_long_for_a_button() {
        let catalogue = crate::catalogue::Catalogue::embedded().expect("the catalogue");
        for crop in catalogue.iter() {
            let key = job(crop.id.as_str(), Step::SowIndoors, Label::Overwintering);
            assert!(Press::Job(key, JobAnswer::Done).to_string().len() <= 64);
            assert!(Press::Meant(crop.id.clone(), on()).to_string().len() <= 64);
        }
        for zone in chrono_tz::TZ_VARIANTS {
            assert!(Press::Zone(Topic::Club, zone).to_string().len() <= 64, "{zone}");
        }
    }

    #[test]
    fn anything_else_is_not_a_button() {
        for bad in [
            "",
            ":",
            "j",
            "j:x:tomato.si.s.2026",
            "j:d:tomato.si.s",
            "j:d:.si.s.2026",
            "j:d:tomato.si.s.2026.0",
            "j:d:tomato.si.s.2026.x",
            "j:d:tomato.si.s.2026.1.1",
            "U:x",
            "e:17",
            "f:m:a13-01",
            "f:x:-",
            "c:-1",
            "c:99999",
            "n:1:2026-02-30",
            "h:1440",
            "z:m:Mars/Base",
            "u:k",
            "s:1",
            "ls:1",
            "li:",
            "l+:x",
            "dh",
            "dh:x",
            "H:1",
            "qd:",
            "qd:1234567",
            "we:x",
            "HD:1",
            "g:",
            "m:tomato",
            "ro:x",
            "forget:1",
        ] {
            assert_eq!(bad.parse::<Press>(), Err(PressError(bad.to_owned())), "{bad}");
        }
    }

    proptest::proptest! {
        #[test]
        fn no_text_upsets_it(text in ".{0,70}") {
            if let Ok(press) = text.parse::<Press>() {
                proptest::prop_assert_eq!(press.to_string().parse::<Press>(), Ok(press));
            }
        }
    }
}

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
    /// The plants of the sowing of this number died.
    SowingLost(i64),
    /// Follow the variety of this number.
    FollowVariety(i64),
    /// Remove the variety of this number.
    DropVariety(i64),
    /// Take back the change of this number, if it is still the last.
    Undo(i64),
    /// Take back the change of this number, though it was made long ago, if it is still the last.
    UndoOld(i64),
    /// Put back the change of this number, if it is still the one that was taken back last.
    PutBack(i64),
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
            Self::SowingLost(id) => write!(f, "sl:{id}"),
            Self::FollowVariety(id) => write!(f, "y:{id}"),
            Self::DropVariety(id) => write!(f, "Y:{id}"),
            Self::Undo(number) => write!(f, "U:{number}"),
            Self::UndoOld(number) => write!(f, "uo:{number}"),
            Self::PutBack(number) => write!(f, "pb:{number}"),
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
        "sl" => Press::SowingLost(rest.parse().ok()?),
        "y" => Press::FollowVariety(rest.parse().ok()?),
        "Y" => Press::DropVariety(rest.parse().ok()?),
        "U" => Press::Undo(rest.parse().ok()?),
        "uo" => Press::UndoOld(rest.parse().ok()?),
        "pb" => Press::PutBack(rest.parse().ok()?),
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
mod tests;

//! How kept rows become the program's types, and back.

use std::fmt::Display;
use std::str::FromStr;

use chrono::NaiveDate;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use sqlx::sqlite::SqliteRow;
use sqlx::{Decode, Row, Sqlite, Type};

use super::{Queued, Result, StoreError};
use crate::club::{
    Club, Digest, Habits, JobMark, Mark, Member, MemberId, QuietDays, ReminderTime, Sowing, Units,
    Variety,
};
use crate::messages::{Outgoing, Priority};
use crate::planning::{CropId, JobKey, Label, Way};

/// A row with its table and number, so that a value that cannot be read is named.
pub(super) struct Kept<'r> {
    row: &'r SqliteRow,
    table: &'static str,
    id: i64,
}

impl<'r> Kept<'r> {
    /// A row of `table` that has its number in the column `id`.
    pub(super) fn of(table: &'static str, row: &'r SqliteRow) -> Result<Self> {
        let id = Self { row, table, id: 0 }.get("id")?;
        Ok(Self { row, table, id })
    }

    /// A row of `table` that belongs to the member `id`.
    pub(super) fn of_member(table: &'static str, row: &'r SqliteRow, id: MemberId) -> Self {
        Self { row, table, id }
    }

    /// The value of `column`.
    pub(super) fn get<T>(&self, column: &'static str) -> Result<T>
    where
        T: for<'d> Decode<'d, Sqlite> + Type<Sqlite>,
    {
        self.row.try_get(column).map_err(|error| self.corrupt(column, &error))
    }

    /// A text or NULL, read by its own form.
    fn parsed<T: FromStr<Err: Display>>(&self, column: &'static str) -> Result<Option<T>> {
        let text: Option<String> = self.get(column)?;
        text.map(|text| text.parse().map_err(|error: T::Err| self.corrupt(column, &error)))
            .transpose()
    }

    /// A JSON text or NULL.
    pub(super) fn json<T: DeserializeOwned>(&self, column: &'static str) -> Result<Option<T>> {
        let text: Option<String> = self.get(column)?;
        text.map(|text| serde_json::from_str(&text).map_err(|error| self.corrupt(column, &error)))
            .transpose()
    }

    /// A JSON text.
    pub(super) fn needed_json<T: DeserializeOwned>(&self, column: &'static str) -> Result<T> {
        self.json(column)?.ok_or_else(|| self.corrupt(column, &"nothing is there"))
    }

    fn corrupt(&self, column: &str, why: &dyn Display) -> StoreError {
        StoreError::Corrupt(format!("{} {}, {column}: {why}", self.table, self.id))
    }
}

/// The JSON of a value; every kept type has one, so an error is a fault of the program.
pub(super) fn to_json<T: Serialize>(value: &T) -> Result<String> {
    serde_json::to_string(value)
        .map_err(|error| StoreError::Database(sqlx::Error::Encode(Box::new(error))))
}

/// A member from a row of `members`.
pub(super) fn member(row: &SqliteRow) -> Result<Member> {
    let kept = Kept::of("members", row)?;
    let minutes: i64 = kept.get("reminder_minutes")?;
    let reminder_time = u16::try_from(minutes)
        .ok()
        .and_then(ReminderTime::from_minutes)
        .ok_or_else(|| kept.corrupt("reminder_minutes", &format_args!("{minutes} is no time")))?;
    let units: Option<String> = kept.get("units")?;
    let units = match units.as_deref() {
        None => None,
        Some("metric") => Some(Units::Metric),
        Some("customary") => Some(Units::Customary),
        Some(other) => return Err(kept.corrupt("units", &format_args!("'{other}' is no unit"))),
    };
    Ok(Member {
        id: kept.id,
        user: kept.get("user_id")?,
        name: kept.get("name")?,
        reachable: kept.get("reachable")?,
        frost: kept.json("frost")?,
        zone: kept.parsed("zone")?,
        language: kept.parsed("language")?,
        app_language: kept.parsed("app_language")?,
        units,
        reminder_time,
        habits: habits(&kept)?,
        hot_and_wet: kept.get("hot_and_wet")?,
        latitude: kept.get("latitude")?,
        months: kept.json("months")?,
        place: kept.parsed("place")?,
        cover: kept.parsed("cover")?,
        hold: kept.parsed("hold")?,
    })
}

fn habits(kept: &Kept<'_>) -> Result<Habits> {
    let bits: i64 = kept.get("quiet_days")?;
    let quiet = u8::try_from(bits).ok().and_then(QuietDays::from_bits);
    let quiet = quiet
        .ok_or_else(|| kept.corrupt("quiet_days", &format_args!("{bits} is no set of days")))?;
    Ok(Habits {
        quiet,
        at_weekends: kept.get("at_weekends")?,
        holiday_until: kept.get("holiday_until")?,
    })
}

/// The kept form of units.
pub(super) fn units_text(units: Units) -> &'static str {
    match units {
        Units::Metric => "metric",
        Units::Customary => "customary",
    }
}

/// An open club from a row of `clubs`.
pub(super) fn club(row: &SqliteRow) -> Result<Club> {
    let kept = Kept::of("clubs", row)?;
    Ok(Club {
        id: kept.id,
        chat: kept.get("chat")?,
        title: kept.get("title")?,
        frost: kept.json("frost")?,
        zone: kept.parsed("zone")?,
        language: kept.parsed("language")?,
        digest: digest(&kept)?,
        hold: kept.parsed("hold")?,
        hot_and_wet: kept.get("hot_and_wet")?,
        months: kept.json("months")?,
        join_token: kept.get("join_token")?,
    })
}

fn digest(kept: &Kept<'_>) -> Result<Option<Digest>> {
    let weekday: Option<i64> = kept.get("digest_weekday")?;
    let minutes: Option<i64> = kept.get("digest_minutes")?;
    let thread: Option<i32> = kept.get("digest_thread")?;
    weekday
        .zip(minutes)
        .map(|(weekday, minutes)| Digest::of_numbers(weekday, minutes, thread))
        .transpose()
        .map_err(|error| kept.corrupt("digest_weekday", &error))
}

/// What is kept of a job from a row of `job_marks`, and whose it is.
pub(super) fn job_mark(row: &SqliteRow, member: MemberId) -> Result<JobMark> {
    let kept = Kept::of_member("job_marks of member", row, member);
    let key = kept.parsed::<JobKey>("job")?;
    let key = key.ok_or_else(|| kept.corrupt("job", &"nothing is there"))?;
    let mark: Option<String> = kept.get("mark")?;
    let on: Option<NaiveDate> = kept.get("mark_on")?;
    let mark = match (mark.as_deref(), on) {
        (None, _) => None,
        (Some("done"), Some(on)) => Some(Mark::Done(on)),
        (Some("skipped"), Some(on)) => Some(Mark::Skipped(on)),
        (Some("later"), Some(on)) => Some(Mark::Later(on)),
        (Some(other), _) => {
            return Err(kept.corrupt("mark", &format_args!("'{other}' of {key} is no mark")));
        }
    };
    Ok(JobMark { key, mark, named_on: kept.get("named_on")? })
}

/// The kept form of a mark.
pub(super) fn mark_columns(mark: Mark) -> (&'static str, NaiveDate) {
    match mark {
        Mark::Done(on) => ("done", on),
        Mark::Skipped(on) => ("skipped", on),
        Mark::Later(on) => ("later", on),
    }
}

/// A recorded sowing from a row of `sowings`.
pub(super) fn sowing(row: &SqliteRow) -> Result<Sowing> {
    let kept = Kept::of("sowings", row)?;
    let (way, label): (String, String) = (kept.get("way")?, kept.get("label")?);
    let way = [Way::Indoors, Way::Outdoors].into_iter().find(|known| way_text(*known) == way);
    let way = way.ok_or_else(|| kept.corrupt("way", &"it is none"))?;
    let label = [Label::Spring, Label::Autumn, Label::Overwintering]
        .into_iter()
        .find(|known| label_text(*known) == label)
        .ok_or_else(|| kept.corrupt("label", &"it is none"))?;
    Ok(Sowing {
        id: kept.id,
        crop: CropId::new(kept.get::<String>("crop")?),
        variety: kept.get("variety")?,
        way,
        count: kept.get("plants")?,
        sown_on: kept.get("sown_on")?,
        room_c: kept.get("room_c")?,
        label,
        season: kept.get("season")?,
        came_up_on: kept.get("came_up_on")?,
        failed_on: kept.get("failed_on")?,
        ended_on: kept.get("ended_on")?,
        job: kept.parsed("job")?,
    })
}

/// A variety from a row of `varieties`.
pub(super) fn variety(row: &SqliteRow) -> Result<Variety> {
    let kept = Kept::of("varieties", row)?;
    Ok(Variety {
        id: kept.id,
        crop: CropId::new(kept.get::<String>("crop")?),
        name: kept.get("name")?,
        packet: kept.needed_json("packet")?,
    })
}

/// The kept form of a way of sowing.
pub(super) fn way_text(way: Way) -> &'static str {
    match way {
        Way::Indoors => "indoors",
        Way::Outdoors => "outdoors",
    }
}

/// The kept form of a label.
pub(super) fn label_text(label: Label) -> &'static str {
    match label {
        Label::Spring => "spring",
        Label::Autumn => "autumn",
        Label::Overwintering => "overwintering",
    }
}

/// A waiting message from a row of `outgoing`.
pub(super) fn queued(row: &SqliteRow) -> Result<Queued> {
    let kept = Kept::of("outgoing", row)?;
    let priority: i64 = kept.get("priority")?;
    let attempts: i64 = kept.get("attempts")?;
    Ok(Queued {
        id: kept.id,
        outgoing: kept.needed_json::<Outgoing>("payload")?,
        priority: [Priority::Press, Priority::Reply, Priority::Reminder]
            .into_iter()
            .find(|known| priority_number(*known) == priority)
            .ok_or_else(|| kept.corrupt("priority", &format_args!("{priority} is none")))?,
        attempts: u32::try_from(attempts).map_err(|error| kept.corrupt("attempts", &error))?,
        member: kept.get("member_id")?,
    })
}

/// The kept form of a priority.
pub(super) fn priority_number(priority: Priority) -> i64 {
    match priority {
        Priority::Press => 0,
        Priority::Reply => 1,
        Priority::Reminder => 2,
    }
}

/// A job that a reminder names, and the date that stood there before, so that a reminder that was
/// not sent can take its naming back.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct Named {
    /// The job's key as text.
    pub(super) job: String,
    /// The date of the reminder that named it before.
    pub(super) before: Option<NaiveDate>,
}

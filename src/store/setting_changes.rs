//! A member's settings in the journal: what they were before a change, and putting it back.

use chrono::{DateTime, Utc};
use sqlx::SqliteConnection;

use super::Result;
use super::schedule::{Touches, changed};
use crate::chat::Change;
use crate::club::{MemberId, MemberSetting, PutBack};

/// The settings that a change sets.
pub(super) fn set_by(change: &Change) -> &'static [MemberSetting] {
    match change {
        Change::MemberFrost(_) => &[MemberSetting::Frost],
        Change::MemberZone(_) => &[MemberSetting::Zone],
        Change::MemberLanguage(_) => &[MemberSetting::Language],
        Change::MemberUnits(_) => &[MemberSetting::Units],
        Change::MemberReminderTime(_) => &[MemberSetting::ReminderMinutes],
        Change::MemberHabits(_) => {
            &[MemberSetting::QuietDays, MemberSetting::AtWeekends, MemberSetting::HolidayUntil]
        }
        Change::MemberHotAndWet(_) => &[MemberSetting::HotAndWet],
        Change::MemberMonths(_) => &[MemberSetting::Months],
        Change::MemberLatitude(_) => &[MemberSetting::Latitude],
        Change::MemberPlace(_) => &[MemberSetting::Place],
        Change::MemberCover(_) => &[MemberSetting::Cover],
        Change::MemberHold(_) => &[MemberSetting::Hold],
        _ => &[],
    }
}

/// What these settings are now, in their kept form.
pub(super) async fn kept(
    conn: &mut SqliteConnection,
    member: MemberId,
    settings: &[MemberSetting],
) -> Result<Vec<(MemberSetting, Option<String>)>> {
    let mut all = Vec::new();
    for setting in settings {
        all.push((*setting, one_kept(conn, member, *setting).await?));
    }
    Ok(all)
}

/// What one setting is now, in its kept form.
pub(super) async fn one_kept(
    conn: &mut SqliteConnection,
    member: MemberId,
    setting: MemberSetting,
) -> Result<Option<String>> {
    Ok(sqlx::query_scalar(reading(setting)).bind(member).fetch_one(conn).await?)
}

/// What takes a change of settings back: those that are not what they were `before` it.
pub(super) async fn put_back(
    conn: &mut SqliteConnection,
    member: MemberId,
    before: Vec<(MemberSetting, Option<String>)>,
) -> Result<Vec<PutBack>> {
    let settings: Vec<MemberSetting> = before.iter().map(|(setting, _)| *setting).collect();
    let after = kept(conn, member, &settings).await?;
    let changed = before.into_iter().filter(|was| !after.contains(was));
    Ok(changed.map(|(setting, was)| PutBack::SettingAs { setting, was }).collect())
}

/// Puts a setting back as it was, and moves the member's mornings with it.
pub(super) async fn put(
    conn: &mut SqliteConnection,
    member: MemberId,
    setting: MemberSetting,
    was: Option<&str>,
    now: DateTime<Utc>,
) -> Result<()> {
    sqlx::query(writing(setting)).bind(was).bind(member).execute(&mut *conn).await?;
    let touches = match setting {
        MemberSetting::Zone | MemberSetting::ReminderMinutes => Touches::Clock,
        _ => Touches::Contents,
    };
    changed(conn, member, touches, now).await
}

macro_rules! reading {
    ($column:literal) => {
        concat!("SELECT CAST(", $column, " AS TEXT) FROM members WHERE id = $1")
    };
}

macro_rules! writing {
    ($column:literal) => {
        concat!("UPDATE members SET ", $column, " = $1 WHERE id = $2")
    };
    ($column:literal, $kind:literal) => {
        concat!("UPDATE members SET ", $column, " = CAST($1 AS ", $kind, ") WHERE id = $2")
    };
}

fn reading(setting: MemberSetting) -> &'static str {
    match setting {
        MemberSetting::Frost => reading!("frost"),
        MemberSetting::Zone => reading!("zone"),
        MemberSetting::Language => reading!("language"),
        MemberSetting::Units => reading!("units"),
        MemberSetting::ReminderMinutes => reading!("reminder_minutes"),
        MemberSetting::QuietDays => reading!("quiet_days"),
        MemberSetting::AtWeekends => reading!("at_weekends"),
        MemberSetting::HolidayUntil => reading!("holiday_until"),
        MemberSetting::HotAndWet => reading!("hot_and_wet"),
        MemberSetting::Months => reading!("months"),
        MemberSetting::Latitude => reading!("latitude"),
        MemberSetting::Place => reading!("place"),
        MemberSetting::Cover => reading!("cover"),
        MemberSetting::Hold => reading!("hold"),
    }
}

fn writing(setting: MemberSetting) -> &'static str {
    match setting {
        MemberSetting::Frost => writing!("frost"),
        MemberSetting::Zone => writing!("zone"),
        MemberSetting::Language => writing!("language"),
        MemberSetting::Units => writing!("units"),
        MemberSetting::ReminderMinutes => writing!("reminder_minutes", "INTEGER"),
        MemberSetting::QuietDays => writing!("quiet_days", "INTEGER"),
        MemberSetting::AtWeekends => writing!("at_weekends", "INTEGER"),
        MemberSetting::HolidayUntil => writing!("holiday_until"),
        MemberSetting::HotAndWet => writing!("hot_and_wet"),
        MemberSetting::Months => writing!("months"),
        MemberSetting::Latitude => writing!("latitude", "INTEGER"),
        MemberSetting::Place => writing!("place"),
        MemberSetting::Cover => writing!("cover"),
        MemberSetting::Hold => writing!("hold"),
    }
}

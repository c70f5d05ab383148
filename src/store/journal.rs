//! The journal: what takes a member's last changes back.

use chrono::{DateTime, NaiveDate, Utc};
use sqlx::sqlite::SqliteRow;
use sqlx::{Row, SqliteConnection};

use super::rows::{Kept, to_json};
use super::schedule::{Touches, changed, forget_empty_marks};
use super::{Result, list_changes, setting_changes, sowings, varieties};
use crate::club::{LastChange, MemberId, PutBack};
use crate::planning::JobKey;

/// How many changes of one member are kept.
const KEPT: i64 = 20;

/// Keeps what takes one change back; nothing where it changed nothing. What was taken back before
/// it cannot be put back any more.
pub(super) async fn keep(
    conn: &mut SqliteConnection,
    member: MemberId,
    mut put_back: Vec<PutBack>,
    now: DateTime<Utc>,
) -> Result<()> {
    if put_back.is_empty() {
        return Ok(());
    }
    put_back.reverse();
    let number = next_number(conn, member).await?;
    sqlx::query(
        "INSERT INTO journal (member_id, number, changed_at, put_back) VALUES ($1, $2, $3, $4)",
    )
    .bind(member)
    .bind(number)
    .bind(now)
    .bind(to_json(&put_back)?)
    .execute(&mut *conn)
    .await?;
    sqlx::query("DELETE FROM journal WHERE member_id = $1 AND number <= $2")
        .bind(member)
        .bind(number - KEPT)
        .execute(&mut *conn)
        .await?;
    sqlx::query("UPDATE journal SET put_forward = NULL WHERE member_id = $1")
        .bind(member)
        .execute(conn)
        .await?;
    Ok(())
}

/// The number that a member's next change gets.
pub(super) async fn next_number(conn: &mut SqliteConnection, member: MemberId) -> Result<i64> {
    let last: Option<i64> =
        sqlx::query_scalar("SELECT MAX(number) FROM journal WHERE member_id = $1")
            .bind(member)
            .fetch_one(conn)
            .await?;
    Ok(last.unwrap_or(0) + 1)
}

/// A member's last change that was not taken back yet.
pub(super) async fn last_change(
    conn: &mut SqliteConnection,
    member: MemberId,
) -> Result<Option<LastChange>> {
    let row = sqlx::query(
        "SELECT number, changed_at, put_back AS steps FROM journal \
         WHERE member_id = $1 AND put_back IS NOT NULL ORDER BY number DESC LIMIT 1",
    )
    .bind(member)
    .fetch_optional(conn)
    .await?;
    change_of(row.as_ref(), member)
}

/// The change that a member took back last, as long as nothing else changed since; what it lists
/// puts it back.
pub(super) async fn last_undone(
    conn: &mut SqliteConnection,
    member: MemberId,
) -> Result<Option<LastChange>> {
    // Changes are taken back from the last one down, so the lowest number is the latest.
    let row = sqlx::query(
        "SELECT number, changed_at, put_forward AS steps FROM journal \
         WHERE member_id = $1 AND put_forward IS NOT NULL ORDER BY number LIMIT 1",
    )
    .bind(member)
    .fetch_optional(conn)
    .await?;
    change_of(row.as_ref(), member)
}

fn change_of(row: Option<&SqliteRow>, member: MemberId) -> Result<Option<LastChange>> {
    row.map(|row| {
        let kept = Kept::of_member("journal of member", row, member);
        Ok(LastChange {
            number: kept.get("number")?,
            changed_at: kept.get("changed_at")?,
            put_back: kept.needed_json("steps")?,
        })
    })
    .transpose()
}

/// Takes a member's last change back, where it is the one with this number; its number stays
/// used. Reminders that still wait are made anew.
pub(super) async fn undo(
    conn: &mut SqliteConnection,
    member: MemberId,
    number: i64,
    now: DateTime<Utc>,
) -> Result<()> {
    let last = last_change(conn, member).await?.filter(|last| last.number == number);
    let Some(last) = last else { return Ok(()) };
    let forward = put_all_back(conn, member, &last.put_back, now).await?;
    sqlx::query(
        "UPDATE journal SET put_back = NULL, put_forward = $1 WHERE member_id = $2 AND number = $3",
    )
    .bind(to_json(&forward)?)
    .bind(member)
    .bind(number)
    .execute(&mut *conn)
    .await?;
    Ok(())
}

/// Puts back the change that the member took back last, where it is the one with this number; it
/// is the last change again.
pub(super) async fn redo(
    conn: &mut SqliteConnection,
    member: MemberId,
    number: i64,
    now: DateTime<Utc>,
) -> Result<()> {
    let undone = last_undone(conn, member).await?.filter(|undone| undone.number == number);
    let Some(undone) = undone else { return Ok(()) };
    let put_back = put_all_back(conn, member, &undone.put_back, now).await?;
    sqlx::query(
        "UPDATE journal SET put_back = $1, put_forward = NULL WHERE member_id = $2 AND number = $3",
    )
    .bind(to_json(&put_back)?)
    .bind(member)
    .bind(number)
    .execute(&mut *conn)
    .await?;
    Ok(())
}

/// Puts everything back in its order, and gives what makes that undone, the last thing first.
async fn put_all_back(
    conn: &mut SqliteConnection,
    member: MemberId,
    steps: &[PutBack],
    now: DateTime<Utc>,
) -> Result<Vec<PutBack>> {
    // Reminders are cancelled first, so that they give back what they named.
    changed(conn, member, Touches::Contents, now).await?;
    let mut back = Vec::new();
    for step in steps {
        back.extend(put_one_back(conn, member, step, now).await?);
    }
    back.reverse();
    Ok(back)
}

/// Puts one thing back, and gives what it was until now; `None` where it was so already.
async fn put_one_back(
    conn: &mut SqliteConnection,
    member: MemberId,
    put_back: &PutBack,
    now: DateTime<Utc>,
) -> Result<Option<PutBack>> {
    Ok(match put_back {
        PutBack::CropOff(crop) => {
            let id: Option<i64> = sqlx::query_scalar(
                "DELETE FROM member_crops WHERE member_id = $1 AND crop = $2 RETURNING id",
            )
            .bind(member)
            .bind(crop.as_str())
            .fetch_optional(conn)
            .await?;
            id.map(|id| PutBack::CropOn { id, crop: crop.clone() })
        }
        PutBack::CropOn { id, crop } => {
            let there = sqlx::query(
                "INSERT INTO member_crops (id, member_id, crop) VALUES ($1, $2, $3) \
                 ON CONFLICT (member_id, crop) DO NOTHING",
            )
            .bind(id)
            .bind(member)
            .bind(crop.as_str())
            .execute(conn)
            .await?;
            (there.rows_affected() > 0).then(|| PutBack::CropOff(crop.clone()))
        }
        PutBack::Mark { job, was } => {
            let until_now = mark_of(conn, member, job).await?;
            let was = was.as_ref().map(|(mark, on)| (mark.as_str(), *on));
            set_mark(conn, member, job, was).await?;
            Some(PutBack::Mark { job: job.clone(), was: until_now })
        }
        PutBack::SowingOff(id) => {
            let until_now = sowings::of(conn, member, *id).await?;
            sowings::forget(conn, member, *id).await?;
            until_now.map(PutBack::SowingAs)
        }
        PutBack::SowingAs(sowing) => {
            let until_now = sowings::of(conn, member, sowing.id).await?;
            sowings::put(conn, member, sowing).await?;
            Some(until_now.map_or(PutBack::SowingOff(sowing.id), PutBack::SowingAs))
        }
        PutBack::VarietyOff(id) => {
            let until_now = varieties::of(conn, member, *id).await?;
            varieties::forget(conn, member, *id).await?;
            until_now.map(PutBack::VarietyAs)
        }
        PutBack::VarietyAs(variety) => {
            let until_now = varieties::of(conn, member, variety.id).await?;
            varieties::put(conn, member, variety).await?;
            Some(until_now.map_or(PutBack::VarietyOff(variety.id), PutBack::VarietyAs))
        }
        PutBack::Unsubscribe(list) => list_changes::end_subscription(conn, member, *list).await?,
        PutBack::Subscribe { list, since, told } => {
            list_changes::subscribe_again(conn, member, *list, *since, told.as_deref())
                .await?
                .then_some(PutBack::Unsubscribe(*list))
        }
        PutBack::SettingAs { setting, was } => {
            let until_now = setting_changes::one_kept(conn, member, *setting).await?;
            setting_changes::put(conn, member, *setting, was.as_deref(), now).await?;
            Some(PutBack::SettingAs { setting: *setting, was: until_now })
        }
        PutBack::SkipOff(crop) => list_changes::set_skipped(conn, member, crop, false)
            .await?
            .then(|| PutBack::SkipOn(crop.clone())),
        PutBack::SkipOn(crop) => list_changes::set_skipped(conn, member, crop, true)
            .await?
            .then(|| PutBack::SkipOff(crop.clone())),
    })
}

/// What was said of a job, in its kept form.
pub(super) async fn mark_of(
    conn: &mut SqliteConnection,
    member: MemberId,
    job: &JobKey,
) -> Result<Option<(String, NaiveDate)>> {
    let row = sqlx::query("SELECT mark, mark_on FROM job_marks WHERE member_id = $1 AND job = $2")
        .bind(member)
        .bind(job.to_string())
        .fetch_optional(conn)
        .await?;
    let Some(row) = row else { return Ok(None) };
    let (mark, on): (Option<String>, Option<NaiveDate>) =
        (row.try_get("mark")?, row.try_get("mark_on")?);
    Ok(mark.zip(on))
}

/// Sets what is said of a job; `None` takes it away, and the row with it where no reminder has
/// named the job.
pub(super) async fn set_mark(
    conn: &mut SqliteConnection,
    member: MemberId,
    job: &JobKey,
    mark: Option<(&str, NaiveDate)>,
) -> Result<()> {
    sqlx::query(
        "INSERT INTO job_marks (member_id, job, mark, mark_on) VALUES ($1, $2, $3, $4) \
         ON CONFLICT (member_id, job) DO UPDATE SET mark = excluded.mark, \
         mark_on = excluded.mark_on",
    )
    .bind(member)
    .bind(job.to_string())
    .bind(mark.map(|(mark, _)| mark))
    .bind(mark.map(|(_, on)| on))
    .execute(&mut *conn)
    .await?;
    forget_empty_marks(conn, member).await
}

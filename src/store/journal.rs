//! The journal: what takes a member's last changes back.

use chrono::{DateTime, NaiveDate, Utc};
use sqlx::{Row, SqliteConnection};

use super::rows::{Kept, to_json};
use super::schedule::{Touches, changed, forget_empty_marks};
use super::{Result, list_changes, sowings, varieties};
use crate::club::{LastChange, MemberId, PutBack};
use crate::planning::JobKey;

/// How many changes of one member are kept.
const KEPT: i64 = 20;

/// Keeps what takes one change back; nothing where it changed nothing.
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
        "SELECT number, put_back FROM journal WHERE member_id = $1 AND put_back IS NOT NULL \
         ORDER BY number DESC LIMIT 1",
    )
    .bind(member)
    .fetch_optional(conn)
    .await?;
    row.map(|row| {
        let kept = Kept::of_member("journal of member", &row, member);
        Ok(LastChange { number: kept.get("number")?, put_back: kept.needed_json("put_back")? })
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
    let Some(LastChange { put_back, .. }) = last else { return Ok(()) };
    // Reminders are cancelled first, so that they give back what they named.
    changed(conn, member, Touches::Contents, now).await?;
    for one in &put_back {
        put_one_back(conn, member, one).await?;
    }
    sqlx::query("UPDATE journal SET put_back = NULL WHERE member_id = $1 AND number = $2")
        .bind(member)
        .bind(number)
        .execute(conn)
        .await?;
    Ok(())
}

async fn put_one_back(
    conn: &mut SqliteConnection,
    member: MemberId,
    put_back: &PutBack,
) -> Result<()> {
    match put_back {
        PutBack::CropOff(crop) => {
            sqlx::query("DELETE FROM member_crops WHERE member_id = $1 AND crop = $2")
                .bind(member)
                .bind(crop.as_str())
                .execute(conn)
                .await?;
        }
        PutBack::CropOn { id, crop } => {
            sqlx::query(
                "INSERT INTO member_crops (id, member_id, crop) VALUES ($1, $2, $3) \
                 ON CONFLICT (member_id, crop) DO NOTHING",
            )
            .bind(id)
            .bind(member)
            .bind(crop.as_str())
            .execute(conn)
            .await?;
        }
        PutBack::Mark { job, was } => {
            let was = was.as_ref().map(|(mark, on)| (mark.as_str(), *on));
            set_mark(conn, member, job, was).await?;
        }
        PutBack::SowingOff(id) => sowings::forget(conn, member, *id).await?,
        PutBack::SowingAs(sowing) => sowings::put(conn, member, sowing).await?,
        PutBack::VarietyOff(id) => varieties::forget(conn, member, *id).await?,
        PutBack::VarietyAs(variety) => varieties::put(conn, member, variety).await?,
        PutBack::Unsubscribe(list) => list_changes::end_subscription(conn, member, *list).await?,
        PutBack::Subscribe { list, since, told } => {
            list_changes::subscribe_again(conn, member, *list, *since, told.as_deref()).await?;
        }
        PutBack::SkipOff(crop) => {
            list_changes::set_skipped(conn, member, crop, false).await?;
        }
        PutBack::SkipOn(crop) => {
            list_changes::set_skipped(conn, member, crop, true).await?;
        }
    }
    Ok(())
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

//! When a member's next reminder is due, and reminders that a change made untrue.

use chrono::{DateTime, NaiveDate, Utc};
use sqlx::SqliteConnection;
use sqlx::sqlite::SqliteRow;

use super::facts::{current_club, inheritors};
use super::rows::{self, Kept, Named};
use super::sending::made_untrue;
use super::{Result, list_news};
use crate::club::{ClubId, Member, MemberId, Settings};

/// What a change touches of a member's mornings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Touches {
    /// What a reminder says.
    Contents,
    /// When it comes as well.
    Clock,
}

/// Something changed for a member: a reminder that still waits is cancelled and the morning is due
/// again at once; otherwise a change of the clock sets when the next one comes.
pub(super) async fn changed(
    conn: &mut SqliteConnection,
    member: MemberId,
    touches: Touches,
    now: DateTime<Utc>,
) -> Result<()> {
    if cancel_reminders(conn, member, "cancelled", "a change made it untrue", now).await? {
        sqlx::query("UPDATE members SET next_reminder_at = $1 WHERE id = $2 AND reachable")
            .bind(now)
            .bind(member)
            .execute(conn)
            .await?;
        return Ok(());
    }
    if touches == Touches::Clock {
        set_next(conn, member, now).await?;
    }
    Ok(())
}

/// Something changed for all who inherit from a club, where `concerns` says who does in this.
pub(super) async fn club_changed(
    conn: &mut SqliteConnection,
    club: ClubId,
    concerns: fn(&Member) -> bool,
    touches: Touches,
    now: DateTime<Utc>,
) -> Result<()> {
    for member in inheritors(conn, club).await?.iter().filter(|member| concerns(member)) {
        changed(conn, member.id, touches, now).await?;
    }
    Ok(())
}

/// Sets when a reachable member's next reminder comes. One that is due already stays due: its
/// morning has not been looked at yet, and moving it to tomorrow would lose it.
pub(super) async fn set_next(
    conn: &mut SqliteConnection,
    member: MemberId,
    now: DateTime<Utc>,
) -> Result<()> {
    let row = sqlx::query(
        "SELECT * FROM members WHERE id = $1 AND reachable \
         AND (next_reminder_at IS NULL OR next_reminder_at > $2)",
    )
    .bind(member)
    .bind(now)
    .fetch_optional(&mut *conn)
    .await?;
    let Some(row) = row else { return Ok(()) };
    let kept = rows::member(&row)?;
    let club = current_club(conn, member).await?;
    let zone = Settings::of(Some(&kept), club.as_ref()).zone.is;
    sqlx::query("UPDATE members SET next_reminder_at = $1 WHERE id = $2")
        .bind(kept.reminder_time.next_after(now, zone))
        .bind(member)
        .execute(conn)
        .await?;
    Ok(())
}

/// Ends the reminders of a member that still wait; whether one of them was still worth sending.
///
/// They give up their place of the day, so that another can be made for it. One that is under way
/// may be read already, and stays.
pub(super) async fn cancel_reminders(
    conn: &mut SqliteConnection,
    member: MemberId,
    outcome: &'static str,
    why: &str,
    now: DateTime<Utc>,
) -> Result<bool> {
    made_untrue(conn, member).await?;
    let waiting = sqlx::query(
        "SELECT id, member_id, local_date, named, told, expires_at FROM outgoing \
         WHERE member_id = $1 AND kind IS NOT NULL AND outcome IS NULL \
         AND id NOT IN (SELECT id FROM under_way) ORDER BY id DESC",
    )
    .bind(member)
    .fetch_all(&mut *conn)
    .await?;
    let mut alive = false;
    // The latest first, so that each gives back the date that stood before it.
    for row in &waiting {
        let kept = Kept::of("outgoing", row)?;
        let expires: Option<DateTime<Utc>> = kept.get("expires_at")?;
        alive |= expires.is_none_or(|expires| expires > now);
        take_back_naming(conn, row).await?;
        sqlx::query(
            "UPDATE outgoing SET outcome = $1, error = $2, ended_at = $3, kind = NULL, \
             local_date = NULL WHERE id = $4",
        )
        .bind(outcome)
        .bind(why)
        .bind(now)
        .bind(kept.get::<i64>("id")?)
        .execute(&mut *conn)
        .await?;
    }
    Ok(alive)
}

/// The jobs that an unsent reminder named were not named after all: the dates that stood before
/// come back, and so does what it meant to tell of lists. A row of `outgoing` that is no reminder is left alone.
pub(super) async fn take_back_naming(conn: &mut SqliteConnection, row: &SqliteRow) -> Result<()> {
    list_news::give_back(conn, row).await?;
    let kept = Kept::of("outgoing", row)?;
    let member: Option<MemberId> = kept.get("member_id")?;
    let date: Option<NaiveDate> = kept.get("local_date")?;
    let named: Option<Vec<Named>> = kept.json("named")?;
    let (Some(member), Some(date), Some(named)) = (member, date, named) else { return Ok(()) };
    for Named { job, before } in named {
        sqlx::query(
            "UPDATE job_marks SET named_on = $1 \
             WHERE member_id = $2 AND job = $3 AND named_on = $4",
        )
        .bind(before)
        .bind(member)
        .bind(job)
        .bind(date)
        .execute(&mut *conn)
        .await?;
    }
    forget_empty_marks(conn, member).await
}

/// Forgets the jobs of a member of which nothing is kept any more.
pub(super) async fn forget_empty_marks(
    conn: &mut SqliteConnection,
    member: MemberId,
) -> Result<()> {
    sqlx::query("DELETE FROM job_marks WHERE member_id = $1 AND mark IS NULL AND named_on IS NULL")
        .bind(member)
        .execute(conn)
        .await?;
    Ok(())
}

//! The clubs whose digest is due, and what came of it.

use std::collections::BTreeMap;

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use sqlx::{Row, SqliteConnection};

use super::mornings::current_clubs;
use super::rows::{self, Kept, priority_number, to_json};
use super::{ClubDue, DigestMade, Result, StoreError, Work, lists};
use crate::club::{ClubId, MemberId, Settings};
use crate::messages::Priority;
use crate::planning::CropId;
use crate::reminders::Grown;

/// What a digest is called among the kinds of outgoing messages.
const KIND: &str = "digest";

impl Work {
    /// The clubs whose digest has come, the longest due first, `limit` at most, with what it
    /// needs. A club whose row cannot be read is logged and set aside for a day.
    ///
    /// # Errors
    /// [`StoreError::Database`].
    pub async fn clubs_due(&mut self, now: DateTime<Utc>, limit: usize) -> Result<Vec<ClubDue>> {
        due(&mut self.transaction, now, limit).await
    }

    /// Keeps what came of digests: the messages, and when the next ones are due.
    ///
    /// # Errors
    /// [`StoreError::Database`], and nothing is kept.
    pub async fn keep_digests(&mut self, made: &[DigestMade], now: DateTime<Utc>) -> Result<()> {
        for made in made {
            keep(&mut self.transaction, made, now).await?;
        }
        Ok(())
    }
}

async fn due(
    conn: &mut SqliteConnection,
    now: DateTime<Utc>,
    limit: usize,
) -> Result<Vec<ClubDue>> {
    let rows = sqlx::query(
        "SELECT * FROM clubs WHERE next_digest_at <= $1 AND closed_at IS NULL \
         ORDER BY next_digest_at, id LIMIT $2",
    )
    .bind(now)
    .bind(i64::try_from(limit).unwrap_or(i64::MAX))
    .fetch_all(&mut *conn)
    .await?;
    let mut due = Vec::new();
    for row in &rows {
        match rows::club(row) {
            Ok(club) => {
                let grown = grown(conn, club.id).await?;
                due.push(ClubDue { club, grown });
            }
            Err(StoreError::Corrupt(why)) => {
                let club: ClubId = row.try_get("id")?;
                tracing::error!(club, why, "a club cannot be read and gets no digest today");
                set_next(conn, club, Some(now + TimeDelta::days(1))).await?;
            }
            Err(error) => return Err(error),
        }
    }
    Ok(due)
}

/// How many of a club's members have each crop in their plan, by their own choice or by a list;
/// nothing tells who.
async fn grown(conn: &mut SqliteConnection, club: ClubId) -> Result<Vec<Grown>> {
    let members: Vec<MemberId> = sqlx::query_scalar(
        "SELECT member_id FROM memberships WHERE club_id = $1 AND left_at IS NULL \
         ORDER BY member_id",
    )
    .bind(club)
    .fetch_all(&mut *conn)
    .await?;
    let current = current_clubs(conn, &members).await?;
    let mut growers: BTreeMap<CropId, usize> = BTreeMap::new();
    for growing in lists::growing_of(conn, &members, &current).await?.values() {
        for crop in growing.crops() {
            *growers.entry(crop).or_default() += 1;
        }
    }
    Ok(growers.into_iter().map(|(crop, members)| Grown { crop, members }).collect())
}

async fn set_next(
    conn: &mut SqliteConnection,
    club: ClubId,
    next: Option<DateTime<Utc>>,
) -> Result<()> {
    sqlx::query("UPDATE clubs SET next_digest_at = $1 WHERE id = $2")
        .bind(next)
        .bind(club)
        .execute(conn)
        .await?;
    Ok(())
}

async fn keep(conn: &mut SqliteConnection, made: &DigestMade, now: DateTime<Utc>) -> Result<()> {
    set_next(conn, made.club, made.next).await?;
    let Some(made_for) = made.made_for else { return Ok(()) };
    sqlx::query("UPDATE clubs SET digest_made_for = $1 WHERE id = $2")
        .bind(made_for)
        .bind(made.club)
        .execute(&mut *conn)
        .await?;
    let Some(outgoing) = &made.outgoing else { return Ok(()) };
    sqlx::query(
        "INSERT INTO outgoing (chat, priority, payload, kind, local_date, created_at, \
         not_before, expires_at, attempts) VALUES ($1, $2, $3, $4, $5, $6, $6, $7, 0)",
    )
    .bind(outgoing.chat())
    .bind(priority_number(Priority::Reminder))
    .bind(to_json(outgoing)?)
    .bind(KIND)
    .bind(made_for)
    .bind(now)
    .bind(made.expires)
    .execute(conn)
    .await?;
    Ok(())
}

/// A digest that was made untrue while it was under way was not sent: it is taken back now. A row
/// that is no waiting digest is left alone.
pub(super) async fn digest_untrue(
    conn: &mut SqliteConnection,
    id: i64,
    now: DateTime<Utc>,
) -> Result<()> {
    let club: Option<ClubId> = sqlx::query_scalar(
        "SELECT c.id FROM outgoing o JOIN clubs c ON c.chat = o.chat \
         WHERE o.id = $1 AND o.kind = $2 AND o.outcome IS NULL",
    )
    .bind(id)
    .bind(KIND)
    .fetch_optional(&mut *conn)
    .await?;
    match club {
        Some(club) => digest_changed(conn, club, false, now).await,
        None => Ok(()),
    }
}

/// A digest was not sent on the day it was made for, so that its club has none of this week yet:
/// it is made up for. A row that is no digest is left alone.
pub(super) async fn digest_missed(
    conn: &mut SqliteConnection,
    id: i64,
    now: DateTime<Utc>,
) -> Result<()> {
    let row = sqlx::query(
        "SELECT c.* FROM clubs c JOIN outgoing o ON o.chat = c.chat \
         WHERE o.id = $1 AND o.kind = $2 AND o.local_date = c.digest_made_for \
         AND c.closed_at IS NULL",
    )
    .bind(id)
    .bind(KIND)
    .fetch_optional(&mut *conn)
    .await?;
    let Some(row) = row else { return Ok(()) };
    let club = rows::club(&row)?;
    let Some(plan) = club.digest else { return Ok(()) };
    sqlx::query("UPDATE clubs SET digest_made_for = NULL WHERE id = $1")
        .bind(club.id)
        .execute(&mut *conn)
        .await?;
    let zone = Settings::of(None, Some(&club)).zone.is;
    set_next(conn, club.id, Some(plan.made_up_for(now, zone))).await
}

/// Something changed that a club's digest depends on: one that still waits is taken back and made
/// anew, and the time of the next one is reckoned again. `anew` says that its own day or hour was
/// set.
pub(super) async fn digest_changed(
    conn: &mut SqliteConnection,
    club: ClubId,
    anew: bool,
    now: DateTime<Utc>,
) -> Result<()> {
    let row = sqlx::query("SELECT * FROM clubs WHERE id = $1 AND closed_at IS NULL")
        .bind(club)
        .fetch_optional(&mut *conn)
        .await?;
    let Some(row) = row else { return set_next(conn, club, None).await };
    let kept = rows::club(&row)?;
    let of_row = Kept::of("clubs", &row)?;
    let mut made_for: Option<NaiveDate> = of_row.get("digest_made_for")?;
    let due: Option<DateTime<Utc>> = of_row.get("next_digest_at")?;
    sqlx::query(
        "UPDATE outgoing SET untrue = 1 WHERE chat = $1 AND kind = $2 AND outcome IS NULL \
         AND id IN (SELECT id FROM under_way)",
    )
    .bind(kept.chat)
    .bind(KIND)
    .execute(&mut *conn)
    .await?;
    let taken_back = sqlx::query(
        "UPDATE outgoing SET outcome = 'cancelled', error = 'a change made it untrue', \
         ended_at = $1 WHERE chat = $2 AND kind = $3 AND outcome IS NULL \
         AND id NOT IN (SELECT id FROM under_way)",
    )
    .bind(now)
    .bind(kept.chat)
    .bind(KIND)
    .execute(&mut *conn)
    .await?
    .rows_affected()
        > 0;
    if taken_back {
        made_for = None;
        sqlx::query("UPDATE clubs SET digest_made_for = NULL WHERE id = $1")
            .bind(club)
            .execute(&mut *conn)
            .await?;
    }
    let Some(plan) = kept.digest else { return set_next(conn, club, None).await };
    let zone = Settings::of(None, Some(&kept)).zone.is;
    // One that is due already, or was taken back, is made up for; a new day or hour begins anew.
    let overdue = taken_back || due.is_some_and(|due| due <= now);
    let next = if overdue && !anew {
        plan.made_up_for(now, zone)
    } else {
        plan.next_after(now, zone, made_for)
    };
    set_next(conn, club, Some(next)).await
}

//! Keeping recorded sowings.

use chrono::{DateTime, Utc};
use sqlx::SqliteConnection;

use super::Result;
use super::rows::{self, label_text, way_text};
use super::schedule::{Touches, changed};
use crate::club::{MemberId, PutBack, Sowing};

/// Keeps a new sowing, and gives what takes it back.
pub(super) async fn record(
    conn: &mut SqliteConnection,
    member: MemberId,
    sowing: &Sowing,
    now: DateTime<Utc>,
) -> Result<PutBack> {
    let id = insert(conn, member, None, sowing).await?;
    changed(conn, member, Touches::Contents, now).await?;
    Ok(PutBack::SowingOff(id))
}

/// Keeps a recorded sowing as it is now; `None` where the member has no such sowing, or where it
/// was so already.
pub(super) async fn keep(
    conn: &mut SqliteConnection,
    member: MemberId,
    sowing: &Sowing,
    now: DateTime<Utc>,
) -> Result<Option<PutBack>> {
    let Some(was) = of(conn, member, sowing.id).await?.filter(|was| was != sowing) else {
        return Ok(None);
    };
    put(conn, member, sowing).await?;
    changed(conn, member, Touches::Contents, now).await?;
    Ok(Some(PutBack::SowingAs(was)))
}

/// Forgets a sowing; `None` where the member has no such sowing.
pub(super) async fn remove(
    conn: &mut SqliteConnection,
    member: MemberId,
    id: i64,
    now: DateTime<Utc>,
) -> Result<Option<PutBack>> {
    let Some(was) = of(conn, member, id).await? else { return Ok(None) };
    forget(conn, member, id).await?;
    changed(conn, member, Touches::Contents, now).await?;
    Ok(Some(PutBack::SowingAs(was)))
}

/// Puts a sowing into its row, a new one under its old number where there is none.
pub(super) async fn put(
    conn: &mut SqliteConnection,
    member: MemberId,
    sowing: &Sowing,
) -> Result<()> {
    forget(conn, member, sowing.id).await?;
    insert(conn, member, Some(sowing.id), sowing).await?;
    Ok(())
}

/// Deletes the row of a sowing.
pub(super) async fn forget(conn: &mut SqliteConnection, member: MemberId, id: i64) -> Result<()> {
    sqlx::query("DELETE FROM sowings WHERE id = $1 AND member_id = $2")
        .bind(id)
        .bind(member)
        .execute(conn)
        .await?;
    Ok(())
}

async fn of(conn: &mut SqliteConnection, member: MemberId, id: i64) -> Result<Option<Sowing>> {
    let row = sqlx::query("SELECT * FROM sowings WHERE id = $1 AND member_id = $2")
        .bind(id)
        .bind(member)
        .fetch_optional(conn)
        .await?;
    row.as_ref().map(rows::sowing).transpose()
}

/// Inserts a row; its number is `id`, or a new one.
async fn insert(
    conn: &mut SqliteConnection,
    member: MemberId,
    id: Option<i64>,
    sowing: &Sowing,
) -> Result<i64> {
    let statement = match id {
        None => {
            "INSERT INTO sowings (member_id, crop, way, plants, sown_on, room_c, label, season, \
             came_up_on, failed_on, ended_on, job, variety) \
             VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13) RETURNING id"
        }
        Some(_) => {
            "INSERT INTO sowings (member_id, crop, way, plants, sown_on, room_c, label, season, \
             came_up_on, failed_on, ended_on, job, variety, id) \
             VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14) RETURNING id"
        }
    };
    let query = sqlx::query_scalar(statement)
        .bind(member)
        .bind(sowing.crop.as_str())
        .bind(way_text(sowing.way))
        .bind(sowing.count)
        .bind(sowing.sown_on)
        .bind(sowing.room_c)
        .bind(label_text(sowing.label))
        .bind(sowing.season)
        .bind(sowing.came_up_on)
        .bind(sowing.failed_on)
        .bind(sowing.ended_on)
        .bind(sowing.job.as_ref().map(ToString::to_string))
        .bind(sowing.variety.as_deref());
    let query = match id {
        None => query,
        Some(id) => query.bind(id),
    };
    Ok(query.fetch_one(conn).await?)
}

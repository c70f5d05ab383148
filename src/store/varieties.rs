//! Keeping the varieties that members grow.

use chrono::{DateTime, Utc};
use sqlx::SqliteConnection;

use super::Result;
use super::rows::{self, to_json};
use super::schedule::{Touches, changed};
use crate::club::{MemberId, PutBack, Variety, followed};

/// A member's varieties, the one told first at the front.
pub(super) async fn all(conn: &mut SqliteConnection, member: MemberId) -> Result<Vec<Variety>> {
    let rows = sqlx::query("SELECT * FROM varieties WHERE member_id = $1 ORDER BY id")
        .bind(member)
        .fetch_all(conn)
        .await?;
    rows.iter().map(rows::variety).collect()
}

/// Keeps a variety in the place of the one with the same crop and name, and gives what takes it
/// back; nothing where it was so already and is followed already.
pub(super) async fn keep(
    conn: &mut SqliteConnection,
    member: MemberId,
    variety: &Variety,
    now: DateTime<Utc>,
) -> Result<Vec<PutBack>> {
    let kept = all(conn, member).await?;
    let same = kept.iter().find(|known| known.is(&variety.crop, variety.name.as_deref()));
    let mut put_back = Vec::new();
    if let Some(same) = same {
        let as_it_is = same.packet == variety.packet && same.name == variety.name;
        if as_it_is && followed(&kept, &variety.crop) == Some(same) {
            return Ok(Vec::new());
        }
        forget(conn, member, same.id).await?;
        put_back.push(PutBack::VarietyAs(same.clone()));
    }
    put_back.push(PutBack::VarietyOff(insert(conn, member, None, variety).await?));
    changed(conn, member, Touches::Contents, now).await?;
    Ok(put_back)
}

/// Forgets a variety; `None` where the member has no such variety.
pub(super) async fn remove(
    conn: &mut SqliteConnection,
    member: MemberId,
    id: i64,
    now: DateTime<Utc>,
) -> Result<Option<PutBack>> {
    let Some(was) = of(conn, member, id).await? else { return Ok(None) };
    forget(conn, member, id).await?;
    changed(conn, member, Touches::Contents, now).await?;
    Ok(Some(PutBack::VarietyAs(was)))
}

/// The member's variety of this number.
pub(super) async fn of(
    conn: &mut SqliteConnection,
    member: MemberId,
    id: i64,
) -> Result<Option<Variety>> {
    Ok(all(conn, member).await?.into_iter().find(|variety| variety.id == id))
}

/// Puts a variety back into its row.
pub(super) async fn put(
    conn: &mut SqliteConnection,
    member: MemberId,
    variety: &Variety,
) -> Result<()> {
    forget(conn, member, variety.id).await?;
    insert(conn, member, Some(variety.id), variety).await?;
    Ok(())
}

/// Deletes the row of a variety.
pub(super) async fn forget(conn: &mut SqliteConnection, member: MemberId, id: i64) -> Result<()> {
    sqlx::query("DELETE FROM varieties WHERE id = $1 AND member_id = $2")
        .bind(id)
        .bind(member)
        .execute(conn)
        .await?;
    Ok(())
}

/// Inserts a row; its number is `id`, or a new one.
async fn insert(
    conn: &mut SqliteConnection,
    member: MemberId,
    id: Option<i64>,
    variety: &Variety,
) -> Result<i64> {
    let statement = match id {
        None => {
            "INSERT INTO varieties (member_id, crop, name, packet) \
             VALUES ($1, $2, $3, $4) RETURNING id"
        }
        Some(_) => {
            "INSERT INTO varieties (member_id, crop, name, packet, id) \
             VALUES ($1, $2, $3, $4, $5) RETURNING id"
        }
    };
    let query = sqlx::query_scalar(statement)
        .bind(member)
        .bind(variety.crop.as_str())
        .bind(variety.name.as_deref())
        .bind(to_json(&variety.packet)?);
    let query = match id {
        None => query,
        Some(id) => query.bind(id),
    };
    Ok(query.fetch_one(conn).await?)
}

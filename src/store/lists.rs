//! Reading clubs' lists, and what members grow by them.

use std::collections::HashMap;

use sqlx::sqlite::SqliteRow;
use sqlx::{QueryBuilder, Row, Sqlite, SqliteConnection};

use super::mornings::{LIST, push_list};
use super::rows::Kept;
use super::{Result, Work};
use crate::chat::Reach;
use crate::club::{ClubId, ClubList, Growing, ListId, MemberId, Subscribed};
use crate::planning::CropId;

impl Work {
    /// How many belong to a club, and how many of them the bot may write to.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn reach(&mut self, club: ClubId) -> Result<Reach> {
        let (members, reached) = sqlx::query_as(
            "SELECT COUNT(*), COALESCE(SUM(CASE WHEN m.reachable THEN 1 ELSE 0 END), 0) \
             FROM memberships ms JOIN members m ON m.id = ms.member_id \
             WHERE ms.club_id = $1 AND ms.left_at IS NULL",
        )
        .bind(club)
        .fetch_one(&mut *self.transaction)
        .await?;
        Ok(Reach { members, reached })
    }

    /// All lists of a club, the oldest first, those that are archived included.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn lists(&mut self, club: ClubId) -> Result<Vec<ClubList>> {
        let rows = sqlx::query(
            "SELECT l.*, (SELECT COUNT(*) FROM subscriptions s JOIN memberships ms \
               ON ms.member_id = s.member_id AND ms.club_id = l.club_id AND ms.left_at IS NULL \
               WHERE s.list_id = l.id) AS subscribers \
             FROM lists l WHERE l.club_id = $1 ORDER BY l.id",
        )
        .bind(club)
        .fetch_all(&mut *self.transaction)
        .await?;
        let mut crops: HashMap<ListId, Vec<CropId>> = HashMap::new();
        let named = sqlx::query(
            "SELECT lc.list_id, lc.crop FROM list_crops lc JOIN lists l ON l.id = lc.list_id \
             WHERE l.club_id = $1 ORDER BY lc.id",
        )
        .bind(club)
        .fetch_all(&mut *self.transaction)
        .await?;
        for row in named {
            let crop = CropId::new(row.try_get::<String, _>("crop")?);
            crops.entry(row.try_get("list_id")?).or_default().push(crop);
        }
        let mut lists = Vec::with_capacity(rows.len());
        for row in &rows {
            let mut list = club_list(row)?;
            list.crops = crops.remove(&list.id).unwrap_or_default();
            lists.push(list);
        }
        Ok(lists)
    }

    /// The list that this code shares; `None` where none does, or does no longer. How many
    /// subscribe to it is its own club's business, and stays 0.
    ///
    /// # Errors
    /// [`super::StoreError::Database`] and [`super::StoreError::Corrupt`].
    pub async fn list_of_code(&mut self, code: &str) -> Result<Option<ClubList>> {
        let row = sqlx::query(
            "SELECT l.*, 0 AS subscribers FROM lists l \
             WHERE code = $1 AND shared = $2 AND archived_at IS NULL",
        )
        .bind(code)
        .bind(true)
        .fetch_optional(&mut *self.transaction)
        .await?;
        let Some(row) = row else { return Ok(None) };
        let mut list = club_list(&row)?;
        list.crops = crops_on(&mut self.transaction, list.id).await?;
        Ok(Some(list))
    }
}

/// A list from its row, with how many subscribe, and still without its crops.
fn club_list(row: &SqliteRow) -> Result<ClubList> {
    let kept = Kept::of("lists", row)?;
    let archived_at: Option<String> = kept.get("archived_at")?;
    let subscribers: i64 = kept.get("subscribers")?;
    Ok(ClubList {
        id: kept.get("id")?,
        name: kept.get("name")?,
        note: kept.get("note")?,
        crops: Vec::new(),
        subscribers: usize::try_from(subscribers).unwrap_or_default(),
        code: kept.get("code")?,
        shared: kept.get("shared")?,
        archived: archived_at.is_some(),
    })
}

/// The crops on a list, in the order they were added.
pub(super) async fn crops_on(conn: &mut SqliteConnection, list: ListId) -> Result<Vec<CropId>> {
    let crops: Vec<String> =
        sqlx::query_scalar("SELECT crop FROM list_crops WHERE list_id = $1 ORDER BY id")
            .bind(list)
            .fetch_all(conn)
            .await?;
    Ok(crops.into_iter().map(CropId::new).collect())
}

/// What members grow, each by their own choice and by the lists of the club that `clubs` gives.
pub(super) async fn growing_of(
    conn: &mut SqliteConnection,
    members: &[MemberId],
    clubs: &HashMap<MemberId, ClubId>,
) -> Result<HashMap<MemberId, Growing>> {
    let mut growing: HashMap<MemberId, Growing> = HashMap::new();
    let own = crops_in(conn, "SELECT member_id, crop FROM member_crops", "id", members).await?;
    for (member, crop) in own {
        growing.entry(member).or_default().own.push(crop);
    }
    let skipped =
        crops_in(conn, "SELECT member_id, crop FROM skipped_crops", "crop", members).await?;
    for (member, crop) in skipped {
        growing.entry(member).or_default().skipped.push(crop);
    }
    let subscriptions = subscriptions_of(conn, members).await?;
    let mut wanted: Vec<ListId> = subscriptions.iter().map(|(_, list)| *list).collect();
    wanted.sort_unstable();
    wanted.dedup();
    let lists = lists_by_id(conn, &wanted).await?;
    for (member, list) in subscriptions {
        let Some((club, list)) = lists.get(&list) else { continue };
        if clubs.get(&member) == Some(club) {
            growing.entry(member).or_default().lists.push(list.clone());
        }
    }
    Ok(growing)
}

async fn crops_in(
    conn: &mut SqliteConnection,
    select: &'static str,
    order: &'static str,
    members: &[MemberId],
) -> Result<Vec<(MemberId, CropId)>> {
    let mut crops = Vec::new();
    for some in members.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new(select);
        query.push(" WHERE member_id IN ");
        push_list(&mut query, some);
        query.push(" ORDER BY ");
        query.push(order);
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            let crop = CropId::new(row.try_get::<String, _>("crop")?);
            crops.push((row.try_get("member_id")?, crop));
        }
    }
    Ok(crops)
}

/// Who subscribes to what, the earliest subscription first.
async fn subscriptions_of(
    conn: &mut SqliteConnection,
    members: &[MemberId],
) -> Result<Vec<(MemberId, ListId)>> {
    let mut subscriptions = Vec::new();
    for some in members.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new(
            "SELECT member_id, list_id FROM subscriptions WHERE member_id IN ",
        );
        push_list(&mut query, some);
        query.push(" ORDER BY subscribed_at, list_id");
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            subscriptions.push((row.try_get("member_id")?, row.try_get("list_id")?));
        }
    }
    Ok(subscriptions)
}

/// The lists of these numbers that are not archived, each with its club.
async fn lists_by_id(
    conn: &mut SqliteConnection,
    ids: &[ListId],
) -> Result<HashMap<ListId, (ClubId, Subscribed)>> {
    let mut lists = HashMap::new();
    for some in ids.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new(
            "SELECT id, club_id, name FROM lists WHERE archived_at IS NULL AND id IN ",
        );
        push_list(&mut query, some);
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            let id: ListId = row.try_get("id")?;
            let list = Subscribed { id, name: row.try_get("name")?, crops: Vec::new() };
            lists.insert(id, (row.try_get::<ClubId, _>("club_id")?, list));
        }
        let mut query =
            QueryBuilder::<Sqlite>::new("SELECT list_id, crop FROM list_crops WHERE list_id IN ");
        push_list(&mut query, some);
        query.push(" ORDER BY id");
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            if let Some((_, list)) = lists.get_mut(&row.try_get::<ListId, _>("list_id")?) {
                list.crops.push(CropId::new(row.try_get::<String, _>("crop")?));
            }
        }
    }
    Ok(lists)
}

//! What changed in members' lists and was not told yet.
//!
//! A subscription keeps the crops as they were told last from the first change on, so that a
//! morning tells what is different in the end. A morning's message that takes this up keeps it in
//! its own row, and gives it back where it is not sent.

use std::collections::HashMap;

use serde::{Deserialize, Serialize};
use sqlx::sqlite::SqliteRow;
use sqlx::{QueryBuilder, Row, Sqlite, SqliteConnection};

use super::mornings::{LIST, push_list};
use super::rows::{Kept, to_json};
use super::{Result, lists};
use crate::club::{ClubId, ListId, ListNews, MemberId};
use crate::planning::CropId;

/// A list whose change a reminder tells, and what had been told before it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct Told {
    list: ListId,
    before: Vec<CropId>,
}

/// What there is to tell each member of the lists of the club that `clubs` gives.
pub(super) async fn news_of(
    conn: &mut SqliteConnection,
    members: &[MemberId],
    clubs: &HashMap<MemberId, ClubId>,
) -> Result<HashMap<MemberId, Result<Vec<ListNews>>>> {
    let mut news: HashMap<MemberId, Result<Vec<ListNews>>> = HashMap::new();
    let mut crops: HashMap<ListId, Vec<CropId>> = HashMap::new();
    for some in members.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new(
            "SELECT s.member_id, s.list_id, s.told, l.club_id, l.name, l.archived_at \
             FROM subscriptions s JOIN lists l ON l.id = s.list_id \
             WHERE s.told IS NOT NULL AND s.member_id IN ",
        );
        push_list(&mut query, some);
        query.push(" ORDER BY s.subscribed_at, s.list_id");
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            let member: MemberId = row.try_get("member_id")?;
            let club: ClubId = row.try_get("club_id")?;
            if clubs.get(&member) != Some(&club) {
                continue;
            }
            let list: ListId = row.try_get("list_id")?;
            if let std::collections::hash_map::Entry::Vacant(unknown) = crops.entry(list) {
                unknown.insert(lists::crops_on(conn, list).await?);
            }
            let now = crops.get(&list).cloned().unwrap_or_default();
            let of_member = news.entry(member).or_insert_with(|| Ok(Vec::new()));
            match (one(&row, member, list, now), of_member.as_mut()) {
                (Ok(one), Ok(all)) if one.worth_telling() => all.push(one),
                (Err(error), Ok(_)) => *of_member = Err(error),
                _ => {}
            }
        }
    }
    Ok(news)
}

fn one(row: &SqliteRow, member: MemberId, list: ListId, now: Vec<CropId>) -> Result<ListNews> {
    let kept = Kept::of_member("subscriptions of member", row, member);
    let archived: Option<String> = kept.get("archived_at")?;
    let archived = archived.is_some();
    let now = if archived { Vec::new() } else { now };
    Ok(ListNews { list, name: kept.get("name")?, archived, before: kept.needed_json("told")?, now })
}

/// Takes up the news of these lists for a reminder, and gives the kept form of what had been told
/// before; `None` where there is none.
pub(super) async fn take_up(
    conn: &mut SqliteConnection,
    member: MemberId,
    told: &[ListId],
) -> Result<Option<String>> {
    let mut all = Vec::new();
    for list in told {
        let row =
            sqlx::query("SELECT told FROM subscriptions WHERE member_id = $1 AND list_id = $2")
                .bind(member)
                .bind(list)
                .fetch_optional(&mut *conn)
                .await?;
        let Some(row) = row else { continue };
        let before = Kept::of_member("subscriptions of member", &row, member).json("told")?;
        let Some(before) = before else { continue };
        all.push(Told { list: *list, before });
        sqlx::query("UPDATE subscriptions SET told = NULL WHERE member_id = $1 AND list_id = $2")
            .bind(member)
            .bind(list)
            .execute(&mut *conn)
            .await?;
    }
    if all.is_empty() { Ok(None) } else { Ok(Some(to_json(&all)?)) }
}

/// What an unsent reminder meant to tell was not told: another will. What was told before it
/// counts, also where the list changed once more since.
pub(super) async fn give_back(conn: &mut SqliteConnection, row: &SqliteRow) -> Result<()> {
    let kept = Kept::of("outgoing", row)?;
    let member: Option<MemberId> = kept.get("member_id")?;
    let told: Option<Vec<Told>> = kept.json("told")?;
    let (Some(member), Some(told)) = (member, told) else { return Ok(()) };
    for Told { list, before } in told {
        sqlx::query("UPDATE subscriptions SET told = $1 WHERE member_id = $2 AND list_id = $3")
            .bind(to_json(&before)?)
            .bind(member)
            .bind(list)
            .execute(&mut *conn)
            .await?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_kept_form_is_pinned() {
        let told = vec![Told { list: 3, before: vec![CropId::new("pea")] }];
        let json = r#"[{"list":3,"before":["pea"]}]"#;
        assert_eq!(to_json(&told).expect("JSON"), json);
        assert_eq!(serde_json::from_str::<Vec<Told>>(json).expect("read"), told);
    }
}

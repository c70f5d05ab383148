//! Changing clubs' lists, and members' subscriptions to them.

use chrono::{DateTime, Utc};
use rand::Rng;
use sqlx::SqliteConnection;

use super::Result;
use super::lists::crops_on;
use super::rows::{Kept, to_json};
use super::schedule::{Touches, changed};
use crate::chat::ListChange;
use crate::club::{CODE_ALPHABET, CODE_LENGTH, ClubId, ListId, MemberId, PutBack};
use crate::planning::CropId;

/// How many archived lists of a club are kept at most; older ones are forgotten.
const MOST_ARCHIVED: i64 = 20;

/// Keeps a change of the lists of `club`. A list of another club is left alone.
pub(super) async fn change(
    conn: &mut SqliteConnection,
    club: ClubId,
    change: &ListChange,
    now: DateTime<Utc>,
) -> Result<()> {
    let list = match change {
        ListChange::Make { name, note, crops } => {
            return make(conn, club, name, note.as_deref(), crops).await;
        }
        ListChange::Add(list, _)
        | ListChange::TakeOff(list, _)
        | ListChange::Rename(list, _)
        | ListChange::Note(list, _)
        | ListChange::Archive(list)
        | ListChange::Reopen(list)
        | ListChange::Share(list) => *list,
    };
    if !is_of_club(conn, club, list).await? {
        return Ok(());
    }
    let before = in_plans(conn, list).await?;
    match change {
        ListChange::Make { .. } => return Ok(()),
        ListChange::Add(_, crops) => add(conn, list, crops).await?,
        ListChange::TakeOff(_, crops) => {
            for crop in crops {
                sqlx::query("DELETE FROM list_crops WHERE list_id = $1 AND crop = $2")
                    .bind(list)
                    .bind(crop.as_str())
                    .execute(&mut *conn)
                    .await?;
            }
        }
        ListChange::Rename(_, name) => {
            sqlx::query("UPDATE lists SET name = $1 WHERE id = $2")
                .bind(name)
                .bind(list)
                .execute(&mut *conn)
                .await?;
        }
        ListChange::Note(_, note) => {
            sqlx::query("UPDATE lists SET note = $1 WHERE id = $2")
                .bind(note.as_deref())
                .bind(list)
                .execute(&mut *conn)
                .await?;
        }
        ListChange::Archive(_) => archive(conn, list, now).await?,
        ListChange::Reopen(_) => {
            sqlx::query("UPDATE lists SET archived_at = NULL WHERE id = $1")
                .bind(list)
                .execute(&mut *conn)
                .await?;
        }
        ListChange::Share(_) => {
            sqlx::query("UPDATE lists SET shared = $1 WHERE id = $2")
                .bind(true)
                .bind(list)
                .execute(&mut *conn)
                .await?;
        }
    }
    let after = in_plans(conn, list).await?;
    if before != after {
        return plans_changed(conn, list, &before, now).await;
    }
    // A reminder that waits may call it by its old name.
    match change {
        ListChange::Rename(..) => make_reminders_anew(conn, list, now).await,
        _ => Ok(()),
    }
}

/// Whether the club has this list, archived or not.
async fn is_of_club(conn: &mut SqliteConnection, club: ClubId, list: ListId) -> Result<bool> {
    let found: Option<ListId> =
        sqlx::query_scalar("SELECT id FROM lists WHERE id = $1 AND club_id = $2")
            .bind(list)
            .bind(club)
            .fetch_optional(conn)
            .await?;
    Ok(found.is_some())
}

/// The crops that a list brings into the plans of those who subscribe: none where it is archived
/// or gone.
async fn in_plans(conn: &mut SqliteConnection, list: ListId) -> Result<Vec<CropId>> {
    let open: Option<ListId> =
        sqlx::query_scalar("SELECT id FROM lists WHERE id = $1 AND archived_at IS NULL")
            .bind(list)
            .fetch_optional(&mut *conn)
            .await?;
    if open.is_some() { crops_on(conn, list).await } else { Ok(Vec::new()) }
}

async fn make(
    conn: &mut SqliteConnection,
    club: ClubId,
    name: &str,
    note: Option<&str>,
    crops: &[CropId],
) -> Result<()> {
    let list: ListId = sqlx::query_scalar(
        "INSERT INTO lists (club_id, name, note, code, shared) VALUES ($1, $2, $3, $4, $5) \
         RETURNING id",
    )
    .bind(club)
    .bind(name)
    .bind(note)
    .bind(new_code())
    .bind(false)
    .fetch_one(&mut *conn)
    .await?;
    add(conn, list, crops).await
}

/// A code that nobody guesses; a shared one is drawn anew when its list is archived.
fn new_code() -> String {
    let mut random = rand::rng();
    let letter = |_| CODE_ALPHABET.get(random.random_range(0..CODE_ALPHABET.len()));
    (0..CODE_LENGTH).filter_map(letter).map(|letter| char::from(*letter)).collect()
}

async fn add(conn: &mut SqliteConnection, list: ListId, crops: &[CropId]) -> Result<()> {
    for crop in crops {
        sqlx::query(
            "INSERT INTO list_crops (list_id, crop) VALUES ($1, $2) \
             ON CONFLICT (list_id, crop) DO NOTHING",
        )
        .bind(list)
        .bind(crop.as_str())
        .execute(&mut *conn)
        .await?;
    }
    Ok(())
}

/// Puts a list away with a code that nobody has, and forgets the oldest of those put away.
async fn archive(conn: &mut SqliteConnection, list: ListId, now: DateTime<Utc>) -> Result<()> {
    sqlx::query(
        "UPDATE lists SET archived_at = $1, shared = $2, code = $3 \
         WHERE id = $4 AND archived_at IS NULL",
    )
    .bind(now)
    .bind(false)
    .bind(new_code())
    .bind(list)
    .execute(&mut *conn)
    .await?;
    let old: Vec<ListId> = sqlx::query_scalar(
        "SELECT id FROM lists WHERE archived_at IS NOT NULL \
         AND club_id = (SELECT club_id FROM lists WHERE id = $1) \
         ORDER BY archived_at DESC, id DESC LIMIT 1000 OFFSET $2",
    )
    .bind(list)
    .bind(MOST_ARCHIVED)
    .fetch_all(&mut *conn)
    .await?;
    for old in old {
        for statement in [
            "DELETE FROM subscriptions WHERE list_id = $1",
            "DELETE FROM list_crops WHERE list_id = $1",
            "DELETE FROM lists WHERE id = $1",
        ] {
            sqlx::query(statement).bind(old).execute(&mut *conn).await?;
        }
    }
    Ok(())
}

/// The plans of a list's subscribers changed. What they had been told is noted in one statement;
/// only those with a reminder that waits or is under way are gone through one by one, since the
/// next morning of all others is looked at anyway.
async fn plans_changed(
    conn: &mut SqliteConnection,
    list: ListId,
    before: &[CropId],
    now: DateTime<Utc>,
) -> Result<()> {
    sqlx::query("UPDATE subscriptions SET told = $1 WHERE list_id = $2 AND told IS NULL")
        .bind(to_json(&before)?)
        .bind(list)
        .execute(&mut *conn)
        .await?;
    make_reminders_anew(conn, list, now).await
}

/// What waits for a list's subscribers does not say any more what is so.
async fn make_reminders_anew(
    conn: &mut SqliteConnection,
    list: ListId,
    now: DateTime<Utc>,
) -> Result<()> {
    let waiting: Vec<MemberId> = sqlx::query_scalar(
        "SELECT DISTINCT o.member_id FROM outgoing o \
         JOIN subscriptions s ON s.member_id = o.member_id AND s.list_id = $1 \
         WHERE o.outcome IS NULL AND o.kind IS NOT NULL",
    )
    .bind(list)
    .fetch_all(&mut *conn)
    .await?;
    for member in waiting {
        changed(conn, member, Touches::Contents, now).await?;
    }
    Ok(())
}

/// The member subscribes to a list; a list that is archived or gone is left alone.
pub(super) async fn subscribe(
    conn: &mut SqliteConnection,
    member: MemberId,
    list: ListId,
    now: DateTime<Utc>,
    put_back: &mut Vec<PutBack>,
) -> Result<()> {
    let began = sqlx::query(
        "INSERT INTO subscriptions (member_id, list_id, subscribed_at) \
         SELECT CAST($1 AS BIGINT), id, $2 FROM lists WHERE id = $3 AND archived_at IS NULL \
         ON CONFLICT (member_id, list_id) DO NOTHING",
    )
    .bind(member)
    .bind(now)
    .bind(list)
    .execute(&mut *conn)
    .await?;
    if began.rows_affected() == 0 {
        return Ok(());
    }
    put_back.push(PutBack::Unsubscribe(list));
    changed(conn, member, Touches::Contents, now).await
}

/// The member does not subscribe to a list any more.
pub(super) async fn unsubscribe(
    conn: &mut SqliteConnection,
    member: MemberId,
    list: ListId,
    now: DateTime<Utc>,
    put_back: &mut Vec<PutBack>,
) -> Result<()> {
    // A reminder that waits gives back first what it meant to tell of the list.
    changed(conn, member, Touches::Contents, now).await?;
    put_back.extend(end_subscription(conn, member, list).await?);
    Ok(())
}

/// A subscription is there again as it was, and what the list changed meanwhile is still to be
/// told; whether it was not there until now.
pub(super) async fn subscribe_again(
    conn: &mut SqliteConnection,
    member: MemberId,
    list: ListId,
    since: DateTime<Utc>,
    told: Option<&[CropId]>,
) -> Result<bool> {
    let now = in_plans(conn, list).await?;
    let changed = told.filter(|told| *told != now.as_slice());
    let began = sqlx::query(
        "INSERT INTO subscriptions (member_id, list_id, subscribed_at, told) \
         SELECT CAST($1 AS BIGINT), id, $2, $3 FROM lists WHERE id = $4 \
         ON CONFLICT (member_id, list_id) DO NOTHING",
    )
    .bind(member)
    .bind(since)
    .bind(changed.map(|told| to_json(&told)).transpose()?)
    .bind(list)
    .execute(conn)
    .await?;
    Ok(began.rows_affected() > 0)
}

/// A subscription ends and leaves nothing; gives what begins it again: with the list as it is now,
/// where nothing is untold, so that it is told what changes until then.
pub(super) async fn end_subscription(
    conn: &mut SqliteConnection,
    member: MemberId,
    list: ListId,
) -> Result<Option<PutBack>> {
    let row = sqlx::query(
        "DELETE FROM subscriptions WHERE member_id = $1 AND list_id = $2 \
         RETURNING subscribed_at, told",
    )
    .bind(member)
    .bind(list)
    .fetch_optional(&mut *conn)
    .await?;
    let Some(row) = row else { return Ok(None) };
    let kept = Kept::of_member("subscriptions of member", &row, member);
    let (since, told) = (kept.get("subscribed_at")?, kept.json("told")?);
    let told = match told {
        Some(told) => told,
        None => in_plans(conn, list).await?,
    };
    Ok(Some(PutBack::Subscribe { list, since, told: Some(told) }))
}

/// The member leaves these crops out of lists, or does not any more.
pub(super) async fn skip_crops(
    conn: &mut SqliteConnection,
    member: MemberId,
    crops: &[CropId],
    skip: bool,
    now: DateTime<Utc>,
    put_back: &mut Vec<PutBack>,
) -> Result<()> {
    let before = put_back.len();
    for crop in crops {
        if set_skipped(conn, member, crop, skip).await? {
            let crop = crop.clone();
            put_back.push(if skip { PutBack::SkipOff(crop) } else { PutBack::SkipOn(crop) });
        }
    }
    if put_back.len() > before {
        changed(conn, member, Touches::Contents, now).await
    } else {
        Ok(())
    }
}

/// Sets whether a crop is left out; whether that was different before.
pub(super) async fn set_skipped(
    conn: &mut SqliteConnection,
    member: MemberId,
    crop: &CropId,
    skip: bool,
) -> Result<bool> {
    let statement = if skip {
        "INSERT INTO skipped_crops (member_id, crop) VALUES ($1, $2) \
         ON CONFLICT (member_id, crop) DO NOTHING"
    } else {
        "DELETE FROM skipped_crops WHERE member_id = $1 AND crop = $2"
    };
    let set = sqlx::query(statement).bind(member).bind(crop.as_str()).execute(conn).await?;
    Ok(set.rows_affected() > 0)
}

//! Clubs and the groups they live in: opened, joined, left, closed, moved.

use chrono::{DateTime, Utc};
use rand::Rng;
use rand::distr::Alphanumeric;
use sqlx::{Row, SqliteConnection};

use super::digests::digest_changed;
use super::facts::inheritors;
use super::rows::{self, to_json};
use super::schedule::{Touches, changed, club_changed};
use super::{Result, coordinators, queue};
use crate::club::{ClubId, MemberId};
use crate::messages::{ChatKind, Outgoing};

/// The group's club: a new one, or the one that lived in it before.
pub(super) async fn open(
    conn: &mut SqliteConnection,
    chat: i64,
    title: &str,
    now: DateTime<Utc>,
) -> Result<()> {
    // 22 letters and digits hold 130 bits: nobody guesses their way into a club.
    let join_token: String =
        rand::rng().sample_iter(Alphanumeric).take(22).map(char::from).collect();
    let club: ClubId = sqlx::query_scalar(
        "INSERT INTO clubs (chat, title, join_token, opened_at) VALUES ($1, $2, $3, $4) \
         ON CONFLICT (chat) DO UPDATE SET title = excluded.title, closed_at = NULL RETURNING id",
    )
    .bind(chat)
    .bind(title)
    .bind(join_token)
    .bind(now)
    .fetch_one(&mut *conn)
    .await?;
    digest_changed(conn, club, true, now).await?;
    // A club that is taken up again is its members' again, with its zone.
    club_changed(conn, club, |_| true, Touches::Clock, now).await
}

/// The bot is out of the group: what waits for it is not sent, and the members inherit from
/// another club of theirs or from none.
pub(super) async fn close(
    conn: &mut SqliteConnection,
    club: ClubId,
    now: DateTime<Utc>,
) -> Result<()> {
    let heirs = inheritors(conn, club).await?;
    sqlx::query("UPDATE clubs SET closed_at = $1 WHERE id = $2")
        .bind(now)
        .bind(club)
        .execute(&mut *conn)
        .await?;
    sqlx::query(
        "UPDATE outgoing SET outcome = 'cancelled', error = 'the bot left the group', \
         ended_at = $1 WHERE outcome IS NULL AND chat = (SELECT chat FROM clubs WHERE id = $2)",
    )
    .bind(now)
    .bind(club)
    .execute(&mut *conn)
    .await?;
    digest_changed(conn, club, false, now).await?;
    for member in heirs {
        changed(conn, member.id, Touches::Clock, now).await?;
    }
    Ok(())
}

/// The member belongs to the club. In private that is their wish, and it becomes the club that is
/// meant; in the group it only notes who is there.
pub(super) async fn join(
    conn: &mut SqliteConnection,
    club: ClubId,
    member: MemberId,
    place: ChatKind,
    now: DateTime<Utc>,
) -> Result<()> {
    let club: ClubId =
        sqlx::query_scalar("SELECT COALESCE(merged_into, id) FROM clubs WHERE id = $1")
            .bind(club)
            .fetch_one(&mut *conn)
            .await?;
    let there: Option<i64> = sqlx::query_scalar(
        "SELECT club_id FROM memberships \
         WHERE club_id = $1 AND member_id = $2 AND left_at IS NULL",
    )
    .bind(club)
    .bind(member)
    .fetch_optional(&mut *conn)
    .await?;
    if there.is_some() && place == ChatKind::Group {
        return Ok(());
    }
    sqlx::query(
        "INSERT INTO memberships (club_id, member_id, joined_at, chosen_at) \
         VALUES ($1, $2, $3, $4) \
         ON CONFLICT (club_id, member_id) DO UPDATE SET joined_at = excluded.joined_at, \
         chosen_at = COALESCE(excluded.chosen_at, memberships.chosen_at), left_at = NULL",
    )
    .bind(club)
    .bind(member)
    .bind(now)
    .bind((place == ChatKind::Private).then_some(now))
    .execute(&mut *conn)
    .await?;
    changed(conn, member, Touches::Clock, now).await
}

/// The member does not belong to the club any more.
pub(super) async fn leave(
    conn: &mut SqliteConnection,
    club: ClubId,
    member: MemberId,
    now: DateTime<Utc>,
) -> Result<()> {
    let left = sqlx::query(
        "UPDATE memberships SET left_at = $1 \
         WHERE club_id = $2 AND member_id = $3 AND left_at IS NULL",
    )
    .bind(now)
    .bind(club)
    .bind(member)
    .execute(&mut *conn)
    .await?;
    // Who has left helps nobody there any more.
    coordinators::dismiss_helper(conn, club, member).await?;
    if left.rows_affected() > 0 {
        changed(conn, member, Touches::Clock, now).await?;
    }
    Ok(())
}

/// The group `old` has the id `new`. Done a second time it changes nothing.
pub(super) async fn move_chat(
    conn: &mut SqliteConnection,
    old: i64,
    new: i64,
    now: DateTime<Utc>,
) -> Result<()> {
    if old == new {
        return Ok(());
    }
    let at_old = club_at(conn, old).await?;
    let at_new = club_at(conn, new).await?;
    match (at_old, at_new) {
        (Some(club), None) => {
            sqlx::query("UPDATE clubs SET chat = $1 WHERE id = $2")
                .bind(new)
                .bind(club)
                .execute(&mut *conn)
                .await?;
        }
        // The platform may tell of the new group before it tells of the move; by then the new
        // group has a club of its own.
        (Some(one), Some(other)) => {
            merge(conn, one.max(other), one.min(other), new, now).await?;
        }
        (None, _) => {}
    }
    move_expectations(conn, old, new).await?;
    move_waiting(conn, old, new, now).await
}

async fn club_at(conn: &mut SqliteConnection, chat: i64) -> Result<Option<ClubId>> {
    Ok(sqlx::query_scalar("SELECT id FROM clubs WHERE chat = $1")
        .bind(chat)
        .fetch_optional(conn)
        .await?)
}

/// The club `gone` was the older club `into` all along, which takes its chat, its members, its
/// lists and the settings that it lacks.
async fn merge(
    conn: &mut SqliteConnection,
    gone: ClubId,
    into: ClubId,
    chat: i64,
    now: DateTime<Utc>,
) -> Result<()> {
    sqlx::query(
        "INSERT INTO memberships (club_id, member_id, joined_at, chosen_at) \
         SELECT CAST($1 AS BIGINT), member_id, joined_at, chosen_at FROM memberships \
         WHERE club_id = $2 AND left_at IS NULL \
         ON CONFLICT (club_id, member_id) DO UPDATE SET left_at = NULL",
    )
    .bind(into)
    .bind(gone)
    .execute(&mut *conn)
    .await?;
    sqlx::query(
        "INSERT INTO helpers (club_id, member_id, named_at) \
         SELECT CAST($1 AS BIGINT), member_id, named_at FROM helpers WHERE club_id = $2 \
         ON CONFLICT (club_id, member_id) DO NOTHING",
    )
    .bind(into)
    .bind(gone)
    .execute(&mut *conn)
    .await?;
    for statement in
        ["DELETE FROM memberships WHERE club_id = $1", "DELETE FROM helpers WHERE club_id = $1"]
    {
        sqlx::query(statement).bind(gone).execute(&mut *conn).await?;
    }
    sqlx::query("UPDATE lists SET club_id = $1 WHERE club_id = $2")
        .bind(into)
        .bind(gone)
        .execute(&mut *conn)
        .await?;
    sqlx::query(
        "UPDATE clubs SET chat = NULL, closed_at = $1, merged_into = $2 \
         WHERE id = $3 OR merged_into = $3",
    )
    .bind(now)
    .bind(into)
    .bind(gone)
    .execute(&mut *conn)
    .await?;
    sqlx::query(
        "UPDATE clubs SET chat = $1, closed_at = NULL, \
         frost = COALESCE(frost, (SELECT frost FROM clubs WHERE id = $2)), \
         zone = COALESCE(zone, (SELECT zone FROM clubs WHERE id = $2)), \
         language = COALESCE(language, (SELECT language FROM clubs WHERE id = $2)), \
         digest_minutes = COALESCE(digest_minutes, \
           (SELECT digest_minutes FROM clubs WHERE id = $2)), \
         digest_thread = CASE WHEN digest_weekday IS NULL \
           THEN (SELECT digest_thread FROM clubs WHERE id = $2) ELSE digest_thread END, \
         digest_made_for = COALESCE(digest_made_for, \
           (SELECT digest_made_for FROM clubs WHERE id = $2)), \
         digest_weekday = COALESCE(digest_weekday, \
           (SELECT digest_weekday FROM clubs WHERE id = $2)), \
         hold = COALESCE(hold, (SELECT hold FROM clubs WHERE id = $2)), \
         hot_and_wet = COALESCE(hot_and_wet, (SELECT hot_and_wet FROM clubs WHERE id = $2)), \
         months = COALESCE(months, (SELECT months FROM clubs WHERE id = $2)) \
         WHERE id = $3",
    )
    .bind(chat)
    .bind(gone)
    .bind(into)
    .execute(&mut *conn)
    .await?;
    digest_changed(conn, gone, false, now).await?;
    digest_changed(conn, into, false, now).await?;
    club_changed(conn, into, |_| true, Touches::Clock, now).await
}

async fn move_expectations(conn: &mut SqliteConnection, old: i64, new: i64) -> Result<()> {
    // What was asked in the new group already is the later question.
    sqlx::query(
        "DELETE FROM expectations WHERE chat = $1 AND member_id IN \
         (SELECT member_id FROM expectations WHERE chat = $2)",
    )
    .bind(old)
    .bind(new)
    .execute(&mut *conn)
    .await?;
    sqlx::query("UPDATE expectations SET chat = $1 WHERE chat = $2")
        .bind(new)
        .bind(old)
        .execute(&mut *conn)
        .await?;
    // What was asked is soon forgotten, and the topics of the new group are others.
    sqlx::query("DELETE FROM subjects WHERE chat = $1").bind(old).execute(conn).await?;
    Ok(())
}

/// Waiting messages go to the new group. Message ids of the old one mean nothing there: a reply
/// becomes a plain message, and an edit cannot be made.
async fn move_waiting(
    conn: &mut SqliteConnection,
    old: i64,
    new: i64,
    now: DateTime<Utc>,
) -> Result<()> {
    let waiting =
        sqlx::query("SELECT * FROM outgoing WHERE chat = $1 AND outcome IS NULL ORDER BY id")
            .bind(old)
            .fetch_all(&mut *conn)
            .await?;
    for row in &waiting {
        let id: i64 = row.try_get("id")?;
        let moved = match rows::queued(row) {
            Ok(queued) => match queued.outgoing {
                Outgoing::Say(mut say) => {
                    say.chat = new;
                    say.reply_to = None;
                    Ok(Outgoing::Say(say))
                }
                Outgoing::Edit(_) => Err("the message to edit is of the group's old id".to_owned()),
                Outgoing::Document(mut document) => {
                    document.chat = new;
                    Ok(Outgoing::Document(document))
                }
                // They go to no chat, so no row of a chat holds one.
                answer @ (Outgoing::AnswerPress(_)
                | Outgoing::OpenByPress(_)
                | Outgoing::AnswerInline(_)) => Ok(answer),
            },
            Err(error) => Err(error.to_string()),
        };
        match moved {
            Ok(outgoing) => {
                sqlx::query("UPDATE outgoing SET chat = $1, payload = $2 WHERE id = $3")
                    .bind(new)
                    .bind(to_json(&outgoing)?)
                    .bind(id)
                    .execute(&mut *conn)
                    .await?;
            }
            Err(why) => queue::end(conn, id, "failed", Some(&why), now).await?,
        }
    }
    Ok(())
}

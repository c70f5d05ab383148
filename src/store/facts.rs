//! Reading what a decision may depend on.

use chrono::{DateTime, Utc};
use sqlx::SqliteConnection;

use super::rows::{self, Kept};
use super::{Result, coordinators, journal, lists, subjects, varieties};
use crate::chat::{Expected, Facts, InPrivate};
use crate::club::{Club, ClubId, JobMark, LanguageTag, Member, MemberId, ReminderTime, Sowing};
use crate::messages::{ChatKind, Incoming, Person};

/// The facts of `incoming`.
pub(super) async fn facts(
    conn: &mut SqliteConnection,
    incoming: &Incoming,
    join_token: Option<&str>,
    now: DateTime<Utc>,
) -> Result<Facts> {
    let member = member_of(conn, &incoming.from, now).await?;
    let clubs = clubs_of_member(conn, member.id).await?;
    let (club, helpers) = match incoming.chat.kind {
        ChatKind::Group => {
            let club = club_of_chat(conn, incoming.chat.id).await?;
            let helpers = match &club {
                Some(club) => coordinators::helpers(conn, club.id).await?,
                None => Vec::new(),
            };
            (club, helpers)
        }
        ChatKind::Private => (clubs.first().cloned(), Vec::new()),
    };
    let growing = {
        let of_club = club.iter().map(|club| (member.id, club.id)).collect();
        let growing = lists::growing_of(conn, &[member.id], &of_club).await?;
        growing.into_values().next().unwrap_or_default()
    };
    let in_private = match incoming.chat.kind {
        ChatKind::Group => current_club(conn, member.id).await?,
        ChatKind::Private => club.clone(),
    };
    let invited_to = match join_token {
        Some(token) => club_of_token(conn, token).await?,
        None => None,
    };
    Ok(Facts {
        now,
        club,
        clubs,
        helpers,
        reach: None,
        lists: Vec::new(),
        offered_list: None,
        invited_to,
        crops: growing.crops(),
        growing,
        marks: marks(conn, member.id).await?,
        sowings: sowings(conn, member.id).await?,
        varieties: varieties::all(conn, member.id).await?,
        next_change: journal::next_number(conn, member.id).await?,
        last_change: journal::last_change(conn, member.id).await?,
        last_undone: journal::last_undone(conn, member.id).await?,
        expected: expected(conn, incoming.chat.id, member.id, now).await?,
        subject: subjects::subject(conn, &incoming.chat, member.id, now).await?,
        in_private: InPrivate { club: in_private, ..InPrivate::default() },
        member,
    })
}

/// The member that `person` is; a new row on first sight, and the name and the language of
/// their app as they are now.
pub(super) async fn member_of(
    conn: &mut SqliteConnection,
    person: &Person,
    now: DateTime<Utc>,
) -> Result<Member> {
    let app_language: Option<LanguageTag> =
        person.language.as_deref().and_then(|tag| tag.parse().ok());
    let known = sqlx::query("SELECT * FROM members WHERE user_id = $1")
        .bind(person.user)
        .fetch_optional(&mut *conn)
        .await?;
    if let Some(row) = known {
        let mut member = rows::member(&row)?;
        if member.name != person.name {
            sqlx::query("UPDATE members SET name = $1 WHERE id = $2")
                .bind(&person.name)
                .bind(member.id)
                .execute(&mut *conn)
                .await?;
            member.name.clone_from(&person.name);
        }
        // Where the platform does not tell the language, what it told before holds.
        if app_language.is_some() && member.app_language != app_language {
            sqlx::query("UPDATE members SET app_language = $1 WHERE id = $2")
                .bind(app_language.as_ref().map(ToString::to_string))
                .bind(member.id)
                .execute(conn)
                .await?;
            member.app_language = app_language;
        }
        return Ok(member);
    }
    let row = sqlx::query(
        "INSERT INTO members (user_id, name, reachable, reminder_minutes, first_seen_at, app_language) \
         VALUES ($1, $2, $3, $4, $5, $6) RETURNING *",
    )
    .bind(person.user)
    .bind(&person.name)
    .bind(false)
    .bind(i64::from(ReminderTime::default().minutes()))
    .bind(now)
    .bind(app_language.as_ref().map(ToString::to_string))
    .fetch_one(conn)
    .await?;
    rows::member(&row)
}

/// The open club of a group.
pub(super) async fn club_of_chat(conn: &mut SqliteConnection, chat: i64) -> Result<Option<Club>> {
    let row = sqlx::query("SELECT * FROM clubs WHERE chat = $1 AND closed_at IS NULL")
        .bind(chat)
        .fetch_optional(conn)
        .await?;
    row.as_ref().map(rows::club).transpose()
}

/// The open club whose settings a member inherits: the one they chose last and did not leave or,
/// where they chose none, the one they joined first.
pub(super) async fn current_club(
    conn: &mut SqliteConnection,
    member: MemberId,
) -> Result<Option<Club>> {
    Ok(clubs_of_member(conn, member).await?.into_iter().next())
}

/// The open clubs that a member belongs to, the one whose settings they inherit first.
async fn clubs_of_member(conn: &mut SqliteConnection, member: MemberId) -> Result<Vec<Club>> {
    let rows = sqlx::query(
        "SELECT c.* FROM memberships ms JOIN clubs c ON c.id = ms.club_id \
         WHERE ms.member_id = $1 AND ms.left_at IS NULL AND c.closed_at IS NULL \
         ORDER BY ms.chosen_at IS NULL, ms.chosen_at DESC, ms.joined_at, ms.club_id",
    )
    .bind(member)
    .fetch_all(conn)
    .await?;
    rows.iter().map(rows::club).collect()
}

/// The reachable members whose current club this is.
pub(super) async fn inheritors(conn: &mut SqliteConnection, club: ClubId) -> Result<Vec<Member>> {
    let rows = sqlx::query(
        "SELECT m.* FROM memberships own JOIN members m ON m.id = own.member_id \
         WHERE own.club_id = $1 AND own.left_at IS NULL AND m.reachable AND own.club_id = \
           (SELECT ms.club_id FROM memberships ms JOIN clubs c ON c.id = ms.club_id \
            WHERE ms.member_id = m.id AND ms.left_at IS NULL AND c.closed_at IS NULL \
            ORDER BY ms.chosen_at IS NULL, ms.chosen_at DESC, ms.joined_at, ms.club_id \
            LIMIT 1)",
    )
    .bind(club)
    .fetch_all(conn)
    .await?;
    rows.iter().map(rows::member).collect()
}

/// The open club of a join token; the token of a club that was merged leads to the one it is now.
async fn club_of_token(conn: &mut SqliteConnection, token: &str) -> Result<Option<Club>> {
    let row = sqlx::query(
        "SELECT * FROM clubs WHERE closed_at IS NULL AND id = \
           (SELECT COALESCE(merged_into, id) FROM clubs WHERE join_token = $1)",
    )
    .bind(token)
    .fetch_optional(conn)
    .await?;
    row.as_ref().map(rows::club).transpose()
}

async fn marks(conn: &mut SqliteConnection, member: MemberId) -> Result<Vec<JobMark>> {
    let rows = sqlx::query("SELECT * FROM job_marks WHERE member_id = $1 ORDER BY job")
        .bind(member)
        .fetch_all(conn)
        .await?;
    rows.iter().map(|row| rows::job_mark(row, member)).collect()
}

async fn sowings(conn: &mut SqliteConnection, member: MemberId) -> Result<Vec<Sowing>> {
    let rows = sqlx::query("SELECT * FROM sowings WHERE member_id = $1 ORDER BY id")
        .bind(member)
        .fetch_all(conn)
        .await?;
    rows.iter().map(rows::sowing).collect()
}

async fn expected(
    conn: &mut SqliteConnection,
    chat: i64,
    member: MemberId,
    now: DateTime<Utc>,
) -> Result<Option<Expected>> {
    let row = sqlx::query(
        "SELECT expected FROM expectations \
         WHERE chat = $1 AND member_id = $2 AND expires_at > $3",
    )
    .bind(chat)
    .bind(member)
    .bind(now)
    .fetch_optional(conn)
    .await?;
    row.map(|row| Kept::of_member("expectations of member", &row, member).needed_json("expected"))
        .transpose()
}

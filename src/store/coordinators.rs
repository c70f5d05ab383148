//! A club's helpers.

use chrono::{DateTime, Utc};
use sqlx::{Row, SqliteConnection};

use super::Result;
use super::facts::member_of;
use crate::club::{ClubId, Helper, MemberId};
use crate::messages::{Person, Role};

/// The helpers of a club, the first named first.
pub(super) async fn helpers(conn: &mut SqliteConnection, club: ClubId) -> Result<Vec<Helper>> {
    let rows = sqlx::query(
        "SELECT m.id, m.user_id, m.name FROM helpers h JOIN members m ON m.id = h.member_id \
         WHERE h.club_id = $1 ORDER BY h.named_at, m.id",
    )
    .bind(club)
    .fetch_all(conn)
    .await?;
    rows.iter()
        .map(|row| {
            Ok(Helper {
                member: row.try_get("id")?,
                user: row.try_get("user_id")?,
                name: row.try_get("name")?,
            })
        })
        .collect()
}

/// A person becomes a helper; one whom the bot has not met becomes a member first.
pub(super) async fn name_helper(
    conn: &mut SqliteConnection,
    club: ClubId,
    user: i64,
    name: &str,
    now: DateTime<Utc>,
) -> Result<()> {
    let person = Person {
        user,
        name: name.to_owned(),
        is_bot: false,
        anonymous: false,
        language: None,
        role: Role::Unknown,
    };
    let member = member_of(conn, &person, now).await?.id;
    sqlx::query(
        "INSERT INTO helpers (club_id, member_id, named_at) VALUES ($1, $2, $3) \
         ON CONFLICT (club_id, member_id) DO NOTHING",
    )
    .bind(club)
    .bind(member)
    .bind(now)
    .execute(conn)
    .await?;
    Ok(())
}

/// The member is no helper of the club any more.
pub(super) async fn dismiss_helper(
    conn: &mut SqliteConnection,
    club: ClubId,
    member: MemberId,
) -> Result<()> {
    sqlx::query("DELETE FROM helpers WHERE club_id = $1 AND member_id = $2")
        .bind(club)
        .bind(member)
        .execute(conn)
        .await?;
    Ok(())
}

//! The members whose reminder time has come, with what their mornings need.

use std::collections::HashMap;

use chrono::{DateTime, TimeDelta, Utc};
use sqlx::{QueryBuilder, Row, Sqlite, SqliteConnection};

use super::rows;
use super::{MemberDue, Morning, Result, Store, StoreError, list_news, lists, made_mornings};
use crate::club::{Club, ClubId, Growing, JobMark, MemberId, Sowing, Variety};

/// Values bound in one list; far below what either engine takes.
pub(super) const LIST: usize = 500;

/// A member whose row, or what belongs to it, cannot be read.
pub(super) type Unreadable = (MemberId, String);

impl Store {
    /// The members whose reminder time has come, the longest due first, `limit` at most, with what
    /// their mornings need. A member whose rows cannot be read is logged and set aside for a day,
    /// so that the others get their morning.
    ///
    /// A change that is kept between this and [`Store::keep_mornings`] is not in what was read;
    /// [`super::Work`] has both verbs for one transaction.
    ///
    /// # Errors
    /// [`StoreError::Database`].
    pub async fn members_due(&self, now: DateTime<Utc>, limit: usize) -> Result<Vec<MemberDue>> {
        // One transaction, so that all reads are of one moment.
        let mut reading = self.reader.begin().await?;
        let (due, unreadable) = due(&mut reading, now, limit).await?;
        reading.rollback().await?;
        if !unreadable.is_empty() {
            let mut work = self.begin().await?;
            set_aside(&mut work.transaction, &unreadable, now).await?;
            work.commit().await?;
        }
        Ok(due)
    }

    /// Keeps what came of several mornings in one transaction: the reminders, the jobs that they
    /// name, and when the next ones are due. A date that has its reminder already gets no second,
    /// and a member who became unreachable gets none.
    ///
    /// # Errors
    /// [`StoreError::Database`] and [`StoreError::Corrupt`], and nothing is kept.
    pub async fn keep_mornings(&self, mornings: &[Morning], now: DateTime<Utc>) -> Result<()> {
        let mut work = self.begin().await?;
        made_mornings::keep(&mut work.transaction, mornings, now).await?;
        work.commit().await
    }

    /// When the next reminder of anybody or the next digest of any club is due; it may lie in the
    /// past.
    ///
    /// # Errors
    /// [`StoreError::Database`].
    pub async fn next_morning(&self) -> Result<Option<DateTime<Utc>>> {
        Ok(sqlx::query_scalar(
            "SELECT MIN(due) FROM (SELECT MIN(next_reminder_at) AS due FROM members \
             UNION ALL SELECT MIN(next_digest_at) AS due FROM clubs) AS both_kinds",
        )
        .fetch_one(&self.reader)
        .await?)
    }
}

/// The members due and those who cannot be read.
pub(super) async fn due(
    conn: &mut SqliteConnection,
    now: DateTime<Utc>,
    limit: usize,
) -> Result<(Vec<MemberDue>, Vec<Unreadable>)> {
    let rows = sqlx::query(
        "SELECT * FROM members WHERE next_reminder_at <= $1 \
         ORDER BY next_reminder_at, id LIMIT $2",
    )
    .bind(now)
    .bind(i64::try_from(limit).unwrap_or(i64::MAX))
    .fetch_all(&mut *conn)
    .await?;
    let ids: Vec<MemberId> =
        rows.iter().map(|row| Ok(row.try_get("id")?)).collect::<Result<_>>()?;
    let current = current_clubs(conn, &ids).await?;
    let mut clubs = clubs_of(conn, &current).await?;
    let growing = lists::growing_of(conn, &ids, &current).await?;
    let mut news = list_news::news_of(conn, &ids, &current).await?;
    let mut marks = marks_of(conn, &ids).await?;
    let mut sowings = sowings_of(conn, &ids).await?;
    let mut varieties = varieties_of(conn, &ids).await?;
    let mut due = Vec::new();
    let mut unreadable = Vec::new();
    for (row, id) in rows.iter().zip(ids) {
        let all = rows::member(row).and_then(|member| {
            Ok(MemberDue {
                member,
                club: clubs.remove(&id).transpose()?,
                crops: growing.get(&id).map(Growing::crops).unwrap_or_default(),
                news: news.remove(&id).unwrap_or(Ok(Vec::new()))?,
                marks: marks.remove(&id).unwrap_or(Ok(Vec::new()))?,
                sowings: sowings.remove(&id).unwrap_or(Ok(Vec::new()))?,
                varieties: varieties.remove(&id).unwrap_or(Ok(Vec::new()))?,
            })
        });
        match all {
            Ok(member) => due.push(member),
            Err(StoreError::Corrupt(why)) => unreadable.push((id, why)),
            Err(error) => return Err(error),
        }
    }
    Ok((due, unreadable))
}

/// The club that each member inherits from, as one member's facts have it.
pub(super) async fn current_clubs(
    conn: &mut SqliteConnection,
    members: &[MemberId],
) -> Result<HashMap<MemberId, ClubId>> {
    let mut current: HashMap<MemberId, ClubId> = HashMap::new();
    for some in members.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new(
            "SELECT ms.member_id, ms.club_id FROM memberships ms \
             JOIN clubs c ON c.id = ms.club_id WHERE ms.left_at IS NULL AND c.closed_at IS NULL \
             AND ms.member_id IN ",
        );
        push_list(&mut query, some);
        query.push(
            " ORDER BY ms.chosen_at IS NOT NULL, ms.chosen_at, ms.joined_at DESC, ms.club_id DESC",
        );
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            // The last of a member's rows stays.
            current.insert(row.try_get("member_id")?, row.try_get("club_id")?);
        }
    }
    Ok(current)
}

async fn clubs_of(
    conn: &mut SqliteConnection,
    current: &HashMap<MemberId, ClubId>,
) -> Result<HashMap<MemberId, Result<Club>>> {
    let mut wanted: Vec<ClubId> = current.values().copied().collect();
    wanted.sort_unstable();
    wanted.dedup();
    let mut rows = HashMap::new();
    for some in wanted.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new("SELECT * FROM clubs WHERE id IN ");
        push_list(&mut query, some);
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            rows.insert(row.try_get::<ClubId, _>("id")?, row);
        }
    }
    let read =
        |(member, club): (&MemberId, &ClubId)| rows.get(club).map(|row| (*member, rows::club(row)));
    Ok(current.iter().filter_map(read).collect())
}

async fn marks_of(
    conn: &mut SqliteConnection,
    members: &[MemberId],
) -> Result<HashMap<MemberId, Result<Vec<JobMark>>>> {
    let mut marks: HashMap<MemberId, Result<Vec<JobMark>>> = HashMap::new();
    for some in members.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new("SELECT * FROM job_marks WHERE member_id IN ");
        push_list(&mut query, some);
        query.push(" ORDER BY job");
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            let member: MemberId = row.try_get("member_id")?;
            let of_member = marks.entry(member).or_insert_with(|| Ok(Vec::new()));
            match (rows::job_mark(&row, member), of_member.as_mut()) {
                (Ok(mark), Ok(read)) => read.push(mark),
                (Err(error), Ok(_)) => *of_member = Err(error),
                (_, Err(_)) => {}
            }
        }
    }
    Ok(marks)
}

async fn sowings_of(
    conn: &mut SqliteConnection,
    members: &[MemberId],
) -> Result<HashMap<MemberId, Result<Vec<Sowing>>>> {
    let mut sowings: HashMap<MemberId, Result<Vec<Sowing>>> = HashMap::new();
    for some in members.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new("SELECT * FROM sowings WHERE member_id IN ");
        push_list(&mut query, some);
        query.push(" ORDER BY id");
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            let member: MemberId = row.try_get("member_id")?;
            let of_member = sowings.entry(member).or_insert_with(|| Ok(Vec::new()));
            match (rows::sowing(&row), of_member.as_mut()) {
                (Ok(sowing), Ok(read)) => read.push(sowing),
                (Err(error), Ok(_)) => *of_member = Err(error),
                (_, Err(_)) => {}
            }
        }
    }
    Ok(sowings)
}

async fn varieties_of(
    conn: &mut SqliteConnection,
    members: &[MemberId],
) -> Result<HashMap<MemberId, Result<Vec<Variety>>>> {
    let mut varieties: HashMap<MemberId, Result<Vec<Variety>>> = HashMap::new();
    for some in members.chunks(LIST) {
        let mut query = QueryBuilder::<Sqlite>::new("SELECT * FROM varieties WHERE member_id IN ");
        push_list(&mut query, some);
        query.push(" ORDER BY id");
        for row in query.build().persistent(false).fetch_all(&mut *conn).await? {
            let member: MemberId = row.try_get("member_id")?;
            let of_member = varieties.entry(member).or_insert_with(|| Ok(Vec::new()));
            match (rows::variety(&row), of_member.as_mut()) {
                (Ok(variety), Ok(read)) => read.push(variety),
                (Err(error), Ok(_)) => *of_member = Err(error),
                (_, Err(_)) => {}
            }
        }
    }
    Ok(varieties)
}

/// Binds numbers as a list in parentheses.
pub(super) fn push_list(query: &mut QueryBuilder<Sqlite>, ids: &[i64]) {
    query.push("(");
    let mut list = query.separated(", ");
    for id in ids {
        list.push_bind(*id);
    }
    query.push(")");
}

/// Takes members who cannot be read out of the way until tomorrow.
pub(super) async fn set_aside(
    conn: &mut SqliteConnection,
    unreadable: &[Unreadable],
    now: DateTime<Utc>,
) -> Result<()> {
    for (member, why) in unreadable {
        tracing::error!(member, why, "a member cannot be read and gets no reminder today");
        sqlx::query("UPDATE members SET next_reminder_at = $1 WHERE id = $2 AND reachable")
            .bind(now + TimeDelta::days(1))
            .bind(member)
            .execute(&mut *conn)
            .await?;
    }
    Ok(())
}

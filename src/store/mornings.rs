//! The members whose reminder time has come, and what came of their mornings.

use std::collections::HashMap;

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use sqlx::{QueryBuilder, Row, Sqlite, SqliteConnection};

use super::rows::{self, Named, priority_number, to_json};
use super::{MemberDue, Morning, Result, Store, StoreError, list_news, lists};
use crate::club::{Club, ClubId, Growing, JobMark, MemberId, Sowing, Variety};
use crate::messages::{Outgoing, Priority};

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
        keep(&mut work.transaction, mornings, now).await?;
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
        set_next(conn, *member, now + TimeDelta::days(1)).await?;
    }
    Ok(())
}

/// Sets when a reachable member's next morning is; false for one who is not reachable.
async fn set_next(
    conn: &mut SqliteConnection,
    member: MemberId,
    next: DateTime<Utc>,
) -> Result<bool> {
    let set = sqlx::query("UPDATE members SET next_reminder_at = $1 WHERE id = $2 AND reachable")
        .bind(next)
        .bind(member)
        .execute(conn)
        .await?;
    Ok(set.rows_affected() > 0)
}

/// Keeps what came of mornings.
pub(super) async fn keep(
    conn: &mut SqliteConnection,
    mornings: &[Morning],
    now: DateTime<Utc>,
) -> Result<()> {
    for morning in mornings {
        let reachable = set_next(conn, morning.member, morning.next).await?;
        if let Some(outgoing) = morning.outgoing.as_ref().filter(|_| reachable) {
            keep_reminder(conn, morning, outgoing, now).await?;
        }
    }
    Ok(())
}

async fn keep_reminder(
    conn: &mut SqliteConnection,
    morning: &Morning,
    outgoing: &Outgoing,
    now: DateTime<Utc>,
) -> Result<()> {
    let mut named = Vec::new();
    for key in &morning.named {
        let job = key.to_string();
        let before: Option<Option<NaiveDate>> =
            sqlx::query_scalar("SELECT named_on FROM job_marks WHERE member_id = $1 AND job = $2")
                .bind(morning.member)
                .bind(&job)
                .fetch_optional(&mut *conn)
                .await?;
        named.push(Named { job, before: before.flatten() });
    }
    let row: Option<i64> = sqlx::query_scalar(
        "INSERT INTO outgoing (chat, priority, payload, member_id, kind, local_date, named, \
         created_at, not_before, expires_at, attempts) \
         VALUES ($1, $2, $3, $4, 'morning', $5, $6, $7, $7, $8, 0) \
         ON CONFLICT (member_id, local_date, kind) DO NOTHING RETURNING id",
    )
    .bind(outgoing.chat())
    .bind(priority_number(Priority::Reminder))
    .bind(to_json(outgoing)?)
    .bind(morning.member)
    .bind(morning.date)
    .bind(to_json(&named)?)
    .bind(now)
    .bind(morning.expires)
    .fetch_optional(&mut *conn)
    .await?;
    let Some(row) = row else { return Ok(()) };
    if let Some(told) = list_news::take_up(conn, morning.member, &morning.told).await? {
        sqlx::query("UPDATE outgoing SET told = $1 WHERE id = $2")
            .bind(told)
            .bind(row)
            .execute(&mut *conn)
            .await?;
    }
    for Named { job, .. } in named {
        sqlx::query(
            "INSERT INTO job_marks (member_id, job, named_on) VALUES ($1, $2, $3) \
             ON CONFLICT (member_id, job) DO UPDATE SET named_on = excluded.named_on",
        )
        .bind(morning.member)
        .bind(job)
        .bind(morning.date)
        .execute(&mut *conn)
        .await?;
    }
    Ok(())
}

//! What came of mornings: the reminders, the jobs that they name, and when the next ones are due.
//!
//! Thousands of members share one hour, and each statement goes to the database's thread and back;
//! so each statement here is for many members.

use std::collections::{HashMap, HashSet};

use chrono::{DateTime, NaiveDate, Utc};
use sqlx::{QueryBuilder, Row, Sqlite, SqliteConnection};

use super::mornings::push_list;
use super::rows::{Kept, Named, priority_number, to_json};
use super::{Morning, Result, list_news};
use crate::club::MemberId;
use crate::messages::{Outgoing, Priority};

/// How many mornings go into one statement. A reminder binds ten values, and either engine takes
/// some thirty thousand.
const TOGETHER: usize = 100;

/// How many named jobs go into one statement.
const JOBS_TOGETHER: usize = 500;

/// A reminder that is to be kept: its morning, its message, and the jobs that it names, each with
/// the date that stands there before.
struct Reminder<'a> {
    morning: &'a Morning,
    outgoing: &'a Outgoing,
    named: Vec<Named>,
}

/// Keeps what came of mornings.
pub(super) async fn keep(
    conn: &mut SqliteConnection,
    mornings: &[Morning],
    now: DateTime<Utc>,
) -> Result<()> {
    for some in mornings.chunks(TOGETHER) {
        let reachable = set_next(conn, some).await?;
        let said: Vec<(&Morning, &Outgoing)> = some
            .iter()
            .filter(|morning| reachable.contains(&morning.member))
            .filter_map(|morning| Some((morning, morning.outgoing.as_ref()?)))
            .collect();
        if !said.is_empty() {
            keep_reminders(conn, &said, now).await?;
        }
    }
    Ok(())
}

/// Sets when the reachable members' next mornings are, and gives who is reachable.
async fn set_next(conn: &mut SqliteConnection, mornings: &[Morning]) -> Result<HashSet<MemberId>> {
    let mut query = QueryBuilder::<Sqlite>::new("WITH made (member_id, next) AS (");
    query.push_values(mornings, |mut row, morning| {
        row.push_bind(morning.member).push_bind(morning.next);
    });
    query.push(
        ") UPDATE members SET next_reminder_at = made.next FROM made \
         WHERE members.id = made.member_id AND members.reachable RETURNING members.id",
    );
    let rows = query.build().persistent(false).fetch_all(conn).await?;
    rows.iter().map(|row| Ok(row.try_get(0)?)).collect()
}

async fn keep_reminders(
    conn: &mut SqliteConnection,
    said: &[(&Morning, &Outgoing)],
    now: DateTime<Utc>,
) -> Result<()> {
    let members: Vec<MemberId> = said.iter().map(|(morning, _)| morning.member).collect();
    let before = named_before(conn, &members).await?;
    let named = |morning: &Morning| {
        let job = |key: &crate::planning::JobKey| {
            let job = key.to_string();
            let before = before.get(&(morning.member, job.clone())).copied();
            Named { job, before }
        };
        morning.named.iter().map(job).collect()
    };
    let reminders: Vec<Reminder> = said
        .iter()
        .map(|(morning, outgoing)| Reminder { morning, outgoing, named: named(morning) })
        .collect();
    let rows = queue(conn, &reminders, now).await?;
    let kept = |reminder: &&Reminder| rows.contains_key(&reminder.morning.member);
    let kept: Vec<&Reminder> = reminders.iter().filter(kept).collect();
    for reminder in &kept {
        let Reminder { morning, .. } = reminder;
        let Some(row) = rows.get(&morning.member) else { continue };
        if let Some(told) = list_news::take_up(conn, morning.member, &morning.told).await? {
            sqlx::query("UPDATE outgoing SET told = $1 WHERE id = $2")
                .bind(told)
                .bind(row)
                .execute(&mut *conn)
                .await?;
        }
    }
    mark_named(conn, &kept).await
}

/// The dates on which jobs of these members were named last.
async fn named_before(
    conn: &mut SqliteConnection,
    members: &[MemberId],
) -> Result<HashMap<(MemberId, String), NaiveDate>> {
    let mut query = QueryBuilder::<Sqlite>::new(
        "SELECT member_id, job, named_on FROM job_marks \
         WHERE named_on IS NOT NULL AND member_id IN ",
    );
    push_list(&mut query, members);
    let rows = query.build().persistent(false).fetch_all(conn).await?;
    rows.iter()
        .map(|row| {
            let member: MemberId = row.try_get("member_id")?;
            let kept = Kept::of_member("job_marks of member", row, member);
            Ok(((member, kept.get("job")?), kept.get("named_on")?))
        })
        .collect()
}

/// Queues the reminders and gives the row of each member's. A date that has one already gets no
/// second.
async fn queue(
    conn: &mut SqliteConnection,
    reminders: &[Reminder<'_>],
    now: DateTime<Utc>,
) -> Result<HashMap<MemberId, i64>> {
    let mut written = Vec::with_capacity(reminders.len());
    for reminder in reminders {
        written.push((reminder, to_json(reminder.outgoing)?, to_json(&reminder.named)?));
    }
    let mut query = QueryBuilder::<Sqlite>::new(
        "INSERT INTO outgoing (chat, priority, payload, member_id, kind, local_date, named, \
         created_at, not_before, expires_at, attempts) ",
    );
    query.push_values(written, |mut row, (reminder, payload, named)| {
        let Reminder { morning, outgoing, .. } = reminder;
        row.push_bind(outgoing.chat())
            .push_bind(priority_number(Priority::Reminder))
            .push_bind(payload)
            .push_bind(morning.member)
            .push_bind("morning")
            .push_bind(morning.date)
            .push_bind(named)
            .push_bind(now)
            .push_bind(now)
            .push_bind(morning.expires)
            .push("0");
    });
    query.push(" ON CONFLICT (member_id, local_date, kind) DO NOTHING RETURNING member_id, id");
    let rows = query.build().persistent(false).fetch_all(conn).await?;
    rows.iter().map(|row| Ok((row.try_get(0)?, row.try_get(1)?))).collect()
}

/// Notes the jobs that the reminders name.
async fn mark_named(conn: &mut SqliteConnection, reminders: &[&Reminder<'_>]) -> Result<()> {
    let of_reminder = |reminder: &&Reminder| {
        let Morning { member, date, .. } = *reminder.morning;
        let jobs: Vec<String> = reminder.named.iter().map(|named| named.job.clone()).collect();
        jobs.into_iter().map(move |job| (member, job, date))
    };
    let jobs: Vec<(MemberId, String, NaiveDate)> = reminders.iter().flat_map(of_reminder).collect();
    for some in jobs.chunks(JOBS_TOGETHER) {
        let mut query =
            QueryBuilder::<Sqlite>::new("INSERT INTO job_marks (member_id, job, named_on) ");
        query.push_values(some, |mut row, (member, job, date)| {
            row.push_bind(*member).push_bind(job.clone()).push_bind(*date);
        });
        query.push(" ON CONFLICT (member_id, job) DO UPDATE SET named_on = excluded.named_on");
        query.build().persistent(false).execute(&mut *conn).await?;
    }
    Ok(())
}

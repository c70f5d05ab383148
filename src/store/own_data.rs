//! Everything that is kept about one member: shown to them whole, and deleted whole.
//!
//! [`HELD`] names each table that has anything of a member. A test reads the schema and fails for
//! a column that refers to a member, a person or a chat and is neither here nor among the columns
//! that are nobody's.

use chrono::{DateTime, Utc};
use serde_json::{Map, Value};
use sqlx::sqlite::SqliteRow;
use sqlx::{Column, Row, SqliteConnection, TypeInfo, ValueRef};

use super::{Result, Work};
use crate::club::MemberId;

/// What one table has of a member. In the statements `$1` is the store's number of the member and
/// `$2` the platform's id of the person.
pub(super) struct Held {
    /// The table.
    pub table: &'static str,
    /// Its columns that tell whose a row is.
    #[cfg_attr(not(test), expect(dead_code, reason = "for the test that reads the schema"))]
    pub whose: &'static [&'static str],
    /// Gives the member's rows, without anything of somebody else's.
    pub shown: &'static str,
    /// Takes the member out of the table.
    pub forgotten: &'static str,
}

/// The tables in the order in which they are emptied: what refers to another comes before it.
pub(super) const HELD: [Held; 14] = [
    Held {
        table: "memberships",
        whose: &["member_id"],
        shown: "SELECT c.title AS club, ms.joined_at, ms.left_at, ms.chosen_at FROM memberships ms \
                JOIN clubs c ON c.id = ms.club_id WHERE ms.member_id = $1 ORDER BY ms.joined_at",
        forgotten: "DELETE FROM memberships WHERE member_id = $1",
    },
    Held {
        table: "member_crops",
        whose: &["member_id"],
        shown: "SELECT * FROM member_crops WHERE member_id = $1 ORDER BY id",
        forgotten: "DELETE FROM member_crops WHERE member_id = $1",
    },
    Held {
        table: "subscriptions",
        whose: &["member_id"],
        shown: "SELECT l.name AS list, c.title AS club, s.* FROM subscriptions s \
                JOIN lists l ON l.id = s.list_id JOIN clubs c ON c.id = l.club_id \
                WHERE s.member_id = $1 ORDER BY s.list_id",
        forgotten: "DELETE FROM subscriptions WHERE member_id = $1",
    },
    Held {
        table: "skipped_crops",
        whose: &["member_id"],
        shown: "SELECT * FROM skipped_crops WHERE member_id = $1 ORDER BY crop",
        forgotten: "DELETE FROM skipped_crops WHERE member_id = $1",
    },
    Held {
        table: "helpers",
        whose: &["member_id"],
        shown: "SELECT c.title AS club, h.* FROM helpers h \
                JOIN clubs c ON c.id = h.club_id WHERE h.member_id = $1 ORDER BY h.club_id",
        forgotten: "DELETE FROM helpers WHERE member_id = $1",
    },
    Held {
        table: "sowings",
        whose: &["member_id"],
        shown: "SELECT * FROM sowings WHERE member_id = $1 ORDER BY id",
        forgotten: "DELETE FROM sowings WHERE member_id = $1",
    },
    Held {
        table: "job_marks",
        whose: &["member_id"],
        shown: "SELECT * FROM job_marks WHERE member_id = $1 ORDER BY job",
        forgotten: "DELETE FROM job_marks WHERE member_id = $1",
    },
    Held {
        table: "varieties",
        whose: &["member_id"],
        shown: "SELECT * FROM varieties WHERE member_id = $1 ORDER BY id",
        forgotten: "DELETE FROM varieties WHERE member_id = $1",
    },
    Held {
        table: "journal",
        whose: &["member_id"],
        shown: "SELECT * FROM journal WHERE member_id = $1 ORDER BY number",
        forgotten: "DELETE FROM journal WHERE member_id = $1",
    },
    Held {
        table: "expectations",
        whose: &["member_id", "chat"],
        shown: "SELECT * FROM expectations WHERE member_id = $1 ORDER BY expires_at",
        forgotten: "DELETE FROM expectations WHERE member_id = $1",
    },
    Held {
        table: "subjects",
        whose: &["member_id", "chat"],
        shown: "SELECT * FROM subjects WHERE member_id = $1 ORDER BY expires_at",
        forgotten: "DELETE FROM subjects WHERE member_id = $1",
    },
    Held {
        table: "group_questions",
        whose: &["member_id", "chat"],
        shown: "SELECT * FROM group_questions WHERE member_id = $1 ORDER BY asked_at",
        forgotten: "DELETE FROM group_questions WHERE member_id = $1",
    },
    Held {
        table: "outgoing",
        whose: &["member_id", "chat"],
        // An export does not hold the exports before it.
        shown: "SELECT * FROM outgoing WHERE (member_id = $1 OR chat = $2) \
                AND payload NOT LIKE '{\"document\":%' ORDER BY id",
        forgotten: "DELETE FROM outgoing WHERE member_id = $1 OR chat = $2",
    },
    Held {
        table: "members",
        whose: &["id", "user_id"],
        shown: "SELECT * FROM members WHERE id = $1",
        forgotten: "DELETE FROM members WHERE id = $1",
    },
];

impl Work {
    /// All that is kept about a member: for each table its rows, each column under its name.
    /// Values that are kept as JSON are JSON here, all else is as it is kept.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn own_data(&mut self, member: MemberId, now: DateTime<Utc>) -> Result<Value> {
        let conn = &mut *self.transaction;
        let user = user_of(conn, member).await?;
        let mut all = Map::new();
        all.insert("exported_at".to_owned(), Value::from(now.to_rfc3339()));
        for held in HELD.iter().rev() {
            let query = sqlx::query(held.shown).bind(member);
            let query = if held.shown.contains("$2") { query.bind(user) } else { query };
            let rows = query.fetch_all(&mut *conn).await?;
            let rows = rows.iter().map(row_value).collect::<Result<Vec<Value>>>()?;
            all.insert(held.table.to_owned(), Value::Array(rows));
        }
        Ok(Value::Object(all))
    }

    /// Whether anything is kept about this person.
    ///
    /// # Errors
    /// [`super::StoreError::Database`].
    pub async fn knows(&mut self, user: i64) -> Result<bool> {
        let known: Option<i64> = sqlx::query_scalar("SELECT id FROM members WHERE user_id = $1")
            .bind(user)
            .fetch_optional(&mut *self.transaction)
            .await?;
        Ok(known.is_some())
    }
}

/// Deletes all that is kept about a member. Their clubs stay as they are.
pub(super) async fn forget(conn: &mut SqliteConnection, member: MemberId) -> Result<()> {
    let user = user_of(conn, member).await?;
    for held in &HELD {
        let query = sqlx::query(held.forgotten).bind(member);
        let query = if held.forgotten.contains("$2") { query.bind(user) } else { query };
        query.execute(&mut *conn).await?;
    }
    Ok(())
}

async fn user_of(conn: &mut SqliteConnection, member: MemberId) -> Result<Option<i64>> {
    Ok(sqlx::query_scalar("SELECT user_id FROM members WHERE id = $1")
        .bind(member)
        .fetch_optional(conn)
        .await?)
}

/// A row with the names of its columns.
fn row_value(row: &SqliteRow) -> Result<Value> {
    let mut fields = Map::new();
    for column in row.columns() {
        let at = column.ordinal();
        let raw = row.try_get_raw(at)?;
        let kind = raw.type_info().name().to_owned();
        let value = match (raw.is_null(), kind.as_str()) {
            (true, _) => Value::Null,
            (false, "INTEGER") => Value::from(row.try_get::<i64, _>(at)?),
            (false, "REAL") => Value::from(row.try_get::<f64, _>(at)?),
            (false, _) => text_value(row.try_get(at)?),
        };
        fields.insert(column.name().to_owned(), value);
    }
    Ok(Value::Object(fields))
}

/// A kept text; one that is the JSON of a list, an object or a text is that.
fn text_value(text: String) -> Value {
    let json = text.starts_with(['{', '[', '"']).then(|| serde_json::from_str(&text).ok());
    json.flatten().unwrap_or(Value::String(text))
}

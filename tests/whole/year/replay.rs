//! The changes that were accepted, done again in their order on a fresh store: what the program
//! should hold, whatever was killed, repeated or lost.
//!
//! No mornings are made here. What a member's facts are at a moment is asked of this store.

use std::collections::BTreeMap;
use std::str::FromStr;
use std::sync::Arc;

use chrono::{DateTime, Utc};
use sowbell::app::{App, Update};
use sowbell::chat::{Change, Facts, Knowledge};
use sowbell::messages::{Incoming, Role, UpdateKey, What};
use sowbell::store::Store;
use sqlx::sqlite::{SqliteConnectOptions, SqlitePool, SqlitePoolOptions};
use sqlx::{AssertSqlSafe, Row};

use super::people::incoming;
use super::told::{OfList, lists_of};

/// Columns that mornings or chance write: not part of what was accepted.
const LEFT_OUT: [(&str, &str); 7] = [
    ("members", "next_reminder_at"),
    ("clubs", "join_token"),
    ("clubs", "next_digest_at"),
    ("clubs", "digest_made_for"),
    ("job_marks", "named_on"),
    ("lists", "code"),
    // What was told is held against what came (`told.rs`).
    ("subscriptions", "told"),
];

/// Tables about sending, not about what was accepted.
const NOT_COMPARED: [&str; 3] = ["outgoing", "sqlite_sequence", "_sqlx_migrations"];

pub struct Replay {
    app: App,
    look: SqlitePool,
}

/// A connection of the test's own to look into a database.
pub async fn look(url: &str) -> SqlitePool {
    let options = SqliteConnectOptions::from_str(url).expect("a URL");
    let pool = SqlitePoolOptions::new().max_connections(1).connect_with(options).await;
    pool.expect("the database opens")
}

/// The words with which somebody joins a club by the link of its first day; the token is put in
/// where it is read. The clubs are opened in their order.
pub fn join_words(club: usize) -> String {
    format!("/start club {}", club + 1)
}

/// The same by a link that stands in the group `chat` at the moment.
pub fn join_words_in(chat: i64) -> String {
    format!("/start chat {chat}")
}

/// Whether this is a link of a club that there was not when it was followed.
pub fn leads_nowhere(incoming: &Incoming) -> bool {
    matches!(&incoming.what, What::Text { text, .. } if text == "/start ")
}

/// With the token of this database, since tokens are drawn by chance.
pub async fn with_token(incoming: &Incoming, look: &SqlitePool) -> Incoming {
    let mut with = incoming.clone();
    if let What::Text { text, .. } = &mut with.what
        && let Some(words) = text.strip_prefix("/start ")
        && let Some((of, number)) = words.split_once(' ')
        && let Ok(number) = number.parse::<i64>()
    {
        let query = match of {
            "club" => "SELECT join_token FROM clubs WHERE id = $1",
            _ => "SELECT join_token FROM clubs WHERE chat = $1",
        };
        let token: Option<String> = sqlx::query_scalar(query)
            .bind(number)
            .fetch_optional(look)
            .await
            .expect("clubs can be read");
        *text = format!("/start {}", token.unwrap_or_default());
    }
    with
}

impl Replay {
    pub async fn new(url: &str, knowledge: &Arc<Knowledge>) -> Self {
        let store = Store::open(url).await.expect("the database opens");
        Self { app: App::new(store, Arc::clone(knowledge)), look: look(url).await }
    }

    /// To look into the replay's database.
    pub fn look(&self) -> &SqlitePool {
        &self.look
    }

    /// Does again what the program has accepted.
    pub async fn accept(&self, key: UpdateKey, incoming: &Incoming, now: DateTime<Utc>) {
        let incoming = Some(with_token(incoming, &self.look).await);
        self.app.take_in(&[Update { key, incoming }], now).await.expect("it is kept");
    }

    /// The platform said that the bot may not write to this person.
    pub async fn cannot_reach(&self, user: i64, now: DateTime<Utc>) {
        let from_them = incoming(user, user, Role::Unknown, What::Nothing);
        let mut work = self.app.store.begin().await.expect("a transaction");
        let facts = work.facts(&from_them, None, now).await.expect("facts");
        let change = Change::MemberReachable(false);
        work.apply(&facts, &from_them, &change, now).await.expect("a change");
        work.commit().await.expect("a commit");
    }

    /// A send said that the group `old` has the id `new`; `user` is anybody who is known.
    pub async fn moved(&self, old: i64, new: i64, user: i64, now: DateTime<Utc>) {
        let there = incoming(user, old, Role::Unknown, What::Nothing);
        let mut work = self.app.store.begin().await.expect("a transaction");
        let facts = work.facts(&there, None, now).await.expect("facts");
        let change = Change::MoveClub { to: new };
        work.apply(&facts, &there, &change, now).await.expect("a change");
        work.commit().await.expect("a commit");
    }

    /// What members subscribe to.
    pub async fn lists_of(&self, user: i64) -> Vec<OfList> {
        lists_of(&self.look, Some(user)).await
    }

    /// What only those may change who keep a club: its settings, its lists and its helpers.
    pub async fn of_clubs(&self) -> Vec<String> {
        sqlx::query_scalar(
            "SELECT concat_ws('|', id, frost, zone, language, hold, digest_weekday, \
             digest_minutes, digest_thread) FROM clubs WHERE frost IS NOT NULL \
             UNION ALL SELECT concat_ws('|', id, club_id, name, note, archived_at) FROM lists \
             UNION ALL SELECT concat_ws('|', list_id, crop) FROM list_crops \
             UNION ALL SELECT concat_ws('|', club_id, member_id) FROM helpers ORDER BY 1",
        )
        .fetch_all(&self.look)
        .await
        .expect("clubs can be read")
    }

    /// What was said last in this chat.
    pub async fn last_said(&self, chat: i64) -> String {
        let said: Option<String> = sqlx::query_scalar(
            "SELECT json_extract(payload, '$.say.text') FROM outgoing WHERE chat = $1 \
             ORDER BY id DESC LIMIT 1",
        )
        .bind(chat)
        .fetch_optional(&self.look)
        .await
        .expect("messages can be read")
        .flatten();
        said.unwrap_or_default()
    }

    /// What is known of a person at `now`.
    pub async fn facts(&self, user: i64, now: DateTime<Utc>) -> Facts {
        let from_them = incoming(user, user, Role::Unknown, What::Nothing);
        let mut work = self.app.store.begin().await.expect("a transaction");
        let facts = work.facts(&from_them, None, now).await.expect("facts");
        work.rollback().await.expect("a rollback");
        facts
    }

    pub async fn prune(&self, now: DateTime<Utc>) {
        self.app.store.prune(now).await.expect("pruned");
        // Nothing is sent here, so what is queued only grows.
        sqlx::query("DELETE FROM outgoing").execute(&self.look).await.expect("emptied");
    }

    /// Holds the program's store against this one.
    ///
    /// # Errors
    /// With the first rows that differ.
    pub async fn compare(&self, program: &SqlitePool) -> Result<(), String> {
        let (is, should) = (contents(program).await, contents(&self.look).await);
        for (table, should) in &should {
            let is = is.get(table).cloned().unwrap_or_default();
            if is != *should {
                let only = |one: &[String], other: &[String]| {
                    let only: Vec<_> = one.iter().filter(|row| !other.contains(row)).collect();
                    only.into_iter().take(3).cloned().collect::<Vec<_>>().join("\n    ")
                };
                return Err(format!(
                    "the table {table} differs from a replay of what was accepted\n  it has\n    \
                     {}\n  and should have\n    {}",
                    only(&is, should),
                    only(should, &is)
                ));
            }
        }
        Ok(())
    }
}

/// Every row of every table that is compared, as text.
async fn contents(look: &SqlitePool) -> BTreeMap<String, Vec<String>> {
    let tables: Vec<String> =
        sqlx::query_scalar("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")
            .fetch_all(look)
            .await
            .expect("tables");
    let mut all = BTreeMap::new();
    for table in tables.into_iter().filter(|table| !NOT_COMPARED.contains(&table.as_str())) {
        let columns: Vec<String> = sqlx::query("SELECT name FROM pragma_table_info($1)")
            .bind(&table)
            .fetch_all(look)
            .await
            .expect("columns")
            .into_iter()
            .map(|row| row.get("name"))
            .filter(|column: &String| !LEFT_OUT.contains(&(table.as_str(), column.as_str())))
            .collect();
        let quoted: Vec<String> = columns.iter().map(|name| format!("quote({name})")).collect();
        // A job of which only the naming is kept is no accepted change.
        let only = if table == "job_marks" { "WHERE mark IS NOT NULL" } else { "" };
        let query = format!("SELECT {} FROM {table} {only} ORDER BY 1", quoted.join("||'|'||"));
        let rows: Vec<String> =
            sqlx::query_scalar(AssertSqlSafe(query)).fetch_all(look).await.expect("rows");
        let rows = rows.into_iter().map(|row| if table == "journal" { untold(row) } else { row });
        all.insert(table.clone(), rows.collect());
    }
    all
}

/// A row of the journal without what had been told of a list that was unsubscribed from, which
/// depends on mornings.
fn untold(row: String) -> String {
    let Some((before, told)) = row.split_once("\"told\":") else { return row };
    let rest = told.find('}').map_or("", |at| &told[at..]);
    format!("{before}{}", untold(rest.to_owned()))
}

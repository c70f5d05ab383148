//! What a test reads in the bot's own database: only how far the bot has come, never what it knows.

use std::path::Path;

use chrono::{DateTime, Utc};
use sqlx::sqlite::{SqliteConnectOptions, SqlitePool, SqlitePoolOptions};

/// A reader beside the bot.
#[derive(Clone)]
pub struct Reader(SqlitePool);

impl Reader {
    pub fn open(path: &Path) -> Self {
        let options = SqliteConnectOptions::new().filename(path).pragma("query_only", "ON");
        Self(SqlitePoolOptions::new().max_connections(1).connect_lazy_with(options))
    }

    /// How many messages wait in the queue.
    pub async fn waiting(&self) -> i64 {
        self.count("SELECT count(*) FROM outgoing WHERE outcome IS NULL").await
    }

    /// How many members' mornings and clubs' digests have come and were not looked at yet.
    pub async fn mornings_due(&self, now: DateTime<Utc>) -> i64 {
        let due = "SELECT (SELECT count(*) FROM members WHERE next_reminder_at <= $1) \
                   + (SELECT count(*) FROM clubs WHERE next_digest_at <= $1)";
        sqlx::query_scalar(due).bind(now).fetch_one(&self.0).await.expect("the members")
    }

    /// What waits, for the report of a test that waited in vain.
    pub async fn waiting_rows(&self) -> Vec<String> {
        let rows = "SELECT id || ' ' || payload || ' after ' || attempts || ' tries, not before ' \
                    || not_before || ': ' || COALESCE(error, '') FROM outgoing \
                    WHERE outcome IS NULL";
        sqlx::query_scalar(rows).fetch_all(&self.0).await.expect("the queue")
    }

    /// The only column of the only row of a question.
    pub async fn count(&self, question: &'static str) -> i64 {
        sqlx::query_scalar(question).fetch_one(&self.0).await.expect("an answer of the database")
    }

    pub async fn close(&self) {
        self.0.close().await;
    }
}

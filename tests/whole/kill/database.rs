//! What is kept, read past the program.

use sqlx::sqlite::{SqliteConnectOptions, SqlitePool, SqlitePoolOptions};
use std::str::FromStr;

/// The program's database, to look at.
pub struct Database(SqlitePool);

impl Database {
    pub async fn open(url: &str) -> Self {
        let options = SqliteConnectOptions::from_str(url).expect("a URL");
        let pool = SqlitePoolOptions::new().max_connections(1).connect_with(options).await;
        Self(pool.expect("the database opens"))
    }

    async fn count(&self, what: &'static str, of: i64) -> usize {
        let count: i64 =
            sqlx::query_scalar(what).bind(of).fetch_one(&self.0).await.expect("a number");
        usize::try_from(count).expect("not below zero")
    }

    /// How many messages wait to be sent.
    pub async fn waiting(&self) -> usize {
        self.count("SELECT COUNT(*) FROM outgoing WHERE outcome IS NULL AND $1 = 0", 0).await
    }

    /// How many updates were taken in.
    pub async fn seen_updates(&self) -> usize {
        self.count("SELECT COUNT(*) FROM seen_updates WHERE $1 = 0", 0).await
    }

    /// How many messages were queued for a chat and not taken back, edits left out; they are sent.
    pub async fn messages_to(&self, chat: i64) -> usize {
        let what = "SELECT COUNT(*) FROM outgoing WHERE chat = $1 AND outcome = 'sent' \
                    AND json_extract(payload, '$.say') IS NOT NULL";
        let sent = self.count(what, chat).await;
        let what = "SELECT COUNT(*) FROM outgoing WHERE chat = $1 \
                    AND outcome NOT IN ('sent', 'cancelled')";
        assert_eq!(self.count(what, chat).await, 0, "not all messages to {chat} were sent");
        sent
    }

    /// How many reminders of a chat were taken back because a change made them untrue.
    pub async fn cancelled_to(&self, chat: i64) -> usize {
        self.count("SELECT COUNT(*) FROM outgoing WHERE chat = $1 AND outcome = 'cancelled'", chat)
            .await
    }

    /// How many answers to presses were ever queued.
    pub async fn press_answers(&self) -> usize {
        self.count("SELECT COUNT(*) FROM outgoing WHERE chat IS NULL AND $1 = 0", 0).await
    }

    /// How many jobs a member has marked as done.
    pub async fn jobs_done_by(&self, user: i64) -> usize {
        let what = "SELECT COUNT(*) FROM job_marks j JOIN members m ON m.id = j.member_id \
                    WHERE m.user_id = $1 AND j.mark = 'done'";
        self.count(what, user).await
    }

    /// Whether the answer to this press came too late to be sent.
    pub async fn expired_press(&self, press: &str) -> bool {
        let rows: Vec<String> =
            sqlx::query_scalar("SELECT payload FROM outgoing WHERE outcome = 'expired'")
                .fetch_all(&self.0)
                .await
                .expect("rows");
        rows.iter().any(|payload| payload.contains(press))
    }

    /// The crops on a member's list, in the order they were added.
    pub async fn crops_of(&self, user: i64) -> Vec<String> {
        sqlx::query_scalar(
            "SELECT crop FROM member_crops WHERE member_id = \
             (SELECT id FROM members WHERE user_id = $1) ORDER BY id",
        )
        .bind(user)
        .fetch_all(&self.0)
        .await
        .expect("a list")
    }
}

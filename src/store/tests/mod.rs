//! Tests of the store: a fresh database file each, and verbs to fill it.

mod clubs;
mod journal;
mod kept_forms;
mod lists;
mod mornings;
mod opening;
mod order;
mod own_data;
mod reminders;
mod subjects;

use chrono::{DateTime, NaiveDate, Utc};
use tempfile::TempDir;

use super::{Morning, Result, Store, Work};
use crate::chat::{Change, Facts};
use crate::club::MemberId;
use crate::messages::{Chat, ChatKind, Incoming, Outgoing, Person, Priority, Role, Say, What};

/// A store on a file of its own, which goes with it.
struct Bench {
    store: Store,
    url: String,
    _folder: TempDir,
}

async fn bench() -> Bench {
    let folder = tempfile::tempdir().expect("a folder");
    let url = format!("sqlite:{}", folder.path().join("club.db").display());
    Bench { store: Store::open(&url).await.expect("a store"), url, _folder: folder }
}

fn at(text: &str) -> DateTime<Utc> {
    text.parse().expect("an instant")
}

fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn said(user: i64, chat: i64, kind: ChatKind) -> Incoming {
    Incoming {
        chat: Chat { id: chat, kind, title: String::new(), thread: None },
        from: Person {
            user,
            name: format!("Gardener {user}"),
            is_bot: false,
            anonymous: false,
            language: None,
            role: Role::Unknown,
        },
        what: What::Nothing,
    }
}

/// Something from `user` in their private chat.
fn private(user: i64) -> Incoming {
    said(user, user, ChatKind::Private)
}

/// Something from `user` in the group `chat`.
fn group(user: i64, chat: i64) -> Incoming {
    said(user, chat, ChatKind::Group)
}

impl Bench {
    /// Keeps `changes` as one update does, and gives the facts as they are then.
    async fn keep(
        &self,
        incoming: &Incoming,
        changes: &[Change],
        now: DateTime<Utc>,
    ) -> Result<Facts> {
        let mut work = self.store.begin().await?;
        let facts = work.facts(incoming, None, now).await?;
        for change in changes {
            work.apply(&facts, incoming, change, now).await?;
        }
        let facts = work.facts(incoming, None, now).await?;
        work.commit().await?;
        Ok(facts)
    }

    /// A member whose private chat is open.
    async fn member(&self, user: i64, now: DateTime<Utc>) -> Result<MemberId> {
        let facts = self.keep(&private(user), &[Change::MemberReachable(true)], now).await?;
        Ok(facts.member.id)
    }

    async fn queue(&self, outgoing: &Outgoing, priority: Priority, now: DateTime<Utc>) -> i64 {
        let mut work: Work = self.store.begin().await.expect("a transaction");
        let id = work.queue(outgoing, priority, None, now, None).await.expect("a row");
        work.commit().await.expect("a commit");
        id
    }

    /// The ids of what may be sent now.
    async fn waiting(&self, now: DateTime<Utc>) -> Vec<i64> {
        let waiting = self.store.waiting(now, &[], 100).await.expect("the queue");
        waiting.into_iter().map(|queued| queued.id).collect()
    }

    async fn next_reminder(&self, member: MemberId) -> Option<DateTime<Utc>> {
        sqlx::query_scalar("SELECT next_reminder_at FROM members WHERE id = $1")
            .bind(member)
            .fetch_one(&self.store.reader)
            .await
            .expect("a member")
    }

    /// How the row ended, if it did.
    async fn outcome(&self, id: i64) -> Option<String> {
        sqlx::query_scalar("SELECT outcome FROM outgoing WHERE id = $1")
            .bind(id)
            .fetch_one(&self.store.reader)
            .await
            .expect("a row")
    }

    async fn sql(&self, statement: &'static str) {
        sqlx::query(statement).execute(&self.store.writer).await.expect("a statement");
    }
}

fn say(chat: i64, text: &str) -> Outgoing {
    Outgoing::Say(Say { chat, text: text.to_owned(), ..Say::default() })
}

/// A morning of `member` on `on` that names `jobs`, with the next one a day later.
fn morning(member: MemberId, user: i64, on: &str, jobs: &[&str]) -> Morning {
    let seven = at(&format!("{on}T07:00:00Z"));
    Morning {
        member,
        date: date(on),
        outgoing: Some(say(user, "Good morning")),
        named: jobs.iter().map(|job| job.parse().expect("a job")).collect(),
        told: Vec::new(),
        next: seven + chrono::TimeDelta::days(1),
        expires: seven + chrono::TimeDelta::hours(12),
    }
}

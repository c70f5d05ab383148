//! All SQL: what is kept, in the domain's verbs.
//!
//! `SQLite` is the engine; texts use `$1` placeholders and nothing that `PostgreSQL` lacks, and every
//! instant and date is bound from Rust.
//!
//! One connection writes and a few read. A [`Work`] is a writing transaction: what an update
//! changes, what is sent for it and that it was seen are kept together or not at all. The queue of
//! outgoing messages and the mornings have verbs of their own on [`Store`].

mod changes;
mod coordinators;
mod digests;
mod facts;
mod group_questions;
mod groups;
mod journal;
mod list_changes;
mod list_news;
mod lists;
mod made_mornings;
mod mornings;
mod open;
mod own_data;
mod pruning;
mod queue;
mod rows;
mod schedule;
mod sending;
mod setting_changes;
mod settling;
mod sowings;
mod subjects;
#[cfg(test)]
mod tests;
mod varieties;
mod work;

use chrono::{DateTime, NaiveDate, Utc};
use sqlx::{Sqlite, SqlitePool, Transaction};

use crate::club::{Club, ClubId, JobMark, ListId, ListNews, Member, MemberId, Sowing, Variety};
use crate::messages::{Outgoing, Priority};
use crate::planning::{CropId, JobKey};
use crate::reminders::Grown;

pub use pruning::Counts;

/// What the store's verbs give.
pub type Result<T> = std::result::Result<T, StoreError>;

/// What went wrong in the store.
#[derive(Debug, thiserror::Error)]
pub enum StoreError {
    /// The database answered with an error.
    #[error("the database answered: {0}")]
    Database(#[from] sqlx::Error),
    /// The migrations could not be applied.
    #[error("the database could not be brought up to date: {0}")]
    Migration(#[from] sqlx::migrate::MigrateError),
    /// The URL is not one that is supported.
    #[error("{0}")]
    Url(String),
    /// A kept value could not be read; the text names its table, row and column.
    #[error("a kept value could not be read: {0}")]
    Corrupt(String),
}

/// The store; cheap to clone.
#[derive(Debug, Clone)]
pub struct Store {
    /// The only connection that writes.
    writer: SqlitePool,
    /// Connections that only read; the writer itself for a database in memory.
    reader: SqlitePool,
}

/// One writing transaction: everything in it is kept at [`Work::commit`], or nothing is.
///
/// One that is dropped without a commit is rolled back.
#[derive(Debug)]
pub struct Work {
    transaction: Transaction<'static, Sqlite>,
}

/// A message that waits in the queue.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Queued {
    /// The row's number.
    pub id: i64,
    /// What to send.
    pub outgoing: Outgoing,
    /// What goes first.
    pub priority: Priority,
    /// How many times it was tried.
    pub attempts: u32,
    /// The member whose reachability a failure tells about, where it is a private chat.
    pub member: Option<MemberId>,
}

/// How a try to send ended.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SendEnd {
    /// The platform took it (or said that nothing changed).
    Sent {
        /// The message's id, for a new message.
        message: Option<i32>,
    },
    /// Try again not before this instant.
    Retry {
        /// When.
        at: DateTime<Utc>,
        /// Whether the try counts against the bound; being told to wait does not.
        counts: bool,
        /// What the platform said.
        why: String,
    },
    /// Its time has passed.
    Expired,
    /// The person or group cannot be reached any more.
    Unreachable {
        /// What the platform said.
        why: String,
    },
    /// The platform will never take it.
    Failed {
        /// What the platform said.
        why: String,
    },
    /// The group has this new id; its waiting messages go there, and this one is tried again.
    Moved {
        /// The new id.
        to: i64,
    },
}

/// A member whose reminder time has come, with what their morning needs.
#[derive(Debug, Clone)]
pub struct MemberDue {
    /// The member.
    pub member: Member,
    /// The club whose settings they inherit.
    pub club: Option<Club>,
    /// The crops of their plan.
    pub crops: Vec<CropId>,
    /// What changed in the lists they subscribe to and was not told yet.
    pub news: Vec<ListNews>,
    /// What is kept of their jobs.
    pub marks: Vec<JobMark>,
    /// Their recorded sowings.
    pub sowings: Vec<Sowing>,
    /// Their varieties.
    pub varieties: Vec<Variety>,
}

/// A club whose digest has come, with what it needs.
#[derive(Debug, Clone)]
pub struct ClubDue {
    /// The club.
    pub club: Club,
    /// How many of its members grow each crop.
    pub grown: Vec<Grown>,
}

/// What came of a club's digest.
#[derive(Debug, Clone)]
pub struct DigestMade {
    /// The club.
    pub club: ClubId,
    /// The day that it stands for; `None` where its hour has not come.
    pub made_for: Option<NaiveDate>,
    /// The message, where there is something to say.
    pub outgoing: Option<Outgoing>,
    /// When the next one is due.
    pub next: Option<DateTime<Utc>>,
    /// When the message is no longer worth sending.
    pub expires: Option<DateTime<Utc>>,
}

/// What came of a member's morning.
#[derive(Debug, Clone)]
pub struct Morning {
    /// The member.
    pub member: MemberId,
    /// The local date.
    pub date: NaiveDate,
    /// The message, where something was due.
    pub outgoing: Option<Outgoing>,
    /// The jobs that the message names.
    pub named: Vec<JobKey>,
    /// The lists whose changes the message tells.
    pub told: Vec<ListId>,
    /// When the next reminder is due.
    pub next: DateTime<Utc>,
    /// When the message is no longer worth sending.
    pub expires: DateTime<Utc>,
}

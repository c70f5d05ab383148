//! Opening the database by its URL.

use std::path::Path;
use std::str::FromStr;
use std::time::Duration;

use sqlx::sqlite::{
    SqliteConnectOptions, SqliteJournalMode, SqlitePool, SqlitePoolOptions, SqliteSynchronous,
};

use super::{Result, Store, StoreError, Work, sending};

static MIGRATIONS: sqlx::migrate::Migrator = sqlx::migrate!("migrations/sqlite");

/// How long a connection waits for another process that writes.
const BUSY: Duration = Duration::from_secs(5);

/// Connections that read at the same time.
const READERS: u32 = 4;

impl Store {
    /// Opens the database of `url`, makes the file where there is none, and brings its tables up
    /// to date.
    ///
    /// `sqlite:sowbell.db`, `sqlite://folder/sowbell.db` and `sqlite:///folder/sowbell.db` name a
    /// file; `sqlite::memory:` is a database that is gone when the store is. The database in
    /// memory has a single connection, so whoever holds a [`Work`] must end it before they read
    /// through the store.
    ///
    /// # Errors
    /// [`StoreError::Url`] where the URL names nothing that can be opened, and says the mend;
    /// [`StoreError::Migration`] where the file was made by a newer or a changed program;
    /// [`StoreError::Database`] for everything else.
    pub async fn open(url: &str) -> Result<Self> {
        let (options, in_memory) = read_url(url)?;
        let writer = open_writer(&options).await?;
        bring_up_to_date(&writer).await?;
        let reader = if in_memory {
            writer.clone()
        } else {
            let options = options.pragma("query_only", "ON");
            steady_pool(READERS).min_connections(1).connect_with(options).await?
        };
        Ok(Self { writer, reader })
    }

    /// Ends all connections; what was committed is in the file.
    pub async fn close(&self) {
        self.reader.close().await;
        self.writer.close().await;
    }

    /// Begins a writing transaction; it waits until no other writes.
    ///
    /// # Errors
    /// [`StoreError::Database`].
    pub async fn begin(&self) -> Result<Work> {
        // The lock is taken at once: one that is asked for in the middle of a transaction is
        // refused instead of waited for.
        Ok(Work { transaction: self.writer.begin_with("BEGIN IMMEDIATE").await? })
    }
}

/// A pool whose connections stay open: they are few, and one in memory is the database itself.
fn steady_pool(connections: u32) -> SqlitePoolOptions {
    SqlitePoolOptions::new()
        .max_connections(connections)
        .idle_timeout(None)
        .max_lifetime(None)
        .test_before_acquire(false)
}

/// One connection writes, so that writers of this process queue in the pool and never meet a
/// locked database.
async fn open_writer(options: &SqliteConnectOptions) -> Result<SqlitePool> {
    let options = options
        .clone()
        .create_if_missing(true)
        .journal_mode(SqliteJournalMode::Wal)
        // What is remembered for a while only needs no file.
        .pragma("temp_store", "MEMORY")
        // With a write-ahead log only FULL survives a power cut; NORMAL may lose the last commits.
        .synchronous(SqliteSynchronous::Full);
    // Turning the log on needs the file alone and does not wait for others by itself; two
    // processes that make the same file meet here.
    let mut tries = 0;
    loop {
        let pool = steady_pool(1).after_connect(|conn, _| Box::pin(sending::prepare(conn)));
        match pool.connect_with(options.clone()).await {
            Err(error) if has_code(&error, 5) && tries < 50 => {
                tries += 1;
                tokio::time::sleep(BUSY / 50).await;
            }
            Err(error) if has_code(&error, 14) => {
                return Err(StoreError::Url(format!(
                    "the database file {} cannot be opened: check that this user may write it and \
                     its folder",
                    options.get_filename().display()
                )));
            }
            other => return Ok(other?),
        }
    }
}

/// Whether `SQLite` answered with this primary result code: 5 is "busy", 14 "cannot open". The low
/// byte of an extended code is its primary code.
fn has_code(error: &sqlx::Error, primary: i32) -> bool {
    error
        .as_database_error()
        .and_then(sqlx::error::DatabaseError::code)
        .and_then(|code| code.parse::<i32>().ok())
        .is_some_and(|code| code & 0xff == primary)
}

/// All migrations in one locked transaction, so that two processes do not both make the tables.
async fn bring_up_to_date(writer: &SqlitePool) -> Result<()> {
    let mut transaction = writer.begin_with("BEGIN IMMEDIATE").await?;
    // `run` would do the same, but its future is not `Send`.
    MIGRATIONS.run_direct(None, &mut *transaction, false).await?;
    Ok(transaction.commit().await?)
}

/// The options for `url`, and whether it is a database in memory.
fn read_url(url: &str) -> Result<(SqliteConnectOptions, bool)> {
    let example = "set SOWBELL_DATABASE_URL to a SQLite URL such as sqlite:sowbell.db";
    let scheme = url.split_once(':').map_or("", |(scheme, _)| scheme);
    if matches!(scheme, "postgres" | "postgresql") {
        return Err(StoreError::Url(format!("PostgreSQL is not supported yet: {example}")));
    }
    if scheme != "sqlite" {
        // The text is not repeated: a mistyped URL may carry a password.
        return Err(StoreError::Url(format!("the database URL is not one of SQLite: {example}")));
    }
    let rest = url.trim_start_matches("sqlite://").trim_start_matches("sqlite:");
    let (name, parameters) = rest.split_once('?').unwrap_or((rest, ""));
    let in_memory = name == ":memory:" || parameters.contains("mode=memory");
    let options = SqliteConnectOptions::from_str(url)
        .map_err(|error| StoreError::Url(format!("{error}: {example}")))?
        .foreign_keys(true)
        .busy_timeout(BUSY);
    if !in_memory {
        check_place(options.get_filename(), example)?;
    }
    Ok((options, in_memory))
}

fn check_place(file: &Path, example: &str) -> Result<()> {
    if file.as_os_str().is_empty() {
        return Err(StoreError::Url(format!("the database URL names no file: {example}")));
    }
    if file.is_dir() {
        return Err(StoreError::Url(format!(
            "{} is a folder: add the name of a file in it, such as sowbell.db",
            file.display()
        )));
    }
    match file.parent() {
        Some(folder) if !folder.as_os_str().is_empty() && !folder.is_dir() => {
            Err(StoreError::Url(format!(
                "the folder {} for the database does not exist: make it, or name another in \
                 SOWBELL_DATABASE_URL",
                folder.display()
            )))
        }
        _ => Ok(()),
    }
}

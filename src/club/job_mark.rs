//! What a member said of a job.

use chrono::NaiveDate;

use crate::planning::JobKey;

/// What a member said of a job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// Done, on the day kept with it; never named again.
    Done(NaiveDate),
    /// Not this season; never named again.
    Skipped(NaiveDate),
    /// Not before this day.
    Later(NaiveDate),
}

/// What is kept of a job: what the member said of it and when a reminder last named it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct JobMark {
    /// Which job.
    pub key: JobKey,
    /// What the member said, if anything.
    pub mark: Option<Mark>,
    /// The local date of the last reminder that named it.
    pub named_on: Option<NaiveDate>,
}

//! A member's morning: which jobs are due, and the one message that names them.

mod applicable;
mod due;
mod from_sowings;
mod list_news;
mod message;
#[cfg(test)]
mod tests;

pub use applicable::Known;
pub use due::{DueJob, coming_jobs, due_jobs, open_jobs};
pub use from_sowings::steps_left;
pub use list_news::{MOST_LISTS_TOLD, list_news_text};
pub use message::{
    MOST_JOBS, job_line, job_of, needs_mild_nights, reminder_buttons, reminder_text,
};

//! A member's morning: which jobs are due, and the one message that names them.

mod applicable;
mod calls;
mod club_week;
mod due;
mod from_sowings;
mod list_news;
mod message;
mod start_again_text;
#[cfg(test)]
mod tests;

pub use applicable::Known;
pub use calls::later_day;
pub use club_week::{ClubWeek, Grown};
pub use due::{
    DueJob, cannot_wait, coming_jobs, due_jobs, jobs_before, jobs_of_the_week, open_jobs,
};
pub use from_sowings::steps_left;
pub use list_news::{MOST_LISTS_TOLD, list_news_text};
pub use message::{
    MOST_AT_ONCE, MOST_JOBS, Named, job_line, job_of, needs_mild_nights, reminder_buttons,
    reminder_text,
};
pub use start_again_text::{instead_text, start_again_text};

//! Clubs, members and what they keep: types and their rules.

mod job_mark;
mod language;
mod member;
mod reminder_time;
mod zone;

pub use job_mark::{JobMark, Mark};
pub use language::{LanguageError, LanguageTag, Units};
pub use member::{Club, ClubId, Member, MemberId, Setting, SettingFrom, Settings};
pub use reminder_time::{ReminderTime, ReminderTimeError};
pub use zone::{ZoneMatch, find_zone};

//! Clubs, members and what they keep: types and their rules.

mod digest;
mod habits;
mod job_mark;
mod journal;
mod language;
mod lists;
mod member;
mod reminder_time;
mod sowing;
mod variety;
mod zone;

pub use digest::{Digest, DigestError};
pub use habits::{Habits, QuietDays, QuietDaysError, WEEK};
pub use job_mark::{JobMark, Mark};
pub use journal::{LastChange, MemberSetting, PutBack};
pub use language::{DayOrder, LanguageError, LanguageTag, Units};
pub use lists::{
    CODE_ALPHABET, CODE_LENGTH, ClubList, Growing, Helper, LONGEST_LIST_NAME, LONGEST_LIST_NOTE,
    ListId, ListNews, MOST_HELPERS, MOST_LIST_CROPS, MOST_LISTS, Subscribed,
};
pub use member::{Club, ClubId, Member, MemberId, Setting, SettingFrom, Settings};
pub use reminder_time::{ReminderTime, ReminderTimeError};
pub use sowing::{MOST_PLANTS, Sowing};
pub use variety::{LONGEST_VARIETY_NAME, MOST_VARIETIES, Variety, as_grown, followed};
pub use zone::{ZoneMatch, find_zone};

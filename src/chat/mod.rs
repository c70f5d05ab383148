//! Pure deciding: an incoming message and the facts it asked for become an outcome.

mod answer;
mod came_up_talk;
mod caution_text;
mod club_talk;
mod conversation;
mod crop_talk;
mod desk;
mod facts;
mod frost_talk;
pub mod frost_words;
mod hold_talk;
mod hold_words;
mod job_talk;
mod job_why;
mod knowledge;
mod latitude_talk;
mod lookup_text;
mod meant;
mod menu;
mod month_words;
mod now_text;
mod onion_text;
mod place_talk;
mod place_text;
mod place_words;
mod question_talk;
mod sentences;
mod settings_talk;
mod sowing_list;
mod sowing_talk;
#[cfg(test)]
mod sowing_tests;
mod sowing_text;
pub mod understand;
mod undo_talk;
mod verdict_text;

pub use answer::{Answer, Asked};
pub use conversation::{Needs, apology, decide, needs};
pub use facts::{Change, Expected, ExpectedTopic, Facts, Outcome};
pub use frost_words::FrostReading;
pub use job_why::job_why;
pub use knowledge::{Knowledge, KnowledgeError};
pub use menu::command_menus;
pub use onion_text::onion_sentence;
pub use understand::{Intent, Understood};

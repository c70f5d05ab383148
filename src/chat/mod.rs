//! Pure deciding: an incoming message and the facts it asked for become an outcome.

mod amiss_text;
mod answer;
mod came_up_talk;
mod caution_text;
mod club_talk;
mod coming_up_text;
mod conversation;
mod coordinator_talk;
mod crop_talk;
mod day_words;
mod days_talk;
mod desk;
mod emergence_answer;
mod facts;
mod figures;
mod frost_talk;
pub mod frost_words;
#[cfg(test)]
mod german_tests;
mod hold_talk;
mod hold_words;
mod inline_talk;
mod job_talk;
mod job_why;
mod knowledge;
mod latitude_talk;
mod list_show;
mod list_talk;
mod list_words;
mod lookup_text;
mod manners;
mod meant;
mod menu;
mod month_words;
mod needs;
mod now_text;
#[cfg(test)]
mod one_voice_tests;
mod onion_text;
mod own;
mod own_data_talk;
pub mod packet;
mod place_talk;
mod place_text;
mod place_words;
mod question_talk;
mod read_on;
mod ripening_text;
mod seed_answer;
mod sentences;
mod settings_talk;
mod soil_answer;
mod sowing_list;
mod sowing_talk;
#[cfg(test)]
mod sowing_tests;
mod sowing_text;
mod subscribe_talk;
mod too_short_text;
mod tray_list;
mod tray_talk;
mod tray_text;
pub mod understand;
mod undo_talk;
mod variety_reading;
mod variety_talk;
mod variety_text;
mod verdict_next;
mod verdict_text;
mod which_club_talk;
mod whose;

pub use answer::{Answer, Asked};
pub use conversation::{apology, decide};
pub use facts::{
    Change, Expected, ExpectedTopic, Facts, GroupQuestion, InPrivate, ListChange, Outcome, Reach,
};
pub use figures::{EmergenceFigures, Figures, SeedCountFigures, SoilFigures};
pub use frost_words::FrostReading;
pub use job_why::job_why;
pub use knowledge::{Knowledge, KnowledgeError};
pub use menu::command_menus;
pub use needs::{Needs, RoleMatters, needs};
pub use onion_text::onion_sentence;
pub use own::Own;
pub use tray_text::TrayTelling;
pub use understand::{Intent, Understood};

//! The whole program against a fake platform and a fresh database.

#![expect(
    clippy::expect_used,
    clippy::panic,
    reason = "a test stops at the first thing that is wrong"
)]

mod amiss;
mod binary;
mod coordinator;
mod days;
mod digest;
mod everyday;
mod filled;
mod follow_ups;
mod frost_free;
mod group;
mod group_manners;
mod harness;
mod holds;
mod inline;
mod kill;
mod languages;
mod list_days;
mod lists;
mod mornings;
mod own_data;
mod places;
mod platform;
mod private;
mod process;
mod rights;
mod seeds;
mod sowings;
mod sown_varieties;
mod spanish;
mod stops;
mod trays;
mod trouble;
mod two_clubs;
mod varieties;
mod words_amiss;
mod year;

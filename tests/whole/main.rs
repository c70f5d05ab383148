//! The whole program against a fake platform and a fresh database.

#![expect(
    clippy::expect_used,
    clippy::panic,
    reason = "a test stops at the first thing that is wrong"
)]

mod binary;
mod coordinator;
mod filled;
mod group;
mod harness;
mod kill;
mod lists;
mod mornings;
mod platform;
mod private;
mod process;
mod rights;
mod trouble;
mod two_clubs;

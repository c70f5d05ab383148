//! The whole program against a fake platform and a fresh database.

#![expect(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test stops at the first thing that is wrong"
)]

mod binary;
mod coordinator;
mod group;
mod harness;
mod mornings;
mod platform;
mod private;
mod trouble;

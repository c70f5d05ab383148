//! sowbell: a chat bot for a garden club. This page is the map, from the bottom up.
//!
//! A module may use those listed before it, and nothing after it.
//!
//! - [`planning`]: the shared planning rules, pure functions of crop, garden and date.
//! - [`catalogue`]: the crops and their names.
//! - [`club`]: clubs, members and their settings.
//! - [`messages`]: what comes in and goes out, as data.
//! - [`wording`]: words for a reader, in their language and units.
//! - [`reminders`] and [`chat`]: pure deciding, of mornings and of conversations.
//! - [`store`]: all SQL.
//! - [`config`]: the settings.
//! - [`app`]: the one path of an update, the morning's tick, and the sender.
//! - [`telegram`] and [`terminal`]: the two faces.
//! - [`commands`]: the command line.

pub mod app;
pub mod catalogue;
pub mod chat;
pub mod club;
pub mod commands;
pub mod config;
pub mod messages;
pub mod planning;
pub mod reminders;
pub mod store;
pub mod telegram;
pub mod terminal;
pub mod wording;

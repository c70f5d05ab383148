//! sowbell: a chat bot for a garden club. This page is the map.

pub mod app;
pub mod catalogue;
pub mod chat;
pub mod club;
pub mod messages;
pub mod planning;
pub mod store;
pub mod telegram;

//! Pure deciding: an incoming message and the facts it asked for become an outcome.

mod facts;
pub mod frost_words;
pub mod understand;

pub use facts::{Change, Expected, ExpectedTopic, Facts, Outcome};

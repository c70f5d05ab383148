//! What goes wrong on the platform's side, or in between: nobody loses anything by it, and nobody
//! is told anything twice.

mod buttons;
mod groups;
mod lines;
mod mornings;
mod restarts;
mod updates;
mod words;

use std::sync::Arc;
use std::time::{Duration, Instant};

use serde_json::json;
use sowbell::app::{App, Update};
use sowbell::chat::{Facts, Knowledge, Outcome, decide};
use sowbell::messages::{Chat, ChatKind, Incoming, Person as Sender, Role, UpdateKey, What};
use sowbell::store::Store;

use crate::harness::{Person, World, instant, only, shown};
use crate::platform::{Fault, Which};

const SPRING: &str = "2026-04-10T12:00:00Z";
const HELP: &str = "I answer questions like ";

/// How often the bot answered the call for help.
fn helped(world: &World, person: &Person) -> usize {
    world.heard_by(person).iter().filter(|text| text.starts_with(HELP)).count()
}

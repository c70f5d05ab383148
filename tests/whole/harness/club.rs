//! A group with the bot in it.

use std::sync::Arc;
use std::sync::atomic::AtomicI32;

use super::person::unread;
use super::world::Eye;
use super::{Person, only};
use crate::platform::{FakePlatform, Message, Said};

/// A group.
pub struct Club {
    pub id: i64,
    platform: Arc<FakePlatform>,
    eye: Eye,
    read_to: AtomicI32,
}

impl Club {
    pub fn new(platform: Arc<FakePlatform>, eye: Eye, id: i64) -> Self {
        Self { id, platform, eye, read_to: AtomicI32::new(0) }
    }

    /// Lets people into the group.
    pub fn welcomes(&self, people: &[&Person]) {
        for person in people {
            self.platform.join(self.id, person.id);
        }
    }

    /// Somebody writes in the group; goes on without waiting.
    pub fn says(&self, who: &Person, text: &str) -> Said {
        self.platform.user_says_in(self.id, who.id, text, None, None)
    }

    /// Somebody answers a message in the group; goes on without waiting.
    pub fn replies(&self, who: &Person, to: &Message, text: &str) -> Said {
        self.platform.user_says_in(self.id, who.id, text, Some(to.message_id), None)
    }

    /// Somebody writes in the group, and the bot answers that message with one of its own.
    pub async fn hears(&self, who: &Person, text: &str) -> Message {
        let said = self.says(who, text);
        self.answer_to(said).await
    }

    /// The bot's one answer to what was said.
    pub async fn answer_to(&self, said: Said) -> Message {
        self.eye.quiet().await;
        let answer = only(self.news());
        assert_eq!(answer.reply_to, Some(said.message_id), "{:?} answers it", answer.text);
        answer
    }

    /// What the bot says to this once it is done with it: nothing, it is hoped.
    pub async fn silence_after(&self, _said: Said) {
        self.eye.quiet().await;
        let news: Vec<String> = self.news().into_iter().map(|message| message.text).collect();
        assert!(news.is_empty(), "nobody asked for {news:?}");
    }

    /// The bot's messages here that were not read yet.
    pub fn news(&self) -> Vec<Message> {
        unread(&self.platform, self.id, &self.read_to)
    }
}

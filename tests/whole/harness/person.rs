//! A person, and their private chat with the bot.

use std::sync::Arc;
use std::sync::atomic::{AtomicI32, Ordering};

use super::only;
use super::world::Eye;
use crate::platform::{FakePlatform, InlineAnswer, Message, Said};

/// A person.
pub struct Person {
    pub id: i64,
    pub name: String,
    platform: Arc<FakePlatform>,
    eye: Eye,
    read_to: AtomicI32,
}

impl Person {
    pub fn new(platform: Arc<FakePlatform>, eye: Eye, id: i64, name: &str) -> Self {
        Self { id, name: name.to_owned(), platform, eye, read_to: AtomicI32::new(0) }
    }

    /// Writes to the bot in private, and goes on without waiting.
    pub fn writes(&self, text: &str) -> Said {
        self.platform.user_says(self.id, text)
    }

    /// Writes to the bot in private, and reads its one answer.
    pub async fn asks(&self, text: &str) -> Message {
        only(self.tells(text).await)
    }

    /// Writes to the bot in private, and reads whatever came by the time that it is done. What
    /// came before and was not read yet is passed over.
    pub async fn tells(&self, text: &str) -> Vec<Message> {
        self.news();
        self.writes(text);
        self.eye.quiet().await;
        self.news()
    }

    /// The bot's messages that were not read yet.
    pub fn news(&self) -> Vec<Message> {
        unread(&self.platform, self.id, &self.read_to)
    }

    /// The bot's latest message, as it reads now.
    pub fn last(&self) -> Message {
        self.platform
            .sent_to(self.id)
            .pop()
            .unwrap_or_else(|| panic!("{} heard nothing", self.name))
    }

    /// Presses a button under the bot's latest message, and reads the notice that comes up, if one
    /// does; afterwards the bot has done all that follows.
    pub async fn presses(&self, label: &str) -> Option<String> {
        self.presses_under(&self.last(), label).await
    }

    /// Presses a button under one of the bot's messages here.
    pub async fn presses_under(&self, message: &Message, label: &str) -> Option<String> {
        let pressed = self.platform.press(self.id, message.chat, message.message_id, label);
        self.notice(&pressed.query_id).await
    }

    /// Presses a button that the app still shows though nothing knows it any more.
    pub async fn presses_data(&self, message: &Message, data: &str) -> Option<String> {
        let pressed = self.platform.press_data(self.id, message.chat, message.message_id, data);
        self.notice(&pressed.query_id).await
    }

    /// Presses a button under a message so old that the platform does not tell what it said.
    pub async fn presses_on_old(&self, message: &Message, data: &str) -> Option<String> {
        let pressed =
            self.platform.press_on_old_message(self.id, message.chat, message.message_id, data);
        self.notice(&pressed.query_id).await
    }

    /// Waits for the answer to a press, and for all that follows.
    pub async fn notice(&self, query: &str) -> Option<String> {
        self.eye.quiet().await;
        let mut answers = self.platform.callback_answers();
        answers.retain(|answer| answer.query_id == query);
        assert_eq!(answers.len(), 1, "a press is answered once: {answers:?}");
        answers.remove(0).text
    }

    /// Types the bot's name and some words in a chat of their own, and reads what is offered.
    pub async fn types_inline(&self, words: &str) -> InlineAnswer {
        let query = self.platform.types_inline(self.id, words);
        self.eye.quiet().await;
        let mut answers = self.platform.inline_answers();
        answers.retain(|answer| answer.query_id == query);
        assert_eq!(answers.len(), 1, "what is typed is answered once: {answers:?}");
        answers.remove(0)
    }

    pub fn blocks_the_bot(&self) {
        self.platform.block(self.id);
    }

    pub fn lets_the_bot_write_again(&self) {
        self.platform.unblock(self.id);
    }
}

/// The bot's messages in a chat behind the one that was read last.
pub fn unread(platform: &FakePlatform, chat: i64, read_to: &AtomicI32) -> Vec<Message> {
    let mut news = platform.sent_to(chat);
    news.retain(|message| message.message_id > read_to.load(Ordering::Relaxed));
    if let Some(last) = news.last() {
        read_to.store(last.message_id, Ordering::Relaxed);
    }
    news
}

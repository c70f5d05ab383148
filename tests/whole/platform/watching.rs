//! What a test sees of the bot, and how it waits for it.

use std::collections::BTreeMap;
use std::fmt::Write;
use std::time::{Duration, Instant};

use super::FakePlatform;
use super::callbacks::CallbackAnswer;
use super::message::Message;
use super::state::{Call, State};

/// How long a test waits for something that should happen.
const PATIENCE: Duration = Duration::from_secs(10);

impl State {
    /// The bot's messages in a chat, in order, as they read now.
    pub fn sent_to(&self, chat: i64) -> Vec<&Message> {
        let bot = self.bot.id;
        self.said_in(chat).filter(|message| message.from == bot).collect()
    }

    /// Everybody's messages in a chat, in order.
    pub fn said_in(&self, chat: i64) -> impl Iterator<Item = &Message> {
        let chat = self.chats.get(&chat);
        chat.into_iter().flat_map(|chat| chat.messages.values())
    }

    /// The bot's messages anywhere, in order of time.
    pub fn sent(&self) -> Vec<&Message> {
        let mut sent: Vec<_> = self.chats.keys().flat_map(|chat| self.sent_to(*chat)).collect();
        sent.sort_by_key(|message| message.sent_at);
        sent
    }

    /// One message, anybody's.
    pub fn message(&self, chat: i64, message_id: i32) -> Option<&Message> {
        self.chats.get(&chat)?.messages.get(&message_id)
    }

    /// The bot's answers to pressed buttons, in order.
    pub fn callback_answers(&self) -> &[CallbackAnswer] {
        &self.callback_answers
    }

    /// Every request so far, in order of arrival.
    pub fn calls(&self) -> &[Call] {
        &self.calls
    }

    /// How often each method was called.
    pub fn requests(&self) -> BTreeMap<String, usize> {
        let mut counts = BTreeMap::new();
        for call in &self.calls {
            *counts.entry(call.method.clone()).or_default() += 1;
        }
        counts
    }

    /// What no correct bot would have asked.
    pub fn violations(&self) -> &[String] {
        &self.violations
    }

    /// The end of the story, for a test that waited in vain.
    fn report(&self) -> String {
        let mut report = String::new();
        for call in self.calls.iter().rev().take(8).rev() {
            let answer = call.answer.map_or("no answer".to_owned(), |code| code.to_string());
            let params = serde_json::to_string(&call.params).unwrap_or_default();
            let _ = write!(report, "\n  {} {params} → {answer}", call.method);
        }
        let _ = write!(report, "\n  violations: {:?}", self.violations);
        report
    }
}

impl FakePlatform {
    /// The bot's messages in a chat, in order, as they read now.
    pub fn sent_to(&self, chat: i64) -> Vec<Message> {
        self.read().sent_to(chat).into_iter().cloned().collect()
    }

    /// The bot's messages anywhere, in order of time.
    pub fn sent(&self) -> Vec<Message> {
        self.read().sent().into_iter().cloned().collect()
    }

    /// Everybody's messages in a chat, in order.
    pub fn said_in(&self, chat: i64) -> Vec<Message> {
        self.read().said_in(chat).cloned().collect()
    }

    /// One message, anybody's.
    pub fn message(&self, chat: i64, message_id: i32) -> Option<Message> {
        self.read().message(chat, message_id).cloned()
    }

    /// The bot's answers to pressed buttons, in order.
    pub fn callback_answers(&self) -> Vec<CallbackAnswer> {
        self.read().callback_answers.clone()
    }

    /// Every request so far, in order of arrival.
    pub fn calls(&self) -> Vec<Call> {
        self.read().calls.clone()
    }

    /// How often each method was called.
    pub fn requests(&self) -> BTreeMap<String, usize> {
        self.read().requests()
    }

    /// How often one method was called, in the schema's spelling.
    pub fn requests_of(&self, method: &str) -> usize {
        let calls = &self.read().calls;
        calls.iter().filter(|call| call.method == method).count()
    }

    /// What no correct bot would have asked: a harness asserts that it is empty.
    pub fn violations(&self) -> Vec<String> {
        self.read().violations.clone()
    }

    /// The violations so far, which then count as seen: for tests of a wrong request.
    pub fn take_violations(&self) -> Vec<String> {
        self.change(|state| std::mem::take(&mut state.violations))
    }

    /// Waits until `check` finds something in the world, and returns it.
    /// `check` is asked after every change and must not call the platform itself.
    ///
    /// # Panics
    ///
    /// After ten seconds, with what the bot did last.
    pub async fn wait_for<T>(&self, what: &str, check: impl FnMut(&State) -> Option<T>) -> T {
        self.wait_within(PATIENCE, what, check).await
    }

    /// As [`Self::wait_for`], with another limit.
    ///
    /// # Panics
    ///
    /// After `limit`, with what the bot did last.
    pub async fn wait_within<T>(
        &self,
        limit: Duration,
        what: &str,
        mut check: impl FnMut(&State) -> Option<T>,
    ) -> T {
        let deadline = Instant::now() + limit;
        let mut changes = self.shared.changes.subscribe();
        loop {
            if let Some(found) = check(&self.read()) {
                return found;
            }
            let left = deadline.saturating_duration_since(Instant::now());
            if left.is_zero() {
                let report = self.read().report();
                panic!("waited {limit:?} in vain for {what}; the bot's last requests:{report}");
            }
            // Out of time: the loop looks once more, then gives up.
            let _ = tokio::time::timeout(left, changes.changed()).await;
        }
    }

    /// Waits until the bot has sent at least `count` messages to a chat.
    ///
    /// # Panics
    ///
    /// After ten seconds.
    pub async fn wait_for_messages(&self, chat: i64, count: usize) -> Vec<Message> {
        let what = format!("{count} messages to chat {chat}");
        self.wait_for(&what, |state| {
            let sent = state.sent_to(chat);
            (sent.len() >= count).then(|| sent.into_iter().cloned().collect())
        })
        .await
    }

    /// Waits until the bot has confirmed an update.
    ///
    /// # Panics
    ///
    /// After ten seconds.
    pub async fn wait_until_confirmed(&self, update_id: i64) {
        let what = format!("update {update_id} to be confirmed");
        self.wait_for(&what, |state| (state.confirmed_offset()? > update_id).then_some(())).await;
    }

    /// Waits until no update is pending.
    ///
    /// # Panics
    ///
    /// After ten seconds.
    pub async fn wait_until_all_confirmed(&self) {
        self.wait_for("all updates to be confirmed", |state| {
            (state.pending_updates() == 0).then_some(())
        })
        .await;
    }
}

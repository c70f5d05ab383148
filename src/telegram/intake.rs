//! Polling for updates. An update is confirmed by the next poll's offset and by nothing else, so
//! one that is not yet kept is told again after a crash.

use std::time::Duration;

use serde::Serialize;
use serde_json::Value;
use teloxide::requests::{JsonRequest, Payload};
use teloxide::{ApiError, RequestError};

use super::incoming::incoming;
use super::refusal::{Refusal, refusal};
use super::{CallError, Myself, Telegram, call};
use crate::messages::{ChatKind, Incoming, UpdateKey};

/// The kinds of update that the bot asks for, in the platform's words.
pub const ALLOWED_UPDATES: [&str; 5] =
    ["message", "callback_query", "inline_query", "my_chat_member", "chat_member"];

/// The longest time that a poll may be asked to wait for something to happen.
pub const LONGEST_POLL: Duration = Duration::from_secs(50);

/// How many updates one poll may bring; the platform's own limit.
const MOST_UPDATES: u8 = 100;

/// How much longer than it was asked to wait the platform may take to answer; the library alone
/// takes ten seconds over a server's error.
const SLOW_ANSWER: Duration = Duration::from_secs(20);

/// One update.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Received {
    /// What identifies it.
    pub key: UpdateKey,
    /// What happened; `None` when the update cannot be read.
    pub incoming: Option<Incoming>,
}

/// Why a poll brought nothing.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PollError {
    /// The platform asks to wait before the next poll.
    #[error("the platform asks to poll again in {} s", .0.as_secs())]
    Wait(Duration),
    /// Another program polls with the same token, or a webhook was set.
    #[error("updates go elsewhere: {0}")]
    Elsewhere(String),
    /// The token was taken back.
    #[error("the platform refused the bot token in SOWBELL_TOKEN")]
    TokenRefused,
    /// The platform did not answer usefully; it may do so later.
    #[error("polling failed: {0}")]
    Failed(String),
}

#[derive(Debug, Clone, Serialize)]
struct GetUpdates {
    #[serde(skip_serializing_if = "Option::is_none")]
    offset: Option<i64>,
    limit: u8,
    /// In seconds.
    timeout: u64,
    allowed_updates: [&'static str; 5],
}

impl Payload for GetUpdates {
    /// Each update as it came, so that one that cannot be read does not hide the others.
    type Output = Vec<Value>;
    const NAME: &'static str = "GetUpdates";
}

impl Telegram {
    /// Waits up to `wait` (whole seconds, at most [`LONGEST_POLL`]) for updates from `offset` on,
    /// and confirms all before it. Without an offset it begins with the earliest unconfirmed one.
    ///
    /// The next offset is the last update's id plus one. At most 100 updates come, in order.
    ///
    /// # Errors
    ///
    /// When the platform refuses or cannot be reached. No error contains the token.
    pub async fn poll(
        &self,
        offset: Option<i64>,
        wait: Duration,
    ) -> Result<Vec<Received>, PollError> {
        let updates = match self.get_updates(offset, MOST_UPDATES, wait).await {
            Err(error) if is_unreadable(&error) => {
                // One of them spoils the whole answer: get past it alone, and keep the others.
                tracing::warn!(why = self.explain(&error), "asking for one update at a time");
                match self.get_updates(offset, 1, Duration::ZERO).await {
                    Err(error) => self.spoiled(&error).ok_or(error),
                    updates => updates,
                }
            }
            updates => updates,
        };
        let updates = updates.map_err(|error| self.poll_error(&error))?;
        let came_some = !updates.is_empty();
        let received: Vec<Received> =
            updates.into_iter().filter_map(|update| receive(update, self.myself())).collect();
        if came_some && received.is_empty() {
            return Err(PollError::Failed("updates without an id".to_owned()));
        }
        Ok(received)
    }

    async fn get_updates(
        &self,
        offset: Option<i64>,
        limit: u8,
        wait: Duration,
    ) -> Result<Vec<Value>, CallError> {
        let timeout = wait.min(LONGEST_POLL);
        let allowed_updates = ALLOWED_UPDATES;
        let payload = GetUpdates { offset, limit, timeout: timeout.as_secs(), allowed_updates };
        call(JsonRequest::new(self.bot.clone(), payload), timeout + SLOW_ANSWER).await
    }

    /// The single update that is not even JSON, by its id alone.
    fn spoiled(&self, error: &CallError) -> Option<Vec<Value>> {
        let CallError::Request(RequestError::InvalidJson { raw, .. }) = error else { return None };
        let id = first_update_id(raw)?;
        tracing::error!(id, why = self.explain(error), "an update cannot be read at all");
        Some(vec![serde_json::json!({ "update_id": id, "message": "unreadable" })])
    }

    fn poll_error(&self, error: &CallError) -> PollError {
        let why = self.explain(error);
        let CallError::Request(request) = error else { return PollError::Failed(why) };
        match request {
            RequestError::Api(ApiError::InvalidToken) => PollError::TokenRefused,
            RequestError::Api(ApiError::TerminatedByOtherGetUpdates | ApiError::CantGetUpdates) => {
                PollError::Elsewhere(why)
            }
            RequestError::Api(ApiError::Unknown(text)) if text.starts_with("Conflict") => {
                PollError::Elsewhere(why)
            }
            request => match refusal(request) {
                Refusal::Wait(wait) => PollError::Wait(wait),
                _ => PollError::Failed(why),
            },
        }
    }
}

/// Whether updates came but could not be taken apart.
fn is_unreadable(error: &CallError) -> bool {
    matches!(
        error,
        CallError::Request(RequestError::InvalidJson { raw, .. })
            if first_update_id(raw).is_some()
    )
}

/// The first id in an answer that may be anything. Within a text of somebody's the quotation
/// marks would stand behind backslashes.
fn first_update_id(raw: &str) -> Option<i64> {
    const NAME: &str = "\"update_id\":";
    let (_, rest) = raw.split_once(NAME)?;
    let rest = rest.trim_start();
    let end = rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len());
    rest.get(..end)?.parse().ok()
}

fn receive(update: Value, me: &Myself) -> Option<Received> {
    let id = update.get("update_id").and_then(Value::as_i64)?;
    let key = UpdateKey { bot: me.id, update: id };
    let incoming = match serde_json::from_value(update) {
        Ok(update) => Some(incoming(update, me).unwrap_or_else(not_asked_for)),
        Err(error) => {
            tracing::error!(id, %error, "an update cannot be read");
            None
        }
    };
    Some(Received { key, incoming })
}

/// An update of a kind that was not asked for: one that waited since an earlier release asked.
fn not_asked_for() -> Incoming {
    let chat = crate::messages::Chat {
        id: 0,
        kind: ChatKind::Private,
        title: String::new(),
        thread: None,
    };
    Incoming { chat, from: super::incoming::nobody(), what: crate::messages::What::Nothing }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::messages::What;
    use crate::telegram::fake::{Fake, TOKEN, no, yes};

    fn said(id: i64, text: &str) -> Value {
        json!({ "message": {
            "message_id": 1, "date": 1, "text": text,
            "chat": { "id": 5, "type": "private", "first_name": "Anna" },
            "from": { "id": 5, "is_bot": false, "first_name": "Anna" },
        }, "update_id": id })
    }

    fn ids(received: &[Received]) -> Vec<(i64, bool)> {
        received.iter().map(|one| (one.key.update, one.incoming.is_some())).collect()
    }

    async fn poll(fake: &Fake) -> Result<Vec<Received>, PollError> {
        fake.telegram().await.poll(Some(10), Duration::from_secs(1)).await
    }

    #[tokio::test]
    async fn a_poll_asks_for_what_is_handled_and_no_more() {
        let fake = Fake::start(|_, _| yes(json!([said(10, "hello")]))).await;
        let received = poll(&fake).await.unwrap();
        assert_eq!(received[0].key, UpdateKey { bot: 77, update: 10 });
        let incoming = received[0].incoming.clone().unwrap();
        assert!(matches!(incoming.what, What::Text { text, .. } if text == "hello"));
        let expected = json!({
            "offset": 10, "limit": 100, "timeout": 1,
            "allowed_updates":
                ["message", "callback_query", "inline_query", "my_chat_member", "chat_member"],
        });
        assert_eq!(fake.last_call(), ("GetUpdates".to_owned(), expected));
    }

    #[tokio::test]
    async fn every_allowed_kind_is_handled_and_nothing_else_is_read() {
        let fake = Fake::start(|_, _| yes(json!([]))).await;
        let me = fake.telegram().await.myself().clone();
        for kind in ALLOWED_UPDATES {
            let unreadable = receive(json!({ "update_id": 1, kind: "?" }), &me).unwrap();
            assert_eq!(unreadable.incoming, None, "{kind} is looked into");
        }
        let other = receive(json!({ "update_id": 1, "edited_message": "?" }), &me).unwrap();
        assert_eq!(other.incoming.unwrap().what, What::Nothing);
    }

    #[tokio::test]
    async fn one_unreadable_update_does_not_hide_the_others() {
        let unreadable = json!({ "update_id": 11, "message": { "chat": 5 } });
        let updates = json!([said(10, "a"), unreadable, said(12, "b"), { "no": "id" }]);
        let fake = Fake::start(move |_, _| yes(updates.clone())).await;
        let received = poll(&fake).await.unwrap();
        assert_eq!(ids(&received), [(10, true), (11, false), (12, true)]);
    }

    #[tokio::test]
    async fn an_update_that_is_not_json_is_passed_over_alone() {
        // A number that no reader can hold spoils the whole answer.
        let body = r#"{"ok":true,"result":[{"update_id":10,"message":{"x":1e999}}]}"#;
        let fake = Fake::start(move |_, _| (200, body.to_owned())).await;
        assert_eq!(ids(&poll(&fake).await.unwrap()), [(10, false)]);
        let limits: Vec<_> = fake.calls("GetUpdates").iter().map(|c| c["limit"].clone()).collect();
        assert_eq!(limits, [100, 1]);
    }

    #[tokio::test]
    async fn refusals_are_told_apart_and_hide_the_token() {
        let other = "Conflict: terminated by other getUpdates request; make sure that only one bot \
                     instance is running";
        let webhook = "Conflict: can't use getUpdates method while webhook is active; use \
                       deleteWebhook to delete the webhook first";
        for text in [other, webhook] {
            let fake = Fake::start(|_, _| no(409, text)).await;
            let error = poll(&fake).await.expect_err("elsewhere");
            assert!(matches!(error, PollError::Elsewhere(_)), "{error}");
        }
        let fake = Fake::start(|_, _| no(401, "Unauthorized")).await;
        assert_eq!(poll(&fake).await, Err(PollError::TokenRefused));
        let fake = Fake::start(|_, _| no(429, "Too Many Requests: retry after 7")).await;
        assert_eq!(poll(&fake).await, Err(PollError::Wait(Duration::from_secs(7))));
        let fake = Fake::start(|_, _| (200, format!("<p>no bot{TOKEN} here</p>"))).await;
        let error = poll(&fake).await.expect_err("a web page");
        assert!(!error.to_string().contains("secret"), "{error}");
        assert!(matches!(error, PollError::Failed(_)));
    }

    #[test]
    fn an_id_inside_a_persons_text_is_not_taken_for_the_updates() {
        let raw = r#"{"text":"\"update_id\":1","update_id": 22,"x":1e999}"#;
        assert_eq!(first_update_id(raw), Some(22));
        assert_eq!(first_update_id("<html>"), None);
    }
}

//! Pressed buttons and the bot's answers to them.

use std::time::{Duration, Instant};

use serde_json::{Value, json};

use super::body::Params;
use super::entities::utf16_len;
use super::refusal::Refusal;
use super::state::State;

/// How long the platform waits for the answer to a pressed button.
const LIFETIME: Duration = Duration::from_secs(30);
const LONGEST_ANSWER: usize = 200;

/// A pressed button that waits for its answer.
#[derive(Clone, Debug)]
pub(crate) struct Query {
    pub(crate) user: i64,
    pub(crate) chat: i64,
    pub(crate) at: Instant,
    pub(crate) expired: bool,
}

/// The bot's answer to a pressed button.
#[derive(Clone, Debug)]
pub struct CallbackAnswer {
    pub query_id: String,
    /// Who pressed.
    pub user: i64,
    /// Where.
    pub chat: i64,
    /// Shown above the chat; none just ends the waiting.
    pub text: Option<String>,
    /// Shown in a box that must be closed.
    pub alert: bool,
    pub url: Option<String>,
    pub at: Instant,
}

impl State {
    pub(crate) fn answer_callback_query(&mut self, params: &Params) -> Result<Value, Refusal> {
        let text = params.text("text").filter(|text| !text.is_empty());
        if let Some(length) = text.map(utf16_len).filter(|length| *length > LONGEST_ANSWER) {
            return Err(Refusal::violation(
                "MESSAGE_TOO_LONG",
                format!("the answer to a button is {length} long"),
            ));
        }
        let id = params.text("callback_query_id").unwrap_or_default();
        let query = self
            .queries
            .get(id)
            .filter(|query| !query.expired && query.at.elapsed() < LIFETIME)
            .ok_or_else(|| {
                Refusal::bad_request(
                    "query is too old and response timeout expired or query ID is invalid",
                )
            })?;
        self.callback_answers.push(CallbackAnswer {
            query_id: id.to_owned(),
            user: query.user,
            chat: query.chat,
            text: text.map(str::to_owned),
            alert: params.flag("show_alert"),
            url: params.text("url").map(str::to_owned),
            at: Instant::now(),
        });
        Ok(json!(true))
    }
}

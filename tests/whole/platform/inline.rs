//! Inline queries: somebody types the bot's name in any chat, and what the bot offers them.

use std::collections::BTreeSet;
use std::time::{Duration, Instant};

use serde_json::{Value, json};

use super::FakePlatform;
use super::body::Params;
use super::entities::utf16_len;
use super::refusal::Refusal;
use super::schema::SCHEMA;
use super::state::State;

/// How long the platform waits for the answer; it does not say, and forgets soon.
const LIFETIME: Duration = Duration::from_secs(15);
const MOST_RESULTS: usize = 50;
const LONGEST_ID: usize = 64;
const LONGEST_TEXT: usize = 4096;

/// What somebody typed, waiting for its answer.
#[derive(Clone, Debug)]
pub(crate) struct InlineQuery {
    user: i64,
    at: Instant,
    answered: bool,
}

/// The bot's answer to an inline query.
#[derive(Clone, Debug)]
pub struct InlineAnswer {
    pub query_id: String,
    /// Who typed.
    pub user: i64,
    pub articles: Vec<InlineArticle>,
    /// The label and the payload of the button above them.
    pub button: Option<(String, String)>,
    pub personal: bool,
    /// In seconds; the platform's own default where the bot gave none.
    pub cache_time: i64,
}

/// A message that may be chosen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InlineArticle {
    pub title: String,
    pub description: String,
    pub text: String,
}

impl State {
    pub(crate) fn answer_inline_query(&mut self, params: &Params) -> Result<Value, Refusal> {
        let id = params.text("inline_query_id").unwrap_or_default();
        let results = params.values.get("results").and_then(Value::as_array);
        let results = results.map(Vec::as_slice).unwrap_or_default();
        if results.len() > MOST_RESULTS {
            return Err(Refusal::violation("RESULTS_TOO_MUCH", "more than 50 results"));
        }
        let articles: Vec<InlineArticle> = results.iter().map(article).collect::<Result<_, _>>()?;
        let ids: BTreeSet<&str> =
            results.iter().filter_map(|result| result["id"].as_str()).collect();
        if ids.len() < results.len() {
            return Err(Refusal::violation("RESULT_ID_DUPLICATE", "two results have one id"));
        }
        let button = params.values.get("button").map(button).transpose()?;
        let query = self
            .inline_queries
            .get_mut(id)
            .filter(|query| !query.answered && query.at.elapsed() < LIFETIME)
            .ok_or_else(|| {
                Refusal::bad_request(
                    "query is too old and response timeout expired or query ID is invalid",
                )
            })?;
        query.answered = true;
        self.inline_answers.push(InlineAnswer {
            query_id: id.to_owned(),
            user: query.user,
            articles,
            button,
            personal: params.flag("is_personal"),
            cache_time: params.integer("cache_time").unwrap_or(300),
        });
        Ok(json!(true))
    }
}

/// The schema knows a result as one of many kinds; this bot's are articles with a text.
fn article(result: &Value) -> Result<InlineArticle, Refusal> {
    let refuse = |why: String| Refusal::violation("RESULT_INVALID", why);
    if result["type"] != "article" {
        return Err(refuse(format!("{result} is no article")));
    }
    let content = &result["input_message_content"];
    let mut faults = SCHEMA.faults_of_value("InlineQueryResultArticle", result);
    faults.extend(SCHEMA.faults_of_value("InputTextMessageContent", content));
    if let Some(fault) = faults.first() {
        return Err(refuse(fault.clone()));
    }
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    let found = InlineArticle {
        title: text(&result["title"]),
        description: text(&result["description"]),
        text: text(&content["message_text"]),
    };
    let id = text(&result["id"]);
    if !(1..=LONGEST_ID).contains(&id.len()) {
        return Err(refuse(format!("{id:?} is no id of 1 to 64 bytes")));
    }
    if found.title.is_empty() || !(1..=LONGEST_TEXT).contains(&utf16_len(&found.text)) {
        return Err(refuse("an article says nothing, or too much".to_owned()));
    }
    Ok(found)
}

fn button(button: &Value) -> Result<(String, String), Refusal> {
    let text = |name: &str| button[name].as_str().unwrap_or_default().to_owned();
    let (label, payload) = (text("text"), text("start_parameter"));
    let plain = |c: char| c.is_ascii_alphanumeric() || c == '_' || c == '-';
    if label.is_empty() || !(1..=64).contains(&payload.len()) || !payload.chars().all(plain) {
        return Err(Refusal::violation("START_PARAM_INVALID", format!("{button} leads nowhere")));
    }
    Ok((label, payload))
}

impl FakePlatform {
    /// Somebody types the bot's name and some words in some chat. Gives the query's id.
    pub fn types_inline(&self, user: i64, words: &str) -> String {
        self.change(|state| {
            let from = state.user(user).json();
            let id = format!("{}", 530_000_000_000_000 + state.fresh_number());
            let query = InlineQuery { user, at: Instant::now(), answered: false };
            state.inline_queries.insert(id.clone(), query);
            let body = json!({
                "id": id,
                "from": from,
                "query": words,
                "offset": "",
                "chat_type": "sender",
            });
            state.updates.push("inline_query", body);
            id
        })
    }

    /// The bot's answers to inline queries, in order.
    pub fn inline_answers(&self) -> Vec<InlineAnswer> {
        self.read().inline_answers.clone()
    }
}

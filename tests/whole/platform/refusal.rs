//! The platform's noes.

use serde_json::{Map, Value, json};

/// An answer with `"ok": false`.
#[derive(Clone, Debug)]
pub(crate) struct Refusal {
    pub(crate) code: u16,
    pub(crate) description: String,
    /// What the bot needs to know to do better, such as `retry_after`.
    pub(crate) parameter: Option<(&'static str, i64)>,
    /// Set when no correct bot would ever ask this: recorded for the test.
    pub(crate) violation: Option<String>,
}

impl Refusal {
    pub(crate) fn new(code: u16, description: impl Into<String>) -> Self {
        Self { code, description: description.into(), parameter: None, violation: None }
    }

    /// 400: what was asked cannot be done in the world as it is.
    pub(crate) fn bad_request(what: &str) -> Self {
        Self::new(400, format!("Bad Request: {what}"))
    }

    /// 403: somebody does not want to hear from the bot.
    pub(crate) fn forbidden(what: &str) -> Self {
        Self::new(403, format!("Forbidden: {what}"))
    }

    /// 400 for a request that breaks a documented limit; `why` is for the test.
    pub(crate) fn violation(what: &str, why: impl Into<String>) -> Self {
        Self { violation: Some(why.into()), ..Self::bad_request(what) }
    }

    /// 429: wait that many seconds.
    pub(crate) fn too_many(retry_after: u32) -> Self {
        Self {
            parameter: Some(("retry_after", i64::from(retry_after))),
            ..Self::new(429, format!("Too Many Requests: retry after {retry_after}"))
        }
    }

    /// 400: the group lives on under another id.
    pub(crate) fn migrated(to: i64) -> Self {
        Self {
            parameter: Some(("migrate_to_chat_id", to)),
            ..Self::bad_request("group chat was upgraded to a supergroup chat")
        }
    }

    pub(crate) fn body(&self) -> Value {
        let mut body = Map::new();
        body.insert("ok".to_owned(), json!(false));
        body.insert("error_code".to_owned(), json!(self.code));
        body.insert("description".to_owned(), json!(self.description));
        if let Some((name, value)) = self.parameter {
            body.insert("parameters".to_owned(), json!({ name: value }));
        }
        Value::Object(body)
    }
}

//! A platform for this module's tests: answers as a closure says and notes what was asked.

use std::collections::HashMap;
use std::sync::{Arc, Mutex};

use axum::Router;
use axum::extract::{Path, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde_json::{Value, json};
use tokio::task::JoinHandle;
use url::Url;

use super::Telegram;

/// The token of every test; a text that contains `secret` leaked it.
pub(super) const TOKEN: &str = "77:secret-that-no-text-may-show";

/// A status and a body.
type Answer = (u16, String);
type Script = Box<dyn FnMut(&str, usize, &Value) -> Option<Answer> + Send>;

struct Shared {
    script: Mutex<Script>,
    calls: Mutex<Vec<(String, Value)>>,
}

/// The platform; dropping it closes the door.
pub(super) struct Fake {
    shared: Arc<Shared>,
    url: Url,
    server: JoinHandle<()>,
}

/// A yes with this result.
#[expect(clippy::needless_pass_by_value, reason = "reads better with json! at the call")]
pub(super) fn yes(result: Value) -> Answer {
    (200, json!({ "ok": true, "result": result }).to_string())
}

/// A no with this sentence.
pub(super) fn no(code: u16, sentence: &str) -> Answer {
    (code, json!({ "ok": false, "error_code": code, "description": sentence }).to_string())
}

impl Fake {
    /// Answers every method with the closure's answer, which is given the method and the body.
    /// While [`Fake::telegram`] connects, it is answered as it should be.
    pub(super) async fn start(
        mut answer: impl FnMut(&str, &Value) -> Answer + Send + 'static,
    ) -> Self {
        Self::serve(Box::new(move |method, _, body| Some(answer(method, body)))).await
    }

    /// Answers with what the closure gives for the nth call of a method, counted from 0, and for
    /// `None` as a platform should.
    pub(super) async fn start_with_me(
        mut answer: impl FnMut(&str, usize) -> Option<Answer> + Send + 'static,
    ) -> Self {
        Self::serve(Box::new(move |method, nth, _| answer(method, nth))).await
    }

    async fn serve(script: Script) -> Self {
        let calls = Mutex::new(Vec::new());
        let shared = Arc::new(Shared { script: Mutex::new(script), calls });
        let listener = tokio::net::TcpListener::bind(("127.0.0.1", 0)).await.unwrap();
        let url = format!("http://{}", listener.local_addr().unwrap()).parse().unwrap();
        let app = Router::new()
            .route("/{bot}/{method}", axum::routing::post(answer))
            .with_state(Arc::clone(&shared));
        let server = tokio::spawn(async move { axum::serve(listener, app).await.unwrap() });
        Self { shared, url, server }
    }

    pub(super) fn url(&self) -> Url {
        self.url.clone()
    }

    /// A connection, made without asking.
    pub(super) async fn telegram(&self) -> Telegram {
        let usual: Script = Box::new(|_, _, _| None);
        let script = std::mem::replace(&mut *self.shared.script.lock().unwrap(), usual);
        let telegram = Telegram::connect(TOKEN, Some(self.url())).await.unwrap();
        *self.shared.script.lock().unwrap() = script;
        telegram
    }

    /// The methods that were asked for, in order.
    pub(super) fn methods(&self) -> Vec<String> {
        self.shared.calls.lock().unwrap().iter().map(|(method, _)| method.clone()).collect()
    }

    /// The bodies of the calls of a method, in order.
    pub(super) fn calls(&self, method: &str) -> Vec<Value> {
        let calls = self.shared.calls.lock().unwrap();
        calls.iter().filter(|(name, _)| name == method).map(|(_, body)| body.clone()).collect()
    }

    pub(super) fn last_call(&self) -> (String, Value) {
        self.shared.calls.lock().unwrap().last().cloned().unwrap()
    }
}

impl Drop for Fake {
    fn drop(&mut self) {
        self.server.abort();
    }
}

async fn answer(
    State(shared): State<Arc<Shared>>,
    Path((bot, method)): Path<(String, String)>,
    body: String,
) -> Response {
    assert_eq!(bot, format!("bot{TOKEN}"));
    let body: Value = serde_json::from_str(&body).unwrap_or(Value::Null);
    let nth = {
        let mut calls = shared.calls.lock().unwrap();
        let mut counts: HashMap<&str, usize> = HashMap::new();
        for (name, _) in calls.iter() {
            *counts.entry(name).or_default() += 1;
        }
        let nth = counts.get(method.as_str()).copied().unwrap_or(0);
        calls.push((method.clone(), body.clone()));
        nth
    };
    let told = (shared.script.lock().unwrap())(&method, nth, &body);
    let (status, text) = told.unwrap_or_else(|| usual(&method));
    let status = StatusCode::from_u16(status).unwrap();
    (status, [(header::CONTENT_TYPE, "application/json")], text).into_response()
}

fn usual(method: &str) -> Answer {
    match method {
        "GetMe" => yes(json!({
            "id": 77, "is_bot": true, "first_name": "Sowbell", "username": "sowbell_bot",
        })),
        _ => yes(json!(true)),
    }
}

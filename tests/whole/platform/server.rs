//! The HTTP side: from a request to its answer, or to the fault that strikes it.

use std::net::TcpListener;
use std::sync::Arc;
use std::time::Instant;

use axum::Router;
use axum::extract::{ConnectInfo, DefaultBodyLimit, Request, State};
use axum::http::StatusCode;
use axum::http::header::CONTENT_TYPE;
use axum::response::{IntoResponse, Response};
use serde_json::{Value, json};
use tokio::sync::oneshot;

use super::Shared;
use super::body::{self, Params};
use super::connection::{CuttableListener, Line};
use super::faults::Fault;
use super::refusal::Refusal;
use super::schema::SCHEMA;
use super::sending::is_new_message;
use super::state::Call;
use super::updates;

/// Serves until `stopped`; leaving drops the runtime, and with it every connection.
pub(crate) fn run(listener: TcpListener, shared: Arc<Shared>, stopped: oneshot::Receiver<()>) {
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build()
        .unwrap_or_else(|error| panic!("the fake platform got no runtime: {error}"));
    runtime.block_on(async move {
        let listener = tokio::net::TcpListener::from_std(listener)
            .unwrap_or_else(|error| panic!("the fake platform could not listen: {error}"));
        let app = Router::new()
            .fallback(answer)
            .layer(DefaultBodyLimit::disable())
            .with_state(shared)
            .into_make_service_with_connect_info::<Line>();
        tokio::select! {
            _ = axum::serve(CuttableListener(listener), app) => {}
            _ = stopped => {}
        }
    });
}

async fn answer(
    State(shared): State<Arc<Shared>>,
    ConnectInfo(line): ConnectInfo<Line>,
    request: Request,
) -> Response {
    let at = Instant::now();
    let Some((token, method)) = token_and_method(request.uri().path()) else {
        return refuse(&shared, "a request", Refusal::new(404, "Not Found"), true);
    };
    if token != shared.read().token {
        let refusal = Refusal::new(401, "Unauthorized");
        return refuse(&shared, &method, refusal, true);
    }
    let Some((method, fields)) = SCHEMA.method(&method) else {
        return refuse(&shared, &method, Refusal::new(404, "Not Found"), true);
    };
    let params = match body::read(request, fields).await {
        Ok(params) => params,
        Err(why) => {
            let refusal = Refusal::violation("can't parse the request", why);
            return refuse(&shared, method, refusal, false);
        }
    };
    let mut wrong = SCHEMA.faults_of_call(fields, &params.values);
    let strays = params.strays();
    wrong.extend(strays.iter().map(|name| format!("`{name}` is an unknown file")));

    let call = Call { method: method.to_owned(), params: params.values.clone(), at, answer: None };
    let (number, fault) = shared.change(|state| {
        for wrong in &wrong {
            state.violations.push(format!("{method}: {wrong}"));
        }
        let fault = state.fault_of(&call);
        state.calls.push(call);
        (state.calls.len() - 1, fault)
    });
    let result = match wrong.first() {
        Some(wrong) => Err(Refusal::bad_request(wrong)),
        None => strike(&shared, &line, method, &params, fault).await,
    };
    let response = response_to(&result);
    shared.change(|state| {
        if let Some(call) = state.calls.get_mut(number)
            && !line.is_cut()
        {
            call.answer = Some(response.status().as_u16());
        }
    });
    response
}

/// Answers as usual or, if a fault strikes, as the fault demands.
async fn strike(
    shared: &Arc<Shared>,
    line: &Line,
    method: &str,
    params: &Params,
    fault: Option<Fault>,
) -> Result<Value, Refusal> {
    match fault {
        None => perform(shared, method, params).await,
        Some(Fault::TooManyRequests { retry_after }) => Err(Refusal::too_many(retry_after)),
        Some(Fault::ServerError) => Err(Refusal::new(500, "Internal Server Error")),
        Some(Fault::Refuse { code, description }) => Err(Refusal::new(code, description)),
        Some(Fault::AnswerLate(after)) => {
            let result = perform(shared, method, params).await;
            tokio::time::sleep(after).await;
            result
        }
        Some(Fault::AcceptThenSilence) => {
            let _ = perform(shared, method, params).await;
            std::future::pending().await
        }
        Some(Fault::AcceptThenCut) => {
            let result = perform(shared, method, params).await;
            line.cut();
            result
        }
        Some(Fault::CutBefore) => {
            line.cut();
            Ok(Value::Null)
        }
    }
}

async fn perform(shared: &Arc<Shared>, method: &str, params: &Params) -> Result<Value, Refusal> {
    if method == "getUpdates" {
        return updates::poll(shared, params).await;
    }
    shared.change(|state| {
        let result = state.perform(method, params);
        if let Err(Refusal { violation: Some(why), .. }) = &result {
            state.violations.push(format!("{method}: {why}"));
        }
        result
    })
}

impl super::State {
    /// The fault that strikes a request: one that the test asked for, or the
    /// platform's own limits.
    fn fault_of(&mut self, call: &Call) -> Option<Fault> {
        let mut fault = self.faults.decide(call);
        if fault.is_none()
            && is_new_message(&call.method)
            && let Some(chat) = call.chat()
            && let Err(retry_after) = self.recent.admit(chat, call.at)
        {
            fault = Some(Fault::TooManyRequests { retry_after });
        }
        if let Some(Fault::TooManyRequests { retry_after }) = fault {
            self.faults.told_to_wait(call, retry_after);
        }
        fault
    }
}

/// `/bot<TOKEN>/<Method>`, taken apart.
fn token_and_method(path: &str) -> Option<(String, String)> {
    let (token, method) = path.strip_prefix("/bot")?.split_once('/')?;
    Some((token.replace("%3A", ":"), method.to_owned()))
}

fn refuse(shared: &Arc<Shared>, method: &str, refusal: Refusal, strange: bool) -> Response {
    let why = refusal.violation.clone();
    if let Some(why) = why.or(strange.then(|| refusal.description.clone())) {
        shared.change(|state| state.violations.push(format!("{method}: {why}")));
    }
    response_to(&Err(refusal))
}

fn response_to(result: &Result<Value, Refusal>) -> Response {
    let (code, body) = match result {
        Ok(value) => (200, json!({ "ok": true, "result": value })),
        Err(refusal) => (refusal.code, refusal.body()),
    };
    let status = StatusCode::from_u16(code).unwrap_or(StatusCode::INTERNAL_SERVER_ERROR);
    let headers = [(CONTENT_TYPE, "application/json")];
    (status, headers, body.to_string()).into_response()
}

//! A request's parameters, in whichever of the four ways they came.

use std::collections::BTreeMap;

use axum::body::to_bytes;
use axum::extract::{FromRequest, Multipart, Request};
use axum::http::header::CONTENT_TYPE;
use serde_json::{Map, Value};
use url::form_urlencoded;

use super::schema::{Fields, value_of_text};

/// More than the largest picture the platform takes.
const LARGEST_BODY: usize = 24 * 1024 * 1024;

/// A file that came with a request.
#[derive(Clone, Debug)]
pub(crate) struct Upload {
    pub(crate) name: String,
    pub(crate) bytes: Vec<u8>,
}

/// What a request asks with.
#[derive(Clone, Debug, Default)]
pub(crate) struct Params {
    pub(crate) values: Map<String, Value>,
    pub(crate) files: BTreeMap<String, Upload>,
}

impl Params {
    pub(crate) fn text(&self, name: &str) -> Option<&str> {
        self.values.get(name).and_then(Value::as_str)
    }

    pub(crate) fn integer(&self, name: &str) -> Option<i64> {
        self.values.get(name).and_then(Value::as_i64)
    }

    pub(crate) fn message_id(&self, name: &str) -> Option<i32> {
        self.integer(name).and_then(|id| i32::try_from(id).ok())
    }

    pub(crate) fn flag(&self, name: &str) -> bool {
        self.values.get(name).and_then(Value::as_bool) == Some(true)
    }
}

/// Reads the query string and the body; a form's text is typed by `fields`.
///
/// # Errors
///
/// A sentence about what could not be read.
pub(crate) async fn read(request: Request, fields: &Fields) -> Result<Params, String> {
    let mut params = Params::default();
    if let Some(query) = request.uri().query() {
        params.add_form(query.as_bytes(), fields);
    }
    let content_type = request
        .headers()
        .get(CONTENT_TYPE)
        .and_then(|value| value.to_str().ok())
        .unwrap_or_default()
        .to_ascii_lowercase();
    if content_type.starts_with("multipart/form-data") {
        params.add_multipart(request, fields).await?;
        return Ok(params);
    }
    let bytes = to_bytes(request.into_body(), LARGEST_BODY)
        .await
        .map_err(|error| format!("the body could not be read: {error}"))?;
    if bytes.is_empty() {
        return Ok(params);
    }
    if content_type.starts_with("application/x-www-form-urlencoded") {
        params.add_form(&bytes, fields);
    } else if content_type.starts_with("application/json") {
        match serde_json::from_slice(&bytes) {
            Ok(Value::Object(values)) => params.values.extend(values),
            // The library sends `null` for methods without parameters.
            Ok(Value::Null) => {}
            Ok(other) => return Err(format!("the body is not an object: {other}")),
            Err(error) => return Err(format!("the body is not JSON: {error}")),
        }
    } else {
        return Err(format!("a body of type {content_type:?} is not understood"));
    }
    Ok(params)
}

impl Params {
    fn add_form(&mut self, form: &[u8], fields: &Fields) {
        for (name, text) in form_urlencoded::parse(form) {
            self.add_text(&name, &text, fields);
        }
    }

    fn add_text(&mut self, name: &str, text: &str, fields: &Fields) {
        let kind = fields.get(name).map_or("String", |field| &field.kind);
        self.values.insert(name.to_owned(), value_of_text(kind, text));
    }

    async fn add_multipart(&mut self, request: Request, fields: &Fields) -> Result<(), String> {
        let unreadable = |error: &dyn std::fmt::Display| format!("the form is broken: {error}");
        let mut form =
            Multipart::from_request(request, &()).await.map_err(|error| unreadable(&error))?;
        while let Some(part) = form.next_field().await.map_err(|e| unreadable(&e))? {
            let name = part.name().unwrap_or_default().to_owned();
            let file_name = part.file_name().map(str::to_owned);
            let bytes = part.bytes().await.map_err(|error| unreadable(&error))?;
            let known = fields.contains_key(&name);
            if file_name.is_some() || !known {
                if known {
                    let attached = Value::from(format!("attach://{name}"));
                    self.values.insert(name.clone(), attached);
                }
                let upload = Upload { name: file_name.unwrap_or_default(), bytes: bytes.to_vec() };
                self.files.insert(name, upload);
            } else {
                let text = String::from_utf8(bytes.to_vec())
                    .map_err(|_| format!("`{name}` is not UTF-8"))?;
                self.add_text(&name, &text, fields);
            }
        }
        Ok(())
    }

    /// Parts of a form that no parameter speaks of.
    pub(crate) fn strays(&self) -> Vec<String> {
        let asked = Value::Object(self.values.clone()).to_string();
        self.files
            .keys()
            .filter(|name| !asked.contains(&format!("attach://{name}\"")))
            .cloned()
            .collect()
    }
}

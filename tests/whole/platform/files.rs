//! Files that the bot sends.

use serde_json::{Value, json};

use super::body::Params;
use super::message::SentFile;
use super::refusal::Refusal;
use super::state::State;

const LARGEST_FILE: usize = 50 * 1024 * 1024;

impl State {
    pub(crate) fn send_document(&mut self, params: &Params) -> Result<Value, Refusal> {
        let mut message = self.addressed(params)?;
        self.caption(&mut message, params)?;
        let named = params.text("document").unwrap_or_default();
        let upload = named
            .strip_prefix("attach://")
            .and_then(|part| params.files.get(part))
            .ok_or_else(|| Refusal::violation("there is no document in the request", "no file"))?;
        if upload.bytes.is_empty() || upload.bytes.len() > LARGEST_FILE {
            return Err(Refusal::violation(
                "file must be non-empty",
                "the file is empty or too large",
            ));
        }
        message.file = Some(SentFile { name: upload.name.clone(), bytes: upload.bytes.clone() });
        Ok(self.deliver(message))
    }
}

impl SentFile {
    pub(crate) fn json(&self) -> Value {
        json!({
            "file_id": format!("file-{}", self.name),
            "file_unique_id": format!("unique-{}", self.name),
            "file_name": self.name,
            "mime_type": "application/json",
            "file_size": self.bytes.len(),
        })
    }
}

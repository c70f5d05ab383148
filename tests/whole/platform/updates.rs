//! The queue of updates, and `getUpdates`.

use std::collections::{BTreeSet, VecDeque};
use std::sync::Arc;
use std::time::Duration;

use serde_json::{Map, Value, json};
use tokio::time::{Instant, timeout_at};

use super::body::Params;
use super::refusal::Refusal;
use super::state::State;
use super::{FakePlatform, Shared};

/// No test should wait longer for nothing.
const LONGEST_POLL: Duration = Duration::from_secs(5);

/// Kinds that are only sent when they are asked for by name.
const NOT_BY_DEFAULT: [&str; 3] = ["chat_member", "message_reaction", "message_reaction_count"];

/// Updates that the bot has not confirmed yet.
pub(crate) struct Updates {
    next_id: i64,
    pending: VecDeque<(i64, Value)>,
    allowed: Option<BTreeSet<String>>,
    confirmed: Option<i64>,
    /// Which poll is the latest: it ends the one before.
    turn: u64,
}

impl Default for Updates {
    fn default() -> Self {
        Self {
            next_id: 830_000_001,
            pending: VecDeque::new(),
            allowed: None,
            confirmed: None,
            turn: 0,
        }
    }
}

impl Updates {
    fn allows(&self, kind: &str) -> bool {
        match &self.allowed {
            Some(allowed) => allowed.contains(kind),
            None => !NOT_BY_DEFAULT.contains(&kind),
        }
    }

    /// Queues an update if its kind is allowed now. What was queued under an
    /// earlier setting stays, as on the platform.
    pub(crate) fn push(&mut self, kind: &str, body: Value) -> Option<i64> {
        self.allows(kind).then(|| self.push_any(kind, body))
    }

    fn push_any(&mut self, kind: &str, body: Value) -> i64 {
        let id = self.next_id;
        self.next_id += 1;
        // The id comes first, as the platform writes it.
        let mut update = Map::new();
        update.insert("update_id".to_owned(), json!(id));
        update.insert(kind.to_owned(), body);
        self.pending.push_back((id, Value::Object(update)));
        id
    }

    /// An absent list leaves the setting; an empty one returns to the default.
    fn set_allowed(&mut self, list: Option<&Vec<Value>>) {
        if let Some(kinds) = list {
            let kinds: BTreeSet<String> =
                kinds.iter().filter_map(Value::as_str).map(str::to_owned).collect();
            self.allowed = (!kinds.is_empty()).then_some(kinds);
        }
    }

    fn confirm_below(&mut self, offset: i64) {
        if offset < 0 {
            let keep = usize::try_from(-offset).unwrap_or(usize::MAX);
            let drop = self.pending.len().saturating_sub(keep);
            self.pending.drain(..drop);
        } else if offset > 0 && offset <= self.next_id + 10 {
            self.pending.retain(|(id, _)| *id >= offset);
            self.confirmed = Some(offset);
        }
        // An offset far ahead of the sequence belongs to an earlier one: the
        // platform then answers from the head and confirms nothing.
    }

    fn batch(&self, limit: usize) -> Vec<Value> {
        let updates = self.pending.iter().take(limit);
        updates.map(|(_, update)| update.clone()).collect()
    }

    pub(crate) fn forget_pending(&mut self) {
        self.pending.clear();
    }
}

/// Answers `getUpdates`, waiting for an update if there is none.
pub(crate) async fn poll(shared: &Arc<Shared>, params: &Params) -> Result<Value, Refusal> {
    let offset = params.integer("offset").unwrap_or(0);
    let limit = params.integer("limit").unwrap_or(100);
    let limit = usize::try_from(limit).map_or(100, |limit| limit.clamp(1, 100));
    let seconds = params.integer("timeout").unwrap_or(0);
    let wait = Duration::from_secs(u64::try_from(seconds).unwrap_or(0)).min(LONGEST_POLL);
    let deadline = Instant::now() + wait;

    let turn = shared.change(|state| {
        let allowed = params.values.get("allowed_updates");
        state.updates.set_allowed(allowed.and_then(Value::as_array));
        state.updates.confirm_below(offset);
        state.updates.turn += 1;
        state.updates.turn
    });
    let mut changes = shared.changes.subscribe();
    loop {
        let batch = {
            let state = shared.read();
            if state.updates.turn != turn {
                return Err(Refusal::new(
                    409,
                    "Conflict: terminated by other getUpdates request; \
                     make sure that only one bot instance is running",
                ));
            }
            state.updates.batch(limit)
        };
        if !batch.is_empty() {
            return Ok(Value::Array(batch));
        }
        if !matches!(timeout_at(deadline, changes.changed()).await, Ok(Ok(()))) {
            return Ok(json!([]));
        }
    }
}

impl State {
    /// Up to where the bot has confirmed: every update below is done with.
    pub fn confirmed_offset(&self) -> Option<i64> {
        self.updates.confirmed
    }

    /// How many updates wait for the bot.
    pub fn pending_updates(&self) -> usize {
        self.updates.pending.len()
    }

    /// The kinds that the bot asked for; none while it has not said.
    pub fn allowed_updates(&self) -> Option<&BTreeSet<String>> {
        self.updates.allowed.as_ref()
    }
}

impl FakePlatform {
    /// Up to where the bot has confirmed: every update below is done with.
    pub fn confirmed_offset(&self) -> Option<i64> {
        self.read().confirmed_offset()
    }

    /// How many updates wait for the bot.
    pub fn pending_updates(&self) -> usize {
        self.read().pending_updates()
    }

    /// The id of the next update; later ones count on from there. Ids restart
    /// anywhere after a week without updates, hence only while none is pending.
    ///
    /// # Panics
    ///
    /// When an update is pending.
    pub fn set_next_update_id(&self, id: i64) {
        self.change(|state| {
            assert!(
                state.updates.pending.is_empty(),
                "update ids restart only while no update waits for the bot"
            );
            state.updates.next_id = id;
        });
    }

    /// Queues any update, allowed or not, known to the schema or not. An
    /// `update_id` is given to it, and returned.
    ///
    /// # Panics
    ///
    /// When it is not an object with one field beside `update_id`.
    pub fn raw_update(&self, update: Value) -> i64 {
        let mut fields = match update {
            Value::Object(fields) => fields,
            other => panic!("an update is an object, not {other}"),
        };
        fields.shift_remove("update_id");
        let Some((kind, body)) = fields.into_iter().next() else {
            panic!("an update says something");
        };
        self.change(|state| state.updates.push_any(&kind, body))
    }
}

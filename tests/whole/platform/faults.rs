//! The ways the platform can misbehave on purpose.

use std::collections::BTreeMap;
use std::time::{Duration, Instant};

use super::FakePlatform;
use super::state::{Call, State};

/// What happens to one request instead of the usual.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// 429, with the seconds to wait. Not processed.
    TooManyRequests { retry_after: u32 },
    /// 500. Not processed.
    ServerError,
    /// This error and sentence, such as `(403, "Forbidden: user is deactivated")`. Not processed.
    Refuse { code: u16, description: String },
    /// Processed at once, answered after this long.
    AnswerLate(Duration),
    /// Processed, never answered: the client waits until it loses patience.
    AcceptThenSilence,
    /// Processed, and the connection dropped instead of an answer.
    AcceptThenCut,
    /// The connection dropped before anything was done.
    CutBefore,
}

/// Which requests a scripted fault is for. `getUpdates` must be named to match.
#[derive(Clone, Debug, Default)]
pub struct Which {
    method: Option<String>,
    chat: Option<i64>,
    text: Option<String>,
}

impl Which {
    /// Any request but `getUpdates`.
    pub fn any() -> Self {
        Self::default()
    }

    /// Requests of this method, in any case.
    pub fn method(name: &str) -> Self {
        Self { method: Some(name.to_owned()), ..Self::default() }
    }

    /// Only those to this chat.
    pub fn in_chat(mut self, chat: i64) -> Self {
        self.chat = Some(chat);
        self
    }

    /// Only those whose text or caption, as sent, contains this.
    pub fn containing(mut self, text: &str) -> Self {
        self.text = Some(text.to_owned());
        self
    }

    fn matches(&self, call: &Call) -> bool {
        let method = match &self.method {
            Some(name) => name.eq_ignore_ascii_case(&call.method),
            None => call.method != "getUpdates",
        };
        let text = || call.text_param("text").or(call.text_param("caption"));
        method
            && self.chat.is_none_or(|chat| call.chat() == Some(chat))
            && self
                .text
                .as_ref()
                .is_none_or(|wanted| text().is_some_and(|text| text.contains(wanted)))
    }
}

/// A request that came although the bot had been told to wait.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct EarlyCall {
    pub method: String,
    /// The chat that was limited; none when everything was.
    pub chat: Option<i64>,
    pub early_by: Duration,
}

type Hook = Box<dyn FnMut(&Call) -> Option<Fault> + Send>;

/// The faults in force and the waits that were imposed.
#[derive(Default)]
pub(crate) struct Faults {
    hook: Option<Hook>,
    script: Vec<(Which, usize, Fault)>,
    floods: BTreeMap<Option<i64>, Instant>,
    waits: BTreeMap<Option<i64>, (Instant, Instant)>,
    early: Vec<EarlyCall>,
}

/// Requests under way when a wait is imposed are nobody's fault.
const UNDER_WAY: Duration = Duration::from_millis(250);

impl Faults {
    /// The fault for this request, if any: floods, then the script, then the hook.
    pub(crate) fn decide(&mut self, call: &Call) -> Option<Fault> {
        self.note_if_early(call);
        self.flooded(call)
            .or_else(|| self.scripted(call))
            .or_else(|| self.hook.as_mut().and_then(|hook| hook(call)))
    }

    /// Remembers that the caller is told to wait: for the chat that the
    /// request is about, or for everything if it is about none.
    pub(crate) fn told_to_wait(&mut self, call: &Call, retry_after: u32) {
        let until = call.at + Duration::from_secs(u64::from(retry_after));
        self.waits.insert(call.chat(), (call.at, until));
    }

    fn note_if_early(&mut self, call: &Call) {
        for scope in scopes(call) {
            if let Some(&(told, until)) = self.waits.get(&scope)
                && call.at > told + UNDER_WAY
                && call.at < until
            {
                self.early.push(EarlyCall {
                    method: call.method.clone(),
                    chat: scope,
                    early_by: until - call.at,
                });
            }
        }
    }

    fn flooded(&self, call: &Call) -> Option<Fault> {
        for scope in scopes(call) {
            let left = self
                .floods
                .get(&scope)
                .and_then(|until| until.checked_duration_since(call.at))
                .filter(|left| !left.is_zero());
            if let Some(left) = left {
                let retry_after = whole_seconds(left);
                return Some(Fault::TooManyRequests { retry_after });
            }
        }
        None
    }

    fn scripted(&mut self, call: &Call) -> Option<Fault> {
        let (_, times, fault) =
            self.script.iter_mut().find(|(which, times, _)| *times > 0 && which.matches(call))?;
        *times -= 1;
        Some(fault.clone())
    }
}

/// The limits a request can run into; reading is not limited.
fn scopes(call: &Call) -> Vec<Option<i64>> {
    if call.method.starts_with("get") {
        return Vec::new();
    }
    match call.chat() {
        Some(chat) => vec![None, Some(chat)],
        None => vec![None],
    }
}

/// The platform speaks of waits in whole seconds, and never of none.
pub(crate) fn whole_seconds(left: Duration) -> u32 {
    let seconds = left.as_secs() + u64::from(left.subsec_nanos() > 0);
    u32::try_from(seconds.max(1)).unwrap_or(u32::MAX)
}

impl State {
    /// Requests that came before the end of a wait that had been imposed.
    pub fn early_calls(&self) -> &[EarlyCall] {
        &self.faults.early
    }

    /// How many of the scripted faults have not struck yet.
    pub fn faults_left(&self) -> usize {
        self.faults.script.iter().map(|(_, times, _)| times).sum()
    }
}

impl FakePlatform {
    /// The next `times` requests that match suffer this.
    pub fn fail(&self, which: Which, times: usize, fault: Fault) {
        self.change(|state| state.faults.script.push((which, times, fault)));
    }

    /// Asks `hook` about every request that no scripted fault is for. It must
    /// not call back into the platform, which is locked meanwhile.
    pub fn on_request(&self, hook: impl FnMut(&Call) -> Option<Fault> + Send + 'static) {
        self.change(|state| state.faults.hook = Some(Box::new(hook)));
    }

    /// From now, for this many seconds, everything sent to `chat` (or, with
    /// `None`, anywhere) is answered 429 with the seconds that are left.
    pub fn flood(&self, chat: Option<i64>, seconds: u32) {
        let until = Instant::now() + Duration::from_secs(u64::from(seconds));
        self.change(|state| state.faults.floods.insert(chat, until));
    }

    /// Ends every fault: script, hook and floods.
    pub fn behave(&self) {
        self.change(|state| {
            state.faults.hook = None;
            state.faults.script.clear();
            state.faults.floods.clear();
        });
    }
}

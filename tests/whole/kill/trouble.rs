//! When the program is killed, and what goes wrong between it and the platform meanwhile.

use std::collections::BTreeSet;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use rand::rngs::StdRng;
use rand::{Rng, SeedableRng};
use tokio::sync::watch;

use crate::platform::{FakePlatform, Fault};

/// The moment of a kill.
#[derive(Debug, Clone)]
pub enum Moment {
    /// So long after the start: in the middle of anything, the start among it.
    After(Duration),
    /// So long after the n-th request of a kind since the start, which is answered late: with
    /// sends, a message is under way; with polls, updates are being taken in.
    Request { method: &'static str, nth: u32, then: Duration },
}

/// How long a request is waited for; with nothing to do, the program makes none.
const PATIENCE: Duration = Duration::from_secs(2);

impl Moment {
    /// Any moment.
    pub fn any(chance: &mut StdRng) -> Self {
        let soon = |chance: &mut StdRng| Duration::from_micros(chance.random_range(0..15_000));
        match chance.random_range(0..10) {
            0..=2 => Self::After(Duration::from_millis(chance.random_range(0..500))),
            3..=4 => {
                let nth = chance.random_range(1..=4);
                Self::Request { method: "getUpdates", nth, then: soon(chance) }
            }
            5 => {
                let nth = chance.random_range(1..=4);
                Self::Request { method: "answerCallbackQuery", nth, then: soon(chance) }
            }
            _ => {
                let nth = chance.random_range(1..=60);
                Self::Request { method: "sendMessage", nth, then: soon(chance) }
            }
        }
    }
}

impl Moment {
    /// A moment while reminders are made and sent.
    pub fn of_a_morning(chance: &mut StdRng) -> Self {
        if chance.random_bool(0.3) {
            return Self::After(Duration::from_millis(chance.random_range(50..400)));
        }
        let nth = chance.random_range(1..=30);
        let then = Duration::from_micros(chance.random_range(0..15_000));
        Self::Request { method: "sendMessage", nth, then }
    }
}

/// The request at which the next kill is due: its method, and how many more of it.
type Trap = Option<(&'static str, u32)>;

/// Springs at a request, and strikes others with faults.
pub struct Trouble {
    trap: Arc<Mutex<Trap>>,
    sprung: watch::Sender<bool>,
    lost: Arc<Mutex<BTreeSet<Instant>>>,
}

impl Trouble {
    /// From now on this part of all requests goes wrong, in ways that `seed` decides.
    pub fn with(platform: &FakePlatform, seed: u64, part: f64) -> Self {
        let sprung = watch::Sender::new(false);
        let trouble = Self { trap: Arc::default(), sprung, lost: Arc::default() };
        let (trap, sprung) = (Arc::clone(&trouble.trap), trouble.sprung.clone());
        let lost = Arc::clone(&trouble.lost);
        let mut chance = StdRng::seed_from_u64(seed);
        platform.on_request(move |call| {
            if springs(&trap, &call.method) {
                sprung.send_replace(true);
                let late = chance.random_bool(0.7);
                return late.then_some(Fault::AnswerLate(Duration::from_millis(100)));
            }
            let fault = chance.random_bool(part).then(|| fault(&call.method, &mut chance))?;
            if matches!(fault, Fault::AcceptThenCut | Fault::AcceptThenSilence) {
                lock(&lost).insert(call.at);
            }
            Some(fault)
        });
        trouble
    }

    /// When the requests came that were done but never answered.
    pub fn lost_answers(&self) -> BTreeSet<Instant> {
        lock(&self.lost).clone()
    }

    /// Ends at `moment`; counts requests from now, not from the first poll of what this gives.
    pub fn until(&self, moment: Moment) -> impl Future<Output = ()> + use<> {
        let waits_for = match moment {
            Moment::After(_) => None,
            Moment::Request { method, nth, .. } => Some((method, nth)),
        };
        *lock(&self.trap) = waits_for;
        self.sprung.send_replace(false);
        let mut sprung = self.sprung.subscribe();
        async move {
            match moment {
                Moment::After(length) => tokio::time::sleep(length).await,
                Moment::Request { then, .. } => {
                    // Where no such request comes, any moment will do.
                    let _ = tokio::time::timeout(PATIENCE, sprung.wait_for(|sprung| *sprung)).await;
                    tokio::time::sleep(then).await;
                }
            }
        }
    }
}

fn lock<T>(shared: &Mutex<T>) -> MutexGuard<'_, T> {
    shared.lock().unwrap_or_else(PoisonError::into_inner)
}

fn springs(trap: &Mutex<Trap>, called: &str) -> bool {
    let mut trap = lock(trap);
    let Some((_, left)) = trap.as_mut().filter(|(method, _)| *method == called) else {
        return false;
    };
    *left -= 1;
    let springs = *left == 0;
    if springs {
        *trap = None;
    }
    springs
}

fn fault(method: &str, chance: &mut StdRng) -> Fault {
    if method == "getUpdates" {
        // Cut after it was processed, it has confirmed what came before; the answer is lost.
        return if chance.random_bool(0.5) { Fault::AcceptThenCut } else { Fault::CutBefore };
    }
    match chance.random_range(0..100) {
        0..30 => Fault::CutBefore,
        30..60 => Fault::AcceptThenCut,
        60..90 => Fault::AnswerLate(Duration::from_millis(chance.random_range(10..150))),
        90..95 => Fault::TooManyRequests { retry_after: 1 },
        95..97 => Fault::ServerError,
        _ => Fault::AcceptThenSilence,
    }
}

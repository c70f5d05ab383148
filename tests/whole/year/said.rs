//! What people have said of their jobs and of themselves.

use std::collections::BTreeSet;

use sowbell::chat::{Facts, Knowledge};
use sowbell::club::as_grown;
use sowbell::messages::{ChatKind, Incoming, JobAnswer, Press, What};
use sowbell::planning::JobKey;
use sowbell::reminders::job_of;

/// What people have said, as the test understands it apart from the program.
#[derive(Debug, Default)]
pub struct Said {
    gone: BTreeSet<i64>,
    done: BTreeSet<(i64, JobKey)>,
}

impl Said {
    /// Whether this person can not be written to.
    pub fn is_gone(&self, user: i64) -> bool {
        self.gone.contains(&user)
    }

    /// Whether this person said last that the job is done.
    pub fn is_done(&self, user: i64, key: &JobKey) -> bool {
        self.done.contains(&(user, key.clone()))
    }

    /// This person can be written to, or not.
    pub fn is_there(&mut self, user: i64, there: bool) {
        if there {
            self.gone.remove(&user);
        } else {
            self.gone.insert(user);
        }
    }

    /// The bot has heard this; `facts` are from before.
    pub fn heard(&mut self, incoming: &Incoming, facts: &Facts, knowledge: &Knowledge) {
        let user = incoming.from.user;
        if incoming.chat.kind != ChatKind::Private {
            // What was said in private can be taken back in the group as well.
            self.done.retain(|(of, _)| *of != user);
            return;
        }
        match &incoming.what {
            What::Blocked => self.is_there(user, false),
            What::Unblocked => self.is_there(user, true),
            What::Text { .. } => {
                self.is_there(user, true);
                // It may take anything back.
                self.done.retain(|(of, _)| *of != user);
            }
            What::Pressed { data, .. } => match data.parse() {
                Ok(Press::Job(key, JobAnswer::Done)) => {
                    let garden = facts.settings().garden.is;
                    let own = as_grown(&knowledge.catalogue, &facts.varieties);
                    let catalogue = own.as_ref().unwrap_or(&knowledge.catalogue);
                    let known = job_of(&key, &facts.sowings, catalogue, garden);
                    if known.is_some() {
                        self.done.insert((user, key));
                    }
                }
                Ok(Press::Job(key, JobAnswer::Later | JobAnswer::Skip)) => {
                    self.done.remove(&(user, key));
                }
                _ => self.done.retain(|(of, _)| *of != user),
            },
            _ => {}
        }
    }
}

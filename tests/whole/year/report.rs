//! What is simulated, and how it went.

use std::collections::BTreeMap;
use std::fmt;

/// What is to be simulated.
#[derive(Debug, Clone, Copy)]
pub struct Plan {
    pub seed: u64,
    pub members: usize,
    pub days: i64,
}

/// How a year went.
#[derive(Debug, Clone)]
pub struct Report {
    pub plan: Plan,
    pub accepted: usize,
    pub reminders: usize,
    pub messages: usize,
    pub handed_over: usize,
    pub by_fuse: BTreeMap<&'static str, usize>,
    pub over_kills: usize,
    pub over_lost_answers: usize,
    pub days_audited: usize,
    pub jobs_audited: usize,
    pub lists_told: usize,
    /// How groups became supergroups, by the way in which the program learned of it.
    pub moves: BTreeMap<usize, usize>,
    pub refusals: usize,
    pub weeks: usize,
    pub comparisons: usize,
    pub digest: u64,
}

impl Report {
    pub fn kills(&self) -> usize {
        self.by_fuse.values().sum()
    }

    pub fn repeats(&self) -> usize {
        self.over_kills + self.over_lost_answers
    }
}

impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Plan { seed, members, days } = self.plan;
        write!(
            f,
            "SOWBELL_SEED={seed}: {members} members, {days} days; {} updates accepted; {} messages \
             came, {} of them reminders, {} tries in all; {} kills {:?}; {} came twice over kills \
             and {} over lost answers; {} days audited with {} jobs; {} times a list was told \
             of; {} club weeks came; groups moved {:?}; {} were refused; {} comparisons with the replay; digest \
             {:016x}",
            self.accepted,
            self.messages,
            self.reminders,
            self.handed_over,
            self.kills(),
            self.by_fuse,
            self.over_kills,
            self.over_lost_answers,
            self.days_audited,
            self.jobs_audited,
            self.lists_told,
            self.weeks,
            self.moves,
            self.refusals,
            self.comparisons,
            self.digest,
        )
    }
}

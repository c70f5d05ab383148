//! The one path of an update: load the facts, decide, and keep the changes and the answers in one
//! transaction together with the update's id.

use std::sync::Arc;

use chrono::{DateTime, TimeDelta, Utc};
use tokio::sync::Notify;

use super::mornings::{MakeMorning, morning};
use super::unharmed::unharmed;
use crate::chat::{Change, Facts, Knowledge, Outcome, apology, decide, needs};
use crate::club::{LanguageTag, Member};
use crate::messages::{ChatKind, Incoming, Outgoing, Priority, UpdateKey, What};
use crate::store::{Store, StoreError, Work};

/// How long the answer to a press is worth sending; the platform forgets a press within minutes.
const PRESS_ANSWER_LIFE: TimeDelta = TimeDelta::seconds(60);

/// How long an inline answer is worth sending. The platform does not say when it forgets a query;
/// whoever types has typed on by then.
const INLINE_ANSWER_LIFE: TimeDelta = TimeDelta::seconds(10);

/// An update as it came: its key and, where it could be read, what it says.
#[derive(Debug, Clone)]
pub struct Update {
    /// Identifies it.
    pub key: UpdateKey,
    /// What happened; `None` for one that could not be read.
    pub incoming: Option<Incoming>,
}

/// Decides what a message leads to; [`decide`] is the one of this program.
pub type Decide = fn(&Knowledge, &Incoming, &Facts) -> Outcome;

/// The path that both faces share.
#[derive(Clone)]
pub struct App {
    /// What is kept.
    pub store: Store,
    /// What is the same for every reader.
    pub knowledge: Arc<Knowledge>,
    /// Woken when messages were queued.
    pub queued: Arc<Notify>,
    /// Woken when a reminder time may have changed.
    pub mornings_changed: Arc<Notify>,
    decide: Decide,
    pub(super) make_morning: MakeMorning,
}

/// Why one update was passed over.
#[derive(Debug, thiserror::Error)]
enum PassedOver {
    #[error(transparent)]
    Store(#[from] StoreError),
    #[error("deciding it panicked: {0}")]
    Panicked(String),
}

impl App {
    /// The app over this store.
    #[must_use]
    pub fn new(store: Store, knowledge: Arc<Knowledge>) -> Self {
        let (queued, mornings_changed) = (Arc::new(Notify::new()), Arc::new(Notify::new()));
        Self { store, knowledge, queued, mornings_changed, decide, make_morning: morning }
    }

    /// The same app with another way to decide.
    #[must_use]
    pub fn deciding_by(self, decide: Decide) -> Self {
        Self { decide, ..self }
    }

    /// The same app with another way to make mornings.
    #[must_use]
    pub fn making_mornings_by(self, make_morning: MakeMorning) -> Self {
        Self { make_morning, ..self }
    }

    /// Takes in updates in their order, in one transaction: when this returns, each is kept with
    /// all its effects exactly once, whether it came before or not.
    ///
    /// An update that cannot be decided leaves nothing behind but an apology.
    ///
    /// # Errors
    /// When the store fails; then none of the updates is kept, and all can be taken in again.
    pub async fn take_in(&self, updates: &[Update], now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut work = self.store.begin().await?;
        for (index, update) in updates.iter().enumerate() {
            if work.already_seen(update.key).await? {
                continue;
            }
            work.mark_seen(update.key, now).await?;
            let Some(incoming) = &update.incoming else { continue };
            if typed_on(incoming, updates.get(index + 1..).unwrap_or_default()) {
                continue;
            }
            work.savepoint().await?;
            match self.take_one(&mut work, incoming, now).await {
                Ok(()) => work.release().await?,
                Err(why) => {
                    work.rollback_to_savepoint().await?;
                    let update = update.key.update;
                    tracing::error!(update, %why, "an update could not be handled and is passed over");
                    self.apologise(&mut work, incoming, now).await?;
                }
            }
        }
        work.commit().await?;
        self.queued.notify_one();
        self.mornings_changed.notify_one();
        Ok(())
    }

    /// Takes in updates each in a transaction of its own; one that the store cannot take is noted
    /// as seen, with an apology, and passed over.
    ///
    /// # Errors
    /// When the store cannot even note an update as seen; those before it are kept.
    pub async fn take_in_one_by_one(
        &self,
        updates: &[Update],
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        for update in updates {
            let Err(why) = self.take_in(std::slice::from_ref(update), now).await else { continue };
            tracing::error!(update = update.key.update, %why, "an update is passed over");
            let mut work = self.store.begin().await?;
            work.mark_seen(update.key, now).await?;
            if let Some(incoming) = &update.incoming {
                self.apologise(&mut work, incoming, now).await?;
            }
            work.commit().await?;
            self.queued.notify_one();
        }
        Ok(())
    }

    async fn take_one(
        &self,
        work: &mut Work,
        incoming: &Incoming,
        now: DateTime<Utc>,
    ) -> Result<(), PassedOver> {
        let needs = needs(incoming);
        if !needs.facts {
            return Ok(());
        }
        // Nothing begins to be kept about somebody because they went.
        let goes = matches!(incoming.what, What::Blocked | What::Unblocked | What::LeftGroup);
        if goes && !work.knows(incoming.from.user).await? {
            return Ok(());
        }
        let token = needs.join_token.as_deref();
        let mut facts = work.facts(incoming, token, now).await?;
        // The bot hears a group, so it is in it: the group has its club from the first word on.
        let speaks =
            matches!(incoming.what, What::Text { .. } | What::Pressed { .. } | What::AddedToGroup);
        if incoming.chat.kind == ChatKind::Group && facts.club.is_none() && speaks {
            let open = Change::OpenClub { title: incoming.chat.title.clone() };
            work.apply(&facts, incoming, &open, now).await?;
            facts = work.facts(incoming, token, now).await?;
        }
        if let Some(club) = facts.club.as_ref().filter(|_| needs.lists) {
            facts.lists = work.lists(club.id).await?;
        }
        if let Some(club) = facts.club.as_ref().filter(|_| needs.reach) {
            facts.reach = Some(work.reach(club.id).await?);
        }
        if let Some(code) = &needs.list_code {
            facts.offered_list = work.list_of_code(code).await?;
        }
        if needs.own_data {
            facts.in_private.own_data = Some(work.own_data(facts.member.id, now).await?);
        }
        if let Some(message) = needs.question {
            let club = match incoming.chat.kind {
                ChatKind::Group => facts.club.as_ref(),
                ChatKind::Private => facts.invited_to.as_ref(),
            };
            if let Some(chat) = club.and_then(|club| club.chat) {
                facts.in_private.question = work.group_question(chat, message).await?;
            }
            if let (ChatKind::Private, Some(question)) =
                (incoming.chat.kind, &facts.in_private.question)
            {
                facts.subject.clone_from(&question.before);
            }
        }
        let outcome = self.decide(incoming, &facts)?;
        if matches!(incoming.what, What::Inline { .. }) {
            // Of what somebody types in passing nothing is kept, not even that they did.
            work.rollback_to_savepoint().await?;
            work.savepoint().await?;
            return Ok(queue_all(work, &outcome, None, now).await?);
        }
        for change in &outcome.changes {
            work.apply(&facts, incoming, change, now).await?;
        }
        let member = (!outcome.changes.contains(&Change::Forget)).then_some(&facts.member);
        queue_all(work, &outcome, member, now).await?;
        Ok(())
    }

    /// Decides, and turns a panic into an error: it harms no other chat.
    fn decide(&self, incoming: &Incoming, facts: &Facts) -> Result<Outcome, PassedOver> {
        unharmed(|| (self.decide)(&self.knowledge, incoming, facts)).map_err(PassedOver::Panicked)
    }

    async fn apologise(
        &self,
        work: &mut Work,
        incoming: &Incoming,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let language = incoming.from.language.as_deref().and_then(|tag| tag.parse().ok());
        let language: LanguageTag = language.unwrap_or_default();
        let outcome = apology(&self.knowledge, incoming, &language);
        queue_all(work, &outcome, None, now).await
    }
}

/// Whether somebody typed on: only their last inline query is worth an answer.
fn typed_on(incoming: &Incoming, later: &[Update]) -> bool {
    let inline = |incoming: &Incoming| matches!(incoming.what, What::Inline { .. });
    let mut later = later.iter().filter_map(|update| update.incoming.as_ref());
    inline(incoming) && later.any(|next| inline(next) && next.from.user == incoming.from.user)
}

/// `member` is who did what is answered here, where they are still known.
async fn queue_all(
    work: &mut Work,
    outcome: &Outcome,
    member: Option<&Member>,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    for outgoing in &outcome.outgoing {
        let (priority, expires) = match outgoing {
            Outgoing::AnswerPress(_) | Outgoing::OpenByPress(_) => {
                (Priority::Press, Some(now + PRESS_ANSWER_LIFE))
            }
            Outgoing::AnswerInline(_) => (Priority::Press, Some(now + INLINE_ANSWER_LIFE)),
            Outgoing::Say(_) | Outgoing::Edit(_) | Outgoing::Document(_) => (Priority::Reply, None),
        };
        // Only what goes to their private chat tells whether they can be reached.
        let to_private = |member: &&Member| outgoing.chat() == Some(member.user);
        let member = member.filter(to_private).map(|member| member.id);
        work.queue(outgoing, priority, member, now, expires).await?;
    }
    Ok(())
}

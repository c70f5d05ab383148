//! What the program polls and takes in, and what the test makes of it.

use chrono::TimeDelta;
use sowbell::app::Update;
use sowbell::messages::{ChatKind, Incoming, Press, UpdateKey, What};

use super::fuse::{Fuse, take_in_without_commit};
use super::number;
use super::people::Gardener;
use super::replay::{leads_nowhere, with_token};
use super::world::World;

const BOT: i64 = 1;

/// Whether somebody takes their last change back, or puts it back.
fn takes_back(incoming: &Incoming) -> bool {
    match &incoming.what {
        What::Text { text, .. } => text == "/undo",
        What::Pressed { data, .. } => {
            matches!(data.parse(), Ok(Press::Undo(_) | Press::UndoOld(_) | Press::PutBack(_)))
        }
        _ => false,
    }
}

impl World {
    pub(super) async fn poll(&mut self) {
        let now = self.now;
        let offline = self.platform.is_offline();
        let process = self.process.as_mut().expect("it runs");
        process.poll_at = None;
        if offline {
            process.poll_at = Some(now + TimeDelta::seconds(30));
            return;
        }
        let batch = self.platform.poll(process.offset);
        let Some((last, _)) = batch.last() else { return };
        let last = *last;
        let mut updates = Vec::new();
        for (id, incoming) in &batch {
            let incoming = Some(with_token(incoming, &self.look).await);
            updates.push(Update { key: UpdateKey { bot: BOT, update: *id }, incoming });
        }
        let new = updates.iter().any(|update| !self.accepted.contains(&update.key.update));
        if new && self.burns(|fuse| fuse == Fuse::BeforeTakingIn).await {
            return;
        }
        if new && self.fuse == Some(Fuse::TakingIn) {
            let half = take_in_without_commit(&self.running().app, &updates, now).await;
            half.expect("they are taken in");
            self.kill(Fuse::TakingIn).await;
            return;
        }
        let taken = self.running().app.take_in(&updates, now).await;
        taken.expect("they are taken in");
        for ((id, incoming), update) in batch.iter().zip(&updates) {
            // A link that led nowhere leads nowhere.
            let read = update.incoming.as_ref().filter(|read| leads_nowhere(read));
            let incoming = read.unwrap_or(incoming);
            if self.accepted.insert(*id) {
                let key = UpdateKey { bot: BOT, update: *id };
                let user = incoming.from.user;
                let before = self.replay.facts(user, now).await;
                self.checks.said.heard(incoming, &before, &self.knowledge);
                let of_clubs =
                    if self.may_not(incoming) { Some(self.replay.of_clubs().await) } else { None };
                if number("SOWBELL_SHOW").is_some_and(|who| user.cast_unsigned() == who) {
                    eprintln!("{now} {incoming:?}");
                }
                self.replay.accept(key, incoming, now).await;
                if let Some(of_clubs) = of_clubs {
                    self.changed_nothing(incoming, of_clubs).await;
                }
                self.touch(incoming).await;
                self.notes(incoming).await;
                let lists = self.replay.lists_of(user).await;
                self.checks.told.subscribes(user, &lists, takes_back(incoming));
            }
        }
        if new && self.burns(|fuse| fuse == Fuse::AfterTakingIn).await {
            return;
        }
        let process = self.running();
        process.offset = Some(last + 1);
        process.poll_at = Some(now + TimeDelta::milliseconds(100));
        process.tick_at = Some(now);
        process.send_at = Some(now);
    }

    /// Whether somebody is, or may have been, among those who look after a club.
    fn may_have_kept(&self, user: i64, club: usize) -> bool {
        let member = self.gardeners.iter().any(|one| one.user == user && one.clubs.contains(&club));
        let club = &self.clubs[club];
        member || club.coordinator == user || club.second == user
    }

    /// Notes for whom something changed.
    pub(super) async fn touch(&mut self, incoming: &Incoming) {
        let user = incoming.from.user;
        self.checks.touched(user, self.now);
        if takes_back(incoming) {
            // It may have been a setting of a club that they look after.
            let theirs =
                |one: &&Gardener| one.clubs.iter().any(|&club| self.may_have_kept(user, club));
            let users: Vec<i64> =
                self.gardeners.iter().filter(theirs).map(|one| one.user).collect();
            for user in users {
                self.checks.touched(user, self.now);
            }
        }
        let What::Text { text, .. } = &incoming.what else { return };
        if !text.starts_with("/club") || incoming.chat.kind != ChatKind::Group {
            return;
        }
        // Whom the program has in that club; a link may have led elsewhere than was thought.
        let there: Vec<i64> = sqlx::query_scalar(
            "SELECT m.user_id FROM memberships s JOIN members m ON m.id = s.member_id \
             JOIN clubs c ON c.id = s.club_id WHERE c.chat = $1",
        )
        .bind(incoming.chat.id)
        .fetch_all(&self.look)
        .await
        .expect("members can be read");
        for user in there {
            self.checks.touched(user, self.now);
        }
        if let Some(club) = self.club_of(incoming.chat.id) {
            // Whoever was ever in the club; who left it is not touched, which does no harm.
            for gardener in self.gardeners.iter().filter(|one| one.clubs.contains(&club)) {
                self.checks.touched(gardener.user, self.now);
            }
        }
    }
}

//! What happens in the clubs' groups: who keeps the lists, who may not, and groups that become
//! supergroups.

use chrono::TimeDelta;
use rand::Rng;
use rand::seq::IteratorRandom;
use sowbell::messages::{ChatKind, Incoming, Person, Role, What};

use super::agenda::Event;
use super::list_words;
use super::people::{Club, Gardener, incoming};
use super::replay::join_words_in;
use super::talk;
use super::told::lists_of;
use super::world::World;

/// What somebody is told who may not change a club's settings.
const REFUSAL: &str = "Only administrators of this group";

impl World {
    /// A club is opened, with its settings and its first lists.
    pub(super) fn opens(&mut self, number: usize) {
        let Club { chat, place, coordinator, .. } = self.clubs[number];
        self.group_hears(coordinator, chat, What::AddedToGroup);
        let settings =
            [format!("/club frost {}", place.frost), format!("/club zone {}", place.city)];
        let lists = list_words::first_lists(&mut self.chance);
        let week = "/club digest Sunday 8:00".to_owned();
        for words in settings.into_iter().chain(lists).chain([week]) {
            self.says_in_group(coordinator, chat, Role::Administrator, words);
        }
        let at = self.within(TimeDelta::days(20));
        self.agenda.note(at, Event::Coordinates(number));
        let at = self.within(TimeDelta::days(6));
        self.agenda.note(at, Event::KeepsLists(number));
        let at = self.within(TimeDelta::days(20));
        self.agenda.note(at, Event::Meddles(number));
        for event in [Event::StepsDown(number), Event::Moves(number)] {
            // In the second or third quarter.
            let half = TimeDelta::days((self.plan.days / 2).max(1));
            let at = self.within(half) + TimeDelta::days(self.plan.days / 4);
            self.agenda.note(at, event);
        }
    }

    pub(super) fn coordinates(&mut self, number: usize) {
        let Club { chat, place, coordinator, .. } = self.clubs[number];
        if self.chance.random_bool(0.3) {
            self.names_helper(number);
        } else {
            let words = talk::of_coordinator(&mut self.chance, place);
            self.says_in_group(coordinator, chat, Role::Administrator, words);
        }
        let at = self.within(TimeDelta::days(40));
        self.agenda.note(at, Event::Coordinates(number));
    }

    /// The coordinator names a member to help, or takes that back.
    fn names_helper(&mut self, number: usize) {
        let Club { chat, coordinator, .. } = self.clubs[number];
        let members = self.gardeners.iter().filter(|one| one.clubs.contains(&number));
        let Some(user) = members.map(|one| one.user).choose(&mut self.chance) else { return };
        let verb = if self.chance.random_bool(0.7) { "add" } else { "remove" };
        let what = self.text(format!("/club helper {verb}"));
        let mut named = incoming(coordinator, chat, Role::Administrator, what);
        let of_member = incoming(user, chat, Role::Unknown, What::Nothing).from;
        if let What::Text { replies_to, .. } = &mut named.what {
            *replies_to = Some(Box::new(of_member));
        }
        self.tells(named);
    }

    /// Somebody changes the lists: the coordinator, a helper, or a member who may not.
    pub(super) fn keeps_lists(&mut self, number: usize) {
        let words = list_words::of_keeper(&mut self.chance);
        let Club { chat, coordinator, .. } = self.clubs[number];
        let helper = self.clubs[number].helpers.iter().copied().choose(&mut self.chance);
        let members = self.gardeners.iter().filter(|one| one.clubs.contains(&number));
        let anybody = members.map(|one| one.user).choose(&mut self.chance);
        let (user, role) = match (self.chance.random_range(0..10), helper, anybody) {
            (0..5, Some(helper), _) => (helper, Role::Member),
            (5, _, Some(anybody)) => (anybody, Role::Member),
            _ => (coordinator, Role::Administrator),
        };
        self.says_in_group(user, chat, role, words);
        let at = self.within(TimeDelta::days(6));
        self.agenda.note(at, Event::KeepsLists(number));
    }

    /// A list is to change of which a reminder tells that was not sent.
    pub(super) fn changes_told(&mut self, number: usize, list: &str) -> Event {
        let Club { chat, coordinator, .. } = self.clubs[number];
        let words = list_words::of_list(&mut self.chance, list);
        let what = self.text(words);
        Event::Tells(Box::new(incoming(coordinator, chat, Role::Administrator, what)))
    }

    /// A member ends a subscription, the list changes, and they take that back.
    pub(super) fn comes_back_to_list(&mut self, person: usize) {
        let Gardener { user, ref clubs, .. } = self.gardeners[person];
        let Club { chat, coordinator, .. } = self.clubs[clubs[0]];
        let (ends, changes) = list_words::of_second_thoughts(&mut self.chance);
        self.says(user, ends);
        let what = self.text(changes);
        let changes = incoming(coordinator, chat, Role::Administrator, what);
        let what = self.text("/undo".to_owned());
        let undoes = incoming(user, user, Role::Unknown, what);
        for (minutes, then) in [(1, changes), (20, undoes)] {
            let at = self.now + TimeDelta::minutes(minutes);
            self.agenda.note(at, Event::Tells(Box::new(then)));
        }
    }

    /// The second administrator changes the settings, or means to.
    pub(super) fn meddles(&mut self, number: usize) {
        let Club { chat, place, second, second_is_administrator, .. } = self.clubs[number];
        let role = if second_is_administrator { Role::Administrator } else { Role::Member };
        let words = talk::of_coordinator(&mut self.chance, place);
        self.says_in_group(second, chat, role, words);
        let at = self.within(TimeDelta::days(20));
        self.agenda.note(at, Event::Meddles(number));
    }

    /// The group becomes a supergroup: the platform says so at once, after a word from the new
    /// group, twice, or only to who writes to the old one.
    pub(super) fn moves(&mut self, number: usize) {
        let old = self.clubs[number].chat;
        let new = old * 1_000_000 - self.chance.random_range(1..1000);
        let members = self.gardeners.iter().filter(|one| one.clubs.contains(&number));
        let member = members.map(|one| one.user).choose(&mut self.chance);
        let member = member.unwrap_or(self.clubs[number].coordinator);
        let told = incoming(member, old, Role::Unknown, What::MovedTo { chat: new });
        let question = || "/ask can I start tomatoes now?".to_owned();
        let way: usize = self.chance.random_range(0..4);
        if way == 0 {
            // The answer to this finds the group gone, and nobody else tells.
            self.says_in_group(member, old, Role::Member, question());
        }
        self.platform.moves(old, new);
        self.clubs[number].chat = new;
        self.clubs[number].was = Some(old);
        self.clubs[number].letters.clear();
        if way == 1 {
            self.tells(told.clone());
        }
        if way >= 2 || (way == 0 && self.chance.random_bool(0.5)) {
            // The new group is heard first, and has a club of its own for a while.
            self.says_in_group(member, new, Role::Member, question());
            let joins = self.text(join_words_in(new));
            let joins = incoming(member, member, Role::Unknown, joins);
            let at = self.within(TimeDelta::minutes(20));
            self.agenda.note(at, Event::Tells(Box::new(joins)));
        }
        let times = way.saturating_sub(1);
        for _ in 0..times {
            let at = self.within(TimeDelta::minutes(30));
            self.agenda.note(at, Event::Tells(Box::new(told.clone())));
        }
        *self.checks.moves.entry(way).or_default() += 1;
    }

    /// The club whose group this is or was.
    pub(super) fn club_of(&self, chat: i64) -> Option<usize> {
        self.clubs.iter().position(|club| club.chat == chat || club.was == Some(chat))
    }

    /// Whether this means to change what the sender may not change.
    pub(super) fn may_not(&self, incoming: &Incoming) -> bool {
        let Incoming { chat, from, what } = incoming;
        let What::Text { text, .. } = what else { return false };
        let keeps = text.starts_with("/club") || text.starts_with("/list");
        let helps =
            self.club_of(chat.id).is_some_and(|club| self.clubs[club].helpers.contains(&from.user));
        let names = text.starts_with("/club helper");
        chat.kind == ChatKind::Group
            && keeps
            && from.role != Role::Administrator
            && (names || !helps)
    }

    /// Somebody who may not has changed nothing, and was told so.
    pub(super) async fn changed_nothing(&mut self, incoming: &Incoming, before: Vec<String>) {
        let what = &incoming.what;
        let user = incoming.from.user;
        let after = self.replay.of_clubs().await;
        self.must(if before == after {
            Ok(())
        } else {
            Err(format!("{user} may not, and changed something by {what:?}"))
        });
        if let What::Text { text, .. } = what
            && text.starts_with("/club ")
        {
            let said = self.replay.last_said(incoming.chat.id).await;
            self.must(if said.starts_with(REFUSAL) {
                Ok(())
            } else {
                Err(format!("{user} may not {what:?} and was told {said:?}"))
            });
            self.checks.refusals += 1;
        }
    }

    /// The test's own notes of who helps a club, and of groups that moved.
    pub(super) async fn notes(&mut self, incoming: &Incoming) {
        let Incoming { chat, from: Person { user, role, .. }, what } = incoming;
        let Some(club) = self.club_of(chat.id) else { return };
        match what {
            What::Text { text, replies_to: Some(person), .. } if *role == Role::Administrator => {
                if text == "/club helper add" {
                    self.clubs[club].helpers.insert(person.user);
                } else if text == "/club helper remove" {
                    self.clubs[club].helpers.remove(&person.user);
                }
            }
            What::LeftGroup => {
                self.clubs[club].helpers.remove(user);
            }
            _ => {}
        }
        match what {
            What::MovedTo { chat: new } => self.knows_of_move(chat.id, *new),
            What::Text { .. } | What::Pressed { .. } if chat.kind == ChatKind::Group => {
                // What was said there is answered there, for want of knowing better.
                self.checks.left_behind.remove(&chat.id);
            }
            _ => {}
        }
        let may = *role == Role::Administrator || self.clubs[club].helpers.contains(user);
        if let What::Text { text, .. } = what
            && may
            && text.starts_with("/list")
        {
            for list in lists_of(self.replay.look(), None).await {
                self.checks.list_changed(list.user, self.now);
            }
        }
    }

    /// The program knows that the group `old` is `new`.
    pub(super) fn knows_of_move(&mut self, old: i64, new: i64) {
        self.checks.left_behind.insert(old);
        let club = self.club_of(new);
        for gardener in &self.gardeners {
            if club.is_some_and(|club| gardener.clubs.contains(&club)) {
                self.checks.touched(gardener.user, self.now);
            }
        }
    }
}

//! The people, their groups, and who comes and goes, as verbs.
//!
//! A verb that makes no sense in the world (a stranger writes, a button that
//! is not there is pressed) is a mistake of the test, and panics saying so.

use serde_json::json;

use super::chats::{Chat, Kind, Status};
use super::state::{State, User};
use super::writing::Said;
use super::{ANONYMOUS_ADMIN, FakePlatform};

// People and chats.
impl FakePlatform {
    /// Introduces a person. They have not opened a chat with the bot yet.
    pub fn add_user(&self, first_name: &str, language_code: Option<&str>) -> i64 {
        self.change(|state| {
            let id = 5_100_000_000 + state.fresh_number();
            let user = User {
                id,
                first_name: first_name.to_owned(),
                username: None,
                is_bot: false,
                language_code: language_code.map(str::to_owned),
            };
            state.users.insert(id, user);
            id
        })
    }

    /// Introduces a person, or another bot, in full; or changes one.
    pub fn set_user(&self, user: User) {
        self.change(|state| state.users.insert(user.id, user));
    }

    /// A person as the platform knows them.
    pub fn user(&self, id: i64) -> User {
        self.read().user(id).clone()
    }

    /// The person opens a private chat with the bot, which is not told: from
    /// now it may write to them. The chat's id is the person's.
    pub fn open_private(&self, user: i64) -> i64 {
        self.change(|state| state.open_private(user))
    }

    /// The person presses *Start*, perhaps after a link with a payload.
    pub fn starts(&self, user: i64, payload: Option<&str>) -> Said {
        let text = payload.map_or("/start".to_owned(), |payload| format!("/start {payload}"));
        self.user_says_in(user, user, &text, None, None)
    }

    /// A basic group. The bot is not in it.
    pub fn create_group(&self, title: &str, creator: i64) -> i64 {
        self.change(|state| state.create_group(Kind::Group, title, creator))
    }

    /// A supergroup without topics.
    pub fn create_supergroup(&self, title: &str, creator: i64) -> i64 {
        let kind = Kind::Supergroup { forum: false };
        self.change(|state| state.create_group(kind, title, creator))
    }

    /// A supergroup with topics.
    pub fn create_forum(&self, title: &str, creator: i64) -> i64 {
        let kind = Kind::Supergroup { forum: true };
        self.change(|state| state.create_group(kind, title, creator))
    }

    /// A new topic of a forum; its id is the `message_thread_id`.
    pub fn create_topic(&self, forum: i64, by: i64, name: &str) -> i32 {
        self.change(|state| {
            assert!(state.chat(forum).is_forum(), "chat {forum} has no topics");
            let topic = json!({ "name": name, "icon_color": 7_322_096 });
            let said = state.serve(forum, by, "forum_topic_created", topic);
            state.chat_mut(forum).topics.insert(said.message_id);
            said.message_id
        })
    }

    /// Somebody closes a topic: it stays, and no bot without the right to manage topics writes there.
    pub fn close_topic(&self, forum: i64, by: i64, topic: i32) {
        self.change(|state| {
            let chat = state.chat_mut(forum);
            assert!(chat.topics.contains(&topic), "no topic {topic}");
            chat.closed_topics.insert(topic);
            state.serve(forum, by, "forum_topic_closed", json!({}));
        });
    }

    /// Whether the bot reads only what is for it: commands with its name,
    /// answers to its messages. Off unless set, so that nothing is lost unasked.
    pub fn set_privacy_mode(&self, on: bool) {
        self.change(|state| state.privacy = on);
    }

    /// Stamps everything from now with this time (seconds since 1970); with
    /// `None`, with the machine's.
    pub fn set_date(&self, now: Option<i64>) {
        self.change(|state| state.now = now);
    }
}

// Membership.
impl FakePlatform {
    /// Somebody adds the bot to a group. Returns the last update that tells it.
    pub fn add_bot_to_group(&self, group: i64, by: i64) -> Option<i64> {
        self.change(|state| {
            let bot = state.bot.id;
            let told = state.set_status(group, bot, Status::Member, by);
            let me = json!([state.bot.json()]);
            state.serve(group, by, "new_chat_members", me).update_id.or(told)
        })
    }

    /// Somebody removes the bot from a group. Only in a basic group is there
    /// also a service message that it still sees.
    pub fn remove_bot(&self, group: i64, by: i64) -> Option<i64> {
        self.change(|state| {
            let bot = state.bot.id;
            let me = state.bot.json();
            if state.chat(group).kind == Kind::Group {
                state.serve(group, by, "left_chat_member", me);
            }
            state.set_status(group, bot, Status::Kicked, by)
        })
    }

    /// Somebody joins a group by themselves.
    pub fn join(&self, group: i64, user: i64) -> Said {
        self.change(|state| {
            state.set_status(group, user, Status::Member, user);
            let users = json!([state.user(user).json()]);
            state.serve(group, user, "new_chat_members", users)
        })
    }

    /// Somebody leaves a group.
    pub fn leave(&self, group: i64, user: i64) -> Said {
        self.change(|state| {
            let left = state.user(user).json();
            let said = state.serve(group, user, "left_chat_member", left);
            state.set_status(group, user, Status::Left, user);
            said
        })
    }

    /// Makes somebody, perhaps the bot, an administrator.
    pub fn promote(&self, group: i64, user: i64) -> Option<i64> {
        self.change(|state| {
            let by = state.creator_of(group);
            state.set_status(group, user, Status::Administrator, by)
        })
    }

    /// Makes an administrator a plain member.
    pub fn demote(&self, group: i64, user: i64) -> Option<i64> {
        self.change(|state| {
            let by = state.creator_of(group);
            state.set_status(group, user, Status::Member, by)
        })
    }

    /// The person blocks the bot.
    pub fn block(&self, user: i64) -> Option<i64> {
        self.change(|state| state.set_blocked(user, true))
    }

    /// The person lets the bot write to them again.
    pub fn unblock(&self, user: i64) -> Option<i64> {
        self.change(|state| state.set_blocked(user, false))
    }

    /// The basic group becomes a supergroup; both service messages tell the
    /// bot. Returns the new id. Message ids start again.
    pub fn migrate_group(&self, group: i64) -> i64 {
        self.change(|state| {
            let new = state.migrate(group);
            let by = state.creator_of(new);
            state.serve(group, by, "migrate_to_chat_id", json!(new));
            state.serve(new, by, "migrate_from_chat_id", json!(group));
            new
        })
    }

    /// As [`Self::migrate_group`], but the bot only learns of it from the
    /// refusal of its next request.
    pub fn migrate_group_quietly(&self, group: i64) -> i64 {
        self.change(|state| state.migrate(group))
    }
}

impl State {
    pub(crate) fn open_private(&mut self, user: i64) -> i64 {
        let name = self.user(user).first_name.clone();
        self.chats.entry(user).or_insert_with(|| Chat::new(user, Kind::Private, &name));
        user
    }

    fn create_group(&mut self, kind: Kind, title: &str, creator: i64) -> i64 {
        // Throws out a creator whom nobody introduced.
        let creator = self.user(creator).id;
        let number = self.fresh_number();
        let id = match kind {
            Kind::Supergroup { .. } => -1_002_000_000_000 - number,
            _ => -4_000_000_000 - number,
        };
        let mut chat = Chat::new(id, kind, title);
        chat.members.insert(creator, Status::Creator);
        self.chats.insert(id, chat);
        id
    }

    fn creator_of(&self, group: i64) -> i64 {
        let mut members = self.chat(group).members.iter();
        members
            .find(|(_, status)| **status == Status::Creator)
            .map_or(ANONYMOUS_ADMIN, |(user, _)| *user)
    }

    fn set_blocked(&mut self, user: i64, blocked: bool) -> Option<i64> {
        let chat = self.open_private(user);
        let was = std::mem::replace(&mut self.chat_mut(chat).blocked, blocked);
        let status = |blocked| {
            if blocked { Status::Kicked } else { Status::Member }
        };
        if was == blocked {
            return None;
        }
        let bot = self.bot.id;
        self.tell_of_member(chat, bot, (status(was), status(blocked)), user)
    }

    fn migrate(&mut self, group: i64) -> i64 {
        let old = self.chat(group);
        assert!(old.kind == Kind::Group, "only a basic group becomes a supergroup");
        let (title, members) = (old.title.clone(), old.members.clone());
        let kind = Kind::Supergroup { forum: false };
        let new = self.create_group(kind, &title, self.creator_of(group));
        self.chat_mut(new).members = members;
        self.chat_mut(group).migrated_to = Some(new);
        new
    }
}

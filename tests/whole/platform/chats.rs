//! Chats and who is in them, and the methods that ask about that.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Value, json};

use super::body::Params;
use super::message::Message;
use super::refusal::Refusal;
use super::state::{State, set};

/// What somebody is in a group.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Status {
    Creator,
    Administrator,
    Member,
    Left,
    Kicked,
}

impl Status {
    pub(crate) fn is_present(self) -> bool {
        !matches!(self, Self::Left | Self::Kicked)
    }

    pub(crate) fn is_admin(self) -> bool {
        matches!(self, Self::Creator | Self::Administrator)
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    Private,
    Group,
    Supergroup { forum: bool },
}

/// A private chat with the bot (its id is the person's), or a group.
#[derive(Clone, Debug)]
pub(crate) struct Chat {
    pub(crate) id: i64,
    pub(crate) kind: Kind,
    pub(crate) title: String,
    /// Everybody who ever was in the group.
    pub(crate) members: BTreeMap<i64, Status>,
    /// A private chat: whether the person blocked the bot.
    pub(crate) blocked: bool,
    pub(crate) migrated_to: Option<i64>,
    pub(crate) topics: BTreeSet<i32>,
    pub(crate) closed_topics: BTreeSet<i32>,
    pub(crate) messages: BTreeMap<i32, Message>,
    pub(crate) last_message_id: i32,
}

impl Chat {
    pub(crate) fn new(id: i64, kind: Kind, title: &str) -> Self {
        Self {
            id,
            kind,
            title: title.to_owned(),
            members: BTreeMap::new(),
            blocked: false,
            migrated_to: None,
            topics: BTreeSet::new(),
            closed_topics: BTreeSet::new(),
            messages: BTreeMap::new(),
            last_message_id: 0,
        }
    }

    pub(crate) fn status(&self, user: i64) -> Status {
        self.members.get(&user).copied().unwrap_or(Status::Left)
    }

    pub(crate) fn is_forum(&self) -> bool {
        self.kind == Kind::Supergroup { forum: true }
    }

    fn kind_name(&self) -> &'static str {
        match self.kind {
            Kind::Private => "private",
            Kind::Group => "group",
            Kind::Supergroup { .. } => "supergroup",
        }
    }
}

impl State {
    pub(crate) fn chat_json(&self, chat: &Chat) -> Value {
        let mut json = json!({ "id": chat.id, "type": chat.kind_name() });
        if chat.kind == Kind::Private {
            let user = self.user(chat.id);
            set(&mut json, "first_name", json!(user.first_name));
            if let Some(username) = &user.username {
                set(&mut json, "username", json!(username));
            }
        } else {
            set(&mut json, "title", json!(chat.title));
        }
        if chat.is_forum() {
            set(&mut json, "is_forum", json!(true));
        }
        json
    }

    /// Somebody's membership, as the Bot API writes it.
    pub(crate) fn member_json(&self, user: i64, status: Status) -> Value {
        let user = self.user(user).json();
        match status {
            Status::Creator => json!({ "status": "creator", "user": user, "is_anonymous": false }),
            Status::Administrator => json!({
                "status": "administrator",
                "user": user,
                "can_be_edited": false,
                "is_anonymous": false,
                "can_manage_chat": true,
                "can_delete_messages": true,
                "can_manage_video_chats": true,
                "can_restrict_members": true,
                "can_promote_members": false,
                "can_change_info": true,
                "can_invite_users": true,
                "can_post_stories": false,
                "can_edit_stories": false,
                "can_delete_stories": false,
                "can_pin_messages": true,
                "can_send_welcome_messages": false,
            }),
            Status::Member => json!({ "status": "member", "user": user }),
            Status::Left => json!({ "status": "left", "user": user }),
            Status::Kicked => json!({ "status": "kicked", "user": user, "until_date": 0 }),
        }
    }

    /// The chat that a request names, if the bot may do anything there.
    pub(crate) fn reachable(&self, params: &Params) -> Result<&Chat, Refusal> {
        let id = params.integer("chat_id").unwrap_or(0);
        let Some(chat) = self.chats.get(&id) else {
            return Err(if self.users.contains_key(&id) {
                Refusal::forbidden("bot can't initiate conversation with a user")
            } else {
                Refusal::bad_request("chat not found")
            });
        };
        if let Some(to) = chat.migrated_to {
            return Err(Refusal::migrated(to));
        }
        if chat.blocked {
            return Err(Refusal::forbidden("bot was blocked by the user"));
        }
        if chat.kind == Kind::Private {
            return Ok(chat);
        }
        let name = chat.kind_name();
        match chat.members.get(&self.bot.id) {
            None => Err(Refusal::bad_request("chat not found")),
            Some(Status::Kicked) => {
                Err(Refusal::forbidden(&format!("bot was kicked from the {name} chat")))
            }
            Some(Status::Left) => {
                Err(Refusal::forbidden(&format!("bot is not a member of the {name} chat")))
            }
            Some(_) => Ok(chat),
        }
    }

    pub(crate) fn get_chat(&self, params: &Params) -> Result<Value, Refusal> {
        let chat = self.reachable(params)?;
        let mut json = self.chat_json(chat);
        set(&mut json, "accent_color_id", json!(0));
        set(&mut json, "max_reaction_count", json!(11));
        set(
            &mut json,
            "accepted_gift_types",
            json!({
                "unlimited_gifts": false,
                "limited_gifts": false,
                "unique_gifts": false,
                "premium_subscription": false,
                "gifts_from_channels": false,
            }),
        );
        Ok(json)
    }

    pub(crate) fn get_chat_administrators(&self, params: &Params) -> Result<Value, Refusal> {
        let chat = self.reachable(params)?;
        if chat.kind == Kind::Private {
            return Err(Refusal::bad_request("there are no administrators in the private chat"));
        }
        let bots = params.flag("return_bots");
        let administrators = chat
            .members
            .iter()
            .filter(|(user, status)| status.is_admin() && (bots || !self.user(**user).is_bot))
            .map(|(user, status)| self.member_json(*user, *status));
        Ok(administrators.collect())
    }

    pub(crate) fn get_chat_member(&self, params: &Params) -> Result<Value, Refusal> {
        let chat = self.reachable(params)?;
        let user = params.integer("user_id").unwrap_or(0);
        let about_itself = user == self.bot.id;
        if !about_itself && !chat.status(self.bot.id).is_admin() {
            return Err(Refusal::bad_request("member list is inaccessible"));
        }
        if !about_itself && !self.users.contains_key(&user) {
            return Err(Refusal::bad_request("user not found"));
        }
        Ok(self.member_json(user, chat.status(user)))
    }

    pub(crate) fn leave_chat(&mut self, params: &Params) -> Result<Value, Refusal> {
        let chat = self.reachable(params)?;
        if chat.kind == Kind::Private {
            return Err(Refusal::bad_request(
                "chat member status can't be changed in private chats",
            ));
        }
        let (chat, bot) = (chat.id, self.bot.id);
        self.set_status(chat, bot, Status::Left, bot);
        Ok(json!(true))
    }

    /// Changes what somebody is in a chat, and tells the bot: always of
    /// itself, of others only where it is an administrator and asked for it.
    pub(crate) fn set_status(
        &mut self,
        chat: i64,
        user: i64,
        status: Status,
        by: i64,
    ) -> Option<i64> {
        let old = self.chat(chat).status(user);
        self.chat_mut(chat).members.insert(user, status);
        self.tell_of_member(chat, user, (old, status), by)
    }

    pub(crate) fn tell_of_member(
        &mut self,
        chat: i64,
        user: i64,
        (old, new): (Status, Status),
        by: i64,
    ) -> Option<i64> {
        let about_bot = user == self.bot.id;
        let chat = self.chat(chat);
        if !about_bot && !chat.status(self.bot.id).is_admin() {
            return None;
        }
        let body = json!({
            "chat": self.chat_json(chat),
            "from": self.user(by).json(),
            "date": self.date(),
            "old_chat_member": self.member_json(user, old),
            "new_chat_member": self.member_json(user, new),
        });
        let kind = if about_bot { "my_chat_member" } else { "chat_member" };
        self.updates.push(kind, body)
    }
}

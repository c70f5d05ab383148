//! Who is an administrator of a group.

use std::collections::{BTreeSet, HashMap};
use std::sync::{Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use chrono::{DateTime, TimeDelta, Utc};
use serde::{Deserialize, Serialize};
use teloxide::requests::{JsonRequest, Payload};

use super::{Telegram, call};
use crate::messages::Role;

/// How long a list of administrators is believed where it says that somebody is one.
const BELIEVED: TimeDelta = TimeDelta::seconds(60);

/// How long an answer is waited for; somebody waits for theirs meanwhile.
const LONGEST_QUESTION: Duration = Duration::from_secs(5);

/// Looks up roles and remembers each group's administrators for a minute.
#[derive(Debug)]
pub struct Roles {
    telegram: Telegram,
    known: Mutex<HashMap<i64, Known>>,
}

#[derive(Debug)]
struct Known {
    since: DateTime<Utc>,
    administrators: BTreeSet<i64>,
}

/// Asks for the administrators. `getChatMember` would answer for one person, but surely does so
/// only where the bot is an administrator itself.
#[derive(Debug, Serialize)]
struct GetChatAdministrators {
    chat_id: i64,
}

#[derive(Debug, Deserialize)]
struct Administrator {
    user: Account,
}

#[derive(Debug, Deserialize)]
struct Account {
    id: i64,
}

impl Payload for GetChatAdministrators {
    type Output = Vec<Administrator>;
    const NAME: &'static str = "GetChatAdministrators";
}

impl Roles {
    /// Looks up through this connection.
    #[must_use]
    pub fn new(telegram: Telegram) -> Self {
        Self { telegram, known: Mutex::new(HashMap::new()) }
    }

    /// The role of a person in a group at `now`; [`Role::Unknown`] when the platform does not say.
    /// Where `refused` says that somebody would be refused over the answer, only the platform's own
    /// word makes them no administrator, since they may have become one a moment ago.
    ///
    /// An administrator who writes anonymously is known without asking, and must not be asked for
    /// here: the account is the same for all of them.
    pub async fn role_of(&self, chat: i64, user: i64, refused: bool, now: DateTime<Utc>) -> Role {
        match self.known_role(chat, user, now) {
            Some(role) if role == Role::Administrator || !refused => return role,
            _ => {}
        }
        let request =
            JsonRequest::new(self.telegram.bot.clone(), GetChatAdministrators { chat_id: chat });
        match call(request, LONGEST_QUESTION).await {
            Ok(list) => {
                let administrators = list.into_iter().map(|one| one.user.id).collect();
                let known = Known { since: now, administrators };
                let role = known.role_of(user);
                let mut all = self.lock();
                all.retain(|_, known| known.is_believed(now));
                all.insert(chat, known);
                role
            }
            Err(error) => {
                let why = self.telegram.explain(&error);
                tracing::warn!(chat, why, "the administrators of a group could not be looked up");
                Role::Unknown
            }
        }
    }

    fn known_role(&self, chat: i64, user: i64, now: DateTime<Utc>) -> Option<Role> {
        let all = self.lock();
        all.get(&chat).filter(|known| known.is_believed(now)).map(|known| known.role_of(user))
    }

    fn lock(&self) -> MutexGuard<'_, HashMap<i64, Known>> {
        // What is remembered is whole at every moment, so a panic elsewhere spoils nothing.
        self.known.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Known {
    fn is_believed(&self, now: DateTime<Utc>) -> bool {
        // A clock that was set back makes an entry of the future, which is not believed either.
        (TimeDelta::zero()..BELIEVED).contains(&(now - self.since))
    }

    fn role_of(&self, user: i64) -> Role {
        if self.administrators.contains(&user) { Role::Administrator } else { Role::Member }
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::telegram::fake::{Fake, no, yes};

    fn at(seconds: i64) -> DateTime<Utc> {
        DateTime::UNIX_EPOCH + TimeDelta::seconds(seconds)
    }

    #[tokio::test]
    async fn administrators_are_known_for_a_minute() {
        let fake = Fake::start(|_, _| {
            yes(json!([
                { "status": "creator", "is_anonymous": false, "user": { "id": 1 } },
                { "status": "administrator", "a_new_right": true, "user": { "id": 2 } },
            ]))
        })
        .await;
        let roles = Roles::new(fake.telegram().await);
        assert_eq!(roles.role_of(-5, 1, true, at(0)).await, Role::Administrator);
        assert_eq!(roles.role_of(-5, 2, true, at(30)).await, Role::Administrator);
        assert_eq!(roles.role_of(-5, 3, false, at(59)).await, Role::Member);
        assert_eq!(fake.calls("GetChatAdministrators").len(), 1);
        roles.role_of(-5, 3, false, at(60)).await;
        roles.role_of(-6, 3, false, at(61)).await;
        let asked = fake.calls("GetChatAdministrators");
        assert_eq!(
            asked,
            [json!({ "chat_id": -5 }), json!({ "chat_id": -5 }), json!({ "chat_id": -6 })]
        );
    }

    #[tokio::test]
    async fn a_refusal_is_unknown_and_not_remembered() {
        let fake = Fake::start_with_me(|method, nth| match (method, nth) {
            ("GetChatAdministrators", 0) => Some(no(400, "Bad Request: chat not found")),
            ("GetChatAdministrators", _) => Some(yes(json!([{ "user": { "id": 1 } }]))),
            _ => None,
        })
        .await;
        let roles = Roles::new(fake.telegram().await);
        assert_eq!(roles.role_of(-5, 1, true, at(0)).await, Role::Unknown);
        assert_eq!(roles.role_of(-5, 1, true, at(1)).await, Role::Administrator);
    }

    #[tokio::test]
    async fn nobody_is_refused_over_what_was_true_a_moment_ago() {
        let fake = Fake::start_with_me(|method, nth| match (method, nth) {
            ("GetChatAdministrators", 0 | 1) => Some(yes(json!([{ "user": { "id": 1 } }]))),
            ("GetChatAdministrators", _) => {
                Some(yes(json!([{ "user": { "id": 1 } }, { "user": { "id": 2 } }])))
            }
            _ => None,
        })
        .await;
        let roles = Roles::new(fake.telegram().await);
        assert_eq!(roles.role_of(-5, 2, true, at(0)).await, Role::Member);
        assert_eq!(roles.role_of(-5, 2, true, at(1)).await, Role::Member, "asked once more");
        assert_eq!(roles.role_of(-5, 2, true, at(2)).await, Role::Administrator, "in time");
        // Now the list is remembered.
        assert_eq!(roles.role_of(-5, 2, true, at(3)).await, Role::Administrator);
        assert_eq!(fake.calls("GetChatAdministrators").len(), 3);
    }
}

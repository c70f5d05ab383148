//! The demo club: its people, and the messages with which they set themselves up.

use anyhow::bail;
use chrono_tz::Tz;

use super::world::World;
use crate::messages::{Chat, ChatKind, Does, Person, Role, What};

/// The invented club's group.
pub const CLUB: &str = "Larkhollow Garden Club";

/// Where the club is; practice begins in the morning of this zone.
pub const CLUB_ZONE: Tz = Tz::America__Denver;

/// The group's id; the platform's groups have negative ones.
const GROUP: i64 = -4_100;

/// What Oda, the coordinator, writes in the group.
pub const ODA_WRITES: [&str; 3] =
    ["/club frost 05-15 10-05", "/club zone Denver", "/list new Salsa bed: tomato, pepper, dill"];

/// What Fern writes in private, once she has pressed the group's button.
pub const FERN_WRITES: [&str; 1] = ["/grow tomato, pepper, basil, cucumber, zinnia, lettuce, \
                                     broccoli, onion, peas, carrots, garlic, strawflower"];

/// What Ilse writes in private: her garden lies in the south.
pub const ILSE_WRITES: [&str; 3] =
    ["/zone Hobart", "/frost 09-15 05-01", "/grow tomato, lettuce, garlic"];

/// A person of the demo club.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Who {
    /// The coordinator, an administrator of the group.
    Oda,
    /// A member at the club's place.
    Fern,
    /// A member with a garden of her own in the south.
    Ilse,
}

/// Where somebody speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// In their private chat with the bot.
    Private,
    /// In the club's group.
    Group,
}

impl Who {
    /// Everybody.
    pub const ALL: [Self; 3] = [Self::Oda, Self::Fern, Self::Ilse];

    /// The first name.
    pub fn name(self) -> &'static str {
        match self {
            Self::Oda => "Oda",
            Self::Fern => "Fern",
            Self::Ilse => "Ilse",
        }
    }

    /// What a newcomer should know of them.
    pub fn about(self) -> &'static str {
        match self {
            Self::Oda => "coordinator, administrator of the group",
            Self::Fern => "member, gardens at the club's place",
            Self::Ilse => "member, gardens in the south",
        }
    }

    /// The platform's id of the person, and of their private chat.
    fn user(self) -> i64 {
        match self {
            Self::Oda => 4_201,
            Self::Fern => 4_202,
            Self::Ilse => 4_203,
        }
    }

    /// The person as the platform tells of them.
    pub fn person(self) -> Person {
        let role = if self == Self::Oda { Role::Administrator } else { Role::Member };
        Person {
            user: self.user(),
            name: self.name().to_owned(),
            is_bot: false,
            anonymous: false,
            language: Some("en".to_owned()),
            role,
        }
    }
}

/// The id of the chat in which this person speaks in this place.
pub fn chat_id(who: Who, place: Place) -> i64 {
    match place {
        Place::Private => who.user(),
        Place::Group => GROUP,
    }
}

/// The chat in which this person speaks in this place.
pub fn chat(who: Who, place: Place) -> Chat {
    let (kind, title) = match place {
        Place::Private => (ChatKind::Private, String::new()),
        Place::Group => (ChatKind::Group, CLUB.to_owned()),
    };
    Chat { id: chat_id(who, place), kind, title, thread: None }
}

/// Whose private chat this is; `None` for the group.
pub fn owner(chat: i64) -> Option<Who> {
    Who::ALL.into_iter().find(|who| who.user() == chat)
}

/// Sets the club up through messages, as people would.
///
/// # Errors
/// When the database fails, or when the bot's greeting carries no invitation.
pub async fn set_up(world: &mut World) -> anyhow::Result<()> {
    world.happens(Who::Oda, Place::Group, What::AddedToGroup).await?;
    for text in ODA_WRITES {
        world.says(Who::Oda, Place::Group, text, true).await?;
    }
    let invitation = world.all_buttons(Who::Oda, Place::Group).into_iter().find_map(|button| {
        match button.does {
            Does::OpenPrivate(token) => Some(token),
            Does::Press(_) => None,
        }
    });
    let Some(token) = invitation else { bail!("the bot's greeting carries no invitation") };
    let members = [(Who::Fern, FERN_WRITES.as_slice()), (Who::Ilse, ILSE_WRITES.as_slice())];
    for (who, writes) in members {
        world.says(who, Place::Private, &format!("/start {token}"), true).await?;
        for text in writes {
            world.says(who, Place::Private, text, true).await?;
        }
    }
    world.forget_shown();
    Ok(())
}

//! The people and their gardens.

use std::collections::BTreeSet;

use sowbell::messages::{Chat, ChatKind, Incoming, Person, Role, What};

use super::letters::Letter;

/// Where people garden: the word for the zone, and the frost dates as they would write them.
#[derive(Debug, Clone, Copy)]
pub struct Place {
    pub city: &'static str,
    pub frost: &'static str,
}

/// Four zones of the north and four of the south.
pub const PLACES: [Place; 8] = [
    Place { city: "Denver", frost: "05-15 10-05" },
    Place { city: "Auckland", frost: "09-20 05-25" },
    Place { city: "Helsinki", frost: "05-28 09-20" },
    Place { city: "Santiago", frost: "10-01 05-10" },
    Place { city: "London", frost: "04-25 10-30" },
    Place { city: "Hobart", frost: "10-20 04-28" },
    Place { city: "Tokyo", frost: "04-10 11-15" },
    Place { city: "Johannesburg", frost: "08-30 05-20" },
];

const FIRST: i64 = 100;

/// The number of the person with whom this private chat is.
pub fn person_of(chat: i64) -> Option<usize> {
    usize::try_from(chat - FIRST).ok()
}

/// How many members one club has at most.
pub const CLUB_SIZE: usize = 20;

/// A club: its members garden in one place or in the next.
#[derive(Debug)]
pub struct Club {
    /// The group's id now; it is another one since the group became a supergroup.
    pub chat: i64,
    /// Its id before.
    pub was: Option<i64>,
    pub place: Place,
    /// The person who looks after the club.
    pub coordinator: i64,
    /// Another administrator, who is none any more from some day on.
    pub second: i64,
    pub second_is_administrator: bool,
    /// Members whom the coordinator named to help.
    pub helpers: BTreeSet<i64>,
    /// The bot's messages in the group, the latest ones only.
    pub letters: Vec<Letter>,
}

/// How many of a group's messages anybody still looks at.
const MOST_LETTERS: usize = 40;

impl Club {
    pub fn keep(&mut self, letter: Letter) {
        if self.letters.len() >= MOST_LETTERS {
            self.letters.remove(0);
        }
        self.letters.push(letter);
    }
}

/// A member.
#[derive(Debug)]
pub struct Gardener {
    pub user: i64,
    pub place: Place,
    /// The clubs that they belong to, their own first.
    pub clubs: Vec<usize>,
    pub blocked: bool,
    pub letters: Vec<Letter>,
}

/// The clubs, and so many members of them.
pub fn gather(members: usize) -> (Vec<Club>, Vec<Gardener>) {
    let place = |number: usize| PLACES[number % PLACES.len()];
    let clubs = (0..members.div_ceil(CLUB_SIZE))
        .map(|number| {
            let chat = -1000 - i64::try_from(number).expect("a small number");
            Club {
                chat,
                was: None,
                place: place(number),
                coordinator: coordinator_of(chat),
                second: coordinator_of(chat) + 10_000,
                second_is_administrator: true,
                helpers: BTreeSet::new(),
                letters: Vec::new(),
            }
        })
        .collect();
    let gardeners = (0..members)
        .map(|number| Gardener {
            user: FIRST + i64::try_from(number).expect("a small number"),
            place: place(number),
            clubs: vec![number / CLUB_SIZE],
            blocked: false,
            letters: Vec::new(),
        })
        .collect();
    (clubs, gardeners)
}

/// What `user` does in a chat.
pub fn incoming(user: i64, chat: i64, role: Role, what: What) -> Incoming {
    let kind = if chat < 0 { ChatKind::Group } else { ChatKind::Private };
    let title = if chat < 0 { format!("Club {}", -chat) } else { String::new() };
    Incoming {
        chat: Chat { id: chat, kind, title, thread: None },
        from: Person {
            user,
            name: format!("Member {user}"),
            is_bot: false,
            anonymous: false,
            language: None,
            role,
        },
        what,
    }
}

/// The person who looks after a club.
pub fn coordinator_of(chat: i64) -> i64 {
    50_000 - chat
}

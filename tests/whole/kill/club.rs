//! A club whose members write and press at random, and what they are to be answered: the list of
//! each member is kept here by the rules of the commands, apart from the program's own code.

use rand::Rng;
use rand::rngs::StdRng;

use crate::platform::{FakePlatform, Message};

/// A crop: its name on a list, its name in a sentence, and its id.
pub struct Crop {
    word: &'static str,
    plural: &'static str,
    pub id: &'static str,
}

const fn crop(word: &'static str, plural: &'static str) -> Crop {
    Crop { word, plural, id: word }
}

/// None of these names is part of another.
pub static CROPS: [Crop; 12] = [
    crop("tomato", "tomatoes"),
    crop("pepper", "peppers"),
    crop("okra", "okra"),
    crop("cucumber", "cucumbers"),
    crop("broccoli", "broccoli"),
    crop("kale", "kale"),
    crop("leek", "leeks"),
    crop("carrot", "carrots"),
    crop("basil", "basil"),
    crop("zinnia", "zinnias"),
    crop("cosmos", "cosmos"),
    crop("sunflower", "sunflowers"),
];

/// What one of the bot's messages must say. Which of these a text says is never in doubt.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Says {
    /// A group is greeted.
    Greeting,
    /// Frost dates are kept.
    Frost,
    /// These lines about the list come first.
    List(Vec<String>),
    /// So many crops are listed, these on the first page.
    Crops(usize, Vec<&'static str>),
    /// A question about this crop is answered.
    About(&'static str),
    /// The morning's reminder.
    Morning,
}

impl Says {
    /// Whether `text` says this.
    pub fn is_said_by(&self, text: &str) -> bool {
        let first = text.lines().next().unwrap_or_default();
        let about_list = ["On your list: ", "Already on your list: ", "Off your list: "]
            .into_iter()
            .chain(["Not on your list: ", "Your list is empty", "You grow "])
            .any(|head| first.starts_with(head));
        match self {
            Self::Greeting => first.starts_with("Hello! I help with the timing"),
            Self::Frost => first.starts_with("Noted for your garden: "),
            Self::List(lines) => {
                text.lines().zip(lines).filter(|(a, b)| a == b).count() == lines.len()
            }
            Self::Crops(count, names) => {
                let head = match count {
                    1 => "You grow one crop:".to_owned(),
                    count => format!("You grow {count} crops:"),
                };
                let lines: Vec<&str> =
                    text.lines().skip(1).filter(|line| line.starts_with('•')).collect();
                first == head
                    && lines.len() == names.len()
                    && lines.iter().zip(names).all(|(line, name)| {
                        line.strip_prefix("• ")
                            .is_some_and(|line| line.to_lowercase().starts_with(name))
                    })
            }
            Self::About(plural) => !about_list && first.to_lowercase().contains(plural),
            Self::Morning => first.starts_with("Good morning!"),
        }
    }
}

/// A message that the bot owes a chat.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Owed {
    pub says: Says,
    /// In a group, the message that it answers.
    pub reply_to: Option<i32>,
}

/// A member, and the list as it stands after everything that was written so far.
pub struct Member {
    pub user: i64,
    pub list: Vec<&'static Crop>,
}

/// A chat, and what the bot owes it, in order.
pub struct Chat {
    pub id: i64,
    group: bool,
    pub owed: Vec<Owed>,
}

/// The members, the chats, and what was written.
pub struct Club {
    pub members: Vec<Member>,
    /// First the private ones in the order of the members, then the groups.
    pub chats: Vec<Chat>,
    /// The last update that told the bot something.
    pub last_update: Option<i64>,
    /// Every press of a button.
    pub presses: Vec<String>,
}

/// The crops on a page of the list.
const PAGE: usize = 10;

impl Club {
    /// Members with their gardens, in groups of about a dozen. The bot is told of all of it.
    pub fn gather(platform: &FakePlatform, members: usize) -> Self {
        let mut club =
            Self { members: Vec::new(), chats: Vec::new(), last_update: None, presses: Vec::new() };
        for number in 0..members {
            let user = platform.add_user(&format!("Member {number}"), None);
            platform.open_private(user);
            club.members.push(Member { user, list: Vec::new() });
            club.chats.push(Chat { id: user, group: false, owed: Vec::new() });
        }
        for number in 0..members.div_ceil(12) {
            let creator = club.members[number].user;
            let group = platform.create_supergroup(&format!("Group {number}"), creator);
            for member in &club.members {
                if member.user != creator {
                    platform.join(group, member.user);
                }
            }
            club.last_update = platform.add_bot_to_group(group, creator);
            let greeting = Owed { says: Says::Greeting, reply_to: None };
            club.chats.push(Chat { id: group, group: true, owed: vec![greeting] });
        }
        for member in 0..members {
            club.says(platform, member, member, "/frost 05-15 10-05", Says::Frost);
        }
        club
    }

    /// How many messages the bot owes in all.
    pub fn owed(&self) -> usize {
        self.chats.iter().map(|chat| chat.owed.len()).sum()
    }

    /// Somebody does something: asks, changes their list, or presses a button.
    pub fn acts(&mut self, platform: &FakePlatform, chance: &mut StdRng) {
        let member = chance.random_range(0..self.members.len());
        let groups = self.members.len()..self.chats.len();
        let chat = if chance.random_bool(0.25) { chance.random_range(groups) } else { member };
        match chance.random_range(0..10) {
            0..=2 => self.grows(platform, chance, member, chat),
            3..=4 => self.drops(platform, chance, member, chat),
            5..=6 => {
                let crop = &CROPS[chance.random_range(0..CROPS.len())];
                let text = format!("/ask can I start {} now?", crop.word);
                self.says(platform, member, chat, &text, Says::About(crop.plural));
            }
            7 => drop(self.asks_for_list(platform, member)),
            _ => self.presses(platform, member, chat),
        }
    }

    fn grows(&mut self, platform: &FakePlatform, chance: &mut StdRng, member: usize, chat: usize) {
        let first = chance.random_range(0..CROPS.len());
        let mut crops = vec![&CROPS[first]];
        if chance.random_bool(0.4) {
            let step = chance.random_range(1..CROPS.len());
            crops.push(&CROPS[(first + step) % CROPS.len()]);
        }
        let words: Vec<&str> = crops.iter().map(|crop| crop.word).collect();
        let text = format!("/grow {}", words.join(", "));
        let (list, says) = grown(&self.members[member].list, &crops);
        if self.says(platform, member, chat, &text, says) {
            self.members[member].list = list;
        }
    }

    fn drops(&mut self, platform: &FakePlatform, chance: &mut StdRng, member: usize, chat: usize) {
        let crop = &CROPS[chance.random_range(0..CROPS.len())];
        let list = &self.members[member].list;
        let (list, says) = if list.is_empty() {
            let nothing = "Your list is empty, so there is nothing to take off.".to_owned();
            (Vec::new(), Says::List(vec![nothing]))
        } else {
            dropped(list, crop)
        };
        if self.says(platform, member, chat, &format!("/drop {}", crop.word), says) {
            self.members[member].list = list;
        }
    }

    /// `/mycrops` in private; false where the answer would be the same as the one before.
    pub fn asks_for_list(&mut self, platform: &FakePlatform, member: usize) -> bool {
        let list = &self.members[member].list;
        let says = if list.is_empty() {
            Says::List(vec![
                "Your list is empty. Send what you grow, like this: /grow tomato, basil".to_owned(),
            ])
        } else {
            Says::Crops(list.len(), list.iter().take(PAGE).map(|crop| crop.word).collect())
        };
        self.says(platform, member, member, "/mycrops", says)
    }

    /// Somebody presses *Undo* under the chat's latest message that has it. It may have been
    /// pressed before, and others may have acted since.
    fn presses(&mut self, platform: &FakePlatform, member: usize, chat: usize) {
        let id = self.chats[chat].id;
        let mut sent = platform.sent_to(id);
        sent.retain(|message| message.button("Undo").is_some() && one_crop(message).is_some());
        let Some(message) = sent.pop() else { return };
        let Some((was_added, crop)) = one_crop(&message) else { return };
        // In a group the buttons of an answer are for whoever it answers.
        let asked = message.reply_to.and_then(|asked| platform.message(id, asked));
        let asker = asked.and_then(|asked| self.members.iter().position(|m| m.user == asked.from));
        let member = asker.filter(|_| self.chats[chat].group).unwrap_or(member);
        let list = &self.members[member].list;
        let (list, says) = if was_added { dropped(list, crop) } else { grown(list, &[crop]) };
        let reply_to = self.chats[chat].group.then_some(message.message_id);
        if !self.owe(chat, says, reply_to) {
            return;
        }
        let user = self.members[member].user;
        let pressed = platform.press(user, id, message.message_id, "Undo");
        self.members[member].list = list;
        self.last_update = pressed.update_id;
        self.presses.push(pressed.query_id);
    }

    /// A member writes. What cannot be told apart from what the chat was owed before is not
    /// written, so that a repetition is always seen as one; then this is false.
    fn says(
        &mut self,
        platform: &FakePlatform,
        member: usize,
        chat: usize,
        text: &str,
        says: Says,
    ) -> bool {
        let there = &self.chats[chat];
        let owed = Owed { says, reply_to: None };
        if !there.group && there.owed.last() == Some(&owed) {
            return false;
        }
        let text = match text.split_once(' ') {
            Some((command, rest)) if there.group => {
                // Shared, or what is the member's own would be answered in private.
                format!("{command}@{} {rest} share", platform.bot_username())
            }
            _ => text.to_owned(),
        };
        let said = platform.user_says_in(there.id, self.members[member].user, &text, None, None);
        let reply_to = there.group.then_some(said.message_id);
        self.chats[chat].owed.push(Owed { reply_to, ..owed });
        self.last_update = said.update_id;
        true
    }

    /// Notes what a chat is owed, unless it is owed the same already just before.
    fn owe(&mut self, chat: usize, says: Says, reply_to: Option<i32>) -> bool {
        let owed = Owed { says, reply_to };
        let chat = &mut self.chats[chat];
        if chat.owed.last() == Some(&owed) {
            return false;
        }
        chat.owed.push(owed);
        true
    }
}

/// The crop of a message that put a single one on a list (true) or took it off.
fn one_crop(message: &Message) -> Option<(bool, &'static Crop)> {
    let first = message.text.lines().next()?;
    let (added, rest) = match first.strip_prefix("On your list: ") {
        Some(rest) => (true, rest),
        None => (false, first.strip_prefix("Off your list: ")?),
    };
    let name = rest.strip_suffix('.')?;
    Some((added, CROPS.iter().find(|crop| crop.word == name)?))
}

/// The list with these on it, and what is said of that.
fn grown(list: &[&'static Crop], crops: &[&'static Crop]) -> (Vec<&'static Crop>, Says) {
    let on_list = |crop: &&&'static Crop| list.iter().any(|one| one.id == crop.id);
    let (already, new): (Vec<&'static Crop>, Vec<&'static Crop>) =
        crops.iter().copied().partition(|crop| on_list(&crop));
    let mut lines = Vec::new();
    if !new.is_empty() {
        lines.push(format!("On your list: {}.", names(&new)));
    }
    if !already.is_empty() {
        lines.push(format!("Already on your list: {}.", names(&already)));
    }
    ([list, &new].concat(), Says::List(lines))
}

/// The list without this, and what is said of that.
fn dropped(list: &[&'static Crop], crop: &'static Crop) -> (Vec<&'static Crop>, Says) {
    let rest: Vec<_> = list.iter().copied().filter(|one| one.id != crop.id).collect();
    let head = if rest.len() < list.len() { "Off your list" } else { "Not on your list" };
    (rest, Says::List(vec![format!("{head}: {}.", crop.word)]))
}

fn names(crops: &[&Crop]) -> String {
    let names: Vec<&str> = crops.iter().map(|crop| crop.word).collect();
    names.join(" and ")
}

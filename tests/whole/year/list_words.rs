//! What people write about the club's lists, and of the packets of their varieties.

use rand::Rng;
use rand::rngs::StdRng;

use super::talk::{crops, one};

/// The names of lists; most of them are there at a time.
const LISTS: [&str; 6] =
    ["Salsa bed", "Cutting garden", "First-year bed", "Long row", "Herb corner", "Shed wall"];

/// Invented names of varieties, with crops that they may be of.
const VARIETIES: [(&str, &str); 7] = [
    ("tomato", "Early Lantern"),
    ("tomato", "Copper Finch"),
    ("basil", "Quiet Harbour"),
    ("lettuce", "North Ladder"),
    ("pumpkin", "Tin Whistle"),
    ("zinnia", "Blue Thimble"),
    ("carrot", "Long Winter"),
];

/// The club's first lists.
pub fn first_lists(chance: &mut StdRng) -> [String; 3] {
    [0, 1, 2].map(|list| format!("/list new {}: {}", LISTS[list], crops(chance, 6)))
}

/// What somebody writes in the group who keeps the lists, or means to.
pub fn of_keeper(chance: &mut StdRng) -> String {
    let list = one(chance, &LISTS);
    of_list(chance, list)
}

/// What they write about this list.
pub fn of_list(chance: &mut StdRng, list: &str) -> String {
    match chance.random_range(0..12) {
        0..2 => format!("/list new {list}: {}", crops(chance, 6)),
        2..6 => format!("/list {list} + {}", crops(chance, 3)),
        6..8 => format!("/list {list} - {}", crops(chance, 5)),
        8..10 => format!("/list rename {list} to {}", one(chance, &LISTS)),
        10 => format!("/list note {list}: for the bed by gate {}", chance.random_range(1..9)),
        _ => format!("/list archive {list}"),
    }
}

/// A subscription, begun or ended.
pub fn of_subscriber(chance: &mut StdRng) -> String {
    let verb = if chance.random_bool(0.8) { "subscribe" } else { "unsubscribe" };
    format!("/list {verb} {}", one(chance, &LISTS))
}

/// The end of a subscription, and a change of that list.
pub fn of_second_thoughts(chance: &mut StdRng) -> (String, String) {
    let list = one(chance, &LISTS);
    (format!("/list unsubscribe {list}"), format!("/list {list} + {}", crops(chance, 4)))
}

/// What somebody tells of a packet, or does with what they told.
pub fn of_variety(chance: &mut StdRng) -> String {
    let (crop, name) = VARIETIES[chance.random_range(0..VARIETIES.len())];
    let (weeks, days) = (chance.random_range(2..10), chance.random_range(40..120));
    match chance.random_range(0..9) {
        0..3 => format!(
            "/variety {crop} {name}: start indoors {weeks}-{} weeks before last frost, {days} days",
            weeks + 2
        ),
        3 => format!("/variety {crop} {name}: {days}-{} days from transplanting", days + 10),
        4 => format!(
            "/variety {crop} {name}: direct sow {} weeks before last frost, {days} days",
            chance.random_range(1..5)
        ),
        5 => format!("/variety {crop}: sow outdoors after danger of frost, {days} days"),
        6 => format!("/variety remove {name}"),
        7 => format!("can I start {name} now?"),
        _ => "/variety".to_owned(),
    }
}

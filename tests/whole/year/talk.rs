//! What people write.

use rand::rngs::StdRng;
use rand::seq::IndexedRandom;
use rand::{Rng, RngCore};

use super::list_words;
use super::people::Place;

const CROPS: [&str; 32] = [
    "tomato",
    "pepper",
    "eggplant",
    "cucumber",
    "zucchini",
    "pumpkin",
    "melon",
    "basil",
    "dill",
    "parsley",
    "kale",
    "broccoli",
    "cabbage",
    "cauliflower",
    "lettuce",
    "spinach",
    "leek",
    "onion",
    "garlic",
    "shallot",
    "carrot",
    "beet",
    "radish",
    "parsnip",
    "pea",
    "pole bean",
    "corn",
    "potato",
    "sweet potato",
    "zinnia",
    "cosmos",
    "sunflower",
];

/// Packets of varieties, two of one crop among them.
const PACKETS: [&str; 4] = [
    "tomato Early Robin: start indoors 6-8 weeks before last frost, 60 days",
    "tomato Long Lantern: start indoors 8-10 weeks before last frost, 95 days",
    "lettuce Pale Otter: 45 days",
    "remove Early Robin",
];

/// Sowings of them.
const NAMED: [&str; 3] =
    ["12 Early Robin tomatoes", "6 Long Lantern tomatoes", "9 Pale Otter lettuce"];

const CITIES: [&str; 8] =
    ["Denver", "Auckland", "Helsinki", "Santiago", "London", "Hobart", "Tokyo", "Johannesburg"];

/// One of these.
pub fn one<'a>(chance: &mut StdRng, of: &[&'a str]) -> &'a str {
    of.choose(chance).copied().unwrap_or_default()
}

/// Some crops of the list.
pub fn crops(chance: &mut StdRng, most: usize) -> String {
    let count = chance.random_range(1..=most);
    let some: Vec<&str> = (0..count).map(|_| one(chance, &CROPS)).collect();
    some.join(", ")
}

/// Frost dates near those of a place: some days earlier or later.
pub fn frost(chance: &mut StdRng, place: Place) -> String {
    let near = |date: &str, chance: &mut StdRng| {
        let (month, day) = date.split_once('-').expect("a month and a day");
        let day: u32 = day.parse().expect("a day");
        let moved = (day + chance.random_range(0..9)).saturating_sub(4).clamp(1, 28);
        format!("{month}-{moved:02}")
    };
    let (last, first) = place.frost.split_once(' ').expect("two dates");
    format!("{} {}", near(last, chance), near(first, chance))
}

/// What somebody writes in the private chat on an ordinary day.
pub fn in_private(chance: &mut StdRng, place: Place) -> String {
    match chance.next_u32() % 120 {
        100..110 => list_words::of_variety(chance),
        110..117 => list_words::of_subscriber(chance),
        117..120 => "/lists".to_owned(),
        0..16 => format!("/grow {}", crops(chance, 4)),
        16..24 => format!("/drop {}", crops(chance, 2)),
        24..32 => format!("/frost {}", frost(chance, place)),
        32..40 => {
            let count = chance.random_range(1..40);
            format!("/sown {} {count}", one(chance, &CROPS))
        }
        40..42 => format!("sowed {} yesterday", one(chance, &CROPS)),
        42 => format!("/variety {}", one(chance, &PACKETS)),
        43 => format!("sowed {} today", one(chance, &NAMED)),
        44..52 => "/undo".to_owned(),
        52..58 => format!("/hold {} days", chance.random_range(1..15)),
        58..61 => "/hold off".to_owned(),
        61..64 => format!("/zone {}", one(chance, &CITIES)),
        64..66 => format!("/zone {}", place.city),
        66..71 => format!("/hour {}:{:02}", chance.random_range(5..20), chance.random_range(0..60)),
        71..76 => "/now".to_owned(),
        76..79 => "/mycrops".to_owned(),
        79..82 => "/sowings".to_owned(),
        82..84 => "/settings".to_owned(),
        84..87 => format!("/place {}", one(chance, &["windowsill", "greenhouse", "cold frame"])),
        87..89 => "/frost".to_owned(),
        89..91 => {
            let days = ["Sunday", "Saturday and Sunday", "Monday, Wednesday", "never"];
            format!("/quiet {}", one(chance, &days))
        }
        91..93 => {
            let ends = ["in two weeks", "next Saturday", "tomorrow", "off"];
            format!("/holiday until {}", one(chance, &ends))
        }
        93..94 => "/weekends".to_owned(),
        94..95 => "/holiday off".to_owned(),
        95..97 => one(chance, &["05-10 10-01", "7", "London", "tomato", "never"]).to_owned(),
        97..98 => "/club".to_owned(),
        _ => format!("can I start {} now?", one(chance, &CROPS)),
    }
}

/// What changes most of what a reminder could say.
pub fn changes_mind(chance: &mut StdRng, place: Place) -> String {
    match chance.next_u32() % 8 {
        6 => list_words::of_variety(chance),
        7 => list_words::of_subscriber(chance),
        0 => "/drop everything".to_owned(),
        1 => format!("/frost {}", frost(chance, place)),
        2 => "/undo".to_owned(),
        3 => format!("/hour {}:00", chance.random_range(12..20)),
        4 => format!("/zone {}", one(chance, &CITIES)),
        _ => format!("/hold {} days", chance.random_range(3..20)),
    }
}

/// What somebody writes to the bot in a group.
pub fn in_group(chance: &mut StdRng) -> String {
    match chance.next_u32() % 6 {
        4 => list_words::of_subscriber(chance),
        5 => "/lists".to_owned(),
        0 => format!("/grow {}", crops(chance, 2)),
        1 => "/now".to_owned(),
        _ => format!("/ask can I start {} now?", one(chance, &CROPS)),
    }
}

/// What a coordinator writes in the group.
pub fn of_coordinator(chance: &mut StdRng, place: Place) -> String {
    match chance.next_u32() % 12 {
        7 | 10 | 11 => {
            format!("/club digest {} 8:00", one(chance, &["Monday", "Friday", "Sunday"]))
        }
        8 => "/club digest off".to_owned(),
        0..3 => format!("/club frost {}", frost(chance, place)),
        3 => format!("/club zone {}", place.city),
        4 => format!("/club zone {}", one(chance, &CITIES)),
        5..7 => format!("/club hold {} days", chance.random_range(1..10)),
        _ => "/club hold off".to_owned(),
    }
}

//! A club's lists of crops, and what a member grows by them and by their own choice.

use std::collections::HashSet;

use crate::planning::CropId;

/// The store's number of a list; never used again.
pub type ListId = i64;

/// The most lists that a club keeps at a time.
pub const MOST_LISTS: usize = 20;

/// The most crops on one list.
pub const MOST_LIST_CROPS: usize = 60;

/// The most characters of a list's name.
pub const LONGEST_LIST_NAME: usize = 30;

/// The most characters of a list's line of text.
pub const LONGEST_LIST_NOTE: usize = 200;

/// The most helpers of a club.
pub const MOST_HELPERS: usize = 20;

/// The letters and digits of a code that shares a list: none that looks like another (no `0` and
/// `O`, no `1`, `I` and `L`, no `U` and `V`).
pub const CODE_ALPHABET: &[u8; 29] = b"ABCDEFGHJKMNPQRSTWXYZ23456789";

/// How long such a code is: 29 to the power of 8 is some 500 thousand million.
pub const CODE_LENGTH: usize = 8;

/// A list that a club keeps.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ClubList {
    /// The store's number.
    pub id: ListId,
    /// Its name, 1 to [`LONGEST_LIST_NAME`] characters.
    pub name: String,
    /// A line of text about it, at most [`LONGEST_LIST_NOTE`] characters.
    pub note: Option<String>,
    /// Its crops, in the order they were added; at most [`MOST_LIST_CROPS`].
    pub crops: Vec<CropId>,
    /// How many members subscribe to it.
    pub subscribers: usize,
    /// The code with which another club copies it, once it is shared.
    pub code: String,
    /// Whether it was shared.
    pub shared: bool,
    /// Whether it was archived: it is in nobody's plan, and no code leads to it.
    pub archived: bool,
}

/// A list that a member subscribes to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Subscribed {
    /// The store's number.
    pub id: ListId,
    /// Its name.
    pub name: String,
    /// Its crops, in the order they were added.
    pub crops: Vec<CropId>,
}

/// What a member grows, and why: their own choice, and their club's lists but for what they skip.
///
/// This is the one place that says which crops are in a member's plan.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Growing {
    /// What they chose themselves, in the order they were added.
    pub own: Vec<CropId>,
    /// The lists they subscribe to, of the club whose settings hold.
    pub lists: Vec<Subscribed>,
    /// What they leave out whichever list names it.
    pub skipped: Vec<CropId>,
}

impl Growing {
    /// The crops of the member's plan: their own, then those of the lists that are not skipped.
    /// A crop that is their own choice stands, skipped or not.
    #[must_use]
    pub fn crops(&self) -> Vec<CropId> {
        let skipped: HashSet<&CropId> = self.skipped.iter().collect();
        let of_lists = self.lists.iter().flat_map(|list| &list.crops);
        let all = self.own.iter().chain(of_lists.filter(|crop| !skipped.contains(crop)));
        let mut seen = HashSet::new();
        all.filter(|crop| seen.insert(*crop)).cloned().collect()
    }

    /// The subscribed lists that name a crop.
    pub fn lists_with<'a>(&'a self, crop: &'a CropId) -> impl Iterator<Item = &'a Subscribed> {
        self.lists.iter().filter(move |list| list.crops.contains(crop))
    }

    /// Whether a crop is in the plan because of a list.
    #[must_use]
    pub fn by_list(&self, crop: &CropId) -> bool {
        !self.skipped.contains(crop) && self.lists_with(crop).next().is_some()
    }

    /// What a list names and the member skips, and does not grow by their own choice either.
    #[must_use]
    pub fn left_out(&self) -> Vec<CropId> {
        let named = |crop: &&CropId| self.lists_with(crop).next().is_some();
        let left_out = self.skipped.iter().filter(|crop| !self.own.contains(crop));
        left_out.filter(named).cloned().collect()
    }
}

/// A subscribed list that changed since its subscriber was last told of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ListNews {
    /// The list.
    pub list: ListId,
    /// Its name now.
    pub name: String,
    /// Whether it was archived.
    pub archived: bool,
    /// The crops as they were told last.
    pub before: Vec<CropId>,
    /// The crops now; none where it was archived.
    pub now: Vec<CropId>,
}

impl ListNews {
    /// The crops that came.
    #[must_use]
    pub fn came(&self) -> Vec<CropId> {
        self.now.iter().filter(|crop| !self.before.contains(crop)).cloned().collect()
    }

    /// The crops that went.
    #[must_use]
    pub fn went(&self) -> Vec<CropId> {
        self.before.iter().filter(|crop| !self.now.contains(crop)).cloned().collect()
    }

    /// Whether there is anything to tell; what came and went again is not worth a word.
    #[must_use]
    pub fn worth_telling(&self) -> bool {
        !self.came().is_empty() || !self.went().is_empty()
    }
}

/// A helper of a club.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Helper {
    /// The member.
    pub member: super::MemberId,
    /// The platform's id of the person.
    pub user: i64,
    /// Their first name.
    pub name: String,
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn ids(names: &[&str]) -> Vec<CropId> {
        names.iter().map(|name| CropId::new(*name)).collect()
    }

    fn list(id: ListId, crops: &[&str]) -> Subscribed {
        Subscribed { id, name: format!("List {id}"), crops: ids(crops) }
    }

    #[test]
    fn a_members_own_choice_wins_over_lists() {
        let growing = Growing {
            own: ids(&["basil", "tomato"]),
            lists: vec![list(1, &["tomato", "onion", "dill"]), list(2, &["dill", "leek"])],
            skipped: ids(&["dill", "basil", "kale"]),
        };
        assert_eq!(growing.crops(), ids(&["basil", "tomato", "onion", "leek"]));
        assert!(growing.by_list(&CropId::new("onion")));
        assert!(!growing.by_list(&CropId::new("dill")), "it is skipped");
        // Basil is their own, and no list names kale: neither is left out of anything.
        assert_eq!(growing.left_out(), ids(&["dill"]));
        let dill = CropId::new("dill");
        assert_eq!(growing.lists_with(&dill).map(|list| list.id).collect::<Vec<_>>(), [1, 2]);
    }

    #[test]
    fn news_is_what_differs_in_the_end() {
        let news = |before: &[&str], now: &[&str]| ListNews {
            list: 1,
            name: "Salsa bed".to_owned(),
            archived: false,
            before: ids(before),
            now: ids(now),
        };
        let changed = news(&["tomato", "onion"], &["onion", "basil"]);
        assert_eq!((changed.came(), changed.went()), (ids(&["basil"]), ids(&["tomato"])));
        assert!(changed.worth_telling());
        assert!(!news(&["tomato", "onion"], &["onion", "tomato"]).worth_telling());
    }

    #[test]
    fn no_letter_of_a_code_looks_like_another() {
        let letters: HashSet<u8> = CODE_ALPHABET.iter().copied().collect();
        assert_eq!(letters.len(), CODE_ALPHABET.len());
        assert!(b"0O1ILUV".iter().all(|alike| !letters.contains(alike)));
    }

    fn some_ids() -> impl Strategy<Value = Vec<CropId>> {
        proptest::collection::vec("[a-f]", 0..6)
            .prop_map(|names| names.into_iter().map(CropId::new).collect())
    }

    proptest! {
        /// Own list + subscribed lists − skips, each crop once.
        #[test]
        fn the_plan_is_the_own_choice_and_the_lists_without_what_is_skipped(
            own in some_ids(), one in some_ids(), other in some_ids(), skipped in some_ids()
        ) {
            let lists = [one, other].into_iter().map(|crops| Subscribed {
                id: 1, name: String::new(), crops,
            }).collect();
            let growing = Growing { own, lists, skipped };
            let plan = growing.crops();
            let once: HashSet<&CropId> = plan.iter().collect();
            prop_assert_eq!(once.len(), plan.len());
            for name in ["a", "b", "c", "d", "e", "f"] {
                let crop = CropId::new(name);
                let expected = growing.own.contains(&crop) || growing.by_list(&crop);
                prop_assert_eq!(plan.contains(&crop), expected, "{}", name);
            }
        }
    }
}

//! What a member tells of a sowing: "12 basil indoors on 3 April", "basil came up".

use chrono::NaiveDate;

use super::crops::{Named, as_written, joined};
use super::dates::{DateFound, When};
use super::line::{Item, ItemLine, Sort, WordLine};
use super::pattern::matches_anywhere;
use super::strange::strange_beside;
use super::words::{Pause, Word};
use super::{
    CropList, Figure, LIST_CHARACTERS, Temperature, Understanding, UnknownName, intent, sort,
};
use crate::catalogue::{AmbiguousWord, Meaning};
use crate::planning::{CropId, MonthDay, Step, Way};

/// The day that was told.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ToldDay {
    /// None was named.
    NotSaid,
    /// This day; it may lie in the future.
    On(NaiveDate),
    /// What was written is no day of any calendar, or one beyond reckoning.
    Impossible(String),
}

/// What was told of sowings.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SownText {
    /// The crops, each with how many where that was said.
    pub crops: Vec<(CropId, Option<u32>)>,
    /// The number of the asker's own variety that was named for each of them, in the same order;
    /// none at the end where none was.
    pub varieties: Vec<Option<i64>>,
    /// Indoors or in place, where that was said.
    pub way: Option<Way>,
    /// The day.
    pub on: ToldDay,
    /// A temperature of the soil or the room that was named.
    pub warmth: Option<Temperature>,
    /// Words that may mean several crops, each with how many where that was said.
    pub ambiguous: Vec<(AmbiguousWord, Option<u32>)>,
    /// Names that are no crop's.
    pub unknown: Vec<UnknownName>,
    /// Words beside a crop's name that may name a variety and are none of the asker's, with the
    /// crop: "pepper King of the North".
    pub strange: Vec<(CropId, String)>,
    /// A number whose meaning is not clear, as it was written.
    pub stray: Option<String>,
}

impl SownText {
    /// The text once its first word of several meanings that can mean `crop` is taken for it.
    #[must_use]
    pub fn meaning(mut self, crop: &CropId) -> Self {
        if let Some(at) = self.ambiguous.iter().position(|(word, _)| word.means.contains(crop)) {
            let (_, count) = self.ambiguous.remove(at);
            self.crops.push((crop.clone(), count));
        }
        self
    }
}

/// What became of a sowing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CameUp {
    /// It came up.
    Yes,
    /// Nothing came up.
    No,
}

/// What one word of the text is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Role {
    /// Part of a date.
    Date,
    /// Part of a crop's name.
    Crop,
    /// How many plants.
    Count(u32),
    /// A number, and its unit, that counts something else.
    Measure,
    /// A number that says nothing clear.
    Stray,
    /// Anything else.
    Other,
}

impl Understanding {
    /// What a text tells of sowings, on the day `today`. The text is what follows "sowed".
    #[must_use]
    pub fn sown_in(&self, text: &str, today: NaiveDate) -> SownText {
        let (warmth, text) = self.phrases.temperature_told(text, LIST_CHARACTERS);
        self.sown_in_words(&self.words(&text, LIST_CHARACTERS), &[], warmth, today)
    }

    /// What words tell of sowings, beside the temperature that was told with them; `own` are the
    /// varieties that are named beside words, each with the word's number.
    pub(super) fn sown_in_words(
        &self,
        words: &[Word],
        own: &[(usize, i64)],
        warmth: Option<Temperature>,
        today: NaiveDate,
    ) -> SownText {
        let mentions = self.names.mentions(words, &self.phrases);
        let mut roles = vec![Role::Other; words.len()];
        for mention in &mentions {
            mark(&mut roles, mention.from, mention.to, Role::Crop);
        }
        let dates = self.told_dates(words, &roles);
        for date in &dates {
            mark(&mut roles, date.from, date.to, Role::Date);
        }
        self.numbers(words, &mut roles);
        let mut told = SownText {
            crops: Vec::new(),
            varieties: Vec::new(),
            way: self.way_told(words, &mentions, &dates),
            on: told_day(words, &dates, today),
            warmth,
            ambiguous: Vec::new(),
            unknown: Vec::new(),
            strange: Vec::new(),
            stray: None,
        };
        let mut from = 0;
        for to in self.segment_ends(words, &roles) {
            let before = told.crops.len();
            self.segment(words, &roles, &mentions, own, (from, to), &mut told);
            let named = mentions.iter().filter(|m| (from..to).contains(&m.from));
            let crops = named.filter(|m| matches!(m.named, Named::Known(Meaning::Crop(_))));
            told.varieties.extend(crops.take(told.crops.len() - before).map(|mention| {
                let here = own.iter().find(|(at, _)| (mention.from..mention.to).contains(at));
                here.map(|(_, variety)| *variety)
            }));
            from = to;
        }
        told
    }

    /// Whether a text tells that a sowing came up or did not; a question tells nothing.
    #[must_use]
    pub fn came_up_in(&self, text: &str) -> Option<CameUp> {
        if text.contains('?') {
            return None;
        }
        let words = self.words(text, LIST_CHARACTERS);
        let line = WordLine { words: &words, calendar: &self.phrases.calendar };
        let tells = |patterns: &[_]| matches_anywhere(patterns, &line, 0..words.len());
        let phrases = &self.phrases.sowing;
        if tells(&phrases.unless) {
            None
        } else if tells(&phrases.not_up) {
            Some(CameUp::No)
        } else if tells(&phrases.came_up) {
            Some(CameUp::Yes)
        } else {
            None
        }
    }

    /// "8 of 12": how many came up, of how many, where a text gives both.
    #[must_use]
    pub fn sprouted_in(&self, text: &str) -> Option<(Figure, Figure)> {
        self.phrases.quantities_in(text).sprouted
    }

    /// The dates, "04-03" among them.
    fn told_dates(&self, words: &[Word], roles: &[Role]) -> Vec<DateFound> {
        let free = |at: usize| roles.get(at) == Some(&Role::Other);
        let mut dates = self.phrases.dates_in(words, free);
        // "4/3" is left to be asked about.
        dates.retain(|date| date.when != When::Unclear);
        for (at, word) in words.iter().enumerate() {
            let month_day = word.plain.len() == 5 && word.plain.contains('-');
            if month_day && free(at) {
                let when = word.plain.parse::<MonthDay>().map_or(When::Impossible, When::Yearly);
                dates.push(DateFound { from: at, to: at + 1, when });
            }
        }
        dates.sort_by_key(|date| date.from);
        dates
    }

    fn way_told(
        &self,
        words: &[Word],
        mentions: &[super::crops::Mention<'_>],
        dates: &[DateFound],
    ) -> Option<Way> {
        let mut stretches: Vec<Item> = dates
            .iter()
            .map(|date| Item { sort: Sort::Date, from: date.from, to: date.to })
            .chain(mentions.iter().map(|m| Item { sort: sort(&m.named), from: m.from, to: m.to }))
            .collect();
        stretches.sort_by_key(|item| item.from);
        let line = ItemLine::new(words, &stretches);
        match intent::step(&line, &self.phrases)? {
            Step::SowIndoors => Some(Way::Indoors),
            Step::SowOutdoors => Some(Way::Outdoors),
            _ => None,
        }
    }

    /// Tells the numbers' roles.
    fn numbers(&self, words: &[Word], roles: &mut [Role]) {
        let not_counts = &self.phrases.sowing.not_counts;
        for (at, word) in words.iter().enumerate() {
            if roles.get(at) != Some(&Role::Other) {
                continue;
            }
            let measures = |next: &Word| next.id.is_some_and(|id| not_counts.contains(&id));
            let in_words = word.id.and_then(|id| self.phrases.calendar.numbers.get(&id).copied());
            let article = |id| self.phrases.sowing.articles.contains(&id);
            let in_words = in_words.filter(|_| !word.id.is_some_and(article));
            let counts = words.get(at + 1).is_none_or(|next| !measures(next));
            let role = if !word.plain.is_empty() && word.plain.bytes().all(|b| b.is_ascii_digit()) {
                Role::Count(word.plain.parse().unwrap_or(u32::MAX))
            } else if let Some(number) = in_words {
                Role::Count(number)
            } else if word.has_digit() {
                Role::Stray
            } else {
                Role::Other
            };
            let role = if counts || role == Role::Other { role } else { Role::Measure };
            mark(roles, at, at + 1, role);
        }
    }

    /// Where the pieces of the text end: at commas, at "and" and at the ends of lines.
    fn segment_ends(&self, words: &[Word], roles: &[Role]) -> Vec<usize> {
        let is_and = |at: usize| {
            let word = words.get(at).and_then(|word| word.id);
            roles.get(at) == Some(&Role::Other)
                && word.is_some_and(|id| self.phrases.and.contains(&id))
        };
        let pauses = |at: usize| words.get(at).is_some_and(|word| word.pause != Pause::None);
        let mut ends: Vec<usize> =
            (0..words.len()).filter(|at| pauses(*at) || is_and(*at)).map(|at| at + 1).collect();
        if ends.last() != Some(&words.len()) {
            ends.push(words.len());
        }
        ends
    }

    /// Adds what one piece tells: a crop with its number, or a name that is none.
    fn segment(
        &self,
        words: &[Word],
        roles: &[Role],
        mentions: &[super::crops::Mention<'_>],
        own: &[(usize, i64)],
        (from, to): (usize, usize),
        told: &mut SownText,
    ) {
        let within: Vec<_> = mentions.iter().filter(|m| (from..to).contains(&m.from)).collect();
        let mut counts: Vec<(usize, u32)> = Vec::new();
        for at in from..to {
            match roles.get(at) {
                Some(Role::Count(count)) => counts.push((at, *count)),
                Some(Role::Stray) => {
                    told.stray = words.get(at).map(|word| word.written.clone());
                }
                _ => {}
            }
        }
        if counts.len() > within.len().max(1) || (counts.len() == 1 && within.is_empty()) {
            let (at, _) = counts.last().copied().unwrap_or_default();
            told.stray = words.get(at).map(|word| word.written.clone());
        }
        if within.is_empty() {
            self.unknown_name(words, roles, (from, to), told);
        }
        for (index, mention) in within.iter().enumerate() {
            // A number stands before the name ("12 basil") or, where none does, behind it.
            let before = within.get(..index).and_then(|m| m.last()).map_or(from, |m| m.to);
            let after = within.get(index + 1).map_or(to, |m| m.from);
            let count = counts
                .iter()
                .find(|(at, _)| (before..mention.from).contains(at))
                .or_else(|| counts.iter().find(|(at, _)| (mention.to..after).contains(at)))
                .map(|(_, count)| *count);
            let written = || as_written(words.get(mention.from..mention.to).unwrap_or_default());
            match &mention.named {
                Named::Known(Meaning::Crop(id)) => {
                    let own = own.iter().any(|(at, _)| (mention.from..mention.to).contains(at));
                    let around = (before, mention.from, mention.to, after);
                    let strange = (!own).then(|| strange_beside(words, roles, around)).flatten();
                    told.strange.extend(strange.map(|written| (id.clone(), written)));
                    told.crops.push((id.clone(), count));
                }
                Named::Known(Meaning::Ambiguous(word)) => {
                    told.ambiguous.push((word.clone(), count));
                }
                Named::Between(near) => {
                    told.unknown.push(UnknownName { written: written(), near: near.clone() });
                }
                Named::NoCrop => {
                    told.unknown.push(UnknownName { written: written(), near: Vec::new() });
                }
            }
        }
    }

    fn unknown_name(
        &self,
        words: &[Word],
        roles: &[Role],
        (from, to): (usize, usize),
        told: &mut SownText,
    ) {
        let strange: Vec<Word> = words
            .iter()
            .zip(roles)
            .take(to)
            .skip(from)
            .filter(|(word, role)| **role == Role::Other && word.id.is_none())
            .map(|(word, _)| word.clone())
            .collect();
        if strange.is_empty() {
            return;
        }
        let mut list = CropList::default();
        let near = self.names.offered(&joined(&strange));
        list.add_unknown(UnknownName { written: as_written(&strange), near });
        told.unknown.extend(list.unknown);
    }
}

fn mark(roles: &mut [Role], from: usize, to: usize, role: Role) {
    roles.iter_mut().take(to).skip(from).for_each(|is| *is = role);
}

fn told_day(words: &[Word], dates: &[DateFound], today: NaiveDate) -> ToldDay {
    let Some(date) = dates.first() else { return ToldDay::NotSaid };
    let written = || as_written(words.get(date.from..date.to).unwrap_or_default());
    let day = date.when.counted_back(today);
    day.map_or_else(|| ToldDay::Impossible(written()), ToldDay::On)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;

    fn english() -> &'static Understanding {
        static ENGLISH: std::sync::OnceLock<Understanding> = std::sync::OnceLock::new();
        ENGLISH.get_or_init(|| {
            Understanding::english(&Catalogue::embedded().expect("the catalogue")).expect("English")
        })
    }

    fn told(text: &str) -> SownText {
        english().sown_in(text, "2026-04-22".parse().expect("a date"))
    }

    fn crops(text: &str) -> Vec<(String, Option<u32>)> {
        told(text).crops.into_iter().map(|(id, count)| (id.to_string(), count)).collect()
    }

    #[test]
    fn crops_come_with_their_numbers() {
        for (text, is) in [
            ("12 basil today", vec![("basil", Some(12))]),
            ("basil 12 on 3 April", vec![("basil", Some(12))]),
            ("basil, tomato", vec![("basil", None), ("tomato", None)]),
            ("20 peppers indoors on 3 April", vec![("pepper", Some(20))]),
            ("tomatoes yesterday", vec![("tomato", None)]),
            ("twelve basil and 6 peppers", vec![("basil", Some(12)), ("pepper", Some(6))]),
            ("2 rows of peas", vec![("pea", None)]),
            ("a tray of basil", vec![("basil", None)]),
            ("12 cells of basil at 18 °C", vec![("basil", Some(12))]),
            ("0 basil", vec![("basil", Some(0))]),
            ("10000 basil", vec![("basil", Some(10_000))]),
            ("99999999999 basil", vec![("basil", Some(u32::MAX))]),
            ("4 four o'clocks", vec![("four_oclock", Some(4))]),
        ] {
            let is: Vec<_> = is.into_iter().map(|(id, n)| (id.to_owned(), n)).collect();
            assert_eq!(crops(text), is, "{text}");
            assert_eq!(told(text).stray, None, "{text}");
        }
    }

    #[test]
    fn days_lie_before_today_and_impossible_ones_are_told() {
        let on = |text: &str| told(text).on;
        let day = |text: &str| ToldDay::On(text.parse().expect("a date"));
        assert_eq!(on("basil"), ToldDay::NotSaid);
        assert_eq!(on("basil today"), day("2026-04-22"));
        assert_eq!(on("basil yesterday"), day("2026-04-21"));
        assert_eq!(on("basil 3 days ago"), day("2026-04-19"));
        assert_eq!(on("basil two weeks ago"), day("2026-04-08"));
        assert_eq!(on("basil last saturday"), day("2026-04-18"));
        assert_eq!(on("basil on Saturday"), day("2026-04-18"));
        assert_eq!(on("basil on 3 April"), day("2026-04-03"));
        assert_eq!(on("basil 12 on 04-03"), day("2026-04-03"));
        assert_eq!(on("basil 2026-04-03"), day("2026-04-03"));
        assert_eq!(on("basil tomorrow"), day("2026-04-23"));
        assert_eq!(on("basil on 30 April"), day("2026-04-30"));
        assert_eq!(on("basil on 31 April"), ToldDay::Impossible("31 April".to_owned()));
        assert_eq!(on("basil 02-30"), ToldDay::Impossible("02-30".to_owned()));
    }

    #[test]
    fn the_way_is_told() {
        assert_eq!(told("20 peppers indoors on 3 April").way, Some(Way::Indoors));
        assert_eq!(told("peas outside").way, Some(Way::Outdoors));
        assert_eq!(told("beans in the ground").way, Some(Way::Outdoors));
        assert_eq!(told("beans").way, None);
    }

    #[test]
    fn the_temperature_of_soil_or_room_is_told() {
        use crate::club::Units;
        let celsius = |text: &str, units| {
            let told = told(text);
            assert_eq!((told.stray, told.unknown.len()), (None, 0), "{text}");
            assert_eq!(told.crops.len(), 1, "{text}");
            told.warmth.map(|warmth| warmth.celsius(units))
        };
        for (text, degrees) in [
            ("basil at 18 °C", Some(18.0)),
            ("basil at 18C", Some(18.0)),
            ("12 basil today, soil is 14 °C", Some(14.0)),
            ("12 basil today, the soil is 14.5°C", Some(14.5)),
            ("12 basil on 3 April in a room of 68°F", Some(20.0)),
            ("basil at 50 degrees fahrenheit", Some(10.0)),
            ("basil, room is 18", Some(18.0)),
            ("basil in the greenhouse at 18 degrees", Some(18.0)),
            ("basil, soil is -2 °C", Some(-2.0)),
            ("a bed of 12 basil", None),
            ("12 basil in the greenhouse", None),
            ("basil", None),
        ] {
            assert_eq!(celsius(text, Units::Metric), degrees, "{text}");
        }
        assert_eq!(celsius("basil, room is 68", Units::Customary), Some(20.0));
        assert_eq!(told("12 basil today, soil is 14 °C").crops[0].1, Some(12));
        assert_eq!(told("a bed of 12 basil").crops[0].1, Some(12));
        assert_eq!(told("basil 6 at 18 °C").crops[0].1, Some(6));
    }

    #[test]
    fn what_is_not_clear_is_not_guessed() {
        assert_eq!(told("basil 4/3").stray.as_deref(), Some("4/3"));
        assert_eq!(told("basil 12 13").stray.as_deref(), Some("13"));
        assert_eq!(told("12").stray.as_deref(), Some("12"));
        assert_eq!(told("basil, foozleberry").unknown[0].written, "foozleberry");
        let marigolds = told("12 marigolds");
        assert_eq!(marigolds.ambiguous.len(), 1);
        let calendula = marigolds.meaning(&CropId::new("calendula"));
        assert_eq!(calendula.crops, [(CropId::new("calendula"), Some(12))]);
        assert!(calendula.ambiguous.is_empty());
        assert!(told("").crops.is_empty());
    }

    #[test]
    fn what_became_of_a_sowing() {
        let up = |text: &str| english().came_up_in(text);
        for text in
            ["basil came up", "the basil is up", "my peppers have come up", "peas germinated"]
        {
            assert_eq!(up(text), Some(CameUp::Yes), "{text}");
        }
        for text in [
            "nothing came up",
            "no basil came up",
            "the basil hasn't come up",
            "peas didn't germinate",
        ] {
            assert_eq!(up(text), Some(CameUp::No), "{text}");
        }
        for text in [
            "has basil come up?",
            "when will basil come up",
            "how long until basil is up",
            "basil",
            "can I pot up basil",
            "what if nothing came up",
        ] {
            assert_eq!(up(text), None, "{text}");
        }
    }

    proptest::proptest! {
        #[test]
        fn no_text_upsets_it(text in ".{0,80}") {
            let _ = told(&text);
            let _ = english().came_up_in(&text);
        }
    }
}

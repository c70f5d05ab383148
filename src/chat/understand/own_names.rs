//! Names that only one gardener uses: those of their varieties.

use super::crops::Named;
use super::words::{Pause, Word};
use super::{
    Intent, LIST_CHARACTERS, QUESTION_CHARACTERS, SownText, Subject, Understanding, Understood,
};
use crate::catalogue::{Meaning, normalise};
use crate::club::Variety;
use crate::planning::CropId;
use chrono::NaiveDate;

/// The name of a variety, and what it stands for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnName {
    /// The variety's number.
    pub variety: i64,
    /// Its crop.
    pub crop: CropId,
    words: Vec<String>,
}

impl OwnName {
    /// The names of those varieties that have one.
    #[must_use]
    pub fn all(varieties: &[Variety]) -> Vec<Self> {
        varieties
            .iter()
            .filter_map(|variety| {
                let words: Vec<String> =
                    normalise(variety.name.as_deref()?).split(' ').map(ToOwned::to_owned).collect();
                Some(Self { variety: variety.id, crop: variety.crop.clone(), words })
            })
            .collect()
    }

    /// Whether `words` begin with the name, also with a plural's s at its end.
    fn begins(&self, words: &[Word]) -> bool {
        let count = self.words.len();
        let Some(written) = words.get(..count).filter(|_| count > 0) else { return false };
        written.iter().zip(&self.words).enumerate().all(|(at, (word, name))| {
            let last = at + 1 == count;
            let same = word.plain == *name
                || (last && word.plain.strip_suffix('s').is_some_and(|stem| stem == name));
            same && (last || word.pause == Pause::None)
        })
    }
}

impl Understanding {
    /// As [`Understanding::understand_after`], with the names of the asker's own varieties: each stands
    /// for its crop. Beside it the numbers of the varieties that were named, each once.
    #[must_use]
    pub fn understand_own(
        &self,
        text: &str,
        today: NaiveDate,
        own: &[OwnName],
        before: Option<&Subject>,
    ) -> (Understood, Vec<i64>) {
        let OwnWords { words, named, .. } =
            self.with_own(&self.words(text, QUESTION_CHARACTERS), own);
        (self.understand_words(text, words, today, before), named)
    }

    /// As [`Understanding::sown_in`], with the names of the member's own varieties.
    #[must_use]
    pub fn sown_in_own(&self, text: &str, today: NaiveDate, own: &[OwnName]) -> SownText {
        let (warmth, text) = self.phrases.temperature_told(text, LIST_CHARACTERS);
        let own = self.with_own(&self.words(&text, LIST_CHARACTERS), own);
        self.sown_in_words(&own.words, &own.at, warmth, today)
    }

    /// The crops that a text names anywhere, each with whether one word may mean several, and the
    /// words that name none, as they were written.
    #[must_use]
    pub fn crops_and_rest(&self, text: &str) -> (Vec<Meaning>, Vec<String>) {
        let words = self.words(text, QUESTION_CHARACTERS);
        let mentions = self.names.mentions(&words, &self.phrases);
        let mut crops: Vec<Meaning> = Vec::new();
        let mut named = vec![false; words.len()];
        for mention in &mentions {
            let Named::Known(meaning) = &mention.named else { continue };
            named.iter_mut().take(mention.to).skip(mention.from).for_each(|word| *word = true);
            if !crops.contains(*meaning) {
                crops.push((*meaning).clone());
            }
        }
        let rest = words.iter().zip(named).filter(|(_, named)| !named);
        (crops, rest.map(|(word, _)| word.written.clone()).collect())
    }

    /// Whether a name is made of nothing but words that questions and dates are made of, so that
    /// it could not be told from them. Several such words together are a name, "Long One", where
    /// they say nothing to the bot: no question, no step and no day.
    #[must_use]
    pub fn is_common(&self, name: &str) -> bool {
        let words = self.words(name, QUESTION_CHARACTERS);
        let known = words
            .iter()
            .all(|word| word.id.is_some() || word.plain.chars().all(|c| c.is_ascii_digit()));
        // Short words, such as "can I", stand side by side in any question.
        let long = words.len() > 1 && words.iter().any(|word| word.plain.chars().count() > 3);
        known && !(long && self.says_nothing(name, words))
    }

    fn says_nothing(&self, name: &str, words: Vec<Word>) -> bool {
        // Which day it is makes no difference to whether one is named.
        let read = self.understand_words(name, words, NaiveDate::default(), None);
        read.intent == Intent::Unknown
            && read.step.is_none()
            && !read.date_given
            && read.date_trouble.is_none()
    }

    /// The words with each own name taken out beside its crop's name, and put for its crop's name
    /// where that does not stand beside it.
    fn with_own(&self, words: &[Word], own: &[OwnName]) -> OwnWords {
        let mut all: Vec<Word> = Vec::with_capacity(words.len());
        let mut named: Vec<i64> = Vec::new();
        let mut stands: Vec<(usize, i64)> = Vec::new();
        let mut at = 0;
        while let Some(rest) = words.get(at..).filter(|rest| !rest.is_empty()) {
            let Some((count, meant)) = self.own_name_at(rest, &all, own) else {
                all.extend(rest.first().cloned());
                at += 1;
                continue;
            };
            let pause = rest.get(count - 1).map_or(Pause::None, |word| word.pause);
            if let Some(beside) = meant.beside {
                let word = match beside {
                    Beside::Before => all.len(),
                    Beside::Behind => all.len().saturating_sub(1),
                };
                stands.extend(meant.varieties.iter().map(|(_, variety)| (word, *variety)));
                if let Some(last) = all.last_mut() {
                    last.pause = last.pause.max(pause);
                }
            } else {
                for crop in &meant.crops {
                    let of_crop = meant.varieties.iter().filter(|(of, _)| of == crop);
                    stands.extend(of_crop.map(|(_, variety)| (all.len(), *variety)));
                    all.extend(self.words(self.names.plural(crop), QUESTION_CHARACTERS));
                    if let Some(last) = all.last_mut() {
                        last.pause = Pause::Clause;
                    }
                }
                if let Some(last) = all.last_mut() {
                    last.pause = pause;
                }
            }
            for (_, variety) in meant.varieties {
                if !named.contains(&variety) {
                    named.push(variety);
                }
            }
            at += count;
        }
        OwnWords { words: all, named, at: stands }
    }

    /// The longest own name that `rest` begins with, with what it means behind `before`.
    fn own_name_at(
        &self,
        rest: &[Word],
        before: &[Word],
        own: &[OwnName],
    ) -> Option<(usize, OwnMeaning)> {
        let count =
            own.iter().filter(|name| name.begins(rest)).map(|name| name.words.len()).max()?;
        let candidates: Vec<&OwnName> =
            own.iter().filter(|name| name.words.len() == count && name.begins(rest)).collect();
        let unbroken = |word: Option<&Word>| word.is_some_and(|word| word.pause == Pause::None);
        let behind = unbroken(rest.get(count - 1))
            .then(|| {
                let mentions = self.names.mentions(rest.get(count..)?, &self.phrases);
                crop_of(&mentions.into_iter().find(|mention| mention.from == 0)?.named)
            })
            .flatten();
        let ahead = || {
            let mentions = self.names.mentions(before, &self.phrases);
            let last = mentions.into_iter().find(|mention| mention.to == before.len())?;
            crop_of(&last.named).filter(|_| unbroken(before.last()))
        };
        let of = |crop: &CropId| -> Vec<(CropId, i64)> {
            let of_crop = candidates.iter().filter(|name| name.crop == *crop);
            of_crop.map(|name| (name.crop.clone(), name.variety)).collect()
        };
        if let Some(crop) = behind {
            // Beside another crop's name it is that crop's adjective and no name of ours.
            let varieties = of(&crop);
            let beside = Some(Beside::Before);
            let meaning = OwnMeaning { beside, crops: vec![crop], varieties };
            return (!meaning.varieties.is_empty()).then_some((count, meaning));
        }
        if let Some(crop) = ahead().filter(|crop| !of(crop).is_empty()) {
            let varieties = of(&crop);
            let beside = Some(Beside::Behind);
            return Some((count, OwnMeaning { beside, crops: vec![crop], varieties }));
        }
        let mut crops: Vec<CropId> = candidates.iter().map(|name| name.crop.clone()).collect();
        crops.dedup();
        let varieties = candidates.iter().map(|name| (name.crop.clone(), name.variety)).collect();
        Some((count, OwnMeaning { beside: None, crops, varieties }))
    }
}

/// A text with its own names put back to their crops' names.
struct OwnWords {
    words: Vec<Word>,
    /// The numbers of the varieties that were named, each once.
    named: Vec<i64>,
    /// The number of a word of a crop's name, with the variety that was named there.
    at: Vec<(usize, i64)>,
}

/// Where an own name stands beside its crop's name.
#[derive(Clone, Copy)]
enum Beside {
    Before,
    Behind,
}

/// What an own name means where it stands.
struct OwnMeaning {
    /// Where it stands beside its crop's name; `None` where that is not written.
    beside: Option<Beside>,
    crops: Vec<CropId>,
    varieties: Vec<(CropId, i64)>,
}

fn crop_of(named: &Named<'_>) -> Option<CropId> {
    match named {
        Named::Known(Meaning::Crop(id)) => Some(id.clone()),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;
    use crate::planning::{Packet, Step};

    fn own() -> Vec<OwnName> {
        let variety = |id, crop: &str, name: &str| Variety {
            id,
            crop: CropId::new(crop),
            name: Some(name.to_owned()),
            packet: Packet::default(),
        };
        OwnName::all(&[
            variety(1, "tomato", "Early Lantern"),
            variety(2, "tomato", "Amber Bell"),
            variety(3, "pepper", "Amber Bell"),
        ])
    }

    fn asked(text: &str) -> (Vec<String>, Vec<i64>, Understood) {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let english = Understanding::english(&catalogue).expect("English");
        let today = "2026-04-15".parse().expect("a date");
        let (understood, named) = english.understand_own(text, today, &own(), None);
        (understood.crops.iter().map(ToString::to_string).collect(), named, understood)
    }

    #[test]
    fn own_names_stand_for_their_crop() {
        for (text, crops, named) in [
            ("can I start Early Lantern tomatoes now?", &["tomato"][..], &[1][..]),
            ("can i start early lantern now", &["tomato"], &[1]),
            ("can I start my early-lanterns today?", &["tomato"], &[1]),
            ("can I start tomato Early Lantern, and basil?", &["tomato", "basil"], &[1]),
            ("can I start Early Lantern and Amber Bell tomatoes?", &["tomato"], &[1, 2]),
            ("can I start Amber Bell peppers?", &["pepper"], &[3]),
            ("can I start Amber Bell?", &["tomato", "pepper"], &[2, 3]),
            ("can I start Early Lantern cucumbers?", &["cucumber"], &[]),
            ("can I start tomatoes?", &["tomato"], &[]),
        ] {
            let (found, varieties, understood) = asked(text);
            assert_eq!(
                (found, varieties),
                (crops.iter().map(|c| (*c).to_owned()).collect(), named.to_vec()),
                "{text}"
            );
            assert_eq!(understood.intent, Intent::CanStart, "{text}");
        }
        let (.., understood) = asked("can I sow Early Lantern indoors on May 1?");
        assert_eq!(understood.step, Some(Step::SowIndoors));
        assert_eq!(understood.on.to_string(), "2026-05-01");
    }

    #[test]
    fn a_sowing_is_of_the_variety_that_stands_by_it() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let english = Understanding::english(&catalogue).expect("English");
        let today = "2026-04-15".parse().expect("a date");
        for (text, crops, varieties) in [
            ("12 Early Lantern today", &[("tomato", Some(12))][..], &[Some(1)][..]),
            ("12 tomatoes Early Lantern", &[("tomato", Some(12))], &[Some(1)]),
            (
                "12 Early Lantern and 6 Amber Bell tomatoes, 9 basil",
                &[("tomato", Some(12)), ("tomato", Some(6)), ("basil", Some(9))],
                &[Some(1), Some(2), None],
            ),
            (
                "basil, 6 Amber Bell peppers",
                &[("basil", None), ("pepper", Some(6))],
                &[None, Some(3)],
            ),
            ("6 tomatoes", &[("tomato", Some(6))], &[None]),
        ] {
            let told = english.sown_in_own(text, today, &own());
            let found: Vec<(&str, Option<u32>)> =
                told.crops.iter().map(|(id, count)| (id.as_str(), *count)).collect();
            assert_eq!((found.as_slice(), told.varieties.as_slice()), (crops, varieties), "{text}");
        }
    }

    #[test]
    fn a_name_needs_a_word_of_its_own() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let english = Understanding::english(&catalogue).expect("English");
        assert!(english.is_common("now"));
        assert!(english.is_common("12"));
        assert!(!english.is_common("Early Lantern"));
        assert!(!english.is_common("Long One"));
        assert!(!english.is_common("Sunrise F1"));
        for said in ["right now", "can I", "May 1", "next week", "sow indoors"] {
            assert!(english.is_common(said), "{said}");
        }
    }
}

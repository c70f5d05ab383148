//! The words for seed-raising places and covers: "I grow under lights", "no cover".

use serde::Deserialize;

use crate::catalogue::normalise;
use crate::planning::{Cover, Place};

/// The lists of `sentences.toml`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawPlaces {
    openings: Vec<String>,
    small_words: String,
    windowsill: Vec<String>,
    lights: Vec<String>,
    heat_mat: Vec<String>,
    greenhouse: Vec<String>,
    fleece: Vec<String>,
    cold_frame: Vec<String>,
    tunnel: Vec<String>,
    no_place: Vec<String>,
    no_cover: Vec<String>,
}

/// What a text says of the place and the cover; the outer `None` says nothing of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[expect(clippy::option_option, reason = "the inner `None` says that there is none")]
pub(super) struct PlaceTold {
    /// Where seedlings are raised.
    pub place: Option<Option<Place>>,
    /// What covers the beds.
    pub cover: Option<Option<Cover>>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Told {
    Place(Option<Place>),
    Cover(Option<Cover>),
}

/// How a language tells of places and covers.
#[derive(Debug)]
pub struct PlaceWords {
    openings: Vec<Vec<String>>,
    small_words: Vec<String>,
    /// The longest first.
    names: Vec<(Vec<String>, Told)>,
}

impl PlaceWords {
    pub(super) fn new(raw: RawPlaces) -> Self {
        let place = |place| Told::Place(Some(place));
        let cover = |cover| Told::Cover(Some(cover));
        let mut names: Vec<(Vec<String>, Told)> = [
            (raw.windowsill, place(Place::Windowsill)),
            (raw.lights, place(Place::Lights)),
            (raw.heat_mat, place(Place::HeatMat)),
            (raw.greenhouse, place(Place::Greenhouse)),
            (raw.fleece, cover(Cover::Fleece)),
            (raw.cold_frame, cover(Cover::ColdFrame)),
            (raw.tunnel, cover(Cover::Tunnel)),
            (raw.no_place, Told::Place(None)),
            (raw.no_cover, Told::Cover(None)),
        ]
        .into_iter()
        .flat_map(|(names, told)| names.into_iter().map(move |name| (words(&name), told)))
        .collect();
        names.sort_by_key(|(name, _)| std::cmp::Reverse(name.len()));
        let mut openings: Vec<Vec<String>> = raw.openings.iter().map(|o| words(o)).collect();
        openings.sort_by_key(|opening| std::cmp::Reverse(opening.len()));
        // A list, not a message: it may be longer than a sentence that is read.
        let small_words =
            normalise(&raw.small_words).split_whitespace().map(ToOwned::to_owned).collect();
        Self { openings, small_words, names }
    }

    /// What a whole sentence tells: it begins with an opening or says that there is none.
    pub(super) fn sentence(&self, text: &str) -> Option<PlaceTold> {
        let said = words(text);
        let opening = self.openings.iter().find(|opening| said.starts_with(opening));
        let told = self.read(said.get(opening.map_or(0, Vec::len)..)?)?;
        let denies = told.place == Some(None) || told.cover == Some(None);
        (opening.is_some() || denies).then_some(told)
    }

    /// What a text tells that was asked for, with an opening or without.
    pub(super) fn answer(&self, text: &str) -> Option<PlaceTold> {
        self.sentence(text).or_else(|| self.read(&words(text)))
    }

    /// Reads words that are names and small words only.
    ///
    /// Of two places the one counts that asks for more care: a windowsill before a heat mat,
    /// that before a greenhouse. Of two covers the one that gives more.
    fn read(&self, said: &[String]) -> Option<PlaceTold> {
        let care = |place: Place| {
            [Place::Windowsill, Place::HeatMat, Place::Greenhouse, Place::Lights]
                .iter()
                .position(|known| *known == place)
        };
        let mut told = PlaceTold::default();
        let mut rest = said;
        while let Some((word, behind)) = rest.split_first() {
            let named = self.names.iter().find(|(name, _)| rest.starts_with(name));
            match named {
                Some((name, Told::Place(place))) => {
                    let before = told.place.flatten();
                    let other = before.filter(|b| place.is_none_or(|p| care(*b) < care(p)));
                    told.place = Some(other.or(*place));
                    rest = rest.get(name.len()..)?;
                }
                Some((name, Told::Cover(cover))) => {
                    told.cover = Some(told.cover.flatten().max(*cover));
                    rest = rest.get(name.len()..)?;
                }
                None if self.small_words.contains(word) => rest = behind,
                None => return None,
            }
        }
        (told != PlaceTold::default()).then_some(told)
    }
}

fn words(text: &str) -> Vec<String> {
    let plain: String =
        text.chars().take(200).map(|c| if ".,;:!".contains(c) { ' ' } else { c }).collect();
    normalise(&plain).split(' ').filter(|w| !w.is_empty()).map(ToOwned::to_owned).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chat::Knowledge;

    fn told(text: &str) -> Option<PlaceTold> {
        let knowledge = Knowledge::embedded().expect("the built-in data");
        let tongue = knowledge.tongue(&"en".parse().expect("a tag"));
        tongue.sentences.places.sentence(text)
    }

    #[test]
    fn sentences_tell_of_places_and_covers() {
        let place = |place| PlaceTold { place: Some(Some(place)), cover: None };
        let cover = |cover| PlaceTold { place: None, cover: Some(cover) };
        for (text, is) in [
            ("I grow under lights", place(Place::Lights)),
            ("I raise my seedlings on the windowsill.", place(Place::Windowsill)),
            ("I have a heat mat and lights", place(Place::HeatMat)),
            ("I've got a greenhouse", place(Place::Greenhouse)),
            ("I have a cold frame", cover(Some(Cover::ColdFrame))),
            ("We use fleece outdoors", cover(Some(Cover::Fleece))),
            ("No cover", cover(None)),
            ("I have no cold frame", cover(None)),
            (
                "I grow under lights and have a polytunnel",
                PlaceTold { place: Some(Some(Place::Lights)), cover: Some(Some(Cover::Tunnel)) },
            ),
        ] {
            assert_eq!(told(text), Some(is), "{text}");
        }
    }

    #[test]
    fn what_is_about_crops_or_asks_is_something_else() {
        for text in [
            "I grow tomatoes",
            "I grow tomatoes under lights",
            "I have a greenhouse, can I start tomatoes now",
            "do I have a cold frame?",
            "lights",
            "greenhouse",
            "",
        ] {
            assert_eq!(told(text), None, "{text}");
        }
    }
}

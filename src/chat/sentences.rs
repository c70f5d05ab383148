//! Plain sentences that do what a command does: "I grow tomatoes", "remind me at 6".

use serde::Deserialize;

use super::hold_words::{HoldWords, RawHold};
use super::month_words::{RawSeasons, SeasonWords};
use super::place_words::{PlaceWords, RawPlaces};
use crate::catalogue::normalise;

/// What a member asks for, by command or in a sentence; the argument is the rest of the text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Request {
    /// Greeting, or joining a club by its token.
    Start,
    /// What the bot can do.
    Help,
    /// The settings page.
    Settings,
    /// Frost dates of one's own garden.
    Frost,
    /// Add crops.
    Grow,
    /// Take crops off.
    Drop,
    /// The list of one's crops.
    MyCrops,
    /// What can be done now.
    Now,
    /// A question.
    Ask,
    /// Time zone.
    Zone,
    /// Reminder time.
    Hour,
    /// Wait out a cold spell.
    Hold,
    /// Where seedlings are raised and what covers the beds.
    Place,
    /// The coordinator's page.
    Club,
    /// A sowing that was made.
    Sown,
    /// The list of one's sowings.
    Sowings,
    /// Taking the last change back.
    Undo,
    /// How far north the garden lies.
    Latitude,
}

impl Request {
    /// The request of a command's name, without slash and in lower case.
    #[must_use]
    pub fn of_command(name: &str) -> Option<Self> {
        Some(match name {
            "start" => Self::Start,
            "help" => Self::Help,
            "settings" => Self::Settings,
            "frost" => Self::Frost,
            "grow" => Self::Grow,
            "drop" => Self::Drop,
            "mycrops" => Self::MyCrops,
            "now" => Self::Now,
            "ask" => Self::Ask,
            "zone" => Self::Zone,
            "hour" => Self::Hour,
            "hold" => Self::Hold,
            "place" => Self::Place,
            "club" => Self::Club,
            "sown" | "sowed" => Self::Sown,
            "sowings" => Self::Sowings,
            "undo" => Self::Undo,
            "latitude" => Self::Latitude,
            _ => return None,
        })
    }
}

/// The beginnings of sentences, per request, as `sentences.toml` lists them.
#[derive(Debug, Deserialize)]
struct Openings {
    sentences: Lists,
    everything: Vec<String>,
    places: RawPlaces,
    hold: RawHold,
    seasons: RawSeasons,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Lists {
    grow: Vec<String>,
    drop: Vec<String>,
    my_crops: Vec<String>,
    frost: Vec<String>,
    zone: Vec<String>,
    hour: Vec<String>,
    hold: Vec<String>,
    settings: Vec<String>,
    sown: Vec<String>,
    sowings: Vec<String>,
    undo: Vec<String>,
    latitude: Vec<String>,
}

/// How sentences begin that do what a command does.
#[derive(Debug)]
pub struct Sentences {
    openings: Vec<(String, Request)>,
    everything: Vec<String>,
    /// How places and covers are told.
    pub places: PlaceWords,
    /// How hot and wet months are told.
    pub seasons: SeasonWords,
    /// How long a hold is.
    pub hold: HoldWords,
}

impl Sentences {
    /// Reads a language's `sentences.toml`.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn new(text: &str) -> Result<Self, String> {
        let read: Openings = toml::from_str(text).map_err(|error| error.to_string())?;
        let lists = read.sentences;
        let mut openings: Vec<(String, Request)> = [
            (lists.grow, Request::Grow),
            (lists.drop, Request::Drop),
            (lists.my_crops, Request::MyCrops),
            (lists.frost, Request::Frost),
            (lists.zone, Request::Zone),
            (lists.hour, Request::Hour),
            (lists.hold, Request::Hold),
            (lists.settings, Request::Settings),
            (lists.sown, Request::Sown),
            (lists.sowings, Request::Sowings),
            (lists.undo, Request::Undo),
            (lists.latitude, Request::Latitude),
        ]
        .into_iter()
        .flat_map(|(list, request)| list.into_iter().map(move |text| (normalise(&text), request)))
        .collect();
        // A longer opening says more than a shorter one that it begins with.
        openings.sort_by_key(|(opening, _)| std::cmp::Reverse(opening.len()));
        let everything = read.everything.iter().map(|text| normalise(text)).collect();
        Ok(Self {
            openings,
            everything,
            places: PlaceWords::new(read.places),
            seasons: SeasonWords::new(&read.seasons),
            hold: HoldWords::new(&read.hold),
        })
    }

    /// Whether the text means the whole list: "all", "everything".
    #[must_use]
    pub fn means_everything(&self, text: &str) -> bool {
        let text = normalise(text.trim_matches(|c: char| c.is_ascii_punctuation()));
        self.everything.contains(&text)
    }

    /// The request that a sentence makes, with what follows its opening as it was written.
    #[must_use]
    pub fn read<'t>(&self, text: &'t str) -> Option<(Request, &'t str)> {
        self.openings
            .iter()
            .find_map(|(opening, request)| Some((*request, after_opening(text, opening)?)))
    }
}

/// The rest of `text` behind `opening`, where the text begins with its words.
fn after_opening<'t>(text: &'t str, opening: &str) -> Option<&'t str> {
    let mut wanted = opening.split(' ').filter(|word| !word.is_empty()).peekable();
    let mut rest = text.trim_start();
    while let Some(word) = wanted.next() {
        let end =
            rest.find(|c: char| c.is_whitespace() || matches!(c, ',' | ':')).unwrap_or(rest.len());
        let (head, tail) = rest.split_at(end);
        // A written word may stand for several, as "don't" does for "dont" and "pole-bean" for two.
        let said = normalise(head.trim_matches(|c: char| c.is_ascii_punctuation() && c != '\''));
        let mut said = said.split(' ');
        if said.next() != Some(word) {
            return None;
        }
        for more in said {
            if wanted.next() != Some(more) {
                return None;
            }
        }
        rest = tail.trim_start_matches(|c: char| c.is_whitespace() || matches!(c, ',' | ':'));
    }
    Some(rest)
}

//! Plain sentences that do what a command does: "I grow tomatoes", "remind me at 6".

use serde::Deserialize;

use super::day_words::{DayLists, DayWords};
use super::hold_words::{HoldWords, RawHold};
use super::list_words::ListWords;
use super::month_words::{RawSeasons, SeasonWords};
use super::place_words::{PlaceWords, RawPlaces};
use super::term_words::{RawTerms, Term, TermWords};
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
    /// Which seedlings share a tray.
    Trays,
    /// A question.
    Ask,
    /// Time zone.
    Zone,
    /// Reminder time.
    Hour,
    /// Days on which no message comes.
    Quiet,
    /// Days on which no message comes, beside those that are quiet already; a sentence without a
    /// command.
    QuietToo,
    /// Days on which messages come again; a sentence without a command.
    QuietNoMore,
    /// Whether one gardens at weekends.
    Weekends,
    /// Gardening at weekends; a sentence without a command.
    AtWeekends,
    /// Gardening on any day of the week; a sentence without a command.
    AnyDay,
    /// A holiday.
    Holiday,
    /// Back from a holiday; a sentence without a command.
    Back,
    /// Wait out a cold spell.
    Hold,
    /// Where seedlings are raised and what covers the beds.
    Place,
    /// The coordinator's page.
    Club,
    /// The club's lists.
    Lists,
    /// A sowing that was made.
    Sown,
    /// Plants that were set out; a sentence without a command.
    PlantedOut,
    /// Seedlings that were potted up; a sentence without a command.
    PottedUp,
    /// Plants that were hardened off; a sentence without a command.
    HardenedOff,
    /// How hardening off is done; a question without a command.
    HowToHarden,
    /// Frost that is expected in the coming nights; a sentence without a command.
    FrostSoon,
    /// The list of one's sowings.
    Sowings,
    /// One's own varieties and what their packets say.
    Variety,
    /// Taking the last change back.
    Undo,
    /// How far north the garden lies.
    Latitude,
    /// Everything that is kept about the member.
    Export,
    /// To delete it.
    Forget,
    /// To hear less, or nothing; a word without a command.
    Stop,
    /// A word of thanks.
    Thanks,
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
            "trays" => Self::Trays,
            "ask" => Self::Ask,
            "zone" => Self::Zone,
            "hour" => Self::Hour,
            "quiet" => Self::Quiet,
            "weekends" | "weekend" => Self::Weekends,
            "holiday" | "holidays" | "vacation" => Self::Holiday,
            "hold" => Self::Hold,
            "place" => Self::Place,
            "club" => Self::Club,
            "lists" | "list" => Self::Lists,
            "sown" | "sowed" => Self::Sown,
            "sowings" => Self::Sowings,
            "variety" | "varieties" => Self::Variety,
            "undo" => Self::Undo,
            "latitude" => Self::Latitude,
            "export" => Self::Export,
            "forget" => Self::Forget,
            _ => return None,
        })
    }
}

/// The sentences, per request, as `sentences.toml` lists them.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Openings {
    sentences: Lists,
    everything: Vec<String>,
    latitude: Sides,
    #[serde(default)]
    fold: Vec<(String, String)>,
    days: DayLists,
    places: RawPlaces,
    hold: RawHold,
    terms: RawTerms,
    seasons: RawSeasons,
    #[serde(default)]
    list_words: ListWords,
}

/// The words behind a latitude.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Sides {
    north: Vec<String>,
    south: Vec<String>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Lists {
    grow: Vec<String>,
    drop: Vec<String>,
    my_crops: Vec<String>,
    trays: Vec<String>,
    frost: Vec<String>,
    zone: Vec<String>,
    hour: Vec<String>,
    quiet: Vec<String>,
    quiet_no_more: Vec<String>,
    weekends: Vec<String>,
    any_day: Vec<String>,
    holiday: Vec<String>,
    back: Vec<String>,
    hold: Vec<String>,
    settings: Vec<String>,
    #[serde(default)]
    of_club: Vec<String>,
    sown: Vec<String>,
    planted_out: Vec<String>,
    potted_up: Vec<String>,
    hardened_off: Vec<String>,
    how_to_harden: Vec<String>,
    frost_soon: Vec<String>,
    sowings: Vec<String>,
    variety: Vec<String>,
    undo: Vec<String>,
    latitude: Vec<String>,
    stop: Vec<String>,
    thanks: Vec<String>,
}

/// A sentence that does what a command does, taken apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Said<'t> {
    /// What it asks for.
    pub request: Request,
    /// What a command would have as its argument.
    pub rest: &'t str,
    /// Its beginning, which may name a day: "yesterday I sowed".
    pub head: &'t str,
}

/// How a sentence begins and ends.
#[derive(Debug)]
struct Frame {
    opening: String,
    closing: String,
    request: Request,
}

/// How sentences begin and end that do what a command does.
#[derive(Debug)]
pub struct Sentences {
    frames: Vec<Frame>,
    everything: Vec<String>,
    north: Vec<String>,
    south: Vec<String>,
    fold: Vec<(String, String)>,
    /// Words about days.
    pub days: DayWords,
    /// How places and covers are told.
    pub places: PlaceWords,
    /// How hot and wet months are told.
    pub seasons: SeasonWords,
    /// How long a hold is.
    pub hold: HoldWords,
    terms: TermWords,
    list_words: ListWords,
}

impl Sentences {
    /// Reads a language's `sentences.toml`.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn new(text: &str) -> Result<Self, String> {
        let read: Openings = toml::from_str(text).map_err(|error| error.to_string())?;
        let lists = read.sentences;
        let plain = |text: &str| folded(&normalise(text), &read.fold);
        let mut frames: Vec<Frame> = [
            (lists.grow, Request::Grow),
            (lists.drop, Request::Drop),
            (lists.my_crops, Request::MyCrops),
            (lists.trays, Request::Trays),
            (lists.frost, Request::Frost),
            (lists.zone, Request::Zone),
            (lists.hour, Request::Hour),
            (lists.quiet, Request::QuietToo),
            (lists.quiet_no_more, Request::QuietNoMore),
            (lists.weekends, Request::AtWeekends),
            (lists.any_day, Request::AnyDay),
            (lists.holiday, Request::Holiday),
            (lists.back, Request::Back),
            (lists.hold, Request::Hold),
            (lists.settings, Request::Settings),
            (lists.of_club, Request::Lists),
            (lists.sown, Request::Sown),
            (lists.planted_out, Request::PlantedOut),
            (lists.potted_up, Request::PottedUp),
            (lists.hardened_off, Request::HardenedOff),
            (lists.how_to_harden, Request::HowToHarden),
            (lists.frost_soon, Request::FrostSoon),
            (lists.sowings, Request::Sowings),
            (lists.variety, Request::Variety),
            (lists.undo, Request::Undo),
            (lists.latitude, Request::Latitude),
            (lists.stop, Request::Stop),
            (lists.thanks, Request::Thanks),
        ]
        .into_iter()
        .flat_map(|(list, request)| list.into_iter().map(move |text| (text, request)))
        .map(|(text, request)| {
            let (opening, closing) = text.split_once("..").unwrap_or((&text, ""));
            Frame { opening: plain(opening), closing: plain(closing), request }
        })
        .collect();
        if frames.iter().any(|frame| {
            frame.opening.is_empty() && (frame.closing.is_empty() || frame.request != Request::Sown)
        }) {
            return Err("a sentence has no beginning".to_owned());
        }
        // A longer sentence says more than a shorter one that it begins with, and one with a
        // beginning more than one that is only known by its end.
        frames.sort_by_key(|frame| {
            let whole = frame.opening.len() + frame.closing.len();
            let no_opening = frame.opening.is_empty();
            (no_opening, std::cmp::Reverse(whole), std::cmp::Reverse(frame.closing.len()))
        });
        let list = |texts: &[String]| texts.iter().map(|text| plain(text)).collect();
        Ok(Self {
            frames,
            everything: list(&read.everything),
            north: list(&read.latitude.north),
            south: list(&read.latitude.south),
            fold: read.fold.clone(),
            days: DayWords::new(read.days)?,
            places: PlaceWords::new(read.places),
            seasons: SeasonWords::new(&read.seasons),
            hold: HoldWords::new(&read.hold),
            terms: TermWords::new(&read.terms, plain),
            list_words: read.list_words,
        })
    }

    fn plain(&self, text: &str) -> String {
        folded(&normalise(text), &self.fold)
    }

    /// The language's own verbs of `/list`.
    #[must_use]
    pub fn list_words(&self) -> &ListWords {
        &self.list_words
    }

    /// Whether the text means the whole list: "all", "everything".
    #[must_use]
    pub fn means_everything(&self, text: &str) -> bool {
        let text = self.plain(text.trim_matches(|c: char| !c.is_alphanumeric()));
        self.everything.contains(&text)
    }

    /// Whether the words behind a latitude mean the south; `None` where they mean neither side.
    #[must_use]
    pub fn means_south(&self, side: &str) -> Option<bool> {
        let side = self.plain(side);
        if self.south.contains(&side) {
            Some(true)
        } else {
            (side.is_empty() || self.north.contains(&side)).then_some(false)
        }
    }

    /// The term of the trade that a text asks about.
    pub(super) fn term(&self, text: &str) -> Option<Term> {
        /// More is no question of a few words.
        const LONGEST: usize = 120;
        let short = text.chars().nth(LONGEST).is_none();
        if short { self.terms.read(&self.plain(text)) } else { None }
    }

    /// The request that a sentence makes, with what stands within its frame as it was written.
    #[must_use]
    pub fn read<'t>(&self, text: &'t str) -> Option<Said<'t>> {
        self.frames.iter().find_map(|frame| {
            let behind = self.after_opening(text, &frame.opening)?;
            let head = text.get(..text.len() - behind.len()).unwrap_or_default();
            let rest = self.before_closing(behind, &frame.closing)?;
            // "Thanks, and when do I sow leeks?" asks something.
            let whole =
                matches!(frame.request, Request::Stop | Request::Thanks | Request::FrostSoon);
            if whole && rest.contains(char::is_alphanumeric) {
                return None;
            }
            Some(Said { request: frame.request, rest, head })
        })
    }

    /// The rest of `text` behind `opening`, where the text begins with its words.
    fn after_opening<'t>(&self, text: &'t str, opening: &str) -> Option<&'t str> {
        if opening.is_empty() {
            return Some(text);
        }
        let mut wanted = opening.split(' ').peekable();
        let mut rest = text.trim_start();
        while let Some(word) = wanted.next() {
            let end = rest
                .find(|c: char| c.is_whitespace() || matches!(c, ',' | ':'))
                .unwrap_or(rest.len());
            let (head, tail) = rest.split_at(end);
            // A written word may stand for several, as "don't" does for "dont" and "pole-bean" for
            // two.
            let said = self.bare(head);
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

    /// What stands in `text` before `closing`, where the text ends with its words.
    fn before_closing<'t>(&self, text: &'t str, closing: &str) -> Option<&'t str> {
        let mut rest = text;
        for word in closing.split(' ').rev().filter(|word| !word.is_empty()) {
            let trimmed = rest.trim_end();
            let (before, last) = trimmed.rsplit_once(char::is_whitespace).unwrap_or(("", trimmed));
            if self.bare(last) != word {
                return None;
            }
            rest = before;
        }
        Some(rest)
    }

    /// A written word without the marks around it.
    fn bare(&self, written: &str) -> String {
        self.plain(written.trim_matches(|c: char| !c.is_alphanumeric()))
    }
}

fn folded(plain: &str, fold: &[(String, String)]) -> String {
    fold.iter().fold(plain.to_owned(), |text, (written, meant)| text.replace(written, meant))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(sentences: &Sentences, text: &str) -> Option<(Request, String, String)> {
        let said = sentences.read(text)?;
        Some((said.request, said.rest.trim().to_owned(), said.head.trim().to_owned()))
    }

    #[test]
    fn english_sentences_open_and_close() {
        let english = include_str!("../../locales/en/sentences.toml");
        let english = Sentences::new(english).expect("the sentences");
        for (text, request, rest) in [
            ("I grow tomatoes", Request::Grow, "tomatoes"),
            ("I don’t grow kale", Request::Drop, "kale"),
            ("put tomatoes on my list", Request::Grow, "tomatoes"),
            ("Take kale off my list!", Request::Drop, "kale"),
            ("yesterday I sowed 12 basil", Request::Sown, "12 basil"),
        ] {
            let got = read(&english, text).map(|(request, rest, _)| (request, rest));
            assert_eq!(got, Some((request, rest.to_owned())), "{text}");
        }
        let head = read(&english, "Yesterday I sowed 12 basil").map(|(.., head)| head);
        assert_eq!(head.as_deref(), Some("Yesterday I sowed"));
        assert_eq!(english.read("can I grow tomatoes"), None);
        assert_eq!(english.read(""), None);
        assert!(english.means_everything("¡Everything!"));
        assert_eq!(english.means_south("degrees South"), Some(true));
        assert_eq!(english.means_south(""), Some(false));
        assert_eq!(english.means_south("west"), None);
    }

    #[test]
    fn verbs_in_two_parts_and_letters_for_umlauts() {
        let english = include_str!("../../locales/en/sentences.toml");
        let mut german: toml::Table = english.parse().expect("the sentences");
        let fold: toml::Table =
            r#"fold = [["ae", "a"], ["oe", "o"], ["ue", "u"]]"#.parse().expect("fold");
        german.extend(fold);
        let lists: toml::Table = r#"
            grow = ["ich baue .. an", "ich habe"]
            drop = ["ich baue kein .. mehr an"]
            sown = ["ich habe .. gesät", "gestern habe ich .. gesät"]
            undo = ["rückgängig"]
        "#
        .parse()
        .expect("lists");
        german["sentences"].as_table_mut().expect("a table").extend(lists);
        german["latitude"]["south"] = toml::Value::from(vec!["süd"]);
        let german = toml::to_string(&german).expect("TOML");
        let german = Sentences::new(&german).expect("the sentences");
        for (text, request, rest) in [
            ("Ich baue Gurken und Tomaten an.", Request::Grow, "Gurken und Tomaten"),
            ("ich baue kein Basilikum mehr an", Request::Drop, "Basilikum"),
            ("Ich habe 12 Gurken gesaet", Request::Sown, "12 Gurken"),
            ("Gestern habe ich Kürbis gesät!", Request::Sown, "Kürbis"),
            ("ich habe Gurken", Request::Grow, "Gurken"),
            ("Rueckgaengig", Request::Undo, ""),
        ] {
            let got = read(&german, text).map(|(request, rest, _)| (request, rest));
            assert_eq!(got, Some((request, rest.to_owned())), "{text}");
        }
        assert_eq!(read(&german, "Ich baue ein Haus"), None);
        assert_eq!(german.means_south("sued"), Some(true));
    }

    proptest::proptest! {
        #[test]
        fn no_text_upsets_it(text in proptest::prelude::any::<String>()) {
            let english = include_str!("../../locales/en/sentences.toml");
            let english = Sentences::new(english).expect("the sentences");
            let _ = english.read(&text);
            let _ = english.read(&format!("take {text}off my list"));
        }
    }
}

//! What is the same for every reader: the crops, the texts and how people ask.

use std::sync::Arc;

use crate::catalogue::{Catalogue, CatalogueError, Names};
use crate::club::{LanguageTag, Settings, Units};
use crate::wording::{Speech, Wording, WordingError};

use super::packet::{PacketWords, PacketWordsError};
use super::sentences::Sentences;
use super::understand::{PhrasesError, Understanding};

/// The words of one language: names, questions and sentences.
pub struct Tongue {
    /// The language subtag, such as `en`.
    pub language: &'static str,
    /// The crops' names.
    pub names: Arc<Names>,
    /// How people ask.
    pub understanding: Understanding,
    /// How people tell about themselves.
    pub sentences: Sentences,
    /// How seed packets speak.
    pub packet: PacketWords,
}

/// Everything that is built once and shared.
pub struct Knowledge {
    /// The crops.
    pub catalogue: Catalogue,
    wording: Wording,
    tongues: Vec<Tongue>,
}

/// Why the built-in data could not be read; a defect of a build, found by its tests.
#[derive(Debug, thiserror::Error)]
pub enum KnowledgeError {
    /// The catalogue or the crops' names.
    #[error(transparent)]
    Catalogue(#[from] CatalogueError),
    /// The texts.
    #[error(transparent)]
    Wording(#[from] WordingError),
    /// The phrases.
    #[error(transparent)]
    Understanding(#[from] PhrasesError),
    /// The words of seed packets.
    #[error(transparent)]
    Packet(#[from] PacketWordsError),
    /// The sentences.
    #[error("locales/{0}/sentences.toml: {1}")]
    Sentences(&'static str, String),
}

fn packet_words(language: &str) -> Result<PacketWords, PacketWordsError> {
    let own = PACKETS.iter().find(|(of, _)| *of == language).or(PACKETS.first());
    PacketWords::new(own.map_or("", |(_, words)| words))
}

/// One built-in language; its texts join in `wording`.
struct BuiltIn {
    language: &'static str,
    crops: &'static str,
    phrases: &'static str,
    sentences: &'static str,
}

/// The packet words of each language; seed packets of the others are read as English ones.
const PACKETS: [(&str, &str); 4] = [
    ("en", include_str!("../../locales/en/packet.toml")),
    ("de", include_str!("../../locales/de/packet.toml")),
    ("es", include_str!("../../locales/es/packet.toml")),
    ("fr", include_str!("../../locales/fr/packet.toml")),
];

/// English comes first: it is read where there are no words of a member's language.
const BUILT_IN: [BuiltIn; 4] = [
    BuiltIn {
        language: "en",
        crops: include_str!("../../locales/en/crops.toml"),
        phrases: include_str!("../../locales/en/phrases.toml"),
        sentences: include_str!("../../locales/en/sentences.toml"),
    },
    BuiltIn {
        language: "de",
        crops: include_str!("../../locales/de/crops.toml"),
        phrases: include_str!("../../locales/de/phrases.toml"),
        sentences: include_str!("../../locales/de/sentences.toml"),
    },
    BuiltIn {
        language: "es",
        crops: include_str!("../../locales/es/crops.toml"),
        phrases: include_str!("../../locales/es/phrases.toml"),
        sentences: include_str!("../../locales/es/sentences.toml"),
    },
    BuiltIn {
        language: "fr",
        crops: include_str!("../../locales/fr/crops.toml"),
        phrases: include_str!("../../locales/fr/phrases.toml"),
        sentences: include_str!("../../locales/fr/sentences.toml"),
    },
];

impl Knowledge {
    /// Reads everything that is built into the program.
    ///
    /// # Errors
    /// A [`KnowledgeError`] that names the file and what is wrong with it.
    pub fn embedded() -> Result<Self, KnowledgeError> {
        let catalogue = Catalogue::embedded()?;
        let wording = Wording::embedded()?;
        let mut tongues = Vec::new();
        for BuiltIn { language, crops, phrases, sentences } in BUILT_IN {
            let names = Names::from_toml(crops, &catalogue)?;
            let understanding = Understanding::new(phrases, names.clone())?;
            let sentences = Sentences::new(sentences)
                .map_err(|what| KnowledgeError::Sentences(language, what))?;
            let packet = packet_words(language)?;
            let names = Arc::new(names);
            tongues.push(Tongue { language, names, understanding, sentences, packet });
        }
        Ok(Self { catalogue, wording, tongues })
    }

    /// The words of the reader's language, or of English where it is not built in.
    ///
    /// # Panics
    /// Never: at least one language is built in.
    #[must_use]
    pub fn tongue(&self, language: &LanguageTag) -> &Tongue {
        let own = self.tongues.iter().find(|tongue| tongue.language == language.language());
        match (own, self.tongues.as_slice()) {
            (Some(own), _) => own,
            (None, [english, ..]) => english,
            (None, []) => unreachable!("at least one language is built in"),
        }
    }

    /// How a reader of this language with these units is spoken to.
    #[must_use]
    pub fn speech(&self, language: &LanguageTag, units: Units) -> Speech {
        Speech {
            voice: self.wording.voice(language, units),
            names: Arc::clone(&self.tongue(language).names),
        }
    }

    /// How a member with these settings is spoken to.
    #[must_use]
    pub fn speech_for(&self, settings: &Settings) -> Speech {
        self.speech(&settings.language.is, settings.units)
    }

    /// Whether the language is built in.
    #[must_use]
    pub fn speaks(&self, language: &LanguageTag) -> bool {
        self.wording.negotiate(language).is_some()
    }

    /// The languages that can be chosen.
    #[must_use]
    pub fn languages(&self) -> Vec<LanguageTag> {
        self.wording.available()
    }
}

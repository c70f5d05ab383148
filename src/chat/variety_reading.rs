//! From a packet's text to a variety: its crop, its name and its numbers.

use crate::catalogue::Meaning;
use crate::club::{LONGEST_VARIETY_NAME, LanguageTag, Variety};
use crate::planning::{Crop, CropId, PacketError};
use crate::wording::{Speech, args, quoted};

use super::knowledge::{Knowledge, Tongue};
use super::packet::{PacketText, PacketWords, read_packet};
use super::variety_text::packet_error;

/// Why a text is no variety's packet. The sentences are for whoever gives it to a program.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NoVariety {
    /// It names no crop.
    #[error(
        "it names no crop; begin with one, for example \"tomato Early Lantern: start indoors 6-8 \
         weeks before last frost, 75 days\""
    )]
    NoCrop,
    /// It begins with a word for several crops.
    #[error("'{word}' can mean {crops}; give the full name")]
    Ambiguous {
        /// The word.
        word: String,
        /// What it can mean, as a list in words.
        crops: String,
    },
    /// It names several crops, in words.
    #[error("it names several crops, {0}; give each a --packet of its own")]
    SeveralCrops(String),
    /// The variety's name is longer than [`LONGEST_VARIETY_NAME`].
    #[error("a variety's name has at most {LONGEST_VARIETY_NAME} characters")]
    LongName,
    /// The variety's name is an everyday word.
    #[error("'{0}' is too common a word for a variety's name; give another, or none")]
    CommonName(String),
    /// Its numbers are not those of a packet.
    #[error("{}", of_numbers(*.0))]
    Numbers(#[from] PacketError),
}

/// What is wrong with a packet's numbers, and the mend.
fn of_numbers(error: PacketError) -> String {
    match error {
        PacketError::Empty => {
            format!("{error}; give some behind the crop, for example \"75 days\"")
        }
        _ => format!("{error} can't be right; check the packet"),
    }
}

impl NoVariety {
    /// One sentence for a member that says what is missing or wrong.
    pub(super) fn said(&self, speech: &Speech) -> String {
        let voice = &speech.voice;
        match self {
            Self::NoCrop => speech.plain("variety-which-crop"),
            Self::Ambiguous { word, crops } => {
                voice.say("variety-which", &args().text("word", word).text("crops", crops))
            }
            Self::SeveralCrops(crops) => {
                voice.say("variety-two-crops", &args().text("crops", crops))
            }
            Self::LongName => {
                voice.say("variety-name-long", &args().count("most", LONGEST_VARIETY_NAME))
            }
            Self::CommonName(name) => {
                voice.say("variety-name-common", &args().text("written", name))
            }
            Self::Numbers(error) => packet_error(*error, speech),
        }
    }
}

impl Knowledge {
    /// The variety that a packet's text tells of, such as "tomato Early Lantern: start indoors
    /// 6-8 weeks before last frost, 75 days". Its number is 0.
    ///
    /// # Errors
    /// What is missing or wrong.
    pub fn read_variety(
        &self,
        text: &str,
        language: &LanguageTag,
        speech: &Speech,
    ) -> Result<Variety, NoVariety> {
        let tongue = self.tongue(language);
        let read = self.read_packet_text(text, language);
        let (crop, name) = head_of(&read.head, tongue, speech)?;
        // "Start 6 weeks before the last frost" depends on the crop; what is never sown is planted.
        let crop_raised = |crop: &Crop| crop.indoors.is_some() || crop.ways.is_empty();
        let raised = self.catalogue.get(crop.as_str()).is_none_or(crop_raised);
        let read = if raised { read } else { self.read_packet_of(text, language, raised) };
        let packet = read.packet.checked()?;
        Ok(Variety { id: 0, crop, name, packet })
    }

    /// A packet's text by the words of the reader's language, or else by English ones, which
    /// stand on many packets.
    pub(super) fn read_packet_text(&self, text: &str, language: &LanguageTag) -> PacketText {
        self.read_packet_of(text, language, true)
    }

    fn read_packet_of(&self, text: &str, language: &LanguageTag, raised: bool) -> PacketText {
        let by = |words: &PacketWords| read_packet(text, words, raised);
        let read = by(&self.tongue(language).packet);
        if read.packet.is_empty() { by(&self.tongue(&LanguageTag::default()).packet) } else { read }
    }
}

/// The crop and the variety's name of what stands before a packet's numbers.
pub(super) fn head_of(
    head: &str,
    tongue: &Tongue,
    speech: &Speech,
) -> Result<(CropId, Option<String>), NoVariety> {
    // One line or comma for the crop, one for the name; what follows praises the variety.
    let mut parts: Vec<(Vec<Meaning>, Vec<String>)> = head
        .split([',', ':', ';', '.', '\n', '–', '—', '|', '(', ')'])
        .map(|part| tongue.understanding.crops_and_rest(part))
        .filter(|(crops, rest)| !crops.is_empty() || !rest.is_empty())
        .take(2)
        .collect();
    for (_, rest) in &mut parts {
        *rest = tongue.packet.name_alone(std::mem::take(rest));
    }
    let mut crops: Vec<CropId> = Vec::new();
    let mut ambiguous = None;
    for meaning in parts.iter().flat_map(|(crops, _)| crops) {
        match meaning {
            Meaning::Crop(id) if !crops.contains(id) => crops.push(id.clone()),
            Meaning::Crop(_) => {}
            Meaning::Ambiguous(word) => ambiguous = Some(word),
        }
    }
    let crop = match (crops.as_slice(), ambiguous) {
        ([only], None) => only.clone(),
        ([], Some(word)) => {
            let names: Vec<String> =
                word.means.iter().map(|id| speech.crops(id).to_owned()).collect();
            let crops = speech.voice.list_or(&names);
            return Err(NoVariety::Ambiguous { word: word.word.clone(), crops });
        }
        ([], None) => return Err(NoVariety::NoCrop),
        _ => return Err(NoVariety::SeveralCrops(speech.crop_list(&crops))),
    };
    let of_crop = parts.iter().position(|(crops, _)| !crops.is_empty()).unwrap_or(0);
    let words = [of_crop, of_crop + 1, of_crop.wrapping_sub(1)]
        .into_iter()
        .filter_map(|at| parts.get(at))
        .map(|(_, rest)| rest.join(" "))
        .find(|name| !name.is_empty());
    let Some(name) = words else { return Ok((crop, None)) };
    if name.chars().count() > LONGEST_VARIETY_NAME {
        return Err(NoVariety::LongName);
    }
    if tongue.understanding.is_common(&name) {
        return Err(NoVariety::CommonName(quoted(&name)));
    }
    Ok((crop, Some(quoted(&name))))
}

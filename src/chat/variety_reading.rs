//! From a packet's text to a variety: its crop, its name and its numbers.

use crate::catalogue::Meaning;
use crate::club::{LONGEST_VARIETY_NAME, LanguageTag, Variety};
use crate::planning::CropId;
use crate::wording::{Speech, args, quoted};

use super::knowledge::{Knowledge, Tongue};
use super::packet::{PacketText, PacketWords, read_packet};
use super::variety_text::packet_error;

impl Knowledge {
    /// The variety that a packet's text tells of, such as "tomato Early Lantern: start indoors
    /// 6-8 weeks before last frost, 75 days". Its number is 0.
    ///
    /// # Errors
    /// One sentence for the reader that says what is missing or wrong.
    pub fn read_variety(
        &self,
        text: &str,
        language: &LanguageTag,
        speech: &Speech,
    ) -> Result<Variety, String> {
        let tongue = self.tongue(language);
        let read = self.read_packet_text(text, language);
        let (crop, name) = head_of(&read.head, tongue, speech)?;
        // "Start 6 weeks before the last frost" depends on the crop.
        let raised = self.catalogue.get(crop.as_str()).is_none_or(|crop| crop.indoors.is_some());
        let read = if raised { read } else { self.read_packet_of(text, language, raised) };
        let packet = read.packet.checked().map_err(|error| packet_error(error, speech))?;
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
) -> Result<(CropId, Option<String>), String> {
    let voice = &speech.voice;
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
            let about = args().text("word", &word.word).text("crops", voice.list_or(&names));
            return Err(voice.say("variety-which", &about));
        }
        ([], None) => return Err(speech.plain("variety-which-crop")),
        _ => {
            let names = speech.crop_list(&crops);
            return Err(voice.say("variety-two-crops", &args().text("crops", names)));
        }
    };
    let of_crop = parts.iter().position(|(crops, _)| !crops.is_empty()).unwrap_or(0);
    let words = [of_crop, of_crop + 1, of_crop.wrapping_sub(1)]
        .into_iter()
        .filter_map(|at| parts.get(at))
        .map(|(_, rest)| rest.join(" "))
        .find(|name| !name.is_empty());
    let Some(name) = words else { return Ok((crop, None)) };
    if name.chars().count() > LONGEST_VARIETY_NAME {
        let most = args().count("most", LONGEST_VARIETY_NAME);
        return Err(voice.say("variety-name-long", &most));
    }
    if tongue.understanding.is_common(&name) {
        let written = args().text("written", quoted(&name));
        return Err(voice.say("variety-name-common", &written));
    }
    Ok((crop, Some(quoted(&name))))
}

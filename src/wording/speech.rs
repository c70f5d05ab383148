//! A voice together with the crops' names in its language.

use std::sync::Arc;

use crate::catalogue::Names;
use crate::planning::{Crop, CropId, HarvestKind, Step};

use super::{Args, Voice, args};

/// How one reader is spoken to about crops.
#[derive(Clone)]
pub struct Speech {
    /// Texts, dates, lists and measures.
    pub voice: Voice,
    /// The crops' names.
    pub names: Arc<Names>,
}

impl Speech {
    /// A text without arguments.
    #[must_use]
    pub fn plain(&self, key: &str) -> String {
        self.voice.say(key, &args())
    }

    /// The crop's name as it stands in the middle of a sentence about many of them.
    #[must_use]
    pub fn crops<'a>(&'a self, id: &'a CropId) -> &'a str {
        self.names.in_sentence(id)
    }

    /// The crop's name as it stands in a list of crops.
    #[must_use]
    pub fn crop<'a>(&'a self, id: &'a CropId) -> &'a str {
        self.names.name(id)
    }

    /// The same with the name of a variety behind it, where one is meant.
    #[must_use]
    pub fn crops_of(&self, id: &CropId, variety: Option<&str>) -> String {
        match variety {
            Some(name) => {
                let args = args().text("crop", self.crops(id)).text("name", name);
                self.voice.say("variety-name", &args)
            }
            None => self.crops(id).to_owned(),
        }
    }

    /// A list of crops' names, joined with "and".
    #[must_use]
    pub fn crop_list<'c>(&self, ids: impl IntoIterator<Item = &'c CropId>) -> String {
        let names: Vec<String> = ids.into_iter().map(|id| self.crop(id).to_owned()).collect();
        self.voice.list_and(&names)
    }

    /// Arguments that begin with the crop's plural name, as `crops`.
    #[must_use]
    pub fn about(&self, id: &CropId) -> Args {
        args().text("crops", self.crops(id))
    }

    /// The step as a phrase with the crop: "sow cucumbers indoors", "plant potatoes".
    #[must_use]
    pub fn step_phrase(&self, step: Step, crop: &Crop) -> String {
        self.step_phrase_of(step, crop, None)
    }

    /// The same of a variety, where one is meant: "pot up tomatoes “Early Lantern”".
    #[must_use]
    pub fn step_phrase_of(&self, step: Step, crop: &Crop, variety: Option<&str>) -> String {
        let about = args().text("crops", self.crops_of(&crop.id, variety));
        match step {
            Step::SowIndoors => self.voice.say("step-sow-indoors", &about),
            Step::SowOutdoors => self.voice.say("step-sow-outdoors", &about),
            Step::Soak => self.voice.say("step-soak", &about),
            Step::Nick => self.voice.say("step-nick", &about),
            Step::Chill => self.voice.say("step-chill", &about),
            Step::Chit => self.voice.say("step-chit", &about),
            Step::RootSlips => self.voice.say("step-root-slips", &about),
            Step::Check => self.voice.say("step-check", &about),
            Step::Harvest if crop.harvest.kind == HarvestKind::Bloom => {
                self.voice.say("step-first-bloom", &about)
            }
            Step::Harvest => self.voice.say("step-harvest", &about),
            Step::PotUp => self.voice.say("step-pot-up", &about),
            Step::HardenOff => self.voice.say("step-harden-off", &about),
            Step::PlantOut if crop.ways.is_empty() => self.voice.say("step-plant", &about),
            Step::PlantOut => self.voice.say("step-plant-out", &about),
        }
    }
}

/// A text with its first letter in upper case, for the beginning of a sentence.
#[must_use]
pub fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}

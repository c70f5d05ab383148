//! The cautions that stand with a step that can hurt someone.

use crate::planning::{Caution, Crop, Kind, Step};
use crate::wording::Speech;

/// The cautions for taking `step` with `crop`, each a line of its own.
pub(super) fn caution_lines(crop: &Crop, step: Step, speech: &Speech) -> Vec<String> {
    crop.cautions
        .iter()
        .filter(|caution| concerns(**caution, step, crop))
        .map(|caution| caution_line(*caution, speech))
        .collect()
}

/// A caution stands with the step at which the danger begins: the seed's with sowing, the plant's
/// and the fruit's with sowing and planting.
fn concerns(caution: Caution, step: Step, crop: &Crop) -> bool {
    let sowing = matches!(step, Step::SowIndoors | Step::SowOutdoors);
    let planting = step == Step::PlantOut;
    match caution {
        Caution::TreatedSeed => sowing,
        Caution::PoisonousPlant | Caution::SkinIrritant => sowing || planting,
        Caution::RawBeans
        | Caution::BroadBeanFavism
        | Caution::BitterSquash
        | Caution::GreenPotatoes => (sowing || planting) && crop.kind == Kind::Vegetable,
    }
}

/// One caution in words.
pub(super) fn caution_line(caution: Caution, speech: &Speech) -> String {
    match caution {
        Caution::PoisonousPlant => speech.plain("caution-poisonous-plant"),
        Caution::RawBeans => speech.plain("caution-raw-beans"),
        Caution::BroadBeanFavism => speech.plain("caution-broad-bean-favism"),
        Caution::BitterSquash => speech.plain("caution-bitter-squash"),
        Caution::GreenPotatoes => speech.plain("caution-green-potatoes"),
        Caution::SkinIrritant => speech.plain("caution-skin-irritant"),
        Caution::TreatedSeed => speech.plain("caution-treated-seed"),
    }
}

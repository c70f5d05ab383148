//! The crops that a flag names, taken strictly: a plan is made for what was named and for nothing
//! near it.

use super::flags::{BadInput, Read};
use crate::catalogue::{Meaning, normalise};
use crate::chat::Knowledge;
use crate::planning::Crop;
use crate::wording::Speech;

/// The one crop that `written` names, by its id or an everyday name.
///
/// # Errors
/// A sentence that offers what is near, where there is no single such crop.
pub(super) fn crop_named<'r>(
    written: &str,
    read: &'r Read,
    knowledge: &Knowledge,
    speech: &Speech,
) -> Result<&'r Crop, BadInput> {
    // An id always means its crop, even where the word alone could mean two.
    if let Some(crop) = read.catalogue.get(written) {
        return Ok(crop);
    }
    let tongue = knowledge.tongue(&read.language);
    if let Some(Meaning::Crop(id)) = tongue.names.lookup(&normalise(written))
        && let Some(crop) = read.catalogue.get(id.as_str())
    {
        return Ok(crop);
    }
    let list = tongue.understanding.crops_in(written);
    let near: Vec<String> = list
        .found
        .iter()
        .chain(list.ambiguous.iter().flat_map(|word| &word.means))
        .chain(list.unknown.iter().flat_map(|name| &name.near))
        .map(|id| speech.crop(id).to_owned())
        .collect();
    Err(BadInput(if near.is_empty() {
        format!("--crops: there is no crop '{written}'; give its everyday name, such as tomato")
    } else {
        let near = speech.voice.list_or(&near);
        format!("--crops: there is no single crop '{written}'; did you mean {near}?")
    }))
}

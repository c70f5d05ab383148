//! Which onions form bulbs at a latitude, in a sentence.

use crate::planning::{OnionClass, onion_classes};
use crate::wording::Speech;

/// Which onions to choose at `latitude` degrees from the equator, north positive.
#[must_use]
pub fn onion_sentence(latitude: i64, speech: &Speech) -> String {
    match onion_classes(latitude).as_slice() {
        [OnionClass::LongDay, OnionClass::Intermediate] => speech.plain("onion-long-intermediate"),
        [OnionClass::Intermediate, OnionClass::ShortDay] => {
            speech.plain("onion-intermediate-short")
        }
        [OnionClass::LongDay, ..] => speech.plain("onion-long"),
        [OnionClass::Intermediate, ..] => speech.plain("onion-intermediate"),
        _ => speech.plain("onion-short"),
    }
}

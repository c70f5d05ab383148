//! Words for a reader: texts, dates, lists, numbers and measures in their language and units.
//!
//! [`Wording`] holds the embedded languages; [`Wording::voice`] gives the [`Voice`] in which one
//! reader is spoken to. The texts are Fluent files in `locales/`; the formats are Unicode CLDR's.
//!
//! ```
//! use sowbell::club::Units;
//! use sowbell::wording::{Wording, args};
//!
//! let wording = Wording::embedded()?;
//! let voice = wording.voice(&"en-GB".parse()?, Units::Metric);
//! assert_eq!(voice.say("days", &args().number("n", 3)), "3 days");
//! assert_eq!(voice.weeks(24), "3½ weeks");
//! assert_eq!(voice.length_mm(25), "2.5\u{a0}cm");
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod args;
mod dates;
mod fits;
mod formats;
mod languages;
mod lists;
mod measures;
mod quoted;
#[cfg(test)]
mod said;
mod speech;
mod texts;
mod times;
mod voice;
mod weeks;

pub use args::{Args, args};
pub use fits::shorten_to_limit;
pub use languages::{Wording, WordingError};
pub use quoted::quoted;
pub use speech::{Speech, sentence};
pub use voice::Voice;

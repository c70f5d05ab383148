//! Reading a seed packet's text: "start indoors 6-8 weeks before last frost, 75 days".
//!
//! A text is cut into numbers with their units and the words between them (`lexer`); what a
//! number means is told by the words nearest to it, up to the next comma or the end of the
//! sentence (`read`). Nothing here fails on any text: what is not understood is passed over.

mod head;
mod lexer;
mod read;
mod words;

pub use read::{PacketText, read_packet};
pub use words::{PacketWords, PacketWordsError};

/// How many characters of a packet's text are read.
pub const PACKET_CHARACTERS: usize = 1_500;

//! The one path that both faces share: what comes in is decided and kept, what waits is sent.

mod clock;
mod digests;
mod limits;
mod mornings;
mod outbox;
mod platform;
mod sender;
mod take_in;
mod unharmed;

pub use clock::Clock;
pub use digests::digest;
pub use limits::{Limits, SendLimits};
pub use mornings::{MakeMorning, morning};
pub use platform::{Delivery, Platform};
pub use sender::{Landed, Outbox, Sender, SenderStep, run_sender};
pub use take_in::{App, Decide, Update};

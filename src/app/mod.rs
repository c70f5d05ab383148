//! The one path that both faces share: what comes in is decided and kept, what waits is sent.

mod limits;
mod platform;
mod sender;

pub use limits::{Limits, SendLimits};
pub use platform::{Delivery, Platform};
pub use sender::{Outbox, Sender, SenderStep, run_sender};

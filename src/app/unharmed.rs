//! A fault in the rules, met by one member's crops or words, harms nobody else.

use std::any::Any;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// What `work` comes to, or what it said as it panicked. `work` only reads, so that nothing is
/// left half done.
pub(super) fn unharmed<T>(work: impl FnOnce() -> T) -> Result<T, String> {
    catch_unwind(AssertUnwindSafe(work)).map_err(|panic| panic_text(panic.as_ref()))
}

fn panic_text(panic: &(dyn Any + Send)) -> String {
    let text = panic.downcast_ref::<&str>().map(ToString::to_string);
    text.or_else(|| panic.downcast_ref::<String>().cloned())
        .unwrap_or_else(|| "without a message".to_owned())
}

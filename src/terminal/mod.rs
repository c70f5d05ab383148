//! The practice chat in the terminal.

use chrono::NaiveDate;

/// Runs the practice chat until its input ends.
///
/// # Errors
/// When the terminal or the embedded database fails.
pub fn practice(_on: Option<NaiveDate>) -> anyhow::Result<()> {
    Ok(())
}

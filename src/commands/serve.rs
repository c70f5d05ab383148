//! `sowbell serve`: the running bot.

use std::path::PathBuf;

use clap::Args;

use super::CommandError;

/// The arguments of `sowbell serve`.
#[derive(Debug, Args)]
pub struct ServeArgs {
    /// A TOML file with the settings, named as in the environment but in lower case.
    #[arg(long, value_name = "FILE")]
    settings: Option<PathBuf>,
}

pub(super) fn run(_args: &ServeArgs) -> Result<(), CommandError> {
    Ok(())
}

//! The command line: one-shot commands, the practice chat and the running bot.

mod ask;
mod crop_names;
mod flags;
mod plan;
mod serve;
mod sowing_figures;
mod trays;

use std::io::{self, Write};
use std::path::PathBuf;
use std::process::ExitCode;

use clap::error::ErrorKind;
use clap::{Parser, Subcommand};

pub use ask::AskArgs;
pub use flags::{BadInput, GardenFlags};
pub use plan::PlanArgs;
pub use serve::ServeArgs;
pub use trays::TraysArgs;

/// A chat bot for a garden club: what to sow, harden off and plant out, and when.
#[derive(Debug, Parser)]
#[command(name = "sowbell", version)]
struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Answer one question, or a file of them.
    Ask(AskArgs),
    /// List the season's dated jobs for some crops.
    Plan(PlanArgs),
    /// Lay out trays for what is sown indoors in the next two weeks.
    Trays(TraysArgs),
    /// Try the bot in this terminal: no token, a small demo club, and a date you can move.
    Practice {
        /// The day on which practice begins, as YYYY-MM-DD; today by default.
        #[arg(long, value_name = "DATE")]
        on: Option<String>,
    },
    /// Run the bot.
    Serve(ServeArgs),
}

/// Why a command ended without doing its work.
#[derive(Debug, thiserror::Error)]
pub enum CommandError {
    /// What the user gave is wrong; the sentence names the mend. Exit status 2.
    #[error(transparent)]
    BadInput(#[from] BadInput),
    /// Something broke. Exit status 1.
    #[error("{0:#}")]
    Broken(#[from] anyhow::Error),
}

/// Runs the command that `arguments` (the program's name first) name.
pub fn run(arguments: impl IntoIterator<Item = std::ffi::OsString>) -> ExitCode {
    let cli = match Cli::try_parse_from(arguments) {
        Ok(cli) => cli,
        Err(error) => return usage(&error),
    };
    let done = match cli.command {
        Command::Ask(args) => ask::run(&args, &mut io::stdout().lock()),
        Command::Plan(args) => plan::run(&args, &mut io::stdout().lock()),
        Command::Trays(args) => trays::run(&args, &mut io::stdout().lock()),
        Command::Practice { on } => practice(on.as_deref()),
        Command::Serve(args) => serve::run(&args),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        // Whoever reads the output has seen enough; that is no fault.
        Err(CommandError::Broken(error)) if is_broken_pipe(&error) => ExitCode::SUCCESS,
        Err(error) => {
            complain(&error.to_string());
            ExitCode::from(if matches!(error, CommandError::BadInput(_)) { 2 } else { 1 })
        }
    }
}

fn practice(on: Option<&str>) -> Result<(), CommandError> {
    let on = on.map(flags::date).transpose()?;
    Ok(crate::terminal::practice(on)?)
}

/// Help and version go to standard output; anything wrong is one line that says where help is.
fn usage(error: &clap::Error) -> ExitCode {
    if matches!(error.kind(), ErrorKind::DisplayHelp | ErrorKind::DisplayVersion) {
        let _ = write!(io::stdout(), "{error}");
        return ExitCode::SUCCESS;
    }
    if error.kind() == ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand {
        complain("say what to do: ask, plan, trays, practice or serve (sowbell --help lists them)");
        return ExitCode::from(2);
    }
    let text = error.to_string();
    let first = text.lines().next().unwrap_or_default().trim_start_matches("error: ");
    complain(&format!("{first} (sowbell --help lists what there is)"));
    ExitCode::from(2)
}

/// One line on standard error.
fn complain(text: &str) {
    let line = text.lines().map(str::trim).filter(|line| !line.is_empty()).collect::<Vec<_>>();
    let _ = writeln!(io::stderr(), "sowbell: {}", line.join(" "));
}

fn is_broken_pipe(error: &anyhow::Error) -> bool {
    error.downcast_ref::<io::Error>().is_some_and(|error| error.kind() == io::ErrorKind::BrokenPipe)
}

/// The path of a file that a flag names, `-` being standard input.
fn read_all(path: &PathBuf) -> Result<Vec<u8>, BadInput> {
    use std::io::Read;
    let mut bytes = Vec::new();
    let read = if path.as_os_str() == "-" {
        io::stdin().lock().read_to_end(&mut bytes)
    } else {
        std::fs::File::open(path).and_then(|mut file| file.read_to_end(&mut bytes))
    };
    read.map_err(|error| {
        BadInput(format!("the file {} cannot be read ({error}): check its path", path.display()))
    })?;
    Ok(bytes)
}

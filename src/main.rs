//! The command line of sowbell.

use std::process::ExitCode;

fn main() -> ExitCode {
    sowbell::commands::run(std::env::args_os())
}

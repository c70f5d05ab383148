//! The whole program against a fake platform and a fresh database.

mod filled;
mod kill;
mod platform;
mod process;

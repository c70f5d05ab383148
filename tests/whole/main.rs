//! The whole program against a fake platform and a fresh database.

mod platform;

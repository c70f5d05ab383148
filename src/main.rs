//! The command line of sowbell.

fn main() {}

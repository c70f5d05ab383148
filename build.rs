//! Builds again when a migration joins: the macro that embeds them does not see new files.

fn main() {
    println!("cargo::rerun-if-changed=migrations");
}

//! The README shows what the program says, word for word.

#![expect(clippy::expect_used, reason = "a failed test panics")]

use std::process::Command;

/// What stands before a command of ours in the README.
const PROMPT: &str = "$ cargo run -q -- ";

/// The commands of the README's console blocks, each with the output that is shown for it.
fn shown(readme: &str) -> Vec<(String, String)> {
    let mut shown: Vec<(String, String)> = Vec::new();
    for block in readme.split("```console\n").skip(1) {
        let (block, _) = block.split_once("```").expect("the end of the block");
        for line in block.lines() {
            if let Some(command) = line.strip_prefix(PROMPT) {
                shown.push((command.to_owned(), String::new()));
            } else {
                let (_, output) = shown.last_mut().expect("a command before its output");
                output.push_str(line);
                output.push('\n');
            }
        }
    }
    shown
}

/// The words of a command; double quotes hold a word together.
fn words(command: &str) -> Vec<String> {
    let pieces = command.split('"').enumerate();
    pieces
        .flat_map(|(number, piece)| {
            let quoted = number % 2 == 1;
            let words = if quoted { vec![piece] } else { piece.split_whitespace().collect() };
            words.into_iter().map(ToOwned::to_owned)
        })
        .collect()
}

#[test]
fn the_readme_shows_what_the_program_says() {
    let readme = include_str!("../README.md");
    let shown = shown(readme);
    assert!(shown.len() >= 2, "the README shows a conversation");
    for (command, output) in shown {
        let ran = Command::new(env!("CARGO_BIN_EXE_sowbell"))
            .args(words(&command))
            .output()
            .expect("the program runs");
        // A space at which no line breaks looks like any other.
        let said = String::from_utf8(ran.stdout).expect("a text").replace('\u{a0}', " ");
        assert_eq!(said, output.replace('\u{a0}', " "), "{command}");
    }
}

#[test]
fn the_readme_counts_the_crops() {
    let catalogue = sowbell::catalogue::Catalogue::embedded().expect("the catalogue");
    let counted = format!("It knows {} crops", catalogue.len());
    assert!(include_str!("../README.md").contains(&counted), "{counted}");
}

//! The one-shot commands, as a program that reads their output sees them.

#![expect(clippy::expect_used, reason = "a test stops at the first thing that is wrong")]

mod ask;
mod bad_input;
mod packets;
mod plan;
mod seed;
mod trays;
mod words;

use std::io::Write;
use std::process::{Command, Stdio};

use serde_json::Value;

/// What a run of the program gave.
struct Run {
    status: i32,
    out: String,
    err: String,
}

impl Run {
    fn json(&self) -> Value {
        assert_eq!(self.status, 0, "{}", self.err);
        serde_json::from_str(&self.out).expect("one JSON value")
    }

    /// Each line of the output, as JSON.
    fn json_lines(&self) -> Vec<Value> {
        assert_eq!(self.status, 0, "{}", self.err);
        self.out.lines().map(|line| serde_json::from_str(line).expect("a JSON line")).collect()
    }
}

fn sowbell_reading(arguments: &[&str], input: &[u8]) -> Run {
    let mut child = Command::new(env!("CARGO_BIN_EXE_sowbell"))
        .args(arguments)
        .env_clear()
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    // A program that ends without reading its input closes the pipe, which is no fault here.
    let _ = child.stdin.take().expect("a pipe").write_all(input);
    let output = child.wait_with_output().expect("the program ends");
    Run {
        status: output.status.code().expect("not ended by a signal"),
        out: String::from_utf8(output.stdout).expect("UTF-8"),
        err: String::from_utf8(output.stderr).expect("UTF-8"),
    }
}

fn sowbell(arguments: &[&str]) -> Run {
    sowbell_reading(arguments, b"")
}

/// A garden with its last frost on 15 May and its first on 5 October, asked on a day.
fn garden<'a>(command: &'a str, on: &'a str, rest: &[&'a str]) -> Run {
    let mut arguments =
        vec![command, "--on", on, "--last-frost", "05-15", "--first-frost", "10-05"];
    arguments.extend(rest);
    sowbell(&arguments)
}

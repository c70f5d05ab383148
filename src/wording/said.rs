//! Holds the code to the texts: every message that is said exists and gets its variables, and
//! every message that exists is said.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use super::Wording;
use crate::club::LanguageTag;

/// What gives a value to a message, its name following.
const GIVES: [&str; 3] = [".text(", ".number(", ".count("];

/// One place in the code where a message is said.
#[derive(Debug, PartialEq, Eq)]
struct Said {
    key: String,
    /// The names of the values, where they are built on the spot.
    args: Option<BTreeSet<String>>,
}

#[test]
fn messages_that_are_said_exist_and_get_their_variables() {
    let wording = Wording::embedded().expect("wording");
    let english = LanguageTag::default();
    let keys = wording.keys(&english);
    let mut wrong = Vec::new();
    for (path, code) in sources() {
        for Said { key, args } in said_in(&code) {
            let place = format!("{}: {key}", path.display());
            if !keys.contains(&key) {
                wrong.push(format!("{place} does not exist"));
            } else if let Some(args) = args
                && args != wording.variables(&english, &key)
            {
                let reads = wording.variables(&english, &key);
                wrong.push(format!("{place} reads {reads:?} and is given {args:?}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn messages_that_exist_are_said() {
    let wording = Wording::embedded().expect("wording");
    let code: String = sources().into_iter().map(|(_, code)| code).collect();
    // The name of a value may be a key too, and says nothing.
    let says = |key: &str| {
        code.match_indices(&format!("\"{key}\"")).any(|(at, _)| {
            let before = code[..at].trim_end();
            !GIVES.iter().any(|gives| before.ends_with(gives))
        })
    };
    let keys = wording.keys(&LanguageTag::default());
    let unused: Vec<String> = keys.into_iter().filter(|key| !says(key)).collect();
    assert!(unused.is_empty(), "nothing says {unused:?}");
}

#[test]
fn the_scan_finds_keys_and_values() {
    let found = |code| said_in(code).into_iter().map(|said| (said.key, said.args));
    let names = |names: &[&str]| Some(names.iter().map(|name| (*name).to_owned()).collect());
    let code = r#"
        voice.say("plain", &args());
        self.say(
            "outer",
            &args().text("crop", voice.say("inner", &args().number("n", 1))).count("how-many", 2),
        );
        voice.say("handed", &values); voice.say("odd", &args().text("b", ")\"")); say(key, &args());
        essay("no");
    "#;
    assert_eq!(
        found(code).collect::<Vec<_>>(),
        [
            ("plain".to_owned(), names(&[])),
            ("outer".to_owned(), names(&["crop", "how-many"])),
            ("inner".to_owned(), names(&["n"])),
            ("handed".to_owned(), None),
            ("odd".to_owned(), names(&["b"])),
        ]
    );
}

/// The program's sources, without their tests.
fn sources() -> Vec<(PathBuf, String)> {
    let mut found = Vec::new();
    let mut folders = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join("src")];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(&folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|ending| ending == "rs")
                && !path.ends_with("wording/said.rs")
            {
                let code = fs::read_to_string(&path).expect("a source");
                // Tests stand at the end of a file, and comments say nothing.
                let tests = ["\n#[cfg(test)]\nmod tests", "\n#[cfg(test)]\npub(super) mod tests"];
                let ends = tests.iter().filter_map(|tests| code.find(tests)).min();
                let code = &code[..ends.unwrap_or(code.len())];
                let lines = code.lines().filter(|line| !line.trim_start().starts_with("//"));
                found.push((path, lines.collect::<Vec<_>>().join("\n")));
            }
        }
    }
    found
}

fn said_in(code: &str) -> Vec<Said> {
    let calls = code.match_indices("say(").filter(|(at, _)| {
        !code[..*at].ends_with(|before: char| before.is_alphanumeric() || before == '_')
    });
    calls
        .filter_map(|(at, call)| {
            let call = up_to_closing(&code[at + call.len()..]);
            let (key, rest) = call.trim_start().strip_prefix('"')?.split_once('"')?;
            Some(Said { key: key.to_owned(), args: args_in(rest) })
        })
        .collect()
}

/// The names given to `args()` in the rest of a call, those of calls within it left out.
fn args_in(rest: &str) -> Option<BTreeSet<String>> {
    let mut own = rest.trim_start_matches([',', ' ', '\n', '&']).strip_prefix("args()")?.to_owned();
    while let Some(at) = own.find("say(") {
        let inner = up_to_closing(&own[at + "say(".len()..]).len();
        own.replace_range(at..at + "say(".len() + inner, "");
    }
    let names = GIVES.iter().flat_map(|call| own.split(call).skip(1)).filter_map(|after| {
        Some(after.trim_start().strip_prefix('"')?.split_once('"')?.0.to_owned())
    });
    Some(names.collect())
}

/// The beginning of `code` before the parenthesis that closes what was open before it.
fn up_to_closing(code: &str) -> &str {
    let (mut depth, mut in_text, mut escaped) = (1_i32, false, false);
    for (at, c) in code.char_indices() {
        match c {
            _ if escaped => escaped = false,
            '\\' if in_text => escaped = true,
            '"' => in_text = !in_text,
            '(' if !in_text => depth += 1,
            ')' if !in_text => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return &code[..at];
        }
    }
    code
}

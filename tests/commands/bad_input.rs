//! Bad input gets one clear line on standard error that names the mend, and exit status 2.

use crate::{garden, sowbell};

fn refused(arguments: &[&str]) -> String {
    let run = sowbell(arguments);
    assert_eq!(run.status, 2, "{arguments:?}: {}", run.err);
    assert_eq!(run.out, "", "{arguments:?}");
    assert_eq!(run.err.lines().count(), 1, "{arguments:?}: {}", run.err);
    run.err
}

#[test]
fn each_mistake_has_its_sentence() {
    let frosts = ["--last-frost", "05-15", "--first-frost", "10-05"];
    let ask = |rest: &[&str]| refused(&[&["ask"][..], &frosts[..], rest].concat());
    let plan =
        |rest: &[&str]| refused(&[&["plan", "--crops", "tomato"], &frosts[..], rest].concat());
    let none = ["--last-frost", "none", "--first-frost", "none"];
    let free = |rest: &[&str]| refused(&[&["ask"][..], &none[..], rest].concat());
    for (error, names) in [
        (refused(&["ask", "q"]), "--last-frost is missing"),
        (refused(&["ask", "--last-frost", "05-15", "q"]), "--first-frost is missing"),
        (refused(&["ask", "--last-frost", "02-30", "--first-frost", "10-05", "q"]), "no day 02-30"),
        (refused(&["ask", "--last-frost", "May", "--first-frost", "10-05", "q"]), "MM-DD"),
        (
            refused(&["ask", "--last-frost", "none", "--first-frost", "10-05", "q"]),
            "give both dates",
        ),
        (
            refused(&["ask", "--last-frost", "05-15", "--first-frost", "none", "q"]),
            "--first-frost none: a garden with a last frost (05-15) has a first frost too",
        ),
        (refused(&["ask", "--last-frost", "05-15", "--first-frost", "05-15", "q"]), "same day"),
        (ask(&["--on", "2026-02-30", "q"]), "YYYY-MM-DD"),
        (ask(&["--on", "99999-01-01", "q"]), "YYYY-MM-DD"),
        (ask(&["--hot", "6-9", "q"]), "for a garden without frost"),
        (free(&["--hot", "June", "q"]), "--hot: 'June' does not name months"),
        (free(&["--wet", "0", "q"]), "--wet: '0' does not name months"),
        (free(&["--hot", "none", "q"]), "no month is hot"),
        (free(&["--hot", "1-12", "q"]), "every month is hot or wet"),
        (ask(&["--place", "attic", "q"]), "choose windowsill, lights, heat-mat or greenhouse"),
        (ask(&["--cover", "", "q"]), "choose fleece, cold-frame or tunnel"),
        (ask(&["--zone", "Mars/Base", "q"]), "IANA"),
        (ask(&["--language", "xx", "q"]), "choose one of: en"),
        (ask(&["--language", "", "q"]), "choose one of: en"),
        (ask(&["--batch", "no/such/file"]), "check its path"),
        (ask(&["--batch", ".", "q"]), "leave out the question"),
        (ask(&[]), "ask what?"),
        (ask(&["--frost", "q"]), "--help"),
        (refused(&[]), "ask, plan, trays, practice or serve"),
        (plan(&["--plants", "0"]), "'0' is no number of plants; give from 1 to 5000"),
        (plan(&["--plants", "10000"]), "'10000' is no number of plants"),
        (plan(&["--plants", "many"]), "'many' is no number of plants"),
        (refused(&["dance"]), "--help"),
        (refused(&["practice", "--on", "yesterday"]), "YYYY-MM-DD"),
        (refused(&["serve"]), "SOWBELL_TOKEN is not set"),
    ] {
        assert!(error.contains(names), "{error:?} does not say {names:?}");
    }
}

#[test]
fn a_plan_takes_only_what_it_knows() {
    let unknown = garden("plan", "2026-03-01", &["--crops", "tomato,tomatoo"]);
    assert_eq!((unknown.status, unknown.err.lines().count()), (2, 1));
    assert!(unknown.err.contains("'tomatoo'; did you mean tomato?"), "{}", unknown.err);
    let two = garden("plan", "2026-03-01", &["--crops", "beans"]);
    assert!(two.err.contains("bush bean") && two.err.contains("pole bean"), "{}", two.err);
    assert_eq!(garden("plan", "2026-03-01", &["--crops", " , "]).status, 2);
    assert_eq!(garden("plan", "2026-03-01", &[]).status, 2);
}

#[test]
fn help_and_version_are_no_mistakes() {
    for flag in ["--help", "--version"] {
        let run = sowbell(&[flag]);
        assert_eq!((run.status, run.err.as_str()), (0, ""));
        assert!(run.out.contains("sowbell"));
    }
}

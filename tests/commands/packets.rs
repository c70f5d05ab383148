//! A variety's packet on the command line: `--packet`, for `ask` and `plan`.

use serde_json::{Value, json};

use crate::garden;

const LANTERN: &str = "tomato Early Lantern: start indoors 6-8 weeks before last frost, 75 days";

#[test]
fn a_packet_moves_the_windows_and_says_so() {
    let question = ["--json", "--packet", LANTERN, "can I start tomatoes now?"];
    let answer = garden("ask", "2026-03-20", &question).json();
    let one = &answer["answers"][0];
    assert_eq!(one["variety"], "Early Lantern");
    assert_eq!(one["packet"], json!({"indoors_weeks": [6, 8], "days": [75, 75]}));
    assert_eq!(one["verdict"], "on_time");
    // Eight and six weeks before 15 May.
    assert_eq!(one["windows"]["sow_indoors"][0]["ideal_from"], "2026-03-20");
    assert_eq!(one["windows"]["sow_indoors"][0]["ideal_to"], "2026-04-03");
    let without = garden("ask", "2026-03-20", &["--json", "can I start tomatoes now?"]).json();
    assert_eq!(without["answers"][0]["variety"], Value::Null);
    assert_eq!(without["answers"][0]["verdict"], "early");
}

#[test]
fn each_named_variety_is_weighed_for_itself() {
    let two = [
        "--json",
        "--packet",
        "tomato Early Lantern, 75 days",
        "--packet",
        "tomato Amber Bell, 95-110 days",
        "will Early Lantern and Amber Bell tomatoes ripen?",
    ];
    let answer = garden("ask", "2026-04-22", &two).json();
    let of = |at: usize, key: &str| answer["answers"][at]["ripening"][key].clone();
    assert_eq!(answer["answers"][1]["variety"], "Amber Bell");
    // Set out on 27 May, at the five weeks that they need at least: 75 days are 10 August, when
    // growth begins to slow; 95 are 30 August and 110 are 14 September, and a fortnight later.
    assert_eq!((of(0, "ripens"), of(0, "first_to")), (json!("yes"), json!("2026-08-10")));
    assert_eq!(of(0, "helps"), Value::Null);
    assert_eq!(of(1, "ripens"), "tight");
    assert_eq!(
        (of(1, "first_from"), of(1, "first_to")),
        (json!("2026-09-13"), json!("2026-09-28"))
    );
    assert_eq!(of(1, "season_ends_at_risk"), "2026-09-20");
    assert_eq!(of(1, "days_to_spare_at_risk"), -8);
    // 102 days are 6 September and a fortnight later the 20th.
    assert_eq!(of(1, "helps")["days_at_most"], 102);
    assert_eq!(of(1, "helps")["cover_to_c"], -2);
}

#[test]
fn a_plan_follows_the_packet() {
    let arguments = ["--json", "--crops", "tomato,basil", "--packet", LANTERN];
    let plan = garden("plan", "2026-03-01", &arguments).json();
    let jobs = plan.as_array().expect("a list");
    let first = |crop: &str| jobs.iter().find(|job| job["crop"] == crop).expect("a job");
    assert_eq!(first("tomato")["ideal_from"], "2026-03-20");
    assert_eq!(first("tomato")["variety"], "Early Lantern");
    assert_eq!(first("basil").get("packet"), None);
}

#[test]
fn a_packet_that_cannot_be_is_one_clear_line() {
    for (packet, says) in [
        ("tomato: 0 days", "0 days to harvest can't be right"),
        ("tomato: start indoors 30 weeks before last frost", "30 weeks indoors"),
        ("75 days", "it names no crop; begin with one"),
        ("flurb", "it names no crop; begin with one"),
        ("tomato and basil, 75 days", "several crops"),
        ("tomato", "no number of a seed packet"),
    ] {
        let run = garden("ask", "2026-04-22", &["--packet", packet, "can I start tomatoes?"]);
        assert_eq!((run.status, run.err.lines().count()), (2, 1), "{packet}: {}", run.err);
        assert!(run.err.contains("--packet") && run.err.contains(says), "{packet}: {}", run.err);
        assert!(!run.err.contains("nothing changed"), "{packet}: {}", run.err);
    }
}

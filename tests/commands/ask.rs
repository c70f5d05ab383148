//! `sowbell ask`.

use serde_json::{Value, json};

use crate::{garden, sowbell, sowbell_reading};

fn ask(on: &str, question: &str) -> Value {
    garden("ask", on, &["--json", question]).json()
}

fn keys(value: &Value) -> Vec<&str> {
    value.as_object().expect("an object").keys().map(String::as_str).collect()
}

#[test]
fn the_shape_that_programs_read_is_pinned() {
    let answer = ask("2026-04-22", "can I start cucumbers now?");
    assert_eq!(keys(&answer), ["question", "understood", "answers", "text"]);
    assert_eq!(
        answer["understood"],
        json!({"intent": "can_start", "crops": ["cucumber"], "step": null, "on": "2026-04-22"})
    );
    assert_eq!(answer["answers"].as_array().expect("a list").len(), 1);
    let one = &answer["answers"][0];
    assert_eq!(
        keys(one),
        ["crop", "step", "verdict", "reason", "better_outdoors", "both", "next_date", "windows"]
    );
    assert_eq!(one["crop"], "cucumber");
    assert_eq!(one["step"], "sow_indoors");
    assert_eq!(one["verdict"], "on_time");
    assert_eq!(one["reason"], Value::Null);
    assert_eq!(one["better_outdoors"], false);
    assert_eq!(one["both"], true);
    assert_eq!(keys(&one["windows"]), ["sow_indoors", "harden_off", "plant_out", "sow_outdoors"]);
    let window = &one["windows"]["sow_indoors"][0];
    assert_eq!(keys(window), ["label", "from", "ideal_from", "ideal_to", "to"]);
    // Set out a week after the average last frost, on 22 May (University of Illinois Extension,
    // 2017), at three to five weeks, six at the most: 42 and 35 days before that, and 21.
    assert_eq!(window["label"], "spring");
    assert_eq!(window["from"], "2026-04-10");
    assert_eq!(window["ideal_from"], "2026-04-17");
    assert_eq!(window["ideal_to"], "2026-05-01");
    assert_eq!(one["next_date"], window["to"]);
}

#[test]
fn the_words_lead_with_the_verdict() {
    let text = garden("ask", "2026-04-22", &["can I start cucumbers now?"]);
    assert_eq!(text.status, 0);
    assert_eq!(text.out.lines().next(), Some("Go ahead: sow cucumbers indoors today."));
    let early = garden("ask", "2026-03-27", &["cucumbers?"]);
    assert_eq!(
        early.out.lines().next(),
        Some("Not yet. Wait until April 17 to sow cucumbers indoors.")
    );
    assert!(early.out.contains("8 weeks old by May 22"), "{}", early.out);
    let british = garden("ask", "2026-03-27", &["--language", "en-GB", "courgettes?"]);
    assert!(british.out.starts_with("Not yet. Wait until 10 April"), "{}", british.out);
}

#[test]
fn verdicts_and_next_dates() {
    let weighed = |on, question| {
        let answer = ask(on, question);
        let one = answer["answers"][0].clone();
        (one["step"].clone(), one["verdict"].clone(), one["next_date"].clone())
    };
    assert_eq!(
        weighed("2026-04-03", "cucumber"),
        (json!("sow_indoors"), json!("too_early"), json!("2026-04-17"))
    );
    assert_eq!(weighed("2026-04-22", "strawflower").1, "late");
    let (_, verdict, next) = weighed("2026-05-15", "can I sow strawflower indoors?");
    assert_eq!((verdict, next), (json!("too_late"), json!("2027-03-20")));
    assert_eq!(weighed("2026-03-06", "can I start tomatoes inside").1, "early");
    assert_eq!(weighed("2026-05-25", "can my tomatoes go out?").0, "plant_out");
}

#[test]
fn reasons_where_there_is_no_verdict() {
    let reason = |question| {
        let answer = ask("2026-04-22", question);
        let one = answer["answers"][0].clone();
        assert_eq!(one["verdict"], Value::Null);
        (one["reason"].clone(), one["better_outdoors"].clone())
    };
    assert_eq!(reason("can I start carrots indoors?"), (json!("never_this_way"), json!(true)));
    assert_eq!(reason("can I sow potatoes indoors?").0, "not_from_seed");
    let free = sowbell(&[
        "ask",
        "--json",
        "--on",
        "2026-04-22",
        "--last-frost",
        "none",
        "--first-frost",
        "none",
        "can I start tomatoes?",
    ])
    .json();
    let one = &free["answers"][0];
    assert_eq!((&one["verdict"], &one["reason"]), (&Value::Null, &json!("no_frost_here")));
    assert_eq!(one["next_date"], Value::Null);
    for step in ["sow_indoors", "harden_off", "plant_out", "sow_outdoors"] {
        assert_eq!(one["windows"][step], json!([]));
    }
    let text = free["text"].as_str().expect("a text");
    assert!(text.contains("no frost") && text.contains("Heat and the wet months"), "{text}");
    assert!(!text.chars().any(|c| c.is_ascii_digit()), "a date is invented: {text}");
}

#[test]
fn potatoes_are_planted_and_pole_beans_are_better_in_place() {
    let potato = ask("2026-05-05", "can I plant potatoes now?");
    assert_eq!(potato["answers"][0]["step"], "plant_out");
    assert_eq!(potato["answers"][0]["verdict"], "on_time");
    let beans = ask("2026-04-17", "can I start pole beans now?");
    assert_eq!(beans["answers"][0]["step"], "sow_outdoors");
    assert_eq!(beans["answers"][0]["better_outdoors"], true);
}

#[test]
fn a_question_that_is_not_understood_is_an_answer() {
    for question in ["can I start my car now", "¿?", "12345", "🌱🌱🌱"] {
        let answer = ask("2026-04-22", question);
        assert_eq!(answer["understood"]["intent"], "unknown", "{question}");
        assert_eq!(answer["answers"], json!([]), "{question}");
        assert!(!answer["text"].as_str().expect("a text").is_empty());
    }
    let near = ask("2026-04-22", "can I start tomatilo and cucumbar");
    assert_eq!(near["understood"]["crops"], json!(["tomatillo", "cucumber"]));
}

#[test]
fn what_now_lists_the_most_urgent_first() {
    let answer = ask("2026-04-22", "what can I start now?");
    assert_eq!(answer["understood"]["intent"], "what_now");
    let rank = |one: &Value| match one["verdict"].as_str() {
        Some("late") => 0,
        Some("on_time") => 1,
        Some("early") => 2,
        other => panic!("{other:?} is nothing to start"),
    };
    let ranks: Vec<i32> = answer["answers"].as_array().expect("a list").iter().map(rank).collect();
    assert!(ranks.len() > 20 && ranks.is_sorted(), "{ranks:?}");
    let herbs = ask("2026-04-22", "which herbs can I start now?");
    let crops: Vec<&str> = herbs["answers"]
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(|one| one["crop"].as_str())
        .collect();
    assert!(crops.contains(&"basil") && !crops.contains(&"zinnia"), "{crops:?}");
}

#[test]
fn a_batch_answers_every_line_in_order() {
    let input = b"can I start basil?\n\n\xff\xfe\r\nwhen do tomatoes go out?\nlast line";
    let arguments = [
        "ask",
        "--batch",
        "-",
        "--on",
        "2026-04-22",
        "--last-frost",
        "05-15",
        "--first-frost",
        "10-05",
    ];
    let run = sowbell_reading(&arguments, input);
    let answers = run.json_lines();
    let questions: Vec<&str> = answers.iter().filter_map(|one| one["question"].as_str()).collect();
    assert_eq!(
        questions,
        ["can I start basil?", "", "\u{fffd}\u{fffd}", "when do tomatoes go out?", "last line"]
    );
    let intents: Vec<&str> =
        answers.iter().filter_map(|one| one["understood"]["intent"].as_str()).collect();
    assert_eq!(intents, ["can_start", "unknown", "unknown", "when", "unknown"]);

    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("questions.txt");
    std::fs::write(&file, input).expect("written");
    let path = file.to_str().expect("a path");
    let from_file = sowbell(&[&arguments[..2], &[path], &arguments[3..]].concat());
    assert_eq!(from_file.out, run.out);
    assert_eq!(sowbell_reading(&arguments, b"").out, "");
}

#[test]
fn will_it_ripen_reckons_from_the_day_asked() {
    let answer = ask("2026-07-20", "will pumpkins still ripen?");
    assert_eq!(answer["understood"]["intent"], "will_it_ripen");
    let ripening = &answer["answers"][0]["ripening"];
    assert_eq!(ripening["ripens"], "no");
    assert_eq!(ripening["season_ends"], "2026-10-05");
    let radish = ask("2026-07-20", "will radishes ripen?");
    assert_eq!(radish["answers"][0]["ripening"]["ripens"], "yes");
}

#[test]
fn a_month_in_a_question_of_ripening_is_no_day_of_sowing() {
    let dates = ["05-15", "10-05"];
    let plain = told("2026-04-15", dates, "will tomatoes ripen?");
    assert!(plain.starts_with("Yes, in time: the first tomatoes around August"), "{plain}");
    // The first tomatoes from August 5 to 30: all of it by the end of August, none of it by July's.
    for ask in ["will tomatoes be ripe in August?", "will tomatoes be ripe by September?"] {
        assert_eq!(told("2026-04-15", dates, ask), plain, "{ask}");
    }
    let july = told("2026-04-15", dates, "will tomatoes be ripe by the end of July?");
    assert!(july.starts_with("Not by then: the first tomatoes around August 5"), "{july}");
    assert!(july.contains("sow tomatoes indoors on April 15"), "{july}");
    // Some of it by the middle: the days alone say so.
    let middle = told("2026-04-15", dates, "will tomatoes be ripe by August 15?");
    assert!(middle.starts_with("The first tomatoes: around August 5"), "{middle}");
    // Asked behind the season, a month means the next one.
    let next = told("2026-10-20", dates, "will tomatoes be ripe in August?");
    assert!(next.starts_with("Yes, in time") && next.contains("2027"), "{next}");
    let sown = told("2026-04-15", dates, "will tomatoes ripen if I sow them on August 1?");
    assert!(sown.starts_with("No: tomatoes will not make it"), "{sown}");
    for (language, ask) in [
        ("de", "werden tomaten im august reif?"),
        ("fr", "les tomates seront-elles mûres en août ?"),
        ("es", "¿madurarán los tomates en agosto?"),
    ] {
        let flags = ["--last-frost", "05-15", "--first-frost", "10-05", "--language", language];
        let run = sowbell(&[&["ask", "--on", "2026-04-15"], &flags[..], &[ask]].concat());
        let yes = ["Ja,", "Oui,", "Sí,"];
        assert!(yes.iter().any(|yes| run.out.starts_with(yes)), "{ask}: {}", run.out);
    }
}

#[test]
fn ripening_counts_from_a_start_that_is_not_forbidden() {
    // Sweet corn is sown with the last frost; in February nobody sows it.
    let dates = ["05-15", "10-05"];
    let corn = told("2026-02-15", dates, "will corn ripen?");
    assert!(corn.contains("That is if you sow sweet corn in the ground on May 15."), "{corn}");
    assert!(corn.starts_with("Yes, in time: the first sweet corn around August"), "{corn}");
    let named = told("2026-02-15", dates, "will corn ripen if I sow it on April 1?");
    let (wait, rest) = named.split_once('\n').expect("two lines");
    assert_eq!(wait, "Sow sweet corn in the ground: not yet, from May 15.");
    assert_eq!(rest, corn);
    // A day that works is the one that counts.
    let june = told("2026-06-01", dates, "will corn ripen?");
    assert!(june.contains("June 1"), "{june}");
}

/// The answer to a question in a garden with these frost dates on a day.
fn told(on: &str, [last, first]: [&str; 2], question: &str) -> String {
    let flags = ["ask", "--on", on, "--last-frost", last, "--first-frost", first, question];
    let run = sowbell(&flags);
    assert_eq!(run.status, 0, "{}", run.err);
    run.out.replace(['\u{a0}', '\u{202f}'], " ")
}

#[test]
fn when_tells_no_window_that_is_over() {
    let north = ["05-15", "10-05"];
    // In July tomatoes are over in every step: the next spring counts, 49 to 35 days before the
    // setting out on 22 May as in the spring before.
    let tomato = told("2026-07-22", north, "when do I start tomatoes");
    assert!(tomato.contains("last frost around May 15, 2027"), "{tomato}");
    let sowing = "Sow tomatoes indoors: March 27 to April 10, 2027; worth it until May 9, 2027";
    assert!(tomato.contains(sowing), "{tomato}");
    assert!(tomato.contains("Set out tomatoes: May 22–29, 2027"), "{tomato}");
    let step = told("2026-07-22", north, "when do tomatoes go out?");
    assert!(step.contains("May 22–29, 2027") && !step.contains("Sow"), "{step}");
    // While a window of this season is open, it is told and the one that is over is not.
    let out = told("2026-05-20", north, "when do I start tomatoes");
    assert!(out.contains("Set out tomatoes: May 22–29; worth it until June 13\n"), "{out}");
    assert!(out.contains("Sow tomatoes indoors: March 27 to April 10, 2027"), "{out}");
    assert_eq!(out.matches("Sow tomatoes").count(), 1, "{out}");
    // Its last day counts.
    let last_day = told("2026-05-09", north, "when do I start tomatoes");
    assert!(last_day.contains("March 27 to April 10; worth it until May 9"), "{last_day}");
    assert!(!last_day.contains("2027"), "{last_day}");
    // In the south the season that ends on 1 May began in the year before.
    let south = told("2026-04-22", ["09-15", "05-01"], "when do I start tomatoes");
    assert!(south.contains("last frost around September 15:"), "{south}");
    assert!(south.contains("Sow tomatoes indoors: July 28 to August 11;"), "{south}");
    assert!(!south.contains("2025"), "{south}");
}

//! Questions about seed and soil: the words, and the figures that programs read.

use serde_json::{Value, json};

use crate::garden;

const ON: &str = "2026-05-05";

fn figures(question: &str) -> Value {
    let answer = garden("ask", ON, &["--json", question]).json();
    answer.pointer("/answers/0/figures").cloned().unwrap_or_default()
}

/// The answer in degrees Celsius, its non-breaking spaces written as plain ones.
fn text(question: &str) -> String {
    let run = garden("ask", ON, &["--language", "en-GB", question]);
    assert_eq!(run.status, 0, "{}", run.err);
    run.out.replace('\u{a0}', " ").trim_end().to_owned()
}

#[test]
fn how_many_seeds() {
    // 60 % with a tenth lost is 0.54 a seed: 28 seeds give 12 plants with 0.915, 27 with 0.887.
    // Three seeds to a cell leave 0.4^3 of the cells empty, 1.02 of 16.
    assert_eq!(
        text("how many basil seeds for 12 plants"),
        "For 12 plants of basil, sow 28 seeds.\n\
         In cells: 3 seeds to each of 16 cells, thinned to one plant; expect about 1 to stay empty.\n\
         That is the smallest number with at least a 90% chance of enough plants, if 10% of the \
         seedlings are lost after they come up.\n\
         The rate is an estimate and my own assumption: 60% for fresh seed, because the US minimum \
         standard (7 CFR 201.31) does not list basil.\n\
         To know better, sprout 20 seeds on damp paper and tell me, like this: “14 of 20 basil \
         seeds sprouted”."
    );
    let count = figures("how many tomato seeds do I need for 20 plants, seed is 3 years old");
    let count = &count["seed_count"];
    // 75 % fresh, four years of life: 0.75 * (1 - 3 / 8) = 0.46875.
    assert_eq!(count["rate"], json!(0.469));
    assert_eq!(count["estimated"], json!(true));
    assert_eq!(count["basis"], json!({"is": "standard", "fresh": 0.75}));
    assert_eq!((&count["plants"], &count["losses"]), (&json!(20), &json!(0.1)));
    let aged = text("how many tomato seeds do I need for 20 plants, seed is 3 years old");
    assert!(
        aged.contains(
            "The rate is an estimate: 47% for seed 3 years old. Fresh seed counts as 75%, the US \
             minimum standard (7 CFR 201.31), falling evenly to half of that at 4 years."
        ),
        "{aged}"
    );
}

#[test]
fn a_tested_rate_is_no_estimate() {
    let question = "15 of 20 basil seeds sprouted, how many for 12 plants?";
    let count = &figures(question)["seed_count"];
    assert_eq!(count["basis"], json!({"is": "tested", "sprouted": 15, "tested": 20}));
    assert_eq!(count["estimated"], json!(false));
    assert!(text(question).ends_with("Counted with your test: 15 of 20 sprouted, 75%."));
    // One chance in a thousand of no loss at all does not matter: 100 % of seed still loses some.
    let all = text("how many basil seeds for 1 plant, germination 100%");
    assert!(all.starts_with("For one plant of basil, sow one seed."), "{all}");
}

#[test]
fn seed_that_is_not_worth_counting() {
    // Onion: one year of life, so nothing is left at two.
    assert_eq!(
        text("how many onion seeds for 30 plants, packet from 2020"),
        "Don't count on that seed: onion seed keeps about 1 year, and at 6 years hardly any comes \
         up. Get fresh seed, or sprout 20 seeds on damp paper first."
    );
    assert_eq!(
        text("1 of 40 leek seeds sprouted, how many for 12 plants"),
        "Don't count on that leek seed: at 3% it is better replaced."
    );
    assert_eq!(text("how many potato seeds for 12 plants"), "Not from seed: potatoes.");
}

#[test]
fn a_germination_test() {
    // Published case: 4 of 10 is 40 %, sow thicker, test at least 20. Wilson: 0.168 to 0.687.
    assert_eq!(
        text("4 of 10 basil seeds sprouted"),
        "4 of 10 sprouted: 40%. For the whole packet the rate is likely between 17% and 69% (95% \
         interval after Wilson).\n\
         40 to 50%: sow it thicker than usual.\n\
         To rely on it, test at least 20 seeds (Iowa State University, 1999)."
    );
    assert_eq!(
        figures("4 of 10 basil seeds sprouted"),
        json!({"germination_test": {
            "sprouted": 4, "tested": 10, "rate": 0.4, "low": 0.168, "high": 0.687,
            "advice": "sow_thicker"
        }})
    );
    assert!(text("7 of 20 sprouted").contains("Below 40%: replace this seed."));
    assert!(text("12 of 20 tomato seeds sprouted").contains("50 to 80%: sow by the number"));
    assert!(text("17 of 20 sprouted").ends_with("Above 80%: sow as usual."));
}

#[test]
fn days_to_come_up() {
    // Pepper: 25 days at 15 °C, 13 at 20 °C: 17.8 at 18 °C.
    assert_eq!(
        text("how long do peppers take to come up at 18 °C"),
        "At 18 °C, allow about 18 days for peppers to come up.\n\
         That is read in a straight line between 15 °C and 20 °C in the trials of Harrington and \
         Minges (1954), seed 1.3 cm deep."
    );
    assert_eq!(
        figures("how long do peppers take to come up at 18 °C"),
        json!({"emergence": {"soil_c": 18.0, "result": {"days": 17.8}}})
    );
    assert_eq!(
        text("how long do tomatoes take to come up at 10 °C"),
        "At 10 °C, allow about 43 days for tomatoes to come up.\n\
         Over three weeks counts as too cold: seed that lies so long may rot.\n\
         That was counted in the trials of Harrington and Minges (1954), seed 1.3 cm deep."
    );
    let none = text("how long do tomatoes take to come up at 5 °C");
    assert!(none.starts_with("At 5 °C, don't expect tomatoes to come up: it is too cold."));
    let between = text("how long do tomatoes take to come up at 7 °C");
    assert!(
        between.starts_with("At 7 °C, expect tomatoes to come up slowly and unevenly, if at all.")
    );
    let untested = text("how long do cabbages take to come up at 5 °C");
    assert!(
        untested.starts_with(
            "I don't know how long cabbages would take at 5 °C: that was not tested. It doesn't \
             mean that nothing comes up."
        ),
        "{untested}"
    );
    let no_trial = text("how long does basil take to come up at 20 °C");
    assert!(no_trial.contains("I have no trials of that crop."), "{no_trial}");
    let relative = text("how long does kale take to come up at 20 °C");
    assert!(relative.contains("The trials were of cabbage, a close relative."), "{relative}");
}

#[test]
fn soil_and_date_and_which_to_believe() {
    const MEASURE: &str = "Measure at sowing depth over several days: the soil must stay that warm, not touch it once.";
    // On 5 May, with the last frost around 15 May, beets may be sown: 17 days at 10 °C, 10 at 15.
    let beets = text("soil is 14 °C, can I sow beets?");
    assert!(beets.starts_with("Go ahead: sow beets in the ground today. Soil at 14 °C is warm"));
    assert!(beets.contains("allow about 11 days for beets") && beets.ends_with(MEASURE), "{beets}");
    // Pea: 36 days at 5 °C and 14 at 10 °C, so 22.8 at 8 °C, and 21 at 8.41 °C.
    let peas = text("soil is 8 °C, can I sow peas?");
    assert!(
        peas.starts_with(
            "Not yet: the date would do, but believe the soil. 8 °C is too cold for peas; wait \
             until it stays at 9 °C or more."
        ),
        "{peas}"
    );
    // Bush beans come up in warm soil, and a frost would kill them.
    let beans = text("soil is 18 °C, can I sow bush beans?");
    assert!(
        beans.starts_with(
            "Not yet: soil at 18 °C is warm enough for bush beans, but believe the date. A frost \
             would kill what comes up, so wait until 15 May."
        ),
        "{beans}"
    );
    let both = text("soil is 12 °C, can I sow bush beans?");
    assert!(
        both.starts_with(
            "Not yet: soil and date agree. 12 °C is too cold for bush beans; sow when it stays at \
             16 °C or more, but not before 15 May."
        ),
        "{both}"
    );
    let figures = figures("soil is 18 °C, can I sow bush beans?");
    let soil = &figures["soil"];
    // 16 days at 15 °C, 11 at 20 °C: 13 at 18 °C. The minimum is 60 °F, 15.6 °C.
    assert_eq!(soil["by_soil"], json!({"warm": 13.0}));
    assert_eq!((&soil["sow"], &soil["believe"]), (&json!(false), &json!("date")));
    assert_eq!(soil["warm_enough_c"], json!(15.5));
}

#[test]
fn warm_soil_is_believed_before_the_date_of_a_crop_that_bears_frost() {
    let run = garden("ask", "2026-03-20", &["--language", "en-GB", "soil is 12 °C, sow peas?"]);
    let out = run.out.replace('\u{a0}', " ");
    assert!(out.starts_with("Go ahead: sow peas in the ground. By date it would be "), "{out}");
    assert!(out.contains("believe the soil: 12 °C is warm enough"), "{out}");
}

#[test]
fn crops_that_are_not_sown_in_the_ground() {
    let tomatoes = text("soil is 20 °C, can I sow tomatoes?");
    assert!(
        tomatoes.starts_with(
            "No, don't sow tomatoes straight in the ground here: a start indoors is needed.\n\
             At 20 °C, allow about 8 days for tomatoes to come up."
        ),
        "{tomatoes}"
    );
    assert_eq!(text("soil is 14 °C, potatoes?"), "Not from seed: potatoes.");
    // Lettuce: none at 35 °C; its range ends at 85 °F, 29 °C.
    let lettuce = text("soil is 33 °C, can I sow lettuce?");
    assert!(lettuce.starts_with("Not now: 33 °C is too hot for lettuce to come up well."));
}

#[test]
fn what_can_be_sown_at_a_soil_temperature() {
    let answer = garden("ask", ON, &["--json", "soil is 14 °C"]).json();
    let answers = answer["answers"].as_array().expect("a list");
    assert!(!answers.is_empty());
    for one in answers {
        assert_eq!(one["step"], "sow_outdoors");
        assert_eq!(one["figures"]["soil"]["sow"], json!(true), "{one}");
    }
    let crops: Vec<&str> = answers.iter().filter_map(|one| one["crop"].as_str()).collect();
    assert!(crops.contains(&"beet") && !crops.contains(&"bush_bean"), "{crops:?}");
    let peas = text("soil is -2 °C, can I sow peas?");
    assert!(peas.contains("\nFrozen soil gives seed no water"), "{peas}");
    let frozen = text("soil is -2 °C");
    assert!(frozen.contains("there is nothing to sow in the ground"), "{frozen}");
}

#[test]
fn bad_figures_get_one_sentence() {
    for (question, sentence) in [
        (
            "how many basil seeds for 0 plants",
            "I can count seeds for 1 to 5,000 whole plants, not for 0.",
        ),
        (
            "how many basil seeds for 10,000 plants",
            "I can count seeds for 1 to 5,000 whole plants, not for 10,000.",
        ),
        (
            "how many basil seeds for 2.5 plants",
            "I can count seeds for 1 to 5,000 whole plants, not for 2.5.",
        ),
        (
            "how many basil seeds for 12 plants, germination 120%",
            "A germination rate lies between 1% and 100%, so 120% cannot be.",
        ),
        (
            "how many basil seeds for 12 plants, packet from 2031",
            "The year 2031 is still to come, so seed cannot be from it; which year is on the packet?",
        ),
        (
            "how many basil seeds for 12 plants, seed is 400 years old",
            "I can count with seed up to 100 years old, not with 400.",
        ),
        (
            "how many basil seeds for 12 plants, 90 seeds per cell",
            "I can count with 1 to 20 whole seeds in a cell, not with 90.",
        ),
        ("soil is 60 °C", "60 °C cannot be right for soil; I can reckon with -20 °C to 50 °C."),
        (
            "how long do peppers take to come up at 300 °C",
            "300 °C cannot be right for soil; I can reckon with -20 °C to 50 °C.",
        ),
        (
            "12 of 10 basil seeds sprouted",
            "12 of 10 cannot be: no more seeds sprout than were tested.",
        ),
        ("0 of 0 basil seeds sprouted", "A test counts whole seeds, 1 to 10,000 of them."),
    ] {
        assert_eq!(text(question), sentence, "{question}");
        let answer = garden("ask", ON, &["--json", question]).json();
        assert_eq!(answer["answers"], json!([]), "{question}");
    }
}

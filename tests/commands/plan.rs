//! `sowbell plan`.

use serde_json::Value;

use crate::{garden, sowbell};

#[test]
fn the_jobs_of_a_season_in_their_order() {
    let plan =
        garden("plan", "2026-03-01", &["--json", "--crops", "tomato, broad bean,garlic"]).json();
    let jobs = plan.as_array().expect("a list");
    let keys: Vec<&str> =
        jobs[0].as_object().expect("an object").keys().map(String::as_str).collect();
    assert_eq!(
        keys,
        [
            "crop",
            "step",
            "label",
            "from",
            "ideal_from",
            "ideal_to",
            "to",
            "why",
            "emergence",
            "seeds"
        ]
    );
    let text = |job: &Value, key: &str| job[key].as_str().expect("a text").to_owned();
    let days: Vec<String> = jobs.iter().map(|job| text(job, "ideal_from")).collect();
    assert!(days.is_sorted(), "{days:?}");
    let of = |crop: &str| -> Vec<(String, String)> {
        jobs.iter()
            .filter(|job| job["crop"] == crop)
            .map(|job| (text(job, "step"), text(job, "label")))
            .collect()
    };
    let steps: Vec<String> = of("tomato").into_iter().map(|(step, _)| step).collect();
    assert_eq!(steps, ["sow_indoors", "pot_up", "harden_off", "plant_out"]);
    assert_eq!(of("garlic"), [("plant_out".to_owned(), "overwintering".to_owned())]);
    for job in jobs {
        let dates = ["from", "ideal_from", "ideal_to", "to"].map(|key| text(job, key));
        assert!(dates.is_sorted(), "{job}");
        assert!(!text(job, "why").is_empty());
    }
}

#[test]
fn a_sowing_carries_its_seeds_and_its_days_to_come_up() {
    let plan = garden(
        "plan",
        "2026-03-01",
        &["--json", "--crops", "tomato,bush bean,basil,garlic", "--plants", "12"],
    )
    .json();
    let jobs = plan.as_array().expect("a list");
    let of = |crop: &str, step: &str| {
        jobs.iter().find(|job| job["crop"] == crop && job["step"] == step).expect("a job")
    };
    // Tomatoes come up in 8 days at 20 °C in the trials; a quarter more is 10, and as many again.
    let tomato = &of("tomato", "sow_indoors")["emergence"];
    assert_eq!(
        (&tomato["at_c"], &tomato["up_after"], &tomato["up_by"], &tomato["resow_after"]),
        (&20.into(), &8.into(), &10.into(), &20.into())
    );
    // The same number as in the answer to the question in words.
    let asked = garden("ask", "2026-03-01", &["--json", "how many tomato seeds for 12 plants"]);
    let asked = &asked.json()["answers"][0]["figures"]["seed_count"];
    assert_eq!(of("tomato", "sow_indoors")["seeds"], *asked);
    // In the ground there are no cells, and nobody measured the soil.
    let bean = of("bush_bean", "sow_outdoors");
    assert_eq!(bean["emergence"]["at_c"], Value::Null);
    assert!(bean["seeds"].get("in_cells").is_none() && bean["seeds"]["plants"] == 12, "{bean}");
    // An assumption is marked as one.
    let basil = &of("basil", "sow_indoors")["seeds"];
    assert_eq!((&basil["estimated"], &basil["basis"]["is"]), (&true.into(), &"assumed".into()));
    for job in jobs.iter().filter(|job| {
        !["sow_indoors", "sow_outdoors"].contains(&job["step"].as_str().expect("a step"))
    }) {
        assert!(job.get("emergence").is_none() && job.get("seeds").is_none(), "{job}");
    }
}

#[test]
fn each_crop_once_whatever_it_is_called() {
    let plan = |crops: &str| garden("plan", "2026-03-01", &["--json", "--crops", crops]).json();
    assert_eq!(plan("courgette,zucchini,summer_squash"), plan("summer squash"));
}

#[test]
fn a_garden_without_frost_gets_no_invented_dates() {
    let run = |json: &[&str]| {
        let base = ["plan", "--last-frost", "none", "--first-frost", "none", "--crops", "tomato"];
        sowbell(&[&base[..], json].concat())
    };
    assert_eq!(run(&["--json"]).json(), serde_json::json!([]));
    let text = run(&[]).out;
    assert!(text.contains("no frost") && !text.chars().any(|c| c.is_ascii_digit()), "{text}");
}

#[test]
fn a_season_that_is_too_short_is_said_to_be() {
    let run = sowbell(&[
        "plan",
        "--on",
        "2026-03-01",
        "--last-frost",
        "06-20",
        "--first-frost",
        "08-20",
        "--crops",
        "watermelon",
    ]);
    assert_eq!(run.status, 0);
    assert!(run.out.contains("too short for watermelons"), "{}", run.out);
}

#[test]
fn second_chances_and_what_comes_before_the_seed_are_jobs_of_their_own() {
    let crops = "cucumber,lettuce,okra,potato,sweet potato,lavender";
    let plan = garden("plan", "2026-03-01", &["--json", "--crops", crops]).json();
    let jobs = plan.as_array().expect("a list");
    let of = |crop: &str, step: &str| -> Vec<&Value> {
        jobs.iter().filter(|job| job["crop"] == crop && job["step"] == step).collect()
    };
    for (crop, step) in [
        ("okra", "soak"),
        ("potato", "chit"),
        ("sweet_potato", "root_slips"),
        ("lavender", "chill"),
    ] {
        assert!(!of(crop, step).is_empty(), "{crop}: {step}");
    }
    // Chitting takes four weeks: potatoes are planted from 1 May.
    assert_eq!(of("potato", "chit")[0]["ideal_from"], "2026-04-03");
    let second = of("cucumber", "sow_outdoors")[0]["why"].as_str().expect("a text");
    assert!(second.contains("second chance"), "{second}");
    let spring: Vec<&Value> =
        of("lettuce", "sow_outdoors").into_iter().filter(|job| job["label"] == "spring").collect();
    assert!(spring.len() > 2, "{spring:?}");
    assert!(spring[1]["why"].as_str().expect("a text").contains("repeat sowing"));
    assert!(of("lettuce", "sow_outdoors").iter().any(|job| job["label"] == "autumn"));
}

#[test]
fn hot_and_wet_months_give_a_garden_without_frost_its_dates() {
    let run = |crops: &str, json: &[&str]| {
        let base = [
            "plan",
            "--on",
            "2026-08-01",
            "--last-frost",
            "none",
            "--first-frost",
            "none",
            "--hot",
            "6-9",
            "--wet",
            "6-10",
            "--crops",
            crops,
        ];
        sowbell(&[&base[..], json].concat())
    };
    let plan = run("bush bean,cucumber", &["--json"]).json();
    let sown = |crop: &str| {
        let jobs = plan.as_array().expect("a list").iter();
        let mut sown = jobs.filter(|j| j["crop"] == crop && j["step"] == "sow_outdoors");
        sown.next().expect("sown in place").clone()
    };
    // University of Florida IFAS, SP 103, South Florida.
    assert_eq!(sown("bush_bean")["from"], "2026-09-01");
    assert!(sown("bush_bean")["to"].as_str().expect("a date").starts_with("2027-04"));
    assert!(sown("cucumber")["to"].as_str().expect("a date").starts_with("2027-02"));
    let text = run("bush bean", &[]).out;
    assert!(text.contains("heat is back around June 1"), "{text}");
}

#[test]
fn place_and_cover_move_the_dates() {
    let first = |rest: &[&str]| {
        let rest = [rest, &["--json", "--crops", "tomato"]].concat();
        let plan = garden("plan", "2026-03-01", &rest).json();
        let jobs = plan.as_array().expect("a list").iter();
        let mut out = jobs.filter(|job| job["step"] == "plant_out");
        out.next().expect("set out").clone()
    };
    assert_eq!(first(&[])["ideal_from"], "2026-05-22");
    let tunnel = first(&["--cover", "tunnel", "--place", "heat-mat"]);
    assert_eq!(tunnel["ideal_from"], "2026-05-01");
    assert!(tunnel["why"].as_str().expect("a text").contains("Your tunnel moves this."));
}

#[test]
fn onions_are_chosen_by_the_length_of_the_days() {
    let onions = |latitude: &str| {
        let run = garden("plan", "2026-03-01", &["--latitude", latitude, "--crops", "onion"]);
        run.out
    };
    assert!(onions("47").contains("choose long-day onions"));
    assert!(onions("-28").contains("choose short-day onions"));
    let plain = garden("plan", "2026-03-01", &["--crops", "onion"]).out;
    assert!(!plain.contains("-day onions"), "{plain}");
    let wrong = garden("plan", "2026-03-01", &["--latitude", "north", "--crops", "onion"]);
    assert_eq!(wrong.status, 2);
    assert!(wrong.err.contains("--latitude north: give whole degrees"), "{}", wrong.err);
}

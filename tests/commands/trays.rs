//! `sowbell trays`.

use serde_json::{Value, json};

use crate::{garden, sowbell};

/// A text with plain spaces where no line breaks.
fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

fn keys(value: &Value) -> Vec<&str> {
    value.as_object().expect("an object").keys().map(String::as_str).collect()
}

#[test]
fn the_form_of_the_trays_is_pinned() {
    let laid_out = garden(
        "trays",
        "2026-04-10",
        &["--json", "--crops", "tomato:12,basil:6,cucumber,carrot,potato"],
    )
    .json();
    assert_eq!(keys(&laid_out), ["trays", "pot_up", "left_out", "text"]);
    let trays = laid_out["trays"].as_array().expect("a list");
    for tray in trays {
        assert_eq!(keys(tray), ["cell_mm", "cells", "used", "crops", "why"]);
        for crop in tray["crops"].as_array().expect("a list") {
            assert_eq!(keys(crop), ["crop", "cells", "why"]);
        }
    }
    let told: Vec<(&Value, &Value, &Value, &Value)> = trays
        .iter()
        .map(|tray| (&tray["cell_mm"], &tray["cells"], &tray["used"], &tray["crops"][0]["crop"]))
        .collect();
    // A 40, a 45 and a 75 mm cell; the next sizes sold are 40, 50 and 80 mm.
    assert_eq!(
        told,
        [
            (&json!(40), &json!(48), &json!(12), &json!("tomato")),
            (&json!(50), &json!(36), &json!(6), &json!("basil")),
            (&json!(80), &json!(18), &json!(6), &json!("cucumber")),
        ]
    );
    let pot_up = &laid_out["pot_up"][0];
    assert_eq!(keys(pot_up), ["crop", "from", "by", "pot_mm", "text"]);
    // Basil bears five weeks in its cell, and goes out six weeks later, on 22 May.
    assert_eq!(
        (&pot_up["crop"], &pot_up["from"], &pot_up["by"], &pot_up["pot_mm"]),
        (&json!("basil"), &json!("2026-05-01"), &json!("2026-05-15"), &json!(90))
    );
    let left_out: Vec<(&Value, &Value)> = laid_out["left_out"]
        .as_array()
        .expect("a list")
        .iter()
        .map(|one| (&one["crop"], &one["reason"]))
        .collect();
    assert_eq!(
        left_out,
        [(&json!("carrot"), &json!("never_this_way")), (&json!("potato"), &json!("not_from_seed")),]
    );
    assert_eq!(keys(&laid_out["left_out"][0]), ["crop", "reason", "text"]);
}

#[test]
fn the_words_fit_a_phone() {
    let told = garden(
        "trays",
        "2026-04-10",
        &["--crops", "tomato:12,pepper:12,basil,cucumber:40,zinnia,lettuce,carrot"],
    );
    insta::assert_snapshot!(plain(&told.out), @"");
    let british = garden(
        "trays",
        "2026-03-01",
        &["--language", "en-GB", "--crops", "tomato:12,thyme,geranium,watermelon,begonia"],
    );
    insta::assert_snapshot!(plain(&british.out), @"");
}

#[test]
fn every_crop_and_every_tray_says_why() {
    let laid_out = garden(
        "trays",
        "2026-04-10",
        &["--json", "--crops", "tomato:12,pepper:40,basil,cucumber,geranium,celery"],
    )
    .json();
    let mut why: Vec<&str> = Vec::new();
    for tray in laid_out["trays"].as_array().expect("a list") {
        why.extend(tray["why"].as_str());
        for crop in tray["crops"].as_array().expect("a list") {
            why.extend(crop["why"].as_str());
        }
    }
    insta::assert_snapshot!(plain(&why.join("\n")), @"");
}

#[test]
fn nothing_to_sow_is_an_answer() {
    let told = garden("trays", "2026-11-01", &["--crops", "carrot,cucumber"]);
    assert_eq!(told.status, 0);
    insta::assert_snapshot!(plain(&told.out), @"");
    let free = sowbell(&[
        "trays",
        "--json",
        "--last-frost",
        "none",
        "--first-frost",
        "none",
        "--crops",
        "tomato,pepper:3",
    ])
    .json();
    assert_eq!(free["trays"], json!([]));
    for one in free["left_out"].as_array().expect("a list") {
        assert_eq!(one["reason"], "no_frost_here");
    }
    let text = free["text"].as_str().expect("a text");
    assert!(text.contains("tomatoes and peppers"), "{text}");
    assert!(!text.chars().any(|c| c.is_ascii_digit()), "a date is invented: {text}");
}

#[test]
fn a_crop_is_known_by_any_of_its_names() {
    let trays = |crops: &str| garden("trays", "2026-04-10", &["--json", "--crops", crops]).json();
    assert_eq!(trays("courgette:4, zucchini:2"), trays("summer squash:6"));
    assert_eq!(trays("summer_squash"), trays("summer_squash:6"));
}

#[test]
fn each_mistake_has_its_sentence() {
    for (crops, names) in [
        ("tomato:0", "tomato:0; give from 1 to 500"),
        ("tomato:501", "give from 1 to 500"),
        ("tomato:-3", "give from 1 to 500"),
        ("tomato:+3", "give from 1 to 500"),
        ("tomato:", "give from 1 to 500"),
        ("tomato:many", "give from 1 to 500"),
        ("tomato:3:4", "give from 1 to 500"),
        ("tomato:300,tomatoes:300", "adds up to more"),
        ("tomatoo:3", "'tomatoo'; did you mean tomato?"),
        ("beans:12", "bush bean"),
        (" , ", "names no crop"),
        (":12", "there is no crop ''"),
    ] {
        let run = garden("trays", "2026-04-10", &["--crops", crops]);
        assert_eq!((run.status, run.err.lines().count()), (2, 1), "{crops}: {}", run.err);
        assert_eq!(run.out, "");
        assert!(run.err.contains(names), "{crops}: {}", run.err);
    }
    assert!(garden("trays", "2026-04-10", &[]).err.contains("--crops is missing"));
}

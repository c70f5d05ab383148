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
    insta::assert_snapshot!(plain(&told.out), @"
    Trays for what you sow indoors April 10–24:
    Tray 1, 48 cells of 1½ inches (heat 65–75 °F): tomatoes 12, peppers 12. Upright, out at 7–8 weeks.
    Tray 2, 36 cells of 2 inches (heat 70–80 °F): basil 6, zinnias 6 (sow April 17). Upright, out at 4–5 weeks. Keep it dark until they are up.
    Trays 3–4, each 18 cells of 3 inches (heat 65–95 °F): cucumbers 18 (sow April 17) in each. Sprawling, out at 3–5 weeks.
    Tray 5, 18 cells of 3 inches (heat 65–95 °F): cucumbers 4 (sow April 17). Sprawling, out at 3–5 weeks.
    Tray 6, 48 cells of 1½ inches (heat 60–75 °F): lettuce 6. Small, out at 4–6 weeks. Keep it light until they are up.
    Pot up basil May 1–15, into pots of 3½ inches.
    No, don't start carrots indoors.
    ");
    let british = garden(
        "trays",
        "2026-03-01",
        &["--language", "en-GB", "--crops", "tomato:12,thyme,geranium,watermelon,begonia"],
    );
    insta::assert_snapshot!(plain(&british.out), @"
    Trays for what you sow indoors 1–15 March:
    Tray 1, 48 cells of 4 cm (heat 18–29 °C): tomatoes 12 (early; best from 27 March). Upright, out at 6–8 weeks.
    Tray 2, 48 cells of 4 cm (heat 21 °C): thyme 6 (sow 6 March), begonias 6. Small, out at 10 weeks. Keep it light until they are up.
    Tray 3, 36 cells of 5 cm (heat 21–24 °C): geraniums 6. Upright, out at 10–12 weeks. Keep it dark until they are up.
    Pot up tomatoes 5 April to 10 May, into pots of 9 cm.
    Pot up thyme 27 March to 1 May, into pots of 7.5 cm.
    Pot up begonias 22 March to 26 April, into pots of 7.5 cm.
    Pot up geraniums 22 March to 12 April, into pots of 10 cm.
    Watermelons: not yet, from 10 April.
    ");
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
    insta::assert_snapshot!(plain(&why.join("\n")), @"
    All are upright, want cells of 1½ inches, leave the tray around May 22 and are best set out at 7–8 weeks; the same warmth and light suit their seed.
    Upright: sown April 10, they are 6 weeks old when they can go out, around May 22; cells of 1½ inches carry them until then.
    Upright: sown April 10, they are 6 weeks old when they can go out, around May 22; cells of 1½ inches carry them until then.
    Others could stand here too, but that would save no tray.
    Upright: sown April 10, they are 6 weeks old when they can go out, around May 22; cells of 1½ inches carry them until then.
    Nothing else here is alike enough in cells, growth, age, warmth and light to stand with them.
    Upright: sown April 10, they are 6 weeks old when they can go out, around May 22; cells of 2 inches carry them until May 15, so pot them up.
    They sprawl, so they stand away from smaller ones, and nothing else here is like them.
    Sprawling: sown April 17, they are 5 weeks old when they can go out, around May 22; cells of 3 inches carry them until then.
    Nothing else here is alike enough in cells, growth, age, warmth and light to stand with them.
    Upright: sown April 10, they are 10 weeks old when they can go out, around June 19; cells of 2 inches carry them until May 22, so pot them up.
    Nothing else here is alike enough in cells, growth, age, warmth and light to stand with them.
    Small: sown April 10, they are 8 weeks old when they can go out, around June 5; cells of 1 inch carry them until then.
    ");
}

#[test]
fn nothing_to_sow_is_an_answer() {
    let told = garden("trays", "2026-11-01", &["--crops", "carrot,cucumber"]);
    assert_eq!(told.status, 0);
    insta::assert_snapshot!(plain(&told.out), @"
    Nothing of that is sown in a tray in the next two weeks.
    No, don't start carrots indoors.
    Cucumbers: not yet, from April 17, 2027.
    ");
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

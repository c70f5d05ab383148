//! What people read, in one place: a page of questions with their answers, to be read aloud.

use std::fmt::Write;

use crate::sowbell;

/// Holds a page to its snapshot, which names no code.
fn read(name: &str, page: &str) {
    insta::with_settings!({ omit_expression => true }, { insta::assert_snapshot!(name, page) });
}

/// The answers to `questions` in a garden with its last frost on 15 May and its first on
/// 5 October, asked on a day, as one page.
fn page(on: &str, language: &str, questions: &[&str]) -> String {
    let mut page = String::new();
    for question in questions {
        let run = sowbell(&[
            "ask",
            "--on",
            on,
            "--last-frost",
            "05-15",
            "--first-frost",
            "10-05",
            "--language",
            language,
            question,
        ]);
        assert_eq!(run.status, 0, "{}", run.err);
        // A space at which no line breaks looks like any other on this page.
        let said = run.out.replace(['\u{a0}', '\u{202f}'], " ");
        let _ = write!(page, "> {question}\n{said}\n");
    }
    page
}

#[test]
fn in_march() {
    let page = page(
        "2026-03-10",
        "en-US",
        &[
            "can I start tomatoes now?",
            "can I start cucumbers now?",
            "is it too early for peppers?",
            "can I sow peas outside?",
            "can I start onions, leeks, celery and basil?",
            "when do I sow lettuce?",
            "when can zucchini go out?",
        ],
    );
    read("in_march", &page);
}

#[test]
fn in_april() {
    let page = page(
        "2026-04-22",
        "en-US",
        &[
            "can I start cucumbers now?",
            "is it too late for strawflower?",
            "can I start marigolds?",
            "geraniums?",
            "pole beans?",
            "can I start carrots indoors?",
            "potatoes?",
            "garlic?",
            "foxglove?",
            "how deep do I sow beans?",
            "how do I sow sweet peas?",
            "will pumpkins ripen?",
            "can I harden off my tomatoes?",
            "can I pot up my peppers?",
            "what herbs can I start now?",
            "can I start tomatilo and xyzzyplant?",
            "can I start my car now?",
            "hello",
        ],
    );
    read("in_april", &page);
}

#[test]
fn in_june_and_july_in_metric() {
    let page = page(
        "2026-06-20",
        "en-GB",
        &[
            "is it too late for tomatoes?",
            "courgettes?",
            "can I sow runner beans?",
            "can I still set out aubergines?",
            "will melons ripen if I start today?",
            "when do I sow spinach?",
            "swede?",
            "sweet corn on 15 July?",
        ],
    );
    read("in_june_and_july_in_metric", &page);
}

//! What was asked is followed by the same person, in the same chat and topic, and for a while.

use chrono::TimeDelta;

use super::{at, bench, group, private};
use crate::chat::understand::Subject;
use crate::chat::{Change, Intent};
use crate::messages::Incoming;
use crate::planning::CropId;

fn about(crop: &str) -> Subject {
    Subject {
        intent: Intent::CanStart,
        crops: vec![CropId::new(crop)],
        step: None,
        kind: None,
        on: None,
    }
}

fn in_topic(user: i64, thread: i32) -> Incoming {
    let mut incoming = group(user, -5);
    incoming.chat.thread = Some(thread);
    incoming
}

#[tokio::test]
async fn a_question_is_followed_where_and_by_whom_it_was_asked() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    for (incoming, crop) in [
        (private(7), "pea"),
        (group(7, -5), "basil"),
        (in_topic(7, 3), "leek"),
        (in_topic(7, 4), "okra"),
        (group(8, -5), "kale"),
        // The later question takes the place of the earlier one.
        (group(8, -5), "dill"),
    ] {
        bench.keep(&incoming, &[Change::Asked(about(crop))], now).await.expect("kept");
    }
    let soon = now + TimeDelta::minutes(29);
    for (incoming, crop) in [
        (private(7), Some("pea")),
        (group(7, -5), Some("basil")),
        (in_topic(7, 3), Some("leek")),
        (in_topic(7, 4), Some("okra")),
        (in_topic(7, 5), None),
        (group(8, -5), Some("dill")),
        (private(8), None),
    ] {
        let kept = bench.keep(&incoming, &[], soon).await.expect("facts").subject;
        assert_eq!(kept, crop.map(about));
    }
    let late = now + TimeDelta::minutes(30);
    assert_eq!(bench.keep(&private(7), &[], late).await.expect("facts").subject, None);
    assert_eq!(bench.store.prune(late).await.expect("pruned"), 5);
}

#[tokio::test]
async fn a_group_that_moved_begins_anew() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let open = Change::OpenClub { title: "Elm Row".to_owned() };
    bench.keep(&group(7, -5), &[open, Change::Asked(about("pea"))], now).await.expect("kept");
    bench.keep(&group(7, -5), &[Change::MoveClub { to: -1_005 }], now).await.expect("kept");
    for chat in [-5, -1_005] {
        let facts = bench.keep(&group(7, chat), &[], now).await.expect("facts");
        assert_eq!(facts.subject, None);
    }
}

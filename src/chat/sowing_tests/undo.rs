//! Taking changes back, and putting them back again.

use super::*;
use crate::club::{LastChange, PutBack};

/// A change that was made then, which these steps put back.
fn change(number: i64, at: &str, put_back: Vec<PutBack>) -> LastChange {
    LastChange { number, changed_at: at.parse().expect("an instant"), put_back }
}

#[test]
fn undo_takes_back_the_last_change_and_only_that() {
    let mut facts = facts();
    assert!(says(&facts, "/undo").changes.is_empty());
    facts.sowings = vec![basil(3, "2026-04-10")];
    facts.last_change = Some(change(4, "2026-04-22T11:55:00Z", vec![PutBack::SowingOff(3)]));
    for outcome in
        [says(&facts, "/undo"), says(&facts, "undo that"), presses(&facts, &Press::Undo(4))]
    {
        assert_eq!(outcome.changes, [Change::Undo(4)]);
        let told = texts(&outcome);
        assert!(told.contains("12 basil, sown indoors on April 10"), "{told}");
        assert!(!told.contains("was made"), "it was made just now: {told}");
        assert_eq!(buttons(&outcome), [Button::press("Put it back", Press::PutBack(4))]);
    }
    // The button under an older message.
    let stale = presses(&facts, &Press::Undo(3));
    assert!(stale.changes.is_empty());
    assert!(texts(&stale).contains("Something else changed"), "{}", texts(&stale));
    let crops = vec![PutBack::CropOn { id: 2, crop: CropId::new("pea") }];
    facts.last_change = Some(change(5, "2026-04-22T12:00:00Z", crops));
    assert_eq!(texts(&says(&facts, "/undo")), "Back on your list: pea.");
}

#[test]
fn a_change_of_some_hours_ago_is_told_with_its_time() {
    let mut facts = facts();
    let crops = || vec![PutBack::CropOn { id: 2, crop: CropId::new("pea") }];
    facts.last_change = Some(change(5, "2026-04-22T08:15:00Z", crops()));
    let today = says(&facts, "/undo");
    assert_eq!(today.changes, [Change::Undo(5)]);
    assert_eq!(
        texts(&today),
        "Back on your list: pea.\nThat change was made today at 8:15\u{202f}AM."
    );
    facts.last_change = Some(change(5, "2026-04-21T20:00:00Z", crops()));
    let yesterday = says(&facts, "undo");
    assert_eq!(yesterday.changes, [Change::Undo(5)]);
    assert_eq!(texts(&yesterday), "Back on your list: pea.\nThat change was made on April 21.");
}

#[test]
fn a_change_of_long_ago_is_named_before_it_is_taken_back() {
    let mut facts = facts();
    facts.sowings = vec![basil(3, "2026-04-10")];
    facts.last_change = Some(change(4, "2026-04-10T08:00:00Z", vec![PutBack::SowingOff(3)]));
    for text in ["/undo", "undo", "take that back"] {
        let asked = says(&facts, text);
        assert!(asked.changes.is_empty(), "{text}");
        let told = texts(&asked);
        assert!(told.contains("April 10") && told.contains("12 basil"), "{told}");
        assert_eq!(buttons(&asked), [Button::press("Take it back", Press::UndoOld(4))]);
    }
    assert_eq!(presses(&facts, &Press::UndoOld(4)).changes, [Change::Undo(4)]);
    // Something else changed before the button was pressed.
    facts.last_change = Some(change(5, "2026-04-22T08:00:00Z", vec![PutBack::SowingOff(3)]));
    assert!(presses(&facts, &Press::UndoOld(4)).changes.is_empty());
}

#[test]
fn only_what_was_taken_back_last_is_put_back() {
    let mut facts = facts();
    facts.last_undone =
        Some(change(4, "2026-04-22T08:00:00Z", vec![PutBack::SowingAs(basil(3, "2026-04-10"))]));
    let put_back = presses(&facts, &Press::PutBack(4));
    assert_eq!(put_back.changes, [Change::Redo(4)]);
    assert!(texts(&put_back).contains("12 basil"), "{}", texts(&put_back));
    assert_eq!(buttons(&put_back), [Button::press("Undo", Press::Undo(4))]);
    for facts in [self::facts(), facts] {
        let stale = presses(&facts, &Press::PutBack(3));
        assert!(stale.changes.is_empty());
        assert!(texts(&stale).contains("nothing was put back"), "{}", texts(&stale));
    }
}

//! The order of the queue, and what becomes of a message.

use chrono::TimeDelta;

use super::{Bench, at, bench, group, private, say};
use crate::chat::{Change, Expected};
use crate::messages::{AnswerPress, Edit, Outgoing, Priority, Say};
use crate::store::SendEnd;

fn answer(press: &str) -> Outgoing {
    Outgoing::AnswerPress(AnswerPress { press: press.to_owned(), notice: None })
}

const SENT: SendEnd = SendEnd::Sent { message: Some(1) };

fn failed() -> SendEnd {
    SendEnd::Failed { why: "no".to_owned() }
}

fn retry(at: chrono::DateTime<chrono::Utc>, counts: bool) -> SendEnd {
    SendEnd::Retry { at, counts, why: "busy".to_owned() }
}

#[tokio::test]
async fn one_of_each_chat_goes_by_priority_and_then_in_order() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let reminder = bench.queue(&say(1, "morning"), Priority::Reminder, now).await;
    let lone = bench.queue(&say(2, "morning"), Priority::Reminder, now).await;
    let reply = bench.queue(&say(1, "first"), Priority::Reply, now).await;
    let second = bench.queue(&say(1, "second"), Priority::Reply, now).await;
    let other = bench.queue(&say(3, "other"), Priority::Reply, now).await;
    let press = bench.queue(&answer("a"), Priority::Press, now).await;
    let press_too = bench.queue(&answer("b"), Priority::Press, now).await;
    assert_eq!(bench.waiting(now).await, [press, press_too, reply, other, lone]);
    let some = bench.store.waiting(now, &[3, 2], 3).await.expect("the queue");
    assert_eq!(some.iter().map(|q| q.id).collect::<Vec<_>>(), [press, press_too, reply]);
    assert_eq!(bench.store.waiting(now, &[1, 2, 3], 9).await.expect("the queue").len(), 2);

    let ends = [(press, SENT), (press_too, SENT), (reply, SENT), (other, failed())];
    bench.store.settle_many(&ends, now).await.expect("settled");
    assert_eq!(bench.waiting(now).await, [second, lone]);
    bench.store.settle(second, &SENT, now).await.expect("settled");
    assert_eq!(bench.waiting(now).await, [reminder, lone]);
    // A message is not sent before it was queued, whatever the clock did.
    assert!(bench.waiting(now - TimeDelta::seconds(1)).await.is_empty());
}

#[tokio::test]
async fn a_message_that_must_wait_holds_back_only_its_own_kind_in_its_own_chat() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let later = now + TimeDelta::seconds(30);
    let first = bench.queue(&say(1, "first"), Priority::Reply, now).await;
    let second = bench.queue(&say(1, "second"), Priority::Reply, now).await;
    let reminder = bench.queue(&say(1, "morning"), Priority::Reminder, now).await;
    let other = bench.queue(&say(2, "other"), Priority::Reply, now).await;
    bench.store.settle(first, &retry(later, true), now).await.expect("settled");
    assert_eq!(bench.waiting(now).await, [other, reminder]);
    assert_eq!(bench.store.next_wake(now).await.expect("a time"), Some(later));

    // A reminder that waits does not hold back replies.
    bench.store.settle(reminder, &retry(later, false), now).await.expect("settled");
    bench.store.settle(first, &SENT, now).await.expect("settled");
    assert_eq!(bench.waiting(now).await, [second, other]);
    assert_eq!(bench.store.next_wake(later).await.expect("a time"), None);

    bench.store.settle(second, &SENT, now).await.expect("settled");
    let waiting = bench.store.waiting(later, &[2], 9).await.expect("the queue");
    assert_eq!(waiting.len(), 1);
    assert_eq!((waiting[0].id, waiting[0].attempts), (reminder, 0));
    bench.store.settle(reminder, &retry(later, true), now).await.expect("settled");
    assert_eq!(bench.store.waiting(later, &[2], 9).await.expect("the queue")[0].attempts, 1);
}

#[tokio::test]
async fn many_chats_that_are_left_out_do_not_hide_the_rest() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let mut last = 0;
    let mut work = bench.store.begin().await.expect("a transaction");
    for chat in 1..=120 {
        for _ in 0..3 {
            last = work
                .queue(&say(chat, "hello"), Priority::Reply, None, now, None)
                .await
                .expect("a row");
        }
    }
    work.commit().await.expect("a commit");
    let except: Vec<i64> = (1..120).collect();
    let waiting = bench.store.waiting(now, &except, 1).await.expect("the queue");
    assert_eq!(waiting.iter().map(|q| q.id).collect::<Vec<_>>(), [last - 2]);
    assert_eq!(bench.store.waiting(now, &[], 50).await.expect("the queue").len(), 50);
    assert_eq!(bench.store.waiting(now, &[], 500).await.expect("the queue").len(), 120);
    assert!(bench.store.waiting(now, &[], 0).await.expect("the queue").is_empty());
}

#[tokio::test]
async fn what_has_passed_its_time_is_not_sent_and_holds_nothing_back() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let soon = now + TimeDelta::seconds(15);
    let mut work = bench.store.begin().await.expect("a transaction");
    let brief =
        work.queue(&say(1, "brief"), Priority::Reply, None, now, Some(soon)).await.expect("a row");
    let lasting =
        work.queue(&say(1, "lasting"), Priority::Reply, None, now, None).await.expect("a row");
    work.commit().await.expect("a commit");
    assert_eq!(bench.waiting(soon - TimeDelta::seconds(1)).await, [brief]);
    assert_eq!(bench.waiting(soon).await, [lasting]);
    assert_eq!(bench.store.expire(soon).await.expect("expired"), 1);
    assert_eq!(bench.outcome(brief).await.as_deref(), Some("expired"));
    assert_eq!(bench.outcome(lasting).await, None);
}

#[tokio::test]
async fn an_ended_row_stays_ended_unless_it_was_sent_after_all() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let id = bench.queue(&say(1, "hello"), Priority::Reply, now).await;
    bench.store.settle(id, &failed(), now).await.expect("settled");
    bench.store.settle(id, &retry(now, true), now).await.expect("settled");
    assert!(bench.waiting(now).await.is_empty());
    bench.store.settle(id, &SENT, now).await.expect("settled");
    assert_eq!(bench.outcome(id).await.as_deref(), Some("sent"));
    bench.store.settle(id, &failed(), now).await.expect("settled");
    assert_eq!(bench.outcome(id).await.as_deref(), Some("sent"));
    bench.store.settle(9_999, &failed(), now).await.expect("a row that is gone is no fault");
}

#[tokio::test]
async fn a_message_that_cannot_be_read_is_given_up_and_the_rest_goes() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let bad = bench.queue(&say(1, "bad"), Priority::Reply, now).await;
    let good = bench.queue(&say(2, "good"), Priority::Reply, now).await;
    bench.sql("UPDATE outgoing SET payload = '{\"shout\":{}}' WHERE chat = 1").await;
    assert_eq!(bench.waiting(now).await, [good]);
    assert_eq!(bench.outcome(bad).await.as_deref(), Some("failed"));
}

async fn queue_for_a_group(bench: &Bench, chat: i64) -> (i64, i64) {
    let now = at("2026-04-10T07:00:00Z");
    let reply = Outgoing::Say(Say {
        chat,
        reply_to: Some(40),
        text: "answer".to_owned(),
        ..Say::default()
    });
    let edit = Outgoing::Edit(Edit { chat, message: 41, text: "x".to_owned(), buttons: vec![] });
    (
        bench.queue(&reply, Priority::Reply, now).await,
        bench.queue(&edit, Priority::Reply, now).await,
    )
}

#[tokio::test]
async fn what_waits_for_a_group_that_moved_goes_to_its_new_id() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let title = || "Elm Row".to_owned();
    let expected = Expected::WhichToGrow;
    let changes = [Change::OpenClub { title: title() }, Change::Expect(Some(expected.clone()))];
    let before = bench.keep(&group(7, -5), &changes, now).await.expect("kept").club.expect("club");
    let (reply, edit) = queue_for_a_group(&bench, -5).await;

    // The platform tells of the move when the message is sent, and in an update, in any order.
    bench.store.settle(reply, &SendEnd::Moved { to: -1_005 }, now).await.expect("settled");
    for _ in 0..2 {
        bench.keep(&group(7, -5), &[Change::MoveClub { to: -1_005 }], now).await.expect("kept");
    }
    let facts = bench.keep(&group(7, -1_005), &[], now).await.expect("facts");
    let after = facts.club.expect("the club");
    assert_eq!((after.id, after.chat), (before.id, Some(-1_005)));
    assert_eq!(after.join_token, before.join_token);
    assert_eq!(facts.expected, Some(expected));
    let waiting = bench.store.waiting(now, &[], 9).await.expect("the queue");
    assert_eq!(waiting.len(), 1);
    assert_eq!((waiting[0].id, waiting[0].attempts), (reply, 0));
    assert_eq!(waiting[0].outgoing, say(-1_005, "answer"));
    assert_eq!(bench.outcome(edit).await.as_deref(), Some("failed"));
    assert!(bench.keep(&group(7, -5), &[], now).await.expect("facts").club.is_none());
}

#[tokio::test]
async fn a_group_that_cannot_be_reached_says_nothing_of_its_members() {
    let bench = bench().await;
    let now = at("2026-04-10T07:00:00Z");
    let member = bench.member(7, now).await.expect("a member");
    let mut work = bench.store.begin().await.expect("a transaction");
    let row = work
        .queue(&say(-5, "hello"), Priority::Reply, Some(member), now, None)
        .await
        .expect("a row");
    work.commit().await.expect("a commit");
    let gone = SendEnd::Unreachable { why: "kicked".to_owned() };
    bench.store.settle(row, &gone, now).await.expect("settled");
    assert_eq!(bench.outcome(row).await.as_deref(), Some("unreachable"));
    assert!(bench.keep(&private(7), &[], now).await.expect("facts").member.reachable);
}

//! The sender's step against a queue in memory and a platform that follows a script.

use std::collections::{HashMap, VecDeque};
use std::sync::Mutex;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::time::Duration;

use tokio::sync::Notify;

use super::*;
use crate::messages::{AnswerPress, Edit, Say};

fn at(seconds: i64) -> DateTime<Utc> {
    DateTime::UNIX_EPOCH + TimeDelta::seconds(seconds)
}

fn say(chat: i64, text: &str) -> Outgoing {
    Outgoing::Say(Say { chat, text: text.to_owned(), ..Say::default() })
}

fn press(id: &str) -> Outgoing {
    Outgoing::AnswerPress(AnswerPress { press: id.to_owned(), notice: None })
}

#[derive(Debug, Clone)]
struct Row {
    queued: Queued,
    due: DateTime<Utc>,
    end: Option<SendEnd>,
}

/// The queue in memory; a chat's rows go out in order of urgency, then of arrival.
#[derive(Debug, Default)]
struct Queue {
    rows: Mutex<Vec<Row>>,
    broken: AtomicBool,
    /// A row whose end cannot be kept.
    corrupt: Option<i64>,
}

impl Queue {
    fn put(&self, outgoing: Outgoing, priority: Priority) -> i64 {
        let mut rows = self.rows.lock().unwrap();
        let id = i64::try_from(rows.len()).unwrap();
        let queued = Queued { id, outgoing, priority, attempts: 0, member: None };
        rows.push(Row { queued, due: at(0), end: None });
        id
    }

    fn end(&self, id: i64) -> Option<SendEnd> {
        self.rows.lock().unwrap()[usize::try_from(id).unwrap()].end.clone()
    }

    fn attempts(&self, id: i64) -> u32 {
        self.rows.lock().unwrap()[usize::try_from(id).unwrap()].queued.attempts
    }

    fn check(&self) -> Result<(), StoreError> {
        if self.broken.load(Ordering::SeqCst) {
            return Err(StoreError::Corrupt("broken for the test".to_owned()));
        }
        Ok(())
    }

    fn all_ended(&self) -> bool {
        self.rows.lock().unwrap().iter().all(|row| row.end.is_some())
    }
}

impl Outbox for Queue {
    async fn waiting(
        &self,
        now: DateTime<Utc>,
        except_chats: &[i64],
        limit: usize,
    ) -> Result<Vec<Queued>, StoreError> {
        self.check()?;
        let mut rows: Vec<Row> = self.rows.lock().unwrap().clone();
        rows.retain(|row| row.end.is_none());
        let mut first = BTreeSet::new();
        rows.retain(|row| {
            let chat = row.queued.outgoing.chat();
            chat.is_none_or(|chat| first.insert((chat, row.queued.priority)))
        });
        rows.retain(|row| row.due <= now);
        rows.retain(|row| row.queued.outgoing.chat().is_none_or(|c| !except_chats.contains(&c)));
        rows.sort_by_key(|row| (row.queued.priority, row.queued.id));
        let mut waiting: Vec<Queued> = rows.into_iter().map(|row| row.queued).collect();
        let mut seen = BTreeSet::new();
        waiting.retain(|row| row.outgoing.chat().is_none_or(|chat| seen.insert(chat)));
        waiting.truncate(limit);
        Ok(waiting)
    }

    async fn settle_many(
        &self,
        ends: &[(i64, SendEnd)],
        _now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.check()?;
        if ends.iter().any(|(id, _)| Some(*id) == self.corrupt) {
            return Err(StoreError::Corrupt("for the test".to_owned()));
        }
        let mut rows = self.rows.lock().unwrap();
        for (id, end) in ends {
            let row = &mut rows[usize::try_from(*id).unwrap()];
            assert_eq!(row.end, None, "row {id} was settled twice");
            if let SendEnd::Retry { at, counts, .. } = end {
                row.due = *at;
                row.queued.attempts += u32::from(*counts);
            } else {
                row.end = Some(end.clone());
            }
        }
        Ok(())
    }

    async fn next_wake(&self, now: DateTime<Utc>) -> Result<Option<DateTime<Utc>>, StoreError> {
        let rows = self.rows.lock().unwrap();
        let later = rows.iter().filter(|row| row.end.is_none() && row.due > now);
        Ok(later.map(|row| row.due).min())
    }
}

/// Answers as told, chat by chat (0 stands for press answers); takes everything else.
#[derive(Debug, Default)]
struct Script {
    answers: Mutex<HashMap<i64, VecDeque<Delivery>>>,
    always: Mutex<Option<Delivery>>,
    tried: Mutex<Vec<Outgoing>>,
    takes: Duration,
    under_way: AtomicUsize,
    most_under_way: AtomicUsize,
}

impl Script {
    fn answers(self, chat: i64, answers: impl IntoIterator<Item = Delivery>) -> Self {
        self.answers.lock().unwrap().entry(chat).or_default().extend(answers);
        self
    }

    fn always(self, delivery: Delivery) -> Self {
        *self.always.lock().unwrap() = Some(delivery);
        self
    }

    fn tried(&self) -> Vec<Outgoing> {
        self.tried.lock().unwrap().clone()
    }

    fn texts_to(&self, chat: i64) -> Vec<String> {
        let tried = self.tried();
        let to = tried.iter().filter(|outgoing| outgoing.chat() == Some(chat));
        to.filter_map(|outgoing| match outgoing {
            Outgoing::Say(say) => Some(say.text.clone()),
            _ => None,
        })
        .collect()
    }
}

impl Platform for Script {
    async fn deliver(&self, outgoing: &Outgoing) -> Delivery {
        let under_way = self.under_way.fetch_add(1, Ordering::SeqCst) + 1;
        self.most_under_way.fetch_max(under_way, Ordering::SeqCst);
        tokio::time::sleep(self.takes).await;
        self.under_way.fetch_sub(1, Ordering::SeqCst);
        self.tried.lock().unwrap().push(outgoing.clone());
        let chat = outgoing.chat().unwrap_or(0);
        let told = self.answers.lock().unwrap().get_mut(&chat).and_then(VecDeque::pop_front);
        let always = self.always.lock().unwrap().clone();
        told.or(always).unwrap_or(Delivery::Sent { message: Some(1) })
    }
}

/// Steps until nothing more is to be done at this instant.
async fn steps(sender: &mut Sender, queue: &Queue, script: &Script, now: i64) -> SenderStep {
    for _ in 0..100 {
        let step = sender.step(queue, script, at(now)).await.unwrap();
        if step != SenderStep::Again {
            return step;
        }
    }
    panic!("the sender finds no rest");
}

fn sender() -> Sender {
    Sender::new(SendLimits::platform())
}

/// The whole second at or after which the sender wants to come back.
fn second(step: SenderStep) -> i64 {
    match step {
        SenderStep::At(when) => (when - TimeDelta::milliseconds(500)).timestamp() + 1,
        other => panic!("{other:?} instead of an instant"),
    }
}

#[tokio::test]
async fn a_chat_gets_its_messages_in_order_and_replies_before_reminders() {
    let (queue, script) = (Queue::default(), Script::default());
    let reminder = queue.put(say(7, "reminder"), Priority::Reminder);
    queue.put(say(7, "first"), Priority::Reply);
    queue.put(say(7, "second"), Priority::Reply);
    steps(&mut sender(), &queue, &script, 0).await;
    assert_eq!(script.texts_to(7), ["first", "second", "reminder"]);
    assert_eq!(queue.end(reminder), Some(SendEnd::Sent { message: Some(1) }));
}

#[tokio::test]
async fn with_nothing_to_send_the_sender_rests_until_something_is_queued() {
    let (queue, script) = (Queue::default(), Script::default());
    let mut sender = sender();
    assert_eq!(steps(&mut sender, &queue, &script, 0).await, SenderStep::Idle);
    queue.put(say(7, "hello"), Priority::Reply);
    assert_eq!(steps(&mut sender, &queue, &script, 1).await, SenderStep::Idle);
    assert!(queue.all_ended());
}

#[tokio::test]
async fn several_chats_are_served_at_once_but_not_too_many() {
    let script = Script { takes: Duration::from_millis(20), ..Script::default() };
    let queue = Queue::default();
    for chat in 1..=20 {
        queue.put(say(chat, "hello"), Priority::Reply);
        queue.put(say(chat, "again"), Priority::Reply);
    }
    let mut sender = sender();
    assert_eq!(sender.step(&queue, &script, at(0)).await.unwrap(), SenderStep::Again);
    assert_eq!(script.most_under_way.load(Ordering::SeqCst), MOST_AT_ONCE);
    let chats: BTreeSet<_> = script.tried().iter().map(Outgoing::chat).collect();
    assert_eq!(chats.len(), MOST_AT_ONCE, "one message a chat");
}

#[tokio::test]
async fn no_more_than_thirty_go_out_in_the_first_second() {
    let (queue, script) = (Queue::default(), Script::default());
    for chat in 1..=40 {
        queue.put(say(chat, "good morning"), Priority::Reminder);
    }
    let mut sender = sender();
    assert_eq!(second(steps(&mut sender, &queue, &script, 0).await), 1);
    assert_eq!(script.tried().len(), 30);
    // What was answered a few milliseconds after the first second began counts until 2.
    steps(&mut sender, &queue, &script, 2).await;
    assert!(queue.all_ended());
}

#[tokio::test]
async fn a_full_chat_waits_and_the_others_do_not() {
    let (queue, script) = (Queue::default(), Script::default());
    for text in ["1", "2", "3", "4"] {
        queue.put(say(7, text), Priority::Reply);
    }
    queue.put(say(8, "other"), Priority::Reminder);
    let mut sender = sender();
    assert_eq!(second(steps(&mut sender, &queue, &script, 0).await), 3);
    assert_eq!(script.texts_to(7), ["1", "2", "3"]);
    assert_eq!(script.texts_to(8), ["other"]);
    steps(&mut sender, &queue, &script, 4).await;
    assert_eq!(script.texts_to(7), ["1", "2", "3", "4"]);
}

#[tokio::test]
async fn only_the_chat_that_was_told_to_wait_waits_and_its_tries_do_not_count() {
    let script = Script::default().answers(7, [Delivery::Wait(Duration::from_secs(20))]);
    let queue = Queue::default();
    let limited = queue.put(say(7, "a"), Priority::Reply);
    queue.put(say(7, "b"), Priority::Reply);
    queue.put(say(8, "c"), Priority::Reply);
    let mut sender = sender();
    assert_eq!(second(steps(&mut sender, &queue, &script, 0).await), 20);
    assert_eq!((script.texts_to(7).len(), script.texts_to(8).len()), (1, 1));
    assert_eq!(queue.attempts(limited), 0);
    queue.put(say(8, "d"), Priority::Reply);
    steps(&mut sender, &queue, &script, 19).await;
    assert_eq!((script.texts_to(7).len(), script.texts_to(8).len()), (1, 2));
    steps(&mut sender, &queue, &script, 21).await;
    assert_eq!(script.texts_to(7), ["a", "a", "b"], "and the order is kept");
}

#[tokio::test]
async fn the_wait_is_counted_from_the_answer_not_from_the_start_of_the_try() {
    let takes = Duration::from_millis(120);
    let script =
        Script { takes, ..Script::default() }.answers(7, [Delivery::Wait(Duration::from_secs(5))]);
    let queue = Queue::default();
    queue.put(say(7, "a"), Priority::Reply);
    let SenderStep::At(when) = steps(&mut sender(), &queue, &script, 0).await else { panic!() };
    assert!(when >= at(5) + TimeDelta::milliseconds(120), "{when}");
}

#[tokio::test]
async fn an_absurd_wait_neither_breaks_the_sender_nor_spins_it() {
    for (told, waited) in [(Duration::ZERO, 1), (Duration::from_secs(u64::MAX / 2000), 604_800)] {
        let script = Script::default().answers(7, [Delivery::Wait(told)]);
        let queue = Queue::default();
        queue.put(say(7, "a"), Priority::Reply);
        assert_eq!(second(steps(&mut sender(), &queue, &script, 0).await), waited);
        assert_eq!(script.tried().len(), 1);
    }
}

#[tokio::test]
async fn when_several_chats_are_limited_everybody_waits() {
    let wait = Delivery::Wait(Duration::from_secs(10));
    let script = Script::default()
        .answers(1, [wait.clone()])
        .answers(2, [wait.clone()])
        .answers(3, [Delivery::Wait(Duration::from_secs(100))]);
    let queue = Queue::default();
    for chat in 1..=3 {
        queue.put(say(chat, "hello"), Priority::Reply);
    }
    let mut sender = sender();
    assert_eq!(second(steps(&mut sender, &queue, &script, 0).await), 10);
    queue.put(say(9, "not now"), Priority::Reply);
    assert_eq!(second(steps(&mut sender, &queue, &script, 9).await), 10);
    assert!(script.texts_to(9).is_empty());
    steps(&mut sender, &queue, &script, 11).await;
    assert_eq!(script.texts_to(9).len(), 1);
    assert_eq!(script.texts_to(3).len(), 1, "which has its own, longer wait");
}

#[tokio::test]
async fn a_limited_press_answer_holds_everybody() {
    let script = Script::default().answers(0, [Delivery::Wait(Duration::from_secs(3))]);
    let queue = Queue::default();
    queue.put(press("p"), Priority::Press);
    let mut sender = sender();
    steps(&mut sender, &queue, &script, 0).await;
    queue.put(say(8, "later"), Priority::Reply);
    assert_eq!(second(steps(&mut sender, &queue, &script, 2).await), 3);
    assert!(script.texts_to(8).is_empty());
}

#[tokio::test]
async fn a_reply_is_tried_eight_times_with_growing_pauses() {
    let script = Script::default().always(Delivery::Transient("500".to_owned()));
    let queue = Queue::default();
    let row = queue.put(say(7, "a"), Priority::Reply);
    let (mut sender, mut now, mut pauses) = (sender(), 0, Vec::new());
    while queue.end(row).is_none() {
        if let SenderStep::At(_) = steps(&mut sender, &queue, &script, now).await {
            let due = queue.rows.lock().unwrap()[0].due;
            pauses.push((due - at(now)).num_seconds());
            now += pauses.last().unwrap() + 1;
        }
    }
    assert_eq!(pauses, [1, 2, 4, 8, 16, 32, 60]);
    assert_eq!(script.tried().len(), 8);
    assert_eq!(queue.end(row), Some(SendEnd::Failed { why: "500".to_owned() }));
}

#[tokio::test]
async fn a_reply_does_not_overtake_one_that_is_tried_again_but_may_overtake_a_reminder() {
    let script = Script::default()
        .answers(7, [Delivery::Transient("500".to_owned())])
        .answers(8, [Delivery::Transient("500".to_owned())]);
    let queue = Queue::default();
    queue.put(say(7, "first"), Priority::Reply);
    queue.put(say(8, "reminder"), Priority::Reminder);
    let mut sender = sender();
    steps(&mut sender, &queue, &script, 0).await;
    queue.put(say(7, "second"), Priority::Reply);
    queue.put(say(8, "reply"), Priority::Reply);
    steps(&mut sender, &queue, &script, 0).await;
    steps(&mut sender, &queue, &script, 5).await;
    assert_eq!(script.texts_to(7), ["first", "first", "second"]);
    assert_eq!(script.texts_to(8), ["reminder", "reply", "reminder"]);
}

#[tokio::test]
async fn while_the_platform_is_out_of_reach_everything_waits_and_no_try_counts() {
    let script = Script::default().always(Delivery::Offline("connection refused".to_owned()));
    let queue = Queue::default();
    let row = queue.put(say(7, "a"), Priority::Reply);
    let mut sender = sender();
    let mut now = 0;
    for _ in 0..30 {
        now = second(steps(&mut sender, &queue, &script, now).await) + 1;
    }
    assert!(now > 20 * 60, "pauses grow to a minute: {now} s");
    assert_eq!((queue.attempts(row), queue.end(row)), (0, None));
    *script.always.lock().unwrap() = None;
    steps(&mut sender, &queue, &script, now).await;
    assert_eq!(queue.end(row), Some(SendEnd::Sent { message: Some(1) }));
}

#[tokio::test]
async fn what_is_gone_ends_a_press_as_expired_and_an_edit_as_failed() {
    let script = Script::default().always(Delivery::Gone("too old".to_owned()));
    let queue = Queue::default();
    let answer = queue.put(press("p"), Priority::Press);
    let edit = Edit { chat: 7, message: 5, text: "x".to_owned(), buttons: Vec::new() };
    let edit = queue.put(Outgoing::Edit(edit), Priority::Reply);
    steps(&mut sender(), &queue, &script, 0).await;
    assert_eq!(queue.end(answer), Some(SendEnd::Expired));
    assert_eq!(queue.end(edit), Some(SendEnd::Failed { why: "too old".to_owned() }));
}

#[tokio::test]
async fn lasting_answers_end_a_row_at_the_first_try() {
    let why = || "Forbidden: bot was blocked by the user".to_owned();
    let cases = [
        (Delivery::Unreachable(why()), SendEnd::Unreachable { why: why() }),
        (Delivery::Refused(why()), SendEnd::Failed { why: why() }),
        (Delivery::Moved(-100), SendEnd::Moved { to: -100 }),
    ];
    for (delivery, end) in cases {
        let script = Script::default().answers(7, [delivery]);
        let queue = Queue::default();
        let row = queue.put(say(7, "a"), Priority::Reply);
        steps(&mut sender(), &queue, &script, 0).await;
        assert_eq!(queue.end(row), Some(end));
    }
}

#[tokio::test]
async fn one_end_that_cannot_be_kept_neither_stops_the_others_nor_is_sent_again() {
    let queue = Queue { corrupt: Some(0), ..Queue::default() };
    let script = Script::default();
    queue.put(say(7, "spoiled"), Priority::Reply);
    let good = queue.put(say(8, "good"), Priority::Reply);
    let mut sender = sender();
    steps(&mut sender, &queue, &script, 0).await;
    let later = queue.put(say(9, "later"), Priority::Reply);
    steps(&mut sender, &queue, &script, 5).await;
    assert_eq!(script.texts_to(7), ["spoiled"]);
    assert!(queue.end(good).is_some() && queue.end(later).is_some());
}

#[tokio::test]
async fn what_was_sent_is_not_sent_again_when_the_store_fails_for_a_moment() {
    let (queue, script) = (Queue::default(), Script::default());
    let row = queue.put(say(7, "once"), Priority::Reply);
    queue.broken.store(true, Ordering::SeqCst);
    let mut sender = sender();
    assert!(sender.step(&queue, &script, at(0)).await.is_err());
    assert!(sender.step(&queue, &script, at(1)).await.is_err());
    queue.broken.store(false, Ordering::SeqCst);
    steps(&mut sender, &queue, &script, 2).await;
    assert_eq!(script.texts_to(7), ["once"]);
    assert!(queue.end(row).is_some());
}

/// It must be possible to give the loop a task of its own.
fn for_a_task<T: Send>(task: T) -> T {
    task
}

#[tokio::test]
async fn the_loop_sends_what_is_queued_and_ends_the_step_under_way_when_stopped() {
    let script = Script { takes: Duration::from_millis(300), ..Script::default() };
    let (queue, queued) = (Queue::default(), Notify::new());
    let stop = Notify::new();
    let run = run_sender(sender(), &queue, &script, Utc::now, &queued, stop.notified());
    let run = for_a_task(run);
    let story = async {
        // The loop is idle now, and is woken.
        tokio::time::sleep(Duration::from_millis(50)).await;
        queue.put(say(7, "hello"), Priority::Reply);
        queued.notify_one();
        tokio::time::sleep(Duration::from_millis(50)).await;
        assert_eq!(script.under_way.load(Ordering::SeqCst), 1);
        stop.notify_one();
    };
    let both = async { tokio::join!(run, story) };
    tokio::time::timeout(Duration::from_secs(5), both).await.expect("the loop stops");
    assert!(queue.all_ended());
}

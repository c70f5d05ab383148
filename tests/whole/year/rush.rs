//! Many messages at once, in virtual time: who waits for whom, and how long.

use std::sync::Arc;

use chrono::{DateTime, TimeDelta, Utc};
use sowbell::app::{Landed, Platform, SenderStep, Update};
use sowbell::chat::Knowledge;
use sowbell::messages::{Edit, Incoming, Outgoing, Priority, Role, Say, UpdateKey, What};

use super::checks::Once;
use super::people::{coordinator_of, incoming};
use super::platform::OurPlatform;
use super::process::{Flight, Process, Turn};
use super::replay::look;

/// The sender and the platform, which takes 20 to 300 ms for an answer and never fails.
struct Rush {
    process: Process,
    platform: OurPlatform,
    now: DateTime<Utc>,
    handed_over: Vec<(DateTime<Utc>, Outgoing)>,
    updates: i64,
    url: String,
    _folder: tempfile::TempDir,
}

impl Rush {
    async fn at(now: &str) -> Self {
        let now = now.parse().expect("an instant");
        let memory = std::path::Path::new("/dev/shm");
        let folder =
            if memory.is_dir() { tempfile::tempdir_in(memory) } else { tempfile::tempdir() };
        let folder = folder.expect("a folder");
        let url = format!("sqlite://{}", folder.path().join("rush.db").display());
        let knowledge = Arc::new(Knowledge::embedded().expect("knowledge"));
        let mut process = Process::start(&url, &knowledge, now).await;
        (process.poll_at, process.tick_at) = (None, None);
        let platform = OurPlatform::new(7, now);
        platform.behaves();
        Self { process, platform, now, handed_over: Vec::new(), updates: 0, url, _folder: folder }
    }

    /// Sends for so long.
    async fn goes_on(&mut self, length: TimeDelta) {
        let end = self.now + length;
        while let Some((at, turn)) = self.process.next().filter(|(at, _)| *at <= end) {
            self.now = at;
            self.platform.it_is(at);
            match turn {
                Turn::Answer(row) => {
                    let flight = self.process.flights.remove(&row).expect("it is under way");
                    let Flight { row, delivery, begun, .. } = flight;
                    self.process.sender.landed(Landed { row, delivery, begun, at });
                    self.process.send_at = Some(at);
                }
                Turn::Send => self.send().await,
                Turn::Poll | Turn::Tick => panic!("nobody polls or ticks here"),
            }
        }
        self.now = end;
    }

    async fn send(&mut self) {
        let process = &mut self.process;
        process.send_at = None;
        loop {
            let taken = process.sender.take(&process.app.store, self.now).await;
            let (rows, step) = taken.expect("the queue works");
            if rows.is_empty() {
                if let SenderStep::At(at) = step {
                    process.send_at = Some(at.max(self.now + TimeDelta::milliseconds(1)));
                }
                return;
            }
            for row in rows {
                let delivery = self.platform.deliver(&row.outgoing).await;
                assert_eq!(self.platform.wrong(), None, "at {}", self.now);
                self.handed_over.push((self.now, row.outgoing.clone()));
                let (once, fate) = (Once::Row(row.id), self.platform.fate());
                let flight = Flight { row, once, delivery, fate, begun: self.now };
                process.flights.insert(flight.row.id, flight);
            }
        }
    }

    async fn hears(&mut self, incoming: Incoming) {
        self.updates += 1;
        let key = UpdateKey { bot: 1, update: self.updates };
        let update = Update { key, incoming: Some(incoming) };
        self.process.app.take_in(&[update], self.now).await.expect("it is taken in");
        self.process.send_at = Some(self.now);
    }

    async fn says(&mut self, user: i64, chat: i64, role: Role, text: &str) {
        let what = What::Text {
            text: text.to_owned(),
            message: 7_000_077,
            addressed: true,
            replies_to: None,
        };
        self.hears(incoming(user, chat, role, what)).await;
    }

    /// A club whose members all have their morning at 07:00 UTC, written past the program.
    async fn club_of(&mut self, members: u32) {
        let chat = -500;
        let coordinator = coordinator_of(chat);
        self.hears(incoming(coordinator, chat, Role::Unknown, What::AddedToGroup)).await;
        self.says(coordinator, chat, Role::Administrator, "/club frost 05-15 10-05").await;
        self.says(coordinator, chat, Role::Administrator, "/club zone UTC").await;
        let look = look(&self.url).await;
        for statement in [
            "INSERT INTO members (user_id, name, reachable, reminder_minutes, next_reminder_at, \
             first_seen_at) WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n \
             WHERE i < $1) SELECT 10000 + i, 'Member', 1, 420, '2026-04-20T07:00:00+00:00', \
             '2026-01-01T00:00:00+00:00' FROM n",
            "INSERT INTO memberships (club_id, member_id, joined_at) SELECT 1, id, first_seen_at \
             FROM members WHERE user_id BETWEEN 10001 AND 20000 AND $1 > 0",
            "INSERT INTO member_crops (member_id, crop) SELECT id, 'zinnia' FROM members \
             WHERE user_id BETWEEN 10001 AND 20000 AND $1 > 0",
        ] {
            sqlx::query(statement).bind(members).execute(&look).await.expect("they are kept");
        }
        look.close().await;
    }
}

/// The platform takes 30 messages a second, so who is next waits for up to a second; and the
/// sender may have taken up as many as are under way at once before it knew.
#[tokio::test]
async fn five_thousand_reminders_delay_no_answer_in_another_group() {
    let mut rush = Rush::at("2026-04-20T06:00:00Z").await;
    rush.club_of(5000).await;
    rush.goes_on(TimeDelta::hours(1)).await;
    let due = rush.process.app.tick(rush.now).await.expect("a tick");
    assert_eq!(due, 5000);
    rush.handed_over.clear();
    rush.process.send_at = Some(rush.now);
    let mut longest = TimeDelta::zero();
    for question in 0..12 {
        rush.goes_on(TimeDelta::milliseconds(1000 + 170 * question)).await;
        let (asked, before) = (rush.now, rush.handed_over.len());
        let group = -600 - question;
        rush.says(42, group, Role::Member, "/ask can I start cucumbers now?").await;
        rush.goes_on(TimeDelta::seconds(5)).await;
        let sent = rush.handed_over.iter().skip(before);
        let (ahead, (at, _)) = sent
            .enumerate()
            .find(|(_, (_, outgoing))| outgoing.chat() == Some(group))
            .expect("an answer");
        longest = longest.max(*at - asked);
        assert!(*at - asked <= TimeDelta::milliseconds(1300), "it took {}", *at - asked);
        assert!(ahead <= 16, "{ahead} reminders went first");
    }
    // And the reminders went on meanwhile, as fast as the platform takes them.
    let seconds =
        (rush.now - "2026-04-20T07:00:00Z".parse::<DateTime<Utc>>().unwrap()).num_seconds();
    let sent = i64::try_from(rush.handed_over.len()).expect("a number");
    assert!(sent >= 25 * seconds, "{sent} messages in {seconds} seconds");
    eprintln!("the slowest of 12 answers took {longest}, among {sent} messages");
}

/// A question waits for the mornings of one or two transactions, not for those of a whole club.
#[tokio::test]
async fn a_question_is_taken_in_while_mornings_are_made() {
    let mut rush = Rush::at("2026-04-20T06:00:00Z").await;
    rush.club_of(1500).await;
    let app = rush.process.app.clone();
    let seven = rush.now + TimeDelta::hours(1);
    let text = "/ask can I start cucumbers now?".to_owned();
    let what = What::Text { text, message: 7_000_077, addressed: true, replies_to: None };
    let question = incoming(42, -600, Role::Member, what);
    let update = Update { key: UpdateKey { bot: 1, update: 99 }, incoming: Some(question) };
    let ask = async {
        let look = look(&rush.url).await;
        let made = async || -> i64 {
            sqlx::query_scalar("SELECT COUNT(*) FROM outgoing WHERE priority = 2")
                .fetch_one(&look)
                .await
                .expect("a number")
        };
        let mut before = made().await;
        while before == 0 {
            tokio::task::yield_now().await;
            before = made().await;
        }
        app.take_in(&[update], seven).await.expect("it is taken in");
        (before, made().await)
    };
    let (due, (before, after)) = tokio::join!(app.tick(seven), ask);
    assert_eq!(due.expect("a tick"), 1500);
    let made = after - before;
    assert!(made <= 400, "{made} mornings were made before the question was taken in");
    assert!(after < 1500, "the question came when all mornings were made");
}

/// New messages and changes of old ones count alike, to a person and to a group.
#[tokio::test]
async fn messages_and_edits_keep_to_the_platforms_limits_together() {
    let mut rush = Rush::at("2026-04-20T06:00:00Z").await;
    let mut work = rush.process.app.store.begin().await.expect("a transaction");
    for number in 0..40 {
        for chat in [42, -600] {
            let text = format!("{number}");
            let outgoing = if number % 2 == 0 {
                Outgoing::Say(Say { chat, text, ..Say::default() })
            } else {
                Outgoing::Edit(Edit { chat, message: 5, text, buttons: Vec::new() })
            };
            work.queue(&outgoing, Priority::Reply, None, rush.now, None).await.expect("queued");
        }
    }
    work.commit().await.expect("a commit");
    // The platform itself says what is against its limits.
    let began = rush.now;
    rush.goes_on(TimeDelta::minutes(5)).await;
    let last = |chat: i64| {
        let sent = rush.handed_over.iter().filter(|(_, outgoing)| outgoing.chat() == Some(chat));
        (sent.clone().count(), sent.map(|(at, _)| *at - began).max().unwrap_or_default())
    };
    let ((to_person, person), (to_group, group)) = (last(42), last(-600));
    assert_eq!((to_person, to_group), (40, 40), "all are sent");
    // Three within three seconds, so the 40th comes in the fourteenth three seconds; 20 within a
    // minute, so the second 20 begin after a minute.
    assert!((39..55).contains(&person.num_seconds()), "40 to a person took {person}");
    assert!((60..90).contains(&group.num_seconds()), "40 to a group took {group}");
}

//! The story of one club, told through every verb of the store.

#![expect(clippy::expect_used, clippy::indexing_slicing, reason = "a failed test panics")]

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use chrono_tz::Tz;
use sowbell::chat::{Change, Expected, ExpectedTopic, Facts};
use sowbell::club::{Mark, ReminderTime, Units};
use sowbell::messages::{
    AnswerPress, Chat, ChatKind, Edit, Incoming, Outgoing, Person, Priority, Role, Say, UpdateKey,
    What,
};
use sowbell::planning::{
    Basis, Cover, CropId, Frost, FrostDates, HotAndWet, JobKey, Months, Place,
};
use sowbell::store::{Counts, Morning, SendEnd, Store};

const GROUP: i64 = -500;
const SUPERGROUP: i64 = -100_500;
const IDA: i64 = 11;
const BO: i64 = 12;

fn at(text: &str) -> DateTime<Utc> {
    text.parse().expect("an instant")
}

fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn job(text: &str) -> JobKey {
    text.parse().expect("a job")
}

fn from(user: i64, chat: i64) -> Incoming {
    let kind = if chat < 0 { ChatKind::Group } else { ChatKind::Private };
    Incoming {
        chat: Chat { id: chat, kind, title: String::new(), thread: None },
        from: Person {
            user,
            name: if user == IDA { "Ida".to_owned() } else { "Bo".to_owned() },
            is_bot: false,
            anonymous: false,
            language: None,
            role: Role::Unknown,
        },
        what: What::Nothing,
    }
}

fn frost(last: &str, first: &str) -> Frost {
    let day = |text: &str| text.parse().expect("a month-day");
    Frost::Dates(FrostDates::new(day(last), Some(day(first)), Basis::Average).expect("dates"))
}

fn say(chat: i64, reply_to: Option<i32>, text: &str) -> Outgoing {
    Outgoing::Say(Say { chat, reply_to, text: text.to_owned(), ..Say::default() })
}

/// One update as the app keeps it: seen once, its changes and its answers together.
async fn update(
    store: &Store,
    number: i64,
    incoming: &Incoming,
    changes: &[Change],
    answers: &[Outgoing],
    now: DateTime<Utc>,
) -> Option<Facts> {
    let key = UpdateKey { bot: 1, update: number };
    let mut work = store.begin().await.expect("a transaction");
    if work.already_seen(key).await.expect("a look") {
        work.rollback().await.expect("a rollback");
        return None;
    }
    work.mark_seen(key, now).await.expect("seen");
    let facts = work.facts(incoming, None, now).await.expect("facts");
    for change in changes {
        work.apply(&facts, incoming, change, now).await.expect("a change");
    }
    let member = (incoming.chat.kind == ChatKind::Private).then_some(facts.member.id);
    for answer in answers {
        let (priority, expires) = match answer {
            Outgoing::AnswerPress(_) => (Priority::Press, Some(now + TimeDelta::seconds(10))),
            _ => (Priority::Reply, None),
        };
        work.queue(answer, priority, member, now, expires).await.expect("a row");
    }
    work.commit().await.expect("a commit");
    Some(facts)
}

/// The facts as they are.
async fn facts(store: &Store, incoming: &Incoming, now: DateTime<Utc>) -> Facts {
    let mut work = store.begin().await.expect("a transaction");
    let facts = work.facts(incoming, None, now).await.expect("facts");
    work.rollback().await.expect("a rollback");
    facts
}

async fn texts(store: &Store, now: DateTime<Utc>) -> Vec<(i64, String)> {
    let waiting = store.waiting(now, &[], 50).await.expect("the queue");
    let text = |outgoing: &Outgoing| match outgoing {
        Outgoing::Say(say) => say.text.clone(),
        Outgoing::Edit(edit) => format!("edit: {}", edit.text),
        Outgoing::AnswerPress(answer) => format!("press: {}", answer.press),
        other => format!("{other:?}"),
    };
    waiting.iter().map(|queued| (queued.id, text(&queued.outgoing))).collect()
}

fn only_texts(waiting: &[(i64, String)]) -> Vec<&str> {
    waiting.iter().map(|(_, text)| text.as_str()).collect()
}

#[tokio::test]
async fn the_story_of_a_club() {
    let folder = tempfile::tempdir().expect("a folder");
    let url = format!("sqlite:{}", folder.path().join("club.db").display());
    let store = Store::open(&url).await.expect("a store");
    let club = the_club_is_set_up(&store).await;
    members_join(&store, &club).await;
    a_morning_comes(&store).await;
    the_group_moves(&store, &club).await;
    store.close().await;
    let store = Store::open(&url).await.expect("the same file");
    time_passes(&store).await;
}

/// The coordinator Ida adds the bot to the group; gives the join token.
async fn the_club_is_set_up(store: &Store) -> String {
    let now = at("2026-04-09T10:00:00Z");
    let opened = [Change::OpenClub { title: "Elm Row".to_owned() }];
    let greeting = [say(GROUP, None, "hello")];
    let first = update(store, 1, &from(IDA, GROUP), &opened, &greeting, now).await;
    let first = first.expect("a new update");
    assert_eq!((first.member.name.as_str(), first.member.reachable), ("Ida", false));
    assert_eq!((first.club, first.invited_to, first.expected), (None, None, None));
    // The platform delivers it again after a crash; nothing happens twice.
    assert!(update(store, 1, &from(IDA, GROUP), &opened, &greeting, now).await.is_none());

    let asked = [Change::Expect(Some(Expected::Frost(ExpectedTopic::Club)))];
    update(store, 2, &from(IDA, GROUP), &asked, &[], now).await;
    let soon = now + TimeDelta::minutes(14);
    let expected = facts(store, &from(IDA, GROUP), soon).await.expected;
    assert_eq!(expected, Some(Expected::Frost(ExpectedTopic::Club)));
    assert_eq!(facts(store, &from(BO, GROUP), soon).await.expected, None);
    assert_eq!(facts(store, &from(IDA, IDA), soon).await.expected, None);
    let late = now + TimeDelta::minutes(15);
    assert_eq!(facts(store, &from(IDA, GROUP), late).await.expected, None);
    let told = [
        Change::ClubFrost(Some(frost("05-15", "09-25"))),
        Change::ClubZone(Some(Tz::Europe__Oslo)),
        Change::ClubLanguage(Some("en-GB".parse().expect("a tag"))),
        Change::Expect(None),
    ];
    update(store, 3, &from(IDA, GROUP), &told, &[say(GROUP, Some(9), "noted")], now).await;
    let known = facts(store, &from(BO, GROUP), now).await;
    let club = known.club.clone().expect("the club");
    assert_eq!((club.chat, club.title.as_str()), (Some(GROUP), "Elm Row"));
    assert_eq!((club.frost, club.zone), (Some(frost("05-15", "09-25")), Some(Tz::Europe__Oslo)));
    assert_eq!(known.settings().zone.is, Tz::Europe__Oslo);
    assert_eq!(known.expected, None);

    let waiting = texts(store, now).await;
    assert_eq!(only_texts(&waiting), ["hello"], "one of a chat at a time");
    let limited = SendEnd::Retry {
        at: now + TimeDelta::seconds(7),
        counts: false,
        why: "too many requests".to_owned(),
    };
    store.settle(waiting[0].0, &limited, now).await.expect("settled");
    assert!(texts(store, now).await.is_empty(), "the second does not overtake the first");
    let wake = store.next_wake(now).await.expect("a time").expect("something waits");
    assert_eq!(wake, now + TimeDelta::seconds(7));
    for text in ["hello", "noted"] {
        let waiting = texts(store, wake).await;
        assert_eq!(only_texts(&waiting), [text]);
        let sent = SendEnd::Sent { message: Some(1) };
        store.settle(waiting[0].0, &sent, wake).await.expect("settled");
    }
    assert_eq!(store.next_wake(wake).await.expect("a time"), None);
    club.join_token
}

/// Ida and Bo open the private chat by the button of the greeting.
async fn members_join(store: &Store, token: &str) {
    let now = at("2026-04-09T11:00:00Z");
    for (user, number) in [(IDA, 10), (BO, 11)] {
        let mut work = store.begin().await.expect("a transaction");
        let known = work.facts(&from(user, user), Some(token), now).await.expect("facts");
        work.rollback().await.expect("a rollback");
        let club = known.invited_to.expect("the club of the token").id;
        let joined = [Change::MemberReachable(true), Change::JoinClub(club)];
        update(store, number, &from(user, user), &joined, &[], now).await;
    }
    let crops = ["pea", "tomato", "zinnia"].map(CropId::new);
    let changes = [
        Change::AddCrops(crops.to_vec()),
        Change::DropCrops(vec![CropId::new("tomato")]),
        Change::AddCrops(vec![CropId::new("tomato"), CropId::new("pea")]),
        Change::MemberUnits(Some(Units::Customary)),
        Change::MemberFrost(Some(Frost::Free)),
        Change::MemberHotAndWet(Some("May to July".to_owned())),
        Change::MemberMonths(HotAndWet::new(Months::from_to(5, 7), Months::NONE).ok()),
        Change::MemberHold(Some("2026-04-10/2026-04-17".parse().expect("a hold"))),
        Change::MemberPlace(Some(Place::Greenhouse)),
        Change::MemberCover(Some(Cover::Tunnel)),
        Change::MemberLanguage(Some("de".parse().expect("a tag"))),
        Change::MemberZone(Some(Tz::Europe__Rome)),
        Change::MemberReminderTime(ReminderTime::from_minutes(390).expect("a time")),
        Change::MarkJob(job("pea.so.s.2026"), Some(Mark::Done(date("2026-04-09")))),
    ];
    update(store, 12, &from(BO, BO), &changes, &[], now).await;
    let bo = facts(store, &from(BO, BO), now).await;
    let ids: Vec<&str> = bo.crops.iter().map(CropId::as_str).collect();
    assert_eq!(ids, ["pea", "zinnia", "tomato"], "in the order of adding");
    assert_eq!(bo.marks.len(), 1);
    assert_eq!(bo.marks[0].mark, Some(Mark::Done(date("2026-04-09"))));
    assert_eq!((bo.member.units, bo.member.frost), (Some(Units::Customary), Some(Frost::Free)));
    assert_eq!(bo.member.hot_and_wet.as_deref(), Some("May to July"));
    let months = bo.member.months.expect("months");
    assert_eq!((months.hot(), months.wet()), (Months::from_to(5, 7), Months::NONE));
    assert_eq!(bo.member.hold.map(|h| h.to_string()).as_deref(), Some("2026-04-10/2026-04-17"));
    assert_eq!((bo.member.place, bo.member.cover), (Some(Place::Greenhouse), Some(Cover::Tunnel)));
    assert_eq!(bo.member.zone, Some(Tz::Europe__Rome));
    assert_eq!(bo.member.language.map(|tag| tag.to_string()).as_deref(), Some("de"));
    assert_eq!(bo.member.reminder_time.to_string(), "06:30");
    assert_eq!(bo.club.map(|club| club.title).as_deref(), Some("Elm Row"));
    let counts = store.counts().await.expect("counts");
    assert_eq!(counts, Counts { members: 2, clubs: 1, waiting: 0 });
}

/// Bo's reminder comes at 06:30 in Rome, Ida's at seven in Oslo; both are on UTC+2 in April.
async fn a_morning_comes(store: &Store) {
    let half_past = at("2026-04-10T04:30:00Z");
    let seven = at("2026-04-10T05:00:00Z");
    assert_eq!(store.next_morning().await.expect("a time"), Some(half_past));
    let due = store.members_due(half_past, 10).await.expect("those due");
    assert_eq!(due.len(), 1);
    assert_eq!((due[0].member.user, due[0].crops.len(), due[0].marks.len()), (BO, 3, 1));
    assert_eq!(due[0].club.as_ref().map(|club| club.title.as_str()), Some("Elm Row"));
    let morning = |member, user, named: Vec<JobKey>, next| Morning {
        member,
        date: date("2026-04-10"),
        outgoing: Some(say(user, None, "good morning")),
        named,
        told: Vec::new(),
        next,
        expires: seven + TimeDelta::hours(12),
    };
    let bos = morning(
        due[0].member.id,
        BO,
        vec![job("zinnia.si.s.2026")],
        half_past + TimeDelta::days(1),
    );
    store.keep_mornings(std::slice::from_ref(&bos), half_past).await.expect("kept");
    store.keep_mornings(&[bos], half_past).await.expect("kept once only");
    assert_eq!(store.next_morning().await.expect("a time"), Some(seven));

    let mut work = store.begin().await.expect("a transaction");
    let due = work.members_due(seven, 10).await.expect("those due");
    assert_eq!(due.len(), 1);
    let idas = morning(due[0].member.id, IDA, vec![], seven + TimeDelta::days(1));
    work.keep_mornings(&[idas], seven).await.expect("kept");
    work.commit().await.expect("a commit");
    assert!(store.members_due(seven, 10).await.expect("those due").is_empty());

    // Somebody presses a button and somebody else asks: both go before the reminders.
    let press = Outgoing::AnswerPress(AnswerPress { press: "p".to_owned(), notice: None });
    update(store, 20, &from(IDA, GROUP), &[], &[say(GROUP, Some(30), "in a week")], seven).await;
    update(store, 21, &from(IDA, IDA), &[], &[press, say(IDA, None, "done")], seven).await;
    let waiting = texts(store, seven).await;
    assert_eq!(only_texts(&waiting), ["press: p", "in a week", "done", "good morning"]);
    let but_the_group = store.waiting(seven, &[GROUP], 2).await.expect("the queue");
    assert_eq!(but_the_group.len(), 2);
    assert_eq!(but_the_group[0].priority, Priority::Press);

    // Bo drops the crop that the waiting reminder names; it is not sent, and made anew.
    let dropped = [Change::DropCrops(vec![CropId::new("zinnia")])];
    update(store, 22, &from(BO, BO), &dropped, &[], seven).await;
    assert_eq!(store.next_morning().await.expect("a time"), Some(seven));
    let due = store.members_due(seven, 10).await.expect("those due");
    assert_eq!((due.len(), due[0].member.user, due[0].crops.len()), (1, BO, 2));
    assert_eq!(due[0].marks.len(), 1, "the zinnia was not named");
    let again = morning(due[0].member.id, BO, vec![], half_past + TimeDelta::days(1));
    store.keep_mornings(&[again], seven).await.expect("kept");

    // The press was answered too late, the group is served, and Bo has blocked the bot.
    let sent = SendEnd::Sent { message: Some(2) };
    let ends = [(waiting[0].0, SendEnd::Expired), (waiting[1].0, sent.clone())];
    store.settle_many(&ends, seven).await.expect("settled");
    let waiting = texts(store, seven).await;
    assert_eq!(only_texts(&waiting), ["done", "good morning"]);
    store.settle(waiting[0].0, &sent, seven).await.expect("settled");
    let blocked = SendEnd::Unreachable { why: "bot was blocked by the user".to_owned() };
    store.settle(waiting[1].0, &blocked, seven).await.expect("settled");
    assert!(!facts(store, &from(BO, BO), seven).await.member.reachable);
    let waiting = texts(store, seven).await;
    assert_eq!(only_texts(&waiting), ["good morning"], "Ida's, whose replies are out");
    let mut work = store.begin().await.expect("a transaction");
    work.settle(waiting[0].0, &sent, seven).await.expect("settled");
    work.commit().await.expect("a commit");
    assert_eq!(
        store.next_morning().await.expect("a time"),
        Some(seven + TimeDelta::days(1)),
        "Bo's are over"
    );
}

/// The group becomes a supergroup while two messages wait, and later the bot is removed.
async fn the_group_moves(store: &Store, token: &str) {
    let now = at("2026-04-10T12:00:00Z");
    let edit =
        Outgoing::Edit(Edit { chat: GROUP, message: 2, text: "x".to_owned(), buttons: vec![] });
    update(store, 30, &from(IDA, GROUP), &[], &[say(GROUP, Some(31), "yes"), edit], now).await;
    let waiting = texts(store, now).await;
    assert_eq!(only_texts(&waiting), ["yes"]);
    store.settle(waiting[0].0, &SendEnd::Moved { to: SUPERGROUP }, now).await.expect("settled");
    let moved = [Change::MoveClub { to: SUPERGROUP }];
    update(store, 31, &from(IDA, GROUP), &moved, &[], now).await;
    let waiting = store.waiting(now, &[], 10).await.expect("the queue");
    assert_eq!(waiting.len(), 1, "the edit is of a message that the new group has not");
    assert_eq!(waiting[0].outgoing, say(SUPERGROUP, None, "yes"));
    let club = facts(store, &from(IDA, SUPERGROUP), now).await.club.expect("the club");
    assert_eq!((club.chat, club.join_token.as_str()), (Some(SUPERGROUP), token));

    update(store, 32, &from(IDA, SUPERGROUP), &[Change::CloseClub], &[], now).await;
    assert!(texts(store, now).await.is_empty());
    assert_eq!(facts(store, &from(IDA, IDA), now).await.club, None);
    let back = [Change::OpenClub { title: "Elm Row".to_owned() }];
    update(store, 33, &from(IDA, SUPERGROUP), &back, &[], now).await;
    let again = facts(store, &from(IDA, IDA), now).await.club.expect("the club");
    assert_eq!((again.id, again.frost), (club.id, club.frost));
    update(store, 34, &from(IDA, SUPERGROUP), &[Change::LeaveClub], &[], now).await;
    assert_eq!(facts(store, &from(IDA, IDA), now).await.club, None);
    let asked = [Change::Expect(Some(Expected::Hour))];
    update(store, 35, &from(IDA, IDA), &asked, &[], now).await;
}

/// What is old is forgotten; what people told is not.
async fn time_passes(store: &Store) {
    let mut work = store.begin().await.expect("a transaction");
    let brief = Some(at("2026-04-10T12:01:00Z"));
    let now = at("2026-04-10T12:00:00Z");
    work.queue(&say(IDA, None, "soon stale"), Priority::Reply, None, now, brief)
        .await
        .expect("a row");
    work.savepoint().await.expect("a savepoint");
    work.queue(&say(IDA, None, "undone"), Priority::Reply, None, now, None).await.expect("a row");
    work.rollback_to_savepoint().await.expect("undone");
    work.savepoint().await.expect("a savepoint");
    work.queue(&say(IDA, None, "stays"), Priority::Reply, None, now, None).await.expect("a row");
    work.release().await.expect("released");
    work.commit().await.expect("a commit");
    assert_eq!(store.counts().await.expect("counts").waiting, 2);
    assert_eq!(store.expire(at("2026-04-10T12:02:00Z")).await.expect("expired"), 1);

    // Within a week only a question that was never answered is over.
    let first = store.prune(at("2026-04-12T00:00:00Z")).await.expect("pruned");
    assert_eq!(first, 1);
    let later = at("2026-04-23T10:30:00Z");
    assert!(store.prune(later).await.expect("pruned") > 0);
    let mut work = store.begin().await.expect("a transaction");
    let seen = |update| UpdateKey { bot: 1, update };
    assert!(!work.already_seen(seen(1)).await.expect("a look"), "over 14 days ago");
    assert!(work.already_seen(seen(12)).await.expect("a look"), "not yet 14 days ago");
    work.rollback().await.expect("a rollback");
    assert_eq!(store.prune(later).await.expect("pruned"), 0);
    let counts = store.counts().await.expect("counts");
    assert_eq!(counts, Counts { members: 2, clubs: 1, waiting: 1 });
    assert_eq!(only_texts(&texts(store, later).await), ["stays"]);
}

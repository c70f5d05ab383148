//! Killed at any moment, the program loses nothing and repeats no change.
//!
//! The kills are real (SIGKILL) and at moments drawn from a seed; `SOWBELL_KILLS` sets how many,
//! and `SOWBELL_SEED` repeats a run as far as two processes and a network allow.

#![allow(
    clippy::panic,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::print_stderr,
    reason = "a test stops where it is wrong, and says how it went"
)]

mod club;
mod database;
mod repeats;
mod scene;
mod trouble;

use std::collections::BTreeSet;
use std::time::{Duration, Instant};

use rand::rngs::StdRng;
use rand::{Rng, SeedableRng};
use sowbell::planning::CropId;

use crate::filled::fill;
use crate::platform::{FakePlatform, Fault};

use club::{Club, Owed, Says};
use database::Database;
use repeats::{MOST_UNDER_WAY, Repeats, World};
use scene::{STOPPING, Scene, at, told_and_confirmed};
use trouble::{Moment, Trouble};

/// How often the program is killed in all tests together, unless `SOWBELL_KILLS` says otherwise.
const KILLS: usize = 40;

/// How many members have their morning while it is killed; with [`MANY_KILLS`], so many more.
const MEMBERS: usize = 300;
const MANY_MEMBERS: usize = 2000;
const MANY_KILLS: usize = 300;

/// How much the bot may owe before the members wait for it.
const PATIENCE: usize = 250;

fn number(variable: &str) -> Option<u64> {
    std::env::var(variable).ok()?.parse().ok()
}

fn kills() -> usize {
    number("SOWBELL_KILLS").and_then(|kills| usize::try_from(kills).ok()).unwrap_or(KILLS)
}

fn seed() -> u64 {
    let seed = number("SOWBELL_SEED").unwrap_or_else(rand::random);
    eprintln!("SOWBELL_SEED={seed}");
    seed
}

/// Each chat got all it was owed, in order; gives what came twice.
fn check_chats(scene: &Scene, world: &World, chats: &[(i64, Vec<Owed>)]) -> Repeats {
    let mut repeats = Repeats::default();
    let mut wrong = Vec::new();
    for (chat, owed) in chats {
        wrong.extend(repeats.of_chat(&scene.platform, *chat, owed, world).err());
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    for (life, count) in &repeats.over_kills {
        assert!(
            *count <= MOST_UNDER_WAY,
            "{count} messages of life {life} came again, where at most {MOST_UNDER_WAY} are under way"
        );
    }
    repeats
}

#[tokio::test]
async fn killed_while_members_write_and_press() {
    let seed = seed();
    let kills = kills() * 3 / 4;
    let mut scene = Scene::set("2026-04-20T12:00:00Z").await;
    let mut club = Club::gather(&scene.platform, 30);
    let trouble = Trouble::with(&scene.platform, seed, 0.04);
    let mut moments = StdRng::seed_from_u64(seed ^ 1);
    let mut chance = StdRng::seed_from_u64(seed ^ 2);
    for _ in 0..kills {
        let moment = Moment::any(&mut moments);
        for _ in 0..chance.random_range(0..40) {
            club.acts(&scene.platform, &mut chance);
        }
        let until = trouble.until(moment);
        tokio::pin!(until);
        let running = scene.start();
        loop {
            let pause = Duration::from_millis(chance.random_range(0..8));
            tokio::select! {
                () = &mut until => break,
                () = tokio::time::sleep(pause) => {
                    if club.owed() < scene.sent() + PATIENCE {
                        club.acts(&scene.platform, &mut chance);
                    }
                }
            }
        }
        running.kill();
    }
    scene.platform.behave();
    let mut running = scene.start();
    scene.until_done(&mut running).await;
    for member in 0..club.members.len() {
        club.asks_for_list(&scene.platform, member);
    }
    scene.until_done(&mut running).await;
    running.stop_within(STOPPING).await;

    let world = scene.world(&trouble);
    let chats: Vec<_> = club.chats.iter().map(|chat| (chat.id, chat.owed.clone())).collect();
    let repeats = check_chats(&scene, &world, &chats);
    scene.check_log();

    let told = told_and_confirmed(&scene, &club);
    let database = Database::open(&scene.program.database_url()).await;
    assert_eq!(database.seen_updates().await, told, "updates taken in");
    for member in &club.members {
        let list: Vec<&str> = member.list.iter().map(|crop| crop.id).collect();
        assert_eq!(database.crops_of(member.user).await, list, "the list of {}", member.user);
    }
    // Each answer was decided once: as many rows as answers, however often they were sent.
    for (chat, owed) in &chats {
        assert_eq!(database.messages_to(*chat).await, owed.len(), "decided for chat {chat}");
    }
    assert_eq!(database.press_answers().await, club.presses.len());
    let answers = scene.platform.callback_answers();
    for press in &club.presses {
        let answered = answers.iter().any(|answer| answer.query_id == *press);
        assert!(answered || database.expired_press(press).await, "press {press} got no answer");
    }
    eprintln!(
        "{told} updates, {} answers and {} presses over {kills} kills; {} came twice ({} over kills)",
        club.owed(),
        club.presses.len(),
        repeats.count(),
        repeats.over_kills.values().sum::<usize>(),
    );
}

/// Members whose reminders are all due at the same hour, each with four crops that want something
/// done on April 20.
async fn members_of_one_hour(scene: &Scene, count: usize) -> Vec<i64> {
    let users: Vec<_> = (0..count)
        .map(|number| {
            let name = format!("Member {number}");
            let user = scene.platform.add_user(&name, None);
            (scene.platform.open_private(user), name)
        })
        .collect();
    let crops = |_| ["basil", "zinnia", "cosmos", "leek"].map(CropId::new).to_vec();
    let filled = fill(&scene.program.database_url(), &users, crops, scene.program.now()).await;
    filled.expect("the members are kept");
    users.into_iter().map(|(user, _)| user).collect()
}

#[tokio::test]
async fn killed_while_mornings_are_due() {
    let seed = seed();
    let kills = kills() / 4;
    let mut scene = Scene::set("2026-04-20T06:59:58Z").await;
    let count = if self::kills() >= MANY_KILLS { MANY_MEMBERS } else { MEMBERS };
    let members = members_of_one_hour(&scene, count).await;
    // With many members it may be later than that by now, and they are due all the same.
    let seven = Instant::now()
        + (at("2026-04-20T07:00:00Z") - scene.program.now()).to_std().unwrap_or_default();
    tokio::time::sleep_until(seven.into()).await;

    let trouble = Trouble::with(&scene.platform, seed, 0.02);
    let mut moments = StdRng::seed_from_u64(seed ^ 1);
    let mut chance = StdRng::seed_from_u64(seed ^ 2);
    let mut done = Pressed::default();
    for _ in 0..kills {
        let until = trouble.until(Moment::of_a_morning(&mut moments));
        tokio::pin!(until);
        let running = scene.start();
        loop {
            tokio::select! {
                () = &mut until => break,
                () = tokio::time::sleep(Duration::from_millis(5)) => {
                    done.press_some(&scene.platform, &members, &mut chance);
                }
            }
        }
        running.kill();
    }
    scene.platform.behave();
    let mut running = scene.start();
    scene.until_sent(&mut running, members.len()).await;
    while done.press_some(&scene.platform, &members, &mut chance) {}
    scene.until_done(&mut running).await;
    running.stop_within(STOPPING).await;

    let owed = |user: &i64| (*user, vec![Owed { says: Says::Morning, reply_to: None }]);
    let chats: Vec<_> = members.iter().map(owed).collect();
    let repeats = check_chats(&scene, &scene.world(&trouble), &chats);
    scene.check_log();
    let database = Database::open(&scene.program.database_url()).await;
    for user in &members {
        assert_eq!(database.messages_to(*user).await, 1, "mornings decided for {user}");
        // Who pressed a button of a reminder that a kill kept from being noted as sent gets what
        // is left of it, instead of the same again.
        let repeated = scene.platform.sent_to(*user).len() - 1;
        assert!(database.cancelled_to(*user).await <= repeated, "mornings taken back for {user}");
        let pressed = usize::from(done.by.contains(user));
        assert_eq!(database.jobs_done_by(*user).await, pressed, "jobs done by {user}");
    }
    eprintln!(
        "{} mornings and {} jobs done over {kills} kills; {} came twice ({} over kills)",
        members.len(),
        done.by.len(),
        repeats.count(),
        repeats.over_kills.values().sum::<usize>(),
    );
}

/// Who said that the first job of their morning is done; half of the members do at once.
#[derive(Default)]
struct Pressed {
    by: BTreeSet<i64>,
    looked_at: BTreeSet<i64>,
}

impl Pressed {
    /// Some who have just got their reminder press; false where nobody was left to.
    fn press_some(
        &mut self,
        platform: &FakePlatform,
        members: &[i64],
        chance: &mut StdRng,
    ) -> bool {
        let mut some = false;
        for user in members {
            if self.looked_at.contains(user) {
                continue;
            }
            let Some(message) = platform.sent_to(*user).into_iter().next() else { continue };
            self.looked_at.insert(*user);
            some = true;
            if chance.random_bool(0.5) {
                platform.press(*user, *user, message.message_id, "1 done");
                self.by.insert(*user);
            }
        }
        some
    }
}

#[tokio::test]
async fn told_to_stop_in_the_middle_of_a_busy_queue() {
    let seed = seed();
    let mut scene = Scene::set("2026-04-20T12:00:00Z").await;
    let mut club = Club::gather(&scene.platform, 40);
    // Nothing fails here, but answers come late, so that many are under way at any moment.
    let trouble = Trouble::with(&scene.platform, seed, 0.0);
    scene.platform.on_request({
        let mut chance = StdRng::seed_from_u64(seed);
        move |call| {
            let late = call.method.starts_with("send") && chance.random_bool(0.2);
            late.then(|| Fault::AnswerLate(Duration::from_millis(chance.random_range(20..300))))
        }
    });
    let mut chance = StdRng::seed_from_u64(seed ^ 2);
    for _ in 0..500 {
        club.acts(&scene.platform, &mut chance);
    }
    let mut longest = Duration::ZERO;
    for _ in 0..4 {
        let before = scene.sent();
        let running = scene.start();
        let more = before + chance.random_range(1..100);
        scene
            .platform
            .wait_for("it to be busy", |state| (state.sent().len() >= more).then_some(()))
            .await;
        tokio::time::sleep(Duration::from_millis(chance.random_range(0..50))).await;
        longest = longest.max(running.stop_within(STOPPING).await);
    }
    assert!(scene.sent() < club.owed(), "the queue was not busy at the last stop");
    let mut running = scene.start();
    scene.until_done(&mut running).await;
    running.stop_within(STOPPING).await;

    let chats: Vec<_> = club.chats.iter().map(|chat| (chat.id, chat.owed.clone())).collect();
    let repeats = check_chats(&scene, &scene.world(&trouble), &chats);
    assert_eq!(repeats.count(), 0, "a stop repeats nothing");
    scene.check_log();
    told_and_confirmed(&scene, &club);
    eprintln!("{} answers over 4 stops, the longest {longest:?}", club.owed());
}

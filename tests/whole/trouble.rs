//! What goes wrong on the platform's side, or in between: nobody loses anything by it, and nobody
//! is told anything twice.

use std::sync::Arc;
use std::time::{Duration, Instant};

use serde_json::json;
use sowbell::app::{App, Update};
use sowbell::chat::{Facts, Knowledge, Outcome, decide};
use sowbell::messages::{Chat, ChatKind, Incoming, Person as Sender, Role, UpdateKey, What};
use sowbell::store::Store;

use crate::harness::{Person, World, instant, only, shown};
use crate::platform::{Fault, Which};

const SPRING: &str = "2026-04-10T12:00:00Z";
const HELP: &str = "I answer questions like ";

/// How often the bot answered the call for help.
fn helped(world: &World, person: &Person) -> usize {
    world.heard_by(person).iter().filter(|text| text.starts_with(HELP)).count()
}

mod updates {
    use super::*;

    #[tokio::test(flavor = "multi_thread")]
    async fn one_that_cannot_be_read_is_passed_over_and_the_others_are_answered() {
        let mut world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let moss = world.member("Moss").await;
        world.sleep().await;
        fern.writes("/help");
        world.platform.raw_update(json!({ "message": { "chat": "nowhere" } }));
        world.platform.raw_update(json!({ "callback_query": { "id": 7 } }));
        world.platform.raw_update(json!({ "a_kind_of_tomorrow": { "x": [1, 2] } }));
        moss.writes("/help");
        world.wake().await;
        world.quiet().await;
        assert_eq!((helped(&world, &fern), helped(&world, &moss)), (1, 1));
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn words_with_something_new_in_them_are_words_all_the_same() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let user = json!({ "id": fern.id, "is_bot": false, "first_name": "Fern" });
        world.platform.raw_update(json!({ "message": {
            "message_id": 900, "date": 1, "from": user, "text": "/help me",
            "chat": { "id": fern.id, "type": "private", "first_name": "Fern" },
            "entities": [
                { "type": "bot_command", "offset": 0, "length": 5 },
                { "type": "shimmer", "offset": 6, "length": 2, "hue": "teal" },
            ],
            "aura": { "colour": "mauve" },
        }}));
        world.quiet().await;
        assert_eq!(helped(&world, &fern), 1);
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn ids_that_begin_again_lower_are_new_all_the_same() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        world.platform.set_next_update_id(17);
        fern.asks("/help").await;
        world.platform.set_next_update_id(2_100_000_000);
        fern.asks("/help").await;
        world.platform.set_next_update_id(3);
        fern.asks("/help").await;
        assert_eq!(helped(&world, &fern), 3);
    }

    /// Decides as the program does, except where a text thunders.
    fn thunders(knowledge: &Knowledge, incoming: &Incoming, facts: &Facts) -> Outcome {
        let outcome = decide(knowledge, incoming, facts);
        if let What::Text { text, .. } = &incoming.what {
            assert!(!text.contains("thunder"), "a clap of thunder");
        }
        outcome
    }

    fn private(world: &World, update: i64, person: &Person, text: &str) -> Update {
        let what =
            What::Text { text: text.to_owned(), message: 1, addressed: true, replies_to: None };
        let chat =
            Chat { id: person.id, kind: ChatKind::Private, title: String::new(), thread: None };
        let from = Sender {
            user: person.id,
            name: person.name.clone(),
            is_bot: false,
            anonymous: false,
            language: None,
            role: Role::Unknown,
        };
        let key = UpdateKey { bot: world.platform.bot_id(), update };
        Update { key, incoming: Some(Incoming { chat, from, what }) }
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn one_that_panics_is_apologised_for_and_harms_nobody_else() {
        let mut world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let moss = world.member("Moss").await;
        world.sleep().await;
        fern.news();
        moss.news();

        // The same path on the same database, with the one thing exchanged that decides.
        let store = Store::open(&world.database_url()).await.expect("the store");
        let knowledge = Arc::new(Knowledge::embedded().expect("what is built in"));
        let app = App::new(store.clone(), knowledge).deciding_by(thunders);
        let batch = [
            private(&world, 1, &moss, "/grow leek"),
            private(&world, 2, &fern, "/grow basil, thunder"),
            private(&world, 3, &moss, "/help"),
            private(&world, 4, &fern, "/help"),
        ];
        app.take_in(&batch, world.clock.now()).await.expect("taken in");
        // A second time, as after a crash before the platform was told.
        app.take_in(&batch, world.clock.now()).await.expect("taken in");
        store.close().await;

        world.wake().await;
        world.quiet().await;
        let texts = |person: &Person| -> Vec<String> {
            let news = person.news().into_iter();
            news.map(|message| message.text.chars().take(20).collect()).collect()
        };
        assert_eq!(texts(&fern), ["Something went wrong", "I answer questions l"]);
        assert_eq!(texts(&moss), ["On your list: leek.\n", "I answer questions l"]);
        assert!(fern.asks("/mycrops").await.text.starts_with("Your list is empty"), "no basil");
    }
}

mod lines {
    use super::*;
    use crate::platform::State;

    #[tokio::test(flavor = "multi_thread")]
    async fn a_send_that_fails_slowly_holds_up_nobody_else() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let moss = world.member("Moss").await;
        // The library takes ten seconds over a server's error.
        let failing = Which::method("sendMessage").in_chat(fern.id);
        world.platform.fail(failing, 1, Fault::ServerError);
        fern.writes("/help");
        world.platform.wait_for("the try", |state| (state.faults_left() == 0).then_some(())).await;
        moss.writes("/help");
        let soon = Duration::from_secs(5);
        let answered = |state: &State| (state.sent_to(moss.id).len() == 2).then_some(());
        world.platform.wait_within(soon, "Moss's answer", answered).await;
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn who_is_limited_waits_and_nobody_else_does() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let moss = world.member("Moss").await;
        fern.news();
        world.platform.flood(Some(fern.id), 2);
        fern.writes("/help");
        world
            .platform
            .wait_for("Fern's answer to be refused", |state| {
                state.calls().iter().any(|call| call.answer == Some(429)).then_some(())
            })
            .await;
        moss.writes("/help");
        world.platform.wait_for_messages(moss.id, 2).await;
        assert!(fern.news().is_empty(), "Moss was served while Fern waited");
        world.quiet().await;
        assert_eq!(helped(&world, &fern), 1);
        // That the bot waited as long as it was told is asserted at the end of every story.
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_server_that_fails_is_tried_again() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let failing = Which::method("sendMessage").in_chat(fern.id);
        world.platform.fail(failing, 1, Fault::ServerError);
        fern.asks("/help").await;
        assert_eq!(helped(&world, &fern), 1);
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn polling_goes_on_after_failures() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let conflict = "Conflict: terminated by other getUpdates request; make sure that only one \
                        bot instance is running";
        let failures = [
            Fault::CutBefore,
            Fault::AcceptThenCut,
            Fault::TooManyRequests { retry_after: 1 },
            Fault::Refuse { code: 409, description: conflict.to_owned() },
        ];
        for failure in failures {
            world.platform.fail(Which::method("getUpdates"), 1, failure);
            fern.asks("/help").await;
        }
        assert_eq!(helped(&world, &fern), 4, "each is answered, and once");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_line_that_is_cut_before_anything_was_done_loses_and_repeats_nothing() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        world.platform.fail(Which::method("sendMessage"), 2, Fault::CutBefore);
        fern.asks("/help").await;
        assert_eq!(helped(&world, &fern), 1);
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_line_that_is_cut_after_all_was_done_may_repeat_a_message_but_no_change() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        world.platform.fail(Which::method("sendMessage"), 1, Fault::AcceptThenCut);
        let added = fern.tells("/grow basil").await;
        assert!((1..=2).contains(&added.len()), "{added:?}");
        for message in added {
            assert!(message.text.starts_with("On your list: basil."), "{}", message.text);
        }
        assert!(fern.asks("/mycrops").await.text.starts_with("You grow one crop:"));
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn an_answer_to_a_press_that_came_too_late_is_let_go() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let page = fern.asks("/settings").await;
        world.platform.fail(
            Which::method("answerCallbackQuery"),
            1,
            Fault::TooManyRequests { retry_after: 1 },
        );
        world.platform.press(fern.id, fern.id, page.message_id, "Reminder time");
        world.platform.wait_for("a try", |state| (state.faults_left() == 0).then_some(())).await;
        world.platform.expire_callbacks();
        world.quiet().await;
        assert!(only(fern.news()).text.starts_with("Reminders come at 7:00"));
        assert!(world.platform.callback_answers().is_empty());
    }
}

mod groups {
    use super::*;

    #[tokio::test(flavor = "multi_thread")]
    async fn one_that_becomes_a_supergroup_keeps_its_club() {
        let world = World::start(SPRING).await;
        let ash = world.person("Ash");
        let group = world.platform.create_group("Hillside Growers", ash.id);
        world.platform.add_bot_to_group(group, ash.id);
        world.quiet().await;
        let club = world.group(group);
        club.news();
        club.hears(&ash, "/club frost 05-15 10-05").await;
        let moved = world.group(world.platform.migrate_group(group));
        world.quiet().await;
        assert!(moved.news().is_empty(), "a move is no arrival, and nobody is greeted again");
        let page = moved.hears(&ash, "/club").await;
        assert!(page.text.contains("last frost around May 15"), "{}", page.text);
        assert_eq!(world.count("SELECT count(*) FROM clubs").await, 1);
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn one_that_moved_without_a_word_is_found_by_the_refusal() {
        let mut world = World::start(SPRING).await;
        let ash = world.person("Ash");
        let group = world.platform.create_group("Hillside Growers", ash.id);
        world.platform.add_bot_to_group(group, ash.id);
        world.quiet().await;
        let club = world.group(group);
        club.news();
        club.hears(&ash, "/club frost 05-15 10-05").await;
        world.sleep().await;
        // A question is under way when the group moves, and another comes from the new one.
        club.says(&ash, "/ask can I start cucumbers now?");
        let moved = world.group(world.platform.migrate_group_quietly(group));
        let after = moved.says(&ash, "/help");
        world.wake().await;
        world.quiet().await;
        let mut answers = moved.news();
        answers.sort_by_key(|answer| answer.reply_to);
        assert_eq!(answers.len(), 2, "{answers:?}");
        // The message that it answers is in the old group.
        assert_eq!(answers[0].reply_to, None);
        assert!(answers[0].text.contains("sow cucumbers indoors"), "{}", answers[0].text);
        assert_eq!(answers[1].reply_to, Some(after.message_id));
        let page = moved.hears(&ash, "/club").await;
        assert!(page.text.contains("last frost around May 15"), "{}", page.text);
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn one_that_the_bot_is_removed_from_is_left_and_found_again() {
        let world = World::start(SPRING).await;
        let ash = world.person("Ash");
        let club = world.club("Hillside Growers", &ash).await;
        club.hears(&ash, "/club frost 05-15 10-05").await;
        let greeting = world.platform.sent_to(club.id).remove(0);
        let button = greeting.button("Get my reminders").and_then(|button| button.url.clone());
        let token = button.as_deref().and_then(|url| url.rsplit('=').next()).expect("a token");
        let start = format!("/start {token}");
        let fern = world.member("Fern").await;
        assert!(fern.asks(&start).await.text.contains("You are with Hillside Growers."));

        world.platform.remove_bot(club.id, ash.id);
        world.quiet().await;
        assert!(fern.asks("/settings").await.text.contains("• Frost: not given"));
        let late = world.member("Moss").await;
        let text = late.asks(&start).await.text;
        assert!(text.contains("That invitation is no longer valid"), "{text}");

        world.platform.add_bot_to_group(club.id, ash.id);
        world.quiet().await;
        assert!(only(club.news()).text.starts_with("Hello! I help with the timing"));
        assert!(fern.asks("/settings").await.text.contains("last frost around May 15"));
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn an_answer_for_a_group_that_threw_the_bot_out_is_let_go() {
        let mut world = World::start(SPRING).await;
        let ash = world.person("Ash");
        for basic in [true, false] {
            let group = if basic {
                world.platform.create_group("Hillside Growers", ash.id)
            } else {
                world.platform.create_supergroup("Hillside Growers", ash.id)
            };
            world.platform.add_bot_to_group(group, ash.id);
            world.quiet().await;
            world.sleep().await;
            let club = world.group(group);
            club.news();
            club.says(&ash, "/help");
            world.platform.remove_bot(group, ash.id);
            world.wake().await;
            world.quiet().await;
            assert!(club.news().is_empty());
        }
        assert_eq!(world.count("SELECT count(*) FROM clubs WHERE closed_at IS NULL").await, 0);
    }
}

mod buttons {
    use super::*;

    #[tokio::test(flavor = "multi_thread")]
    async fn data_that_nobody_can_read_any_more_says_so_and_changes_nothing() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let page = fern.asks("/settings").await;
        for data in ["zz:9", "g:", "j:d:nothing", "f:m:a02-30", "🌱", "c:99999999999"] {
            let notice = fern.presses_data(&page, data).await;
            let expected = "This button is from an older message and I can no longer read it. \
                            Nothing changed. /help shows what I can do.";
            assert_eq!(notice.as_deref(), Some(expected), "{data}");
        }
        let notice = fern.presses_data(&page, "g:triffid").await;
        assert!(notice.unwrap_or_default().starts_with("This button is from an older message"));
        assert!(fern.news().is_empty());
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_page_that_is_not_there_shows_the_last_one() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        fern.asks("/grow leek").await;
        let list = fern.asks("/mycrops").await;
        assert_eq!(fern.presses_data(&list, "c:999").await, None);
        assert_eq!(fern.last().text, list.text);
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_job_that_is_no_longer_planned_is_not_noted() {
        let world = World::start("2026-04-16T12:00:00Z").await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        fern.asks("/grow cucumber").await;
        world.morning_of("2026-04-17").await;
        let morning = fern.last();
        fern.asks("/frost none").await;
        let notice = fern.presses_under(&morning, "1 done").await;
        insta::assert_snapshot!(notice.unwrap_or_default(), @r"
        That job is no longer in your plan, so nothing changed. /now shows what is.
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn one_under_a_message_too_old_to_be_told_is_taken_at_its_word() {
        let world = World::start("2026-04-16T12:00:00Z").await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        fern.asks("/grow cucumber").await;
        world.morning_of("2026-04-17").await;
        let morning = only(fern.news());
        let data = morning.button("1 done").and_then(|button| button.callback_data.clone());
        let notice = fern.presses_on_old(&morning, &data.expect("data")).await;
        assert_eq!(notice.as_deref(), Some("Noted as done on April 17."));
        assert!(fern.news().is_empty());
        let list = fern.asks("/now").await.text;
        assert!(list.starts_with("Nothing to do today"), "{list}");
        // A page cannot be turned in place there, so it comes anew.
        fern.presses_on_old(&morning, "c:0").await;
        assert!(only(fern.news()).text.starts_with("You grow one crop"));
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn two_quick_presses_are_both_kept() {
        let world = World::start("2026-04-16T12:00:00Z").await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        fern.asks("/grow cucumber, zinnia").await;
        world.morning_of("2026-04-17").await;
        let morning = only(fern.news());
        world.platform.press(fern.id, fern.id, morning.message_id, "1 done");
        world.platform.press(fern.id, fern.id, morning.message_id, "2 done");
        world.quiet().await;
        assert_eq!(fern.last().labels(), ["1 is done · undo", "2 is done · undo"]);
        // Pressed again on a phone that has not caught up, it stays done.
        world.platform.press_data(
            fern.id,
            fern.id,
            morning.message_id,
            morning.button("1 done").and_then(|b| b.callback_data.as_deref()).expect("data"),
        );
        world.quiet().await;
        assert_eq!(fern.last().labels(), ["1 is done · undo", "2 is done · undo"]);
    }
}

mod restarts {
    use super::*;

    #[tokio::test(flavor = "multi_thread")]
    async fn nothing_is_said_twice_and_nothing_is_forgotten() {
        let mut world = World::start(SPRING).await;
        let ash = world.person("Ash");
        let club = world.club("Hillside Growers", &ash).await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        fern.asks("/grow cucumber").await;
        fern.asks("/zone").await;
        let before = world.platform.sent().len();
        world.sleep().await;
        world.wake().await;
        world.quiet().await;
        assert_eq!(world.platform.sent().len(), before, "a new start is nobody's business");
        // What was asked before the stop is still awaited.
        assert!(fern.asks("Denver").await.text.starts_with("Your time zone is America/Denver"));
        assert!(fern.asks("/mycrops").await.text.contains("cucumber"));
        club.hears(&ash, "/help").await;
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn what_waits_is_delivered_after_a_restart() {
        let mut world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let moss = world.member("Moss").await;
        world.platform.on_request(|call| {
            (call.method == "sendMessage").then_some(Fault::TooManyRequests { retry_after: 1 })
        });
        fern.writes("/help");
        moss.writes("/mycrops");
        world.wait_until_waiting(2).await;
        world.sleep().await;
        assert_eq!(world.waiting().await, 2);
        world.platform.behave();
        world.wake().await;
        world.quiet().await;
        assert_eq!(helped(&world, &fern), 1);
        assert!(moss.last().text.starts_with("Your list is empty"));
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn an_update_that_was_kept_but_not_confirmed_is_not_answered_again() {
        let mut world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        let start = world.platform.confirmed_offset();
        // The poll that would confirm it never reaches the platform.
        let said = fern.writes("/help");
        world.platform.fail(Which::method("getUpdates"), 1000, Fault::CutBefore);
        world.platform.wait_for_messages(fern.id, 2).await;
        world.wait_until_waiting(0).await;
        world.sleep().await;
        assert_eq!(world.platform.confirmed_offset(), start, "{said:?} is not confirmed");
        world.platform.behave();
        world.wake().await;
        world.quiet().await;
        assert_eq!(helped(&world, &fern), 1);
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn the_reminder_of_a_day_is_not_sent_again() {
        let mut world = World::start("2026-04-16T12:00:00Z").await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        fern.asks("/grow cucumber").await;
        world.morning_of("2026-04-17").await;
        only(fern.news());
        world.sleep().await;
        world.wake().await;
        world.at(instant("2026-04-17T07:30:00Z")).await;
        // Nor when the hour is put off on the same day.
        fern.asks("/hour 9:00").await;
        world.at(instant("2026-04-17T09:00:00Z")).await;
        assert!(fern.news().is_empty());
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_stop_while_nothing_is_answered_is_quick() {
        let mut world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        world.platform.fail(Which::method("sendMessage"), 1, Fault::AcceptThenSilence);
        fern.writes("/help");
        world.platform.wait_for("the try", |state| (state.faults_left() == 0).then_some(())).await;
        let told = Instant::now();
        world.sleep().await;
        assert!(told.elapsed() < Duration::from_secs(10));
        world.wake().await;
        world.quiet().await;
        assert!((1..=2).contains(&helped(&world, &fern)), "sent, and perhaps once more");
    }
}

mod words {
    use super::*;

    /// Texts of people who hold the phone upside down.
    fn odd_texts() -> Vec<String> {
        let junk: String = (0..2000_u32)
            .map(|n| char::from_u32(33 + (n * 7919 + n / 13) % 94).unwrap_or('x'))
            .collect();
        let family = "👩‍👩‍👧‍👦🏳️‍🌈🌱🇳🇴";
        vec![
            junk.replace('/', "|"),
            "🍅".repeat(2048),
            family.repeat(60),
            "متى أزرع الطماطم؟ هل يمكنني زرع الخيار الآن؟".to_owned(),
            "\u{202e}can I start cucumbers now?\u{202c}".to_owned(),
            "שלום, מתי לזרוע עגבניות".repeat(20),
            "a".repeat(4096),
            "cucumber ".repeat(455),
            "can I start cucumbers ".repeat(186),
            "т\u{0301}о\u{0308}м\u{0327}а\u{0300}т".repeat(300),
            "Z\u{0300}\u{0301}\u{0302}\u{0303}".repeat(800),
            ".".to_owned(),
            "?".repeat(4096),
            "'\"; DROP TABLE members; -- { $crops } %s %n &amp; <b>".to_owned(),
            "\u{200b}\u{feff}\u{2060}x".to_owned(),
            "999999999999999999999999999-99".to_owned(),
            "1e999 -1 0x10 ٣/٤ １２：３０".to_owned(),
        ]
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn every_odd_text_has_one_answer_in_private() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        for text in odd_texts() {
            assert!(text.encode_utf16().count() <= 4096, "the platform lets nobody write more");
            only(fern.tells(&text).await);
        }
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn what_is_quoted_back_is_short_and_reads_forwards() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        let odd = format!("\u{202e}{}", "qx".repeat(500));
        let quoted = format!("“{}…”", "qx".repeat(20));
        for asked in ["can I start ", "/grow ", "/zone ", "/hour "] {
            let answer = fern.asks(&format!("{asked}{odd}")).await.text;
            assert!(answer.contains(&quoted), "{asked}: {answer}");
            assert!(!answer.contains('\u{202e}'), "{asked}: {answer}");
        }
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn every_odd_argument_has_one_answer() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        for command in [
            "ask", "grow", "drop", "frost", "zone", "hour", "start", "now", "trays", "mycrops",
            "settings",
        ] {
            for text in odd_texts() {
                let text: String = text.chars().take(2000).collect();
                only(fern.tells(&format!("/{command} {text}")).await);
            }
        }
        for text in ["/", "//", "/ grow", "/GROW leek", "/grow\u{a0}leek", "/grow@", "/@"] {
            only(fern.tells(text).await);
        }
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn every_odd_text_to_the_bot_in_a_group_has_one_answer() {
        let world = World::start(SPRING).await;
        let ash = world.person("Ash");
        let club = world.club("Hillside Growers", &ash).await;
        let help = club.hears(&ash, "/help").await;
        for text in odd_texts() {
            let said = club.replies(&ash, &help, &text);
            club.answer_to(said).await;
        }
        for what in ["frost", "zone", "language"] {
            for text in odd_texts() {
                let text: String = text.chars().take(2000).collect();
                club.hears(&ash, &format!("/club {what} {text}")).await;
            }
        }
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_list_of_hundreds_of_unknown_names_is_answered_within_the_limits() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        let unknown: Vec<String> = (0..500).map(|n| format!("qx{n}")).collect();
        only(fern.tells(&format!("/grow {}", unknown.join(", "))).await);
        let near = "tomatto, cucumbr, basill, zinia, letuce, spinnach, carot, radishh, oniom, ";
        only(fern.tells(&format!("/grow {}", near.repeat(40))).await);
        only(fern.tells(&format!("/grow {}", "marigold, bean, ".repeat(200))).await);
        let all = fern.asks("/mycrops").await;
        assert!(shown(&all).encode_utf16().count() <= 4096);
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn names_of_people_and_groups_are_written_plainly() {
        let world = World::start(SPRING).await;
        let name = "<b>Fern</b> { $crops } \u{202e}*_`[x](tg://user?id=1)";
        let fern = world.member(name).await;
        let greeting = world.heard_by(&fern).remove(0);
        assert!(greeting.starts_with("Hello <b>Fern</b> { $crops } *_`[x]"), "{greeting}");
        let club = world.club("{ $date }\u{2068} & \"Sons\"", &fern).await;
        let page = club.hears(&fern, "/club").await.text;
        assert!(page.starts_with("{ $date } & \"Sons\", settings"), "{page}");
    }
}

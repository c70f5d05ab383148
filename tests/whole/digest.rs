//! The club's week: one digest in the group, with counts and no names.

use chrono_tz::Tz;

use crate::harness::{Club, Person, World, instant, only};
use crate::platform::{Fault, Which};

/// A club at Denver's time with the usual frost dates, two members in it and their crops.
async fn club(world: &World) -> (Person, Club) {
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    club.hears(&ash, "/club zone Denver").await;
    for (name, crops) in [("Fern", "cucumber, basil, tomato"), ("Moss", "cucumber, leek")] {
        let person = world.person(name);
        club.welcomes(&[&person]);
        club.hears(&person, "/help").await;
        person.asks("/start").await;
        person.asks(&format!("/grow {crops}")).await;
    }
    club.news();
    (ash, club)
}

/// The digest's texts that came by then.
async fn by(world: &World, club: &Club, at: &str) -> Vec<String> {
    world.at(instant(at)).await;
    club.news().into_iter().map(|message| message.text).collect()
}

// 13 April 2026 is a Monday; eight o'clock in Denver is 14:00 in UTC.

#[tokio::test(flavor = "multi_thread")]
async fn the_group_gets_its_week_on_the_day_and_hour_that_were_chosen() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let (ash, club) = club(&world).await;
    insta::assert_snapshot!(club.hears(&ash, "/club digest Monday 8:00").await.text, @"Noted: this group gets the club's week on Monday at 8:00 AM. A week in which nothing opens or closes has none.");
    assert!(by(&world, &club, "2026-04-13T13:59:00Z").await.is_empty());
    insta::assert_snapshot!(by(&world, &club, "2026-04-13T14:00:00Z").await.join("\n\n"), @"
    The club's week, April 13–19, by the club's frost dates:

    Opens this week:
    • Sow cucumbers indoors: from April 17 (2 members grow them)
    • Set out leeks: from April 17 (one member grows them)

    Your own dates may differ: ask me /now.
    ");
    for day in 14..20 {
        world.morning_in(&format!("2026-04-{day}"), Tz::America__Denver).await;
    }
    assert!(by(&world, &club, "2026-04-20T13:59:00Z").await.is_empty(), "once a week");
    insta::assert_snapshot!(by(&world, &club, "2026-04-20T14:00:00Z").await.join("\n\n"), @"
    The club's week, April 20–26, by the club's frost dates:

    About to close:
    • Sow basil indoors: good until April 24 (one member grows them)
    • Harden off leeks: good until April 24 (one member grows them)

    Your own dates may differ: ask me /now.
    ");
    assert!(club.hears(&ash, "/club").await.text.contains("• The club's week: Monday, 8:00"));
    assert_eq!(
        club.hears(&ash, "/club digest off").await.text,
        "Noted: the club's week is not sent any more."
    );
    assert!(by(&world, &club, "2026-04-27T15:00:00Z").await.is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn only_administrators_choose_it_and_bad_words_change_nothing() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let (ash, club) = club(&world).await;
    let fern = world.person("Sage");
    club.welcomes(&[&fern]);
    let refused = club.hears(&fern, "/club digest Monday 8:00").await.text;
    assert!(refused.starts_with("Only administrators of this group"), "{refused}");
    let bad = club.hears(&ash, "/club digest Moonday 8:00").await.text;
    assert!(bad.starts_with("I could not read a day of the week and a time"), "{bad}");
    assert!(by(&world, &club, "2026-04-13T14:00:00Z").await.is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn it_comes_in_the_topic_where_here_was_said() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let ash = world.person("Ash");
    let forum = world.platform.create_forum("Hillside Growers", ash.id);
    world.platform.add_bot_to_group(forum, ash.id);
    let club = world.group(forum);
    world.quiet().await;
    club.news();
    for text in ["/club frost 05-15 10-05", "/club zone Denver", "/grow cucumber share"] {
        club.hears(&ash, text).await;
    }
    let topic = world.platform.create_topic(forum, ash.id, "Sowing");
    let text = "/club digest Monday 8:00 here";
    let said = world.platform.user_says_in(club.id, ash.id, text, None, Some(topic));
    let noted = club.answer_to(said).await;
    assert!(noted.text.starts_with("Noted: the club's week comes in this topic"), "{}", noted.text);
    world.at(instant("2026-04-13T14:00:00Z")).await;
    assert_eq!(only(club.news()).thread, Some(topic));
    // Closed, it takes nothing more: the group has its week all the same, and is told why.
    world.platform.close_topic(forum, ash.id, topic);
    world.at(instant("2026-04-27T14:00:00Z")).await;
    let week = only(club.news());
    assert_eq!(week.thread, None);
    assert!(week.text.starts_with("The club's week, April 27"), "{}", week.text);
    assert!(
        week.text.contains("\n\nThe topic that this was to come in is closed"),
        "{}",
        week.text
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn after_a_stop_it_comes_once_and_speaks_of_the_days_that_are_left() {
    let mut world = World::start("2026-04-10T12:00:00Z").await;
    let (ash, club) = club(&world).await;
    club.hears(&ash, "/club digest Monday 8:00").await;
    world.sleep().await;
    world.clock.set(instant("2026-04-23T09:00:00Z"));
    world.wake().await;
    // Three in the morning in Denver: it waits for its hour.
    assert!(by(&world, &club, "2026-04-23T09:00:30Z").await.is_empty());
    let late = by(&world, &club, "2026-04-23T14:00:00Z").await;
    assert_eq!(late.len(), 1);
    assert!(late[0].starts_with("The club's week, April 23–26,"), "{late:?}");
    assert!(by(&world, &club, "2026-04-27T13:00:00Z").await.is_empty());
    let next = by(&world, &club, "2026-04-27T14:00:00Z").await;
    assert!(next.len() == 1 && next[0].starts_with("The club's week, April 27"), "{next:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn one_that_could_not_be_sent_all_day_is_made_anew_and_does_not_come_stale() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let (ash, club) = club(&world).await;
    club.hears(&ash, "/club digest Monday 8:00").await;
    let refuse = Fault::TooManyRequests { retry_after: 3 * 24 * 3600 };
    world.platform.fail(Which::method("sendMessage").containing("The club's week"), 1, refuse);
    world.set_clock(instant("2026-04-20T14:00:00Z")).await;
    world.platform.wait_for("a try", |state| (state.faults_left() < 1).then_some(())).await;
    // Thursday at eight in Denver: the wait is just over.
    assert!(by(&world, &club, "2026-04-23T13:30:00Z").await.is_empty());
    let late = by(&world, &club, "2026-04-23T14:00:30Z").await;
    assert_eq!(late.len(), 1, "{late:?}");
    assert!(late[0].starts_with("The club's week, April 23–26,"), "{late:?}");
    assert!(by(&world, &club, "2026-04-27T13:00:00Z").await.is_empty());
    let next = by(&world, &club, "2026-04-27T14:00:00Z").await;
    assert!(next.len() == 1 && next[0].starts_with("The club's week, April 27"), "{next:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_change_of_the_clubs_dates_makes_an_unsent_digest_anew() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let (ash, club) = club(&world).await;
    club.hears(&ash, "/club digest Monday 8:00").await;
    let refuse = Fault::TooManyRequests { retry_after: 1 };
    world.platform.fail(Which::method("sendMessage").containing("The club's week"), 2, refuse);
    world.set_clock(instant("2026-04-13T14:00:00Z")).await;
    world.platform.wait_for("a try", |state| (state.faults_left() < 2).then_some(())).await;
    // With a last frost on May 11, cucumbers are sown indoors from April 13.
    club.says(&ash, "/club frost 05-11 10-05");
    world.quiet().await;
    let digests: Vec<String> = club.news().into_iter().map(|message| message.text).collect();
    let digests: Vec<&String> =
        digests.iter().filter(|text| text.starts_with("The club's week")).collect();
    assert_eq!(digests.len(), 1, "{digests:?}");
    assert!(digests[0].contains("Sow cucumbers indoors: from April 13 (2"), "{digests:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_group_without_the_bot_gets_none_and_has_it_again_when_it_is_back() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let (ash, club) = club(&world).await;
    club.hears(&ash, "/club digest Monday 8:00").await;
    world.platform.remove_bot(club.id, ash.id);
    world.quiet().await;
    let before = world.platform.requests_of("sendMessage");
    world.at(instant("2026-04-13T14:00:00Z")).await;
    assert_eq!(world.platform.requests_of("sendMessage"), before);
    world.clock.set(instant("2026-04-14T12:00:00Z"));
    world.platform.add_bot_to_group(club.id, ash.id);
    world.quiet().await;
    club.news();
    assert!(by(&world, &club, "2026-04-19T14:00:00Z").await.is_empty());
    assert_eq!(by(&world, &club, "2026-04-20T14:00:00Z").await.len(), 1);
}

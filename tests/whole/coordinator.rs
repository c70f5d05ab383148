//! The club's settings: who may change them, and who lives by them.

use crate::harness::{Club, Person, World, shown};
use crate::platform::{Fault, Which};

const SPRING: &str = "2026-04-10T12:00:00Z";

/// Ash's club with Fern in it, who has opened her private chat.
async fn hillside(world: &World) -> (Person, Person, Club) {
    let ash = world.person("Ash");
    let fern = world.person("Fern");
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&fern]);
    // Whoever speaks to the bot in the group belongs to its club from then on.
    for who in [&ash, &fern] {
        club.hears(who, "/help").await;
    }
    fern.asks("/start").await;
    (ash, fern, club)
}

#[tokio::test(flavor = "multi_thread")]
async fn what_an_administrator_sets_holds_for_members_until_they_set_their_own() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    insta::assert_snapshot!(shown(&club.hears(&ash, "/club").await), @"
    Hillside Growers, settings for everybody who has none of their own
    • Frost: not given
    • Time zone: not given, so UTC
    • Language: English
    • The club's week: not sent
    • Members: 2; reminders can reach 1. The others have to open our private chat and send /start.
    Set them here, or in one line: /club frost 05-15 10-05, /club zone Denver, /club language en, /club digest Monday 8:00, /club hold 7 days
    [Frost dates] [Time zone] [Language]
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/club frost 05-15 10-05").await), @r"
    Noted for the club: last frost around May 15, first frost around October 5. That is a season of 143 days. Members with dates of their own keep them.
    Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
    [They are averages] [I trust them]
    [Undo]
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/club zone Denver").await), @"The club's time zone is America/Denver.");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/club language en-GB").await), @"The club's language is English (UK).");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/club language tlh").await), @"I don't speak “tlh” yet. I speak English (en), Deutsch (de), Español (es) and Français (fr).");
    insta::assert_snapshot!(club.hears(&ash, "/club").await.text, @"
    Hillside Growers, settings for everybody who has none of their own
    • Frost: last frost around 15 May, first frost around 5 October
    • Time zone: America/Denver
    • Language: English (UK)
    • The club's week: not sent
    • Members: 2; reminders can reach 1. The others have to open our private chat and send /start.
    Set them here, or in one line: /club frost 05-15 10-05, /club zone Denver, /club language en, /club digest Monday 8:00, /club hold 7 days
    ");
    insta::assert_snapshot!(fern.asks("/settings").await.text, @r"
    Your settings
    • Frost: last frost around 15 May, first frost around 5 October (your club's)
    • Time zone: America/Denver (your club's)
    • Reminders at 07:00
    • Units: °C and cm
    • Language: English (UK)
    • Club: Hillside Growers
    ");

    fern.asks("/frost 06-01 09-20").await;
    fern.asks("/zone Oslo").await;
    club.hears(&ash, "/club frost 05-10 10-10").await;
    club.hears(&ash, "/club zone Chicago").await;
    insta::assert_snapshot!(fern.asks("/settings").await.text, @r"
    Your settings
    • Frost: last frost around 1 June, first frost around 20 September
    • Time zone: Europe/Oslo
    • Reminders at 07:00
    • Units: °C and cm
    • Language: English (UK)
    • Club: Hillside Growers
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_member_is_refused_and_nothing_changes() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    let before = club.hears(&ash, "/club").await;
    for tried in ["/club", "/club frost 05-15 10-05", "/club zone Denver", "/club language en-GB"] {
        let refused = club.hears(&fern, tried).await;
        assert_eq!(
            refused.text,
            "Only administrators of this group and the helpers they name can change the club's \
             settings. /frost sets your own garden.",
            "{tried}"
        );
    }
    assert_eq!(club.hears(&ash, "/club").await.text, before.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn an_administrator_may_stay_anonymous() {
    let world = World::start(SPRING).await;
    let (_, fern, club) = hillside(&world).await;
    let said = world.platform.anonymous_admin_says(club.id, "/club frost 05-15 10-05", None);
    let set = club.answer_to(said).await;
    assert!(set.text.starts_with("Noted for the club: last frost around May 15"), "{}", set.text);
    // The account is everybody's who is anonymous, so it is nobody's private membership.
    let question = world.platform.anonymous_admin_says(club.id, "/ask can I start peas?", None);
    club.answer_to(question).await;
    let memberships = "SELECT count(*) FROM memberships JOIN members m ON m.id = member_id \
                       WHERE m.user_id = 1087968824";
    assert_eq!(world.count(memberships).await, 0);
    assert!(fern.asks("/settings").await.text.contains("(your club's)"));
}

#[tokio::test(flavor = "multi_thread")]
async fn when_nobody_can_say_who_is_an_administrator_nothing_changes() {
    let world = World::start(SPRING).await;
    let (ash, _, club) = hillside(&world).await;
    let refusal = Fault::Refuse { code: 400, description: "Bad Request: CHAT_ADMIN_LOST".into() };
    world.platform.fail(Which::method("getChatAdministrators"), 1, refusal);
    let unsure = club.hears(&ash, "/club frost 05-15 10-05").await;
    assert_eq!(
        unsure.text,
        "I could not check who the administrators are. Please try again in a minute."
    );
    // The next time the platform says.
    insta::assert_snapshot!(club.hears(&ash, "/club").await.text, @"
    Hillside Growers, settings for everybody who has none of their own
    • Frost: not given
    • Time zone: not given, so UTC
    • Language: English
    • The club's week: not sent
    • Members: 2; reminders can reach 1. The others have to open our private chat and send /start.
    Set them here, or in one line: /club frost 05-15 10-05, /club zone Denver, /club language en, /club digest Monday 8:00, /club hold 7 days
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn who_became_an_administrator_may_at_once_and_who_was_one_for_a_minute_at_most() {
    let world = World::start(SPRING).await;
    let (_, fern, club) = hillside(&world).await;
    assert!(club.hears(&fern, "/club").await.text.starts_with("Only administrators"));
    world.platform.promote(club.id, fern.id);
    assert!(club.hears(&fern, "/club").await.text.starts_with("Hillside Growers, settings"));
    world.platform.demote(club.id, fern.id);
    world.clock.advance(chrono::TimeDelta::seconds(61));
    assert!(club.hears(&fern, "/club").await.text.starts_with("Only administrators"));
}

#[tokio::test(flavor = "multi_thread")]
async fn the_pages_buttons_are_for_administrators() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    let page = club.hears(&ash, "/club").await;
    for label in ["Frost dates", "Time zone", "Language"] {
        let notice = fern.presses_under(&page, label).await.unwrap_or_default();
        assert!(notice.starts_with("Only administrators of this group"), "{label}: {notice}");
    }
    assert!(club.news().is_empty(), "a refusal stays between the bot and the one who pressed");

    assert_eq!(ash.presses_under(&page, "Time zone").await, None);
    let question = club.news().pop().expect("a question");
    insta::assert_snapshot!(shown(&question), @r"
    Reply to this message with a city or a zone's name, like this: Denver
    ");
    let city = club.replies(&ash, &question, "Helsinky");
    let near = club.answer_to(city).await;
    insta::assert_snapshot!(shown(&near), @r"
    I don't know the place “Helsinky”. Did you mean one of these?
    [Europe/Helsinki]
    ");
    let notice = fern.presses_under(&near, "Europe/Helsinki").await.unwrap_or_default();
    assert!(notice.starts_with("Only administrators"), "{notice}");
    ash.presses_under(&near, "Europe/Helsinki").await;
    insta::assert_snapshot!(shown(&club.news().pop().expect("an answer")), @"The club's time zone is Europe/Helsinki.");

    ash.presses_under(&page, "Language").await;
    let languages = club.news().pop().expect("the languages");
    ash.presses_under(&languages, "English").await;
    insta::assert_snapshot!(shown(&club.news().pop().expect("an answer")), @"The club's language is English.");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_question_for_the_clubs_dates_is_the_administrators_to_answer() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    let page = club.hears(&ash, "/club").await;
    ash.presses_under(&page, "Frost dates").await;
    let question = club.news().pop().expect("a question");
    // Fern was not asked: to her the words are her own.
    let hers = club.replies(&fern, &question, "06-01 09-20");
    let hers = club.answer_to(hers).await;
    assert!(!hers.text.contains("Noted for the club"), "{}", hers.text);
    let his = club.replies(&ash, &question, "05-15 10-05");
    insta::assert_snapshot!(shown(&club.answer_to(his).await), @r"
    Noted for the club: last frost around May 15, first frost around October 5. That is a season of 143 days. Members with dates of their own keep them.
    Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
    [They are averages] [I trust them]
    [Undo]
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_clubs_dates_can_be_trusted_and_taken_back() {
    let world = World::start(SPRING).await;
    let (ash, fern, club) = hillside(&world).await;
    club.hears(&ash, "/club frost 05-10 10-10").await;
    let set = club.hears(&ash, "/club frost 05-15 10-05").await;
    let notice = fern.presses_under(&set, "Undo").await.unwrap_or_default();
    assert!(notice.starts_with("Only administrators"), "{notice}");
    ash.presses_under(&set, "I trust them").await;
    let now = world.platform.message(club.id, set.message_id).expect("the message");
    insta::assert_snapshot!(shown(&now), @r"
    Noted for the club: last frost by May 15 and first frost from October 5, dates you trust. That is a season of 143 days. Members with dates of their own keep them.
    [Undo]
    ");
    ash.presses_under(&now, "Undo").await;
    let now = world.platform.message(club.id, set.message_id).expect("the message");
    insta::assert_snapshot!(shown(&now), @r"
    Noted for the club: last frost around May 15, first frost around October 5. That is a season of 143 days. Members with dates of their own keep them.
    [Undo]
    ");
    assert!(club.news().is_empty(), "all of it in the one message");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_page_tells_whom_reminders_cannot_reach() {
    let world = World::start("2026-04-20T12:00:00Z").await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    let fern = world.member("Fern").await;
    club.welcomes(&[&fern]);
    club.hears(&fern, "/ask can I start peas now?").await;
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let page = club.hears(&ash, "/club").await.text;
    assert!(
        page.contains(
            "Members: 2; reminders can reach 1. The others have to open our private chat and \
             send /start."
        ),
        "{page}"
    );
    ash.tells("/start").await;
    let page = club.hears(&ash, "/club").await.text;
    assert!(page.contains("Members: 2; reminders can reach each of them"), "{page}");
    fern.blocks_the_bot();
    world.quiet().await;
    let page = club.hears(&ash, "/club").await.text;
    assert!(page.contains("reminders can reach 1."), "{page}");
    world.platform.leave(club.id, fern.id);
    world.quiet().await;
    let page = club.hears(&ash, "/club").await.text;
    assert!(page.contains("Members: 1; reminders can reach each of them"), "{page}");
}

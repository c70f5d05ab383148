//! Club lists: coordinators keep them, members subscribe, and what changes is told once.

use crate::harness::{Club, Person, World, instant, only, shown};

/// Mid-winter: no job of tomatoes, onions or basil is due on the next mornings.
const WINTER: &str = "2026-01-05T12:00:00Z";

/// Ash's club with the club's frost dates, and Fern in it, who has opened her private chat.
async fn hillside(world: &World) -> (Person, Person, Club) {
    let ash = world.person("Ash");
    let fern = world.person("Fern");
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&fern]);
    club.hears(&ash, "/club frost 05-15 10-05").await;
    club.hears(&fern, "/help").await;
    fern.asks("/start").await;
    (ash, fern, club)
}

/// The same with a list that Fern subscribes to.
async fn salsa(world: &World) -> (Person, Person, Club) {
    let (ash, fern, club) = hillside(world).await;
    club.hears(&ash, "/list new Salsa bed: tomato, pepper, onion").await;
    fern.asks("/list join salsa").await;
    (ash, fern, club)
}

#[tokio::test(flavor = "multi_thread")]
async fn coordinators_keep_lists_in_the_group() {
    let world = World::start(WINTER).await;
    let (ash, _, club) = hillside(&world).await;
    insta::assert_snapshot!(shown(&club.hears(&ash, "/lists").await), @"Hillside Growers keeps no lists yet. In the group, an administrator or a helper starts one like this: /list new Salsa bed: tomato, pepper, onion");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list new Salsa bed: tomato, pepper, onion").await), @"
    New list “Salsa bed”: tomato, pepper, and onion.
    Members subscribe with the button of the list, here or in private with /lists.
    [The club's lists]
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list salsa + basil, dill").await), @"
    On “Salsa bed” now: basil and dill.
    [Subscribe] [Unsubscribe]
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list add dill and kohlrabbi to Salsa bed").await), @"
    On “Salsa bed” now: kohlrabi.
    Already on “Salsa bed”: dill.
    [Subscribe] [Unsubscribe]
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list salsa - dill, leek").await), @"
    Off “Salsa bed”: dill.
    Not on “Salsa bed”: leek.
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list note salsa: for the bed by the gate").await), @"“Salsa bed” has its line of text. /list Salsa bed shows it.");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list rename salsa to Hot bed").await), @"“Salsa bed” is called “Hot bed” from now on.");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list new Cutting garden: zinnia").await), @"
    New list “Cutting garden”: zinnia.
    Members subscribe with the button of the list, here or in private with /lists.
    [The club's lists]
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list hot bed").await), @"
    Hot bed
    for the bed by the gate
    Crops: tomato, pepper, onion, basil, and kohlrabi
    Nobody subscribes yet.
    [Subscribe] [Unsubscribe]
    [‹ All lists]
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/lists").await), @"
    Lists of Hillside Growers. Subscribe to one, and its crops are in your plan:
    • Hot bed: 5 crops
    • Cutting garden: one crop
    /list help shows how to change them.
    [Hot bed]
    [Cutting garden]
    ");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/list archive cutting").await), @"
    “Cutting garden” is put away: in nobody's plan any more, and no code leads to it.
    [Undo]
    ");
    assert!(!club.hears(&ash, "/lists").await.text.contains("Cutting garden"));
}

#[tokio::test(flavor = "multi_thread")]
async fn bad_input_gets_one_sentence_and_changes_nothing() {
    let world = World::start(WINTER).await;
    let (ash, _, club) = hillside(&world).await;
    club.hears(&ash, "/list new Salsa bed: tomato").await;
    club.hears(&ash, "/list new Hot bed").await;
    let before = club.hears(&ash, "/lists").await.text;
    let rows = "SELECT (SELECT count(*) FROM lists) * 1000 + (SELECT count(*) FROM list_crops)";
    let kept = world.count(rows).await;
    for (wrong, answer) in [
        (
            "/list new",
            "What shall the list be called? Like this: /list new Salsa bed: tomato, pepper, onion",
        ),
        (
            "/list new Everything that we would like to grow",
            "A list's name has at most 30 characters, so nothing changed.",
        ),
        (
            "/list new New beds",
            "A list's name cannot begin with “New”, since that tells me what to do. \
             Choose another name; nothing changed.",
        ),
        (
            "/list new salsa BED: basil",
            "There is a list “salsa BED” already, so nothing changed. \
             Choose another name, or rename that one first.",
        ),
        (
            "/list rename salsa to Hot bed",
            "There is a list “Hot bed” already, so nothing changed. \
             Choose another name, or rename that one first.",
        ),
        (
            "/list rename salsa",
            "What shall it be called? Like this: /list rename Salsa bed to Hot bed",
        ),
        (
            "/list orchard + pear",
            "I know no list “orchard + pear” here. Your club has “Salsa bed” and “Hot bed”.",
        ),
        ("/list + basil", "Which list? Begin with its name, like this: /list salsa + basil"),
        ("/list salsa +", "Which crops? Like this: /list Salsa bed + basil, dill"),
        ("/list salsa - leek", "Not on “Salsa bed”: leek."),
        (
            "/list take",
            "Send the code that the other club gave you, like this: /list take ABCD-EFGH",
        ),
        (
            "/list take ABCD-EFGH",
            "No list is shared as “ABCD-EFGH”. Ask the other club for the code once more.",
        ),
    ] {
        assert_eq!(club.hears(&ash, wrong).await.text, answer, "{wrong}");
    }
    let long = format!("/list note salsa {}", "x".repeat(201));
    assert_eq!(
        club.hears(&ash, &long).await.text,
        "A list's line of text has at most 200 characters, so nothing changed."
    );
    assert_eq!(club.hears(&ash, "/lists").await.text, before);
    assert_eq!(world.count(rows).await, kept);
    for number in 3..=20 {
        club.hears(&ash, &format!("/list new Bed {number}")).await;
    }
    assert_eq!(
        club.hears(&ash, "/list new One more").await.text,
        "A club keeps at most 20 lists, so nothing changed. /list archive puts one away."
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn members_subscribe_by_button_in_the_group_and_in_private() {
    let world = World::start(WINTER).await;
    let (ash, fern, club) = hillside(&world).await;
    club.hears(&ash, "/list new Salsa bed: tomato, pepper, onion").await;
    let list = club.hears(&ash, "/list salsa").await;
    assert_eq!(
        fern.presses_under(&list, "Subscribe").await.as_deref(),
        Some("“Salsa bed” is in your plan now.")
    );
    assert_eq!(
        fern.presses_under(&list, "Subscribe").await.as_deref(),
        Some("“Salsa bed” is in your plan already.")
    );
    // Moss has never spoken to the bot.
    let moss = world.person("Moss");
    club.welcomes(&[&moss]);
    assert_eq!(
        moss.presses_under(&list, "Subscribe").await.as_deref(),
        Some(
            "“Salsa bed” is in your plan now. For reminders open our private chat and press Start."
        )
    );
    assert!(club.news().is_empty(), "the group hears nothing of it");
    insta::assert_snapshot!(shown(&fern.asks("/mycrops").await), @"
    You grow 3 crops:
    • tomato: sow tomatoes indoors from March 27 (from “Salsa bed”)
    • pepper: sow peppers indoors from March 20 (from “Salsa bed”)
    • onion: sow onions indoors from February 6 (from “Salsa bed”)
    ");

    insta::assert_snapshot!(shown(&fern.asks("/lists").await), @"
    Lists of Hillside Growers. Subscribe to one, and its crops are in your plan:
    • Salsa bed: 3 crops, in your plan
    [Salsa bed]
    ");
    fern.presses("Salsa bed").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    Salsa bed
    Crops: tomato, pepper, and onion
    2 members subscribe.
    [Unsubscribe]
    ");
    fern.presses("Unsubscribe").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    Salsa bed
    Crops: tomato, pepper, and onion
    One member subscribes.
    [Subscribe]
    ");
    assert!(fern.asks("/mycrops").await.text.starts_with("Your list is empty"));
    assert!(fern.asks("/undo").await.text.contains("“Salsa bed” is in your plan again"));
    assert!(fern.asks("/mycrops").await.text.starts_with("You grow 3 crops"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_members_own_choice_wins_over_a_list() {
    let world = World::start(WINTER).await;
    let (ash, fern, club) = salsa(&world).await;
    // What a list brings is left out; the list stays for the others.
    insta::assert_snapshot!(shown(&fern.asks("/drop pepper").await), @"
    Left out of your plan: pepper. Nothing changes on “Salsa bed”; /grow brings a crop back.
    [Undo]
    ");
    insta::assert_snapshot!(shown(&fern.asks("/mycrops").await), @"
    You grow 2 crops:
    • tomato: sow tomatoes indoors from March 27 (from “Salsa bed”)
    • onion: sow onions indoors from February 6 (from “Salsa bed”)
    Left out of your club's lists: pepper
    ");
    assert!(club.hears(&ash, "/list salsa").await.text.contains("pepper"));
    // Undo, and the other way to bring it back.
    fern.asks("/drop onion").await;
    fern.presses("Undo").await;
    assert!(fern.last().text.contains("Back in your plan from your club's list: onion"));
    fern.asks("/grow pepper").await;
    assert!(fern.asks("/mycrops").await.text.contains("pepper: sow peppers indoors"));
    // Their own choice stays without the list.
    fern.asks("/grow tomato, basil").await;
    insta::assert_snapshot!(shown(&fern.asks("/list leave salsa").await), @"
    “Salsa bed” is not in your plan any more. What you chose yourself stays.
    [Undo]
    ");
    insta::assert_snapshot!(shown(&fern.asks("/mycrops").await), @"
    You grow 3 crops:
    • pepper: sow peppers indoors from March 20
    • tomato: sow tomatoes indoors from March 27
    • basil: sow basil indoors from April 3
    ");
    fern.asks("/list join salsa").await;
    let all = fern.asks("/drop all").await;
    insta::assert_snapshot!(shown(&all), @"
    Off your list: pepper, tomato, and basil.
    Not in your plan any more: “Salsa bed”.
    [Undo]
    ");
    assert!(fern.asks("/mycrops").await.text.starts_with("Your list is empty"));
    fern.asks("/undo").await;
    assert!(fern.asks("/mycrops").await.text.starts_with("You grow 4 crops"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_changed_list_is_told_once_on_the_next_morning_with_or_without_jobs() {
    let world = World::start(WINTER).await;
    let (ash, fern, club) = salsa(&world).await;
    fern.news();
    world.morning_of("2026-01-06").await;
    assert!(fern.news().is_empty(), "nothing is due and nothing changed");
    club.hears(&ash, "/list salsa + basil, dill").await;
    club.hears(&ash, "/list salsa - dill, onion").await;
    assert!(fern.news().is_empty(), "it waits for the morning");
    world.morning_of("2026-01-07").await;
    insta::assert_snapshot!(shown(&only(fern.news())), @"
    Good morning! Wednesday, January 7:
    Your club changed “Salsa bed”. New: basil. Gone: onion.
    /mycrops shows your plan; /grow keeps a crop in it, and /drop leaves one out.
    ");
    world.morning_of("2026-01-08").await;
    assert!(fern.news().is_empty(), "it was told");
    // What came and went again is no news; another name is none either.
    club.hears(&ash, "/list salsa + kale").await;
    club.hears(&ash, "/list salsa - kale").await;
    club.hears(&ash, "/list rename salsa to Hot bed").await;
    world.morning_of("2026-01-09").await;
    assert!(fern.news().is_empty());
    club.hears(&ash, "/list archive hot").await;
    world.morning_of("2026-01-10").await;
    insta::assert_snapshot!(shown(&only(fern.news())), @"
    Good morning! Saturday, January 10:
    Your club put the list “Hot bed” away. Gone with it: tomato, pepper, and basil.
    /mycrops shows your plan; /grow keeps a crop in it, and /drop leaves one out.
    ");
    assert!(fern.asks("/mycrops").await.text.starts_with("Your list is empty"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_lists_crops_are_in_the_reminders_and_a_change_takes_an_unsent_one_back() {
    let world = World::start("2026-04-16T12:00:00Z").await;
    let (ash, fern, club) = hillside(&world).await;
    club.hears(&ash, "/list new Summer: cucumber, zinnia").await;
    fern.asks("/list join summer").await;
    fern.news();
    // The platform makes the reminder wait while the list changes.
    world.platform.on_request(|call| {
        let text = call.text_param("text").unwrap_or_default();
        text.starts_with("Good morning")
            .then_some(crate::platform::Fault::TooManyRequests { retry_after: 1 })
    });
    world.set_clock(instant("2026-04-17T07:00:00Z")).await;
    world.wait_until_waiting(1).await;
    club.says(&ash, "/list summer - zinnia");
    world
        .platform
        .wait_for("the answer", |state| {
            state.sent().iter().any(|message| message.text.contains("Off “Summer”")).then_some(())
        })
        .await;
    world.platform.behave();
    world.skip_waits_to(instant("2026-04-17T07:01:00Z")).await;
    insta::assert_snapshot!(shown(&only(fern.news())), @"
    Good morning! Friday, April 17:
    1. Sow cucumbers indoors: good until May 1.

    Your club took zinnia off “Summer”.
    /mycrops shows your plan; /grow keeps a crop in it, and /drop leaves one out.
    [1 done] [later] [skip]
    ");
    world.morning_of("2026-04-18").await;
    assert!(fern.news().iter().all(|message| !message.text.contains("Summer")), "told once");
    // The group's answers go by the same plan.
    club.news();
    assert!(club.hears(&fern, "/now").await.text.contains("cucumber"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_code_copies_a_list_into_another_club_until_it_is_put_away() {
    let world = World::start(WINTER).await;
    let (ash, _, club) = salsa(&world).await;
    club.hears(&ash, "/list note salsa: for the bed by the gate").await;
    let bree = world.person("Bree");
    let other = world.club("Valley Plots", &bree).await;
    let shared = club.hears(&ash, "/list share salsa").await.text;
    let code = shared.lines().nth(1).expect("a line").trim().trim_start_matches("/list take ");
    assert_eq!(code.len(), 9, "{shared}");
    assert!(code.chars().all(|c| c == '-' || !"0O1ILUVa".contains(c)), "{code}");
    let copied = other.hears(&bree, &format!("/list take {}", code.to_lowercase())).await;
    insta::assert_snapshot!(shown(&copied), @"
    Copied as a list of this club, “Salsa bed”: tomato, pepper, and onion.
    Members subscribe with the button of the list, here or in private with /lists.
    [The club's lists]
    ");
    let theirs = other.hears(&bree, "/list salsa").await.text;
    assert!(theirs.contains("for the bed by the gate") && theirs.contains("Nobody subscribes"));
    // Each club goes on alone.
    other.hears(&bree, "/list salsa - tomato").await;
    assert!(club.hears(&ash, "/list salsa").await.text.contains("tomato"));
    // Put away, its code leads nowhere, also when it is there again.
    let put_away = club.hears(&ash, "/list archive salsa").await;
    other.hears(&bree, "/list rename salsa to Ours").await;
    let refused = |text: String| assert!(text.starts_with("No list is shared as"), "{text}");
    refused(other.hears(&bree, &format!("/list take {code}")).await.text);
    ash.presses_under(&put_away, "Undo").await;
    assert!(club.hears(&ash, "/lists").await.text.contains("Salsa bed"));
    refused(other.hears(&bree, &format!("/list take {code}")).await.text);
}

//! Cold spells: a member's own, the club's, and what they do to the mornings.

use crate::harness::{World, shown};

#[tokio::test(flavor = "multi_thread")]
async fn a_member_waits_a_week() {
    let world = World::start("2026-03-27T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow tomato").await;
    insta::assert_snapshot!(shown(&fern.asks("/hold").await), @"
    Nothing is held.
    In a cold spell, say how many days hardening off and setting out should wait, from 1 to 60: /hold 7 days, or until which day: /hold until Friday. To end it: /hold off
    ");
    world.morning_of("2026-03-28").await;
    fern.asks("/now").await;
    fern.presses("1 done").await;
    world.morning_of("2026-05-18").await;
    fern.news();
    insta::assert_snapshot!(shown(&fern.asks("/hold 7 days").await), @"
    Held until May 25: I name no hardening off and no setting out before then.
    That puts off: harden off tomatoes and set out tomatoes.
    Your seedlings can wait that long.
    [Undo]
    ");
    insta::assert_snapshot!(fern.asks("/settings").await.text, @"
    Your settings
    • Frost: last frost around May 15, first frost around October 5
    • Cold spell: held until May 25
    • Time zone: not given, so UTC
    • Reminders at 7:00 AM
    • Units: °F and inches
    • Language: English
    ");
    insta::assert_snapshot!(fern.asks("/now").await.text, @"
    Monday, May 18, from your list:
    1. Pot up tomatoes (sown March 28): late, but worth it until May 23.
    Hardening off and setting out wait until May 25.
    ");
    for day in ["2026-05-19", "2026-05-22", "2026-05-24"] {
        world.morning_of(day).await;
        assert!(fern.news().is_empty(), "{day}");
    }
    world.morning_of("2026-05-25").await;
    insta::assert_snapshot!(fern.last().text, @"
    Good morning! Monday, May 25:
    1. Set out tomatoes (sown March 28) when the week's nights stay above 50 °F.
    2. Harden off tomatoes (sown March 28): over 7 to 14 days, while nights stay above 50 °F.

    Before anything tender goes out, check the week's nights and harden it off first.
    ");
    assert!(!fern.asks("/settings").await.text.contains("Cold spell"));
}

#[tokio::test(flavor = "multi_thread")]
async fn which_seedlings_cannot_wait_and_what_helps() {
    let world = World::start("2026-04-02T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow tomato").await;
    fern.asks("/now").await;
    fern.presses("1 done").await;
    fern.asks("/grow cucumber").await;
    world.morning_of("2026-04-17").await;
    fern.asks("/now").await;
    fern.presses("2 done").await;
    world.morning_of("2026-05-20").await;
    fern.news();
    // Tomatoes 10 weeks and a day old by 12 June bear it in a larger pot; cucumbers, 8 weeks old
    // by then, in none.
    insta::assert_snapshot!(shown(&fern.asks("/hold 23").await), @"
    Held until June 12: I name no hardening off and no setting out before then.
    That puts off: harden off cucumbers, harden off tomatoes, set out cucumbers, and set out tomatoes.
    Cucumbers will be 8 weeks old by then, too old to wait. Set them out under cover on the mildest days, or sow again: worth it until July 16.
    Tomatoes will be 10 weeks old by then, more than they bear in their cells. Pot them up.
    [Undo]
    ");
    insta::assert_snapshot!(shown(&fern.asks("hold everything for a week").await), @"
    Held until May 27: I name no hardening off and no setting out before then.
    That puts off: harden off cucumbers, harden off tomatoes, set out cucumbers, and set out tomatoes.
    Your seedlings can wait that long.
    [Undo]
    ");
    fern.presses("Undo").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    Held until June 12: I name no hardening off and no setting out before then.
    That puts off: harden off cucumbers, harden off tomatoes, set out cucumbers, and set out tomatoes.
    Cucumbers will be 8 weeks old by then, too old to wait. Set them out under cover on the mildest days, or sow again: worth it until July 16.
    Tomatoes will be 10 weeks old by then, more than they bear in their cells. Pot them up.
    [Undo]
    ");
    insta::assert_snapshot!(fern.asks("/hold off").await.text, @"The hold is over; from today I name everything again.");
    insta::assert_snapshot!(fern.asks("/hold off").await.text, @"Nothing is held.");
}

#[tokio::test(flavor = "multi_thread")]
async fn what_cannot_be_is_said_and_changes_nothing() {
    let world = World::start("2026-05-20T12:00:00Z").await;
    let fern = world.member("Fern").await;
    for text in
        ["/hold 0", "/hold 61 days", "/hold -3", "/hold for ever", "/hold 99999999999999999"]
    {
        let answer = fern.asks(text).await.text;
        let refused = "I can hold for 1 to 60 days, like this: /hold 7 days, or /hold until \
                       Friday. Nothing changed.";
        assert_eq!(answer, refused, "{text}");
    }
    assert_eq!(world.count("SELECT COUNT(*) FROM members WHERE hold IS NOT NULL").await, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn the_coordinator_holds_for_the_club() {
    let world = World::start("2026-05-07T12:00:00Z").await;
    let ash = world.person("Ash");
    let fern = world.person("Fern");
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&fern]);
    club.hears(&fern, "/help").await;
    fern.asks("/start").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow tomato").await;
    fern.news();
    insta::assert_snapshot!(club.hears(&fern, "/club hold 7 days").await.text, @"Only administrators of this group and the helpers they name can change the club's settings. /frost sets your own garden.");
    insta::assert_snapshot!(shown(&club.hears(&ash, "/club hold 7 days").await), @"
    Held for the club until May 14: I tell nobody to harden off or set out before then. /hold shows each member which of their seedlings cannot wait.
    [Undo]
    ");
    insta::assert_snapshot!(club.hears(&ash, "/club hold 0").await.text, @"I can hold for 1 to 60 days, like this: /club hold 7 days, or /club hold until Friday. Nothing changed.");
    insta::assert_snapshot!(club.hears(&ash, "/club").await.text, @"
    Hillside Growers, settings for everybody who has none of their own
    • Frost: not given
    • Time zone: not given, so UTC
    • Language: English
    • The club's week: not sent
    • Cold spell: held until May 14
    • Members: 2; reminders can reach 1. The others have to open our private chat and send /start.
    Set them here, or in one line: /club frost 05-15 10-05, /club zone Denver, /club language en, /club digest Monday 8:00, /club hold 7 days
    ");
    insta::assert_snapshot!(fern.asks("/hold").await.text, @"
    Held until May 14.
    That puts off: harden off tomatoes.
    In a cold spell, say how many days hardening off and setting out should wait, from 1 to 60: /hold 7 days, or until which day: /hold until Friday. To end it: /hold off
    ");
    // A shorter hold of one's own does not end the club's; a longer one counts.
    insta::assert_snapshot!(fern.asks("/hold 3").await.text, @"
    Held until May 10: I name no hardening off and no setting out before then.
    Your club waits until May 14, and that counts for you as well.
    That puts off: harden off tomatoes.
    ");
    insta::assert_snapshot!(fern.asks("/hold off").await.text, @"
    Your own hold is over.
    Your club waits until May 14, and that counts for you as well.
    ");
    world.morning_of("2026-05-08").await;
    assert!(fern.news().iter().all(|m| !m.text.contains("Harden off")));
    world.morning_of("2026-05-14").await;
    assert!(fern.last().text.contains("Harden off tomatoes"), "{}", fern.last().text);
    insta::assert_snapshot!(fern.asks("/settings").await.text, @"
    Your settings
    • Frost: last frost around May 15, first frost around October 5
    • Time zone: not given, so UTC
    • Reminders at 7:00 AM
    • Units: °F and inches
    • Language: English
    • Club: Hillside Growers
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_question_about_what_waits_is_answered_by_the_cold_spell() {
    let world = World::start("2026-04-22T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    let question = "can I set out onions?";
    assert!(fern.asks(question).await.text.starts_with("Go ahead"));
    fern.asks("/hold 7 days").await;
    insta::assert_snapshot!(fern.asks(question).await.text, @"
    Not yet. Wait until April 29 to set out onions.
    Hardening off and setting out wait until April 29.
    Which onions form bulbs depends on the length of your days. How far north are you? Like this: /latitude 47
    ");
    // What is sown indoors waits for nothing, and after the cold spell nothing does.
    assert!(fern.asks("can I sow basil indoors?").await.text.starts_with("Go ahead"));
    let after = fern.asks("can I set out onions on April 30?").await.text;
    assert!(after.starts_with("Go ahead"), "{after}");
}

//! Where it grows: the seed-raising place and the cover outdoors.

use crate::harness::{World, shown};

const SPRING: &str = "2026-04-10T12:00:00Z";

#[tokio::test(flavor = "multi_thread")]
async fn a_tap_sets_it_and_another_takes_it_back() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    insta::assert_snapshot!(shown(&fern.asks("/place").await), @"
    Your seedlings: not said. Cover outdoors: none.
    Tap what fits, or tell me: “I grow under lights”, “I have a cold frame”, “no cover”.
    [Windowsill] [Lights]
    [Heat mat] [Greenhouse]
    [Fleece] [Cold frame]
    [Tunnel] [✓ No cover]
    ");
    fern.presses("Windowsill").await;
    fern.presses("Tunnel").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    Your seedlings: on a windowsill. Cover outdoors: tunnel.
    Tap what fits, or tell me: “I grow under lights”, “I have a cold frame”, “no cover”.
    [✓ Windowsill] [Lights]
    [Heat mat] [Greenhouse]
    [Fleece] [Cold frame]
    [✓ Tunnel] [No cover]
    ");
    insta::assert_snapshot!(fern.asks("/settings").await.text, @"
    Your settings
    • Frost: last frost around May 15, first frost around October 5
    • Seedlings on a windowsill
    • Cover outdoors: Tunnel
    • Time zone: not given, so UTC
    • Reminders at 7:00 AM
    • Units: °F and inches
    • Language: English
    ");
    insta::assert_snapshot!(fern.asks("can I start tomatoes now?").await.text, @"
    Late, but still worth it: sow tomatoes indoors today.
    Best days: until April 3. Expect about 7 days less of picking.
    With your tunnel, the harvest ends about 3 weeks later than without it.
    Last day worth it: May 30.
    On a windowsill seedlings stretch, so I let tomatoes grow 10 weeks old there at most.
    ");
    fern.asks("/place").await;
    fern.presses("✓ Windowsill").await;
    fern.presses("No cover").await;
    insta::assert_snapshot!(fern.last().text, @"
    Your seedlings: not said. Cover outdoors: none.
    Tap what fits, or tell me: “I grow under lights”, “I have a cold frame”, “no cover”.
    ");
    assert!(!fern.asks("/settings").await.text.contains("Seedlings"));
}

#[tokio::test(flavor = "multi_thread")]
async fn words_do_the_same() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    insta::assert_snapshot!(fern.asks("I grow under lights").await.text, @"
    Noted. Your seedlings: under lights. Cover outdoors: none.
    Tap what fits, or tell me: “I grow under lights”, “I have a cold frame”, “no cover”.
    ");
    insta::assert_snapshot!(fern.asks("I have a cold frame").await.text, @"
    Noted. Your seedlings: under lights. Cover outdoors: cold frame.
    Tap what fits, or tell me: “I grow under lights”, “I have a cold frame”, “no cover”.
    ");
    insta::assert_snapshot!(fern.asks("when can I plant out lettuce?").await.text, @"
    Lettuce, counted from your average last frost around May 15:
    • Set out lettuce: April 10 to May 15; worth it until June 12
    • Set out lettuce for autumn: August 24 to September 14; worth it until September 28
    With your cold frame, that is 3 weeks sooner than without it.
    ");
    insta::assert_snapshot!(fern.asks("no cover").await.text, @"
    Noted. Your seedlings: under lights. Cover outdoors: none.
    Tap what fits, or tell me: “I grow under lights”, “I have a cold frame”, “no cover”.
    ");
    insta::assert_snapshot!(fern.asks("/place the attic").await.text, @"I know windowsill, lights, heat mat and greenhouse for seedlings, and fleece, cold frame and tunnel outdoors. “the attic” I do not know.");
    insta::assert_snapshot!(fern.asks("greenhouse").await.text, @"
    Noted. Your seedlings: in a greenhouse. Cover outdoors: none.
    Tap what fits, or tell me: “I grow under lights”, “I have a cold frame”, “no cover”.
    ");
    // A sentence about crops stays one.
    insta::assert_snapshot!(fern.asks("I grow tomatoes").await.text, @"
    On your list: tomato.
    You can sow tomatoes indoors now, good until April 10.
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_mornings_follow_the_cover() {
    let world = World::start("2026-04-09T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern.asks("/grow lettuce").await;
    fern.asks("I have a tunnel").await;
    world.morning_of("2026-04-10").await;
    // Set out three weeks sooner than 1 May.
    let named: Vec<String> = fern.news().iter().map(|m| m.text.clone()).collect();
    insta::assert_snapshot!(named.join("\n"), @"
    Good morning! Friday, April 10:
    1. Sow lettuce indoors: late, but worth it until May 15.
    2. Harden off lettuce: over 7 to 14 days, while nights stay above 45 °F.
    3. Set out lettuce: good until May 15.
    4. Sow lettuce in the ground: good until May 29.
    ");
}

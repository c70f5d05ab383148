//! A garden without frost: the months that decide there, and the mornings that follow from them.

use crate::harness::{World, only, shown};

#[tokio::test(flavor = "multi_thread")]
async fn months_are_asked_for_until_they_are_understood() {
    let world = World::start("2026-08-10T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost none").await;
    insta::assert_snapshot!(fern.asks("summer, mostly").await.text, @"I could not read months in that. Which months are too hot, and which are wet? For example: hot June to September, wet June to October. Nothing changed.");
    insta::assert_snapshot!(fern.asks("hot January to December").await.text, @"If every month is hot or wet, nothing is left to plant in. Name only the hottest months and the wettest ones, for example: hot June to September, wet June to October. Nothing changed.");
    insta::assert_snapshot!(shown(&fern.asks("Hot June-September, rainy June to October").await), @"Noted: Hot June-September, rainy June to October. So I plan with planting from the beginning of September, until the heat is back in June. Ask me, for example, “when can I start beans?”");
    insta::assert_snapshot!(fern.asks("can I sow bush beans now?").await.text, @"
    Not yet. Wait until September 1 to sow bush beans in the ground.
    In your garden heat and rain decide: planting begins around September 1, and the heat is back around June 1, 2027.
    Best days: September 1 to March 31.
    Or: Sow bush beans indoors: go ahead, good until April 7, 2027.
    ");
    insta::assert_snapshot!(fern.asks("when do I sow cucumbers outside?").await.text, @"
    Cucumbers, counted by your hot and wet months:
    • Sow cucumbers in the ground: September 1 to February 12; worth it until February 19, 2027
    ");
    insta::assert_snapshot!(fern.asks("/grow lettuce, bush bean").await.text, @"
    On your list: lettuce and bush bean.
    You can sow lettuce indoors now, good until February 16, 2027.
    ");
    insta::assert_snapshot!(fern.asks("/settings").await.text, @"
    Your settings
    • Frost: no frost
    • Hot and wet months: Hot June-September, rainy June to October
    • Time zone: not given, so UTC
    • Reminders at 7:00 AM
    • Units: °F and inches
    • Language: English
    ");
    fern.news();
    // The season opens on 1 September.
    world.morning_of("2026-08-31").await;
    // The day before it is only coming.
    assert!(fern.news().iter().all(|m| !m.text.contains("Sow bush beans in the ground")));
    world.morning_of("2026-09-01").await;
    insta::assert_snapshot!(shown(&only(fern.news())), @"
    Good morning! Tuesday, September 1:
    1. Sow bush beans in the ground: good until March 31.
    [1 done] [later] [skip]
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn without_months_nothing_is_made_up() {
    let world = World::start("2026-08-10T12:00:00Z").await;
    let fern = world.member("Fern").await;
    fern.asks("/frost none").await;
    fern.asks("/grow lettuce").await;
    insta::assert_snapshot!(fern.asks("can I start cucumbers now?").await.text, @"
    Frost dates don't decide when to start cucumbers in your garden: it has no frost.
    Heat and the wet months decide there; your local extension service has planting dates for your area.
    I know no hot and wet months for this garden; send /frost none, and I ask for them and plan by them.
    ");
    world.morning_of("2026-09-01").await;
    assert!(fern.news().is_empty());
}

//! Trays in the chat.

use crate::harness::{Person, World, instant, shown};

async fn gardener(world: &World) -> Person {
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern
}

#[tokio::test(flavor = "multi_thread")]
async fn the_members_list_is_laid_out() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = gardener(&world).await;
    insta::assert_snapshot!(shown(&fern.asks("/trays").await), @"");
    fern.asks(
        "/grow tomato, pepper, basil, cucumber, melon, carrot, potato, zinnia, lettuce, onion",
    )
    .await;
    insta::assert_snapshot!(shown(&fern.asks("/trays").await), @"");
    assert_eq!(shown(&fern.asks("Lay out my trays").await), shown(&fern.asks("/trays").await));
    fern.asks("/drop all").await;
    fern.asks("/grow carrot, cucumber").await;
    world.set_clock(instant("2026-02-01T12:00:00Z")).await;
    insta::assert_snapshot!(shown(&fern.asks("/trays").await), @"");
}

#[tokio::test(flavor = "multi_thread")]
async fn crops_come_with_their_numbers() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = gardener(&world).await;
    let told = fern.asks("/trays tomato 12, basil 6").await;
    insta::assert_snapshot!(shown(&told), @"");
    for written in ["/trays 12 tomatoes and 6 basil", "lay out my trays for tomato: 12, basil x6"] {
        assert_eq!(shown(&fern.asks(written).await), shown(&told), "{written}");
    }
    insta::assert_snapshot!(shown(&fern.asks("/trays tomato, beans 12, frobnitz").await), @"");
}

#[tokio::test(flavor = "multi_thread")]
async fn what_cannot_be_laid_out_is_said() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = world.member("Fern").await;
    insta::assert_snapshot!(shown(&fern.asks("/trays tomato").await), @"");
    fern.asks("/frost none").await;
    insta::assert_snapshot!(shown(&fern.asks("/trays tomato").await), @"");
    fern.asks("/frost 05-15 10-05").await;
    for wrong in ["0", "501", "10,000", "-3", "a dozen and 2.5"] {
        let told = fern.asks(&format!("/trays basil 6, tomato {wrong}")).await.text;
        assert!(told.contains("give from 1 to 500"), "{wrong}: {told}");
    }
    insta::assert_snapshot!(shown(&fern.asks("/trays tomato, 12").await), @"");
    insta::assert_snapshot!(shown(&fern.asks("/trays ,").await), @"");
    insta::assert_snapshot!(shown(&fern.asks("/trays frobnitz 6").await), @"");
}

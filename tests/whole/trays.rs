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
    insta::assert_snapshot!(shown(&fern.asks("/trays").await), @"Your list is empty. Name the crops and their cells, like this: /trays tomato 12, basil 6");
    fern.asks(
        "/grow tomato, pepper, basil, cucumber, melon, carrot, potato, zinnia, lettuce, onion",
    )
    .await;
    insta::assert_snapshot!(shown(&fern.asks("/trays").await), @"
    Trays for what you sow indoors April 10–24:
    Tray 1, 48 cells of 1½ inches (heat 65–75 °F): tomatoes 6, peppers 6. Upright, out at 7–8 weeks.
    Tray 2, 36 cells of 2 inches (heat 70–80 °F): basil 6, zinnias 6 (sow April 17). Upright, out at 4–5 weeks. Keep it dark until they are up.
    Tray 3, 18 cells of 3 inches (heat 75–85 °F): cucumbers 6 (sow April 17), melons 6. Sprawling, out at 3–5 weeks.
    Tray 4, 48 cells of 1½ inches (heat 60–75 °F): lettuce 6. Small, out at 4–6 weeks. Keep it light until they are up.
    Pot up basil May 1–15, into pots of 3½ inches.
    Too late for a tray: onion.
    Better sown or planted where they grow: carrot, potato.
    ");
    assert_eq!(shown(&fern.asks("Lay out my trays").await), shown(&fern.asks("/trays").await));
    // What is sown already takes no cell.
    fern.asks("/drop all").await;
    fern.asks("/grow tomato, pepper").await;
    fern.asks("/now").await;
    fern.presses("1 done").await;
    insta::assert_snapshot!(shown(&fern.asks("/trays").await), @"
    Trays for what you sow indoors April 10–24:
    Tray 1, 48 cells of 1½ inches (heat 65–85 °F): tomatoes 6. Upright, out at 6–8 weeks.
    Sown or skipped already: pepper.
    ");
    fern.asks("/drop all").await;
    fern.asks("/grow carrot, cucumber").await;
    world.set_clock(instant("2026-02-01T12:00:00Z")).await;
    insta::assert_snapshot!(shown(&fern.asks("/trays").await), @"
    Nothing on your list is sown in a tray in the next two weeks.
    Not yet: cucumber (from April 17).
    Better sown or planted where they grow: carrot.
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn crops_come_with_their_numbers() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = gardener(&world).await;
    let told = fern.asks("/trays tomato 12, basil 6").await;
    insta::assert_snapshot!(shown(&told), @"
    Trays for what you sow indoors April 10–24:
    Tray 1, 48 cells of 1½ inches (heat 65–85 °F): tomatoes 12. Upright, out at 6–8 weeks.
    Tray 2, 36 cells of 2 inches (heat 65–80 °F): basil 6. Upright, out at 4–7 weeks.
    Pot up basil May 1–15, into pots of 3½ inches.
    ");
    for written in ["/trays 12 tomatoes and 6 basil", "lay out my trays for tomato: 12, basil x6"] {
        assert_eq!(shown(&fern.asks(written).await), shown(&told), "{written}");
    }
    insta::assert_snapshot!(shown(&fern.asks("/trays tomato, beans 12, frobnitz").await), @"
    Trays for what you sow indoors April 10–24:
    Tray 1, 48 cells of 1½ inches (heat 65–85 °F): tomatoes 6. Upright, out at 6–8 weeks.
    “bean” can mean bush beans, pole beans, or runner beans: name one of them.
    I don't know “frobnitz”. Try its everyday name, such as “tomato”.
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn what_cannot_be_laid_out_is_said() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = world.member("Fern").await;
    insta::assert_snapshot!(shown(&fern.asks("/trays tomato").await), @"For that I need your frost dates. Send them like this: /frost 05-15 10-05");
    fern.asks("/frost none").await;
    insta::assert_snapshot!(shown(&fern.asks("/trays tomato").await), @"Your garden has no frost, so frost dates don't say what to start now. Heat and the wet months decide; your local extension service has planting dates for your area.");
    fern.asks("/frost 05-15 10-05").await;
    for wrong in ["0", "501", "10,000", "-3", "a dozen and 2.5"] {
        let told = fern.asks(&format!("/trays basil 6, tomato {wrong}")).await.text;
        assert!(told.contains("give from 1 to 500"), "{wrong}: {told}");
    }
    insta::assert_snapshot!(shown(&fern.asks("/trays tomato, 12").await), @"“12” cells of what? Send each crop with its number, like this: /trays tomato 12, basil 6");
    insta::assert_snapshot!(shown(&fern.asks("/trays ,").await), @"Which crops, and how many cells of each? Send them like this: /trays tomato 12, basil 6");
    insta::assert_snapshot!(shown(&fern.asks("/trays asters 6, endives 3").await), @"
    Trays for what you sow indoors April 10–24:
    Tray 1, 48 cells of 1½ inches (heat 65–70 °F): China asters 6. Upright, out at 6–8 weeks.
    Tray 2, 48 cells of 1½ inches (heat 60–75 °F): endives 3. Small, out at 4–6 weeks.
    “aster” can mean two plants. Do you mean the hardy perennial aster (Michaelmas daisy)? I have no dates for that; this is for the other one.
    “endive” can mean two plants. Do you mean Belgian endive (chicory)? I have no dates for that; this is for the other one.
    ");
    insta::assert_snapshot!(shown(&fern.asks("/trays frobnitz 6").await), @"I don't know “frobnitz”. Try its everyday name, such as “tomato”.");
}

//! Members' own varieties: told, pasted, asked about, followed, removed and taken back; and
//! whether a crop ripens.

use crate::harness::{Person, World, only, shown};

const LANTERN: &str =
    "tomato Early Lantern: start indoors 6-8 weeks before last frost, 75 days from transplant";

async fn grower(world: &World) -> Person {
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern
}

#[tokio::test(flavor = "multi_thread")]
async fn reminders_follow_the_packet_and_undo_brings_the_crops_figures_back() {
    let world = World::start("2026-03-18T12:00:00Z").await;
    let fern = grower(&world).await;
    let noted = fern.asks(&format!("/variety {LANTERN}")).await;
    insta::assert_snapshot!(shown(&noted), @"
    Noted: tomato “Early Lantern”, start indoors 6–8 weeks before the last frost and 75 days to harvest from setting out. I reckon with that from now on.
    On your list: tomato.
    [Undo]
    ");
    let mine = fern.asks("/mycrops").await.text;
    assert!(
        mine.contains("• tomato “Early Lantern”: sow tomatoes indoors from March 20"),
        "{mine}"
    );
    // Eight weeks before 15 May, a week before the crop's own first day.
    world.morning_of("2026-03-20").await;
    let morning = only(fern.news()).text;
    assert!(morning.contains("Sow tomatoes indoors: good until April 3."), "{morning}");
    let notice = fern.presses_under(&noted, "Undo").await;
    assert_eq!(notice.as_deref(), Some("Taken back."));
    assert!(fern.asks("/variety").await.text.starts_with("Tell me what a packet says"));
    let verdict = fern.asks("can I start tomatoes now?").await.text;
    assert!(verdict.contains("27"), "the crop's own first day: {verdict}");
    assert!(!verdict.contains("packet"), "{verdict}");
}

#[tokio::test(flavor = "multi_thread")]
async fn several_varieties_stand_side_by_side() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = grower(&world).await;
    fern.asks(&format!("/variety {LANTERN}")).await;
    let pasted = "Amber Bell Tomato\nStart indoors 8–10 weeks before your last frost date.\n\
                  Days to maturity: 95-100 (from transplant). Sow ¼ inch deep.";
    let noted = fern.asks(pasted).await.text;
    assert!(noted.starts_with("Noted: tomato “Amber Bell”, start indoors 8–10 weeks"), "{noted}");
    assert!(noted.contains("follow it now"), "{noted}");
    let both = fern.asks("can I start Early Lantern and Amber Bell tomatoes now?").await.text;
    insta::assert_snapshot!(both, @"
    Late, but still worth it: sow tomatoes indoors today.
    By your packet of tomato “Early Lantern”: start indoors 6–8 weeks before the last frost and 75 days to harvest from setting out.
    Best days: until April 3. Expect about 7 days less of picking.
    Last day worth it: May 9.

    It is too late to sow tomatoes indoors this season.
    By your packet of tomato “Amber Bell”: start indoors 8–10 weeks before the last frost, 95–100 days to harvest from setting out, and ¼ inch deep.
    Last day worth it: April 7.
    Instead, buy young plants: they can go out from May 22.
    Next season's good days begin on March 6, 2027.
    ");
    let bare = fern.asks("when do I sow tomatoes?").await.text;
    assert!(bare.contains("“Amber Bell”"), "the one told last is meant: {bare}");
    insta::assert_snapshot!(shown(&fern.asks("/variety").await), @"
    Your varieties:
    1. tomato “Early Lantern”: start indoors 6–8 weeks before the last frost and 75 days to harvest from setting out
    2. tomato “Amber Bell”: start indoors 8–10 weeks before the last frost, 95–100 days to harvest from setting out, and ¼ inch deep (plans and reminders follow this one)
    [1 follow] [1 remove]
    [2 remove]
    ");
    fern.presses("1 follow").await;
    assert_eq!(fern.last().text, "Plans and reminders follow tomato “Early Lantern” now.");
    let bare = fern.asks("when do I sow tomatoes?").await.text;
    assert!(bare.contains("“Early Lantern”"), "{bare}");
    // A sowing told by its name is of that variety.
    let sown = fern.asks("sowed 12 Early Lantern tomatoes today").await.text;
    let noted = "Noted: 12 tomatoes “Early Lantern”, sown indoors on April 10.";
    assert!(sown.starts_with(noted), "{sown}");
    let removed = fern.asks("/variety remove amber bell").await.text;
    assert!(removed.starts_with("Forgotten: tomato “Amber Bell”."), "{removed}");
    let undone = fern.asks("/undo").await.text;
    assert_eq!(undone, "As it was before: tomato “Amber Bell”.");
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_wrong_with_a_packet_is_said_and_changes_nothing() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = grower(&world).await;
    for (said, begins) in [
        ("tomato: 0 days to maturity", "0 days to harvest can't be right, so nothing changed."),
        ("tomato: 400 days", "400 days to harvest can't be right, so nothing changed."),
        ("tomato: start indoors 30 weeks before last frost", "30 weeks indoors can't be right"),
        ("Early Lantern: 75 days", "Which crop is that packet of?"),
        ("tomato Early Lantern", "I found no number of a seed packet there"),
        ("tomato basil: 75 days", "I read two crops there, tomato and basil."),
        ("tomato Now: 75 days", "“Now” is too common a word"),
        ("squash Moonrise: 75 days", "“squash” can mean"),
        ("remove Golden Gopher", "I know no variety “Golden Gopher” of yours"),
        (
            "tomato The Very Long Name Of A Variety That Nobody Would Ever Print Whole: 75 days",
            "A variety's name has at most 40 characters",
        ),
    ] {
        let answer = fern.asks(&format!("/variety {said}")).await.text;
        assert!(answer.starts_with(begins), "{said}: {answer}");
    }
    assert_eq!(world.count("SELECT count(*) FROM varieties").await, 0);
    assert!(fern.asks("/variety").await.text.starts_with("Tell me what a packet says"));
    // It waits for a packet now, and a question is still a question.
    assert!(fern.asks("can I start basil now?").await.text.contains("basil"));
    let noted = fern.asks("carrot: start indoors 4 weeks before last frost, 70 days").await.text;
    assert!(noted.contains("Carrots are not raised indoors here"), "{noted}");
}

#[tokio::test(flavor = "multi_thread")]
async fn starts_and_names_are_read_as_packets_write_them() {
    let world = World::start("2026-04-10T12:00:00Z").await;
    let fern = grower(&world).await;
    for (said, noted) in [
        (
            "tomato Amber Bell: Start 6-8 weeks before last frost, transplant out when nights are above 50F",
            "Noted: tomato “Amber Bell”, start indoors 6–8 weeks before the last frost.",
        ),
        (
            "pepper Aldo: start 8 weeks before last frost and set out 2 weeks after last frost",
            "Noted: pepper “Aldo”, start indoors 8 weeks before the last frost and set out 2 weeks after",
        ),
        (
            "pea Alder: plant 4-6 weeks before last frost",
            "Noted: pea “Alder”, sow in the ground 4–6 weeks before the",
        ),
        (
            "pea Alder Two: sow as soon as soil can be worked, 4-6 weeks before last frost",
            "Noted: pea “Alder Two”, sow in the ground 4–6 weeks before the last frost",
        ),
        ("tomato Sunrise F1: 57 days", "Noted: tomato “Sunrise F1”, 57 days to harvest"),
        ("tomato Sweet 100, 65 days", "Noted: tomato “Sweet 100”, 65 days to harvest"),
        ("tomato 4th of July: 49 days", "Noted: tomato “4th of July”, 49 days to harvest"),
        ("pepper Long One: 70 days", "Noted: pepper “Long One”, 70 days to harvest"),
    ] {
        let answer = fern.asks(&format!("/variety {said}")).await.text;
        assert!(answer.starts_with(noted), "{said}: {answer}");
    }
    let verdict = fern.asks("can I start Sunrise F1 now?").await.text;
    assert!(verdict.contains("“Sunrise F1”"), "{verdict}");
}

#[tokio::test(flavor = "multi_thread")]
async fn in_the_group_a_bare_name_is_everybodys_crop() {
    let world = World::start("2026-03-20T12:00:00Z").await;
    let fern = grower(&world).await;
    fern.asks(&format!("/variety {LANTERN}")).await;
    let ash = world.person("Ash");
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&fern]);
    club.hears(&ash, "/club frost 05-15 10-05").await;
    let bare = club.hears(&fern, "/ask can I start tomatoes now?").await.text;
    assert!(!bare.contains("packet"), "{bare}");
    let named = club.hears(&fern, "/ask can I start Early Lantern now?").await.text;
    assert!(named.contains("By your packet of tomato “Early Lantern”"), "{named}");
}

#[tokio::test(flavor = "multi_thread")]
async fn whether_a_sowing_ripens_counts_from_its_own_day() {
    let world = World::start("2026-06-20T12:00:00Z").await;
    let fern = grower(&world).await;
    insta::assert_snapshot!(fern.asks("will melons ripen?").await.text, @"
    Tight: melons may just make it, with 13 days to spare at best.
    If you sow melons indoors on June 20, count on the first around September 22 to October 2. Your first frost is around October 5; about one autumn in ten freezes by September 20.
    What would help:
    • next time an earlier start: sow melons indoors by June 8, 2027
    • a faster or smaller variety, of at most 78 days from sowing
    • cover in autumn: medium fleece keeps frost off down to about 28 °F, a heavy frost blanket down to about 25 °F
    ");
    fern.asks("/sown melons indoors on 2 May").await;
    insta::assert_snapshot!(fern.asks("will my melons ripen?").await.text, @"
    Yes, in time: the first melons around July 21–31.
    Counted from your sowing indoors on May 2. The season ends around October 5: 66 days to spare at the slow end.
    ");
    let when = fern.asks("when can I harvest melons?").await.text;
    assert!(when.starts_with("The first melons: around July"), "{when}");
    // A day that is named asks what would be.
    let other = fern.asks("will melons ripen if I sow them on July 20?").await.text;
    assert!(other.starts_with("No: melons will not make it"), "{other}");
}

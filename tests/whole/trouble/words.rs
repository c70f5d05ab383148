//! Texts that nobody expects.

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

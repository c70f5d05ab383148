//! Which language a member is spoken to in: their own choice first, then their club's, then their
//! app's.

use serde_json::Value;

use crate::harness::{World, only, shown};

const SPRING: &str = "2026-04-16T12:00:00Z";

#[tokio::test(flavor = "multi_thread")]
async fn the_app_chooses_until_the_club_or_the_member_does() {
    let world = World::start(SPRING).await;
    let greta = world.person_reading("Greta", "de");
    assert!(greta.asks("/start").await.text.contains("/frost 05-15 10-05"));
    insta::assert_snapshot!(shown(&greta.asks("/drop Tomaten").await), @"Deine Liste ist leer, da gibt es nichts wegzunehmen.");
    greta.asks("/frost 15.5. 5.10.").await;
    greta.asks("/grow Gurken").await;
    greta.news();
    world.morning_of("2026-04-17").await;
    insta::assert_snapshot!(shown(&only(greta.news())), @"
    Guten Morgen! Freitag, 17. April:
    1. Gurken drinnen aussäen: gut bis zum 1. Mai.
    [1 erledigt] [später] [auslassen]
    ");

    // The group has no language, and each is answered in that of their app.
    let ash = world.member("Ash").await;
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&greta]);
    club.hears(&ash, "/club frost 05-15 10-05").await;
    insta::assert_snapshot!(club.hears(&greta, "/ask wie tief säe ich Erbsen?").await.text, @"
    Erbsen:
    • 1,3–2,5 cm tief säen
    • Boden am besten 18–24 °C, mindestens 4 °C
    • Keimdauer 6–9 Tage
    • Abstand 5 cm, Reihen 45 cm
    Vorsicht: Samen kann gebeizt sein. Lies die Packung, trag Handschuhe und halte Kinder und Tiere fern.
    ");
    insta::assert_snapshot!(club.hears(&ash, "/ask how deep do I sow peas?").await.text, @"
    Peas:
    • sow ½–1 inch deep
    • soil 65–75 °F is best, at least 40 °F
    • up in 6–9 days
    • 2 inches apart, rows 18 inches apart
    Care: seed may be treated. Read the packet, wear gloves, and keep it from children and animals.
    ");
    insta::assert_snapshot!(club.hears(&ash, "/club language fr").await.text, @"La langue du club : Français.");
    insta::assert_snapshot!(club.hears(&greta, "/ask à quelle profondeur semer les pois ?").await.text, @"
    Les petits pois :
    • sème à une profondeur de 1,3 à 2,5 cm
    • terre de 18 à 24 °C de préférence, de 4 °C au moins
    • levée en 6 à 9 jours
    • 5 cm entre les plants, 45 cm entre les rangs
    Attention : les graines peuvent être traitées. Lis le sachet, mets des gants, et tiens-les loin des enfants et des animaux.
    ");
    greta.news();
    assert!(greta.asks("/settings").await.text.contains("Français"));
    greta.asks("/grow zinnias").await;
    greta.news();
    world.morning_of("2026-04-18").await;
    insta::assert_snapshot!(shown(&only(greta.news())), @"
    Bonjour ! Au programme ce samedi 18 avril :
    1. Semer les zinnias à l’intérieur : c’est bon jusqu’au 1er mai.
    [1 fait] [plus tard] [laisser]
    ");

    // Their own choice holds before both.
    greta.news();
    greta.asks("/settings").await;
    greta.presses("Langue").await;
    greta.presses("Español").await;
    insta::assert_snapshot!(shown(&greta.last()), @"Desde ahora te hablo en este idioma: Español.");
    assert!(
        club.hears(&greta, "/ask ¿a qué profundidad siembro guisantes?").await.text.contains("cm")
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn the_app_is_followed_when_it_is_set_anew_and_kept_among_the_members_data() {
    let world = World::start(SPRING).await;
    let greta = world.person_reading("Greta", "de");
    assert!(greta.asks("/help").await.text.contains("Ich beantworte Fragen"));
    let mut user = world.platform.user(greta.id);
    user.language_code = Some("fr".to_owned());
    world.platform.set_user(user.clone());
    assert!(greta.asks("/help").await.text.contains("Je réponds à des questions"));
    // An app that does not tell its language changes nothing.
    user.language_code = None;
    world.platform.set_user(user);
    assert!(greta.asks("/help").await.text.contains("Je réponds à des questions"));
    greta.news();
    greta.writes("/export");
    world.quiet().await;
    let file = only(greta.news()).file.clone().expect("a file");
    let all: Value = serde_json::from_slice(&file.bytes).expect("JSON");
    assert_eq!(all["members"][0]["app_language"], "fr");
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_reads_a_language_that_is_not_spoken_is_answered_in_english() {
    let world = World::start(SPRING).await;
    let daan = world.person_reading("Daan", "nl");
    daan.asks("/start").await;
    let page = daan.asks("/settings").await.text;
    assert!(page.contains("• Language: English") && page.contains("°C and cm"), "{page}");
}

/// The words that people type in their own language: what shares an answer, what forgets.
#[tokio::test(flavor = "multi_thread")]
async fn an_answer_is_shared_and_all_is_forgotten_in_each_language() {
    for (language, own, shared, list, word, gone) in [
        ("de", "privat", "/mycrops öffentlich", "Tomate", "Vergiss mich!", "gelöscht"),
        ("es", "en privado", "/mycrops compartir", "Tomate", "olvidame", "se borró todo"),
        ("fr", "en privé", "/mycrops partager", "Tomate", "oublie moi", "est effacé"),
    ] {
        let world = World::start(SPRING).await;
        let member = world.person_reading("Robin", language);
        member.asks("/start").await;
        member.asks("/grow tomate").await;
        let club = world.club("Hillside Growers", &world.member("Ash").await).await;
        club.welcomes(&[&member]);
        let answer = club.hears(&member, "/mycrops").await.text;
        assert!(answer.contains(own), "{language}: {answer}");
        let answer = club.hears(&member, shared).await.text;
        assert!(answer.to_lowercase().contains(&list.to_lowercase()), "{language}: {answer}");
        member.news();
        member.asks("/forget").await;
        let answer = member.asks(word).await.text;
        assert!(answer.contains(gone), "{language}: {answer}");
    }
}

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
    insta::assert_snapshot!(shown(&greta.asks("/drop Tomaten").await), @"");
    greta.asks("/frost 15.5. 5.10.").await;
    greta.asks("/grow Gurken").await;
    greta.news();
    world.morning_of("2026-04-17").await;
    insta::assert_snapshot!(shown(&only(greta.news())), @"");

    // The group has no language, and each is answered in that of their app.
    let ash = world.member("Ash").await;
    let club = world.club("Hillside Growers", &ash).await;
    club.welcomes(&[&greta]);
    club.hears(&ash, "/club frost 05-15 10-05").await;
    insta::assert_snapshot!(club.hears(&greta, "/ask wie tief säe ich Erbsen?").await.text, @"");
    insta::assert_snapshot!(club.hears(&ash, "/ask how deep do I sow peas?").await.text, @"");
    insta::assert_snapshot!(club.hears(&ash, "/club language fr").await.text, @"");
    insta::assert_snapshot!(club.hears(&greta, "/ask à quelle profondeur semer les pois ?").await.text, @"");
    greta.news();
    assert!(greta.asks("/settings").await.text.contains("Français"));
    world.morning_of("2026-04-18").await;

    // Their own choice holds before both.
    greta.news();
    greta.asks("/settings").await;
    greta.presses("Langue").await;
    greta.presses("Español").await;
    insta::assert_snapshot!(shown(&greta.last()), @"");
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

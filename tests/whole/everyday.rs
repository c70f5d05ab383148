//! Everyday words: what members write without thinking of commands.

use crate::harness::{Person, World, shown};

const SPRING: &str = "2026-04-22T12:00:00Z";

async fn grower(world: &World) -> Person {
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern
}

#[tokio::test(flavor = "multi_thread")]
async fn frost_dates_in_figures_are_read_or_asked_about() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    insta::assert_snapshot!(shown(&fern.asks("/frost 5/15 10/5").await), @"
    Noted for your garden: last frost around May 15, first frost around October 5. That is a season of 143 days.
    Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
    [They are averages] [I trust them]
    [Undo]
    ");
    let asked = fern.asks("/frost 5/6 10/5").await;
    insta::assert_snapshot!(shown(&asked), @"
    Does the month stand first there, or the day? Press what you mean. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
    [Last frost around May 6, first frost around October 5]
    [Last frost around June 5, first frost around May 10]
    ");
    fern.presses("Last frost around May 6, first frost around October 5").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    Noted for your garden: last frost around May 6, first frost around October 5. That is a season of 152 days.
    [Undo]
    ");
    insta::assert_snapshot!(shown(&fern.asks("my last frost is 5/6").await), @"
    Does the month stand first there, or the day? Press what you mean. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
    [Last frost around May 6, first frost around October 5]
    [Last frost around June 5, first frost around October 5]
    ");
    // Whoever reads British English writes the day first.
    let moss = world.person_reading("Moss", "en-GB");
    moss.asks("/start").await;
    assert!(moss.asks("/frost 5/6 5/10").await.text.contains("5 June"));
    let ash = world.person_reading("Ash", "en-US");
    ash.asks("/start").await;
    assert!(ash.asks("/frost 5/6 10/5").await.text.contains("May 6"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_hold_ends_on_a_day_that_is_named() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    // 22 April 2026 is a Wednesday.
    insta::assert_snapshot!(shown(&fern.asks("/hold until Friday").await), @"
    Held until April 24: I name no hardening off and no setting out before then.
    Nothing on your list was to be hardened off or set out before then.
    [Undo]
    ");
    insta::assert_snapshot!(shown(&fern.asks("hold until next Monday").await), @"
    Held until April 27: I name no hardening off and no setting out before then.
    Nothing on your list was to be hardened off or set out before then.
    [Undo]
    ");
    for bad in [
        "/hold until 1 January",
        "/hold until 31 February",
        "/hold until the frost is over",
        "/hold until today",
    ] {
        let refused = fern.asks(bad).await.text;
        assert!(
            refused.contains("1 to 60 days") && refused.contains("Nothing changed"),
            "{refused}"
        );
    }
    assert!(fern.asks("/hold").await.text.contains("April 27"));
}

#[tokio::test(flavor = "multi_thread")]
async fn plants_that_were_set_out_are_ticked_off() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    fern.asks("/grow tomato").await;
    fern.asks("sowed 6 broccoli on 20 March").await;
    fern.asks("sowed 12 broccoli on 1 April").await;
    insta::assert_snapshot!(shown(&fern.asks("planted out 6 broccoli today").await), @"
    Noted as set out on April 22: broccoli.
    [Undo]
    ");
    insta::assert_snapshot!(fern.asks("/sowings").await.text, @"
    2 sowings:
    1. 6 broccoli, sown indoors on March 20. Next: pick the first broccoli, from July 1
    2. 12 broccoli, sown indoors on April 1. Now: look for seedlings of broccoli
    ");
    insta::assert_snapshot!(shown(&fern.asks("I planted the tomatoes out yesterday").await), @"
    Noted as set out on April 21: tomatoes.
    That is early for tomatoes: cover them on cold nights. Their good days begin on May 22.
    [Undo]
    ");
    fern.presses("Undo").await;
    let mut told = Vec::new();
    for text in [
        "planted out 3 zucchini",
        "planted out tomatoes tomorrow",
        "planted out sqwzx",
        "planted out 6 broccoli on 31 April",
    ] {
        let before = world.count("SELECT count(*) FROM job_marks").await;
        told.push(format!("{text}\n{}", fern.asks(text).await.text));
        assert_eq!(world.count("SELECT count(*) FROM job_marks").await, before, "{text}");
    }
    insta::assert_snapshot!(told.join("\n\n"), @"
    planted out 3 zucchini
    Nothing to tick off: no sowing of summer squash waits to go out, and your plan has no setting out of it. /grow puts a crop on your list.

    planted out tomatoes tomorrow
    April 23 is still to come, so nothing changed. Tell me once they are out.

    planted out sqwzx
    I don't know “sqwzx”. Try its everyday name, such as “tomato”.

    planted out 6 broccoli on 31 April
    I know no day “31 April”, so nothing changed. Like this: planted out 6 broccoli on 3 May
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn plants_that_died_end_their_sowing_and_the_answer_says_when_to_sow_again() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    insta::assert_snapshot!(shown(&fern.asks("the cucumbers died").await), @"
    I am sorry. I have no sowing of cucumbers noted, so nothing changed.
    You can sow cucumbers again now; that is worth it until July 16.
    ");
    fern.asks("sowed 6 cucumbers today").await;
    insta::assert_snapshot!(shown(&fern.asks("half of my cucumbers died").await), @"I am sorry about those. As not all of your cucumbers are gone, nothing changed. If all are, tell me: “all my cucumbers died”.");
    insta::assert_snapshot!(shown(&fern.asks("the cucumbers died").await), @"
    I am sorry. Noted that they are gone: 6 cucumbers, sown indoors on April 22.
    You can sow cucumbers again now; that is worth it until July 16.
    [Sown again today]
    [Undo]
    ");
    insta::assert_snapshot!(fern.asks("/sowings").await.text, @"I know of no sowing of yours that still grows. Tell me what you sow, like this: /sown basil 12 on 3 April");
    fern.asks("/undo").await;
    fern.asks("sowed 4 cucumbers yesterday").await;
    let asked = fern.asks("slugs ate my cucumbers").await;
    insta::assert_snapshot!(shown(&asked), @"
    I am sorry. Which of them?
    [6 cucumbers, sown indoors on April 22]
    [4 cucumbers, sown indoors on April 21]
    ");
    fern.presses("4 cucumbers, sown indoors on April 21").await;
    insta::assert_snapshot!(shown(&fern.last()), @"
    I am sorry. Noted that they are gone: 4 cucumbers, sown indoors on April 21.
    You can sow cucumbers again now; that is worth it until July 16.
    [Sown again today]
    [Undo]
    ");
    insta::assert_snapshot!(fern.asks("/sowings").await.text, @"
    One sowing:
    1. 6 cucumbers, sown indoors on April 22. Next: look for seedlings of cucumbers, from April 30
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_sown_is_shown_to_who_asks() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    fern.asks("sowed 6 basil on 20 March").await;
    let list = fern.asks("/sowings").await.text;
    for text in ["did I sow basil?", "when did I sow the basil", "have I sown peas?"] {
        assert_eq!(fern.asks(text).await.text, list, "{text}");
    }
    let text = fern.asks("can I sow peas, leeks, kale and cucumbers in July?").await.text;
    assert!(text.starts_with("Reckoned for July 1:\n"), "{text}");
}

#[tokio::test(flavor = "multi_thread")]
async fn stop_changes_nothing_and_thanks_are_answered_in_private_only() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    fern.asks("/grow tomato").await;
    insta::assert_snapshot!(shown(&fern.asks("Stop!").await), @"
    Nothing has changed yet. You decide how much you hear from me:
    • for a while: /holiday until 3 July
    • on some days of the week: /quiet Sunday
    • no reminders any more: /drop all takes your crops off
    • leave altogether: /forget deletes all that I keep about you
    [Pause until a day] [Quiet days]
    ");
    assert_eq!(world.count("SELECT count(*) FROM member_crops").await, 1);
    insta::assert_snapshot!(shown(&fern.asks("Thanks a lot!").await), @"You are welcome. May it all come up!");
    assert!(fern.asks("thanks, and when do I sow leeks?").await.text.contains("leeks"));
    let ash = world.member("Ash").await;
    let club = world.club("Elm Row", &ash).await;
    club.welcomes(&[&fern]);
    let answer = club.hears(&fern, "/ask how deep do I sow peas?").await;
    let said = club.replies(&fern, &answer, "Thank you!");
    club.silence_after(said).await;
    // Who says thanks may still answer what was asked.
    fern.asks("/grow").await;
    fern.asks("thanks").await;
    assert!(fern.asks("leeks").await.text.contains("On your list: leek"));
}

#[tokio::test(flavor = "multi_thread")]
async fn terms_of_the_trade_are_explained() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    let mut told = Vec::new();
    for text in [
        "what is hardening off?",
        "what's succession sowing",
        "what is a cover",
        "What is last frost date?",
        "explain the first frost",
        "what does potting up mean?",
        "what is setting out",
    ] {
        told.push(format!("{text}\n{}", fern.asks(text).await.text));
    }
    insta::assert_snapshot!(told.join("\n\n"), @"
    what is hardening off?
    Hardening off is getting seedlings from indoors used to sun, wind and cool nights before they stay outside: some hours in the shade at first, then longer and sunnier each day, for one to two weeks. I name it 14 to 7 days before setting out; on nights below 45 °F take them in (University of Maryland Extension, 2023).

    what's succession sowing
    Succession is sowing a little again every so often, so that there is always some to pick. After each sowing I name the next one at the crop's own interval, for as long as it is worth sowing in the ground; where summer heat ends a crop, the autumn sowings begin a series of their own.

    what is a cover
    Cover is what keeps cold off a bed, and I count on it like this: fleece brings crops that bear cold two weeks forward and tender ones not at all (common practice; it keeps off only light frost, Colorado State University Extension), a cold frame crops that bear cold by three weeks (University of Vermont Extension), a tunnel all of them by three weeks (common practice). Tell me what you have with /place.

    What is last frost date?
    Your average last frost is the day after which it still freezes in one spring of two; frost is air at 32 °F (0 °C) or below. A date you trust is one after which only about one spring in ten still freezes, and I take it to lie 15 days later (Moyer, University of Delaware, 1970). Sowing dates are counted back from there.
    I reckon here with: last frost around May 15, first frost around October 5.

    explain the first frost
    Your average first frost is the day before which it has frozen in one autumn of two; frost is air at 32 °F (0 °C) or below. About one autumn in ten has frozen 15 days earlier, so what ripens before that is safe. Autumn sowings are counted back from the first frost.
    I reckon here with: last frost around May 15, first frost around October 5.

    what does potting up mean?
    Potting up is moving a seedling into a larger pot before its roots fill the cell. I name it three to four weeks after sowing, once true leaves have opened, for crops that gain by it (common practice).

    what is setting out
    Setting out is planting seedlings from indoors into the garden. Its days begin so many weeks before or after your average last frost as the crop's class says, and for crops that frost kills not before the date you trust; then the week's nights decide.
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_same_words_are_understood_in_other_languages() {
    let world = World::start(SPRING).await;
    let mut told = Vec::new();
    for (language, sown, texts) in [
        (
            "de",
            "ich habe am 20. März 6 Brokkoli gesät",
            [
                "Ich habe heute 6 Brokkoli ausgepflanzt",
                "die Hälfte der Brokkoli ist eingegangen",
                "die Brokkoli sind eingegangen",
                "/hold bis Freitag",
                "Danke schön!",
                "Stopp!",
                "Was ist Abhärten?",
            ],
        ),
        (
            "es",
            "sembré 6 brócolis el 20 de marzo",
            [
                "hoy trasplanté 6 brócolis",
                "se murieron la mitad de los brócolis",
                "se murieron los brócolis",
                "/hold hasta el viernes",
                "¡Muchas gracias!",
                "¡Basta!",
                "¿Qué es aclimatar?",
            ],
        ),
        (
            "fr",
            "j’ai semé 6 brocolis le 20 mars",
            [
                "j’ai planté 6 brocolis aujourd’hui",
                "la moitié des brocolis sont morts",
                "les brocolis sont morts",
                "/hold jusqu’à vendredi",
                "Merci beaucoup !",
                "Stop !",
                "C’est quoi l’endurcissement ?",
            ],
        ),
    ] {
        let member = world.person_reading(language, language);
        for text in ["/start", "/frost 05-15 10-05", sown] {
            member.asks(text).await;
        }
        told.push(language.to_owned());
        for said in texts {
            let answer = member.asks(said).await.text;
            told.push(format!("{said}\n  {}", answer.lines().next().unwrap_or_default()));
        }
    }
    insta::assert_snapshot!(told.join("\n"), @"
    de
    Ich habe heute 6 Brokkoli ausgepflanzt
      Notiert, ausgepflanzt am 22. April: Brokkoli.
    die Hälfte der Brokkoli ist eingegangen
      Das tut mir leid. Weil noch etwas übrig ist (Brokkoli), hat sich nichts geändert. Wenn alles hin ist, sag mir: „alle eingegangen: Brokkoli“.
    die Brokkoli sind eingegangen
      Das tut mir leid. Notiert, dass es damit vorbei ist: 6 × Brokkoli, am 20. März drinnen gesät.
    /hold bis Freitag
      Pause bis zum 24. April: So lange erinnere ich dich nicht ans Abhärten und Auspflanzen.
    Danke schön!
      Gern geschehen. Möge alles gut aufgehen!
    Stopp!
      Noch hat sich nichts geändert. Du bestimmst, wie viel du von mir hörst:
    Was ist Abhärten?
      Abhärten heißt, Sämlinge von drinnen an Sonne, Wind und kühle Nächte zu gewöhnen, bevor sie draußen bleiben: erst einige Stunden im Schatten, dann jeden Tag länger und sonniger, ein bis zwei Wochen lang. Ich nenne es 14 bis 7 Tage vor dem Auspflanzen; hol sie in Nächten unter 7 °C herein (University of Maryland Extension, 2023).
    es
    hoy trasplanté 6 brócolis
      Anotado, al aire libre desde el 22 de abril: brócoli.
    se murieron la mitad de los brócolis
      Lo siento. Como aún queda algo de brócoli, nada cambió. Si se perdió todo, dime: “perdí todo: brócoli”.
    se murieron los brócolis
      Lo siento. Anoto que se perdió: brócoli (6), siembra en interior del 20 de marzo.
    /hold hasta el viernes
      En pausa hasta el 24 de abril: hasta entonces no nombro nada que aclimatar ni trasplantar.
    ¡Muchas gracias!
      De nada. ¡Que brote todo!
    ¡Basta!
      Todavía no cambió nada. Tú decides cuánto sabes de mí:
    ¿Qué es aclimatar?
      Aclimatar es acostumbrar al sol, al viento y a las noches frescas las plántulas que crecieron dentro, antes de que se queden fuera: primero unas horas a la sombra, después cada día más tiempo y más sol, durante una o dos semanas. Lo nombro de 14 a 7 días antes del trasplante; en noches de menos de 7 °C éntralas (University of Maryland Extension, 2023).
    fr
    j’ai planté 6 brocolis aujourd’hui
      C’est noté, au jardin depuis le 22 avril : les brocolis.
    la moitié des brocolis sont morts
      Je suis désolé. Comme il en reste (les brocolis), rien n’a changé. Si tout est perdu, dis-moi : « tout est mort : les brocolis ».
    les brocolis sont morts
      Je suis désolé. C’est noté, il n’en reste rien : les brocolis (6), semis intérieur du 20 mars.
    /hold jusqu’à vendredi
      En pause jusqu’au 24 avril : d’ici là, je ne te dis pas d’endurcir ni de planter au jardin.
    Merci beaucoup !
      Avec plaisir. Que tout lève bien !
    Stop !
      Rien n’a encore changé. C’est toi qui décides de ce que je t’écris :
    C’est quoi l’endurcissement ?
      L’endurcissement habitue au soleil, au vent et aux nuits fraîches les plants venus de l’intérieur, avant qu’ils restent dehors : d’abord quelques heures à l’ombre, puis chaque jour plus longtemps et plus au soleil, pendant une à deux semaines. Je le nomme 14 à 7 jours avant la plantation ; rentre-les les nuits sous 7 °C (University of Maryland Extension, 2023).
    ");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_dropped_list_and_an_unknown_setting_of_the_club_have_their_words() {
    let world = World::start(SPRING).await;
    let fern = grower(&world).await;
    fern.asks("/grow tomato, basil, leek").await;
    let dropped = fern.asks("/drop everything").await;
    insta::assert_snapshot!(shown(&dropped), @"
    Off your list: tomato, basil, and leek.
    [Undo]
    ");
    fern.presses_under(&dropped, "Undo").await;
    assert_eq!(world.count("SELECT count(*) FROM member_crops").await, 3);
    let ash = world.member("Ash").await;
    let club = world.club("Elm Row", &ash).await;
    let page = club.hears(&ash, "/club weather").await.text;
    let first = page.lines().next().unwrap_or_default();
    insta::assert_snapshot!(first, @"I don't know the setting “weather”, so nothing changed.");
}

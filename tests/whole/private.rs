//! A member's private chat: frost dates, crops, zone, hour, settings, and questions.

use crate::harness::{Person, World, shown};

const SPRING: &str = "2026-04-10T12:00:00Z";

/// A member whose frosts are known and whose zone is UTC by choice.
async fn gardener(world: &World) -> Person {
    let fern = world.member("Fern").await;
    fern.asks("/frost 05-15 10-05").await;
    fern
}

mod frost {
    use super::*;

    #[tokio::test(flavor = "multi_thread")]
    async fn dates_come_in_digits_and_in_words() {
        let world = World::start(SPRING).await;
        for (name, written) in [
            ("Digits", "/frost 05-15 10-05"),
            ("Month first", "/frost May 15 and October 5"),
            ("Day first", "/frost 15 May, 5 Oct"),
            ("With words", "/frost last frost May 15th, first frost October 5th"),
            ("The other order", "/frost first frost October 5, last frost May 15"),
            ("As a sentence", "My last frost is May 15 and my first frost is October 5."),
            ("As an answer", "05-15 10-05"),
        ] {
            let person = world.member(name).await;
            let answer = person.asks(written).await;
            insta::allow_duplicates! {
                insta::assert_snapshot!(shown(&answer), @r"
                Noted for your garden: last frost around May 15, first frost around October 5. That is a season of 143 days.
                Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
                [They are averages] [I trust them]
                [Undo]
                ");
            }
        }
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn without_dates_the_command_shows_what_holds() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        insta::assert_snapshot!(shown(&fern.asks("/frost").await), @r"
        I don't know your frost dates yet.
        Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
        ");
        fern.asks("05-15 10-05").await;
        insta::assert_snapshot!(shown(&fern.asks("/frost").await), @r"
        Your garden: last frost around May 15, first frost around October 5.
        Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
        [I trust them]
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn what_cannot_be_is_said_and_changes_nothing() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        insta::assert_snapshot!(fern.asks("/frost 02-30 10-05").await.text, @r"
        The calendar has no day “02-30”. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
        ");
        insta::assert_snapshot!(fern.asks("/frost 05-15 05-15").await.text, @r"
        Both dates are the same day; the last spring frost and the first autumn frost must differ.
        ");
        insta::assert_snapshot!(fern.asks("/frost 05-15 05-20").await.text, @"The dates May 15 and May 20 leave only 5 days without frost, so I kept neither. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none");
        insta::assert_snapshot!(fern.asks("/frost rather late").await.text, @r"
        I could not read that as frost dates. Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
        ");
        insta::assert_snapshot!(fern.asks("/settings").await.text, @r"
        Your settings
        • Frost: last frost around May 15, first frost around October 5
        • Time zone: not given, so UTC
        • Reminders at 7:00 AM
        • Units: °F and inches
        • Language: English
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn one_date_alone_is_asked_about_until_the_other_is_known() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        insta::assert_snapshot!(fern.asks("/frost May 15").await.text, @r"
        I have May 15 as your last spring frost. When is the first autumn frost? Send both: /frost 05-15 10-05
        ");
        insta::assert_snapshot!(shown(&fern.asks("October 5").await), @r"
        Noted for your garden: last frost around May 15, first frost around October 5. That is a season of 143 days.
        Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
        [They are averages] [I trust them]
        [Undo]
        ");
        // From now on a date alone changes that one.
        insta::assert_snapshot!(fern.asks("/frost May 20").await.text, @r"
        Noted for your garden: last frost around May 20, first frost around October 5. That is a season of 138 days.
        Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
        ");
        insta::assert_snapshot!(fern.asks("/frost first frost September 28").await.text, @r"
        Noted for your garden: last frost around May 20, first frost around September 28. That is a season of 131 days.
        Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
        ");
        let moss = world.member("Moss").await;
        insta::assert_snapshot!(moss.asks("/frost first frost October 5").await.text, @r"
        A first autumn frost needs a last spring frost before it; send both.
        ");
        // Whoever is asked for the other date may as well send both.
        moss.asks("/frost May 15").await;
        insta::assert_snapshot!(moss.asks("May 10, September 30").await.text, @r"
        Noted for your garden: last frost around May 10, first frost around September 30. That is a season of 143 days.
        Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn average_or_trusted_is_one_press_and_can_be_undone() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        fern.presses("I trust them").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        Noted for your garden: last frost by May 15 and first frost from October 5, dates you trust. That is a season of 143 days.
        [Undo]
        ");
        fern.presses("Undo").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        Noted for your garden: last frost around May 15, first frost around October 5. That is a season of 143 days.
        [Undo]
        ");
        assert!(fern.news().is_empty(), "the one message changed in its place");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn the_first_dates_can_be_taken_back() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        fern.asks("/frost 05-15 10-05").await;
        fern.presses("Undo").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        Your own frost dates are gone; the club's hold where it has some.
        [Undo]
        ");
        insta::assert_snapshot!(fern.asks("/now").await.text, @r"
        For that I need your frost dates. Send them like this: /frost 05-15 10-05
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_garden_without_frost_is_asked_for_its_hot_and_wet_months() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        insta::assert_snapshot!(shown(&fern.asks("/frost none").await), @r"
        Noted: your garden has no frost. Which months are too hot there, and which are wet? For example: hot June to September, wet June to October.
        [Undo]
        ");
        insta::assert_snapshot!(
            shown(&fern.asks("hot June to September, wet June to October").await), @"Noted: hot June to September, wet June to October. So I plan with planting from the beginning of September, until the heat is back in June. Ask me, for example, “when can I start beans?”"
        );
        insta::assert_snapshot!(fern.asks("/settings").await.text, @r"
        Your settings
        • Frost: no frost
        • Hot and wet months: hot June to September, wet June to October
        • Time zone: not given, so UTC
        • Reminders at 7:00 AM
        • Units: °F and inches
        • Language: English
        ");
        insta::assert_snapshot!(fern.asks("can I start cucumbers now?").await.text, @"
        It is too late to sow cucumbers indoors this season.
        Planting ended on February 26; what is started today would meet the heat, which is back around June 1.
        Next season's good days begin on July 28.
        ");
        insta::assert_snapshot!(fern.asks("/now").await.text, @"
        What you can start today, April 10:
        Late, sow indoors, worth it until: bush bean (April 14)
        Late, sow in the ground, worth it until: sweet alyssum (April 10)
        Sow indoors, good until: vinca (August 7), globe amaranth (August 13), moss rose (August 21), celosia (August 22), coleus (September 1), okra (September 16)
        Sow in the ground, good until: chives (April 13), sage (April 13), lemon balm (April 13), foxglove (April 13), hollyhock (April 13), gaillardia (April 13)
        Set out or plant, good until: asparagus (April 13), sweet potato (August 8)
        Before anything tender goes out, check the week's nights and harden it off first.
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_southern_garden_has_a_season_over_the_new_year() {
        let world = World::start("2026-09-10T12:00:00Z").await;
        let fern = world.member("Fern").await;
        insta::assert_snapshot!(fern.asks("/frost 10-15 04-20").await.text, @r"
        Noted for your garden: last frost around October 15, first frost around April 20. That is a season of 187 days.
        It runs over the new year, as in the southern hemisphere.
        Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
        ");
        insta::assert_snapshot!(fern.asks("can I start cucumbers now?").await.text, @"
        A little early to sow cucumbers indoors, but it can work.
        Sown today, the plants are 6 weeks old when they can go out, around October 22; 3–5 weeks is best. Your average last frost is around October 15.
        Better to wait until September 17: they dislike being moved. If you start now, give each a large cell of its own and plenty of light.
        Care: never eat a fruit of this family that tastes bitter; spit it out and throw it away.
        Care: seed may be treated. Read the packet, wear gloves, and keep it from children and animals.
        ");
    }
}

mod crops {
    use super::*;

    #[tokio::test(flavor = "multi_thread")]
    async fn several_at_once_in_any_spelling() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        insta::assert_snapshot!(shown(&fern.asks("/grow tomatoes, Basil and courgettes").await), @r"
        On your list: tomato, basil, and summer squash.
        You can sow tomatoes indoors now, good until April 10.
        ");
        insta::assert_snapshot!(shown(&fern.asks("/grow basil, cucumbers").await), @r"
        On your list: cucumber.
        Already on your list: basil.
        Next: sow cucumbers indoors, from April 17.
        [Undo]
        ");
        insta::assert_snapshot!(shown(&fern.asks("I grow peas").await), @r"
        On your list: pea.
        You can sow peas in the ground now, good until May 1.
        [Undo]
        ");
        insta::assert_snapshot!(shown(&fern.asks("/mycrops").await), @r"
        You grow 5 crops:
        • tomato: sow tomatoes indoors now, good until April 10
        • basil: sow basil indoors now, good until April 24
        • summer squash: sow summer squash indoors now, good until May 1
        • cucumber: sow cucumbers indoors from April 17
        • pea: sow peas in the ground now, good until May 1
        ");
        insta::assert_snapshot!(shown(&fern.asks("/grow").await), @r"
        Which crops do you grow? Send their names, like this: /grow tomato, basil
        ");
        insta::assert_snapshot!(shown(&fern.asks("leeks").await), @r"
        On your list: leek.
        You can still sow leeks indoors: late, but worth it until April 23.
        [Undo]
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn misspelt_ambiguous_and_unknown_names() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        insta::assert_snapshot!(shown(&fern.asks("/grow tomatos, cucmber").await), @r"
        On your list: tomato and cucumber.
        You can sow tomatoes indoors now, good until April 10.
        ");
        insta::assert_snapshot!(shown(&fern.asks("/grow marigolds").await), @r"
        “marigold” can mean marigolds or calendulas. Which one do you grow?
        [Add marigold]
        [Add calendula]
        ");
        fern.presses("marigold").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        On your list: marigold.
        You can sow marigolds indoors now, good until April 10.
        [Undo]
        ");
        insta::assert_snapshot!(shown(&fern.asks("/grow dragonfruit").await), @r"
        I don't know “dragonfruit”. Try its everyday name, such as “tomato”.
        Which crops do you grow? Send their names, like this: /grow tomato, basil
        ");
        insta::assert_snapshot!(shown(&fern.asks("/grow basil, dragonfruit, marigolds").await), @r"
        On your list: basil.
        You can sow basil indoors now, good until April 24.
        “marigold” can mean marigolds or calendulas. Which one do you grow?
        I don't know “dragonfruit”. Try its everyday name, such as “tomato”.
        [Add marigold]
        [Add calendula]
        [Undo]
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn which_marigold_can_be_said_in_words() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        fern.asks("/grow marigolds").await;
        insta::assert_snapshot!(shown(&fern.asks("french marigold").await), @r"
        On your list: marigold.
        You can sow marigolds indoors now, good until April 10.
        [Undo]
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn off_the_list_and_back() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        insta::assert_snapshot!(fern.asks("/drop basil").await.text, @"Your list is empty, so there is nothing to take off.");
        fern.asks("/grow tomato, basil, french marigold").await;
        insta::assert_snapshot!(shown(&fern.asks("/drop").await), @r"
        Which crops shall I take off? Send their names, like this: /drop basil
        ");
        insta::assert_snapshot!(shown(&fern.asks("/drop basil").await), @r"
        Off your list: basil.
        [Undo]
        ");
        fern.presses("Undo").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        On your list: basil.
        You can sow basil indoors now, good until April 24.
        [Undo]
        ");
        insta::assert_snapshot!(shown(&fern.asks("/drop marigolds and leeks").await), @r"
        Off your list: marigold.
        Not on your list: leek.
        [Undo]
        ");
        insta::assert_snapshot!(shown(&fern.asks("/drop xyzzy").await), @r"
        I don't know “xyzzy”. Try its everyday name, such as “tomato”.
        ");
        insta::assert_snapshot!(shown(&fern.asks("I no longer grow basil, tomatoes").await), @"
        Off your list: basil and tomato.
        [Undo]
        ");
        insta::assert_snapshot!(shown(&fern.asks("/mycrops").await), @r"
        Your list is empty. Send what you grow, like this: /grow tomato, basil
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_long_list_is_leafed_through_in_place() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        let many = "tomato, pepper, eggplant, cucumber, zucchini, pumpkin, melon, basil, zinnia, \
                    cosmos, broccoli, cabbage, cauliflower, kale, lettuce, spinach, pea, carrot, \
                    beet, radish, onion, leek, celery, parsley, sunflower, bush bean";
        let added = fern.asks(&format!("/grow {many}")).await;
        assert!(added.text.starts_with("On your list: "), "{}", added.text);
        let first = fern.asks("/mycrops").await;
        insta::assert_snapshot!(shown(&first), @r"
        You grow 26 crops:
        • tomato: sow tomatoes indoors now, good until April 10
        • pepper: sow peppers indoors now, late, but worth it until May 9
        • eggplant: sow eggplants indoors now, late, but worth it until May 1
        • cucumber: sow cucumbers indoors from April 17
        • summer squash: sow summer squash indoors now, good until May 1
        • pumpkin: sow pumpkins indoors from April 17
        • melon: sow melons indoors now, good until May 1
        • basil: sow basil indoors now, good until April 24
        • zinnia: sow zinnias indoors from April 17
        • cosmos: sow cosmos indoors now, good until April 24
        Page 1 of 3
        [More ›]
        ");
        fern.presses("More").await;
        let second = fern.last();
        assert_eq!(second.message_id, first.message_id);
        assert_eq!(second.labels(), ["‹ Back", "More ›"]);
        fern.presses("More").await;
        let third = fern.last();
        insta::assert_snapshot!(shown(&third), @r"
        You grow 26 crops:
        • onion: harden off onions now, good until April 24
        • leek: sow leeks indoors now, late, but worth it until April 23
        • celery: sow celery indoors now, late, but worth it until April 21
        • parsley: soak the seed of parsley now, late, but worth it until June 24
        • sunflower: sow sunflowers in the ground from May 15
        • bush bean: sow bush beans in the ground from May 15
        Page 3 of 3
        [‹ Back]
        ");
        fern.presses("Back").await;
        assert_eq!(fern.last().text, second.text);
        let crops: std::collections::BTreeSet<String> = [&first, &second, &third]
            .into_iter()
            .flat_map(|page| page.text.lines())
            .filter(|line| line.starts_with('•'))
            .map(str::to_owned)
            .collect();
        assert_eq!(crops.len(), 26, "every crop stands on one page");
        assert!(fern.news().is_empty());
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn crops_that_are_awaited_come_in_words_and_questions_stay_questions() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        let question = "can I start cucumbers now";
        let answer = fern.asks(question).await;
        fern.asks("/grow").await;
        assert_eq!(fern.asks(question).await.text, answer.text);
        fern.asks("/grow").await;
        insta::assert_snapshot!(fern.asks("cucmber and tomatos").await.text, @r"
        On your list: cucumber and tomato.
        You can sow tomatoes indoors now, good until April 10.
        ");
        fern.asks("/grow").await;
        insta::assert_snapshot!(fern.asks("dragonfruit, leeks").await.text, @r"
        On your list: leek.
        You can still sow leeks indoors: late, but worth it until April 23.
        I don't know “dragonfruit”. Try its everyday name, such as “tomato”.
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn crops_without_frost_dates_are_kept_and_the_dates_asked_for() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        insta::assert_snapshot!(shown(&fern.asks("/grow tomato").await), @r"
        On your list: tomato.
        For that I need your frost dates. Send them like this: /frost 05-15 10-05
        [Undo]
        ");
        insta::assert_snapshot!(shown(&fern.asks("/mycrops").await), @r"
        You grow one crop:
        • tomato
        For that I need your frost dates. Send them like this: /frost 05-15 10-05
        ");
        insta::assert_snapshot!(fern.asks("May 15 and October 5").await.text, @r"
        Noted for your garden: last frost around May 15, first frost around October 5. That is a season of 143 days.
        Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
        ");
    }
}

mod settings {
    use super::*;

    #[tokio::test(flavor = "multi_thread")]
    async fn a_zone_by_its_city_by_a_near_spelling_or_not_at_all() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        insta::assert_snapshot!(shown(&fern.asks("/zone").await), @r"
        I don't know your time zone and use UTC.
        Send a city or a zone's name, like this: /zone Denver
        ");
        // Noon in UTC is six in the morning in Denver in April (UTC-6).
        insta::assert_snapshot!(shown(&fern.asks("Denver").await), @"Your time zone is America/Denver; it is 6:00 AM there now.");
        insta::assert_snapshot!(shown(&fern.asks("/zone Helsinky").await), @r"
        I don't know the place “Helsinky”. Did you mean one of these?
        [Europe/Helsinki]
        ");
        fern.presses("Europe/Helsinki").await;
        insta::assert_snapshot!(shown(&fern.last()), @"Your time zone is Europe/Helsinki; it is 3:00 PM there now.");
        insta::assert_snapshot!(shown(&fern.asks("/zone Qqqville").await), @r"
        I don't know the place “Qqqville”. Send a larger city near you, or a zone's name such as America/Denver.
        ");
        insta::assert_snapshot!(shown(&fern.asks("I live in Oslo").await), @"Your time zone is Europe/Oslo; it is 2:00 PM there now.");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn an_hour_by_command_by_button_in_words_or_not_at_all() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        insta::assert_snapshot!(shown(&fern.asks("/hour").await), @r"
        Reminders come at 7:00 AM (UTC).
        Send a time of day, like this: /hour 7:00
        [6:00 AM] [7:00 AM] [8:00 AM] [9:00 AM]
        ");
        fern.presses("6:00").await;
        insta::assert_snapshot!(shown(&fern.last()), @"Reminders come at 6:00 AM (UTC).");
        insta::assert_snapshot!(fern.asks("/hour 25:00").await.text, @"“25:00” is not a time of day. Send it like this: /hour 7:00");
        insta::assert_snapshot!(fern.asks("5:45 am").await.text, @"Reminders come at 5:45 AM (UTC).");
        insta::assert_snapshot!(fern.asks("remind me at 8").await.text, @"Reminders come at 8:00 AM (UTC).");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn the_page_shows_all_and_its_buttons_work() {
        let world = World::start(SPRING).await;
        let ash = world.person("Ash");
        let club = world.club("Hillside Growers", &ash).await;
        let fern = world.person("Fern");
        club.welcomes(&[&fern]);
        club.hears(&fern, "/help").await;
        fern.asks("/start").await;
        insta::assert_snapshot!(shown(&fern.asks("/settings").await), @"
        Your settings
        • Frost: not given
        • Time zone: not given, so UTC
        • Reminders at 7:00 AM
        • Units: °F and inches
        • Language: English
        • Club: Hillside Growers
        [Frost dates] [Time zone]
        [Reminder time] [°C and cm]
        [Quiet days] [I garden at weekends]
        [Holiday] [Where it grows]
        [Language]
        ");
        let page = fern.last();
        fern.presses_under(&page, "°C and cm").await;
        insta::assert_snapshot!(shown(&fern.last()), @"From now on in °C and cm.");
        fern.presses_under(&page, "Language").await;
        insta::assert_snapshot!(shown(&fern.last()), @"
        Which language?
        [English]
        [Deutsch]
        [Español]
        [Français]
        ");
        fern.presses("English").await;
        insta::assert_snapshot!(shown(&fern.last()), @"From now on I speak English with you.");
        fern.presses_under(&page, "Reminder time").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        Reminders come at 7:00 AM (UTC).
        Send a time of day, like this: /hour 7:00
        [6:00 AM] [7:00 AM] [8:00 AM] [9:00 AM]
        ");
        fern.presses_under(&page, "Time zone").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        I don't know your time zone and use UTC.
        Send a city or a zone's name, like this: /zone Denver
        ");
        fern.presses_under(&page, "Frost dates").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        I don't know your frost dates yet.
        Send the last spring frost and the first autumn frost as month and day, like this: /frost 05-15 10-05. If it never freezes: /frost none
        ");
        insta::assert_snapshot!(fern.asks("my settings").await.text, @r"
        Your settings
        • Frost: not given
        • Time zone: not given, so UTC
        • Reminders at 7:00 AM
        • Units: °C and cm
        • Language: English
        • Club: Hillside Growers
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn units_and_dates_follow_the_reader() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        let asked = "how deep do I sow peas?";
        insta::assert_snapshot!(fern.asks(asked).await.text, @r"
        Peas:
        • sow ½–1 inch deep
        • soil 65–75 °F is best, at least 40 °F
        • up in 6–9 days
        • 2 inches apart, rows 18 inches apart
        Care: seed may be treated. Read the packet, wear gloves, and keep it from children and animals.
        ");
        fern.asks("/settings").await;
        fern.presses("°C").await;
        insta::assert_snapshot!(fern.asks(asked).await.text, @r"
        Peas:
        • sow 1.3–2.5 cm deep
        • soil 18–24 °C is best, at least 4 °C
        • up in 6–9 days
        • 5 cm apart, rows 45 cm apart
        Care: seed may be treated. Read the packet, wear gloves, and keep it from children and animals.
        ");
    }
}

mod questions {
    use super::*;

    #[tokio::test(flavor = "multi_thread")]
    async fn without_frost_dates_they_are_asked_for_first() {
        let world = World::start(SPRING).await;
        let fern = world.member("Fern").await;
        insta::assert_snapshot!(fern.asks("can I start cucumbers now?").await.text, @r"
        For that I need your frost dates. Send them like this: /frost 05-15 10-05
        ");
        insta::assert_snapshot!(fern.asks("May 15 and October 5").await.text, @r"
        Noted for your garden: last frost around May 15, first frost around October 5. That is a season of 143 days.
        Are these averages (half of all years are worse)? Or dates you trust (about one year in ten is worse)?
        ");
        // What needs no dates is answered without them.
        let moss = world.member("Moss").await;
        insta::assert_snapshot!(moss.asks("how deep do I sow peas?").await.text, @r"
        Peas:
        • sow ½–1 inch deep
        • soil 65–75 °F is best, at least 40 °F
        • up in 6–9 days
        • 2 inches apart, rows 18 inches apart
        Care: seed may be treated. Read the packet, wear gloves, and keep it from children and animals.
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_word_of_two_meanings_is_asked_about_and_then_answered() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        insta::assert_snapshot!(shown(&fern.asks("can I start marigolds in May?").await), @r"
        “marigold” can mean marigolds or calendulas. Which do you mean?
        [marigolds]
        [calendulas]
        ");
        let which = fern.last();
        fern.presses_under(&which, "marigolds").await;
        insta::assert_snapshot!(shown(&fern.last()), @"
        That can be done all through May.
        Late, but still worth it: sow marigolds indoors on May 1.
        Best days: until April 10. Expect about 3 weeks less of bloom.
        Last day worth it: June 29.
        [Remind me of marigolds]
        ");
        fern.asks("when do I sow marigolds?").await;
        insta::assert_snapshot!(shown(&fern.asks("calendula").await), @r"
        Calendulas, counted from your average last frost around May 15:
        • Sow calendulas in the ground: May 1 to June 5; worth it until July 10
        • Sow calendulas indoors: March 13–27; worth it until June 26
        • Harden off calendulas: April 17 to May 8; worth it until July 17
        • Set out calendulas: May 1–15; worth it until July 24
        [Remind me of calendulas]
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn an_answer_offers_to_remind() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        insta::assert_snapshot!(shown(&fern.asks("can I start tomatoes now?").await), @r"
        Go ahead: sow tomatoes indoors today.
        Sown today, the plants are 6 weeks old when they can go out, around May 22; 6–8 weeks is best. Your average last frost is around May 15.
        Good until April 10, and worth it until May 9.
        ¼ inch deep, soil around 65–85 °F; up in 6–8 days.
        [Remind me of tomatoes]
        ");
        fern.presses("Remind me").await;
        insta::assert_snapshot!(shown(&fern.last()), @r"
        On your list: tomato.
        You can sow tomatoes indoors now, good until April 10.
        [Undo]
        ");
        assert!(fern.asks("can I start tomatoes now?").await.buttons.is_empty());
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn what_now_is_about_the_members_own_crops() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        let anybodys = fern.asks("/now").await.text;
        assert!(anybodys.starts_with("What you can start today, April 10:\n"), "{anybodys}");
        assert!(anybodys.contains("Sow indoors, good until: tomato (April 10)"), "{anybodys}");
        fern.asks("/grow peas, tomatoes, cucumbers").await;
        insta::assert_snapshot!(shown(&fern.asks("/now").await), @r"
        Friday, April 10, from your list:
        1. Sow tomatoes indoors: today is the last good day.
        2. Sow peas in the ground: good until May 1.
        3. Sow cucumbers indoors: early but workable with care, best from April 17.
        [1 done] [later] [skip]
        [2 done] [later] [skip]
        [3 done] [later] [skip]
        ");
        insta::assert_snapshot!(shown(&fern.asks("what can I start now?").await), @r"
        What you can start today, April 10:
        Sow indoors, good until: tomato (April 10)
        Sow in the ground, good until: pea (May 1)
        Early but workable with care, sow indoors: cucumber (best from April 17)
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn what_was_not_understood_and_what_is_no_command() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        insta::assert_snapshot!(fern.asks("/dance").await.text, @"I don't know that command. /help shows what I can do.");
        insta::assert_snapshot!(fern.asks("hello").await.text, @r"
        I answer questions like “can I start cucumbers now?”, “when do tomatoes go out?”, “how deep do I sow peas?” and “will pumpkins ripen?”, and I remind you on the mornings when something is due.
        ");
        insta::assert_snapshot!(fern.asks("/help").await.text, @"
        I answer questions like “can I start cucumbers now?”, “when do tomatoes go out?”, “how deep do I sow peas?” and “will pumpkins ripen?”, and I count: “how many basil seeds for 12 plants?”, “14 of 20 leek seeds sprouted”, “soil is 14 °C, can I sow peas?”

        /grow tomato, basil – put crops on your list; I remind you of them
        /drop basil – take one off
        /mycrops – your list
        /lists – your club's lists, to subscribe to
        /now – what you can do today
        /sown basil 12 on 3 April – tell me what you sowed, and I follow its own dates
        /sowings – your sowings and what comes next
        /variety tomato Early Lantern, 75 days – reckon with a packet's numbers
        /undo – take the last change back
        /trays tomato 12, basil 6 – which seedlings share a tray
        /frost 05-15 10-05 – your last and first frost
        /place – where your seedlings grow
        /hold 7 days – wait out a cold spell
        /zone Denver – your time zone
        /hour 7:00 – when your reminder comes
        /holiday until 3 July – no messages before that day
        /quiet Sunday – no messages on that day of the week
        /weekends – put things off to the weekend
        /settings – all of it at a glance
        /export – all that I keep about you, as a file
        /forget – delete it

        To stop reminders, take your crops off with /drop all.
        ");
        insta::assert_snapshot!(fern.asks("/ask").await.text, @r"
        I did not understand that; ask me, for example, “can I start cucumbers now?” or “when do I plant out tomatoes?”
        ");
        insta::assert_snapshot!(fern.asks("/start not-a-token").await.text, @r"
        Hello Fern! I tell you what to sow, harden off and plant out, and when.
        Tell me what you grow (/grow tomato, basil) and I write you on the mornings when something is due.

        That invitation is no longer valid; press the button in your club's group again.

        I reckon with last frost around May 15, first frost around October 5. /frost changes that for your garden.

        Which time zone are you in? Send a city, like this: /zone Denver. Until then I use UTC.
        ");
        insta::assert_snapshot!(fern.asks("/club").await.text, @r"
        /club works in your club's group, where I can see who its administrators are.
        ");
    }

    #[tokio::test(flavor = "multi_thread")]
    async fn a_question_while_something_else_is_awaited_is_answered() {
        let world = World::start(SPRING).await;
        let fern = gardener(&world).await;
        let answer = fern.asks("can I start cucumbers now?").await;
        for awaited in ["/zone", "/hour", "/grow", "/frost"] {
            fern.asks(awaited).await;
            let again = fern.asks("can I start cucumbers now?").await;
            assert_eq!(again.text, answer.text, "after {awaited}");
        }
        fern.asks("/frost none").await;
        let other = fern.asks("can I start cucumbers now?").await.text;
        assert!(other.starts_with("Frost dates don't decide"), "{other}");
    }
}

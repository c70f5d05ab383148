//! What packets say, text by text.

use proptest::prelude::*;

use super::*;

fn words() -> PacketWords {
    PacketWords::new(include_str!("../../../../locales/en/packet.toml")).expect("the words")
}

fn read(text: &str) -> Packet {
    read_packet(text, &words(), true).packet
}

#[expect(clippy::unnecessary_wraps, reason = "each number of a packet may be missing")]
fn span(low: i64, high: i64) -> Option<Span> {
    Some(Span { low, high })
}

#[test]
fn weeks_before_the_last_frost_and_days() {
    let expected = Packet { indoors_weeks: span(6, 8), days: span(75, 75), ..Packet::default() };
    for text in [
        "start indoors 6-8 weeks before last frost, 75 days",
        "Start indoors 6–8 weeks before your average last frost date. 75 days.",
        "75 days\nSow indoors 6 to 8 weeks before the last frost",
        "6-8 weeks before last frost; matures in 75 days",
        "Start seeds indoors 6—8 wks. before the last spring frost | Days to maturity: 75",
        "START INSIDE 6-8 WEEKS BEFORE LAST FROST. DAYS TO HARVEST 75",
        "start indoors 42-56 days before last frost. 75 days",
        "Start indoors 6-8 weeks before transplanting outdoors. Maturity: 75 days",
    ] {
        assert_eq!(read(text), expected, "{text}");
    }
}

#[test]
fn sowing_in_place() {
    let danger = Some(PacketOutdoors::AfterFrost);
    let text = "direct sow after danger of frost, days to maturity: 55-60";
    assert_eq!(read(text), Packet { outdoors: danger, days: span(55, 60), ..Packet::default() });
    let text = "Sow outdoors once all danger of frost has passed.\n8 weeks to maturity";
    assert_eq!(read(text), Packet { outdoors: danger, days: span(56, 56), ..Packet::default() });
    let weeks = |low, high| Some(PacketOutdoors::Weeks(Span { low, high }));
    let text = "direct sow 2-4 weeks before last frost";
    assert_eq!(read(text).outdoors, weeks(-4, -2));
    let both =
        read("Start indoors 4 weeks before last frost or direct sow 2 weeks after last frost");
    assert_eq!((both.indoors_weeks, both.outdoors), (span(4, 4), weeks(2, 2)));
    let moved = read(
        "Start indoors 6 weeks before last frost, transplant outside 1-2 weeks after last frost",
    );
    assert_eq!((moved.indoors_weeks, moved.set_out_weeks), (span(6, 6), span(1, 2)));
    assert_eq!(moved.outdoors, None);
}

#[test]
fn what_days_are_counted_from() {
    let days = |text: &str| (read(text).days, read(text).counted_from);
    let out = Some(CountedFrom::SettingOut);
    assert_eq!(days("mature in 50 days from transplant"), (span(50, 50), out));
    assert_eq!(days("Ready 65–70 days after transplanting"), (span(65, 70), out));
    assert_eq!(days("days to maturity: 80 (from transplant)"), (span(80, 80), out));
    let sown = Some(CountedFrom::Sowing);
    assert_eq!(days("harvest 60 days from sowing"), (span(60, 60), sown));
    assert_eq!(days("90 days from seed"), (span(90, 90), sown));
    assert_eq!(days("matures in 7 weeks"), (span(49, 49), None));
}

#[test]
fn coming_up_depth_and_spacing() {
    let text = "Plant ¼ inch deep, 24 inches apart in rows 3 ft apart. Germinates in 7-10 days. 80 days to maturity";
    let expected = Packet {
        days: span(80, 80),
        emerge_days: span(7, 10),
        depth_mm: span(6, 6),
        apart_cm: Some(61),
        rows_cm: Some(91),
        ..Packet::default()
    };
    assert_eq!(read(text), expected);
    let text =
        "Depth: 1 1/2 in. Spacing: 45-60 cm. Days to germination: 5 to 8. Days to maturity: 100";
    let expected = Packet {
        days: span(100, 100),
        emerge_days: span(5, 8),
        depth_mm: span(38, 38),
        apart_cm: Some(53),
        ..Packet::default()
    };
    assert_eq!(read(text), expected);
    assert_eq!(read("sow 1/4\" deep, thin to 12\"").apart_cm, Some(30));
    assert_eq!(read("thin after 20 days, 60 days").days, span(60, 60));
}

#[test]
fn what_stands_before_the_numbers() {
    let head = |text: &str| read_packet(text, &words(), true).head;
    assert_eq!(
        head("tomato Early Lantern: start indoors 6 weeks before frost"),
        "tomato Early Lantern: "
    );
    assert_eq!(head("Early Lantern tomato\n75 days"), "Early Lantern tomato\n");
    assert_eq!(head("no numbers here"), "no numbers here");
}

#[test]
fn only_a_packets_own_words_make_it_sure() {
    let sure = |text: &str| read_packet(text, &words(), true).sure;
    assert!(sure("tomato: start indoors 6 weeks before last frost"));
    assert!(sure("beans, matures in 55 days"));
    assert!(!sure("tomatoes in 75 days"));
    assert!(!sure("12 basil, 3 weeks old"));
    assert!(!sure("I have 5 tomatoes 20 inches apart"));
}

#[test]
fn absurd_numbers_are_read_as_they_stand() {
    assert_eq!(read("0 days to maturity").days, span(0, 0));
    assert_eq!(read("400 days to harvest").days, span(400, 400));
    let weeks = read("start indoors 30 weeks before last frost").indoors_weeks;
    assert_eq!(weeks, span(30, 30));
    assert!(read("99999999999999999999 days").days.is_some_and(|days| days.low > 300));
}

#[test]
fn a_start_before_the_last_frost_is_indoors_for_crops_raised_indoors() {
    let indoors = Packet { indoors_weeks: span(6, 8), ..Packet::default() };
    for text in [
        "Amber Bell: Start 6-8 weeks before last frost, transplant out when nights are above 50F",
        "Start 6-8 weeks before last frost and transplant outdoors when nights are above 50F",
        "6-8 weeks before last frost, transplant out when nights are above 50F",
        "Transplant out when nights are warm, start 6-8 weeks before last frost",
        "Plant outdoors in warm soil, or start 6-8 weeks before last frost",
        "Sow seeds ¼ inch deep 6-8 weeks before last frost",
        "start 6-8 weeks before last frost indoors",
    ] {
        let read = read(text);
        assert_eq!(
            (read.indoors_weeks, read.set_out_weeks, read.outdoors),
            (indoors.indoors_weeks, None, None),
            "{text}"
        );
    }
    let aldo = read("Aldo: start 8 weeks before last frost and set out 2 weeks after last frost");
    assert_eq!((aldo.indoors_weeks, aldo.set_out_weeks), (span(8, 8), span(2, 2)));
    assert_eq!(aldo.outdoors, None);
    let set_out = read("2 weeks before last frost set out the plants");
    assert_eq!((set_out.set_out_weeks, set_out.indoors_weeks), (span(-2, -2), None));
}

#[test]
fn a_word_for_the_ground_makes_it_sowing_in_place() {
    let ground = Some(PacketOutdoors::Weeks(Span { low: -6, high: -4 }));
    let not_raised = |text: &str| read_packet(text, &words(), false).packet;
    for text in [
        "plant 4-6 weeks before last frost",
        "sow as soon as soil can be worked, 4-6 weeks before last frost",
        "start 4-6 weeks before last frost",
    ] {
        let read = not_raised(text);
        assert_eq!((read.outdoors, read.indoors_weeks), (ground, None), "{text}");
    }
    for text in [
        "Outdoors: sow 4-6 weeks before last frost",
        "sow 4-6 weeks before last frost outdoors",
        "direct sow 4-6 weeks before last frost",
    ] {
        let read = read(text);
        assert_eq!((read.outdoors, read.indoors_weeks), (ground, None), "{text}");
    }
}

#[test]
fn the_figures_of_a_name_are_the_names() {
    for (text, head) in [
        ("tomato Sunrise F1: 57 days", "tomato Sunrise F1: "),
        ("tomato Sunrise F1 - 57 days", "tomato Sunrise F1 - "),
        ("tomato Sweet 100, 57 days", "tomato Sweet 100, "),
        ("tomato Sweet 100 – 57 days", "tomato Sweet 100 – "),
        ("tomato 4th of July: 57 days", "tomato 4th of July: "),
        ("tomato Early Start: 57 days", "tomato Early Start: "),
        ("tomato Sunrise start 6 weeks before last frost, 57 days", "tomato Sunrise "),
        ("tomato Sunrise 57 to maturity", "tomato Sunrise "),
    ] {
        let read = read_packet(text, &words(), true);
        assert_eq!(read.head, head);
        assert_eq!(
            (read.packet.days.map_or(57, |days| days.low), read.packet.emerge_days),
            (57, None),
            "{text}"
        );
    }
    let read = read("tomato Sweet 100 germinates in 7 days, 65 days");
    assert_eq!((read.emerge_days, read.days), (span(7, 7), span(65, 65)));
}

#[test]
fn coming_up_and_harvest_in_one_sentence_keep_their_own_figures() {
    for text in [
        "germinates in 6-10 days, 60 days to harvest",
        "germination in 6-10 days, harvest 60 days after sowing",
        "germination 6-10 days harvest 60 days",
        "6-10 days to germination and 60 days to harvest",
        "60 days to harvest, 6-10 days to emergence",
        "6-10 days to germination, 60 days to harvest",
        "germination: 6-10 days harvest: 60 days",
        "harvest 60 days germination 6-10 days",
    ] {
        let read = read(text);
        assert_eq!((read.emerge_days, read.days), (span(6, 10), span(60, 60)), "{text}");
    }
    assert_eq!(read("75 days from germination").days, span(75, 75));
}

proptest! {
    #[test]
    fn no_text_breaks_it(text in ".{0,300}") {
        let _ = read_packet(&text, &words(), true).packet.checked();
    }

    #[test]
    fn no_packet_like_text_breaks_it(parts in prop::collection::vec(prop::sample::select(vec![
        "start indoors ", "start ", "F1", "6", "-", "8", " weeks", " days", " before ", "after", " frost", ", ",
        ". ", "\n", "½", "1/0", "/", "\"", " deep", " apart", " rows ", " to ", "from seed",
        "99999999999999999999", "direct sow ", "danger of", "matures in ", ":", "–", "é",
    ]), 0..40)) {
        let text = parts.concat();
        let read = read_packet(&text, &words(), true);
        prop_assert!(text.starts_with(&read.head));
        let _ = read.packet.checked();
        for span in [read.packet.days, read.packet.indoors_weeks].into_iter().flatten() {
            prop_assert!(span.ordered());
        }
    }
}

/// "75 days" behind "… before the last frost indoors" is no length of the raising indoors.
#[test]
fn days_behind_weeks_indoors_are_days_to_the_harvest_in_every_language() {
    let knowledge = crate::chat::Knowledge::embedded().expect("the built-in data");
    for (tag, text) in [
        ("en", "6-8 weeks before last frost indoors, 75 days"),
        ("de", "6-8 Wochen vor dem letzten Frost vorziehen, 75 Tage"),
        ("de", "6-8 Wochen vor dem letzten Frost im Haus vorziehen; 75 Tage"),
        ("de", "6 bis 8 Wochen vorziehen, 75 Tage"),
        ("fr", "6-8 semaines avant le dernier gel à l'intérieur, 75 jours"),
        ("fr", "semer 6-8 semaines avant le dernier gel en intérieur, 75 jours"),
        ("es", "6-8 semanas antes de la última helada en interior, 75 días"),
        ("es", "6-8 semanas antes de la última helada en semillero, 75 días"),
    ] {
        let words = &knowledge.tongue(&tag.parse().expect("a tag")).packet;
        let packet = read_packet(text, words, true).packet;
        assert_eq!(packet.indoors_weeks, Some(Span { low: 6, high: 8 }), "{text}");
        assert_eq!(packet.days, Some(Span { low: 75, high: 75 }), "{text}");
    }
}

//! Sowing with no word for the place, on packets in other languages than English.

use super::*;

fn read(language: &str, text: &str, raised_indoors: bool) -> Packet {
    let words = match language {
        "de" => include_str!("../../../../locales/de/packet.toml"),
        "es" => include_str!("../../../../locales/es/packet.toml"),
        _ => include_str!("../../../../locales/fr/packet.toml"),
    };
    read_packet(text, &PacketWords::new(words).expect("the words"), raised_indoors).packet
}

const SOWN: [(&str, &str); 6] = [
    ("de", "Aussaat 4-6 Wochen vor dem letzten Frost"),
    ("de", "4 bis 6 Wochen vor dem letzten Frost säen"),
    ("es", "Sembrar 4-6 semanas antes de la última helada"),
    ("es", "Siembra: de 4 a 6 semanas antes de las últimas heladas"),
    ("fr", "Semer 4 à 6 semaines avant le dernier gel"),
    ("fr", "Semis 4-6 semaines avant les dernières gelées"),
];

#[test]
fn it_is_indoors_for_crops_raised_indoors_and_in_the_ground_for_others() {
    let ground = Some(PacketOutdoors::Weeks(Span { low: -6, high: -4 }));
    for (language, text) in SOWN {
        let packet = read(language, text, true);
        assert_eq!(packet.indoors_weeks, Some(Span { low: 4, high: 6 }), "{text}");
        assert_eq!(packet.outdoors, None, "{text}");
        let packet = read(language, text, false);
        assert_eq!((packet.outdoors, packet.indoors_weeks), (ground, None), "{text}");
    }
}

#[test]
fn a_word_for_the_place_still_tells_where() {
    let ground = Some(PacketOutdoors::Weeks(Span { low: 1, high: 2 }));
    for (language, text) in [
        ("de", "Aussaat ins Freiland 1-2 Wochen nach dem letzten Frost"),
        ("es", "Sembrar en la tierra 1-2 semanas después de la última helada"),
        ("fr", "Semer en pleine terre 1 à 2 semaines après le dernier gel"),
    ] {
        assert_eq!(read(language, text, true).outdoors, ground, "{text}");
    }
}

#[test]
fn planting_is_setting_out_of_what_is_raised_indoors_and_sowing_of_the_rest() {
    let text = "Planter 1 à 2 semaines après le dernier gel";
    let tomato = read("fr", text, true);
    assert_eq!((tomato.set_out_weeks, tomato.outdoors), (Some(Span { low: 1, high: 2 }), None));
    let bean = read("fr", text, false);
    let ground = Some(PacketOutdoors::Weeks(Span { low: 1, high: 2 }));
    assert_eq!((bean.outdoors, bean.set_out_weeks), (ground, None));
}

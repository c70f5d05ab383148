//! What Spanish packets say, text by text.

use super::*;

fn read(text: &str) -> Packet {
    let words = include_str!("../../../../locales/es/packet.toml");
    read_packet(text, &PacketWords::new(words).expect("the words"), true).packet
}

#[expect(clippy::unnecessary_wraps, reason = "each number of a packet may be missing")]
fn span(low: i64, high: i64) -> Option<Span> {
    Some(Span { low, high })
}

#[test]
fn weeks_before_the_last_frost_and_days() {
    let expected = Packet { indoors_weeks: span(6, 8), days: span(75, 75), ..Packet::default() };
    for text in [
        "en interior 6-8 semanas antes de la última helada, 75 días",
        "Sembrar en semillero de 6 a 8 semanas antes de la última helada. Cosecha: 75 días",
        "Siembra en almácigo entre 6 y 8 semanas antes de las últimas heladas\nMadurez: 75 días",
        "SEMBRAR EN INTERIOR 6-8 SEM. ANTES DE LA ULTIMA HELADA. 75 DIAS A LA COSECHA",
    ] {
        assert_eq!(read(text), expected, "{text}");
    }
}

#[test]
fn sowing_in_place_setting_out_and_measures() {
    let danger = Some(PacketOutdoors::AfterFrost);
    let text = "Siembra directa pasadas las heladas, cosecha en 55-60 días";
    assert_eq!(read(text), Packet { outdoors: danger, days: span(55, 60), ..Packet::default() });
    let text = "Siembra directa 2-4 semanas antes de la última helada";
    let weeks = Some(PacketOutdoors::Weeks(Span { low: -4, high: -2 }));
    assert_eq!(read(text).outdoors, weeks);
    let text = "Trasplantar 1-2 semanas después de la última helada. 70 días desde el trasplante";
    let packet = read(text);
    assert_eq!((packet.set_out_weeks, packet.days), (span(1, 2), span(70, 70)));
    assert_eq!(packet.counted_from, Some(CountedFrom::SettingOut));
    let packet =
        read("Germinación: 7-10 días. Profundidad 1 cm. 30 cm entre plantas, 60 cm entre filas");
    assert_eq!(packet.emerge_days, span(7, 10));
    assert_eq!(packet.depth_mm, span(10, 10));
    assert_eq!((packet.apart_cm, packet.rows_cm), (Some(30), Some(60)));
    assert_eq!(packet.days, None);
}

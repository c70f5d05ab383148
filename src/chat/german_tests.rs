//! What the German help texts show, and what people write beside it, is read.

use chrono::{NaiveDate, Weekday};

use super::Knowledge;
use super::frost_words::{FrostReading, read_frost};
use super::hold_words::HoldTold;
use super::knowledge::Tongue;
use super::packet::read_packet;
use super::sentences::Request;
use crate::planning::{Cover, Packet, Place};

fn with_german(check: impl FnOnce(&Tongue)) {
    let knowledge = Knowledge::embedded().expect("the built-in data");
    check(knowledge.tongue(&"de-AT".parse().expect("a tag")));
}

#[test]
fn sentences_do_what_commands_do() {
    with_german(|german| {
        for (text, request, rest) in [
            ("Ich baue Tomaten und Basilikum an", Request::Grow, "Tomaten und Basilikum"),
            ("setz Gurken auf die Liste", Request::Grow, "Gurken"),
            ("Ich baue keine Gurken mehr an.", Request::Drop, "Gurken"),
            ("streich Dill von der Liste", Request::Drop, "Dill"),
            ("meine Liste", Request::MyCrops, ""),
            ("ich hab 12 Basilikum gesaet", Request::Sown, "12 Basilikum"),
            ("gestern habe ich 12 Basilikum gesät", Request::Sown, "12 Basilikum"),
            ("erinnere mich um 7", Request::Hour, "7"),
            ("Ich wohne in Wien", Request::Zone, "Wien"),
            ("Bei uns friert es nie", Request::Frost, ""),
            ("rueckgaengig", Request::Undo, ""),
            ("Kälteeinbruch für 7 Tage", Request::Hold, "7 Tage"),
        ] {
            let said = german.sentences.read(text).map(|said| (said.request, said.rest.trim()));
            assert_eq!(said, Some((request, rest)), "{text}");
        }
        assert_eq!(german.sentences.read("kann ich Tomaten anbauen"), None);
        assert!(german.sentences.means_everything("alle"));
        assert_eq!(german.sentences.means_south("Grad Süd"), Some(true));
        for (text, told) in [
            ("7 Tage", HoldTold::Days(7)),
            ("eine Woche", HoldTold::Days(7)),
            ("für die nächsten zehn Tage", HoldTold::Days(10)),
            ("aus", HoldTold::Off),
        ] {
            assert_eq!(german.sentences.hold.read(text), Some(told), "{text}");
        }
        let days = &german.sentences.days;
        assert_eq!(days.weekdays("Sonntag"), [Weekday::Sun]);
        assert_eq!(days.on_or_off("aus"), Some(false));
    });
}

#[test]
fn places_are_told() {
    with_german(|german| {
        let told = |text: &str| german.sentences.places.sentence(text);
        let lights = told("Ich ziehe meine Pflanzen unter Lampen vor").expect("a place");
        assert_eq!(lights.place, Some(Some(Place::Lights)));
        let frame = told("Ich habe ein Frühbeet").expect("a cover");
        assert_eq!(frame.cover, Some(Some(Cover::ColdFrame)));
        assert_eq!(told("kein Schutz").expect("no cover").cover, Some(None));
        assert_eq!(told("ich habe Tomaten"), None);
    });
}

#[test]
fn frost_dates_and_sowings_are_told() {
    with_german(|german| {
        let phrases = german.understanding.phrases();
        for text in ["15.5. 5.10.", "15. Mai und 5. Oktober", "05-15 10-05", "15.5. bis 5.10."] {
            let FrostReading::Dates { last, first, .. } = read_frost(text, phrases, None) else {
                panic!("{text}: no two dates");
            };
            let (last, first) = (last.to_string(), first.to_string());
            assert_eq!((last.as_str(), first.as_str()), ("05-15", "10-05"), "{text}");
        }
        assert_eq!(read_frost("bei uns friert es nie", phrases, None), FrostReading::Free);

        let today: NaiveDate = "2026-04-15".parse().expect("a day");
        let told = german.understanding.sown_in("Basilikum 12 am 3. April", today);
        let counted: Vec<_> = told.crops.iter().map(|(id, n)| (id.as_str(), *n)).collect();
        assert_eq!(counted, [("basil", Some(12))]);
        let on = "2026-04-03".parse().expect("a day");
        assert_eq!(told.on, super::understand::ToldDay::On(on));
    });
}

#[test]
fn packets_are_read() {
    with_german(|german| {
        for text in [
            "Vorkultur 6-8 Wochen vor dem letzten Frost, 75 Tage",
            "Im Haus vorziehen 6 bis 8 Wochen vor dem letzten Frost. Ernte nach 75 Tagen",
        ] {
            let Packet { indoors_weeks, days, .. } = read_packet(text, &german.packet, true).packet;
            let span = |span: crate::planning::Span| (span.low, span.high);
            assert_eq!(indoors_weeks.map(span), Some((6, 8)), "{text}");
            assert_eq!(days.map(span), Some((75, 75)), "{text}");
        }
    });
}

//! Spanish: its lists of questions, and what members write besides questions.

use std::sync::OnceLock;

use chrono::NaiveDate;

use super::question_tests::hold;
use super::*;

fn spanish() -> &'static Understanding {
    static SPANISH: OnceLock<Understanding> = OnceLock::new();
    SPANISH.get_or_init(|| {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let names = include_str!("../../../locales/es/crops.toml");
        let names = Names::from_toml(names, &catalogue).expect("the Spanish names");
        let phrases = include_str!("../../../locales/es/phrases.toml");
        Understanding::new(phrases, names).expect("the Spanish phrases")
    })
}

#[test]
fn spanish_questions_are_understood() {
    hold("es", spanish(), include_str!("../../../tests/questions/es.toml"), 100);
}

#[test]
fn spanish_questions_that_were_set_aside_are_understood() {
    let set_aside = include_str!("../../../tests/questions/es_set_aside.toml");
    hold("es, set aside", spanish(), set_aside, 70);
}

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

#[test]
fn days_are_read_as_spanish_writes_them() {
    for (text, on) in [
        ("pepinos el 15 de mayo", "2026-05-15"),
        ("pepinos el 1º de mayo", "2026-05-01"),
        ("pepinos el primero de mayo", "2026-05-01"),
        ("pepinos mayo 15", "2026-05-15"),
        ("pepinos el 3/5", "2026-05-03"),
        ("pepinos el 03.05.2027", "2027-05-03"),
        ("pepinos el sábado", "2026-04-18"),
        ("pepinos el miércoles que viene", "2026-04-22"),
        ("pepinos pasado mañana", "2026-04-17"),
        ("pepinos mañana por la mañana", "2026-04-16"),
        ("pepinos esta mañana", "2026-04-15"),
        ("pepinos este finde", "2026-04-18"),
        ("pepinos dentro de quince días", "2026-04-29"),
        ("pepinos a fines de mayo", "2026-05-25"),
        ("pepinos a fin de mayo", "2026-05-31"),
        ("pepinos el mes que viene", "2026-05-01"),
        ("ya puedo sembrar pepinos en junio?", "2026-06-01"),
    ] {
        let got = spanish().understand(text, day("2026-04-15"));
        assert!(got.date_given, "{text}");
        assert_eq!(got.on, day(on), "{text}");
        assert_eq!(got.crops.len(), 1, "{text}");
    }
}

#[test]
fn what_was_sown_and_what_came_up() {
    let today = day("2026-04-22");
    for (text, crop, count, on) in [
        ("12 albahacas el 3 de abril", "basil", Some(12), "2026-04-03"),
        ("albahaca 12 el 3 de abril", "basil", Some(12), "2026-04-03"),
        ("doce tomates ayer", "tomato", Some(12), "2026-04-21"),
        ("una bandeja de lechugas hace tres días", "lettuce", None, "2026-04-19"),
        ("3 surcos de zanahoria el lunes", "carrot", None, "2026-04-20"),
        ("papas hoy", "potato", None, "2026-04-22"),
    ] {
        let told = spanish().sown_in(text, today);
        let crops: Vec<(&str, Option<u32>)> =
            told.crops.iter().map(|(id, count)| (id.as_str(), *count)).collect();
        assert_eq!(crops, [(crop, count)], "{text}");
        assert_eq!(told.on, ToldDay::On(day(on)), "{text}");
    }
    for (text, came_up) in [
        ("ya brotó la albahaca", Some(CameUp::Yes)),
        ("las zanahorias han salido", Some(CameUp::Yes)),
        ("no salió nada", Some(CameUp::No)),
        ("nada ha germinado", Some(CameUp::No)),
        ("la albahaca no ha nacido", Some(CameUp::No)),
        ("¿cuándo brota la albahaca?", None),
    ] {
        assert_eq!(spanish().came_up_in(text), came_up, "{text}");
    }
}

#[test]
fn questions_lean_on_the_one_before() {
    let today = day("2026-04-15");
    let asked = |first: &str, second: &str| {
        let before = Subject::of(&spanish().understand(first, today));
        let got = spanish().understand_after(second, today, before.as_ref());
        let crops: Vec<String> = got.crops.iter().map(ToString::to_string).collect();
        (got.intent, crops.join(" "), got.step)
    };
    let basil = || "basil".to_owned();
    let cucumber = || "cucumber".to_owned();
    assert_eq!(asked("¿cuándo siembro pepinos?", "¿y la albahaca?"), (Intent::When, basil(), None));
    assert_eq!(
        asked("¿puedo sembrar pepinos?", "¿y afuera?"),
        (Intent::CanStart, cucumber(), Some(Step::SowOutdoors))
    );
    assert_eq!(
        asked("puedo sembrar pepinos ya?", "entonces cuándo?"),
        (Intent::When, cucumber(), None)
    );
    assert_eq!(asked("cuando siembro pepinos", "y en mayo?"), (Intent::CanStart, cucumber(), None));
    assert_eq!(
        asked("puedo sembrar pepinos ya?", "y a que profundidad?"),
        (Intent::How, cucumber(), None)
    );
    assert_eq!(asked("puedo sembrar pepinos ya?", "y la reunión?").0, Intent::Unknown);
}

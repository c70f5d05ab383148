//! The flowers of the catalogue against the published tables of flowers.

use sowbell::planning::{Class, Light, Span};

use super::csv::{Row, rows};
use super::{catalogue, crop};

const GERMINATION: &str = include_str!("../fixtures/flower_germination.csv");
const CLASSES: &str = include_str!("../fixtures/flower_frost_classes.csv");
const SEED_LIFE: &str = include_str!("../fixtures/flower_seed_life.csv");

/// The crop that a row speaks of.
fn id(row: &Row) -> String {
    match row.name.as_str() {
        "Salvia farinacea" | "Salvia splendens" => "salvia".to_owned(),
        "Wax begonia" => "begonia".to_owned(),
        name => name.to_lowercase().replace('\'', "").replace([' ', '-'], "_"),
    }
}

fn celsius(fahrenheit: i64) -> i64 {
    ((fahrenheit - 32) * 10 + 9).div_euclid(18)
}

fn span(row: &Row, index: usize) -> Span {
    let figure = |index| row.number(index).expect("a whole number");
    Span { low: figure(index), high: figure(index + 1) }
}

#[test]
fn they_come_up_as_the_germination_guide_says() {
    let catalogue = catalogue();
    let table = rows(GERMINATION);
    assert_eq!(table.len(), 25);
    for row in &table {
        let id = id(row);
        let crop = crop(&catalogue, &id);
        let printed = span(row, 0);
        let best = Span { low: celsius(printed.low), high: celsius(printed.high) };
        let soil = crop.seed.soil_c.as_ref().expect("from seed");
        assert!(soil.optimum.contains(best), "{id}: {:?} against {best:?}", soil.optimum);
        let days = crop.seed.emerge_days.as_ref().expect("from seed").is;
        assert!(days.contains(span(row, 3)), "{id}: {days:?} against {:?}", span(row, 3));
        let age = crop.indoors.as_ref().expect("raised indoors").age_weeks.workable;
        assert!(age.contains(span(row, 5)), "{id}: {age:?} against {:?}", span(row, 5));
    }
}

#[test]
fn the_light_they_want_is_the_published_one() {
    /// Another guide of the same university keeps its tray dark.
    const KEPT_DARK: &str = "vinca";
    let catalogue = catalogue();
    for row in rows(GERMINATION) {
        let id = id(&row);
        let printed = match row.fields[2].as_str() {
            "L" => Light::Light,
            "D" => Light::Dark,
            "L-D" => Light::Either,
            other => panic!("no light is called '{other}'"),
        };
        let ours = crop(&catalogue, &id).seed.light.as_ref().expect("from seed").is;
        assert_eq!(ours == printed, id != KEPT_DARK, "{id}: {ours:?} against {printed:?}");
    }
}

#[test]
fn classes_are_the_tenderest_that_a_list_gives() {
    let catalogue = catalogue();
    let mut held = 0;
    for row in rows(CLASSES) {
        let [purdue, illinois, minnesota] = row.fields.as_slice() else {
            panic!("three lists for {}", row.name)
        };
        let purdue = match purdue.as_str() {
            "" => None,
            "very hardy" => Some(Class::VeryHardy),
            "frost tolerant" => Some(Class::FrostTolerant),
            "tender" => Some(Class::Tender),
            "warm-loving" => Some(Class::WarmLoving),
            other => panic!("no class is called '{other}'"),
        };
        let illinois = match illinois.as_str() {
            // Hardy is its highest class, so it makes no crop tenderer.
            "" | "hardy" => None,
            "half-hardy" => Some(Class::Tender),
            "tender" => Some(Class::WarmLoving),
            other => panic!("no class is called '{other}'"),
        };
        // What this list means by half-hardy was not seen, so it counts only where it stands alone.
        let minnesota = match minnesota.as_str() {
            "" | "half-hardy" => None,
            "hardy" => Some(Class::VeryHardy),
            other => panic!("no class is called '{other}'"),
        };
        let id = id(&row);
        let ours = crop(&catalogue, &id).class.is;
        match [purdue, illinois, minnesota].into_iter().flatten().max() {
            Some(tenderest) => {
                assert_eq!(ours, tenderest, "{id}");
                held += 1;
            }
            None => assert_eq!(ours, Class::Tender, "{id} is called half-hardy alone"),
        }
    }
    assert_eq!(held, 30);
}

#[test]
fn their_seed_keeps_as_long_as_the_list_says() {
    let catalogue = catalogue();
    let table = rows(SEED_LIFE);
    assert_eq!(table.len(), 17);
    for row in &table {
        let id = id(row);
        let ours = crop(&catalogue, &id).seed.life_years.as_ref().expect("from seed").is;
        assert_eq!(Some(ours), row.number(0), "{id}");
    }
}

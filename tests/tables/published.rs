//! The catalogue against the published tables.

use std::collections::{BTreeMap, BTreeSet};

use sowbell::catalogue::Catalogue;
use sowbell::planning::{Class, CountedFrom, Span};

use super::csv::{Row, rows};
use super::{catalogue, crop};

const WEEKS: &str = include_str!("../fixtures/weeks_to_transplant.csv");
const CLASSES: &str = include_str!("../fixtures/hardiness_classes.csv");
const SOIL: &str = include_str!("../fixtures/soil_temperature_f.csv");
const HARVEST: &str = include_str!("../fixtures/days_to_harvest.csv");
const SEED_LIFE: &str = include_str!("../fixtures/seed_longevity_years.csv");

/// Where the catalogue means to say something else than a table, and why. An entry that no longer
/// deviates must go.
const MEANT: [(&str, &str, &str); 1] = [(
    "days to harvest",
    "sweet_potato",
    "the table has 150 days alone; kinds for short seasons are dug after 100 to 110",
)];

/// Rows that no crop of the catalogue stands for, and why.
const PASSED_OVER: [(&str, &str); 5] = [
    ("Chicory", "not in the catalogue"),
    ("Salsify", "not in the catalogue"),
    ("Asparagus", "planted as crowns, so nothing is said of its seed"),
    ("Lettuce, head", "the catalogue follows the row for leaf lettuce"),
    ("Turnip greens", "the catalogue counts to the root"),
];

/// The crops that a row of a table speaks of.
fn crops_of(name: &str) -> Vec<String> {
    let ids: &[&str] = match name {
        "Bean" => &["bush_bean", "pole_bean", "runner_bean", "lima_bean"],
        "Bean, snap" => &["bush_bean", "pole_bean"],
        "Bean, lima" => &["lima_bean"],
        "Corn, sweet" => &["sweet_corn"],
        "Lettuce, leaf" => &["lettuce"],
        "Muskmelon" => &["melon"],
        "Mustard" => &["mustard_greens"],
        "Onion, bulb" => &["onion"],
        "Salvia farinacea" | "Salvia splendens" => &["salvia"],
        "Squash" => &["summer_squash", "winter_squash"],
        "Swiss chard" => &["chard"],
        "Wax begonia" => &["begonia"],
        "Winter squash and pumpkin" => &["winter_squash", "pumpkin", "gourd"],
        name => return vec![name.to_lowercase().replace('\'', "").replace([' ', '-'], "_")],
    };
    ids.iter().map(|id| (*id).to_owned()).collect()
}

/// Holds every crop to the rows of a table; `deviation` says how a crop departs from its rows.
fn hold(
    table: &str,
    text: &str,
    catalogue: &Catalogue,
    deviation: impl Fn(&str, &[Row]) -> Option<String>,
) {
    let mut of_crop: BTreeMap<String, Vec<Row>> = BTreeMap::new();
    for row in rows(text) {
        if PASSED_OVER.iter().all(|(name, _)| *name != row.name) {
            for id in crops_of(&row.name) {
                of_crop.entry(id).or_default().push(row.clone());
            }
        }
    }
    let meant: BTreeSet<&str> =
        MEANT.iter().filter(|(of, _, _)| *of == table).map(|(_, id, _)| *id).collect();
    let mut wrong = Vec::new();
    for (id, rows) in &of_crop {
        crop(catalogue, id);
        match (deviation(id, rows), meant.contains(id.as_str())) {
            (Some(how), false) => wrong.push(format!("{id}: {how}")),
            (None, true) => wrong.push(format!("{id}: is listed as deviating but does not")),
            _ => {}
        }
    }
    assert!(of_crop.len() > 10, "the table of {table} was read");
    assert!(wrong.is_empty(), "{table}:\n{}", wrong.join("\n"));
}

#[test]
fn ages_lie_within_the_span_of_the_sources() {
    let catalogue = catalogue();
    hold("ages", WEEKS, &catalogue, |id, rows| {
        let low = rows.iter().map(|row| row.number(0).expect("weeks")).min().expect("a row");
        let high = rows.iter().map(|row| row.number(1).expect("weeks")).max().expect("a row");
        let span = Span { low, high };
        let age = &crop(&catalogue, id).indoors.as_ref().expect("raised indoors").age_weeks;
        let within = span.contains(age.ideal) && span.contains(age.workable);
        let wide = age.ideal.high - age.ideal.low >= (high - low).min(2);
        (!within || !wide).then(|| format!("{age:?} against {low} to {high}"))
    });
}

#[test]
fn classes_are_the_tenderest_that_a_source_gives() {
    let catalogue = catalogue();
    hold("classes", CLASSES, &catalogue, |id, rows| {
        let classes =
            rows.iter().flat_map(|row| &row.fields).filter_map(|word| match word.as_str() {
                "" => None,
                "hardy" | "very hardy" => Some(Class::VeryHardy),
                "semi-hardy" | "frost tolerant" => Some(Class::FrostTolerant),
                "tender" => Some(Class::Tender),
                "very tender" | "warm-loving" => Some(Class::WarmLoving),
                other => panic!("no class is called '{other}'"),
            });
        let tenderest = classes.max().expect("a class");
        let ours = crop(&catalogue, id).class.is;
        (ours != tenderest).then(|| format!("{ours:?} against {tenderest:?}"))
    });
}

#[test]
fn germination_temperatures_are_the_published_ones() {
    let catalogue = catalogue();
    let celsius = |fahrenheit: i64| ((fahrenheit - 32) * 10 + 9).div_euclid(18);
    assert_eq!([celsius(32), celsius(50), celsius(60), celsius(95)], [0, 10, 16, 35]);
    hold("soil temperatures", SOIL, &catalogue, |id, rows| {
        let crop = crop(&catalogue, id);
        if !crop.from_seed() {
            return None;
        }
        let soil = crop.seed.soil_c.as_ref().expect("from seed");
        let ours = [soil.minimum, soil.optimum.low, soil.optimum.high, soil.maximum];
        let printed = (0..4).map(|i| rows[0].number(i).map(celsius));
        assert!(id == "celery" || printed.clone().all(|figure| figure.is_some()), "{id}");
        // The table leaves three of celery's figures open.
        let same =
            ours.iter().zip(printed).all(|(ours, printed)| printed.is_none_or(|p| p == *ours));
        (!same).then(|| format!("{ours:?} against {:?} in Fahrenheit", rows[0].fields))
    });
}

#[test]
fn days_to_harvest_are_the_published_ones() {
    let catalogue = catalogue();
    hold("days to harvest", HARVEST, &catalogue, |id, rows| {
        let printed =
            Span::from((rows[0].number(0).expect("days"), rows[0].number(1).expect("days")));
        let from = match rows[0].fields[2].as_str() {
            "sowing" => CountedFrom::Sowing,
            "plants" | "sets or plants" | "slips" => CountedFrom::SettingOut,
            other => panic!("nothing is counted from '{other}'"),
        };
        let harvest = &crop(&catalogue, id).harvest;
        (harvest.days != printed || harvest.counted_from != from)
            .then(|| format!("{harvest:?} against {printed:?} from {from:?}"))
    });
}

#[test]
fn seed_life_is_that_of_good_storage() {
    let catalogue = catalogue();
    hold("seed life", SEED_LIFE, &catalogue, |id, rows| {
        let ours = crop(&catalogue, id).seed.life_years.as_ref().expect("from seed").is;
        let printed = rows[0].number(0).expect("years");
        (ours != printed).then(|| format!("{ours} against {printed} years"))
    });
}

#[test]
fn every_meant_deviation_names_a_table_and_a_crop() {
    let catalogue = catalogue();
    let tables = ["ages", "classes", "soil temperatures", "days to harvest", "seed life"];
    for (table, id, reason) in MEANT {
        assert!(tables.contains(&table), "no table is called {table}");
        assert!(!reason.is_empty());
        crop(&catalogue, id);
    }
    let all = [WEEKS, CLASSES, SOIL, HARVEST, SEED_LIFE];
    for (name, _) in PASSED_OVER {
        let printed = all.iter().any(|text| rows(text).iter().any(|row| row.name == name));
        assert!(printed, "no table has a row for {name}");
    }
}

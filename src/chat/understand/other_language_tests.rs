//! The engine in another language: a handful of German words and phrases, and no program text.

use std::fmt::Write as _;
use std::sync::OnceLock;

use chrono::NaiveDate;

use super::*;

const PHRASES: &str = r#"
objects = "around"
small_words = """
ich wir man kann koennen soll sollen darf muss jetzt noch schon die der das den dem ein eine einen meine meinen und oder in im ins
ist es zu fuer bitte mal wieder sie gross grosse am auf
"""
bare_words = "und die der das meine bitte noch auch jetzt mit ist es"
ordinary_words = "auto treffen suppe rezept neue feuer"

[spelling]
fold = [["ae", "a"], ["oe", "o"], ["ue", "u"]]
compound_fronts = "freiland gewaechshaus gewachshaus"
compound_links = "n s"
compound_tails = "samen saatgut pflanzen jungpflanzen"

[names]
forgiving = "aussaen pflanzen wann"
plural_endings = [["en", ""], ["n", ""], ["e", ""], ["s", ""]]
and = "und oder"
before = "die der das meine ein eine"
behind = "samen saatgut pflanzen jungpflanzen"
other_plants = "quitte"
inside = "baum"
asked_after = []
asked_before = ["@saen"]
not_crops = ["tomaten suppe"]

[calendar]
months = [
    "januar", "februar", "marz", "april", "mai", "juni", "juli", "august", "september", "oktober", "november", "dezember",
]
weekdays = ["montag", "dienstag", "mittwoch", "donnerstag", "freitag", "samstag sonnabend", "sonntag"]
units = ["tag tage tagen", "woche wochen", "monat monate monaten"]
unclear = ""
day_endings = "ter ten"
figures = "day_first"

[calendar.numbers]
ein = 1
einer = 1
zwei = 2
drei = 3

[[classes]]
name = "saen"
ways = ["saen", "aussaen", "vorziehen", "pflanzen", "starten"]

[[classes]]
name = "draussen"
ways = ["(draussen|raus|aussen)", "ins (freie|freiland|beet)", "nach draussen"]

[[classes]]
name = "place"
ways = ["@draussen"]

[[classes]]
name = "link"
ways = ["neben", "uber", "mit", "fur"]

[[dates]]
read_as = "today"
patterns = ["heute", "jetzt"]

[[dates]]
read_as = "in_units"
patterns = ["in {number} {unit}"]

[[dates]]
read_as = "next_weekday"
patterns = ["(nachsten|kommenden) {weekday}"]

[[dates]]
read_as = "month_day"
patterns = ["[am|den] {day} {month} [{year}]"]

[[dates]]
read_as = "end_of_month"
patterns = ["ende {month}"]

[[dates]]
read_as = "units_back"
patterns = ["vor {number} {unit}"]

[[kinds]]
is = "herb"
patterns = ["krauter"]

[[steps]]
is = "plant_out"
patterns = ["(auspflanzen|rauspflanzen)", "(konnen|durfen|sollen) .. @draussen"]

[[steps]]
is = "sow_outdoors"
patterns = ["@draussen"]

[[intents]]
is = "when"
with_crop = "object"
without_crop = "known"
patterns = ["wann .. (@saen|raus|auspflanzen)", "wann"]

[[intents]]
is = "what_now"
with_crop = "never"
without_crop = "object"
patterns = ["was .. @saen"]

[[intents]]
is = "can_start"
with_crop = "object"
without_crop = "never"
patterns = ["(kann|soll|darf) (ich|man) .. (@saen|auspflanzen)", "(konnen|durfen) .. @draussen"]

[[intents]]
is = "can_start"
with_crop = "bare"
without_crop = "never"
leans = true
patterns = ["{crop}"]

[follow_ups]
pronouns = "sie"
patterns = ["[und] ({date}|@draussen)"]

[frost]
words = "frost"
last = ["letzter"]
first = ["erster"]
free = ["kein frost"]
average = ["mittel"]
trusted = ["sicher"]

[sowing]
came_up = ["aufgegangen"]
not_up = ["nichts .. aufgegangen"]
unless = ["wann"]
articles = "ein eine einen"
not_counts = "reihe reihen grad c"

[figures]
percent = "prozent"
degrees = "grad"
celsius = "c"
fahrenheit = "f"

[figures.numbers]
zwei = 2

[[figures.quantities]]
read_as = "celsius"
patterns = ["{figure} [grad] (c|grad)"]
"#;

fn german() -> &'static Understanding {
    static GERMAN: OnceLock<Understanding> = OnceLock::new();
    GERMAN.get_or_init(|| {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let mut names = String::new();
        for crop in catalogue.iter() {
            let (name, plural, alias) = match crop.id.as_str() {
                "cucumber" => ("Gurke", "Gurken", "Salatgurke"),
                "tomato" => ("Tomate", "Tomaten", "Paradeiser"),
                "pumpkin" => ("Kürbis", "Kürbisse", "Speisekürbis"),
                "basil" => ("Basilikum", "Basilikum", "Königskraut"),
                "broad_bean" => ("Dicke Bohne", "Dicke Bohnen", "Puffbohne"),
                other => (other, other, other),
            };
            let id = &crop.id;
            writeln!(names, "[{id}]\nname = '{name}'\nplural = '{plural}'\naliases = ['{alias}']")
                .expect("written");
        }
        let names = Names::from_toml(&names, &catalogue).expect("the names");
        Understanding::new(PHRASES, names).expect("the phrases")
    })
}

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

/// On a Wednesday.
fn understood(text: &str) -> Understood {
    german().understand(text, day("2026-04-15"))
}

#[test]
fn questions_with_the_verb_at_their_end() {
    for (text, is, crops) in [
        ("Wann soll ich Gurken säen", Intent::When, vec!["cucumber"]),
        ("wann soll ich gurken saeen", Intent::When, vec!["cucumber"]),
        ("kann ich jetzt Gurken aussäen?", Intent::CanStart, vec!["cucumber"]),
        ("kann ich die grossen gelben Tomaten säen", Intent::CanStart, vec!["tomato"]),
        ("Gurkensamen jetzt aussaeen", Intent::Unknown, vec!["cucumber"]),
        ("kann ich Gurkensamen säen", Intent::CanStart, vec!["cucumber"]),
        ("können Tomatenpflanzen raus?", Intent::CanStart, vec!["tomato"]),
        ("kann ich Freilandgurken säen", Intent::CanStart, vec!["cucumber"]),
        ("Kuerbis?", Intent::CanStart, vec!["pumpkin"]),
        ("kürbisse und Tomatn", Intent::CanStart, vec!["pumpkin", "tomato"]),
        ("Königskraut", Intent::CanStart, vec!["basil"]),
        ("koenigskraut", Intent::CanStart, vec!["basil"]),
        ("dicken Bohnen", Intent::CanStart, vec!["broad_bean"]),
        ("was kann ich jetzt säen", Intent::WhatNow, vec![]),
        // Not about a crop.
        ("kann ich jetzt mein Auto starten", Intent::Unknown, vec![]),
        ("kann ich neben den Tomaten mein Auto starten", Intent::Unknown, vec!["tomato"]),
        ("kann ich das Treffen über Tomaten starten", Intent::Unknown, vec!["tomato"]),
        ("Tomatensuppe", Intent::Unknown, vec![]),
    ] {
        let got = understood(text);
        let named: Vec<&str> = got.crops.iter().map(CropId::as_str).collect();
        assert_eq!((got.intent, named), (is, crops), "{text}");
    }
    let got = understood("kann ich Quinoa säen");
    assert_eq!(got.unknown_words[0].written, "Quinoa");
    assert_eq!(understood("welche Kräuter").kind, Some(Kind::Herb));
    assert_eq!(understood("welche Kraeuter").kind, Some(Kind::Herb));
    assert_eq!(understood("wann können die Tomaten raus").step, Some(Step::PlantOut));
}

#[test]
fn dates_in_their_own_order() {
    for (text, on) in [
        ("Gurken nächsten Samstag", "2026-04-18"),
        ("Gurken naechsten Samstag", "2026-04-18"),
        ("Gurken in zwei Wochen", "2026-04-29"),
        ("Gurken am 1. Mai", "2026-05-01"),
        ("Gurken am 1.5.", "2026-05-01"),
        ("Gurken am 01.05.2027?", "2027-05-01"),
        ("Gurken Ende Mai", "2026-05-31"),
        ("Gurken 3/5", "2026-05-03"),
    ] {
        let got = understood(text);
        assert!(got.date_given, "{text}");
        assert_eq!(got.on, day(on), "{text}");
        assert_eq!(got.crops.len(), 1, "{text}");
    }
    let trouble = |text: &str| understood(text).date_trouble;
    assert_eq!(trouble("Gurken am 31.4."), Some(DateTrouble::Impossible("31.4".to_owned())));
    assert_eq!(
        trouble("Gurken am 31. April"),
        Some(DateTrouble::Impossible("am 31 April".to_owned()))
    );
}

#[test]
fn sowings_and_what_follows() {
    let today = day("2026-04-22");
    let degrees = |told: &SownText| told.warmth.map(|warmth| warmth.degrees.value());
    let told = german().sown_in("zwei Gurken und 12 Tomaten vor drei Tagen bei 18 Grad", today);
    let counts: Vec<(&str, Option<u32>)> =
        told.crops.iter().map(|(id, count)| (id.as_str(), *count)).collect();
    assert_eq!(counts, [("cucumber", Some(2)), ("tomato", Some(12))]);
    assert_eq!(told.on, ToldDay::On(day("2026-04-19")));
    assert_eq!(degrees(&told), Some(18.0));
    let told = german().sown_in("eine Gurke, 3 Reihen Tomaten bei 20c", today);
    assert_eq!(told.crops.iter().map(|(_, count)| *count).collect::<Vec<_>>(), [None, None]);
    assert_eq!(degrees(&told), Some(20.0));
    assert_eq!(german().came_up_in("Nichts ist aufgegangen"), Some(CameUp::No));

    let first = Subject::of(&understood("Wann soll ich Gurken säen?"));
    let got = german().understand_after("und die Tomaten?", today, first.as_ref());
    assert_eq!((got.intent, got.crops[0].as_str()), (Intent::When, "tomato"));
    let got = german().understand_after("und am 1. Mai?", today, first.as_ref());
    assert_eq!((got.intent, got.crops[0].as_str()), (Intent::CanStart, "cucumber"));
}

#[test]
fn lists_take_compounds_and_other_spellings() {
    let list = german().crops_in("Gurkensamen, 3 Kuerbisse und Dicke Bohnen");
    let found: Vec<&str> = list.found.iter().map(CropId::as_str).collect();
    assert_eq!(found, ["cucumber", "pumpkin", "broad_bean"]);
}

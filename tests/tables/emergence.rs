//! Days to come up, against every field of the published table.

use sowbell::planning::{
    Believe, CropId, Emergence, EmergenceRow, Label, ReadBetween, Side, SoilVerdict, Verdict,
    days_to_emerge, fit_soil_c, soil_verdict, standard_rate, which_to_believe,
};

use super::csv::{Row, rows};
use super::{catalogue, crop};

/// The table's names and the crop that each is held against.
const CROPS: [(&str, &str); 24] = [
    ("Asparagus", "asparagus"),
    ("Bean, lima", "lima_bean"),
    ("Bean, snap", "bush_bean"),
    ("Beet", "beet"),
    ("Cabbage", "cabbage"),
    ("Carrot", "carrot"),
    ("Cauliflower", "cauliflower"),
    ("Celery", "celery"),
    ("Corn, sweet", "sweet_corn"),
    ("Cucumber", "cucumber"),
    ("Eggplant", "eggplant"),
    ("Lettuce", "lettuce"),
    ("Muskmelon", "melon"),
    ("Okra", "okra"),
    ("Onion", "onion"),
    ("Parsley", "parsley"),
    ("Parsnip", "parsnip"),
    ("Pea", "pea"),
    ("Pepper", "pepper"),
    ("Radish", "radish"),
    ("Spinach", "spinach"),
    ("Tomato", "tomato"),
    ("Turnip", "turnip"),
    ("Watermelon", "watermelon"),
];

fn table() -> Vec<Row> {
    rows(include_str!("../fixtures/days_to_emerge.csv"))
}

fn each_row() -> impl Iterator<Item = (Row, CropId)> {
    let table = table();
    assert_eq!(table.len(), CROPS.len());
    table.into_iter().map(|row| {
        let id = CROPS.iter().find(|(name, _)| *name == row.name).expect("a known row").1;
        (row, CropId::new(id))
    })
}

fn at(crop: &str, soil_c: f64) -> Emergence {
    days_to_emerge(&CropId::new(crop), soil_c)
}

#[test]
fn every_field_of_the_table_is_answered_as_printed() {
    for (row, id) in each_row() {
        assert_eq!(row.fields.len(), 9, "{}", row.name);
        let first = row.fields.iter().position(|field| field.parse::<f64>().is_ok());
        let first = first.expect("some days");
        for (index, field) in (0_u32..).zip(&row.fields) {
            let soil_c = f64::from(index) * 5.0;
            let hot = usize::try_from(index).expect("small") > first;
            let want = match field.as_str() {
                "NG" if hot => Emergence::NotAtAll(Side::TooHot),
                "NG" => Emergence::NotAtAll(Side::TooCold),
                "-" => Emergence::NotTested,
                days => Emergence::Days(days.parse().expect("days")),
            };
            assert_eq!(days_to_emerge(&id, soil_c), want, "{} at {soil_c}", row.name);
        }
    }
}

#[test]
fn half_way_between_two_fields_only_days_are_interpolated() {
    for (row, id) in each_row() {
        for index in 0..8_u32 {
            let place = usize::try_from(index).expect("small");
            let (low, high) = (row.fields[place].as_str(), row.fields[place + 1].as_str());
            let soil_c = f64::from(index) * 5.0 + 2.5;
            let got = days_to_emerge(&id, soil_c);
            let what = format!("{} at {soil_c}: {got:?}", row.name);
            match (low.parse::<f64>(), high.parse::<f64>()) {
                (Ok(low), Ok(high)) => {
                    assert_eq!(got, Emergence::Days(f64::midpoint(low, high)), "{what}");
                }
                _ if low == "-" || high == "-" => assert_eq!(got, Emergence::NotTested, "{what}"),
                (Err(_), Err(_)) => assert!(matches!(got, Emergence::NotAtAll(_)), "{what}"),
                (Ok(counted), Err(_)) | (Err(_), Ok(counted)) => {
                    let Emergence::Uncertain { days, .. } = got else { panic!("{what}") };
                    assert!((days - counted).abs() < f64::EPSILON, "{what}");
                }
            }
        }
    }
}

#[test]
fn nothing_is_extrapolated() {
    for (_, id) in each_row() {
        for soil_c in [-20.0, -0.1, 40.1, 60.0, f64::NAN, f64::INFINITY] {
            assert_eq!(days_to_emerge(&id, soil_c), Emergence::NotTested, "{id} at {soil_c}");
        }
    }
    assert_eq!(ReadBetween::at(40.1), None);
    assert_eq!(ReadBetween::at(40.0), Some(ReadBetween { low_c: 40, high_c: 40 }));
    assert_eq!(ReadBetween::at(18.0), Some(ReadBetween { low_c: 15, high_c: 20 }));
}

#[test]
fn readings_that_follow_from_the_table() {
    // Pepper: 25 days at 15, 13 at 20; three fifths of the way at 18 °C: 25 - 7.2 = 17.8.
    let Emergence::Days(days) = at("pepper", 18.0) else { panic!("counted") };
    assert!((days - 17.8).abs() < 1e-9);
    // Snap bean: none at 10 °C, 16 days at 15 °C.
    assert_eq!(
        at("bush_bean", 14.0),
        Emergence::Uncertain { side: Side::TooCold, none_at_c: 10, counted_at_c: 15, days: 16.0 }
    );
    // Celery: 7 days at 20 °C, none at 25 °C.
    let celery = at("celery", 22.0);
    assert!(matches!(celery, Emergence::Uncertain { side: Side::TooHot, none_at_c: 25, .. }));
}

#[test]
fn rows_of_relatives_are_marked_and_no_other_crop_borrows_one() {
    let catalogue = catalogue();
    let relatives: Vec<&str> = catalogue
        .iter()
        .filter(|crop| EmergenceRow::of(&crop.id).is_some_and(|row| row.relative.is_some()))
        .map(|crop| crop.id.as_str())
        .collect();
    assert_eq!(
        relatives,
        [
            "runner_bean",
            "broccoli",
            "brussels_sprouts",
            "kale",
            "collards",
            "kohlrabi",
            "chard",
            "celeriac"
        ]
    );
    for id in ["basil", "zinnia", "summer_squash", "chinese_cabbage", "potato", "nothing", ""] {
        assert_eq!(at(id, 20.0), Emergence::NoTable, "{id}");
    }
}

fn soil(id: &str, soil_c: f64) -> SoilVerdict {
    soil_verdict(crop(&catalogue(), id), soil_c).expect("from seed")
}

#[test]
fn over_three_weeks_counts_as_too_cold_however_low_the_minimum() {
    // Tomato: its minimum is 10 °C, where it takes 43 days; at 15 °C it takes 14.
    assert_eq!(soil("tomato", 10.0), SoilVerdict::TooCold);
    assert_eq!(soil("tomato", 15.0), SoilVerdict::Warm(Some(14.0)));
    // Carrot: 51 days at 5 °C, 17 at 10 °C; 21 days lie at 5 + 5 * 30 / 34 = 9.41 °C.
    assert_eq!(soil("carrot", 9.4), SoilVerdict::TooCold);
    assert!(matches!(soil("carrot", 9.5), SoilVerdict::Warm(Some(days)) if days < 21.0));
    let (coolest, _) = fit_soil_c(crop(&catalogue(), "carrot")).expect("from seed");
    assert!((coolest - 9.5).abs() < 1e-9);
}

#[test]
fn untested_soil_is_not_warmer_than_a_tested_one_that_is_too_cold() {
    // Pea: 36 days at 5 °C, 14 at 10 °C, not tested at 0 °C; its published minimum is 4 °C.
    assert_eq!(soil("pea", 4.5), SoilVerdict::TooCold);
    assert_eq!(soil("pea", 8.0), SoilVerdict::TooCold);
    // 36 - 22 / 5 * (t - 5) = 21 at 8.41 °C.
    let (coolest, _) = fit_soil_c(crop(&catalogue(), "pea")).expect("from seed");
    assert!((coolest - 8.5).abs() < 1e-9, "{coolest}");
}

#[test]
fn from_the_coolest_fit_soil_to_the_warmest_nothing_is_too_cold_or_too_hot() {
    for crop in catalogue().iter().filter(|crop| crop.from_seed()) {
        let (coolest, warmest) = fit_soil_c(crop).expect("a range");
        let mut soil_c = coolest;
        while soil_c <= warmest {
            let fits = matches!(
                soil_verdict(crop, soil_c),
                Some(SoilVerdict::Warm(_) | SoilVerdict::Cool)
            );
            assert!(fits, "{} at {soil_c}", crop.id);
            soil_c += 0.5;
        }
    }
}

#[test]
fn the_published_minimum_is_met_in_the_units_it_was_published_in() {
    // 60 °F, which is 15.56 °C and kept as 16 (UC ANR Publication 3382, table 5.2).
    let f60 = (60.0 - 32.0) / 1.8;
    assert!(matches!(soil("bush_bean", f60), SoilVerdict::Warm(Some(_))));
    assert_eq!(soil("bush_bean", 15.0), SoilVerdict::TooCold);
    assert_eq!(soil("pea", 0.0), SoilVerdict::TooCold);
}

#[test]
fn heat_and_what_no_trial_tells() {
    // Lettuce: none at 35 °C; the range ends at 29 °C.
    assert_eq!(soil("lettuce", 33.0), SoilVerdict::TooHot);
    // Cabbage at 7 °C was not tested; its range begins at 4 °C and is good from 16 °C.
    assert_eq!(soil("cabbage", 7.0), SoilVerdict::Cool);
    // Basil is not in the table: its own range is all there is.
    assert_eq!(soil("basil", 12.0), SoilVerdict::TooCold);
    assert_eq!(soil("basil", 16.0), SoilVerdict::Cool);
    assert_eq!(soil("basil", 20.0), SoilVerdict::Warm(None));
    assert_eq!(soil_verdict(crop(&catalogue(), "potato"), 12.0), None);
}

#[test]
fn which_to_believe_where_soil_and_date_differ() {
    let catalogue = catalogue();
    let (pea, bean) = (crop(&catalogue, "pea"), crop(&catalogue, "bush_bean"));
    let (warm, cold) = (SoilVerdict::Warm(Some(9.0)), SoilVerdict::TooCold);
    let told = |crop, soil, verdict| {
        let advice = which_to_believe(crop, soil, Some((verdict, Label::Spring)));
        (advice.sow, advice.believe)
    };
    for crop in [pea, bean] {
        // Cold soil is believed against a date that would be right.
        assert_eq!(told(crop, cold, Verdict::OnTime), (false, Believe::Soil));
        assert_eq!(told(crop, warm, Verdict::OnTime), (true, Believe::Both));
        assert_eq!(told(crop, cold, Verdict::TooEarly), (false, Believe::Both));
        assert_eq!(told(crop, warm, Verdict::TooLate), (false, Believe::Date));
    }
    // Warm soil is believed against an early date only where no frost kills what comes up.
    assert_eq!(told(pea, warm, Verdict::TooEarly), (true, Believe::Soil));
    assert_eq!(told(bean, warm, Verdict::TooEarly), (false, Believe::Date));
    assert_eq!(told(bean, warm, Verdict::Early), (false, Believe::Date));
    // A window of the autumn is not moved by warm soil.
    let autumn = which_to_believe(pea, warm, Some((Verdict::TooEarly, Label::Autumn)));
    assert!(!autumn.sow);
    assert!(which_to_believe(bean, warm, None).sow);
    assert!(!which_to_believe(bean, cold, None).sow);
}

#[test]
fn fresh_seed_has_a_standard_or_none() {
    assert_eq!(standard_rate(&CropId::new("lettuce")), Some(0.8));
    assert_eq!(standard_rate(&CropId::new("zinnia")), None);
}

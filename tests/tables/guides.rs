//! The catalogue against tables that it names as a source for some of its figures, and only there:
//! planting guides of extension services, and the standard germination tests.

use std::collections::BTreeMap;

use sowbell::planning::{Crop, Light, Sources};

use super::csv::{Row, rows};
use super::{catalogue, crop};

const GUIDES: &str = include_str!("../fixtures/planting_guides.csv");
const TESTS: &str = include_str!("../fixtures/germination_tests.csv");

/// What a guide prints of one crop, in inches.
struct Printed {
    depth: Option<(f64, f64)>,
    plants: Option<(f64, f64)>,
    rows: Option<(f64, f64)>,
}

fn pair(row: &Row, at: usize) -> Option<(f64, f64)> {
    let number = |at: usize| row.fields.get(at).and_then(|field| field.parse().ok());
    number(at).zip(number(at + 1))
}

/// Every row, by the id of its crop and by its source.
fn guides() -> BTreeMap<String, BTreeMap<String, Printed>> {
    let mut guides: BTreeMap<String, BTreeMap<String, Printed>> = BTreeMap::new();
    for row in rows(GUIDES) {
        let source = row.fields.first().expect("a source").clone();
        let printed = Printed { depth: pair(&row, 1), plants: pair(&row, 3), rows: pair(&row, 5) };
        let of_crop = guides.entry(row.name.replace(' ', "_")).or_default();
        assert!(of_crop.insert(source, printed).is_none(), "{} stands twice", row.name);
    }
    guides
}

/// The span of what the cited guides print, if every source that is cited is one of them.
fn span<'s>(
    cited: impl Iterator<Item = &'s str>,
    of_crop: &BTreeMap<String, Printed>,
    what: impl Fn(&Printed) -> Option<(f64, f64)>,
) -> Option<(f64, f64)> {
    let mut whole: Option<(f64, f64)> = None;
    for id in cited {
        let printed = of_crop.get(id)?;
        // A guide may be cited for one of two distances that stand in one line.
        let Some((low, high)) = what(printed) else { continue };
        whole = Some(whole.map_or((low, high), |(l, h)| (low.min(l), high.max(h))));
    }
    whole
}

fn as_float(number: i64) -> f64 {
    f64::from(i32::try_from(number).expect("a small number"))
}

#[test]
fn depths_are_those_of_the_guides_that_are_named() {
    let catalogue = catalogue();
    let mut held = 0;
    for (id, of_crop) in guides() {
        let Some(ours) = &crop(&catalogue, &id).seed.depth_mm else { continue };
        let Some((low, high)) = span(ours.source.ids(), &of_crop, |p| p.depth) else { continue };
        // Rounded to whole millimetres, or to five centimetres' tens for tubers and crowns.
        for (ours, printed) in [(ours.is.low, low), (ours.is.high, high)] {
            let off = (as_float(ours) - printed * 25.4).abs();
            assert!(off <= if printed > 2.0 { 4.0 } else { 0.5 }, "{id}: {ours} mm, {printed} in");
        }
        held += 1;
    }
    assert!(held >= 20, "only {held} crops rest on the guides alone");
}

#[test]
fn distances_lie_within_those_of_the_guides_that_are_named() {
    let catalogue = catalogue();
    let mut held = 0;
    for (id, of_crop) in guides() {
        let ours = &crop(&catalogue, &id).outdoors.spacing_cm;
        let plants = span(ours.source.ids(), &of_crop, |p| p.plants);
        let rows = span(ours.source.ids(), &of_crop, |p| p.rows);
        for (ours, printed) in [(ours.plants, plants), (ours.rows, rows)] {
            let Some((low, high)) = printed else { continue };
            let inches = as_float(ours) / 2.54;
            // Rounded to five centimetres, and to ten from a metre on.
            let round = if inches < 40.0 { 1.0 } else { 2.0 };
            let fits = (low - round..=high + round).contains(&inches);
            assert!(fits, "{id}: {ours} cm, {low}-{high} in");
            held += 1;
        }
    }
    assert!(held >= 40, "only {held} distances rest on the guides alone");
}

/// The crops that a kind of the seed regulations stands for.
fn crops_of(kind: &str) -> Vec<String> {
    let ids: &[&str] = match kind {
        "Bean, garden" => &["bush_bean", "pole_bean"],
        "Bean, lima" => &["lima_bean"],
        "Bean, runner" => &["runner_bean"],
        "Chard, Swiss" => &["chard"],
        "Corn, sweet" => &["sweet_corn"],
        "Cress, garden" => &["cress"],
        "Mustard, India" => &["mustard_greens"],
        "Onion, Welsh" => &["scallion"],
        "Pak-choi" => &["bok_choy"],
        "Squash" => &["summer_squash", "winter_squash"],
        "Tomato, husk" => &["tomatillo"],
        kind => return vec![kind.to_lowercase().replace(' ', "_")],
    };
    ids.iter().map(|id| (*id).to_owned()).collect()
}

fn each_kind(mut check: impl FnMut(&Crop, &Row)) {
    let catalogue = catalogue();
    let mut cited: Vec<String> = catalogue
        .iter()
        .filter(|crop| {
            let light = crop.seed.light.as_ref().map(|light| &light.source);
            light.into_iter().flat_map(Sources::ids).any(|id| id == "fsa_201_58")
        })
        .map(|crop| crop.id.as_str().to_owned())
        .collect();
    for row in rows(TESTS) {
        for id in crops_of(&row.name) {
            check(crop(&catalogue, &id), &row);
            cited.retain(|other| *other != id);
        }
    }
    assert!(cited.is_empty(), "the regulations have no row for {cited:?}");
}

#[test]
fn light_is_needed_where_the_standard_test_requires_it() {
    each_kind(|crop, row| {
        let light = crop.seed.light.as_ref().expect("from seed");
        if light.source.ids().any(|id| id == "fsa_201_58") {
            let required = row.fields[3] == "required";
            let ours = if required { Light::Light } else { Light::Either };
            assert_eq!(light.is, ours, "{}", crop.id);
        }
    });
}

/// The counts of the laboratory are not the days of a pot, so no figure is taken from them; but
/// seed that comes up after the last count, or before the first, would contradict them.
#[test]
fn days_to_come_up_overlap_the_counts_of_the_standard_test() {
    let mut held = 0;
    each_kind(|crop, row| {
        let days = crop.seed.emerge_days.as_ref().expect("from seed").is;
        let (first, last) = (row.number(0), row.number(1).expect("a last count"));
        assert!(days.low <= last, "{} comes up after the last count", crop.id);
        assert!(first.is_none_or(|first| days.high >= first), "{} before the first", crop.id);
        held += 1;
    });
    assert!(held >= 40, "only {held} crops are held to the standard test");
}

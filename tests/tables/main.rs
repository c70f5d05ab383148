//! The built-in catalogue against the published tables it rests on, against what the club agreed
//! on, and against the planning rules that read it.

#![expect(
    clippy::expect_used,
    clippy::panic,
    reason = "a test stops at the first thing that is wrong"
)]

mod agreed;
mod csv;
mod emergence;
mod emoji;
mod flowers;
mod french;
mod frost_free;
mod german;
mod guides;
mod listed;
mod ordered;
mod places;
mod published;
mod rules;
mod spanish_names;
mod trays;
mod zones;

use sowbell::catalogue::Catalogue;
use sowbell::planning::{Basis, Crop, FrostDates};

fn catalogue() -> Catalogue {
    Catalogue::embedded().expect("the built-in catalogue is sound")
}

fn crop<'a>(catalogue: &'a Catalogue, id: &str) -> &'a Crop {
    catalogue.get(id).unwrap_or_else(|| panic!("the catalogue has no {id}"))
}

fn frost(last: &str, first: &str, basis: Basis) -> FrostDates {
    let day = |text: &str| text.parse().expect("a month-day");
    FrostDates::new(day(last), Some(day(first)), basis).expect("frost dates")
}

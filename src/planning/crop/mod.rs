//! What the trade states about a crop.

mod class;
mod habit;
mod harvest;
mod indoors;
mod outdoors;
mod seed;
mod sourced;

use std::fmt;

use serde::{Deserialize, Serialize};

pub use class::Class;
pub use habit::{Caution, Disturbance, Kind, LifeCycle, Rhythm, StartFrom, Vigour, Way};
pub use harvest::{Autumn, CountedFrom, Harvest, HarvestKind};
pub use indoors::{CellSize, CellStay, Indoors, PlantAge};
pub use outdoors::{Bolting, DirectSowing, Outdoors, Spacing};
pub use seed::{Light, PreTreatment, Seed, SoilTemperature, Treatment};
pub use sourced::{Sourced, Sources, Span};

/// The plain English id of a crop in `snake_case`, as the catalogue lists it.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
#[derive(Default)]
pub struct CropId(String);

impl CropId {
    /// Wraps an id; whether the catalogue knows it is the catalogue's to say.
    pub fn new(id: impl Into<String>) -> Self {
        Self(id.into())
    }

    /// The id as text.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for CropId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// A crop with every quantity that planning and answers need, each with its source.
///
/// Planning reads the effective values ([`Crop::class`] and the four that follow from a class);
/// the catalogue fills those from the class where a crop states none of its own.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Crop {
    /// The id; the catalogue takes it from the entry's key.
    #[serde(skip)]
    pub id: CropId,
    /// Vegetable, herb or flower.
    pub kind: Kind,
    /// What it is started from, the usual first.
    pub start_from: Vec<StartFrom>,
    /// Annual, biennial or perennial as grown in a cold climate.
    pub life: LifeCycle,
    /// The year (1 or 2) in which it crops or flowers.
    pub crops_in_year: i64,
    /// Its rhythm in the spring.
    pub rhythm: Rhythm,
    /// Ways of starting it from seed, the better first.
    pub ways: Vec<Way>,
    /// Whether sowing some indoors now and some outdoors later is a wise hedge.
    #[serde(default)]
    pub hedge: bool,
    /// Root disturbance.
    pub disturbance: Disturbance,
    /// Vigour in the tray.
    pub vigour: Vigour,
    /// Cautions that stand with its answers.
    #[serde(default)]
    pub cautions: Vec<Caution>,
    /// Planting class.
    pub class: Sourced<Class>,
    /// Usual setting out, weeks from the average last frost; from the class where absent.
    pub setting_out_weeks: Option<Sourced<Span>>,
    /// Earliest setting out under fleece or a cloche, weeks from the average last frost.
    pub under_cover_weeks: Option<Sourced<i64>>,
    /// Last worthwhile spring setting out of a crop that summer heat ends, same zero.
    pub spring_ends_weeks: Option<Sourced<i64>>,
    /// Last worthwhile indoor sowing where common practice ends it earlier, same zero.
    pub latest_start_weeks: Option<Sourced<i64>>,
    /// Air temperature in degrees Celsius that kills the growing plant.
    pub killed_at_c: Option<Sourced<i64>>,
    /// Coldest night in degrees Celsius that a hardened plant bears.
    pub coldest_night_c: Option<Sourced<i64>>,
    /// Raising indoors; absent where it is never done.
    pub indoors: Option<Indoors>,
    /// The seed.
    #[serde(default)]
    pub seed: Seed,
    /// Life in the ground.
    pub outdoors: Outdoors,
    /// Harvest or bloom.
    pub harvest: Harvest,
    /// A second sowing for autumn, where usual.
    pub autumn: Option<Autumn>,
    /// Autumn planting, weeks from the average first frost.
    pub autumn_planting_weeks: Option<Sourced<Span>>,
    /// Summer sowing for the next year, weeks after the average last frost.
    pub summer_sowing_weeks: Option<Sourced<Span>>,
}

impl Crop {
    /// Whether it is started from seed at all.
    #[must_use]
    pub fn from_seed(&self) -> bool {
        self.start_from.contains(&StartFrom::Seed)
    }

    /// Whether a frost kills the growing plant: its killing temperature is -1 °C or above.
    #[must_use]
    pub fn frost_kills(&self) -> bool {
        self.killed_at_c() >= -1
    }

    /// Usual setting out in weeks from the average last frost.
    #[must_use]
    pub fn setting_out(&self) -> Span {
        self.setting_out_weeks.as_ref().map_or_else(|| self.class.is.setting_out(), |s| s.is)
    }

    /// Earliest setting out under cover in weeks from the average last frost.
    #[must_use]
    pub fn under_cover(&self) -> i64 {
        let own = self.under_cover_weeks.as_ref().map(|s| s.is);
        own.unwrap_or_else(|| self.class.is.under_cover().min(self.setting_out().low))
    }

    /// Air temperature in degrees Celsius that kills the growing plant.
    #[must_use]
    pub fn killed_at_c(&self) -> i64 {
        self.killed_at_c.as_ref().map_or_else(|| self.class.is.killed_at_c(), |s| s.is)
    }

    /// Coldest night in degrees Celsius that a hardened plant bears without harm.
    #[must_use]
    pub fn coldest_night_c(&self) -> i64 {
        self.coldest_night_c.as_ref().map_or_else(|| self.class.is.coldest_night_c(), |s| s.is)
    }

    /// Coldest night in degrees Celsius that it is hardened off through: 7 °C, or what a crop needs
    /// that bears less cold than that. University of Maryland Extension, 2023, gives 45 °F for
    /// tender seedlings; that it holds for hardy ones before they are hardened is our own, careful
    /// reading.
    #[must_use]
    pub fn hardening_night_c(&self) -> i64 {
        self.coldest_night_c().max(7)
    }
}

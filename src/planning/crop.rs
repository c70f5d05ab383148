//! What the trade states about a crop.

use std::fmt;

use serde::{Deserialize, Serialize};

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

/// A closed range from `low` to `high`, written `[low, high]`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(from = "(i64, i64)", into = "(i64, i64)")]
pub struct Span {
    /// The lower end, included.
    pub low: i64,
    /// The upper end, included.
    pub high: i64,
}

impl From<(i64, i64)> for Span {
    fn from((low, high): (i64, i64)) -> Self {
        Self { low, high }
    }
}

impl From<Span> for (i64, i64) {
    fn from(span: Span) -> Self {
        (span.low, span.high)
    }
}

impl Span {
    /// Whether `low` is not above `high`.
    #[must_use]
    pub fn ordered(self) -> bool {
        self.low <= self.high
    }

    /// Whether `inner` lies within this range.
    #[must_use]
    pub fn contains(self, inner: Span) -> bool {
        self.low <= inner.low && inner.high <= self.high
    }

    /// The middle, rounded down.
    #[must_use]
    pub fn middle(self) -> i64 {
        self.low.midpoint(self.high)
    }
}

/// Where a number comes from: one id of the catalogue's list of sources, or several.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(untagged)]
pub enum Sources {
    /// A single source.
    One(String),
    /// Several sources that together give the figure.
    Many(Vec<String>),
}

impl Sources {
    /// The ids, in the order they are written.
    pub fn ids(&self) -> impl Iterator<Item = &str> {
        let slice = match self {
            Self::One(id) => std::slice::from_ref(id),
            Self::Many(ids) => ids.as_slice(),
        };
        slice.iter().map(String::as_str)
    }
}

/// A quantity with its source.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sourced<T> {
    /// The quantity itself.
    pub is: T,
    /// Where it comes from.
    pub source: Sources,
}

/// What part of the garden a crop belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// A vegetable or a fruit grown as one.
    Vegetable,
    /// A culinary or tea herb.
    Herb,
    /// A flower.
    Flower,
}

/// What the gardener starts a crop from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StartFrom {
    /// Seed.
    Seed,
    /// Small dormant bulbs (onion sets).
    Sets,
    /// Tubers, such as seed potatoes.
    Tubers,
    /// Cloves, as of garlic.
    Cloves,
    /// Rooted shoots, as of sweet potato.
    Slips,
    /// Dormant crowns, as of asparagus.
    Crowns,
}

/// How long a plant lives as it is grown in a cold climate.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LifeCycle {
    /// One season.
    Annual,
    /// Two seasons.
    Biennial,
    /// Many seasons.
    Perennial,
}

/// Which of the spring's rhythms a crop follows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Rhythm {
    /// Needs warmth and a long start indoors: tomato, pepper, eggplant.
    SlowWarm,
    /// Needs warmth and only a short head start: cucumber, squash, basil, zinnia.
    QuickWarm,
    /// Bears cold and needs a long start: onion, leek, celery.
    SlowCool,
    /// Bears cold and grows fast: brassicas, lettuce.
    QuickCool,
    /// Sown straight into the ground: carrot, radish.
    InPlace,
    /// Planted in autumn for the next year: garlic.
    AutumnPlanted,
    /// Sown in summer for the next year: foxglove, hollyhock.
    SecondYear,
}

/// A way of starting a crop from seed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Way {
    /// In cells under cover.
    Indoors,
    /// Straight into the ground.
    Outdoors,
}

/// How a plant takes having its roots moved.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Disturbance {
    /// Transplants easily.
    Tolerates,
    /// Sulks or dies when its roots are handled.
    Resents,
}

/// How a seedling grows in the tray.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Vigour {
    /// Small and slow.
    Small,
    /// Upright and brisk.
    Upright,
    /// Vining or wide: crowds its neighbours.
    Sprawling,
}

/// A step that can hurt somebody, for which the answer carries the usual caution.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Caution {
    /// Plant or seed is poisonous to children and pets.
    PoisonousPlant,
    /// Raw beans of the genus *Phaseolus*.
    RawBeans,
    /// Broad beans and people with favism.
    BroadBeanFavism,
    /// Bitter fruit of the gourd family.
    BitterSquash,
    /// Green or sprouted potatoes.
    GreenPotatoes,
    /// Sap that burns the skin in sunlight.
    SkinIrritant,
    /// Seed often sold with a fungicide on it.
    TreatedSeed,
}

/// The planting class of the extension tables.
///
/// It says when to plant, relative to the average last spring frost, and where sources conflict
/// the catalogue holds the tenderer. Sources: Colorado State University Extension, `GardenNotes`
/// 720; University of Illinois Extension (Hentschel, 2017).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Class {
    /// Planted two to four weeks before the average last frost.
    VeryHardy,
    /// Planted up to two weeks before it.
    FrostTolerant,
    /// Planted on or after it.
    Tender,
    /// Planted one to two weeks after it.
    WarmLoving,
}

/// Weeks from sowing indoors to setting out.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlantAge {
    /// The age at which the plant moves best.
    pub ideal: Span,
    /// The age at which it still moves with care.
    pub workable: Span,
    /// Where the ranges come from.
    pub source: Sources,
}

/// How long a plant may stay in the cell it was sown in, in weeks.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CellStay {
    /// The longest stay without potting up.
    pub longest: i64,
    /// The longest stay with one potting up, where that helps.
    pub potted_up: Option<i64>,
    /// How long it may be held beyond, in a cold spell.
    pub hold: i64,
    /// Where the figures come from.
    pub source: Sources,
}

/// Widths of cells and pots, in millimetres.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CellSize {
    /// The cell it is sown in.
    pub sow: i64,
    /// The pot it goes to when potted up.
    pub next: Option<i64>,
    /// Where the figures come from.
    pub source: Sources,
}

/// Raising a crop indoors.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Indoors {
    /// Age when set out.
    pub age_weeks: PlantAge,
    /// Longest stay in the cell.
    pub stay_weeks: CellStay,
    /// Cell size and where it goes next.
    pub cell_mm: CellSize,
}

/// Whether seed comes up in light or in the dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Light {
    /// Needs light: not covered.
    Light,
    /// Needs darkness: covered well.
    Dark,
    /// Comes up in either.
    Either,
}

/// Soil temperature for germination, in whole degrees Celsius.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SoilTemperature {
    /// Below this it hardly comes up.
    pub minimum: i64,
    /// The range in which it comes up best.
    pub optimum: Span,
    /// Above this it hardly comes up.
    pub maximum: i64,
    /// Where the figures come from.
    pub source: Sources,
}

/// A treatment before sowing or planting.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Treatment {
    /// Soak in water.
    Soak,
    /// Nick or file the seed coat.
    Nick,
    /// Chill moist.
    Chill,
    /// Sprout tubers in light.
    Chit,
    /// Grow slips from a root.
    RootSlips,
}

/// A treatment with the days it needs before sowing or planting.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PreTreatment {
    /// What is done.
    pub is: Treatment,
    /// How many days before sowing or planting it begins.
    pub lead_days: i64,
    /// Where the figure comes from.
    pub source: Sources,
}

/// What the trade states about the seed (or, of a tuber or clove, its planting depth).
#[derive(Debug, Clone, PartialEq, Eq, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Seed {
    /// Sowing or planting depth in millimetres; `[0, 0]` is the surface.
    pub depth_mm: Option<Sourced<Span>>,
    /// Light or dark.
    pub light: Option<Sourced<Light>>,
    /// Soil temperature.
    pub soil_c: Option<SoilTemperature>,
    /// Usual days to come up at a good temperature.
    pub emerge_days: Option<Sourced<Span>>,
    /// Treatments before sowing.
    #[serde(default)]
    pub pretreat: Vec<PreTreatment>,
    /// Seeds sown in each cell.
    pub per_cell: Option<Sourced<i64>>,
    /// Years that seed stays usable.
    pub life_years: Option<Sourced<i64>>,
}

/// Direct sowing, in weeks from the average last frost.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DirectSowing {
    /// The usual range.
    pub is: Span,
    /// Earliest under cover or in soil warmed on purpose.
    pub earliest: i64,
    /// Last worthwhile spring sowing of a crop that summer heat ends.
    pub latest: Option<i64>,
    /// Where the figures come from.
    pub source: Sources,
}

/// Spacing in the ground, in centimetres.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Spacing {
    /// Between plants.
    pub plants: i64,
    /// Between rows.
    pub rows: i64,
    /// Where the figures come from.
    pub source: Sources,
}

/// What makes a crop run to seed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Bolting {
    /// A spell of cold on a young plant.
    Cold,
    /// Long days.
    LongDays,
    /// Heat.
    Heat,
}

/// Life in the ground.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Outdoors {
    /// Direct sowing; absent where a crop is never sown in place.
    pub sow_weeks: Option<DirectSowing>,
    /// Spacing.
    pub spacing_cm: Spacing,
    /// Days between repeat sowings, where those are usual.
    pub repeat_days: Option<Sourced<Span>>,
    /// Day heat in degrees Celsius that ends cropping or makes it bolt.
    pub heat_stops_c: Option<Sourced<i64>>,
    /// Whether it bears the heat and the rain of a hot season.
    #[serde(default)]
    pub bears_heat: bool,
    /// What makes it run to seed.
    #[serde(default)]
    pub bolts_from: Vec<Bolting>,
    /// Whether it forms bulbs by the length of the day.
    #[serde(default)]
    pub bulbs_by_daylength: bool,
}

/// What days to harvest are counted from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CountedFrom {
    /// From sowing.
    Sowing,
    /// From setting out plants, or from planting sets, tubers or slips.
    SettingOut,
}

/// How a crop yields.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum HarvestKind {
    /// It ripens once.
    Once,
    /// It is picked over weeks.
    Continuing,
    /// It blooms over weeks.
    Bloom,
}

/// Harvest or bloom.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Harvest {
    /// Days to the first harvest or bloom in the season.
    pub days: Span,
    /// What the days are counted from.
    pub counted_from: CountedFrom,
    /// How it yields.
    pub kind: HarvestKind,
    /// How many weeks it yields.
    pub lasts_weeks: i64,
    /// Whether the harvest goes on after the first frosts.
    pub stands_frost: bool,
    /// Where the figures come from.
    pub source: Sources,
}

/// A second sowing for autumn.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Autumn {
    /// Length of the autumn harvest in days, for the count back from the first frost.
    pub harvest_days: i64,
    /// Where the figure comes from.
    pub source: Sources,
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

impl Class {
    /// The class's usual setting out, in weeks from the average last frost.
    ///
    /// Sources: Colorado State University Extension, `GardenNotes` 720 (very hardy 4 to 2 and
    /// frost-tolerant 2 to 0 weeks before; tender on or after, read as the first week after);
    /// University of Illinois Extension, 2017 (warm-loving 1 to 2 weeks after).
    #[must_use]
    pub fn setting_out(self) -> Span {
        let (low, high) = match self {
            Self::VeryHardy => (-4, -2),
            Self::FrostTolerant => (-2, 0),
            Self::Tender => (0, 1),
            Self::WarmLoving => (1, 2),
        };
        Span { low, high }
    }

    /// The class's earliest setting out under fleece or a cloche, in weeks from the average last
    /// frost.
    ///
    /// Sources: University of Illinois Extension, 2017, whose earlier dates (very hardy 6, frost
    /// tolerant 3 weeks before) are read here as the dates for covered plants; one week for the
    /// two frost-tender classes is common practice with no source.
    #[must_use]
    pub fn under_cover(self) -> i64 {
        match self {
            Self::VeryHardy => -6,
            Self::FrostTolerant => -3,
            Self::Tender => -1,
            Self::WarmLoving => 0,
        }
    }

    /// The class's killing air temperature in whole degrees Celsius.
    ///
    /// Source: Utah Department of Agriculture and Food (very hardy below 28 °F, semi-hardy 28 to
    /// 32 °F, tender about 32 °F, very tender no freezing); the 4 °C for very hardy plants is the
    /// next whole degree below 28 °F and deliberately careful.
    #[must_use]
    pub fn killed_at_c(self) -> i64 {
        match self {
            Self::VeryHardy => -4,
            Self::FrostTolerant => -2,
            Self::Tender | Self::WarmLoving => 0,
        }
    }

    /// The class's coldest night for a hardened plant, in whole degrees Celsius.
    ///
    /// Source: University of Maryland Extension, 2023, for tender seedlings (45 °F) and cucumber
    /// and melon (50 °F); the two hardy figures are common practice with no source.
    #[must_use]
    pub fn coldest_night_c(self) -> i64 {
        match self {
            Self::VeryHardy => -3,
            Self::FrostTolerant => 0,
            Self::Tender => 7,
            Self::WarmLoving => 10,
        }
    }
}

//! What sort of plant a crop is, and how it is started.

use serde::{Deserialize, Serialize};

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

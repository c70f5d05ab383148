//! A crop that is due for a tray: when it is sown, potted up and set out.

use chrono::{NaiveDate, TimeDelta};
use serde::Serialize;

use super::cells::CellTray;
use crate::planning::assess::{Reason, Verdict, assess};
use crate::planning::crop::{Crop, CropId, Indoors, Light, Span};
use crate::planning::garden::Garden;
use crate::planning::windows::Step;

/// How many days ahead trays are laid out.
pub const DAYS_AHEAD: i64 = 14;

/// A crop that is sown indoors within the next [`DAYS_AHEAD`] days.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Seedling<'c> {
    /// The crop, as its variety is grown.
    pub crop: &'c Crop,
    /// The name of that variety, where one is meant.
    pub variety: Option<&'c str>,
    /// The flat whose cells carry it.
    pub cell_tray: CellTray,
    /// The day within the next two weeks on which it is best sown.
    pub sow_on: NaiveDate,
    /// The first good day, where the sowing is earlier than that and needs care.
    pub better_from: Option<NaiveDate>,
    /// When it can be set out.
    pub out_on: NaiveDate,
    /// The age at which it is best set out, in weeks.
    pub ideal_weeks: Span,
    /// When it is potted up, where it would outstay its cell and potting up helps.
    pub pot_up: Option<PotUp>,
}

/// Potting up: the stretch for it, and the pot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PotUp {
    /// When its true leaves have opened, three weeks after sowing (common practice).
    pub from: NaiveDate,
    /// The longest it may stay in its cell.
    pub by: NaiveDate,
    /// Width of the pot in millimetres, where the trade states one.
    pub pot_mm: Option<i64>,
}

/// Why a crop has no place in a tray now.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum NoTray {
    /// It is never started indoors.
    NeverThisWay,
    /// It is not grown from seed.
    NotFromSeed,
    /// The garden has no frost, so frost timing does not apply.
    NoFrostHere,
    /// Its sowing does not open within two weeks.
    TooEarly,
    /// What is left of the season is not worth the cell.
    TooLate,
}

/// A crop that gets no place, with the reason.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LeftOut {
    /// The crop.
    pub crop: CropId,
    /// The name of its variety, where one is meant.
    pub variety: Option<String>,
    /// Why.
    pub reason: NoTray,
    /// The next first good day for sowing it indoors, where there is one.
    pub next: Option<NaiveDate>,
}

impl<'c> Seedling<'c> {
    /// The seedling of `crop` when trays are laid out on the day `on`, or why there is none.
    ///
    /// It is sown on its first good day or, where that has passed, on `on`. A crop whose workable
    /// days open within the two weeks, but none of its good ones, is sown at their end.
    ///
    /// # Errors
    /// A [`LeftOut`] with the reason.
    pub fn due(crop: &'c Crop, garden: Garden, on: NaiveDate) -> Result<Self, LeftOut> {
        let left_out =
            |reason, next| LeftOut { crop: crop.id.clone(), variety: None, reason, next };
        let now = assess(crop, garden, Step::SowIndoors, on);
        let verdict = now.verdict.map_err(|reason| {
            let reason = match reason {
                Reason::NeverThisWay => NoTray::NeverThisWay,
                Reason::NotFromSeed => NoTray::NotFromSeed,
                Reason::NoFrostHere => NoTray::NoFrostHere,
            };
            left_out(reason, None)
        })?;
        let Some(indoors) = &crop.indoors else { return Err(left_out(NoTray::NeverThisWay, None)) };
        let window = now.window.filter(|_| verdict != Verdict::TooLate);
        let window = window.ok_or_else(|| left_out(NoTray::TooLate, now.next_date))?;
        let last = on + TimeDelta::days(DAYS_AHEAD);
        if window.from > last {
            return Err(left_out(NoTray::TooEarly, now.next_date));
        }
        let sow_on = window.ideal_from.max(on).min(last);
        let youngest = sow_on + TimeDelta::weeks(indoors.age_weeks.ideal.low);
        let out_on = assess(crop, garden, Step::SowIndoors, sow_on).set_out.unwrap_or(youngest);
        Ok(Self {
            crop,
            variety: None,
            cell_tray: CellTray::carrying(indoors.cell_mm.sow),
            sow_on,
            better_from: Some(window.ideal_from).filter(|good| *good > sow_on),
            out_on,
            ideal_weeks: indoors.age_weeks.ideal,
            pot_up: PotUp::needed(indoors, sow_on, out_on),
        })
    }

    /// Whether both are of the same crop and variety.
    #[must_use]
    pub fn is_of(&self, other: &Seedling<'_>) -> bool {
        self.crop.id == other.crop.id && self.variety == other.variety
    }

    /// Its age in days when it can be set out.
    #[must_use]
    pub fn age_days(&self) -> i64 {
        self.out_on.signed_duration_since(self.sow_on).num_days()
    }

    /// When it leaves the tray: to its pot, or to the garden.
    #[must_use]
    pub fn leaves_on(&self) -> NaiveDate {
        self.pot_up.map_or(self.out_on, |pot_up| pot_up.by)
    }

    /// The soil temperatures at which its seed comes up best, in degrees Celsius, where known.
    #[must_use]
    pub fn warmth_c(&self) -> Option<Span> {
        self.crop.seed.soil_c.as_ref().map(|soil| soil.optimum)
    }

    /// Whether its seed comes up in light or in the dark; in either where nothing is stated.
    #[must_use]
    pub fn light(&self) -> Light {
        self.crop.seed.light.as_ref().map_or(Light::Either, |light| light.is)
    }
}

impl PotUp {
    /// Potting up, where the stay in the cell would be too long and potting up prolongs it.
    fn needed(indoors: &Indoors, sow_on: NaiveDate, out_on: NaiveDate) -> Option<Self> {
        indoors.stay_weeks.potted_up?;
        let by = sow_on + TimeDelta::weeks(indoors.stay_weeks.longest);
        let from = (sow_on + TimeDelta::weeks(3)).min(by);
        (out_on > by).then_some(Self { from, by, pot_mm: indoors.cell_mm.next })
    }
}

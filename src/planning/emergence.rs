//! Days to come up at a soil temperature.
//!
//! Read in the trials of Harrington and Minges (1954), seed 13 mm deep, soil held at 0 to 40 °C in
//! steps of 5 °C; the table stands beside this file in `days_to_emerge.csv`.

use serde::Serialize;

use super::crop::CropId;

const TABLE: &str = include_str!("days_to_emerge.csv");

/// Degrees Celsius between two columns of the table.
const STEP_C: i64 = 5;

/// More days than this to come up count as too slow: seed lies three weeks in soil that rots it,
/// or is eaten. Common practice; a minimum temperature is not a sowing date.
pub const LONGEST_EMERGENCE_DAYS: f64 = 21.0;

/// What the trials say of one crop at one temperature.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Emergence {
    /// Up in about so many days.
    Days(f64),
    /// Little or none came up, the table's NG.
    NotAtAll(Side),
    /// Between a temperature at which little or none came up and one that was counted: slow and
    /// uncertain, and no number is made up for it.
    Uncertain {
        /// Which way the counted temperature lies: [`Side::TooCold`] where warmer soil is needed.
        side: Side,
        /// The temperature at which little or none came up, in degrees Celsius.
        none_at_c: i64,
        /// The nearest temperature that was counted, in degrees Celsius.
        counted_at_c: i64,
        /// The days it took there.
        days: f64,
    },
    /// Not tested at this temperature, which never means that it will not come up.
    NotTested,
    /// The crop is not in the table.
    NoTable,
}

/// On which side of its best a temperature lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// Below.
    TooCold,
    /// Above.
    TooHot,
}

/// One row of the table.
#[derive(Debug, Clone, PartialEq)]
pub struct EmergenceRow {
    /// The table's name of the crop.
    pub name: &'static str,
    /// The close relative whose row it is, where it is not the crop's own.
    pub relative: Option<CropId>,
    cells: Vec<Cell>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Cell {
    Days(f64),
    None,
    NotTested,
}

/// What an [`Emergence::Days`] was read between, in degrees Celsius; both ends are the same where
/// the temperature itself was tested.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct ReadBetween {
    /// The tested temperature at or below.
    pub low_c: i64,
    /// The tested temperature at or above.
    pub high_c: i64,
}

/// The table's row for a crop, and the relative whose row it is where it is not its own.
///
/// The pole bean is a form of the snap bean and the scallion of the onion (or comes up like it).
/// Where a row belongs to a relative of the same species (broccoli, kale, collards, kohlrabi and
/// Brussels sprouts after cabbage; celeriac after celery; chard after beet) or the same genus
/// (runner bean after snap bean), the answer has to say so. No other crop borrows a row.
fn row_name(crop: &str) -> Option<(&'static str, Option<&'static str>)> {
    Some(match crop {
        "asparagus" => ("Asparagus", None),
        "lima_bean" => ("Bean, lima", None),
        "bush_bean" | "pole_bean" => ("Bean, snap", None),
        "runner_bean" => ("Bean, snap", Some("bush_bean")),
        "beet" => ("Beet", None),
        "chard" => ("Beet", Some("beet")),
        "cabbage" => ("Cabbage", None),
        "broccoli" | "brussels_sprouts" | "kale" | "collards" | "kohlrabi" => {
            ("Cabbage", Some("cabbage"))
        }
        "carrot" => ("Carrot", None),
        "cauliflower" => ("Cauliflower", None),
        "celery" => ("Celery", None),
        "celeriac" => ("Celery", Some("celery")),
        "sweet_corn" => ("Corn, sweet", None),
        "cucumber" => ("Cucumber", None),
        "eggplant" => ("Eggplant", None),
        "lettuce" => ("Lettuce", None),
        "melon" => ("Muskmelon", None),
        "okra" => ("Okra", None),
        "onion" | "scallion" => ("Onion", None),
        "parsley" => ("Parsley", None),
        "parsnip" => ("Parsnip", None),
        "pea" => ("Pea", None),
        "pepper" => ("Pepper", None),
        "radish" => ("Radish", None),
        "spinach" => ("Spinach", None),
        "tomato" => ("Tomato", None),
        "turnip" => ("Turnip", None),
        "watermelon" => ("Watermelon", None),
        _ => return None,
    })
}

impl EmergenceRow {
    /// The row that holds for a crop, its own or a close relative's.
    #[must_use]
    pub fn of(crop: &CropId) -> Option<Self> {
        let (name, relative) = row_name(crop.as_str())?;
        TABLE.lines().filter(|line| !line.starts_with('#')).find_map(|line| {
            let cells = line.trim_matches('"').strip_prefix(name)?;
            let cells = cells.trim_start_matches('"').strip_prefix(',')?;
            Some(Self {
                name,
                relative: relative.map(CropId::new),
                cells: cells.split(',').map(Cell::read).collect(),
            })
        })
    }

    /// What the trials say at `soil_c` degrees Celsius.
    ///
    /// Between two temperatures at which days were counted the days are interpolated in a straight
    /// line; nothing is extrapolated, and nothing is interpolated towards a temperature at which
    /// little or none came up or that was not tested.
    #[must_use]
    pub fn at(&self, soil_c: f64) -> Emergence {
        let Some((low, part)) = place(soil_c) else { return Emergence::NotTested };
        let Some(below) = self.cells.get(low) else { return Emergence::NotTested };
        if part == 0.0 {
            return match below {
                Cell::Days(days) => Emergence::Days(*days),
                Cell::None => Emergence::NotAtAll(self.side(low)),
                Cell::NotTested => Emergence::NotTested,
            };
        }
        let uncertain = |none: usize, counted: usize, days: f64| Emergence::Uncertain {
            side: self.side(none),
            none_at_c: celsius(none),
            counted_at_c: celsius(counted),
            days,
        };
        match (below, self.cells.get(low + 1)) {
            (Cell::Days(below), Some(Cell::Days(above))) => {
                Emergence::Days(below + (above - below) * part)
            }
            (Cell::None, Some(Cell::None)) => Emergence::NotAtAll(self.side(low)),
            (Cell::None, Some(Cell::Days(days))) => uncertain(low, low + 1, *days),
            (Cell::Days(days), Some(Cell::None)) => uncertain(low + 1, low, *days),
            _ => Emergence::NotTested,
        }
    }

    /// The quickest temperature that was counted, in degrees Celsius, with its days; of equally
    /// quick ones the coolest.
    #[must_use]
    pub fn quickest(&self) -> Option<(i64, f64)> {
        let counted = self.cells.iter().enumerate().filter_map(|(index, cell)| match cell {
            Cell::Days(days) => Some((celsius(index), *days)),
            _ => None,
        });
        counted.reduce(|best, next| if next.1 < best.1 { next } else { best })
    }

    /// The days at the coolest temperature at or above `soil_c` at which days were counted.
    #[must_use]
    pub fn days_where_next_warmer(&self, soil_c: f64) -> Option<f64> {
        let columns = (0_u32..).zip(&self.cells);
        let mut warmer = columns.filter(|(index, _)| 5.0 * f64::from(*index) >= soil_c);
        warmer.find_map(|(_, cell)| if let Cell::Days(days) = cell { Some(*days) } else { None })
    }

    /// On which side of what was counted the column lies.
    fn side(&self, index: usize) -> Side {
        let counted = |cell: &Cell| matches!(cell, Cell::Days(_));
        if self.cells.iter().take(index).any(counted) { Side::TooHot } else { Side::TooCold }
    }
}

impl Cell {
    fn read(text: &str) -> Self {
        match text.trim() {
            "NG" => Self::None,
            days => days.parse().map_or(Self::NotTested, Self::Days),
        }
    }
}

/// The column at or below a temperature, and how far it lies towards the next, from 0 to 1.
fn place(soil_c: f64) -> Option<(usize, f64)> {
    if !(0.0..=40.0).contains(&soil_c) {
        return None;
    }
    (0_u32..9).rev().find_map(|index| {
        let past = soil_c - 5.0 * f64::from(index);
        (past >= 0.0).then_some((usize::try_from(index).ok()?, past / 5.0))
    })
}

fn celsius(index: usize) -> i64 {
    i64::try_from(index).unwrap_or(i64::MAX).saturating_mul(STEP_C)
}

/// Days to come up for `crop` in soil of `soil_c` degrees Celsius, seed sown 13 mm deep.
///
/// ```
/// use sowbell::planning::{CropId, Emergence, days_to_emerge};
/// // Half way between 25 days at 15 °C and 13 days at 20 °C.
/// assert_eq!(days_to_emerge(&CropId::new("pepper"), 17.5), Emergence::Days(19.0));
/// assert_eq!(days_to_emerge(&CropId::new("basil"), 17.5), Emergence::NoTable);
/// ```
#[must_use]
pub fn days_to_emerge(crop: &CropId, soil_c: f64) -> Emergence {
    EmergenceRow::of(crop).map_or(Emergence::NoTable, |row| row.at(soil_c))
}

/// On which side of its quickest temperature `soil_c` lies, for a crop that takes too long there.
#[must_use]
pub fn too_slow_side(crop: &CropId, soil_c: f64) -> Side {
    let quickest = EmergenceRow::of(crop).and_then(|row| row.quickest());
    #[expect(clippy::cast_precision_loss, reason = "a column of the table is a two-digit number")]
    let past = quickest.is_some_and(|(at_c, _)| soil_c > at_c as f64);
    if past { Side::TooHot } else { Side::TooCold }
}

impl ReadBetween {
    /// The columns that `soil_c` lies between; `None` outside the table.
    #[must_use]
    pub fn at(soil_c: f64) -> Option<Self> {
        let (low, part) = place(soil_c)?;
        let low_c = celsius(low);
        Some(Self { low_c, high_c: if part == 0.0 { low_c } else { low_c + STEP_C } })
    }
}

//! The hot and the wet months of a garden without frost, and the season that they leave.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};

/// Some months of the year.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(from = "Vec<u32>", into = "Vec<u32>")]
pub struct Months(u16);

/// The hot and the wet months, as a gardener gave them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(try_from = "Given", into = "Given")]
pub struct HotAndWet {
    hot: Months,
    wet: Months,
}

#[derive(Clone, Copy, Serialize, Deserialize)]
struct Given {
    hot: Months,
    wet: Months,
}

/// Why months do not say when to plant.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum MonthsError {
    /// A text of another form than `6-9`, `6,7,8` or `none`.
    #[error("'{0}' does not name months: write them as 6-9, as 6,7,8 or as none")]
    Form(String),
    /// Neither hot nor wet months.
    #[error("no month is hot and none is wet: name the months in which most crops suffer")]
    None,
    /// Every month is hot or wet, so that nothing tells a season apart.
    #[error("every month is hot or wet: name only the hottest and the wettest months")]
    All,
}

/// The season that the hot and the wet months leave, as months from 1 to 12.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Rhythm {
    /// The month at whose beginning planting begins.
    pub starts: u32,
    /// The month at whose beginning the heat, or the rain before it, is back.
    pub heat: u32,
    /// The first of the two coolest months.
    pub coolest: u32,
}

/// `month` and `by` more, 1 to 12.
fn after(month: u32, by: u32) -> u32 {
    (month + by + 11) % 12 + 1
}

impl Months {
    /// No month.
    pub const NONE: Self = Self(0);
    /// Every month.
    pub const ALL: Self = Self(0xfff);

    /// The months from `from` to `to`, over the new year where `to` comes before; numbers that are
    /// no months give none.
    ///
    /// ```
    /// use sowbell::planning::Months;
    /// assert_eq!(Months::from_to(11, 2).iter().collect::<Vec<_>>(), [1, 2, 11, 12]);
    /// ```
    #[must_use]
    pub fn from_to(from: u32, to: u32) -> Self {
        let known = 1..=12;
        if !known.contains(&from) || !known.contains(&to) {
            return Self::NONE;
        }
        let count = (to + 12 - from) % 12 + 1;
        (0..count).map(|by| after(from, by)).fold(Self::NONE, |all, month| all.and(Self::of(month)))
    }

    fn of(month: u32) -> Self {
        Self(if (1..=12).contains(&month) { 1 << (month - 1) } else { 0 })
    }

    /// These months and those.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }

    /// Whether `month` is one of them.
    #[must_use]
    pub fn contains(self, month: u32) -> bool {
        Self::of(month).0 & self.0 != 0
    }

    /// The months, from January on.
    pub fn iter(self) -> impl Iterator<Item = u32> {
        (1..=12).filter(move |month| self.contains(*month))
    }

    /// The longest run of months in the circle of the year as its first month and its length;
    /// `None` for no month and for all.
    fn longest_run(self) -> Option<(u32, u32)> {
        let begins = (1..=12).filter(|m| self.contains(*m) && !self.contains(after(*m, 11)));
        let runs = begins.map(|first| {
            (first, (0..12).take_while(|by| self.contains(after(first, *by))).map(|_| 1).sum())
        });
        runs.max_by_key(|(first, length): &(u32, u32)| (*length, std::cmp::Reverse(*first)))
    }
}

impl HotAndWet {
    /// Hot and wet months that leave a season.
    ///
    /// # Errors
    /// [`MonthsError::None`] and [`MonthsError::All`].
    pub fn new(hot: Months, wet: Months) -> Result<Self, MonthsError> {
        if hot == Months::NONE && wet == Months::NONE {
            return Err(MonthsError::None);
        }
        let months = Self { hot, wet };
        months.run().map(|_| months).ok_or(MonthsError::All)
    }

    /// The hot months.
    #[must_use]
    pub fn hot(self) -> Months {
        self.hot
    }

    /// The wet months.
    #[must_use]
    pub fn wet(self) -> Months {
        self.wet
    }

    /// The months that rule the year: the hot ones or, where none or all are hot, the wet ones; as
    /// the first of the longest run and its length.
    fn ruling(self) -> Option<(u32, u32)> {
        self.hot.longest_run().or_else(|| self.wet.longest_run())
    }

    /// The ruling run with the wet months that join it on either side, unless that takes the whole
    /// year.
    fn run(self) -> Option<(u32, u32)> {
        let (first, length) = self.ruling()?;
        let before = (1..12).take_while(|by| self.wet.contains(after(first, 12 - by))).count();
        let behind = (0..12).take_while(|by| self.wet.contains(after(first, length + by))).count();
        let (before, behind) = (u32::try_from(before).ok()?, u32::try_from(behind).ok()?);
        if length + before + behind >= 12 {
            return Some((first, length));
        }
        Some((after(first, 12 - before), length + before + behind))
    }

    /// The season that they leave.
    ///
    /// Planting begins in the last hot month, when what is sown comes up into the cooler weather,
    /// but not before the last month but one of the rains that go on from there. It ends as the
    /// heat, or the rain that leads into it, is back. The two coolest months lie opposite to the
    /// middle of the hot ones. Fitted to University of Florida IFAS, SP 103, South Florida: hot
    /// June to September, wet June to October, most crops from September on.
    pub(super) fn rhythm(self) -> Option<Rhythm> {
        let (first, length) = self.run()?;
        let (hot, hot_length) = self.ruling()?;
        let last_hot = (hot + 12 - first) % 12 + hot_length - 1;
        let starts = last_hot.max(length.saturating_sub(2));
        Some(Rhythm {
            starts: after(first, starts),
            heat: first,
            coolest: after(hot, hot_length / 2 + 5),
        })
    }
}

impl From<Vec<u32>> for Months {
    fn from(months: Vec<u32>) -> Self {
        months.into_iter().fold(Self::NONE, |all, month| all.and(Self::of(month)))
    }
}

impl From<Months> for Vec<u32> {
    fn from(months: Months) -> Self {
        months.iter().collect()
    }
}

impl TryFrom<Given> for HotAndWet {
    type Error = MonthsError;

    fn try_from(Given { hot, wet }: Given) -> Result<Self, MonthsError> {
        Self::new(hot, wet)
    }
}

impl From<HotAndWet> for Given {
    fn from(HotAndWet { hot, wet }: HotAndWet) -> Self {
        Self { hot, wet }
    }
}

impl FromStr for Months {
    type Err = MonthsError;

    /// Reads `6-9`, `6,7,11-2` or `none`.
    fn from_str(text: &str) -> Result<Self, MonthsError> {
        let wrong = || MonthsError::Form(text.to_owned());
        if text.trim().eq_ignore_ascii_case("none") {
            return Ok(Self::NONE);
        }
        let month = |text: &str| {
            let number = text.trim().parse::<u32>().map_err(|_| wrong())?;
            if (1..=12).contains(&number) { Ok(number) } else { Err(wrong()) }
        };
        text.split(',').try_fold(Self::NONE, |all, part| {
            let (from, to) = part.split_once('-').unwrap_or((part, part));
            Ok(all.and(Self::from_to(month(from)?, month(to)?)))
        })
    }
}

impl fmt::Display for Months {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let all: Vec<String> = self.iter().map(|month| month.to_string()).collect();
        f.write_str(if all.is_empty() { "none".to_owned() } else { all.join(",") }.as_str())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rhythm(hot: &str, wet: &str) -> (u32, u32, u32) {
        let months = |text: &str| text.parse::<Months>().expect("months");
        let rhythm = HotAndWet::new(months(hot), months(wet)).expect("a season").rhythm();
        let rhythm = rhythm.expect("a rhythm");
        (rhythm.starts, rhythm.heat, rhythm.coolest)
    }

    #[test]
    fn months_are_read() {
        for (text, shown) in
            [("6-9", "6,7,8,9"), ("11-2", "1,2,11,12"), ("6, 8-9", "6,8,9"), ("None", "none")]
        {
            assert_eq!(text.parse::<Months>().map(|m| m.to_string()).as_deref(), Ok(shown));
        }
        for bad in ["", "0", "13", "6-", "June", "6-9-10", "-3"] {
            assert_eq!(bad.parse::<Months>(), Err(MonthsError::Form(bad.to_owned())));
        }
        assert_eq!(HotAndWet::new(Months::NONE, Months::NONE), Err(MonthsError::None));
        assert_eq!(HotAndWet::new(Months::ALL, Months::NONE), Err(MonthsError::All));
        assert!(HotAndWet::new(Months::ALL, Months::from_to(5, 10)).is_ok());
    }

    #[test]
    fn the_season_lies_between_the_heat_and_the_heat() {
        // South Florida: from September, with the heat back in June; coolest in January.
        assert_eq!(rhythm("6-9", "6-10"), (9, 6, 1));
        // A dry summer and a wet winter: the winter rains close nothing.
        assert_eq!(rhythm("6-9", "12-2"), (9, 6, 1));
        // Hot before a long monsoon: planting begins as the rains end.
        assert_eq!(rhythm("3-5", "6-10"), (9, 3, 9));
        // The south: hot and wet over the new year.
        assert_eq!(rhythm("12-3", "11-4"), (3, 11, 7));
        // No heat to speak of, only rains.
        assert_eq!(rhythm("none", "5-10"), (10, 5, 1));
    }

    #[test]
    fn every_choice_of_months_leaves_a_season_or_is_refused() {
        for hot in 0..=0xfff_u16 {
            for wet in [0, 0xfff, 0b0011_1110_0000, 0b1000_0000_0001, hot, !hot & 0xfff] {
                if let Ok(months) = HotAndWet::new(Months(hot), Months(wet)) {
                    let rhythm = months.rhythm().expect("a season");
                    assert!((1..=12).contains(&rhythm.starts) && (1..=12).contains(&rhythm.heat));
                    assert_ne!(rhythm.starts, after(rhythm.heat, 11), "{months:?}");
                }
            }
        }
    }
}

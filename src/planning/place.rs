//! Where seedlings are raised, what covers a bed, and by how much each moves a crop's dates.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};

use super::crop::{Crop, PlantAge, Span};

/// Where a gardener raises seedlings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Place {
    /// A windowsill, with the daylight of late winter and nothing more.
    Windowsill,
    /// Under lamps.
    Lights,
    /// On a heat mat, with light enough.
    HeatMat,
    /// In a greenhouse.
    Greenhouse,
}

/// What covers the bed outdoors.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Cover {
    /// Fleece, or another floating row cover.
    Fleece,
    /// A cold frame: a low box with a clear lid, unheated.
    ColdFrame,
    /// An unheated tunnel that one can plant in.
    Tunnel,
}

/// A word that names no place or no cover.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("'{0}' is none of {1}")]
pub struct PlaceError(String, &'static str);

impl Place {
    /// Every place.
    pub const ALL: [Self; 4] = [Self::Windowsill, Self::Lights, Self::HeatMat, Self::Greenhouse];

    /// Weeks by which seedlings must be younger here when they are set out.
    ///
    /// In the short days of late winter they stretch on a windowsill, so the upper end of what
    /// they can bear comes two weeks sooner. That they stretch is common knowledge of the
    /// extension services; the two weeks are common practice with no source.
    #[must_use]
    pub fn weeks_younger(self) -> i64 {
        match self {
            Self::Windowsill => 2,
            Self::Lights | Self::HeatMat | Self::Greenhouse => 0,
        }
    }

    /// Days to come up here, where `usual` is what the trade states.
    ///
    /// A heat mat holds the soil in the crop's best range, so the slower half of the usual span
    /// does not come to pass (common practice, no source).
    ///
    /// ```
    /// use sowbell::planning::{Place, Span};
    /// let usual = Span { low: 6, high: 14 };
    /// assert_eq!(Place::HeatMat.emerge_days(usual), Span { low: 6, high: 10 });
    /// assert_eq!(Place::Lights.emerge_days(usual), usual);
    /// ```
    #[must_use]
    pub fn emerge_days(self, usual: Span) -> Span {
        match self {
            Self::HeatMat => Span { high: usual.middle(), ..usual },
            Self::Windowsill | Self::Lights | Self::Greenhouse => usual,
        }
    }

    /// The place as it is kept and as the command line takes it.
    #[must_use]
    pub fn as_str(self) -> &'static str {
        match self {
            Self::Windowsill => "windowsill",
            Self::Lights => "lights",
            Self::HeatMat => "heat_mat",
            Self::Greenhouse => "greenhouse",
        }
    }
}

/// The oldest a plant may be when it is set out, in weeks, raised at `place`: the upper end of
/// the workable range, less [`Place::weeks_younger`], but never below the best age.
#[must_use]
pub fn oldest_weeks(age: &PlantAge, place: Option<Place>) -> i64 {
    let younger = place.map_or(0, Place::weeks_younger);
    (age.workable.high - younger).max(age.ideal.high)
}

impl Cover {
    /// Every cover.
    pub const ALL: [Self; 3] = [Self::Fleece, Self::ColdFrame, Self::Tunnel];

    /// Weeks by which `crop` can be set out sooner under it.
    ///
    /// - Fleece keeps off 2 to 4 °F of frost (Colorado State University Extension, `GardenNotes`
    ///   722): two weeks for crops that bear cold (common practice), and nothing for those that
    ///   frost kills, whose nights must be milder than that by far. It never goes beyond the
    ///   earliest date that the trade states for the covered crop.
    /// - A cold frame gives two to four weeks to cool-season crops (University of Vermont
    ///   Extension Master Gardener, 2024), read as three; tall and tender ones do not fit it.
    /// - A tunnel warms soil and nights alike: three weeks for all, the careful end of the three to
    ///   four that growers count on (common practice, no source).
    #[must_use]
    pub fn spring_weeks(self, crop: &Crop) -> i64 {
        match self {
            Self::Fleece | Self::ColdFrame if crop.frost_kills() => 0,
            Self::Fleece => 2,
            Self::ColdFrame | Self::Tunnel => 3,
        }
    }

    /// Weeks by which `crop` can be sown in place sooner under it: as [`Cover::spring_weeks`],
    /// but fleece does not heat soil, so it brings nothing forward that needs 10 °C to come up.
    #[must_use]
    pub fn sowing_weeks(self, crop: &Crop) -> i64 {
        const WARM_SOIL_C: i64 = 10;
        let needs_warmth = crop.seed.soil_c.as_ref().is_some_and(|s| s.minimum >= WARM_SOIL_C);
        if self == Self::Fleece && needs_warmth { 0 } else { self.spring_weeks(crop) }
    }

    /// Weeks by which the harvest of `crop` goes on beyond the first autumn frost.
    ///
    /// The first frosts of autumn are light and short, so fleece sees tender crops through two
    /// weeks of them as well; otherwise as [`Cover::spring_weeks`]. Common practice.
    #[must_use]
    pub fn autumn_weeks(self, crop: &Crop) -> i64 {
        match self {
            Self::Fleece => 2,
            Self::ColdFrame | Self::Tunnel => self.spring_weeks(crop),
        }
    }

    /// Whether it never brings a crop forward beyond the earliest date stated for covered plants.
    pub(super) fn keeps_to_stated_earliest(self) -> bool {
        self == Self::Fleece
    }

    /// The cover as it is kept and as the command line takes it.
    #[must_use]
    pub fn as_str(self) -> &'static str {
        match self {
            Self::Fleece => "fleece",
            Self::ColdFrame => "cold_frame",
            Self::Tunnel => "tunnel",
        }
    }
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.as_str())
    }
}

impl FromStr for Place {
    type Err = PlaceError;

    fn from_str(text: &str) -> Result<Self, PlaceError> {
        let all = "windowsill, lights, heat_mat, greenhouse";
        let named = Self::ALL.into_iter().find(|place| place.as_str() == text);
        named.ok_or_else(|| PlaceError(text.to_owned(), all))
    }
}

impl fmt::Display for Cover {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.as_str())
    }
}

impl FromStr for Cover {
    type Err = PlaceError;

    fn from_str(text: &str) -> Result<Self, PlaceError> {
        let named = Self::ALL.into_iter().find(|cover| cover.as_str() == text);
        named.ok_or_else(|| PlaceError(text.to_owned(), "fleece, cold_frame, tunnel"))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_read_back() {
        for place in Place::ALL {
            assert_eq!(place.to_string().parse(), Ok(place));
        }
        for cover in Cover::ALL {
            assert_eq!(cover.to_string().parse(), Ok(cover));
        }
        assert_eq!(
            "attic".parse::<Place>().expect_err("no place").to_string(),
            "'attic' is none of windowsill, lights, heat_mat, greenhouse"
        );
    }
}

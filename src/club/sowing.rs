//! A sowing that a member recorded.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::{JobMark, Mark};
use crate::catalogue::normalise;
use crate::planning::{CropId, JobKey, Label, Sown, Step, Way};

/// The most plants that one recorded sowing can have; more is a slip of the pen.
pub const MOST_PLANTS: u32 = 2000;

/// A sowing that a member recorded; each stands for itself, several of one crop side by side.
///
/// Its JSON form is kept in the journal and outlives a release.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Sowing {
    /// The store's number; 0 for one that is not kept yet.
    pub id: i64,
    /// The crop.
    pub crop: CropId,
    /// The name of its variety as the member wrote it: the one that was named, or that was
    /// followed on the day; `None` where it had none, and then the one that is followed counts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub variety: Option<String>,
    /// Indoors or in place.
    pub way: Way,
    /// How many, 1 to [`MOST_PLANTS`], where the member said.
    pub count: Option<u32>,
    /// The day of sowing.
    pub sown_on: NaiveDate,
    /// The temperature in degrees Celsius where it stands, where the member said.
    pub room_c: Option<i64>,
    /// Which sowing of the year it counts as.
    pub label: Label,
    /// The year that names its season.
    pub season: i32,
    /// The day on which it was seen to be up.
    pub came_up_on: Option<NaiveDate>,
    /// The day on which nothing had come up.
    pub failed_on: Option<NaiveDate>,
    /// The day on which it was given up.
    pub ended_on: Option<NaiveDate>,
    /// The job of a reminder whose *done* it is.
    pub job: Option<JobKey>,
}

impl Sowing {
    /// Whether it still grows: neither failed nor given up.
    #[must_use]
    pub fn lives(&self) -> bool {
        self.failed_on.is_none() && self.ended_on.is_none()
    }

    /// Whether both are of the same crop and variety.
    #[must_use]
    pub fn is_of(&self, other: &Self) -> bool {
        let variety = |sowing: &Self| sowing.variety.as_deref().map(normalise);
        self.crop == other.crop && variety(self) == variety(other)
    }

    /// Whether both are of the same crop and variety, sown in the same way on the same day.
    #[must_use]
    pub fn like(&self, other: &Self) -> bool {
        self.is_of(other) && (self.way, self.sown_on) == (other.way, other.sown_on)
    }

    /// What identifies a step of this sowing.
    #[must_use]
    pub fn key(&self, step: Step) -> JobKey {
        JobKey {
            crop: self.crop.clone(),
            step,
            label: self.label,
            season: self.season,
            sowing: Some(self.id),
        }
    }

    /// What planning needs of it; `marks` tell when its plants were set out.
    #[must_use]
    pub fn sown(&self, marks: &[JobMark]) -> Sown {
        let out = self.key(Step::PlantOut);
        let set_out_on = marks.iter().find(|mark| mark.key == out).and_then(|mark| mark.mark);
        let set_out_on = match set_out_on {
            Some(Mark::Done(on)) => Some(on),
            _ => None,
        };
        Sown {
            way: self.way,
            on: self.sown_on,
            at_c: self.room_c,
            label: self.label,
            season: self.season,
            came_up_on: self.came_up_on,
            set_out_on,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_kept_form_is_pinned() {
        let sowing = Sowing {
            id: 17,
            crop: CropId::new("basil"),
            variety: None,
            way: Way::Indoors,
            count: Some(12),
            sown_on: "2026-04-22".parse().expect("a date"),
            room_c: None,
            label: Label::Spring,
            season: 2026,
            came_up_on: None,
            failed_on: None,
            ended_on: None,
            job: Some("basil.si.s.2026".parse().expect("a job")),
        };
        let json = r#"{"id":17,"crop":"basil","way":"indoors","count":12,"sown_on":"2026-04-22","room_c":null,"label":"spring","season":2026,"came_up_on":null,"failed_on":null,"ended_on":null,"job":"basil.si.s.2026"}"#;
        assert_eq!(serde_json::to_string(&sowing).expect("JSON"), json);
        assert_eq!(serde_json::from_str::<Sowing>(json).expect("read"), sowing);
        assert_eq!(sowing.key(Step::PlantOut).to_string(), "basil.po.s.2026.17");
        // A variety is kept beside, and older releases wrote none.
        let named = Sowing { variety: Some("Early Robin".to_owned()), ..sowing };
        let json = json.replace(r#""basil","way""#, r#""basil","variety":"Early Robin","way""#);
        assert_eq!(serde_json::to_string(&named).expect("JSON"), json);
        assert_eq!(serde_json::from_str::<Sowing>(&json).expect("read"), named);
    }
}

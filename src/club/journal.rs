//! What takes a change back.

use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};

use super::{ListId, Sowing, Variety};
use crate::planning::{CropId, JobKey};

/// One thing that is put back as it was. Its JSON form is kept and outlives a release.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PutBack {
    /// A crop that was added goes off the list.
    CropOff(CropId),
    /// A crop that was taken off comes back to its place.
    CropOn {
        /// The number of its row, which is its place.
        id: i64,
        /// The crop.
        crop: CropId,
    },
    /// What was said of a job; `None` for nothing.
    Mark {
        /// The job.
        job: JobKey,
        /// The mark and its day in their kept form.
        was: Option<(String, NaiveDate)>,
    },
    /// A sowing that was recorded is forgotten.
    SowingOff(i64),
    /// A sowing is as it was, also one that was removed.
    SowingAs(Sowing),
    /// A variety that was told is forgotten.
    VarietyOff(i64),
    /// A variety is as it was, also one that was removed.
    VarietyAs(Variety),
    /// A list that was subscribed to is not any more.
    Unsubscribe(ListId),
    /// A subscription that was ended is there again.
    Subscribe {
        /// The list.
        list: ListId,
        /// When it began, which is its place.
        since: DateTime<Utc>,
        /// The crops as its member knew them; `None` in what was kept by older programs, where
        /// the list had not changed since they were told.
        told: Option<Vec<CropId>>,
    },
    /// A crop that was left out of lists is not any more.
    SkipOff(CropId),
    /// A crop is left out of lists again.
    SkipOn(CropId),
    /// A setting is as it was.
    SettingAs {
        /// Which.
        setting: MemberSetting,
        /// Its kept form; `None` for not set.
        was: Option<String>,
    },
}

/// A setting of a member's own that can be taken back.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MemberSetting {
    /// The frost dates.
    Frost,
    /// The time zone.
    Zone,
    /// The language.
    Language,
    /// The units.
    Units,
    /// The time of the reminder.
    ReminderMinutes,
    /// The days without messages.
    QuietDays,
    /// Whether they garden at weekends.
    AtWeekends,
    /// The end of a holiday.
    HolidayUntil,
    /// The hot and wet months as they were written.
    HotAndWet,
    /// Those months as they were understood.
    Months,
    /// How far north.
    Latitude,
    /// Where seedlings are raised.
    Place,
    /// What covers the beds.
    Cover,
    /// The cold spell that is waited out.
    Hold,
}

impl MemberSetting {
    /// The name that the texts know it by; what is set together has one.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Frost => "frost",
            Self::Zone => "zone",
            Self::Language => "language",
            Self::Units => "units",
            Self::ReminderMinutes => "hour",
            Self::QuietDays | Self::AtWeekends | Self::HolidayUntil => "days",
            Self::HotAndWet | Self::Months => "months",
            Self::Latitude => "latitude",
            Self::Place | Self::Cover => "place",
            Self::Hold => "hold",
        }
    }
}

/// A member's last change that can be taken back, or the last that was and can be put back.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LastChange {
    /// Its number; numbers of one member rise and are never used again.
    pub number: i64,
    /// When it was made.
    pub changed_at: DateTime<Utc>,
    /// What puts everything back, the last thing first; of one that was taken back, what makes it
    /// again.
    pub put_back: Vec<PutBack>,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::planning::Packet;

    #[test]
    fn the_kept_form_is_pinned() {
        let job: JobKey = "pea.so.s.2026".parse().expect("a job");
        let was = Some(("done".to_owned(), "2026-04-22".parse().expect("a date")));
        for (put_back, json) in [
            (PutBack::CropOff(CropId::new("pea")), r#"{"crop_off":"pea"}"#),
            (
                PutBack::CropOn { id: 3, crop: CropId::new("pea") },
                r#"{"crop_on":{"id":3,"crop":"pea"}}"#,
            ),
            (
                PutBack::Mark { job: job.clone(), was },
                r#"{"mark":{"job":"pea.so.s.2026","was":["done","2026-04-22"]}}"#,
            ),
            (PutBack::Mark { job, was: None }, r#"{"mark":{"job":"pea.so.s.2026","was":null}}"#),
            (PutBack::SowingOff(17), r#"{"sowing_off":17}"#),
            (
                PutBack::SettingAs { setting: MemberSetting::ReminderMinutes, was: None },
                r#"{"setting_as":{"setting":"reminder_minutes","was":null}}"#,
            ),
            (
                PutBack::SettingAs { setting: MemberSetting::Zone, was: Some("UTC".to_owned()) },
                r#"{"setting_as":{"setting":"zone","was":"UTC"}}"#,
            ),
            (PutBack::VarietyOff(17), r#"{"variety_off":17}"#),
            (
                PutBack::VarietyAs(Variety {
                    id: 17,
                    crop: CropId::new("pea"),
                    name: None,
                    packet: Packet { apart_cm: Some(5), ..Packet::default() },
                }),
                r#"{"variety_as":{"id":17,"crop":"pea","name":null,"packet":{"apart_cm":5}}}"#,
            ),
            (PutBack::Unsubscribe(3), r#"{"unsubscribe":3}"#),
            (
                PutBack::Subscribe {
                    list: 3,
                    since: "2026-04-22T07:00:00Z".parse().expect("an instant"),
                    told: Some(vec![CropId::new("pea")]),
                },
                r#"{"subscribe":{"list":3,"since":"2026-04-22T07:00:00Z","told":["pea"]}}"#,
            ),
            (PutBack::SkipOff(CropId::new("pea")), r#"{"skip_off":"pea"}"#),
            (PutBack::SkipOn(CropId::new("pea")), r#"{"skip_on":"pea"}"#),
        ] {
            assert_eq!(serde_json::to_string(&put_back).expect("JSON"), json);
            assert_eq!(serde_json::from_str::<PutBack>(json).expect("read"), put_back);
        }
    }
}

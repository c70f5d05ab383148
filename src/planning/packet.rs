//! The numbers of a seed packet, and a crop as it is grown by them.

use std::ops::RangeInclusive;

use serde::{Deserialize, Serialize};

use super::crop::{CountedFrom, Crop, Sourced, Sources, Span};

/// What a seed packet says of one variety; what it does not say stays the crop's.
///
/// Its JSON form is kept and outlives a release.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Packet {
    /// Start indoors: whole weeks before the average last frost.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub indoors_weeks: Option<Span>,
    /// Set out: whole weeks from the average last frost, before it below 0.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub set_out_weeks: Option<Span>,
    /// Sow in place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outdoors: Option<PacketOutdoors>,
    /// Days to the first harvest or bloom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub days: Option<Span>,
    /// What those days are counted from, where the packet says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub counted_from: Option<CountedFrom>,
    /// Days to come up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub emerge_days: Option<Span>,
    /// Sowing depth in millimetres.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub depth_mm: Option<Span>,
    /// Between plants, in centimetres.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub apart_cm: Option<i64>,
    /// Between rows, in centimetres.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rows_cm: Option<i64>,
}

/// When a packet lets its seed be sown in place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PacketOutdoors {
    /// Whole weeks from the average last frost, before it below 0.
    Weeks(Span),
    /// "After danger of frost", with no number.
    AfterFrost,
}

/// A number that no packet has; nothing is taken from such a text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PacketError {
    /// Nothing was read.
    #[error("there is no number of a seed packet in it")]
    Empty,
    /// Days to harvest outside [`Packet::DAYS`].
    #[error("{0} days to harvest")]
    Days(i64),
    /// Weeks indoors outside [`Packet::INDOORS`].
    #[error("{0} weeks indoors before the last frost")]
    Indoors(i64),
    /// Weeks from the last frost outside [`Packet::OFFSET`].
    #[error("{0} weeks from the last frost")]
    Offset(i64),
    /// Days to come up outside [`Packet::EMERGE`].
    #[error("{0} days to come up")]
    Emerge(i64),
    /// A depth in millimetres outside [`Packet::DEPTH`].
    #[error("a depth of {0} mm")]
    Depth(i64),
    /// A spacing in centimetres outside [`Packet::SPACING`].
    #[error("a spacing of {0} cm")]
    Spacing(i64),
}

/// A number of a packet that a crop has no use for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PacketLeftOut {
    /// Weeks indoors, of a crop that is never raised indoors.
    Indoors,
    /// Sowing in place, of a crop that is never sown there.
    Outdoors,
}

impl Packet {
    /// Days to the first harvest that a packet can say. From the quickest cress to the slowest
    /// root; the bounds are our own.
    pub const DAYS: RangeInclusive<i64> = 10..=300;
    /// Weeks indoors before the last frost that a packet can say; as the catalogue's ages.
    pub const INDOORS: RangeInclusive<i64> = 1..=20;
    /// Weeks from the last frost, either way, that a packet can say.
    pub const OFFSET: RangeInclusive<i64> = -20..=20;
    /// Days to come up that a packet can say.
    pub const EMERGE: RangeInclusive<i64> = 1..=90;
    /// Depths in millimetres that a packet can say.
    pub const DEPTH: RangeInclusive<i64> = 0..=300;
    /// Spacings in centimetres that a packet can say.
    pub const SPACING: RangeInclusive<i64> = 1..=500;

    /// The same numbers, once each lies within its bounds and there is at least one.
    ///
    /// # Errors
    /// [`PacketError`] with the first number that no packet has.
    pub fn checked(self) -> Result<Self, PacketError> {
        let within = |span: Option<Span>, bounds: RangeInclusive<i64>| {
            let ends = span.map_or([None, None], |span| [Some(span.low), Some(span.high)]);
            ends.into_iter().flatten().find(|end| !bounds.contains(end))
        };
        let outdoors = match self.outdoors {
            Some(PacketOutdoors::Weeks(span)) => Some(span),
            Some(PacketOutdoors::AfterFrost) | None => None,
        };
        let one = |cm: Option<i64>| cm.map(|cm| Span { low: cm, high: cm });
        let wrong = within(self.days, Self::DAYS)
            .map(PacketError::Days)
            .or_else(|| within(self.indoors_weeks, Self::INDOORS).map(PacketError::Indoors))
            .or_else(|| within(self.set_out_weeks, Self::OFFSET).map(PacketError::Offset))
            .or_else(|| within(outdoors, Self::OFFSET).map(PacketError::Offset))
            .or_else(|| within(self.emerge_days, Self::EMERGE).map(PacketError::Emerge))
            .or_else(|| within(self.depth_mm, Self::DEPTH).map(PacketError::Depth))
            .or_else(|| within(one(self.apart_cm), Self::SPACING).map(PacketError::Spacing))
            .or_else(|| within(one(self.rows_cm), Self::SPACING).map(PacketError::Spacing));
        match wrong {
            Some(wrong) => Err(wrong),
            None if self.is_empty() => Err(PacketError::Empty),
            None => Ok(self),
        }
    }

    /// Whether it says nothing.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        Self { counted_from: None, ..*self } == Self::default()
    }

    /// What it says that `crop` has no use for.
    #[must_use]
    pub fn left_out(&self, crop: &Crop) -> Vec<PacketLeftOut> {
        let indoors = self.indoors_weeks.is_some() && crop.indoors.is_none();
        let outdoors = self.outdoors.is_some() && crop.outdoors.sow_weeks.is_none();
        let mut left_out = Vec::new();
        left_out.extend(indoors.then_some(PacketLeftOut::Indoors));
        left_out.extend(outdoors.then_some(PacketLeftOut::Outdoors));
        left_out
    }

    /// `crop` as it is grown by this packet: its numbers in place of the crop's.
    ///
    /// The weeks indoors become the plant's age: a packet counts them to the last frost, and the
    /// crop goes out some weeks from it. The range of ages that still works keeps its distance
    /// from the best one. What the packet does not say, the ways of starting and everything about
    /// frost stay the crop's.
    #[must_use]
    pub fn grown(&self, crop: &Crop) -> Crop {
        let mut grown = crop.clone();
        if let Some(span) = self.set_out_weeks {
            grown.setting_out_weeks = Some(Sourced { is: span, source: packet() });
            if let Some(ends) = grown.spring_ends_weeks.as_mut() {
                ends.is = ends.is.max(span.high);
            }
            if grown.under_cover() > span.low {
                grown.under_cover_weeks = Some(Sourced { is: span.low, source: packet() });
            }
        }
        self.raise(&mut grown);
        if let Some((sow, outdoors)) = grown.outdoors.sow_weeks.as_mut().zip(self.outdoors) {
            sow.is = match outdoors {
                PacketOutdoors::Weeks(span) => span,
                PacketOutdoors::AfterFrost => {
                    let low = sow.is.low.max(0);
                    Span { low, high: sow.is.high.max(low) }
                }
            };
            sow.earliest = sow.earliest.min(sow.is.low);
            sow.latest = sow.latest.map(|latest| latest.max(sow.is.high));
            sow.source = packet();
        }
        if let Some(days) = self.days {
            grown.harvest.days = days;
            grown.harvest.counted_from = self.counted_from.unwrap_or(crop.harvest.counted_from);
            grown.harvest.source = packet();
        }
        if let Some(days) = self.emerge_days {
            grown.seed.emerge_days = Some(Sourced { is: days, source: packet() });
        }
        if let Some(depth) = self.depth_mm {
            grown.seed.depth_mm = Some(Sourced { is: depth, source: packet() });
        }
        let spacing = &mut grown.outdoors.spacing_cm;
        spacing.plants = self.apart_cm.unwrap_or(spacing.plants);
        spacing.rows = self.rows_cm.unwrap_or(spacing.rows);
        grown
    }

    /// The weeks indoors as the plant's age.
    fn raise(&self, grown: &mut Crop) {
        let out = grown.setting_out().low;
        let Some((indoors, weeks)) = grown.indoors.as_mut().zip(self.indoors_weeks) else { return };
        let age = &mut indoors.age_weeks;
        let aged = |weeks: i64| (weeks + out).clamp(1, 20);
        let ideal = Span { low: aged(weeks.low), high: aged(weeks.high) };
        let (younger, older) =
            (age.ideal.low - age.workable.low, age.workable.high - age.ideal.high);
        age.workable = Span {
            low: (ideal.low - younger).clamp(1, ideal.low),
            high: (ideal.high + older).clamp(ideal.high, 24),
        };
        age.ideal = ideal;
        age.source = packet();
        let stay = &mut indoors.stay_weeks;
        match stay.potted_up.as_mut() {
            Some(potted_up) => *potted_up = (*potted_up).max(age.workable.high),
            None => stay.longest = stay.longest.max(age.workable.high - stay.hold),
        }
        if let Some(latest) = grown.latest_start_weeks.as_mut() {
            latest.is = latest.is.max(-weeks.low);
        }
    }
}

fn packet() -> Sources {
    Sources::One("packet".to_owned())
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::catalogue::Catalogue;
    use crate::planning::{Basis, Garden, Season, Step, assess, windows};

    fn catalogue() -> &'static Catalogue {
        static CATALOGUE: std::sync::OnceLock<Catalogue> = std::sync::OnceLock::new();
        CATALOGUE.get_or_init(|| Catalogue::embedded().expect("the catalogue"))
    }

    #[expect(clippy::unnecessary_wraps, reason = "each number of a packet may be missing")]
    fn span(low: i64, high: i64) -> Option<Span> {
        Some(Span { low, high })
    }

    #[test]
    fn weeks_indoors_are_counted_to_the_last_frost() {
        let day = |text: &str| Some(text.parse().expect("a month-day"));
        let garden = Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden");
        let packet = Packet { indoors_weeks: span(6, 8), ..Packet::default() };
        let crop = packet.grown(catalogue().get("tomato").expect("listed"));
        let on = "2026-03-20".parse().expect("a date");
        let sow = assess(&crop, garden, Step::SowIndoors, on).windows.sow_indoors[0];
        // Eight weeks before 15 May is 20 March, six weeks before it is 3 April (case 1).
        assert_eq!(sow.ideal_from, on);
        assert_eq!(sow.ideal_to, "2026-04-03".parse().expect("a date"));
    }

    #[test]
    fn what_the_packet_does_not_say_stays_the_crops() {
        let tomato = catalogue().get("tomato").expect("listed");
        let packet = Packet { days: span(75, 75), ..Packet::default() };
        let grown = packet.grown(tomato);
        assert_eq!((grown.harvest.days.low, grown.harvest.days.high), (75, 75));
        let mut back = grown.clone();
        back.harvest = tomato.harvest.clone();
        assert_eq!(&back, tomato);
        assert_eq!(Packet::default().grown(tomato), *tomato);
    }

    #[test]
    fn after_danger_of_frost_holds_back_and_never_brings_forward() {
        let packet = Packet { outdoors: Some(PacketOutdoors::AfterFrost), ..Packet::default() };
        let weeks = |id: &str| {
            let crop = packet.grown(catalogue().get(id).expect("listed"));
            crop.outdoors.sow_weeks.expect("sown in place").is
        };
        assert_eq!(weeks("radish").low, 0);
        let cucumber = catalogue().get("cucumber").expect("listed");
        assert_eq!(weeks("cucumber"), cucumber.outdoors.sow_weeks.as_ref().expect("sown").is);
    }

    #[test]
    fn numbers_that_no_packet_has_are_refused() {
        let days = |low, high| Packet { days: span(low, high), ..Packet::default() }.checked();
        assert_eq!(days(0, 0), Err(PacketError::Days(0)));
        assert_eq!(days(55, 400), Err(PacketError::Days(400)));
        assert!(days(10, 300).is_ok());
        let weeks = Packet { indoors_weeks: span(30, 30), ..Packet::default() };
        assert_eq!(weeks.checked(), Err(PacketError::Indoors(30)));
        let only = Packet { counted_from: Some(CountedFrom::Sowing), ..Packet::default() };
        assert_eq!(only.checked(), Err(PacketError::Empty));
    }

    #[test]
    fn what_a_crop_has_no_use_for_is_told() {
        let packet = Packet { indoors_weeks: span(4, 6), ..Packet::default() };
        assert_eq!(
            packet.left_out(catalogue().get("carrot").expect("listed")),
            [PacketLeftOut::Indoors]
        );
        assert!(packet.left_out(catalogue().get("tomato").expect("listed")).is_empty());
    }

    #[test]
    fn the_kept_form_is_pinned() {
        let packet = Packet {
            indoors_weeks: span(6, 8),
            set_out_weeks: span(1, 2),
            outdoors: Some(PacketOutdoors::Weeks(Span { low: -2, high: 0 })),
            days: span(75, 75),
            counted_from: Some(CountedFrom::SettingOut),
            emerge_days: span(7, 10),
            depth_mm: span(6, 6),
            apart_cm: Some(60),
            rows_cm: Some(90),
        };
        let json = r#"{"indoors_weeks":[6,8],"set_out_weeks":[1,2],"outdoors":{"weeks":[-2,0]},"days":[75,75],"counted_from":"setting_out","emerge_days":[7,10],"depth_mm":[6,6],"apart_cm":60,"rows_cm":90}"#;
        assert_eq!(serde_json::to_string(&packet).expect("JSON"), json);
        assert_eq!(serde_json::from_str::<Packet>(json).expect("read"), packet);
        let danger = Packet { outdoors: Some(PacketOutdoors::AfterFrost), ..Packet::default() };
        let json = r#"{"outdoors":"after_frost"}"#;
        assert_eq!(serde_json::to_string(&danger).expect("JSON"), json);
        assert_eq!(serde_json::from_str::<Packet>(json).expect("read"), danger);
    }

    proptest! {
        #[test]
        fn any_checked_packet_gives_windows_in_order(
            at in 0usize..200, indoors in (1i64..=20, 0i64..6), out in -20i64..=20,
            outdoors in -20i64..=20, days in (10i64..=300, 0i64..60),
        ) {
            let crops: Vec<_> = catalogue().iter().collect();
            let crop = crops[at % crops.len()];
            let wide = |low: i64, more: i64, most: i64| span(low, (low + more).min(most));
            let packet = Packet {
                indoors_weeks: wide(indoors.0, indoors.1, 20),
                set_out_weeks: span(out, out.max(2)),
                outdoors: wide(outdoors, 2, 20).map(PacketOutdoors::Weeks),
                days: wide(days.0, days.1, 300),
                ..Packet::default()
            };
            let grown = packet.checked().expect("within bounds").grown(crop);
            let day = |text: &str| Some(text.parse().expect("a month-day"));
            let garden = Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden");
            let crate::planning::Frost::Dates(frost) = garden.frost else { panic!("frost") };
            let all = windows(&grown, &Season::of_year(frost, 2026));
            for step in Step::ALL {
                for w in all.of(step) {
                    prop_assert!([w.from, w.ideal_from, w.ideal_to, w.to].is_sorted(), "{w:?}");
                }
            }
            if let Some(indoors) = &grown.indoors {
                prop_assert!(indoors.age_weeks.workable.contains(indoors.age_weeks.ideal));
            }
        }
    }
}

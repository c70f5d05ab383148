//! What an asker grows in their own way: varieties with their packets, and sowings made.

use std::borrow::Cow;

use crate::catalogue::Catalogue;
use crate::club::{JobMark, Sowing, Variety, followed};
use crate::planning::{Crop, Garden, Ripening, ripening_of_sowing};

use super::answer::Asked;

/// What an asker grows in their own way.
#[derive(Debug, Clone, Copy)]
pub struct Own<'a> {
    /// The crops as the catalogue has them, without anybody's packet.
    pub catalogue: &'a Catalogue,
    /// Their varieties.
    pub varieties: &'a [Variety],
    /// Whether a bare crop means the variety that is followed, as it does between the two of us.
    pub follows: bool,
    /// The numbers of the varieties that the question names.
    pub named: &'a [i64],
    /// Their sowings.
    pub sowings: &'a [Sowing],
    /// What they said of jobs.
    pub marks: &'a [JobMark],
}

/// A crop that a question is about, as it is grown.
pub(super) struct Subject<'a> {
    pub crop: Cow<'a, Crop>,
    /// The variety whose packet gives its numbers.
    pub variety: Option<&'a Variety>,
}

impl<'a> Asked<'a> {
    /// The crops of the question in its order, each once for every variety of it that is named.
    pub(super) fn subjects(&self) -> Vec<Subject<'a>> {
        let mut subjects = Vec::new();
        for id in self.understood.weighed_crops() {
            let Some(listed) = self.catalogue.get(id.as_str()) else { continue };
            let Some(own) = self.own else {
                subjects.push(Subject { crop: Cow::Borrowed(listed), variety: None });
                continue;
            };
            let named = own.named.iter().filter_map(|number| {
                own.varieties.iter().find(|variety| variety.id == *number && variety.crop == *id)
            });
            let grown = |variety: &'a Variety| {
                let crop = variety.grown(own.catalogue)?;
                Some(Subject { crop: Cow::Owned(crop), variety: Some(variety) })
            };
            let before = subjects.len();
            subjects.extend(named.filter_map(grown));
            if subjects.len() == before {
                let variety = followed(own.varieties, id).filter(|_| own.follows);
                subjects.push(Subject { crop: Cow::Borrowed(listed), variety });
            }
        }
        subjects
    }

    /// How the sowings of a crop that were made and still grow will ripen, each with the crop as
    /// its variety is grown; those of one variety where the question names one. None where the
    /// question names a day or a step, and so asks what would be.
    pub(super) fn of_sowings(&self, subject: &Subject<'a>) -> Vec<(Subject<'a>, Ripening)> {
        const MOST: usize = 3;
        let what_would_be = self.understood.date_given || self.understood.step.is_some();
        let Some(own) = self.own.filter(|_| !what_would_be) else { return Vec::new() };
        let id = &subject.crop.id;
        let named = subject.variety.filter(|variety| own.named.contains(&variety.id));
        let is_meant =
            |sowing: &Sowing| named.is_none_or(|variety| variety.is(id, sowing.variety.as_deref()));
        own.sowings
            .iter()
            .filter(|sowing| sowing.crop == *id && sowing.lives() && is_meant(sowing))
            .filter_map(|sowing| {
                let subject = self.grown_for(sowing, own)?;
                let crop = subject.crop.as_ref();
                let ripe = reckoned(crop, self.garden, sowing, own.marks)?;
                // One whose harvest is over says nothing about this season.
                let lasts = chrono::TimeDelta::weeks(crop.harvest.lasts_weeks.max(1));
                (ripe.first_late + lasts >= self.today).then_some((subject, ripe))
            })
            .take(MOST)
            .collect()
    }

    /// The crop of a sowing as its variety is grown, or the one that is followed where it has none.
    fn grown_for(&self, sowing: &Sowing, own: Own<'a>) -> Option<Subject<'a>> {
        let crop = self.catalogue.variety(sowing.crop.as_str(), sowing.variety.as_deref())?;
        let variety = match sowing.variety.as_deref() {
            None => followed(own.varieties, &sowing.crop).filter(|_| own.follows),
            name => own.varieties.iter().find(|variety| variety.is(&sowing.crop, name)),
        };
        Some(Subject { crop: Cow::Borrowed(crop), variety })
    }
}

fn reckoned(crop: &Crop, garden: Garden, sowing: &Sowing, marks: &[JobMark]) -> Option<Ripening> {
    ripening_of_sowing(crop, garden, &sowing.sown(marks))
}

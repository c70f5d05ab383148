//! A variety that a member grows, with its packet's numbers.

use serde::{Deserialize, Serialize};

use crate::catalogue::{Catalogue, normalise};
use crate::planning::{Crop, CropId, Packet};

/// The longest name of a variety, in characters.
pub const LONGEST_VARIETY_NAME: usize = 40;

/// The most varieties that one member keeps.
pub const MOST_VARIETIES: usize = 60;

/// A variety that a member grows, with what its packet says.
///
/// Several varieties of a crop stand side by side, each with a name of its own, at most one of
/// them without. Plans, jobs and reminders follow the one that was told last, which is the one
/// with the highest number; a question that names another is answered by that one's packet.
///
/// Its JSON form is kept in the journal and outlives a release.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Variety {
    /// The store's number; 0 for one that is not kept yet. A variety that is told again gets a
    /// new one.
    pub id: i64,
    /// The crop.
    pub crop: CropId,
    /// Its name as the member wrote it, at most [`LONGEST_VARIETY_NAME`] characters.
    pub name: Option<String>,
    /// What its packet says.
    pub packet: Packet,
}

impl Variety {
    /// Whether it is the variety of this crop and name; names are compared without case, accents
    /// and hyphens.
    #[must_use]
    pub fn is(&self, crop: &CropId, name: Option<&str>) -> bool {
        self.crop == *crop && self.name.as_deref().map(normalise) == name.map(normalise)
    }

    /// The crop as this variety is grown; `None` where the catalogue has it no longer.
    #[must_use]
    pub fn grown(&self, catalogue: &Catalogue) -> Option<Crop> {
        catalogue.get(self.crop.as_str()).map(|crop| self.packet.grown(crop))
    }
}

/// The variety of `crop` that plans, jobs and reminders follow: the one told last.
#[must_use]
pub fn followed<'v>(varieties: &'v [Variety], crop: &CropId) -> Option<&'v Variety> {
    varieties.iter().filter(|variety| variety.crop == *crop).max_by_key(|variety| variety.id)
}

/// The catalogue as a member grows its crops: each by the variety that is followed, and the others
/// by their names. `None` where
/// the member has no varieties, so that the catalogue itself serves.
#[must_use]
pub fn as_grown(catalogue: &Catalogue, varieties: &[Variety]) -> Option<Catalogue> {
    if varieties.is_empty() {
        return None;
    }
    let mut ordered: Vec<&Variety> = varieties.iter().collect();
    ordered.sort_by_key(|variety| variety.id);
    let grown = |variety: &Variety| Some((variety.name.clone(), variety.grown(catalogue)?));
    Some(catalogue.with(ordered.into_iter().filter_map(grown)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::planning::Span;

    fn variety(id: i64, name: Option<&str>, days: i64) -> Variety {
        let packet = Packet { days: Some(Span { low: days, high: days }), ..Packet::default() };
        Variety { id, crop: CropId::new("tomato"), name: name.map(ToOwned::to_owned), packet }
    }

    #[test]
    fn the_one_told_last_is_followed() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let both = [variety(5, Some("Early Lantern"), 60), variety(3, None, 90)];
        assert_eq!(followed(&both, &CropId::new("tomato")), both.first());
        assert_eq!(followed(&both, &CropId::new("basil")), None);
        let grown = as_grown(&catalogue, &both).expect("grown");
        assert_eq!(grown.get("tomato").expect("listed").harvest.days.low, 60);
        assert_eq!(grown.get("basil"), catalogue.get("basil"));
        // By its name each variety is found, and a forgotten one is the crop as it is listed.
        let days = |name: &str| grown.variety("tomato", Some(name)).expect("listed").harvest.days;
        assert_eq!(days("early-lantern").low, 60);
        assert_eq!(Some(days("Early Robin")), catalogue.get("tomato").map(|c| c.harvest.days));
        assert_eq!(grown.variety("tomato", None), grown.get("tomato"));
        let order = |catalogue: &Catalogue| -> Vec<CropId> {
            catalogue.iter().map(|crop| crop.id.clone()).collect()
        };
        assert_eq!(order(&grown), order(&catalogue));
        assert!(as_grown(&catalogue, &[]).is_none());
    }

    #[test]
    fn a_name_is_the_same_however_it_is_written() {
        let lantern = variety(1, Some("Early Lantern"), 60);
        assert!(lantern.is(&CropId::new("tomato"), Some("early-lantern")));
        assert!(!lantern.is(&CropId::new("tomato"), None));
        assert!(!lantern.is(&CropId::new("pepper"), Some("Early Lantern")));
    }

    #[test]
    fn the_kept_form_is_pinned() {
        let json = r#"{"id":17,"crop":"tomato","name":"Early Lantern","packet":{"days":[75,75]}}"#;
        let kept = variety(17, Some("Early Lantern"), 75);
        assert_eq!(serde_json::to_string(&kept).expect("JSON"), json);
        assert_eq!(serde_json::from_str::<Variety>(json).expect("read"), kept);
    }
}

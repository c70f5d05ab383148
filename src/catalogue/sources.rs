//! Where the numbers come from.

use serde::Deserialize;

use crate::planning::{Crop, Sources};

/// A publication, or the plain statement that there is none.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Source {
    /// Its title.
    pub title: String,
    /// Who published it; "none" for common practice and for figures from memory.
    pub publisher: String,
    /// The year it appeared, where known.
    pub year: Option<i32>,
}

/// Every citation of an entry, with the line that makes it.
pub(super) fn citations(crop: &Crop) -> Vec<(&'static str, &Sources)> {
    let mut all = vec![("class", &crop.class.source)];
    let mut add = |field, source: Option<_>| all.extend(source.map(|source| (field, source)));
    add("setting_out_weeks", crop.setting_out_weeks.as_ref().map(|s| &s.source));
    add("under_cover_weeks", crop.under_cover_weeks.as_ref().map(|s| &s.source));
    add("spring_ends_weeks", crop.spring_ends_weeks.as_ref().map(|s| &s.source));
    add("latest_start_weeks", crop.latest_start_weeks.as_ref().map(|s| &s.source));
    add("killed_at_c", crop.killed_at_c.as_ref().map(|s| &s.source));
    add("coldest_night_c", crop.coldest_night_c.as_ref().map(|s| &s.source));

    let indoors = crop.indoors.as_ref();
    add("indoors.age_weeks", indoors.map(|i| &i.age_weeks.source));
    add("indoors.stay_weeks", indoors.map(|i| &i.stay_weeks.source));
    add("indoors.cell_mm", indoors.map(|i| &i.cell_mm.source));

    let seed = &crop.seed;
    add("seed.depth_mm", seed.depth_mm.as_ref().map(|s| &s.source));
    add("seed.light", seed.light.as_ref().map(|s| &s.source));
    add("seed.soil_c", seed.soil_c.as_ref().map(|s| &s.source));
    add("seed.emerge_days", seed.emerge_days.as_ref().map(|s| &s.source));
    for treatment in &seed.pretreat {
        add("seed.pretreat", Some(&treatment.source));
    }
    add("seed.per_cell", seed.per_cell.as_ref().map(|s| &s.source));
    add("seed.life_years", seed.life_years.as_ref().map(|s| &s.source));

    let outdoors = &crop.outdoors;
    add("outdoors.sow_weeks", outdoors.sow_weeks.as_ref().map(|s| &s.source));
    add("outdoors.spacing_cm", Some(&outdoors.spacing_cm.source));
    add("outdoors.repeat_days", outdoors.repeat_days.as_ref().map(|s| &s.source));
    add("outdoors.heat_stops_c", outdoors.heat_stops_c.as_ref().map(|s| &s.source));

    add("harvest", Some(&crop.harvest.source));
    add("autumn", crop.autumn.as_ref().map(|s| &s.source));
    add("autumn_planting_weeks", crop.autumn_planting_weeks.as_ref().map(|s| &s.source));
    add("summer_sowing_weeks", crop.summer_sowing_weeks.as_ref().map(|s| &s.source));
    all
}

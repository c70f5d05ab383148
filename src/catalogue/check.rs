//! What an entry must hold beyond its types.

use std::ops::RangeInclusive;

use indexmap::IndexMap;

use super::sources::{Source, citations};
use crate::planning::{Crop, Indoors, Outdoors, Rhythm, Seed, Span, Way};

/// What is wrong with one line of an entry.
pub(super) struct Fault {
    /// The line, as it is written: `indoors.age_weeks`.
    pub field: &'static str,
    /// What is wrong and what to do.
    pub what: String,
}

/// Weeks from a frost.
const OFFSET: RangeInclusive<i64> = -20..=30;
/// Weeks from sowing to setting out.
const AGE: RangeInclusive<i64> = 1..=20;
/// Any count of days.
const DAYS: RangeInclusive<i64> = 1..=500;

/// All faults of an entry, in the order of its lines.
pub(super) fn faults(crop: &Crop, sources: &IndexMap<String, Source>) -> Vec<Fault> {
    let mut checks = Checks { faults: Vec::new() };
    checks.entry(crop);
    checks.ways(crop);
    checks.offsets(crop);
    if let Some(indoors) = &crop.indoors {
        checks.indoors(indoors);
    }
    checks.seed(&crop.seed, crop.from_seed());
    checks.outdoors(&crop.outdoors);
    checks.harvest(crop);
    checks.sources(crop, sources);
    checks.faults
}

struct Checks {
    faults: Vec<Fault>,
}

impl Checks {
    fn fault(&mut self, field: &'static str, what: impl Into<String>) {
        self.faults.push(Fault { field, what: what.into() });
    }

    fn need(&mut self, holds: bool, field: &'static str, what: &str) {
        if !holds {
            self.fault(field, what);
        }
    }

    fn within(&mut self, field: &'static str, figure: i64, bounds: &RangeInclusive<i64>) {
        if !bounds.contains(&figure) {
            let (low, high) = (bounds.start(), bounds.end());
            self.fault(
                field,
                format!("{figure} is out of bounds; give a figure from {low} to {high}"),
            );
        }
    }

    fn range(&mut self, field: &'static str, span: Span, bounds: &RangeInclusive<i64>) {
        let Span { low, high } = span;
        if !span.ordered() {
            self.fault(
                field,
                format!("[{low}, {high}] runs backwards; write the lower figure first"),
            );
        }
        self.within(field, low, bounds);
        self.within(field, high, bounds);
    }

    fn entry(&mut self, crop: &Crop) {
        let id = crop.id.as_str();
        let snake_case = id.starts_with(|c: char| c.is_ascii_lowercase())
            && id.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_');
        self.need(snake_case, "id", "write it in small letters, digits and underscores");
        let starts = !crop.start_from.is_empty();
        self.need(starts, "start_from", "name what the gardener starts from");
        self.within("crops_in_year", crop.crops_in_year, &(1..=2));
        let agrees = (crop.rhythm == Rhythm::AutumnPlanted) == crop.autumn_planting_weeks.is_some();
        self.need(agrees, "rhythm", "autumn_planted and autumn_planting_weeks go together");
        let agrees = (crop.rhythm == Rhythm::SecondYear) == crop.summer_sowing_weeks.is_some();
        self.need(agrees, "rhythm", "second_year and summer_sowing_weeks go together");
    }

    fn ways(&mut self, crop: &Crop) {
        if !crop.from_seed() {
            let none = crop.ways.is_empty();
            self.need(none, "ways", "it is not started from seed; leave ways empty");
            return;
        }
        let some = !crop.ways.is_empty();
        self.need(some, "ways", "it is started from seed; name at least one way");
        match (crop.ways.contains(&Way::Indoors), crop.indoors.is_some()) {
            (true, false) => self.fault("ways", "add the three indoors lines, or drop \"indoors\""),
            (false, true) => {
                self.fault("ways", "add \"indoors\" to ways, or take the indoors lines out");
            }
            _ => {}
        }
        match (crop.ways.contains(&Way::Outdoors), crop.outdoors.sow_weeks.is_some()) {
            (true, false) => self.fault("ways", "add outdoors.sow_weeks, or drop \"outdoors\""),
            (false, true) => {
                self.fault("ways", "add \"outdoors\" to ways, or take outdoors.sow_weeks out");
            }
            _ => {}
        }
    }

    fn offsets(&mut self, crop: &Crop) {
        if let Some(span) = &crop.setting_out_weeks {
            self.range("setting_out_weeks", span.is, &OFFSET);
        }
        let mut one = |field, weeks: Option<i64>| {
            if let Some(weeks) = weeks {
                self.within(field, weeks, &OFFSET);
            }
        };
        one("under_cover_weeks", crop.under_cover_weeks.as_ref().map(|s| s.is));
        one("spring_ends_weeks", crop.spring_ends_weeks.as_ref().map(|s| s.is));
        one("latest_start_weeks", crop.latest_start_weeks.as_ref().map(|s| s.is));
        let usual = crop.setting_out();
        let covered = crop.under_cover() <= usual.low;
        self.need(covered, "under_cover_weeks", "cover allows setting out earlier, never later");
        let ends = crop.spring_ends_weeks.as_ref().is_none_or(|ends| ends.is >= usual.high);
        self.need(ends, "spring_ends_weeks", "spring cannot end before the usual setting out does");
        let night = crop.killed_at_c() <= crop.coldest_night_c();
        self.need(night, "coldest_night_c", "a night that kills cannot be borne without harm");
    }

    fn indoors(&mut self, indoors: &Indoors) {
        let age = &indoors.age_weeks;
        self.range("indoors.age_weeks", age.ideal, &AGE);
        self.range("indoors.age_weeks", age.workable, &AGE);
        let nested = age.workable.contains(age.ideal);
        self.need(nested, "indoors.age_weeks", "the ideal range must lie within workable");
        let stay = &indoors.stay_weeks;
        self.within("indoors.stay_weeks", stay.longest, &AGE);
        self.within("indoors.stay_weeks", stay.hold, &(0..=8));
        let bears = stay.potted_up.unwrap_or(stay.longest + stay.hold);
        let reached = age.workable.high <= bears;
        let what = "workable reaches beyond the longest stay; shorten it, or give a longer \
                    stay or potted_up";
        self.need(reached, "indoors.age_weeks", what);
        if let Some(potted_up) = stay.potted_up {
            let longer = potted_up > stay.longest && potted_up <= *AGE.end();
            self.need(longer, "indoors.stay_weeks", "potted_up must be longer than longest");
        }
        let cell = &indoors.cell_mm;
        self.within("indoors.cell_mm", cell.sow, &(10..=300));
        let wider = cell.next.is_none_or(|next| next > cell.sow);
        self.need(wider, "indoors.cell_mm", "next must be wider than the cell it is sown in");
        let paired = cell.next.is_some() == stay.potted_up.is_some();
        let what = "give a next pot where potted_up is given, and only there";
        self.need(paired, "indoors.cell_mm", what);
    }

    fn seed(&mut self, seed: &Seed, from_seed: bool) {
        if from_seed {
            let missing = [
                ("seed.depth_mm", seed.depth_mm.is_none()),
                ("seed.light", seed.light.is_none()),
                ("seed.soil_c", seed.soil_c.is_none()),
                ("seed.emerge_days", seed.emerge_days.is_none()),
                ("seed.per_cell", seed.per_cell.is_none()),
                ("seed.life_years", seed.life_years.is_none()),
            ];
            for (field, missing) in missing {
                self.need(!missing, field, "missing, though it is started from seed; add the line");
            }
        }
        if let Some(depth) = &seed.depth_mm {
            self.range("seed.depth_mm", depth.is, &(0..=300));
        }
        if let Some(soil) = &seed.soil_c {
            let Span { low, high } = soil.optimum;
            let rising = [soil.minimum, low, high, soil.maximum].is_sorted();
            self.need(
                rising,
                "seed.soil_c",
                "give them in rising order: minimum, optimum, maximum",
            );
            self.within("seed.soil_c", soil.minimum, &(0..=50));
            self.within("seed.soil_c", soil.maximum, &(0..=50));
        }
        if let Some(days) = &seed.emerge_days {
            self.range("seed.emerge_days", days.is, &DAYS);
        }
        for treatment in &seed.pretreat {
            self.within("seed.pretreat", treatment.lead_days, &DAYS);
        }
        if let Some(seeds) = &seed.per_cell {
            self.within("seed.per_cell", seeds.is, &(1..=20));
        }
        if let Some(years) = &seed.life_years {
            self.within("seed.life_years", years.is, &(1..=20));
        }
    }

    fn outdoors(&mut self, outdoors: &Outdoors) {
        if let Some(sow) = &outdoors.sow_weeks {
            self.range("outdoors.sow_weeks", sow.is, &OFFSET);
            self.within("outdoors.sow_weeks", sow.earliest, &OFFSET);
            let rising =
                sow.earliest <= sow.is.low && sow.latest.is_none_or(|latest| sow.is.high <= latest);
            let what = "give them in rising order: earliest, usual range, latest";
            self.need(rising, "outdoors.sow_weeks", what);
            if let Some(latest) = sow.latest {
                self.within("outdoors.sow_weeks", latest, &OFFSET);
            }
        }
        self.within("outdoors.spacing_cm", outdoors.spacing_cm.plants, &(1..=500));
        self.within("outdoors.spacing_cm", outdoors.spacing_cm.rows, &(1..=500));
        if let Some(days) = &outdoors.repeat_days {
            self.range("outdoors.repeat_days", days.is, &DAYS);
        }
        if let Some(heat) = &outdoors.heat_stops_c {
            self.within("outdoors.heat_stops_c", heat.is, &(15..=50));
        }
    }

    fn harvest(&mut self, crop: &Crop) {
        self.range("harvest", crop.harvest.days, &DAYS);
        self.within("harvest", crop.harvest.lasts_weeks, &(1..=52));
        if let Some(autumn) = &crop.autumn {
            self.within("autumn", autumn.harvest_days, &(1..=60));
        }
        if let Some(span) = &crop.autumn_planting_weeks {
            self.range("autumn_planting_weeks", span.is, &OFFSET);
        }
        if let Some(span) = &crop.summer_sowing_weeks {
            self.range("summer_sowing_weeks", span.is, &OFFSET);
        }
    }

    fn sources(&mut self, crop: &Crop, sources: &IndexMap<String, Source>) {
        for (field, cited) in citations(crop) {
            let named = cited.ids().next().is_some();
            self.need(named, field, "no source; name one, or \"memory\" where there is none");
            for id in cited.ids().filter(|id| !sources.contains_key(*id)) {
                let what =
                    format!("the source '{id}' is not listed; add [sources.{id}] or correct it");
                self.fault(field, what);
            }
        }
    }
}

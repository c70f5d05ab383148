//! The stretches of a season in which a step is taken.

use chrono::{NaiveDate, TimeDelta};
use serde::{Deserialize, Serialize};

use super::crop::{CountedFrom, Crop, HarvestKind, Indoors, Span, StartFrom, Treatment, Way};
use super::frost_free;
use super::harvest::{
    LastStart, ROOTING_WEEKS, autumn_count_back, days_after_direct_sowing, days_after_setting_out,
    last_worthwhile_start,
};
use super::place::{Cover, Place, oldest_weeks};
use super::season::Season;

/// A step of the trade that has its own dates.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Step {
    /// Soaking seed before it is sown.
    Soak,
    /// Nicking or filing seed coats before sowing.
    Nick,
    /// Chilling seed, moist, before sowing.
    Chill,
    /// Sprouting tubers in light before planting.
    Chit,
    /// Growing slips from a root before planting.
    RootSlips,
    /// Sowing in cells under cover.
    SowIndoors,
    /// Sowing in place.
    SowOutdoors,
    /// Looking whether a sowing has come up.
    Check,
    /// Moving a seedling into a larger pot.
    PotUp,
    /// Getting plants used to the outdoors, over 7 to 14 days.
    HardenOff,
    /// Setting out plants; also planting sets, tubers, cloves and slips.
    PlantOut,
    /// The first harvest or bloom.
    Harvest,
}

impl Step {
    /// Every step, in the order a plant goes through them.
    pub const ALL: [Self; 12] = [
        Self::Soak,
        Self::Nick,
        Self::Chill,
        Self::Chit,
        Self::RootSlips,
        Self::SowIndoors,
        Self::SowOutdoors,
        Self::Check,
        Self::PotUp,
        Self::HardenOff,
        Self::PlantOut,
        Self::Harvest,
    ];

    /// Whether it comes before the sowing or planting itself.
    #[must_use]
    pub fn is_treatment(self) -> bool {
        self < Self::SowIndoors
    }

    /// Whether it puts seed into cells or into the ground.
    #[must_use]
    pub fn is_sowing(self) -> bool {
        matches!(self, Self::SowIndoors | Self::SowOutdoors)
    }
}

impl From<Treatment> for Step {
    fn from(treatment: Treatment) -> Self {
        match treatment {
            Treatment::Soak => Self::Soak,
            Treatment::Nick => Self::Nick,
            Treatment::Chill => Self::Chill,
            Treatment::Chit => Self::Chit,
            Treatment::RootSlips => Self::RootSlips,
        }
    }
}

impl From<Way> for Step {
    fn from(way: Way) -> Self {
        match way {
            Way::Indoors => Self::SowIndoors,
            Way::Outdoors => Self::SowOutdoors,
        }
    }
}

/// Which sowing of the year a window belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Label {
    /// For this season, counted from the last frost.
    Spring,
    /// For an autumn harvest, counted back from the first frost.
    Autumn,
    /// For the next year.
    Overwintering,
}

/// One window: workable from `from` to `to`, good from `ideal_from` to `ideal_to`, all included.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Window {
    /// Spring, autumn or overwintering.
    pub label: Label,
    /// The first workable day.
    pub from: NaiveDate,
    /// The first good day.
    pub ideal_from: NaiveDate,
    /// The last good day.
    pub ideal_to: NaiveDate,
    /// The last day that is still worth it.
    pub to: NaiveDate,
    /// The year that names the season.
    #[serde(skip)]
    pub season: i32,
}

impl Window {
    /// Whether `date` is workable.
    #[must_use]
    pub fn covers(&self, date: NaiveDate) -> bool {
        (self.from..=self.to).contains(&date)
    }

    /// The same window, each bound moved by its own number of days.
    pub(super) fn shifted(self, from: i64, ideal_from: i64, ideal_to: i64, to: i64) -> Self {
        Self {
            from: self.from + TimeDelta::days(from),
            ideal_from: self.ideal_from + TimeDelta::days(ideal_from),
            ideal_to: self.ideal_to + TimeDelta::days(ideal_to),
            to: self.to + TimeDelta::days(to),
            ..self
        }
        .ordered()
    }

    /// The same window with its four dates in order: a bound that another has overtaken is moved
    /// to it, the last worthwhile day ruling over the good ones.
    pub(super) fn ordered(mut self) -> Self {
        self.ideal_to = self.ideal_to.min(self.to);
        self.ideal_from = self.ideal_from.min(self.ideal_to);
        self.from = self.from.min(self.ideal_from);
        self
    }
}

/// The windows of one crop in one season, each list in the order of its dates.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Windows {
    /// Sowing indoors.
    pub sow_indoors: Vec<Window>,
    /// Potting up.
    pub pot_up: Vec<Window>,
    /// Start of hardening off.
    pub harden_off: Vec<Window>,
    /// Setting out, or planting sets, tubers, cloves and slips.
    pub plant_out: Vec<Window>,
    /// Sowing in place.
    pub sow_outdoors: Vec<Window>,
    /// Whether the crop cannot make it in this season even when started in time.
    pub season_too_short: bool,
}

impl Windows {
    /// The windows of `step`; none for a step that depends on a sowing (a check, a harvest) or on
    /// the sowing to come (a treatment).
    #[must_use]
    pub fn of(&self, step: Step) -> &[Window] {
        match step {
            Step::SowIndoors => &self.sow_indoors,
            Step::SowOutdoors => &self.sow_outdoors,
            Step::PotUp => &self.pot_up,
            Step::HardenOff => &self.harden_off,
            Step::PlantOut => &self.plant_out,
            Step::Soak
            | Step::Nick
            | Step::Chill
            | Step::Chit
            | Step::RootSlips
            | Step::Check
            | Step::Harvest => &[],
        }
    }
}

/// The windows of `crop` in `season`.
///
/// Setting out begins with the class's offset from the average last frost or, for crops that
/// frost kills, with the date the member trusts, whichever is later. Sowing indoors is that date
/// minus the plant's age. What ends a window is the harvest: see the crate's `harvest` rules.
/// Hardening off begins 14 to 7 days before setting out (University of Maryland Extension, 2023).
#[must_use]
pub fn windows(crop: &Crop, season: &Season) -> Windows {
    let mut all = Windows::default();
    if let Some(dry) = &season.dry {
        all = frost_free::windows(crop, season, dry);
    } else if let Some(span) = crop.autumn_planting_weeks.as_ref() {
        overwintering_planting(span.is, season, &mut all);
    } else if let Some(span) = crop.summer_sowing_weeks.as_ref() {
        summer_sowing(crop, span.is, season, &mut all);
    } else {
        spring(crop, season, &mut all);
        autumn(crop, season, &mut all);
    }
    if let Some(indoors) = &crop.indoors {
        follow_ups(indoors, season.place, &mut all);
    }
    all
}

fn weeks(n: i64) -> TimeDelta {
    TimeDelta::weeks(n)
}

/// The usual first day of setting out, and how much later it is than the class alone would say.
pub(super) fn setting_out(crop: &Crop, season: &Season) -> (NaiveDate, TimeDelta) {
    let by_class = season.last_frost + weeks(crop.setting_out().low);
    match season.trusted {
        Some(trusted) if tops_meet_frost(crop) && trusted > by_class => {
            (trusted, trusted.signed_duration_since(by_class))
        }
        _ => (by_class, TimeDelta::zero()),
    }
}

/// Whether a late frost meets what is set out: what is planted dormant comes up weeks later.
fn tops_meet_frost(crop: &Crop) -> bool {
    let dormant = matches!(
        crop.start_from.first(),
        Some(StartFrom::Tubers | StartFrom::Cloves | StartFrom::Sets | StartFrom::Crowns)
    );
    crop.frost_kills() && !dormant
}

/// `date` brought forward by the season's cover, by the weeks that `weeks_of` gives; `earliest` is
/// what the trade states for covered plants.
fn under_cover(
    season: &Season,
    date: NaiveDate,
    earliest: NaiveDate,
    weeks_of: impl Fn(Cover) -> i64,
) -> NaiveDate {
    let Some(cover) = season.cover else { return date };
    let sooner = date - weeks(weeks_of(cover));
    if cover.keeps_to_stated_earliest() { sooner.max(earliest.min(date)) } else { sooner }
}

/// The last worthwhile day of a start made in good time on `on_time`, or on `uncovered` without the
/// season's cover: a cover never takes days away.
fn last_start(
    crop: &Crop,
    season: &Season,
    on_time: NaiveDate,
    uncovered: NaiveDate,
    lead: impl Fn(i64) -> i64,
) -> LastStart {
    let bare = Season { cover: None, ..*season };
    match (
        last_worthwhile_start(crop, season, on_time, &lead),
        last_worthwhile_start(crop, &bare, uncovered, &lead),
    ) {
        (LastStart::On(covered), LastStart::On(bare)) => LastStart::On(covered.max(bare)),
        (covered, _) => covered,
    }
}

/// The last worthwhile day of a sowing indoors by the days from sowing, where the trade counts
/// those: plants that are set out young are ready no sooner for it. It binds what ripens once; what
/// yields over weeks only yields a little later and less.
fn ripe_from_sowing(crop: &Crop, season: &Season, on_time: NaiveDate) -> Option<NaiveDate> {
    let (from, kind) = (crop.harvest.counted_from, crop.harvest.kind);
    if from != CountedFrom::Sowing || kind != HarvestKind::Once {
        return None;
    }
    match last_worthwhile_start(crop, season, on_time, |days| days) {
        LastStart::On(last) => Some(last),
        LastStart::Open | LastStart::SeasonTooShort => None,
    }
}

fn spring(crop: &Crop, season: &Season, all: &mut Windows) {
    let (uncovered, risk_shift) = setting_out(crop, season);
    let at = |offset: i64| season.last_frost + weeks(offset);
    let earliest = at(crop.under_cover()) + risk_shift;
    let set_out = under_cover(season, uncovered, earliest, |cover| cover.spring_weeks(crop));

    if crop.ways.contains(&Way::Indoors) || crop.ways.is_empty() {
        let lead = |days| days_after_setting_out(crop, days);
        let last = match last_start(crop, season, set_out, uncovered, lead) {
            LastStart::Open => season.end(),
            LastStart::On(date) => date,
            LastStart::SeasonTooShort => {
                all.season_too_short = true;
                return;
            }
        };
        let heat = crop.spring_ends_weeks.as_ref().map(|s| at(s.is));
        let last = heat.map_or(last, |heat| last.min(heat).max(uncovered));
        let plant_out = Window {
            label: Label::Spring,
            from: earliest,
            ideal_from: set_out,
            ideal_to: at(crop.setting_out().high) + risk_shift,
            to: last,
            season: season.year,
        }
        .ordered();
        all.plant_out.push(plant_out);
        if let Some(indoors) = &crop.indoors {
            let age = &indoors.age_weeks;
            let latest = crop.latest_start_weeks.as_ref().map(|s| at(s.is) + risk_shift);
            let youngest = plant_out.to - weeks(age.workable.low);
            let youngest = match ripe_from_sowing(crop, season, set_out - weeks(age.ideal.high)) {
                Some(last) => youngest.min(last),
                None => youngest,
            };
            all.sow_indoors.push(
                Window {
                    label: Label::Spring,
                    from: set_out - weeks(oldest_weeks(age, season.place)),
                    ideal_from: set_out - weeks(age.ideal.high),
                    // Where the trade states a single age, the spread of the setting out gives
                    // the good sowing days their width.
                    ideal_to: (set_out - weeks(age.ideal.low))
                        .max(plant_out.ideal_to - weeks(age.ideal.high)),
                    to: latest.map_or(youngest, |latest| youngest.min(latest)),
                    season: season.year,
                }
                .ordered(),
            );
        }
    }

    if let Some(sow) =
        crop.outdoors.sow_weeks.as_ref().filter(|_| crop.ways.contains(&Way::Outdoors))
    {
        // Frost must not catch what has come up, so a trusted date holds for the seedlings.
        let emerge = crop.seed.emerge_days.as_ref().map_or(0, |days| days.is.low);
        let safe = season
            .trusted
            .filter(|_| crop.frost_kills())
            .map(|trusted| trusted - TimeDelta::days(emerge));
        let not_before = |date: NaiveDate| safe.map_or(date, |safe| date.max(safe));
        let earliest = not_before(at(sow.earliest));
        let uncovered = not_before(at(sow.is.low));
        let ideal_from = under_cover(season, uncovered, earliest, |cover| cover.sowing_weeks(crop));
        let lead = |days| days_after_direct_sowing(crop, days);
        let by_harvest = match last_start(crop, season, ideal_from, uncovered, lead) {
            LastStart::Open => Some(season.end()),
            LastStart::On(date) => Some(date),
            LastStart::SeasonTooShort => None,
        };
        let by_heat = sow.latest.map(at);
        if let Some(last) = by_harvest {
            let last = by_heat.map_or(last, |heat| last.min(heat).max(uncovered));
            all.sow_outdoors.push(
                Window {
                    label: Label::Spring,
                    from: earliest.min(ideal_from),
                    ideal_from,
                    ideal_to: at(sow.is.high).max(uncovered),
                    to: last,
                    season: season.year,
                }
                .ordered(),
            );
        } else if crop.indoors.is_none() {
            all.season_too_short = true;
        }
    }
}

/// The second sowing, counted back from the first frost (Virginia Cooperative Extension 426-334).
///
/// Its last good day is the formula's. Three weeks before that are good as well and two more are
/// workable (common practice, no source); after it each day costs one of the harvest period.
fn autumn(crop: &Crop, season: &Season, all: &mut Windows) {
    let (Some(rule), Some(first)) = (&crop.autumn, season.first_frost) else { return };
    let covered = season.cover.map_or(0, |cover| cover.autumn_weeks(crop));
    let first = first + weeks(covered);
    let window = |count_back: i64| {
        let ideal_to = first - TimeDelta::days(count_back);
        Window {
            label: Label::Autumn,
            from: ideal_to - weeks(5),
            ideal_from: ideal_to - weeks(3),
            ideal_to,
            to: ideal_to + TimeDelta::days(rule.harvest_days),
            season: season.year,
        }
    };
    let days = crop.harvest.days.middle();
    // Where sowing in place is the better way, nobody raises the second crop in trays.
    let raised = crop.indoors.as_ref().filter(|_| crop.ways.first() == Some(&Way::Indoors));
    if let Some(indoors) = raised {
        let lead = days_after_setting_out(crop, days);
        let plant_out = window(autumn_count_back(lead, rule.harvest_days, crop.frost_kills()));
        let age = &indoors.age_weeks.ideal;
        let sow = plant_out.shifted(-7 * age.high, -7 * age.high, -7 * age.low, -7 * age.low);
        push_after(&mut all.plant_out, plant_out);
        push_after(&mut all.sow_indoors, sow);
    }
    if crop.ways.contains(&Way::Outdoors) {
        let lead = days_after_direct_sowing(crop, days);
        let sow = window(autumn_count_back(lead, rule.harvest_days, crop.frost_kills()));
        push_after(&mut all.sow_outdoors, sow);
    }
}

/// Adds an autumn window behind the spring one: the two never overlap. The spring one keeps its
/// own days up to the autumn one's good days, and takes them over where its good days reach past
/// them.
fn push_after(list: &mut Vec<Window>, mut autumn: Window) {
    if let Some(spring) = list.last_mut() {
        let day = TimeDelta::days(1);
        autumn.ideal_from = autumn.ideal_from.max(spring.ideal_to + day);
        if autumn.ideal_to < autumn.ideal_from {
            spring.to = spring.to.max(autumn.to);
            return;
        }
        spring.to = spring.to.min(autumn.ideal_from - day);
        autumn.from = autumn.from.max(spring.to + day);
    }
    list.push(autumn);
}

/// Planting in autumn for the next year, counted from the average first frost. Two weeks either
/// side of the good range are workable (common practice, no source).
fn overwintering_planting(span: Span, season: &Season, all: &mut Windows) {
    let Some(first) = season.first_frost else { return };
    all.plant_out.push(Window {
        label: Label::Overwintering,
        from: first + weeks(span.low - 2),
        ideal_from: first + weeks(span.low),
        ideal_to: first + weeks(span.high),
        to: first + weeks(span.high + 2),
        season: season.year,
    });
}

/// Sowing in early summer for bloom in the next year, counted from the average last frost. Two
/// weeks before the good range are workable, and after it as long as plants root before winter.
fn summer_sowing(crop: &Crop, span: Span, season: &Season, all: &mut Windows) {
    let at = |offset: i64| season.last_frost + weeks(offset);
    let rooted = season.first_frost.map_or(at(span.high + 4), |first| first - weeks(ROOTING_WEEKS));
    let sow_until = |last: NaiveDate| {
        Window {
            label: Label::Overwintering,
            from: at(span.low - 2),
            ideal_from: at(span.low),
            ideal_to: at(span.high),
            to: last,
            season: season.year,
        }
        .ordered()
    };
    if crop.ways.contains(&Way::Outdoors) {
        all.sow_outdoors.push(sow_until(rooted));
    }
    if let Some(indoors) = &crop.indoors {
        let age = &indoors.age_weeks;
        let sow = sow_until(rooted - weeks(age.workable.low));
        let (low, high) = (7 * age.ideal.low, 7 * age.ideal.high);
        all.sow_indoors.push(sow);
        all.plant_out.push(Window { to: rooted, ..sow.shifted(low, low, high, low) }.ordered());
    }
}

/// Potting up and hardening off, which follow from sowing and setting out.
///
/// Potting up falls three to four weeks after sowing, when true leaves have opened (common
/// practice, no source); hardening off begins 14 to 7 days before setting out (University of
/// Maryland Extension, 2023).
fn follow_ups(indoors: &Indoors, place: Option<Place>, all: &mut Windows) {
    if indoors.stay_weeks.potted_up.is_some() {
        let longest = indoors.stay_weeks.longest - place.map_or(0, Place::weeks_younger);
        let latest = 7 * longest.max(4);
        all.pot_up = all.sow_indoors.iter().map(|w| w.shifted(21, 21, 28, latest)).collect();
    }
    all.harden_off = all.plant_out.iter().map(|w| w.shifted(-14, -14, -7, -7)).collect();
}

/// The treatments that begin before a sowing or planting on `date`, with the day each begins.
pub fn treatments(crop: &Crop, date: NaiveDate) -> impl Iterator<Item = (Treatment, NaiveDate)> {
    crop.seed.pretreat.iter().map(move |t| (t.is, date - TimeDelta::days(t.lead_days)))
}

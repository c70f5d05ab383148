//! The verdict on a date for a step.

use chrono::{NaiveDate, TimeDelta};
use serde::{Deserialize, Serialize};

use super::crop::{Crop, CropId, Disturbance, Way};
use super::garden::Garden;
use super::season::Season;
use super::windows::{Label, Step, Window, Windows, windows};

/// The verdict on a date for a step.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Would be older at setting out than it can bear, or frost and cold soil would spoil it.
    TooEarly,
    /// Workable with stated care: potting up, cover, more light.
    Early,
    /// Go.
    OnTime,
    /// Still worth it, at a cost.
    Late,
    /// What is left is not worth the cell.
    TooLate,
}

impl Verdict {
    /// Whether the step can be taken on that day at all.
    #[must_use]
    pub fn workable(self) -> bool {
        matches!(self, Self::Early | Self::OnTime | Self::Late)
    }
}

/// Why there is no verdict.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Reason {
    /// The crop is never started, moved or hardened off this way.
    NeverThisWay,
    /// The garden has no frost and its hot and wet months are not known, so nothing says when.
    NoFrostHere,
    /// The crop is not grown from seed.
    NotFromSeed,
}

/// What the rules say of one step of one crop on one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Assessment {
    /// The crop.
    pub crop: CropId,
    /// The step that was weighed.
    pub step: Step,
    /// The day that was weighed.
    pub on: NaiveDate,
    /// The verdict, or why there is none.
    pub verdict: Result<Verdict, Reason>,
    /// The window that decided: the one that covers the day, else the one just missed (too late)
    /// or the one to come (too early).
    pub window: Option<Window>,
    /// All windows of the season that matters for this day.
    pub windows: Windows,
    /// The season that matters for this day.
    pub season: Option<Season>,
    /// The first good day when too early or early; the next window's first good day when too
    /// late; the last day that is still worth it when on time or late.
    pub next_date: Option<NaiveDate>,
    /// For sowing indoors: when a plant sown on the day could be set out, not before the usual
    /// setting out nor younger than it can bear.
    pub set_out: Option<NaiveDate>,
    /// Whether sowing in place is the better way now.
    pub better_outdoors: bool,
    /// Whether sowing some indoors now and some in place later is wise.
    pub both: bool,
}

impl Assessment {
    /// The verdict, where there is one.
    #[must_use]
    pub fn verdict(&self) -> Option<Verdict> {
        self.verdict.ok()
    }

    /// For sowing indoors: the age in days at setting out.
    #[must_use]
    pub fn age_days(&self) -> Option<i64> {
        Some(self.set_out?.signed_duration_since(self.on).num_days())
    }
}

/// A window of the season before, this one or the next is "soon" when it opens within this many
/// days: then the answer is *wait* and not *too late*. A rule of our own.
const SOON_DAYS: i64 = 28;

/// What the rules say of `step` for `crop` in `garden` on the day `on`.
///
/// ```
/// use sowbell::planning::{Basis, Garden, Step, Verdict, assess};
/// let catalogue = sowbell::catalogue::Catalogue::embedded()?;
/// let cucumber = catalogue.get("cucumber").ok_or("listed")?;
/// let garden = Garden::new(Some("05-15".parse()?), Some("10-05".parse()?), Basis::Average)?;
/// let assessment = assess(cucumber, garden, Step::SowIndoors, "2026-04-22".parse()?);
/// assert_eq!(assessment.verdict(), Some(Verdict::OnTime));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn assess(crop: &Crop, garden: Garden, step: Step, on: NaiveDate) -> Assessment {
    let mut assessment = assess_alone(crop, garden, step, on);
    if assessment.verdict == Err(Reason::NeverThisWay) {
        assessment.better_outdoors = step == Step::SowIndoors && crop.ways == [Way::Outdoors];
    } else if step == Step::SowIndoors && crop.ways.contains(&Way::Outdoors) {
        let outdoors = assess_alone(crop, garden, Step::SowOutdoors, on);
        weigh_ways(crop, &mut assessment, &outdoors);
    }
    assessment
}

/// The steps worth naming for somebody who asks to start `crop` on the day `on`: the best way
/// first, and the other where it is a real choice.
#[must_use]
pub fn best_ways(crop: &Crop, garden: Garden, on: NaiveDate) -> Vec<Assessment> {
    let step_of = |way: &Way| match way {
        Way::Indoors => Step::SowIndoors,
        Way::Outdoors => Step::SowOutdoors,
    };
    match crop.ways.as_slice() {
        [] => vec![assess(crop, garden, Step::PlantOut, on)],
        [only] => vec![assess(crop, garden, step_of(only), on)],
        [first, second, ..] => {
            let first = assess(crop, garden, step_of(first), on);
            let second = assess(crop, garden, step_of(second), on);
            let swap = prefers_second(crop, &first, &second);
            let (mut best, mut other) = if swap { (second, first) } else { (first, second) };
            let outdoors_now = best.step == Step::SowOutdoors;
            best.better_outdoors |= outdoors_now && best.verdict().is_some_and(Verdict::workable);
            let listed_first = crop.ways.first() == Some(&Way::Outdoors);
            best.better_outdoors |= outdoors_now && listed_first && best.verdict.is_ok();
            other.better_outdoors |= best.better_outdoors;
            if other.verdict().is_some_and(Verdict::workable) {
                vec![best, other]
            } else {
                vec![best]
            }
        }
    }
}

/// Whether the way listed second is the better one on this day.
fn prefers_second(crop: &Crop, first: &Assessment, second: &Assessment) -> bool {
    let (Some(a), Some(b)) = (first.verdict(), second.verdict()) else { return false };
    match (a.workable(), b.workable()) {
        // Once the ground is ready, a late start gains nothing from a tray.
        (true, true) if second.step == Step::SowOutdoors => {
            a == Verdict::Late && in_good_soil(second)
        }
        (true, true) => a == Verdict::Late && b == Verdict::OnTime,
        (true, false) => false,
        // A plant that resents being moved is better waited for than begun in a tray.
        (false, true) => {
            let waits = first.step == Step::SowOutdoors
                && a == Verdict::TooEarly
                && crop.disturbance == Disturbance::Resents;
            !waits
        }
        // Neither works today: the one that comes sooner.
        (false, false) => match (a, b) {
            (Verdict::TooLate, Verdict::TooEarly) => true,
            (Verdict::TooEarly, Verdict::TooLate) => false,
            _ => {
                matches!((first.next_date, second.next_date), (Some(x), Some(y)) if y < x && a == Verdict::TooLate)
            }
        },
    }
}

/// Whether sowing in place works and its good days have begun.
fn in_good_soil(outdoors: &Assessment) -> bool {
    matches!(outdoors.verdict(), Some(Verdict::OnTime | Verdict::Late))
}

/// Fills in, on the assessment of sowing indoors, how sowing in place compares.
fn weigh_ways(crop: &Crop, indoors: &mut Assessment, outdoors: &Assessment) {
    let Some(verdict) = indoors.verdict() else { return };
    let in_place_now = outdoors.verdict().is_some_and(Verdict::workable);
    let in_place_later = in_place_now || outdoors.verdict() == Some(Verdict::TooEarly);
    indoors.better_outdoors = match crop.ways.first() {
        Some(Way::Outdoors) => in_place_later,
        _ => matches!(verdict, Verdict::Late | Verdict::TooLate) && in_good_soil(outdoors),
    };
    let later = outdoors.verdict() == Some(Verdict::TooEarly);
    // An early start is better waited for than hedged.
    let good = matches!(verdict, Verdict::OnTime | Verdict::Late);
    indoors.both = crop.hedge && good && later && !indoors.better_outdoors;
}

fn assess_alone(crop: &Crop, garden: Garden, step: Step, on: NaiveDate) -> Assessment {
    let mut assessment = Assessment {
        crop: crop.id.clone(),
        step,
        on,
        verdict: Err(Reason::NoFrostHere),
        window: None,
        windows: Windows::default(),
        season: None,
        next_date: None,
        set_out: None,
        better_outdoors: false,
        both: false,
    };
    if let Some(reason) = impossible(crop, step) {
        assessment.verdict = Err(reason);
    }
    let Some(current) = garden.season_on(on) else { return assessment };
    let Some(before) = garden.season_of(current.year - 1) else { return assessment };
    let Some(after) = garden.season_of(current.year + 1) else { return assessment };
    let seasons = [before, current, after];
    let per_season = seasons.map(|season| (season, windows(crop, &season)));
    let [_, (_, of_current), _] = &per_season;
    assessment.windows = of_current.clone();
    assessment.season = Some(current);
    if impossible(crop, step).is_some() {
        return assessment;
    }

    let all: Vec<(&Season, &Windows, Window)> = per_season
        .iter()
        .flat_map(|(season, windows)| windows.of(step).iter().map(move |w| (season, windows, *w)))
        .collect();
    let covering = all.iter().filter(|(_, _, window)| window.covers(on));
    let covering = covering.min_by_key(|(_, _, window)| !good_on(window, on));
    let passed = all.iter().rfind(|(_, _, window)| window.to < on);
    let coming = all.iter().find(|(_, _, window)| window.from > on);

    let (verdict, deciding) = match (covering, passed, coming) {
        (Some(covering), _, _) => (verdict_within(&covering.2, on), Some(covering)),
        (None, passed, Some(coming)) => {
            let soon = coming.2.from.signed_duration_since(on).num_days() <= SOON_DAYS;
            let missed = passed.filter(|passed| passed.2.season == current.year && !soon);
            match missed {
                Some(missed) => (Verdict::TooLate, Some(missed)),
                None => (Verdict::TooEarly, Some(coming)),
            }
        }
        (None, Some(passed), None) => (Verdict::TooLate, Some(passed)),
        (None, None, None) => (Verdict::TooLate, None),
    };
    assessment.verdict = Ok(verdict);
    if let Some((season, windows, window)) = deciding {
        assessment.window = Some(*window);
        assessment.windows = (*windows).clone();
        assessment.season = Some(**season);
    }
    assessment.next_date = match verdict {
        Verdict::TooEarly | Verdict::Early => assessment.window.map(|w| w.ideal_from),
        Verdict::OnTime | Verdict::Late => assessment.window.map(|w| w.to),
        Verdict::TooLate => coming.map(|(_, _, w)| w.ideal_from),
    };
    if step == Step::SowIndoors {
        assessment.set_out = projected_setting_out(crop, &assessment);
    }
    assessment
}

/// When a plant sown on the day could be set out. In spring it waits for the usual setting out,
/// or until it has reached the youngest workable age; later in the year nothing holds it back and
/// it goes out as soon as its age is good.
fn projected_setting_out(crop: &Crop, assessment: &Assessment) -> Option<NaiveDate> {
    let age = &crop.indoors.as_ref()?.age_weeks;
    let label = assessment.window?.label;
    let no_frost = assessment.season.is_some_and(|season| season.dry.is_some());
    if label != Label::Spring && !no_frost {
        return Some(assessment.on + TimeDelta::weeks(age.ideal.low));
    }
    let usual = assessment.windows.plant_out.iter().find(|w| w.label == label)?;
    let youngest = assessment.on + TimeDelta::weeks(age.workable.low);
    Some(usual.ideal_from.max(youngest))
}

/// Why a step can never be taken for this crop, whatever the date.
fn impossible(crop: &Crop, step: Step) -> Option<Reason> {
    let has_indoors = crop.indoors.is_some();
    match step {
        Step::SowIndoors | Step::SowOutdoors if crop.ways.is_empty() => Some(Reason::NotFromSeed),
        Step::SowIndoors if !crop.ways.contains(&Way::Indoors) => Some(Reason::NeverThisWay),
        Step::SowOutdoors if !crop.ways.contains(&Way::Outdoors) => Some(Reason::NeverThisWay),
        Step::PotUp => {
            let helps = crop.indoors.as_ref().is_some_and(|i| i.stay_weeks.potted_up.is_some());
            (!helps).then_some(Reason::NeverThisWay)
        }
        Step::Soak
        | Step::Nick
        | Step::Chill
        | Step::Chit
        | Step::RootSlips
        | Step::Check
        | Step::Harvest => Some(Reason::NeverThisWay),
        Step::HardenOff if !has_indoors => Some(Reason::NeverThisWay),
        Step::PlantOut if !has_indoors && !crop.ways.is_empty() => Some(Reason::NeverThisWay),
        _ => None,
    }
}

fn good_on(window: &Window, on: NaiveDate) -> bool {
    (window.ideal_from..=window.ideal_to).contains(&on)
}

fn verdict_within(window: &Window, on: NaiveDate) -> Verdict {
    if on < window.from {
        Verdict::TooEarly
    } else if on < window.ideal_from {
        Verdict::Early
    } else if on <= window.ideal_to {
        Verdict::OnTime
    } else if on <= window.to {
        Verdict::Late
    } else {
        Verdict::TooLate
    }
}

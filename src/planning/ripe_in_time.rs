//! What would help a crop that does not surely ripen.

use chrono::{NaiveDate, TimeDelta};

use super::assess::{Verdict, assess};
use super::crop::{Crop, Way};
use super::garden::Garden;
use super::ripening::{Ripening, Ripens, ripening_of};
use super::windows::Step;

/// What a cover over the plants keeps off in autumn: the air temperatures in whole degrees Celsius
/// down to which a crop that frost kills is safe.
///
/// Source: North Dakota State University Extension, Yard & Garden Report, 15 July 2017: row cover
/// of medium weight gives four Fahrenheit degrees of frost protection, a heavy frost blanket
/// eight. Taken off the freezing point and rounded to the careful side.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FrostCover {
    /// Under fleece of medium weight.
    pub fleece_c: i64,
    /// Under a heavy frost blanket.
    pub blanket_c: i64,
}

/// What would help; nothing of it where it ripens surely.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Helps {
    /// The last day of a start that ripens surely, with the way: this season's where that day is
    /// still to come, otherwise the next season's.
    pub earlier: Option<(Step, NaiveDate)>,
    /// Cover in autumn, where no more than a few weeks are lacking.
    pub cover: Option<FrostCover>,
    /// The most days to harvest, as the crop's figure counts them, with which a variety started
    /// on the same day ripens surely.
    pub days_at_most: Option<i64>,
}

/// The most days that cover can win: a few degrees bridge the first light frosts, and no whole
/// autumn. A rule of our own.
const MOST_DAYS_UNDER_COVER: i64 = 21;

/// What would help where `ripe` is tight or no, looked at on the day `today`.
///
/// A variety is offered down to half of the crop's quickest days: there are none beyond that (a
/// rule of our own). A sowing that was made can no longer be another variety.
#[must_use]
pub fn what_helps(crop: &Crop, garden: Garden, ripe: &Ripening, today: NaiveDate) -> Helps {
    if ripe.ripens == Ripens::Yes {
        return Helps::default();
    }
    let days = crop.harvest.days;
    let in_time = |days: &i64| ripe.first_after(crop, *days) <= ripe.risk_end;
    let most = (days.low / 2..days.high).rev().find(in_time).filter(|_| !ripe.recorded);
    let lacking = -ripe.days_to_spare_at_risk();
    let covered = crop.frost_kills() && !ripe.covered() && lacking <= MOST_DAYS_UNDER_COVER;
    Helps {
        earlier: earlier_start(crop, garden, ripe, today),
        cover: covered.then_some(FrostCover { fleece_c: -2, blanket_c: -4 }),
        days_at_most: most,
    }
}

fn earlier_start(
    crop: &Crop,
    garden: Garden,
    ripe: &Ripening,
    today: NaiveDate,
) -> Option<(Step, NaiveDate)> {
    const YEAR: i64 = 365;
    let before = ripe.on - TimeDelta::days(1);
    last_sure_start(crop, garden, today, before)
        .filter(|_| !ripe.recorded)
        .or_else(|| last_sure_start(crop, garden, ripe.on, ripe.on + TimeDelta::days(YEAR)))
}

/// The last day from `from` to `to` on which a start ripens surely.
fn last_sure_start(
    crop: &Crop,
    garden: Garden,
    from: NaiveDate,
    to: NaiveDate,
) -> Option<(Step, NaiveDate)> {
    let steps: Vec<Step> = match crop.ways.as_slice() {
        [] => vec![Step::PlantOut],
        ways => ways.iter().map(|way: &Way| Step::from(*way)).collect(),
    };
    let sure = |step: Step, on: NaiveDate| {
        let start = assess(crop, garden, step, on);
        let good = matches!(start.verdict(), Some(Verdict::OnTime | Verdict::Late));
        good && ripening_of(crop, &start).is_some_and(|ripe| ripe.ripens == Ripens::Yes)
    };
    let days = to.signed_duration_since(from).num_days();
    (0..=days).find_map(|back| {
        let on = to - TimeDelta::days(back);
        steps.iter().find(|step| sure(**step, on)).map(|step| (*step, on))
    })
}

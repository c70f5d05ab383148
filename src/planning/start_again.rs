//! What is worth doing where a start was missed or has failed.

use chrono::NaiveDate;

use super::assess::{Assessment, Reason, Verdict, assess, best_ways};
use super::crop::Crop;
use super::garden::Garden;
use super::windows::{Label, Step};

/// What is worth doing where a start was missed or has failed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StartAgain {
    /// No rule says: the garden has no frost and its hot and wet months are not known.
    NotKnown,
    /// This start now: the day is the last on which it is worth it.
    Now(Step, NaiveDate),
    /// This start, from that day on.
    From(Step, NaiveDate),
    /// Bought plants instead of seed.
    BuyPlants {
        /// The first good day for setting them out, the day itself or later.
        from: NaiveDate,
        /// The last day on which that is worth it.
        until: NaiveDate,
    },
    /// Nothing now; the next good day for the same start, where one is known.
    TooLate(Option<NaiveDate>),
}

impl StartAgain {
    /// Whether the start `step` itself can be made again at once, as far as is known.
    #[must_use]
    pub fn at_once(self, step: Step) -> bool {
        match self {
            Self::NotKnown => true,
            Self::Now(now, _) => now == step,
            Self::From(..) | Self::BuyPlants { .. } | Self::TooLate(_) => false,
        }
    }
}

/// What is worth doing on the day `on` for somebody who has missed the start `step` of `crop`, or
/// whose start has failed: the same start if it is still worth it or to be waited for, the other
/// way of sowing, bought plants, or nothing before the next good day. All of it is what the
/// verdicts of [`assess`] say.
///
/// ```
/// use sowbell::planning::{Basis, Garden, StartAgain, Step, start_again};
/// let catalogue = sowbell::catalogue::Catalogue::embedded()?;
/// let pepper = catalogue.get("pepper").ok_or("listed")?;
/// let garden = Garden::new(Some("05-15".parse()?), Some("10-05".parse()?), Basis::Average)?;
/// let again = start_again(pepper, garden, Step::SowIndoors, "2026-06-01".parse()?);
/// assert!(matches!(again, StartAgain::BuyPlants { .. }));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn start_again(crop: &Crop, garden: Garden, step: Step, on: NaiveDate) -> StartAgain {
    let same = assess(crop, garden, step, on);
    match same.verdict {
        Err(Reason::NoFrostHere) => StartAgain::NotKnown,
        Ok(Verdict::TooLate) | Err(Reason::NeverThisWay | Reason::NotFromSeed) => {
            instead(crop, garden, &same)
        }
        Ok(_) => begun(&same).unwrap_or(StartAgain::NotKnown),
    }
}

/// What is worth doing on the day `on` for somebody who made the start `step` of `crop` amiss:
/// [`start_again`], but where that is to be waited for, the way that is recommended on the day, if
/// it is open or opens sooner.
#[must_use]
pub fn better_start(crop: &Crop, garden: Garden, step: Step, on: NaiveDate) -> StartAgain {
    let again = start_again(crop, garden, step, on);
    let StartAgain::From(_, waits_until) = again else { return again };
    let best = best_ways(crop, garden, on).into_iter().next();
    match best.filter(|best| best.step != step).as_ref().and_then(begun) {
        Some(now @ StartAgain::Now(..)) => now,
        Some(later @ StartAgain::From(_, from)) if from < waits_until => later,
        _ => again,
    }
}

/// The start that was weighed, where it works now or is to be waited for.
fn begun(weighed: &Assessment) -> Option<StartAgain> {
    match weighed.verdict() {
        Some(Verdict::TooEarly) => Some(StartAgain::From(weighed.step, weighed.next_date?)),
        Some(verdict) if verdict.workable() => {
            Some(StartAgain::Now(weighed.step, weighed.window?.to))
        }
        _ => None,
    }
}

/// What else there is where the start `same` is not made any more.
fn instead(crop: &Crop, garden: Garden, same: &Assessment) -> StartAgain {
    let other = match same.step {
        Step::SowIndoors => Some(Step::SowOutdoors),
        Step::SowOutdoors => Some(Step::SowIndoors),
        _ => None,
    };
    let missed = same.window.map_or(Label::Spring, |window| window.label);
    // What is to be waited for must belong to the crop that was missed.
    let of_this_season = |weighed: &Assessment| {
        let window = weighed.window.filter(|window| window.label == missed);
        window.is_some_and(|w| same.season.is_some_and(|season| season.year == w.season))
    };
    let open = |step| {
        let weighed = assess(crop, garden, step, same.on);
        let counts = weighed.verdict().is_some_and(Verdict::workable) || of_this_season(&weighed);
        begun(&weighed).filter(|_| counts).zip(weighed.window)
    };
    if let Some((start, _)) = other.and_then(open) {
        return start;
    }
    let raised = other.is_some() && crop.indoors.is_some();
    if let Some((_, window)) = raised.then(|| open(Step::PlantOut)).flatten() {
        let from = window.ideal_from.max(same.on).min(window.to);
        return StartAgain::BuyPlants { from, until: window.to };
    }
    let next = || other.and_then(|step| assess(crop, garden, step, same.on).next_date);
    StartAgain::TooLate(same.next_date.or_else(next))
}

#[cfg(test)]
mod tests {
    use chrono::TimeDelta;

    use super::*;
    use crate::catalogue::Catalogue;
    use crate::planning::Basis;

    fn date(text: &str) -> NaiveDate {
        text.parse().expect("a date")
    }

    fn garden() -> Garden {
        let day = |text: &str| Some(text.parse().expect("a month-day"));
        Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden")
    }

    fn again(crop: &str, step: Step, on: &str) -> StartAgain {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        start_again(catalogue.get(crop).expect("listed"), garden(), step, date(on))
    }

    #[test]
    fn what_a_good_grower_does_next() {
        // Peppers go out two weeks after the last frost; their seed is late by then.
        let early = again("pepper", Step::SowIndoors, "2026-05-20");
        let StartAgain::BuyPlants { from, until } = early else { panic!("{early:?}") };
        assert!(from > date("2026-05-20") && until > from, "{early:?}");
        // Tomatoes are never sown in place here: in good time they are sown indoors instead.
        let indoors = again("tomato", Step::SowOutdoors, "2026-04-10");
        assert!(matches!(indoors, StartAgain::Now(Step::SowIndoors, _)), "{indoors:?}");
        let bought = again("tomato", Step::SowOutdoors, "2026-05-25");
        assert!(matches!(bought, StartAgain::BuyPlants { .. }), "{bought:?}");
        // Pole beans six weeks early are waited for; peas in July heat are over.
        let beans = again("pole_bean", Step::SowOutdoors, "2026-04-03");
        assert_eq!(beans, StartAgain::From(Step::SowOutdoors, date("2026-05-15")));
        let peas = again("pea", Step::SowOutdoors, "2026-07-10");
        assert!(matches!(peas, StartAgain::TooLate(Some(_))), "{peas:?}");
        // Cucumbers that fail in cells in June are sown in the ground.
        let cucumber = again("cucumber", Step::SowIndoors, "2026-06-20");
        assert!(cucumber.at_once(Step::SowIndoors) || cucumber.at_once(Step::SowOutdoors));
    }

    #[test]
    fn a_start_in_the_ground_that_waits_is_made_indoors_where_that_is_the_better_way() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let better = |crop: &str, on: &str| {
            let crop = catalogue.get(crop).expect("listed");
            better_start(crop, garden(), Step::SowOutdoors, date(on))
        };
        // The ground waits for May 22; cells are filled a month before, and not yet on the first.
        let StartAgain::From(Step::SowIndoors, from) = better("cucumber", "2026-04-01") else {
            panic!("{:?}", better("cucumber", "2026-04-01"));
        };
        assert!(date("2026-04-10") < from && from < date("2026-05-10"), "{from}");
        let now = better("cucumber", "2026-04-22");
        assert!(matches!(now, StartAgain::Now(Step::SowIndoors, _)), "{now:?}");
        // Pole beans belong into the ground.
        let beans = better("pole_bean", "2026-04-03");
        assert_eq!(beans, StartAgain::From(Step::SowOutdoors, date("2026-05-15")));
    }

    #[test]
    fn it_never_offers_what_the_verdicts_refuse() {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        for crop in catalogue.iter() {
            for day in 0..52 {
                let on = date("2026-01-03") + TimeDelta::days(7 * day);
                for step in [Step::SowIndoors, Step::SowOutdoors] {
                    let is = start_again(crop, garden(), step, on);
                    let verdict = |step| assess(crop, garden(), step, on).verdict();
                    match is {
                        StartAgain::NotKnown => panic!("{}: frost dates are known", crop.id),
                        StartAgain::Now(now, until) => {
                            assert!(verdict(now).is_some_and(Verdict::workable), "{}", crop.id);
                            assert!(until >= on, "{} on {on}", crop.id);
                        }
                        StartAgain::From(later, from) => {
                            assert_eq!(verdict(later), Some(Verdict::TooEarly), "{}", crop.id);
                            assert!(from > on, "{} on {on}", crop.id);
                        }
                        StartAgain::BuyPlants { from, until } => {
                            let out = verdict(Step::PlantOut);
                            assert!(out.is_some() && out != Some(Verdict::TooLate), "{}", crop.id);
                            assert!(on <= from && from <= until, "{} on {on}", crop.id);
                        }
                        StartAgain::TooLate(next) => {
                            assert!(next.is_none_or(|next| next > on), "{} on {on}", crop.id);
                            assert!(!verdict(step).is_some_and(Verdict::workable), "{}", crop.id);
                        }
                    }
                }
            }
        }
    }
}

//! Which crops may share a tray.

use super::seedling::Seedling;
use crate::planning::crop::{Light, Span, Vigour};

/// The most days between two crops' leaving of one tray.
///
/// Crops that leave together let the tray be moved, hardened off and emptied as one; two weeks
/// apart still works (common practice, no source).
pub const DAYS_APART: i64 = 14;

/// Whether two crops may stand in one tray.
///
/// Both want the same cells and are alike in vigour, so that neither shades the other out; with
/// that a sprawling crop never stands beside a small one. The ages at which they are best set out
/// overlap, and they leave the tray within [`DAYS_APART`] days. Their seed comes up best in
/// temperatures that overlap, and not one in light and the other in the dark. Common practice;
/// temperature and light are the catalogue's.
#[must_use]
pub fn may_share_a_tray(one: &Seedling<'_>, other: &Seedling<'_>) -> bool {
    let apart = one.leaves_on().signed_duration_since(other.leaves_on()).num_days().abs();
    one.cell_tray == other.cell_tray
        && one.crop.vigour == other.crop.vigour
        && overlap(one.ideal_weeks, other.ideal_weeks).is_some()
        && apart <= DAYS_APART
        && match (one.warmth_c(), other.warmth_c()) {
            (Some(one), Some(other)) => overlap(one, other).is_some(),
            _ => true,
        }
        && !matches!(
            (one.light(), other.light()),
            (Light::Light, Light::Dark) | (Light::Dark, Light::Light)
        )
}

/// What the crops of one tray have in common.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Common {
    /// Their vigour.
    pub vigour: Vigour,
    /// The ages in weeks that are ideal for setting out each of them.
    pub ideal_weeks: Span,
    /// Soil temperatures in degrees Celsius that are best for the seed of each, where known.
    pub warmth_c: Option<Span>,
    /// The light that all of their seed comes up in.
    pub light: Light,
}

impl Common {
    /// What `seedlings` have in common; `None` for none at all and for crops that may not share a
    /// tray.
    ///
    /// Ranges of which every two overlap have a part in common to all.
    #[must_use]
    pub fn of<'a, 'c: 'a>(seedlings: impl IntoIterator<Item = &'a Seedling<'c>>) -> Option<Self> {
        let mut seedlings = seedlings.into_iter();
        let alone = |seedling: &Seedling<'_>| Self {
            vigour: seedling.crop.vigour,
            ideal_weeks: seedling.ideal_weeks,
            warmth_c: seedling.warmth_c(),
            light: seedling.light(),
        };
        let first = alone(seedlings.next()?);
        seedlings.map(alone).try_fold(first, |all, one| {
            Some(Self {
                vigour: Some(all.vigour).filter(|vigour| *vigour == one.vigour)?,
                ideal_weeks: overlap(all.ideal_weeks, one.ideal_weeks)?,
                warmth_c: match (all.warmth_c, one.warmth_c) {
                    (Some(all), Some(one)) => Some(overlap(all, one)?),
                    (all, one) => all.or(one),
                },
                light: match (all.light, one.light) {
                    (Light::Either, light) | (light, Light::Either) => light,
                    (all, one) => Some(all).filter(|all| *all == one)?,
                },
            })
        })
    }
}

fn overlap(one: Span, other: Span) -> Option<Span> {
    let both = Span { low: one.low.max(other.low), high: one.high.min(other.high) };
    both.ordered().then_some(both)
}

//! What a question wants to know.

use super::line::{ItemLine, Sort};
use super::pattern::{Line, Pattern, matches_anywhere};
use super::phrases::{IntentRule, Objects, Phrases, Rest};
use super::quantities::Quantities;
use super::words::Pause;
use crate::planning::{Kind, Step};

/// The first rule that holds; where none does, the intent is [`super::Intent::Unknown`].
pub(crate) fn rule<'p>(
    line: &ItemLine,
    phrases: &'p Phrases,
    quantities: &Quantities,
) -> Option<&'p IntentRule> {
    let given = |rule: &&IntentRule| rule.needs.is_none_or(|needed| quantities.give(needed));
    phrases.intents.iter().filter(given).find(|rule| holds(rule, line, phrases))
}

fn holds(rule: &IntentRule, line: &ItemLine, phrases: &Phrases) -> bool {
    let rest = if line.has(Sort::Crops) { rule.with_crop } else { rule.without_crop };
    if rest == Rest::Never || matches_anywhere(&rule.unless, line, 0..line.items.len()) {
        return false;
    }
    (0..line.items.len()).any(|at| {
        rule.patterns
            .iter()
            .filter_map(|pattern| pattern.shortest(line, at))
            .any(|end| rest_is(rest, line, at, end, phrases))
    })
}

fn rest_is(rest: Rest, line: &ItemLine, from: usize, end: usize, phrases: &Phrases) -> bool {
    match rest {
        Rest::Never => false,
        Rest::Anything => true,
        Rest::Bare => (0..line.items.len()).all(|at| {
            is_known(line, at) && line.word(at).is_none_or(|id| phrases.bare.contains(&id))
        }),
        Rest::Known => all_known(line),
        Rest::Object if line.has(Sort::Crops) => {
            let within = || object_within_may_be_the_crop(line, from..end, phrases);
            object_may_be_the_crop(line, end, phrases)
                && (phrases.objects == Objects::Behind || within())
        }
        Rest::Object => object_is_nothing(line, from, end, phrases),
    }
}

/// Whether every item belongs to the talk of sowing.
pub(crate) fn all_known(line: &ItemLine) -> bool {
    (0..line.items.len()).all(|at| is_known(line, at))
}

/// Whether an item belongs to the talk of sowing: a phrase word, a figure, a date or a crop.
fn is_known(line: &ItemLine, at: usize) -> bool {
    match line.items.get(at).map(|item| item.sort) {
        None | Some(Sort::Crops | Sort::Date) => true,
        // Beside a crop an unknown name is only one more crop of a list.
        Some(Sort::Unknown) => line.has(Sort::Crops),
        Some(Sort::NoCrop) => false,
        Some(Sort::Word) => {
            line.plain_word(at).is_some_and(|word| word.id.is_some() || word.has_digit())
        }
    }
}

/// Up to the next crop or date, nothing strange is linked to it: "start the big yellow tomatoes"
/// is about tomatoes, "start the meeting about tomatoes" is not.
fn object_may_be_the_crop(line: &ItemLine, end: usize, phrases: &Phrases) -> bool {
    let mut strange = false;
    for at in end..line.items.len() {
        match line.items.get(at).map(|item| item.sort) {
            Some(Sort::NoCrop) => return false,
            Some(Sort::Word) if strange && phrases.links.shortest(line, at).is_some() => {
                return false;
            }
            Some(Sort::Unknown) => strange = true,
            Some(Sort::Word) => strange |= !is_known(line, at),
            Some(Sort::Crops | Sort::Date) | None => return true,
        }
    }
    true
}

/// Where a verb stands behind what it is about, the same for what stands before it: "kann ich die
/// großen gelben Tomaten säen", but not "kann ich neben den Tomaten das Auto starten".
fn object_within_may_be_the_crop(
    line: &ItemLine,
    within: std::ops::Range<usize>,
    phrases: &Phrases,
) -> bool {
    let mut strange = false;
    for at in within {
        match line.items.get(at).map(|item| item.sort) {
            Some(Sort::NoCrop) => return false,
            Some(Sort::Word) if strange && phrases.links.shortest(line, at).is_some() => {
                return false;
            }
            Some(Sort::Unknown) => strange = !goes_on_a_list(line, at, phrases),
            Some(Sort::Word) => strange |= !is_known(line, at),
            Some(Sort::Crops | Sort::Date) | None => strange = false,
        }
    }
    !strange
}

/// Whether the unknown name at `at` is one more of a list with crops: "Tomaten und Quinoa".
fn goes_on_a_list(line: &ItemLine, at: usize, phrases: &Phrases) -> bool {
    let is_and = |at: &usize| line.word(*at).is_some_and(|id| phrases.and.contains(&id));
    let joint = at.checked_sub(1).filter(is_and).unwrap_or(at);
    let Some(before) = joint.checked_sub(1) else { return false };
    let crop = line.items.get(before).is_some_and(|item| item.sort == Sort::Crops);
    crop && (joint < at || line.pause(before) == Some(Pause::Clause))
}

/// Up to the next date or place there are only phrase words: "what can I sow now that the snow is
/// gone", but not "what can I start a fire with now".
fn object_is_nothing(line: &ItemLine, from: usize, end: usize, phrases: &Phrases) -> bool {
    if !(from..end).all(|at| is_known(line, at)) {
        return false;
    }
    for at in end..line.items.len() {
        if line.items.get(at).is_some_and(|item| item.sort == Sort::Date)
            || phrases.places.shortest(line, at).is_some()
        {
            return true;
        }
        if !is_known(line, at) {
            return false;
        }
    }
    true
}

/// The step whose phrase comes first in the question: of those that begin at one place the
/// shortest, and of equally long ones the first of the list.
pub(crate) fn step(line: &ItemLine, phrases: &Phrases) -> Option<Step> {
    first_of(line, &phrases.steps)
}

/// The kind of crops that the question names: "which herbs".
pub(crate) fn kind(line: &ItemLine, phrases: &Phrases) -> Option<Kind> {
    first_of(line, &phrases.kinds)
}

fn first_of<T: Copy>(line: &ItemLine, lists: &[(T, Vec<Pattern>)]) -> Option<T> {
    (0..line.items.len()).find_map(|at| {
        let ends = lists.iter().filter_map(|(is, patterns)| {
            let end = patterns.iter().filter_map(|pattern| pattern.shortest(line, at)).min()?;
            Some((end, *is))
        });
        ends.min_by_key(|(end, _)| *end).map(|(_, is)| is)
    })
}

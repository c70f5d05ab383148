//! A question as words and figures, for the quantities it gives.

use super::pattern::{Held, Line, Slot};
use super::phrases::Phrases;
use super::quantities::Signs;
use super::words::Pause;

/// A number as it was written, in hundredths.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Figure {
    hundredths: i64,
}

impl Figure {
    /// A whole number.
    #[must_use]
    pub fn of(number: u32) -> Self {
        Self { hundredths: i64::from(number) * 100 }
    }

    /// The number, where it is a whole one.
    #[must_use]
    pub fn whole(self) -> Option<i64> {
        (self.hundredths % 100 == 0).then_some(self.hundredths / 100)
    }

    /// The number as a count within the range of `u32`.
    #[must_use]
    pub fn count(self) -> Option<u32> {
        self.whole().and_then(|whole| u32::try_from(whole).ok())
    }

    /// The number with its decimals.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "nobody counts seeds beyond 2^53 hundredths")]
    pub fn value(self) -> f64 {
        self.hundredths as f64 / 100.0
    }

    /// Reads figures, with their decimals where there are any; ever so many figures are only a
    /// very large number.
    fn read(negative: bool, whole: &str, decimals: &str) -> Self {
        let number = |text: &str| text.parse::<i64>().unwrap_or(i64::MAX);
        let two: String = decimals.chars().chain("00".chars()).take(2).collect();
        let hundredths = number(whole).saturating_mul(100).saturating_add(number(&two));
        Self { hundredths: if negative { hundredths.saturating_neg() } else { hundredths } }
    }
}

#[derive(Debug)]
struct Item {
    id: Option<u32>,
    figure: Option<Figure>,
    pause: Pause,
    /// Where its digits stand in the prepared text.
    digits: Option<(usize, usize)>,
}

/// The words and figures of a question in order.
pub(crate) struct FigureLine {
    items: Vec<Item>,
    /// The text that was read, with signs as words.
    prepared: String,
}

impl FigureLine {
    /// Reads the first `limit` characters.
    ///
    /// Decimals and thousands belong to their figure ("14.5", "10,000"), letters behind it do not
    /// ("57F"). Dates, times and ordinals are no figures. `%` and `°` stand for the language's words.
    pub fn new(text: &str, limit: usize, phrases: &Phrases) -> Self {
        let mut line = Self { items: Vec::new(), prepared: String::new() };
        let mut rest: String = text.chars().take(limit).collect();
        let Signs { percent, degrees, celsius, fahrenheit } = &phrases.figures.signs;
        for (sign, word) in [
            ('℃', format!(" {degrees} {celsius} ")),
            ('℉', format!(" {degrees} {fahrenheit} ")),
            ('%', format!(" {percent} ")),
            ('‰', " ".to_owned()),
        ] {
            rest = rest.replace(sign, &word);
        }
        rest = rest.replace(['°', 'º', '˚'], &format!(" {degrees} ")).replace('−', "-");
        line.prepared.clone_from(&rest);
        let mut rest = rest.as_str();
        while let Some(at) = figure_start(rest) {
            let (before, figures) = rest.split_at(at);
            let signed = before.strip_suffix('-');
            let negative = signed.is_some_and(|text| !text.ends_with(char::is_alphanumeric));
            line.push_words(before, phrases);
            let (figure, after) = read_figure(negative, figures, phrases);
            let from_end = |text: &str| line.prepared.len().saturating_sub(text.len());
            let digits = Some((from_end(figures), from_end(after)));
            line.items.push(Item { id: None, figure, pause: pause_before(after), digits });
            rest = after;
        }
        line.push_words(rest, phrases);
        line
    }

    /// How many words and figures there are.
    pub fn len(&self) -> usize {
        self.items.len()
    }

    /// The figure at a place that a slot held.
    pub fn figure(&self, at: u32) -> Option<Figure> {
        self.items.get(usize::try_from(at).ok()?)?.figure
    }

    /// Takes the figures of a match out, so that no other phrase reads them.
    pub fn used(&mut self, held: Held) {
        for at in [held.figure, held.total, held.year].into_iter().flatten() {
            if let Some(item) = usize::try_from(at).ok().and_then(|at| self.items.get_mut(at)) {
                item.figure = None;
            }
        }
    }

    /// The text without the digits of the figure at a place that a slot held.
    pub fn without(&self, at: u32) -> String {
        let item = usize::try_from(at).ok().and_then(|at| self.items.get(at));
        let parts = item
            .and_then(|item| item.digits)
            .and_then(|(from, to)| Some([self.prepared.get(..from)?, self.prepared.get(to..)?]));
        parts.map_or_else(|| self.prepared.clone(), |parts| parts.concat())
    }

    fn push_words(&mut self, text: &str, phrases: &Phrases) {
        let words = phrases.words(text, text.len(), |_| false);
        self.items.extend(words.into_iter().map(|word| Item {
            id: word.id.or_else(|| phrases.corrected(&word)),
            figure:
                word.id.and_then(|id| phrases.figures.numbers.get(&id)).copied().map(Figure::of),
            pause: word.pause,
            digits: None,
        }));
    }
}

impl Line for FigureLine {
    fn word(&self, at: usize) -> Option<u32> {
        self.items.get(at)?.id
    }

    fn slot(&self, at: usize, slot: Slot) -> Option<u32> {
        let figure = self.items.get(at)?.figure?;
        let fits = match slot {
            Slot::Figure | Slot::Total => true,
            Slot::Year => figure.whole().is_some_and(|year| (1950..2200).contains(&year)),
            _ => false,
        };
        if fits { u32::try_from(at).ok() } else { None }
    }

    fn pause(&self, at: usize) -> Option<Pause> {
        Some(self.items.get(at)?.pause)
    }
}

/// Where the first figure that no letter precedes begins.
fn figure_start(text: &str) -> Option<usize> {
    let mut before = ' ';
    for (at, letter) in text.char_indices() {
        if letter.is_ascii_digit() && !before.is_alphanumeric() {
            return Some(at);
        }
        before = letter;
    }
    None
}

/// The figure at the start of `text`, or none where it is a date, a time or an ordinal, and what
/// follows it.
fn read_figure<'t>(negative: bool, text: &'t str, phrases: &Phrases) -> (Option<Figure>, &'t str) {
    let (first, mut rest) = digits(text);
    let mut whole = first.to_owned();
    while let Some((thousand, after)) = rest.strip_prefix(',').map(digits) {
        if thousand.len() != 3 {
            break;
        }
        whole.push_str(thousand);
        rest = after;
    }
    let mut decimals = "";
    if let Some((found, after)) = rest.strip_prefix(['.', ',']).map(digits)
        && !found.is_empty()
    {
        (decimals, rest) = (found, after);
    }
    let begins_figures = |text: &str| text.starts_with(|c: char| c.is_ascii_digit());
    if rest.strip_prefix(['-', ':', '.']).is_some_and(begins_figures) {
        let end = rest.find(|c: char| !c.is_ascii_digit() && !matches!(c, '-' | ':' | '.'));
        return (None, rest.get(end.unwrap_or(rest.len())..).unwrap_or_default());
    }
    let letters = rest.find(|c: char| !c.is_alphabetic()).unwrap_or(rest.len());
    let (ending, behind) = rest.split_at(letters);
    if phrases.calendar.day_endings.contains(&ending.to_lowercase()) {
        return (None, behind);
    }
    (Some(Figure::read(negative, &whole, decimals)), rest)
}

fn digits(text: &str) -> (&str, &str) {
    text.split_at(text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len()))
}

/// The pause that the text behind a figure begins with.
fn pause_before(text: &str) -> Pause {
    match text.trim_start_matches(' ').chars().next() {
        Some('.' | '!' | '?' | '\n' | '\r') => Pause::Sentence,
        Some(',' | ';' | ':' | '(' | ')') => Pause::Clause,
        _ => Pause::None,
    }
}

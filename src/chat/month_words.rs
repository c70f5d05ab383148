//! Hot and wet months as gardeners write them: "hot June to September, wet June to October".

use serde::Deserialize;

use super::understand::{Phrases, Word, figures};
use crate::catalogue::normalise;
use crate::planning::Months;

/// How many characters of a text are read.
const CHARACTERS: usize = 200;

/// The lists of `sentences.toml`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RawSeasons {
    hot: Vec<String>,
    wet: Vec<String>,
    to: Vec<String>,
    all_year: Vec<String>,
    neither: Vec<String>,
}

/// How a language tells of hot and wet months.
#[derive(Debug)]
pub struct SeasonWords {
    hot: Vec<String>,
    wet: Vec<String>,
    to: Vec<String>,
    all_year: Vec<String>,
    neither: Vec<String>,
}

/// What one word is in such a text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Said {
    Hot,
    Wet,
    Neither,
    Month(u32),
    To,
    AllYear,
    Other,
}

/// Which months are being told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
struct About {
    hot: bool,
    wet: bool,
}

impl SeasonWords {
    pub(super) fn new(raw: &RawSeasons) -> Self {
        let plain = |list: &[String]| list.iter().map(|text| normalise(text)).collect();
        Self {
            hot: plain(&raw.hot),
            wet: plain(&raw.wet),
            to: plain(&raw.to),
            all_year: plain(&raw.all_year),
            neither: plain(&raw.neither),
        }
    }

    /// The hot and the wet months of a text; `None` where it names no month for either.
    ///
    /// Months belong to the word before them ("hot June to September") or, where the text begins
    /// with months, to the word behind them ("June to September hot").
    pub(super) fn read(&self, text: &str, phrases: &Phrases) -> Option<(Months, Months)> {
        let text: String = text.chars().take(CHARACTERS).collect();
        // A dash between months is a range.
        let to = self.to.first().map_or("", String::as_str);
        let text = text.replace(['-', '–', '—'], &format!(" {to} "));
        let words = phrases.words(&text, usize::MAX, |_| false);
        let said: Vec<Said> = (0..words.len())
            .filter_map(|at| words.get(at..))
            .map(|behind| self.said(behind, phrases))
            .collect();
        let parts = parts(&said);
        let (mut hot, mut wet) = (Months::NONE, Months::NONE);
        for (about, months) in parts {
            if about.hot {
                hot = hot.and(months);
            }
            if about.wet {
                wet = wet.and(months);
            }
        }
        (hot != Months::NONE || wet != Months::NONE).then_some((hot, wet))
    }

    /// What the first of `words` is, the others standing behind it.
    fn said(&self, words: &[Word], phrases: &Phrases) -> Said {
        let Some(word) = words.first() else { return Said::Other };
        let all_year = self.all_year.iter().any(|phrase| {
            let count = phrase.split(' ').count();
            let said =
                words.get(..count).unwrap_or_default().iter().map(|word| word.plain.as_str());
            phrase.split(' ').eq(said)
        });
        if all_year {
            return Said::AllYear;
        }
        let is = |list: &[String]| list.contains(&word.plain);
        let named = word.id.and_then(|id| phrases.calendar.months.get(&id).copied());
        let number = figures(&word.plain, 1..=2).filter(|month| (1..=12).contains(month));
        match named.or(number) {
            Some(month) => Said::Month(month),
            None if is(&self.hot) => Said::Hot,
            None if is(&self.wet) => Said::Wet,
            None if is(&self.neither) => Said::Neither,
            None if is(&self.to) => Said::To,
            None => Said::Other,
        }
    }
}

/// The months of each part of a text, with what they are.
fn parts(said: &[Said]) -> Vec<(About, Months)> {
    let is_month = |said: &&Said| matches!(said, Said::Month(_) | Said::AllYear);
    let is_about = |said: &&Said| matches!(said, Said::Hot | Said::Wet | Said::Neither);
    let first = said.iter().find(|said| is_month(said) || is_about(said));
    let months_first = first.is_some_and(|said| is_month(&said));
    let mut parts: Vec<(About, Months)> = Vec::new();
    let mut about = About::default();
    let mut months = Months::NONE;
    let mut last: Option<u32> = None;
    let mut range = false;
    // Whether the part that is being read has what its order puts last.
    let mut complete = false;
    for word in said {
        match word {
            Said::Hot | Said::Wet | Said::Neither => {
                if !months_first && complete {
                    parts.push((about, months));
                    (about, months, complete) = (About::default(), Months::NONE, false);
                }
                about.hot |= *word == Said::Hot;
                about.wet |= *word == Said::Wet;
                (last, range) = (None, false);
                complete |= months_first;
            }
            Said::Month(month) => {
                if months_first && complete {
                    parts.push((about, months));
                    (about, months, complete) = (About::default(), Months::NONE, false);
                }
                let from = last.filter(|_| range).unwrap_or(*month);
                months = months.and(Months::from_to(from, *month));
                (last, range) = (Some(*month), false);
                complete |= !months_first;
            }
            Said::AllYear => {
                months = Months::ALL;
                complete |= !months_first;
            }
            Said::To => range = last.is_some(),
            Said::Other => {}
        }
    }
    parts.push((about, months));
    parts
}

#[cfg(test)]
mod tests {
    use crate::chat::Knowledge;

    #[test]
    fn months_are_read_as_they_are_written() {
        let knowledge = Knowledge::embedded().expect("the built-in data");
        let tongue = knowledge.tongue(&"en".parse().expect("a tag"));
        let read = |text: &str| {
            let told = tongue.sentences.seasons.read(text, tongue.understanding.phrases());
            told.map(|(hot, wet)| format!("{hot} | {wet}"))
        };
        for (text, is) in [
            ("hot June to September, wet June to October", "6,7,8,9 | 6,7,8,9,10"),
            ("Hot: Jun-Sep. Wet: Jun – Oct", "6,7,8,9 | 6,7,8,9,10"),
            ("hot 6-9, wet 6-10", "6,7,8,9 | 6,7,8,9,10"),
            ("June through September are hot and June to October rainy", "6,7,8,9 | 6,7,8,9,10"),
            ("hot and wet December to March", "1,2,3,12 | 1,2,3,12"),
            ("too hot in May, June and July", "5,6,7 | none"),
            ("hot all of June, wet every July", "6 | 7"),
            ("the rains are from May till October", "none | 5,6,7,8,9,10"),
            ("hot March to May, cool November to February, wet July", "3,4,5 | 7"),
            (
                "it is hot all year, wet from May to October",
                "1,2,3,4,5,6,7,8,9,10,11,12 | 5,6,7,8,9,10",
            ),
        ] {
            assert_eq!(read(text).as_deref(), Some(is), "{text}");
        }
        for text in ["", "hot", "summer", "June to September", "cool in May", "hot in spring"] {
            assert_eq!(read(text), None, "{text}");
        }
    }
}

//! What the numbers of a packet's text mean.

use super::lexer::{Piece, Token, lex};
use super::words::PacketWords;
use crate::planning::{CountedFrom, Packet, PacketOutdoors, Span};

/// A packet's text, read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PacketText {
    /// What stands before the packet's numbers: the crop and the variety's name.
    pub head: String,
    /// The numbers, as they were written and not checked.
    pub packet: Packet,
    /// Whether the text speaks as packets do, so that it is one even where nobody asked for it:
    /// weeks from the last frost, or days to maturity.
    pub sure: bool,
}

/// Reads a packet's text with the words of a language.
#[must_use]
pub fn read_packet(text: &str, words: &PacketWords) -> PacketText {
    let tokens = lex(text);
    let head_end = (0..tokens.len()).find(|at| begins_numbers(&tokens, *at, words));
    let head_to = head_end.and_then(|at| tokens.get(at)).map_or(text.len(), |token| token.from);
    let reading = Reading { words, items: items(&tokens, words) };
    let (packet, sure) = reading.packet();
    PacketText { head: text.get(..head_to).unwrap_or_default().to_owned(), packet, sure }
}

fn begins_numbers(tokens: &[Token], at: usize, words: &PacketWords) -> bool {
    let rest = tokens.get(at..).unwrap_or_default();
    match rest.first().map(|token| &token.is) {
        Some(Piece::Number(_)) => true,
        Some(Piece::Word(_)) => {
            let ahead: Vec<&str> = rest
                .iter()
                .map_while(|token| match &token.is {
                    Piece::Word(word) => Some(word.as_str()),
                    // "start-indoors"
                    Piece::Dash => Some("-"),
                    _ => None,
                })
                .filter(|word| *word != "-")
                .take(6)
                .collect();
            words.opens(&ahead)
        }
        _ => false,
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Unit {
    None,
    Days,
    Weeks,
    /// Tenths of a millimetre for one of the unit.
    Length(i64),
}

#[derive(Debug, Clone, PartialEq, Eq)]
enum Item {
    /// Two numbers in hundredths of the unit, the lower first.
    Quantity(i64, i64, Unit),
    Word(String),
    Comma,
    End,
}

/// Joins ranges and units to their numbers.
fn items(tokens: &[Token], words: &PacketWords) -> Vec<Item> {
    let mut items = Vec::new();
    let mut at = 0;
    let number = |at: usize| match tokens.get(at).map(|token| &token.is) {
        Some(Piece::Number(number)) => Some(*number),
        _ => None,
    };
    let joins = |at: usize| match tokens.get(at).map(|token| &token.is) {
        Some(Piece::Dash) => true,
        Some(Piece::Word(word)) => words.range.begin(&[word]) > 0,
        _ => false,
    };
    while let Some(token) = tokens.get(at) {
        at += 1;
        match &token.is {
            Piece::Number(first) => {
                let mut span = (*first, *first);
                if joins(at)
                    && let Some(second) = number(at + 1)
                {
                    span = (second.min(*first), second.max(*first));
                    at += 2;
                }
                if matches!(tokens.get(at).map(|token| &token.is), Some(Piece::Dash)) {
                    at += 1; // "6-8-week"
                }
                let unit = unit(tokens.get(at), words);
                if unit != Unit::None {
                    at += 1;
                }
                items.push(Item::Quantity(span.0, span.1, unit));
            }
            Piece::Word(word) => items.push(Item::Word(word.clone())),
            Piece::Comma => items.push(Item::Comma),
            Piece::End => items.push(Item::End),
            Piece::InchMark | Piece::Dash => {}
        }
    }
    items
}

fn unit(token: Option<&Token>, words: &PacketWords) -> Unit {
    let word = match token.map(|token| &token.is) {
        Some(Piece::Word(word)) => word.as_str(),
        Some(Piece::InchMark) => return Unit::Length(254),
        _ => return Unit::None,
    };
    let units = [
        (&words.days, Unit::Days),
        (&words.weeks, Unit::Weeks),
        (&words.inches, Unit::Length(254)),
        (&words.feet, Unit::Length(3048)),
        (&words.centimetres, Unit::Length(100)),
        (&words.millimetres, Unit::Length(10)),
    ];
    units.iter().find(|(list, _)| list.begin(&[word]) > 0).map_or(Unit::None, |(_, unit)| *unit)
}

/// Where the seed or the plant goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Side {
    Indoors,
    InPlace,
    SetOut,
}

struct Reading<'w> {
    words: &'w PacketWords,
    items: Vec<Item>,
}

/// The words around a number.
struct Around<'i> {
    /// Before it, back to the last comma that has words behind it, or the last number or end.
    before: Vec<&'i str>,
    /// Before it in its sentence.
    sentence_before: Vec<&'i str>,
    /// Behind it, up to the next number, comma or end.
    behind: Vec<&'i str>,
    /// Behind it in its sentence.
    sentence_behind: Vec<&'i str>,
}

impl Reading<'_> {
    fn packet(&self) -> (Packet, bool) {
        let mut packet = Packet::default();
        let mut sure = false;
        // Days that are only a number of days give way to days to maturity.
        let mut named_days = false;
        for (at, item) in self.items.iter().enumerate() {
            let Item::Quantity(low, high, unit) = *item else { continue };
            let around = self.around(at);
            match unit {
                Unit::Length(tenths) => self.length(&mut packet, (low, high), tenths, &around),
                Unit::Weeks | Unit::Days | Unit::None => {
                    let days = if unit == Unit::Weeks { 7 } else { 1 };
                    let span = Span { low: low * days / 100, high: high * days / 100 };
                    if unit != Unit::None && self.by_frost(&mut packet, span, &around) {
                        sure = true;
                    } else if self.words.passing.are_in(&around.before) {
                        // "thin after 20 days"
                    } else if self.is_emergence(&around) {
                        packet.emerge_days.get_or_insert(span);
                    } else {
                        let named = self.words.ripe.are_in(&around.before)
                            || self.words.ripe.are_in(&around.behind);
                        let counts = named || unit == Unit::Days;
                        if counts && (packet.days.is_none() || (named && !named_days)) {
                            packet.days = Some(span);
                            packet.counted_from = self.counted_from(&around);
                            named_days = named;
                            sure |= named && unit != Unit::None;
                        }
                    }
                }
            }
        }
        if packet.outdoors.is_none() && self.after_danger_of_frost() {
            packet.outdoors = Some(PacketOutdoors::AfterFrost);
            sure = true;
        }
        (packet, sure)
    }

    fn around(&self, at: usize) -> Around<'_> {
        let back = || self.items.get(..at).unwrap_or_default().iter().rev();
        let ahead = || self.items.get(at + 1..).unwrap_or_default().iter();
        let sentence = |item: &&Item| !matches!(item, Item::End);
        let forwards = |mut words: Vec<_>| {
            words.reverse();
            words
        };
        let mut met_words = false;
        let before = back()
            .take_while(|item| match item {
                Item::Word(_) => {
                    met_words = true;
                    true
                }
                Item::Comma => !met_words,
                Item::Quantity(..) | Item::End => false,
            })
            .filter_map(word)
            .collect();
        Around {
            before: forwards(before),
            sentence_before: forwards(back().take_while(sentence).filter_map(word).collect()),
            behind: ahead().map_while(word).collect(),
            sentence_behind: ahead().take_while(sentence).filter_map(word).collect(),
        }
    }

    /// Takes a length of time that is counted to or from the last frost; `false` where it is not.
    fn by_frost(&self, packet: &mut Packet, days: Span, around: &Around<'_>) -> bool {
        let words = self.words;
        let upto = |list: &super::words::Phrases| list.first_in(&around.behind);
        let (before, after) = (upto(&words.before), upto(&words.after));
        let side = self.side(around);
        let moving = words.frost.are_in(&around.behind)
            || (before.is_some() && words.set_out.are_in(&around.behind));
        let weeks = |days: i64| (days + 3).div_euclid(7);
        let span = Span { low: weeks(days.low), high: weeks(days.high) };
        let earlier = match (before, after) {
            (Some(before), Some(after)) => before < after,
            (Some(_), None) => true,
            (None, Some(_)) => false,
            // "start indoors 6 weeks early", "6-8 weeks indoors".
            (None, None) => {
                let indoors =
                    words.indoors.are_in(&around.before) || words.indoors.are_in(&around.behind);
                let days_of_ripening =
                    words.ripe.are_in(&around.before) || words.ripe.are_in(&around.behind);
                if indoors && !days_of_ripening && days.low >= 7 && side == Some(Side::Indoors) {
                    packet.indoors_weeks.get_or_insert(span);
                    return true;
                }
                return false;
            }
        };
        if !moving {
            return false;
        }
        let offset = if earlier { Span { low: -span.high, high: -span.low } } else { span };
        match (side, earlier) {
            (Some(Side::Indoors) | None, true) => {
                packet.indoors_weeks.get_or_insert(span);
            }
            (Some(Side::SetOut), _) => {
                packet.set_out_weeks.get_or_insert(offset);
            }
            (Some(Side::InPlace | Side::Indoors) | None, _) => {
                packet.outdoors.get_or_insert(PacketOutdoors::Weeks(offset));
            }
        }
        true
    }

    /// The side that is named nearest before the number, or else first behind it.
    fn side(&self, around: &Around<'_>) -> Option<Side> {
        let lists = [
            (&self.words.indoors, Side::Indoors),
            (&self.words.in_place, Side::InPlace),
            (&self.words.set_out, Side::SetOut),
        ];
        // "transplant outside" says more than the "outside" at its end.
        let nearest = |words: &[&str]| {
            let found =
                lists.iter().filter_map(|(list, side)| Some((list.last_end(words)?, *side)));
            found.max_by_key(|(end, _)| *end).map(|(_, side)| side)
        };
        let first = |words: &[&str]| {
            let found =
                lists.iter().filter_map(|(list, side)| Some((list.first_in(words)?, *side)));
            found.min_by_key(|(at, _)| *at).map(|(_, side)| side)
        };
        // "… weeks before transplanting" says to what it counts, and not what is done.
        let behind = || {
            let to = self.words.before.first_in(&around.sentence_behind);
            let to = to.filter(|_| !self.words.frost.are_in(&around.behind));
            first(
                around
                    .sentence_behind
                    .get(..to.unwrap_or(usize::MAX))
                    .unwrap_or(&around.sentence_behind),
            )
        };
        nearest(&around.sentence_before).or_else(behind)
    }

    fn is_emergence(&self, around: &Around<'_>) -> bool {
        let words = self.words;
        let named = words.come_up.are_in(&around.before) || words.come_up.are_in(&around.behind);
        // "75 days from germination" counts from it.
        named && self.counted_from(around).is_none() && !words.ripe.are_in(&around.before)
    }

    fn counted_from(&self, around: &Around<'_>) -> Option<CountedFrom> {
        let told = |words: &[&str]| {
            let out = self.words.from_setting_out.first_in(words);
            let sown = self.words.from_sowing.first_in(words);
            match (out, sown) {
                (Some(out), Some(sown)) if sown < out => Some(CountedFrom::Sowing),
                (Some(_), _) => Some(CountedFrom::SettingOut),
                (None, Some(_)) => Some(CountedFrom::Sowing),
                (None, None) => None,
            }
        };
        told(&around.behind)
            .or_else(|| told(&around.before))
            .or_else(|| told(&around.sentence_behind))
    }

    fn length(&self, packet: &mut Packet, span: (i64, i64), tenths: i64, around: &Around<'_>) {
        let words = self.words;
        let mm = |hundredths: i64| (hundredths * tenths + 500) / 1000;
        let (low, high) = (mm(span.0), mm(span.1));
        let cm = (span.0.midpoint(span.1) * tenths + 5_000) / 10_000;
        if words.rows_behind.are_in(&around.behind) || words.rows.are_in(&around.before) {
            packet.rows_cm.get_or_insert(cm);
        } else if words.depth_behind.begin(&around.behind) > 0 {
            packet.depth_mm.get_or_insert(Span { low, high });
        } else if words.apart_behind.begin(&around.behind) > 0 {
            packet.apart_cm.get_or_insert(cm);
        } else {
            let depth = words.depth.last_in(&around.before);
            let apart = words.apart.last_in(&around.before);
            match (depth, apart) {
                (Some(depth), Some(apart)) if apart > depth => {
                    packet.apart_cm.get_or_insert(cm);
                }
                (Some(_), _) => {
                    packet.depth_mm.get_or_insert(Span { low, high });
                }
                (None, Some(_)) => {
                    packet.apart_cm.get_or_insert(cm);
                }
                (None, None) => {}
            }
        }
    }

    /// "Direct sow after all danger of frost": sowing in place is held back with no number.
    fn after_danger_of_frost(&self) -> bool {
        self.items.split(|item| matches!(item, Item::End)).any(|sentence| {
            let all: Vec<&str> = sentence.iter().filter_map(word).collect();
            let Some(after) = self.words.after.last_in(&all) else { return false };
            let near = all.get(after..all.len().min(after + 7)).unwrap_or_default();
            let nearest = Around {
                before: Vec::new(),
                sentence_before: all.get(..after).unwrap_or_default().to_vec(),
                behind: Vec::new(),
                sentence_behind: near.to_vec(),
            };
            self.words.frost.are_in(near) && self.side(&nearest) == Some(Side::InPlace)
        })
    }
}

fn word(item: &Item) -> Option<&str> {
    match item {
        Item::Word(word) => Some(word),
        _ => None,
    }
}

#[cfg(test)]
mod spanish_tests;
#[cfg(test)]
mod tests;

//! What the numbers of a packet's text mean.

use super::head::numbers_begin;
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
///
/// `raised_indoors` tells whether the crop is one that is raised indoors: of such a crop "start 6
/// weeks before the last frost" means indoors, and of any other it means in the ground.
#[must_use]
pub fn read_packet(text: &str, words: &PacketWords, raised_indoors: bool) -> PacketText {
    let mut tokens = lex(text);
    let head_end = numbers_begin(text, &tokens, words);
    let head_to = head_end.and_then(|at| tokens.get(at)).map_or(text.len(), |token| token.from);
    // The figures before it are the name's.
    tokens.retain(|token| token.from >= head_to || !matches!(token.is, Piece::Number(_)));
    let reading = Reading { words, raised_indoors, items: items(&tokens, words) };
    let (packet, sure) = reading.packet();
    PacketText { head: text.get(..head_to).unwrap_or_default().to_owned(), packet, sure }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Unit {
    None,
    Days,
    Weeks,
    /// Tenths of a millimetre for one of the unit.
    Length(i64),
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Item {
    /// Two numbers in hundredths of the unit, the lower first.
    Quantity(i64, i64, Unit),
    Word(String),
    Comma,
    End,
}

/// Joins ranges and units to their numbers.
pub(super) fn items(tokens: &[Token], words: &PacketWords) -> Vec<Item> {
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
    /// "Start" or "sow" with no word for the place.
    Started,
    Indoors,
    InPlace,
    SetOut,
}

struct Reading<'w> {
    words: &'w PacketWords,
    raised_indoors: bool,
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
                    } else if self.is_emergence(&packet, named_days, &around) {
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
                // "6-8 weeks before last frost indoors, 75 days": the word is of the weeks before it.
                if packet.indoors_weeks.is_some() {
                    return false;
                }
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
            // "Plant 2 weeks after the last frost" is a sowing of what is never raised indoors.
            (Some(Side::Started) | None, true) | (Some(Side::SetOut), _)
                if !self.raised_indoors =>
            {
                packet.outdoors.get_or_insert(PacketOutdoors::Weeks(offset));
            }
            (Some(Side::Indoors | Side::Started) | None, true) => {
                packet.indoors_weeks.get_or_insert(span);
            }
            (Some(Side::SetOut), _) => {
                packet.set_out_weeks.get_or_insert(offset);
            }
            (Some(Side::InPlace | Side::Indoors | Side::Started) | None, _) => {
                packet.outdoors.get_or_insert(PacketOutdoors::Weeks(offset));
            }
        }
        true
    }

    /// The side that is named nearest before the number, or else first behind it.
    fn side(&self, around: &Around<'_>) -> Option<Side> {
        let lists = [
            (&self.words.start, Side::Started),
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
        match nearest(&around.sentence_before) {
            Some(Side::Started) => Some(self.place_of_start(around)),
            Some(side) => Some(side),
            None => behind().filter(|side| *side != Side::SetOut || !self.comes_later(around)),
        }
    }

    /// Where a start happens whose verb stands before the number: "outdoors: sow 4 weeks before
    /// last frost", "start 6 weeks before last frost indoors".
    fn place_of_start(&self, around: &Around<'_>) -> Side {
        let words = self.words;
        let before = &around.sentence_before;
        let verb = words.start.last_in(before).unwrap_or(0);
        let label = before.get(..verb).unwrap_or_default();
        if words.in_place.last_end(label).is_some_and(|(end, _)| end == verb)
            && words.set_out.last_end(label).is_none_or(|(end, _)| end < verb)
        {
            return Side::InPlace;
        }
        // What is done next, "and transplant outdoors", has a place of its own.
        let next = [&words.set_out, &words.start].map(|list| list.first_in(&around.behind));
        let to = next.into_iter().flatten().min().unwrap_or(around.behind.len());
        let behind = around.behind.get(..to).unwrap_or_default();
        if words.in_place.are_in(behind) {
            Side::InPlace
        } else if words.indoors.are_in(behind) {
            Side::Indoors
        } else {
            Side::Started
        }
    }

    /// Whether the setting out behind a number of weeks before the frost is what comes next and
    /// not what the number is of: "6-8 weeks before last frost, transplant out when nights are
    /// warm", but "2 weeks before last frost set out".
    fn comes_later(&self, around: &Around<'_>) -> bool {
        let words = self.words;
        let first = |list: &super::words::Phrases| list.first_in(&around.behind);
        let earlier = match (first(&words.before), first(&words.after)) {
            (Some(before), Some(after)) => before < after,
            (before, _) => before.is_some(),
        };
        let frost_to = words.frost.last_end(&around.behind).map(|(end, _)| end);
        earlier && frost_to.is_none_or(|end| first(&words.set_out) != Some(end))
    }

    /// Whether days are those until the seed comes up: of the words around them the nearest
    /// decides.
    fn is_emergence(&self, packet: &Packet, named_days: bool, around: &Around<'_>) -> bool {
        let words = self.words;
        let distance = |list: &super::words::Phrases| {
            let before = list.last_end(&around.before).map(|(end, _)| around.before.len() - end);
            let behind = list.first_in(&around.behind);
            before.into_iter().chain(behind).min()
        };
        // "75 days from germination" counts from it.
        let counts_from = words.come_up.first_in(&around.behind).is_some_and(|at| {
            words.from_sowing.first_in(&around.behind).is_some_and(|from| from < at)
        });
        match (distance(&words.come_up), distance(&words.ripe)) {
            (None, _) => false,
            (Some(_), _) if counts_from => false,
            (Some(_), None) => true,
            // The other word's figure has been read: "6-10 days to germination, 60 to harvest".
            (Some(_), Some(_)) if packet.emerge_days.is_some() => false,
            (Some(_), Some(_)) if named_days => true,
            // Between two words at the same distance, "harvest 60 days germination", the one
            // before it decides.
            (Some(up), Some(ripe)) if up == ripe => !words.ripe.are_in(&around.before),
            (Some(up), Some(ripe)) => up < ripe,
        }
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
mod other_start_tests;
#[cfg(test)]
mod spanish_tests;
#[cfg(test)]
mod tests;

//! From the text of `crops.toml` to a checked catalogue.

use std::fmt::Write as _;
use std::sync::Arc;

use indexmap::IndexMap;
use serde::Deserialize;
use toml::Spanned;

use super::check::faults;
use super::sources::Source;
use super::{Catalogue, CatalogueError};
use crate::planning::{Crop, CropId};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    #[serde(default)]
    sources: IndexMap<String, Source>,
    #[serde(default)]
    crop: IndexMap<String, Spanned<Crop>>,
}

pub(super) fn load(text: &str) -> Result<Catalogue, CatalogueError> {
    let file: File = toml::from_str(text).map_err(|error| refused(text, &error))?;
    let mut entries: Vec<(String, Spanned<Crop>)> = file.crop.into_iter().collect();
    // The parser sorts tables by name; the catalogue keeps the order of the file.
    entries.sort_by_key(|(_, crop)| crop.span().start);

    let mut crops = IndexMap::with_capacity(entries.len());
    let mut wrong = String::new();
    for (id, crop) in entries {
        let start = crop.span().start;
        let mut crop = crop.into_inner();
        crop.id = CropId::new(id.as_str());
        for fault in faults(&crop, &file.sources) {
            let line = line_of_field(text, start, fault.field);
            let _ = writeln!(wrong, "crop '{id}', line {line}: {}: {}", fault.field, fault.what);
        }
        crops.insert(id, Arc::new(crop));
    }
    if wrong.is_empty() {
        Ok(Catalogue { crops, sources: Arc::new(file.sources), grown: None })
    } else {
        Err(CatalogueError(wrong.trim_end().to_owned()))
    }
}

/// What the TOML parser or the types refused, with the entry and the line.
fn refused(text: &str, error: &toml::de::Error) -> CatalogueError {
    let message = error.message().replace('\n', ", ");
    let start = error.span().map_or(0, |span| span.start);
    let line = line_at(text, start);
    let advice = if message.starts_with("missing field") {
        "; add the line, in the form that the other entries have"
    } else if message.starts_with("unknown field") {
        "; correct the name or take the line out"
    } else {
        "; correct the line"
    };
    let entry = entry_at(text, line);
    CatalogueError(format!("{entry}, line {line}: {message}{advice}"))
}

/// The entry that a line belongs to: the last table header at or above it.
fn entry_at(text: &str, line: usize) -> String {
    let header = text.lines().take(line).filter_map(header).last();
    match header {
        Some(header) => match header.split_once('.') {
            Some(("crop", id)) => format!("crop '{id}'"),
            Some(("sources", id)) => format!("source '{id}'"),
            _ => format!("[{header}]"),
        },
        None => "start of the file".to_owned(),
    }
}

fn header(line: &str) -> Option<&str> {
    let rest = line.trim_start().strip_prefix('[')?;
    Some(rest.split_once(']')?.0)
}

/// The line number (from 1) of a byte offset.
fn line_at(text: &str, offset: usize) -> usize {
    text.bytes().take(offset).filter(|byte| *byte == b'\n').count() + 1
}

/// The line of `field` within the entry that starts at a byte offset, or the line of the entry's
/// header where the field has no line of its own.
fn line_of_field(text: &str, start: usize, field: &str) -> usize {
    let first = line_at(text, start);
    let within = text.lines().enumerate().skip(first);
    let own = within.take_while(|(_, line)| header(line).is_none()).find(|(_, line)| {
        let rest = line.trim_start().strip_prefix(field);
        rest.is_some_and(|rest| rest.starts_with([' ', '=', '.']))
    });
    own.map_or(first, |(index, _)| index + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A sound entry on lines 5 to 29, with its source above it.
    const SOUND: &str = r#"[sources.guide]
title = "A guide"
publisher = "A society"

[crop.cucumber]
kind = "vegetable"
start_from = ["seed"]
life = "annual"
crops_in_year = 1
rhythm = "quick_warm"
ways = ["indoors", "outdoors"]
disturbance = "resents"
vigour = "sprawling"
class = { is = "warm_loving", source = "guide" }
indoors.age_weeks = { ideal = [3, 5], workable = [3, 6], source = "guide" }
indoors.stay_weeks = { longest = 6, hold = 1, source = "guide" }
indoors.cell_mm = { sow = 75, source = "guide" }
seed.depth_mm = { is = [13, 25], source = "guide" }
seed.light = { is = "either", source = "guide" }
seed.soil_c = { minimum = 16, optimum = [18, 35], maximum = 41, source = "guide" }
seed.emerge_days = { is = [3, 6], source = "guide" }
seed.per_cell = { is = 2, source = "guide" }
seed.life_years = { is = 5, source = "guide" }
outdoors.sow_weeks = { is = [1, 4], earliest = 0, source = "guide" }
outdoors.spacing_cm = { plants = 30, rows = 120, source = "guide" }
outdoors.repeat_days = { is = [14, 21], source = "guide" }
harvest = { days = [50, 70], counted_from = "sowing", kind = "continuing", lasts_weeks = 6, stands_frost = false, source = "guide" }
autumn = { harvest_days = 14, source = "guide" }
"#;

    /// The message for the sound entry with one text in place of another.
    fn message(from: &str, to: &str) -> String {
        assert!(SOUND.contains(from), "the sound entry has no {from}");
        load(&SOUND.replacen(from, to, 1)).expect_err("a broken entry").to_string()
    }

    /// Breaks the entry and holds the message to entry, line, field and advice.
    fn broken(from: &str, to: &str, line: usize, field: &str, advice: &str) {
        let message = message(from, to);
        let begin = format!("crop 'cucumber', line {line}: {field}");
        assert!(message.starts_with(&begin), "{begin} expected, got: {message}");
        assert!(message.contains(advice), "'{advice}' expected in: {message}");
    }

    #[test]
    fn a_sound_entry_loads_with_its_id_and_source() {
        let catalogue = load(SOUND).expect("sound");
        let cucumber = catalogue.get("cucumber").expect("listed");
        assert_eq!(cucumber.id.as_str(), "cucumber");
        assert_eq!(Catalogue::cited_by(cucumber), ["guide"]);
        assert_eq!(catalogue.source("guide").expect("listed").publisher, "A society");
        assert!(catalogue.source("elsewhere").is_none());
    }

    #[test]
    fn crops_keep_the_order_of_the_file() {
        let second = SOUND.split_once("[crop.cucumber]").expect("an entry").1;
        let both = format!("{SOUND}\n[crop.basil]{second}");
        let catalogue = load(&both).expect("sound");
        let ids: Vec<&str> = catalogue.iter().map(|crop| crop.id.as_str()).collect();
        assert_eq!(ids, ["cucumber", "basil"]);
    }

    #[test]
    fn text_that_the_types_refuse() {
        broken("kind = \"vegetable\"", "kind = \"tree\"", 6, "unknown variant", "`herb`");
        broken("vigour = \"sprawling\"\n", "", 5, "missing field `vigour`", "add the line");
        broken("hold = 1", "hold = 1, beyond = 2", 16, "unknown field `beyond`", "take the line");
        broken("ideal = [3, 5]", "ideal = [3]", 15, "invalid length", "correct the line");
        broken("is = 2", "is = \"two\"", 22, "invalid type", "correct the line");
        broken(", source = \"guide\" }\nseed.light", " }\nseed.light", 18, "missing field", "add");
    }

    #[test]
    fn text_that_is_no_toml() {
        broken("is = [13, 25]", "is = [13, 25", 18, "", "correct the line");
        let message = message("title = \"A guide\"", "titel = \"A guide\"");
        assert!(message.starts_with("source 'guide', line "), "{message}");
        assert!(load("nonsense").expect_err("no TOML").0.starts_with("start of the file, line 1"));
    }

    #[test]
    fn sources_that_are_not_listed() {
        let other = "hold = 1, source = \"elsewhere\"";
        let field = "indoors.stay_weeks";
        broken("hold = 1, source = \"guide\"", other, 16, field, "add [sources.elsewhere]");
        broken("is = 5, source = \"guide\"", "is = 5, source = []", 23, "seed.life_years", "name");
    }

    #[test]
    fn ranges_the_wrong_way_round_or_not_nested() {
        let age = "indoors.age_weeks";
        broken("ideal = [3, 5]", "ideal = [5, 3]", 15, age, "write the lower figure first");
        broken("workable = [3, 6]", "workable = [4, 6]", 15, age, "within workable");
        broken("workable = [3, 6]", "workable = [3, 8]", 15, age, "longest stay");
        broken("minimum = 16", "minimum = 19", 20, "seed.soil_c", "minimum, optimum, maximum");
        broken("maximum = 41", "maximum = 34", 20, "seed.soil_c", "minimum, optimum, maximum");
        broken("is = [3, 6]", "is = [6, 3]", 21, "seed.emerge_days", "lower figure first");
        let sow = "outdoors.sow_weeks";
        broken("earliest = 0", "earliest = 2", 24, sow, "earliest, usual range, latest");
        broken(
            "earliest = 0",
            "earliest = 0, latest = 3",
            24,
            sow,
            "earliest, usual range, latest",
        );
    }

    #[test]
    fn figures_outside_their_bounds() {
        broken("is = [13, 25]", "is = [13, 301]", 18, "seed.depth_mm", "0 to 300");
        broken("days = [50, 70]", "days = [50, 501]", 27, "harvest", "1 to 500");
        broken("days = [50, 70]", "days = [0, 70]", 27, "harvest", "1 to 500");
        broken("is = [1, 4]", "is = [1, 31]", 24, "outdoors.sow_weeks", "-20 to 30");
        broken("earliest = 0", "earliest = -21", 24, "outdoors.sow_weeks", "-20 to 30");
        broken("harvest_days = 14", "harvest_days = 61", 28, "autumn", "1 to 60");
        broken("crops_in_year = 1", "crops_in_year = 3", 9, "crops_in_year", "1 to 2");
        broken("ideal = [3, 5]", "ideal = [0, 5]", 15, "indoors.age_weeks", "1 to 20");
    }

    #[test]
    fn ways_and_their_lines_belong_together() {
        let both = "ways = [\"indoors\", \"outdoors\"]";
        broken(both, "ways = [\"outdoors\"]", 11, "ways", "add \"indoors\" to ways");
        broken(both, "ways = [\"indoors\"]", 11, "ways", "add \"outdoors\" to ways");
        broken(both, "ways = []", 11, "ways", "name at least one way");
        let sow = "outdoors.sow_weeks = { is = [1, 4], earliest = 0, source = \"guide\" }\n";
        broken(sow, "", 11, "ways", "add outdoors.sow_weeks");
        let light = "seed.light = { is = \"either\", source = \"guide\" }\n";
        broken(light, "", 5, "seed.light", "add the line");
        broken(
            "start_from = [\"seed\"]",
            "start_from = [\"tubers\"]",
            11,
            "ways",
            "leave ways empty",
        );
        broken("\"quick_warm\"", "\"autumn_planted\"", 10, "rhythm", "autumn_planting_weeks");
        broken("\"quick_warm\"", "\"second_year\"", 10, "rhythm", "summer_sowing_weeks");
    }

    #[test]
    fn an_id_that_is_not_snake_case() {
        let message = message("[crop.cucumber]", "[crop.Cucumber-1]");
        assert!(message.starts_with("crop 'Cucumber-1', line 5: id: "), "{message}");
        assert!(message.contains("small letters"), "{message}");
    }

    #[test]
    fn every_fault_is_told_at_once() {
        let text =
            SOUND.replace("days = [50, 70]", "days = [70, 50]").replace("sow = 75", "sow = 1");
        let message = load(&text).expect_err("two faults").to_string();
        assert_eq!(message.lines().count(), 2, "{message}");
    }
}

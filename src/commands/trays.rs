//! `sowbell trays`: which seedlings share a tray.

use std::io::Write;

use anyhow::Context;
use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use super::CommandError;
use super::crop_names::crop_named;
use super::flags::{BadInput, GardenFlags, Read};
use crate::chat::{Knowledge, TrayTelling};
use crate::planning::{CropId, MOST_CELLS, NoTray, TrayPlan, USUAL_CELLS, Wanted, lay_out};
use crate::wording::Speech;

/// The arguments of `sowbell trays`.
#[derive(Debug, Args)]
pub struct TraysArgs {
    #[command(flatten)]
    garden: GardenFlags,
    /// Print the trays as JSON.
    #[arg(long)]
    json: bool,
    /// The crops with the cells of each (6 unless given), for example: tomato:12,basil.
    #[arg(long, value_name = "A:N,B,C")]
    crops: Option<String>,
}

/// The trays as programs read them; their form is pinned by tests.
#[derive(Debug, Serialize)]
struct LaidOut {
    trays: Vec<OneTray>,
    pot_up: Vec<ToPotUp>,
    left_out: Vec<NoPlace>,
    text: String,
}

#[derive(Debug, Serialize)]
struct OneTray {
    cell_mm: i64,
    cells: u32,
    used: u32,
    crops: Vec<InTray>,
    why: String,
}

#[derive(Debug, Serialize)]
struct InTray {
    crop: CropId,
    cells: u32,
    why: String,
}

#[derive(Debug, Serialize)]
struct ToPotUp {
    crop: CropId,
    from: NaiveDate,
    by: NaiveDate,
    pot_mm: Option<i64>,
    text: String,
}

#[derive(Debug, Serialize)]
struct NoPlace {
    crop: CropId,
    reason: NoTray,
    text: String,
}

pub(super) fn run(arguments: &TraysArgs, out: &mut impl Write) -> Result<(), CommandError> {
    let knowledge = Knowledge::embedded().context("the built-in data is broken")?;
    let read = arguments.garden.read(&knowledge)?;
    let speech = read.speech(&knowledge);
    let wanted = wanted(arguments.crops.as_deref(), &read, &knowledge, &speech)?;
    let plan = lay_out(&wanted, read.garden, read.today);
    let telling = TrayTelling { speech: &speech, today: read.today };
    let text = if arguments.json {
        serde_json::to_string_pretty(&laid_out(&plan, &telling)).map_err(anyhow::Error::from)?
    } else {
        telling.text(&plan)
    };
    writeln!(out, "{text}").map_err(anyhow::Error::from)?;
    Ok(())
}

fn laid_out(plan: &TrayPlan<'_>, telling: &TrayTelling<'_>) -> LaidOut {
    let trays = plan.trays.iter().map(|tray| OneTray {
        cell_mm: tray.cell_tray.cell_mm,
        cells: tray.cell_tray.cells(),
        used: tray.used(),
        crops: tray
            .crops
            .iter()
            .map(|standing| InTray {
                crop: standing.seedling.crop.id.clone(),
                cells: standing.cells,
                why: telling.crop_why(&standing.seedling),
            })
            .collect(),
        why: telling.tray_why(plan, tray),
    });
    let pot_up = plan.to_pot_up().into_iter().map(|(seedling, pot_up)| ToPotUp {
        crop: seedling.crop.id.clone(),
        from: pot_up.from,
        by: pot_up.by,
        pot_mm: pot_up.pot_mm,
        text: telling.pot_up([seedling], pot_up),
    });
    let left_out = plan.left_out.iter().map(|left_out| NoPlace {
        crop: left_out.crop.clone(),
        reason: left_out.reason,
        text: telling.left_out_line(left_out),
    });
    LaidOut {
        trays: trays.collect(),
        pot_up: pot_up.collect(),
        left_out: left_out.collect(),
        text: telling.text(plan),
    }
}

/// The crops of the flag with their cells; one that is named twice gets the cells of both.
fn wanted<'k>(
    text: Option<&str>,
    read: &'k Read,
    knowledge: &Knowledge,
    speech: &Speech,
) -> Result<Vec<Wanted<'k>>, BadInput> {
    let Some(text) = text.filter(|text| !text.trim().is_empty()) else {
        let missing = "--crops is missing: name them with their cells, divided by commas, for \
                       example --crops tomato:12,basil";
        return Err(BadInput(missing.to_owned()));
    };
    let mut all: Vec<Wanted<'_>> = Vec::new();
    for written in text.split(',').map(str::trim).filter(|written| !written.is_empty()) {
        let (name, count) = match written.split_once(':') {
            Some((name, count)) => (name.trim(), Some(count.trim())),
            None => (written, None),
        };
        let crop = crop_named(name, read, knowledge, speech)?;
        let cells = count.map_or(Ok(USUAL_CELLS), |count| cells(name, count))?;
        all.push(Wanted { crop, variety: None, cells });
        let together = all.iter().filter(|one| one.crop.id == crop.id).map(|one| one.cells);
        if together.sum::<u32>() > MOST_CELLS {
            return Err(too_many(&format!("{name} adds up to more")));
        }
    }
    if all.is_empty() {
        let none = "--crops names no crop: for example --crops tomato:12,basil";
        return Err(BadInput(none.to_owned()));
    }
    Ok(all)
}

fn cells(name: &str, count: &str) -> Result<u32, BadInput> {
    let whole = count.chars().all(|c| c.is_ascii_digit());
    let number = count.parse().ok().filter(|cells| whole && (1..=MOST_CELLS).contains(cells));
    number.ok_or_else(|| too_many(&format!("{name}:{count}")))
}

fn too_many(what: &str) -> BadInput {
    BadInput(format!(
        "--crops: {what}; give from 1 to {MOST_CELLS} cells for a crop, for example tomato:12"
    ))
}

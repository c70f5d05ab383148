//! `sowbell plan`: the season's dated jobs for some crops.

use std::io::Write;

use anyhow::Context;
use chrono::{Datelike, NaiveDate};
use clap::Args;
use serde::Serialize;

use super::CommandError;
use super::crop_names::crop_named;
use super::flags::{BadInput, GardenFlags, Read};
use super::sowing_figures::{PlannedEmergence, planned_emergence, planned_seeds};
use crate::chat::{Knowledge, SeedCountFigures, job_why, onion_sentence};
use crate::club::followed;
use crate::planning::{
    Crop, CropId, Job, Label, MOST_PLANTS, Packet, Season, Step, USUAL_CELLS, planned_jobs,
};
use crate::wording::{Speech, args, sentence};

/// The arguments of `sowbell plan`.
#[derive(Debug, Args)]
pub struct PlanArgs {
    #[command(flatten)]
    garden: GardenFlags,
    /// Print the jobs as JSON.
    #[arg(long)]
    json: bool,
    /// How many degrees from the equator, south negative, such as 47 or -33; for onions, whose bulbs
    /// depend on the length of the days.
    #[arg(long, value_name = "DEGREES", allow_negative_numbers = true)]
    latitude: Option<String>,
    /// The crops, divided by commas, for example: tomato,basil,pole bean.
    #[arg(long, value_name = "A,B,C")]
    crops: Option<String>,
    /// Plants wanted of each crop, for the number of seeds in the JSON; 6 by default.
    #[arg(long, value_name = "N")]
    plants: Option<String>,
}

/// A job as programs read it; its form is pinned by tests.
#[derive(Debug, Serialize)]
struct PlannedJob {
    crop: CropId,
    step: Step,
    label: Label,
    from: NaiveDate,
    ideal_from: NaiveDate,
    ideal_to: NaiveDate,
    to: NaiveDate,
    why: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    variety: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    packet: Option<Packet>,
    /// For a sowing: when it should be up.
    #[serde(skip_serializing_if = "Option::is_none")]
    emergence: Option<PlannedEmergence>,
    /// For a sowing: how many seeds.
    #[serde(skip_serializing_if = "Option::is_none")]
    seeds: Option<SeedCountFigures>,
}

pub(super) fn run(arguments: &PlanArgs, out: &mut impl Write) -> Result<(), CommandError> {
    let knowledge = Knowledge::embedded().context("the built-in data is broken")?;
    let read = arguments.garden.read(&knowledge)?;
    let speech = read.speech(&knowledge);
    let crops = crops(arguments.crops.as_deref(), &read, &knowledge, &speech)?;
    let plants = plants(arguments.plants.as_deref())?;
    let variety = |crop: &Crop| followed(&read.varieties, &crop.id);
    let season = read.garden.season_on(read.today);
    let mut all: Vec<(&Crop, Job)> = crops
        .iter()
        .flat_map(|crop| {
            season.iter().flat_map(|season| planned_jobs(crop, season)).map(|job| (*crop, job))
        })
        .collect();
    all.sort_by_key(|(_, job)| (job.window.ideal_from, job.window.ideal_to));
    let latitude = arguments.latitude.as_deref().map(latitude).transpose()?;
    let why = |crop: &Crop, job: &Job| {
        let why = season.as_ref().map(|season| job_why(crop, job, season, &speech));
        let begins = job.key.step.is_sowing() || crop.ways.is_empty();
        let onions = latitude.filter(|_| begins && crop.outdoors.bulbs_by_daylength);
        let onions = onions.map(|latitude| onion_sentence(latitude, &speech));
        why.into_iter().chain(onions).collect::<Vec<_>>().join(" ")
    };
    if arguments.json {
        let planned: Vec<PlannedJob> = all
            .iter()
            .map(|(crop, job)| PlannedJob {
                crop: crop.id.clone(),
                step: job.key.step,
                label: job.window.label,
                from: job.window.from,
                ideal_from: job.window.ideal_from,
                ideal_to: job.window.ideal_to,
                to: job.window.to,
                why: why(crop, job),
                variety: variety(crop).and_then(|variety| variety.name.clone()),
                packet: variety(crop).map(|variety| variety.packet),
                emergence: planned_emergence(crop, job.key.step, read.garden.place),
                seeds: planned_seeds(crop, job.key.step, plants),
            })
            .collect();
        let json = serde_json::to_string_pretty(&planned).map_err(anyhow::Error::from)?;
        writeln!(out, "{json}").map_err(anyhow::Error::from)?;
        return Ok(());
    }
    let Some(season) = &season else {
        writeln!(out, "{}", speech.plain("now-no-frost")).map_err(anyhow::Error::from)?;
        return Ok(());
    };
    for (crop, job) in &all {
        let line = job_text(crop, job, season, &why(crop, job), &speech);
        writeln!(out, "{line}").map_err(anyhow::Error::from)?;
    }
    for crop in crops.iter().filter(|crop| !all.iter().any(|(planned, _)| planned.id == crop.id)) {
        let line = speech.voice.say("verdict-season-too-short", &speech.about(&crop.id));
        writeln!(out, "{line}").map_err(anyhow::Error::from)?;
    }
    Ok(())
}

/// "April 17–24: sow cucumbers indoors, worth it until June 20. Why."
fn job_text(crop: &Crop, job: &Job, season: &Season, why: &str, speech: &Speech) -> String {
    let voice = &speech.voice;
    let window = &job.window;
    let days = if window.ideal_from == window.ideal_to {
        voice.date(window.ideal_from)
    } else {
        voice.range(window.ideal_from, window.ideal_to)
    };
    let last = if window.to.year() == season.year {
        voice.date(window.to)
    } else {
        voice.date_with_year(window.to)
    };
    let args = args()
        .text("days", days)
        .text("what", sentence(&speech.step_phrase(job.key.step, crop)))
        .text("last", last)
        .text("why", why);
    // In some languages a span of days begins with a word in small letters.
    sentence(&voice.say("plan-line", &args))
}

fn plants(written: Option<&str>) -> Result<u32, BadInput> {
    let Some(written) = written else { return Ok(USUAL_CELLS) };
    let plants = written.trim().parse().ok().filter(|plants| (1..=MOST_PLANTS).contains(plants));
    plants.ok_or_else(|| {
        BadInput(format!(
            "--plants: '{written}' is no number of plants; give from 1 to {MOST_PLANTS}, for example 12"
        ))
    })
}

fn latitude(text: &str) -> Result<i64, BadInput> {
    let wrong = || {
        BadInput(format!("--latitude {text}: give whole degrees from -90 to 90, such as 47 or -33"))
    };
    let degrees: i64 = text.trim().parse().map_err(|_| wrong())?;
    if (-90..=90).contains(&degrees) { Ok(degrees) } else { Err(wrong()) }
}

fn crops<'k>(
    text: Option<&str>,
    read: &'k Read,
    knowledge: &Knowledge,
    speech: &Speech,
) -> Result<Vec<&'k Crop>, BadInput> {
    let Some(text) = text.filter(|text| !text.trim().is_empty()) else {
        let missing =
            "--crops is missing: name them, divided by commas, for example --crops tomato,basil";
        return Err(BadInput(missing.to_owned()));
    };
    let mut crops: Vec<&Crop> = Vec::new();
    for written in text.split(',').map(str::trim).filter(|written| !written.is_empty()) {
        crops.push(crop_named(written, read, knowledge, speech)?);
    }
    if crops.is_empty() {
        return Err(BadInput("--crops names no crop: for example --crops tomato,basil".to_owned()));
    }
    let mut seen = std::collections::HashSet::new();
    crops.retain(|crop| seen.insert(crop.id.clone()));
    Ok(crops)
}

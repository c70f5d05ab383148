//! `sowbell ask`: one question, or a file of them.

use std::io::Write;
use std::path::PathBuf;

use anyhow::Context;
use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use super::flags::{BadInput, GardenFlags, Read};
use super::{CommandError, read_all};
use crate::chat::{Answer, Asked, Figures, Intent, Knowledge};
use crate::planning::{Assessment, CropId, Reason, Ripening, Ripens, Step, Verdict, Window};
use crate::wording::Speech;

/// The arguments of `sowbell ask`.
#[derive(Debug, Args)]
pub struct AskArgs {
    #[command(flatten)]
    garden: GardenFlags,
    /// Print the answer as JSON.
    #[arg(long)]
    json: bool,
    /// Answer a file of questions, one a line (- for standard input), with a JSON object a line.
    #[arg(long, value_name = "FILE")]
    batch: Option<PathBuf>,
    /// The question, for example: can I start cucumbers now?
    #[arg(value_name = "QUESTION")]
    question: Vec<String>,
}

pub(super) fn run(args: &AskArgs, out: &mut impl Write) -> Result<(), CommandError> {
    let knowledge = Knowledge::embedded().context("the built-in data is broken")?;
    let read = args.garden.read(&knowledge)?;
    let speech = read.speech(&knowledge);
    if let Some(path) = &args.batch {
        if !args.question.is_empty() {
            let both = "--batch reads its questions from a file: leave out the question";
            return Err(BadInput(both.to_owned()).into());
        }
        let bytes = read_all(path)?;
        for line in lines(&bytes) {
            let answered = answer(&line, &read, &knowledge, &speech);
            write_json(out, &answered)?;
        }
        return Ok(());
    }
    let question = args.question.join(" ");
    if args.question.is_empty() {
        let none = "ask what? For example: sowbell ask --last-frost 05-15 --first-frost 10-05 \
                    \"can I start cucumbers now?\"";
        return Err(BadInput(none.to_owned()).into());
    }
    let answered = answer(&question, &read, &knowledge, &speech);
    if args.json {
        write_json(out, &answered)?;
    } else {
        writeln!(out, "{}", answered.text).map_err(anyhow::Error::from)?;
    }
    Ok(())
}

fn write_json(out: &mut impl Write, answered: &Answered) -> Result<(), CommandError> {
    let json = serde_json::to_string(answered).map_err(anyhow::Error::from)?;
    writeln!(out, "{json}").map_err(anyhow::Error::from)?;
    Ok(())
}

/// The lines of a file: what is not UTF-8 is replaced, the empty ones count, and a newline at the
/// end does not begin another.
fn lines(bytes: &[u8]) -> Vec<String> {
    let text = String::from_utf8_lossy(bytes);
    let text = text.strip_prefix('\u{feff}').unwrap_or(&text);
    text.lines().map(ToOwned::to_owned).collect()
}

/// The answer as programs read it; its form is pinned by tests.
#[derive(Debug, Serialize)]
struct Answered {
    question: String,
    understood: UnderstoodAs,
    answers: Vec<Weighed>,
    text: String,
}

#[derive(Debug, Serialize)]
struct UnderstoodAs {
    intent: Intent,
    crops: Vec<CropId>,
    step: Option<Step>,
    on: NaiveDate,
}

#[derive(Debug, Serialize)]
struct Weighed {
    crop: CropId,
    step: Step,
    verdict: Option<Verdict>,
    reason: Option<Reason>,
    better_outdoors: bool,
    both: bool,
    next_date: Option<NaiveDate>,
    windows: WindowLists,
    #[serde(skip_serializing_if = "Option::is_none")]
    ripening: Option<RipeningFigures>,
    #[serde(skip_serializing_if = "Option::is_none")]
    figures: Option<Figures>,
}

#[derive(Debug, Serialize)]
struct WindowLists {
    sow_indoors: Vec<Window>,
    harden_off: Vec<Window>,
    plant_out: Vec<Window>,
    sow_outdoors: Vec<Window>,
}

#[derive(Debug, Serialize)]
struct RipeningFigures {
    ripens: Ripens,
    first_from: NaiveDate,
    first_to: NaiveDate,
    season_ends: NaiveDate,
    days_to_spare: i64,
}

fn answer(question: &str, read: &Read, knowledge: &Knowledge, speech: &Speech) -> Answered {
    let understanding = &knowledge.tongue(&read.language).understanding;
    let understood = understanding.understand(question, read.today);
    let answer = Asked {
        understood: &understood,
        garden: read.garden,
        own_crops: None,
        today: read.today,
        catalogue: &knowledge.catalogue,
        speech,
    }
    .answer();
    Answered {
        question: question.to_owned(),
        understood: UnderstoodAs {
            intent: understood.intent,
            crops: understood.weighed_crops().cloned().collect(),
            step: understood.step,
            on: understood.on,
        },
        answers: weighed_all(&answer),
        text: answer.text,
    }
}

/// Every step that was weighed; what was reckoned of a crop's seed stands with its first one.
fn weighed_all(answer: &Answer) -> Vec<Weighed> {
    let mut figures = answer.figures.clone();
    let mut all = Vec::new();
    for assessment in &answer.assessments {
        let mut one = weighed(assessment, &answer.ripening);
        if let Some(at) = figures.iter().position(|(crop, _)| *crop == one.crop) {
            one.figures = Some(figures.swap_remove(at).1);
        }
        all.push(one);
    }
    all
}

fn weighed(assessment: &Assessment, ripening: &[Ripening]) -> Weighed {
    let windows = &assessment.windows;
    let ripe = ripening
        .iter()
        .find(|ripe| ripe.start.crop == assessment.crop && ripe.start.step == assessment.step);
    Weighed {
        crop: assessment.crop.clone(),
        step: assessment.step,
        verdict: assessment.verdict.ok(),
        reason: assessment.verdict.err(),
        better_outdoors: assessment.better_outdoors,
        both: assessment.both,
        next_date: assessment.next_date,
        windows: WindowLists {
            sow_indoors: windows.sow_indoors.clone(),
            harden_off: windows.harden_off.clone(),
            plant_out: windows.plant_out.clone(),
            sow_outdoors: windows.sow_outdoors.clone(),
        },
        ripening: ripe.map(|ripe| RipeningFigures {
            ripens: ripe.ripens,
            first_from: ripe.first_early,
            first_to: ripe.first_late,
            season_ends: ripe.end,
            days_to_spare: ripe.days_to_spare,
        }),
        figures: None,
    }
}

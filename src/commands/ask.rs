//! `sowbell ask`: one question, or a file of them.

use std::io::Write;
use std::path::PathBuf;

use anyhow::Context;
use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use super::flags::{BadInput, GardenFlags, Read};
use super::{CommandError, read_all};
use crate::chat::understand::OwnName;
use crate::chat::{Asked, Figures, Intent, Knowledge, Own};
use crate::club::Variety;
use crate::planning::{
    Assessment, CropId, Packet, Reason, Ripening, Ripens, Step, Verdict, Window, what_helps,
};
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
    #[serde(skip_serializing_if = "Option::is_none")]
    variety: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    packet: Option<Packet>,
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
    season_ends_at_risk: NaiveDate,
    days_to_spare_at_risk: i64,
    #[serde(skip_serializing_if = "Option::is_none")]
    helps: Option<HelpFigures>,
}

#[derive(Debug, Serialize)]
struct HelpFigures {
    earlier_step: Option<Step>,
    earlier_by: Option<NaiveDate>,
    days_at_most: Option<i64>,
    cover_to_c: Option<i64>,
}

fn answer(question: &str, read: &Read, knowledge: &Knowledge, speech: &Speech) -> Answered {
    let understanding = &knowledge.tongue(&read.language).understanding;
    let names = OwnName::all(&read.varieties);
    let (understood, named) = understanding.understand_own(question, read.today, &names, None);
    let answer = Asked {
        understood: &understood,
        garden: read.garden,
        own_crops: None,
        today: read.today,
        catalogue: &read.catalogue,
        own: Some(Own {
            catalogue: &knowledge.catalogue,
            varieties: &read.varieties,
            follows: true,
            named: &named,
            sowings: &[],
            marks: &[],
        }),
        speech,
    }
    .answer();
    let mut figures = answer.figures.clone();
    let answers = answer.assessments.iter().enumerate().map(|(at, one)| {
        let ripe = answer.ripening.iter().find(|(of, _)| *of == Some(at)).map(|(_, ripe)| ripe);
        let variety = answer.varieties.get(at).and_then(Option::as_ref);
        let ripening = ripe.map(|ripe| ripening_figures(ripe, read, knowledge, variety));
        // What was reckoned of a crop's seed stands with its first step.
        let reckoned = figures.iter().position(|(crop, _)| *crop == one.crop);
        let figures = reckoned.map(|at| figures.swap_remove(at).1);
        Weighed { figures, ..weighed(one, variety, ripening) }
    });
    Answered {
        question: question.to_owned(),
        understood: UnderstoodAs {
            intent: understood.intent,
            crops: understood.weighed_crops().cloned().collect(),
            step: understood.step,
            on: understood.on,
        },
        answers: answers.collect(),
        text: answer.text.clone(),
    }
}

fn weighed(
    assessment: &Assessment,
    variety: Option<&Variety>,
    ripening: Option<RipeningFigures>,
) -> Weighed {
    let windows = &assessment.windows;
    Weighed {
        crop: assessment.crop.clone(),
        variety: variety.and_then(|variety| variety.name.clone()),
        packet: variety.map(|variety| variety.packet),
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
        ripening,
        figures: None,
    }
}

fn ripening_figures(
    ripe: &Ripening,
    read: &Read,
    knowledge: &Knowledge,
    variety: Option<&Variety>,
) -> RipeningFigures {
    let grown = variety.and_then(|variety| variety.grown(&knowledge.catalogue));
    let crop = grown.as_ref().or_else(|| read.catalogue.get(ripe.crop.as_str()));
    let helps = crop.map(|crop| what_helps(crop, read.garden, ripe, read.today));
    let helps = helps.filter(|_| ripe.ripens != Ripens::Yes).map(|helps| HelpFigures {
        earlier_step: helps.earlier.map(|(step, _)| step),
        earlier_by: helps.earlier.map(|(_, on)| on),
        days_at_most: helps.days_at_most,
        cover_to_c: helps.cover.map(|cover| cover.fleece_c),
    });
    RipeningFigures {
        ripens: ripe.ripens,
        first_from: ripe.first_early,
        first_to: ripe.first_late,
        season_ends: ripe.end,
        days_to_spare: ripe.days_to_spare,
        season_ends_at_risk: ripe.risk_end,
        days_to_spare_at_risk: ripe.days_to_spare_at_risk(),
        helps,
    }
}

//! The answer to an understood question: assessments for programs, words for people.

use chrono::NaiveDate;

use crate::catalogue::Catalogue;
use crate::planning::{
    Assessment, Crop, CropId, Garden, HarvestKind, Kind, MonthDay, Reason, Ripening, Ripens, Step,
    Verdict, assess, best_ways, ripening_of,
};
use crate::wording::{Speech, args, quoted, sentence};

use super::figures::Figures;
use super::lookup_text::{how_text, when_text};
use super::now_text::now_text;
use super::place_text::cover_line;
use super::understand::{DateTrouble, Intent, Understood};
use super::verdict_text::Telling;

/// From this many crops on, each gets a line instead of a paragraph.
const MOST_WHOLE_ANSWERS: usize = 3;

/// What a question is answered with.
pub struct Asked<'a> {
    /// The question.
    pub understood: &'a Understood,
    /// The garden it is about.
    pub garden: Garden,
    /// The asker's own crops, where "what now" should keep to them.
    pub own_crops: Option<&'a [CropId]>,
    /// Today at the asker's place.
    pub today: NaiveDate,
    /// The crops.
    pub catalogue: &'a Catalogue,
    /// How the asker is spoken to.
    pub speech: &'a Speech,
}

/// An answer.
#[derive(Debug, Clone, Default)]
pub struct Answer {
    /// Every step that was weighed: crops in the order asked, the recommended step first.
    pub assessments: Vec<Assessment>,
    /// For "will it ripen": what was reckoned, in the order of the crops.
    pub ripening: Vec<Ripening>,
    /// What was reckoned of seed and soil, with the crop it is about.
    pub figures: Vec<(CropId, Figures)>,
    /// What the bot says.
    pub text: String,
}

impl Asked<'_> {
    /// Answers the question.
    #[must_use]
    pub fn answer(&self) -> Answer {
        if let Some(text) = self.date_trouble().or_else(|| self.without_crop()) {
            return Answer { text, ..Answer::default() };
        }
        let mut answer = match self.understood.intent {
            Intent::CanStart => self.can_start(),
            Intent::When => self.when(),
            Intent::WhatNow => self.what_now(),
            Intent::How => self.how(),
            Intent::WillItRipen => self.will_it_ripen(),
            Intent::HowMany => self.how_many(),
            Intent::GerminationTest => self.germination_test(),
            Intent::DaysToEmerge => self.days_to_emerge(),
            Intent::SoilTemperature => self.soil_temperature(),
            Intent::Help => Answer { text: self.speech.plain("help-short"), ..Answer::default() },
            Intent::Unknown => Answer { text: self.not_understood(), ..Answer::default() },
        };
        let notes = self.notes();
        if !notes.is_empty() {
            let answered = format!("{notes}\n\n{}", answer.text);
            answered.trim().clone_into(&mut answer.text);
        }
        answer
    }

    /// What is wrong with the day that was named, where the answer depends on it.
    fn date_trouble(&self) -> Option<String> {
        let on_a_day = matches!(
            self.understood.intent,
            Intent::CanStart | Intent::When | Intent::WhatNow | Intent::WillItRipen
        );
        let trouble = self.understood.date_trouble.as_ref().filter(|_| on_a_day)?;
        let voice = &self.speech.voice;
        let args = args().text("example", voice.month_day(MonthDay::new(5, 1)?));
        Some(match trouble {
            DateTrouble::Impossible(written) => {
                voice.say("date-impossible", &args.text("written", quoted(written)))
            }
            DateTrouble::Unclear(written) => {
                voice.say("date-unclear", &args.text("written", quoted(written)))
            }
        })
    }

    /// Asks for the crop that a question lacks.
    fn without_crop(&self) -> Option<String> {
        let of_a_crop =
            matches!(self.understood.intent, Intent::When | Intent::How | Intent::WillItRipen);
        let names_none = self.crops().is_empty() && self.understood.unknown_words.is_empty();
        (of_a_crop && names_none).then(|| self.speech.plain("question-without-crop"))
    }

    pub(super) fn crops(&self) -> Vec<&Crop> {
        self.understood.weighed_crops().filter_map(|id| self.catalogue.get(id.as_str())).collect()
    }

    /// The steps weighed for a crop: the one asked for, or the best way on that day.
    pub(super) fn weigh(&self, crop: &Crop) -> Vec<Assessment> {
        let on = self.understood.on;
        match self.understood.step {
            // Somebody who plants potatoes or garlic "outdoors" sets them out.
            Some(Step::SowOutdoors) if crop.ways.is_empty() => {
                vec![assess(crop, self.garden, Step::PlantOut, on)]
            }
            Some(step) => vec![assess(crop, self.garden, step, on)],
            None => best_ways(crop, self.garden, on),
        }
    }

    fn can_start(&self) -> Answer {
        let crops = self.crops();
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for crop in &crops {
            let weighed = self.weigh(crop);
            let tell = |assessment| Telling {
                speech: self.speech,
                garden: self.garden,
                crop,
                assessment,
                today: self.understood.on == self.today,
            };
            let told = if crops.len() > MOST_WHOLE_ANSWERS {
                weighed.first().map(|first| tell(first).short())
            } else {
                let mut told: Vec<String> = Vec::new();
                for (index, assessment) in weighed.iter().enumerate() {
                    told.push(if index == 0 {
                        tell(assessment).whole()
                    } else {
                        self.or_else(&tell(assessment))
                    });
                }
                Some(told.join("\n"))
            };
            parts.extend(told);
            answer.assessments.extend(weighed);
        }
        let all_frost_free = crops.len() > 1
            && answer.assessments.iter().all(|a| a.verdict == Err(Reason::NoFrostHere));
        answer.text = if all_frost_free {
            let names = self.speech.crop_list(crops.iter().map(|crop| &crop.id));
            let head = self.speech.voice.say("reason-no-frost-here", &args().text("crops", &names));
            format!("{head}\n{}", self.speech.plain("why-no-frost"))
        } else if crops.len() > MOST_WHOLE_ANSWERS {
            parts.join("\n")
        } else {
            parts.join("\n\n")
        };
        answer
    }

    /// The other real choice, in a line.
    fn or_else(&self, telling: &Telling<'_>) -> String {
        self.speech.voice.say("or-else", &args().text("line", telling.short()))
    }

    fn when(&self) -> Answer {
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for crop in self.crops() {
            let weighed = self.weigh(crop);
            if let Some(first) = weighed.first() {
                let text = when_text(crop, first, self.understood.step, self.speech);
                let cover = cover_line(crop, self.garden, first, self.speech);
                parts.push([text].into_iter().chain(cover).collect::<Vec<_>>().join("\n"));
            }
            answer.assessments.extend(weighed);
        }
        answer.text = parts.join("\n\n");
        answer
    }

    fn how(&self) -> Answer {
        let crops = self.crops();
        let assessments = crops.iter().flat_map(|crop| self.weigh(crop)).collect();
        let texts: Vec<String> =
            crops.iter().map(|crop| how_text(crop, self.garden.place, self.speech)).collect();
        Answer { assessments, text: texts.join("\n\n"), ..Answer::default() }
    }

    /// What can be started, the most urgent first: late before on time before early, and within
    /// each by the day on which that ends.
    fn what_now(&self) -> Answer {
        let on = self.understood.on;
        let of_kind = |crop: &&Crop| self.understood.kind.is_none_or(|kind| crop.kind == kind);
        let own: Option<Vec<&Crop>> = self
            .own_crops
            .map(|ids| ids.iter().filter_map(|id| self.catalogue.get(id.as_str())).collect());
        let crops: Vec<&Crop> = match own {
            Some(own) => own.into_iter().filter(of_kind).collect(),
            None => self.catalogue.iter().filter(of_kind).collect(),
        };
        let mut open: Vec<Assessment> = crops
            .iter()
            .flat_map(|crop| match self.understood.step {
                // "What can I plant outside" is about plants and about seed alike.
                Some(Step::PlantOut | Step::SowOutdoors) => [Step::PlantOut, Step::SowOutdoors]
                    .map(|step| assess(crop, self.garden, step, on))
                    .to_vec(),
                Some(step) => vec![assess(crop, self.garden, step, on)],
                None => best_ways(crop, self.garden, on).into_iter().take(1).collect(),
            })
            .filter(|assessment| assessment.verdict().is_some_and(Verdict::workable))
            .collect();
        open.sort_by_key(|assessment| {
            let ends = assessment.window.map(|window| match assessment.verdict() {
                Some(Verdict::Late) => window.to,
                Some(Verdict::Early) => window.ideal_from,
                _ => window.ideal_to,
            });
            (urgency(assessment.verdict()), ends)
        });
        let text =
            now_text(&open, self.garden, self.understood, self.today, self.speech, self.catalogue);
        Answer { assessments: open, text, ..Answer::default() }
    }

    fn will_it_ripen(&self) -> Answer {
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for crop in self.crops() {
            let weighed = self.weigh(crop);
            if let Some(first) = weighed.first() {
                match ripening_of(crop, first) {
                    Some(ripe) => {
                        parts.push(self.ripening_text(crop, &ripe));
                        answer.ripening.push(ripe);
                    }
                    None => parts.push(self.no_ripening_text(crop, first)),
                }
            }
            answer.assessments.extend(weighed);
        }
        answer.text = parts.join("\n\n");
        answer
    }

    fn ripening_text(&self, crop: &Crop, ripe: &Ripening) -> String {
        let voice = &self.speech.voice;
        let on = self.understood.on;
        let args = self
            .speech
            .about(&crop.id)
            .text("what", self.speech.step_phrase(ripe.start.step, crop))
            .text("on", voice.date(on))
            .text("ready", voice.range(ripe.first_early, ripe.first_late))
            .text("end", voice.date(ripe.end))
            .number("spare", ripe.days_to_spare);
        let bloom = crop.harvest.kind == HarvestKind::Bloom;
        let head = match (ripe.ripens, bloom) {
            (Ripens::Yes, false) => voice.say("ripens-yes", &args),
            (Ripens::Yes, true) => voice.say("blooms-yes", &args),
            (Ripens::Tight, false) => voice.say("ripens-tight", &args),
            (Ripens::Tight, true) => voice.say("blooms-tight", &args),
            (Ripens::No, false) => voice.say("ripens-no", &args),
            (Ripens::No, true) => voice.say("blooms-no", &args),
        };
        let why = match ripe.ripens {
            Ripens::Yes => voice.say("ripens-why", &args),
            Ripens::Tight | Ripens::No => voice.say("ripens-why-short", &args),
        };
        match ripe.ripens {
            Ripens::Yes => format!("{head}\n{why}"),
            Ripens::Tight | Ripens::No => {
                format!("{head}\n{why}\n{}", voice.say("ripens-what-helps", &args))
            }
        }
    }

    fn no_ripening_text(&self, crop: &Crop, weighed: &Assessment) -> String {
        let voice = &self.speech.voice;
        let about = self.speech.about(&crop.id);
        if weighed.verdict == Err(Reason::NoFrostHere) {
            voice.say("ripens-no-frost", &about)
        } else if weighed.season.is_some_and(|season| season.dry.is_some())
            && !weighed.windows.season_too_short
        {
            format!(
                "{}\n{}",
                voice.say("ripens-no-frost", &about),
                when_text(crop, weighed, None, self.speech)
            )
        } else if crop.crops_in_year > 1 {
            sentence(&voice.say("ripens-next-year", &about))
        } else if weighed.windows.season_too_short {
            voice.say("verdict-season-too-short", &about)
        } else {
            when_text(crop, weighed, None, self.speech)
        }
    }

    /// Words that could mean two things, and names that are not known, said before the answer.
    fn notes(&self) -> String {
        let voice = &self.speech.voice;
        let mut notes: Vec<String> = self
            .understood
            .ambiguous
            .iter()
            .map(|word| {
                let names: Vec<String> =
                    word.means.iter().map(|id| self.speech.crops(id).to_owned()).collect();
                let args = args().text("word", &word.word);
                match (&word.outside, names.len()) {
                    (Some(outside), _) => {
                        voice.say("which-or-outside", &args.text("outside", outside))
                    }
                    (None, _) => {
                        voice.say("which-crop", &args.text("crops", voice.list_or(&names)))
                    }
                }
            })
            .collect();
        if self.understood.intent != Intent::Unknown {
            notes.extend(
                self.understood
                    .unknown_words
                    .iter()
                    .map(|name| unknown_name(&name.written, &name.near, self.speech)),
            );
        }
        notes.join("\n")
    }

    fn not_understood(&self) -> String {
        let unknown: Vec<String> = self
            .understood
            .unknown_words
            .iter()
            .map(|name| unknown_name(&name.written, &name.near, self.speech))
            .collect();
        if unknown.is_empty() { self.speech.plain("not-understood") } else { unknown.join("\n") }
    }
}

/// A sentence about a name that no crop has, offering the nearest.
pub(super) fn unknown_name(written: &str, near: &[CropId], speech: &Speech) -> String {
    let voice = &speech.voice;
    let names: Vec<String> = near.iter().map(|id| speech.crop(id).to_owned()).collect();
    let args = args().text("written", quoted(written));
    if names.is_empty() {
        voice.say("unknown-crop", &args)
    } else {
        voice.say("unknown-crop-near", &args.text("near", voice.list_or(&names)))
    }
}

fn urgency(verdict: Option<Verdict>) -> u8 {
    match verdict {
        Some(Verdict::Late) => 0,
        Some(Verdict::OnTime) => 1,
        Some(Verdict::Early) => 2,
        Some(Verdict::TooEarly | Verdict::TooLate) | None => 3,
    }
}

/// The kind of crop in words.
pub(super) fn kind_word(kind: Kind, speech: &Speech) -> String {
    match kind {
        Kind::Vegetable => speech.plain("kind-vegetables"),
        Kind::Herb => speech.plain("kind-herbs"),
        Kind::Flower => speech.plain("kind-flowers"),
    }
}

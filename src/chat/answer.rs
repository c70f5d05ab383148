//! The answer to an understood question: assessments for programs, words for people.

use chrono::NaiveDate;

use crate::catalogue::Catalogue;
use crate::club::Variety;
use crate::planning::{
    Assessment, Crop, CropId, Garden, Kind, MonthDay, Reason, Ripening, Step, Verdict, assess,
    best_ways,
};
use crate::wording::{Speech, args, quoted, sentence};

use super::figures::Figures;
use super::lookup_text::{how_text, when_text};
use super::month_text::month_line;
use super::now_text::now_text;
use super::own::{Own, Subject};
use super::place_text::cover_line;
use super::understand::{DateTrouble, Intent, Understood};
use super::variety_text::{by_packet, variety_name};
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
    /// The crops, as the asker grows them.
    pub catalogue: &'a Catalogue,
    /// The asker's own varieties and sowings, where they have any.
    pub own: Option<Own<'a>>,
    /// How the asker is spoken to.
    pub speech: &'a Speech,
}

/// An answer.
#[derive(Debug, Clone, Default)]
pub struct Answer {
    /// Every step that was weighed: crops in the order asked, the recommended step first.
    pub assessments: Vec<Assessment>,
    /// The variety whose packet each of those was weighed by, in the same order; none at the end
    /// where no packet counts.
    pub varieties: Vec<Option<Variety>>,
    /// For "will it ripen": what was reckoned, in the order of the crops, each with the number of
    /// the assessment that it reckons on, or none where that is a sowing that was made.
    pub ripening: Vec<(Option<usize>, Ripening)>,
    /// What was reckoned of seed and soil, with the crop it is about.
    pub figures: Vec<(CropId, Figures)>,
    /// What the bot says.
    pub text: String,
}

impl Answer {
    /// Keeps what was weighed of a crop, beside the variety it was weighed by.
    pub(super) fn keep(&mut self, weighed: Vec<Assessment>, subject: &Subject<'_>) {
        self.varieties.extend(weighed.iter().map(|_| subject.variety.cloned()));
        self.assessments.extend(weighed);
    }
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

    /// A text with the line that says whose packet its numbers come from behind the verdict.
    pub(super) fn reasoned(&self, subject: &Subject<'_>, text: String) -> String {
        let Some(variety) = subject.variety else { return text };
        let packet = by_packet(variety, self.speech);
        match text.split_once('\n') {
            Some((verdict, rest)) => format!("{verdict}\n{packet}\n{rest}"),
            None => format!("{text}\n{packet}"),
        }
    }

    /// A text under the line that says whose packet its numbers come from, where one's do.
    fn headed(&self, subject: &Subject<'_>, text: String) -> String {
        match subject.variety {
            Some(variety) => format!("{}\n{text}", by_packet(variety, self.speech)),
            None => text,
        }
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
        let names_none = self.subjects().is_empty() && self.understood.unknown_words.is_empty();
        (of_a_crop && names_none).then(|| self.speech.plain("question-without-crop"))
    }

    /// The steps weighed for a crop: the one asked for, or the best way on that day.
    pub(super) fn weigh(&self, crop: &Crop) -> Vec<Assessment> {
        self.weigh_on(crop, self.understood.on)
    }

    pub(super) fn weigh_on(&self, crop: &Crop, on: NaiveDate) -> Vec<Assessment> {
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
        let subjects = self.subjects();
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for subject in &subjects {
            let crop = subject.crop.as_ref();
            let weighed = self.weigh(crop);
            let tell = |assessment| Telling {
                speech: self.speech,
                garden: self.garden,
                crop,
                assessment,
                today: self.understood.on == self.today,
            };
            let told = if subjects.len() > MOST_WHOLE_ANSWERS {
                weighed.first().map(|first| self.short(subject, &tell(first)))
            } else {
                let mut told: Vec<String> = Vec::new();
                for (index, assessment) in weighed.iter().enumerate() {
                    told.push(if index == 0 {
                        tell(assessment).whole()
                    } else {
                        self.or_else(&tell(assessment))
                    });
                }
                told.splice(0..0, self.of_month(crop, weighed.first()));
                Some(self.reasoned(subject, told.join("\n")))
            };
            parts.extend(told);
            answer.keep(weighed, subject);
        }
        let all_frost_free = subjects.len() > 1
            && answer.assessments.iter().all(|a| a.verdict == Err(Reason::NoFrostHere));
        answer.text = if all_frost_free {
            let names = self.speech.crop_list(subjects.iter().map(|subject| &subject.crop.id));
            let head = self.speech.voice.say("reason-no-frost-here", &args().text("crops", &names));
            format!("{head}\n{}", self.speech.plain("why-no-frost"))
        } else if subjects.len() > MOST_WHOLE_ANSWERS {
            // Lines say little of the day, and a month is reckoned by its first.
            if self.understood.until.is_some() {
                let date = self.speech.voice.date(self.understood.on);
                parts
                    .insert(0, self.speech.voice.say("month-reckoned", &args().text("date", date)));
            }
            parts.join("\n")
        } else {
            parts.join("\n\n")
        };
        answer
    }

    /// When in the month that was named it can be done, before the answer for its first day.
    fn of_month(&self, crop: &Crop, first: Option<&Assessment>) -> Option<String> {
        let until = self.understood.until?;
        let on = self.understood.on;
        let held = self.garden.hold.is_some_and(|hold| hold.holds_on(on));
        first.filter(|first| first.verdict.is_ok() && !held)?;
        let verdicts: Vec<(NaiveDate, Option<Verdict>)> = on
            .iter_days()
            .take_while(|day| *day <= until)
            .map(|day| (day, self.weigh_on(crop, day).first().and_then(Assessment::verdict)))
            .collect();
        let days = |good: fn(Verdict) -> bool| -> Vec<NaiveDate> {
            let fits = verdicts.iter().filter(|(_, verdict)| verdict.is_some_and(good));
            fits.map(|(day, _)| *day).collect()
        };
        // What works with special care only counts where nothing else does.
        let mut open = days(|verdict| verdict.workable() && verdict != Verdict::Early);
        if open.is_empty() {
            open = days(Verdict::workable);
        }
        Some(month_line(on, until, &open, &self.speech.voice))
    }

    /// One line for each of many crops, with the variety's name where one is meant.
    fn short(&self, subject: &Subject<'_>, telling: &Telling<'_>) -> String {
        match subject.variety.filter(|variety| variety.name.is_some()) {
            Some(variety) => {
                let args = args()
                    .text("variety", sentence(&variety_name(variety, self.speech)))
                    .text("line", telling.short());
                self.speech.voice.say("short-variety", &args)
            }
            None => telling.short(),
        }
    }

    /// The other real choice, in a line.
    fn or_else(&self, telling: &Telling<'_>) -> String {
        self.speech.voice.say("or-else", &args().text("line", telling.short()))
    }

    fn when(&self) -> Answer {
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for subject in self.subjects() {
            let crop = subject.crop.as_ref();
            let weighed = self.weigh(crop);
            if let Some(first) = weighed.first() {
                let text = when_text(crop, self.garden, first, self.understood.step, self.speech);
                let cover = cover_line(crop, self.garden, first, self.speech);
                let text = [text].into_iter().chain(cover).collect::<Vec<_>>().join("\n");
                parts.push(self.headed(&subject, text));
            }
            answer.keep(weighed, &subject);
        }
        answer.text = parts.join("\n\n");
        answer
    }

    fn how(&self) -> Answer {
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for subject in self.subjects() {
            let crop = subject.crop.as_ref();
            parts.push(self.headed(&subject, how_text(crop, self.garden.place, self.speech)));
            answer.keep(self.weigh(crop), &subject);
        }
        answer.text = parts.join("\n\n");
        answer
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
        if let (Some(written), [crop]) =
            (&self.understood.gone_by, self.understood.crops.as_slice())
        {
            let args = args().text("written", quoted(written)).text("crop", self.speech.crop(crop));
            notes.push(voice.say("date-gone-by", &args));
        }
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

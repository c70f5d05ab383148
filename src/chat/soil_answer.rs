//! Answers about sowing in the ground by the temperature of the soil.

use chrono::{Datelike, NaiveDate};

use crate::planning::{
    Assessment, Believe, Crop, Label, SoilAdvice, SoilVerdict, Step, Verdict, Way, assess,
    fit_soil_c, soil_verdict, which_to_believe,
};
use crate::wording::{args, sentence};

use super::answer::{Answer, Asked};
use super::coming_up_text::{cool_enough, warm_enough};
use super::emergence_answer::degrees;
use super::figures::{Figures, SoilFigures, tenths};

/// The most crops that one line of the list names; a phone shows no more at a glance.
const MOST_NAMED: usize = 8;

/// Soil and date, weighed for one crop.
struct Weighed<'c> {
    crop: &'c Crop,
    date: Assessment,
    soil: SoilVerdict,
    advice: SoilAdvice,
}

impl Asked<'_> {
    /// What the measured soil temperature allows to sow in the ground.
    pub(super) fn soil_temperature(&self) -> Answer {
        let soil_c = match self.believed_c() {
            Ok(soil_c) => soil_c,
            Err(text) => return Answer { text, ..Answer::default() },
        };
        let subjects = self.subjects();
        if subjects.is_empty() {
            return self.sowable_at(soil_c);
        }
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for subject in &subjects {
            let crop = subject.crop.as_ref();
            let Some(weighed) = self.soil_and_date(crop, soil_c) else {
                let date = assess(crop, self.garden, Step::SowOutdoors, self.understood.on);
                parts.push(self.not_in_the_ground(crop, soil_c));
                answer.keep(vec![date], subject);
                continue;
            };
            parts.push(self.soil_text(&weighed, soil_c));
            answer.figures.push((crop.id.clone(), soil_figures(&weighed, soil_c)));
            answer.keep(vec![weighed.date], subject);
        }
        if !answer.figures.is_empty() {
            parts.push(self.speech.plain("soil-measure"));
        }
        answer.text = parts.join("\n\n");
        answer
    }

    /// `None` where the crop is never sown in the ground.
    fn soil_and_date<'c>(&self, crop: &'c Crop, soil_c: f64) -> Option<Weighed<'c>> {
        if !crop.ways.contains(&Way::Outdoors) {
            return None;
        }
        let date = assess(crop, self.garden, Step::SowOutdoors, self.understood.on);
        let soil = soil_verdict(crop, soil_c)?;
        let label = date.window.map_or(Label::Spring, |window| window.label);
        let by_date = date.verdict().map(|verdict| (verdict, label));
        Some(Weighed { crop, soil, advice: which_to_believe(crop, soil, by_date), date })
    }

    /// A crop that is raised indoors or planted; the days to come up are told all the same.
    fn not_in_the_ground(&self, crop: &Crop, soil_c: f64) -> String {
        let about = self.speech.about(&crop.id);
        if !crop.from_seed() || crop.ways.is_empty() {
            return sentence(&self.speech.voice.say("reason-not-from-seed", &about));
        }
        let mut lines =
            vec![sentence(&self.speech.voice.say("reason-never-sown-outdoors", &about))];
        lines.extend(self.emergence_lines(crop, soil_c));
        lines.join("\n")
    }

    fn soil_text(&self, weighed: &Weighed<'_>, soil_c: f64) -> String {
        let mut lines = vec![self.soil_head(weighed, soil_c)];
        lines.extend(self.soil_why(weighed, soil_c));
        lines.join("\n")
    }

    /// The verdict, and which to believe.
    fn soil_head(&self, weighed: &Weighed<'_>, soil_c: f64) -> String {
        let voice = &self.speech.voice;
        let crop = weighed.crop;
        let on = self.understood.on;
        let next = weighed.date.next_date.map(|next| self.date_of(next)).unwrap_or_default();
        let about = self
            .speech
            .about(&crop.id)
            .text("at", voice.measured_temperature(soil_c))
            .text("next", next)
            .text("warm", warm_enough(self.speech, crop))
            .text("cool", cool_enough(self.speech, crop));
        let label = weighed.date.window.map_or(Label::Spring, |window| window.label);
        match (weighed.advice.sow, weighed.advice.believe, weighed.date.verdict()) {
            (true, Believe::Soil, Some(_)) => voice.say("soil-go-believe-soil", &about),
            (true, _, None) => voice.say("soil-go-no-date", &about),
            (true, _, Some(_)) if on == self.today => voice.say("soil-go", &about),
            (true, _, Some(_)) => voice.say("soil-go-on", &about.text("date", self.date_of(on))),
            (false, _, Some(Verdict::TooLate)) if weighed.date.next_date.is_none() => {
                voice.say("soil-too-late-for-good", &about)
            }
            (false, _, Some(Verdict::TooLate)) => voice.say("soil-too-late", &about),
            (false, Believe::Date, Some(Verdict::Early)) => voice.say("soil-wait-cover", &about),
            (false, Believe::Date, _) if label == Label::Spring => {
                voice.say("soil-wait-frost", &about)
            }
            (false, Believe::Date, _) => voice.say("soil-wait-window", &about),
            (false, _, _) if weighed.soil == SoilVerdict::TooHot => {
                voice.say("soil-wait-cooler", &about)
            }
            (false, Believe::Both, _) => voice.say("soil-wait-both", &about),
            (false, Believe::Soil, None | Some(Verdict::TooEarly)) => {
                voice.say("soil-wait-no-date", &about)
            }
            (false, Believe::Soil, Some(_)) => voice.say("soil-wait-believe-soil", &about),
        }
    }

    /// Days to come up, or what the crop needs.
    fn soil_why(&self, weighed: &Weighed<'_>, soil_c: f64) -> Vec<String> {
        let voice = &self.speech.voice;
        let Some(range) = weighed.crop.seed.soil_c.as_ref() else { return Vec::new() };
        let about = self
            .speech
            .about(&weighed.crop.id)
            .text("minimum", voice.temperature(range.minimum))
            .text("maximum", voice.temperature(range.maximum))
            .text("best", voice.temperature_range(range.optimum.low, range.optimum.high));
        let below = soil_verdict(weighed.crop, degrees(range.minimum))
            != Some(SoilVerdict::TooCold)
            && soil_c < degrees(range.minimum);
        match weighed.soil {
            SoilVerdict::TooCold if below && soil_c >= 0.0 => {
                vec![sentence(&voice.say("soil-needs", &about))]
            }
            SoilVerdict::TooHot if soil_c > degrees(range.maximum) => {
                vec![sentence(&voice.say("soil-above", &about))]
            }
            SoilVerdict::Cool => {
                vec![sentence(&voice.say("soil-above-the-least", &about))]
            }
            SoilVerdict::Warm(None) => vec![sentence(&voice.say("soil-good", &about))],
            _ => self.emergence_lines(weighed.crop, soil_c),
        }
    }

    /// What can be sown at this temperature, of the asker's own crops or of all.
    fn sowable_at(&self, soil_c: f64) -> Answer {
        let crops: Vec<&Crop> = match self.own_crops {
            Some(ids) => ids.iter().filter_map(|id| self.catalogue.get(id.as_str())).collect(),
            None => self.catalogue.iter().collect(),
        };
        let of_kind = |crop: &&Crop| self.understood.kind.is_none_or(|kind| crop.kind == kind);
        let weighed: Vec<Weighed<'_>> = crops
            .into_iter()
            .filter(of_kind)
            .filter_map(|crop| self.soil_and_date(crop, soil_c))
            .collect();
        let voice = &self.speech.voice;
        let head = args()
            .text("at", voice.measured_temperature(soil_c))
            .text("date", voice.date(self.understood.on));
        let mut lines = Vec::new();
        let go = |w: &&Weighed<'_>| w.advice.sow && w.soil != SoilVerdict::Cool;
        let slow = |w: &&Weighed<'_>| w.advice.sow && w.soil == SoilVerdict::Cool;
        let frost = |w: &&Weighed<'_>| {
            let label = w.date.window.map_or(Label::Spring, |window| window.label);
            let early = matches!(w.date.verdict(), Some(Verdict::TooEarly | Verdict::Early));
            let warm = matches!(w.soil, SoilVerdict::Warm(_));
            w.advice.believe == Believe::Date && early && warm && label == Label::Spring
        };
        let cold = |w: &&Weighed<'_>| {
            let due = w.date.verdict().is_none_or(Verdict::workable);
            w.soil == SoilVerdict::TooCold && due
        };
        if weighed.iter().any(|w| w.advice.sow) {
            lines.push(voice.say("soil-list-head", &head));
        } else {
            lines.push(voice.say("soil-list-none", &head));
        }
        if let Some(crops) = self.named(weighed.iter().filter(go)) {
            lines.push(voice.say("soil-list-go", &args().text("crops", crops)));
        }
        if let Some(crops) = self.named(weighed.iter().filter(slow)) {
            lines.push(voice.say("soil-list-slow", &args().text("crops", crops)));
        }
        if let Some(crops) = self.named(weighed.iter().filter(frost)) {
            lines.push(voice.say("soil-list-frost", &args().text("crops", crops)));
        }
        if let Some(crops) = self.named(weighed.iter().filter(cold)) {
            lines.push(voice.say("soil-list-cold", &args().text("crops", crops)));
        }
        lines.push(self.speech.plain("soil-measure"));
        let mut answer = Answer { text: lines.join("\n"), ..Answer::default() };
        for one in weighed.into_iter().filter(|one| one.advice.sow) {
            answer.figures.push((one.crop.id.clone(), soil_figures(&one, soil_c)));
            answer.assessments.push(one.date);
        }
        answer
    }

    /// The crops' names in a line, shortened; `None` where there is none.
    fn named<'w>(&self, crops: impl Iterator<Item = &'w Weighed<'w>>) -> Option<String> {
        let names: Vec<String> =
            crops.map(|weighed| self.speech.crop(&weighed.crop.id).to_owned()).collect();
        let mut line = names.iter().take(MOST_NAMED).cloned().collect::<Vec<_>>().join(", ");
        if names.len() > MOST_NAMED {
            let more = args().count("count", names.len() - MOST_NAMED);
            line.push_str(&self.speech.voice.say("now-more", &more));
        }
        (!names.is_empty()).then_some(line)
    }

    /// A date, with its year where that is not the year asked about.
    fn date_of(&self, date: NaiveDate) -> String {
        if date.year() == self.understood.on.year() {
            self.speech.voice.date(date)
        } else {
            self.speech.voice.date_with_year(date)
        }
    }
}

fn soil_figures(weighed: &Weighed<'_>, soil_c: f64) -> Figures {
    let by_soil = match weighed.soil {
        SoilVerdict::Warm(days) => SoilVerdict::Warm(days.map(tenths)),
        other => other,
    };
    let soil = SoilFigures {
        soil_c: tenths(soil_c),
        by_soil,
        sow: weighed.advice.sow,
        believe: weighed.advice.believe,
        warm_enough_c: fit_soil_c(weighed.crop).map(|(coolest, _)| coolest),
    };
    Figures { soil: Some(soil), ..Figures::default() }
}

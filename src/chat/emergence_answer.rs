//! Answers about the days that seed takes to come up at a temperature.

use crate::planning::{
    Crop, Emergence, EmergenceRow, LONGEST_EMERGENCE_DAYS, ReadBetween, Side, days_to_emerge,
    too_slow_side,
};
use crate::wording::{Args, Speech, Voice, args, sentence};

use super::answer::{Answer, Asked};
use super::figures::{EmergenceFigures, Figures};

/// The temperatures in degrees Celsius that are believed of soil in which seed lies. Colder and
/// hotter ones are slips of the pen; within, the answer says what is too cold or too hot.
const BELIEVED_C: (i64, i64) = (-20, 50);

/// The depth in millimetres at which the seed of the trials lay.
const TRIAL_DEPTH_MM: i64 = 13;

impl Asked<'_> {
    /// How long seed takes to come up at the temperature that was given.
    pub(super) fn days_to_emerge(&self) -> Answer {
        let soil_c = match self.believed_c() {
            Ok(soil_c) => soil_c,
            Err(text) => return Answer { text, ..Answer::default() },
        };
        let subjects = self.subjects();
        if subjects.is_empty() {
            let at = args().text("at", self.speech.voice.measured_temperature(soil_c));
            let text = self.speech.voice.say("emerge-which-crop", &at);
            return Answer { text, ..Answer::default() };
        }
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for subject in &subjects {
            let crop = subject.crop.as_ref();
            answer.keep(self.weigh(crop).into_iter().take(1).collect(), subject);
            if !crop.from_seed() {
                let about = self.speech.about(&crop.id);
                parts.push(sentence(&self.speech.voice.say("reason-not-from-seed", &about)));
                continue;
            }
            parts.push(self.emergence_lines(crop, soil_c).join("\n"));
            let emergence = EmergenceFigures::new(soil_c, days_to_emerge(&crop.id, soil_c));
            let figures = Figures { emergence: Some(emergence), ..Figures::default() };
            answer.figures.push((crop.id.clone(), figures));
        }
        answer.text = parts.join("\n\n");
        answer
    }

    /// The temperature in degrees Celsius, or the sentence that it cannot be.
    pub(super) fn believed_c(&self) -> Result<f64, String> {
        let voice = &self.speech.voice;
        let given = self.understood.quantities.temperature;
        let soil_c = given.map_or(f64::NAN, |given| given.celsius(voice.units()));
        if is_believed(soil_c) {
            return Ok(soil_c);
        }
        Err(voice.say("temperature-beyond", &bounds(voice, soil_c)))
    }

    /// What the trials say of the crop at this temperature, each sentence a line.
    pub(super) fn emergence_lines(&self, crop: &Crop, soil_c: f64) -> Vec<String> {
        if soil_c < 0.0 {
            return vec![self.speech.plain("soil-frozen")];
        }
        let voice = &self.speech.voice;
        let row = EmergenceRow::of(&crop.id);
        let result = days_to_emerge(&crop.id, soil_c);
        let mut lines = vec![told_by_trials(self.speech, crop, soil_c)];
        if let Emergence::Days(days) = result {
            if days > LONGEST_EMERGENCE_DAYS {
                lines.push(too_slow(self.speech, too_slow_side(&crop.id, soil_c)));
            }
            lines.extend(self.read_between(soil_c));
        }
        if let Some(relative) = row.as_ref().and_then(|row| row.relative.as_ref())
            && result != Emergence::NotTested
        {
            let args = args().text("relative", self.speech.crop(relative));
            lines.push(voice.say("emerge-relative", &args));
        }
        let printings_differ = row.as_ref().is_some_and(|row| row.name == "Bean, snap")
            && soil_c > 30.0
            && matches!(result, Emergence::Days(_));
        if printings_differ {
            lines.push(
                voice.say("emerge-printings", &args().text("at", voice.measured_temperature(35.0))),
            );
        }
        if !matches!(result, Emergence::Days(_)) {
            lines.extend(self.usual_days(crop));
        }
        lines
    }

    /// Whether the figure stands in the table or was read between two of its temperatures.
    fn read_between(&self, soil_c: f64) -> Option<String> {
        let voice = &self.speech.voice;
        let depth = args().text("depth", voice.length_mm(TRIAL_DEPTH_MM));
        let ReadBetween { low_c, high_c } = ReadBetween::at(soil_c)?;
        let at = |celsius| voice.measured_temperature(degrees(celsius));
        Some(if low_c == high_c {
            voice.say("emerge-tested", &depth)
        } else {
            let ends = depth.text("low", at(low_c)).text("high", at(high_c));
            voice.say("emerge-between", &ends)
        })
    }

    /// The usual days at a good temperature, from the catalogue.
    fn usual_days(&self, crop: &Crop) -> Option<String> {
        let voice = &self.speech.voice;
        let best = crop.seed.soil_c.as_ref()?.optimum;
        let days = crop.seed.emerge_days.as_ref()?.is;
        let args = args()
            .text("best", voice.temperature_range(best.low, best.high))
            .text("days", voice.days_range(days.low, days.high));
        Some(voice.say("emerge-usual", &args))
    }
}

/// Whether a temperature in degrees Celsius can be that of soil or of a room with seed in it.
pub(super) fn is_believed(celsius: f64) -> bool {
    let (low, high) = BELIEVED_C;
    celsius.is_finite() && (low..=high).contains(&whole(celsius))
}

/// A temperature that is not believed, and the bounds.
pub(super) fn bounds(voice: &Voice, celsius: f64) -> Args {
    let (low, high) = BELIEVED_C;
    args()
        .text("at", voice.measured_temperature(celsius))
        .text("low", voice.measured_temperature(degrees(low)))
        .text("high", voice.measured_temperature(degrees(high)))
}

/// What the trials say of the crop at this temperature, in a sentence.
pub(super) fn told_by_trials(speech: &Speech, crop: &Crop, soil_c: f64) -> String {
    let voice = &speech.voice;
    let about = speech.about(&crop.id).text("at", voice.measured_temperature(soil_c));
    match days_to_emerge(&crop.id, soil_c) {
        Emergence::Days(days) => {
            voice.say("emerge-days", &about.text("days", voice.about_days(days)))
        }
        Emergence::NotAtAll(Side::TooCold) => voice.say("emerge-none-cold", &about),
        Emergence::NotAtAll(Side::TooHot) => voice.say("emerge-none-hot", &about),
        Emergence::Uncertain { side, none_at_c, counted_at_c, days } => {
            let about = about
                .text("none", voice.measured_temperature(degrees(none_at_c)))
                .text("counted", voice.measured_temperature(degrees(counted_at_c)))
                .text("days", voice.about_days(days));
            match side {
                Side::TooCold => voice.say("emerge-uncertain-cold", &about),
                Side::TooHot => voice.say("emerge-uncertain-hot", &about),
            }
        }
        Emergence::NotTested => voice.say("emerge-not-tested", &about),
        Emergence::NoTable => voice.say("emerge-no-table", &about),
    }
}

/// Over three weeks, on the cold side of the quickest temperature or on the hot one.
pub(super) fn too_slow(speech: &Speech, side: Side) -> String {
    match side {
        Side::TooCold => speech.plain("emerge-too-slow-cold"),
        Side::TooHot => speech.plain("emerge-too-slow-hot"),
    }
}

/// The nearest whole number.
#[expect(clippy::cast_possible_truncation, reason = "the cast keeps to the range of i64")]
pub(super) fn whole(celsius: f64) -> i64 {
    celsius.round() as i64
}

/// Whole degrees Celsius.
#[expect(clippy::cast_precision_loss, reason = "soil temperatures are two-digit numbers")]
pub(super) fn degrees(celsius: i64) -> f64 {
    celsius as f64
}

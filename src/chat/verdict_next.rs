//! What a verdict leads to: the next thing to do, with what care, and what else there is.

use chrono::NaiveDate;

use crate::planning::{Disturbance, StartAgain, Step, Verdict, Window, assess, start_again};
use crate::reminders::instead_text;

use super::too_short_text::TooShort;
use super::verdict_text::Telling;

impl Telling<'_> {
    /// The next thing to do.
    pub(super) fn next(&self) -> Vec<String> {
        let voice = &self.speech.voice;
        let mut lines = Vec::new();
        let Ok(verdict) = self.assessment.verdict else {
            lines.extend(self.other_step());
            return lines;
        };
        if let Some(window) = self.assessment.window {
            let span = |w: &Window| voice.range(w.ideal_from, w.ideal_to);
            match verdict {
                Verdict::TooEarly if window.ideal_from < window.ideal_to => {
                    let args = self.args().text("days", span(&window));
                    lines.push(voice.say("next-best-days", &args));
                }
                Verdict::Early => lines.extend(self.care(&window)),
                Verdict::OnTime => {
                    let args = self
                        .args()
                        .text("until", self.date(window.ideal_to))
                        .text("last", self.date(window.to));
                    let key_same = window.to <= window.ideal_to;
                    lines.push(if key_same {
                        voice.say("next-good-until-only", &args)
                    } else {
                        voice.say("next-good-until", &args)
                    });
                    lines.extend(self.how_in_short());
                }
                Verdict::Late => {
                    let args = self.args().text("last", self.date(window.to));
                    lines.push(voice.say("next-last-day", &args));
                }
                Verdict::TooEarly | Verdict::TooLate => {}
            }
        }
        if self.assessment.both {
            if let Some(from) = self.step_opens(Step::SowOutdoors) {
                let args = self.args().text("from", self.date(from));
                lines.push(voice.say("next-both", &args));
            }
        } else if self.assessment.better_outdoors
            && self.assessment.step == Step::SowIndoors
            && verdict != Verdict::TooLate
        {
            lines.extend(self.other_step());
        }
        if verdict == Verdict::TooLate {
            lines.extend(self.instead());
        }
        lines
    }

    /// What an early start asks for.
    fn care(&self, window: &Window) -> Option<String> {
        let voice = &self.speech.voice;
        let args = self.args().text("next", self.date(window.ideal_from));
        Some(match self.assessment.step {
            Step::SowIndoors => {
                let indoors = self.crop.indoors.as_ref()?;
                let potting_up = indoors.stay_weeks.potted_up.is_some();
                match (potting_up, self.crop.disturbance) {
                    (true, _) => voice.say("care-pot-up", &args),
                    (false, Disturbance::Resents) => voice.say("care-own-cell", &args),
                    (false, Disturbance::Tolerates) => voice.say("care-light", &args),
                }
            }
            Step::SowOutdoors => voice.say("care-cover-sowing", &args),
            Step::PlantOut if self.crop.ways.is_empty() => voice.say("care-cover-planting", &args),
            Step::PlantOut => voice.say("care-cover", &args),
            Step::HardenOff | Step::PotUp => voice.say("care-harden-off", &args),
            _ => return None,
        })
    }

    /// Depth, warmth and days to come up, in a line.
    fn how_in_short(&self) -> Option<String> {
        let voice = &self.speech.voice;
        let seed = &self.crop.seed;
        match self.assessment.step {
            Step::SowIndoors | Step::SowOutdoors => {
                let depth = seed.depth_mm.as_ref()?.is;
                let emerge = seed.emerge_days.as_ref()?.is;
                let place = self.garden.place.filter(|_| self.assessment.step == Step::SowIndoors);
                let emerge = place.map_or(emerge, |place| place.emerge_days(emerge));
                let soil = seed.soil_c.as_ref()?;
                let args = self
                    .args()
                    .text("depth", voice.length_range_mm(depth.low, depth.high))
                    .text("warmth", voice.temperature_range(soil.optimum.low, soil.optimum.high))
                    .text("days", voice.days_range(emerge.low, emerge.high));
                Some(if depth.high == 0 {
                    voice.say("how-short-surface", &args)
                } else {
                    voice.say("how-short", &args)
                })
            }
            Step::PlantOut => {
                let plants = self.crop.outdoors.spacing_cm.plants * 10;
                let args = self.args().text("apart", voice.length_mm(plants));
                Some(voice.say("how-short-spacing", &args))
            }
            _ => None,
        }
    }

    /// Where a step never applies or sowing in place is better: that other step's dates.
    fn other_step(&self) -> Option<String> {
        let voice = &self.speech.voice;
        let step = match self.assessment.step {
            Step::SowIndoors if !self.assessment.windows.sow_outdoors.is_empty() => {
                Step::SowOutdoors
            }
            Step::SowOutdoors if !self.assessment.windows.sow_indoors.is_empty() => {
                Step::SowIndoors
            }
            Step::PlantOut | Step::HardenOff | Step::PotUp
                if !self.assessment.windows.sow_outdoors.is_empty()
                    && self.crop.indoors.is_none() =>
            {
                Step::SowOutdoors
            }
            Step::SowIndoors | Step::SowOutdoors => Step::PlantOut,
            _ => return None,
        };
        let other = assess(self.crop, self.garden, step, self.assessment.on);
        let what = self.speech.step_phrase(step, self.crop);
        let window = other.window?;
        let args = self
            .args()
            .text("what", &what)
            .text("from", self.date(window.ideal_from))
            .text("until", self.date(window.to));
        // A way that works or will work is not spoken of as if there were but the other.
        let better = self.assessment.verdict.is_ok();
        Some(match other.verdict()? {
            Verdict::TooEarly if better => voice.say("better-from", &args),
            Verdict::Early | Verdict::OnTime | Verdict::Late if better => {
                voice.say("better-now", &args)
            }
            Verdict::TooEarly => voice.say("other-from", &args),
            Verdict::Early | Verdict::OnTime | Verdict::Late => voice.say("other-now", &args),
            Verdict::TooLate => {
                voice.say("other-from", &args.text("from", self.date(other.next_date?)))
            }
        })
    }

    /// What to do instead of what is too late.
    fn instead(&self) -> Vec<String> {
        let voice = &self.speech.voice;
        let mut lines: Vec<String> = self.another_start().into_iter().collect();
        if let Some(next) = self.assessment.next_date {
            let args = self.args().text("next", self.date(next));
            lines.push(if self.another_this_season() {
                voice.say("instead-autumn", &args)
            } else {
                voice.say("instead-next-season", &args)
            });
        } else {
            lines.push(self.too_short().helps());
        }
        lines
    }

    pub(super) fn too_short(&self) -> TooShort<'_> {
        let season = self.assessment.season;
        TooShort { crop: self.crop, season, on: self.assessment.on, speech: self.speech }
    }

    /// Another start of the crop that was missed.
    fn another_start(&self) -> Option<String> {
        let on = self.assessment.on;
        let missed = match self.assessment.step {
            Step::PlantOut => return None,
            step if step.is_sowing() => step,
            _ => Step::SowIndoors,
        };
        match start_again(self.crop, self.garden, missed, on) {
            StartAgain::Now(Step::SowOutdoors, until) => {
                let args = self.args().text("until", self.date(until));
                Some(self.speech.voice.say("instead-sow-outdoors", &args))
            }
            // Who asks of hardening off has sown already.
            StartAgain::Now(Step::SowIndoors, _) | StartAgain::From(Step::SowIndoors, _)
                if missed == Step::SowIndoors =>
            {
                None
            }
            // The next day for it stands below.
            StartAgain::TooLate(_) | StartAgain::NotKnown => None,
            again => instead_text(self.crop, missed, again, self.speech, on),
        }
    }

    fn step_opens(&self, step: Step) -> Option<NaiveDate> {
        let windows = self.assessment.windows.of(step);
        let window = windows.iter().find(|window| window.to >= self.assessment.on)?;
        Some(window.ideal_from.max(self.assessment.on))
    }
}

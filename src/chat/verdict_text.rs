//! A verdict in words: the verdict first, and why in numbers.

use chrono::{Datelike, NaiveDate};

use crate::planning::{
    Assessment, Basis, Crop, Frost, Garden, HarvestKind, Label, Reason, Ripening, Step, Verdict,
    oldest_weeks, ripening_of,
};
use crate::wording::{Args, Speech, args, sentence};

use super::caution_text::caution_lines;
use super::place_text::{cover_line, place_line};
use super::too_short_text::needs_cold;

/// What a verdict is told about.
pub(super) struct Telling<'a> {
    pub speech: &'a Speech,
    pub garden: Garden,
    pub crop: &'a Crop,
    pub assessment: &'a Assessment,
    /// Whether the day asked about is today.
    pub today: bool,
}

impl Telling<'_> {
    /// The whole answer: one paragraph each for verdict and reason, the next step, and cautions.
    pub(super) fn whole(&self) -> String {
        if let Some(until) = self.held_until() {
            let date = args().text("date", self.date(until));
            let what = self.speech.step_phrase(self.assessment.step, self.crop);
            let wait = self.args().text("what", what).text("next", self.date(until));
            let voice = &self.speech.voice;
            return [voice.say("verdict-too-early", &wait), voice.say("now-held", &date)]
                .join("\n");
        }
        let mut lines = vec![sentence(&self.head())];
        lines.extend(self.why());
        lines.extend(cover_line(self.crop, self.garden, self.assessment, self.speech));
        lines.extend(self.next());
        lines.extend(place_line(self.crop, self.garden, self.assessment, self.speech));
        if self.assessment.verdict().is_some_and(Verdict::workable) {
            lines.extend(caution_lines(self.crop, self.assessment.step, self.speech));
        }
        lines.join("\n")
    }

    /// The end of the cold spell, where it keeps from doing on the day what could be done else.
    fn held_until(&self) -> Option<NaiveDate> {
        let waits = matches!(self.assessment.step, Step::HardenOff | Step::PlantOut)
            && self.label() != Label::Overwintering;
        let could = self.assessment.verdict().is_some_and(Verdict::workable);
        let hold = self.garden.hold.filter(|_| waits && could)?;
        hold.holds_on(self.assessment.on).then(|| hold.until())
    }

    /// The answer in one line, for a question about several crops.
    pub(super) fn short(&self) -> String {
        let voice = &self.speech.voice;
        let what = sentence(&self.speech.step_phrase(self.assessment.step, self.crop));
        let date = |date: Option<NaiveDate>| date.map_or_else(String::new, |d| self.date(d));
        let args = self.args().text("what", &what).text("next", date(self.assessment.next_date));
        if let Some(until) = self.held_until() {
            return voice.say("short-too-early", &args.text("next", self.date(until)));
        }
        match self.assessment.verdict {
            Ok(Verdict::TooEarly) => voice.say("short-too-early", &args),
            Ok(Verdict::Early) => voice.say("short-early", &args),
            Ok(Verdict::OnTime) => {
                let good = self.assessment.window.map(|w| w.ideal_to);
                voice.say("short-on-time", &args.text("until", date(good)))
            }
            Ok(Verdict::Late) => voice.say("short-late", &args),
            Ok(Verdict::TooLate) if self.assessment.next_date.is_none() => {
                voice.say("short-too-late-for-good", &args)
            }
            Ok(Verdict::TooLate) => voice.say("short-too-late", &args),
            Err(_) => sentence(&self.head()),
        }
    }

    /// The verdict alone.
    fn head(&self) -> String {
        let voice = &self.speech.voice;
        let assessment = self.assessment;
        let args = self.args();
        let args = match assessment.next_date {
            Some(next) => args.text("next", self.date(next)),
            None => args.text("next", ""),
        };
        let verdict = match assessment.verdict {
            Ok(verdict) => verdict,
            Err(Reason::NoFrostHere) => return voice.say("reason-no-frost-here", &args),
            Err(Reason::NotFromSeed) => return voice.say("reason-not-from-seed", &args),
            Err(Reason::NeverThisWay) => {
                return match assessment.step {
                    Step::SowIndoors => voice.say("reason-never-sown-indoors", &args),
                    Step::SowOutdoors => voice.say("reason-never-sown-outdoors", &args),
                    Step::PotUp => voice.say("reason-never-potted-up", &args),
                    _ => voice.say("reason-never-set-out", &args),
                };
            }
        };
        let what = self.speech.step_phrase(assessment.step, self.crop);
        let args = args.text("what", &what);
        if self.second_best() {
            return voice.say("verdict-second-best", &args);
        }
        match verdict {
            Verdict::TooEarly => voice.say("verdict-too-early", &args),
            Verdict::Early => voice.say("verdict-early", &args),
            Verdict::OnTime if assessment.step == Step::PlantOut && self.crop.frost_kills() => {
                let nights = voice.temperature(self.crop.coldest_night_c());
                voice.say("verdict-on-time-when-nights-allow", &args.text("nights", &nights))
            }
            Verdict::OnTime => voice.say("verdict-on-time", &args),
            Verdict::Late => voice.say("verdict-late", &args),
            Verdict::TooLate if assessment.windows.season_too_short => self.too_short().verdict(),
            Verdict::TooLate => match self.label() {
                Label::Spring if self.another_this_season() => {
                    voice.say("verdict-too-late-for-spring", &args)
                }
                Label::Spring | Label::Autumn | Label::Overwintering => {
                    voice.say("verdict-too-late", &args)
                }
            },
        }
    }

    /// Whether it can be done, while sowing in place is the better way.
    fn second_best(&self) -> bool {
        let workable = self.assessment.verdict().is_some_and(Verdict::workable);
        workable && self.assessment.step == Step::SowIndoors && self.assessment.better_outdoors
    }

    /// The reason in numbers.
    pub(super) fn why(&self) -> Option<String> {
        let verdict = match self.assessment.verdict {
            Ok(verdict) => verdict,
            Err(Reason::NoFrostHere) => return Some(self.speech.plain("why-no-frost")),
            Err(_) => return None,
        };
        if let Some(why) = self.why_months(verdict) {
            return Some(why);
        }
        let first = match (self.assessment.step, verdict) {
            (_, Verdict::TooLate) => self.why_too_late(),
            (_, Verdict::Late) => self.why_late(),
            (Step::SowIndoors, _) => self.why_age(verdict),
            (Step::SowOutdoors, _) => self.why_soil(verdict),
            (Step::PlantOut, _) => self.why_cold(verdict),
            (Step::HardenOff, _) => {
                let nights = self.speech.voice.temperature(self.crop.hardening_night_c());
                Some(self.speech.voice.say("why-harden-off", &self.args().text("nights", &nights)))
            }
            (Step::PotUp, _) => Some(self.speech.plain("why-pot-up")),
            _ => None,
        };
        let frost = self.frost_sentence(verdict);
        let parts: Vec<String> = first.into_iter().chain(frost).collect();
        (!parts.is_empty()).then(|| parts.join(" "))
    }

    /// Where no frost decides, what the hot and the wet months say.
    fn why_months(&self, verdict: Verdict) -> Option<String> {
        if matches!(self.assessment.step, Step::PotUp | Step::HardenOff) {
            return None;
        }
        let voice = &self.speech.voice;
        let season = self.assessment.season?;
        let dry = season.dry?;
        let args = self
            .args()
            .text("starts", self.date(season.last_frost))
            .text("heat", self.date(dry.heat))
            .text("coolest", self.date(dry.coolest_to));
        let bears_heat = self.crop.outdoors.bears_heat;
        let ended = self.assessment.window.map(|window| self.date(window.to));
        let counted = match (verdict, ended) {
            // What lacks is cold, and no time.
            (Verdict::TooLate, _) if needs_cold(self.crop) => return None,
            (Verdict::TooLate, _) if self.assessment.windows.season_too_short => {
                return Some(if dry.by_rain {
                    voice.say("why-months-short-rain", &args)
                } else {
                    voice.say("why-months-short", &args)
                });
            }
            (Verdict::TooLate, Some(ended)) if !bears_heat => {
                let args = args.text("ended", ended);
                return Some(if dry.by_rain {
                    voice.say("why-months-too-late-rain", &args)
                } else {
                    voice.say("why-months-too-late", &args)
                });
            }
            (Verdict::TooLate | Verdict::Late, _) => return None,
            _ if bears_heat => voice.say("why-months-bears-heat", &args),
            _ if dry.by_rain => voice.say("why-months-rain", &args),
            _ => voice.say("why-months", &args),
        };
        let age = (self.assessment.step == Step::SowIndoors).then(|| self.why_age(verdict));
        Some(age.flatten().map_or(counted.clone(), |age| format!("{age} {counted}")))
    }

    fn why_age(&self, verdict: Verdict) -> Option<String> {
        let voice = &self.speech.voice;
        let age = &self.crop.indoors.as_ref()?.age_weeks;
        let set_out = self.assessment.set_out?;
        let args = self
            .args()
            .text("age", voice.weeks(self.assessment.age_days()?))
            .text("setout", self.date(set_out))
            .text("best", voice.weeks_range(7 * age.ideal.low, 7 * age.ideal.high))
            .text("most", voice.weeks(oldest_weeks(age, self.garden.place) * 7));
        Some(match verdict {
            Verdict::TooEarly => voice.say("why-too-old", &args),
            _ => voice.say("why-age", &args),
        })
    }

    fn why_soil(&self, verdict: Verdict) -> Option<String> {
        let voice = &self.speech.voice;
        let soil = self.crop.seed.soil_c.as_ref()?;
        let args = self
            .args()
            .text("minimum", voice.temperature(soil.minimum))
            .text("best", voice.temperature_range(soil.optimum.low, soil.optimum.high));
        Some(match verdict {
            Verdict::TooEarly | Verdict::Early if self.label() == Label::Autumn => {
                voice.say("why-autumn-count", &args)
            }
            Verdict::TooEarly if self.label() == Label::Overwintering => {
                voice.say("why-summer-sowing", &args)
            }
            Verdict::TooEarly | Verdict::Early if self.crop.frost_kills() => {
                voice.say("why-cold-soil-and-frost", &args)
            }
            Verdict::TooEarly | Verdict::Early => voice.say("why-cold-soil", &args),
            _ => voice.say("why-soil-check", &args),
        })
    }

    fn why_cold(&self, verdict: Verdict) -> Option<String> {
        let voice = &self.speech.voice;
        let args = self
            .args()
            .text("nights", voice.temperature(self.crop.coldest_night_c()))
            .text("kills", voice.temperature(self.crop.killed_at_c()));
        match (verdict, self.label()) {
            (Verdict::TooEarly | Verdict::Early, Label::Spring) => {
                Some(voice.say("why-cold-nights", &args))
            }
            (Verdict::TooEarly, Label::Overwintering) if self.crop.ways.is_empty() => {
                Some(voice.say("why-autumn-planting", &args))
            }
            (_, Label::Autumn) => Some(voice.say("why-autumn-count", &args)),
            (Verdict::OnTime, _) if !self.crop.frost_kills() => {
                Some(voice.say("why-bears-cold", &args))
            }
            _ => None,
        }
    }

    fn why_late(&self) -> Option<String> {
        let voice = &self.speech.voice;
        let window = self.assessment.window?;
        let behind = self.assessment.on.signed_duration_since(window.ideal_to).num_days();
        let args = self
            .args()
            .text("ended", self.date(window.ideal_to))
            .text("behind", voice.weeks(behind));
        let cost = match self.crop.harvest.kind {
            _ if self.crop.crops_in_year > 1 => None,
            HarvestKind::Once => self.ripe().map(|ripe| {
                let ready = voice.range(ripe.first_early, ripe.first_late);
                let args = self.args().text("ready", ready).text("end", self.date(ripe.end));
                voice.say("cost-once", &args)
            }),
            HarvestKind::Continuing => Some(voice.say("cost-continuing", &args)),
            HarvestKind::Bloom => Some(voice.say("cost-bloom", &args)),
        };
        let late = voice.say("why-late", &args);
        Some(cost.map_or_else(|| late.clone(), |cost| format!("{late} {cost}")))
    }

    fn why_too_late(&self) -> Option<String> {
        let voice = &self.speech.voice;
        let season = self.assessment.season?;
        if self.assessment.windows.season_too_short {
            let first = season.first_frost?;
            let days = first.signed_duration_since(season.last_frost).num_days();
            let days = self.args().number("days", days).number("needs", self.crop.harvest.days.low);
            return Some(voice.say("why-season-too-short", &days));
        }
        if let Some(ripe) = self.ripe() {
            let args = self
                .args()
                .text("ready", self.date(ripe.first_late))
                .text("end", self.date(ripe.end));
            let frost_decides = ripe.first_late > ripe.end;
            let bloom = self.crop.harvest.kind == HarvestKind::Bloom;
            if frost_decides {
                return Some(if bloom {
                    voice.say("why-too-late-bloom", &args)
                } else {
                    voice.say("why-too-late-harvest", &args)
                });
            }
        }
        let ended = self.assessment.window.map(|window| window.to)?;
        let args = self.args().text("ended", self.date(ended));
        let heat = self.crop.spring_ends_weeks.is_some()
            || self.crop.outdoors.sow_weeks.as_ref().is_some_and(|sow| sow.latest.is_some());
        Some(match self.assessment.step {
            Step::HardenOff | Step::PotUp => voice.say("why-window-closed", &args),
            _ if heat && self.label() == Label::Spring => voice.say("why-heat", &args),
            _ => voice.say("why-window-closed", &args),
        })
    }

    /// What the numbers were counted from.
    fn frost_sentence(&self, verdict: Verdict) -> Option<String> {
        let voice = &self.speech.voice;
        let season = self.assessment.season?;
        let Frost::Dates(frost) = self.garden.frost else { return None };
        let from_autumn = self.assessment.window.is_some_and(|window| {
            window.label == Label::Autumn
                || (window.label == Label::Overwintering && self.crop.ways.is_empty())
        });
        if from_autumn {
            let first = season.first_frost?;
            return Some(voice.say("counted-first-frost", &args().text("frost", self.date(first))));
        }
        if matches!(verdict, Verdict::TooLate | Verdict::Late) {
            return None;
        }
        if let (Basis::Trusted, Some(trusted)) = (frost.basis(), season.trusted) {
            return Some(voice.say("counted-trusted", &args().text("frost", self.date(trusted))));
        }
        let args = args().text("frost", self.date(season.last_frost));
        Some(if self.assessment.step == Step::PlantOut && self.crop.frost_kills() {
            voice.say("counted-average-at-risk", &args.text("risk", self.date(season.ten_percent)))
        } else {
            voice.say("counted-average", &args)
        })
    }

    /// Whether the next window still belongs to the season that was missed.
    pub(super) fn another_this_season(&self) -> bool {
        let (Some(next), Some(season)) = (self.assessment.next_date, self.assessment.season) else {
            return false;
        };
        next <= season.end() && self.assessment.verdict() == Some(Verdict::TooLate)
    }

    fn ripe(&self) -> Option<Ripening> {
        ripening_of(self.crop, self.assessment)
    }

    fn label(&self) -> Label {
        self.assessment.window.map_or(Label::Spring, |window| window.label)
    }

    /// The crop and the day asked about: "now", or "on May 1".
    pub(super) fn args(&self) -> Args {
        let voice = &self.speech.voice;
        let when = if self.today {
            self.speech.plain("when-now")
        } else {
            voice.say("when-on", &args().text("date", self.date(self.assessment.on)))
        };
        self.speech.about(&self.crop.id).text("when", &when)
    }

    /// A date, with its year where that is not the year asked about.
    pub(super) fn date(&self, date: NaiveDate) -> String {
        if date.year() == self.assessment.on.year() {
            self.speech.voice.date(date)
        } else {
            self.speech.voice.date_with_year(date)
        }
    }
}

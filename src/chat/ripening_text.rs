//! Whether and when it ripens, in words: the verdict or the date first, then why, then what helps.

use chrono::{Datelike, NaiveDate};

use crate::planning::{
    CountedFrom, Crop, Garden, HarvestKind, Helps, Ripening, Ripens, Step, what_helps,
};
use crate::wording::{Args, Speech};

/// What is told of a crop's ripening.
pub(super) struct Ripe<'a> {
    pub crop: &'a Crop,
    pub reckoned: &'a Ripening,
    pub garden: Garden,
    pub speech: &'a Speech,
    /// Today at the asker's place.
    pub today: NaiveDate,
    /// Whether the question was when, so that the date comes first.
    pub when: bool,
    /// The day by which the harvest is asked for.
    pub by: Option<NaiveDate>,
}

/// How the first harvest lies to the day by which it was asked for.
#[derive(Clone, Copy, PartialEq, Eq)]
enum ByThen {
    NotAsked,
    Yes,
    /// The quick end does and the slow one does not.
    Perhaps,
    No,
}

impl Ripe<'_> {
    /// The whole answer.
    pub(super) fn text(&self) -> String {
        let mut lines = Vec::new();
        if self.dated() {
            lines.push(self.date_head());
        }
        if !self.dated() || self.reckoned.ripens != Ripens::Yes {
            lines.push(self.verdict());
        }
        lines.push(self.why());
        if self.reckoned.ripens != Ripens::Yes {
            lines.extend(self.helps());
        }
        lines.join("\n")
    }

    fn by_then(&self) -> ByThen {
        match self.by {
            None => ByThen::NotAsked,
            Some(by) if self.reckoned.first_late <= by => ByThen::Yes,
            Some(by) if self.reckoned.first_early <= by => ByThen::Perhaps,
            Some(_) => ByThen::No,
        }
    }

    /// Whether the date comes first.
    fn dated(&self) -> bool {
        self.when || matches!(self.by_then(), ByThen::Perhaps | ByThen::No)
    }

    fn args(&self) -> Args {
        let voice = &self.speech.voice;
        self.speech
            .about(&self.crop.id)
            .text("what", self.speech.step_phrase(self.reckoned.step, self.crop))
            .text("on", self.date(self.reckoned.on))
            .text("ready", self.ready())
            .text("end", voice.date(self.reckoned.end))
            .number("spare", self.reckoned.days_to_spare)
    }

    fn ready(&self) -> String {
        let (early, late) = (self.reckoned.first_early, self.reckoned.first_late);
        if early == late {
            self.speech.voice.date(early)
        } else {
            self.speech.voice.range(early, late)
        }
    }

    /// A date, with its year where that is not this year.
    fn date(&self, date: NaiveDate) -> String {
        if date.year() == self.today.year() {
            self.speech.voice.date(date)
        } else {
            self.speech.voice.date_with_year(date)
        }
    }

    fn blooms(&self) -> bool {
        self.crop.harvest.kind == HarvestKind::Bloom
    }

    fn date_head(&self) -> String {
        let voice = &self.speech.voice;
        let args = self.args();
        // Whoever asks when wants a day and no verdict on the one that was named.
        let late = self.by_then() == ByThen::No && !self.when;
        match (late, self.blooms()) {
            (true, false) => voice.say("ripens-not-by-then", &args),
            (true, true) => voice.say("blooms-not-by-then", &args),
            (false, false) => voice.say("ripens-when", &args),
            (false, true) => voice.say("blooms-when", &args),
        }
    }

    fn verdict(&self) -> String {
        let voice = &self.speech.voice;
        let args = self.args();
        let at_best = args.clone().number("spare", self.reckoned.days_to_spare_at_best());
        match (self.reckoned.ripens, self.blooms()) {
            (Ripens::Yes, false) => voice.say("ripens-yes", &args),
            (Ripens::Yes, true) => voice.say("blooms-yes", &args),
            (Ripens::Tight, false) => voice.say("ripens-tight", &at_best),
            (Ripens::Tight, true) => voice.say("blooms-tight", &at_best),
            (Ripens::No, false) => voice.say("ripens-no", &args),
            (Ripens::No, true) => voice.say("blooms-no", &args),
        }
    }

    /// From which start it counts, and what ends it.
    fn why(&self) -> String {
        let voice = &self.speech.voice;
        let args = self.args();
        let sure = self.reckoned.ripens == Ripens::Yes;
        let from = match (self.reckoned.recorded, sure, self.reckoned.step) {
            (true, _, Step::SowOutdoors) if self.reckoned.too_early => {
                let from = self.date(self.reckoned.counted_from);
                voice.say("ripens-sown-too-early", &args.clone().text("from", from))
            }
            (true, _, Step::SowOutdoors) => voice.say("ripens-sown-outdoors", &args),
            (true, _, _) => voice.say("ripens-sown-indoors", &args),
            (false, true, _) => return voice.say("ripens-why", &args),
            (false, false, _) if self.dated() => voice.say("ripens-if", &args),
            (false, false, _) => voice.say("ripens-why-short", &args),
        };
        if sure {
            return format!("{from} {}", voice.say("ripens-spare", &args));
        }
        let end = if self.reckoned.covered() {
            voice.say("ripens-end", &args)
        } else if self.reckoned.risk_end < self.reckoned.end {
            let risk = args.text("risk", voice.date(self.reckoned.risk_end));
            voice.say("ripens-end-at-risk", &risk)
        } else if self.reckoned.average_end > self.reckoned.end {
            voice.say("ripens-end-trusted", &args)
        } else {
            voice.say("ripens-end", &args)
        };
        if self.reckoned.recorded && !self.dated() {
            let count_on = voice.say("ripens-count-on", &self.args());
            return format!("{from} {count_on} {end}");
        }
        format!("{from} {end}")
    }

    fn helps(&self) -> Vec<String> {
        let voice = &self.speech.voice;
        let helps = what_helps(self.crop, self.garden, self.reckoned, self.today);
        let mut lines = Vec::new();
        let Helps { earlier, cover, days_at_most } = helps;
        if let Some((step, on)) = earlier {
            let what = self.speech.step_phrase(step, self.crop);
            let args = self.args().text("what", what).text("date", self.date(on));
            lines.push(if on > self.reckoned.on {
                voice.say("helps-next-year", &args)
            } else {
                voice.say("helps-earlier", &args)
            });
        }
        if let Some(days) = days_at_most {
            let args = self.args().number("days", days);
            lines.push(match self.crop.harvest.counted_from {
                CountedFrom::SettingOut => voice.say("helps-variety-from-setting-out", &args),
                CountedFrom::Sowing => voice.say("helps-variety-from-sowing", &args),
            });
        }
        if let Some(cover) = cover {
            let args = self
                .args()
                .text("fleece", voice.temperature(cover.fleece_c))
                .text("blanket", voice.temperature(cover.blanket_c));
            lines.push(voice.say("helps-cover", &args));
        }
        if lines.is_empty() {
            return vec![self.speech.plain("helps-nothing")];
        }
        lines.insert(0, self.speech.plain("helps-head"));
        lines
    }
}

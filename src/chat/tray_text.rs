//! Trays in words: what stands where, and why.

use chrono::{Datelike, NaiveDate, TimeDelta};

use crate::planning::{
    CropId, DAYS_AHEAD, LeftOut, Light, NoTray, PotUp, Seedling, Standing, Tray, TrayPlan, Vigour,
    may_share_a_tray,
};
use crate::wording::{Args, Speech, args, sentence};

/// How a plan of trays, made on `today`, is told.
pub struct TrayTelling<'a> {
    /// How the reader is spoken to.
    pub speech: &'a Speech,
    /// The day the trays are laid out for.
    pub today: NaiveDate,
}

impl TrayTelling<'_> {
    /// The whole plan: a block for each tray, trays that are alike together; then what is potted
    /// up, and what has no place.
    #[must_use]
    pub fn text(&self, plan: &TrayPlan<'_>) -> String {
        let mut lines = self.trays(plan);
        lines.extend(self.left_out(&plan.left_out));
        lines.join("\n")
    }

    /// The trays and what is potted up, or that there is nothing to sow.
    pub(super) fn trays(&self, plan: &TrayPlan<'_>) -> Vec<String> {
        let voice = &self.speech.voice;
        if plan.trays.is_empty() {
            return vec![self.speech.plain("trays-none")];
        }
        let days = voice.range(self.today, self.today + TimeDelta::days(DAYS_AHEAD));
        let mut lines = vec![voice.say("trays-head", &args().text("days", days))];
        let mut number = 0;
        for alike in plan.trays.chunk_by(|one, other| one.crops == other.crops) {
            if let Some(tray) = alike.first() {
                lines.push(self.block(tray, number + 1, alike.len()));
            }
            number += alike.len();
        }
        lines.extend(self.all_to_pot_up(plan));
        lines
    }

    /// A line for each stretch and pot, with the crops that share it.
    fn all_to_pot_up(&self, plan: &TrayPlan<'_>) -> Vec<String> {
        let mut shared: Vec<(PotUp, Vec<&Seedling<'_>>)> = Vec::new();
        for (seedling, pot_up) in plan.to_pot_up() {
            match shared.iter_mut().find(|(other, _)| *other == pot_up) {
                Some((_, seedlings)) => seedlings.push(seedling),
                None => shared.push((pot_up, vec![seedling])),
            }
        }
        shared.into_iter().map(|(pot_up, crops)| self.pot_up(crops, pot_up)).collect()
    }

    /// "Tray 1, 48 cells of 1½ inches (heat 65–75 °F): tomatoes 12. Upright, out at 6–8 weeks."
    fn block(&self, tray: &Tray<'_>, first: usize, count: usize) -> String {
        let voice = &self.speech.voice;
        let crops: Vec<String> = tray.crops.iter().map(|one| self.with_cells(one)).collect();
        let warmth = tray.common.warmth_c.map(|best| {
            let best = voice.temperature_range(best.low, best.high);
            voice.say("tray-warmth", &args().text("best", best))
        });
        let like = voice.say("tray-like", &self.common(tray));
        let about = args()
            .number("cells", i64::from(tray.cell_tray.cells()))
            .text("size", voice.length_mm(tray.cell_tray.cell_mm))
            .text("warmth", warmth.unwrap_or_default())
            .text("crops", crops.join(", "))
            .text("like", like);
        let block = if count == 1 {
            voice.say("tray-line", &about.count("number", first))
        } else {
            let about = about.count("number", first).count("last", first + count - 1);
            voice.say("tray-line-several", &about)
        };
        match tray.common.light {
            Light::Light => format!("{block} {}", self.speech.plain("tray-light")),
            Light::Dark => format!("{block} {}", self.speech.plain("tray-dark")),
            Light::Either => block,
        }
    }

    fn with_cells(&self, standing: &Standing<'_>) -> String {
        let seedling = &standing.seedling;
        let about = args()
            .text("crops", self.speech.crops_of(&seedling.crop.id, seedling.variety))
            .number("cells", i64::from(standing.cells));
        let voice = &self.speech.voice;
        match seedling.better_from {
            Some(good) => voice.say("tray-crop-early", &about.text("date", self.date(good))),
            None if seedling.sow_on == self.today => voice.say("tray-crop", &about),
            None => voice.say("tray-crop-from", &about.text("date", self.date(seedling.sow_on))),
        }
    }

    /// What the crops of a tray have in common, as values for a message.
    fn common(&self, tray: &Tray<'_>) -> Args {
        let ages = tray.common.ideal_weeks;
        args()
            .text("vigour", vigour_key(tray.common.vigour))
            .text("age", self.speech.voice.weeks_range(7 * ages.low, 7 * ages.high))
    }

    /// Why the crops of a tray of `plan` stand together, or why one stands alone.
    #[must_use]
    pub fn tray_why(&self, plan: &TrayPlan<'_>, tray: &Tray<'_>) -> String {
        let voice = &self.speech.voice;
        let [alone] = tray.crops.as_slice() else {
            let days = tray.crops.iter().map(|one| one.seedling.leaves_on());
            let leave = match (days.clone().min(), days.max()) {
                (Some(first), Some(last)) if first < last => voice.range(first, last),
                (first, _) => first.map_or_else(String::new, |first| self.date(first)),
            };
            let about = self
                .common(tray)
                .text("leave", leave)
                .text("size", voice.length_mm(tray.cell_tray.cell_mm));
            return voice.say("tray-why-together", &about);
        };
        let others = plan.trays.iter().flat_map(|tray| &tray.crops);
        let has_company = others
            .map(|other| &other.seedling)
            .any(|other| !other.is_of(&alone.seedling) && may_share_a_tray(other, &alone.seedling));
        if has_company {
            self.speech.plain("tray-why-no-gain")
        } else {
            let vigour = args().text("vigour", vigour_key(tray.common.vigour));
            voice.say("tray-why-alone", &vigour)
        }
    }

    /// Why a crop stands in cells of this size now.
    #[must_use]
    pub fn crop_why(&self, seedling: &Seedling<'_>) -> String {
        let voice = &self.speech.voice;
        let about = args()
            .text("vigour", vigour_key(seedling.crop.vigour))
            .text("sow", self.date(seedling.sow_on))
            .text("age", voice.weeks(seedling.age_days()))
            .text("out", self.date(seedling.out_on))
            .text("size", voice.length_mm(seedling.cell_tray.cell_mm));
        let why = match seedling.pot_up {
            Some(pot_up) => {
                voice.say("tray-crop-why-pot-up", &about.text("by", self.date(pot_up.by)))
            }
            None => voice.say("tray-crop-why", &about),
        };
        match seedling.better_from {
            Some(good) => {
                let early = voice.say("tray-crop-why-early", &args().text("date", self.date(good)));
                format!("{why} {early}")
            }
            None => why,
        }
    }

    /// When crops are potted up, and into what.
    #[must_use]
    pub fn pot_up<'s, 'c: 's>(
        &self,
        seedlings: impl IntoIterator<Item = &'s Seedling<'c>>,
        pot_up: PotUp,
    ) -> String {
        let voice = &self.speech.voice;
        let days = voice.range(pot_up.from, pot_up.by);
        let names: Vec<String> = seedlings
            .into_iter()
            .map(|seedling| self.speech.crops_of(&seedling.crop.id, seedling.variety))
            .collect();
        let about = args().text("crops", voice.list_and(&names)).text("days", days);
        match pot_up.pot_mm {
            Some(mm) => voice.say("tray-pot-up", &about.text("pot", voice.length_mm(mm))),
            None => voice.say("tray-pot-up-plain", &about),
        }
    }

    /// A line for each crop without a place; those that frost does not rule share one.
    fn left_out(&self, left_out: &[LeftOut]) -> Vec<String> {
        let (no_frost, others): (Vec<&LeftOut>, Vec<&LeftOut>) =
            left_out.iter().partition(|one| one.reason == NoTray::NoFrostHere);
        let mut lines: Vec<String> =
            others.into_iter().map(|one| self.left_out_line(one)).collect();
        if !no_frost.is_empty() {
            lines.push(self.no_frost(no_frost.iter().map(|one| &one.crop)));
            lines.push(self.speech.plain("why-no-frost"));
        }
        lines
    }

    fn no_frost<'c>(&self, crops: impl IntoIterator<Item = &'c CropId>) -> String {
        self.speech.voice.say("reason-no-frost-here", &args().text("crops", self.plurals(crops)))
    }

    fn plurals<'i>(&self, crops: impl IntoIterator<Item = &'i CropId>) -> String {
        let names: Vec<String> =
            crops.into_iter().map(|id| self.speech.crops(id).to_owned()).collect();
        self.speech.voice.list_and(&names)
    }

    /// Why a crop has no place.
    #[must_use]
    pub fn left_out_line(&self, left_out: &LeftOut) -> String {
        let voice = &self.speech.voice;
        let crops = self.speech.crops_of(&left_out.crop, left_out.variety.as_deref());
        let about = args().text("crops", crops);
        let next = left_out.next.map(|next| self.date(next));
        sentence(&match (left_out.reason, next) {
            (NoTray::NeverThisWay, _) => voice.say("reason-never-sown-indoors", &about),
            (NoTray::NotFromSeed, _) => voice.say("reason-not-from-seed", &about),
            (NoTray::NoFrostHere, _) => self.no_frost([&left_out.crop]),
            (NoTray::TooEarly, next) => {
                voice.say("tray-too-early", &about.text("next", next.unwrap_or_default()))
            }
            (NoTray::TooLate, Some(next)) => voice.say("tray-too-late", &about.text("next", next)),
            (NoTray::TooLate, None) => voice.say("tray-too-late-for-good", &about),
        })
    }

    /// A date, with its year where that is not this year.
    pub(super) fn date(&self, date: NaiveDate) -> String {
        if date.year() == self.today.year() {
            self.speech.voice.date(date)
        } else {
            self.speech.voice.date_with_year(date)
        }
    }
}

/// The name by which messages choose their words for a vigour.
fn vigour_key(vigour: Vigour) -> &'static str {
    match vigour {
        Vigour::Small => "small",
        Vigour::Upright => "upright",
        Vigour::Sprawling => "sprawling",
    }
}

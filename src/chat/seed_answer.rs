//! Answers about seed: how many to sow, and what a germination test says.

use chrono::Datelike;

use crate::planning::{
    Crop, ENOUGH_TESTED, GerminationRate, GerminationTest, GerminationTestError, MOST_PER_CELL,
    MOST_PLANTS, MOST_TESTED, REPLACE_BELOW, RateBasis, SeedAdvice, USUAL_LOSSES, WANTED_CHANCE,
    estimated_rate,
};
use crate::wording::{args, sentence};

use super::answer::{Answer, Asked};
use super::figures::{Figures, SeedCountFigures, rounded_test};
use super::understand::{Figure, SeedAge};

/// The oldest seed, in years, that is believed.
const OLDEST_SEED: f64 = 100.0;

/// What the question says of the seed and the plants, once it has proved possible.
struct Order {
    plants: u32,
    per_cell: Option<u32>,
    age: Option<f64>,
    known: Option<GerminationRate>,
}

impl Asked<'_> {
    /// How many seeds to sow for the plants that are wanted.
    pub(super) fn how_many(&self) -> Answer {
        let order = match self.order() {
            Ok(order) => order,
            Err(text) => return Answer { text, ..Answer::default() },
        };
        let subjects = self.subjects();
        if subjects.is_empty() {
            let text = self.speech.plain("seed-which-crop");
            return Answer { text, ..Answer::default() };
        }
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for subject in &subjects {
            let crop = subject.crop.as_ref();
            let (text, figures) = self.count_for(crop, &order);
            parts.push(text);
            answer.figures.extend(figures.map(|figures| (crop.id.clone(), figures)));
            answer.keep(self.weigh(crop).into_iter().take(1).collect(), subject);
        }
        answer.text = parts.join("\n\n");
        answer
    }

    /// What the numbers of the question come to, or the sentence that says which is impossible.
    fn order(&self) -> Result<Order, String> {
        let given = &self.understood.quantities;
        let voice = &self.speech.voice;
        let written = |figure: Figure| voice.decimal(figure.value());
        let plants = given.plants.unwrap_or(Figure::of(0));
        let possible = |count: &u32| (1..=MOST_PLANTS).contains(count);
        let Some(wanted) = plants.count().filter(possible) else {
            let args = args().number("most", MOST_PLANTS.into()).text("written", written(plants));
            return Err(voice.say("seed-plants-range", &args));
        };
        let per_cell = match given.per_cell {
            None => None,
            Some(figure) => {
                let possible = |count: &u32| (1..=MOST_PER_CELL).contains(count);
                let args =
                    args().number("most", MOST_PER_CELL.into()).text("written", written(figure));
                let seeds = figure.count().filter(possible);
                Some(seeds.ok_or_else(|| voice.say("seed-per-cell-range", &args))?)
            }
        };
        let known = match (given.sprouted, given.percent) {
            (Some((sprouted, tested)), _) => {
                let test = self.test(sprouted, tested)?;
                let basis = RateBasis::Tested { sprouted: test.sprouted, tested: test.tested };
                Some(GerminationRate { rate: test.rate, basis })
            }
            (None, Some(percent)) if (1.0..=100.0).contains(&percent.value()) => {
                let rate = percent.value() / 100.0;
                Some(GerminationRate { rate, basis: RateBasis::Stated })
            }
            (None, Some(percent)) => {
                let args = args().text("written", written(percent));
                return Err(voice.say("seed-rate-range", &args));
            }
            (None, None) => None,
        };
        Ok(Order { plants: wanted, per_cell, age: self.seed_age()?, known })
    }

    /// The age of the seed in years, where it was given.
    fn seed_age(&self) -> Result<Option<f64>, String> {
        let voice = &self.speech.voice;
        let years = match self.understood.quantities.seed_age {
            None => return Ok(None),
            Some(SeedAge::Years(figure)) => figure.value(),
            Some(SeedAge::From(year)) if year > self.today.year() => {
                let args = args().text("year", year.to_string());
                return Err(voice.say("seed-year-ahead", &args));
            }
            Some(SeedAge::From(year)) => f64::from(self.today.year() - year),
        };
        if !(0.0..=OLDEST_SEED).contains(&years) {
            let args = args()
                .text("most", voice.decimal(OLDEST_SEED))
                .text("written", voice.decimal(years));
            return Err(voice.say("seed-age-range", &args));
        }
        Ok(Some(years))
    }

    fn count_for(&self, crop: &Crop, order: &Order) -> (String, Option<Figures>) {
        let voice = &self.speech.voice;
        let age = order.age.unwrap_or(0.0);
        let Some(rate) = order.known.or_else(|| estimated_rate(crop, age)) else {
            let text = voice.say("reason-not-from-seed", &self.speech.about(&crop.id));
            return (sentence(&text), None);
        };
        let per_cell = order.per_cell.or_else(|| crop.seeds_per_cell());
        // The order was held to the same bounds, so only weak seed is refused here.
        let Ok(count) = SeedCountFigures::reckoned(order.plants, per_cell, rate) else {
            return (self.too_weak(crop, rate, age), None);
        };
        let about = args()
            .text("crop", self.speech.crop(&crop.id))
            .number("plants", order.plants.into())
            .number("seeds", count.seeds.into());
        let mut lines = vec![voice.say("seed-count", &about)];
        if let Some(cells) = &count.in_cells {
            let args = args()
                .number("cells", cells.cells.into())
                .text("empty", voice.decimal(cells.empty_cells));
            lines.push(if cells.per_cell == 1 {
                voice.say("seed-cells-single", &args)
            } else {
                voice.say("seed-cells", &args.number("each", cells.per_cell.into()))
            });
        }
        let chance = args()
            .text("chance", voice.percent(WANTED_CHANCE))
            .text("losses", voice.percent(USUAL_LOSSES));
        lines.push(voice.say("seed-count-chance", &chance));
        lines.push(self.rate_text(crop, rate, age));
        if rate.rate < REPLACE_BELOW {
            let below = args().text("least", voice.percent(REPLACE_BELOW));
            lines.push(voice.say("seed-better-fresh", &below));
        }
        if rate.estimated() {
            let args = args().text("crop", self.speech.crop(&crop.id));
            lines.push(voice.say("seed-test-first", &args));
        }
        (lines.join("\n"), Some(Figures { seed_count: Some(count), ..Figures::default() }))
    }

    /// Where the rate comes from.
    fn rate_text(&self, crop: &Crop, rate: GerminationRate, age: f64) -> String {
        let voice = &self.speech.voice;
        let fresh = age <= 0.0;
        let percent = args().text("rate", voice.percent(rate.rate));
        let aged = |fresh_rate: f64| {
            percent
                .clone()
                .text("age", voice.years(age))
                .text("fresh", voice.percent(fresh_rate))
                .text("life", self.seed_life(crop))
        };
        let named = self.speech.crop(&crop.id);
        match rate.basis {
            RateBasis::Stated => voice.say("seed-rate-stated", &percent),
            RateBasis::Tested { sprouted, tested } => {
                let args =
                    percent.number("sprouted", sprouted.into()).number("tested", tested.into());
                voice.say("seed-rate-tested", &args)
            }
            RateBasis::Standard { .. } if fresh => voice.say("seed-rate-standard-fresh", &percent),
            RateBasis::Standard { fresh } => voice.say("seed-rate-standard-aged", &aged(fresh)),
            RateBasis::Assumed { .. } if fresh => {
                voice.say("seed-rate-assumed-fresh", &percent.text("crop", named))
            }
            RateBasis::Assumed { fresh } => {
                voice.say("seed-rate-assumed-aged", &aged(fresh).text("crop", named))
            }
        }
    }

    fn too_weak(&self, crop: &Crop, rate: GerminationRate, age: f64) -> String {
        let voice = &self.speech.voice;
        let args = args().text("crop", self.speech.crop(&crop.id));
        if rate.estimated() {
            let args = args.text("life", self.seed_life(crop)).text("age", voice.years(age));
            voice.say("seed-too-old", &args)
        } else {
            voice.say("seed-too-weak", &args.text("rate", voice.percent(rate.rate)))
        }
    }

    fn seed_life(&self, crop: &Crop) -> String {
        let years = crop.seed.life_years.as_ref().and_then(|life| u32::try_from(life.is).ok());
        self.speech.voice.years(f64::from(years.unwrap_or(0)))
    }

    /// What a germination test says of the seed.
    pub(super) fn germination_test(&self) -> Answer {
        let Some((sprouted, tested)) = self.understood.quantities.sprouted else {
            return Answer::default();
        };
        let test = match self.test(sprouted, tested) {
            Ok(test) => test,
            Err(text) => return Answer { text, ..Answer::default() },
        };
        let voice = &self.speech.voice;
        let args = args()
            .number("sprouted", test.sprouted.into())
            .number("tested", test.tested.into())
            .text("rate", voice.percent(test.rate))
            .text("low", voice.percent(test.low))
            .text("high", voice.percent(test.high));
        let subjects = self.subjects();
        let crops: Vec<&Crop> = subjects.iter().map(|subject| subject.crop.as_ref()).collect();
        let mut lines = vec![voice.say("test-result", &args), self.advice_text(&test, &crops)];
        if !test.enough_tested() {
            let enough = crate::wording::args().number("enough", ENOUGH_TESTED.into());
            lines.push(voice.say("test-too-few", &enough));
        }
        let mut answer = Answer { text: lines.join("\n"), ..Answer::default() };
        let figures = Figures { germination_test: Some(rounded_test(test)), ..Figures::default() };
        for subject in &subjects {
            let crop = subject.crop.as_ref();
            answer.figures.push((crop.id.clone(), figures));
            answer.keep(self.weigh(crop).into_iter().take(1).collect(), subject);
        }
        answer
    }

    fn advice_text(&self, test: &GerminationTest, crops: &[&Crop]) -> String {
        let voice = &self.speech.voice;
        match (test.advice, crops) {
            (SeedAdvice::Replace, _) => self.speech.plain("test-replace"),
            (SeedAdvice::SowThicker, _) => self.speech.plain("test-sow-thicker"),
            (SeedAdvice::SowByNumber, [crop]) => {
                let args = args()
                    .text("crop", self.speech.crop(&crop.id))
                    .number("sprouted", test.sprouted.into())
                    .number("tested", test.tested.into());
                voice.say("test-sow-by-number", &args)
            }
            (SeedAdvice::SowByNumber, _) => self.speech.plain("test-sow-by-number-plain"),
            (SeedAdvice::SowAsUsual, _) => self.speech.plain("test-sow-as-usual"),
        }
    }

    fn test(&self, sprouted: Figure, tested: Figure) -> Result<GerminationTest, String> {
        let voice = &self.speech.voice;
        let most = args().number("most", MOST_TESTED.into());
        let (Some(of), true) = (tested.count(), sprouted.value() >= 0.0) else {
            return Err(voice.say("test-range", &most));
        };
        let Some(sprouted) = sprouted.count() else {
            return Err(voice.say("test-range", &most));
        };
        GerminationTest::new(sprouted, of).map_err(|error| match error {
            GerminationTestError::Tested => voice.say("test-range", &most),
            GerminationTestError::MoreThanTested => {
                let args = args().number("sprouted", sprouted.into()).number("tested", of.into());
                voice.say("test-more-than-tested", &args)
            }
        })
    }
}

//! The club's week: what opens and what is about to close at the club's frost dates.

use std::fmt::Write;

use chrono::{Datelike, NaiveDate};

use super::due::never_pressed;
use crate::catalogue::Catalogue;
use crate::planning::{Crop, CropId, Frost, Garden, Job, JobBasis, Label, Season, Step, jobs};
use crate::wording::{Speech, args, sentence};

/// The most lines of each of the two parts; what is beyond them is counted.
const MOST_LINES: usize = 12;

/// How many members grow a crop.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Grown {
    /// The crop.
    pub crop: CropId,
    /// How many members of the club have it on their list, 1 or more.
    pub members: usize,
}

/// What a club's digest names, each job with how many members grow its crop.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ClubWeek {
    /// Whose good days begin in the days that the digest speaks of, the next first.
    pub opens: Vec<(Job, usize)>,
    /// Whose last good day lies among them, the next first; what opens and closes in one week
    /// stands here too.
    pub closes: Vec<(Job, usize)>,
}

impl ClubWeek {
    /// What the crops that are grown come to at the club's frost dates, from `from` to `to`.
    ///
    /// The dates are the season's alone: what single members did, skipped or recorded has no part
    /// in them. Of two ways of starting a crop only the better one is named, and setting out what
    /// frost kills is never named as about to close.
    #[must_use]
    pub fn of(
        grown: &[Grown],
        catalogue: &Catalogue,
        garden: Garden,
        from: NaiveDate,
        to: NaiveDate,
    ) -> Self {
        let Frost::Dates(frost) = garden.frost else { return Self::default() };
        let mut week = Self::default();
        for Grown { crop, members } in grown {
            let Some(crop) = catalogue.get(crop.as_str()) else { continue };
            let years = from.year() - 1..=to.year() + 1;
            let all = years.flat_map(|year| jobs(crop, &Season::of_year(frost, year)));
            // A cold spell that the club waits out moves its jobs too.
            let stands = |job| match garden.hold {
                Some(hold) => hold.stand(job, crop, from),
                None => Some(job),
            };
            for job in all.filter(for_all).filter_map(stands) {
                if (from..=to).contains(&job.window.ideal_to) && !never_pressed(crop, &job) {
                    week.closes.push((job.clone(), *members));
                }
                if (from..=to).contains(&job.window.ideal_from) {
                    week.opens.push((job, *members));
                }
            }
        }
        week.opens.sort_by_cached_key(|(job, _)| (job.window.ideal_from, job.key.clone()));
        week.opens.dedup_by(|one, other| one.0.key == other.0.key);
        week.closes.sort_by_cached_key(|(job, _)| (job.window.ideal_to, job.key.clone()));
        week.closes.dedup_by(|one, other| one.0.key == other.0.key);
        week
    }

    /// Whether there is nothing to say.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.opens.is_empty() && self.closes.is_empty()
    }

    /// The digest in words.
    #[must_use]
    pub fn text(
        &self,
        catalogue: &Catalogue,
        speech: &Speech,
        from: NaiveDate,
        to: NaiveDate,
    ) -> String {
        let voice = &speech.voice;
        let mut text = voice.say("digest-head", &args().text("days", voice.range(from, to)));
        if !self.opens.is_empty() {
            text.push_str("\n\n");
            text.push_str(&speech.plain("digest-opens"));
            let day = |job: &Job| {
                voice.say("digest-from", &args().text("date", voice.date(job.window.ideal_from)))
            };
            lines(&mut text, &self.opens, catalogue, speech, day);
        }
        if !self.closes.is_empty() {
            text.push_str("\n\n");
            text.push_str(&speech.plain("digest-closes"));
            let day = |job: &Job| {
                voice.say("digest-until", &args().text("date", voice.date(job.window.ideal_to)))
            };
            lines(&mut text, &self.closes, catalogue, speech, day);
        }
        let sets_out = |(job, _): &(Job, usize)| {
            let crop = catalogue.get(job.key.crop.as_str());
            job.key.step == Step::PlantOut && crop.is_some_and(Crop::frost_kills)
        };
        if self.opens.iter().take(MOST_LINES).any(sets_out) {
            text.push_str("\n\n");
            text.push_str(&speech.plain("morning-check-forecast"));
        }
        text.push_str("\n\n");
        text.push_str(&speech.plain("digest-foot"));
        text
    }
}

/// Whether a job of the season concerns a club as a whole: potting up follows from each member's
/// own sowing, and of two ways of starting the better one is enough.
fn for_all(job: &Job) -> bool {
    let offered = matches!(job.basis, JobBasis::Hedge | JobBasis::Repeat(_) | JobBasis::Sowing(_));
    job.better_way && !offered && job.key.step != Step::PotUp
}

fn lines(
    text: &mut String,
    named: &[(Job, usize)],
    catalogue: &Catalogue,
    speech: &Speech,
    day: impl Fn(&Job) -> String,
) {
    let voice = &speech.voice;
    for (job, members) in named.iter().take(MOST_LINES) {
        let Some(crop) = catalogue.get(job.key.crop.as_str()) else { continue };
        let what = sentence(&speech.step_phrase(job.key.step, crop));
        let what = match job.key.label {
            Label::Autumn => voice.say("job-for-autumn", &args().text("what", what)),
            Label::Spring | Label::Overwintering => what,
        };
        let line = args().text("what", what).text("when", day(job)).count("count", *members);
        let _ = write!(text, "\n{}", voice.say("digest-line", &line));
    }
    let more = named.len().saturating_sub(MOST_LINES);
    if more > 0 {
        let _ = write!(text, "\n{}", voice.say("digest-more", &args().count("count", more)));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::planning::Basis;

    fn garden() -> Garden {
        let day = |text: &str| Some(text.parse().expect("a month-day"));
        Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden")
    }

    fn week(crops: &[(&str, usize)], from: &str, to: &str) -> (Vec<String>, Vec<String>) {
        let catalogue = Catalogue::embedded().expect("the catalogue");
        let grown = crops
            .iter()
            .map(|(crop, members)| Grown { crop: CropId::new(*crop), members: *members });
        let grown: Vec<Grown> = grown.collect();
        let day = |text: &str| text.parse().expect("a date");
        let week = ClubWeek::of(&grown, &catalogue, garden(), day(from), day(to));
        let told = |jobs: &[(Job, usize)]| {
            jobs.iter().map(|(job, members)| format!("{} {members}", job.key)).collect()
        };
        (told(&week.opens), told(&week.closes))
    }

    #[test]
    fn it_names_what_opens_and_what_closes_in_its_days_and_nothing_else() {
        // Tomato: sown indoors from 27 March to 10 April; cucumber from 17 April to 1 May.
        let crops = [("tomato", 3), ("cucumber", 1)];
        assert_eq!(week(&crops, "2026-03-23", "2026-03-29").0, ["tomato.si.s.2026 3"]);
        assert_eq!(week(&crops, "2026-04-06", "2026-04-12").1, ["tomato.si.s.2026 3"]);
        assert_eq!(week(&crops, "2026-04-11", "2026-04-16"), (vec![], vec![]));
        assert_eq!(week(&crops, "2026-04-13", "2026-04-19").0, ["cucumber.si.s.2026 1"]);
        assert_eq!(week(&[("kelp", 2)], "2026-04-13", "2026-04-19"), (vec![], vec![]));
    }

    #[test]
    fn nobody_is_pressed_to_set_out_tender_plants() {
        // Tomatoes are set out from 22 to 29 May.
        let crops = [("tomato", 2)];
        let opens = week(&crops, "2026-05-18", "2026-05-24").0;
        assert_eq!(opens, ["tomato.po.s.2026 2"]);
        assert_eq!(week(&crops, "2026-05-25", "2026-05-31"), (vec![], vec![]));
    }
}

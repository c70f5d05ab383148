//! The answer to a question whether or when something ripens.

use crate::planning::{Assessment, Crop, Reason, Ripening, Verdict, ripening_of};

use super::answer::{Answer, Asked};
use super::lookup_text::when_text;
use super::own::Subject;
use super::ripening_text::Ripe;
use super::too_short_text::TooShort;
use super::verdict_text::Telling;
use crate::wording::sentence;

impl Asked<'_> {
    pub(super) fn will_it_ripen(&self) -> Answer {
        let mut answer = Answer::default();
        let mut parts = Vec::new();
        for subject in self.subjects() {
            let crop = subject.crop.as_ref();
            let tell = |subject: &Subject<'_>, reckoned: &Ripening| {
                let crop = subject.crop.as_ref();
                let (garden, speech, today) = (self.garden, self.speech, self.today);
                let (when, by) = (self.understood.asks_when, self.understood.ripe_by);
                let ripe = Ripe { crop, reckoned, garden, speech, today, when, by };
                self.reasoned(subject, ripe.text())
            };
            let of_sowings = self.of_sowings(&subject);
            if !of_sowings.is_empty() {
                parts.extend(of_sowings.iter().map(|(subject, ripe)| tell(subject, ripe)));
                answer.ripening.extend(of_sowings.into_iter().map(|(_, ripe)| (None, ripe)));
                continue;
            }
            let (weighed, wait) = self.start_that_ripens(crop);
            if let Some(first) = weighed.first() {
                let text = match ripening_of(crop, first) {
                    Some(ripe) => {
                        let text = tell(&subject, &ripe);
                        answer.ripening.push((Some(answer.assessments.len()), ripe));
                        text
                    }
                    None => self.reasoned(&subject, self.no_ripening_text(crop, first)),
                };
                parts.push(wait.into_iter().chain([text]).collect::<Vec<_>>().join("\n"));
            }
            answer.keep(weighed, &subject);
        }
        answer.text = parts.join("\n\n");
        answer
    }

    /// The start that is reckoned with: on the day that was asked about, or on its first good day
    /// where that day is too early for it, with the line that says so where somebody named the
    /// day. A harvest that is asked for in a later season has that season's start.
    fn start_that_ripens(&self, crop: &Crop) -> (Vec<Assessment>, Option<String>) {
        let weighed = self.weigh(crop);
        let Some(first) = weighed.first() else { return (weighed, None) };
        let in_time = |from| self.understood.ripe_by.is_some_and(|by| from < by);
        let from = match first.verdict() {
            Some(Verdict::TooEarly) => first.next_date,
            Some(Verdict::TooLate) => first.next_date.filter(|from| in_time(*from)),
            _ => None,
        };
        let Some(from) = from else { return (weighed, None) };
        let wait = self.understood.date_given.then(|| {
            let today = self.understood.on == self.today;
            let (speech, garden) = (self.speech, self.garden);
            Telling { speech, garden, crop, assessment: first, today }.short()
        });
        (self.weigh_on(crop, from), wait)
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
                when_text(crop, self.garden, weighed, None, self.speech)
            )
        } else if crop.crops_in_year > 1 {
            sentence(&voice.say("ripens-next-year", &about))
        } else if weighed.windows.season_too_short {
            let (season, on, speech) = (weighed.season, weighed.on, self.speech);
            TooShort { crop, season, on, speech }.verdict()
        } else {
            when_text(crop, self.garden, weighed, None, self.speech)
        }
    }
}

//! The flags that the one-shot commands share, read with one clear sentence for each mistake.

use chrono::{NaiveDate, Utc};
use chrono_tz::Tz;
use clap::Args;

use crate::catalogue::Catalogue;
use crate::chat::Knowledge;
use crate::club::{LanguageTag, Variety, as_grown};
use crate::planning::{Basis, Frost, Garden, HotAndWet, MonthDay, Months};
use crate::wording::{Speech, quoted};

/// What the user gave is wrong; the sentence names the mend.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct BadInput(pub String);

/// The garden and the day that a question or a plan is about.
#[derive(Debug, Args)]
pub struct GardenFlags {
    /// The day it is about, as YYYY-MM-DD; today in the zone by default.
    #[arg(long, value_name = "DATE")]
    on: Option<String>,
    /// The average last spring frost as MM-DD, or none.
    #[arg(long, value_name = "MM-DD|none")]
    last_frost: Option<String>,
    /// The average first autumn frost as MM-DD, or none.
    #[arg(long, value_name = "MM-DD|none")]
    first_frost: Option<String>,
    /// A variety's packet, the crop first, for example: "tomato Early Lantern: start indoors 6-8
    /// weeks before last frost, 75 days". May be given several times; of one crop the last one
    /// counts, and the others where they are named.
    #[arg(long, value_name = "TEXT")]
    packet: Vec<String>,
    /// In a garden without frost: the hot months, such as 6-9, or none.
    #[arg(long, value_name = "MONTHS")]
    hot: Option<String>,
    /// In a garden without frost: the wet months, such as 6-10, or none.
    #[arg(long, value_name = "MONTHS")]
    wet: Option<String>,
    /// Where seedlings are raised: windowsill, lights, heat-mat or greenhouse.
    #[arg(long, value_name = "PLACE")]
    place: Option<String>,
    /// What covers the beds: fleece, cold-frame or tunnel.
    #[arg(long, value_name = "COVER")]
    cover: Option<String>,
    /// The IANA time zone that decides which day is today.
    #[arg(long, value_name = "IANA", default_value = "UTC")]
    zone: String,
    /// The language of the answer, such as en or en-GB.
    #[arg(long, value_name = "TAG", default_value = "en")]
    language: String,
}

/// The flags, read.
pub(super) struct Read {
    pub today: NaiveDate,
    pub garden: Garden,
    pub language: LanguageTag,
    pub varieties: Vec<Variety>,
    /// The crops as those varieties are grown.
    pub catalogue: Catalogue,
}

impl GardenFlags {
    pub(super) fn read(&self, knowledge: &Knowledge) -> Result<Read, BadInput> {
        let last = frost("--last-frost", self.last_frost.as_deref(), "05-15")?;
        let first = frost("--first-frost", self.first_frost.as_deref(), "10-05")?;
        if let (Some(last), None) = (last, first) {
            return Err(BadInput(format!(
                "--first-frost none: a garden with a last frost ({last}) has a first frost too; \
                 give it as MM-DD, or none for both"
            )));
        }
        let garden = Garden::new(last, first, Basis::Average)
            .map_err(|error| BadInput(format!("--last-frost and --first-frost: {error}")))?;
        let garden = garden.with_months(self.months(garden)?).with(
            named("--place", self.place.as_deref(), "windowsill, lights, heat-mat or greenhouse")?,
            named("--cover", self.cover.as_deref(), "fleece, cold-frame or tunnel")?,
        );
        let zone: Tz = self.zone.parse().map_err(|_| {
            BadInput(format!(
                "--zone {}: there is no such time zone; give an IANA name such as America/Denver",
                self.zone
            ))
        })?;
        let today = match &self.on {
            Some(text) => date(text)?,
            None => Utc::now().with_timezone(&zone).date_naive(),
        };
        let language = language(&self.language, knowledge)?;
        let varieties = self.varieties(&language, knowledge)?;
        let catalogue = as_grown(&knowledge.catalogue, &varieties);
        let catalogue = catalogue.unwrap_or_else(|| knowledge.catalogue.clone());
        Ok(Read { today, garden, language, varieties, catalogue })
    }

    /// The varieties of the packets, numbered in their order.
    fn varieties(
        &self,
        language: &LanguageTag,
        knowledge: &Knowledge,
    ) -> Result<Vec<Variety>, BadInput> {
        let speech = knowledge.speech(language, language.units());
        let mut varieties: Vec<Variety> = Vec::new();
        for (text, id) in self.packet.iter().zip(1..) {
            let told = knowledge
                .read_variety(text, language, &speech)
                .map_err(|why| BadInput(format!("--packet {}: {why}", quoted(text))))?;
            varieties.retain(|other| !other.is(&told.crop, told.name.as_deref()));
            varieties.push(Variety { id, ..told });
        }
        Ok(varieties)
    }
}

impl GardenFlags {
    /// The hot and the wet months; a frost decides where there is one.
    fn months(&self, garden: Garden) -> Result<Option<HotAndWet>, BadInput> {
        let read = |flag: &str, text: Option<&str>| {
            let text = text.unwrap_or("none");
            text.parse::<Months>().map_err(|error| BadInput(format!("{flag}: {error}")))
        };
        if self.hot.is_none() && self.wet.is_none() {
            return Ok(None);
        }
        if garden.frost != Frost::Free {
            let frost = "--hot and --wet are for a garden without frost: leave them out, or give \
                         --last-frost none --first-frost none";
            return Err(BadInput(frost.to_owned()));
        }
        let hot = read("--hot", self.hot.as_deref())?;
        let wet = read("--wet", self.wet.as_deref())?;
        let months = HotAndWet::new(hot, wet);
        months.map(Some).map_err(|error| BadInput(format!("--hot and --wet: {error}")))
    }
}

impl Read {
    /// How the asker is spoken to.
    pub(super) fn speech(&self, knowledge: &Knowledge) -> Speech {
        knowledge.speech(&self.language, self.language.units())
    }
}

/// A date as YYYY-MM-DD, within the years for which planning makes sense.
pub(super) fn date(text: &str) -> Result<NaiveDate, BadInput> {
    let wrong = || {
        BadInput(format!(
            "--on {text}: that is not a date; write it as YYYY-MM-DD, for example 2026-04-22"
        ))
    };
    let date: NaiveDate = text.parse().map_err(|_| wrong())?;
    let year = chrono::Datelike::year(&date);
    if (1900..=2500).contains(&year) { Ok(date) } else { Err(wrong()) }
}

fn frost(flag: &str, text: Option<&str>, example: &str) -> Result<Option<MonthDay>, BadInput> {
    let Some(text) = text else {
        return Err(BadInput(format!(
            "{flag} is missing: give it as MM-DD, for example {flag} {example}, or as none"
        )));
    };
    if text.eq_ignore_ascii_case("none") {
        return Ok(None);
    }
    text.parse().map(Some).map_err(|error| BadInput(format!("{flag}: {error}, or none")))
}

/// A place or a cover; a hyphen and an underscore are the same here.
fn named<T: std::str::FromStr>(
    flag: &str,
    text: Option<&str>,
    choices: &str,
) -> Result<Option<T>, BadInput> {
    let Some(text) = text else { return Ok(None) };
    let plain = text.trim().to_lowercase().replace(['-', ' '], "_");
    let read = plain.parse().map(Some);
    read.map_err(|_| BadInput(format!("{flag} {text}: not known; choose {choices}")))
}

fn language(text: &str, knowledge: &Knowledge) -> Result<LanguageTag, BadInput> {
    let tag = text.parse::<LanguageTag>().ok();
    tag.filter(|tag| knowledge.speaks(tag)).ok_or_else(|| {
        let known: Vec<String> = knowledge.languages().iter().map(ToString::to_string).collect();
        BadInput(format!("--language {text}: not spoken yet; choose one of: {}", known.join(", ")))
    })
}

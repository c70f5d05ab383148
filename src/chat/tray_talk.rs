//! Talking about trays: `/trays`, and `/trays tomato 12, basil 6`.

use chrono::TimeDelta;

use crate::club::followed;
use crate::planning::{
    Crop, CropId, DAYS_AHEAD, Garden, LeftOut, MOST_CELLS, NoTray, Seedling, Step, USUAL_CELLS,
    Wanted, Way, lay_out,
};
use crate::reminders::coming_jobs;
use crate::wording::args;

use super::answer::unknown_name;
use super::crop_talk::frost_needed;
use super::desk::Desk;
use super::tray_list::{ListError, pieces};
use super::tray_text::TrayTelling;
use super::understand::OwnName;

/// `/trays`: the member's list, or the crops that follow with their cells.
pub(super) fn trays(desk: &mut Desk<'_>, rest: &str) {
    let text = match desk.garden() {
        None => frost_needed(desk),
        Some(garden) if garden.season_on(desk.today).is_none() => desk.say_key("now-no-frost"),
        Some(garden) if rest.trim().is_empty() => of_the_list(desk, garden),
        Some(garden) => of_these(desk, garden, rest),
    };
    desk.reply(text);
}

/// Trays for what the member named.
fn of_these(desk: &Desk<'_>, garden: Garden, written: &str) -> String {
    let most = i64::from(MOST_CELLS);
    let pieces = match pieces(written) {
        Ok(pieces) => pieces,
        Err(ListError::Count(count)) => {
            return desk
                .say("trays-bad-count", &args().text("written", count).number("most", most));
        }
        Err(ListError::NoCrop(count)) => {
            return desk.say("trays-no-crop", &args().text("written", count));
        }
        Err(ListError::TooLong) => return desk.say_key("trays-too-long"),
    };
    let mut wanted: Vec<Wanted<'_>> = Vec::new();
    let mut notes = Vec::new();
    for piece in pieces {
        let cells = piece.cells.unwrap_or(USUAL_CELLS);
        let (crops, unclear) = crops_named(desk, &piece.names);
        wanted.extend(crops.into_iter().map(|(crop, variety)| Wanted { crop, variety, cells }));
        notes.extend(unclear);
    }
    if wanted.is_empty() {
        if notes.is_empty() {
            notes.push(desk.say_key("trays-how-to"));
        }
        return notes.join("\n");
    }
    let mut lines = vec![telling(desk).text(&lay_out(&wanted, garden, desk.today))];
    lines.extend(notes);
    lines.join("\n")
}

/// A crop, and the name of the variety by whose packet it is grown, where it has one.
type Grown<'k> = (&'k Crop, Option<&'k str>);

/// A crop as the variety of this number is grown or, without one, the variety that is followed.
fn grown<'k>(desk: &Desk<'k>, id: &CropId, number: Option<i64>) -> Option<Grown<'k>> {
    let kept = &desk.facts.varieties;
    let named = kept.iter().find(|variety| Some(variety.id) == number);
    let variety = named.or_else(|| followed(kept, id));
    // In a group a crop is everybody's, and no packet counts.
    let name = variety.filter(|_| desk.in_private()).and_then(|variety| variety.name.as_deref());
    Some((desk.catalogue().variety(id.as_str(), name)?, name))
}

/// The crops that a piece of the list names, and what to say of the rest of it.
fn crops_named<'k>(desk: &Desk<'k>, names: &str) -> (Vec<Grown<'k>>, Vec<String>) {
    let own = OwnName::all(&desk.facts.varieties);
    let told = desk.tongue.understanding.sown_in_own(names, desk.today, &own);
    if told.varieties.iter().any(Option::is_some) && told.unknown.is_empty() {
        let crops = told.crops.iter().zip(&told.varieties);
        return (
            crops.filter_map(|((id, _), number)| grown(desk, id, *number)).collect(),
            Vec::new(),
        );
    }
    let list = desk.tongue.understanding.crops_in(names);
    let mut found = list.found;
    let mut notes = Vec::new();
    for word in &list.ambiguous {
        // A word with two meanings is clear when only one of them is on the member's list.
        let mine: Vec<&CropId> =
            word.means.iter().filter(|id| desk.facts.crops.contains(id)).collect();
        if let [only] = mine.as_slice() {
            found.push((*only).clone());
            continue;
        }
        let crops: Vec<String> =
            word.means.iter().map(|id| desk.speech.crops(id).to_owned()).collect();
        let crops = desk.speech.voice.list_or(&crops);
        let about = args().text("word", &word.word);
        match (&word.outside, word.means.as_slice()) {
            (Some(outside), [only]) => {
                found.push(only.clone());
                let about = about.text("crop", crops).text("outside", outside);
                notes.push(desk.say("which-or-outside", &about));
            }
            _ => notes.push(desk.say("trays-which", &about.text("crops", crops))),
        }
    }
    notes.extend(list.unknown.iter().map(|n| unknown_name(&n.written, &n.near, &desk.speech)));
    (found.iter().filter_map(|id| grown(desk, id, None)).collect(), notes)
}

/// Trays for the member's crops whose good days for sowing indoors begin within two weeks.
fn of_the_list(desk: &Desk<'_>, garden: Garden) -> String {
    let own = desk.own_crops();
    if own.is_empty() {
        return desk.say_key("trays-empty-list");
    }
    let soon = desk.today + TimeDelta::days(DAYS_AHEAD);
    let is_due = |crop: &&Crop| {
        coming_jobs([*crop], desk.known(), garden, desk.today)
            .iter()
            .any(|due| due.job.key.step == Step::SowIndoors && due.job.window.ideal_from <= soon)
    };
    let (due, others): (Vec<&Crop>, Vec<&Crop>) = own.into_iter().partition(is_due);
    let wanted: Vec<Wanted<'_>> = due
        .into_iter()
        .filter_map(|crop| grown(desk, &crop.id, None))
        .map(|(crop, variety)| Wanted { crop, variety, cells: USUAL_CELLS })
        .collect();
    let plan = lay_out(&wanted, garden, desk.today);
    let mut lines = if plan.trays.is_empty() {
        vec![desk.say_key("trays-none-of-list")]
    } else {
        telling(desk).trays(&plan)
    };
    let of_plan = plan.left_out.iter().filter_map(|left| desk.crop(&left.crop));
    let rest: Vec<(&Crop, Rest)> =
        of_plan.chain(others).map(|crop| (crop, Rest::of(desk, crop, garden))).collect();
    lines.extend(rest_lines(desk, &rest));
    lines.join("\n")
}

/// Why a crop of the member's list stands in no tray now.
enum Rest {
    /// It is sown or planted where it grows.
    InPlace,
    /// Its good days come later.
    NotYet(LeftOut),
    /// It is too late for a tray.
    TooLate,
    /// The member has sown it, or skips it.
    Settled,
}

impl Rest {
    fn of(desk: &Desk<'_>, crop: &Crop, garden: Garden) -> Self {
        let not_yet = |next| {
            Self::NotYet(LeftOut {
                crop: crop.id.clone(),
                variety: None,
                reason: NoTray::TooEarly,
                next,
            })
        };
        if crop.ways.first() != Some(&Way::Indoors) {
            return Self::InPlace;
        }
        match Seedling::due(crop, garden, desk.today) {
            Err(left_out) => match left_out.reason {
                NoTray::TooEarly => not_yet(left_out.next),
                NoTray::TooLate => Self::TooLate,
                _ => Self::InPlace,
            },
            Ok(Seedling { better_from: Some(good), .. }) => not_yet(Some(good)),
            Ok(_) => Self::Settled,
        }
    }
}

/// A line for each reason, with the crops that it holds for.
fn rest_lines(desk: &Desk<'_>, rest: &[(&Crop, Rest)]) -> Vec<String> {
    let named = |name: &dyn Fn(&Crop, &Rest) -> Option<String>| {
        let names: Vec<String> = rest.iter().filter_map(|(crop, why)| name(crop, why)).collect();
        (!names.is_empty()).then(|| args().text("crops", names.join(", ")))
    };
    let plain = |crop: &Crop| desk.speech.crop(&crop.id).to_owned();
    let not_yet = named(&|crop, why| match why {
        Rest::NotYet(LeftOut { next: Some(next), .. }) => {
            let about = args().text("crop", plain(crop)).text("date", desk.date(*next));
            Some(desk.say("tray-rest-from", &about))
        }
        Rest::NotYet(_) => Some(plain(crop)),
        _ => None,
    });
    let in_place = named(&|crop, why| matches!(why, Rest::InPlace).then(|| plain(crop)));
    let too_late = named(&|crop, why| matches!(why, Rest::TooLate).then(|| plain(crop)));
    let settled = named(&|crop, why| matches!(why, Rest::Settled).then(|| plain(crop)));
    [
        not_yet.map(|crops| desk.say("tray-rest-not-yet", &crops)),
        too_late.map(|crops| desk.say("tray-rest-too-late", &crops)),
        in_place.map(|crops| desk.say("tray-rest-in-place", &crops)),
        settled.map(|crops| desk.say("tray-rest-settled", &crops)),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn telling<'d>(desk: &'d Desk<'_>) -> TrayTelling<'d> {
    TrayTelling { speech: &desk.speech, today: desk.today }
}

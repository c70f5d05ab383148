//! The forms of the buttons, written and read.

use super::*;
use crate::planning::{Label, Step};

fn frost(basis: Basis, first: Option<(u32, u32)>) -> Option<Frost> {
    let day = |(month, day)| MonthDay::new(month, day).expect("a day");
    FrostDates::new(day((5, 15)), first.map(day), basis).ok().map(Frost::Dates)
}

fn job(crop: &str, step: Step, label: Label) -> JobKey {
    JobKey { crop: CropId::new(crop), step, label, season: 2026, sowing: None }
}

fn on() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 4, 22).expect("a date")
}

/// The forms about days on which messages come.
fn pinned_days() -> Vec<(Press, &'static str)> {
    vec![
        (Press::Quiet("67".parse().expect("days")), "qd:67"),
        (Press::Quiet(QuietDays::NONE), "qd:-"),
        (Press::AskQuiet, "QD"),
        (Press::Weekends(true), "we:y"),
        (Press::Weekends(false), "we:n"),
        (Press::AskHoliday, "HD"),
        (Press::HolidayOver, "hd"),
    ]
}

/// Every form that ever went out under a message; none may be changed or taken off.
#[expect(clippy::too_many_lines, reason = "a list that only grows")]
fn pinned() -> Vec<(Press, &'static str)> {
    let crop = || CropId::new("brussels_sprouts");
    vec![
        (
            Press::Job(job("tomato", Step::SowIndoors, Label::Spring), JobAnswer::Done),
            "j:d:tomato.si.s.2026",
        ),
        (
            Press::Job(job("kale", Step::SowOutdoors, Label::Autumn), JobAnswer::Later),
            "j:l:kale.so.a.2026",
        ),
        (
            Press::Job(job("garlic", Step::PlantOut, Label::Overwintering), JobAnswer::Skip),
            "j:s:garlic.po.o.2026",
        ),
        (
            Press::Job(job("pepper", Step::HardenOff, Label::Spring), JobAnswer::Undo),
            "j:u:pepper.ho.s.2026",
        ),
        (
            Press::Job(job("basil", Step::PotUp, Label::Spring), JobAnswer::Done),
            "j:d:basil.pu.s.2026",
        ),
        (
            Press::Job(
                JobKey { sowing: Some(17), ..job("tomato", Step::PlantOut, Label::Spring) },
                JobAnswer::Done,
            ),
            "j:d:tomato.po.s.2026.17",
        ),
        (
            Press::Job(
                JobKey { sowing: Some(17), ..job("pea", Step::Check, Label::Spring) },
                JobAnswer::NotUp,
            ),
            "j:n:pea.ck.s.2026.17",
        ),
        (
            Press::Job(job("dill", Step::Harvest, Label::Autumn), JobAnswer::Done),
            "j:d:dill.ha.a.2026",
        ),
        (Press::Job(job("okra", Step::Soak, Label::Spring), JobAnswer::Done), "j:d:okra.sk.s.2026"),
        (
            Press::Job(job("morning_glory", Step::Nick, Label::Spring), JobAnswer::Done),
            "j:d:morning_glory.ni.s.2026",
        ),
        (
            Press::Job(job("lavender", Step::Chill, Label::Spring), JobAnswer::Done),
            "j:d:lavender.cl.s.2026",
        ),
        (
            Press::Job(job("potato", Step::Chit, Label::Spring), JobAnswer::Done),
            "j:d:potato.ct.s.2026",
        ),
        (
            Press::Job(job("sweet_potato", Step::RootSlips, Label::Spring), JobAnswer::Done),
            "j:d:sweet_potato.rs.s.2026",
        ),
        (Press::Sowings(1), "S:1"),
        (Press::EndSowing(17, 1), "e:17:1"),
        (Press::SowAgain(17), "r:17"),
        (Press::SowingLost(17), "sl:17"),
        (Press::FollowVariety(17), "y:17"),
        (Press::DropVariety(17), "Y:17"),
        (Press::Undo(42), "U:42"),
        (Press::UndoOld(42), "uo:42"),
        (Press::PutBack(42), "pb:42"),
        (Press::Frost(Topic::Mine, None), "f:m:-"),
        (Press::Frost(Topic::Mine, Some(Frost::Free)), "f:m:n"),
        (Press::Frost(Topic::Club, frost(Basis::Average, Some((10, 5)))), "f:c:a05-15/10-05"),
        (Press::Frost(Topic::Mine, frost(Basis::Trusted, None)), "f:m:t05-15"),
        (Press::AskFrost(Topic::Club), "F:c"),
        (Press::Grow(crop()), "g:brussels_sprouts"),
        (Press::Drop(crop()), "d:brussels_sprouts"),
        (Press::Crops(2), "c:2"),
        (Press::Now(1, on()), "n:1:2026-04-22"),
        (Press::Meant(crop(), on()), "m:brussels_sprouts:2026-04-22"),
        (Press::Hour(ReminderTime::default()), "h:420"),
        (Press::AskHour, "H"),
        (
            Press::Zone(Topic::Mine, Tz::America__Argentina__ComodRivadavia),
            "z:m:America/Argentina/ComodRivadavia",
        ),
        (Press::AskZone(Topic::Mine), "Z:m"),
        (Press::Units(Units::Metric), "u:m"),
        (Press::Units(Units::Customary), "u:c"),
        (Press::Language(Topic::Club, "en-GB".to_owned()), "l:c:en-GB"),
        (Press::AskLanguage(Topic::Mine), "L:m"),
        (Press::Place(None), "p:-"),
        (Press::Place(Some(Place::Windowsill)), "p:w"),
        (Press::Place(Some(Place::Lights)), "p:l"),
        (Press::Place(Some(Place::HeatMat)), "p:h"),
        (Press::Place(Some(Place::Greenhouse)), "p:g"),
        (Press::Cover(None), "v:-"),
        (Press::Cover(Some(Cover::Fleece)), "v:f"),
        (Press::Cover(Some(Cover::ColdFrame)), "v:c"),
        (Press::Cover(Some(Cover::Tunnel)), "v:t"),
        (Press::AskPlace, "P"),
        (Press::Hold(Topic::Mine, None), "o:m:-"),
        (Press::Hold(Topic::Club, Hold::for_days(on(), 7).ok()), "o:c:2026-04-22/2026-04-29"),
        (Press::ReadOn(1234), "ro:1234"),
        (Press::Forget, "forget"),
        (Press::DoNotForget, "keep"),
        (Press::Settings, "s"),
        (Press::ClubPage, "C"),
    ]
}

/// The same, of lists and clubs.
fn pinned_of_clubs() -> Vec<(Press, &'static str)> {
    vec![
        (Press::Lists, "ls"),
        (Press::List(7), "li:7"),
        (Press::Subscribe(7), "l+:7"),
        (Press::Unsubscribe(7), "l-:7"),
        (Press::ReopenList(7), "lo:7"),
        (Press::DismissHelper(12), "dh:12"),
        (Press::WhichClub, "cw"),
        (Press::UseClub(3), "cu:3"),
    ]
}

#[test]
fn forms_that_went_out_stay_readable() {
    let all = pinned().into_iter().chain(pinned_days()).chain(pinned_of_clubs());
    for (press, text) in all {
        assert_eq!(press.to_string(), text);
        assert_eq!(text.parse(), Ok(press), "{text}");
        assert!(text.len() <= 64, "{text} is too long for a button");
    }
}

#[test]
fn no_crop_and_no_zone_is_too_long_for_a_button() {
    let catalogue = crate::catalogue::Catalogue::embedded().expect("the catalogue");
    for crop in catalogue.iter() {
        let key = job(crop.id.as_str(), Step::SowIndoors, Label::Overwintering);
        assert!(Press::Job(key, JobAnswer::Done).to_string().len() <= 64);
        assert!(Press::Meant(crop.id.clone(), on()).to_string().len() <= 64);
    }
    for zone in chrono_tz::TZ_VARIANTS {
        assert!(Press::Zone(Topic::Club, zone).to_string().len() <= 64, "{zone}");
    }
}

#[test]
fn anything_else_is_not_a_button() {
    for bad in [
        "",
        ":",
        "j",
        "j:x:tomato.si.s.2026",
        "j:d:tomato.si.s",
        "j:d:.si.s.2026",
        "j:d:tomato.si.s.2026.0",
        "j:d:tomato.si.s.2026.x",
        "j:d:tomato.si.s.2026.1.1",
        "U:x",
        "uo",
        "sl:",
        "pb:x",
        "e:17",
        "f:m:a13-01",
        "f:x:-",
        "c:-1",
        "c:99999",
        "n:1:2026-02-30",
        "h:1440",
        "z:m:Mars/Base",
        "u:k",
        "s:1",
        "ls:1",
        "li:",
        "l+:x",
        "dh",
        "dh:x",
        "H:1",
        "qd:",
        "qd:1234567",
        "we:x",
        "HD:1",
        "g:",
        "m:tomato",
        "ro:x",
        "forget:1",
    ] {
        assert_eq!(bad.parse::<Press>(), Err(PressError(bad.to_owned())), "{bad}");
    }
}

proptest::proptest! {
    #[test]
    fn no_text_upsets_it(text in ".{0,70}") {
        if let Ok(press) = text.parse::<Press>() {
            proptest::prop_assert_eq!(press.to_string().parse::<Press>(), Ok(press));
        }
    }
}

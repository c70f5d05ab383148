//! When a job is named, and when not.

use chrono::{Days, NaiveDate};

use super::{due_jobs, open_jobs};
use crate::catalogue::Catalogue;
use crate::club::{JobMark, Mark};
use crate::planning::{Basis, Garden, Hold, JobKey, Label, Step};

fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn garden() -> Garden {
    let day = |text: &str| Some(text.parse().expect("a month-day"));
    Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden")
}

fn key(crop: &str, step: Step) -> JobKey {
    JobKey { crop: crate::planning::CropId::new(crop), step, label: Label::Spring, season: 2026 }
}

/// A member who answers each reminder as told, morning by morning from `from` to `to`.
fn named(
    crop: &str,
    from: &str,
    to: &str,
    answers: impl FnMut(&JobKey, NaiveDate) -> Option<Mark>,
) -> Vec<(Step, NaiveDate)> {
    named_in(garden(), crop, from, to, answers)
}

fn named_in(
    garden: Garden,
    crop: &str,
    from: &str,
    to: &str,
    mut answers: impl FnMut(&JobKey, NaiveDate) -> Option<Mark>,
) -> Vec<(Step, NaiveDate)> {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    let crop = catalogue.get(crop).expect("listed");
    let mut marks: Vec<JobMark> = Vec::new();
    let mut named = Vec::new();
    let mut day = date(from);
    while day <= date(to) {
        for due in due_jobs([crop], &marks, garden, day) {
            let key = due.job.key;
            named.push((key.step, day));
            let before = marks.iter().position(|mark| mark.key == key);
            let kept = before.and_then(|at| marks[at].mark);
            if let Some(at) = before {
                marks.remove(at);
            }
            let mark = answers(&key, day).or(kept);
            marks.push(JobMark { key, mark, named_on: Some(day) });
        }
        day = day + Days::new(1);
    }
    named
}

fn days_of(named: &[(Step, NaiveDate)], step: Step) -> Vec<String> {
    named.iter().filter(|(s, _)| *s == step).map(|(_, day)| day.to_string()).collect()
}

#[test]
fn a_job_is_named_when_it_opens_in_the_middle_and_on_its_last_good_day() {
    // Tomato: good days 27 March to 10 April, seven days on either side of 3 April.
    let ignored = named("tomato", "2026-03-01", "2026-12-31", |_, _| None);
    assert_eq!(days_of(&ignored, Step::SowIndoors), ["2026-03-27", "2026-04-03", "2026-04-10"]);
}

#[test]
fn what_is_done_is_not_named_again_and_what_follows_is() {
    let done = named("tomato", "2026-03-01", "2026-12-31", |_, day| Some(Mark::Done(day)));
    assert_eq!(days_of(&done, Step::SowIndoors), ["2026-03-27"]);
    for step in [Step::PotUp, Step::HardenOff, Step::PlantOut] {
        assert_eq!(days_of(&done, step).len(), 1, "{step:?}");
    }
}

#[test]
fn what_is_skipped_ends_the_crop_for_the_season() {
    let skipped = named("tomato", "2026-03-01", "2026-12-31", |_, day| Some(Mark::Skipped(day)));
    assert_eq!(skipped.len(), 1, "{skipped:?}");
}

#[test]
fn what_is_put_off_comes_back_on_its_day_and_on_the_days_it_would_have() {
    let mut put_off = false;
    let later = named("tomato", "2026-03-01", "2026-12-31", |key, day| {
        let first = key.step == Step::SowIndoors && !std::mem::replace(&mut put_off, true);
        first.then(|| Mark::Later(day + Days::new(3)))
    });
    assert_eq!(
        days_of(&later, Step::SowIndoors),
        ["2026-03-27", "2026-03-30", "2026-04-03", "2026-04-10"]
    );
}

#[test]
fn tender_plants_are_never_pressed_out_on_a_last_day() {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    let tomato = catalogue.get("tomato").expect("listed");
    let ignored = named("tomato", "2026-03-01", "2026-12-31", |_, _| None);
    // Good days 22 to 29 May; the last of them is not named for its own sake.
    assert_eq!(days_of(&ignored, Step::PlantOut), ["2026-05-22", "2026-05-25"]);
    for day in ["2026-05-29", "2026-06-10", "2026-06-13"] {
        let open = open_jobs([tomato], &[], garden(), date(day));
        let out = open.iter().find(|due| due.job.key.step == Step::PlantOut).expect("open");
        assert!(!out.last_chance, "{day}");
    }
}

#[test]
fn a_member_who_joins_late_hears_of_it_once_and_of_the_other_way_when_it_is_better() {
    // Cucumber joined on 20 May: the indoor days (to 1 May) have passed but are still worth it;
    // sowing in place opens on 22 May and is named, since indoors was missed.
    let late = named("cucumber", "2026-05-20", "2026-12-31", |_, _| None);
    assert_eq!(days_of(&late, Step::SowIndoors), ["2026-05-20"]);
    assert_eq!(days_of(&late, Step::SowOutdoors)[0], "2026-05-22");
}

#[test]
fn one_way_of_starting_rules_out_the_other() {
    let in_time = named("cucumber", "2026-04-01", "2026-12-31", |_, day| Some(Mark::Done(day)));
    assert_eq!(days_of(&in_time, Step::SowIndoors).len(), 1);
    assert_eq!(days_of(&in_time, Step::SowOutdoors), Vec::<String>::new());
    let peas = named("pea", "2026-03-01", "2026-12-31", |_, day| Some(Mark::Done(day)));
    assert_eq!(peas.len(), 1, "sown in place, there is nothing to set out: {peas:?}");
}

#[test]
fn another_season_is_another_job() {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    let tomato = catalogue.get("tomato").expect("listed");
    let done = JobMark {
        key: key("tomato", Step::SowIndoors),
        mark: Some(Mark::Done(date("2026-03-27"))),
        named_on: None,
    };
    let next_year = due_jobs([tomato], &[done], garden(), date("2027-03-27"));
    assert_eq!(next_year.len(), 1);
    assert_eq!(next_year[0].job.key.season, 2027);
}

#[test]
fn nothing_is_named_where_it_does_not_freeze() {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    for day in ["2026-01-15", "2026-04-15", "2026-10-01"] {
        assert!(due_jobs(catalogue.iter(), &[], Garden::FROST_FREE, date(day)).is_empty());
    }
}

#[test]
fn a_cold_spell_puts_hardening_off_and_setting_out_off_to_its_end() {
    // Tomato: hardened off from 8 to 22 May, set out from 22 to 29 May.
    let hold = |from, days| garden().holding(Hold::for_days(date(from), days).ok());
    let of = |garden| named_in(garden, "tomato", "2026-03-01", "2026-12-31", |_, _| None);
    let plain = of(garden());
    assert_eq!(days_of(&plain, Step::HardenOff)[0], "2026-05-08");

    let held = of(hold("2026-05-07", 7));
    assert_eq!(days_of(&held, Step::HardenOff)[0], "2026-05-14");
    assert_eq!(days_of(&held, Step::PlantOut), days_of(&plain, Step::PlantOut));
    assert_eq!(days_of(&held, Step::SowIndoors), days_of(&plain, Step::SowIndoors));

    // Plants that could not be hardened off before are set out a week after the end.
    let spring = of(hold("2026-05-07", 20));
    assert_eq!(days_of(&spring, Step::HardenOff)[0], "2026-05-27");
    assert_eq!(days_of(&spring, Step::PlantOut)[0], "2026-06-03");

    // A hold beyond the last good day does not lose the job.
    let long = of(hold("2026-05-20", 20));
    assert_eq!(days_of(&long, Step::PlantOut)[0], "2026-06-09");
    // Once the good days are over, a cold spell brings no job up again.
    assert_eq!(of(hold("2026-06-20", 5)), plain);
    // One in a part of the year without such jobs changes nothing.
    assert_eq!(of(hold("2026-03-01", 7)), plain);
}

#[test]
fn nothing_is_hardened_off_or_set_out_while_it_is_held() {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    for start in ["2026-03-20", "2026-04-20", "2026-05-20", "2026-08-20"] {
        let hold = Hold::for_days(date(start), 21).expect("a hold");
        let garden = garden().holding(Some(hold));
        let mut day = hold.from();
        while day < hold.until() {
            for due in due_jobs(catalogue.iter(), &[], garden, day) {
                let key = due.job.key;
                let waits = matches!(key.step, Step::HardenOff | Step::PlantOut);
                assert!(!waits || key.label == Label::Overwintering, "{key} on {day}");
            }
            day = day + Days::new(1);
        }
    }
}

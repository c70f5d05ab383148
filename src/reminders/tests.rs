//! When a job is named, and when not.

use chrono::{Days, NaiveDate};

use super::{Known, due_jobs, open_jobs};
use crate::catalogue::Catalogue;
use crate::club::{JobMark, Mark, QuietDays, Sowing};
use crate::planning::{Basis, Garden, Hold, JobBasis, JobKey, Label, Step, Way, sowing_place};

/// A message may come on any day.
const QUIET: QuietDays = QuietDays::NONE;

fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn garden() -> Garden {
    let day = |text: &str| Some(text.parse().expect("a month-day"));
    Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden")
}

fn key(crop: &str, step: Step) -> JobKey {
    JobKey {
        crop: crate::planning::CropId::new(crop),
        step,
        label: Label::Spring,
        season: 2026,
        sowing: None,
    }
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
        for due in due_jobs([crop], Known { marks: &marks, ..Known::default() }, garden, day, QUIET)
        {
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
        let open = open_jobs([tomato], Known::default(), garden(), date(day));
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
    let in_time = named("melon", "2026-04-01", "2026-12-31", |_, day| Some(Mark::Done(day)));
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
    let next_year = due_jobs(
        [tomato],
        Known { marks: &[done], ..Known::default() },
        garden(),
        date("2027-03-27"),
        QUIET,
    );
    assert_eq!(next_year.len(), 1);
    assert_eq!(next_year[0].job.key.season, 2027);
}

#[test]
fn nothing_is_named_where_it_does_not_freeze() {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    for day in ["2026-01-15", "2026-04-15", "2026-10-01"] {
        assert!(
            due_jobs(catalogue.iter(), Known::default(), Garden::FROST_FREE, date(day), QUIET)
                .is_empty()
        );
    }
}

#[test]
fn a_second_sowing_in_place_is_offered_once_beside_plants_raised_as_a_hedge() {
    let in_time = named("cucumber", "2026-04-01", "2026-12-31", |_, day| Some(Mark::Done(day)));
    assert_eq!(days_of(&in_time, Step::SowIndoors).len(), 1);
    assert_eq!(days_of(&in_time, Step::SowOutdoors), ["2026-05-22"]);
    let left = named("cucumber", "2026-04-01", "2026-12-31", |key, day| {
        (key.step == Step::SowIndoors).then_some(Mark::Done(day))
    });
    assert_eq!(days_of(&left, Step::SowOutdoors), ["2026-05-22"], "offered, not pressed");
    // Where the first was missed it is the only chance, and is named again.
    let missed = named("cucumber", "2026-04-01", "2026-12-31", |_, _| None);
    assert_eq!(days_of(&missed, Step::SowOutdoors).len(), 3);
}

#[test]
fn what_comes_before_the_seed_is_named_in_time_and_not_after_it() {
    // Potatoes are planted from 1 May (two weeks before the last frost), chitted 28 days before.
    let potatoes = named("potato", "2026-03-01", "2026-12-31", |_, day| Some(Mark::Done(day)));
    assert_eq!(days_of(&potatoes, Step::Chit), ["2026-04-03"]);
    assert_eq!(days_of(&potatoes, Step::PlantOut), ["2026-05-01"]);
    // Chitted a week later, they are planted a week later.
    let later = named("potato", "2026-04-10", "2026-12-31", |_, day| Some(Mark::Done(day)));
    assert_eq!(days_of(&later, Step::PlantOut), ["2026-05-08"]);
    let slips = named("sweet_potato", "2026-03-01", "2026-12-31", |_, _| None);
    assert_eq!(days_of(&slips, Step::RootSlips).len(), 1, "{slips:?}");
    // Okra is soaked the evening before, for the one sowing that is made.
    let okra = named("okra", "2026-03-01", "2026-12-31", |_, day| Some(Mark::Done(day)));
    let sown: NaiveDate = days_of(&okra, Step::SowIndoors)[0].parse().expect("a date");
    assert_eq!(days_of(&okra, Step::Soak), [(sown - Days::new(1)).to_string()]);
    let skipped = named("okra", "2026-03-01", "2026-12-31", |key, day| {
        key.step.is_sowing().then_some(Mark::Skipped(day))
    });
    assert!(days_of(&skipped, Step::Soak).len() <= 4, "not after both sowings were left");
}

fn sowing(id: i64, crop: &str, way: Way, on: &str) -> Sowing {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    let crop = catalogue.get(crop).expect("listed");
    let (label, season) = sowing_place(crop, Some(garden()), way, date(on));
    Sowing {
        id,
        crop: crop.id.clone(),
        variety: None,
        way,
        count: None,
        sown_on: date(on),
        room_c: None,
        label,
        season,
        came_up_on: None,
        failed_on: None,
        ended_on: None,
        job: None,
    }
}

/// What is named for the sowings of a crop that is left alone, from `from` to the end of the year.
fn named_for(crop: &str, sowings: &[Sowing], from: &str) -> Vec<(String, NaiveDate)> {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    let crop = catalogue.get(crop).expect("listed");
    let mut marks: Vec<JobMark> = Vec::new();
    let mut named = Vec::new();
    let mut day = date(from);
    while day <= date("2026-12-31") {
        let known = Known { marks: &marks, sowings, ..Known::default() };
        let due: Vec<JobKey> = due_jobs([crop], known, garden(), day, QUIET)
            .into_iter()
            .map(|due| due.job.key)
            .collect();
        for key in due {
            named.push((key.to_string(), day));
            marks.retain(|mark| mark.key != key);
            marks.push(JobMark { key, mark: None, named_on: Some(day) });
        }
        day = day + Days::new(1);
    }
    named
}

fn first_day(named: &[(String, NaiveDate)], key: &str) -> Option<String> {
    named.iter().find(|(is, _)| is == key).map(|(_, day)| day.to_string())
}

#[test]
fn a_recorded_sowing_has_its_own_dates_and_two_stand_side_by_side() {
    let sowings = [
        sowing(1, "tomato", Way::Indoors, "2026-03-27"),
        sowing(2, "tomato", Way::Indoors, "2026-05-01"),
    ];
    let named = named_for("tomato", &sowings, "2026-05-02");
    assert_eq!(first_day(&named, "tomato.po.s.2026.1").as_deref(), Some("2026-05-22"));
    // Six weeks after 1 May.
    assert_eq!(first_day(&named, "tomato.po.s.2026.2").as_deref(), Some("2026-06-12"));
    assert_eq!(first_day(&named, "tomato.ho.s.2026.2").as_deref(), Some("2026-05-29"));
    // The season's own jobs are done by these.
    assert!(named.iter().all(|(key, _)| key.split('.').count() == 5), "{named:?}");
}

#[test]
fn a_check_is_named_when_it_should_be_up_and_when_it_is_time_to_sow_again() {
    // Bush beans take 6 to 11 days, and are given up after 22.
    let named = named_for(
        "bush_bean",
        &[sowing(7, "bush_bean", Way::Outdoors, "2026-05-22")],
        "2026-05-23",
    );
    let checks: Vec<String> = named
        .iter()
        .filter(|(key, _)| key == "bush_bean.ck.s.2026.7")
        .map(|(_, day)| day.to_string())
        .collect();
    assert_eq!(checks, ["2026-06-02", "2026-06-13"]);
}

#[test]
fn what_failed_is_sown_again_and_what_was_given_up_is_quiet() {
    let mut failed = sowing(1, "tomato", Way::Indoors, "2026-03-20");
    failed.failed_on = Some(date("2026-04-08"));
    let again = named_for("tomato", &[failed.clone()], "2026-04-08");
    assert_eq!(again[0], ("tomato.si.s.2026".to_owned(), date("2026-04-08")));
    assert!(again.iter().all(|(key, _)| key == "tomato.si.s.2026"), "{again:?}");
    let given_up = Sowing { failed_on: None, ended_on: Some(date("2026-04-08")), ..failed };
    let quiet = named_for("tomato", &[given_up], "2026-04-08");
    let this_year: Vec<_> = quiet.iter().filter(|(key, _)| key.contains("2026")).collect();
    assert!(this_year.is_empty(), "{this_year:?}");
}

#[test]
fn repeats_come_once_each_interval_and_only_after_a_sowing() {
    let catalogue = Catalogue::embedded().expect("the catalogue");
    let radish = catalogue.get("radish").expect("listed");
    let repeats = |sowings: &[Sowing], day: &str| {
        let known = Known { sowings, ..Known::default() };
        let open = open_jobs([radish], known, garden(), date(day));
        open.into_iter().filter(|due| matches!(due.job.basis, JobBasis::Repeat(_))).count()
    };
    assert_eq!(repeats(&[], "2026-05-12"), 0);
    let first = sowing(1, "radish", Way::Outdoors, "2026-05-05");
    // The interval is 7 to 14 days.
    assert_eq!(repeats(std::slice::from_ref(&first), "2026-05-11"), 0);
    assert_eq!(repeats(std::slice::from_ref(&first), "2026-05-12"), 1);
    let second = sowing(2, "radish", Way::Outdoors, "2026-05-12");
    assert_eq!(repeats(&[first.clone(), second.clone()], "2026-05-13"), 0);
    assert_eq!(repeats(&[first, second], "2026-05-20"), 1, "one, not one for each sowing");
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
            for due in due_jobs(catalogue.iter(), Known::default(), garden, day, QUIET) {
                let key = due.job.key;
                let waits = matches!(key.step, Step::HardenOff | Step::PlantOut);
                assert!(!waits || key.label == Label::Overwintering, "{key} on {day}");
            }
            day = day + Days::new(1);
        }
    }
}

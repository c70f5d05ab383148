//! Sowing times that short-season clubs agree on: common practice, with no published source.
//! Average last frost 15 May, first frost 5 October; times in weeks before the last frost.

use chrono::{NaiveDate, TimeDelta};
use sowbell::planning::Verdict::{Early, Late, OnTime, TooEarly, TooLate};
use sowbell::planning::{Assessment, Basis, Frost, Garden, Step, Verdict, assess};

use super::{catalogue, crop, frost};

fn last_frost() -> NaiveDate {
    "2026-05-15".parse().expect("a date")
}

fn sow_indoors(id: &str, weeks_before: i64) -> Assessment {
    let garden = Garden::of(Frost::Dates(frost("05-15", "10-05", Basis::Average)));
    let on = last_frost() - TimeDelta::weeks(weeks_before);
    assess(crop(&catalogue(), id), garden, Step::SowIndoors, on)
}

fn agree(id: &str, verdict: Verdict, weeks_before: &[i64]) {
    for weeks in weeks_before {
        let ours = sow_indoors(id, *weeks).verdict();
        assert_eq!(ours, Some(verdict), "{id}, {weeks} weeks before the last frost");
    }
}

#[test]
fn cucumber() {
    agree("cucumber", OnTime, &[4, 3]);
    agree("cucumber", Early, &[5]);
    agree("cucumber", TooEarly, &[7, 6]);
    let windows = sow_indoors("cucumber", 4).windows;
    let from = windows.sow_indoors.first().expect("a window").from;
    assert_eq!(from, last_frost() - TimeDelta::weeks(5));
    assert_eq!(from.to_string(), "2026-04-10");
}

#[test]
fn sprawling_cucurbits() {
    for id in ["summer_squash", "melon", "watermelon"] {
        agree(id, OnTime, &[5, 4, 3]);
        agree(id, TooEarly, &[6]);
    }
}

#[test]
fn basil_forgives_lateness() {
    agree("basil", OnTime, &[6, 5, 4]);
    agree("basil", Late, &[2, 1, 0, -2]);
}

#[test]
fn dill_and_zinnia() {
    agree("dill", OnTime, &[4, 3]);
    agree("zinnia", OnTime, &[4, 3]);
    agree("zinnia", TooEarly, &[6]);
}

#[test]
fn strawflower() {
    agree("strawflower", OnTime, &[8, 7, 6]);
    agree("strawflower", Late, &[4, 3]);
    agree("strawflower", TooLate, &[0]);
}

#[test]
fn tomato_may_be_begun_early_by_those_who_pot_up() {
    agree("tomato", Early, &[10]);
    agree("tomato", OnTime, &[7, 6, 5]);
    agree("tomato", TooEarly, &[12]);
}

#[test]
fn peppers_and_eggplants_want_a_long_start() {
    // Seven to nine weeks old when set out a week after the last frost.
    for id in ["pepper", "eggplant"] {
        agree(id, TooEarly, &[11]);
        agree(id, Early, &[9]);
        agree(id, OnTime, &[8, 7, 6]);
        agree(id, Late, &[4, 3]);
        agree(id, TooLate, &[-3]);
    }
}

#[test]
fn pole_beans_are_better_sown_in_place() {
    assert!(sow_indoors("pole_bean", 4).better_outdoors);
    assert!(!sow_indoors("cucumber", 4).better_outdoors);
}

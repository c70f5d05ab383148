//! What holds for every crop, garden and day, and the published cases of the planning rules.

use std::sync::LazyLock;

use chrono::{Days, NaiveDate};
use proptest::prelude::*;
use sowbell::catalogue::Catalogue;
use sowbell::planning::{
    Assessment, Basis, Crop, Frost, FrostDates, Garden, MonthDay, Reason, Season, Step, Verdict,
    assess, best_ways, jobs, windows,
};

/// The catalogue, read once for all of this file.
fn catalogue() -> &'static Catalogue {
    static CATALOGUE: LazyLock<Catalogue> = LazyLock::new(crate::catalogue);
    &CATALOGUE
}

fn month_day() -> impl Strategy<Value = MonthDay> {
    (1..=12_u32, 1..=31_u32).prop_filter_map("a day of the calendar", |(m, d)| MonthDay::new(m, d))
}

fn frost_dates() -> impl Strategy<Value = FrostDates> {
    let basis = prop_oneof![Just(Basis::Average), Just(Basis::Trusted)];
    (month_day(), month_day(), basis, any::<bool>())
        .prop_filter_map("a season lies between", |(last, first, basis, ends)| {
            FrostDates::new(last, ends.then_some(first), basis).ok()
        })
}

fn day() -> impl Strategy<Value = NaiveDate> {
    (0..=3000_u64).prop_map(|days| date("2023-06-01") + Days::new(days))
}

fn crop() -> impl Strategy<Value = &'static Crop> {
    let crops: Vec<&Crop> = catalogue().iter().collect();
    proptest::sample::select(crops)
}

fn step() -> impl Strategy<Value = Step> {
    proptest::sample::select(Step::ALL.to_vec())
}

fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn average(last: &str, first: &str) -> Garden {
    let day = |text: &str| Some(text.parse().expect("a month-day"));
    Garden::new(day(last), day(first), Basis::Average).expect("a garden")
}

fn of(frost: FrostDates) -> Garden {
    Garden::of(Frost::Dates(frost))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, ..ProptestConfig::default() })]

    #[test]
    fn a_verdict_says_where_the_day_lies_in_its_window(
        crop in crop(), frost in frost_dates(), step in step(), on in day(),
    ) {
        let Assessment { verdict, window, .. } = assess(crop, of(frost), step, on);
        match (verdict, window) {
            (Ok(Verdict::TooEarly), Some(w)) => prop_assert!(on < w.from),
            (Ok(Verdict::Early), Some(w)) => prop_assert!(w.from <= on && on < w.ideal_from),
            (Ok(Verdict::OnTime), Some(w)) => prop_assert!(w.ideal_from <= on && on <= w.ideal_to),
            (Ok(Verdict::Late), Some(w)) => prop_assert!(w.ideal_to < on && on <= w.to),
            (Ok(Verdict::TooLate), Some(w)) => prop_assert!(w.to < on),
            (Ok(verdict), None) => prop_assert_eq!(verdict, Verdict::TooLate),
            (Err(_), window) => prop_assert_eq!(window, None),
        }
    }

    #[test]
    fn the_next_date_keeps_its_word(
        crop in crop(), frost in frost_dates(), step in step(), on in day(),
    ) {
        let now = assess(crop, of(frost), step, on);
        if let (Ok(verdict), Some(next)) = (now.verdict, now.next_date) {
            let then = assess(crop, of(frost), step, next).verdict;
            match verdict {
                Verdict::TooEarly | Verdict::Early | Verdict::TooLate => {
                    prop_assert!(next > on);
                    prop_assert_eq!(then, Ok(Verdict::OnTime));
                }
                Verdict::OnTime | Verdict::Late => {
                    prop_assert!(next >= on);
                    prop_assert!(then.is_ok_and(Verdict::workable));
                }
            }
        }
    }

    #[test]
    fn asking_in_a_garden_without_frost_never_gives_a_date(crop in crop(), step in step(), on in day()) {
        let answer = assess(crop, Garden::FROST_FREE, step, on);
        prop_assert!(answer.verdict.is_err());
        prop_assert_eq!((answer.window, answer.next_date, answer.set_out), (None, None, None));
        prop_assert!(jobs_of(crop, Garden::FROST_FREE, on).is_empty());
    }

    #[test]
    fn a_later_trusted_date_never_sets_tender_plants_out_earlier(
        crop in crop(), frost in frost_dates(), later in 0..40_u64, on in day(),
    ) {
        let frost = frost.with_basis(Basis::Trusted);
        let season = Season::that_matters(frost, on);
        let mut cautious = season;
        cautious.trusted = season.trusted.map(|date| date + Days::new(later));
        let first = |season: &Season| windows(crop, season).plant_out.first().map(|w| w.ideal_from);
        if let (Some(one), Some(other)) = (first(&season), first(&cautious)) {
            prop_assert!(one <= other);
        }
    }

    #[test]
    fn nothing_that_frost_kills_is_set_out_in_good_time_before_the_date_that_is_trusted(
        crop in crop(), frost in frost_dates(), on in day(),
    ) {
        let frost = frost.with_basis(Basis::Trusted);
        let season = Season::that_matters(frost, on);
        let slips_or_plants = crop.indoors.is_some();
        if crop.frost_kills() && slips_or_plants && crop.summer_sowing_weeks.is_none() {
            for window in windows(crop, &season).plant_out {
                prop_assert!(Some(window.ideal_from) >= season.trusted);
            }
        }
    }

    #[test]
    fn no_plant_sown_in_good_time_is_older_than_it_can_bear(
        crop in crop(), frost in frost_dates(), on in day(),
    ) {
        let answer = assess(crop, of(frost), Step::SowIndoors, on);
        if let (Some(verdict), Some(age)) = (answer.verdict(), answer.age_days()) {
            let bears = crop.indoors.as_ref().map_or(0, |i| 7 * i.age_weeks.workable.high);
            if verdict.workable() {
                prop_assert!(age <= bears, "{} would be {} days old", crop.id, age);
            }
        }
    }

    #[test]
    fn every_season_of_a_garden_begins_after_the_one_before(frost in frost_dates(), on in day()) {
        let season = Season::that_matters(frost, on);
        prop_assert!(season.end() >= on);
        prop_assert!(Season::before(frost, &season).end() < on);
        prop_assert!(season.last_frost < season.end());
    }

    #[test]
    fn the_best_way_comes_first_and_the_other_only_where_it_works(
        crop in crop(), frost in frost_dates(), on in day(),
    ) {
        let ways = best_ways(crop, of(frost), on);
        prop_assert!((1..=2).contains(&ways.len()));
        for other in ways.iter().skip(1) {
            prop_assert!(other.verdict().is_some_and(Verdict::workable));
            prop_assert_ne!(other.step, ways[0].step);
        }
    }
}

fn jobs_of(crop: &Crop, garden: Garden, on: NaiveDate) -> Vec<sowbell::planning::Job> {
    match garden.frost {
        Frost::Dates(frost) => jobs(crop, &Season::that_matters(frost, on)),
        Frost::Free => Vec::new(),
    }
}

fn get(id: &str) -> &'static Crop {
    catalogue().get(id).expect("listed")
}

#[test]
fn six_weeks_before_the_fifteenth_of_may_is_the_third_of_april() {
    // Michigan State University Extension, Last chance to start seeds indoors: six weeks before a
    // last frost of 15 May is the first week of April. Nasturtium goes out at five to six weeks,
    // from the average last frost on.
    let answer =
        assess(get("nasturtium"), average("05-15", "10-05"), Step::SowIndoors, date("2026-04-03"));
    assert_eq!(answer.verdict(), Some(Verdict::OnTime));
    assert_eq!(answer.window.map(|w| w.ideal_from), Some(date("2026-04-03")));
    assert_eq!(answer.age_days(), Some(42));
}

#[test]
fn hardening_off_begins_seven_to_fourteen_days_before_setting_out() {
    // University of Maryland Extension, 2023: 7 to 14 days; nights not below 45 °F (7 °C) for
    // tender seedlings, 50 °F (10 °C) for cucumber and melon.
    let season = season(2026);
    for id in ["tomato", "cucumber", "melon", "broccoli", "zinnia"] {
        let windows = windows(get(id), &season);
        let (harden, out) = (windows.harden_off[0], windows.plant_out[0]);
        assert_eq!(out.ideal_from - harden.ideal_from, chrono::TimeDelta::days(14), "{id}");
        assert_eq!(out.ideal_to - harden.ideal_to, chrono::TimeDelta::days(7), "{id}");
    }
    assert_eq!(get("cucumber").coldest_night_c(), 10);
    assert_eq!(get("melon").coldest_night_c(), 10);
    assert_eq!(get("bush_bean").coldest_night_c(), 7);
}

fn season(year: i32) -> Season {
    let Frost::Dates(frost) = average("05-15", "10-05").frost else { panic!("it freezes there") };
    Season::of_year(frost, year)
}

#[test]
fn autumn_sowings_count_back_from_the_first_frost() {
    // Virginia Cooperative Extension 426-334, with a first frost on 15 October: bush bean, 55 days
    // and 14 of harvest, by 10 July; radish, 28 days and 7 of harvest, by 27 August. The
    // catalogue's days are a range, whose middle is used.
    let Frost::Dates(frost) = average("05-01", "10-15").frost else { panic!("it freezes there") };
    let season = Season::of_year(frost, 2026);
    let last_good = |id: &str| {
        let windows = windows(get(id), &season).sow_outdoors;
        windows.last().map(|w| w.ideal_to).expect("an autumn sowing")
    };
    let counted = |id: &str, harvest: i64, tender: i64| {
        let days = get(id).harvest.days.middle() + harvest + 14 + tender;
        date("2026-10-15") - chrono::TimeDelta::days(days)
    };
    assert_eq!(last_good("bush_bean"), counted("bush_bean", 14, 14));
    assert_eq!(last_good("radish"), counted("radish", 7, 0));
}

#[test]
fn the_risk_of_a_trusted_date_is_on_the_late_side_in_spring() {
    // NOAA NCEI, U.S. Climate Normals 1981-2010: in spring P10 is the latest date. A date that is
    // trusted is therefore later than the average, never earlier.
    let trusted = FrostDates::new(
        "05-30".parse().expect("a day"),
        Some("10-05".parse().expect("a day")),
        Basis::Trusted,
    )
    .expect("dates");
    let season = Season::of_year(trusted, 2026);
    assert_eq!(season.last_frost, date("2026-05-15"));
    assert_eq!(season.ten_percent, date("2026-05-30"));
    // Offsets already assume the average, so the risk is not added twice: a warm crop goes out on
    // the trusted date itself, and a hardy one is not held back by it.
    let first = |id: &str| windows(get(id), &season).plant_out[0].ideal_from;
    assert_eq!(first("tomato"), date("2026-05-30"));
    assert_eq!(first("broccoli"), date("2026-04-17"));
}

#[test]
fn the_south_has_the_same_season_half_a_year_on() {
    let north = average("04-15", "10-15");
    let south = average("10-15", "04-15");
    let answer =
        |garden, id: &str, on: &str| assess(get(id), garden, Step::SowIndoors, date(on)).verdict;
    // Tomato: setting out on the 22nd, at six to eight weeks. Cucumber: at three to five.
    for (id, in_april, in_october) in
        [("tomato", "2026-03-01", "2026-08-31"), ("cucumber", "2026-03-25", "2026-09-24")]
    {
        assert_eq!(answer(north, id, in_april), Ok(Verdict::OnTime), "{id}");
        assert_eq!(answer(south, id, in_october), Ok(Verdict::OnTime), "{id}");
        assert_eq!(answer(south, id, in_april), Ok(Verdict::TooLate), "{id}");
    }
}

#[test]
fn a_leap_day_is_a_day_like_any_other() {
    let garden = average("02-29", "11-30");
    let in_2028 = assess(get("tomato"), garden, Step::PlantOut, date("2028-02-29"));
    let in_2027 = assess(get("tomato"), garden, Step::PlantOut, date("2027-02-28"));
    assert_eq!(in_2028.season.map(|s| s.last_frost), Some(date("2028-02-29")));
    assert_eq!(in_2027.season.map(|s| s.last_frost), Some(date("2027-02-28")));
}

#[test]
fn ways_that_never_are() {
    let garden = average("05-15", "10-05");
    let on = date("2026-04-22");
    let verdict = |id: &str, step| assess(get(id), garden, step, on).verdict;
    assert_eq!(verdict("carrot", Step::SowIndoors), Err(Reason::NeverThisWay));
    assert_eq!(verdict("carrot", Step::PlantOut), Err(Reason::NeverThisWay));
    assert_eq!(verdict("tomato", Step::SowOutdoors), Err(Reason::NeverThisWay));
    assert_eq!(verdict("potato", Step::SowIndoors), Err(Reason::NotFromSeed));
    assert_eq!(verdict("garlic", Step::SowOutdoors), Err(Reason::NotFromSeed));
    assert!(assess(get("carrot"), garden, Step::SowIndoors, on).better_outdoors);
}

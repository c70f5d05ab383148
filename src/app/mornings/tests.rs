//! What must hold for whole seasons of mornings, whatever a member sets and answers.

use std::collections::HashMap;
use std::sync::OnceLock;

use chrono::{Datelike, Days, NaiveDate, Weekday};
use proptest::prelude::*;

use super::*;
use crate::club::{Habits, JobMark, Mark, Member, QuietDays, WEEK};
use crate::planning::{Basis, CropId, Frost, Garden};
use crate::reminders::{coming_jobs, later_day};

fn knowledge() -> &'static Knowledge {
    static KNOWLEDGE: OnceLock<Knowledge> = OnceLock::new();
    KNOWLEDGE.get_or_init(|| Knowledge::embedded().expect("the built-in data"))
}

fn garden() -> Garden {
    let day = |text: &str| Some(text.parse().expect("a month-day"));
    Garden::new(day("05-15"), day("10-05"), Basis::Average).expect("a garden")
}

fn member(habits: Habits) -> Member {
    let frost = garden().frost;
    assert!(matches!(frost, Frost::Dates(_)));
    Member {
        id: 1,
        user: 7,
        name: "Wren".to_owned(),
        reachable: true,
        frost: Some(frost),
        zone: None,
        language: None,
        app_language: None,
        units: None,
        reminder_time: ReminderTime::default(),
        habits,
        hot_and_wet: None,
        latitude: None,
        months: None,
        place: None,
        cover: None,
        hold: None,
    }
}

/// What a member does with a job that a message names.
#[derive(Debug, Clone, Copy)]
enum Answer {
    Nothing,
    Done,
    Later,
    Skip,
}

fn answers() -> impl Strategy<Value = Vec<Answer>> {
    let one = prop_oneof![
        5 => Just(Answer::Nothing),
        2 => Just(Answer::Done),
        2 => Just(Answer::Later),
        1 => Just(Answer::Skip),
    ];
    proptest::collection::vec(one, 1..40)
}

const CROPS: [&str; 14] = [
    "tomato", "pepper", "basil", "cucumber", "zinnia", "lettuce", "broccoli", "onion", "pea",
    "carrot", "okra", "potato", "kale", "leek",
];

/// A holiday: the day on which it is told, and how long it lasts.
type Holiday = Option<(u64, u64)>;

/// Days of a season, from late winter on.
const SEASON: u64 = 150;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// No message on a quiet day or in a holiday; and what could be done on all its good days is
    /// named before they end, unless a holiday covers all of them that are left.
    #[test]
    fn every_job_is_named_before_its_good_days_end(
        crops in proptest::sample::subsequence(CROPS.to_vec(), 1..=10),
        quiet in 0_u8..127,
        at_weekends: bool,
        holiday in proptest::option::of((0..SEASON, 1..40_u64)),
        answers in answers(),
    ) {
        let quiet = QuietDays::from_bits(quiet).expect("not all days");
        let named = season(&crops, Habits { quiet, at_weekends, holiday_until: None }, holiday, &answers)?;
        prop_assert!(named < 2_000);
    }
}

/// Lives through a season's mornings, and gives how many times a job was named.
fn season(
    crops: &[&str],
    mut habits: Habits,
    holiday: Holiday,
    answers: &[Answer],
) -> Result<usize, TestCaseError> {
    let knowledge = knowledge();
    let first: NaiveDate = "2026-02-15".parse().expect("a date");
    let mut marks: HashMap<JobKey, JobMark> = HashMap::new();
    // The good days of each job that it could be done and a message could come, so far.
    let mut open_for: HashMap<JobKey, u64> = HashMap::new();
    let mut answers = answers.iter().copied().cycle();
    let mut named = 0;
    for days in 0..SEASON {
        let date = first + Days::new(days);
        if let Some((_, length)) = holiday.filter(|(from, _)| *from == days) {
            habits.holiday_until = Some(date + Days::new(length));
        }
        let kept: Vec<JobMark> = marks.values().cloned().collect();
        let due = MemberDue {
            member: member(habits),
            club: None,
            crops: crops.iter().map(|crop| CropId::new(*crop)).collect(),
            news: Vec::new(),
            marks: kept,
            sowings: Vec::new(),
            varieties: Vec::new(),
        };
        let now = ReminderTime::default().on(date, chrono_tz::Tz::UTC);
        let made = morning(knowledge, &due, now);
        prop_assert!(made.next > now, "the next is a later one");
        prop_assert_eq!(made.outgoing.is_some(), !made.named.is_empty());
        prop_assert!(habits.allow(date) || made.named.is_empty(), "{} is quiet", date);
        if let Some(Outgoing::Say(say)) = &made.outgoing {
            prop_assert!(say.text.encode_utf16().count() <= crate::messages::LONGEST_TEXT);
        }

        let of = due.crops.iter().filter_map(|id| knowledge.catalogue.get(id.as_str()));
        let known = Known { marks: &due.marks, ..Known::default() };
        let possible = coming_jobs(of, known, garden(), date);
        named += made.named.len();
        for key in &made.named {
            let mark = marks.entry(key.clone()).or_insert(JobMark {
                key: key.clone(),
                mark: None,
                named_on: None,
            });
            prop_assert_ne!(mark.named_on, Some(date), "named twice");
            mark.named_on = Some(date);
        }
        for job in &possible {
            let window = &job.job.window;
            let good = window.ideal_from <= date && date <= window.ideal_to;
            // A day on which it could have been named, or nobody could have been told of it.
            if good {
                *open_for.entry(job.job.key.clone()).or_default() += 1;
            }
            let length = (window.ideal_to - window.ideal_from).num_days() + 1;
            let whole =
                open_for.get(&job.job.key).is_some_and(|open| i64::try_from(*open) == Ok(length));
            let away = holiday.is_some_and(|(from, length)| {
                let holiday = first + Days::new(from)..first + Days::new(from + length);
                // Told of late, or only quiet days outside the holiday: the holiday has the rest.
                // Where all good days are quiet, the day before them on which it is told may lie
                // in the holiday; it is told then when the holiday is set.
                let told_by = habits.quiet.last_allowed(window.ideal_to).min(window.ideal_from);
                holiday.start <= window.ideal_to && told_by < holiday.end
            });
            if date == window.ideal_to && whole && !away && days > 7 {
                let told = marks.get(&job.job.key).is_some_and(|mark| mark.named_on.is_some());
                prop_assert!(told, "{} was never named by {}", job.job.key, date);
            }
        }
        for key in &made.named {
            let window = possible.iter().find(|job| job.job.key == *key).map(|job| job.job.window);
            let answer = match answers.next() {
                Some(Answer::Done) => Some(Mark::Done(date)),
                Some(Answer::Skip) => Some(Mark::Skipped(date)),
                Some(Answer::Later) => {
                    window.and_then(|window| later_day(&window, habits, date)).map(Mark::Later)
                }
                Some(Answer::Nothing) | None => None,
            };
            if let (Some(mark), Some(kept)) = (answer, marks.get_mut(key)) {
                kept.mark = Some(mark);
            }
        }
    }
    Ok(named)
}

#[test]
fn all_good_days_quiet_is_told_before_them() {
    // Okra is soaked the evening before: two weeks of windows, all but Mondays quiet.
    let quiet = QuietDays::of(crate::club::WEEK.into_iter().filter(|day| *day != Weekday::Mon));
    let habits = Habits { quiet: quiet.expect("not all"), ..Habits::default() };
    let named = season(&CROPS, habits, None, &[Answer::Nothing]).expect("the rules hold");
    assert!(named > CROPS.len(), "{named}");
}

fn changed_list(list: i64, came: &[&str]) -> ListNews {
    ListNews {
        list,
        name: format!("A bed with a long name, no. {list}"),
        archived: false,
        before: vec![CropId::new("okra")],
        now: came.iter().map(|crop| CropId::new(*crop)).collect(),
    }
}

fn told_of(crops: Vec<CropId>, news: Vec<ListNews>, habits: Habits, frost: bool) -> MemberDue {
    let mut member = member(habits);
    member.frost = member.frost.filter(|_| frost);
    let (marks, sowings, varieties) = (Vec::new(), Vec::new(), Vec::new());
    MemberDue { member, club: None, crops, news, marks, sowings, varieties }
}

fn text_of(made: &Morning) -> &str {
    match &made.outgoing {
        Some(Outgoing::Say(say)) => &say.text,
        _ => "",
    }
}

#[test]
fn what_changed_in_lists_waits_for_a_day_on_which_a_message_may_come() {
    let news = vec![changed_list(3, &["leek"])];
    // 7 January 2026 is a Wednesday, in mid-winter.
    let day = |text: &str| text.parse::<NaiveDate>().expect("a date");
    let on = |date, due: &MemberDue| {
        morning(knowledge(), due, ReminderTime::default().on(date, chrono_tz::Tz::UTC))
    };
    let quiet = QuietDays::of([Weekday::Wed]).expect("not all days");
    for frost in [true, false] {
        let due = told_of(Vec::new(), news.clone(), Habits { quiet, ..Habits::default() }, frost);
        let wednesday = on(day("2026-01-07"), &due);
        assert_eq!((wednesday.outgoing.is_some(), wednesday.told.len()), (false, 0));
        assert_eq!(on(day("2026-01-08"), &due).told, [3]);
        let holiday_until = Some(day("2026-01-12"));
        let away =
            told_of(Vec::new(), news.clone(), Habits { holiday_until, ..Habits::default() }, frost);
        assert!(on(day("2026-01-11"), &away).told.is_empty());
        assert_eq!(on(day("2026-01-12"), &away).told, [3]);
    }
}

#[test]
fn whatever_is_said_to_be_told_stands_in_the_message() {
    let crops: Vec<CropId> = knowledge().catalogue.iter().map(|crop| crop.id.clone()).collect();
    let came = ["tomato", "pepper", "basil", "cucumber", "zinnia", "lettuce", "broccoli", "leek"];
    let news: Vec<ListNews> = (1..=7).map(|list| changed_list(list, &came)).collect();
    let first: NaiveDate = "2026-03-01".parse().expect("a date");
    let mut most_jobs = 0;
    for days in 0..SEASON {
        let date = first + Days::new(days);
        // Back from a holiday, with a week of quiet days ahead, a great deal cannot wait.
        let quiet = WEEK.into_iter().filter(|day| *day != date.weekday());
        let habits = Habits { quiet: QuietDays::of(quiet).expect("six days"), ..Habits::default() };
        let due = told_of(crops.clone(), news.clone(), habits, true);
        let made = morning(knowledge(), &due, ReminderTime::default().on(date, chrono_tz::Tz::UTC));
        let text = text_of(&made);
        assert!(text.encode_utf16().count() <= LONGEST_TEXT, "{date}");
        assert!(!made.told.is_empty() && made.told.len() <= MOST_LISTS_TOLD, "{date}: {text}");
        for list in &made.told {
            assert!(text.contains(&format!("no. {list}")), "{date}: {list} in {text}");
        }
        assert!(text.contains("/mycrops"), "nothing of it is cut off: {text}");
        most_jobs = most_jobs.max(made.named.len());
    }
    assert!(most_jobs > 2 * MOST_JOBS, "the longest message has {most_jobs} jobs");
}

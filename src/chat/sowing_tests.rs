//! What is decided about sowings: phrase by phrase, and error by error.

use chrono::NaiveDate;

use super::{Change, Expected, Facts, InPrivate, Knowledge, Outcome, decide};
use crate::club::{Growing, Habits, LastChange, Mark, Member, PutBack, ReminderTime, Sowing};
use crate::messages::{
    Button, Chat, ChatKind, Incoming, JobAnswer, Outgoing, Person, Press, Role, What,
};
use crate::planning::{Basis, CropId, Frost, FrostDates, JobKey, Label, Way};

fn knowledge() -> &'static Knowledge {
    static KNOWLEDGE: std::sync::OnceLock<Knowledge> = std::sync::OnceLock::new();
    KNOWLEDGE.get_or_init(|| Knowledge::embedded().expect("the built-in data"))
}

fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

fn facts() -> Facts {
    let day = |text: &str| text.parse().expect("a month-day");
    let dates = FrostDates::new(day("05-15"), Some(day("10-05")), Basis::Average);
    Facts {
        now: "2026-04-22T12:00:00Z".parse().expect("an instant"),
        member: Member {
            id: 1,
            user: 7,
            name: "Wren".to_owned(),
            reachable: true,
            frost: Some(Frost::Dates(dates.expect("frost dates"))),
            zone: None,
            language: None,
            app_language: None,
            units: None,
            reminder_time: ReminderTime::default(),
            habits: Habits::default(),
            hot_and_wet: None,
            latitude: None,
            months: None,
            place: None,
            cover: None,
            hold: None,
        },
        club: None,
        clubs: Vec::new(),
        helpers: Vec::new(),
        reach: None,
        lists: Vec::new(),
        offered_list: None,
        invited_to: None,
        growing: Growing {
            own: vec![CropId::new("basil"), CropId::new("tomato")],
            ..Growing::default()
        },
        crops: vec![CropId::new("basil"), CropId::new("tomato")],
        marks: Vec::new(),
        sowings: Vec::new(),
        varieties: Vec::new(),
        next_change: 5,
        last_change: None,
        expected: None,
        subject: None,
        in_private: InPrivate::default(),
    }
}

/// Whether nothing is kept but what was asked.
fn only_asks(outcome: &Outcome) -> bool {
    outcome.changes.iter().all(|change| matches!(change, Change::Asked(_)))
}

fn basil(id: i64, on: &str) -> Sowing {
    Sowing {
        id,
        crop: CropId::new("basil"),
        variety: None,
        way: Way::Indoors,
        count: Some(12),
        sown_on: date(on),
        room_c: None,
        label: Label::Spring,
        season: 2026,
        came_up_on: None,
        failed_on: None,
        ended_on: None,
        job: None,
    }
}

fn outcome(facts: &Facts, what: What) -> Outcome {
    let person = Person {
        user: 7,
        name: "Wren".to_owned(),
        is_bot: false,
        anonymous: false,
        language: None,
        role: Role::Unknown,
    };
    let chat = Chat { id: 7, kind: ChatKind::Private, title: String::new(), thread: None };
    decide(knowledge(), &Incoming { chat, from: person, what }, facts)
}

fn says(facts: &Facts, text: &str) -> Outcome {
    outcome(
        facts,
        What::Text { text: text.to_owned(), message: 1, addressed: true, replies_to: None },
    )
}

fn presses(facts: &Facts, press: &Press) -> Outcome {
    let pressed = What::Pressed {
        data: press.to_string(),
        press: "p".to_owned(),
        message: Some(1),
        shown: None,
    };
    outcome(facts, pressed)
}

fn texts(outcome: &Outcome) -> String {
    let text = |outgoing: &Outgoing| match outgoing {
        Outgoing::Say(say) => say.text.clone(),
        Outgoing::Edit(edit) => edit.text.clone(),
        Outgoing::AnswerPress(answer) => answer.notice.clone().unwrap_or_default(),
        other => format!("{other:?}"),
    };
    let all = outcome.outgoing.iter().map(text).collect::<Vec<_>>().join("\n---\n");
    // No break stands between a number and its unit.
    all.replace('\u{a0}', " ")
}

fn buttons(outcome: &Outcome) -> Vec<Button> {
    let buttons = |outgoing: &Outgoing| match outgoing {
        Outgoing::Say(say) => say.buttons.concat(),
        Outgoing::Edit(edit) => edit.buttons.concat(),
        _ => Vec::new(),
    };
    outcome.outgoing.iter().flat_map(buttons).collect()
}

/// The changes that are taken back together, in one list.
fn changes(outcome: &Outcome) -> Vec<Change> {
    let parts = |change: &Change| match change {
        Change::Together(parts) => parts.clone(),
        one => vec![one.clone()],
    };
    outcome.changes.iter().flat_map(parts).collect()
}

fn recorded(outcome: &Outcome) -> Vec<(String, Way, Option<u32>, String)> {
    let sowing = |change: Change| match change {
        Change::RecordSowing(sowing) => {
            Some((sowing.crop.to_string(), sowing.way, sowing.count, sowing.sown_on.to_string()))
        }
        _ => None,
    };
    changes(outcome).into_iter().filter_map(sowing).collect()
}

#[test]
fn sowings_are_recorded_in_every_wording() {
    use Way::{Indoors, Outdoors};
    for (text, crop, way, count, on) in [
        ("sowed 12 basil today", "basil", Indoors, Some(12), "2026-04-22"),
        ("I sowed tomatoes yesterday", "tomato", Indoors, None, "2026-04-21"),
        ("sown 20 peppers indoors on 3 April", "pepper", Indoors, Some(20), "2026-04-03"),
        ("/sown basil 12 on 3 April", "basil", Indoors, Some(12), "2026-04-03"),
        ("/sown basil", "basil", Indoors, None, "2026-04-22"),
        ("I've sown my basil in the ground", "basil", Outdoors, None, "2026-04-22"),
        ("Just sowed carrots", "carrot", Outdoors, None, "2026-04-22"),
        ("i direct sowed peas last saturday", "pea", Outdoors, None, "2026-04-18"),
    ] {
        let outcome = says(&facts(), text);
        let is = [(crop.to_owned(), way, count, on.to_owned())];
        assert_eq!(recorded(&outcome), is, "{text}: {}", texts(&outcome));
        let undo = buttons(&outcome);
        assert_eq!(undo.len(), 1, "{text}");
        assert_eq!(undo[0].label, "Undo");
        assert_eq!(outcome.changes.len(), 1, "{text} is taken back at once");
    }
    let two = says(&facts(), "/sown basil, tomato");
    assert_eq!(recorded(&two).len(), 2);
    // A question about a sowing is a question.
    let asked = says(&facts(), "I sowed peas in March, can I sow more?");
    assert!(only_asks(&asked), "{:?}", asked.changes);
}

#[test]
fn a_sowing_tells_its_dates_and_joins_the_list() {
    let outcome = says(&facts(), "sown 20 peppers indoors on 3 April");
    let text = texts(&outcome);
    for part in [
        "20 peppers, sown indoors on April 3",
        "Up April 16–20 in a room of about 68",
        "from May 22",
        "First harvest",
    ] {
        assert!(text.contains(part), "{part} in {text}");
    }
    assert_eq!(changes(&outcome)[0], Change::AddCrops(vec![CropId::new("pepper")]));
    let known = says(&facts(), "sowed basil");
    assert!(!changes(&known).iter().any(|change| matches!(change, Change::AddCrops(_))));
}

#[test]
fn a_temperature_that_was_told_decides_when_it_is_up() {
    // Peppers: 25 days at 15 °C in the trials, and a quarter more; none at 10 °C.
    let cool = says(&facts(), "sowed peppers today, the room is 59 °F");
    let text = texts(&cool);
    assert!(text.contains("Up May 17–24 at about 59 °F. Nothing by June 7?"), "{text}");
    assert!(text.contains("Over three weeks counts as too cold"), "{text}");
    assert!(text.contains("Move them where it is 65–75 °F"), "{text}");
    let kept = changes(&cool);
    let room = kept.iter().find_map(|change| match change {
        Change::RecordSowing(sowing) => sowing.room_c,
        _ => None,
    });
    assert_eq!(room, Some(15));
    let cold = texts(&says(&facts(), "/sown pepper at 10 °C"));
    assert!(
        cold.contains("At 50 °F, don't expect peppers to come up: it is too cold. In the trials")
    );
    assert!(cold.contains("Nothing by May 13? Then it is too late"), "three weeks: {cold}");
    assert!(!cold.contains("Up ") && !cold.contains("First harvest"), "{cold}");
    // In the ground nothing can be moved.
    let beans = texts(&says(&facts(), "sowed bush beans outdoors, soil is 8 °C"));
    assert!(beans.contains("They come up once the soil stays at 60 °F or more"), "{beans}");
    let hot = texts(&says(&facts(), "sowed lettuce today, soil is 36 °C"));
    assert!(hot.contains("it is too hot") && hot.contains("Keep them cooler"), "{hot}");
}

#[test]
fn a_temperature_without_a_trial_is_held_to_the_published_range() {
    let least = knowledge().catalogue.get("basil").and_then(|crop| crop.seed.soil_c.clone());
    assert!(least.expect("a range").minimum > 14);
    let cold = texts(&says(&facts(), "sowed 12 basil today, soil is 14 °C"));
    assert!(cold.starts_with("Noted: 12 basil, sown"), "{cold}");
    assert!(cold.contains("At 57 °F, don't expect basil to come up: it is too cold."), "{cold}");
    assert!(cold.contains("Nothing by May 13? Then sow again."), "{cold}");
    let warm = texts(&says(&facts(), "/sown basil 12 at 70F"));
    assert!(warm.contains("• Up ") && warm.contains("at about 70 °F"), "{warm}");
}

#[test]
fn a_count_of_sprouted_seed_is_a_test_unless_it_counts_the_sowing() {
    let mut facts = facts();
    facts.sowings = vec![basil(4, "2026-04-12")];
    let test = says(&facts, "4 of 10 basil seeds sprouted");
    assert!(only_asks(&test), "{:?}", test.changes);
    assert!(texts(&test).starts_with("4 of 10 sprouted: 40%"), "{}", texts(&test));
    let impossible = says(&facts, "12 of 10 basil seeds sprouted");
    assert!(only_asks(&impossible));
    assert_eq!(texts(&impossible), "12 of 10 cannot be: no more seeds sprout than were tested.");
    // Twelve were sown.
    let up = says(&facts, "8 of 12 basil came up");
    assert!(texts(&up).starts_with("Good, they are up"), "{}", texts(&up));
    let none = says(&facts, "0 of 12 basil came up");
    assert!(texts(&none).starts_with("A pity."), "{}", texts(&none));
}

#[test]
fn without_frost_dates_a_sowing_is_kept_all_the_same() {
    let mut facts = facts();
    facts.member.frost = None;
    let outcome = says(&facts, "sowed basil");
    assert_eq!(recorded(&outcome).len(), 1);
    assert!(texts(&outcome).contains("/frost"), "{}", texts(&outcome));
}

#[test]
fn bad_input_is_one_clear_sentence_and_changes_nothing() {
    for (text, says_so) in [
        ("/sown basil on 30 April", "April 30 is still to come"),
        ("sowed basil tomorrow", "April 23 is still to come"),
        ("/sown 0 basil", "1 to 2,000"),
        ("/sown 10000 basil", "1 to 2,000"),
        ("/sown basil on 31 April", "no day “31 April”"),
        ("/sown basil on 2026-02-30", "no day “2026-02-30”"),
        ("/sown basil on 2024-04-03", "more than a year ago"),
        ("/sown foozleberry", "I don't know “foozleberry”"),
        ("/sown basil, foozleberry", "I don't know “foozleberry”"),
        ("/sown garlic", "you plant garlic"),
        ("/sown basil 4/3", "“4/3”"),
        ("/sown basil 12 13", "“13”"),
        ("/sown basil at 60 °C", "140 °F cannot be right for soil"),
        ("sowed 12 basil today, soil is 140 °F", "140 °F cannot be right for soil"),
        ("sowed basil, the soil is -30 °C", "-22 °F cannot be right for soil"),
        ("/sown today", "What did you sow"),
    ] {
        let outcome = says(&facts(), text);
        assert!(outcome.changes.is_empty(), "{text}: {:?}", outcome.changes);
        let said = texts(&outcome);
        assert!(said.contains(says_so), "{text}: {said}");
        assert!(!said.contains('\n'), "{text}: {said}");
    }
}

#[test]
fn the_bare_command_waits_for_what_was_sown() {
    let asked = says(&facts(), "/sown");
    assert_eq!(asked.changes, [Change::Expect(Some(Expected::Sown))]);
    let mut facts = facts();
    facts.expected = Some(Expected::Sown);
    let outcome = says(&facts, "12 basil yesterday");
    assert_eq!(recorded(&outcome).len(), 1);
    assert!(outcome.changes.contains(&Change::Expect(None)));
    let question = says(&facts, "can I start basil?");
    assert!(recorded(&question).is_empty());
}

fn job(text: &str) -> JobKey {
    text.parse().expect("a job")
}

#[test]
fn done_of_a_sowing_job_records_one_sowing_and_undo_removes_it() {
    let key = job("basil.si.s.2026");
    let done = Press::Job(key.clone(), JobAnswer::Done);
    let outcome = presses(&facts(), &done);
    assert_eq!(recorded(&outcome).len(), 1);
    let mark = Change::MarkJob(key.clone(), Some(Mark::Done(date("2026-04-22"))));
    assert!(changes(&outcome).contains(&mark));
    assert_eq!(outcome.changes.len(), 1, "taken back at once");

    let mut after = facts();
    after.sowings = vec![Sowing { count: None, job: Some(key.clone()), ..basil(3, "2026-04-22") }];
    assert!(recorded(&presses(&after, &done)).is_empty(), "a second press records no second");
    let undone = changes(&presses(&after, &Press::Job(key.clone(), JobAnswer::Undo)));
    assert_eq!(undone, [Change::MarkJob(key.clone(), None), Change::RemoveSowing(3)]);
    // Told in words as well, it is the same sowing, now with its number.
    let told = changes(&says(&after, "sowed 12 basil today"));
    let [Change::KeepSowing(kept)] = told.as_slice() else { panic!("{told:?}") };
    assert_eq!((kept.id, kept.count), (3, Some(12)));
    // And the other way round.
    let mut words_first = facts();
    words_first.sowings = vec![basil(4, "2026-04-22")];
    let outcome = presses(&words_first, &done);
    assert!(recorded(&outcome).is_empty());
    let kept = changes(&outcome);
    assert!(matches!(&kept[0], Change::KeepSowing(s) if s.job == Some(key.clone())), "{kept:?}");
}

#[test]
fn a_repeat_sowing_that_is_done_is_a_sowing_of_its_own() {
    let mut facts = facts();
    let first =
        Sowing { crop: CropId::new("lettuce"), way: Way::Outdoors, ..basil(9, "2026-04-10") };
    facts.sowings = vec![first];
    let outcome = presses(&facts, &Press::Job(job("lettuce.so.s.2026.9"), JobAnswer::Done));
    let is = [("lettuce".to_owned(), Way::Outdoors, None, "2026-04-22".to_owned())];
    assert_eq!(recorded(&outcome), is);
}

#[test]
fn what_came_up_is_told_by_button_and_in_words() {
    let mut facts = facts();
    facts.sowings = vec![basil(3, "2026-04-10"), basil(4, "2026-04-20")];
    let by_words = changes(&says(&facts, "the basil came up"));
    let up = Sowing { came_up_on: Some(date("2026-04-22")), ..basil(3, "2026-04-10") };
    let key = job("basil.ck.s.2026.3");
    let marked = Change::MarkJob(key.clone(), Some(Mark::Done(date("2026-04-22"))));
    assert_eq!(by_words, [Change::KeepSowing(up.clone()), marked.clone()]);
    let by_button = changes(&presses(&facts, &Press::Job(key.clone(), JobAnswer::Done)));
    assert_eq!(by_button, [Change::KeepSowing(up.clone()), marked]);
    facts.sowings = vec![up];
    let undone = changes(&presses(&facts, &Press::Job(key, JobAnswer::Undo)));
    assert!(undone.contains(&Change::KeepSowing(basil(3, "2026-04-10"))), "{undone:?}");
    // A question changes nothing.
    assert!(only_asks(&says(&facts, "when will basil come up?")));
}

#[test]
fn nothing_came_up_offers_to_sow_again_or_says_that_it_is_too_late() {
    let mut facts = facts();
    let origin = job("basil.si.s.2026");
    let sowing = Sowing { job: Some(origin.clone()), ..basil(3, "2026-04-01") };
    facts.sowings = vec![sowing.clone()];
    let outcome = says(&facts, "nothing came up");
    let failed = Sowing { failed_on: Some(date("2026-04-22")), ..sowing };
    let all = changes(&outcome);
    assert!(all.contains(&Change::KeepSowing(failed)), "{all:?}");
    // The reminder's job is open again.
    assert!(all.contains(&Change::MarkJob(origin, None)), "{all:?}");
    assert!(texts(&outcome).contains("again now; that is worth it until"), "{}", texts(&outcome));
    let again = buttons(&outcome).into_iter().find(|button| button.label == "Sown again today");
    assert!(again.is_some());
    let sown = recorded(&presses(&facts, &Press::SowAgain(3)));
    assert_eq!(sown, [("basil".to_owned(), Way::Indoors, Some(12), "2026-04-22".to_owned())]);

    // In September basil is too late by every way.
    facts.now = "2026-09-10T12:00:00Z".parse().expect("an instant");
    let late = presses(&facts, &Press::Job(job("basil.ck.s.2026.3"), JobAnswer::NotUp));
    assert!(texts(&late).contains("too late"), "{}", texts(&late));
    assert!(buttons(&late).iter().all(|button| button.label != "Sown again today"));
}

#[test]
fn several_crops_that_wait_are_asked_about() {
    let mut facts = facts();
    let tomato = Sowing { crop: CropId::new("tomato"), ..basil(4, "2026-04-10") };
    facts.sowings = vec![basil(3, "2026-04-10"), tomato];
    let outcome = says(&facts, "nothing came up");
    assert!(outcome.changes.is_empty());
    assert_eq!(buttons(&outcome).len(), 2);
    let none = says(&self::facts(), "nothing came up");
    assert!(texts(&none).contains("no sowing that waits"), "{}", texts(&none));
}

#[test]
fn the_list_of_sowings_is_paged_and_ends_one_by_its_button() {
    let mut facts = facts();
    facts.sowings = (1..=10).map(|id| basil(id, "2026-04-10")).collect();
    let page = says(&facts, "/sowings");
    assert!(texts(&page).starts_with("10 sowings:"), "{}", texts(&page));
    assert!(texts(&page).contains("Page 1 of 2"), "{}", texts(&page));
    assert_eq!(buttons(&page).len(), 9, "eight and the next page");
    let next = presses(&facts, &Press::Sowings(1));
    assert!(texts(&next).contains("10. 12 basil"), "{}", texts(&next));
    let ended = presses(&facts, &Press::EndSowing(10, 1));
    let kept = Sowing { ended_on: Some(date("2026-04-22")), ..basil(10, "2026-04-10") };
    assert_eq!(ended.changes, [Change::KeepSowing(kept)]);
    assert!(texts(&ended).starts_with("9 sowings:"), "{}", texts(&ended));
    let gone = presses(&facts, &Press::EndSowing(77, 0));
    assert!(gone.changes.is_empty());
    assert!(texts(&says(&self::facts(), "my sowings")).contains("no sowing of yours"));
}

#[test]
fn undo_takes_back_the_last_change_and_only_that() {
    let mut facts = facts();
    assert!(says(&facts, "/undo").changes.is_empty());
    facts.sowings = vec![basil(3, "2026-04-10")];
    facts.last_change = Some(LastChange { number: 4, put_back: vec![PutBack::SowingOff(3)] });
    for outcome in
        [says(&facts, "/undo"), says(&facts, "undo that"), presses(&facts, &Press::Undo(4))]
    {
        assert_eq!(outcome.changes, [Change::Undo(4)]);
        assert!(
            texts(&outcome).contains("12 basil, sown indoors on April 10"),
            "{}",
            texts(&outcome)
        );
    }
    // The button under an older message.
    let stale = presses(&facts, &Press::Undo(3));
    assert!(stale.changes.is_empty());
    assert!(texts(&stale).contains("Something else changed"), "{}", texts(&stale));
    let crops = vec![PutBack::CropOn { id: 2, crop: CropId::new("pea") }];
    facts.last_change = Some(LastChange { number: 5, put_back: crops });
    assert_eq!(texts(&says(&facts, "/undo")), "Back on your list: pea.");
}

#[test]
fn onions_ask_how_far_north_and_answer_by_daylength() {
    let mut facts = facts();
    let asked = says(&facts, "when do I sow onions?");
    assert!(texts(&asked).contains("/latitude 47"), "{}", texts(&asked));
    assert!(!texts(&says(&facts, "when do I sow leeks?")).contains("latitude"));
    facts.expected = Some(Expected::Latitude);
    let told = says(&facts, "47");
    assert!(told.changes.contains(&Change::MemberLatitude(Some(47))));
    assert!(texts(&told).contains("long-day"), "{}", texts(&told));
    for bad in ["/latitude 99", "/latitude north"] {
        let outcome = says(&self::facts(), bad);
        assert!(outcome.changes.is_empty(), "{bad}");
        assert!(texts(&outcome).contains("is not a latitude"), "{bad}");
    }
    facts.expected = None;
    facts.member.latitude = Some(-28);
    assert!(texts(&says(&facts, "when do I sow onions?")).contains("short-day"));
}

#[test]
fn slips_of_the_thumb_are_sowings_all_the_same() {
    for text in ["sowd 12 basil yesterday", "I sewed 12 basil yesterday"] {
        let outcome = says(&facts(), text);
        let sowings = recorded(&outcome);
        let told: Vec<_> =
            sowings.iter().map(|(crop, _, n, on)| (crop.as_str(), *n, on.as_str())).collect();
        assert_eq!(told, [("basil", Some(12), "2026-04-21")], "{text}: {}", texts(&outcome));
    }
}

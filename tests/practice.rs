//! The practice chat: what a newcomer types, and what they must and must not see.

#![expect(clippy::expect_used, clippy::indexing_slicing, reason = "a failed test panics")]

use std::io::Write as _;
use std::process::{Command, Output, Stdio};

use axum as _;
use chrono::NaiveDate;
use insta as _;
use proptest as _;
use tempfile as _;

const DAY: (i32, u32, u32) = (2026, 4, 22);

/// Types these lines on 22 April 2026; gives what followed each of them, up to the next prompt.
fn practise(lines: &[&str]) -> Vec<String> {
    let typed = lines.join("\n");
    let (year, month, day) = DAY;
    let on = NaiveDate::from_ymd_opt(year, month, day).expect("a date");
    let mut shown = Vec::new();
    sowbell::terminal::run(typed.as_bytes(), &mut shown, on).expect("practised");
    let shown = String::from_utf8(shown).expect("text");
    // What stands before the first prompt is the welcome; the last prompt met the end.
    let parts: Vec<String> = shown.split(" > ").map(ToOwned::to_owned).collect();
    assert_eq!(parts.len(), lines.len() + 2, "{shown}");
    parts[1..=lines.len()].to_vec()
}

/// The numbers of the buttons with this label, as they stand in what was shown.
fn button(shown: &str, label: &str) -> String {
    let before = shown.split(&format!("] {label}")).next().expect("a part");
    assert!(before.len() < shown.len(), "there is no button {label:?} in {shown}");
    format!(":{}", before.rsplit('[').next().expect("a number"))
}

fn binary(arguments: &[&str], typed: &[u8]) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_sowbell"))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("started");
    child.stdin.take().expect("its input").write_all(typed).expect("typed");
    child.wait_with_output().expect("ended")
}

/// The forms that the French texts show are read, and what follows a question leans on it.
#[test]
fn a_french_member_uses_the_forms_that_the_help_shows() {
    let settings = practise(&["/settings"]);
    let open = button(&settings[0], "Language");
    let asked = practise(&["/settings", &open]);
    let french = button(&asked[1], "Français");
    for (typed, told) in [
        ("/frost 15 mai 5 octobre", "dernier gel vers le 15 mai, premier gel vers le 5 octobre"),
        ("/frost jamais", "ton jardin n’a pas de gel"),
        ("/hold 7 jours", "En pause jusqu’au 29 avril"),
        ("/drop tout", "Plus sur ta liste : tomate"),
        ("/sown basilic 12 le 3 avril", "le basilic (12), semis intérieur du 3 avril"),
        ("j'ai semé 12 basilics hier", "le basilic (12), semis intérieur du 21 avril"),
        ("je cultive des poireaux et du maïs", "Sur ta liste : poireau et maïs doux"),
        ("je sème sous lampes et j’ai un tunnel", "Protection dehors : tunnel"),
        ("/variety tomate Lanterne, 75 jours", "tomate « Lanterne », récolte en 75 jours"),
        ("/trays tomate 12, basilic 6", "les tomates (12)"),
        ("je peux semer les concombres maintenant ?", "semer les concombres à l’intérieur"),
        ("on peut démarrer la voiture ?", "Je n’ai pas compris"),
    ] {
        let shown = practise(&["/settings", &open, &french, typed]);
        let shown = shown[3].replace('\u{202f}', " ");
        assert!(shown.contains(told), "{typed}: {shown}");
    }
    let hold = practise(&["/settings", &open, &french, "/hold 7 jours", "/hold fin"]);
    assert!(hold[4].contains("La pause est finie"), "{}", hold[4]);
    let asked = "je peux semer les concombres maintenant ?";
    let leant = practise(&["/settings", &open, &french, asked, "et dehors ?"]);
    assert!(leant[4].contains("semer les concombres en pleine terre"), "{}", leant[4]);
}

#[test]
fn the_welcome_is_short_and_the_prompt_shows_the_day_asked_for() {
    let output = binary(&["practice", "--on", "2027-03-01"], b"");
    assert!(output.status.success());
    assert!(output.stderr.is_empty());
    let text = String::from_utf8(output.stdout).expect("text");
    assert!(text.ends_with("\n2027-03-01 Mon · Fern, private > \n"), "{text}");
    assert!(text.lines().count() <= 9, "{text}");
    assert!(!text.contains('\u{1b}'), "no styling where nobody looks at a terminal");
}

#[test]
fn a_question_is_answered_to_the_one_who_asked() {
    let shown = practise(&["can I start cucumbers now?", "", "/mycrops"]);
    // Average last frost 15 May: cucumbers go out a week after it and are best at 3 to 5 weeks.
    assert!(shown[0].contains("bot → Fern\n  Go ahead: sow cucumbers indoors"), "{}", shown[0]);
    assert!(shown[1].starts_with("\n2026-04-22 Wed"), "nothing was said: {}", shown[1]);
    assert!(shown[2].contains("You grow 12 crops"), "{}", shown[2]);
}

#[test]
fn ones_data_is_shown_and_forgotten() {
    let shown = practise(&["/export", "/forget", ":1", "/mycrops"]);
    assert!(shown[0].contains("[sowbell-export.json]"), "{}", shown[0]);
    assert!(shown[0].contains("\"name\": \"Fern\""), "{}", shown[0]);
    assert!(shown[2].contains("Done: all that I kept about you is deleted"), "{}", shown[2]);
    assert!(shown[3].contains("Your list is empty"), "{}", shown[3]);
}

#[test]
fn a_long_answer_of_the_group_is_read_on_in_private_and_a_crop_is_offered_inline() {
    let ask = "/ask can I start cucumbers, tomatoes and peppers now?";
    let shown = practise(&[":group", ask, ":1", ":inline cucumber"]);
    assert!(shown[1].contains("Read on in private"), "{}", shown[1]);
    assert!(shown[2].contains("bot → Fern\n"), "{}", shown[2]);
    assert!(shown[3].contains("Cucumber – Go ahead: sow cucumbers indoors"), "{}", shown[3]);
}

#[test]
fn questions_with_figures_are_answered_in_the_chat() {
    let shown = practise(&[
        "I have 4 of 10 basil seeds up",
        "how many bean seeds for 12 plants",
        "pole beans",
        "soil is 8 °C",
        "/mycrops",
    ]);
    assert!(shown[0].contains("4 of 10 sprouted: 40%"), "{}", shown[0]);
    assert!(shown[1].contains("“bean” can mean"), "{}", shown[1]);
    assert!(shown[2].contains("For 12 plants of pole bean, sow "), "{}", shown[2]);
    assert!(shown[3].contains("by soil and date together"), "{}", shown[3]);
    assert!(shown[4].contains("You grow 12 crops"), "nothing changed: {}", shown[4]);
}

#[test]
fn a_sowing_is_told_with_its_temperature() {
    let shown = practise(&[
        "sowed 12 peppers today, the room is 50 °F",
        "/sown 12 peppers at 60 °C",
        "/trays tomato 12, basil 6",
    ]);
    let shown: Vec<String> = shown.iter().map(|said| said.replace('\u{a0}', " ")).collect();
    assert!(shown[0].contains("Noted: 12 peppers"), "{}", shown[0]);
    assert!(shown[0].contains("At 50 °F, don't expect peppers to come up"), "{}", shown[0]);
    assert!(shown[1].contains("140 °F cannot be right for soil or a room"), "{}", shown[1]);
    assert!(shown[2].contains("Tray 2, 36 cells"), "{}", shown[2]);
}

#[test]
fn a_job_that_was_done_is_not_named_on_the_next_mornings() {
    let first = practise(&[":morning"]);
    assert!(first[0].contains("2026-04-22 Wed 07:00, bot → Fern\n  Good morning!"), "{}", first[0]);
    // Basil has two good days left; a job that is left is named again on its last good day.
    let job = "Sow basil indoors";
    let line = first[0].lines().find(|line| line.contains(job)).expect("the job");
    let number = line.trim().split('.').next().expect("its number");

    let left = practise(&[":morning", ":day +30"]);
    assert!(left[1].contains(job), "left undone, it is named again: {}", left[1]);

    let press = button(&first[0], &format!("{number} done"));
    let done = practise(&[":morning", &press, ":day +30"]);
    assert!(done[1].contains("(notice) Noted as done on April 22."), "{}", done[1]);
    assert!(done[1].contains("bot → Fern, changes its message:"), "{}", done[1]);
    assert!(done[1].contains(&format!("{number} is done")), "{}", done[1]);
    assert!(!done[2].contains(job), "it was done: {}", done[2]);
    assert!(done[2].matches("Good morning!").count() > 1, "other jobs are named: {}", done[2]);
}

#[test]
fn a_sowing_that_was_told_has_its_own_dates_and_can_be_taken_back() {
    let told = ["sown 12 basil on 3 April", "/sowings", ":day +4", "/undo"];
    let asked = practise(&told);
    let take_back = button(&asked[3], "Take it back");
    let undone = practise(&[&told[..], &[&take_back, "/sowings"]].concat());
    let put_back = button(&undone[4], "Put it back");
    let shown = practise(&[&told[..], &[&take_back, &put_back, "/sowings"]].concat());
    // Basil takes 5 to 14 days, and goes out from 22 May.
    assert!(shown[0].contains("Up April 8–17") && shown[0].contains("from May 22"), "{}", shown[0]);
    assert!(shown[1].contains("One sowing:"), "{}", shown[1]);
    assert!(shown[2].contains("Look for seedlings of basil (sown April 3)"), "{}", shown[2]);
    // Four days later it is named before it is taken back.
    assert!(shown[3].contains("Nothing is taken back yet"), "{}", shown[3]);
    assert!(shown[4].contains("Taken back and forgotten: 12 basil"), "{}", shown[4]);
    assert!(undone[5].contains("no sowing of yours"), "{}", undone[5]);
    assert!(shown[5].contains("It is as it was before the undo"), "{}", shown[5]);
    assert!(shown[6].contains("One sowing:"), "{}", shown[6]);
}

#[test]
fn mornings_come_at_each_members_own_hour() {
    let shown = practise(&["/hour 6:00", ":day +3"]);
    // Hobart is 16 hours ahead of Denver in late April, so a day ahead by date in the evening.
    assert!(shown[1].contains("2026-04-24 Fri 07:00, bot → Ilse"), "{}", shown[1]);
    assert!(shown[1].contains("2026-04-23 Thu 06:00, bot → Fern"), "{}", shown[1]);
    assert!(shown[1].ends_with("2026-04-25 Sat · Fern, private"), "{}", shown[1]);
}

#[test]
fn only_an_administrator_changes_the_club() {
    let shown = practise(&[":group", "/club zone Chicago", ":oda", "/club zone Chicago", ":who"]);
    assert!(shown[1].contains("bot → group, in reply to Fern\n  Only administrators"));
    assert!(shown[3].contains("bot → group, in reply to Oda"), "{}", shown[3]);
    // Half past six in Denver is half past seven in Chicago.
    let fern = shown[4].lines().find(|line| line.contains("Fern:")).expect("Fern");
    assert!(fern.contains("07:30 in America/Chicago"), "{fern}");
}

#[test]
fn in_the_group_only_commands_and_replies_are_heard() {
    let shown =
        practise(&[":group", "can I start peas?", "/ask can I start peas?", ":reply hello"]);
    assert!(!shown[1].contains("bot →"), "{}", shown[1]);
    assert!(shown[1].contains("In a group the bot hears only commands"), "{}", shown[1]);
    assert!(shown[2].contains("bot → group, in reply to Fern"), "{}", shown[2]);
    assert!(shown[3].contains("bot → group, in reply to Fern"), "{}", shown[3]);
}

#[test]
fn a_crop_grows_by_its_button_and_an_old_button_is_found_again() {
    let asked = practise(&["can I start okra now?"]);
    let remind = button(&asked[0], "Remind me of okra");
    let shown = practise(&["can I start okra now?", &remind, "hello", ":1", ":buttons", ":1"]);
    assert!(shown[1].contains("On your list: okra"), "{}", shown[1]);
    assert!(shown[3].contains("has no button 1"), "a plain answer came after it: {}", shown[3]);
    assert!(shown[4].contains("On your list: okra") && shown[4].contains("[1] Undo"));
    assert!(shown[5].contains("Off your list: okra"), "{}", shown[5]);
}

#[test]
fn the_groups_button_opens_the_private_chat_and_joins() {
    let shown = practise(&[":oda", ":group", "/start", ":1", "when do I sow peas?"]);
    assert!(shown[3].contains("(Oda opens the private chat.)"), "{}", shown[3]);
    assert!(shown[3].contains("You are with Larkhollow Garden Club."), "{}", shown[3]);
    assert!(shown[4].contains("May 15"), "the club's frost dates are hers now: {}", shown[4]);
}

#[test]
fn time_goes_forward_only_and_not_too_far_at_once() {
    let commands = [":day 2026-04-21", ":day -1", ":day +401", ":day 2026-04-22", ":day +0"];
    let shown = practise(&commands);
    let here = |shown: &str| shown.ends_with("2026-04-22 Wed · Fern, private");
    assert!(shown.iter().all(|shown| here(shown)));
    assert!(shown[0].contains("only goes forward") && shown[1].contains("only goes forward"));
    assert!(shown[2].contains("at most 400 days"), "{}", shown[2]);
    assert!(shown[3].contains("07:00, bot → Fern"), "today's reminder had not come: {}", shown[3]);
    assert!(shown[4].contains("It is that day already"), "{}", shown[4]);
    let far = practise(&[":day +400"]);
    assert!(far[0].ends_with("2027-05-27 Thu · Fern, private"));
}

#[test]
fn strange_input_breaks_nothing() {
    let mut typed = b"\xff\xfe\x00 :day\n\n  \n:)\n".to_vec();
    typed.extend("can I start peas? ".repeat(20_000).bytes());
    typed.extend("\n:press 999\n/grow \u{1f33d}\u{202e}\n:quit\nnever read\n".bytes());
    let output = binary(&["practice", "--on", "2026-04-22"], &typed);
    assert!(output.status.success());
    assert!(output.stderr.is_empty(), "{}", String::from_utf8_lossy(&output.stderr));
    let text = String::from_utf8(output.stdout).expect("text");
    assert!(text.contains("the rest was cut off"), "{text}");
    assert!(text.contains("There is no :) here; :help lists what there is."), "{text}");
    assert!(!text.contains("never read"), "{text}");
}

#[test]
fn a_reader_who_went_away_is_no_failure() {
    let mut child = Command::new(env!("CARGO_BIN_EXE_sowbell"))
        .args(["practice", "--on", "2026-04-22"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("started");
    drop(child.stdout.take());
    // The program may have ended before it reads this.
    let _ = child.stdin.take().expect("its input").write_all(b":help\n");
    let output = child.wait_with_output().expect("ended");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
}

#[test]
fn the_clubs_week_comes_when_its_hour_has_come() {
    // 22 April 2026 is a Wednesday; practice begins at half past six.
    let shown = practise(&[":oda", ":group", "/club digest Thursday 8:00", ":day +2", ":day +1"]);
    assert!(shown[2].contains("gets the club's week on Thursday at 8:00"), "{}", shown[2]);
    assert!(shown[3].contains("The club's week, April 23–29,"), "{}", shown[3]);
    assert!(!shown[4].contains("The club's week"), "once: {}", shown[4]);
}

#[test]
fn holidays_and_quiet_days_hold_in_practice() {
    let shown = practise(&[
        "/zone Etc/GMT+7",
        "/holiday until 24 April",
        ":day +1",
        ":day +1",
        "I garden at weekends",
        "no messages on Sundays",
    ]);
    assert!(shown[0].contains("Etc/GMT+7"), "{}", shown[0]);
    assert!(shown[1].contains("No messages before April 24."), "{}", shown[1]);
    assert!(!shown[2].contains("Good morning"), "{}", shown[2]);
    assert!(shown[3].contains("Good morning! Friday, April 24:"), "{}", shown[3]);
    assert!(shown[4].contains("Noted: you garden at weekends."), "{}", shown[4]);
    assert!(shown[5].contains("No messages on Sunday."), "{}", shown[5]);
}

#[test]
fn a_clubs_list_can_be_practised_from_making_it_to_its_morning() {
    let shown = practise(&[
        "/lists",
        "/list join salsa",
        "/mycrops",
        ":group",
        "/list salsa + leek",
        ":oda",
        ":reply @fern /club helper add",
        ":fern",
        "/list salsa + leek",
        ":morning",
    ]);
    assert!(shown[0].contains("Salsa bed: 3 crops"), "{}", shown[0]);
    assert!(shown[1].contains("“Salsa bed” is in your plan now."), "{}", shown[1]);
    // Fern chose tomatoes herself; dill comes from the list only.
    assert!(shown[2].contains("(your own, and from “Salsa bed”)"), "{}", shown[2]);
    assert!(shown[4].contains("Only administrators of this group"), "{}", shown[4]);
    assert!(shown[6].contains("Fern may now change"), "{}", shown[6]);
    assert!(shown[8].contains("On “Salsa bed” now: leek"), "{}", shown[8]);
    assert!(shown[9].contains("Your club put leek on “Salsa bed”"), "{}", shown[9]);
}

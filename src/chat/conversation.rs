//! From an incoming message to an outcome: which handler answers what.

use std::borrow::Cow;

use crate::club::{LanguageTag, as_grown};
use crate::messages::{Button, ChatKind, Incoming, Outgoing, Press, Topic, What};
use crate::planning::Step;
use crate::wording::args;

use super::desk::Desk;
use super::facts::{Change, Expected, Facts, Outcome};
use super::knowledge::Knowledge;
use super::needs::{Command, needs};
use super::sentences::{Request, Said};
use super::term_words::Term;
use super::{
    came_up_talk, club_talk, coordinator_talk, crop_talk, days_talk, frost_talk, hold_talk,
    inline_talk, job_talk, latitude_talk, list_show, list_talk, manners, own_data_talk, place_talk,
    plants_talk, question_talk, read_on, settings_talk, sowing_list, sowing_talk, stop_talk,
    subscribe_talk, term_talk, tray_talk, undo_talk, variety_talk, which_club_talk, whose,
};

/// Decides what `incoming` leads to. Pure: the same facts give the same outcome.
#[must_use]
pub fn decide(knowledge: &Knowledge, incoming: &Incoming, facts: &Facts) -> Outcome {
    if !needs(incoming).facts {
        return Outcome::default();
    }
    if incoming.chat.kind == ChatKind::Private {
        let own = as_grown(&knowledge.catalogue, &facts.varieties);
        let catalogue = own.as_ref().unwrap_or(&knowledge.catalogue);
        let mut desk = Desk::new(knowledge, catalogue, facts, incoming);
        happened(&mut desk);
        return desk.outcome;
    }
    let (incoming, shares) = manners::sharing(knowledge, incoming, facts);
    let public = if shares { Cow::Borrowed(facts) } else { Cow::Owned(facts.public()) };
    // In a group a bare name is everybody's crop; one's own varieties are named or shared there.
    let own = if shares { as_grown(&knowledge.catalogue, &facts.varieties) } else { None };
    let catalogue = own.as_ref().unwrap_or(&knowledge.catalogue);
    let mut desk = Desk::new(knowledge, catalogue, &public, &incoming);
    desk.whole = facts;
    desk.shares = shares;
    happened(&mut desk);
    manners::for_the_group(&mut desk);
    desk.outcome
}

fn happened(desk: &mut Desk<'_>) {
    let incoming = desk.incoming;
    match &incoming.what {
        What::Text { text, .. } => text_came(desk, text),
        What::Pressed { data, .. } => button_pressed(desk, data),
        What::Inline { query, text } => inline_talk::answer(desk, query, text),
        What::AddedToGroup => {
            desk.change(Change::OpenClub { title: incoming.chat.title.clone() });
            greet_group(desk);
        }
        What::RemovedFromGroup => desk.change(Change::CloseClub),
        What::Blocked => desk.change(Change::MemberReachable(false)),
        What::Unblocked => desk.change(Change::MemberReachable(true)),
        What::MovedTo { chat } => desk.change(Change::MoveClub { to: *chat }),
        What::LeftGroup => desk.change(Change::LeaveClub),
        What::Nothing => {}
    }
}

/// The apology for a message that could not be decided.
#[must_use]
pub fn apology(knowledge: &Knowledge, incoming: &Incoming, language: &LanguageTag) -> Outcome {
    use crate::messages::{AnswerPress, Say};
    let speech = knowledge.speech(language, language.units());
    let text = speech.plain("went-wrong");
    let outgoing = match &incoming.what {
        What::Text { message, .. } => vec![Outgoing::Say(Say {
            chat: incoming.chat.id,
            thread: incoming.chat.thread,
            reply_to: (incoming.chat.kind == ChatKind::Group).then_some(*message),
            text,
            ..Say::default()
        })],
        What::Pressed { press, .. } => {
            vec![Outgoing::AnswerPress(AnswerPress { press: press.clone(), notice: Some(text) })]
        }
        _ => Vec::new(),
    };
    Outcome { changes: Vec::new(), outgoing }
}

fn text_came(desk: &mut Desk<'_>, text: &str) {
    if desk.in_private() && !desk.facts.member.reachable {
        desk.change(Change::MemberReachable(true));
    }
    if let Some(club) = desk.facts.club.as_ref().filter(|_| !desk.in_private()) {
        // Whoever speaks in the group belongs to its club, however they open the private chat.
        if !desk.incoming.from.anonymous {
            desk.change(Change::JoinClub(club.id));
        }
    }
    if let Some(command) = Command::read(text) {
        // A command ends whatever the bot was waiting to hear.
        if desk.facts.expected.is_some() {
            desk.change(Change::Expect(None));
        }
        if let Some(request) = command.request {
            run(desk, request, command.rest);
        } else {
            let text = desk.say_key("unknown-command");
            desk.reply(text);
        }
        return;
    }
    if term_talk::explained(desk, text) {
        return;
    }
    if manners::own_matter(desk, text, |desk| place_talk::told(desk, text)) {
        return;
    }
    // A sentence that does what a command does says what it is about, whatever was awaited.
    let sentence = desk.tongue.sentences.read(text);
    // "I sowed peas in March, can I sow more?" and "I have 4 of 10 seeds up" begin like such a
    // sentence and ask all the same.
    let asks = |request| match request {
        Request::Sown | Request::PlantedOut | Request::PottedUp | Request::HardenedOff => {
            text.contains('?')
        }
        Request::HowToHarden | Request::FrostSoon => false,
        _ => question_talk::asks_with_figures(desk, text),
    };
    let tells =
        |said: &Said<'_>| !said.head.is_empty() || sowing_talk::tells_a_sowing(desk, said.rest);
    let sentence = sentence.filter(tells);
    if let Some(said) = sentence.filter(|said| !asks(said.request)) {
        // Whoever says thanks still means to answer what was asked.
        if desk.facts.expected.is_some() && said.request != Request::Thanks {
            desk.change(Change::Expect(None));
        }
        match said.request {
            // Its own words tell which date is which, so all of it is read.
            Request::Frost => {
                manners::own_matter(desk, text, |desk| {
                    if !frost_talk::frost_came(desk, Topic::Mine, text) {
                        frost_talk::frost(desk, Topic::Mine, "");
                    }
                    true
                });
            }
            Request::Sown => {
                manners::own_matter(desk, text, |desk| {
                    // The day may stand in the sentence's frame: "12 basil sown yesterday".
                    let frame = if said.head.is_empty() { text } else { said.head };
                    sowing_talk::sown(desk, said.rest, frame);
                    true
                });
            }
            Request::PlantedOut | Request::PottedUp | Request::HardenedOff => {
                let step = match said.request {
                    Request::PottedUp => Step::PotUp,
                    Request::HardenedOff => Step::HardenOff,
                    _ => Step::PlantOut,
                };
                let told = |desk: &mut Desk<'_>| plants_talk::done(desk, step, said.rest, text);
                if !manners::own_matter(desk, text, told) {
                    question_talk::asked(desk, text);
                }
            }
            request => run(desk, request, said.rest),
        }
        return;
    }
    if let Some(expected) = desk.facts.expected.clone()
        && expected_came(desk, &expected, text)
    {
        return;
    }
    let became = |desk: &mut Desk<'_>, text: &str| {
        plants_talk::lost(desk, text) || came_up_talk::what_became(desk, text)
    };
    let own = |desk: &mut Desk<'_>| became(desk, text) || variety_talk::pasted(desk, text);
    // A packet's text in a group is for the others to read.
    let told = if desk.in_private() {
        own(desk)
    } else {
        manners::own_matter(desk, text, |desk| became(desk, text))
    };
    if told {
        return;
    }
    question_talk::asked(desk, text);
}

/// A question, or a command that only shows something, said again.
pub(super) fn ask_or_run(desk: &mut Desk<'_>, text: &str) {
    match Command::read(text) {
        Some(Command { request: Some(request), rest }) => run(desk, request, rest),
        _ => question_talk::asked(desk, text),
    }
}

/// Takes the text as what the bot was waiting to hear; `false` where it is something else.
fn expected_came(desk: &mut Desk<'_>, expected: &Expected, text: &str) -> bool {
    let understood = match expected {
        Expected::Frost(topic) => frost_talk::frost_came(desk, (*topic).into(), text),
        Expected::FirstFrost { whose, last } => {
            frost_talk::first_frost_came(desk, (*whose).into(), *last, text)
        }
        Expected::Zone(topic) => settings_talk::zone_came(desk, (*topic).into(), text),
        Expected::Hour => settings_talk::hour_came(desk, text),
        Expected::Holiday => days_talk::holiday_came(desk, text),
        Expected::Crops | Expected::WhichToGrow => crop_talk::crops_awaited_came(desk, text),
        Expected::HotAndWet => frost_talk::hot_and_wet_came(desk, Topic::Mine, text),
        Expected::ClubHotAndWet => frost_talk::hot_and_wet_came(desk, Topic::Club, text),
        Expected::Sown => sowing_talk::sown_came(desk, text),
        Expected::Variety => variety_talk::packet_awaited_came(desk, text),
        Expected::WhichSown { told } => sowing_talk::which_came(desk, told, text),
        Expected::Latitude => latitude_talk::latitude_came(desk, text),
        Expected::Place => place_talk::came(desk, text),
        Expected::Forget => own_data_talk::word_came(desk, text),
        Expected::WhichCrop { question } => question_talk::which_came(desk, question, text),
    };
    if understood {
        // The handler may have begun to wait for something else, which then stands.
        let waits_anew =
            desk.outcome.changes.iter().any(|change| matches!(change, Change::Expect(Some(_))));
        if !waits_anew {
            desk.change(Change::Expect(None));
        }
    }
    understood
}

fn run(desk: &mut Desk<'_>, request: Request, rest: &str) {
    let group = !desk.in_private();
    if group && matches!(request, Request::Export | Request::Forget) {
        manners::data_pointer(desk, request);
    } else if group && manners::is_own(request, rest) {
        manners::own_matter(desk, rest, |desk| {
            run_here(desk, request, rest);
            true
        });
    } else {
        run_here(desk, request, rest);
    }
}

fn run_here(desk: &mut Desk<'_>, request: Request, rest: &str) {
    match request {
        Request::Start => start(desk, rest),
        Request::Help => {
            let key = if desk.in_private() { "help-private" } else { "help-group" };
            let text = match key {
                "help-private" => desk.say_key("help-private"),
                _ => desk.say_key("help-group"),
            };
            desk.reply(text);
        }
        Request::Settings => settings_talk::show(desk),
        Request::Frost => frost_talk::frost(desk, Topic::Mine, rest),
        Request::Grow => crop_talk::grow(desk, rest),
        Request::Drop => crop_talk::drop(desk, rest),
        Request::MyCrops => crop_talk::my_crops(desk, 0),
        Request::Now => job_talk::now(desk),
        Request::Trays => tray_talk::trays(desk, rest),
        Request::Ask => {
            if rest.is_empty() {
                let text = desk.say_key("not-understood");
                desk.reply(text);
            } else if desk
                .tongue
                .sentences
                .read(rest)
                .is_some_and(|said| said.request == Request::HowToHarden)
            {
                term_talk::explain(desk, Term::HardeningOff);
            } else {
                question_talk::asked(desk, rest);
            }
        }
        Request::Zone => settings_talk::zone(desk, Topic::Mine, rest),
        Request::Hour => settings_talk::hour(desk, rest),
        Request::Quiet => days_talk::quiet(desk, rest),
        Request::QuietToo => days_talk::quiet_too(desk, rest),
        Request::QuietNoMore => days_talk::quiet_no_more(desk, rest),
        Request::Weekends => days_talk::weekends(desk, rest),
        Request::AtWeekends => days_talk::set_weekends(desk, true),
        Request::AnyDay => days_talk::set_weekends(desk, false),
        Request::Holiday => days_talk::holiday(desk, rest),
        // "I am back, can I start peas?" asks something besides.
        Request::Back if !rest.is_empty() => question_talk::asked(desk, rest),
        Request::Back => days_talk::back(desk),
        Request::Hold => hold_talk::hold(desk, Topic::Mine, rest),
        Request::Place => place_talk::place(desk, rest),
        Request::Club => club_talk::club(desk, rest),
        Request::Lists => list_talk::lists(desk, rest),
        Request::Sown => sowing_talk::sown(desk, rest, ""),
        Request::PlantedOut => {
            if !plants_talk::done(desk, Step::PlantOut, rest, "") {
                question_talk::asked(desk, rest);
            }
        }
        Request::PottedUp | Request::HardenedOff => question_talk::asked(desk, rest),
        Request::HowToHarden => term_talk::explain(desk, Term::HardeningOff),
        Request::FrostSoon => {
            let text = desk.say_key("frost-soon");
            desk.reply(text);
        }
        Request::Sowings => sowing_list::list(desk, 0),
        Request::Variety => variety_talk::variety(desk, rest),
        Request::Undo => undo_talk::undo(desk),
        Request::Latitude => latitude_talk::latitude(desk, rest),
        Request::Export => own_data_talk::export(desk),
        Request::Forget => own_data_talk::forget(desk),
        Request::Stop => stop_talk::stop(desk),
        Request::Thanks => stop_talk::thanks(desk),
    }
}

fn button_pressed(desk: &mut Desk<'_>, data: &str) {
    let Ok(press) = data.parse::<Press>() else {
        let notice = desk.say_key("notice-old-button");
        desk.answer_press(Some(notice));
        return;
    };
    let answered = |desk: &Desk<'_>| {
        desk.outcome
            .outgoing
            .iter()
            .any(|outgoing| matches!(outgoing, Outgoing::AnswerPress(_) | Outgoing::OpenByPress(_)))
    };
    if !desk.in_private() && manners::is_own_press(&press) {
        manners::private_only(desk);
        return;
    }
    if whose::is_somebody_elses(desk, &press) {
        let notice = desk.say_key("notice-not-yours");
        desk.answer_press(Some(notice));
        return;
    }
    match press {
        Press::Job(key, answer) => job_talk::answered(desk, &key, answer),
        Press::Frost(topic, frost) => frost_talk::set(desk, topic, frost),
        Press::AskFrost(topic) => frost_talk::frost(desk, topic, ""),
        Press::Grow(crop) => crop_talk::add(desk, vec![crop]),
        Press::Drop(crop) => crop_talk::take_off(desk, vec![crop]),
        Press::Crops(page) => crop_talk::my_crops(desk, page),
        Press::Now(page, on) => job_talk::now_page(desk, page, on),
        Press::Meant(crop, on) => question_talk::meant(desk, &crop, on),
        Press::Sowings(page) => sowing_list::list(desk, page),
        Press::EndSowing(id, page) => sowing_list::give_up(desk, id, page),
        Press::SowAgain(id) => sowing_talk::sow_again(desk, id),
        Press::SowingLost(id) => plants_talk::lost_by_button(desk, id),
        Press::FollowVariety(id) => variety_talk::follow(desk, id),
        Press::DropVariety(id) => variety_talk::drop_by_button(desk, id),
        Press::Undo(number) | Press::UndoOld(number) => undo_talk::undo_this(desk, number),
        Press::PutBack(number) => undo_talk::put_back(desk, number),
        Press::Hour(time) => settings_talk::set_hour(desk, time),
        Press::AskHour => settings_talk::hour(desk, ""),
        Press::Quiet(days) => days_talk::set_quiet(desk, days),
        Press::AskQuiet => days_talk::quiet(desk, ""),
        Press::Weekends(yes) => days_talk::set_weekends(desk, yes),
        Press::AskHoliday => days_talk::holiday(desk, ""),
        Press::HolidayOver => days_talk::back(desk),
        Press::Zone(topic, zone) => settings_talk::set_zone(desk, topic, zone),
        Press::AskZone(topic) => settings_talk::zone(desk, topic, ""),
        Press::Units(units) => settings_talk::set_units(desk, units),
        Press::Language(topic, tag) => settings_talk::language(desk, topic, &tag),
        Press::AskLanguage(topic) => settings_talk::ask_language(desk, topic),
        Press::Hold(topic, hold) => hold_talk::set(desk, topic, hold),
        Press::Place(place) => place_talk::set_place(desk, place),
        Press::Cover(cover) => place_talk::set_cover(desk, cover),
        Press::AskPlace => place_talk::place(desk, ""),
        Press::ReadOn(message) => read_on::pressed(desk, message),
        Press::Forget => own_data_talk::confirmed(desk),
        Press::DoNotForget => own_data_talk::kept(desk),
        Press::Settings => settings_talk::show(desk),
        Press::ClubPage => club_talk::club(desk, ""),
        Press::Lists => list_show::all(desk),
        Press::List(id) => list_show::one_by_button(desk, id),
        Press::Subscribe(id) => subscribe_talk::subscribe(desk, id),
        Press::Unsubscribe(id) => subscribe_talk::unsubscribe(desk, id),
        Press::ReopenList(id) => list_talk::reopen(desk, id),
        Press::DismissHelper(id) => coordinator_talk::dismiss(desk, id),
        Press::WhichClub => which_club_talk::ask(desk),
        Press::UseClub(id) => which_club_talk::choose(desk, id),
    }
    if !answered(desk) {
        desk.answer_press(None);
    }
}

/// The greeting in a group, with the button that opens the private chat.
fn greet_group(desk: &mut Desk<'_>) {
    let text = desk.say_key("group-greeting");
    let buttons = open_private_button(desk);
    desk.reply_with(text, buttons);
}

/// The button that opens the private chat and joins the member to this club.
fn open_private_button(desk: &Desk<'_>) -> Vec<Vec<Button>> {
    desk.facts
        .club
        .iter()
        .map(|club| {
            vec![Button::open_private(desk.say_key("button-open-private"), club.join_token.clone())]
        })
        .collect()
}

fn start(desk: &mut Desk<'_>, token: &str) {
    if !desk.in_private() {
        greet_group(desk);
        return;
    }
    // A member who comes by a club's button is spoken to with that club's settings at once.
    let joined = desk.facts.invited_to.clone();
    if let Some(club) = &joined {
        desk.change(Change::JoinClub(club.id));
        desk.speak_within(club);
    }
    let name = args().text("name", &desk.facts.member.name);
    let mut lines = vec![desk.say("start-private", &name)];
    match &joined {
        Some(club) => {
            lines.push(desk.say("start-joined", &args().text("club", &club.title)));
            lines.extend(which_club_talk::of_several(desk, club));
        }
        None if !token.is_empty() && !inline_talk::is_own_payload(token) => {
            lines.push(desk.say_key("start-token-unknown"));
        }
        None => {}
    }
    let mut buttons = Vec::new();
    if let Some(garden) = desk.settings.garden.is {
        let frost = desk.frost_words(&garden.frost);
        lines.push(desk.say("start-has-frost", &args().text("frost", frost)));
    } else {
        lines.push(desk.say_key("start-need-frost"));
        desk.expect(Expected::Frost(Topic::Mine.into()));
    }
    if desk.settings.zone.from == crate::club::SettingFrom::Nobody {
        lines.push(desk.say_key("start-need-zone"));
        buttons.push(vec![desk.button("button-zone", Press::AskZone(Topic::Mine))]);
    }
    desk.reply_with(lines.join("\n\n"), buttons);
    // Whoever came to read on gets the whole answer at once.
    if let Some(question) = desk.facts.in_private.question.clone() {
        ask_or_run(desk, &question.text);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn commands_are_read_with_what_follows() {
        let read = |text| Command::read(text).map(|command| (command.request, command.rest));
        assert_eq!(read("/grow tomato, basil"), Some((Some(Request::Grow), "tomato, basil")));
        assert_eq!(read(" /NOW@garden_bot"), Some((Some(Request::Now), "")));
        assert_eq!(read("/frost\n05-15 10-05"), Some((Some(Request::Frost), "05-15 10-05")));
        assert_eq!(read("/dance"), Some((None, "")));
        assert_eq!(read("grow"), None);
        assert_eq!(read("/"), Some((None, "")));
    }
}

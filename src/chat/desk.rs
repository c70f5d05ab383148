//! The desk at which one message is answered: facts, words and a tray for the outcome.

use chrono::{Datelike, NaiveDate};

use crate::catalogue::Catalogue;
use crate::club::{Club, Settings, Sowing};
use crate::messages::{
    AnswerPress, Button, Buttons, ChatKind, Edit, Incoming, Outgoing, Role, Say, Topic, What,
};
use crate::planning::{Basis, Crop, CropId, Frost, Garden};
use crate::reminders::Known;
use crate::wording::{Args, Speech, args, shorten_to_limit};

use super::facts::{Change, Expected, Facts, Outcome};
use super::knowledge::{Knowledge, Tongue};

/// Everything one decision has at hand, and what it has decided so far.
pub(super) struct Desk<'a> {
    pub knowledge: &'a Knowledge,
    /// The crops, in private as the member grows them.
    catalogue: &'a Catalogue,
    pub tongue: &'a Tongue,
    pub speech: Speech,
    pub settings: Settings,
    /// What this chat may know: in a group nothing of the member's garden.
    pub facts: &'a Facts,
    /// What is known in all, for what goes to the private chat.
    pub whole: &'a Facts,
    /// Whether the member asked, in a group, to be answered there by their own garden.
    pub shares: bool,
    pub incoming: &'a Incoming,
    pub today: NaiveDate,
    pub outcome: Outcome,
}

impl<'a> Desk<'a> {
    pub fn new(
        knowledge: &'a Knowledge,
        catalogue: &'a Catalogue,
        facts: &'a Facts,
        incoming: &'a Incoming,
    ) -> Self {
        let settings = facts.settings();
        Self {
            knowledge,
            catalogue,
            tongue: knowledge.tongue(&settings.language.is),
            speech: knowledge.speech_for(&settings),
            today: facts.today(),
            settings,
            facts,
            whole: facts,
            shares: false,
            incoming,
            outcome: Outcome::default(),
        }
    }

    pub fn catalogue(&self) -> &'a Catalogue {
        self.catalogue
    }

    pub fn crop(&self, id: &CropId) -> Option<&'a Crop> {
        self.catalogue().get(id.as_str())
    }

    /// The crop of a sowing, as the variety that it remembers is grown.
    pub fn crop_of(&self, sowing: &Sowing) -> Option<&'a Crop> {
        self.catalogue.variety(sowing.crop.as_str(), sowing.variety.as_deref())
    }

    /// What is known of the member's work.
    pub fn known(&self) -> Known<'a> {
        self.facts.known(self.catalogue)
    }

    /// The crops of the member's plan that the catalogue still lists.
    pub fn own_crops(&self) -> Vec<&'a Crop> {
        self.facts.crops.iter().filter_map(|id| self.crop(id)).collect()
    }

    pub fn garden(&self) -> Option<Garden> {
        self.settings.garden.is
    }

    pub fn in_private(&self) -> bool {
        self.incoming.chat.kind == ChatKind::Private
    }

    pub fn say_key(&self, key: &str) -> String {
        self.speech.plain(key)
    }

    pub fn change(&mut self, change: Change) {
        self.outcome.changes.push(change);
    }

    pub fn expect(&mut self, expected: Expected) {
        self.change(Change::Expect(Some(expected)));
    }

    /// Answers with a message: a reply in a group, a plain message in private.
    pub fn reply(&mut self, text: impl Into<String>) {
        self.reply_with(text, Vec::new());
    }

    pub fn reply_with(&mut self, text: impl Into<String>, buttons: Buttons) {
        let text = text.into();
        let reply_to = match (&self.incoming.what, self.in_private()) {
            (What::Text { message, .. }, false) => Some(*message),
            (What::Pressed { message, .. }, false) => *message,
            _ => None,
        };
        let say = Say {
            chat: self.incoming.chat.id,
            thread: self.incoming.chat.thread,
            without_topic: None,
            reply_to,
            text: shorten_to_limit(&text, crate::messages::LONGEST_TEXT).into_owned(),
            buttons,
        };
        self.outcome.outgoing.push(Outgoing::Say(say));
    }

    /// Changes the message that was pressed, or says it anew where that is out of reach.
    pub fn edit_with(&mut self, text: impl Into<String>, buttons: Buttons) {
        let text = text.into();
        let What::Pressed { message: Some(message), .. } = self.incoming.what else {
            self.reply_with(text, buttons);
            return;
        };
        let edit = Edit {
            chat: self.incoming.chat.id,
            message,
            text: shorten_to_limit(&text, crate::messages::LONGEST_TEXT).into_owned(),
            buttons,
        };
        self.outcome.outgoing.push(Outgoing::Edit(edit));
    }

    /// Ends the waiting mark of the press, with a short notice where there is one.
    pub fn answer_press(&mut self, notice: Option<String>) {
        if let What::Pressed { press, .. } = &self.incoming.what {
            let notice = notice.map(|text| shorten_to_limit(&text, 200).into_owned());
            let answer = AnswerPress { press: press.clone(), notice };
            self.outcome.outgoing.push(Outgoing::AnswerPress(answer));
        }
    }

    /// Whether the sender may change the club's settings; says why not where they may not.
    pub fn may_change_club(&mut self) -> bool {
        let elsewhere = self.say_key("club-only-in-group");
        let not = self.say_key("club-not-administrator");
        let helper = self.is_helper();
        self.coordinates(helper, elsewhere, not)
    }

    /// Whether the sender may change the club's lists; says why not where they may not.
    pub fn may_keep_lists(&mut self) -> bool {
        let elsewhere = self.say_key("lists-only-in-group");
        let not = self.say_key("lists-not-coordinator");
        let helper = self.is_helper();
        self.coordinates(helper, elsewhere, not)
    }

    /// Whether the sender may name helpers, which helpers may not; says why not.
    pub fn may_name_helpers(&mut self) -> bool {
        let elsewhere = self.say_key("club-only-in-group");
        let not = self.say_key("helpers-not-administrator");
        self.coordinates(false, elsewhere, not)
    }

    /// Whether an administrator of the group named the sender to help with the club.
    fn is_helper(&self) -> bool {
        // The account of those who write anonymously is everybody's, so it is no helper's.
        let member = self.facts.member.id;
        !self.incoming.from.anonymous
            && self.facts.helpers.iter().any(|helper| helper.member == member)
    }

    fn coordinates(&mut self, as_helper: bool, elsewhere: String, not: String) -> bool {
        if self.in_private() || self.facts.club.is_none() {
            self.refuse(elsewhere);
            return false;
        }
        match self.incoming.from.role {
            Role::Administrator => true,
            Role::Member | Role::Unknown if as_helper => true,
            Role::Member => {
                self.refuse(not);
                false
            }
            Role::Unknown => {
                let text = self.say_key("club-role-unknown");
                self.refuse(text);
                false
            }
        }
    }

    /// From here on `club` is the one whose settings hold.
    pub fn speak_within(&mut self, club: &Club) {
        self.settings = Settings::of(Some(&self.facts.member), Some(club));
        self.tongue = self.knowledge.tongue(&self.settings.language.is);
        self.speech = self.knowledge.speech_for(&self.settings);
    }

    /// Says no: over the button where one was pressed, as a message otherwise.
    pub fn refuse(&mut self, text: String) {
        if matches!(self.incoming.what, What::Pressed { .. }) {
            self.answer_press(Some(text));
        } else {
            self.reply(text);
        }
    }

    /// A garden's frost in words.
    pub fn frost_words(&self, frost: &Frost) -> String {
        let voice = &self.speech.voice;
        let Frost::Dates(dates) = frost else { return self.say_key("frost-words-free") };
        let args = args().text("last", voice.month_day(dates.stated_last()));
        match (dates.stated_first(), dates.basis()) {
            (Some(first), Basis::Average) => {
                voice.say("frost-words", &args.text("first", voice.month_day(first)))
            }
            (Some(first), Basis::Trusted) => {
                voice.say("frost-words-trusted", &args.text("first", voice.month_day(first)))
            }
            (None, _) => voice.say("frost-words-last-only", &args),
        }
    }

    /// A date, with its year where that is not this year.
    pub fn date(&self, date: NaiveDate) -> String {
        if date.year() == self.today.year() {
            self.speech.voice.date(date)
        } else {
            self.speech.voice.date_with_year(date)
        }
    }

    pub fn say(&self, key: &str, args: &Args) -> String {
        self.speech.voice.say(key, args)
    }

    /// Whose setting an expectation or a button is about.
    pub fn topic_allowed(&mut self, topic: Topic) -> bool {
        topic == Topic::Mine || self.may_change_club()
    }

    pub fn button(&self, key: &str, press: crate::messages::Press) -> Button {
        Button::press(self.say_key(key), press)
    }
}

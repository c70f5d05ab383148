//! The facts that deciding needs, and the changes that it may ask for.

use chrono::{DateTime, NaiveDate, Utc};
use chrono_tz::Tz;
use serde::{Deserialize, Serialize};

use super::understand::Subject;
use crate::catalogue::Catalogue;
use crate::club::{
    Club, ClubId, ClubList, Digest, Growing, Habits, Helper, JobMark, LanguageTag, LastChange,
    ListId, Mark, Member, MemberId, ReminderTime, Settings, Sowing, Units, Variety,
};
use crate::messages::{Outgoing, Topic};
use crate::planning::{Cover, CropId, Frost, Hold, HotAndWet, JobKey, MonthDay, Place};
use crate::reminders::Known;

/// Everything the store knows that a decision may depend on; read within its transaction.
#[derive(Debug, Clone)]
pub struct Facts {
    /// Now, read once at the edge.
    pub now: DateTime<Utc>,
    /// The person who wrote or pressed.
    pub member: Member,
    /// The club of the group it happened in or, in private, the one that is meant where the member
    /// belongs to several.
    pub club: Option<Club>,
    /// All the clubs that the member belongs to, the one that is meant in private first.
    pub clubs: Vec<Club>,
    /// How many belong to the club of the group; only where [`super::Needs`] asks.
    pub reach: Option<Reach>,
    /// The club's helpers; in a group only.
    pub helpers: Vec<Helper>,
    /// The club's lists, those that are archived included; only where [`super::Needs`] asks.
    pub lists: Vec<ClubList>,
    /// The list of another club whose code the text carries.
    pub offered_list: Option<ClubList>,
    /// The club whose join token the text carries.
    pub invited_to: Option<Club>,
    /// What the member grows, by their own choice and by the club's lists.
    pub growing: Growing,
    /// The crops of the member's plan: [`Growing::crops`] of `growing`.
    pub crops: Vec<CropId>,
    /// What is kept of the member's jobs.
    pub marks: Vec<JobMark>,
    /// The member's recorded sowings, the earliest recorded first.
    pub sowings: Vec<Sowing>,
    /// The member's varieties, the one told first at the front.
    pub varieties: Vec<Variety>,
    /// The number that the member's next change gets in the journal.
    pub next_change: i64,
    /// The member's last change that can be taken back.
    pub last_change: Option<LastChange>,
    /// What the bot last asked this person in this chat and waits to hear.
    pub expected: Option<Expected>,
    /// What this person last asked in this chat and topic, not long ago.
    pub subject: Option<Subject>,
    /// What an answer in the private chat needs beside.
    pub in_private: InPrivate,
}

/// What an answer in the private chat needs beside; looked up where [`super::needs`] asks for it.
#[derive(Debug, Clone, Default)]
pub struct InPrivate {
    /// The club whose settings the member inherits there.
    pub club: Option<Club>,
    /// All that is kept about the member, as JSON.
    pub own_data: Option<serde_json::Value>,
    /// The question of a group that is to be read on.
    pub question: Option<GroupQuestion>,
}

/// How many belong to a club, and how many of them the bot may write to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reach {
    /// Members who have not left.
    pub members: i64,
    /// Those who have opened the private chat and did not block the bot.
    pub reached: i64,
}

/// A question of a group whose answer was short there.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GroupQuestion {
    /// Its words.
    pub text: String,
    /// What it may lean on: what was asked before it.
    pub before: Option<Subject>,
}

impl Facts {
    /// What holds for the member.
    #[must_use]
    pub fn settings(&self) -> Settings {
        Settings::of(Some(&self.member), self.club.as_ref())
    }

    /// What the group may know: the member's language and units, and nothing of their garden,
    /// their place or their plans.
    #[must_use]
    pub fn public(&self) -> Self {
        // Named one by one, so that whatever is added must be decided on.
        let Self {
            now,
            member,
            club,
            clubs: _,
            reach,
            helpers,
            lists,
            offered_list,
            invited_to,
            growing: _,
            crops: _,
            marks: _,
            sowings: _,
            varieties,
            next_change,
            last_change: _,
            expected,
            subject,
            in_private: _,
        } = self;
        Self {
            now: *now,
            member: member.public(),
            club: club.clone(),
            clubs: Vec::new(),
            reach: *reach,
            helpers: helpers.clone(),
            lists: lists.clone(),
            offered_list: offered_list.clone(),
            invited_to: invited_to.clone(),
            growing: Growing::default(),
            crops: Vec::new(),
            marks: Vec::new(),
            sowings: Vec::new(),
            // Only who names their own variety is answered by it.
            varieties: varieties.clone(),
            next_change: *next_change,
            last_change: None,
            expected: expected.clone(),
            subject: subject.clone(),
            in_private: InPrivate::default(),
        }
    }

    /// What is known of the member's work; `catalogue` has the crops as they grow them.
    #[must_use]
    pub fn known<'a>(&'a self, catalogue: &'a Catalogue) -> Known<'a> {
        Known { marks: &self.marks, sowings: &self.sowings, catalogue: Some(catalogue) }
    }

    /// Today at the member's place.
    #[must_use]
    pub fn today(&self) -> NaiveDate {
        self.now.with_timezone(&self.settings().zone.is).date_naive()
    }
}

/// What the bot waits to hear next from a person in a chat; kept as an ordinary row.
///
/// Its JSON form outlives a release and is pinned by a test.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Expected {
    /// Frost dates, the member's or the club's.
    Frost(ExpectedTopic),
    /// The first autumn frost that belongs to a last spring frost.
    FirstFrost {
        /// Whose.
        whose: ExpectedTopic,
        /// The last spring frost, which came alone.
        last: MonthDay,
    },
    /// A time zone.
    Zone(ExpectedTopic),
    /// A reminder time.
    Hour,
    /// The day on which a holiday is over.
    Holiday,
    /// Crops to add.
    Crops,
    /// The hot and the wet months of a garden without frost.
    HotAndWet,
    /// The same of the club's place.
    ClubHotAndWet,
    /// Which crop a question meant; the question is asked again with it.
    WhichCrop {
        /// The question as it was asked.
        question: String,
    },
    /// Which crop to add to the list.
    WhichToGrow,
    /// What was sown.
    Sown,
    /// What a packet says.
    Variety,
    /// Which of several crops a word means that the member said they sowed.
    WhichSown {
        /// What they told.
        told: String,
    },
    /// How far north.
    Latitude,
    /// Where seedlings are raised and what covers the beds.
    Place,
    /// The word that confirms that everything is to be deleted.
    Forget,
}

/// Whose setting is expected.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ExpectedTopic {
    /// The member's.
    Mine,
    /// The club's.
    Club,
}

impl From<Topic> for ExpectedTopic {
    fn from(topic: Topic) -> Self {
        match topic {
            Topic::Mine => Self::Mine,
            Topic::Club => Self::Club,
        }
    }
}

impl From<ExpectedTopic> for Topic {
    fn from(topic: ExpectedTopic) -> Self {
        match topic {
            ExpectedTopic::Mine => Self::Mine,
            ExpectedTopic::Club => Self::Club,
        }
    }
}

/// A change of what is kept. "The member" is the one of [`Facts`], "the club" likewise.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Change {
    /// The member's own frost.
    MemberFrost(Option<Frost>),
    /// The member's own zone.
    MemberZone(Option<Tz>),
    /// The member's own language.
    MemberLanguage(Option<LanguageTag>),
    /// The member's own units.
    MemberUnits(Option<Units>),
    /// When the member's reminder comes.
    MemberReminderTime(ReminderTime),
    /// The days on which the member gardens and wants to hear of it.
    MemberHabits(Habits),
    /// The hot and the wet months, as the member wrote them.
    MemberHotAndWet(Option<String>),
    /// The hot and the wet months as they were understood.
    MemberMonths(Option<HotAndWet>),
    /// Where the member raises seedlings.
    MemberPlace(Option<Place>),
    /// What covers the member's beds.
    MemberCover(Option<Cover>),
    /// The cold spell that the member waits out.
    MemberHold(Option<Hold>),
    /// Whether the bot may write to the member first.
    MemberReachable(bool),
    /// Crops added to the member's list; those on it already are left as they are.
    AddCrops(Vec<CropId>),
    /// Crops taken off the member's list.
    DropCrops(Vec<CropId>),
    /// Crops that the member leaves out of lists.
    SkipCrops(Vec<CropId>),
    /// Crops that the member does not leave out of lists any more.
    UnskipCrops(Vec<CropId>),
    /// The member subscribes to a list of the club.
    Subscribe(ListId),
    /// The member does not subscribe to a list any more.
    Unsubscribe(ListId),
    /// What the member said of a job; `None` takes it back.
    MarkJob(JobKey, Option<Mark>),
    /// A sowing to record; its number is the store's to give.
    RecordSowing(Sowing),
    /// A recorded sowing as it is now.
    KeepSowing(Sowing),
    /// A recorded sowing that was none.
    RemoveSowing(i64),
    /// A variety as it is told now, in the place of the one with the same crop and name; from now
    /// on it is the one that is followed. Its number is the store's to give.
    KeepVariety(Variety),
    /// A variety that is grown no longer.
    RemoveVariety(i64),
    /// Changes of the crops, of marks, of sowings and of varieties that are taken back together.
    Together(Vec<Change>),
    /// Takes back the member's last change, if it has this number.
    Undo(i64),
    /// Degrees from the equator, north positive.
    MemberLatitude(Option<i64>),
    /// What the bot waits to hear in this chat; `None` ends the waiting.
    Expect(Option<Expected>),
    /// What the member asked in this chat and topic; a question that follows may lean on it.
    Asked(Subject),
    /// The same in the member's private chat, whatever chat this is.
    ExpectInPrivate(Option<Expected>),
    /// A question of this group whose answer was short, by its message.
    KeepQuestion {
        /// The message.
        message: i32,
        /// The question.
        question: GroupQuestion,
    },
    /// All that is kept about the member is deleted; their clubs stay.
    Forget,
    /// The member belongs to this club.
    JoinClub(ClubId),
    /// The member left the club of this chat.
    LeaveClub,
    /// This chat is a club's group; made when it is new, taken up again when it was left.
    OpenClub {
        /// The group's title.
        title: String,
    },
    /// The bot was removed from this chat.
    CloseClub,
    /// The group of this chat has a new id.
    MoveClub {
        /// The new id.
        to: i64,
    },
    /// The club's frost.
    ClubFrost(Option<Frost>),
    /// The club's zone.
    ClubZone(Option<Tz>),
    /// The club's language.
    ClubLanguage(Option<LanguageTag>),
    /// When the club's group gets its week; `None` for never.
    ClubDigest(Option<Digest>),
    /// The cold spell that the club waits out.
    ClubHold(Option<Hold>),
    /// The hot and the wet months of the club's place, as they were written.
    ClubHotAndWet(Option<String>),
    /// Those months as they were understood.
    ClubMonths(Option<HotAndWet>),
    /// A change of the club's lists.
    List(ListChange),
    /// This person is a helper of the club.
    NameHelper {
        /// The platform's id of the person.
        user: i64,
        /// Their first name.
        name: String,
    },
    /// The member is no helper of the club any more.
    DismissHelper(MemberId),
}

/// A change of the club's lists; a list of another club is left alone.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ListChange {
    /// A new list.
    Make {
        /// Its name.
        name: String,
        /// A line of text about it.
        note: Option<String>,
        /// Its crops.
        crops: Vec<CropId>,
    },
    /// Crops come on it.
    Add(ListId, Vec<CropId>),
    /// Crops go off it.
    TakeOff(ListId, Vec<CropId>),
    /// It has another name.
    Rename(ListId, String),
    /// It has another line of text.
    Note(ListId, Option<String>),
    /// It is put away: in nobody's plan any more, and no code leads to it.
    Archive(ListId),
    /// It is there again.
    Reopen(ListId),
    /// Its code works in other clubs.
    Share(ListId),
}

/// What was decided: changes to keep and messages to send, both in order.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Outcome {
    /// Changes.
    pub changes: Vec<Change>,
    /// Messages.
    pub outgoing: Vec<Outgoing>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_form_of_what_is_expected_is_pinned() {
        for (expected, json) in [
            (Expected::Frost(ExpectedTopic::Mine), r#"{"frost":"mine"}"#),
            (
                Expected::FirstFrost {
                    whose: ExpectedTopic::Club,
                    last: MonthDay::new(5, 15).expect("a day"),
                },
                r#"{"first_frost":{"whose":"club","last":"05-15"}}"#,
            ),
            (Expected::Zone(ExpectedTopic::Club), r#"{"zone":"club"}"#),
            (Expected::Hour, r#""hour""#),
            (Expected::Holiday, r#""holiday""#),
            (Expected::Crops, r#""crops""#),
            (Expected::HotAndWet, r#""hot_and_wet""#),
            (Expected::ClubHotAndWet, r#""club_hot_and_wet""#),
            (Expected::WhichToGrow, r#""which_to_grow""#),
            (Expected::Sown, r#""sown""#),
            (Expected::Variety, r#""variety""#),
            (Expected::Latitude, r#""latitude""#),
            (
                Expected::WhichSown { told: "6 marigolds".to_owned() },
                r#"{"which_sown":{"told":"6 marigolds"}}"#,
            ),
            (Expected::Place, r#""place""#),
            (Expected::Forget, r#""forget""#),
            (
                Expected::WhichCrop { question: "marigolds?".to_owned() },
                r#"{"which_crop":{"question":"marigolds?"}}"#,
            ),
        ] {
            assert_eq!(serde_json::to_string(&expected).expect("JSON"), json);
            assert_eq!(serde_json::from_str::<Expected>(json).expect("read"), expected);
        }
    }
}

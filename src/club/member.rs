//! A member and a club, and which of the two a setting comes from.

use chrono_tz::Tz;

use super::{Digest, Habits, LanguageTag, ReminderTime, Units};
use crate::planning::{Cover, Frost, Garden, Hold, HotAndWet, Place};

/// The store's number of a club; it outlives every change of the group's own id.
pub type ClubId = i64;

/// The store's number of a member.
pub type MemberId = i64;

/// A garden club and what its coordinator set for all.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Club {
    /// The store's number.
    pub id: ClubId,
    /// The platform's id of the group; `None` when the bot was removed from it.
    pub chat: Option<i64>,
    /// The group's title.
    pub title: String,
    /// Frost at the club's place.
    pub frost: Option<Frost>,
    /// Time zone.
    pub zone: Option<Tz>,
    /// Language.
    pub language: Option<LanguageTag>,
    /// When the group gets its week.
    pub digest: Option<Digest>,
    /// The cold spell that the club waits out.
    pub hold: Option<Hold>,
    /// For a place without frost: the hot and the wet months as they were written.
    pub hot_and_wet: Option<String>,
    /// Those months as they were understood.
    pub months: Option<HotAndWet>,
    /// The opaque token of the button that joins a member to this club.
    pub join_token: String,
}

/// A member and what they set for themselves; what is `None` comes from the club.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Member {
    /// The store's number.
    pub id: MemberId,
    /// The platform's id of the person.
    pub user: i64,
    /// The first name, as the platform tells it.
    pub name: String,
    /// Whether a private chat is open, so that the bot may write first.
    pub reachable: bool,
    /// Frost in the member's own garden.
    pub frost: Option<Frost>,
    /// Time zone.
    pub zone: Option<Tz>,
    /// Language.
    pub language: Option<LanguageTag>,
    /// The language that their app was set to when they last wrote; for where nobody chose one.
    pub app_language: Option<LanguageTag>,
    /// Units of temperature and length.
    pub units: Option<Units>,
    /// When the morning reminder comes.
    pub reminder_time: ReminderTime,
    /// On which days they garden and want to hear of it.
    pub habits: Habits,
    /// For a garden without frost: the hot and the wet months as the member wrote them.
    pub hot_and_wet: Option<String>,
    /// Degrees from the equator, north positive, -90 to 90; for what the length of days decides.
    pub latitude: Option<i64>,
    /// Those months as they were understood.
    pub months: Option<HotAndWet>,
    /// Where they raise seedlings.
    pub place: Option<Place>,
    /// What covers their beds.
    pub cover: Option<Cover>,
    /// The cold spell that they wait out.
    pub hold: Option<Hold>,
}

impl Member {
    /// The member as a group may know them: nothing of their garden, their place or their plans.
    #[must_use]
    pub fn public(&self) -> Self {
        // Named one by one, so that whatever is added must be decided on.
        let Self {
            id,
            user,
            name,
            reachable,
            frost: _,
            zone: _,
            language,
            app_language,
            units,
            reminder_time,
            habits: _,
            hot_and_wet: _,
            latitude: _,
            months: _,
            place: _,
            cover: _,
            hold: _,
        } = self;
        Self {
            id: *id,
            user: *user,
            name: name.clone(),
            reachable: *reachable,
            frost: None,
            zone: None,
            language: language.clone(),
            app_language: app_language.clone(),
            units: *units,
            reminder_time: *reminder_time,
            habits: Habits::default(),
            hot_and_wet: None,
            latitude: None,
            months: None,
            place: None,
            cover: None,
            hold: None,
        }
    }
}

/// Where a setting comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SettingFrom {
    /// The member set it.
    Member,
    /// The club set it.
    Club,
    /// Nobody set it.
    Nobody,
}

/// A setting that holds for a member, and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Setting<T> {
    /// The value.
    pub is: T,
    /// Who set it.
    pub from: SettingFrom,
}

/// What holds for one member: their own choice first, then the club's, then the default. The
/// language has their app's before the default.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Settings {
    /// The garden; `None` where nobody has given frost dates.
    pub garden: Setting<Option<Garden>>,
    /// The cold spell that is waited out: the longer of the member's and the club's.
    pub hold: Setting<Option<Hold>>,
    /// The time zone, UTC where nobody set one.
    pub zone: Setting<Tz>,
    /// The language. Where nobody set one it is the app's, and English where that is not known.
    pub language: Setting<LanguageTag>,
    /// The units, from the language's region where the member chose none.
    pub units: Units,
}

impl Settings {
    /// What holds for `member` within `club`.
    #[must_use]
    pub fn of(member: Option<&Member>, club: Option<&Club>) -> Self {
        fn pick<T>(own: Option<T>, club: Option<T>) -> Setting<Option<T>> {
            match (own, club) {
                (Some(is), _) => Setting { is: Some(is), from: SettingFrom::Member },
                (None, Some(is)) => Setting { is: Some(is), from: SettingFrom::Club },
                (None, None) => Setting { is: None, from: SettingFrom::Nobody },
            }
        }
        let frost = pick(member.and_then(|m| m.frost), club.and_then(|c| c.frost));
        let zone = pick(member.and_then(|m| m.zone), club.and_then(|c| c.zone));
        let language =
            pick(member.and_then(|m| m.language.clone()), club.and_then(|c| c.language.clone()));
        let app = || member.and_then(|m| m.app_language.clone());
        let is = language.is.or_else(app).unwrap_or_default();
        let language = Setting { is, from: language.from };
        let units = member.and_then(|m| m.units).unwrap_or_else(|| language.is.units());
        let (place, cover) = (member.and_then(|m| m.place), member.and_then(|m| m.cover));
        let months = member.and_then(|m| m.months).or_else(|| club.and_then(|c| c.months));
        let (own, clubs) = (member.and_then(|m| m.hold), club.and_then(|c| c.hold));
        let hold = Hold::longer(own, clubs);
        let from = match hold {
            None => SettingFrom::Nobody,
            hold if hold == own => SettingFrom::Member,
            Some(_) => SettingFrom::Club,
        };
        let hold = Setting { is: hold, from };
        let garden = frost
            .is
            .map(|frost| Garden::of(frost).with(place, cover).holding(hold.is).with_months(months));
        Self {
            garden: Setting { is: garden, from: frost.from },
            hold,
            zone: Setting { is: zone.is.unwrap_or(Tz::UTC), from: zone.from },
            language,
            units,
        }
    }
}

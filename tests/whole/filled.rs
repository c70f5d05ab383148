//! A database with members in it, filled without the chat platform.

#![allow(clippy::panic, dead_code, reason = "a test stops where it is wrong")]

use chrono::{DateTime, Utc};
use chrono_tz::Tz;
use sowbell::chat::Change;
use sowbell::club::ReminderTime;
use sowbell::messages::{Chat, ChatKind, Incoming, Person, Role, What};
use sowbell::planning::{Basis, CropId, Frost, FrostDates, MonthDay};
use sowbell::store::{Store, StoreError};

/// How many members are kept in one transaction.
const TOGETHER: usize = 500;

/// A garden with an average last frost on May 15 and a first one on October 5.
pub fn garden() -> Frost {
    let day = |month, day| MonthDay::new(month, day);
    let dates = day(5, 15).and_then(|last| FrostDates::new(last, day(10, 5), Basis::Average).ok());
    Frost::Dates(dates.unwrap_or_else(|| panic!("a season from May to October")))
}

/// Makes these people members who may be written to at seven, with the same garden, in UTC.
/// `crops` gives the list of the n-th.
///
/// # Errors
/// When the store fails.
pub async fn fill(
    database_url: &str,
    users: &[(i64, String)],
    crops: impl Fn(usize) -> Vec<CropId>,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let store = Store::open(database_url).await?;
    let numbered: Vec<_> = users.iter().enumerate().collect();
    for some in numbered.chunks(TOGETHER) {
        let mut work = store.begin().await?;
        for &(number, (user, name)) in some {
            let from_them = said_in_private(*user, name);
            let facts = work.facts(&from_them, None, now).await?;
            let changes = [
                Change::MemberFrost(Some(garden())),
                Change::MemberZone(Some(Tz::UTC)),
                Change::MemberReminderTime(ReminderTime::default()),
                Change::AddCrops(crops(number)),
                Change::MemberReachable(true),
            ];
            for change in changes {
                work.apply(&facts, &from_them, &change, now).await?;
            }
        }
        work.commit().await?;
    }
    store.close().await;
    Ok(())
}

fn said_in_private(user: i64, name: &str) -> Incoming {
    Incoming {
        chat: Chat { id: user, kind: ChatKind::Private, title: String::new(), thread: None },
        from: Person {
            user,
            name: name.to_owned(),
            is_bot: false,
            anonymous: false,
            language: None,
            role: Role::Unknown,
        },
        what: What::Nothing,
    }
}

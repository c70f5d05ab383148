//! The practice's own world: its clock, its ids, and the app and sender that live in it.

use std::sync::atomic::{AtomicI64, Ordering};
use std::sync::{Arc, Mutex, PoisonError};

use anyhow::Context;
use chrono::{DateTime, NaiveDate, Utc};
use chrono_tz::Tz;

use super::cast::{self, CLUB_ZONE, Place, Who};
use super::phones::{Phones, Shows, Standing};
use crate::app::{App, Clock, SendLimits, Sender, SenderStep, Update};
use crate::chat::{Facts, Knowledge};
use crate::club::ReminderTime;
use crate::messages::{Button, Does, Incoming, UpdateKey, What};
use crate::store::Store;

/// The id of the bot itself.
const BOT: i64 = 4_000;

/// When practice begins: half past six, before anybody's reminder.
const BEGINS_AT: u16 = 6 * 60 + 30;

/// A phone takes whatever it gets: limits would only make whoever practises wait.
const NO_LIMITS: SendLimits = SendLimits {
    overall_per_second: 1_000_000,
    chat_per_second: 1_000_000,
    group_per_minute: 1_000_000,
};

/// What a person's own time looks like.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OwnTime {
    /// The zone that holds for them.
    pub zone: Tz,
    /// When their reminder comes.
    pub reminder: ReminderTime,
}

/// The world of one practice.
pub struct World {
    app: App,
    sender: Sender,
    phones: Phones,
    clock: Clock,
    now: Arc<Mutex<DateTime<Utc>>>,
    updates: AtomicI64,
}

/// What came of a press.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pressed {
    /// The bot was told.
    Told,
    /// The button opened the private chat, and the invitation was sent there.
    OpenedPrivate,
    /// There is no button of this number.
    NoSuchButton,
}

impl World {
    /// An empty world on the morning of this day.
    ///
    /// # Errors
    /// When the embedded data or the database in memory cannot be opened.
    pub async fn open(on: NaiveDate) -> anyhow::Result<Self> {
        let knowledge = Knowledge::embedded().context("the built-in data is broken")?;
        let store = Store::open("sqlite::memory:").await?;
        let begins = ReminderTime::from_minutes(BEGINS_AT).unwrap_or_default();
        let now = Arc::new(Mutex::new(begins.on(on, CLUB_ZONE)));
        let read = Arc::clone(&now);
        Ok(Self {
            app: App::new(store, Arc::new(knowledge)),
            sender: Sender::new(NO_LIMITS),
            phones: Phones::default(),
            clock: Clock::reading(move || *read.lock().unwrap_or_else(PoisonError::into_inner)),
            now,
            updates: AtomicI64::new(0),
        })
    }

    /// The present moment of this world.
    pub fn now(&self) -> DateTime<Utc> {
        self.clock.now()
    }

    fn incoming(who: Who, place: Place, what: What) -> Incoming {
        Incoming { chat: cast::chat(who, place), from: who.person(), what }
    }

    /// Something happens by this person in this place, and the bot answers.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn happens(&mut self, who: Who, place: Place, what: What) -> anyhow::Result<()> {
        let update = self.updates.fetch_add(1, Ordering::Relaxed);
        let incoming = Some(Self::incoming(who, place, what));
        let update = Update { key: UpdateKey { bot: BOT, update }, incoming };
        self.app.take_in(&[update], self.now()).await?;
        // A change can make a morning due at once.
        self.tick().await
    }

    /// A person writes; `addressed` says whether it surely speaks to the bot.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn says(
        &mut self,
        who: Who,
        place: Place,
        text: &str,
        addressed: bool,
    ) -> anyhow::Result<()> {
        let message = self.phones.wrote(who.name(), who.person().user);
        let text = text.to_owned();
        self.happens(who, place, What::Text { text, message, addressed, replies_to: None }).await
    }

    /// A person replies to what `whom` wrote.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn replies(
        &mut self,
        who: Who,
        place: Place,
        whom: Who,
        text: &str,
        addressed: bool,
    ) -> anyhow::Result<()> {
        let message = self.phones.wrote(who.name(), who.person().user);
        let (text, replies_to) = (text.to_owned(), Some(Box::new(whom.person())));
        self.happens(who, place, What::Text { text, message, addressed, replies_to }).await
    }

    /// A person types the bot's name and some words in any chat.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn types_inline(&mut self, who: Who, text: &str) -> anyhow::Result<()> {
        let query = format!("practice-{}", self.updates.load(Ordering::Relaxed));
        let what = What::Inline { query, text: text.to_owned() };
        self.happens(who, Place::Private, what).await
    }

    /// A person presses the button with this number, from 1, under the message in view.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn presses(
        &mut self,
        who: Who,
        place: Place,
        number: usize,
    ) -> anyhow::Result<Pressed> {
        let standing = self.phones.in_view(cast::chat_id(who, place));
        let index = number.checked_sub(1);
        let button = standing.as_ref().zip(index).and_then(|(standing, index)| {
            standing.numbered().nth(index).map(|button| (standing, button.does.clone()))
        });
        let Some((standing, does)) = button else { return Ok(Pressed::NoSuchButton) };
        match does {
            Does::OpenPrivate(token) => {
                // The platform's own app opens the chat and sends this when "start" is pressed.
                let text = format!("/start {token}");
                self.says(who, Place::Private, &text, true).await?;
                Ok(Pressed::OpenedPrivate)
            }
            Does::Press(press) => {
                let number = self.updates.load(Ordering::Relaxed);
                let what = What::Pressed {
                    press: format!("practice-{number}"),
                    message: Some(standing.message),
                    data: press.to_string(),
                    shown: Some(standing.shown()),
                };
                self.happens(who, place, what).await?;
                if let Some(payload) = self.phones.opened() {
                    self.says(who, Place::Private, &format!("/start {payload}"), true).await?;
                    return Ok(Pressed::OpenedPrivate);
                }
                Ok(Pressed::Told)
            }
        }
    }

    /// The last message with buttons that this person sees in this place; it comes into view.
    pub fn scroll_to_buttons(&self, who: Who, place: Place) -> Option<Standing> {
        self.phones.scroll_to_buttons(cast::chat_id(who, place))
    }

    /// All buttons that this person sees in this place.
    pub fn all_buttons(&self, who: Who, place: Place) -> Vec<Button> {
        self.phones.all_buttons(cast::chat_id(who, place))
    }

    /// What phones showed since this was last asked.
    pub fn shown(&self) -> Vec<Shows> {
        self.phones.fresh()
    }

    /// What phones showed so far is not news any more.
    pub fn forget_shown(&self) {
        drop(self.shown());
    }

    /// Lets time pass up to the next reminder of anybody, or to `until` where none comes before;
    /// time never goes back. `true` once `until` is reached.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn pass_time(&mut self, until: DateTime<Utc>) -> anyhow::Result<bool> {
        let now = self.now();
        let next = self.app.store.next_morning().await?;
        // Only what lies ahead may stop the time, so that it always goes on.
        let stop = next.filter(|next| now < *next && *next <= until).unwrap_or(until).max(now);
        *self.now.lock().unwrap_or_else(PoisonError::into_inner) = stop;
        self.tick().await?;
        Ok(stop >= until)
    }

    /// The morning's tick, and whatever waits to be sent.
    async fn tick(&mut self) -> anyhow::Result<()> {
        self.send().await?;
        self.app.tick(self.now()).await?;
        self.send().await
    }

    /// Everything that the bot knows of this person in this place; nothing is kept by asking.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn facts(&self, who: Who, place: Place) -> anyhow::Result<Facts> {
        let mut work = self.app.store.begin().await?;
        let incoming = Self::incoming(who, place, What::Nothing);
        let facts = work.facts(&incoming, None, self.now()).await?;
        work.rollback().await?;
        Ok(facts)
    }

    /// The zone that holds for this person in this place, and when their reminder comes.
    ///
    /// # Errors
    /// When the store fails.
    pub async fn own_time(&self, who: Who, place: Place) -> anyhow::Result<OwnTime> {
        let facts = self.facts(who, place).await?;
        let zone = facts.settings().zone.is;
        Ok(OwnTime { zone, reminder: facts.member.reminder_time })
    }

    /// Hands everything that waits to the phones.
    async fn send(&mut self) -> anyhow::Result<()> {
        loop {
            let now = self.clock.now();
            let step = self.sender.step(&self.app.store, &self.phones, now).await?;
            if step != SenderStep::Again {
                return Ok(());
            }
        }
    }
}

//! The loop of a practice: a line is read, done, and what the phones show is printed.

use std::io::{BufRead, Write};

use chrono::{DateTime, Days, NaiveDate, Utc};
use chrono_tz::Tz;

use super::cast::{CLUB, ILSE_WRITES, ODA_WRITES, Place, Who, owner};
use super::lines::{Day, Line, read};
use super::phones::Shows;
use super::reading::next_line;
use super::screen::Screen;
use super::world::{Pressed, World};
use crate::messages::LONGEST_TEXT;
use crate::wording::shorten_to_limit;

/// The most days that time moves at once.
const MOST_DAYS: i64 = 400;

const HELP: &str = "\
Whatever has no colon in front is said to the chat. The practice's own commands:
  :fern  :oda  :ilse        who speaks
  :private  :group          where
  :reply TEXT               reply to the bot (in a group it hears commands and replies only)
  :reply @fern TEXT         reply to Fern, or whoever is named so
  :inline cucumber          type the bot's name and a crop, as in a chat of your own
  :2  or  :press 2          press a button of the last message
  :buttons                  show the last buttons again, from further up if need be
  :morning                  on to the next time your reminder may come
  :day +3  :day 2026-05-01  on to that day, at the hour of your reminder
  :who                      who is who, and their time
  :quit                     leave; nothing is kept";

/// Who speaks, where.
#[derive(Debug, Clone, Copy)]
struct Seat {
    who: Who,
    place: Place,
}

/// Talks until the input ends or the user leaves.
///
/// # Errors
/// When the input, the output or the store fails.
pub async fn talk<W: Write>(
    mut input: impl BufRead,
    mut screen: Screen<W>,
    world: &mut World,
) -> anyhow::Result<()> {
    welcome(&mut screen)?;
    let mut seat = Seat { who: Who::Fern, place: Place::Private };
    loop {
        let zone = world.own_time(seat.who, seat.place).await?.zone;
        let day = local(world.now(), zone).format("%Y-%m-%d %a").to_string();
        screen.prompt(&day, seat.who, seat.place)?;
        let Some(text) = next_line(&mut input)? else { return Ok(screen.end()?) };
        screen.typed(&text)?;
        match read(&text) {
            Line::Empty => {}
            Line::Say(text) => {
                let addressed = seat.place == Place::Private || text.starts_with('/');
                say(world, &mut screen, seat, &text, addressed).await?;
            }
            Line::Reply(text) => say(world, &mut screen, seat, &text, true).await?,
            Line::ReplyTo(whom, text) => {
                // Only a command speaks to the bot where somebody else is replied to.
                let addressed = seat.place == Place::Private || text.starts_with('/');
                world.replies(seat.who, seat.place, whom, &text, addressed).await?;
                show(world, &mut screen)?;
            }
            Line::Inline(text) => {
                world.types_inline(seat.who, &text).await?;
                show(world, &mut screen)?;
            }
            Line::Speaker(who) => seat.who = who,
            Line::Place(place) => seat.place = place,
            Line::Morning => {
                let own = world.own_time(seat.who, seat.place).await?;
                let until = own.reminder.next_after(world.now(), own.zone);
                move_to(world, &mut screen, until).await?;
            }
            Line::Day(day) => go_to(world, &mut screen, seat, day).await?,
            Line::Press(number) => press(world, &mut screen, &mut seat, number).await?,
            Line::Buttons => match world.scroll_to_buttons(seat.who, seat.place) {
                Some(message) => screen.reminder_of(&message)?,
                None => screen.note("No message here has buttons.")?,
            },
            Line::Who => who_is_who(world, &mut screen).await?,
            Line::Help => {
                for line in HELP.lines() {
                    screen.note(line)?;
                }
            }
            Line::Quit => return Ok(()),
            Line::Wrong(why) => screen.note(&why)?,
        }
    }
}

fn welcome<W: Write>(screen: &mut Screen<W>) -> anyhow::Result<()> {
    let lines = [
        format!("Practice: the bot, and {CLUB}, set up just now. Nothing is sent or kept."),
        format!("  Oda, who runs the club, wrote in the group: {}", ODA_WRITES.join("; ")),
        "  Fern joined by the group's button and grows a dozen crops (/mycrops).".to_owned(),
        format!("  Ilse, whose garden is in the south, wrote: {}", ILSE_WRITES.join(", ")),
        "You are Fern. Ask “can I start cucumbers now?”, or send /now and press a button with :1."
            .to_owned(),
        ":morning brings the next morning's reminder, :day +7 a week of them.".to_owned(),
        ":oda, :ilse, :group and :private change who speaks and where; :help lists the rest."
            .to_owned(),
        String::new(),
    ];
    for line in lines {
        screen.note(&line)?;
    }
    Ok(())
}

async fn say<W: Write>(
    world: &mut World,
    screen: &mut Screen<W>,
    seat: Seat,
    text: &str,
    addressed: bool,
) -> anyhow::Result<()> {
    let fits = shorten_to_limit(text, LONGEST_TEXT);
    if fits != text {
        screen.note("A message holds 4096 characters; the rest was cut off.")?;
    }
    world.says(seat.who, seat.place, &fits, addressed).await?;
    show(world, screen)?;
    if !addressed {
        screen.note("(In a group the bot hears only commands, such as /ask …, and :reply …)")?;
    }
    Ok(())
}

async fn press<W: Write>(
    world: &mut World,
    screen: &mut Screen<W>,
    seat: &mut Seat,
    number: usize,
) -> anyhow::Result<()> {
    match world.presses(seat.who, seat.place, number).await? {
        Pressed::Told => {}
        Pressed::OpenedPrivate => {
            seat.place = Place::Private;
            screen.note(&format!("({} opens the private chat.)", seat.who.name()))?;
        }
        Pressed::NoSuchButton => {
            screen.note(&format!(
                "The last message here has no button {number}; :buttons shows what there is."
            ))?;
        }
    }
    show(world, screen)
}

fn show<W: Write>(world: &World, screen: &mut Screen<W>) -> anyhow::Result<()> {
    for shows in world.shown() {
        screen.show(&shows, None)?;
    }
    Ok(())
}

async fn go_to<W: Write>(
    world: &mut World,
    screen: &mut Screen<W>,
    seat: Seat,
    day: Day,
) -> anyhow::Result<()> {
    let own = world.own_time(seat.who, seat.place).await?;
    let today = local(world.now(), own.zone).date_naive();
    let date = match day {
        Day::Later(days) => today.checked_add_days(Days::new(days.into())),
        Day::On(date) => Some(date),
    };
    let far = |date: NaiveDate| date.signed_duration_since(today).num_days();
    let Some(date) = date.filter(|date| far(*date) <= MOST_DAYS) else {
        screen.note(&format!("That is too far at once; at most {MOST_DAYS} days."))?;
        return Ok(());
    };
    if date < today {
        screen.note("Time only goes forward here; start anew for an earlier day.")?;
        return Ok(());
    }
    let until = own.reminder.on(date, own.zone);
    if until <= world.now() {
        screen.note("It is that day already, and its reminder has been.")?;
        return Ok(());
    }
    move_to(world, screen, until).await
}

/// Lets time pass, and prints what arrives on whose phone, and when.
async fn move_to<W: Write>(
    world: &mut World,
    screen: &mut Screen<W>,
    until: DateTime<Utc>,
) -> anyhow::Result<()> {
    let mut arrived = false;
    loop {
        let there = world.pass_time(until).await?;
        for shows in world.shown() {
            arrived = true;
            let reader = match &shows {
                Shows::New { chat, .. } | Shows::Changed { chat, .. } => owner(*chat),
                Shows::Notice(_) | Shows::Offered(_) => None,
            };
            let when = match reader {
                Some(reader) => {
                    let zone = world.own_time(reader, Place::Private).await?.zone;
                    Some(local(world.now(), zone).format("%Y-%m-%d %a %H:%M").to_string())
                }
                None => None,
            };
            screen.show(&shows, when.as_deref())?;
        }
        if there {
            break;
        }
    }
    if !arrived {
        screen.note("(Nothing came: nobody had anything due.)")?;
    }
    Ok(())
}

async fn who_is_who<W: Write>(world: &World, screen: &mut Screen<W>) -> anyhow::Result<()> {
    for who in Who::ALL {
        let own = world.own_time(who, Place::Private).await?;
        let time = local(world.now(), own.zone).format("%Y-%m-%d %a %H:%M");
        let (name, about, zone) = (who.name(), who.about(), own.zone.name());
        screen
            .note(&format!("  {name}: {about}; {time} in {zone}, reminder at {}", own.reminder))?;
    }
    Ok(())
}

fn local(at: DateTime<Utc>, zone: Tz) -> DateTime<Tz> {
    at.with_timezone(&zone)
}

//! Keeping what was decided, one change at a time.

use chrono::{DateTime, TimeDelta, Utc};
use sqlx::SqliteConnection;

use super::digests::digest_changed;
use super::facts::club_of_chat;
use super::rows::{mark_columns, to_json, units_text};
use super::schedule::{Touches, cancel_reminders, changed, club_changed, set_next};
use super::{
    Result, coordinators, group_questions, groups, journal, list_changes, own_data,
    setting_changes, sowings, subjects, varieties,
};
use crate::chat::{Change, Expected, Facts};
use crate::club::{ClubId, Mark, MemberId, PutBack};
use crate::messages::{ChatKind, Incoming};
use crate::planning::{CropId, JobKey};

/// How long the bot waits to hear an answer that it asked for.
const EXPECTATION: TimeDelta = TimeDelta::minutes(15);

/// Keeps `change`, and in the journal what takes it back where that can be.
pub(super) async fn apply(
    conn: &mut SqliteConnection,
    facts: &Facts,
    incoming: &Incoming,
    change: &Change,
    now: DateTime<Utc>,
) -> Result<()> {
    let member = facts.member.id;
    if let Change::Undo(number) = change {
        return journal::undo(conn, member, *number, now).await;
    }
    if *change == Change::Forget {
        return own_data::forget(conn, member).await;
    }
    let parts = match change {
        Change::Together(parts) => parts.as_slice(),
        one => std::slice::from_ref(one),
    };
    let mut put_back = Vec::new();
    for part in parts {
        apply_one(conn, facts, incoming, part, now, &mut put_back).await?;
    }
    journal::keep(conn, member, put_back, now).await
}

/// Keeps one change, and adds what takes it back.
async fn apply_one(
    conn: &mut SqliteConnection,
    facts: &Facts,
    incoming: &Incoming,
    change: &Change,
    now: DateTime<Utc>,
    put_back: &mut Vec<PutBack>,
) -> Result<()> {
    let member = facts.member.id;
    let chat = incoming.chat.id;
    match change {
        Change::MemberFrost(_)
        | Change::MemberZone(_)
        | Change::MemberLanguage(_)
        | Change::MemberUnits(_)
        | Change::MemberReminderTime(_)
        | Change::MemberHabits(_)
        | Change::MemberHotAndWet(_)
        | Change::MemberLatitude(_)
        | Change::MemberMonths(_)
        | Change::MemberPlace(_)
        | Change::MemberCover(_)
        | Change::MemberHold(_) => {
            let settings = setting_changes::set_by(change);
            let before = setting_changes::kept(conn, member, settings).await?;
            set_of_member(conn, member, change, now).await?;
            put_back.extend(setting_changes::put_back(conn, member, before).await?);
            Ok(())
        }
        Change::MemberReachable(reachable) => set_reachable(conn, member, *reachable, now).await,
        Change::AddCrops(crops) => add_crops(conn, member, crops, now, put_back).await,
        Change::DropCrops(crops) => drop_crops(conn, member, crops, now, put_back).await,
        Change::SkipCrops(crops) => {
            list_changes::skip_crops(conn, member, crops, true, now, put_back).await
        }
        Change::UnskipCrops(crops) => {
            list_changes::skip_crops(conn, member, crops, false, now, put_back).await
        }
        Change::Subscribe(list) => {
            list_changes::subscribe(conn, member, *list, now, put_back).await
        }
        Change::Unsubscribe(list) => {
            list_changes::unsubscribe(conn, member, *list, now, put_back).await
        }
        Change::MarkJob(job, mark) => mark_job(conn, member, job, *mark, now, put_back).await,
        Change::RecordSowing(_) | Change::KeepSowing(_) | Change::RemoveSowing(_) => {
            put_back.extend(change_sowing(conn, member, change, now).await?);
            Ok(())
        }
        Change::KeepVariety(variety) => {
            put_back.extend(varieties::keep(conn, member, variety, now).await?);
            Ok(())
        }
        Change::RemoveVariety(id) => {
            put_back.extend(varieties::remove(conn, member, *id, now).await?);
            Ok(())
        }
        Change::Together(_) | Change::Undo(_) | Change::Forget => {
            tracing::error!(?change, "a change that cannot be part of another is passed over");
            Ok(())
        }
        Change::Expect(expected) => expect(conn, chat, member, expected.as_ref(), now).await,
        Change::Asked(subject) => subjects::keep(conn, &incoming.chat, member, subject, now).await,
        // A private chat has the id of its person.
        Change::ExpectInPrivate(expected) => {
            expect(conn, facts.member.user, member, expected.as_ref(), now).await
        }
        Change::KeepQuestion { message, question } => {
            group_questions::keep(conn, (chat, *message), member, question, now).await
        }
        Change::JoinClub(club) => groups::join(conn, *club, member, incoming.chat.kind, now).await,
        Change::OpenClub { title } => groups::open(conn, chat, title, now).await,
        Change::MoveClub { to } => groups::move_chat(conn, chat, *to, now).await,
        Change::LeaveClub
        | Change::CloseClub
        | Change::ClubFrost(_)
        | Change::ClubZone(_)
        | Change::ClubLanguage(_)
        | Change::ClubDigest(_)
        | Change::ClubHold(_)
        | Change::ClubHotAndWet(_)
        | Change::ClubMonths(_)
        | Change::List(_)
        | Change::NameHelper { .. }
        | Change::DismissHelper(_) => {
            let club = match incoming.chat.kind {
                ChatKind::Group => club_of_chat(conn, chat).await?.map(|club| club.id),
                ChatKind::Private => facts.club.as_ref().map(|club| club.id),
            };
            let Some(club) = club else {
                tracing::debug!(?change, chat, "no club to change");
                return Ok(());
            };
            match change {
                Change::LeaveClub => groups::leave(conn, club, member, now).await,
                Change::CloseClub => groups::close(conn, club, now).await,
                Change::List(change) => list_changes::change(conn, club, change, now).await,
                Change::NameHelper { user, name } => {
                    coordinators::name_helper(conn, club, *user, name, now).await
                }
                Change::DismissHelper(member) => {
                    coordinators::dismiss_helper(conn, club, *member).await
                }
                _ => set_of_club(conn, club, change, now).await,
            }
        }
    }
}

/// A recorded sowing; gives what takes the change back.
async fn change_sowing(
    conn: &mut SqliteConnection,
    member: MemberId,
    change: &Change,
    now: DateTime<Utc>,
) -> Result<Option<PutBack>> {
    match change {
        Change::RecordSowing(sowing) => Ok(Some(sowings::record(conn, member, sowing, now).await?)),
        Change::KeepSowing(sowing) => sowings::keep(conn, member, sowing, now).await,
        Change::RemoveSowing(id) => sowings::remove(conn, member, *id, now).await,
        _ => Ok(None),
    }
}

/// A setting of the member's own.
async fn set_of_member(
    conn: &mut SqliteConnection,
    member: MemberId,
    change: &Change,
    now: DateTime<Utc>,
) -> Result<()> {
    let (statement, value, touches) = match change {
        Change::MemberFrost(frost) => (
            "UPDATE members SET frost = $1 WHERE id = $2",
            frost.as_ref().map(to_json).transpose()?,
            Touches::Contents,
        ),
        Change::MemberZone(zone) => (
            "UPDATE members SET zone = $1 WHERE id = $2",
            zone.map(|zone| zone.name().to_owned()),
            Touches::Clock,
        ),
        Change::MemberLanguage(language) => (
            "UPDATE members SET language = $1 WHERE id = $2",
            language.as_ref().map(ToString::to_string),
            Touches::Contents,
        ),
        Change::MemberUnits(units) => (
            "UPDATE members SET units = $1 WHERE id = $2",
            units.map(|units| units_text(units).to_owned()),
            Touches::Contents,
        ),
        Change::MemberHotAndWet(months) => {
            ("UPDATE members SET hot_and_wet = $1 WHERE id = $2", months.clone(), Touches::Contents)
        }
        Change::MemberLatitude(latitude) => {
            sqlx::query("UPDATE members SET latitude = $1 WHERE id = $2")
                .bind(*latitude)
                .bind(member)
                .execute(&mut *conn)
                .await?;
            return Ok(());
        }
        Change::MemberHabits(habits) => {
            sqlx::query(
                "UPDATE members SET quiet_days = $1, at_weekends = $2, holiday_until = $3 \
                 WHERE id = $4",
            )
            .bind(i64::from(habits.quiet.bits()))
            .bind(habits.at_weekends)
            .bind(habits.holiday_until)
            .bind(member)
            .execute(&mut *conn)
            .await?;
            return changed(conn, member, Touches::Contents, now).await;
        }
        Change::MemberMonths(months) => (
            "UPDATE members SET months = $1 WHERE id = $2",
            months.as_ref().map(to_json).transpose()?,
            Touches::Contents,
        ),
        Change::MemberPlace(place) => (
            "UPDATE members SET place = $1 WHERE id = $2",
            place.map(|place| place.to_string()),
            Touches::Contents,
        ),
        Change::MemberCover(cover) => (
            "UPDATE members SET cover = $1 WHERE id = $2",
            cover.map(|cover| cover.to_string()),
            Touches::Contents,
        ),
        Change::MemberHold(hold) => (
            "UPDATE members SET hold = $1 WHERE id = $2",
            hold.map(|hold| hold.to_string()),
            Touches::Contents,
        ),
        Change::MemberReminderTime(time) => {
            sqlx::query("UPDATE members SET reminder_minutes = $1 WHERE id = $2")
                .bind(i64::from(time.minutes()))
                .bind(member)
                .execute(&mut *conn)
                .await?;
            return changed(conn, member, Touches::Clock, now).await;
        }
        _ => return Ok(()),
    };
    sqlx::query(statement).bind(value).bind(member).execute(&mut *conn).await?;
    changed(conn, member, touches, now).await
}

/// A setting of the club, which holds for the members who have none of their own.
async fn set_of_club(
    conn: &mut SqliteConnection,
    club: ClubId,
    change: &Change,
    now: DateTime<Utc>,
) -> Result<()> {
    let (statement, value) = match change {
        Change::ClubFrost(frost) => {
            ("UPDATE clubs SET frost = $1 WHERE id = $2", frost.as_ref().map(to_json).transpose()?)
        }
        Change::ClubZone(zone) => {
            ("UPDATE clubs SET zone = $1 WHERE id = $2", zone.map(|zone| zone.name().to_owned()))
        }
        Change::ClubHold(hold) => {
            ("UPDATE clubs SET hold = $1 WHERE id = $2", hold.map(|hold| hold.to_string()))
        }
        Change::ClubHotAndWet(months) => {
            ("UPDATE clubs SET hot_and_wet = $1 WHERE id = $2", months.clone())
        }
        Change::ClubMonths(months) => (
            "UPDATE clubs SET months = $1 WHERE id = $2",
            months.as_ref().map(to_json).transpose()?,
        ),
        Change::ClubLanguage(language) => (
            "UPDATE clubs SET language = $1 WHERE id = $2",
            language.as_ref().map(ToString::to_string),
        ),
        Change::ClubDigest(digest) => {
            sqlx::query(
                "UPDATE clubs SET digest_weekday = $1, digest_minutes = $2, digest_thread = $3 \
                 WHERE id = $4",
            )
            .bind(digest.map(|digest| i64::from(digest.on.number_from_monday())))
            .bind(digest.map(|digest| i64::from(digest.at.minutes())))
            .bind(digest.and_then(|digest| digest.thread))
            .bind(club)
            .execute(&mut *conn)
            .await?;
            return digest_changed(conn, club, true, now).await;
        }
        _ => return Ok(()),
    };
    sqlx::query(statement).bind(value).bind(club).execute(&mut *conn).await?;
    digest_changed(conn, club, false, now).await?;
    match change {
        Change::ClubZone(_) => {
            club_changed(conn, club, |member| member.zone.is_none(), Touches::Clock, now).await
        }
        Change::ClubHold(_) => club_changed(conn, club, |_| true, Touches::Contents, now).await,
        Change::ClubMonths(_) => {
            club_changed(conn, club, |member| member.months.is_none(), Touches::Contents, now).await
        }
        // What was written is only shown.
        Change::ClubHotAndWet(_) => Ok(()),
        Change::ClubFrost(_) => {
            club_changed(conn, club, |member| member.frost.is_none(), Touches::Contents, now).await
        }
        _ => {
            club_changed(conn, club, |member| member.language.is_none(), Touches::Contents, now)
                .await
        }
    }
}

/// Whether the bot may write first. Reminders begin with the first time it may, and end when it
/// may not.
pub(super) async fn set_reachable(
    conn: &mut SqliteConnection,
    member: MemberId,
    reachable: bool,
    now: DateTime<Utc>,
) -> Result<()> {
    if reachable {
        sqlx::query("UPDATE members SET reachable = $1 WHERE id = $2")
            .bind(true)
            .bind(member)
            .execute(&mut *conn)
            .await?;
        return set_next(conn, member, now).await;
    }
    sqlx::query("UPDATE members SET reachable = $1, next_reminder_at = NULL WHERE id = $2")
        .bind(false)
        .bind(member)
        .execute(&mut *conn)
        .await?;
    cancel_reminders(conn, member, "unreachable", "the member cannot be reached", now).await?;
    Ok(())
}

async fn add_crops(
    conn: &mut SqliteConnection,
    member: MemberId,
    crops: &[CropId],
    now: DateTime<Utc>,
    put_back: &mut Vec<PutBack>,
) -> Result<()> {
    let before = put_back.len();
    for crop in crops {
        let added = sqlx::query(
            "INSERT INTO member_crops (member_id, crop) VALUES ($1, $2) \
             ON CONFLICT (member_id, crop) DO NOTHING",
        )
        .bind(member)
        .bind(crop.as_str())
        .execute(&mut *conn)
        .await?
        .rows_affected();
        if added > 0 {
            put_back.push(PutBack::CropOff(crop.clone()));
        }
    }
    if put_back.len() > before {
        changed(conn, member, Touches::Contents, now).await
    } else {
        Ok(())
    }
}

async fn drop_crops(
    conn: &mut SqliteConnection,
    member: MemberId,
    crops: &[CropId],
    now: DateTime<Utc>,
    put_back: &mut Vec<PutBack>,
) -> Result<()> {
    let before = put_back.len();
    for crop in crops {
        let dropped: Option<i64> = sqlx::query_scalar(
            "DELETE FROM member_crops WHERE member_id = $1 AND crop = $2 RETURNING id",
        )
        .bind(member)
        .bind(crop.as_str())
        .fetch_optional(&mut *conn)
        .await?;
        put_back.extend(dropped.map(|id| PutBack::CropOn { id, crop: crop.clone() }));
    }
    if put_back.len() > before {
        changed(conn, member, Touches::Contents, now).await
    } else {
        Ok(())
    }
}

async fn mark_job(
    conn: &mut SqliteConnection,
    member: MemberId,
    job: &JobKey,
    mark: Option<Mark>,
    now: DateTime<Utc>,
    put_back: &mut Vec<PutBack>,
) -> Result<()> {
    let was = journal::mark_of(conn, member, job).await?;
    let now_is = mark.map(mark_columns);
    if was.as_ref().map(|(mark, on)| (mark.as_str(), *on)) != now_is {
        put_back.push(PutBack::Mark { job: job.clone(), was });
    }
    journal::set_mark(conn, member, job, now_is).await?;
    changed(conn, member, Touches::Contents, now).await
}

async fn expect(
    conn: &mut SqliteConnection,
    chat: i64,
    member: MemberId,
    expected: Option<&Expected>,
    now: DateTime<Utc>,
) -> Result<()> {
    let Some(expected) = expected else {
        sqlx::query("DELETE FROM expectations WHERE chat = $1 AND member_id = $2")
            .bind(chat)
            .bind(member)
            .execute(conn)
            .await?;
        return Ok(());
    };
    sqlx::query(
        "INSERT INTO expectations (chat, member_id, expected, expires_at) \
         VALUES ($1, $2, $3, $4) ON CONFLICT (chat, member_id) DO UPDATE SET \
         expected = excluded.expected, expires_at = excluded.expires_at",
    )
    .bind(chat)
    .bind(member)
    .bind(to_json(expected)?)
    .bind(now + EXPECTATION)
    .execute(conn)
    .await?;
    Ok(())
}

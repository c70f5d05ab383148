//! The forms in which values are kept; a file written today is read by later releases.

use chrono_tz::Tz;

use super::{at, bench, group, morning, private};
use crate::chat::understand::Subject;
use crate::chat::{Change, Expected, Intent};
use crate::club::{Digest, Habits, Mark, ReminderTime, Sowing, Units, Variety};
use crate::planning::{
    Basis, Cover, CropId, Frost, FrostDates, HotAndWet, Label, Months, Packet, Place, Span, Way,
};

#[tokio::test]
#[expect(clippy::too_many_lines, reason = "a list that only grows")]
async fn the_kept_forms_stay() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00.25Z");
    let day = |text: &str| text.parse().unwrap();
    let dates = FrostDates::new(day("05-15"), Some(day("09-25")), Basis::Trusted).unwrap();
    let changes = [
        Change::OpenClub { title: "Elm Row".to_owned() },
        Change::ClubFrost(Some(Frost::Free)),
        Change::ClubLanguage(Some("pt-BR".parse().unwrap())),
        Change::ClubHotAndWet(Some("hot in June".to_owned())),
        Change::ClubMonths(HotAndWet::new(Months::from_to(6, 6), Months::NONE).ok()),
        Change::MemberFrost(Some(Frost::Dates(dates))),
        Change::MemberZone(Some(Tz::America__Argentina__Ushuaia)),
        Change::MemberUnits(Some(Units::Metric)),
        Change::MemberReminderTime(ReminderTime::from_minutes(425).unwrap()),
        Change::MemberMonths(HotAndWet::new(Months::from_to(6, 9), Months::from_to(11, 1)).ok()),
        Change::MemberPlace(Some(Place::HeatMat)),
        Change::MemberCover(Some(Cover::ColdFrame)),
        Change::MemberHold(Some("2026-04-10/2026-04-17".parse().unwrap())),
        Change::ClubHold(Some("2026-04-09/2026-04-12".parse().unwrap())),
        Change::MemberReachable(true),
        Change::MarkJob(
            "pea.so.s.2026".parse().unwrap(),
            Some(Mark::Skipped(super::date("2026-04-10"))),
        ),
        Change::Expect(Some(Expected::WhichCrop { question: "peas?".to_owned() })),
        Change::Asked(Subject {
            intent: Intent::When,
            crops: vec![CropId::new("pea")],
            step: None,
            kind: None,
            on: None,
        }),
    ];
    let sowing = Sowing {
        id: 0,
        crop: CropId::new("basil"),
        variety: Some("Early Robin".to_owned()),
        way: Way::Outdoors,
        count: Some(12),
        sown_on: super::date("2026-04-03"),
        room_c: Some(18),
        label: Label::Overwintering,
        season: 2026,
        came_up_on: Some(super::date("2026-04-09")),
        failed_on: None,
        ended_on: None,
        job: Some("basil.so.o.2026".parse().unwrap()),
    };
    let days = Some(Span { low: 75, high: 80 });
    let variety = Variety {
        id: 0,
        crop: CropId::new("tomato"),
        name: Some("Early Lantern".to_owned()),
        packet: Packet { days, ..Packet::default() },
    };
    let sown = [
        Change::RecordSowing(sowing),
        Change::MemberLatitude(Some(-41)),
        Change::KeepVariety(variety),
    ];
    bench.keep(&group(7, -5), &sown, now).await.unwrap();
    let member = bench.keep(&group(7, -5), &changes, now).await.unwrap().member.id;
    let named = morning(member, 7, "2026-04-10", &["pea.so.s.2026"]);
    bench.store.keep_mornings(&[named], now).await.unwrap();
    let mut by_app = private(7);
    by_app.from.language = Some("de-at".to_owned());
    bench.keep(&by_app, &[], now).await.unwrap();

    let text = |statement: &'static str| {
        let reader = bench.store.reader.clone();
        async move {
            sqlx::query_scalar::<_, String>(statement).fetch_one(&reader).await.expect("a text")
        }
    };
    for (statement, kept) in [
        (
            "SELECT frost FROM members",
            r#"{"dates":{"last":"05-15","first":"09-25","basis":"trusted"}}"#,
        ),
        ("SELECT zone || ' ' || units FROM members", "America/Argentina/Ushuaia metric"),
        ("SELECT app_language FROM members", "de-AT"),
        ("SELECT reachable || ' ' || reminder_minutes FROM members", "1 425"),
        ("SELECT place || ' ' || cover FROM members", "heat_mat cold_frame"),
        ("SELECT months FROM members", r#"{"hot":[6,7,8,9],"wet":[1,11,12]}"#),
        ("SELECT hold FROM members", "2026-04-10/2026-04-17"),
        ("SELECT hold FROM clubs", "2026-04-09/2026-04-12"),
        ("SELECT first_seen_at FROM members", "2026-04-10T06:00:00.250+00:00"),
        ("SELECT next_reminder_at FROM members", "2026-04-11T07:00:00+00:00"),
        ("SELECT frost || ' ' || language FROM clubs", r#""free" pt-BR"#),
        (
            "SELECT job || ' ' || mark || ' ' || mark_on || ' ' || named_on FROM job_marks",
            "pea.so.s.2026 skipped 2026-04-10 2026-04-10",
        ),
        (
            "SELECT crop || ' ' || way || ' ' || plants || ' ' || sown_on || ' ' || room_c || ' ' \
             || label || ' ' || season || ' ' || came_up_on || ' ' || job FROM sowings",
            "basil outdoors 12 2026-04-03 18 overwintering 2026 2026-04-09 basil.so.o.2026",
        ),
        ("SELECT variety FROM sowings", "Early Robin"),
        ("SELECT hot_and_wet || ' ' || months FROM clubs", r#"hot in June {"hot":[6],"wet":[]}"#),
        (
            "SELECT id || ' ' || crop || ' ' || name || ' ' || packet FROM varieties",
            r#"1 tomato Early Lantern {"days":[75,80]}"#,
        ),
        ("SELECT latitude || '' FROM members", "-41"),
        (
            "SELECT number || ' ' || put_back FROM journal WHERE number = 1",
            r#"1 [{"sowing_off":1}]"#,
        ),
        ("SELECT expected FROM expectations", r#"{"which_crop":{"question":"peas?"}}"#),
        (
            "SELECT thread || ' ' || subject || ' ' || expires_at FROM subjects",
            r#"0 {"intent":"when","crops":["pea"]} 2026-04-10T06:30:00.250+00:00"#,
        ),
        ("SELECT expires_at FROM expectations", "2026-04-10T06:15:00.250+00:00"),
        ("SELECT payload FROM outgoing", r#"{"say":{"chat":7,"text":"Good morning"}}"#),
        (
            "SELECT kind || ' ' || local_date || ' ' || priority FROM outgoing",
            "morning 2026-04-10 2",
        ),
        ("SELECT named FROM outgoing", r#"[{"job":"pea.so.s.2026","before":null}]"#),
    ] {
        assert_eq!(text(statement).await, kept, "{statement}");
    }
}

#[tokio::test]
async fn the_kept_forms_of_days_stay() {
    let bench = bench().await;
    let now = at("2026-04-10T06:00:00Z");
    let habits = Habits {
        quiet: "67".parse().unwrap(),
        at_weekends: true,
        holiday_until: Some(super::date("2026-07-03")),
    };
    let week = Digest {
        on: chrono::Weekday::Sun,
        at: ReminderTime::from_minutes(480).unwrap(),
        thread: Some(3),
    };
    let open = Change::OpenClub { title: "Elm Row".to_owned() };
    let changes = [open, Change::ClubDigest(Some(week)), Change::MemberHabits(habits)];
    let facts = bench.keep(&group(7, -5), &changes, now).await.unwrap();
    assert_eq!(facts.member.habits, habits);
    assert_eq!(facts.club.and_then(|club| club.digest), Some(week));
    for (statement, kept) in [
        (
            "SELECT quiet_days || ' ' || at_weekends || ' ' || holiday_until FROM members",
            "96 1 2026-07-03",
        ),
        (
            "SELECT digest_weekday || ' ' || digest_minutes || ' ' || digest_thread || ' ' \
             || next_digest_at FROM clubs",
            "7 480 3 2026-04-12T08:00:00+00:00",
        ),
    ] {
        let is: String =
            sqlx::query_scalar(statement).fetch_one(&bench.store.reader).await.unwrap();
        assert_eq!(is, kept, "{statement}");
    }
}

//! What members know of the club lists they subscribe to, as the test understands it apart from
//! the program; and whether a reminder tells of them what is true, and once.

use std::collections::{BTreeMap, BTreeSet};

use sowbell::club::{ClubId, ListId, ListNews};
use sowbell::planning::CropId;
use sowbell::reminders::{MOST_LISTS_TOLD, list_news_text};
use sowbell::wording::Speech;
use sqlx::Row;
use sqlx::sqlite::{SqlitePool, SqliteRow};

/// A list that somebody subscribes to, as it is now.
#[derive(Debug, Clone)]
pub struct OfList {
    pub user: i64,
    pub list: ListId,
    pub club: ClubId,
    /// When the subscription began.
    pub since: String,
    pub name: String,
    pub archived: bool,
    /// The crops that are in plans: none of a list that was put away.
    pub crops: Vec<CropId>,
    /// What the program takes for told: before a waiting reminder, or else before a change.
    pub taken_for_told: Option<Vec<CropId>>,
}

/// One subscription; one that was ended and taken back is the same.
type Subscription = (i64, ListId, String);

impl OfList {
    fn key(&self) -> Subscription {
        (self.user, self.list, self.since.clone())
    }
}

fn of_row(row: &SqliteRow) -> OfList {
    let crops = |json: Option<String>| -> Option<Vec<CropId>> {
        json.map(|json| serde_json::from_str(&json).expect("crops"))
    };
    let list: ListId = row.get("list_id");
    // What a reminder that waits means to tell was not told yet.
    let waits: Option<String> = row.get("waits");
    let waits = waits.and_then(|json| {
        let all: Vec<serde_json::Value> = serde_json::from_str(&json).expect("what is told");
        let of_list = all.into_iter().find(|one| one["list"] == list)?;
        Some(serde_json::from_value(of_list["before"].clone()).expect("crops"))
    });
    let told = crops(row.get("told"));
    OfList {
        user: row.get("user_id"),
        list,
        club: row.get("club_id"),
        since: row.get("subscribed_at"),
        name: row.get("name"),
        archived: row.get("archived"),
        crops: crops(row.get("crops")).unwrap_or_default(),
        taken_for_told: waits.or(told),
    }
}

/// What `user`, or everybody, subscribes to, the earliest subscription first.
pub async fn lists_of(look: &SqlitePool, user: Option<i64>) -> Vec<OfList> {
    let rows = sqlx::query(
        "SELECT m.user_id, s.list_id, s.subscribed_at, s.told, l.club_id, l.name, \
         l.archived_at IS NOT NULL AS archived, \
         CASE WHEN l.archived_at IS NULL THEN \
           (SELECT json_group_array(crop) FROM \
             (SELECT crop FROM list_crops WHERE list_id = l.id ORDER BY id)) END AS crops, \
         (SELECT o.told FROM outgoing o WHERE o.member_id = s.member_id AND o.outcome IS NULL \
           AND o.told LIKE '%\"list\":' || l.id || ',%' ORDER BY o.id LIMIT 1) AS waits \
         FROM subscriptions s JOIN members m ON m.id = s.member_id \
         JOIN lists l ON l.id = s.list_id WHERE m.user_id = $1 OR $1 IS NULL \
         ORDER BY s.subscribed_at, s.list_id",
    )
    .bind(user)
    .fetch_all(look)
    .await
    .expect("subscriptions can be read");
    rows.iter().map(of_row).collect()
}

/// What is known to whom.
#[derive(Debug, Default)]
pub struct Told {
    /// The crops of which a member was told last. There are several where a message came and the
    /// program cannot know it, until it knows of one.
    known: BTreeMap<Subscription, Vec<Vec<CropId>>>,
    /// Who subscribes to what.
    there: BTreeMap<i64, BTreeSet<Subscription>>,
    /// What the reminders say that were handed over and not noted as sent, by their rows.
    under_way: BTreeMap<i64, Vec<OfList>>,
    /// How many lists were told of.
    pub times: usize,
}

fn differ(one: &[CropId], other: &[CropId]) -> bool {
    let set = |crops: &[CropId]| crops.iter().cloned().collect::<BTreeSet<CropId>>();
    set(one) != set(other)
}

impl Told {
    /// This is what `user` subscribes to by now. Whoever subscribes sees what is on the list; who
    /// takes the end of a subscription back knows what they knew.
    pub fn subscribes(&mut self, user: i64, lists: &[OfList], taken_back: bool) {
        let before = self.there.remove(&user).unwrap_or_default();
        for list in lists {
            let sees = || vec![list.crops.clone()];
            if before.contains(&list.key()) || taken_back {
                self.known.entry(list.key()).or_insert_with(sees);
            } else {
                self.known.insert(list.key(), sees());
            }
        }
        self.there.insert(user, lists.iter().map(OfList::key).collect());
    }

    fn of(&self, list: &OfList) -> &[Vec<CropId>] {
        self.known.get(&list.key()).map(Vec::as_slice).unwrap_or_default()
    }

    /// Whether there is surely something to tell of a list.
    fn is_news(&self, list: &OfList) -> bool {
        self.of(list).iter().all(|before| differ(before, &list.crops))
    }

    /// A reminder is handed over: it tells of each list of the club that changed, as it changed,
    /// and of nothing else; `growing` is the member's plan. Gives how many it tells of.
    ///
    /// # Errors
    /// What is wrong.
    pub fn handed_over(
        &mut self,
        row: i64,
        text: &str,
        lists: &[OfList],
        growing: &[CropId],
        speech: &Speech,
    ) -> Result<usize, String> {
        let mut said = said_of_lists(text, speech);
        let mut told = Vec::new();
        let mut untold = Vec::new();
        for list in lists {
            let lines = self.of(list).iter().filter(|before| differ(before, &list.crops));
            let lines: Vec<String> =
                lines.map(|before| line(list, before.clone(), growing, speech)).collect();
            if let Some(at) = said.iter().position(|said| lines.iter().any(|line| line == said)) {
                said.remove(at);
                told.push(list.clone());
            } else if self.is_news(list) {
                untold.push(&list.name);
            }
        }
        if !said.is_empty() {
            return Err(format!("a reminder tells of lists what is not so (any more): {said:?}"));
        }
        if told.len() > MOST_LISTS_TOLD {
            return Err(format!("a reminder tells of {} lists", told.len()));
        }
        if told.len() < MOST_LISTS_TOLD && !untold.is_empty() {
            return Err(format!("a reminder says nothing of {untold:?}, which changed"));
        }
        let count = told.len();
        self.under_way.insert(row, told);
        Ok(count)
    }

    /// The reminder reached the chat; the program may not get to know it.
    pub fn came(&mut self, row: i64) {
        for list in self.under_way.get(&row).into_iter().flatten() {
            self.times += 1;
            let known = self.known.entry(list.key()).or_default();
            if !known.contains(&list.crops) {
                known.push(list.crops.clone());
            }
        }
    }

    /// The lists of which the reminder tells that was handed over last with this row.
    pub fn told_by(&self, row: i64) -> &[OfList] {
        self.under_way.get(&row).map(Vec::as_slice).unwrap_or_default()
    }

    /// The program has noted the reminder as sent: from now on this is what was told.
    pub fn noted(&mut self, row: i64) {
        for list in self.under_way.remove(&row).unwrap_or_default() {
            self.known.insert(list.key(), vec![list.crops]);
        }
    }

    /// After a morning that told of `told` lists nothing is left that changed before it.
    ///
    /// # Errors
    /// With the list of which nothing was told.
    pub fn all_told(&self, lists: &[OfList], told: usize) -> Result<(), String> {
        let left = lists.iter().find(|list| self.is_news(list));
        match left.filter(|_| told < MOST_LISTS_TOLD) {
            Some(list) => Err(format!(
                "nothing was told of the list {:?}, which has {:?} now and had {:?}",
                list.name,
                list.crops,
                self.of(list)
            )),
            None => Ok(()),
        }
    }

    /// What the program takes for told is what was told.
    ///
    /// # Errors
    /// With the first subscription that differs.
    pub fn holds(&self, program: &[OfList]) -> Result<(), String> {
        let wrong = program.iter().find(|list| {
            let kept = list.taken_for_told.as_ref().unwrap_or(&list.crops);
            self.of(list).iter().all(|known| differ(known, kept))
        });
        match wrong {
            Some(list) => Err(format!(
                "the program takes {:?} for told of the list {:?} (now {:?}) to member {}, who \
                 was told {:?}",
                list.taken_for_told,
                list.name,
                list.crops,
                list.user,
                self.of(list)
            )),
            None => Ok(()),
        }
    }
}

/// How a reminder says that a list changed since `before`.
fn line(list: &OfList, before: Vec<CropId>, growing: &[CropId], speech: &Speech) -> String {
    let news = ListNews {
        list: list.list,
        name: list.name.clone(),
        archived: list.archived,
        before,
        now: list.crops.clone(),
    };
    list_news_text(&[news], growing, speech).lines().next().unwrap_or_default().to_owned()
}

/// The lines of a reminder that tell of lists.
fn said_of_lists(text: &str, speech: &Speech) -> Vec<String> {
    let Some((before, _)) = text.split_once(&speech.plain("list-news-next")) else {
        return Vec::new();
    };
    // Where no job is named they stand right below the greeting.
    let below_greeting = !before.contains("\n\n");
    let block = before.rsplit("\n\n").next().unwrap_or_default();
    block.lines().skip(usize::from(below_greeting)).map(str::to_owned).collect()
}

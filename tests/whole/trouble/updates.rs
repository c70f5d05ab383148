//! Updates that are odd, or harm the program.

use super::*;

#[tokio::test(flavor = "multi_thread")]
async fn one_that_cannot_be_read_is_passed_over_and_the_others_are_answered() {
    let mut world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let moss = world.member("Moss").await;
    world.sleep().await;
    fern.writes("/help");
    world.platform.raw_update(json!({ "message": { "chat": "nowhere" } }));
    world.platform.raw_update(json!({ "callback_query": { "id": 7 } }));
    world.platform.raw_update(json!({ "a_kind_of_tomorrow": { "x": [1, 2] } }));
    moss.writes("/help");
    world.wake().await;
    world.quiet().await;
    assert_eq!((helped(&world, &fern), helped(&world, &moss)), (1, 1));
}

#[tokio::test(flavor = "multi_thread")]
async fn words_with_something_new_in_them_are_words_all_the_same() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let user = json!({ "id": fern.id, "is_bot": false, "first_name": "Fern" });
    world.platform.raw_update(json!({ "message": {
        "message_id": 900, "date": 1, "from": user, "text": "/help me",
        "chat": { "id": fern.id, "type": "private", "first_name": "Fern" },
        "entities": [
            { "type": "bot_command", "offset": 0, "length": 5 },
            { "type": "shimmer", "offset": 6, "length": 2, "hue": "teal" },
        ],
        "aura": { "colour": "mauve" },
    }}));
    world.quiet().await;
    assert_eq!(helped(&world, &fern), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn ids_that_begin_again_lower_are_new_all_the_same() {
    let world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    world.platform.set_next_update_id(17);
    fern.asks("/help").await;
    world.platform.set_next_update_id(2_100_000_000);
    fern.asks("/help").await;
    world.platform.set_next_update_id(3);
    fern.asks("/help").await;
    assert_eq!(helped(&world, &fern), 3);
}

/// Decides as the program does, except where a text thunders.
fn thunders(knowledge: &Knowledge, incoming: &Incoming, facts: &Facts) -> Outcome {
    let outcome = decide(knowledge, incoming, facts);
    if let What::Text { text, .. } = &incoming.what {
        assert!(!text.contains("thunder"), "a clap of thunder");
    }
    outcome
}

fn private(world: &World, update: i64, person: &Person, text: &str) -> Update {
    let what = What::Text { text: text.to_owned(), message: 1, addressed: true, replies_to: None };
    let chat = Chat { id: person.id, kind: ChatKind::Private, title: String::new(), thread: None };
    let from = Sender {
        user: person.id,
        name: person.name.clone(),
        is_bot: false,
        anonymous: false,
        language: None,
        role: Role::Unknown,
    };
    let key = UpdateKey { bot: world.platform.bot_id(), update };
    Update { key, incoming: Some(Incoming { chat, from, what }) }
}

#[tokio::test(flavor = "multi_thread")]
async fn one_that_panics_is_apologised_for_and_harms_nobody_else() {
    let mut world = World::start(SPRING).await;
    let fern = world.member("Fern").await;
    let moss = world.member("Moss").await;
    world.sleep().await;
    fern.news();
    moss.news();

    // The same path on the same database, with the one thing exchanged that decides.
    let store = Store::open(&world.database_url()).await.expect("the store");
    let knowledge = Arc::new(Knowledge::embedded().expect("what is built in"));
    let app = App::new(store.clone(), knowledge).deciding_by(thunders);
    let batch = [
        private(&world, 1, &moss, "/grow leek"),
        private(&world, 2, &fern, "/grow basil, thunder"),
        private(&world, 3, &moss, "/help"),
        private(&world, 4, &fern, "/help"),
    ];
    app.take_in(&batch, world.clock.now()).await.expect("taken in");
    // A second time, as after a crash before the platform was told.
    app.take_in(&batch, world.clock.now()).await.expect("taken in");
    store.close().await;

    world.wake().await;
    world.quiet().await;
    let texts = |person: &Person| -> Vec<String> {
        let news = person.news().into_iter();
        news.map(|message| message.text.chars().take(20).collect()).collect()
    };
    assert_eq!(texts(&fern), ["Something went wrong", "I answer questions l"]);
    assert_eq!(texts(&moss), ["On your list: leek.\n", "I answer questions l"]);
    assert!(fern.asks("/mycrops").await.text.starts_with("Your list is empty"), "no basil");
}

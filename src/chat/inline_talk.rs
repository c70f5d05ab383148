//! Inline queries: somebody types the bot's name and a crop in any chat, and is offered their own
//! verdict as a message to send there.

use crate::messages::{AnswerInline, Article, OpenPrivate, Outgoing};
use crate::planning::{CropId, Garden};
use crate::wording::{sentence, shorten_to_limit};

use super::desk::Desk;
use super::question_talk::question_of;
use super::understand::{Intent, Understood};

/// The most crops that are offered at once; a phone shows no more without scrolling.
const MOST_OFFERED: usize = 5;

/// The longest title and description, in UTF-16 units; a phone shows a line of each.
const LONGEST_LINE: usize = 120;

/// The payload of the button that leads to the frost dates.
pub(super) const FROST: &str = "frost";

/// The payload of the button that leads to the private chat.
pub(super) const ASK: &str = "ask";

/// Whether a payload of `/start` is one of these buttons', and no club's token.
pub(super) fn is_own_payload(payload: &str) -> bool {
    matches!(payload, FROST | ASK)
}

/// Answers with articles, or with a button to the private chat where none can be made.
pub(super) fn answer(desk: &mut Desk<'_>, query: &str, text: &str) {
    let (articles, open_private) = match desk.garden() {
        None => {
            let label = desk.say_key("inline-need-frost");
            (Vec::new(), Some(OpenPrivate { label, payload: FROST.to_owned() }))
        }
        Some(garden) => {
            let articles = articles(desk, garden, text);
            let ask = articles.is_empty().then(|| OpenPrivate {
                label: desk.say_key("inline-ask"),
                payload: ASK.to_owned(),
            });
            (articles, ask)
        }
    };
    let answer = AnswerInline { query: query.to_owned(), articles, open_private };
    desk.outcome.outgoing.push(Outgoing::AnswerInline(answer));
}

fn articles(desk: &Desk<'_>, garden: Garden, text: &str) -> Vec<Article> {
    if text.trim().is_empty() {
        let now = Understood::what_now(desk.today);
        let title = desk.say_key("inline-now");
        return article(desk, garden, &now, "now", &title).into_iter().collect();
    }
    let understood = desk.tongue.understanding.understand(text, desk.today);
    let about_crops = matches!(understood.intent, Intent::Unknown | Intent::CanStart);
    if !understood.crops.is_empty() && !about_crops {
        let title = sentence(&desk.speech.crop_list(&understood.crops));
        return article(desk, garden, &understood, "answer", &title).into_iter().collect();
    }
    if understood.intent == Intent::WhatNow {
        let title = desk.say_key("inline-now");
        return article(desk, garden, &understood, "now", &title).into_iter().collect();
    }
    let list = desk.tongue.understanding.crops_in(text);
    let means = understood.ambiguous.iter().chain(&list.ambiguous).flat_map(|word| &word.means);
    let near = understood.unknown_words.iter().chain(&list.unknown).flat_map(|name| &name.near);
    let named = understood.crops.iter().chain(&list.found);
    let mut crops: Vec<&CropId> = Vec::new();
    for crop in named.chain(means).chain(near) {
        if !crops.contains(&crop) {
            crops.push(crop);
        }
    }
    crops
        .into_iter()
        .take(MOST_OFFERED)
        .filter_map(|crop| {
            let mut about = Understood::can_start(crop.clone(), understood.on);
            about.step = understood.step;
            let title = sentence(desk.speech.crop(crop));
            article(desk, garden, &about, crop.as_str(), &title)
        })
        .collect()
}

/// The answer to one question as an article; none where there is nothing to say.
fn article(
    desk: &Desk<'_>,
    garden: Garden,
    understood: &Understood,
    id: &str,
    title: &str,
) -> Option<Article> {
    let answer = question_of(desk, understood, garden, &[]).answer();
    let first = answer.text.lines().find(|line| !line.trim().is_empty())?.to_owned();
    let line = |text: &str| shorten_to_limit(text, LONGEST_LINE).into_owned();
    Some(Article {
        // The platform takes 64 bytes, which no crop's id reaches.
        id: id.chars().take(64).collect(),
        title: line(title),
        description: line(&first),
        text: shorten_to_limit(&answer.text, crate::messages::LONGEST_TEXT).into_owned(),
    })
}

//! What a morning tells of changed club lists.

use crate::club::ListNews;
use crate::planning::CropId;
use crate::wording::{Speech, args};

/// The most lists that one message tells of; the rest wait for the next morning.
pub const MOST_LISTS_TOLD: usize = 5;

/// The most crops that one change names.
const MOST_NAMED: usize = 8;

/// A line for each list that changed, and what to do about it. `growing` is what is in the
/// member's plan now: what left a list may be there still, by their own choice or by another list.
#[must_use]
pub fn list_news_text(news: &[ListNews], growing: &[CropId], speech: &Speech) -> String {
    let told = |news| {
        let mut line = line(news, speech);
        let mut stay = news.went();
        stay.retain(|crop| growing.contains(crop));
        if !stay.is_empty() {
            line.push(' ');
            line.push_str(
                &speech.voice.say("list-news-stay", &args().text("crops", named(&stay, speech))),
            );
        }
        line
    };
    let mut lines: Vec<String> = news.iter().map(told).collect();
    if !lines.is_empty() {
        lines.push(speech.plain("list-news-next"));
    }
    lines.join("\n")
}

fn line(news: &ListNews, speech: &Speech) -> String {
    let voice = &speech.voice;
    let (came, went) = (news.came(), news.went());
    let list = args().text("list", &news.name);
    if news.archived {
        return voice.say("list-news-archived", &list.text("crops", named(&went, speech)));
    }
    match (came.is_empty(), went.is_empty()) {
        (false, true) => voice.say("list-news-came", &list.text("crops", named(&came, speech))),
        (true, _) => voice.say("list-news-went", &list.text("crops", named(&went, speech))),
        (false, false) => {
            let both = list.text("came", named(&came, speech)).text("went", named(&went, speech));
            voice.say("list-news-both", &both)
        }
    }
}

fn named(crops: &[CropId], speech: &Speech) -> String {
    if crops.len() <= MOST_NAMED {
        return speech.crop_list(crops);
    }
    let some: Vec<&str> = crops.iter().take(MOST_NAMED).map(|crop| speech.crop(crop)).collect();
    let more = speech.voice.say("now-more", &args().count("count", crops.len() - MOST_NAMED));
    format!("{}{more}", some.join(", "))
}

//! Handing the answer to an inline query to the platform.

use std::time::Duration;

use teloxide::payloads::{AnswerInlineQuery, AnswerInlineQuerySetters};
use teloxide::requests::JsonRequest;
use teloxide::types::{
    InlineQueryId, InlineQueryResult, InlineQueryResultArticle, InlineQueryResultsButton,
    InlineQueryResultsButtonKind, InputMessageContent, InputMessageContentText,
};

use super::deliver::{Ended, NO_PREVIEW};
use super::{Telegram, call};
use crate::messages::{AnswerInline, Article, MOST_ARTICLES};

/// How long the platform may give the same person the same answer, in seconds: long enough for
/// whoever takes a letter back, short enough for frost dates that were changed.
const CACHE: u32 = 10;

impl Telegram {
    /// The answer is the asker's own, so that the platform must give it to nobody else.
    pub(super) async fn answer_inline(&self, answer: &AnswerInline, within: Duration) -> Ended {
        let articles = answer.articles.iter().take(MOST_ARTICLES).map(article);
        let mut payload = AnswerInlineQuery::new(InlineQueryId(answer.query.clone()), articles)
            .is_personal(true)
            .cache_time(CACHE);
        payload.button = answer.open_private.as_ref().map(|button| InlineQueryResultsButton {
            text: button.label.clone(),
            kind: InlineQueryResultsButtonKind::StartParameter(button.payload.clone()),
        });
        let answered = call(JsonRequest::new(self.bot.clone(), payload), within).await;
        answered.map(|_| None).map_err(|error| self.refused(&error))
    }
}

fn article(article: &Article) -> InlineQueryResult {
    let text = InputMessageContentText::new(&article.text).link_preview_options(NO_PREVIEW);
    let content = InputMessageContent::Text(text);
    let shown = InlineQueryResultArticle::new(&article.id, &article.title, content);
    InlineQueryResult::Article(shown.description(&article.description))
}

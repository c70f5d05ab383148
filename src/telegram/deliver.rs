//! Handing one message, edit, file or press answer to the platform.

use std::time::Duration;

use teloxide::payloads::{
    AnswerCallbackQuery, AnswerCallbackQuerySetters, EditMessageText, EditMessageTextSetters,
    SendDocument, SendDocumentSetters, SendMessage, SendMessageSetters,
};
use teloxide::requests::{JsonRequest, MultipartRequest};
use teloxide::types::{
    CallbackQueryId, ChatId, InputFile, LinkPreviewOptions, MessageId, ReplyParameters, ThreadId,
};

use super::keyboard::{keyboard, private_link};
use super::refusal::{Refusal, refusal};
use super::{CallError, Telegram, call};
use crate::app::{Delivery, Platform};
use crate::messages::{AnswerPress, Document, Edit, LONGEST_TEXT, OpenByPress, Outgoing, Say};
use crate::wording::shorten_to_limit;

/// How long a try may take; the library alone sleeps ten seconds over a server's error.
const LONGEST_TRY: Duration = Duration::from_secs(20);

/// The platform's limit for the notice of a press answer, in characters.
const LONGEST_NOTICE: usize = 200;

/// The platform's limit for what stands under a file, in UTF-16 units.
const LONGEST_CAPTION: usize = 1024;

/// Links in our texts are not shown as a picture below them.
pub(super) const NO_PREVIEW: LinkPreviewOptions = LinkPreviewOptions {
    is_disabled: true,
    url: None,
    prefer_small_media: false,
    prefer_large_media: false,
    show_above_text: false,
};

impl Platform for Telegram {
    async fn deliver(&self, outgoing: &Outgoing) -> Delivery {
        self.deliver_within(outgoing, LONGEST_TRY).await
    }
}

/// How a request ended.
pub(super) type Ended = Result<Option<i32>, (Refusal, String)>;

impl Telegram {
    /// Delivers, and waits for the platform no longer than `within`.
    ///
    /// A try that was not answered in time counts as a passing fault: the message may have been
    /// sent.
    pub async fn deliver_within(&self, outgoing: &Outgoing, within: Duration) -> Delivery {
        let ended = match outgoing {
            Outgoing::Say(say) => self.say(say, within).await,
            Outgoing::Edit(edit) => self.edit(edit, within).await,
            Outgoing::Document(document) => self.send_document(document, within).await,
            Outgoing::AnswerPress(answer) => self.answer_press(answer, within).await,
            Outgoing::OpenByPress(answer) => self.open_by_press(answer, within).await,
            Outgoing::AnswerInline(answer) => self.answer_inline(answer, within).await,
        };
        let new = matches!(outgoing, Outgoing::Say(_) | Outgoing::Document(_));
        match ended {
            Ok(message) => Delivery::Sent { message: message.filter(|_| new) },
            Err((refusal, why)) => match refusal {
                Refusal::Taken { message } => Delivery::Sent { message: message.filter(|_| new) },
                Refusal::NotModified => Delivery::Sent { message: None },
                Refusal::Wait(wait) => Delivery::Wait(wait),
                Refusal::Moved(chat) => Delivery::Moved(chat),
                Refusal::Unreachable => Delivery::Unreachable(why),
                Refusal::Gone => Delivery::Gone(why),
                Refusal::Offline => Delivery::Offline(why),
                Refusal::Transient => Delivery::Transient(why),
                Refusal::ThreadLost | Refusal::Never => Delivery::Refused(why),
            },
        }
    }

    async fn say(&self, say: &Say, within: Duration) -> Ended {
        let thread = say.thread.map(|id| ThreadId(MessageId(id)));
        let ended = self.send(say, &say.text, thread, within).await;
        match ended {
            // The topic was closed or deleted since; the answer is still wanted in the group.
            Err((Refusal::ThreadLost, _)) if thread.is_some() => {
                let added = say.without_topic.iter().map(|added| format!("\n\n{added}"));
                let text = std::iter::once(say.text.clone()).chain(added).collect::<String>();
                self.send(say, &text, None, within).await
            }
            ended => ended,
        }
    }

    async fn send(
        &self,
        say: &Say,
        text: &str,
        thread: Option<ThreadId>,
        within: Duration,
    ) -> Ended {
        let mut payload =
            SendMessage::new(ChatId(say.chat), fitting(text)).link_preview_options(NO_PREVIEW);
        payload.message_thread_id = thread;
        if let Some(message) = say.reply_to {
            let reply = ReplyParameters::new(MessageId(message)).allow_sending_without_reply();
            payload = payload.reply_parameters(reply);
        }
        if let Some(keyboard) = keyboard(&say.buttons, &self.myself.username) {
            payload = payload.reply_markup(keyboard);
        }
        let sent = call(JsonRequest::new(self.bot.clone(), payload), within).await;
        sent.map(|message| Some(message.id.0)).map_err(|error| self.refused(&error))
    }

    async fn edit(&self, edit: &Edit, within: Duration) -> Ended {
        let text = fitting(&edit.text);
        let mut payload = EditMessageText::new(ChatId(edit.chat), MessageId(edit.message), text)
            .link_preview_options(NO_PREVIEW);
        // Without a keyboard the platform takes the old one away.
        if let Some(keyboard) = keyboard(&edit.buttons, &self.myself.username) {
            payload = payload.reply_markup(keyboard);
        }
        let edited = call(JsonRequest::new(self.bot.clone(), payload), within).await;
        edited.map(|_| None).map_err(|error| self.refused(&error))
    }

    async fn answer_press(&self, answer: &AnswerPress, within: Duration) -> Ended {
        let mut payload = AnswerCallbackQuery::new(CallbackQueryId(answer.press.clone()));
        if let Some(notice) = &answer.notice {
            payload = payload.text(notice.chars().take(LONGEST_NOTICE).collect::<String>());
        }
        let answered = call(JsonRequest::new(self.bot.clone(), payload), within).await;
        answered.map(|_| None).map_err(|error| self.refused(&error))
    }

    /// The link opens the private chat in the app of whoever pressed; without one the press is
    /// answered all the same.
    async fn open_by_press(&self, answer: &OpenByPress, within: Duration) -> Ended {
        let mut payload = AnswerCallbackQuery::new(CallbackQueryId(answer.press.clone()));
        payload.url = private_link(&self.myself.username, &answer.payload);
        let answered = call(JsonRequest::new(self.bot.clone(), payload), within).await;
        answered.map(|_| None).map_err(|error| self.refused(&error))
    }

    async fn send_document(&self, document: &Document, within: Duration) -> Ended {
        let file = InputFile::memory(document.content.clone()).file_name(document.name.clone());
        let caption = shorten_to_limit(&document.caption, LONGEST_CAPTION).into_owned();
        let payload = SendDocument::new(ChatId(document.chat), file).caption(caption);
        let sent = call(MultipartRequest::new(self.bot.clone(), payload), within).await;
        sent.map(|message| Some(message.id.0)).map_err(|error| self.refused(&error))
    }

    pub(super) fn refused(&self, error: &CallError) -> (Refusal, String) {
        let refusal = match error {
            CallError::Late(_) => Refusal::Transient,
            CallError::Request(error) => refusal(error),
        };
        (refusal, self.explain(error))
    }
}

/// The text, cut to what the platform takes. Texts are made to fit where they are worded; this is
/// the last resort, since a message that is cut is better than none.
fn fitting(text: &str) -> String {
    if text.encode_utf16().count() <= LONGEST_TEXT {
        return text.to_owned();
    }
    tracing::error!("a text of more than {LONGEST_TEXT} units was cut");
    let mut units = 1;
    let fits = |c: &char| {
        units += c.len_utf16();
        units <= LONGEST_TEXT
    };
    let mut cut: String = text.chars().take_while(fits).collect();
    cut.push('…');
    cut
}

#[cfg(test)]
#[path = "deliver_tests.rs"]
mod tests;

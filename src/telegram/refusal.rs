//! The platform's noes, told apart.
//!
//! The library knows some of the platform's sentences and hands over the rest as they are, and
//! the platform words the same refusal in several ways, so sentences are told apart by their
//! parts.

use std::time::Duration;

use serde::Deserialize;
use teloxide::{ApiError, RequestError};

/// What a refusal means for the message that met it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Refusal {
    /// None at all: the message was taken, but the answer has a form that the library cannot read.
    Taken {
        /// The id of the message.
        message: Option<i32>,
    },
    /// None either: the edit changes nothing.
    NotModified,
    /// Wait before anything else is sent to the chat.
    Wait(Duration),
    /// The group has this new id.
    Moved(i64),
    /// The person or group cannot be written to.
    Unreachable,
    /// The topic is closed or gone; the chat may still be written to.
    ThreadLost,
    /// What is answered or changed is no longer there.
    Gone,
    /// Surely nothing was sent, because there was no connection.
    Offline,
    /// A passing fault.
    Transient,
    /// The platform will never take it.
    Never,
}

/// When the platform asks to wait and does not say how long.
const UNTOLD_WAIT: Duration = Duration::from_secs(5);

const THREAD_LOST: [&str; 6] = [
    "message thread not found",
    "topic_closed",
    "topic_deleted",
    "topic_id_invalid",
    "topic closed",
    "topic deleted",
];

const GONE: [&str; 8] = [
    "query is too old",
    "query id is invalid",
    "query_id_invalid",
    "message to edit not found",
    "message can't be edited",
    "message_id_invalid",
    "message identifier is not specified",
    "message_edit_time_expired",
];

const UNREACHABLE: [&str; 22] = [
    "bot was blocked",
    "bot was kicked",
    "bot is not a member",
    "not a member of",
    "user is deactivated",
    "can't initiate conversation",
    "can't send messages to bots",
    "chat not found",
    "user not found",
    "group is deactivated",
    "group chat was deleted",
    "group chat was deactivated",
    "not enough rights to send",
    "have no rights to send",
    "need administrator rights",
    "chat_write_forbidden",
    "chat_send_plain_forbidden",
    "chat_restricted",
    "chat_admin_required",
    "channel_private",
    "peer_id_invalid",
    "input_user_deactivated",
];

/// What this error means.
pub(super) fn refusal(error: &RequestError) -> Refusal {
    match error {
        RequestError::RetryAfter(wait) => Refusal::Wait(wait.duration()),
        RequestError::MigrateToChatId(chat) => Refusal::Moved(chat.0),
        RequestError::Network(error) if error.is_connect() => Refusal::Offline,
        RequestError::InvalidJson { raw, .. } => of_unread_answer(raw),
        RequestError::Api(ApiError::Unknown(sentence)) => of_sentence(sentence),
        // A token that was taken back says nothing about the message.
        RequestError::Api(ApiError::InvalidToken)
        | RequestError::Network(_)
        | RequestError::Io(_) => Refusal::Transient,
        // The library shortens some sentences to their last word, in capitals.
        RequestError::Api(error) => of_sentence(&error.to_string()),
    }
}

/// An answer that the library could not read; what can be read of it decides.
fn of_unread_answer(raw: &str) -> Refusal {
    #[derive(Deserialize)]
    struct Answer {
        ok: bool,
        result: Option<serde_json::Value>,
        description: Option<String>,
        parameters: Option<Parameters>,
    }
    #[derive(Deserialize)]
    struct Parameters {
        retry_after: Option<u64>,
        migrate_to_chat_id: Option<i64>,
    }
    let Ok(answer) = serde_json::from_str::<Answer>(raw) else { return Refusal::Transient };
    if answer.ok {
        let id = answer.result.as_ref().and_then(|message| message.get("message_id")?.as_i64());
        return Refusal::Taken { message: id.and_then(|id| i32::try_from(id).ok()) };
    }
    match answer.parameters {
        Some(Parameters { retry_after: Some(seconds), .. }) => {
            Refusal::Wait(Duration::from_secs(seconds))
        }
        Some(Parameters { migrate_to_chat_id: Some(chat), .. }) => Refusal::Moved(chat),
        _ => answer.description.map_or(Refusal::Transient, |sentence| of_sentence(&sentence)),
    }
}

/// What a sentence of the platform means.
pub(super) fn of_sentence(sentence: &str) -> Refusal {
    let sentence = sentence.to_lowercase();
    let says = |parts: &[&str]| parts.iter().any(|part| sentence.contains(part));
    if says(&["message is not modified"]) {
        Refusal::NotModified
    } else if says(&["too many requests", "retry after", "flood_wait"]) {
        Refusal::Wait(told_wait(&sentence).unwrap_or(UNTOLD_WAIT))
    } else if says(&THREAD_LOST) {
        Refusal::ThreadLost
    } else if says(&GONE) {
        Refusal::Gone
    } else if says(&UNREACHABLE)
        || sentence.starts_with("forbidden")
        || sentence.starts_with("unauthorized:")
    {
        Refusal::Unreachable
    } else if sentence.starts_with("bad request") || says(&["request entity too large"]) {
        Refusal::Never
    } else {
        // "Internal Server Error", "Bad Gateway", "Service Unavailable" and whatever comes up.
        Refusal::Transient
    }
}

/// The seconds in `… retry after 7` or `flood_wait_7`.
fn told_wait(sentence: &str) -> Option<Duration> {
    let digits = |c: char| c.is_ascii_digit();
    let number = sentence.split(|c| !digits(c)).rfind(|part| !part.is_empty())?;
    number.parse().ok().map(Duration::from_secs)
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use teloxide::types::{ChatId, Seconds};

    use super::*;

    /// The sentence as the library would hand it over.
    fn told(sentence: &str) -> Refusal {
        let error: ApiError =
            serde_json::from_value(serde_json::Value::from(sentence)).expect("any sentence");
        refusal(&RequestError::Api(error))
    }

    fn unread(raw: &str) -> Refusal {
        let source = serde_json::from_str::<bool>("?").expect_err("not JSON");
        refusal(&RequestError::InvalidJson { source: Arc::new(source), raw: raw.into() })
    }

    #[test]
    fn nobody_there_to_write_to() {
        for sentence in [
            "Forbidden: bot was blocked by the user",
            "Forbidden: bot was kicked from the group chat",
            "Forbidden: bot was kicked from the supergroup chat",
            "Forbidden: bot is not a member of the supergroup chat",
            "Forbidden: user is deactivated",
            "Forbidden: bot can't initiate conversation with a user",
            "Unauthorized: bot can't initiate conversation with a user",
            "Forbidden: the group chat was deleted",
            "Forbidden: something that nobody has met yet",
            "Bad Request: chat not found",
            "Bad Request: not enough rights to send text messages to the chat",
            "Bad Request: have no rights to send a message",
            "Bad Request: CHAT_WRITE_FORBIDDEN",
            "Bad Request: PEER_ID_INVALID",
        ] {
            assert_eq!(told(sentence), Refusal::Unreachable, "{sentence}");
        }
    }

    #[test]
    fn a_lost_topic_is_not_a_lost_chat() {
        for sentence in
            ["Bad Request: message thread not found", "Bad Request: TOPIC_CLOSED", "TOPIC_DELETED"]
        {
            assert_eq!(told(sentence), Refusal::ThreadLost, "{sentence}");
        }
    }

    #[test]
    fn what_is_no_longer_there() {
        for sentence in [
            "Bad Request: query is too old and response timeout expired or query ID is invalid",
            "Bad Request: query is too old and response timeout expired or query id is invalid",
            "Bad Request: message to edit not found",
            "Bad Request: message can't be edited",
            "Bad Request: MESSAGE_ID_INVALID",
        ] {
            assert_eq!(told(sentence), Refusal::Gone, "{sentence}");
        }
    }

    #[test]
    fn an_edit_that_changes_nothing_is_no_refusal() {
        let long = "Bad Request: message is not modified: specified new message content and reply \
                    markup are exactly the same as a current content and reply markup of the message";
        assert_eq!(told(long), Refusal::NotModified);
        assert_eq!(told("Bad Request: message is not modified"), Refusal::NotModified);
    }

    #[test]
    fn waits_and_moves_come_as_errors_of_their_own_or_as_sentences() {
        let wait = RequestError::RetryAfter(Seconds::from_seconds(7));
        assert_eq!(refusal(&wait), Refusal::Wait(Duration::from_secs(7)));
        let moved = RequestError::MigrateToChatId(ChatId(-100_123));
        assert_eq!(refusal(&moved), Refusal::Moved(-100_123));
        let told_wait = told("Too Many Requests: retry after 12");
        assert_eq!(told_wait, Refusal::Wait(Duration::from_secs(12)));
        assert_eq!(told("Too Many Requests"), Refusal::Wait(UNTOLD_WAIT));
    }

    #[test]
    fn server_errors_pass_and_other_bad_requests_stay() {
        for sentence in ["Internal Server Error", "Bad Gateway", "Unauthorized", "Not Found"] {
            assert_eq!(told(sentence), Refusal::Transient, "{sentence}");
        }
        for sentence in [
            "Bad Request: message text is empty",
            "Bad Request: message is too long",
            "Bad Request: BUTTON_DATA_INVALID",
            "Bad Request: can't parse inline keyboard button",
        ] {
            assert_eq!(told(sentence), Refusal::Never, "{sentence}");
        }
    }

    #[test]
    fn a_yes_that_the_library_cannot_read_is_a_yes() {
        let taken = unread(r#"{"ok":true,"result":{"message_id":55,"new_thing":{}}}"#);
        assert_eq!(taken, Refusal::Taken { message: Some(55) });
        let pressed = unread(r#"{"ok":true,"result":{"x":1}}"#);
        assert_eq!(pressed, Refusal::Taken { message: None });
    }

    #[test]
    fn a_no_that_the_library_cannot_read_is_still_told_apart() {
        let parameters = r#"{"ok":false,"description":"x","parameters":{"retry_after":3,"y":1}}"#;
        assert_eq!(unread(parameters), Refusal::Wait(Duration::from_secs(3)));
        let moved = r#"{"ok":false,"description":"x","parameters":{"migrate_to_chat_id":-5}}"#;
        assert_eq!(unread(moved), Refusal::Moved(-5));
        let blocked = r#"{"ok":false,"description":"Forbidden: x","parameters":{}}"#;
        assert_eq!(unread(blocked), Refusal::Unreachable);
        assert_eq!(unread("<html>502</html>"), Refusal::Transient);
    }
}

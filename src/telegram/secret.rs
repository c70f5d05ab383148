//! Keeps the bot's token out of every text that leaves this module.

use std::error::Error;

use teloxide::{ApiError, RequestError};

/// What stands where the token stood.
const HIDDEN: &str = "***";

/// Secrets shorter than this are no secrets, and hiding them would blot out ordinary words.
const SHORTEST_SECRET: usize = 8;

/// Replaces the token, in every spelling that an address may give it, and its secret half.
pub(super) fn redact(text: &str, token: &str) -> String {
    let secret = token.split_once(':').map_or(token, |(_, secret)| secret);
    let encoded = token.replace(':', "%3A");
    let lower = token.replace(':', "%3a");
    let mut clean = text.to_owned();
    for spelling in [token, &encoded, &lower, secret] {
        if spelling.len() >= SHORTEST_SECRET {
            clean = clean.replace(spelling, HIDDEN);
        }
    }
    clean
}

/// A request's error with its causes, without the token and without the answer's body.
pub(super) fn explain(error: &RequestError, token: &str) -> String {
    let text = match error {
        RequestError::Api(ApiError::Unknown(sentence)) => sentence.clone(),
        RequestError::Api(error) => error.to_string(),
        RequestError::Network(error) => chain(&**error),
        RequestError::InvalidJson { source, .. } => {
            format!("an answer of an unknown form: {source}")
        }
        other => other.to_string(),
    };
    redact(&text, token)
}

/// An error and its causes. The first sentence of a network error names the address.
fn chain(error: &dyn Error) -> String {
    let mut text = error.to_string();
    let mut cause = error.source();
    while let Some(error) = cause {
        text.push_str(": ");
        text.push_str(&error.to_string());
        cause = error.source();
    }
    text
}

#[cfg(test)]
mod tests {
    use teloxide::Bot;
    use teloxide::requests::Requester;

    use super::*;

    const TOKEN: &str = "5000000001:short-for-a-test";

    #[test]
    fn every_spelling_of_the_token_is_hidden() {
        let text = "GET https://x/bot5000000001:short-for-a-test/GetMe, \
                    /bot5000000001%3Ashort-for-a-test/, %3ashort-for-a-test, short-for-a-test";
        let clean = redact(text, TOKEN);
        assert!(!clean.contains("short-for-a-test"), "{clean}");
        assert!(clean.starts_with("GET https://x/bot***/GetMe, /bot***/"), "{clean}");
    }

    #[test]
    fn a_token_without_a_colon_is_hidden_too_and_an_empty_one_changes_nothing() {
        assert_eq!(redact("bot abcdefghij says", "abcdefghij"), "bot *** says");
        assert_eq!(redact("nothing to hide", ""), "nothing to hide");
    }

    #[tokio::test]
    async fn the_error_of_a_real_request_names_its_cause_and_not_the_token() {
        // Nothing listens on port 1 of this machine.
        let bot = Bot::new(TOKEN).set_api_url("http://127.0.0.1:1".parse().unwrap());
        let error = bot.get_me().await.expect_err("nobody answers");
        let text = explain(&error, TOKEN);
        assert!(!text.contains("short-for-a-test"), "{text}");
        assert!(text.to_lowercase().contains("refused"), "{text}");
    }
}

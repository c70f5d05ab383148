//! Getting in touch with the platform.

use std::time::Duration;

use serde::{Deserialize, Serialize};
use teloxide::payloads::DeleteWebhook;
use teloxide::requests::{JsonRequest, Payload, Request};
use teloxide::{ApiError, Bot, RequestError};
use url::Url;

use super::intake::LONGEST_POLL;
use super::{CallError, Myself, Telegram, call, explain};

/// The HTTP client's own limit for one request. It must exceed the long poll, or every quiet poll
/// would end as an error; the library's default of 17 seconds does not.
const LONGEST_REQUEST: Duration = Duration::from_secs(LONGEST_POLL.as_secs() + 25);

/// How long one of the first requests may take; the library waits ten seconds of it when the
/// server has an error.
const FIRST_REQUESTS: Duration = Duration::from_secs(20);

/// How patiently a platform that cannot be reached is tried.
#[derive(Debug, Clone, Copy)]
pub(super) struct Patience {
    tries: u32,
    first_pause: Duration,
    longest_pause: Duration,
}

/// About five minutes: enough for a router that starts together with the machine.
const PATIENCE: Patience = Patience {
    tries: 12,
    first_pause: Duration::from_secs(1),
    longest_pause: Duration::from_secs(45),
};

/// Why there is no connection.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum ConnectError {
    /// The token has not the form of one.
    #[error(
        "SOWBELL_TOKEN is not a bot token: it looks like 123456789:AbC-dEf, as BotFather gave it"
    )]
    NotAToken,
    /// The platform does not know the token.
    #[error(
        "the platform refused the bot token in SOWBELL_TOKEN: check that it is whole and has not \
         been replaced by a new one"
    )]
    TokenRefused,
    /// The platform's address cannot be used.
    #[error("the platform's address {0} is not an http or https address")]
    Address(String),
    /// The HTTP client could not be made.
    #[error("the connection could not be set up: {0}")]
    Client(String),
    /// The platform could not be reached, or did not answer usefully, time and again.
    #[error("the platform could not be reached after {tries} tries; the last one: {why}")]
    Unreachable {
        /// How often it was tried.
        tries: u32,
        /// What the last try met, without the token.
        why: String,
    },
}

/// Asks who the bot is. Unlike the library's own form of the answer, this one does not depend on
/// fields that the bot has no use for.
#[derive(Debug, Clone, Serialize)]
struct GetMe {}

#[derive(Debug, Deserialize)]
struct Me {
    id: i64,
    #[serde(default)]
    username: String,
    #[serde(default)]
    supports_inline_queries: bool,
}

impl Payload for GetMe {
    type Output = Me;
    const NAME: &'static str = "GetMe";
}

impl Telegram {
    /// Connects with this token to the platform, or to a server of one's own at `api_url`.
    ///
    /// Learns the bot's own name and takes away a webhook, beside which nothing could be polled.
    /// A platform that does not answer is tried again for some minutes.
    ///
    /// # Errors
    ///
    /// When the token is refused, the address is of no use, or the platform stays silent. No
    /// error contains the token.
    pub async fn connect(token: &str, api_url: Option<Url>) -> Result<Self, ConnectError> {
        connect(token, api_url, PATIENCE).await
    }
}

pub(super) async fn connect(
    token: &str,
    api_url: Option<Url>,
    patience: Patience,
) -> Result<Telegram, ConnectError> {
    let token = token.trim();
    if !has_the_form_of_a_token(token) {
        return Err(ConnectError::NotAToken);
    }
    let client = teloxide::net::default_reqwest_settings()
        .timeout(LONGEST_REQUEST)
        .build()
        .map_err(|error| ConnectError::Client(error.without_url().to_string()))?;
    let mut bot = Bot::with_client(token, client);
    if let Some(url) = api_url {
        bot = bot.set_api_url(base(url)?);
    }
    let me = insist(&bot, &GetMe {}, patience).await?;
    insist(&bot, &DeleteWebhook::new(), patience).await?;
    if !me.supports_inline_queries {
        tracing::info!("inline queries are off; BotFather's /setinline switches them on");
    }
    let myself = Myself { id: me.id, username: me.username };
    tracing::info!(id = myself.id, username = myself.username, "connected to the platform");
    Ok(Telegram { bot, myself })
}

fn has_the_form_of_a_token(token: &str) -> bool {
    let plain = |c: char| c.is_ascii_alphanumeric() || c == '_' || c == '-';
    token.split_once(':').is_some_and(|(id, secret)| {
        !id.is_empty()
            && id.chars().all(|c| c.is_ascii_digit())
            && !secret.is_empty()
            && secret.chars().all(plain)
    })
}

/// The address that the library adds its path to, without a slash at the end.
fn base(mut url: Url) -> Result<Url, ConnectError> {
    let error = ConnectError::Address(url.to_string());
    if !matches!(url.scheme(), "http" | "https") || url.cannot_be_a_base() {
        return Err(error);
    }
    match url.path_segments_mut() {
        Ok(mut segments) => segments.pop_if_empty(),
        Err(()) => return Err(error),
    };
    Ok(url)
}

/// Sends one of the first requests until it is answered, with growing pauses.
async fn insist<P>(bot: &Bot, payload: &P, patience: Patience) -> Result<P::Output, ConnectError>
where
    P: Payload + Serialize + Clone + Send + 'static,
    P::Output: serde::de::DeserializeOwned,
    JsonRequest<P>: Request<Err = RequestError, Payload = P>,
{
    let mut pause = patience.first_pause;
    let mut tries = 0;
    loop {
        tries += 1;
        let error = match call(JsonRequest::new(bot.clone(), payload.clone()), FIRST_REQUESTS).await
        {
            Ok(answer) => return Ok(answer),
            Err(CallError::Request(RequestError::Api(ApiError::InvalidToken))) => {
                return Err(ConnectError::TokenRefused);
            }
            Err(error) => error,
        };
        let why = explain(&error, bot.token());
        if tries >= patience.tries {
            return Err(ConnectError::Unreachable { tries, why });
        }
        if let CallError::Request(RequestError::RetryAfter(wait)) = error {
            pause = pause.max(wait.duration());
        }
        tracing::warn!(tries, why, "the platform does not answer; trying again");
        tokio::time::sleep(pause).await;
        pause = (pause * 2).min(patience.longest_pause);
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::telegram::fake::{Fake, TOKEN, no, yes};

    const QUICK: Patience = Patience {
        tries: 3,
        first_pause: Duration::from_millis(1),
        longest_pause: Duration::from_millis(2),
    };

    #[tokio::test]
    async fn connecting_learns_the_name_and_takes_away_a_webhook() {
        let fake = Fake::start(|_, _| yes(json!(true))).await;
        let telegram = fake.telegram().await;
        assert_eq!(telegram.myself(), &Myself { id: 77, username: "sowbell_bot".to_owned() });
        assert_eq!(fake.methods(), ["GetMe", "DeleteWebhook"]);
        let shown = format!("{telegram:?}");
        assert!(!shown.contains("secret"), "{shown}");
    }

    #[tokio::test]
    async fn a_refused_token_is_named_and_not_shown() {
        let fake = Fake::start(|_, _| no(401, "Unauthorized")).await;
        let error = connect(TOKEN, Some(fake.url()), QUICK).await.expect_err("refused");
        assert_eq!(error, ConnectError::TokenRefused);
        assert!(error.to_string().contains("SOWBELL_TOKEN"));
        assert!(!error.to_string().contains(TOKEN));
        assert_eq!(fake.methods().len(), 1, "trying again would not help");
    }

    #[tokio::test]
    async fn what_is_no_token_is_not_sent_anywhere() {
        let fake = Fake::start(|_, _| yes(json!(true))).await;
        for token in ["", "abc", "12:", ":abc", "12:a b", "12:abc/../x", "SOWBELL_TOKEN=12:abc"] {
            let error = connect(token, Some(fake.url()), QUICK).await.expect_err("no token");
            assert_eq!(error, ConnectError::NotAToken, "{token}");
        }
        assert!(fake.methods().is_empty());
    }

    #[tokio::test]
    async fn a_platform_that_cannot_be_reached_is_tried_again_and_then_reported() {
        let url = "http://127.0.0.1:1/".parse().unwrap();
        let error = connect(TOKEN, Some(url), QUICK).await.expect_err("nobody there");
        let ConnectError::Unreachable { tries: 3, why } = error else { panic!("{error:?}") };
        assert!(!why.contains("secret"), "{why}");
    }

    #[tokio::test]
    async fn a_platform_that_comes_back_is_found() {
        let fake = Fake::start_with_me(|method, nth| match (method, nth) {
            ("GetMe", 0) => Some(no(429, "Too Many Requests: retry after 0")),
            ("GetMe", 1) => Some((200, "<html>Gateway</html>".to_owned())),
            _ => None,
        })
        .await;
        connect(TOKEN, Some(fake.url()), QUICK).await.expect("the third try");
        assert_eq!(fake.methods(), ["GetMe", "GetMe", "GetMe", "DeleteWebhook"]);
    }

    #[test]
    fn a_slash_at_the_end_of_the_address_does_not_matter_and_other_schemes_do() {
        let at = |url: &str| base(url.parse().unwrap());
        assert_eq!(at("http://x/api/").map(String::from), Ok("http://x/api".to_owned()));
        assert_eq!(at("https://x").map(String::from), Ok("https://x/".to_owned()));
        assert!(matches!(at("mailto:a@b"), Err(ConnectError::Address(_))));
        assert!(matches!(at("ftp://x/"), Err(ConnectError::Address(_))));
    }
}

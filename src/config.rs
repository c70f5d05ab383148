//! Settings of the running bot: from the environment, or from a TOML file.

use std::fmt;
use std::path::Path;

use serde::Deserialize;
use url::Url;

/// The database that is used when none is named: a file in the working folder.
pub const DEFAULT_DATABASE: &str = "sqlite:sowbell.db";

/// A text that is never shown.
#[derive(Clone, PartialEq, Eq, Deserialize)]
#[serde(transparent)]
pub struct Secret(String);

impl Secret {
    /// Wraps a secret.
    pub fn new(secret: impl Into<String>) -> Self {
        Self(secret.into())
    }

    /// The secret itself, for the one place that needs it.
    #[must_use]
    pub fn reveal(&self) -> &str {
        &self.0
    }
}

impl fmt::Debug for Secret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("***")
    }
}

/// The settings of `sowbell serve`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Settings {
    /// `SOWBELL_TOKEN`: the bot's token.
    pub token: Secret,
    /// `SOWBELL_DATABASE_URL`.
    pub database_url: String,
    /// `SOWBELL_API_URL`: where the platform's Bot API is; the platform's own by default.
    pub api_url: Option<Url>,
    /// `SOWBELL_LOG`: what is logged, as a filter such as `info` or `sowbell=debug`.
    pub log: String,
}

/// What is wrong with the settings, in a line that names the variable and the mend.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct SettingsError(pub String);

/// The same settings as they stand in a file.
#[expect(clippy::struct_field_names, reason = "the names are those of the variables")]
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    sowbell_token: Option<Secret>,
    sowbell_database_url: Option<String>,
    sowbell_api_url: Option<String>,
    sowbell_log: Option<String>,
}

impl Settings {
    /// Reads the settings: a variable of the environment wins over the file.
    ///
    /// `environment` gives a variable's value; an empty one counts as not set.
    ///
    /// # Errors
    /// A [`SettingsError`] that names what is missing or wrong.
    pub fn read(
        file: Option<&Path>,
        environment: impl Fn(&str) -> Option<String>,
    ) -> Result<Self, SettingsError> {
        let from_file = match file {
            Some(path) => read_file(path)?,
            None => File::default(),
        };
        let variable = |name: &str| environment(name).filter(|value| !value.trim().is_empty());
        let token = variable("SOWBELL_TOKEN")
            .map(Secret::new)
            .or(from_file.sowbell_token)
            .filter(|token| !token.reveal().trim().is_empty())
            .ok_or_else(|| {
                SettingsError(
                    "SOWBELL_TOKEN is not set: set it to the token that the platform gave for your bot"
                        .to_owned(),
                )
            })?;
        let token = Secret::new(token.reveal().trim());
        if !looks_like_token(token.reveal()) {
            return Err(SettingsError(
                "SOWBELL_TOKEN is not a bot token: it has the form 123456:letters-and-digits"
                    .to_owned(),
            ));
        }
        let api_url = variable("SOWBELL_API_URL").or(from_file.sowbell_api_url);
        let api_url = api_url.map(|text| read_url(&text)).transpose()?;
        Ok(Self {
            token,
            database_url: variable("SOWBELL_DATABASE_URL")
                .or(from_file.sowbell_database_url)
                .unwrap_or_else(|| DEFAULT_DATABASE.to_owned()),
            api_url,
            log: variable("SOWBELL_LOG")
                .or(from_file.sowbell_log)
                .unwrap_or_else(|| "info".to_owned()),
        })
    }
}

fn read_file(path: &Path) -> Result<File, SettingsError> {
    let shown = path.display();
    let text = std::fs::read_to_string(path).map_err(|error| {
        SettingsError(format!("the settings file {shown} cannot be read: {error}"))
    })?;
    // The error's own text would quote the line, and the line may hold the token.
    toml::from_str(&text).map_err(|error| {
        let line = error
            .span()
            .and_then(|span| text.get(..span.start))
            .map_or(1, |before| before.matches('\n').count() + 1);
        let what = error.message().lines().next().unwrap_or_default();
        SettingsError(format!("the settings file {shown} has an error in line {line}: {what}"))
    })
}

fn read_url(text: &str) -> Result<Url, SettingsError> {
    let wrong = || {
        SettingsError(
            "SOWBELL_API_URL is not an address: leave it out, or give one such as http://127.0.0.1:8081"
                .to_owned(),
        )
    };
    let url = Url::parse(text.trim()).map_err(|_| wrong())?;
    if matches!(url.scheme(), "http" | "https") && url.has_host() { Ok(url) } else { Err(wrong()) }
}

fn looks_like_token(text: &str) -> bool {
    text.split_once(':').is_some_and(|(id, secret)| {
        !id.is_empty()
            && id.bytes().all(|b| b.is_ascii_digit())
            && !secret.is_empty()
            && secret.bytes().all(|b| b.is_ascii_alphanumeric() || matches!(b, b'_' | b'-'))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(variables: &[(&str, &str)]) -> Result<Settings, SettingsError> {
        Settings::read(None, |name| {
            variables.iter().find(|(key, _)| *key == name).map(|(_, value)| (*value).to_owned())
        })
    }

    #[test]
    fn missing_and_bad_settings_name_the_variable() {
        let wrong = |variables: &[(&str, &str)]| read(variables).expect_err("refused").0;
        assert!(wrong(&[]).starts_with("SOWBELL_TOKEN is not set"));
        assert!(wrong(&[("SOWBELL_TOKEN", " ")]).starts_with("SOWBELL_TOKEN is not set"));
        assert!(
            wrong(&[("SOWBELL_TOKEN", "sesame")]).starts_with("SOWBELL_TOKEN is not a bot token")
        );
        let url = wrong(&[("SOWBELL_TOKEN", "1:a"), ("SOWBELL_API_URL", "here")]);
        assert!(url.starts_with("SOWBELL_API_URL"), "{url}");
    }

    #[test]
    fn defaults_and_the_hidden_token() {
        let settings = read(&[("SOWBELL_TOKEN", "12:secret_word")]).expect("settings");
        assert_eq!(settings.database_url, DEFAULT_DATABASE);
        assert_eq!(settings.log, "info");
        assert!(!format!("{settings:?}").contains("secret_word"));
    }

    #[test]
    fn a_file_gives_what_the_environment_does_not_and_its_errors_do_not_quote_it() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("settings.toml");
        std::fs::write(&path, "sowbell_token = \"12:secret_word\"\nsowbell_log = \"debug\"\n")
            .expect("written");
        let environment = |name: &str| (name == "SOWBELL_LOG").then(|| "warn".to_owned());
        let settings = Settings::read(Some(&path), environment).expect("settings");
        assert_eq!(settings.token.reveal(), "12:secret_word");
        assert_eq!(settings.log, "warn");
        std::fs::write(&path, "sowbell_log = \"x\"\nsowbell_token = [\"12:secret_word\"]\n")
            .expect("written");
        let error = Settings::read(Some(&path), environment).expect_err("refused").0;
        assert!(error.contains("line 2") && !error.contains("secret_word"), "{error}");
        let error = Settings::read(Some(&folder.path().join("no.toml")), environment);
        assert!(error.expect_err("refused").0.contains("cannot be read"));
    }
}

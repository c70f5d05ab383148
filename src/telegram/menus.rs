//! The lists of commands that the platform offers while somebody types.

use std::time::Duration;

use teloxide::RequestError;
use teloxide::payloads::{SetMyCommands, SetMyCommandsSetters};
use teloxide::requests::JsonRequest;
use teloxide::types::{BotCommand, BotCommandScope};

use super::{CallError, Telegram, call};
use crate::messages::{CommandMenu, MenuScope};

/// The platform's limits: commands in a menu, characters of a command and of its description.
const MOST_COMMANDS: usize = 100;
const LONGEST_COMMAND: usize = 32;
const LONGEST_DESCRIPTION: usize = 256;

/// How long one menu may take.
const LONGEST_CALL: Duration = Duration::from_secs(20);

/// The longest wait that the platform may ask for between two menus; what is asked to wait longer
/// is left for the next start.
const LONGEST_WAIT: Duration = Duration::from_mins(1);

impl Telegram {
    /// Sets the menus one after the other. What cannot be set is logged and left as it was: the
    /// commands work without a menu.
    pub async fn set_menus(&self, menus: &[CommandMenu]) {
        for menu in menus {
            let mut set = self.set_menu(menu).await;
            if let Err(CallError::Request(RequestError::RetryAfter(wait))) = &set
                && wait.duration() <= LONGEST_WAIT
            {
                tokio::time::sleep(wait.duration()).await;
                set = self.set_menu(menu).await;
            }
            if let Err(error) = set {
                let (scope, language) = (menu.scope, menu.language.as_deref());
                let why = self.explain(&error);
                tracing::warn!(?scope, language, why, "a command menu could not be set");
            }
        }
    }

    async fn set_menu(&self, menu: &CommandMenu) -> Result<(), CallError> {
        let mut payload = SetMyCommands::new(commands(menu)).scope(scope(menu.scope));
        payload.language_code.clone_from(&menu.language);
        call(JsonRequest::new(self.bot.clone(), payload), LONGEST_CALL).await.map(|_| ())
    }
}

fn scope(scope: MenuScope) -> BotCommandScope {
    match scope {
        MenuScope::Private => BotCommandScope::AllPrivateChats,
        MenuScope::Groups => BotCommandScope::AllGroupChats,
        MenuScope::Administrators => BotCommandScope::AllChatAdministrators,
    }
}

/// The commands that the platform takes: one bad name would have it refuse the whole menu.
fn commands(menu: &CommandMenu) -> Vec<BotCommand> {
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
    let good = |name: &str, description: &str| {
        (1..=LONGEST_COMMAND).contains(&name.len())
            && name.chars().all(plain)
            && !description.is_empty()
    };
    let mut commands = Vec::new();
    for (name, description) in &menu.commands {
        if good(name, description) && commands.len() < MOST_COMMANDS {
            let description: String = description.chars().take(LONGEST_DESCRIPTION).collect();
            commands.push(BotCommand::new(name, description));
        } else {
            tracing::error!(name, "the platform would not take this command; it is left out");
        }
    }
    commands
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::telegram::fake::{Fake, no, yes};

    fn menu(scope: MenuScope, language: Option<&str>, names: &[&str]) -> CommandMenu {
        let commands = names.iter().map(|&name| (name.to_owned(), "What it does".to_owned()));
        CommandMenu { scope, language: language.map(str::to_owned), commands: commands.collect() }
    }

    #[tokio::test]
    async fn each_menu_is_set_for_its_chats_and_language() {
        let fake = Fake::start(|_, _| yes(json!(true))).await;
        let menus = [
            menu(MenuScope::Private, None, &["now"]),
            menu(MenuScope::Groups, Some("de"), &["now"]),
            menu(MenuScope::Administrators, None, &["club"]),
        ];
        fake.telegram().await.set_menus(&menus).await;
        let entry = |name: &str| json!([{ "command": name, "description": "What it does" }]);
        let expected = [
            json!({ "commands": entry("now"), "scope": { "type": "all_private_chats" } }),
            json!({ "commands": entry("now"), "scope": { "type": "all_group_chats" },
                "language_code": "de" }),
            json!({ "commands": entry("club"), "scope": { "type": "all_chat_administrators" } }),
        ];
        assert_eq!(fake.calls("SetMyCommands"), expected);
    }

    #[tokio::test]
    async fn a_refused_menu_does_not_keep_the_next_from_being_set() {
        let fake = Fake::start_with_me(|method, nth| match (method, nth) {
            ("SetMyCommands", 0) => Some(no(400, "Bad Request: something")),
            _ => None,
        })
        .await;
        let menus = [menu(MenuScope::Private, None, &["a"]), menu(MenuScope::Groups, None, &["b"])];
        fake.telegram().await.set_menus(&menus).await;
        assert_eq!(fake.calls("SetMyCommands").len(), 2);
    }

    #[test]
    fn a_name_that_the_platform_would_refuse_is_left_out_alone() {
        let long = "x".repeat(33);
        let names = ["now", "Now", "sow-now", "", long.as_str(), "crops_2"];
        let kept = commands(&menu(MenuScope::Private, None, &names));
        let kept: Vec<&str> = kept.iter().map(|command| command.command.as_str()).collect();
        assert_eq!(kept, ["now", "crops_2"]);
    }
}

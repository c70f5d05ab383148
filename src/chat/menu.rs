//! The commands that the platform offers, for each kind of chat.

use crate::messages::{CommandMenu, MenuScope};
use crate::wording::Speech;

use super::knowledge::Knowledge;

/// The command menus in every language that is built in; English also serves everybody else.
#[must_use]
pub fn command_menus(knowledge: &Knowledge) -> Vec<CommandMenu> {
    let mut menus = Vec::new();
    for tag in knowledge.languages() {
        // The platform knows two-letter languages only, without regions.
        if tag.to_string() != tag.language() {
            continue;
        }
        let speech = knowledge.speech(&tag, tag.units());
        let languages =
            if tag.language() == "en" { vec![None] } else { vec![Some(tag.language().to_owned())] };
        for language in languages {
            for scope in [MenuScope::Private, MenuScope::Groups, MenuScope::Administrators] {
                let commands = commands(scope, &speech);
                menus.push(CommandMenu { scope, language: language.clone(), commands });
            }
        }
    }
    menus
}

fn commands(scope: MenuScope, speech: &Speech) -> Vec<(String, String)> {
    let mut commands = vec![("ask", speech.plain("menu-ask")), ("now", speech.plain("menu-now"))];
    if scope == MenuScope::Private {
        commands.extend([
            ("grow", speech.plain("menu-grow")),
            ("drop", speech.plain("menu-drop")),
            ("mycrops", speech.plain("menu-mycrops")),
            ("lists", speech.plain("menu-lists")),
            ("sown", speech.plain("menu-sown")),
            ("sowings", speech.plain("menu-sowings")),
            ("variety", speech.plain("menu-variety")),
            ("undo", speech.plain("menu-undo")),
            ("trays", speech.plain("menu-trays")),
            ("frost", speech.plain("menu-frost")),
            ("place", speech.plain("menu-place")),
            ("hold", speech.plain("menu-hold")),
            ("zone", speech.plain("menu-zone")),
            ("hour", speech.plain("menu-hour")),
            ("holiday", speech.plain("menu-holiday")),
            ("quiet", speech.plain("menu-quiet")),
            ("weekends", speech.plain("menu-weekends")),
            ("settings", speech.plain("menu-settings")),
            ("export", speech.plain("menu-export")),
            ("forget", speech.plain("menu-forget")),
        ]);
    }
    if scope != MenuScope::Private {
        commands.push(("lists", speech.plain("menu-lists")));
    }
    if scope == MenuScope::Administrators {
        commands.push(("club", speech.plain("menu-club")));
    }
    commands.push(("help", speech.plain("menu-help")));
    commands.into_iter().map(|(name, text)| (name.to_owned(), text)).collect()
}

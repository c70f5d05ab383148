//! What must be looked up before a message can be decided.

use crate::messages::{ChatKind, Incoming, Press, Topic, What};

use super::sentences::Request;
use super::{inline_talk, list_words, read_on};

/// What must be looked up before a message can be decided.
#[expect(clippy::struct_excessive_bools, reason = "each is one thing more to look up")]
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Needs {
    /// The join token that the text carries.
    pub join_token: Option<String>,
    /// Whether the sender's role in the group matters.
    pub role: RoleMatters,
    /// Whether the club's lists matter.
    pub lists: bool,
    /// Whether it matters how many members the club has.
    pub reach: bool,
    /// The code of another club's list that the text carries.
    pub list_code: Option<String>,
    /// Whether the message concerns the bot at all; where not, nothing is loaded or kept.
    pub facts: bool,
    /// Whether all that is kept about the sender is asked for.
    pub own_data: bool,
    /// The message of a group's question that is to be read on, in this group or in the one of
    /// the join token.
    pub question: Option<i32>,
}

/// Whether the sender's role in the group matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum RoleMatters {
    /// It does not.
    #[default]
    No,
    /// It may; what is remembered of it will do.
    Perhaps,
    /// Whoever is no administrator is refused over it, so it must be true at this moment.
    Surely,
}

/// What deciding `incoming` needs.
///
/// The role is asked for in a group whenever a command, a reply or a press may turn out to be
/// about the club's settings.
#[must_use]
pub fn needs(incoming: &Incoming) -> Needs {
    let in_group = incoming.chat.kind == ChatKind::Group;
    match &incoming.what {
        What::Nothing | What::Text { addressed: false, .. } => Needs::default(),
        What::Text { .. } | What::Pressed { .. } | What::Inline { .. }
            if incoming.from.is_bot && !incoming.from.anonymous =>
        {
            Needs::default()
        }
        What::Text { text, .. } => {
            let command = Command::read(text);
            let payload = command
                .as_ref()
                .filter(|command| command.request == Some(Request::Start))
                .map(|command| command.rest.trim())
                .filter(|token| !token.is_empty())
                .map(ToOwned::to_owned);
            let request = command.as_ref().and_then(|command| command.request);
            let commands = matches!(request, Some(Request::Club | Request::Lists));
            // Whoever only looks at the lists is refused nothing.
            let rest = command.as_ref().map_or("", |command| command.rest);
            let about_club = command.is_none() || (commands && !looks_at_lists(request, rest));
            let read_on = payload.as_deref().and_then(read_on::payload);
            let join_token = match read_on {
                Some((token, _)) => Some(token.to_owned()),
                None => payload.clone().filter(|payload| !inline_talk::is_own_payload(payload)),
            };
            Needs {
                join_token,
                role: match (in_group && about_club, commands) {
                    (false, _) => RoleMatters::No,
                    (true, false) => RoleMatters::Perhaps,
                    (true, true) => RoleMatters::Surely,
                },
                reach: in_group && request == Some(Request::Club) && rest.trim().is_empty(),
                lists: command.is_none() || matches!(request, Some(Request::Lists | Request::Undo)),
                list_code: if request == Some(Request::Lists) {
                    list_words::code_in(rest)
                } else {
                    None
                },
                facts: true,
                own_data: !in_group && request == Some(Request::Export),
                question: read_on.map(|(_, message)| message).filter(|_| !in_group),
            }
        }
        What::Pressed { data, .. } => {
            let press = data.parse();
            let question = match press {
                Ok(Press::ReadOn(message)) if in_group => Some(message),
                _ => None,
            };
            let lists = matches!(
                press,
                Ok(Press::Lists
                    | Press::List(_)
                    | Press::Subscribe(_)
                    | Press::Unsubscribe(_)
                    | Press::ReopenList(_)
                    | Press::Undo(_)
                    | Press::UndoOld(_)
                    | Press::PutBack(_))
            );
            let club = matches!(
                press,
                Ok(Press::ReopenList(_)
                    | Press::DismissHelper(_)
                    | Press::Frost(Topic::Club, _)
                    | Press::AskFrost(Topic::Club)
                    | Press::Zone(Topic::Club, _)
                    | Press::AskZone(Topic::Club)
                    | Press::Language(Topic::Club, _)
                    | Press::AskLanguage(Topic::Club)
                    | Press::Hold(Topic::Club, _)
                    | Press::ClubPage)
            );
            let role = if in_group && club { RoleMatters::Surely } else { RoleMatters::No };
            let reach = in_group && press == Ok(Press::ClubPage);
            Needs { role, reach, lists, facts: true, question, ..Needs::default() }
        }
        _ => Needs { facts: true, ..Needs::default() },
    }
}

/// Whether a command only looks at the club's lists, which anybody may.
fn looks_at_lists(request: Option<Request>, rest: &str) -> bool {
    request == Some(Request::Lists) && !list_words::may_change(rest)
}

/// A command with what follows it.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct Command<'t> {
    /// `None` for a command that the bot does not have.
    pub(super) request: Option<Request>,
    /// Its arguments.
    pub(super) rest: &'t str,
}

impl<'t> Command<'t> {
    pub(super) fn read(text: &'t str) -> Option<Self> {
        let body = text.trim_start().strip_prefix('/')?;
        let end = body.find(char::is_whitespace).unwrap_or(body.len());
        let (name, rest) = body.split_at(end);
        // A name may still carry the bot's own name: "/now@the_bot".
        let name = name.split('@').next().unwrap_or_default().to_lowercase();
        Some(Self { request: Request::of_command(&name), rest: rest.trim() })
    }
}

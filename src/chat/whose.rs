//! Whose a button in a group is.

use crate::messages::{Press, Topic, What};

use super::desk::Desk;

/// Whether somebody else asked for the message in the group under which this was pressed, and the
/// button is about what is theirs.
///
/// Such a press would turn the asker's page into one of whoever pressed. Buttons of the club are
/// guarded by the role instead; the club's lists, and the offer to put a crop on one's own, are
/// anybody's to take.
pub(super) fn is_somebody_elses(desk: &Desk<'_>, press: &Press) -> bool {
    if desk.in_private() {
        return false;
    }
    let for_all = match press {
        Press::Grow(_)
        | Press::ClubPage
        | Press::Lists
        | Press::List(_)
        | Press::Subscribe(_)
        | Press::Unsubscribe(_)
        | Press::ReopenList(_)
        | Press::DismissHelper(_) => true,
        Press::Frost(topic, _)
        | Press::AskFrost(topic)
        | Press::Zone(topic, _)
        | Press::AskZone(topic)
        | Press::Language(topic, _)
        | Press::AskLanguage(topic)
        | Press::Hold(topic, _) => *topic == Topic::Club,
        _ => false,
    };
    let What::Pressed { shown: Some(shown), .. } = &desk.incoming.what else { return false };
    !for_all && shown.asked_by.is_some_and(|asked| asked != desk.incoming.from.user)
}

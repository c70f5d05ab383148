//! Whose a button in a group is.

use crate::messages::{Press, What};

use super::desk::Desk;

/// Whether somebody else asked the question in the group under which this was pressed, and the
/// button says what they meant.
///
/// What is a member's own has no buttons in a group at all ([`super::manners`]), buttons of the
/// club are guarded by the role, and the club's lists are anybody's to subscribe to.
pub(super) fn is_somebody_elses(desk: &Desk<'_>, press: &Press) -> bool {
    let What::Pressed { shown: Some(shown), .. } = &desk.incoming.what else { return false };
    let asked_by = shown.asked_by.filter(|_| !desk.in_private());
    matches!(press, Press::Meant(..))
        && asked_by.is_some_and(|asked| asked != desk.incoming.from.user)
}

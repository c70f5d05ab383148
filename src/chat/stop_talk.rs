//! "Stop" and "thanks": words that ask for nothing to be changed.

use crate::messages::Press;

use super::desk::Desk;

/// "Stop": how to hear less, and how to leave. Nothing changes without a clear word.
pub(super) fn stop(desk: &mut Desk<'_>) {
    let text = desk.say_key("stop-how-to");
    let buttons = vec![vec![
        desk.button("button-stop-holiday", Press::AskHoliday),
        desk.button("button-stop-days", Press::AskQuiet),
    ]];
    desk.reply_with(text, buttons);
}

/// "Thanks". In a group it needs no answer.
pub(super) fn thanks(desk: &mut Desk<'_>) {
    if desk.in_private() {
        let text = desk.say_key("thanks");
        desk.reply(text);
    }
}

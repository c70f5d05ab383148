//! Which method does what.

use serde_json::{Value, json};

use super::body::Params;
use super::refusal::Refusal;
use super::state::State;

impl State {
    /// Does what a request asks; `getUpdates` is answered elsewhere, because it waits.
    pub(crate) fn perform(&mut self, method: &str, params: &Params) -> Result<Value, Refusal> {
        match method {
            "getMe" => Ok(self.get_me()),
            "sendMessage" => self.send_message(params),
            "sendPhoto" => self.send_photo(params),
            "sendDocument" => self.send_document(params),
            "sendChatAction" => self.send_chat_action(params),
            "editMessageText" => self.edit_text(params),
            "editMessageCaption" => self.edit_caption(params),
            "editMessageReplyMarkup" => self.edit_keyboard(params),
            "setMessageReaction" => self.react(params),
            "answerCallbackQuery" => self.answer_callback_query(params),
            "answerInlineQuery" => self.answer_inline_query(params),
            "getChat" => self.get_chat(params),
            "getChatAdministrators" => self.get_chat_administrators(params),
            "getChatMember" => self.get_chat_member(params),
            "leaveChat" => self.leave_chat(params),
            "setMyCommands" => self.set_my_commands(params),
            "deleteMyCommands" => self.delete_my_commands(params),
            "getMyCommands" => self.get_my_commands(params),
            "setMyName" => self.set_description(method, ("name", 64), params),
            "setMyDescription" => self.set_description(method, ("description", 512), params),
            "setMyShortDescription" => {
                self.set_description(method, ("short_description", 120), params)
            }
            "deleteWebhook" => {
                if params.flag("drop_pending_updates") {
                    self.updates.forget_pending();
                }
                Ok(json!(true))
            }
            _ => {
                self.violations.push(format!("{method}: unexpected method"));
                Ok(json!(true))
            }
        }
    }
}

//! What a chat holds of the bot's messages, and their buttons.

use sowbell::messages::{Buttons, Does, Edit, Press, Say, Shown};
use sowbell::planning::JobKey;

/// A message of the bot's in a chat.
#[derive(Debug, Clone)]
pub struct Letter {
    pub message: i32,
    pub text: String,
    pub buttons: Buttons,
}

impl Letter {
    pub fn new(message: i32, say: &Say) -> Self {
        Self { message, text: say.text.clone(), buttons: say.buttons.clone() }
    }

    pub fn edited(&mut self, edit: &Edit) {
        self.text.clone_from(&edit.text);
        self.buttons.clone_from(&edit.buttons);
    }

    /// The data of its buttons, in their order.
    pub fn presses(&self) -> Vec<String> {
        let all = self.buttons.iter().flatten();
        all.filter_map(|button| match &button.does {
            Does::Press(press) => Some(press.to_string()),
            Does::OpenPrivate(_) => None,
        })
        .collect()
    }

    /// As the platform hands it back with a press.
    pub fn shown(&self) -> Shown {
        let row = |row: &Vec<sowbell::messages::Button>| {
            let with_data = row.iter().filter_map(|button| match &button.does {
                Does::Press(press) => Some((button.label.clone(), press.to_string())),
                Does::OpenPrivate(_) => None,
            });
            with_data.collect()
        };
        Shown {
            text: self.text.clone(),
            buttons: self.buttons.iter().map(row).collect(),
            asked_by: None,
        }
    }
}

/// The jobs that a reminder names, by its buttons.
pub fn jobs_named(buttons: &Buttons) -> Vec<JobKey> {
    let job_of = |row: &Vec<sowbell::messages::Button>| {
        row.iter().find_map(|button| match &button.does {
            Does::Press(Press::Job(key, _)) => Some(key.clone()),
            _ => None,
        })
    };
    buttons.iter().filter_map(job_of).collect()
}

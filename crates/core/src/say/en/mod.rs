//! English (US).

pub(super) mod answer;
pub(super) mod judge;
pub(super) mod names;
pub(super) mod reading;
pub(super) mod rule;
pub(super) mod spoken;

use super::{Message, capital};
use crate::length::Unit;

pub(super) fn say(message: &Message, unit: Unit) -> String {
    match message {
        Message::Unreadable { spot, text, error } => {
            let refused = reading::refused(error.kind, text.trim(), unit);
            [&capital(names::spot(*spot)), ": ", &refused].concat()
        }
        Message::Rule(says) => rule::say(says, unit),
        Message::Answer(says) => answer::say(says, unit),
        Message::Hint(hint) => rule::hint(hint, unit),
        Message::Judge(says) => judge::say(says, unit),
    }
}

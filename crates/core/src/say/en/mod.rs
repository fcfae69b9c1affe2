//! English (US).

use super::Message;
use crate::length::Unit;

pub(super) fn say(message: &Message, _unit: Unit) -> String {
    match message {
        Message::Text(text) => text.clone(),
    }
}

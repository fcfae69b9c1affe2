//! Every sentence the domain can say: data here, words in one catalogue per language.

mod en;

use crate::length::Unit;

/// A sentence, as data. A catalogue turns it into words.
#[derive(Clone, Debug, PartialEq)]
pub enum Message {
    /// Placeholder while the rules are being written.
    Text(String),
}

/// The languages there is a catalogue for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English (US).
    #[default]
    English,
}

/// Who is spoken to: in which language, with lengths in which unit.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Speaker {
    /// The language.
    pub language: Language,
    /// The unit lengths are written in.
    pub unit: Unit,
}

impl Speaker {
    /// The sentence in words.
    #[must_use]
    pub fn say(self, message: &Message) -> String {
        match self.language {
            Language::English => en::say(message, self.unit),
        }
    }
}

//! Every sentence the domain can say: data here, words in one catalogue per language.
//!
//! A [`Message`] carries exact lengths, never text made from them; a catalogue is
//! a set of exhaustive matches, so a sentence that one language lacks does not compile.

mod answer;
mod because;
mod capital;
mod en;
mod es;
mod figure;
mod fr;
mod judge;
mod language;
mod reading;
mod rule;
mod spoken;
mod translated;

pub use answer::AnswerSays;
pub use because::Because;
pub use capital::capital;
pub use figure::decimal;
pub use judge::JudgeSays;
pub use language::Language;
pub use rule::{Hint, RuleSays, Subject};

use crate::bounds::Reason;
use crate::length::{ReadError, Unit};
use crate::spot::{Dimension, Spot};

/// A sentence, as data.
#[derive(Clone, Debug, PartialEq)]
pub enum Message {
    /// A text that is not a reading.
    Unreadable {
        /// Where it was typed.
        spot: Spot,
        /// What was typed.
        text: String,
        /// Why it is refused.
        error: ReadError,
    },
    /// What a rule found.
    Rule(RuleSays),
    /// What is amiss with the answer to a dealer's question.
    Answer(AnswerSays),
    /// What to do next.
    Hint(Hint),
    /// What the judge says.
    Judge(JudgeSays),
}

impl From<RuleSays> for Message {
    fn from(says: RuleSays) -> Self {
        Self::Rule(says)
    }
}
impl From<Hint> for Message {
    fn from(hint: Hint) -> Self {
        Self::Hint(hint)
    }
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
            _ => translated::say(self, message),
        }
    }
    /// The trade's name of an ordered dimension: `post-to-post width`.
    #[must_use]
    pub fn dimension(self, dimension: Dimension) -> &'static str {
        match self.language {
            Language::English => en::names::dimension(dimension),
            _ => translated::dimension(self, dimension),
        }
    }
    /// The short name of a place: `low`, `left`, `first bow`.
    #[must_use]
    pub fn place(self, spot: Spot) -> &'static str {
        match self.language {
            Language::English => en::names::place(spot),
            _ => translated::place(self, spot),
        }
    }
    /// A spot's full name, within a sentence: `the post-to-post width, middle`.
    #[must_use]
    pub fn spot(self, spot: Spot) -> &'static str {
        match self.language {
            Language::English => en::names::spot(spot),
            _ => translated::spot(self, spot),
        }
    }
    /// A dimension with its article: `the header depth`, `la profundidad del dintel`.
    #[must_use]
    pub fn the_dimension(self, dimension: Dimension) -> String {
        match self.language {
            Language::English => ["the ", en::names::dimension(dimension)].concat(),
            _ => translated::the_dimension(self, dimension),
        }
    }
    /// A spot with its article.
    #[must_use]
    pub fn the_spot(self, spot: Spot) -> String {
        match self.language {
            Language::English => ["the ", en::names::spot(spot)].concat(),
            _ => translated::the_spot(self, spot),
        }
    }
    /// Why a limit is there, as a clause.
    #[must_use]
    pub fn reason(self, reason: Reason) -> &'static str {
        match self.language {
            Language::English => en::rule::reason(reason),
            _ => translated::reason(self, reason),
        }
    }
}

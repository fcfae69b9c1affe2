//! What is amiss with an answer to a dealer's question, as data.

use super::Message;
use crate::profile::{Amiss, Words};

/// An answer that will not do.
#[derive(Clone, Debug, PartialEq)]
pub struct AnswerSays {
    /// The question's key.
    pub key: String,
    /// The question, as the dealer put it.
    pub ask: Words,
    /// The answer.
    pub answer: String,
    /// What is amiss with it.
    pub amiss: Amiss,
}

impl From<AnswerSays> for Message {
    fn from(says: AnswerSays) -> Self {
        Self::Answer(says)
    }
}

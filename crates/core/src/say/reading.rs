//! A text that is no reading.

use super::{Language, Speaker, en, translated};
use crate::length::ReadError;

impl Speaker {
    /// What is wrong with `text` and what to do, in one sentence: the same at the
    /// field and in a summary. `text` stands in it as it was typed (a page escapes
    /// it), but for texts too long to repeat or with characters that cannot be seen.
    #[must_use]
    pub fn say_read_error(self, error: &ReadError, text: &str) -> String {
        match self.language {
            Language::English => en::reading::refused(error.kind, text.trim(), self.unit),
            _ => translated::read_error(self, error, text),
        }
    }
}

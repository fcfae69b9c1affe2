//! What is said of a line that cannot be read.

use hangtrue_core::say::Language;
use serde::Serialize;

use super::{FileError, Id};

/// The answer to a line that is not a survey: `{"id":…,"error":{…}}`.
#[derive(Clone, Debug, Serialize)]
pub struct Refusal {
    /// The line's id, as far as it could be made out.
    pub id: Id,
    error: Told,
}

#[derive(Clone, Debug, Serialize)]
struct Told {
    code: &'static str,
    #[serde(skip_serializing_if = "String::is_empty")]
    place: String,
    message: String,
}

impl Refusal {
    /// The refusal in words.
    #[must_use]
    pub fn new(id: Id, error: &FileError, language: Language) -> Self {
        let message = crate::say::file(language, error);
        Self::in_words(id, error.fault.code(), error.place.clone(), message)
    }
    /// A refusal that is in words already: of a link, of a row of a table.
    #[must_use]
    pub const fn in_words(id: Id, code: &'static str, place: String, message: String) -> Self {
        Self { id, error: Told { code, place, message } }
    }
    /// What is wrong, in words.
    #[must_use]
    pub fn message(&self) -> &str {
        &self.error.message
    }
}

//! One reading: `{"text":…,"nm":…,"canonical":…}`, or why it is none.

use hangtrue_core::length::{self, ReadError, ReadErrorKind};
use hangtrue_core::say::Speaker;
use serde::Serialize;

/// What a text says.
#[derive(Clone, Debug, Serialize)]
#[serde(untagged)]
pub enum Reading {
    /// A length.
    Read {
        /// As it was typed.
        text: String,
        /// In nanometres, exact.
        nm: i64,
        /// As this project writes it, in the unit it was written in.
        canonical: String,
    },
    /// Not a length.
    Refused {
        /// As it was typed.
        text: String,
        /// Why.
        error: Refused,
    },
}

/// Why a text is not a length.
#[derive(Clone, Debug, Serialize)]
pub struct Refused {
    /// The reason's name.
    pub code: &'static str,
    /// The reason in words.
    pub message: String,
    /// What was likely meant, likeliest first; never applied.
    pub suggestions: Vec<String>,
}

impl Reading {
    /// Reads `text`; a bare number takes the speaker's unit.
    #[must_use]
    pub fn of(text: &str, speaker: Speaker) -> Self {
        match length::Reading::of(text, speaker.unit, speaker.language) {
            Ok(reading) => Self::Read {
                text: text.to_owned(),
                nm: reading.length.nm(),
                canonical: reading.canonical(),
            },
            Err(error) => {
                Self::Refused { text: text.to_owned(), error: Refused::new(&error, text, speaker) }
            }
        }
    }

    /// The answer to a text that goes on for longer than anyone read it.
    #[must_use]
    pub fn too_long(beginning: &str, speaker: Speaker) -> Self {
        let error = ReadError { kind: ReadErrorKind::TooLong, suggestions: Vec::new() };
        Self::Refused {
            text: [beginning, "…"].concat(),
            error: Refused::new(&error, beginning, speaker),
        }
    }
}

impl Refused {
    fn new(error: &ReadError, text: &str, speaker: Speaker) -> Self {
        Self {
            code: error.kind.code(),
            message: speaker.say_read_error(error, text),
            suggestions: error.suggestions.iter().map(|s| s.text.clone()).collect(),
        }
    }
}

//! What is wrong with a file, as data; the words are in [`crate::say`].

use serde::Serialize;

use super::Id;
use super::profile::ProfileFault;
use hangtrue_core::say::Language;

/// What a JSON value is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NodeKind {
    /// `null`.
    Null,
    /// `true` or `false`.
    Bool,
    /// A number.
    Number,
    /// A text.
    Text,
    /// A list.
    List,
    /// An object.
    Object,
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq)]
pub enum Fault {
    /// Not JSON at all.
    NotJson {
        /// The line where it breaks, from 1.
        line: usize,
        /// Where in the line, counted in bytes from 1.
        column: usize,
        /// What the JSON reader says, in English.
        reason: String,
    },
    /// More than is read.
    TooLong {
        /// The most bytes that are read.
        most: usize,
    },
    /// Another type than expected.
    Kind {
        /// What is expected.
        expected: NodeKind,
        /// What is there.
        found: NodeKind,
    },
    /// A bare number where a reading was typed: `92.250` and `92.25` would be the same,
    /// and what was typed would be lost.
    NumberForText {
        /// The number.
        number: String,
    },
    /// Not a reading, nor a list of readings.
    Reading {
        /// What is there.
        found: NodeKind,
    },
    /// A key that must be there is not.
    Missing {
        /// The key.
        key: &'static str,
    },
    /// A key is there twice.
    Twice {
        /// The key.
        key: String,
    },
    /// A key that means nothing.
    Unknown {
        /// The key, cut to a length that can be shown.
        key: String,
        /// The keys that mean something here.
        known: Vec<&'static str>,
    },
    /// A text that is none of the few it can be.
    Choice {
        /// The text, cut to a length that can be shown.
        found: String,
        /// What it can be.
        known: Vec<&'static str>,
    },
    /// A number that is no whole number from 0 to 2³² − 1.
    NotWhole {
        /// The number.
        number: String,
    },
    /// A text that is no day, as `2026-11-25`.
    Date {
        /// The text, cut to a length that can be shown.
        found: String,
    },
    /// What only a profile can have wrong.
    Profile(ProfileFault),
}

impl Fault {
    /// The name in files.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NotJson { .. } => "not-json",
            Self::TooLong { .. } => "too-long",
            Self::Kind { .. } | Self::Reading { .. } => "wrong-type",
            Self::NotWhole { .. } => "not-whole",
            Self::Date { .. } => "not-a-date",
            Self::NumberForText { .. } => "number-for-text",
            Self::Missing { .. } => "missing-key",
            Self::Twice { .. } => "double-key",
            Self::Unknown { .. } => "unknown-key",
            Self::Choice { .. } => "unknown-value",
            Self::Profile(fault) => fault.code(),
        }
    }
}

/// What is wrong with a file, and where in it.
#[derive(Clone, Debug, PartialEq)]
pub struct FileError {
    /// The place as a path of keys, `readings.width.low`; empty for the whole.
    pub place: String,
    /// What is wrong there.
    pub fault: Fault,
}

impl FileError {
    /// `fault` at `place`.
    #[must_use]
    pub const fn new(place: String, fault: Fault) -> Self {
        Self { place, fault }
    }
}

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
        let error = Told { code: error.fault.code(), place: error.place.clone(), message };
        Self { id, error }
    }
    /// What is wrong, in words.
    #[must_use]
    pub fn message(&self) -> &str {
        &self.error.message
    }
}

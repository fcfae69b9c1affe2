//! What is wrong with a file, as data; the words are in [`crate::say`].

use super::profile::ProfileFault;
use super::text::{Node, Syntax, Value, Wrong, line_and_column};

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

impl From<&Node<'_>> for NodeKind {
    fn from(node: &Node<'_>) -> Self {
        match node.value {
            Value::Null => Self::Null,
            Value::Bool(_) => Self::Bool,
            Value::Number(_) => Self::Number,
            Value::Text(_) => Self::Text,
            Value::List(_) => Self::List,
            Value::Object(_) => Self::Object,
        }
    }
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq)]
pub enum Fault {
    /// Not JSON at all.
    NotJson {
        /// The line where it breaks, from 1.
        line: usize,
        /// Which character of the line, from 1.
        column: usize,
        /// Why.
        what: Syntax,
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

    /// Of a `text` that is not JSON.
    pub(super) fn not_json(text: &str, wrong: Wrong) -> Self {
        let fault = match wrong.what {
            Syntax::Long { most } => Fault::TooLong { most },
            what => {
                let (line, column) = line_and_column(text, wrong.at);
                Fault::NotJson { line, column, what }
            }
        };
        Self::new(String::new(), fault)
    }
}

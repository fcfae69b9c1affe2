//! What is wrong with a link, as data; the words are in [`crate::say`].

/// Why a text gives no order. Nothing of a refused link is applied.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkError {
    /// There is nothing in the text that looks like a payload.
    NotFound,
    /// There are two in the text that differ.
    Several,
    /// More than is read.
    TooLong {
        /// The most characters that are read.
        most: usize,
    },
    /// A character that no payload has.
    Letter {
        /// The character.
        letter: char,
        /// Its place, counted from 1.
        at: usize,
    },
    /// Too little to be a payload.
    TooShort,
    /// Characters are missing.
    Cut {
        /// How many are there.
        found: usize,
        /// How many are missing, if the length symbol is not itself the damaged one.
        missing: usize,
    },
    /// There are more characters than the sender wrote.
    Grown {
        /// How many are there.
        found: usize,
        /// How many too many, if the length symbol is not itself the damaged one.
        extra: usize,
    },
    /// Characters were changed or exchanged.
    Changed,
    /// It arrived whole, but a newer program wrote it.
    Newer {
        /// The version's letter.
        version: char,
    },
    /// It arrived whole, and is the record of a hung door: [`crate::record`] reads it.
    Record,
    /// It arrived whole, but no version of this program writes such contents.
    Contents,
}

impl LinkError {
    /// Its name in files.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::NotFound => "no-link",
            Self::Several => "two-orders",
            Self::TooLong { .. } => "too-long",
            Self::Letter { .. } => "wrong-letter",
            Self::TooShort => "too-short",
            Self::Cut { .. } => "cut",
            Self::Grown { .. } => "grown",
            Self::Changed => "changed",
            Self::Newer { .. } => "newer-version",
            Self::Record => "door-record",
            Self::Contents => "no-order",
        }
    }
}

/// Why an order cannot be written as a link.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EncodeError {
    /// Its texts are longer than a link carries.
    TooLong {
        /// The most characters of a payload.
        most: usize,
    },
    /// The date is outside 2000-01-01 to 2255-12-31, or not a day.
    Date,
}

impl EncodeError {
    /// Its name in files.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::TooLong { .. } => "too-long",
            Self::Date => "not-a-date",
        }
    }
}

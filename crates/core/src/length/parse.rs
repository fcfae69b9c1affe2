//! Text to a length.

use super::{Length, Unit};

/// Why a text is not a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum ReadErrorKind {
    /// Nothing was typed.
    Empty,
    /// Not understood.
    Unknown,
}

impl ReadErrorKind {
    /// The code in files.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::Unknown => "unknown",
        }
    }
}

/// A likely meaning of a refused text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Suggestion {
    /// What to type instead, canonical.
    pub text: String,
    /// Its value.
    pub length: Length,
}

/// A refused text: why, and what was likely meant.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ReadError {
    /// Why.
    pub kind: ReadErrorKind,
    /// Likely meanings, likeliest first; never applied by themselves.
    pub suggestions: Vec<Suggestion>,
}

/// Reads `text`; a bare number takes `unit`.
///
/// # Errors
/// Anything that is not exactly one length is refused with the reason.
pub fn read(text: &str, unit: Unit) -> Result<Length, ReadError> {
    let refuse = |kind| ReadError { kind, suggestions: Vec::new() };
    let n: i64 = text.trim().parse().map_err(|_| {
        refuse(if text.trim().is_empty() { ReadErrorKind::Empty } else { ReadErrorKind::Unknown })
    })?;
    Ok(match unit {
        Unit::Inch => Length::from_inches(n),
        Unit::Millimetre => Length::from_mm(n),
    })
}

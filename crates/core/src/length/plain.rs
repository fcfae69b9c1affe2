//! A reading in figures, as nearly all are typed: `96 3/16`, `8' 0 3/16"`, `2443 mm`.
//!
//! It needs no words, no folding and no mending, and so none of what stands behind [`super::worded`].

use super::fold::LONGEST;
use super::parse::parse;
use super::scan::scan;
use super::words::UNITS;
use super::{ReadError, ReadErrorKind, Reading, Refusal, Unit};

/// Whether `text` is figures, the marks between them and the short names of units, and begins with
/// none of these names and no sign.
#[must_use]
pub fn is_plain(text: &str) -> bool {
    let known = |c: char| matches!(c, '0'..='9' | ' ' | '.' | ',' | '/' | '-' | '\'' | '"');
    let starts = text.trim_start_matches(' ');
    let mut words = text.split(known).filter(|word| !word.is_empty());
    text.len() <= LONGEST
        && !starts.starts_with('-')
        && !starts.starts_with(|c: char| c.is_ascii_lowercase())
        && words.all(|word| UNITS.find(word).is_some())
}

/// Reads a text that [`is_plain`].
pub(super) fn read(text: &str, unit: Unit) -> Result<Reading, ReadError> {
    if text.trim_start_matches(' ').is_empty() {
        return Err(Refusal::from(ReadErrorKind::Empty).into_error());
    }
    scan(text, &UNITS)
        .map_err(Refusal::from)
        .and_then(|tokens| parse(&tokens, unit, &UNITS))
        .map_err(Refusal::into_error)
}

//! A reading with words in it, or with anything else that is not in figures: every language's words
//! are tried, and where it is refused, what it may mean.

use super::fold::{LONGEST, Unseen, fold};
use super::parse::read_by;
use super::{ReadError, ReadErrorKind, Reading, Refusal, Unit, mend, words};
use crate::say::Language;

/// Reads any text; see [`Reading::of`].
#[inline(never)]
pub(super) fn read(text: &str, unit: Unit, language: Language) -> Result<Reading, ReadError> {
    read_once(text, unit, language)
        .map_err(|refusal| mend::with_meanings(refusal, text, unit, language).into_error())
}

/// [`read`] without looking for what a refused text may mean.
fn read_once(text: &str, unit: Unit, language: Language) -> Result<Reading, Refusal> {
    if text.len() > LONGEST {
        return Err(ReadErrorKind::TooLong.into());
    }
    if text.trim().is_empty() {
        return Err(ReadErrorKind::Empty.into());
    }
    read_folded(&fold(text, Unseen::Refuse)?, unit, language)
}

/// Reads a folded text with the first vocabulary that knows its words.
pub(super) fn read_folded(
    folded: &str,
    unit: Unit,
    language: Language,
) -> Result<Reading, Refusal> {
    let folded = &*without_stops(folded);
    let mut first = None;
    for vocabulary in words::in_order(language) {
        match read_by(folded, unit, vocabulary) {
            Err(refusal) if refusal.kind == ReadErrorKind::Unknown => {
                first.get_or_insert(refusal);
            }
            answer => return answer,
        }
    }
    Err(first.unwrap_or(ReadErrorKind::Unknown.into()))
}

/// `folded` without the full stops of its sentences. Behind a fraction one ends a sentence, a unit
/// behind it or not, and is a blank; behind a bare number it may have lost its digits, and stays.
/// Between two words it is a comma: `scan` takes it for that of `ft.`, and `noventa. cinco` is no
/// more 95 than `noventa, cinco` is.
fn without_stops(folded: &str) -> String {
    let is_letter = |c: char| c.is_ascii_lowercase();
    let is_digit = |c: char| c.is_ascii_digit();
    let stop = |(at, c)| {
        let (before, behind) = folded.split_at_checked(at).unwrap_or_default();
        let behind = behind.trim_start_matches('.');
        let under = before.trim_end_matches(is_digit);
        if c != '.' {
            c
        } else if before.ends_with(is_letter)
            && behind.trim_start_matches(' ').starts_with(is_letter)
        {
            ','
        } else if under.len() < before.len()
            && under.trim_end_matches(' ').ends_with('/')
            && !behind.starts_with(is_digit)
        {
            ' '
        } else {
            c
        }
    };
    folded.char_indices().map(stop).collect()
}

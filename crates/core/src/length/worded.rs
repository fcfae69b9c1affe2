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
    let folded = &*with_stops(folded);
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

/// `folded` with a comma for every full stop between two words: `scan` takes it for that of `ft.` or
/// of a sentence, and `noventa. cinco` is no more 95 than `noventa, cinco` is.
fn with_stops(folded: &str) -> String {
    let is_letter = |c: char| c.is_ascii_lowercase();
    let stop = |(at, c)| match folded.split_at_checked(at) {
        Some((before, behind))
            if c == '.'
                && before.ends_with(is_letter)
                && behind.trim_start_matches(['.', ' ']).starts_with(is_letter) =>
        {
            ','
        }
        _ => c,
    };
    folded.char_indices().map(stop).collect()
}

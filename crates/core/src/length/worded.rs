//! A reading with words in it, or with anything else that is not in figures: every language's words
//! are tried, and where it is refused, what it may mean.

use super::fold::{LONGEST, Unseen, fold};
use super::parse::read_by;
use super::words::{Vocabulary, Word};
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
    let mut first = None;
    for vocabulary in words::in_order(language) {
        match read_by(&with_stops(folded, vocabulary), unit, vocabulary) {
            Err(refusal) if refusal.kind == ReadErrorKind::Unknown => {
                first.get_or_insert(refusal);
            }
            answer => return answer,
        }
    }
    Err(first.unwrap_or(ReadErrorKind::Unknown.into()))
}

/// `folded` with a comma for every full stop between two words of which neither is a unit: elsewhere
/// `scan` takes it for that of `ft.` or of a sentence, and `noventa. cinco` is no more 95 than
/// `noventa, cinco` is.
fn with_stops(folded: &str, vocabulary: &Vocabulary) -> String {
    let is_no_unit = |word: Option<&str>| {
        let word = word.unwrap_or_default();
        !word.is_empty() && !matches!(vocabulary.find(word), Some(Word::Unit(_)))
    };
    let other = |c: char| !c.is_ascii_lowercase();
    let mut text = String::with_capacity(folded.len());
    for part in folded.split_inclusive('.') {
        let begins = part.trim_start().split(other).next();
        if let Some(before) = text.strip_suffix('.')
            && is_no_unit(before.rsplit(other).next())
            && is_no_unit(begins)
        {
            text.pop();
            text.push(',');
        }
        text.push_str(part);
    }
    text
}

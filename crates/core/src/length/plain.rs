//! A reading in figures, as nearly all are typed: `96 3/16`, `8' 0 3/16"`, `2443 mm`.
//!
//! It needs no words, no folding and no mending, and so none of what stands behind [`super::worded`].

use super::fold::LONGEST;
use super::parse::read_by;
use super::words::UNITS;
use super::{ReadError, ReadErrorKind, Reading, Refusal, Unit};
use crate::short::holds;

/// Whether `text` is figures, the marks between them and the short names of units, and begins with
/// none of these names and no sign. A point beside a slash is a decimal or ends a sentence: rare.
#[must_use]
pub fn is_plain(text: &str) -> bool {
    let known = |c: char| matches!(c, '0'..='9' | ' ' | '.' | ',' | '/' | '-' | '\'' | '"');
    let starts = text.trim_start_matches(' ');
    let mut words = text.split(known).filter(|word| !word.is_empty());
    let point_beside_slash = holds(text, b'/') && holds(text, b'.');
    text.len() <= LONGEST
        && !starts.starts_with('-')
        && !point_beside_slash
        && !starts.starts_with(|c: char| c.is_ascii_lowercase())
        && words.all(|word| UNITS.find(word).is_some())
}

/// Reads a text that [`is_plain`].
pub(super) fn read(text: &str, unit: Unit) -> Result<Reading, ReadError> {
    if text.trim_start_matches(' ').is_empty() {
        return Err(Refusal::from(ReadErrorKind::Empty).into_error());
    }
    read_by(text, unit, &UNITS).map_err(Refusal::into_error)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::length::worded;
    use crate::say::Language;
    use proptest::prelude::*;

    #[test]
    fn what_is_typed_on_the_keys_is_plain_and_words_are_not() {
        for text in ["", "96", "96 3/16", "8' 0 3/16\"", "8 ft 6 in", "2443.5mm", "96-1/4", ".5"] {
            assert!(is_plain(text), "{text}");
        }
        for text in ["ninety", "-4", "96 inches", "96 IN", "96¼", "8’", "96?", "in 96", "\t"] {
            assert!(!is_plain(text), "{text}");
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig { max_global_rejects: 200_000, ..ProptestConfig::with_cases(20_000) })]

        /// It says what it says among words, in any language, with the same suggestions.
        #[test]
        fn a_plain_text_is_read_as_any_other(
            pieces in prop::collection::vec(
                prop::sample::select(vec![
                    "9", "6", "0", "16", "3", "1", "12", "125", "2443", "/", "/", " ", " ", ".",
                    ",", "-", "'", "\"", "in", "ft", "mm", "cm", "m",
                ]),
                0..9,
            ),
            unit in prop::sample::select(vec![Unit::Inch, Unit::Millimetre]),
            language in prop::sample::select(Language::ALL.to_vec()),
        ) {
            let text = pieces.concat();
            prop_assume!(is_plain(&text));
            prop_assert_eq!(read(&text, unit), worded::read(&text, unit, language), "{}", text);
        }
    }
}

//! How a text is set: no line ends within a number, or between a number and what it counts.
//!
//! Of `1 13/16 in` with the `1` at the end of a line, the eye takes in `13/16 in`.

use std::borrow::Cow;

/// Letters of the longest unit, `pulg`. A short word that is none may stay with its number too.
const UNIT: usize = 4;

/// The same text, with no-break spaces (U+00A0) between a whole number and a fraction and between a
/// number and a short word.
#[must_use]
pub fn unbroken(text: Cow<'_, str>) -> Cow<'_, str> {
    let mut set = String::new();
    let mut done = 0;
    for (at, byte) in text.bytes().enumerate() {
        if byte != b' ' {
            continue;
        }
        let (before, after) = text.split_at_checked(at).unwrap_or_default();
        if before.ends_with(|last: char| last.is_ascii_digit()) && is_bound(after) {
            set.push_str(before.get(done..).unwrap_or_default());
            set.push('\u{a0}');
            done = at.saturating_add(1);
        }
    }
    if done == 0 {
        return text;
    }
    set.push_str(text.get(done..).unwrap_or_default());
    Cow::Owned(set)
}

/// Whether what stands behind a number and begins with a space belongs to it.
fn is_bound(after: &str) -> bool {
    let bytes = after.as_bytes().get(1..).unwrap_or_default();
    let digits = bytes.iter().take_while(|byte| byte.is_ascii_digit()).count();
    if digits > 0 {
        return bytes.get(digits) == Some(&b'/');
    }
    let letters = bytes.iter().take_while(|byte| byte.is_ascii_alphabetic()).count();
    // A letter beyond ASCII goes on with the word.
    (1..=UNIT).contains(&letters) && bytes.get(letters).is_none_or(u8::is_ascii)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn set(text: &str) -> String {
        unbroken(Cow::Borrowed(text)).replace('\u{a0}', "_")
    }

    #[test]
    fn a_number_stays_with_its_fraction_and_its_unit() {
        for (text, wanted) in [
            (
                "run from 92 3/16 in to 94 in, 1 13/16 in apart",
                "run from 92_3/16_in to 94_in, 1_13/16_in apart",
            ),
            ("96 1/4 pulg = 2444.8 mm", "96_1/4_pulg = 2444.8_mm"),
            ("8 ft 6 in", "8_ft 6_in"),
            ("3 readings, 12 34", "3 readings, 12 34"),
            ("at 5 côté, no 7", "at 5 côté, no 7"),
            ("", ""),
            ("in 3 ", "in 3 "),
        ] {
            assert_eq!(set(text), wanted);
        }
    }

    #[test]
    fn what_has_no_number_is_not_copied() {
        assert!(matches!(unbroken(Cow::Borrowed("Look at this again")), Cow::Borrowed(_)));
    }

    proptest! {
        /// Nothing but spaces changes, and what is set once stays.
        #[test]
        fn nothing_else_changes(text in "[0-9a-dé/ ,]{0,24}") {
            let once = unbroken(Cow::Borrowed(&text)).into_owned();
            prop_assert_eq!(once.replace('\u{a0}', " "), text);
            prop_assert_eq!(unbroken(Cow::Borrowed(&once)).into_owned(), once);
        }
    }
}

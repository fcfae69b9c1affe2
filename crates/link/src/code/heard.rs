//! What a clerk typed of characters that were read out.

use super::words;
use crate::alphabet;

/// Why a text is no run of characters.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum HeardError {
    /// A piece that is neither characters nor a spelling word, cut to what can be shown.
    Piece(String),
    /// Another number of characters than the code has.
    Count {
        /// How many there are.
        found: usize,
        /// How many there must be.
        expected: usize,
    },
}

/// The symbols in `text`: characters, or spelling words, in groups of any size; `?`
/// stands for one that was not understood.
///
/// # Errors
/// A piece that means nothing, or another number of symbols than `expected`.
pub fn heard(text: &str, expected: usize) -> Result<Vec<Option<u8>>, HeardError> {
    let mut symbols = Vec::new();
    let between = |letter: char| letter.is_whitespace() || matches!(letter, ',' | '.' | ';' | '/');
    for piece in text.split(between).filter(|piece| !piece.is_empty()) {
        if let Some(letter) = words::letter(piece).and_then(alphabet::symbol) {
            symbols.push(Some(letter));
        } else {
            for letter in piece.chars().filter(|letter| *letter != '-') {
                let symbol = alphabet::symbol(letter);
                if symbol.is_none() && letter != '?' {
                    return Err(HeardError::Piece(piece.chars().take(40).collect()));
                }
                symbols.push(symbol);
            }
        }
    }
    let found = symbols.len();
    if found == expected { Ok(symbols) } else { Err(HeardError::Count { found, expected }) }
}

/// Characters in groups of five, as they are written and said.
#[must_use]
pub fn spaced(letters: &str) -> String {
    let mut spaced = String::with_capacity(letters.len().saturating_mul(6) / 5);
    for (at, letter) in letters.chars().enumerate() {
        if at > 0 && at % 5 == 0 {
            spaced.push(' ');
        }
        spaced.push(letter);
    }
    spaced
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn characters_and_words_may_be_mixed_in_any_grouping() {
        let expected = heard("595YFQ", 6).unwrap();
        for text in [
            "595 YFQ",
            "5-9-5-y-f-q",
            "five nine five yankee foxtrot quebec",
            "5 9 5 Yankee F Q",
            "cinco, nueve, cinco, Y, foxtrot, quebec.",
        ] {
            assert_eq!(heard(text, 6).as_ref(), Ok(&expected), "{text}");
        }
        assert_eq!(heard("5?5YFQ", 6).unwrap()[1], None);
        assert_eq!(heard("595YF", 6), Err(HeardError::Count { found: 5, expected: 6 }));
        assert_eq!(heard("uniform", 6), Err(HeardError::Piece("uniform".to_owned())));
        assert!(heard(&"7".repeat(1 << 20), 6).is_err());
        assert_eq!(spaced("0123456789A"), "01234 56789 A");
    }
}

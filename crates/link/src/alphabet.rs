//! Thirty-two letters that survive handwriting, telephones and upper-casing: Crockford's.
//!
//! Case does not count; `O` reads as 0, `I` and `L` as 1; there is no `U`.
//! (Douglas Crockford, "Base 32"; open, no registration.)

/// The letter of each symbol, 0 to 31.
pub const LETTERS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// The letter of a symbol; only the low five bits count.
#[must_use]
pub fn letter(symbol: u8) -> char {
    LETTERS.get(usize::from(symbol & 31)).map_or('0', |&byte| char::from(byte))
}

/// The symbol of a letter, 0 to 31.
#[must_use]
pub fn symbol(letter: char) -> Option<u8> {
    let upper = match letter.to_ascii_uppercase() {
        'O' => '0',
        'I' | 'L' => '1',
        other => other,
    };
    let at = LETTERS.iter().position(|&byte| char::from(byte) == upper)?;
    u8::try_from(at).ok()
}

/// Symbols as text.
#[must_use]
pub fn letters(symbols: &[u8]) -> String {
    symbols.iter().map(|&symbol| letter(symbol)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_symbol_has_one_letter_and_every_reading_of_it() {
        for value in 0..32 {
            assert_eq!(symbol(letter(value)), Some(value));
            assert_eq!(symbol(letter(value).to_ascii_lowercase()), Some(value));
        }
        let read = |text: &str| text.chars().map(symbol).collect::<Vec<_>>();
        assert_eq!(read("oOiIlL"), [0, 0, 1, 1, 1, 1].map(Some));
        assert_eq!(read("uU-# é１"), [None; 8][..read("uU-# é１").len()]);
    }
}

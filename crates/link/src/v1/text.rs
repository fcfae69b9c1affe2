//! Texts: six bits a character where its alphabet suffices, else UTF-8.

use crate::bits::{Reader, Short, Writer};

/// Code 0 to 62; code 63 puts the next letter in upper case.
const ALPHABET: [char; 63] = [
    ' ', 'a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j', 'k', 'l', 'm', 'n', 'o', 'p', 'q', 'r',
    's', 't', 'u', 'v', 'w', 'x', 'y', 'z', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.',
    ',', '-', '\'', '"', '/', '(', ')', '#', '&', '+', '@', ':', ';', '!', '?', '_', '=', '\n',
    'á', 'é', 'í', 'ó', 'ú', 'ñ', '½',
];
const UPPER: u32 = 63;

/// The six-bit codes of `text`, if its alphabet has all of it.
fn codes(text: &str) -> Option<Vec<u32>> {
    let mut codes = Vec::with_capacity(text.len());
    for letter in text.chars() {
        let lower = letter.to_ascii_lowercase();
        let code = ALPHABET.iter().position(|&known| known == lower)?;
        if lower != letter {
            codes.push(UPPER);
        }
        codes.push(u32::try_from(code).ok()?);
    }
    Some(codes)
}

/// Writes `text` the shorter way, in six bits when both are equal.
pub(crate) fn write(text: &str, out: &mut Writer) {
    // `number` writes lengths to 2³² − 1; the envelope is full long before.
    let count = |n: usize| u32::try_from(n).unwrap_or(u32::MAX);
    let mut bytes = Writer::default();
    bytes.flag(true);
    bytes.number(count(text.len()));
    for byte in text.bytes() {
        bytes.put(u32::from(byte), 8);
    }
    if let Some(codes) = codes(text) {
        let mut six = Writer::default();
        six.flag(false);
        six.number(count(codes.len()));
        for code in codes {
            six.put(code, 6);
        }
        if six.len() <= bytes.len() {
            return out.append(&six);
        }
    }
    out.append(&bytes);
}

/// Reads a text; not UTF-8, or an upper-case mark before no letter, is refused.
pub(crate) fn read(from: &mut Reader<'_>) -> Result<String, Short> {
    let utf8 = from.flag()?;
    let count = from.number()?;
    if utf8 {
        let mut bytes = Vec::new();
        for _ in 0..count {
            bytes.push(u8::try_from(from.take(8)?).map_err(|_| Short)?);
        }
        return String::from_utf8(bytes).map_err(|_| Short);
    }
    let mut text = String::new();
    let mut upper = false;
    for _ in 0..count {
        let code = from.take(6)?;
        if code == UPPER {
            if upper {
                return Err(Short);
            }
            upper = true;
            continue;
        }
        let letter = *ALPHABET.get(code as usize).ok_or(Short)?;
        text.push(if upper { letter.to_ascii_uppercase() } else { letter });
        upper = false;
    }
    if upper { Err(Short) } else { Ok(text) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn every_text_comes_back(text in ".{0,60}", trade in "[ -~]{0,60}") {
            for text in [text, trade] {
                let mut out = Writer::default();
                write(&text, &mut out);
                let symbols = out.finish();
                prop_assert_eq!(read(&mut Reader::new(&symbols)), Ok(text));
            }
        }
        #[test]
        fn no_symbols_make_it_panic(symbols in prop::collection::vec(0..32_u8, 0..60)) {
            let _ = read(&mut Reader::new(&symbols));
        }
    }

    #[test]
    fn the_alphabet_has_no_letter_twice() {
        for (at, letter) in ALPHABET.iter().enumerate() {
            assert!(!ALPHABET[..at].contains(letter), "{letter}");
        }
    }
}

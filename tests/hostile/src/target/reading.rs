//! What is typed at a field.

use hangtrue_core::length::{Length, ReadError, Style, Unit, read, read_in};
use hangtrue_core::say::Language;

const UNITS: [Unit; 2] = [Unit::Inch, Unit::Millimetre];

/// A reading is a length that every way of writing it gives back, the same whatever language
/// it is read in. A refusal offers at most four meanings, each of which is read as what it
/// says.
pub(crate) fn holds(bytes: &[u8]) {
    let text = &super::text(bytes);
    for unit in UNITS {
        let plain = read(text, unit);
        match &plain {
            Ok(length) => written(text, *length),
            Err(error) => offered(text, error),
        }
        for language in [Language::Spanish, Language::French] {
            match read_in(text, unit, language) {
                Ok(length) => assert_eq!(plain, Ok(length), "{text:?} {language:?}"),
                // Whose words are tried first may change what is offered, and no more.
                Err(error) => {
                    assert!(plain.is_err(), "{text:?} {language:?}");
                    offered(text, &error);
                }
            }
        }
    }
}

fn offered(text: &str, error: &ReadError) {
    assert!(error.suggestions.len() <= 4, "{text:?} {error:?}");
    for offer in &error.suggestions {
        for field in UNITS {
            assert_eq!(read(&offer.text, field), Ok(offer.length), "{text:?} {offer:?}");
        }
    }
}

fn written(text: &str, length: Length) {
    assert!(length >= Length::ZERO, "{text:?}");
    for style in Style::ALL {
        let Some(written) = length.write(style) else { continue };
        assert_eq!(read(&written, style.unit()), Ok(length), "{text:?} {written}");
    }
    // Other languages write the canonical text; a bare `96,375` would have to be asked.
    for unit in UNITS {
        for language in Language::ALL {
            let written = language.written(&length.canonical(unit));
            assert_eq!(read(&written, unit.other()), Ok(length), "{text:?} {written}");
        }
    }
}

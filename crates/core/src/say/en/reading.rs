//! What is wrong with a text that is no reading, in English (US).

use crate::length::{ReadErrorKind, Unit};

/// Why `text` is no reading and what to do, in one sentence.
pub(crate) fn refused(kind: ReadErrorKind, text: &str, unit: Unit) -> String {
    let example = match unit {
        Unit::Inch => "96 3/16",
        Unit::Millimetre => "2443",
    };
    let quoted = |says: &str| ["“", text, "” ", says].concat();
    match kind {
        ReadErrorKind::Empty => ["Enter the reading, such as ", example, "."].concat(),
        ReadErrorKind::TooLong => {
            ["This is too long for a reading: enter one length, such as ", example, "."].concat()
        }
        ReadErrorKind::ControlCharacter => {
            "The text has a tab, a line break or another control character in it: \
             type the reading on one line."
                .to_owned()
        }
        ReadErrorKind::DirectionMark => {
            "The text has hidden marks in it that turn the direction of writing, so it may not \
             be what it looks like: type the reading again."
                .to_owned()
        }
        ReadErrorKind::HiddenCharacter => {
            "The text has characters in it that cannot be seen: type the reading again.".to_owned()
        }
        ReadErrorKind::LostSpace => {
            quoted("has no space between the inches and the fraction: put one in.")
        }
        ReadErrorKind::LostSlash => {
            quoted("has no slash in its fraction: type it with one, such as 96 1/4.")
        }
        ReadErrorKind::LostMark => quoted(
            "is more than one number: write the unit behind each, such as 8 ft 6 in, or type \
             one number.",
        ),
        ReadErrorKind::LostDigits => {
            quoted("stops at a point or a slash: type the digits that are missing.")
        }
        ReadErrorKind::TopHeavy => {
            quoted("has a fraction that is not less than one: count the marks again.")
        }
        ReadErrorKind::NotOnTape => match unit {
            Unit::Inch => quoted("is on no tape: read to the nearest mark, such as a sixteenth."),
            Unit::Millimetre => quoted("is on no tape: read to the nearest millimeter."),
        },
        ReadErrorKind::ZeroDenominator => {
            quoted("has a 0 under its fraction: type the fraction as the tape shows it.")
        }
        ReadErrorKind::InchesPastFoot => {
            quoted("has 12 inches or more beside its feet: read the feet and the inches again.")
        }
        ReadErrorKind::DecimalFeet => quoted(
            "can be feet and inches or a decimal of a foot: type feet and inches, \
             such as 8 ft 6 in.",
        ),
        ReadErrorKind::FractionOfFoot => quoted(
            "can be a part of a foot or a part of an inch: type feet and inches, \
             such as 8 ft 6 in.",
        ),
        ReadErrorKind::DecimalAndFraction => {
            quoted("has both a decimal and a fraction: use one of them.")
        }
        ReadErrorKind::ThousandsOrDecimal => quoted(
            "can be thousands or decimals: leave the mark out for thousands, or put a 0 at \
             the end for decimals.",
        ),
        ReadErrorKind::TwoPoints => quoted("has more than one decimal mark: keep one."),
        ReadErrorKind::TooFine => {
            quoted("has more decimals than a tape has marks: read to the nearest mark.")
        }
        ReadErrorKind::Negative => {
            quoted("has a minus sign, and no reading is less than 0: type it without the sign.")
        }
        ReadErrorKind::Exponent => quoted("is written with an exponent: type the number in full."),
        ReadErrorKind::MixedUnits => {
            quoted("mixes units: type the reading in one unit, or in feet and inches.")
        }
        ReadErrorKind::RepeatedUnit => {
            quoted("has the same unit twice: mark feet with ' and inches with \".")
        }
        ReadErrorKind::TwoReadings => quoted("is more than one reading: type one in each field."),
        ReadErrorKind::TwoMeanings => [
            "“",
            text,
            "” can mean more than one length: type it in digits, such as ",
            example,
            ".",
        ]
        .concat(),
        ReadErrorKind::Approximate => {
            quoted("is not exact: read the tape to the nearest mark and type that alone.")
        }
        ReadErrorKind::PlusSign => {
            quoted("has a plus sign: read the tape to the nearest mark and type it without.")
        }
        ReadErrorKind::OutOfRange => {
            "The number is longer than any tape: read it again.".to_owned()
        }
        ReadErrorKind::Unknown => {
            quoted("is not a reading: type it like 96 3/16, 8' 0 3/16\" or 2443 mm.")
        }
    }
}

//! Whatever is typed: never a panic, never a silent guess.

use hangtrue_core::length::{Length, Reading, Style, Unit, read};
use hangtrue_core::say::Language;
use hangtrue_core::spot::Spot;
use hangtrue_core::survey::Survey;
use proptest::prelude::*;

/// What must hold for any text at all.
fn holds(text: &str) {
    for unit in [Unit::Inch, Unit::Millimetre] {
        match Reading::of(text, unit, Language::English) {
            Ok(reading) => {
                assert!(reading.length >= Length::ZERO, "{text:?}");
                let canonical = reading.canonical();
                for field in [Unit::Inch, Unit::Millimetre] {
                    assert_eq!(read(&canonical, field), Ok(reading.length), "{text:?} {canonical}");
                }
                for style in Style::ALL {
                    if let Some(written) = reading.length.write(style) {
                        assert_eq!(read(&written, style.unit()), Ok(reading.length), "{written}");
                    }
                }
            }
            Err(error) => {
                assert!(error.suggestions.len() <= 4, "{text:?} {error:?}");
                for suggestion in error.suggestions {
                    for field in [Unit::Inch, Unit::Millimetre] {
                        let again = read(&suggestion.text, field);
                        assert_eq!(again, Ok(suggestion.length), "{text:?} {suggestion:?}");
                    }
                }
            }
        }
    }
}

/// Another unit of the fields and back changes no reading, and leaves a text that says it.
fn keeps_its_length(text: &str) {
    let spot = Spot::WidthLow;
    for unit in [Unit::Inch, Unit::Millimetre] {
        let Ok(length) = read(text, unit) else { continue };
        let mut survey = Survey::new(unit);
        survey.add(spot, text);
        for unit in [unit.other(), unit] {
            survey.set_unit(unit);
            for entry in survey.entries(spot) {
                assert_eq!(entry.read, Ok(length), "{text:?}");
                assert_eq!(read(&entry.text, unit), Ok(length), "{text:?} {:?}", entry.text);
            }
        }
    }
}

/// Pieces of readings, in any order.
fn pieces() -> impl Strategy<Value = String> {
    let piece = prop::sample::select(vec![
        "9",
        "6",
        "96",
        "14",
        "2445",
        "0",
        "1",
        "16",
        "12",
        "/",
        "1/4",
        "5/4",
        "1/3",
        "3/16",
        "¼",
        "⅓",
        ".",
        ",",
        "..",
        "-",
        "–",
        "−",
        "'",
        "\"",
        "''",
        "”",
        "′",
        " ",
        "  ",
        "\u{a0}",
        " in ",
        " ft ",
        "mm",
        "cm",
        " m ",
        "e",
        "x",
        "+",
        "?",
        "and",
        " and ",
        " a ",
        " of ",
        "ths",
        " half ",
        " quarters ",
        "three ",
        "sixteenths",
        "thirty ",
        "seconds",
        "ninety ",
        "six ",
        "hundred ",
        "thousand ",
        "point ",
        "oh ",
        "\u{200f}",
        "\t",
        "O",
        "l",
        "\\",
        "1,234",
        "&",
    ]);
    prop::collection::vec(piece, 0..12).prop_map(|pieces| pieces.concat())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4096))]

    #[test]
    fn any_text(text in any::<String>()) {
        holds(&text);
    }

    #[test]
    fn any_pieces(text in pieces()) {
        holds(&text);
        keeps_its_length(&text);
    }

    #[test]
    fn any_digits_and_marks(text in "[0-9 ./,'\"-]{0,16}") {
        holds(&text);
        keeps_its_length(&text);
    }

    /// A whole with a fraction in figures, and what a keyboard or a hand leaves behind it.
    #[test]
    fn another_unit_changes_no_reading(
        whole in "[0-9]{1,3}|ninety six|noventa y seis|",
        join in " |-| and | con |, |. ",
        part in "1/4|3/16|a half|un cuarto|[0-9]/8|",
        end in "\\.|,|ths| |-| \u{a0}|\\.ths|",
    ) {
        keeps_its_length(&[whole, join, part, end].concat());
    }

    #[test]
    fn long_texts(text in pieces(), times in 1_usize..400) {
        holds(&text.repeat(times));
    }

    /// Any length that can be stored, canonical and back.
    #[test]
    fn any_length(nm in 0..i64::MAX) {
        let length = Length::from_nm(nm);
        for unit in [Unit::Inch, Unit::Millimetre] {
            let text = length.canonical(unit);
            prop_assert_eq!(read(&text, unit), Ok(length), "{}", text);
        }
    }
}

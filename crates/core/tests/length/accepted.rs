//! Every spelling that is read, and as what.

use hangtrue_core::length::{Length, Reading, Unit, read};
use hangtrue_core::say::Language;

/// The field's unit, the text, its nanometres.
fn check(unit: Unit, cases: &[(&str, i64)]) {
    let wrong: Vec<String> = cases
        .iter()
        .filter(|(text, nm)| read(text, unit) != Ok(Length::from_nm(*nm)))
        .map(|(text, nm)| format!("{text:?} should read {nm}: {:?}", read(text, unit)))
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// 96 in.
const W: i64 = 96 * IN;
const IN: i64 = 25_400_000;
const FT: i64 = 12 * IN;
const Q: i64 = IN / 4;
const SIXTEENTH: i64 = IN / 16;
const MM: i64 = 1_000_000;

#[test]
fn inches_in_digits() {
    check(
        Unit::Inch,
        &[
            ("96", W),
            ("  96  ", W),
            ("096", W),
            ("0", 0),
            ("96.25", W + Q),
            ("96,25", W + Q),
            ("96.5", W + 2 * Q),
            ("96.0", W),
            ("96.000", W),
            ("96.1875", W + 3 * SIXTEENTH),
            ("96.015625", W + IN / 64),
            ("96.125", W + Q / 2),
            ("1.375", IN + 6 * SIXTEENTH),
            (".5", 2 * Q),
            (",5", 2 * Q),
            ("0.125", Q / 2),
            ("0,125", Q / 2),
            // No tape shows it, but it is a number: the judge finds the lost slash.
            ("96.14", W + 14 * IN / 100),
            ("96 1/4", W + Q),
            ("96  1/4", W + Q),
            ("96 1 / 4", W + Q),
            ("96 1/ 4", W + Q),
            ("96-1/4", W + Q),
            ("96 - 1/4", W + Q),
            ("96 -1/4", W + Q),
            ("96–1/4", W + Q),
            ("96—1/4", W + Q),
            ("96‑1/4", W + Q),
            ("96 1/4\"", W + Q),
            ("96 1/4 \"", W + Q),
            ("96 1/4''", W + Q),
            ("96 1/4’’", W + Q),
            ("96 1/4”", W + Q),
            ("96 1/4″", W + Q),
            ("96 1/4 in", W + Q),
            ("96 1/4in", W + Q),
            ("96-1/4in.", W + Q),
            ("96 1/4 IN.", W + Q),
            ("96 1/4 inches", W + Q),
            ("96in", W),
            ("96\"", W),
            ("96 Inch", W),
            ("96-inch", W),
            ("96 ¼", W + Q),
            ("96¼", W + Q),
            ("96¼\"", W + Q),
            ("96 ¼ in", W + Q),
            ("96 1⁄4", W + Q),
            ("96 1∕4", W + Q),
            ("96 4/16", W + Q),
            ("96 0/16", W),
            ("96 1/32", W + IN / 32),
            ("96 7/64", W + 7 * IN / 64),
            ("96 63/64", W + 63 * IN / 64),
            ("1/2", 2 * Q),
            ("0 1/2", 2 * Q),
            ("¾ in", 3 * Q),
            ("⅜", 6 * SIXTEENTH),
            ("15/16", 15 * SIXTEENTH),
            ("15/16ths", 15 * SIXTEENTH),
            ("96 3/16ths", W + 3 * SIXTEENTH),
            ("96 1/4th", W + Q),
            ("96 3/32nds of an inch", W + 3 * IN / 32),
            ("96 1/4.", W + Q),
            ("96 1/4. in", W + Q),
            ("96 1/4.\"", W + Q),
            ("8' 0 1/4. in", W + Q),
            ("96\" 1/4", W + Q),
            ("96 in 1/4", W + Q),
            // No-break, thin, narrow no-break, figure, ideographic spaces.
            ("96\u{a0}1/4", W + Q),
            ("96\u{2009}1/4", W + Q),
            ("96\u{202f}1/4", W + Q),
            ("96\u{2007}1/4", W + Q),
            ("96\u{3000}1/4", W + Q),
            // Full-width, as a Japanese keyboard gives them.
            ("９６ １／４", W + Q),
            ("９６．２５＂", W + Q),
            ("1,234.5", 1234 * IN + 2 * Q),
        ],
    );
}

#[test]
fn feet_and_inches() {
    let eight = 8 * FT;
    for unit in [Unit::Inch, Unit::Millimetre] {
        check(
            unit,
            &[
                ("8'", eight),
                ("0'", 0),
                ("8 '", eight),
                ("8 ft", eight),
                ("8 ft.", eight),
                ("8 feet", eight),
                ("8.0 ft", eight),
                ("8' 0 1/4\"", eight + Q),
                ("8'0 1/4\"", eight + Q),
                ("8'-0 1/4\"", eight + Q),
                ("8' - 0 1/4\"", eight + Q),
                ("8'-0-1/4\"", eight + Q),
                ("8' 0-1/4\"", eight + Q),
                ("8' 1/4\"", eight + Q),
                ("8' 1/4", eight + Q),
                ("8' ¼", eight + Q),
                ("8'0\"", eight),
                ("8' 0¼''", eight + Q),
                ("8 ft 1/4 in", eight + Q),
                ("8 ft. 0 1/4 in.", eight + Q),
                ("8ft 0.25in", eight + Q),
                ("8FT 0,25 IN", eight + Q),
                ("8’ 0¼”", eight + Q),
                ("8′ 0¼″", eight + Q),
                ("8‘ 0¼“", eight + Q),
                ("8` 0 1/4\"", eight + Q),
                ("8' 6", eight + 6 * IN),
                ("8'6", eight + 6 * IN),
                ("8' 6\"", eight + 6 * IN),
                ("8', 6\"", eight + 6 * IN),
                ("8ft6", eight + 6 * IN),
                ("8ft6in", eight + 6 * IN),
                ("8 feet, 6 inches", eight + 6 * IN),
                ("8 feet and 6 inches", eight + 6 * IN),
                ("8 ft 6 1/2", eight + 6 * IN + 2 * Q),
                ("8' 11 15/16\"", eight + 12 * IN - SIXTEENTH),
                ("8' 11.9375\"", eight + 12 * IN - SIXTEENTH),
                ("8' .5\"", eight + 2 * Q),
                ("8' 6\" 1/2", eight + 6 * IN + 2 * Q),
            ],
        );
    }
}

#[test]
fn metric() {
    for unit in [Unit::Inch, Unit::Millimetre] {
        check(
            unit,
            &[
                ("2445mm", 2445 * MM),
                ("2445 mm", 2445 * MM),
                ("2445 MM.", 2445 * MM),
                ("2 445 mm", 2445 * MM),
                ("2\u{202f}445 mm", 2445 * MM),
                ("2\u{a0}445,5 mm", 24455 * MM / 10),
                ("2,445.5 mm", 24455 * MM / 10),
                ("2.445,5 mm", 24455 * MM / 10),
                ("2445.5 mm", 24455 * MM / 10),
                ("2445,5 mm", 24455 * MM / 10),
                ("2445.125 mm", 2_445_125_000),
                ("2445 1/2 mm", 24455 * MM / 10),
                ("2445 ½ mm", 24455 * MM / 10),
                ("2443.1625 mm", 2_443_162_500),
                ("0.396875 mm", 396_875),
                ("2.445 m", 2445 * MM),
                ("2,445 m", 2445 * MM),
                ("2.445m", 2445 * MM),
                ("2.4 metres", 2400 * MM),
                ("2.4431625 m", 2_443_162_500),
                ("244.5 cm", 2445 * MM),
                ("244,5 cm", 2445 * MM),
                ("244 1/2 centimeters", 2445 * MM),
                ("1 234 567 mm", 1_234_567 * MM),
                ("1,234,567 mm", 1_234_567 * MM),
            ],
        );
    }
    check(
        Unit::Millimetre,
        &[
            ("2445", 2445 * MM),
            ("2 445", 2445 * MM),
            ("2445.5", 24455 * MM / 10),
            ("2445 1/2", 24455 * MM / 10),
            ("96 1/4 in", W + Q),
            ("96 1/4\"", W + Q),
            ("19.05", 19_050_000),
        ],
    );
}

#[test]
fn words() {
    for unit in [Unit::Inch, Unit::Millimetre] {
        check(
            unit,
            &[
                ("ninety six and a quarter inches", W + Q),
                ("ninety-six and three sixteenths inches", W + 3 * SIXTEENTH),
                ("ninety six inches", W),
                ("ninety six inches and a quarter", W + Q),
                ("ninety six and a quarter of an inch", W + Q),
                ("Ninety-six and three-sixteenths inches.", W + 3 * SIXTEENTH),
                ("one hundred and three sixteenths inches", 100 * IN + 3 * SIXTEENTH),
                ("a hundred and one and a half inches", 101 * IN + 2 * Q),
                ("one hundred one and one half inches", 101 * IN + 2 * Q),
                ("one oh one and a half inches", 101 * IN + 2 * Q),
                ("half an inch", 2 * Q),
                ("point five inches", 2 * Q),
                // As many digits as are taken one by one.
                (
                    "one two three four five six seven eight nine one two three mm",
                    123_456_789_123 * MM,
                ),
                ("a half inch", 2 * Q),
                ("half inch", 2 * Q),
                ("quarter of an inch", Q),
                ("three quarters of an inch", 3 * Q),
                ("three quarter inch", 3 * Q),
                ("an inch", IN),
                ("one inch", IN),
                ("an inch and a half", IN + 2 * Q),
                ("an inch and three eighths", IN + 6 * SIXTEENTH),
                ("one and a half inches", IN + 2 * Q),
                ("zero inches", 0),
                ("a thirty-second of an inch", IN / 32),
                ("three thirty seconds of an inch", 3 * IN / 32),
                ("seven sixty-fourths of an inch", 7 * IN / 64),
                // 2 and 23/64: 220 is a number only as some say it.
                ("two twenty three sixty fourths inches", 2 * IN + 23 * IN / 64),
                ("twenty-one thirty-seconds of an inch", 21 * IN / 32),
                ("nine and twenty one thirty seconds inches", 9 * IN + 21 * IN / 32),
                ("eight foot and a quarter inch", 8 * FT + Q),
                ("eight feet and a quarter of an inch", 8 * FT + Q),
                ("eight foot", 8 * FT),
                ("eight feet six inches", 8 * FT + 6 * IN),
                ("eight foot six", 8 * FT + 6 * IN),
                ("eight foot six and a quarter", 8 * FT + 6 * IN + Q),
                ("eight feet six inches and a quarter", 8 * FT + 6 * IN + Q),
                ("eight foot zero and three sixteenths", 8 * FT + 3 * SIXTEENTH),
                ("twenty four forty five millimeters", 2445 * MM),
                ("twenty-four forty-five millimetres", 2445 * MM),
                ("two four four five millimeters", 2445 * MM),
                ("twenty four oh five mm", 2405 * MM),
                ("two thousand four hundred forty five millimeters", 2445 * MM),
                ("two thousand four hundred and forty-five millimetres", 2445 * MM),
                ("two thousand and five millimeters", 2005 * MM),
                ("twenty four hundred forty five millimeters", 2445 * MM),
                ("two forty five centimeters", 2450 * MM),
                ("two point four four five meters", 2445 * MM),
                ("two point oh five meters", 2050 * MM),
                ("two and a half meters", 2500 * MM),
                ("two meters and a half", 2500 * MM),
                ("nineteen millimeters and a half", 19_500_000),
                ("96 and a quarter inches", W + Q),
                ("96 and 1/4 inches", W + Q),
                ("96 & 1/4 in", W + Q),
                ("96 and a 1/4 inch", W + Q),
                ("96 and three sixteenths in", W + 3 * SIXTEENTH),
                ("96 and 3 sixteenths in", W + 3 * SIXTEENTH),
                ("96 3 sixteenths in", W + 3 * SIXTEENTH),
                ("ninety six 1/4 inches", W + Q),
                ("ninety six and 3/16 inches", W + 3 * SIXTEENTH),
                ("8 feet 6 and 1/2 inches", 8 * FT + 6 * IN + 2 * Q),
                ("8 foot and a quarter inch", 8 * FT + Q),
            ],
        );
    }
    check(
        Unit::Inch,
        &[
            ("ninety six", W),
            ("ninety-six", W),
            ("NINETY SIX", W),
            ("ninety six and a quarter", W + Q),
            ("ninety-six and three sixteenths", W + 3 * SIXTEENTH),
            ("ninety six three sixteenths", W + 3 * SIXTEENTH),
            ("ninety six, and a quarter", W + Q),
            ("ninety six and quarter", W + Q),
            ("ninety six and a half.", W + 2 * Q),
            ("ninety six point two five", W + Q),
            ("ninety six point twenty five", W + Q),
            ("a half", 2 * Q),
            ("one half", 2 * Q),
            ("half", 2 * Q),
            ("a quarter", Q),
            ("three fourths", 3 * Q),
            ("an eighth", Q / 2),
            ("one hundred and three sixteenths", 100 * IN + 3 * SIXTEENTH),
            ("six three quarters", 6 * IN + 3 * Q),
            ("ninety and three sixteenths", 90 * IN + 3 * SIXTEENTH),
            ("one oh one three sixteenths", 101 * IN + 3 * SIXTEENTH),
        ],
    );
    check(
        Unit::Millimetre,
        &[
            ("twenty four forty five", 2445 * MM),
            ("two four four three point five", 24435 * MM / 10),
            ("two thousand four hundred forty five and a half", 24455 * MM / 10),
        ],
    );
}

#[test]
fn the_unit_written_is_kept() {
    let reading = |text| Reading::of(text, Unit::Inch, Language::English).unwrap();
    assert_eq!(reading("96-3/16").canonical(), "96 3/16 in");
    assert_eq!(reading("8' 0 3/16\"").canonical(), "96 3/16 in");
    assert_eq!(reading("96.14").canonical(), "96.14 in");
    assert_eq!(reading("2443 mm").canonical(), "2443 mm");
    assert_eq!(reading("244.3150 cm").canonical(), "2443.15 mm");
    assert_eq!(reading("2.443 m").unit, Unit::Millimetre);
}

/// A fraction in one character is what its three characters are, and where that is on no tape as
/// wrong in the same way.
#[test]
fn a_fraction_in_one_character() {
    let fractions = "¼½¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚⅐⅑⅒".chars();
    let spelled = "1/4 1/2 3/4 1/8 3/8 5/8 7/8 1/3 2/3 1/5 2/5 3/5 4/5 1/6 5/6 1/7 1/9 1/10";
    assert_eq!(fractions.clone().count(), spelled.split(' ').count());
    for (one, three) in fractions.zip(spelled.split(' ')) {
        let long = format!("96 {three}");
        let wanted = read(&long, Unit::Inch).map_err(|error| (error.kind, error.suggestions));
        for short in [format!("96{one}"), format!("96 {one}")] {
            let got = read(&short, Unit::Inch).map_err(|error| (error.kind, error.suggestions));
            assert_eq!(got, wanted, "{short} and {long}");
        }
    }
}

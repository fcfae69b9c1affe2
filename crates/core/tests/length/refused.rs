//! Every text that is refused: why, and what is offered instead.

use hangtrue_core::length::{Unit, read};

/// The text, the code, the offers.
type Case<'c> = (&'c str, &'c str, &'c [&'c str]);

fn check(unit: Unit, cases: &[Case<'_>]) {
    let mut wrong = Vec::new();
    for (text, code, offers) in cases {
        match read(text, unit) {
            Ok(length) => wrong.push(format!("{text:?} read {}", length.canonical(unit))),
            Err(error) => {
                let found: Vec<&str> = error.suggestions.iter().map(|s| s.text.as_str()).collect();
                if error.kind.code() != *code || found != *offers {
                    wrong.push(format!("{text:?}: {} {found:?}", error.kind.code()));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn nothing_too_much_or_unseen() {
    let long = "9".repeat(10_000);
    let spaces = " ".repeat(10_000);
    let [fits, over] = [200, 201].map(|length| format!("{:length$}", "96"));
    assert!(read(&fits, Unit::Inch).is_ok());
    let [said, too_long] = [200, 201].map(|length| format!("{:length$}", "ninety six"));
    assert!(read(&said, Unit::Inch).is_ok());
    check(
        Unit::Inch,
        &[
            ("", "empty", &[]),
            ("   ", "empty", &[]),
            ("\u{a0}\u{2009}", "empty", &[]),
            ("\t\n", "empty", &[]),
            (&long, "too-long", &[]),
            (&spaces, "too-long", &[]),
            (&over, "too-long", &[]),
            (&too_long, "too-long", &[]),
            ("96 1/4\t", "control-character", &["96 1/4 in"]),
            ("96\t1/4", "control-character", &["96 1/4 in"]),
            ("96\n84", "control-character", &[]),
            ("96\u{0}", "control-character", &["96 in"]),
            ("96\u{85}", "control-character", &["96 in"]),
            ("96\u{7f}", "control-character", &["96 in"]),
            ("96\u{2028}", "control-character", &["96 in"]),
            ("\u{200f}96 1/4", "direction-mark", &["96 1/4 in"]),
            // Shown as 96 1/4, stored as 96 4/1: nothing is offered.
            ("96 \u{202e}4/1", "direction-mark", &[]),
            ("\u{2066}96\u{2069}", "direction-mark", &["96 in"]),
            ("9\u{200b}6", "hidden-character", &["96 in"]),
            ("\u{feff}96", "hidden-character", &["96 in"]),
            ("96\u{ad}", "hidden-character", &["96 in"]),
        ],
    );
}

#[test]
fn fractions() {
    check(
        Unit::Inch,
        &[
            ("961/4", "lost-space", &["96 1/4 in"]),
            ("961/4\"", "lost-space", &["96 1/4 in"]),
            ("961 / 4", "lost-space", &["96 1/4 in"]),
            ("11/4", "lost-space", &["1 1/4 in"]),
            ("113/16", "lost-space", &["11 3/16 in", "1 13/16 in"]),
            ("96.1/4", "lost-space", &["96 1/4 in"]),
            ("96,1/4", "lost-space", &["96 1/4 in"]),
            ("9 61/4", "top-heavy", &["96 1/4 in"]),
            ("8' 61/4\"", "lost-space", &["8 ft 6 1/4 in"]),
            ("961/3", "not-on-tape", &[]),
            ("96 14", "lost-slash", &["96 1/4 in"]),
            ("96-14", "lost-slash", &["96 1/4 in"]),
            ("96 316", "lost-slash", &["96 3/16 in"]),
            ("96 1516", "lost-slash", &["96 15/16 in"]),
            ("96 3 16", "lost-slash", &["96 3/16 in"]),
            ("96 14 in", "lost-slash", &["96 1/4 in"]),
            ("96\" 14", "lost-slash", &["96 1/4 in"]),
            ("96 5/4", "top-heavy", &["97 1/4 in"]),
            ("96 4/4", "top-heavy", &["97 in"]),
            ("5/4", "top-heavy", &["1 1/4 in"]),
            // No tape has thirds, even where they are whole.
            ("5/3", "top-heavy", &[]),
            ("7/3", "top-heavy", &[]),
            ("96 6/3", "top-heavy", &[]),
            ("96 1/3", "not-on-tape", &["96 5/16 in", "96 3/8 in"]),
            ("96 ⅓", "not-on-tape", &["96 5/16 in", "96 3/8 in"]),
            ("96 1/10", "not-on-tape", &["96 1/16 in", "96 1/8 in"]),
            ("96 1/128", "not-on-tape", &["96 in", "96 1/16 in"]),
            // As many digits as are looked at.
            ("96 1/123456789012345678", "not-on-tape", &["96 in", "96 1/16 in"]),
            ("8' 1/3\"", "not-on-tape", &["8 ft 0 5/16 in", "8 ft 0 3/8 in"]),
            ("ninety six and a third", "not-on-tape", &["96 5/16 in", "96 3/8 in"]),
            ("96 1/0", "zero-denominator", &[]),
            ("0/0", "zero-denominator", &[]),
            ("96 1/", "lost-digits", &[]),
            ("/4", "lost-digits", &[]),
            ("96 1/4/2", "unknown", &[]),
            ("96 1/. 4", "unknown", &[]),
            ("1/¼", "unknown", &[]),
            ("96.5 1/4", "decimal-and-fraction", &[]),
            ("96.5 and a quarter", "decimal-and-fraction", &[]),
            ("96 1/4.5", "unknown", &[]),
        ],
    );
    check(
        Unit::Millimetre,
        &[
            ("96 1/4", "not-on-tape", &["96 1/4 in"]),
            ("3/16", "not-on-tape", &["3/16 in"]),
            ("2445 1/4 mm", "not-on-tape", &["2445 mm", "2446 mm"]),
            ("2445 1/3", "not-on-tape", &["2445 mm", "2446 mm"]),
        ],
    );
}

#[test]
fn numbers_with_something_lost_between() {
    check(
        Unit::Inch,
        &[
            ("8 6", "lost-mark", &["8 ft 6 in"]),
            ("8-6", "lost-mark", &["8 ft 6 in"]),
            ("8 0 1/4", "lost-mark", &["8 ft 0 1/4 in"]),
            ("8-0-1/4", "lost-mark", &["8 ft 0 1/4 in"]),
            ("2 445", "lost-mark", &["2445 mm"]),
            ("96 77", "lost-mark", &[]),
            ("96 44", "lost-mark", &[]),
            ("96 0116", "lost-mark", &[]),
            ("8' 8 6", "lost-mark", &[]),
            ("8' 6-", "lost-mark", &[]),
            ("96.5 in 1/4", "lost-mark", &[]),
            ("96 1/2 in 1/4", "lost-mark", &[]),
            ("1 2 3 4 5", "lost-mark", &[]),
            ("24 45 mm", "lost-mark", &["2445 mm"]),
            ("96.", "lost-digits", &["96 in"]),
            ("96. 1/4", "lost-digits", &["96 1/4 in"]),
            ("96, 1/4", "lost-digits", &["96 1/4 in"]),
        ],
    );
}

/// What is offered for a fraction behind a number is that number and that fraction, in one measure.
#[test]
fn a_fraction_is_of_what_is_offered() {
    check(
        Unit::Inch,
        &[
            ("2 443 1/2", "lost-mark", &["2443.5 mm"]),
            ("243. 1/2 mm", "lost-digits", &["243.5 mm"]),
            ("244. 1/2 cm", "lost-digits", &["2445 mm"]),
            ("twenty four forty three and a half", "two-meanings", &["2443.5 mm"]),
            ("twenty four forty three inches and a half", "two-meanings", &["2443.5 mm"]),
            // On no tape, or behind a fraction already.
            ("96. 1/3", "lost-digits", &[]),
            ("eight six and a third", "two-meanings", &[]),
            ("96 14 1/2", "lost-slash", &[]),
            // No millimetres behind feet or inches.
            ("8' 2 443", "lost-mark", &[]),
            ("96 in 2 443", "lost-mark", &[]),
        ],
    );
    check(
        Unit::Millimetre,
        &[
            ("244. 1/2", "lost-digits", &["244.5 mm"]),
            ("9 6 1/4", "lost-mark", &[]),
            ("96 14 1/2", "lost-mark", &["9614.5 mm"]),
        ],
    );
}

/// Of a fraction of one or more the sum, while it is less than two; from there on what slipped.
#[test]
fn fractions_past_one() {
    check(
        Unit::Inch,
        &[
            ("96 16/16", "top-heavy", &["97 in"]),
            ("95 17/16", "top-heavy", &["96 1/16 in"]),
            ("1 18/16", "top-heavy", &["2 1/8 in"]),
            ("9 12/8", "top-heavy", &["10 1/2 in"]),
            ("9 61/4", "top-heavy", &["96 1/4 in"]),
            ("9 613/16", "top-heavy", &["96 13/16 in"]),
            ("16/16", "top-heavy", &["1 in", "1 3/8 in"]),
            ("17/16", "top-heavy", &["1 1/16 in", "1 7/16 in"]),
            ("96 /4", "top-heavy", &[]),
            ("9 /4", "top-heavy", &[]),
        ],
    );
}

#[test]
fn points_and_commas() {
    check(
        Unit::Inch,
        &[
            ("1,234", "thousands-or-decimal", &["1234 in", "1.2340 in"]),
            ("1.234", "thousands-or-decimal", &["1234 in", "1.2340 in"]),
            ("96,125", "thousands-or-decimal", &["96 1/8 in"]),
            ("2,445 mm", "thousands-or-decimal", &["2445 mm", "2.4450 mm"]),
            ("244.500 cm", "thousands-or-decimal", &["2445 mm"]),
            ("96..5", "two-points", &["96 1/2 in"]),
            ("96.,5", "two-points", &["96 1/2 in"]),
            ("9.6.5", "two-points", &[]),
            ("1,23,456", "two-points", &[]),
            ("1234,567.5", "two-points", &[]),
            ("0,234.5", "two-points", &[]),
            ("1,234 1/4", "thousands-or-decimal", &[]),
            ("1..5 1/4", "two-points", &[]),
            ("96..", "two-points", &[]),
            ("96.333333", "too-fine", &["96 5/16 in", "96 3/8 in"]),
            ("96.1417322835", "too-fine", &["96 1/8 in", "96 3/16 in"]),
            ("96.1250000001", "too-fine", &["96 1/8 in", "96 3/16 in"]),
            ("2445.0000001 mm", "too-fine", &["2445 mm", "2446 mm"]),
            ("1e3", "exponent", &[]),
            ("1E3", "exponent", &[]),
            ("1.5e-3", "exponent", &[]),
            ("10^3", "exponent", &[]),
        ],
    );
    check(
        Unit::Millimetre,
        &[
            ("2,445", "thousands-or-decimal", &["2445 mm", "2.4450 mm"]),
            ("2.445", "thousands-or-decimal", &["2445 mm", "2.4450 mm"]),
        ],
    );
}

#[test]
fn feet() {
    check(
        Unit::Inch,
        &[
            ("8' 13\"", "inches-past-foot", &["9 ft 1 in"]),
            ("8' 12\"", "inches-past-foot", &["9 ft 0 in", "8 ft 0 1/2 in"]),
            ("8' 14\"", "inches-past-foot", &["9 ft 2 in", "8 ft 0 1/4 in"]),
            ("8.6'", "decimal-feet", &["8 ft 6 in", "8 ft 7.2 in"]),
            ("8.6 ft", "decimal-feet", &["8 ft 6 in", "8 ft 7.2 in"]),
            ("8,6'", "decimal-feet", &["8 ft 6 in", "8 ft 7.2 in"]),
            ("8.10'", "decimal-feet", &["8 ft 10 in", "8 ft 1.2 in"]),
            ("8.11'", "decimal-feet", &["8 ft 11 in", "8 ft 1.32 in"]),
            ("8.12'", "decimal-feet", &["8 ft 1.44 in"]),
            ("8.5 feet", "decimal-feet", &["8 ft 5 in", "8 ft 6 in"]),
            ("8.25'", "decimal-feet", &["8 ft 3 in"]),
            ("8.6' 2\"", "decimal-feet", &["8 ft 6 in", "8 ft 7.2 in"]),
            ("8 1/2 ft", "fraction-of-foot", &["8 ft 6 in", "8 ft 0 1/2 in"]),
            ("eight and a half feet", "fraction-of-foot", &["8 ft 6 in", "8 ft 0 1/2 in"]),
            ("eight foot and a half", "fraction-of-foot", &["8 ft 6 in", "8 ft 0 1/2 in"]),
            ("8 ft 1/2", "fraction-of-foot", &["8 ft 6 in", "8 ft 0 1/2 in"]),
            ("half a foot", "fraction-of-foot", &["6 in", "1/2 in"]),
            ("8' 6'", "repeated-unit", &["8 ft 6 in"]),
            ("8' 6' 2\"", "repeated-unit", &[]),
            ("8' 6 1/4'", "repeated-unit", &["8 ft 6 1/4 in"]),
            ("96 in 2 in", "repeated-unit", &[]),
        ],
    );
}

#[test]
fn units_and_signs() {
    check(
        Unit::Inch,
        &[
            ("96 in 2 mm", "mixed-units", &[]),
            ("8' 20 mm", "mixed-units", &[]),
            ("96 in 8 ft", "mixed-units", &[]),
            ("2 m 445 mm", "mixed-units", &["2445 mm"]),
            ("2 m 44 cm", "mixed-units", &["2440 mm"]),
            ("2 m 2000 mm", "mixed-units", &[]),
            ("2 m 1.445 mm", "mixed-units", &[]),
            ("-4", "negative", &["4 in"]),
            ("−4", "negative", &["4 in"]),
            ("–4 mm", "negative", &["4 mm"]),
            ("96−1/4", "negative", &["96 1/4 in"]),
            ("minus four", "negative", &["4 in"]),
            ("96 minus a sixteenth", "negative", &[]),
            ("+96", "plus-sign", &["96 in"]),
            ("96+", "plus-sign", &["96 in"]),
            ("96 + 1/4", "plus-sign", &["96 1/4 in"]),
            ("96 1/4?", "approximate", &["96 1/4 in"]),
            ("~96", "approximate", &["96 in"]),
            ("≈ 2443.2 mm", "approximate", &["2443.2 mm"]),
            ("about 96", "approximate", &["96 in"]),
            ("96 1/4 strong", "approximate", &["96 1/4 in"]),
            ("just over 96", "approximate", &["96 in"]),
            ("96 x 84", "two-readings", &[]),
            ("96×84", "two-readings", &[]),
            ("96 by 84", "two-readings", &[]),
            ("96; 84", "two-readings", &[]),
            ("999999999999999999999", "out-of-range", &[]),
            ("9999999999999", "out-of-range", &[]),
            ("99999999999'", "out-of-range", &[]),
        ],
    );
}

#[test]
fn words() {
    check(
        Unit::Inch,
        &[
            ("eight six", "two-meanings", &["86 in", "8 ft 6 in"]),
            ("eight six and a half", "two-meanings", &["86 1/2 in", "8 ft 6 1/2 in"]),
            ("eight six three sixteenths", "two-meanings", &["86 3/16 in", "8 ft 6 3/16 in"]),
            ("eight six and four quarters", "unknown", &[]),
            ("eight six and five quarters", "unknown", &[]),
            ("ninety six fourteen", "two-meanings", &["96 1/4 in", "9614 mm"]),
            ("twenty four forty five", "two-meanings", &["2445 mm"]),
            ("twenty three sixteenths", "two-meanings", &["20 3/16 in"]),
            ("inch and a quarter", "unknown", &["1 1/4 in"]),
            ("ninety six and for sixteenths", "unknown", &["96 1/4 in"]),
            ("ninety six and fore sixteenths", "unknown", &["96 1/4 in"]),
            ("ninety six and one forth", "unknown", &["96 1/4 in"]),
            ("ninety six and three forths", "unknown", &["96 3/4 in"]),
            ("ninety to", "unknown", &["92 in"]),
            ("ninety too", "unknown", &["92 in"]),
            ("ninety tree", "unknown", &["93 in"]),
            ("ninety free", "unknown", &["93 in"]),
            ("ninety sicks", "unknown", &["96 in"]),
            ("ninety ate", "unknown", &["98 in"]),
            ("ninety won", "unknown", &["91 in"]),
            ("and three sixteenths", "unknown", &["1 3/16 in"]),
            ("and 1/4", "unknown", &["1 1/4 in"]),
            ("five quarters", "top-heavy", &["1 1/4 in"]),
            ("twenty four quarters", "top-heavy", &["6 in"]),
            ("ninety six and four quarters", "top-heavy", &["97 in"]),
            // 2 and 23/64, though 220 is a number of millimetres to some.
            ("two twenty three sixty fourths mm", "not-on-tape", &["2 mm", "3 mm"]),
            ("one two three four five six seven eight nine one two three four", "unknown", &[]),
            ("ninety six and", "unknown", &[]),
            ("ninety six half", "unknown", &[]),
            ("ninety six and quarters", "unknown", &[]),
            ("a second", "unknown", &[]),
            ("hundred", "unknown", &["100 in"]),
            // A unit with no number before it: it is a one only where a fraction goes on.
            ("in 3/4", "unknown", &[]),
            ("ft 8", "unknown", &[]),
            ("ft. and 8 in", "unknown", &["20 in"]),
        ],
    );
}

#[test]
fn the_rest() {
    check(
        Unit::Inch,
        &[
            ("abc", "unknown", &[]),
            ("96 yd", "unknown", &[]),
            ("96 px", "unknown", &[]),
            ("'", "unknown", &[]),
            ("\"", "unknown", &[]),
            ("8' \"", "unknown", &[]),
            ("9O", "unknown", &["90 in"]),
            ("96 l/4", "unknown", &["96 1/4 in"]),
            ("l/4", "unknown", &["1/4 in"]),
            // A begun `in` is no 1.
            ("96i", "unknown", &[]),
            ("9.5i", "unknown", &[]),
            ("1i/16", "unknown", &["11/16 in"]),
            // Only the letter beside a digit: the foot stays a foot.
            ("9O foot", "unknown", &["1080 in"]),
            ("96 in 1/4-", "unknown", &[]),
            ("96 a 3/4", "unknown", &[]),
            ("8 96.1/4", "unknown", &[]),
            ("96 1\\4", "unknown", &["96 1/4 in"]),
            ("$96", "unknown", &[]),
            ("٩٦", "unknown", &[]),
            ("96²", "unknown", &[]),
            ("💡", "unknown", &[]),
            ("¼¼", "unknown", &[]),
            ("<script>", "approximate", &[]),
            ("96 1/4 1/2", "unknown", &[]),
            (".", "unknown", &[]),
            (",", "unknown", &[]),
            ("-", "negative", &[]),
            ("/", "lost-digits", &[]),
        ],
    );
}

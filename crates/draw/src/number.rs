//! Coordinates as text: at most two decimals, no float formatting.

/// Coordinates beyond this are drawn at it; no picture is a millionth as large.
const FARTHEST: f64 = 1e6;

/// `value`, or the nearest that is not below `least` nor above `most`.
///
/// `f64::clamp` can panic, and its message brings some 15 KB of float printing
/// into the module; this does neither.
pub(crate) fn limit(value: f64, least: f64, most: f64) -> f64 {
    value.max(least).min(most)
}

/// Appends `value` rounded to hundredths, trailing zeros dropped; what is not a
/// finite number becomes 0, and `-0` becomes `0`.
pub(crate) fn push_number(out: &mut String, value: f64) {
    let value = if value.is_finite() { limit(value, -FARTHEST, FARTHEST) } else { 0.0 };
    #[expect(clippy::cast_possible_truncation, reason = "clamped to a million just above")]
    push_hundredths(out, (value * 100.0).round_ties_even() as i64);
}

/// Appends `hundredths` / 100.
pub(crate) fn push_hundredths(out: &mut String, hundredths: i64) {
    if hundredths < 0 {
        out.push('-');
    }
    let size = hundredths.unsigned_abs();
    push_whole(out, size / 100);
    let rest = size % 100;
    if rest != 0 {
        out.push('.');
        push_digit(out, rest / 10);
        if !rest.is_multiple_of(10) {
            push_digit(out, rest % 10);
        }
    }
}

/// Appends a whole number.
pub(crate) fn push_whole(out: &mut String, value: u64) {
    if value >= 10 {
        push_whole(out, value / 10);
    }
    push_digit(out, value % 10);
}

fn push_digit(out: &mut String, digit: u64) {
    out.push(char::from(b'0'.saturating_add((digit % 10) as u8)));
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(value: f64) -> String {
        let mut out = String::new();
        push_number(&mut out, value);
        out
    }

    #[test]
    fn two_decimals_at_most() {
        for (value, expected) in [
            (0.0, "0"),
            (-0.0, "0"),
            (-0.001, "0"),
            (1.0, "1"),
            (-12.5, "-12.5"),
            (2.34567, "2.35"),
            (0.05, "0.05"),
            (-0.999, "-1"),
            (1234.0, "1234"),
            (f64::NAN, "0"),
            (f64::INFINITY, "0"),
            (1e300, "1000000"),
        ] {
            assert_eq!(text(value), expected);
        }
    }

    #[test]
    fn reads_back_to_within_half_a_hundredth() {
        proptest::proptest!(|(value in -9e5..9e5)| {
            let back: f64 = text(value).parse().unwrap();
            proptest::prop_assert!((back - value).abs() <= 0.005 + 1e-9);
        });
    }
}

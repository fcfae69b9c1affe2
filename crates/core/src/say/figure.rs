//! Figures that are no readings: standard deviations, w, millimetres of an adjusted value.

/// `value` with `places` digits behind the point, rounded half away from zero; `–` for
/// what is no number. Written without the standard library's float printing, which
/// would weigh more than all other numbers of the page together.
#[must_use]
#[expect(clippy::cast_possible_truncation, reason = "bounded just above")]
pub fn decimal(value: f64, places: u8) -> String {
    let scale = 10_i64.saturating_pow(u32::from(places.min(6)));
    #[expect(clippy::cast_precision_loss, reason = "a power of ten below 2^53")]
    let scaled = libm::round(value * scale as f64);
    if !scaled.is_finite() || scaled.abs() > 1e15 {
        return "–".to_owned();
    }
    let scaled = scaled as i64;
    let (whole, rest) = (scaled.abs().div_euclid(scale), scaled.abs().rem_euclid(scale));
    let sign = if scaled < 0 { "−" } else { "" };
    if places == 0 {
        return [sign, &whole.to_string()].concat();
    }
    let rest = rest.to_string();
    let zeros = "0".repeat(usize::from(places.min(6)).saturating_sub(rest.len()));
    [sign, &whole.to_string(), ".", &zeros, &rest].concat()
}

#[cfg(test)]
mod tests {
    use super::decimal;
    use proptest::prelude::*;

    #[test]
    fn figures_are_rounded_and_padded() {
        assert_eq!(decimal(2341.649, 1), "2341.6");
        assert_eq!(decimal(-0.05, 1), "−0.1");
        assert_eq!(decimal(-0.04, 1), "0.0");
        assert_eq!(decimal(3.0, 2), "3.00");
        assert_eq!(decimal(3.007, 3), "3.007");
        assert_eq!(decimal(2.5, 0), "3");
        assert_eq!(decimal(f64::NAN, 1), "–");
        assert_eq!([decimal(1e15, 0), decimal(-1e16, 0)], ["1000000000000000", "–"]);
        assert_eq!(decimal(f64::INFINITY, 1), "–");
    }

    proptest! {
        /// The standard library's own printing is the independent check.
        #[test]
        fn it_reads_back_within_half_a_unit_of_the_last_place(value in -1e6_f64..1e6) {
            let read: f64 = decimal(value, 3).replace('−', "-").parse().unwrap();
            prop_assert!((read - value).abs() <= 0.000_500_001);
        }
    }
}

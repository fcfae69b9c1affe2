//! A number as it was written.

use core::fmt;
use std::borrow::Cow;

/// A number of a JSON text. `1`, `1.0` and `1e0` are three of them: what was written is
/// kept, what it is worth is asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Number<'a>(Cow<'a, str>);

/// Powers of ten that a double holds exactly.
const EXACT: [f64; 23] = [
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
];

/// Beyond it every double is zero or infinite, whatever its digits.
const EXPONENT_MOST: i32 = 400;

impl<'a> Number<'a> {
    /// Of a text that is known to be a number.
    pub(in crate::json) const fn of(text: Cow<'a, str>) -> Self {
        Self(text)
    }

    /// The same, without the text it was read from.
    #[must_use]
    pub fn into_owned(self) -> Number<'static> {
        Number(Cow::Owned(self.0.into_owned()))
    }

    /// As it was written.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// A whole number that is written as one: digits and nothing else.
    #[must_use]
    pub fn as_u64(&self) -> Option<u64> {
        let digits = self.0.bytes().all(|byte| byte.is_ascii_digit());
        if digits { self.0.parse().ok() } else { None }
    }

    /// The value as a double; none where it is too large for one. Up to 15 digits and an
    /// exponent up to ±22 it is the nearest double, beyond that within some units of the
    /// last place: the tables of the standard parser are left out of the page.
    #[must_use]
    pub fn as_f64(&self) -> Option<f64> {
        let (digits, exponent) = match self.0.split_once(['e', 'E']) {
            Some((digits, exponent)) => (digits, exponent_of(exponent)),
            None => (self.0.as_ref(), 0),
        };
        let (negative, digits) = match digits.strip_prefix('-') {
            Some(digits) => (true, digits),
            None => (false, digits),
        };
        let (mut whole, mut exponent) = (0_u64, exponent);
        let mut after_point = false;
        for byte in digits.bytes() {
            if byte == b'.' {
                after_point = true;
                continue;
            }
            let digit = u64::from(byte.wrapping_sub(b'0'));
            match whole.checked_mul(10).and_then(|ten| ten.checked_add(digit)) {
                Some(more) => {
                    whole = more;
                    exponent = exponent.saturating_sub(i32::from(after_point));
                }
                // What a u64 has no room for is beyond the last place of a double: nought is as
                // good, or the digit behind it.
                None => exponent = exponent.saturating_add(i32::from(!after_point)),
            }
        }
        // A u64 has more places than a double; the nearest double of it is what is meant.
        #[allow(clippy::cast_precision_loss)]
        let value = scaled(whole as f64, exponent);
        value.is_finite().then_some(if negative { -value } else { value })
    }
}

fn exponent_of(text: &str) -> i32 {
    let (negative, digits) = match text.strip_prefix('-') {
        Some(digits) => (true, digits),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let mut exponent = 0_i32;
    for byte in digits.bytes() {
        let digit = i32::from(byte.wrapping_sub(b'0'));
        exponent = exponent.saturating_mul(10).saturating_add(digit).min(1_000_000);
    }
    if negative { exponent.saturating_neg() } else { exponent }
}

/// `value` × 10 to the power of `exponent`.
fn scaled(mut value: f64, exponent: i32) -> f64 {
    if value == 0.0 {
        return 0.0;
    }
    let mut left = exponent.unsigned_abs().min(EXPONENT_MOST.unsigned_abs());
    while left > 0 {
        let step = left.min(22);
        let power = EXACT.get(step as usize).copied().unwrap_or(1.0);
        value = if exponent < 0 { value / power } else { value * power };
        left = left.saturating_sub(step);
    }
    value
}

impl fmt::Display for Number<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl From<u64> for Number<'_> {
    fn from(number: u64) -> Self {
        Self(Cow::Owned(number.to_string()))
    }
}

impl From<i64> for Number<'_> {
    fn from(number: i64) -> Self {
        Self(Cow::Owned(number.to_string()))
    }
}

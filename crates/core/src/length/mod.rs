//! A length as a tape gives it: exact, and written as it was typed.

mod amount;
mod fold;
mod mend;
mod number;
mod parse;
mod print;
mod refuse;
mod scan;
mod unit;
mod words;

pub use parse::{Reading, read, read_in};
pub use print::Style;
pub use refuse::{ReadError, ReadErrorKind, Suggestion};
pub use unit::Unit;

use refuse::Refusal;

use core::ops::{Add, AddAssign, Neg, Sub, SubAssign};

/// A length in whole nanometres.
///
/// Every 1/64 in (396 875 nm) and every 0.1 mm (100 000 nm) is exact. Arithmetic
/// saturates at the ends of `i64` (some 9 million km), never wraps, never panics.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Length(i64);

impl Length {
    /// No length.
    pub const ZERO: Self = Self(0);
    /// 1/64 in: the finest mark on any tape.
    pub const SIXTY_FOURTH: Self = Self(396_875);
    /// 1/16 in: the usual mark of an inch tape.
    pub const SIXTEENTH: Self = Self(1_587_500);
    /// One inch, 25.4 mm exactly (NIST SP 811).
    pub const INCH: Self = Self(25_400_000);
    /// One foot, 304.8 mm exactly (NIST SP 811).
    pub const FOOT: Self = Self(304_800_000);
    /// One millimetre: the mark of a metric tape.
    pub const MILLIMETRE: Self = Self(1_000_000);

    /// From nanometres.
    #[must_use]
    pub const fn from_nm(nm: i64) -> Self {
        Self(nm)
    }
    /// From whole sixty-fourths of an inch.
    #[must_use]
    pub const fn from_sixty_fourths(n: i64) -> Self {
        Self(n.saturating_mul(396_875))
    }
    /// From whole sixteenths of an inch.
    #[must_use]
    pub const fn from_sixteenths(n: i64) -> Self {
        Self(n.saturating_mul(1_587_500))
    }
    /// From whole inches.
    #[must_use]
    pub const fn from_inches(n: i64) -> Self {
        Self(n.saturating_mul(25_400_000))
    }
    /// From whole millimetres.
    #[must_use]
    pub const fn from_mm(n: i64) -> Self {
        Self(n.saturating_mul(1_000_000))
    }
    /// From whole tenths of a millimetre.
    #[must_use]
    pub const fn from_tenths_mm(n: i64) -> Self {
        Self(n.saturating_mul(100_000))
    }
    /// From millimetres, to the nearest nanometre; for figures, not for readings.
    #[must_use]
    #[expect(clippy::cast_possible_truncation, reason = "a float cast saturates")]
    pub fn from_mm_f64(mm: f64) -> Self {
        Self(libm::round(mm * 1e6) as i64)
    }
    /// In nanometres.
    #[must_use]
    pub const fn nm(self) -> i64 {
        self.0
    }
    /// In millimetres, for arithmetic that needs roots; never for storing.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "a door is far below 2^53 nm")]
    pub const fn to_mm(self) -> f64 {
        self.0 as f64 / 1e6
    }
    /// In inches, for arithmetic that needs roots; never for storing.
    #[must_use]
    pub const fn to_inches(self) -> f64 {
        self.to_mm() / 25.4
    }
    /// Without its sign.
    #[must_use]
    pub const fn abs(self) -> Self {
        Self(self.0.saturating_abs())
    }
    /// `n` of this.
    #[must_use]
    pub const fn times(self, n: i64) -> Self {
        Self(self.0.saturating_mul(n))
    }
    /// The greatest multiple of `step` that is not more than this.
    /// A `step` of zero or less leaves the length as it is.
    #[must_use]
    pub const fn floor_to(self, step: Self) -> Self {
        match self.0.checked_rem_euclid(step.0) {
            Some(over) if step.0 > 0 => Self(self.0.saturating_sub(over)),
            _ => self,
        }
    }
    /// The least multiple of `step` that is not less than this.
    /// A `step` of zero or less leaves the length as it is.
    #[must_use]
    pub const fn ceil_to(self, step: Self) -> Self {
        let floor = self.floor_to(step);
        if floor.0 == self.0 { self } else { Self(floor.0.saturating_add(step.0)) }
    }
    /// The nearest multiple of `step`; at the midpoint the even one
    /// (NIST Handbook 44 §10.3). A `step` of zero or less changes nothing.
    #[must_use]
    pub const fn round_to(self, step: Self) -> Self {
        let floor = self.floor_to(step);
        let ceil = self.ceil_to(step);
        let below = self.0.saturating_sub(floor.0);
        let above = ceil.0.saturating_sub(self.0);
        if below < above {
            return floor;
        }
        if above < below {
            return ceil;
        }
        match floor.0.checked_div(step.0) {
            Some(n) if n % 2 != 0 => ceil,
            _ => floor,
        }
    }
}

impl Add for Length {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}
impl Sub for Length {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}
impl AddAssign for Length {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}
impl SubAssign for Length {
    fn sub_assign(&mut self, other: Self) {
        *self = *self - other;
    }
}
impl Neg for Length {
    type Output = Self;
    fn neg(self) -> Self {
        Self(self.0.saturating_neg())
    }
}

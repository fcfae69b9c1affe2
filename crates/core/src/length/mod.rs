//! A length as a tape gives it: exact, and written as it was typed.
//!
//! # Reading
//!
//! A reading is whole numbers, decimals and fractions of inches, with or without feet
//! before them, or a number of millimetres, centimetres or metres; in digits, in words,
//! or in both. A unit that is written wins over the field's. Stray spaces, dashes
//! between inches and fraction, and every kind of quotation mark and prime are fine.
//!
//! ```
//! use hangtrue_core::length::{Length, Unit, read};
//!
//! let accepted = [
//!     ("96", 96 * 64),
//!     ("96.25", 96 * 64 + 16),
//!     ("96,25", 96 * 64 + 16),
//!     ("96 1/4", 96 * 64 + 16),
//!     ("96-1/4\"", 96 * 64 + 16),
//!     ("96 ¼ in", 96 * 64 + 16),
//!     ("96 1⁄4", 96 * 64 + 16),
//!     ("8' 0 1/4\"", 96 * 64 + 16),
//!     ("8'-0 1/4\"", 96 * 64 + 16),
//!     ("8’ 0¼”", 96 * 64 + 16),
//!     ("8 ft 1/4 in", 96 * 64 + 16),
//!     ("ninety six and a quarter", 96 * 64 + 16),
//!     ("eight foot and a quarter inch", 96 * 64 + 16),
//!     ("a half", 32),
//!     ("2438.4 mm", 96 * 64),
//!     ("2 438,4 mm", 96 * 64),
//!     ("243.84 cm", 96 * 64),
//!     ("2,4384 m", 96 * 64),
//!     ("nineteen point oh five millimeters", 48),
//!     ("noventa y seis y un cuarto", 96 * 64 + 16),
//!     ("quatre-vingt-seize et un quart", 96 * 64 + 16),
//! ];
//! for (text, sixty_fourths) in accepted {
//!     assert_eq!(read(text, Unit::Inch), Ok(Length::from_sixty_fourths(sixty_fourths)), "{text}");
//! }
//! ```
//!
//! Everything else is refused with a reason, and where a likely meaning can be seen it
//! is offered, never taken:
//!
//! ```
//! use hangtrue_core::length::{Unit, read};
//!
//! let refused: [(&str, &str, &[&str]); 16] = [
//!     ("", "empty", &[]),
//!     ("961/4", "lost-space", &["96 1/4 in"]),
//!     ("96 14", "lost-slash", &["96 1/4 in"]),
//!     ("8 6", "lost-mark", &["8 ft 6 in"]),
//!     ("96.", "lost-digits", &["96 in"]),
//!     ("96 5/4", "top-heavy", &["97 1/4 in"]),
//!     ("96 1/3", "not-on-tape", &["96 5/16 in", "96 3/8 in"]),
//!     ("96 1/0", "zero-denominator", &[]),
//!     ("8' 13\"", "inches-past-foot", &["9 ft 1 in"]),
//!     ("8.6'", "decimal-feet", &["8 ft 6 in", "8 ft 7.2 in"]),
//!     ("1,234", "thousands-or-decimal", &["1234 in", "1.2340 in"]),
//!     ("96..5", "two-points", &["96 1/2 in"]),
//!     ("-4", "negative", &["4 in"]),
//!     ("1e3", "exponent", &[]),
//!     ("96 in 2 mm", "mixed-units", &[]),
//!     ("about 96", "approximate", &["96 in"]),
//! ];
//! for (text, code, offers) in refused {
//!     let error = read(text, Unit::Inch).unwrap_err();
//!     let offered: Vec<&str> = error.suggestions.iter().map(|s| s.text.as_str()).collect();
//!     assert_eq!((error.kind.code(), &*offered), (code, offers), "{text}");
//! }
//! ```
//!
//! What was decided where more than one way was open:
//!
//! * A decimal is read when it is a whole number of nanometres, and refused when it is
//!   not: nothing is rounded. Five decimals of an inch always are, a sixth may be.
//! * A point or comma with three digits behind it and one to three before may part
//!   thousands: asked, but for metres and for eighths of an inch behind a point.
//! * A fraction of an inch has a mark on a tape (2, 4, 8, 16, 32, 64 under it); it need
//!   not be reduced. A fraction of a metric unit comes out at a whole 0.1 mm.
//! * A part of a foot (`8.6'`, `8 1/2 ft`) is always asked.
//! * `96.` and `96+` are asked: digits may be lost, and a plus says the mark was not met.
//! * Two figures said one after the other (`eight six`) are asked in a field for inches.
//! * Words of every language are known to every reader: an order that was typed in one
//!   language is read again in another, and must mean the same. [`read_in`] only says
//!   whose words are tried first.
//!
//! The way through: `fold` to plain letters, `scan` to tokens, `parse` cuts at the
//! units, `amount` reads what stands between them, `words` holds the languages;
//! `mend` looks for what a refused text may mean.
//!
//! # Writing
//!
//! [`Length::canonical`] is exact and reads back; [`Length::text`] is for sentences and
//! marks what it had to round with `≈`; [`Style`] lists the spellings people use.

mod amount;
mod fold;
mod mend;
mod number;
mod parse;
mod plain;
mod print;
mod refuse;
mod resolution;
mod scan;
mod unit;
mod worded;
mod words;

pub use parse::{Reading, read, read_in};
pub use plain::is_plain;
pub use print::Style;
pub use refuse::{ReadError, ReadErrorKind, Suggestion};
pub use resolution::resolution_of;
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
    /// How many whole `unit`s this is, towards zero; 0 of a unit of no length.
    #[must_use]
    pub const fn units(self, unit: Self) -> i64 {
        match self.0.checked_div(unit.0) {
            Some(units) => units,
            None => 0,
        }
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

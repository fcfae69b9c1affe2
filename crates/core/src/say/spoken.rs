//! A reading said aloud: for a screen reader's slider and for the telephone.

use super::{Language, Speaker, en, translated};
use crate::length::{Length, Unit};

impl Speaker {
    /// A reading in words, as one reads a tape aloud: `ninety-six and three sixteenths
    /// inches`. Between the marks, the nearest one with `about` before it.
    #[must_use]
    pub fn spoken(self, length: Length) -> String {
        self.aloud(length, Aloud::InFull)
    }

    /// A reading in words with its digits one by one, for the telephone: `nine six and
    /// three sixteenths inches`.
    #[must_use]
    pub fn spoken_by_digits(self, length: Length) -> String {
        self.aloud(length, Aloud::ByDigits)
    }

    fn aloud(self, length: Length, aloud: Aloud) -> String {
        let parts = Parts::of(length, self.unit);
        match self.language {
            Language::English => en::spoken::aloud(parts, aloud),
            _ => translated::aloud(self, parts, aloud),
        }
    }
}

/// How the whole number is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Aloud {
    InFull,
    ByDigits,
}

/// A length cut up for saying it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Parts {
    pub(super) negative: bool,
    /// It lies between the marks: the parts are those of the nearest one.
    pub(super) about: bool,
    /// Whole inches or millimetres.
    pub(super) whole: u64,
    pub(super) rest: Rest,
}

/// What stands behind the whole number, and with it the unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Rest {
    /// Numerator and denominator of an inch, reduced; 0 over 1 for none.
    Inch(u64, u64),
    /// Tenths of a millimetre.
    Tenths(u64),
}

impl Parts {
    fn of(length: Length, unit: Unit) -> Self {
        let mark = length.round_to(unit.finest());
        let marks = mark.units(unit.finest()).unsigned_abs();
        let (whole, rest) = match unit {
            Unit::Inch => {
                let halvings = marks.trailing_zeros().min(6);
                (marks / 64, Rest::Inch((marks % 64) >> halvings, 64 >> halvings))
            }
            Unit::Millimetre => (marks / 10, Rest::Tenths(marks % 10)),
        };
        Self { negative: length < Length::ZERO, about: mark != length, whole, rest }
    }
}

//! The tape itself: how far a reading of it may be off, before any slip.

/// Accuracy class of a measuring tape.
///
/// Directive 2014/32/EU Annex X (MI-008), same form as OIML R 35-1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Class {
    /// The finest.
    I,
    /// Good trade tapes.
    II,
    /// Ordinary tapes.
    III,
}

impl Class {
    /// a, b and c of the maximum permissible error, mm.
    const fn terms(self) -> (f64, f64, f64) {
        match self {
            Self::I => (0.1, 0.1, 0.1),
            Self::II => (0.3, 0.2, 0.2),
            Self::III => (0.6, 0.4, 0.3),
        }
    }

    /// Maximum permissible error ±(a + bL) in mm, `length` in mm, L in metres
    /// rounded *up* to the next whole metre.
    #[must_use]
    pub fn permissible(self, length: f64) -> f64 {
        let (a, b, _) = self.terms();
        a + b * libm::ceil(length.abs() / 1000.0).max(1.0)
    }

    /// What is added where the zero is a hook or butt end, mm.
    #[must_use]
    pub const fn hook(self) -> f64 {
        self.terms().2
    }
}

/// How well a person holds a tape to a mark and sees the line, sd in mm.
/// Common practice, no source.
const HAND: f64 = 0.55;

/// Standard deviation of one reading of `length` mm, before rounding: the hand, and
/// an ordinary class II tape and its hook, each uniform within what is permitted.
#[must_use]
pub fn sigma(length: f64) -> f64 {
    let tape = Class::II.permissible(length);
    let hook = Class::II.hook();
    (HAND * HAND + (tape * tape + hook * hook) / 3.0).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Worked values of MI-008, without c, mm; those at 1 m and 2.438 m computed.
    #[test]
    fn permissible_errors_are_the_published_ones() {
        for (length, errors) in [
            (1000.0, [0.2, 0.5, 1.0]),
            (2000.0, [0.3, 0.7, 1.4]),
            (2438.0, [0.4, 0.9, 1.8]),
            (3000.0, [0.4, 0.9, 1.8]),
            (5000.0, [0.6, 1.3, 2.6]),
            (8000.0, [0.9, 1.9, 3.8]),
            (10_000.0, [1.1, 2.3, 4.6]),
        ] {
            for (class, error) in [Class::I, Class::II, Class::III].into_iter().zip(errors) {
                assert!((class.permissible(length) - error).abs() < 1e-9, "{class:?} {length}");
            }
        }
    }
}

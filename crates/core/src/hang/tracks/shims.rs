//! Fastenings, their shims, and how a pair of tracks stands.

use crate::length::Length;

/// How far spacing and diagonals may differ: 1/8 in. Common practice, no source.
pub const TOLERANCE: Length = Length::from_sixteenths(2);

/// A height at which the spacing is read and a fastening is shimmed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Level {
    /// The lowest fastening, just above the sill.
    Low,
    /// Half-way.
    Middle,
    /// The highest upright fastening.
    High,
}

impl Level {
    /// All three, from the sill up.
    pub const ALL: [Self; 3] = [Self::Low, Self::Middle, Self::High];

    /// 0 to 2.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }
}

/// A track, seen from behind the truck.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Side {
    /// The left one.
    Left,
    /// The right one.
    Right,
}

impl Side {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Left, Self::Right];

    /// 0 or 1.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }
}

/// Shims in whole sixteenths of an inch, none below nothing: left and right, each low,
/// middle and high.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Shims(pub [[i64; 3]; 2]);

impl Shims {
    /// The shim behind one fastening.
    #[must_use]
    pub fn at(&self, side: Side, level: Level) -> Length {
        let sixteenths = self.0.get(side.index()).and_then(|side| side.get(level.index()));
        Length::from_sixteenths(sixteenths.copied().unwrap_or(0))
    }
    /// All of them together.
    #[must_use]
    pub fn total(&self) -> Length {
        let sum = self.0.iter().flatten().fold(0_i64, |sum, one| sum.saturating_add(*one));
        Length::from_sixteenths(sum)
    }
    /// Whether nothing has to move.
    #[must_use]
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }
}

/// How a pair of tracks stands: by how much spacing and diagonals differ.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Stand {
    /// The widest spacing less the narrowest.
    pub spread: Length,
    /// The rising diagonal less the falling one; none where squareness was not read.
    pub diagonals: Option<Length>,
}

impl Stand {
    /// Whether spacing, and diagonals where they are known, are within [`TOLERANCE`].
    #[must_use]
    pub fn holds(&self) -> bool {
        self.spread <= TOLERANCE && self.diagonals.is_none_or(|by| by.abs() <= TOLERANCE)
    }
}

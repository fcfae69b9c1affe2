//! The unit of a field, and the units a tape reading may be written in.

use super::Length;
use super::print::Form;

/// The unit of a field: what a bare number means, and how numbers are written back.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Unit {
    /// Inches and sixteenths.
    #[default]
    Inch,
    /// Millimetres.
    Millimetre,
}

impl Unit {
    /// The step an order is rounded to in this unit: 1/16 in or 1 mm.
    #[must_use]
    pub const fn step(self) -> Length {
        match self {
            Self::Inch => Length::SIXTEENTH,
            Self::Millimetre => Length::MILLIMETRE,
        }
    }
    /// The finest mark of a tape in this unit: 1/64 in or 0.1 mm.
    #[must_use]
    pub const fn finest(self) -> Length {
        match self {
            Self::Inch => Length::SIXTY_FOURTH,
            Self::Millimetre => Length::from_tenths_mm(1),
        }
    }
    /// The unit's short name in files: `in` or `mm`.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Millimetre => "mm",
        }
    }
    /// The unit of a short name.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        match key {
            "in" => Some(Self::Inch),
            "mm" => Some(Self::Millimetre),
            _ => None,
        }
    }
    /// The other one, for the echo in both units.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Inch => Self::Millimetre,
            Self::Millimetre => Self::Inch,
        }
    }
    pub(super) const fn measure(self) -> Measure {
        match self {
            Self::Inch => Measure::Inch,
            Self::Millimetre => Measure::Millimetre,
        }
    }
}

/// A unit a reading can be written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Measure {
    Foot,
    Inch,
    Millimetre,
    Centimetre,
    Metre,
}

impl Measure {
    /// Nanometres in one.
    pub(super) const fn nm(self) -> i64 {
        match self {
            Self::Foot => Length::FOOT.nm(),
            Self::Inch => Length::INCH.nm(),
            Self::Millimetre => 1_000_000,
            Self::Centimetre => 10_000_000,
            Self::Metre => 1_000_000_000,
        }
    }
    /// The field unit of its system.
    pub(super) const fn unit(self) -> Unit {
        match self {
            Self::Foot | Self::Inch => Unit::Inch,
            Self::Millimetre | Self::Centimetre | Self::Metre => Unit::Millimetre,
        }
    }
    /// How a length in it is written.
    pub(super) const fn form(self) -> Form {
        Form::In(self.unit())
    }
    pub(super) const fn is_metric(self) -> bool {
        matches!(self.unit(), Unit::Millimetre)
    }
}

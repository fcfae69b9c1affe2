//! The slips people make with a tape: one slip, one file.
//!
//! A slip turns a true reading u into a written v. A file says how, by listing for
//! a written v the readings u that it would have turned into v, each with
//! P(v | u, slip); and how common the slip is. The weights are assumed, normalised
//! over all slips, and hardly matter.

mod between;
mod decimal_feet;
mod digit;
mod drop_add;
mod foot_ten;
mod fraction_dropped;
mod half_inch;
mod heard;
mod inch_mark;
mod other;
mod sag;
mod sixteenths_eighths;
mod slash;
mod tape_case;
mod ticks;
mod transpose;
mod units;
mod wrong_edge;
mod wrong_side;

pub use between::{Way, between};

use crate::length::{Length, Unit};
use crate::spot::Group;

/// What can go wrong with a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SlipKind {
    /// One digit is another: 87 → 81.
    Digit,
    /// Two digits changed places: 87 → 78.
    Transpose,
    /// A digit was dropped or added: 96 → 9.
    DropAdd,
    /// A foot, or ten inches, off.
    FootTen,
    /// Measured from the one-inch mark, or the next inch mark was read.
    InchMark,
    /// Half an inch off.
    HalfInch,
    /// The fraction was read from the wrong side of the inch.
    WrongSide,
    /// Sixteenths were counted as eighths, or the reverse.
    SixteenthsEighths,
    /// The small marks were miscounted.
    Ticks,
    /// The fraction was left out.
    FractionDropped,
    /// The slash was lost: 96 1/4 → 96.14.
    Slash,
    /// Another unit's number.
    Units,
    /// Decimal feet taken for feet and inches.
    DecimalFeet,
    /// The length of the tape's case was not added.
    TapeCase,
    /// The tape sagged or lay aslant: always long.
    Sag,
    /// Measured to the wrong edge.
    WrongEdge,
    /// Heard wrong: five for nine, fifteen for fifty.
    Heard,
    /// Two readings changed places.
    Exchange,
    /// Another field's number.
    WrongField,
    /// Every long reading was taken from the same wrong mark.
    Habit,
    /// Something else.
    Other,
}

impl SlipKind {
    /// Its name in files.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Digit => "digit",
            Self::Transpose => "digits-exchanged",
            Self::DropAdd => "digit-dropped-or-added",
            Self::FootTen => "foot-or-ten",
            Self::InchMark => "inch-mark",
            Self::HalfInch => "half-inch",
            Self::WrongSide => "wrong-side",
            Self::SixteenthsEighths => "sixteenths-eighths",
            Self::Ticks => "ticks",
            Self::FractionDropped => "fraction-dropped",
            Self::Slash => "slash-lost",
            Self::Units => "units",
            Self::DecimalFeet => "decimal-feet",
            Self::TapeCase => "tape-case",
            Self::Sag => "sag",
            Self::WrongEdge => "wrong-edge",
            Self::Heard => "heard-wrong",
            Self::Exchange => "exchanged",
            Self::WrongField => "wrong-field",
            Self::Habit => "inch-habit",
            Self::Other => "other",
        }
    }
}

/// A written reading, as a slip sees it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Written {
    pub(super) group: Group,
    pub(super) length: Length,
    pub(super) unit: Unit,
    pub(super) feet: bool,
    /// The roof-bow depth, if one was read.
    pub(super) bow: Option<Length>,
}

/// A whole number of the tape's own large and small marks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Marks {
    /// Whole inches, or whole millimetres.
    pub(super) whole: i64,
    /// Sixty-fourths of an inch, or tenths of a millimetre; 0 to 63, or 0 to 9.
    pub(super) part: i64,
}

/// Tapes are not longer than this in inches or millimetres.
const LONGEST_INCHES: i64 = 100_000;

impl Written {
    /// The step between two small marks.
    pub(super) const fn step(&self) -> Length {
        self.unit.step()
    }

    /// As marks of its tape; none if it lies on no mark.
    pub(super) fn marks(&self) -> Option<Marks> {
        let (large, small) = match self.unit {
            Unit::Inch => (Length::INCH, Length::SIXTY_FOURTH),
            Unit::Millimetre => (Length::MILLIMETRE, Length::from_tenths_mm(1)),
        };
        let whole = self.length.floor_to(large);
        let part = self.length - whole;
        let on_mark = part.floor_to(small) == part;
        let (whole, part) = (whole.units(large), part.units(small));
        (on_mark && whole <= LONGEST_INCHES).then_some(Marks { whole, part })
    }

    /// Sixteenths within the inch, if it was read to sixteenths.
    pub(super) fn sixteenths(&self) -> Option<(i64, i64)> {
        let marks = self.marks()?;
        (self.unit == Unit::Inch && marks.part % 4 == 0).then_some((marks.whole, marks.part / 4))
    }

    /// The length of `whole` large marks and this reading's own part.
    pub(super) fn with_whole(&self, whole: i64) -> Length {
        let large = match self.unit {
            Unit::Inch => Length::INCH,
            Unit::Millimetre => Length::MILLIMETRE,
        };
        let own = self.marks().map_or(0, |marks| marks.whole);
        self.length + large.times(whole.wrapping_sub(own))
    }

    /// Whether it is long enough for a tape to sag or a case to matter.
    pub(super) fn long(&self) -> bool {
        self.length > Length::from_inches(24)
    }
}

/// One thing that may have been meant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Candidate {
    /// Exactly this was on the tape; P(written | it, slip).
    Value(Length, f64),
    /// Written is long by something between the two, mm, evenly; P of that stretch.
    Shift(f64, f64, f64),
}

/// Collects what a slip offers.
pub(super) struct Meant<'a> {
    weight: f64,
    kind: SlipKind,
    take: &'a mut dyn FnMut(SlipKind, Candidate, f64),
}

impl Meant<'_> {
    /// The tape may have shown `value`, and the slip would make it into what was
    /// written with probability `share`.
    pub(super) fn value(&mut self, value: Length, share: f64) {
        if value > Length::ZERO {
            (self.take)(self.kind, Candidate::Value(value, share), self.weight * share);
        }
    }
    /// What was written is longer than the tape showed by `least` to `most` inches
    /// (negative: shorter), with probability `share` for the whole stretch.
    pub(super) fn shift(&mut self, least: f64, most: f64, share: f64) {
        let shift = Candidate::Shift(least * 25.4, most * 25.4, share);
        (self.take)(self.kind, shift, self.weight * share);
    }
}

/// One slip.
pub(super) struct Slip {
    kind: SlipKind,
    /// Relative frequency. Assumed.
    weight: f64,
    meant: fn(&Written, &mut Meant<'_>),
}

/// Every slip of a single reading.
const SLIPS: [Slip; 18] = [
    digit::SLIP,
    transpose::SLIP,
    drop_add::SLIP,
    foot_ten::SLIP,
    inch_mark::SLIP,
    half_inch::SLIP,
    wrong_side::SLIP,
    sixteenths_eighths::SLIP,
    ticks::SLIP,
    fraction_dropped::SLIP,
    slash::SLIP,
    units::SLIP,
    decimal_feet::SLIP,
    tape_case::SLIP,
    sag::SLIP,
    wrong_edge::SLIP,
    heard::SLIP,
    other::SLIP,
];

/// Relative frequency of exchanges, and of a number in the wrong field. Assumed.
pub(super) const EXCHANGE: f64 = 0.03;

/// What all weights add up to.
pub(super) fn total() -> f64 {
    SLIPS.iter().map(|slip| slip.weight).sum::<f64>() + EXCHANGE
}

/// Everything that may have been meant by `written`: slip, what, and its weight.
pub(super) fn meant(written: &Written, mut take: impl FnMut(SlipKind, Candidate, f64)) {
    for slip in &SLIPS {
        let mut meant = Meant { weight: slip.weight, kind: slip.kind, take: &mut take };
        (slip.meant)(written, &mut meant);
    }
}

/// Decimal digits of a number, the last first; one digit for nought.
pub(super) fn digits(number: i64) -> impl Iterator<Item = (i64, i64)> {
    let mut rest = number.max(0);
    let mut place = 1_i64;
    let mut first = true;
    core::iter::from_fn(move || {
        if rest == 0 && !first {
            return None;
        }
        first = false;
        let item = (place, rest % 10);
        rest /= 10;
        place = place.saturating_mul(10);
        Some(item)
    })
}

#[cfg(test)]
pub(super) mod testing {
    use super::*;

    /// What `slip` takes `sixteenths` at a spot of `group` for: (sixteenths, share).
    pub(crate) fn values(slip: &Slip, group: Group, sixteenths: i64) -> Vec<(f64, f64)> {
        let length = Length::from_sixteenths(sixteenths);
        let bow = Some(Length::from_sixteenths(20));
        let written = Written { group, length, unit: Unit::Inch, feet: false, bow };
        let mut found = Vec::new();
        let mut take = |_: SlipKind, candidate: Candidate, _: f64| {
            if let Candidate::Value(value, share) = candidate {
                found.push((value.to_inches() * 16.0, share));
            }
        };
        let mut meant = Meant { weight: slip.weight, kind: slip.kind, take: &mut take };
        (slip.meant)(&written, &mut meant);
        found
    }

    /// Whether `slip` may have made `written` from `meant`, both in sixteenths.
    pub(crate) fn explains(slip: &Slip, written: i64, meant: i64) -> bool {
        #[expect(clippy::cast_precision_loss, reason = "small numbers")]
        let meant = meant as f64;
        values(slip, Group::Width, written).iter().any(|(value, _)| (value - meant).abs() < 1e-6)
    }
}

#[cfg(test)]
mod tests;

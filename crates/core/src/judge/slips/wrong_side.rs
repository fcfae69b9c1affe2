//! The fraction was counted from the wrong side of the inch: f → 1 − f, or, with the
//! next inch's number, 1 and 1 − f. On a metric tape the same within the centimetre.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::{Length, Unit};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::WrongSide, weight: 0.07, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let Some(_) = written.marks() else { return };
    let span = match written.unit {
        Unit::Inch => Length::INCH,
        Unit::Millimetre => Length::from_mm(10),
    };
    let whole = written.length.floor_to(span);
    let part = written.length - whole;
    if part == Length::ZERO {
        return;
    }
    let mirrored = whole + span - part;
    if mirrored != written.length {
        meant.value(mirrored, 0.7);
    }
    meant.value(mirrored - span, 0.3);
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn three_sixteenths_and_thirteen() {
        assert!(explains(&SLIP, 92 * 16 + 13, 92 * 16 + 3));
        assert!(explains(&SLIP, 93 * 16 + 13, 92 * 16 + 3));
        assert!(!explains(&SLIP, 92 * 16, 92 * 16));
    }
}

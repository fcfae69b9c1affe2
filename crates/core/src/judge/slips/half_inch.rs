//! Half an inch off, or half a centimetre.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::{Length, Unit};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::HalfInch, weight: 0.04, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let half = match written.unit {
        Unit::Inch => Length::from_sixteenths(8),
        Unit::Millimetre => Length::from_mm(5),
    };
    meant.value(written.length - half, 0.5);
    meant.value(written.length + half, 0.5);
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn half_an_inch_either_way() {
        assert!(explains(&SLIP, 92 * 16 + 11, 92 * 16 + 3));
        assert!(explains(&SLIP, 91 * 16 + 11, 92 * 16 + 3));
    }
}

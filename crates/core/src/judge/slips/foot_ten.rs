//! A foot, or ten inches, off; on a metric tape ten centimetres.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::{Length, Unit};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::FootTen, weight: 0.12, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let (one, other) = match written.unit {
        Unit::Inch => (Length::FOOT, Length::from_inches(10)),
        Unit::Millimetre => (Length::from_mm(100), Length::FOOT),
    };
    let (share_one, share_other) = match written.unit {
        Unit::Inch => (0.25, 0.25),
        Unit::Millimetre => (0.4, 0.1),
    };
    for (off, share) in [(one, share_one), (other, share_other)] {
        meant.value(written.length - off, share);
        meant.value(written.length + off, share);
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn a_foot_and_ten_inches_either_way() {
        for off in [-12, -10, 10, 12] {
            assert!(explains(&SLIP, (92 + off) * 16 + 3, 92 * 16 + 3));
        }
    }
}

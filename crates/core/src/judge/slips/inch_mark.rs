//! Measured from the one-inch mark and not taken off (+1), or the next inch mark
//! read; on a metric tape a centimetre, or ten.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::{Length, Unit};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::InchMark, weight: 0.12, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    match written.unit {
        Unit::Inch => {
            meant.value(written.length - Length::INCH, 0.6);
            meant.value(written.length + Length::INCH, 0.4);
        }
        Unit::Millimetre => {
            meant.value(written.length - Length::from_mm(10), 0.4);
            meant.value(written.length + Length::from_mm(10), 0.3);
            meant.value(written.length - Length::from_mm(100), 0.2);
            meant.value(written.length + Length::from_mm(100), 0.1);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn an_inch_either_way() {
        assert!(explains(&SLIP, 93 * 16 + 3, 92 * 16 + 3));
        assert!(explains(&SLIP, 91 * 16 + 3, 92 * 16 + 3));
    }
}

//! The small marks were miscounted, by one, two or four; on a metric tape by one,
//! two or five.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::Unit;

pub(super) const SLIP: Slip = Slip { kind: SlipKind::Ticks, weight: 0.10, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let most = match written.unit {
        Unit::Inch => 4,
        Unit::Millimetre => 5,
    };
    for ticks in [1, 2, most] {
        meant.value(written.length - written.step().times(ticks), 1.0 / 6.0);
        meant.value(written.length + written.step().times(ticks), 1.0 / 6.0);
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn one_two_and_four() {
        for ticks in [1, 2, 4] {
            assert!(explains(&SLIP, 92 * 16 + 3 + ticks, 92 * 16 + 3));
            assert!(explains(&SLIP, 92 * 16 + 3 - ticks, 92 * 16 + 3));
        }
        assert!(!explains(&SLIP, 92 * 16 + 6, 92 * 16 + 3));
    }
}

//! The fraction was left out: 87 3/8 → 87; on a metric tape the millimetres: 2445 → 2440.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::Unit;

pub(super) const SLIP: Slip = Slip { kind: SlipKind::FractionDropped, weight: 0.04, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let Some(marks) = written.marks() else { return };
    let parts = match written.unit {
        Unit::Inch if marks.part == 0 => 16,
        Unit::Millimetre if marks.part == 0 && marks.whole % 10 == 0 => 10,
        _ => return,
    };
    for part in 1..parts {
        // Whichever fraction it was, dropping it leaves this.
        meant.value(written.length + written.step().times(part), 1.0);
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn only_a_whole_inch_may_have_lost_its_fraction() {
        assert!(explains(&SLIP, 87 * 16, 87 * 16 + 6));
        assert!(!explains(&SLIP, 87 * 16 + 1, 87 * 16 + 6));
    }
}

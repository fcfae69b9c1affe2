//! Decimal feet taken for feet and inches: 7.5 ft ↔ 7 ft 5 in.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::{Length, Unit};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::DecimalFeet, weight: 0.03, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    if written.unit != Unit::Inch || !written.long() {
        return;
    }
    let feet = written.length.floor_to(Length::FOOT);
    let over = written.length - feet;
    let tenth = Length::from_nm(Length::FOOT.nm() / 10);
    // 7 ft 5 in was 7.5 ft.
    let inches = over.units(Length::INCH);
    if over.floor_to(Length::INCH) == over && (1..10).contains(&inches) {
        meant.value((feet + tenth.times(inches)).round_to(written.step()), 0.5);
    }
    // 7.5 ft was 7 ft 5 in.
    let tenths = over.round_to(tenth).units(tenth);
    if (over - tenth.times(tenths)).abs() <= written.step() && (1..10).contains(&tenths) {
        meant.value(feet + Length::from_inches(tenths), 0.5);
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn seven_and_a_half_feet_and_seven_foot_five() {
        assert!(explains(&SLIP, 90 * 16, 89 * 16));
        assert!(explains(&SLIP, 89 * 16, 90 * 16));
    }
}

//! Another unit's number: inches for centimetres, millimetres for inches, centimetres
//! for millimetres, and the reverse.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::Length;

pub(super) const SLIP: Slip = Slip { kind: SlipKind::Units, weight: 0.03, meant };

/// Written over meant, in hundredths.
const FACTORS: [i64; 3] = [254, 2540, 1000];

fn meant(written: &Written, meant: &mut Meant<'_>) {
    for factor in FACTORS {
        // No tape is a hundred thousand inches long; keep clear of saturation.
        if written.length.abs() > Length::from_inches(100_000) {
            return;
        }
        let down = written.length.times(100).units(Length::from_nm(factor));
        let up = written.length.times(factor).units(Length::from_nm(100));
        for nm in [down, up] {
            meant.value(Length::from_nm(nm).round_to(written.step()), 1.0 / 6.0);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::{explains, values};
    use super::*;
    use crate::spot::Group;

    #[test]
    fn centimetres_in_a_field_of_inches() {
        // 92 in are 233.68 cm; written to the sixteenth.
        assert!(explains(&SLIP, 233 * 16 + 11, 92 * 16));
    }

    #[test]
    fn what_no_tape_can_read_is_no_other_units_number() {
        let of = |inches: i64| values(&SLIP, Group::Width, inches * 16).len();
        assert_eq!([of(100_000), of(100_001)], [6, 0]);
    }
}

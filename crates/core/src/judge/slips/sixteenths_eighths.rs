//! Sixteenths were counted as eighths, or the reverse: 3/16 ↔ 3/8.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::Length;

pub(super) const SLIP: Slip = Slip { kind: SlipKind::SixteenthsEighths, weight: 0.06, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let Some((_, part)) = written.sixteenths() else { return };
    // n/16 was written n/8: part is even, and was half of it.
    if part > 0 && part % 2 == 0 {
        meant.value(written.length - Length::from_sixteenths(part / 2), 0.5);
    }
    // n/8 was written n/16.
    if part > 0 && part < 8 {
        meant.value(written.length + Length::from_sixteenths(part), 0.5);
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn three_sixteenths_and_three_eighths() {
        assert!(explains(&SLIP, 92 * 16 + 6, 92 * 16 + 3));
        assert!(explains(&SLIP, 92 * 16 + 3, 92 * 16 + 6));
        assert!(!explains(&SLIP, 92 * 16 + 9, 92 * 16 + 3));
    }
}

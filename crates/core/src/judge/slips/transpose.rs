//! Two digits changed places: 87 → 78.

use super::{Meant, Slip, SlipKind, Written, digits};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::Transpose, weight: 0.06, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let Some(marks) = written.marks() else { return };
    if written.feet {
        return;
    }
    let all: [Option<(i64, i64)>; 6] = {
        let mut digits = digits(marks.whole);
        core::array::from_fn(|_| digits.next())
    };
    let pairs = all.iter().zip(all.iter().skip(1)).filter_map(|(a, b)| a.zip(*b));
    let count = pairs.clone().count();
    for ((low_place, low), (high_place, high)) in pairs {
        // The first digit of what was meant is not nought.
        let leads = high_place.saturating_mul(10) > marks.whole;
        if low != high && !(leads && low == 0) {
            let by = high.wrapping_sub(low);
            let moved = by.wrapping_mul(low_place.wrapping_sub(high_place));
            let whole = marks.whole.wrapping_add(moved);
            #[expect(clippy::cast_precision_loss, reason = "a handful of digits")]
            meant.value(written.with_whole(whole), 1.0 / count as f64);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn seventy_eight_may_have_been_eighty_seven() {
        assert!(explains(&SLIP, 78 * 16 + 3, 87 * 16 + 3));
        assert!(explains(&SLIP, 110 * 16, 101 * 16));
        assert!(!explains(&SLIP, 88 * 16 + 3, 78 * 16 + 3));
        assert!(!explains(&SLIP, 90 * 16, 9 * 16));
    }
}

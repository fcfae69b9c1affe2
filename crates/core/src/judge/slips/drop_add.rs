//! A digit was dropped, or one too many written: 96 → 9, 96 → 966.

use super::{Meant, Slip, SlipKind, Written, digits};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::DropAdd, weight: 0.05, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let Some(marks) = written.marks() else { return };
    if written.feet {
        return;
    }
    let count = digits(marks.whole).count();
    #[expect(clippy::cast_precision_loss, reason = "a handful of digits")]
    let places = count as f64;
    // One too many was written: take each away. Half of these slips add.
    if count > 1 {
        for (place, _) in digits(marks.whole) {
            let (above, below) = cut(marks.whole, place.wrapping_mul(10));
            let (digit, below) = cut(below, place);
            // Mostly the same digit twice; otherwise any of ten, anywhere.
            let twice = above % 10 == digit;
            let share = if twice { 0.5 / places } else { 0.05 / places };
            meant.value(
                written.with_whole(above.wrapping_mul(place).wrapping_add(below)),
                0.5 * share,
            );
        }
    }
    // One was dropped: put any digit anywhere.
    if marks.whole > 0 && count < 5 {
        let places_then = places + 1.0;
        let gaps = digits(marks.whole).map(|(place, _)| place);
        let top = digits(marks.whole).map(|(place, _)| place.wrapping_mul(10)).last().unwrap_or(1);
        for place in gaps.chain([top]) {
            let (above, below) = cut(marks.whole, place);
            for digit in 0..10 {
                if place == top && digit == 0 {
                    continue;
                }
                let whole = above.wrapping_mul(10).wrapping_add(digit);
                let whole = whole.wrapping_mul(place).wrapping_add(below);
                meant.value(written.with_whole(whole), 0.5 / places_then);
            }
        }
    }
}

/// `whole` in two: how often `place` goes into it, and the rest.
fn cut(whole: i64, place: i64) -> (i64, i64) {
    whole.checked_div(place).zip(whole.checked_rem(place)).unwrap_or((0, whole))
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn a_digit_goes_missing_or_comes_twice() {
        assert!(explains(&SLIP, 9 * 16 + 3, 96 * 16 + 3));
        assert!(explains(&SLIP, 6 * 16 + 3, 96 * 16 + 3));
        assert!(explains(&SLIP, 966 * 16, 96 * 16));
        assert!(explains(&SLIP, 11 * 16, 101 * 16));
        assert!(!explains(&SLIP, 95 * 16, 96 * 16));
    }
}

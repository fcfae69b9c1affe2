//! Heard wrong: five for nine, fifteen for fifty.

use super::{Meant, Slip, SlipKind, Written, digits};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::Heard, weight: 0.03, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let Some(marks) = written.marks() else { return };
    for (place, digit) in digits(marks.whole) {
        let other = match digit {
            5 => 9,
            9 => 5,
            _ => continue,
        };
        let moved = place.wrapping_mul(other).wrapping_sub(place.wrapping_mul(digit));
        meant.value(written.with_whole(marks.whole.wrapping_add(moved)), 0.4);
    }
    // The last two digits: thirteen to nineteen and thirty to ninety.
    let end = marks.whole % 100;
    let other = if (13..=19).contains(&end) {
        (end % 10).wrapping_mul(10)
    } else if end % 10 == 0 && (30..=90).contains(&end) {
        (end / 10).wrapping_add(10)
    } else {
        return;
    };
    meant.value(written.with_whole(marks.whole.wrapping_sub(end).wrapping_add(other)), 0.5);
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn fives_nines_teens_and_tens() {
        assert!(explains(&SLIP, 95 * 16, 99 * 16));
        assert!(explains(&SLIP, 95 * 16, 55 * 16));
        assert!(explains(&SLIP, 90 * 16, 19 * 16));
        assert!(explains(&SLIP, 116 * 16, 160 * 16));
        assert!(!explains(&SLIP, 112 * 16, 120 * 16));
    }
}

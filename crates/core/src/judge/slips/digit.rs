//! One digit is another: 87 → 81. Half of them are look-alikes or neighbouring keys.

use super::{Meant, Slip, SlipKind, Written, digits};
use crate::length::{Length, Unit};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::Digit, weight: 0.15, meant };

/// For each digit, those it is taken for: alike in a hasty hand, or next to it on a keypad.
const LIKE: [&[i64]; 10] = [
    &[6, 8, 9],
    &[7, 4, 2],
    &[1, 3, 5, 7],
    &[2, 6, 8, 5],
    &[1, 5, 7, 9],
    &[2, 4, 6, 8, 3],
    &[3, 5, 9, 0, 8],
    &[1, 4, 8, 2],
    &[3, 5, 7, 9, 0, 6],
    &[4, 6, 8, 0],
];

/// P(`from` is written as `to` | this digit is changed).
fn change(from: i64, to: i64) -> f64 {
    let like = usize::try_from(from).ok().and_then(|from| LIKE.get(from)).copied().unwrap_or(&[]);
    #[expect(clippy::cast_precision_loss, reason = "at most six")]
    let alike = if like.contains(&to) { 0.5 / like.len() as f64 } else { 0.0 };
    alike + 0.5 / 9.0
}

fn meant(written: &Written, meant: &mut Meant<'_>) {
    let Some(marks) = written.marks() else { return };
    // Feet and inches are written as two numbers: 7' 8".
    let parts: &[(i64, i64)] = if written.feet {
        &[(marks.whole / 12, 12), (marks.whole % 12, 1)]
    } else {
        &[(marks.whole, 1)]
    };
    let fraction = written.sixteenths().map(|(_, part)| part).filter(|part| *part > 0);
    let whole = parts.iter().map(|(number, _)| digits(*number).count());
    let places = whole.fold(usize::from(fraction.is_some()), usize::wrapping_add);
    #[expect(clippy::cast_precision_loss, reason = "a handful of digits")]
    let each = 1.0 / places as f64;
    for (number, worth) in parts {
        for (place, to) in digits(*number) {
            for from in (0..10).filter(|from| *from != to) {
                // A number does not begin with nought.
                if from == 0 && place.wrapping_mul(10) > *number && place > 1 {
                    continue;
                }
                let moved = from.wrapping_sub(to).wrapping_mul(place).wrapping_mul(*worth);
                let whole = marks.whole.wrapping_add(moved);
                meant.value(written.with_whole(whole), each * change(from, to));
            }
        }
    }
    if let (Some(part), Unit::Inch) = (fraction, written.unit) {
        // The upper number of the fraction, over what is written below it.
        let lower = 16 >> part.trailing_zeros().min(4);
        let upper = part.wrapping_mul(lower) / 16;
        for from in (1..lower).filter(|from| *from != upper) {
            let moved = from.saturating_sub(upper).saturating_mul(16).checked_div(lower);
            if let (Some(moved), true) = (moved, from < 10 && upper < 10) {
                let value = written.with_whole(marks.whole) + Length::from_sixteenths(moved);
                meant.value(value, each * change(from, upper));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::{explains, values};
    use super::*;
    use crate::spot::Group;

    #[test]
    fn eighty_one_may_have_been_eighty_seven() {
        assert!(explains(&SLIP, 81 * 16 + 3, 87 * 16 + 3));
        assert!(explains(&SLIP, 81 * 16 + 3, 31 * 16 + 3));
        assert!(explains(&SLIP, 81 * 16 + 3, 81 * 16 + 5));
        assert!(!explains(&SLIP, 81 * 16 + 3, 72 * 16 + 3));
    }

    /// What leaves a digit is all of it: P over the written digits is one.
    #[test]
    fn changes_of_a_digit_add_up_to_one() {
        for from in 0..10 {
            let all: f64 = (0..10).filter(|to| *to != from).map(|to| change(from, to)).sum();
            assert!((all - 1.0).abs() < 1e-12, "{from}: {all}");
        }
        assert!(values(&SLIP, Group::Width, 96 * 16).len() >= 16);
    }
}

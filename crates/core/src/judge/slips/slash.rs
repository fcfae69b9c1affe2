//! The slash was lost: 96 1/4 → 96.14, or 9614.

use super::{Meant, Slip, SlipKind, Written};
use crate::length::{Length, Unit};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::Slash, weight: 0.02, meant };

/// Upper and lower number of a fraction from its run-together digits: 14 → 1/4,
/// 316 → 3/16, 1516 → 15/16.
fn fraction(digits: i64) -> Option<(i64, i64)> {
    let (upper, lower) = match digits {
        10..=99 => (digits / 10, digits % 10),
        100..=9999 => (digits / 100, digits % 100),
        _ => return None,
    };
    (matches!(lower, 2 | 4 | 8 | 16 | 32) && upper < lower).then_some((upper, lower))
}

fn meant(written: &Written, meant: &mut Meant<'_>) {
    if written.unit != Unit::Inch {
        return;
    }
    // Ten-thousandths of an inch: "96.14" and "96.1516" are both whole numbers of them.
    const TEN_THOUSANDTH: Length = Length::from_nm(2540);
    let mut offer = |whole: i64, digits: i64| {
        if let Some((upper, lower)) = fraction(digits) {
            let marks = 64_i64.checked_div(lower).unwrap_or(0).saturating_mul(upper);
            let value = Length::from_inches(whole) + Length::from_sixty_fourths(marks);
            meant.value(value, 0.5);
        }
    };
    let whole = written.length.floor_to(Length::INCH);
    let part = written.length - whole;
    let inches = whole.units(Length::INCH);
    let number = part.round_to(TEN_THOUSANDTH).units(TEN_THOUSANDTH);
    if number > 0 {
        for shorten in [100, 10, 1] {
            if number.checked_rem(shorten) == Some(0) {
                offer(inches, number.checked_div(shorten).unwrap_or(0));
                break;
            }
        }
    } else {
        for split in [100, 1000, 10_000] {
            if let Some((whole @ 1.., part)) =
                inches.checked_div(split).zip(inches.checked_rem(split))
            {
                offer(whole, part);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::explains;
    use super::*;

    #[test]
    fn run_together_digits_are_split_again() {
        assert!(explains(&SLIP, 9614 * 16, 96 * 16 + 4));
        assert!(explains(&SLIP, 96_316 * 16, 96 * 16 + 3));
        assert!(!explains(&SLIP, 96 * 16 + 4, 96 * 16 + 4));
        assert_eq!(fraction(1516), Some((15, 16)));
        assert_eq!([fraction(41), fraction(44), fraction(1616)], [None; 3]);
    }
}

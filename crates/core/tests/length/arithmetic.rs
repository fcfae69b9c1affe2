//! Sums, multiples and figures of lengths, against whole numbers twice as wide.

use hangtrue_core::length::Length;
use proptest::prelude::*;

/// A length near a door's, its step, and now and then a step of nought or less.
fn length_and_step() -> impl Strategy<Value = (i64, i64)> {
    let step = prop_oneof![1_i64..=9, 1_i64..=25_400_000, -3_i64..=0];
    // Half the lengths stand on a multiple of half a step, where rounding decides.
    (step, any::<bool>(), -4_000_i64..=4_000, -5_000_000_000_i64..=5_000_000_000)
        .prop_map(|(step, halves, half, free)| (if halves { half * step / 2 } else { free }, step))
}

proptest! {
    #[test]
    fn multiples_stand_on_their_side((nm, step) in length_and_step()) {
        let (at, by) = (Length::from_nm(nm), Length::from_nm(step));
        let [floor, ceil, round] = [at.floor_to(by), at.ceil_to(by), at.round_to(by)].map(Length::nm);
        if step <= 0 {
            prop_assert_eq!([floor, ceil, round], [nm; 3]);
        } else {
            prop_assert_eq!(floor, nm.div_euclid(step) * step);
            prop_assert_eq!(ceil, -((-nm).div_euclid(step) * step));
            let twice = i128::from(2 * (nm - floor)) - i128::from(step);
            let even = (floor / step) % 2 == 0;
            let up = twice > 0 || (twice == 0 && !even);
            prop_assert_eq!(round, if up { ceil } else { floor });
        }
    }

    #[test]
    fn sums_are_those_of_their_nanometres(a in -10_i64.pow(13)..10_i64.pow(13), b in -10_i64.pow(13)..10_i64.pow(13)) {
        let [x, y] = [a, b].map(Length::from_nm);
        prop_assert_eq!((x + y).nm(), a + b);
        prop_assert_eq!((x - y).nm(), a - b);
        prop_assert_eq!((-x).nm(), -a);
        let mut sum = x;
        sum += y;
        prop_assert_eq!(sum.nm(), a + b);
        let mut rest = x;
        rest -= y;
        prop_assert_eq!(rest.nm(), a - b);
        prop_assert_eq!(x.abs().nm(), a.abs());
        prop_assert_eq!(x.times(b % 1000).nm(), a * (b % 1000));
        prop_assert_eq!(x.units(y), a.checked_div(b).unwrap_or(0));
    }

    /// A millimetre is a million nanometres, an inch 25.4 mm: to the nanometre below 4.5 km, where
    /// a double still holds each.
    #[test]
    fn figures_come_back(nm in -4_500_000_000_000_i64..4_500_000_000_000) {
        let length = Length::from_nm(nm);
        prop_assert_eq!(Length::from_mm_f64(length.to_mm()), length);
        prop_assert_eq!(Length::from_mm_f64(length.to_inches() * 25.4), length);
    }
}

#[test]
fn figures_of_an_inch() {
    assert_eq!(Length::from_nm(25_400_000).to_mm(), 25.4);
    assert_eq!(Length::from_nm(25_400_000).to_inches(), 1.0);
    assert_eq!(Length::from_mm_f64(2.54).nm(), 2_540_000);
}

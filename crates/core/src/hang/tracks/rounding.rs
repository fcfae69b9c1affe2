//! From shims of any thickness to whole sixteenths.

use super::shims::Shims;
use crate::length::Length;

/// Where a left and a right track stand, each low, middle and high: to the right of the low
/// middle of the pair, mm.
pub(super) type Faces = [[f64; 3]; 2];

/// Spacing low, middle, high of the faces of a left and a right track.
pub(super) fn spacing_of([left, right]: Faces) -> [f64; 3] {
    let ([ll, lm, lh], [rl, rm, rh]) = (left, right);
    [rl - ll, rm - lm, rh - lh]
}

/// The faces once the shims are behind them, mm: each comes into the opening.
pub(super) fn shimmed(faces: Faces, shims: &Shims) -> Faces {
    let mut after = faces;
    for ((side, shims), sign) in after.iter_mut().zip(shims.0).zip([1.0, -1.0]) {
        for (face, shim) in side.iter_mut().zip(shims) {
            *face += sign * Length::from_sixteenths(shim).to_mm();
        }
    }
    after
}

/// How far the straight between a track's ends is from its middle, the worse of the two, mm.
pub(super) fn bent(faces: Faces) -> f64 {
    let [left, right] = faces.map(|[low, middle, high]| (middle - 0.5 * (low + high)).abs());
    left.max(right)
}

/// Whole sixteenths for shims that are told exactly: those after which the pair is `off` by
/// least, to what a tape shows; of those the smallest total; of those the nearest to what was
/// exact. Looked through are the next sixteenth above, the next below, and the one below that,
/// which serves where rounding leaves the pair some play anyway.
pub(super) fn whole(exact: &Faces, off: impl Fn(&Shims) -> Length) -> Shims {
    let mut best: Option<(Length, Length, f64, Shims)> = None;
    for choice in 0..CHOICES.pow(6) {
        let mut shims = Shims::default();
        let (mut rest, mut rounded) = (choice, 0.0);
        for (shim, exact) in shims.0.iter_mut().flatten().zip(exact.iter().flatten()) {
            let above = floor(*exact).saturating_add(1);
            *shim = above.saturating_sub(i64::from(rest % CHOICES)).max(0);
            rest /= CHOICES;
            let by = float(*shim) - exact;
            rounded += by * by;
        }
        // What is finer than a tape shows is not worth a shim. Halves of it are common: they
        // must not fall to one side or the other by a nanometre.
        let off = (off(&shims) + QUARTER).floor_to(Length::SIXTY_FOURTH);
        let total = shims.total();
        let better = best.as_ref().is_none_or(|(least_off, least_total, least_rounded, _)| {
            let order = off.cmp(least_off).then(total.cmp(least_total));
            order.is_lt() || (order.is_eq() && rounded < *least_rounded - 1e-9)
        });
        if better {
            best = Some((off, total, rounded, shims));
        }
    }
    best.map_or_else(Shims::default, |(.., shims)| shims)
}

const CHOICES: u32 = 3;
const QUARTER: Length = Length::from_nm(Length::SIXTY_FOURTH.nm() / 4);

#[expect(clippy::cast_possible_truncation, reason = "a float cast saturates")]
fn floor(value: f64) -> i64 {
    libm::floor(value) as i64
}

#[expect(clippy::cast_precision_loss, reason = "a shim has few sixteenths")]
const fn float(value: i64) -> f64 {
    value as f64
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::hang::tracks::Pair;
    use proptest::prelude::*;

    fn length(sixty_fourths: i64) -> Length {
        Length::from_sixty_fourths(sixty_fourths)
    }

    /// All lists of shims up to 9/16 in at each of six fastenings, by how far the pair is off
    /// then, in nm, and their total. `left` and `right` in sixty-fourths.
    fn every_list(left: [i64; 3], right: [i64; 3], rise: Length, mut each: impl FnMut(i64, i64)) {
        const MOST: i64 = 9;
        let half = length(1).nm() / 2;
        for ends in 0..(MOST + 1).pow(4) {
            let digit = |at: u32| ends / (MOST + 1).pow(at) % (MOST + 1);
            let (a, c, d, f) = (digit(0), digit(1), digit(2), digit(3));
            let ([ll, lm, lh], [rl, rm, rh]) = (left, right);
            let (ll, lh, rl, rh) = (ll + 4 * a, lh + 4 * c, rl - 4 * d, rh - 4 * f);
            let across = |wide: i64| length(wide).to_mm().hypot(rise.to_mm());
            let by = Length::from_mm_f64(across(rh - ll) - across(rl - lh)).abs();
            for (b, e) in (0..=MOST).flat_map(|b| (0..=MOST).map(move |e| (b, e))) {
                let (lm, rm) = (lm + 4 * b, rm - 4 * e);
                let spacing = [rl - ll, rm - lm, rh - lh];
                let spread = spacing.iter().max().unwrap() - spacing.iter().min().unwrap();
                let bent = (2 * lm - ll - lh).abs().max((2 * rm - rl - rh).abs());
                let off = by.nm().max(2 * half * spread).max(half * bent);
                each(off, a + b + c + d + e + f);
            }
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]

        /// Against every list there is: none is better by what a tape shows, and none that is
        /// as good takes less.
        #[test]
        fn no_list_of_shims_is_better_or_as_good_with_less(
            half in prop::array::uniform3(-8_i64..=8),
            center in -8_i64..=8,
            rise in 70_i64..=120,
            square: bool,
        ) {
            // Posts are taken as straight: the pair's middle is half-way between its ends.
            let center = if square { [0, center, 2 * center] } else { [0; 3] };
            let half = half.map(|by| 46 * 64 + by);
            let faces = |sign: i64| [0, 1, 2].map(|at| center[at] + sign * half[at]);
            let ([ll, _, lh], [rl, _, rh]) = (faces(-1), faces(1));
            let rise = Length::from_inches(rise);
            let diagonal = |across: i64| {
                let across = Length::from_mm_f64(length(across).to_mm().hypot(rise.to_mm()));
                if square { vec![across] } else { Vec::new() }
            };
            let read = Pair {
                spacing: half.map(|half| vec![length(2 * half)]),
                diagonal: [diagonal(rh - ll), diagonal(rl - lh)],
                rise: Some(rise),
            };
            let solved = read.solve().unwrap();
            let shims = solved.shims.0.map(|side| side.map(|shim| 4 * shim));
            let left = [0, 1, 2].map(|at| length(faces(-1)[at] + shims[0][at]).to_mm());
            let right = [0, 1, 2].map(|at| length(faces(1)[at] - shims[1][at]).to_mm());
            let ([ll, _, lh], [rl, _, rh]) = (left, right);
            let across = |wide: f64| wide.hypot(rise.to_mm());
            let racked = Length::from_mm_f64(across(rh - ll) - across(rl - lh)).abs();
            let bent = Length::from_mm_f64(bent([left, right]));
            let ours = solved.result.spread.max(racked).max(bent);
            let total = solved.shims.total().nm() / Length::SIXTEENTH.nm();
            let (mut best, mut least) = (i64::MAX, i64::MAX);
            // What least squares makes of exact readings is exact to some nanometres.
            every_list(faces(-1), faces(1), rise, |off, total| {
                best = best.min(off);
                if off <= ours.nm() + 100 {
                    least = least.min(total);
                }
            });
            prop_assert!(best + Length::SIXTY_FOURTH.nm() >= ours.nm(), "{best} {solved:?}");
            prop_assert_eq!(total, least, "{:?}", solved);
        }
    }
}

//! The two vertical tracks.

use super::rounding::{Faces, bent, shimmed, spacing_of, whole};
use super::shims::{Shims, Stand};
use crate::judge::least_squares::{Adjusted, Row};
use crate::length::Length;

/// What was read on the two vertical tracks.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Pair {
    /// Spacing between the tracks, low, middle and high; repeats in one list.
    pub spacing: [Vec<Length>; 3],
    /// The diagonals, rising and falling.
    pub diagonal: [Vec<Length>; 2],
    /// From the low to the high marks along a track.
    pub rise: Option<Length>,
}

/// A pair of tracks, solved.
#[derive(Clone, Debug, PartialEq)]
pub struct Solved {
    /// Adjusted spacing, low, middle, high.
    pub spacing: [Length; 3],
    /// How far the high end of the pair stands to the right of its low end; none where no
    /// diagonals were read.
    pub lean: Option<Length>,
    /// How the pair stands now.
    pub found: Stand,
    /// What to put behind each fastening.
    pub shims: Shims,
    /// How it will stand.
    pub result: Stand,
    /// The spacing it will have: what the upper tracks have to match.
    pub target: Length,
    /// The worst residual of the readings against each other, in its own standard deviations
    /// (Baarda's w); nought where nothing checks them.
    pub worst: f64,
}

/// Spacing low, middle and high, lean, and height between the marks.
const UNKNOWNS: usize = 5;
const LEAN: usize = 3;
const RISE: usize = 4;
/// A reading of a steel tape between two tracks, sd mm: resolution and hand.
const SPACING_SD: f64 = 0.8;
const DIAGONAL_SD: f64 = 1.2;
const RISE_SD: f64 = 1.6;
/// "Some lean, give or take": keeps the normal matrix regular where no diagonal was read.
const FREE_SD: f64 = 1e6;
/// Gauss–Newton steps at most; a pair of tracks is solved to the nanometre in four.
const STEPS: usize = 12;

impl Pair {
    /// Where the tracks stand and what to put behind them; none with fewer than two spacings.
    ///
    /// Two straight upright lines are sought that stand inside both tracks, as far apart as
    /// that can be: a shim only ever brings a track into the opening, so the widest such pair
    /// is the one with the least shim. The posts between the marks are taken as straight.
    #[must_use]
    pub fn solve(&self) -> Option<Solved> {
        let (state, worst) = self.adjust()?;
        let [low, middle, high, lean, rise] = state;
        let lean_read = self.diagonal.iter().all(|list| !list.is_empty())
            || (self.rise.is_some() && self.diagonal.iter().any(|list| !list.is_empty()));
        let spacing = [low, middle, high];
        let lean = if lean_read { lean } else { 0.0 };
        let centers = [0.0, 0.5 * lean, lean];
        let faces = |sign: f64| {
            let mut out = [0.0; 3];
            for ((out, center), spacing) in out.iter_mut().zip(centers).zip(spacing) {
                *out = center + sign * 0.5 * spacing;
            }
            out
        };
        let faces = [faces(-1.0), faces(1.0)];
        let told = |faces: Faces| {
            let (spread, diagonals) = stand(faces, rise);
            Stand { spread, diagonals: lean_read.then_some(diagonals) }
        };
        // Where no diagonal was read, a pair that may be square is not racked on purpose.
        let shims = whole(&exact_shims(faces), |shims| {
            let after = shimmed(faces, shims);
            let (spread, diagonals) = stand(after, rise);
            spread.max(diagonals.abs()).max(Length::from_mm_f64(bent(after)))
        });
        let after = shimmed(faces, &shims);
        let [l, m, h] = spacing_of(after);
        Some(Solved {
            spacing: spacing.map(Length::from_mm_f64),
            lean: lean_read.then(|| Length::from_mm_f64(lean)),
            found: told(faces),
            shims,
            result: told(after),
            target: Length::from_mm_f64((l + m + h) / 3.0).round_to(Length::SIXTY_FOURTH),
            worst,
        })
    }

    /// Spacing low, middle, high, lean and height between the marks, mm; and the worst w.
    fn adjust(&self) -> Option<([f64; UNKNOWNS], f64)> {
        let first = |list: &[Length]| list.first().map(|length| length.to_mm());
        let mut known = self.spacing.iter().filter_map(|list| first(list));
        let (any, _) = (known.next()?, known.next()?);
        let across = |list: &[Length]| first(list).unwrap_or(any);
        let [low, middle, high] =
            [0, 1, 2].map(|at| self.spacing.get(at).map_or(any, |l| across(l)));
        let rise = self.rise.map(Length::to_mm).or_else(|| {
            let diagonal = self.diagonal.iter().find_map(|list| first(list))?;
            Some((diagonal * diagonal - any * any).max(1.0).sqrt())
        });
        let mut state = [low, middle, high, 0.0, rise.unwrap_or(any)];
        let mut worst = 0.0;
        for _ in 0..STEPS {
            let rows = self.rows(&state);
            let adjusted = Adjusted::of(&rows)?;
            for (value, by) in state.iter_mut().zip(adjusted.corrections) {
                *value += by;
            }
            worst = rows.iter().fold(0.0_f64, |most, row| most.max(adjusted.w(row).abs()));
            if adjusted.corrections.iter().all(|by| by.abs() < 1e-9) {
                break;
            }
        }
        state.iter().all(|value| value.is_finite()).then_some((state, worst))
    }

    fn rows(&self, state: &[f64; UNKNOWNS]) -> Vec<Row<UNKNOWNS>> {
        let [low, _, high, lean, rise] = *state;
        let mut rows = Vec::new();
        let unit = |at: usize| {
            let mut design = [0.0; UNKNOWNS];
            if let Some(cell) = design.get_mut(at) {
                *cell = 1.0;
            }
            design
        };
        for (at, (list, here)) in self.spacing.iter().zip(state).enumerate() {
            for read in list {
                let value = read.to_mm() - here;
                rows.push(Row { design: unit(at), value, sigma: SPACING_SD });
            }
        }
        for (list, sign) in self.diagonal.iter().zip([1.0, -1.0]) {
            let across = 0.5 * (low + high) + sign * lean;
            let length = (across * across + rise * rise).sqrt().max(1.0);
            let (by_across, by_rise) = (across / length, rise / length);
            let design = [0.5 * by_across, 0.0, 0.5 * by_across, sign * by_across, by_rise];
            for read in list {
                rows.push(Row { design, value: read.to_mm() - length, sigma: DIAGONAL_SD });
            }
        }
        if let Some(read) = self.rise {
            rows.push(Row { design: unit(RISE), value: read.to_mm() - rise, sigma: RISE_SD });
        }
        // The middle stands where the ends say, and the pair leans not, unless something was read.
        for (at, list) in self.spacing.iter().enumerate() {
            if list.is_empty() {
                let mut design = unit(at);
                let others = state.iter().enumerate().take(3).filter(|(other, _)| *other != at);
                let mut mean = 0.0;
                for (other, value) in others {
                    if let Some(cell) = design.get_mut(other) {
                        *cell = -0.5;
                    }
                    mean += 0.5 * value;
                }
                let here = state.get(at).copied().unwrap_or(mean);
                rows.push(Row { design, value: mean - here, sigma: SPACING_SD });
            }
        }
        rows.push(Row { design: unit(LEAN), value: -lean, sigma: FREE_SD });
        rows.push(Row { design: unit(RISE), value: 0.0, sigma: FREE_SD });
        rows
    }
}

/// What brings every face onto two upright lines as far apart as both tracks allow, in sixteenths,
/// as it would be if shims came in any thickness: left and right, low, middle, high.
fn exact_shims([left, right]: Faces) -> [[f64; 3]; 2] {
    let inner_left = left.into_iter().fold(f64::MIN, f64::max);
    let inner_right = right.into_iter().fold(f64::MAX, f64::min);
    [
        left.map(|face| (inner_left - face) / Length::SIXTEENTH.to_mm()),
        right.map(|face| (face - inner_right) / Length::SIXTEENTH.to_mm()),
    ]
}

/// How a pair with its marks `rise` mm apart stands: widest less narrowest spacing, and rising less
/// falling diagonal.
fn stand(faces: Faces, rise: f64) -> (Length, Length) {
    let (spacing, [left, right]) = (spacing_of(faces), faces);
    let most = spacing.into_iter().fold(f64::MIN, f64::max);
    let least = spacing.into_iter().fold(f64::MAX, f64::min);
    let ([ll, _, lh], [rl, _, rh]) = (left, right);
    let diagonal = |across: f64| (across * across + rise * rise).sqrt();
    let by = Length::from_mm_f64(diagonal(rh - ll) - diagonal(rl - lh));
    (Length::from_mm_f64(most - least), by)
}

#[cfg(test)]
mod tests {
    use super::super::shims::TOLERANCE;
    use super::*;
    use proptest::prelude::*;

    fn inch(n: i64) -> Length {
        Length::from_sixteenths(n)
    }

    /// A pair by its tracks' places, low, middle and high, in sixteenths; and what an exact
    /// tape reads on it.
    fn pair(left: [i64; 3], right: [i64; 3], rise: i64) -> Pair {
        let mm = |n: i64| inch(n).to_mm();
        let ([ll, lm, lh], [rl, rm, rh]) = (left, right);
        let diagonal = |across: i64| Length::from_mm_f64(mm(across).hypot(mm(rise)));
        Pair {
            spacing: [vec![inch(rl - ll)], vec![inch(rm - lm)], vec![inch(rh - lh)]],
            diagonal: [vec![diagonal(rh - ll)], vec![diagonal(rl - lh)]],
            rise: Some(inch(rise)),
        }
    }

    const WIDE: i64 = 92 * 16;
    const TALL: i64 = 96 * 16;

    #[test]
    fn a_squared_pair_gets_no_shim() {
        let solved = pair([0; 3], [WIDE; 3], TALL).solve().unwrap();
        assert!(solved.shims.is_none());
        assert_eq!(solved.found.spread, Length::ZERO);
        assert!(solved.found.diagonals.unwrap().abs() < Length::from_nm(100));
        assert_eq!(solved.target, inch(WIDE));
    }

    #[test]
    fn a_pair_that_opens_upwards_is_brought_in_above_on_both_sides() {
        let solved = pair([0, -2, -4], [WIDE, WIDE + 2, WIDE + 4], TALL).solve().unwrap();
        assert_eq!(solved.shims, Shims([[0, 2, 4], [0, 2, 4]]));
        assert_eq!(solved.target, inch(WIDE));
        assert!(!solved.found.holds() && solved.result.holds());
    }

    /// Racked by 1/4 in to the right: square again with the left brought in above and the
    /// right below, and 1/8 in of each half-way.
    #[test]
    fn a_racked_pair_is_squared() {
        let solved = pair([0, 2, 4], [WIDE, WIDE + 2, WIDE + 4], TALL).solve().unwrap();
        assert_eq!(solved.shims, Shims([[4, 2, 0], [0, 2, 4]]));
        assert_eq!(solved.target, inch(WIDE - 4));
        assert!(solved.found.spread < Length::from_nm(10));
        assert!(solved.found.diagonals.unwrap() > TOLERANCE);
        assert!(solved.result.holds());
    }

    #[test]
    fn without_diagonals_squareness_is_not_claimed() {
        let mut unsquared = pair([0, -2, -4], [WIDE, WIDE + 2, WIDE + 4], TALL);
        unsquared.diagonal = [Vec::new(), Vec::new()];
        let solved = unsquared.solve().unwrap();
        assert_eq!((solved.lean, solved.found.diagonals), (None, None));
        assert_eq!(solved.shims, Shims([[0, 2, 4], [0, 2, 4]]));
        assert!(Pair::default().solve().is_none());
    }

    #[test]
    fn a_diagonal_that_does_not_belong_shows() {
        let mut read = pair([0; 3], [WIDE; 3], TALL);
        assert!(read.solve().unwrap().worst < 0.01);
        read.diagonal[0] = vec![read.diagonal[0][0] + Length::INCH];
        read.diagonal[1] = vec![read.diagonal[1][0] + Length::INCH];
        assert!(read.solve().unwrap().worst > 4.0);
    }

    /// 1/16 in wider above, and nobody knows whether it is square: one shim, not one a side.
    #[test]
    fn half_a_sixteenth_a_side_is_one_shim() {
        let mut read = pair([0; 3], [WIDE, WIDE, WIDE + 1], TALL);
        read.diagonal = [Vec::new(), Vec::new()];
        let solved = read.solve().unwrap();
        assert_eq!(solved.shims.total(), Length::SIXTEENTH);
        assert_eq!(solved.result.spread, Length::ZERO);
    }

    fn places() -> impl Strategy<Value = ([i64; 3], [i64; 3], i64)> {
        let one = || prop::array::uniform3(-8_i64..=8);
        (one(), one(), 70 * 16_i64..=120 * 16)
            .prop_map(|(left, right, rise)| (left, right.map(|by| WIDE + by), rise))
    }

    proptest! {
        #[test]
        fn mirrored_readings_give_mirrored_shims((left, right, rise) in places()) {
            let mirror = |side: [i64; 3]| side.map(|place| WIDE - place);
            let solved = pair(left, right, rise).solve().unwrap();
            let other = pair(mirror(right), mirror(left), rise).solve().unwrap();
            let Shims([l, r]) = other.shims;
            // A half sixteenth may round either way: the nanometre of a reading decides.
            for (a, b) in solved.shims.0.into_iter().flatten().zip([r, l].into_iter().flatten()) {
                prop_assert!((a - b).abs() <= 1);
            }
            prop_assert_eq!(solved.spacing, other.spacing);
        }

        /// Least squares meets exact readings to the nanometre, so the pair after shims
        /// stands as two upright lines do, but for the rounding to sixteenths.
        #[test]
        fn no_shim_is_negative_and_the_result_is_within_a_rounding((left, right, rise) in places()) {
            // Straight posts: the middle stands half-way, as is assumed.
            let straight = |[low, _, high]: [i64; 3]| [2 * low, low + high, 2 * high];
            let (left, right) = (straight(left), straight(right).map(|p| p - WIDE));
            let solved = pair(left, right, rise).solve().unwrap();
            prop_assert!(solved.shims.0.iter().flatten().all(|shim| *shim >= 0));
            prop_assert!(solved.result.spread <= Length::SIXTEENTH.times(2));
            prop_assert!(solved.result.diagonals.unwrap().abs() <= TOLERANCE);
            // At each height and side something touches: no shim could be spared everywhere.
            let Shims([l, r]) = solved.shims;
            prop_assert!(l.contains(&0) && r.contains(&0));
        }

        /// The same readings typed in inches and in millimetres are the same nanometres,
        /// so they are the same shims.
        #[test]
        fn metric_and_inch_agree((left, right, rise) in places()) {
            let read = pair(left, right, rise);
            let metric = |list: &Vec<Length>| -> Vec<Length> {
                let text = |l: &Length| l.canonical(crate::Unit::Millimetre);
                let again = |l: &Length| crate::length::read(&text(l), crate::Unit::Inch).unwrap();
                list.iter().map(again).collect()
            };
            let again = Pair {
                spacing: [0, 1, 2].map(|at| metric(&read.spacing[at])),
                diagonal: [0, 1].map(|at| metric(&read.diagonal[at])),
                rise: read.rise,
            };
            prop_assert_eq!(read.solve(), again.solve());
        }
    }
}

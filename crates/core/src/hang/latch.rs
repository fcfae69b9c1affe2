//! Latch, side shift, seals: the small measures at the end of hanging a door.

use crate::length::Length;

/// The two marks of the latch plate's center may differ so much. Common practice, no source.
pub const CENTER_AGREES: Length = Length::from_sixteenths(2);
/// A door's whole play from side to side. Common practice, no source: about 3/8 in.
pub const SHIFT: Length = Length::from_sixteenths(6);
/// A washer of a roller's stem. Common practice, no source.
pub const WASHER: Length = Length::SIXTEENTH;
/// A seal is cut longer, so that it is never stretched: one part in a hundred. Common
/// practice, no source.
pub const STRETCH_PERMILLE: i64 = 10;

/// The center of the latch plate, measured in from both posts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Center {
    /// What is to be measured in from each post.
    pub half: Length,
    /// The mark from the left less the mark from the right, on the sill: nought where the
    /// two fall together; positive where they cross.
    pub gap: Option<Length>,
}

/// The latch plate's center in an opening of `width`, and where it was measured from both
/// posts to the one center that was marked, whether the two add up.
#[must_use]
pub fn center(width: Length, from_left: Option<Length>, from_right: Option<Length>) -> Center {
    let gap = match (from_left, from_right) {
        (Some(left), Some(right)) => Some(left - right),
        _ => None,
    };
    Center { half: Length::from_nm(width.nm().div_euclid(2)), gap }
}

impl Center {
    /// Whether both measures say one center.
    #[must_use]
    pub fn holds(&self) -> Option<bool> {
        self.gap.map(|gap| gap.abs() <= CENTER_AGREES)
    }
    /// How far the plate has to move to the right; to the left where negative.
    #[must_use]
    pub fn move_right(&self) -> Option<Length> {
        self.gap.map(|gap| -Length::from_nm(gap.nm().div_euclid(2)))
    }
}

/// Washers for the side shift: added where positive, taken off where negative.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Washers {
    /// On the left and on the right side, at each roller.
    pub sides: [i64; 2],
    /// The play that is left then.
    pub result: Length,
}

/// Washers of thickness `washer` that bring the measured `shift` nearest to [`SHIFT`],
/// shared between the sides; the left takes the odd one. None where a washer has no
/// thickness.
#[must_use]
pub fn washers(shift: Length, washer: Length) -> Option<Washers> {
    if washer <= Length::ZERO {
        return None;
    }
    let count = (shift - SHIFT).round_to(washer).units(washer);
    // More than forty at a roller is a slip in the reading.
    let count = count.clamp(-40, 40);
    let right = count / 2;
    Some(Washers {
        sides: [count.saturating_sub(right), right],
        result: shift - washer.times(count),
    })
}

/// What a seal is cut to: its run, and the stretch, to the next quarter inch.
#[must_use]
pub fn seal(run: Length, stretch_permille: i64) -> Length {
    let longer = run.nm().saturating_mul(stretch_permille.clamp(0, 100)).div_euclid(1000);
    (run + Length::from_nm(longer)).ceil_to(Length::from_sixteenths(4))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_center_is_half_way_and_both_posts_agree() {
        let width = Length::from_inches(92);
        let at = |left, right| {
            let read = |n| Some(Length::from_sixteenths(n));
            center(width, read(left), read(right))
        };
        let good = at(46 * 16, 46 * 16);
        assert_eq!((good.half, good.holds()), (Length::from_inches(46), Some(true)));
        // 1/4 in further from the left than from the right: 1/8 in back to the left.
        let off = at(46 * 16 + 2, 46 * 16 - 2);
        assert_eq!(off.holds(), Some(false));
        assert_eq!(off.move_right(), Some(-Length::from_sixteenths(2)));
        assert_eq!(center(width, None, None).holds(), None);
    }

    #[test]
    fn washers_are_shared_between_the_sides() {
        let of = |sixteenths| washers(Length::from_sixteenths(sixteenths), WASHER).unwrap();
        assert_eq!(of(6).sides, [0, 0]);
        assert_eq!(of(9).sides, [2, 1]);
        assert_eq!(of(2).sides, [-2, -2]);
        assert_eq!(of(3).sides, [-2, -1]);
        assert_eq!(washers(SHIFT, Length::ZERO), None);
    }

    proptest! {
        #[test]
        fn the_play_left_is_within_half_a_washer(sixty_fourths in 0_i64..100, washer in 1_i64..8) {
            let washer = Length::from_sixty_fourths(washer);
            let of = washers(Length::from_sixty_fourths(sixty_fourths), washer).unwrap();
            let [left, right] = of.sides;
            if (left + right).abs() < 40 {
                prop_assert!((of.result - SHIFT).abs().times(2) <= washer);
            }
            prop_assert!((left - right).abs() <= 1);
        }

        #[test]
        fn a_seal_is_never_short(sixteenths in 1_i64..2000) {
            let run = Length::from_sixteenths(sixteenths);
            let cut = seal(run, STRETCH_PERMILLE);
            prop_assert!(cut.nm() * 100 >= run.nm() * 101);
            prop_assert!(cut - run < Length::from_inches(2));
        }
    }
}

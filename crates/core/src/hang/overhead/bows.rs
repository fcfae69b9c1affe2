//! Where the roof bows hang, and what a panel's outer face leaves to them.

use super::Place;
use crate::length::Length;

/// How wide a bow is, along the body. Common practice, no source.
pub const BOW_WIDTH: Length = Length::from_sixteenths(32);

/// Where bows hang, as far as it is known; told from the header's inner face into the body.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Bows {
    /// Nobody said: anywhere along the door's way. The careful answer.
    #[default]
    Anywhere,
    /// None before there; anywhere from there on.
    From(Length),
    /// The first begins at `first`, each next `spacing` further in, each `width` wide.
    Every {
        /// To the nearer edge of the first.
        first: Length,
        /// From that edge of one to the same edge of the next.
        spacing: Length,
        /// From the nearer edge of a bow to its other one.
        width: Length,
    },
}

impl Bows {
    /// What is known makes the answer less careful, never what is not: without the first
    /// bow's place the spacing says nothing, without a spacing there may be a bow anywhere
    /// behind the first, and bows that leave no space between them are one.
    #[must_use]
    pub fn of(first: Option<Length>, spacing: Option<Length>, width: Length) -> Self {
        let Some(first) = first.map(|first| first.max(Length::ZERO)) else { return Self::Anywhere };
        match spacing {
            Some(spacing) if spacing > width => {
                Self::Every { first, spacing, width: width.max(Length::ZERO) }
            }
            _ => Self::From(first),
        }
    }

    /// Where bows begin and end between `from` and `to`, both from the header's inner face in
    /// mm, and the next on either side; without end where there may be one anywhere.
    fn between(self, from: f64, to: f64, mut each: impl FnMut(f64, f64)) {
        match self {
            Self::Anywhere => each(f64::NEG_INFINITY, f64::INFINITY),
            Self::From(first) => each(first.to_mm(), f64::INFINITY),
            Self::Every { first, spacing, width } => {
                let (first, spacing, width) = (first.to_mm(), spacing.to_mm(), width.to_mm());
                let mut begin = first + spacing * libm::floor((from - first) / spacing).max(0.0);
                loop {
                    each(begin, begin + width);
                    begin += spacing;
                    // Written so that a figure which is no number ends it.
                    let near = begin <= to + spacing;
                    if !near {
                        return;
                    }
                }
            }
        }
    }

    /// What an outer face leaves to the nearest bow, in mm, and where on the face; less than
    /// nothing by how far it reaches above the bow's underside. The face runs from `from` to
    /// `to`, the header's inner face is at `zero`, the undersides of the bows at `under`.
    pub(super) fn left(self, zero: f64, under: f64, from: Place, to: Place) -> (f64, Place) {
        let (from, to) = if from.x <= to.x { (from, to) } else { (to, from) };
        let mut nearest = (f64::INFINITY, from);
        self.between(from.x - zero, to.x - zero, |begin, end| {
            let bow = Bow { begin: begin + zero, end: end + zero, under };
            let next = bow.left(from, to);
            if next.0 < nearest.0 {
                nearest = next;
            }
        });
        nearest
    }
}

/// The section of one bow: from its underside up.
struct Bow {
    begin: f64,
    end: f64,
    under: f64,
}

impl Bow {
    /// What a face leaves that runs from `from` into the body to `to`.
    fn left(&self, from: Place, to: Place) -> (f64, Place) {
        if let Some(top) = self.highest_below(from, to)
            && top.y >= self.under
        {
            return (self.under - top.y, top);
        }
        let from_corner = [self.begin, self.end].into_iter().filter(|x| x.is_finite()).map(|x| {
            let corner = Place { x, y: self.under };
            let foot = nearest(corner, from, to);
            (corner.less(foot).length(), foot)
        });
        let from_end = [from, to].map(|end| {
            let beside = (self.begin - end.x).max(end.x - self.end).max(0.0);
            let below = (self.under - end.y).max(0.0);
            (Place { x: beside, y: below }.length(), end)
        });
        let all = from_end.into_iter().chain(from_corner);
        all.fold((f64::INFINITY, from), |best, next| if next.0 < best.0 { next } else { best })
    }

    /// The highest place of the face that is under the bow.
    fn highest_below(&self, from: Place, to: Place) -> Option<Place> {
        let way = to.less(from);
        if to.x < self.begin || from.x > self.end {
            return None;
        }
        // An upright face is under it as a whole.
        let at = |x: f64| if way.x > 0.0 { from.on(way, (x - from.x) / way.x) } else { from };
        let first = if self.begin > from.x { at(self.begin) } else { from };
        let last = if self.end < to.x { at(self.end) } else { to };
        Some(if first.y > last.y { first } else { last })
    }
}

/// The place of the straight from `from` to `to` that is nearest to `place`.
fn nearest(place: Place, from: Place, to: Place) -> Place {
    let way = to.less(from);
    let length = way.dot(way);
    let share = if length > 0.0 { place.less(from).dot(way) / length } else { 0.0 };
    from.on(way, crate::short::within(share, 0.0, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn at(x: f64, y: f64) -> Place {
        Place { x, y }
    }

    fn mm(mm: i64) -> Length {
        Length::from_mm(mm)
    }

    fn every(first: i64, spacing: i64, width: i64) -> Bows {
        Bows::of(Some(mm(first)), Some(mm(spacing)), mm(width))
    }

    #[test]
    fn what_is_not_known_stays_careful() {
        assert_eq!(Bows::of(None, Some(mm(600)), mm(50)), Bows::Anywhere);
        assert_eq!(Bows::of(Some(mm(300)), None, mm(50)), Bows::From(mm(300)));
        assert_eq!(Bows::of(Some(mm(300)), Some(mm(50)), mm(50)), Bows::From(mm(300)));
        assert_eq!(Bows::of(Some(mm(-3)), None, mm(50)), Bows::From(mm(0)));
    }

    /// By hand: 3-4-5 triangles beside and below a bow, and straight up under it.
    #[test]
    fn a_face_is_measured_to_the_nearest_corner_or_straight_up() {
        let bows = every(300, 600, 50);
        let left = |from, to| bows.left(100.0, 2000.0, from, to).0;
        // The first bow is from 400 to 450, the second from 1000 to 1050.
        assert!((left(at(0.0, 1900.0), at(370.0, 1960.0)) - 50.0).abs() < 1e-9);
        assert!((left(at(480.0, 1960.0), at(700.0, 1700.0)) - 50.0).abs() < 1e-9);
        assert!((left(at(380.0, 1990.0), at(470.0, 1990.0)) - 10.0).abs() < 1e-9);
        assert!((left(at(380.0, 2010.0), at(470.0, 2010.0)) - -10.0).abs() < 1e-9);
        // Higher than the undersides, but between two bows: 20 to the nearer.
        assert!((left(at(500.0, 2050.0), at(980.0, 2040.0)) - 20.0).abs() < 1e-9);
        // A slanting face goes through the first bow as high as it is there.
        assert!((left(at(425.0, 2010.0), at(825.0, 2410.0)) - -35.0).abs() < 1e-9);
        assert!((left(at(425.0, 1900.0), at(425.0, 2004.0)) - -4.0).abs() < 1e-9);
        // The second.
        assert!((left(at(1010.0, 1993.0), at(1020.0, 1900.0)) - 7.0).abs() < 1e-9);
        assert_eq!(
            bows.left(100.0, 2000.0, at(0.0, 1900.0), at(370.0, 1960.0)).1,
            at(370.0, 1960.0)
        );
    }

    proptest! {
        /// Whatever is known of the bows leaves at least what bows anywhere would leave, and
        /// is near to what many places of the face leave to many places of each bow.
        #[test]
        fn no_place_of_bows_is_worse_than_anywhere(
            first in 0_i64..1500, spacing in 60_i64..1200, width in 1_i64..60,
            x in -50.0_f64..2000.0, y in 1800.0_f64..2100.0,
            long in 50.0_f64..600.0, turned in -1.6_f64..1.6,
        ) {
            let (from, under) = (at(x, y), 2000.0);
            let to = at(x + long * libm::cos(turned), y + long * libm::sin(turned));
            let left = |bows: Bows| bows.left(0.0, under, from, to).0;
            let anywhere = left(Bows::Anywhere);
            let placed = left(every(first, spacing, width));
            let from_first = left(Bows::From(mm(first)));
            prop_assert!((anywhere - (under - from.y.max(to.y))).abs() < 1e-9);
            prop_assert!(anywhere <= from_first + 1e-9 && from_first <= placed + 1e-9);
            // By brute force: places of the face against the sections of the first forty.
            let mut least = f64::INFINITY;
            for share in 0..=2000 {
                let place = from.on(to.less(from), f64::from(share) / 2000.0);
                for bow in 0..40_i64 {
                    let begin = (first + bow * spacing) as f64;
                    let beside = (begin - place.x).max(place.x - begin - width as f64);
                    least = least.min(if beside <= 0.0 {
                        under - place.y
                    } else {
                        at(beside, (under - place.y).max(0.0)).length()
                    });
                }
            }
            let far = if placed < 0.0 || least < 0.0 { long / 2000.0 + 1e-6 } else { 0.4 };
            prop_assert!((placed - least).abs() < far, "{placed} {least}");
        }
    }
}

//! The opening as its readings say it is: not quite square.

use crate::number::limit;
use crate::point::Point;
use crate::rect::Rect;
use hangtrue_core::{Length, Spot};

/// How far the opening is from its own mean rectangle, mm.
///
/// The sill is taken as level and in place: readings of lengths alone do not
/// tell how the whole stands on the road.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Bent {
    /// How much wider than the mean, low, half-way up, high.
    width: [f64; 3],
    /// How much higher than the mean, left, center, right.
    height: [f64; 3],
    /// How far the top stands to the right of the sill.
    pub(crate) lean: f64,
}

impl Bent {
    /// From the adjusted length at each spot, where there is one.
    pub(crate) fn of(adjusted: impl Fn(Spot) -> Option<Length>) -> Self {
        let mm = |spot| adjusted(spot).map(Length::to_mm);
        let (width, w) = triple([Spot::WidthLow, Spot::WidthMiddle, Spot::WidthHigh].map(mm));
        let (height, h) = triple([Spot::HeightLeft, Spot::HeightCenter, Spot::HeightRight].map(mm));
        // The diagonals of a parallelogram: rising² − falling² = 4 · width · lean.
        let run = |diagonal: f64| (diagonal * diagonal - h * h).max(0.0).sqrt();
        let lean = if w > 0.0 && h > 0.0 {
            match (mm(Spot::DiagonalRising), mm(Spot::DiagonalFalling)) {
                (Some(rising), Some(falling)) => (rising * rising - falling * falling) / (4.0 * w),
                (Some(rising), None) => run(rising) - w,
                (None, Some(falling)) => w - run(falling),
                (None, None) => 0.0,
            }
        } else {
            0.0
        };
        Self { width, height, lean }
    }

    /// The largest of its departures from the rectangle, mm.
    pub(crate) fn largest(&self) -> f64 {
        self.width
            .into_iter()
            .chain(self.height)
            .chain([self.lean])
            .map(f64::abs)
            .fold(0.0, f64::max)
    }

    /// The place `across` from the left and `up` from the sill of `opening`,
    /// moved as the opening is bent, `scale` drawing units per mm.
    pub(crate) fn at(&self, opening: Rect, scale: f64, across: f64, up: f64) -> Point {
        // Outside the opening there is nothing to go by: a post moves as its inner edge.
        let (beside, level) = (limit(across, 0.0, 1.0), limit(up, 0.0, 1.0));
        let out = between(self.width, level) * (beside - 0.5) + self.lean * level;
        let over = between(self.height, beside) * level;
        opening.at(across, 1.0 - up).moved(out * scale, -over * scale)
    }
}

/// Three lengths less their mean, a missing one as the mean; and the mean.
fn triple(lengths: [Option<f64>; 3]) -> ([f64; 3], f64) {
    let (sum, count) = lengths
        .into_iter()
        .flatten()
        .fold((0.0, 0.0), |(sum, count), length| (sum + length, count + 1.0));
    let mean = if count > 0.0 { sum / count } else { 0.0 };
    (lengths.map(|length| length.map_or(0.0, |length| length - mean)), mean)
}

/// The parabola through three values at 0, 1/2 and 1 (Lagrange).
fn between([first, middle, last]: [f64; 3], share: f64) -> f64 {
    let (left, right) = (1.0 - share, share);
    first * left * (left - right) + middle * 4.0 * left * right + last * right * (right - left)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_parabola_goes_through_its_three_values() {
        let values = [3.0, -1.0, 5.0];
        for (share, value) in [(0.0, 3.0), (0.5, -1.0), (1.0, 5.0)] {
            assert!((between(values, share) - value).abs() < 1e-12);
        }
    }

    /// The four corners of a frame that leans give back its lean.
    #[test]
    fn a_frame_leans_as_its_diagonals_say() {
        let (w, h) = (2340.0_f64, 2580.0_f64);
        proptest::proptest!(|(lean in -60.0..60.0_f64, which in 0..3)| {
            let rising = ((w + lean) * (w + lean) + h * h).sqrt();
            let falling = ((w - lean) * (w - lean) + h * h).sqrt();
            let bent = Bent::of(|spot| match spot {
                Spot::WidthMiddle => Some(Length::from_mm_f64(w)),
                Spot::HeightLeft => Some(Length::from_mm_f64(h)),
                Spot::DiagonalRising if which != 1 => Some(Length::from_mm_f64(rising)),
                Spot::DiagonalFalling if which != 2 => Some(Length::from_mm_f64(falling)),
                _ => None,
            });
            proptest::prop_assert!((bent.lean - lean).abs() < 1e-4, "{}", bent.lean);
            let top = bent.at(Rect::new(0.0, 0.0, 100.0, 100.0), 1.0, 0.0, 1.0);
            proptest::prop_assert!((top.x - lean).abs() < 1e-4);
        });
    }
}

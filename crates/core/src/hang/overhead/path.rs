//! The path of the rollers' axes: straight up, an arc, straight on under the roof.

use super::Place;
use crate::short::within;

/// Straight up from the sill, an arc, straight on; seen from the side, in mm.
///
/// Places along it are told by the length of the path from the sill.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Path {
    /// How high the arc begins.
    begins: f64,
    radius: f64,
    /// How far the arc turns, in radians: a right angle less the slope of the upper track.
    turn: f64,
}

/// Newton's steps, each kept inside a bracket that halves: far more than are ever needed.
const STEPS: usize = 80;
/// A chord is met within this, in mm.
const MET: f64 = 1e-11;

impl Path {
    /// An arc of `radius` that begins `begins` above the sill, both in mm, and an upper
    /// track that falls towards the rear by `slope` degrees, 0 to 45.
    #[must_use]
    pub fn new(begins: f64, radius: f64, slope: f64) -> Self {
        let slope = within(slope, 0.0, 45.0).to_radians();
        let turn = core::f64::consts::FRAC_PI_2 - slope;
        Self { begins, radius: radius.max(0.0), turn }
    }

    /// Where along the path the arc ends.
    #[must_use]
    pub fn arc_end(&self) -> f64 {
        self.begins + self.radius * self.turn
    }

    /// Where the arc begins, which is also how high.
    #[must_use]
    pub const fn arc_begin(&self) -> f64 {
        self.begins
    }

    /// How far the path has turned from upright at `along`, in radians.
    fn turned(&self, along: f64) -> f64 {
        if along <= self.begins {
            0.0
        } else if along >= self.arc_end() {
            self.turn
        } else {
            (along - self.begins) / self.radius
        }
    }

    /// The place at `along`.
    #[must_use]
    pub fn at(&self, along: f64) -> Place {
        if along <= self.begins {
            return Place { x: 0.0, y: along };
        }
        let turned = self.turned(along);
        let (sin, cos) = (libm::sin(turned), libm::cos(turned));
        let on = (along - self.arc_end()).max(0.0);
        Place {
            x: self.radius * (1.0 - cos) + on * sin,
            y: self.begins + self.radius * sin + on * cos,
        }
    }

    /// The direction of the path at `along`, of length one.
    #[must_use]
    pub fn direction(&self, along: f64) -> Place {
        let turned = self.turned(along);
        Place { x: libm::sin(turned), y: libm::cos(turned) }
    }

    /// Where the next roller stands that is `chord` away from the one at `along`, further up.
    ///
    /// The distance from a place on the path to those behind it only grows, for the path
    /// turns by a right angle at most: the tangent there never points back at the place. So
    /// there is one answer. It lies between `chord` on, as the straight is the shortest way,
    /// and √2 × `chord` on, the way round a square corner.
    #[must_use]
    pub fn next(&self, along: f64, chord: f64) -> f64 {
        let straight = along + chord;
        if straight <= self.begins || along >= self.arc_end() {
            return straight;
        }
        let from = self.at(along);
        let (mut low, mut high) = (straight, along + 1.5 * chord);
        let mut here = straight;
        for _ in 0..STEPS {
            let way = self.at(here).less(from);
            let distance = way.length();
            let short = distance - chord;
            if short.abs() <= MET {
                break;
            }
            if short < 0.0 {
                low = here;
            } else {
                high = here;
            }
            let rate = way.dot(self.direction(here)) / distance.max(MET);
            let newton = here - short / rate;
            let inside = newton > low && newton < high;
            here = if inside { newton } else { 0.5 * (low + high) };
        }
        here
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// Rollers of one panel never come nearer or go further: to 1e-9 mm.
        #[test]
        fn a_panel_keeps_its_length(
            begins in 1000.0_f64..3000.0,
            radius in 0.0_f64..500.0,
            slope in 0.0_f64..20.0,
            along in 0.0_f64..4000.0,
            chord in 100.0_f64..700.0,
        ) {
            let path = Path::new(begins, radius, slope);
            let next = path.next(along, chord);
            let distance = path.at(next).less(path.at(along)).length();
            prop_assert!((distance - chord).abs() < 1e-9, "{distance} for {chord}");
            prop_assert!(next >= along + chord - 1e-9);
        }

        /// The path has no step and no kink: a hair further on, it is a hair further on.
        #[test]
        fn the_path_runs_on_in_its_own_direction(
            radius in 10.0_f64..500.0,
            slope in 0.0_f64..20.0,
            along in 0.0_f64..4000.0,
        ) {
            let path = Path::new(2000.0, radius, slope);
            let hair = 1e-4;
            let way = path.at(along + hair).less(path.at(along));
            prop_assert!((way.length() - hair).abs() < 1e-9);
            prop_assert!((way.dot(path.direction(along)) - hair).abs() < 1e-8);
        }
    }

    /// Two rollers on the arc span the angle 2·asin(chord / 2R), by the chord of a circle.
    #[test]
    fn on_the_arc_the_chord_of_a_circle() {
        let path = Path::new(0.0, 400.0, 0.0);
        let next = path.next(10.0, 300.0);
        let angle = 2.0 * libm::asin(300.0 / 800.0);
        assert!((next - (10.0 + 400.0 * angle)).abs() < 1e-9);
    }
}

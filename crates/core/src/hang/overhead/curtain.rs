//! The door's panels on their track, at any height.

use super::{Path, Place};

/// A door of equal panels on a track.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Curtain {
    /// Where the rollers run.
    pub path: Path,
    /// How many panels.
    pub panels: u32,
    /// All of them together, in mm.
    pub height: f64,
    /// From the rollers' axes to the inner faces, in mm.
    pub offset: f64,
    /// Inner to outer face, in mm.
    pub thickness: f64,
}

/// One panel where it stands: its rollers and the four corners of its section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Panel {
    /// The lower roller, and the upper.
    pub rollers: [Place; 2],
    /// The inner face, from the lower end to the upper.
    pub inner: [Place; 2],
    /// The outer face, from the lower end to the upper.
    pub outer: [Place; 2],
}

impl Curtain {
    /// Hinge to hinge, in mm.
    #[must_use]
    pub fn panel(&self) -> f64 {
        self.height / f64::from(self.panels.max(1))
    }

    /// Where along the path each roller is, from the bottom, with the door lifted by `lift` mm.
    #[must_use]
    pub fn rollers(&self, lift: f64) -> Vec<f64> {
        let chord = self.panel();
        let mut here = lift;
        let mut all = vec![here];
        for _ in 0..self.panels {
            here = self.path.next(here, chord);
            all.push(here);
        }
        all
    }

    /// Every panel, from the bottom, with the door lifted by `lift` mm.
    #[must_use]
    pub fn at(&self, lift: f64) -> Vec<Panel> {
        let rollers = self.rollers(lift);
        let pairs = rollers.iter().zip(rollers.iter().skip(1));
        pairs.map(|(low, high)| self.panel_between(*low, *high)).collect()
    }

    fn panel_between(&self, low: f64, high: f64) -> Panel {
        let rollers = [self.path.at(low), self.path.at(high)];
        let [from, to] = rollers;
        let out = to.less(from).unit().left();
        let face = |depth: f64| [from.on(out, depth), to.on(out, depth)];
        Panel { rollers, inner: face(self.offset), outer: face(self.offset + self.thickness) }
    }

    /// The share of the door's weight that hangs on the lift at `lift` mm: 1 closed, with
    /// every panel on the upright track; near 0 open, with nearly all of them lying on the
    /// upper one.
    ///
    /// By virtual work: how fast the panels' middles rise for each mm that the bottom is
    /// lifted. Rollers of a panel move along the track so that their distance stays.
    #[must_use]
    pub fn hanging(&self, lift: f64) -> f64 {
        let rollers = self.rollers(lift);
        let middle = self.offset + 0.5 * self.thickness;
        let mut speed = 1.0;
        let mut rising = 0.0;
        for (low, high) in rollers.iter().zip(rollers.iter().skip(1)) {
            let (from, to) = (self.path.at(*low), self.path.at(*high));
            let (run_low, run_high) = (self.path.direction(*low), self.path.direction(*high));
            let chord = to.less(from);
            let way = chord.unit();
            let next = speed * run_low.dot(way) / run_high.dot(way);
            let (low_moves, high_moves) = (run_low.times(speed), run_high.times(next));
            // How fast it turns, in radians for each mm of lift; its middle is off the chord.
            let turns = way.cross(high_moves.less(low_moves)) / chord.length();
            let off = turns * middle * way.left().left().y;
            rising += 0.5 * (low_moves.y + high_moves.y) + off;
            speed = next;
        }
        rising / f64::from(self.panels.max(1))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn curtain(slope: f64) -> Curtain {
        let path = Path::new(2300.0, 200.0, slope);
        Curtain { path, panels: 8, height: 2286.0, offset: 25.4, thickness: 19.05 }
    }

    #[test]
    fn closed_every_panel_stands_upright_and_the_whole_door_hangs() {
        let closed = curtain(0.0);
        for panel in closed.at(0.0) {
            for place in panel.outer {
                assert!((place.x - -44.45).abs() < 1e-12);
            }
        }
        assert!((closed.hanging(0.0) - 1.0).abs() < 1e-12);
    }

    /// A panel wholly on the upper straight lies along it, whatever its slope.
    #[test]
    fn on_the_upper_straight_a_panel_lies_along_the_track() {
        for slope in [0.0, 3.0] {
            let door = curtain(slope);
            let last = door.at(2286.0).into_iter().last().unwrap();
            let way = last.rollers[1].less(last.rollers[0]).unit();
            assert!((libm::atan2(way.y, way.x).to_degrees() - slope).abs() < 1e-9);
            assert!((last.outer[0].less(last.rollers[0]).length() - 44.45).abs() < 1e-9);
        }
    }

    proptest! {
        /// The rate of the middles' rise, against the difference of their heights.
        #[test]
        fn the_hanging_weight_is_how_fast_the_middles_rise(
            lift in 1.0_f64..2280.0, slope in 0.0_f64..10.0,
        ) {
            let door = curtain(slope);
            let height = |lift: f64| -> f64 {
                let middle = |p: &Panel| 0.25 * (p.inner[0].y + p.inner[1].y + p.outer[0].y + p.outer[1].y);
                door.at(lift).iter().map(middle).sum::<f64>() / 8.0
            };
            let hair = 1e-3;
            let rate = (height(lift + hair) - height(lift - hair)) / (2.0 * hair);
            // A roller that passes the end of the arc within the hair bends the difference.
            prop_assert!((rate - door.hanging(lift)).abs() < 1e-4, "{rate} {}", door.hanging(lift));
        }

        #[test]
        fn every_panel_keeps_the_distance_of_its_rollers(
            lift in 0.0_f64..2286.0, slope in 0.0_f64..20.0,
        ) {
            let door = curtain(slope);
            for panel in door.at(lift) {
                let distance = panel.rollers[1].less(panel.rollers[0]).length();
                prop_assert!((distance - door.panel()).abs() < 1e-9);
            }
        }
    }
}

//! The balance: what hangs, what the spring lifts, and what is left for the hand.

use super::turns::Turns;
use crate::hang::overhead::Curtain;
use crate::hang::weight::{GRAVITY, Weight};
use crate::length::Length;

/// The most that one person should lift, at best: the load constant of the NIOSH lifting
/// equation, 23 kg.
pub const HAND_MOST: Weight = Weight::from_grams(23_000);

/// A door and its spring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Balance {
    /// What the door weighs.
    pub door: Weight,
    /// Travel and drum.
    pub turns: Turns,
    /// Turns on the spring with the door closed.
    pub wound: f64,
    /// Torque for each turn, N·m.
    pub rate: f64,
}

/// One height of the door.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Lifted by so much.
    pub lift: Length,
    /// The weight that hangs on the cables, N.
    pub hanging: f64,
    /// What the spring lifts, N.
    pub lifted: f64,
}

impl Point {
    /// What the hand has to lift, N; it has to hold the door down where negative.
    #[must_use]
    pub fn hand(&self) -> f64 {
        self.hanging - self.lifted
    }
}

impl Balance {
    /// A spring that carries `door` exactly where it is closed: rate = W·c / 2π·n₀. Then the
    /// lift at every height is F(y) = W(1 − y / c·n₀).
    #[must_use]
    pub fn ideal(door: Weight, turns: Turns) -> Self {
        let wound = turns.closed();
        let rate = if wound > 0.0 {
            door.newtons() * drum(&turns) / (core::f64::consts::TAU * wound)
        } else {
            0.0
        };
        Self { door, turns, wound, rate }
    }

    /// The same door with `wound` turns on the same spring.
    #[must_use]
    pub fn wound(self, wound: f64) -> Self {
        Self { wound, ..self }
    }

    /// The torque on the shaft with the door closed, N·m.
    #[must_use]
    pub fn torque(&self) -> f64 {
        self.rate * self.wound
    }

    /// What the spring lifts with the door lifted by `lift`, N: k·n / r, r = c / 2π. A spring
    /// with no turns left pulls nothing.
    #[must_use]
    pub fn lifted(&self, lift: Length) -> f64 {
        let left = self.wound - lift.to_mm() / self.turns.drum.to_mm().max(1.0);
        self.per_turn() * left.max(0.0)
    }

    /// How much lift one turn is, N, at every height.
    #[must_use]
    pub fn per_turn(&self) -> f64 {
        core::f64::consts::TAU * self.rate / drum(&self.turns)
    }

    /// What the spring still pulls up with, open, N.
    #[must_use]
    pub fn open(&self) -> f64 {
        self.lifted(self.turns.travel)
    }

    /// The work that the wound spring holds with the door closed, J: U = π·k·n² for a rate k
    /// per turn.
    #[must_use]
    pub fn energy(&self) -> f64 {
        core::f64::consts::PI * self.rate * self.wound * self.wound
    }

    /// The height from which `weight` falls with that energy.
    #[must_use]
    pub fn falls_from(&self, weight: Weight) -> Length {
        let newtons = weight.to_kg() * GRAVITY;
        Length::from_mm_f64(if newtons > 0.0 { 1e3 * self.energy() / newtons } else { 0.0 })
    }

    /// The whole travel, in `steps` equal steps; panels as `curtain` has them.
    #[must_use]
    pub fn points(&self, curtain: &Curtain, steps: u32) -> Vec<Point> {
        let travel = self.turns.travel.to_mm();
        let steps = steps.max(1);
        (0..=steps)
            .map(|step| {
                let lift = travel * f64::from(step) / f64::from(steps);
                self.at(curtain, Length::from_mm_f64(lift))
            })
            .collect()
    }

    /// One height.
    #[must_use]
    pub fn at(&self, curtain: &Curtain, lift: Length) -> Point {
        let hanging = self.door.newtons() * curtain.hanging(lift.to_mm());
        Point { lift, hanging, lifted: self.lifted(lift) }
    }
}

/// The drum's circumference, m.
pub(super) fn drum(turns: &Turns) -> f64 {
    turns.drum.to_mm().max(1.0) / 1e3
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::hang::overhead::Path;
    use proptest::prelude::*;

    fn ideal(kg: i64, inches: i64) -> Balance {
        let turns = Turns::of(Length::from_inches(inches), None);
        Balance::ideal(Weight::from_grams(kg * 1000), turns)
    }

    fn curtain(inches: i64) -> Curtain {
        let height = Length::from_inches(inches).to_mm();
        let path = Path::new(height + 6.35, 76.2, 0.0);
        Curtain { path, panels: 8, height, offset: 25.4, thickness: 19.05 }
    }

    /// 60 kg, 90 in, 12 turns of 10 in: k = 60·9.80665·0.254 / (2π·12) = 1.98219 N·m a turn,
    /// U = W·c·n / 2 = 896.7 J (computed).
    #[test]
    fn the_worked_door() {
        let door = ideal(60, 90);
        assert!((door.rate - 1.982_19).abs() < 1e-4, "{}", door.rate);
        assert!((door.energy() - 60.0 * GRAVITY * 0.254 * 6.0).abs() < 1e-9);
        assert!((door.open() - 60.0 * GRAVITY * 3.0 / 12.0).abs() < 1e-9);
        let fall = door.falls_from(HAND_MOST).to_mm();
        assert!((fall - 1e3 * door.energy() / (23.0 * GRAVITY)).abs() < 1e-3);
    }

    /// What the spring gives up on the way is what it lifted: energy is conserved.
    #[test]
    fn the_lift_over_the_travel_is_the_energy_given_up() {
        let door = ideal(60, 90);
        let steps = 1000;
        let points = door.points(&curtain(90), steps);
        let step = door.turns.travel.to_mm() / 1e3 / f64::from(steps);
        let mean = |p: &[Point]| 0.5 * (p[0].lifted + p[1].lifted);
        let work: f64 = points.windows(2).map(mean).sum::<f64>() * step;
        let left = door.wound(door.wound - door.turns.travelled()).energy();
        assert!((work - (door.energy() - left)).abs() < 1e-6, "{work}");
    }

    #[test]
    fn a_wound_spring_carries_the_closed_door_and_no_spring_carries_nothing() {
        let door = ideal(60, 90);
        let closed = door.at(&curtain(90), Length::ZERO);
        assert!(closed.hand().abs() < 1e-9);
        assert_eq!(door.wound(0.0).open(), 0.0);
        let none = Turns { preload: 0.0, travel: Length::ZERO, ..door.turns };
        assert_eq!(Balance::ideal(HAND_MOST, none).rate, 0.0);
    }

    proptest! {
        /// F(y) = W(1 − y / c·n₀), and a quarter turn is the same force at every height.
        #[test]
        fn the_lift_is_the_stated_line(kg in 10_i64..200, inches in 60_i64..120, at in 0.0_f64..1.0) {
            let door = ideal(kg, inches);
            let lift = Length::from_mm_f64(door.turns.travel.to_mm() * at);
            let share = 1.0 - lift.to_mm() / (door.turns.drum.to_mm() * door.turns.closed());
            prop_assert!((door.lifted(lift) - door.door.newtons() * share).abs() < 1e-6);
            let more = door.wound(door.wound + 0.25).lifted(lift) - door.lifted(lift);
            prop_assert!((more - 0.25 * door.per_turn()).abs() < 1e-9);
        }
    }
}

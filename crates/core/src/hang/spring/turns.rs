//! How many turns go on the spring.

use crate::length::Length;
use crate::profile::Door;
use core::ops::RangeInclusive;

/// How far one turn of the drum lifts the door. Common practice, no source: about ten inches.
pub const DRUM: Length = Length::from_inches(10);
/// Turns that are left on the spring when the door is open. Common practice, no source.
pub const PRELOAD: f64 = 3.0;

/// Turns on the spring with the door closed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turns {
    /// How far the door travels.
    pub travel: Length,
    /// How far one turn lifts it.
    pub drum: Length,
    /// Turns left when it is open.
    pub preload: f64,
    /// Where drum and preload are from.
    pub rule: Rule,
}

/// Where the figures of [`Turns`] are from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Rule {
    /// The trade's rule: inches of height ÷ 10, and 3. Common practice, no source.
    Usual,
    /// The door's own drum, or its own preload.
    Door,
}

/// Drums that are reckoned with.
pub const DRUMS: RangeInclusive<Length> = Length::from_inches(3)..=Length::from_inches(60);
/// Preloads that are reckoned with; more is a slip.
pub const PRELOADS: RangeInclusive<f64> = 0.0..=20.0;

impl Turns {
    /// For a door that travels by `travel`: by what `door` says, else by the trade's rule.
    #[must_use]
    pub fn of(travel: Length, door: Option<&Door>) -> Self {
        let drum =
            door.and_then(|door| door.drum_circumference).filter(|drum| DRUMS.contains(drum));
        let preload =
            door.and_then(|door| door.preload_turns).filter(|preload| PRELOADS.contains(preload));
        let rule = if drum.is_some() || preload.is_some() { Rule::Door } else { Rule::Usual };
        Self { travel, drum: drum.unwrap_or(DRUM), preload: preload.unwrap_or(PRELOAD), rule }
    }

    /// Turns that opening takes off.
    #[must_use]
    pub fn travelled(&self) -> f64 {
        self.travel.to_mm() / self.drum.to_mm().max(1.0)
    }

    /// Turns on the spring with the door closed: travel ÷ drum, and the preload.
    #[must_use]
    pub fn closed(&self) -> f64 {
        self.travelled() + self.preload
    }

    /// The same, to the quarter turn that a winding bar can set.
    #[must_use]
    pub fn to_wind(&self) -> f64 {
        quarters(self.closed())
    }
}

/// To the nearest quarter turn.
#[must_use]
pub(super) fn quarters(turns: f64) -> f64 {
    libm::round(turns * 4.0) / 4.0
}

/// Whether the stripes counted along the wound spring say what was wound: the line painted
/// along the coils winds round once a turn. Off by less than a half is the same count.
#[must_use]
pub fn stripes_agree(stripes: u32, wound: f64) -> bool {
    (f64::from(stripes) - wound).abs() <= 0.5
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::length::{Unit, read};
    use proptest::prelude::*;

    /// Inches ÷ 10 and 3: common practice, no source.
    #[test]
    fn a_door_of_90_inches_takes_12_turns() {
        let turns = Turns::of(Length::from_inches(90), None);
        assert_eq!((turns.rule, turns.to_wind()), (Rule::Usual, 12.0));
        assert!((turns.closed() - 12.0).abs() < 1e-12);
        for (inches, wound) in [(70, 10.0), (100, 13.0), (96, 12.5), (102, 13.25)] {
            assert_eq!(Turns::of(Length::from_inches(inches), None).to_wind(), wound, "{inches}");
        }
    }

    #[test]
    fn the_doors_own_drum_and_preload_come_first_but_not_those_of_no_door() {
        let door = |drum, preload| Door {
            drum_circumference: Some(drum),
            preload_turns: Some(preload),
            ..Door::default()
        };
        let own = door(Length::from_inches(9), 2.0);
        let turns = Turns::of(Length::from_inches(90), Some(&own));
        assert_eq!((turns.rule, turns.to_wind()), (Rule::Door, 12.0));
        let none = door(Length::ZERO, f64::NAN);
        assert_eq!(Turns::of(Length::from_inches(90), Some(&none)).rule, Rule::Usual);
    }

    #[test]
    fn stripes_count_the_turns() {
        assert!(stripes_agree(12, 12.25) && stripes_agree(12, 11.5));
        assert!(!stripes_agree(11, 12.0));
    }

    proptest! {
        /// A door is one door, whichever tape measured it.
        #[test]
        fn metric_and_inch_give_the_same_turns(sixteenths in 36 * 16_i64..150 * 16) {
            let inch = Length::from_sixteenths(sixteenths);
            let metric = read(&inch.canonical(Unit::Millimetre), Unit::Millimetre).unwrap();
            let [a, b] = [inch, metric].map(|height| Turns::of(height, None).closed());
            prop_assert_eq!(a.to_bits(), b.to_bits());
        }
    }
}

//! From a balance test to turns: by a luggage scale, or by what the door does when let go.

use super::balance::Balance;
use super::turns::quarters;
use crate::hang::overhead::Curtain;
use crate::hang::weight::Weight;
use crate::length::Length;

/// A pull measured at one height, with the door moving slowly.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pull {
    /// The door lifted by so much.
    pub lift: Length,
    /// What it took to raise it.
    pub up: Option<Weight>,
    /// What it took to hold it from falling as it came down.
    pub down: Option<Weight>,
}

/// Where the door is let go.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Height {
    /// About knee-high.
    Low,
    /// Half-way.
    Middle,
    /// Three quarters up.
    High,
}

impl Height {
    /// All three, from the sill up.
    pub const ALL: [Self; 3] = [Self::Low, Self::Middle, Self::High];

    /// The share of the travel.
    #[must_use]
    pub const fn share(self) -> f64 {
        match self {
            Self::Low => 0.2,
            Self::Middle => 0.5,
            Self::High => 0.75,
        }
    }

    /// Its place in [`Height::ALL`], 0 to 2.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }
}

/// What the door does when it is let go, with a hand kept ready.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Behaves {
    /// It drops.
    Drops,
    /// It stays.
    Stays,
    /// It rises.
    Rises,
}

/// Why turns alone do not mend it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Mismatch {
    /// Too little lift below and too much above: the spring loses too little on the way.
    TooSoft,
    /// Too much lift below and too little above: it loses too much.
    TooStiff,
}

/// What a balance test says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Advice {
    /// Turns to add; to take off where negative; to the quarter turn.
    pub turns: f64,
    /// The same before rounding.
    pub exact: f64,
    /// Give or take so many turns.
    pub uncertainty: f64,
    /// Set where the spring does not suit the door at any number of turns.
    pub mismatch: Option<Mismatch>,
}

impl Advice {
    /// Whether nothing is to be done: what is asked for is less than a winding bar can set,
    /// or less than the test can see.
    #[must_use]
    pub fn holds(&self) -> bool {
        self.mismatch.is_none() && (self.turns == 0.0 || self.exact.abs() < 0.5 * self.uncertainty)
    }
}

/// A luggage scale reads within 0.5 kg or 3 %, whichever is more. Common practice, no source.
const SCALE_LEAST: f64 = 0.5 * crate::hang::weight::GRAVITY;
const SCALE_SHARE: f64 = 0.03;
/// Rollers, hinges and seals hold a door within so much of its weight. Common practice, no
/// source.
pub const FRICTION: f64 = 0.06;

/// How far a luggage scale may be off at so many newtons.
fn error(newtons: f64) -> f64 {
    SCALE_LEAST.max(SCALE_SHARE * newtons)
}

/// Whether pulls contradict each other: friction makes raising harder than holding, so holding
/// cannot take more than raising by more than the scale may be off at both.
#[must_use]
pub fn contradict(pulls: &[Pull]) -> bool {
    pulls.iter().any(|pull| {
        let (Some(up), Some(down)) = (pull.up, pull.down) else { return false };
        let (up, down) = (up.newtons(), down.newtons());
        down - up > error(up) + error(down)
    })
}

/// The turns that pulls ask for; none where nothing was measured, where they [`contradict`] each
/// other, or no turn lifts anything.
///
/// A door needs as many more turns as the hand lifts newtons, divided by the lift of a turn.
/// Raising and lowering measured both, their mean is free of friction; one alone may be off
/// by all of it. The balance should leave the hand, at that height, what the spring's own
/// line leaves it: so the expected hand force is taken off.
#[must_use]
pub fn from_pulls(balance: &Balance, curtain: &Curtain, pulls: &[Pull]) -> Option<Advice> {
    let per_turn = balance.per_turn();
    if per_turn.is_nan() || per_turn <= 0.0 || contradict(pulls) {
        return None;
    }
    let ideal = Balance::ideal(balance.door, balance.turns);
    let friction = FRICTION * balance.door.newtons();
    let mut each = Vec::new();
    for pull in pulls {
        let newtons = |weight: Weight| weight.newtons();
        let (force, give) = match (pull.up.map(newtons), pull.down.map(newtons)) {
            (Some(up), Some(down)) => (0.5 * (up + down), 0.7 * error(up.max(down))),
            // Raising takes the friction on top; lowering, off.
            (Some(up), None) => (up - 0.5 * friction, error(up) + 0.5 * friction),
            (None, Some(down)) => (down + 0.5 * friction, error(down) + 0.5 * friction),
            (None, None) => continue,
        };
        let expected = ideal.at(curtain, pull.lift).hand();
        let (turns, give) = ((force - expected) / per_turn, give / per_turn);
        each.push(Asked { lift: pull.lift, turns, give });
    }
    let weight: f64 = each.iter().map(|one| 1.0 / (one.give * one.give)).sum();
    if weight.is_nan() || weight <= 0.0 {
        return None;
    }
    let sum: f64 = each.iter().map(|one| one.turns / (one.give * one.give)).sum();
    let exact = sum / weight;
    Some(Advice {
        turns: quarters(exact),
        exact,
        uncertainty: 1.0 / weight.sqrt(),
        mismatch: disagree(&each),
    })
}

/// The turns that one pull asks for.
#[derive(Clone, Copy)]
struct Asked {
    /// The door was lifted by so much.
    lift: Length,
    /// Turns to add; to take off where negative.
    turns: f64,
    /// Give or take so many turns.
    give: f64,
}

/// Lowest and highest ask for different turns, by more than both could be off.
fn disagree(each: &[Asked]) -> Option<Mismatch> {
    let low = each.iter().reduce(|best, next| if next.lift < best.lift { next } else { best })?;
    let high = each.iter().reduce(|best, next| if next.lift > best.lift { next } else { best })?;
    let by = low.turns - high.turns;
    let give = 1.0_f64.max(2.0 * (low.give * low.give + high.give * high.give).sqrt());
    match by {
        by if by > give => Some(Mismatch::TooSoft),
        by if by < -give => Some(Mismatch::TooStiff),
        _ => None,
    }
}

/// The turns that the door's behaviour asks for; none where it was not tried at all.
///
/// A door that drops or rises is out by more than its friction, and nobody knows by how much
/// more: the least step that can end it is advised, and the test made again.
#[must_use]
pub fn from_behaviour(balance: &Balance, seen: [Option<Behaves>; 3]) -> Option<Advice> {
    let per_turn = balance.per_turn();
    if per_turn.is_nan() || per_turn <= 0.0 {
        return None;
    }
    let count = |what| seen.iter().flatten().filter(|one| **one == what).count();
    let (drops, stays, rises) =
        (count(Behaves::Drops), count(Behaves::Stays), count(Behaves::Rises));
    let tried = drops.saturating_add(stays).saturating_add(rises);
    if tried == 0 {
        return None;
    }
    let band = FRICTION * balance.door.newtons() / per_turn;
    let first = seen.iter().flatten().next();
    let mismatch = (drops > 0 && rises > 0).then_some(match first {
        Some(Behaves::Rises) => Mismatch::TooStiff,
        _ => Mismatch::TooSoft,
    });
    // Out at every height asks for a whole band; out at one of three, for part of it.
    let share = |count: usize| {
        f64::from(u8::try_from(count).unwrap_or(3)) / f64::from(u8::try_from(tried).unwrap_or(3))
    };
    let exact = band * (share(drops) - share(rises));
    let turns = match quarters(exact) {
        0.0 if drops > rises => 0.25,
        0.0 if rises > drops => -0.25,
        turns => turns,
    };
    let turns = if mismatch.is_some() { 0.0 } else { turns };
    Some(Advice { turns, exact, uncertainty: band, mismatch })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::hang::overhead::Path;
    use crate::hang::spring::Turns;
    use proptest::prelude::*;

    fn door() -> (Balance, Curtain) {
        let height = Length::from_inches(90);
        let turns = Turns::of(height, None);
        let path = Path::new(height.to_mm() + 6.35, 76.2, 0.0);
        let (height, panels) = (height.to_mm(), 8);
        let curtain = Curtain { path, panels, height, offset: 25.4, thickness: 19.05 };
        (Balance::ideal(Weight::from_grams(60_000), turns), curtain)
    }

    fn pull(balance: &Balance, curtain: &Curtain, share: f64, friction: f64) -> Pull {
        let lift = Length::from_mm_f64(balance.turns.travel.to_mm() * share);
        let hand = balance.at(curtain, lift).hand();
        Pull {
            lift,
            up: Some(Weight::from_newtons(hand + friction)),
            down: Some(Weight::from_newtons(hand - friction)),
        }
    }

    #[test]
    fn a_door_is_let_go_at_three_heights_from_the_sill_up() {
        assert_eq!(Height::ALL.map(Height::share), [0.2, 0.5, 0.75]);
        assert_eq!(Height::ALL.map(Height::index), [0, 1, 2]);
    }

    /// Two pulls, the upper first, each with the turns it asks for and how far it may be off.
    #[test]
    fn pulls_disagree_by_more_than_a_turn_and_than_twice_what_both_may_be_off() {
        let told = |low: (f64, f64), high: (f64, f64)| {
            let [below, above] = [100, 2000].map(Length::from_mm);
            let asked = |lift, (turns, give)| Asked { lift, turns, give };
            disagree(&[asked(above, high), asked(below, low)])
        };
        assert_eq!(told((1.01, 0.3), (0.0, 0.4)), Some(Mismatch::TooSoft));
        assert_eq!(told((0.99, 0.3), (0.0, 0.4)), None);
        assert_eq!(told((0.0, 0.01), (1.01, 0.01)), Some(Mismatch::TooStiff));
        assert_eq!(told((0.0, 0.01), (0.99, 0.01)), None);
        assert_eq!(told((1.0, 0.1), (0.0, 0.1)), None);
        assert_eq!(told((0.0, 0.1), (1.0, 0.1)), None);
        // Twice the root of the sum of squares: 2.
        assert_eq!(told((2.5, 0.6), (0.49, 0.8)), Some(Mismatch::TooSoft));
        assert_eq!(told((2.5, 0.6), (0.51, 0.8)), None);
        assert_eq!(told((-1.0, 0.8), (1.01, 0.6)), Some(Mismatch::TooStiff));
        assert_eq!(told((-1.0, 0.8), (0.99, 0.6)), None);
    }

    /// Below 16 2/3 kg a scale is off by half a kilogram, beyond it by 3 %.
    #[test]
    fn holding_takes_no_more_than_raising_but_for_the_scale() {
        let (ideal, curtain) = door();
        let pull = |up: f64, down: f64| {
            let [up, down] = [up, down].map(|kg| Some(Weight::from_kg_f64(kg)));
            [Pull { lift: Length::ZERO, up, down }]
        };
        for (up, down, wrong) in [
            // Just what the scale may be off at both.
            (1.0, 2.0, false),
            (5.0, 5.9, false),
            (5.0, 6.1, true),
            (25.0, 26.5, false),
            (25.0, 26.6, true),
            (11.0, 6.0, false),
        ] {
            let pulls = pull(up, down);
            assert_eq!(contradict(&pulls), wrong, "{up} {down}");
            assert_eq!(from_pulls(&ideal, &curtain, &pulls).is_none(), wrong, "{up} {down}");
        }
        let [one] = pull(1.0, 20.0);
        assert!(!contradict(&[Pull { up: None, ..one }, Pull { down: None, ..one }]));
    }

    proptest! {
        /// A door wound by so much too little asks for just that, whatever its friction.
        #[test]
        fn pulls_ask_for_the_turns_that_are_missing(out in -2.0_f64..2.0, friction in 0.0_f64..40.0) {
            let (ideal, curtain) = door();
            let found = ideal.wound(ideal.wound - out);
            let pulls = [0.0, 0.5].map(|share| pull(&found, &curtain, share, friction));
            let advice = from_pulls(&ideal, &curtain, &pulls).unwrap();
            prop_assert!((advice.exact - out).abs() < 1e-6, "{advice:?}");
            prop_assert!((advice.turns - out).abs() <= 0.125 + 1e-6);
            prop_assert_eq!(advice.mismatch, None);
        }

        /// One pull alone, up or down, is right within what it says of itself.
        #[test]
        fn one_pull_is_right_within_its_uncertainty(out in -1.0_f64..3.0, friction in 0.0_f64..35.0) {
            let (ideal, curtain) = door();
            let found = ideal.wound(ideal.wound - out);
            let both = pull(&found, &curtain, 0.0, friction);
            let advice = from_pulls(&ideal, &curtain, &[Pull { down: None, ..both }]).unwrap();
            prop_assert!((advice.exact - out).abs() <= advice.uncertainty);
        }
    }

    #[test]
    fn a_spring_of_another_rate_is_named_and_not_wound_away() {
        let (ideal, curtain) = door();
        // 25 % softer, wound further so that the closed door balances; and the other way.
        for (share, expected) in [(0.75, Mismatch::TooSoft), (1.4, Mismatch::TooStiff)] {
            let other = Balance { rate: ideal.rate * share, ..ideal }.wound(ideal.wound / share);
            let low = pull(&other, &curtain, 0.0, 10.0);
            let high = pull(&other, &curtain, 0.75, 10.0);
            let advice = from_pulls(&ideal, &curtain, &[low, high]).unwrap();
            assert_eq!(advice.mismatch, Some(expected), "{advice:?}");
        }
    }

    #[test]
    fn nothing_measured_is_no_advice() {
        let (ideal, curtain) = door();
        assert_eq!(from_pulls(&ideal, &curtain, &[]), None);
        assert_eq!(from_behaviour(&ideal, [None; 3]), None);
        // Nor is what no turn lifts.
        let pulls = [pull(&ideal, &curtain, 0.5, 10.0)];
        for rate in [0.0, -ideal.rate, f64::NAN] {
            let none = Balance { rate, ..ideal };
            assert_eq!(from_behaviour(&none, [Some(Behaves::Drops); 3]), None, "{rate}");
            assert_eq!(from_pulls(&none, &curtain, &pulls), None, "{rate}");
        }
    }

    #[test]
    fn what_the_door_does_asks_for_the_least_step() {
        use Behaves::{Drops, Rises, Stays};
        let (ideal, _) = door();
        let ask = |seen: [Behaves; 3]| from_behaviour(&ideal, seen.map(Some)).unwrap();
        assert!(ask([Stays; 3]).holds());
        // 6 % of a door on 12 turns is about 3/4 of a turn.
        assert_eq!(ask([Drops; 3]).turns, 0.75);
        assert_eq!(ask([Rises; 3]).turns, -0.75);
        assert_eq!(ask([Drops, Stays, Stays]).turns, 0.25);
        assert_eq!(ask([Stays, Stays, Rises]).turns, -0.25);
        assert_eq!(ask([Drops, Stays, Rises]).mismatch, Some(Mismatch::TooSoft));
        assert_eq!(ask([Rises, Stays, Drops]).mismatch, Some(Mismatch::TooStiff));
        let one = from_behaviour(&ideal, [None, Some(Drops), None]).unwrap();
        assert_eq!(one.turns, 0.75);
    }
}

//! Turns, winding, balance.

use hangtrue_core::hang::spring::{Behaves, Height, Mismatch};

/// Turns and winding.
#[derive(Debug)]
pub struct Spring {
    /// Heading.
    pub heading: &'static str,
    /// What to do, and by whom.
    pub lede: &'static str,
    /// The danger, in plain words, where the energy is not known.
    pub danger: &'static str,
    /// The danger: joules, the weight and the height it falls from.
    pub energy: fn(&str, &str, &str) -> String,
    /// Who may do it.
    pub trained: &'static str,
    /// Over the turns.
    pub turns: &'static str,
    /// So many turns.
    pub count: fn(&str) -> String,
    /// The rule in words: height in inches, divisor, preload.
    pub rule: &'static str,
    /// What it means: travel per turn, turns left.
    pub means: fn(&str, &str, &str) -> String,
    /// By the door's own figures.
    pub own: &'static str,
    /// Drum, preload, weight, turns wound, stripes.
    pub drum: &'static str,
    /// Turns left when open.
    pub preload: &'static str,
    /// What the door weighs.
    pub weight: &'static str,
    /// How to find out.
    pub weight_hint: &'static str,
    /// What the profile's weight makes of it.
    pub by_area: fn(&str) -> String,
    /// No hand could hold it.
    pub heavy: fn(&str) -> String,
    /// Turns that were wound.
    pub wound: &'static str,
    /// Stripes that were counted.
    pub stripes: &'static str,
    /// They agree, or not.
    pub agree: [&'static str; 2],
    /// Over the steps of winding.
    pub steps_heading: &'static str,
    /// What to mind, then what to do: each step in its order.
    pub steps: [(&'static str, &'static str); 8],
    /// Over the spring's own measures.
    pub measures: &'static str,
    /// Wire, coil outside, coils.
    pub wire: [&'static str; 3],
    /// Rate and torque and stress and share of strength.
    pub rate: fn(&str, &str) -> String,
    /// How much the rate is off what the door needs, percent, stiffer or softer.
    pub rate_off: fn(&str, bool) -> String,
    /// The stress, its share of the strength.
    pub stress: fn(&str, &str) -> String,
    /// Which formula.
    pub formula: &'static str,
    /// What is no spring.
    pub no_spring: &'static str,
}

/// The balance.
#[derive(Debug)]
pub struct Balance {
    /// Heading.
    pub heading: &'static str,
    /// Before letting go.
    pub caution: &'static str,
    /// Without a weight.
    pub no_weight: &'static str,
    /// What is left when open: weight.
    pub open: fn(&str) -> String,
    /// What a quarter turn changes.
    pub quarter: fn(&str) -> String,
    /// The most the hand lifts.
    pub hand: fn(&str) -> String,
    /// More than a person should lift.
    pub hand_over: fn(&str, &str) -> String,
    /// The most the spring pulls up beyond what hangs there, and with the door lifted by how much.
    pub pulls_up: fn(&str, &str) -> String,
    /// The same, more than a person should hold.
    pub pulls_up_over: fn(&str, &str, &str) -> String,
    /// The same by any weight, and the closed door does not stay down.
    pub flies_up: fn(&str, &str) -> String,
    /// How to test.
    pub test: &'static str,
    /// The luggage scale: what to do.
    pub scale: &'static str,
    /// Pull to raise at the sill, to hold coming down; the same half-way.
    pub pulls: [&'static str; 4],
    /// Without a scale.
    pub behaves: &'static str,
    /// A height.
    pub height: fn(Height) -> &'static str,
    /// What it does.
    pub does: fn(Behaves) -> &'static str,
    /// Pulls that contradict each other.
    pub contradict: &'static str,
    /// Add turns, take turns off, give or take.
    pub add: fn(&str, &str) -> String,
    /// Take off.
    pub take: fn(&str, &str) -> String,
    /// It is balanced, within so many turns.
    pub holds: fn(&str) -> String,
    /// Another spring is needed.
    pub mismatch: fn(Mismatch) -> &'static str,
    /// Test again afterwards.
    pub again: &'static str,
}

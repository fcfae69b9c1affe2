//! The spring: how many turns, what they lift, what they hold, what they can do to a hand.
//!
//! A torsion spring on a shaft with two drums. Its torque is the rate times the turns that
//! are on it; divided by the drum's radius it is the lift. Forces are in newtons, torque in
//! newton metres, energy in joules, lengths in metres where they are no [`Length`].
//!
//! [`Length`]: crate::Length

mod advice;
mod balance;
mod turns;
mod wire;

pub use advice::{
    Advice, Behaves, FRICTION, Height, Mismatch, Pull, contradict, from_behaviour, from_pulls,
};
pub use balance::{Balance, HAND_MOST, Point};
pub use turns::{DRUM, DRUMS, PRELOAD, PRELOADS, Rule, Turns, stripes_agree};
pub use wire::{A229, DIVISOR, DIVISOR_THEORY, ELASTICITY, Strength, Wire};

//! The domain of Hangtrue: what a tape read, what a frame is, what an order says.
//!
//! Pure: no DOM, no clock, no I/O, no randomness, no locale. The same survey
//! gives the same bytes natively and in WebAssembly, so transcendental
//! functions come from `libm` and lengths are whole nanometres.
//!
//! The way through: text → [`length`] → [`survey`] → [`check`] → [`finding`]s
//! and the [`order`] numbers.

// No sum may panic: what comes from outside stops at the end of its scale (`saturating`), what is
// bounded by its own code says so (`wrapping`), and nothing is divided by nought (`checked`).
#![cfg_attr(not(test), warn(clippy::arithmetic_side_effects))]

pub mod bounds;
pub mod check;
pub mod compare;
pub mod finding;
pub mod frame;
pub mod hang;
pub mod judge;
pub mod keypad;
pub mod length;
pub mod order;
pub mod profile;
pub mod rules;
pub mod say;
pub mod short;
pub mod spot;
pub mod survey;

pub use check::{check, check_order};
pub use finding::{Finding, Severity};
pub use length::{Length, Unit};
pub use spot::{Dimension, Group, Spot};
pub use survey::{Entry, Survey};

//! Surveys of invented openings, by seed, with the truth beside them.
//!
//! This library makes *texts*, what a person would have typed, and knows which of
//! them a slip has changed. It shares no code with the judge: another model of the
//! same world, so that the judge is not marked by its own hand.

pub mod baseline;
pub mod frame;
pub mod mark;
mod matrix;
pub mod reader;
pub mod rng;
pub mod row;
pub mod share;
pub mod slip;
pub mod spots;
pub mod survey;
pub mod walk;
pub mod world;

pub use rng::Rng;
pub use slip::{SLIPS, Weights};
pub use spots::{LAYOUTS, Layout, ORDERED};
pub use survey::{Simulated, Taken, clean, slipped};
pub use world::{Knock, Population, World};

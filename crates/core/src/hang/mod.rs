//! From the order to a door that runs true: delivery, tracks, room overhead, spring, latch,
//! seals, the last inspection, and care.
//!
//! Everything is worked out from the order's own numbers and from what is read while the
//! door is hung. Each formula is named where it stands; what nobody published says
//! *common practice, no source*.

pub mod care;
pub mod delivery;
pub mod inspection;
pub mod latch;
pub mod overhead;
pub mod record;
pub mod spring;
pub mod tracks;
pub mod weight;

pub use weight::{NoWeight, Scale, Weight};

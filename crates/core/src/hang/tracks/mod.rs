//! The tracks: spacing and diagonals in, shims out.
//!
//! [`Pair`] is what a tape read on the two vertical tracks; [`Pair::solve`] finds by least
//! squares where they stand, and how far each fastening has to come out from its post so
//! that the two are straight, parallel and square with the sill. [`upper`] does the same
//! for the two horizontal tracks, whose hangers move both ways.

mod pair;
mod rounding;
mod shims;
pub mod upper;

pub use pair::{Pair, Solved};
pub use shims::{Level, Shims, Side, Stand, TOLERANCE};

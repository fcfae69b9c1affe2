//! Pictures of a door being hung: room overhead, tracks, balance.
//!
//! Their words stand in a catalogue of their own, so that pages without them carry none
//! of it.

mod balance;
mod overhead;
mod pair;
mod text;

pub use balance::balance;
pub use overhead::overhead;
pub use pair::pair;
